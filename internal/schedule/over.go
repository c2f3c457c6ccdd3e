package schedule

import (
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
func (r *reader) under(l *Line, t *table, over *headsOver, order dayOrder) {
	if g := l.Texts["group"]; g != "" {
		over.group = g
	} else if t.column("group") > 0 {
		l.Group = over.group
		l.Mark = firstNonEmpty(l.Mark, firstLine(over.group))
	}
	if l.Group == "" {
		l.Group = over.divider.text
	}
	if l.Group == over.divider.text || l.Group == strings.TrimRight(firstWords(over.divider.text, 1), ".:") {
		r.headed(l, over.divider)
		r.daysOver(l, over.divider, order)
	}
}

// daysOver takes the days of the work that a heading over rows tells ("Wall W1 - install
// 5/11 to 5/15, clad 6/26") for a row that has none of its own. A heading that tells no
// day of the work itself tells none of its cover.
func (r *reader) daysOver(l *Line, c source, order dayOrder) {
	told := map[string]Day{}
	for _, x := range r.phrase.Dates(c.text, order.DateOrder, r.year(l)) {
		if _, twice := told[x.Verb]; !twice && tellsDay(x) && x.State != "impossible" {
			told[x.Verb] = r.dayOf(sameSeason(x, told["install"], halfYear), c, order)
		}
	}
	if told["install"].From == "" || len(l.Items) == 0 {
		return
	}
	for _, slot := range []string{"install", "cover"} {
		if _, own := l.Dates[slot]; !own && l.Texts[slot] == "" && told[slot].From != "" {
			l.Dates[slot] = told[slot]
		}
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
