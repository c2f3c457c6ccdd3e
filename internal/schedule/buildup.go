package schedule

import "slices"

// buildUp puts together the assembly that a row tells across its columns, room side
// first: what is inboard, the substrate, the row's own sheet, what is outboard. Only
// headings that say so tell the two sides.
func (r *reader) buildUp(t *table, l *Line) {
	main := l.Main()
	if main == nil || !t.tellsSide("behind", r.head.inner) || !t.tellsSide("front", r.head.outer) {
		return
	}
	inboard, known := r.fromRoom(l.there("behind"))
	if !known || len(inboard) == 0 {
		return
	}
	l.Layers = slices.Concat(inboard, l.there("substrate"), []Item{*main}, l.there("front"))
}

// tellsSide holds for a table with a column of a slot whose own heading has one of the
// words for a side.
func (t *table) tellsSide(slot string, words map[string]bool) bool {
	return slices.ContainsFunc(t.cols, func(c Column) bool {
		return c.Slot == slot && slices.ContainsFunc(headingWords(c.own), func(w string) bool { return words[w] })
	})
}

// there lists the materials that a line has in a column.
func (l *Line) there(slot string) []Item {
	var out []Item
	for _, it := range l.Items {
		if it.Slot == slot && it.Polarity == "yes" {
			out = append(out, it)
		}
	}
	return out
}

// fromRoom puts layers in order from the room on, by the lining that one end has; where
// none has, a film is taken to lie before the insulation, and nothing is known of one
// after it.
func (r *reader) fromRoom(layers []Item) (sorted []Item, known bool) {
	lining := func(it Item) bool { return r.head.linings[it.Family] }
	first := slices.IndexFunc(layers, lining)
	switch {
	case first == 0:
		return layers, true
	case first > 0:
		slices.Reverse(layers)
		return layers, lining(layers[0])
	}
	wool := slices.IndexFunc(layers, func(it Item) bool { return it.Class == "insulation" })
	return layers, wool < 0 || !slices.ContainsFunc(layers[wool:], func(it Item) bool { return it.Class != "insulation" })
}
