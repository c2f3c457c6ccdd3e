package schedule

import "abut/internal/phrase"

// values reads a column in which each row states the figure that matters to it:
// "22 mils dry", "0.05 perm", "18 g/L". A figure that a column of its own states
// is left as it is.
func (r *reader) values(l *Line, c source) {
	r.signals(l, c)
	r.readings(l, c)
	for _, q := range r.phrase.Quantities(c.text, "") {
		if slot := r.valueSlot(c, q); slot != "" && keep(l.Figures, figureOf[slot].key, figureTold(q, c.at)) {
			l.Cells[slot] = c.at.Cell
		}
	}
}

// valueSlot tells the column in which a quantity of a row would stand, by its kind
// and the words beside it, "" for none.
func (r *reader) valueSlot(c source, q phrase.Quantity) string {
	slot, ok := r.words.values[q.Kind]
	switch {
	case !ok:
		return ""
	case q.Kind == "length" && r.words.hasAny(c.text, r.words.laps):
		slot = "lap"
	case q.Kind == "length" && q.Unit != "mil" && q.Unit != "mils" && !r.words.hasAny(c.text, r.words.thick):
		return "" // "3/8 in. joint"
	case q.Kind == "temperature" && !r.words.hasAny(c.text, r.words.serves):
		return ""
	}
	return slot
}
