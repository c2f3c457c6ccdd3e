package phrase

import "strings"

// counter reads the quantities of one text.
type counter struct {
	*Reader
	text string
	toks []token
	hint hint
	last int // end of the quantity before
}

// at reads a quantity with a unit that starts at token i.
func (c *counter) at(i int) (Quantity, int, bool) {
	if u, j := c.prefixed(i); u != nil {
		f, ok := c.figureAt(c.text, c.toks, j, c.hint.comma)
		if !ok {
			return Quantity{}, 0, false
		}
		f.start = c.toks[i].Start
		return c.make(u, f, f, c.text[c.toks[i].Start:c.toks[i].End], f.end), f.next, true
	}
	f, ok := c.figure(i)
	if !ok {
		return Quantity{}, 0, false
	}
	u, end := c.unitAfter(f)
	if u != nil && c.labeled(i, u, end) {
		return Quantity{}, 0, false
	}
	if u != nil && u.ID == "ft" {
		if q, next, ok := c.feetInches(f, u, end); ok {
			return q, next, true
		}
	}
	if q, next, ok := c.spread(f, u, end); ok {
		return q, next, true
	}
	if u == nil {
		return Quantity{}, 0, false
	}
	return c.make(u, f, f, strings.TrimSpace(c.text[f.end:end]), end), c.tokenFrom(f.next, end), true
}

// figure reads a number that stands for itself and not in a tag.
func (c *counter) figure(i int) (figure, bool) {
	if t := c.toks[i]; t.kind == word && t.low != "minus" {
		if _, ok := c.numbers[t.low]; !ok {
			return figure{}, false
		}
	}
	if c.inTag(i) {
		return figure{}, false
	}
	f, ok := c.figureAt(c.text, c.toks, i, c.hint.comma)
	if !ok {
		return f, false
	}
	return c.clock(f), true
}

// clock reads the minutes of 7:30.
func (c *counter) clock(f figure) figure {
	if f.next+1 >= len(c.toks) || c.toks[f.next].low != ":" || !c.toks[f.next].glued || c.toks[f.next+1].kind != number || len(c.toks[f.next+1].low) != 2 {
		return f
	}
	minutes, _, _ := parseNumber(c.toks[f.next+1].low, false)
	f.value, f.end, f.next = f.value+minutes/60, c.toks[f.next+1].End, f.next+2
	return f
}

// inTag holds for the number of a tag or code: AB-1, R-01/02, 3.A.
func (c *counter) inTag(i int) bool {
	for n := 0; n < 8 && i > 1 && c.toks[i].glued && c.toks[i-1].kind == sign && c.toks[i-1].glued; n, i = n+1, i-2 {
		before := c.toks[i-2]
		if s := c.toks[i-1].low; s != "-" && s != "/" && s != "." && s != "_" || before.End <= c.last {
			return false
		}
		if before.kind == word {
			return true
		}
		if before.kind != number {
			return false
		}
	}
	return false
}

// labeled holds for "layer 4 in" and "level 3 c": a number that names
// something, with a word after it that only looks like a unit.
func (c *counter) labeled(i int, u *unit, end int) bool {
	if i == 0 || c.toks[i-1].kind != word && c.toks[i-1].low != "." {
		return false
	}
	before := c.toks[i-1]
	if before.low == "." && i > 1 {
		before = c.toks[i-2]
	}
	if u.kind == "temperature" && c.bodies[before.low] {
		return false // "wall 20 F": what has a temperature as well as a number
	}
	written := strings.TrimSpace(c.text[c.toks[i].End:end])
	if written == `"` && !quoteOpen(c.text[:c.toks[i].Start]) {
		return false // `up the wall 8" min`
	}
	return c.labels[before.low] && len(written) <= 2 && !strings.ContainsAny(written, "%°.")
}

// quoteOpen holds where a quotation has begun and not ended: the sign of inches follows a digit.
func quoteOpen(text string) bool {
	open := false
	for i := range len(text) {
		if text[i] == '"' && (open || i == 0 || text[i-1] < '0' || text[i-1] > '9') {
			open = !open
		}
	}
	return open
}

// unitAfter reads the unit right after a figure, over a space or a hyphen.
func (c *counter) unitAfter(f figure) (*unit, int) {
	at := f.end
	for at < len(c.text) {
		t := c.text[at:]
		switch {
		case t[0] == ' ' || t[0] == '\t':
			at++
		case strings.HasPrefix(t, "\u00a0") || strings.HasPrefix(t, "\u2009") || strings.HasPrefix(t, "\u202f"):
			at += len("\u00a0")
			if t[0] == '\xe2' {
				at++
			}
		case t[0] == '-' && at == f.end && len(t) > 1 && t[1] >= 'a':
			at++
		default:
			u, end := c.units.match(c.text, at)
			if u == nil || f.word && u.kind != "days" && u.kind != "months" && u.kind != "length" && u.kind != "hours" {
				return nil, f.end
			}
			return u, end
		}
	}
	return nil, f.end
}

