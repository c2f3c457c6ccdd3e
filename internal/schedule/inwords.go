package schedule

import (
	"strings"
	"unicode"
)

// lapOf is the lap that a cell of laps tells: of its figures, the one that its
// words call a lap; none where the words are many and call none so ("slack loop
// over 3/4 in. rod").
func (r *reader) lapOf(c source, f Figure) Figure {
	if !r.wordy(c.text) {
		return f
	}
	for _, cl := range r.hear(c.text).clauses {
		for _, q := range cl.Quantities {
			if q.Kind == "length" && q.Role == "lap" && q.Min != nil {
				f.take(q)
				return f
			}
		}
	}
	if r.words.hasAny(firstWords(c.text, 4), r.words.laps) {
		return f
	}
	return Figure{}
}

// wordyLap is how many words beside those of laps a cell of laps has that tells
// of other things too.
const wordyLap = 3

// wordy holds for a cell with words beside figures, units and those of laps.
func (r *reader) wordy(text string) bool {
	n := 0
	for _, w := range headingWords(text) {
		if strings.ContainsFunc(w, unicode.IsDigit) || r.head.units[w] || r.head.filler[w] || r.words.hasAny(w, r.words.laps) {
			continue
		}
		n++
	}
	return n >= wordyLap
}

// ageOfBed takes the age that the words of product data ask of concrete ("dry;
// concrete 14 days or more"), where no column of its own does.
func (r *reader) ageOfBed(p *Product, c source) {
	if _, stated := p.Figures["concrete_age_days"]; stated || figureOf[c.slot].key != "" {
		return
	}
	start := 0
	for _, q := range r.phrase.Quantities(c.text, "") {
		before := c.text[start:q.Start]
		start = q.End
		if i := strings.LastIndexAny(before, ";.("); i >= 0 {
			before = before[i:]
		}
		if q.Kind != "days" || q.Min == nil || !r.words.hasAny(before, r.words.youngBeds) {
			continue
		}
		f := Figure{Text: q.Text, At: c.at}
		f.take(q)
		p.Figures["concrete_age_days"] = f
		return
	}
}
