package schedule

import (
	"strings"

	"abut/internal/phrase"
)

// values reads a column in which each row states the figure that matters to it:
// "22 mils dry", "0.05 perm", "18 g/L". A figure that a column of its own states
// is left as it is.
func (r *reader) values(l *Line, c source) {
	r.signals(l, c)
	r.readings(l, c)
	for _, q := range r.phrase.Quantities(c.text, "") {
		key := r.valueKey(c, q)
		if _, stated := l.Figures[key]; key == "" || stated {
			continue
		}
		f := Figure{Text: q.Text, At: c.at}
		f.take(q)
		l.Figures[key] = f
		l.Cells[slotOf(key)] = c.at.Cell
	}
}

// slotOf is the slot of the columns of a figure.
func slotOf(key string) string {
	for slot, fig := range figureOf {
		if fig.key == key && !strings.HasPrefix(slot, "apply") {
			return slot
		}
	}
	return key
}

// valueKey tells which figure of a row a quantity is, by its kind and the words
// beside it, "" for none.
func (r *reader) valueKey(c source, q phrase.Quantity) string {
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
	return figureOf[slot].key
}
