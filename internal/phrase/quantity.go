package phrase

import (
	"strings"
)

// Quantity is one stated figure or range with its unit. Values are in the
// inner unit of the kind (mm, °C, L/(s·m²), ng/(Pa·s·m²), g/L, days, Pa; see
// knowledge/units.json). A single figure has Min equal to Max; a stated
// minimum has no Max, a stated maximum no Min.
type Quantity struct {
	Span
	Text     string    `json:"text"`
	Kind     string    `json:"kind"` // length, temperature, air_permeance, ..., size (two or three lengths), clock (hours of the day), number (no unit)
	Min      *float64  `json:"min"`
	Max      *float64  `json:"max"`
	Unit     string    `json:"unit"`        // as written
	Bound    string    `json:"bound"`       // "", min, max, about
	At       *Quantity `json:"at_pressure"` // test pressure
	Other    *Quantity `json:"other"`       // the same figure in a second unit
	Disagree bool      `json:"disagree"`    // Other differs by more than the rounding of either
	Assumed  bool      `json:"assumed"`     // the unit is the column's
	NoLimit  bool      `json:"no_limit"`    // said to have no limit
	Role     string    `json:"role"`        // in a clause: clear, lap, past, held_back, age, ...
	unit     *unit
	raw      [2]figure
}

// hint is what the column of a cell says of its figures.
type hint struct {
	kind  string
	unit  *unit
	comma bool
}

// hint reads "kind", "kind:unit" or "kind:unit:comma" (decimal commas).
func (r *Reader) hint(s string) hint {
	kind, unit, _ := strings.Cut(s, ":")
	unit, comma := strings.CutSuffix(unit, ":comma")
	h := hint{kind: kind, comma: comma || unit == "comma"}
	if unit != "" {
		h.unit = r.units.byName[fold(strings.TrimSpace(unit))]
	}
	if h.unit == nil && kind == "days" {
		h.unit = r.units.byName["day"]
	}
	return h
}

// Quantities lists the quantities of a text in order. hint is the kind that
// the column expects, with the unit of bare figures ("length:mil"), or "".
// Figures of other kinds are reported as they are written.
func (r *Reader) Quantities(text, hint string) []Quantity {
	toks := scan(text)
	return r.quantities(text, toks, r.view(toks), r.dateSpans(text, toks), r.hint(hint))
}

func (r *Reader) quantities(text string, toks, view []token, dates []Span, h hint) []Quantity {
	c := &counter{Reader: r, text: text, toks: toks, hint: h}
	var qs []Quantity
	for i := 0; i < len(toks); {
		if len(dates) > 0 && toks[i].Start >= dates[0].End {
			dates = dates[1:]
			continue
		}
		if len(dates) > 0 && toks[i].Start >= dates[0].Start {
			i++
			continue
		}
		q, next, ok := c.at(i)
		if !ok {
			i++
			continue
		}
		qs = append(qs, q)
		c.last, i = q.End, next
	}
	if h.kind != "" && !hasKind(qs, h.kind) {
		if q, ok := c.bare(view); ok {
			qs = append([]Quantity{q}, qs...)
		}
	}
	if len(qs) == 0 {
		return nil
	}
	r.bounds.bind(text, view, qs)
	qs = r.pair(text, qs)
	for i := range qs {
		qs[i].close(text)
	}
	return qs
}

func hasKind(qs []Quantity, kind string) bool {
	for _, q := range qs {
		if q.Kind == kind {
			return true
		}
	}
	return false
}
