package schedule

import (
	"iter"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// knowsAny holds for a heading block that makes a column known.
func (r *reader) knowsAny(s *workbook.Sheet, row, n int) bool {
	for h := range r.heads(s, row, n, n > 1 && r.unitRow(s, row+n-1)) {
		if slices.ContainsFunc(r.bids(h), func(g guess) bool { return r.columnFits(below(s, row+n), h.col, g) }) {
			return true
		}
	}
	return false
}

// columnFits holds for a slot that the cells of a column may stand in.
func (r *reader) columnFits(under stretch, col int, g guess) bool {
	return g.score >= certain || r.suits(under, col, r.head.bySlot[g.slot])
}

// columnHead is what a heading block says over one column.
type columnHead struct {
	col                     int
	whole, group, sub, unit string
}

// heads are those of the columns that hold something. With units the last row
// only explains the columns.
func (r *reader) heads(s *workbook.Sheet, row, n int, units bool) iter.Seq[columnHead] {
	return func(yield func(columnHead) bool) {
		for col := 1; col <= s.MaxCol; col++ {
			group, sub, unit := headingText(s, row, n, col, units)
			if (group == "" && sub == "" || headedByOthers(s, row, n, col)) && columnEmpty(s, row+n, col) {
				continue
			}
			whole := strings.Join(strings.Fields(group+" "+sub+" "+unit), " ")
			if !yield(columnHead{col, whole, group, sub, unit}) {
				return
			}
		}
	}
}

// certain is the score of a column that the settings name.
const certain = 2

// bids lists what a column could be: what the settings name it, else what its
// heading says.
func (r *reader) bids(h columnHead) []guess {
	if slot, ok := r.named(h.whole); ok && r.head.bySlot[slot] != nil {
		return []guess{{slot: slot, score: certain, words: "named in the settings"}}
	}
	h.col, h.unit = 0, ""
	return r.guessed.of(h, func() []guess {
		if list := r.guesses(h.whole, h.group, h.sub); len(list) > 0 {
			return list
		}
		return r.byGloss(h.whole)
	})
}

// others counts what else a column could be as surely as one of the guesses.
func others(list []guess, than int) int {
	n := 0
	for i, g := range list {
		if i != than && g.score == list[than].score {
			n++
		}
	}
	return n
}

// guesses ranks the slots that a heading may stand for; one with a unit of
// temperature holds no other figures ("Put on, F", "AIR_F"), nor what a word of it
// alone would tell ("Use from, F").
func (r *reader) guesses(heading, group, sub string) []guess {
	list := r.head.guesses(group, sub)
	heat := slices.ContainsFunc(list, func(g guess) bool { s := r.head.bySlot[g.slot]; return s != nil && s.kind == "temperature" })
	figures := func(g guess) bool {
		slot := r.head.bySlot[g.slot]
		switch {
		case slot == nil || slot.kind == "temperature":
			return false
		case slot.kind != "":
			return true
		}
		return g.score < 1 && (slot.in == "schedule" || slot.in == "products" && heat)
	}
	if slices.ContainsFunc(list, figures) && r.unitIn(heading, "temperature", "") != "" {
		return slices.DeleteFunc(list, figures)
	}
	return list
}
