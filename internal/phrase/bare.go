package phrase

// bare reads a figure without unit where the column says what it is: it stands
// first in the cell, or only words such as "max." come before it.
func (c *counter) bare(view []token) (Quantity, bool) {
	for _, s := range c.bounds.noLimit.spans(view) {
		return Quantity{Span: s.Span, Kind: c.hint.kind, NoLimit: true}, true
	}
	i := c.afterBound(view)
	if i >= len(c.toks) {
		return Quantity{}, false
	}
	f, ok := c.figure(i)
	if !ok || f.word {
		return Quantity{}, false
	}
	if u, _ := c.unitAfter(f); u != nil {
		return Quantity{}, false
	}
	how, j := c.joint(f.next)
	g := f
	if how == "x" {
		return Quantity{}, false
	}
	if how == "to" {
		if h, ok := c.figureAt(c.text, c.toks, j, c.hint.comma); ok {
			g = h
		}
	}
	u := c.hint.unit
	if u == nil {
		u = plainNumber
	}
	q := c.make(u, f, g, "", g.end)
	if u != plainNumber {
		q.Kind, q.Unit, q.Assumed = u.kind, u.Spellings[0], true
	}
	if *q.Min > *q.Max {
		q.Min, q.Max = q.Max, q.Min
	}
	return q, true
}

// plainNumber stands for a figure whose unit nobody told.
var plainNumber = &unit{ID: "number", Factor: 1, kind: "number"}

// afterBound is the first token that is not part of a leading bound.
func (c *counter) afterBound(view []token) int {
	i := c.tokenFrom(0, 0)
	for _, s := range c.bounds.before.spans(view) {
		if i < len(c.toks) && s.Start == c.toks[i].Start {
			i = c.tokenFrom(i, s.End)
			for i < len(c.toks) && (c.toks[i].low == "." || c.toks[i].low == ":") {
				i++
			}
			break
		}
	}
	return i
}
