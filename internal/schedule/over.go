package schedule

import (
	"cmp"
	"slices"
	"strings"
)

// headsOver is what stands above the rows below it: the group that was named last, and
// the text over them.
type headsOver struct {
	group   string
	divider source
}

// under gives a line what stands above it.
func (r *reader) under(l *Line, t *table) {
	over := &r.overRows
	if g := l.Texts["group"]; g != "" {
		over.group = g
	} else if t.column("group") > 0 {
		l.Group = over.group
		l.Mark = cmp.Or(l.Mark, firstLine(over.group))
	}
	if l.Group == "" {
		l.Group = over.divider.text
	}
	if l.Group != over.divider.text && over.divider.text != "" { // "Through-wall flashing" over rows that name their walls
		l.Texts["section"] = cmp.Or(l.Texts["section"], over.divider.text)
	}
	if l.Group == over.divider.text || l.Group == strings.TrimRight(firstWords(over.divider.text, 1), ".:") {
		r.headed(l, over.divider)
	}
}

// headed takes what a heading over rows says of the work's shelter, where the row
// itself says nothing of it. "Penthouse, heated" tells of the building.
func (r *reader) headed(l *Line, c source) {
	own := slices.ContainsFunc(l.Signals, func(s Said) bool { return r.words.headed[s.ID] })
	for _, cl := range r.hear(c.text).clauses {
		for _, s := range cl.Signals {
			if !own && !s.If && r.words.headed[s.ID] && !r.words.roomHeat.MatchString(c.text) {
				l.Signals = append(l.Signals, Said{ID: s.ID, No: s.No, Text: s.Text, Slot: c.slot, At: c.at})
			}
		}
	}
}
