package phrase

import (
	"math"
	"strings"

	"abut/internal/regexp"
)

// pair hangs a test pressure on its flow and the twin in a second unit on its
// figure, so that what is left are separate statements.
func (r *Reader) pair(text string, qs []Quantity) []Quantity {
	out := qs[:0:0]
	for _, q := range qs {
		if n := len(out); n > 0 && isTestPressure(text, &out[n-1], &q) {
			out[n-1].at(q)
			continue
		}
		out = append(out, q)
	}
	qs, out = out, out[:0:0]
	for _, q := range qs {
		if n := len(out); n > 0 && r.isTwin(text, &out[n-1], &q) {
			out[n-1].twin(q, r.units.soft[q.Kind])
			continue
		}
		out = append(out, q)
	}
	return out
}

func isTestPressure(text string, q, p *Quantity) bool {
	if p.Kind != "pressure" || q.Kind != "air_permeance" && q.Kind != "flow" {
		return false
	}
	gap := strings.ToLower(text[q.End:p.Start])
	if q.At != nil || len(gap) > 40 || strings.ContainsAny(gap, ";\n") {
		return false
	}
	return strings.Contains(gap, "@") || strings.Contains(" "+strings.Trim(gap, "( ")+" ", " at ")
}

func (q *Quantity) at(p Quantity) {
	if q.Bound == "" {
		q.Bound = p.Bound
	}
	p.Bound = ""
	q.At, q.End = &p, p.End
}

// isTwin holds for "40 mil (1.0 mm)", "40 mil / 1.0 mm", "40 mil = 1.0 mm".
func (r *Reader) isTwin(text string, q, t *Quantity) bool {
	q = q.lastPressure(t)
	if q.Kind != t.Kind || q.unit == nil || t.unit == nil || q.unit == t.unit || q.Other != nil || t.Assumed {
		return false
	}
	gap := text[q.End:max(q.End, t.Start)]
	if len(gap) > 12 {
		return false
	}
	sign := strings.ToLower(strings.Join(strings.Fields(gap), " "))
	if sign == "" && q.disagrees(t, r.units.soft[q.Kind]) {
		return false // "15 mil 3 in. over": a film, and how wide it is
	}
	return r.twins[sign] || ofFilm.MatchString(gap) && strings.HasPrefix(strings.TrimPrefix(text[t.End:], "."), ")") ||
		ofPart.MatchString(gap) && strings.HasPrefix(text[t.End:], ")")
}

// ofPart is the part that a figure is of, before its twin in a bracket of its own:
// "60 mil facer (1.5 mm)".
var ofPart = regexp.MustCompile(`^ [a-z]{3,} \($`)

// ofFilm tells which thickness it is, before its twin in a bracket: "30 mil DFT (0.76 mm)".
var ofFilm = regexp.MustCompile(`(?i)^ (?:[dw]ft|dry|wet|thick|film|dry film|wet film|nom\.?|min\.?) \($`)

// lastPressure is the test pressure of q where t is another pressure.
func (q *Quantity) lastPressure(t *Quantity) *Quantity {
	if t.Kind == "pressure" && q.At != nil {
		return q.At
	}
	return q
}

func (q *Quantity) twin(t Quantity, soft float64) {
	end := t.End
	to := q.lastPressure(&t)
	to.Other, to.Disagree = &t, to.disagrees(&t, soft)
	if q.Bound == "" {
		q.Bound = t.Bound
	}
	if q.At == nil && t.At != nil {
		q.At = t.At
	}
	q.End = end
}

// disagrees compares two printings of one figure: each stands for any value
// that rounds to it, and the two ranges must meet.
func (q *Quantity) disagrees(t *Quantity, soft float64) bool {
	if q.unit.kind == "gauge" {
		return false
	}
	return apart(*q.Min, *t.Min, q.half(0)+t.half(0), soft) || apart(*q.Max, *t.Max, q.half(1)+t.half(1), soft)
}

func apart(a, b, room, soft float64) bool {
	d := math.Abs(a - b)
	return d > room*(1+1e-9) && d > soft*max(math.Abs(a), math.Abs(b))
}

// half is half of the last printed place, in the inner unit.
func (q *Quantity) half(i int) float64 { return q.raw[i].step * q.unit.Factor / 2 }

// close sets Min and Max by the bound, takes in a closing bracket, and copies
// the words.
func (q *Quantity) close(text string) {
	for _, p := range []*Quantity{q.At, q.Other} {
		if p != nil {
			if p == q.Other && p.Bound == "" {
				p.Bound = q.Bound
			}
			p.close(text)
			q.End = max(q.End, p.End)
		}
	}
	q.End = closing(text, q.Span)
	q.Text = text[q.Start:q.End]
	if q.Min == nil || q.Max == nil || *q.Min != *q.Max {
		return
	}
	switch q.Bound {
	case "min":
		q.Max = nil
	case "max":
		q.Min = nil
	}
}

// closing moves the end over a bracket that the span left open.
func closing(text string, s Span) int {
	inner, end := text[s.Start:s.End], s.End
	if strings.Count(inner, "[") > strings.Count(inner, "]") && strings.HasPrefix(text[end:], "]") {
		return end + 1
	}
	open := strings.Count(inner, "(") - strings.Count(inner, ")")
	if open > 0 && strings.HasPrefix(text[end:], ".)") {
		end++
	}
	if open > 0 && end < len(text) && text[end] == ')' {
		return end + 1
	}
	return end
}

// toDifference makes a temperature a difference of temperatures: no zero point.
func (q *Quantity) toDifference() {
	low, high := q.raw[0].value*q.unit.Factor, q.raw[1].value*q.unit.Factor
	q.Kind, q.Min, q.Max = "temperature_difference", &low, &high
}