// prefixed finds a unit that stands before its figure: R-20, RSI 3.5. A tag
// may look the same, so the column or the next word must ask for it.
func (c *counter) prefixed(i int) (*unit, int) {
	if c.toks[i].kind != word {
		return nil, 0
	}
	u := c.units.prefixes[c.toks[i].low]
	if u == nil || i+1 >= len(c.toks) {
		return nil, 0
	}
	j := i + 1
	if c.toks[j].low == "-" && j+1 < len(c.toks) {
		j++
	}
	if c.toks[j].kind != number {
		return nil, 0
	}
	if c.hint.kind == u.kind || u.ID == "RSI" || j+1 < len(c.toks) && c.units.prefixNext[c.toks[j+1].low] {
		return u, j
	}
	return nil, 0
}

// feetInches reads 3'-6 1/2", 5 ft 6 in.
func (c *counter) feetInches(f figure, feet *unit, end int) (Quantity, int, bool) {
	j := c.tokenFrom(f.next, end)
	if j < len(c.toks) && c.toks[j].low == "-" {
		j++
	}
	if j >= len(c.toks) || c.toks[j].kind == word || c.toks[j].kind == sign {
		return Quantity{}, 0, false
	}
	g, ok := c.figureAt(c.text, c.toks, j, c.hint.comma)
	if !ok || g.value < 0 || g.value >= 12 {
		return Quantity{}, 0, false
	}
	u, stop := c.unitAfter(g)
	if u == nil || u.ID != "in" {
		return Quantity{}, 0, false
	}
	g.value, g.start = g.value+12*f.value, f.start
	return c.make(u, g, g, strings.TrimSpace(c.text[f.end:end])+" "+strings.TrimSpace(c.text[g.end:stop]), stop), c.tokenFrom(g.next, stop), true
}

// spread reads what follows a figure (with unit u, or none yet) to make it a
// range, a tolerance or a size.
func (c *counter) spread(f figure, u *unit, end int) (Quantity, int, bool) {
	j := c.tokenFrom(f.next, end)
	how, j := c.joint(j)
	if how == "" {
		return Quantity{}, 0, false
	}
	g, ok := c.figureAt(c.text, c.toks, j, c.hint.comma)
	if !ok {
		return Quantity{}, 0, false
	}
	g = c.clock(g)
	v, stop := c.unitAfter(g)
	if v == nil || u != nil && u.kind != v.kind {
		return Quantity{}, 0, false
	}
	if u == nil {
		u = v
	}
	next := c.tokenFrom(g.next, stop)
	q := c.join(how, u, f, v, g, stop)
	if how == "x" && u.kind == "length" {
		if more, n, ok := c.spread(g, v, stop); ok && more.Kind == "size" {
			q.Max, q.End, next = more.Max, more.End, n
		}
	}
	return q, next, true
}

// joint reads the sign or word between two figures of one quantity.
func (c *counter) joint(j int) (how string, next int) {
	if j+1 >= len(c.toks) {
		return "", j
	}
	t := c.toks[j]
	switch {
	case c.ranges[t.low] && (t.kind == word || t.glued == c.toks[j+1].glued):
		return "to", j + 1
	case t.low == "x" || t.low == "by" && t.kind == word:
		return "x", j + 1
	case t.low == "and" && t.kind == word && j > 1 && c.between(j-1):
		return "to", j + 1
	case t.low == "±":
		return "±", j + 1
	case t.low == "+" && j+3 < len(c.toks) && c.toks[j+1].low == "/" && c.toks[j+2].low == "-":
		return "±", j + 3
	}
	return "", j
}

// between holds if "between" stands a few tokens before token j.
func (c *counter) between(j int) bool {
	for k := j; k >= 0 && k > j-6; k-- {
		if c.toks[k].low == "between" || c.toks[k].low == "from" {
			return true
		}
	}
	return false
}

func (c *counter) join(how string, u *unit, f figure, v *unit, g figure, end int) Quantity {
	q := c.make(u, f, g, strings.TrimSpace(c.text[g.end:end]), end)
	low, high := u.inner(f.value), v.inner(g.value)
	switch how {
	case "±":
		d := g.value * v.Factor
		low, high = low-d, low+d
	case "x":
		q.Kind = "size"
	}
	if u.Clock != nil && low > high && low >= 12 {
		low -= 12 // 11 to 3 pm
	}
	if low > high {
		low, high = high, low
	}
	q.Min, q.Max = &low, &high
	return q
}

func (c *counter) make(u *unit, f, g figure, written string, end int) Quantity {
	low, high := u.inner(f.value), u.inner(g.value)
	return Quantity{Span: Span{f.start, end}, Kind: u.kind, Min: &low, Max: &high, Unit: written, unit: u, raw: [2]figure{f, g}}
}

// tokenFrom is the first token at or after the byte, looking from token i on.
func (c *counter) tokenFrom(i, at int) int {
	for i < len(c.toks) && c.toks[i].Start < at {
		i++
	}
	return i
}
