package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// primedInBed takes the primers that a cell of substrates names for those of the row, in
// a table that has no column for them: "on block, primer PR-1", "plywood, no primer", "PR-1
// on block". The word beside a primer's code names no second one.
func (l *Line) primedInBed(c source, named int) {
	if _, column := l.Cells["primer"]; column && l.Cells["primer"] != c.at.Cell || c.slot != "substrate" {
		return
	}
	for i := named; i < len(l.Items); i++ {
		it := &l.Items[i]
		if it.Class != "primer" || it.Slot != "substrate" && it.Slot != "touches" {
			continue
		}
		it.Slot = "primer"
		if vague(it.Family) && i+1 < len(l.Items) && l.Items[i+1].Class == "primer" && l.Items[i+1].Clause == it.Clause {
			it.Slot = "type"
			continue
		}
		if l.Cells["primer"] == "" {
			l.Cells["primer"] = c.at.Cell
		}
		l.Texts["primer"] = strings.TrimPrefix(l.Texts["primer"]+"; "+it.Clause, "; ")
		for j := named; j < len(l.Items); j++ {
			if bed := &l.Items[j]; bed.Slot == "under" && it.Side == "subject" && bed.Side == "object" && bed.Clause == it.Clause {
				bed.Slot = "substrate"
			}
		}
	}
}

// usedAs takes what a cell calls its material before a colon for the piece that is made
// of it: "sill pan: PVC sheet", "head flashing at shelf angle: AB-1 strip".
func (l *Line) usedAs(c source, named int) {
	lead, rest, ok := strings.Cut(c.text, ": ")
	if c.slot != "material" || !ok || len(l.Items) == named || !vague(l.Items[named].Family) || !strings.Contains(lead, l.Items[named].Text) {
		return
	}
	made := slices.ContainsFunc(l.Items[named+1:], func(it Item) bool {
		return it.Polarity == "yes" && !vague(it.Family) && strings.Contains(rest, it.Text) && !strings.Contains(lead, it.Text)
	})
	if made {
		l.Items[named].Slot = "type"
	}
}

// dripBefore are words before the figure of what metal does at its edge, which is no lap:
// "drip turns out 3/8 in.".
var dripBefore = regexp.MustCompile(`(?i)\b(?:drips?|hems?|kick-?outs?|lips?|noses?)(?: edge)?(?: \pL+){0,2} (?:out|down|past|beyond|over)\s*$`)
