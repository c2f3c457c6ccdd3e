package contact

import (
	"slices"

	"abut/internal/schedule"
)

// keptByKind is what the row says of the chemistry of a neighbor that a column
// lists: "the butyl never gets to the foil".
func (f *finder) keptByKind(c Contact) (Contact, bool) {
	i := slices.IndexFunc(f.found, func(by Contact) bool {
		return by.Kind == "apart" && by.B.Family == "" && by.B.Item != c.B.Item && by.A.Item == c.A.Item && covers(c.B, by.B) &&
			slices.ContainsFunc(f.line.Items, func(it schedule.Item) bool {
				return it.ID == by.B.Item && it.Polarity == "no" && it.Relation != ""
			})
	})
	if i < 0 {
		return Contact{}, false
	}
	return f.found[i], true
}
