package schedule

import (
	"slices"
	"strings"
)

// bandRoles are words below a heading over columns of one figure, by which these are told
// apart: what is allowed, what is asked for, and what is built or planned.
type bandRoles struct {
	Allowed []string            `json:"allowed"`
	Asked   []string            `json:"asked"`
	Done    []string            `json:"done"`
	Slots   map[string][]string `json:"slots"` // slot of the heading above -> those of the three
}

// bands gives the columns of figures that stand below one heading for a lap, a thickness or
// days in the sun the slots that their own words tell: "Exposure (d) | Max. per certificate"
// and "Planned", "Film (mm) | Specified" and "Found".
func (r *reader) bands(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		slots, role := r.bandSlots(c), r.bandRole(c.own)
		if slots == nil || role < 0 || slots[role] == "" || slots[role] == c.Slot || !r.mayBeOfBand(t, i, slots) || !r.columnHolds(t.stretch(), t.nums[i], r.head.bySlot[slots[role]].kind) {
			continue
		}
		if at := t.column(slots[role]); at > 0 {
			other := &t.cols[slices.Index(t.nums, at)]
			if its := r.bandRole(other.own); r.bandSlots(other) == nil || its < 0 || its == role {
				continue
			}
			other.Slot, other.Confidence, other.Why = "", 0, "" // its own words tell another
		}
		c.Slot, c.Confidence, c.Why = slots[role], 0.9, `"`+c.own+`" beside other figures of one matter`
	}
}

// bandOver is what stands over the heading of a column, "" for nothing.
func bandOver(c *Column) string {
	if c.own == "" || c.own == c.Heading || !strings.HasSuffix(c.Heading, c.own) {
		return ""
	}
	return strings.TrimSpace(strings.TrimSuffix(c.Heading, c.own))
}

// bandSlots are the slots of the columns below a heading of figures, or of those that name
// the matter beside a word for the role ("Spec'd lap"); nil for others.
func (r *reader) bandSlots(c *Column) []string {
	matter := bandOver(c)
	if matter == "" {
		matter = r.withoutRole(c.Heading)
	}
	for _, g := range slices.Concat(r.head.match(matter), r.head.match(parenthesis.ReplaceAllString(matter, " "))) {
		if slots := r.head.roles.Slots[g.slot]; slots != nil && g.score >= leastNamed && (bandOver(c) != "" || g.score >= sureHeading) {
			return slots
		}
	}
	return nil
}

// withoutRole is a heading without the words for a role, "" where it has none.
func (r *reader) withoutRole(heading string) string {
	all := headingWords(heading)
	kept := slices.DeleteFunc(slices.Clone(all), func(w string) bool {
		return slices.Contains(r.head.roles.Allowed, w) || slices.Contains(r.head.roles.Asked, w) || slices.Contains(r.head.roles.Done, w) || w == "d"
	})
	if len(kept) == len(all) {
		return ""
	}
	return strings.Join(kept, " ")
}

// mayBeOfBand holds for a column that is not known, or known by no more than the heading over
// it or a word for its role, beside another of the same matter.
func (r *reader) mayBeOfBand(t *table, i int, slots []string) bool {
	c := &t.cols[i]
	if !slices.ContainsFunc(t.cols, func(o Column) bool {
		return o.Letter != c.Letter && slices.Equal(r.bandSlots(&o), slots) && bandOver(&o) == bandOver(c)
	}) {
		return false
	}
	if c.Slot == "" || roleSlots[c.Slot] {
		return true
	}
	for slot, g := range r.head.own(c.own) {
		if slot == c.Slot && g.score >= 1 {
			return false // its own words tell it
		}
	}
	return bandOver(c) != "" && slices.Contains(slots, c.Slot)
}

// roleSlots are slots that a word for a role alone may have given.
var roleSlots = map[string]bool{"specified": true, "reference": true, "value": true, "status": true, "site": true}

// bandRole is the role that the words of a heading tell, -1 if none or more than one.
func (r *reader) bandRole(own string) int {
	words, role := headingWords(own), -1
	for i, list := range [][]string{r.head.roles.Allowed, r.head.roles.Asked, r.head.roles.Done} {
		switch {
		case !holdsAny(words, list):
		case role >= 0:
			return -1
		default:
			role = i
		}
	}
	return role
}
