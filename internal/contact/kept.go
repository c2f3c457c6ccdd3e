package contact

import (
	"slices"

	"abut/internal/schedule"
)

// keptByKind is what the row says of the chemistry of a neighbor that a column
// lists: "the butyl never gets to the foil", "the EPDM ends 2 in. short of the sheet".
func (f *finder) keptByKind(c Contact) (Contact, bool) {
	i := slices.IndexFunc(f.found, func(by Contact) bool {
		if by.Kind != "apart" || by.B.Family != "" || by.B.Item == c.B.Item || by.A.Item != c.A.Item || !covers(c.B, by.B) {
			return false
		}
		at := slices.IndexFunc(f.line.Items, func(it schedule.Item) bool { return it.ID == by.B.Item })
		if at < 0 { // of another row
			return false
		}
		it := &f.line.Items[at]
		return it.Polarity == "no" && it.Relation != "" || by.From == "remark" && f.stopsShort(at)
	})
	if i < 0 {
		return Contact{}, false
	}
	return f.found[i], true
}
