package contact

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/schedule"
)

// onBoard holds for roofing that the next words of its cell put on a board, which lies on
// the row's own: "PVC roofing above, on cover board", "EPDM (above the cover board)".
func (f *finder) onBoard(i int) bool {
	items := f.line.Items
	if i+1 >= len(items) || items[i].Class != "roofing" || items[i].Polarity != "yes" {
		return false
	}
	o := &items[i+1]
	return o.At == items[i].At && o.Polarity == "yes" && (lies[o.Relation] || o.Relation == "above") && o.Side == "object" && isBoard(o) && !f.same(o)
}

// aboveBoard holds for roofing that a cell of neighbors puts above an insulation named
// before it: "polyiso in 2 layers, RF-4 above".
func (f *finder) aboveBoard(i int) bool {
	items := f.line.Items
	it := &items[i]
	if it.Class != "roofing" || it.Side == "subject" || !slices.Contains(it.Signals, "lies_above") {
		return false
	}
	return i > 0 && items[i-1].At == it.At && items[i-1].Polarity == "yes" && items[i-1].Class == "insulation"
}

// isBoard holds for what is laid between a sheet and its roofing.
func isBoard(it *schedule.Item) bool {
	return it.Class == "insulation" || it.Class == "sheathing" || strings.HasSuffix(it.Family, "cover-board")
}

// deniedInRemark holds for a neighbor of which a remark says by a word of its own that it
// does not touch the row's material: "EPDM links in the sleeve", "the links touch no FM-1".
func (f *finder) deniedInRemark(it *schedule.Item) bool {
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		if o.Slot != "remark" || o.Polarity != "no" || o.Side != "object" || o.Relation != "against" || !f.same(&o) || f.hasSubject(&o) {
			return false
		}
		before, _, _ := strings.Cut(o.Clause, o.Text)
		return slices.ContainsFunc(longWords(before), func(w string) bool { return slices.Contains(longWords(it.Clause), w) })
	})
}

// hasSubject holds where the words of an item name a material that they tell it of.
func (f *finder) hasSubject(it *schedule.Item) bool {
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.At == it.At && o.Clause == it.Clause && o.Side == "subject"
	})
}

// longWords are the words of a text that are long enough to be told by, without the s of
// several.
func longWords(text string) []string {
	words := strings.FieldsFunc(strings.ToLower(text), func(c rune) bool { return !unicode.IsLetter(c) })
	out := words[:0]
	for _, w := range words {
		if len(w) >= leastWord {
			out = append(out, strings.TrimSuffix(w, "s"))
		}
	}
	return out
}

const leastWord = 4
