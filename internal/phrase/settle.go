package phrase

import (
	"slices"
	"strconv"
)

// settle gives clause i, which comes from piece x, its polarity, figures,
// dates and signals.
func (p *clauseParser) settle(i int, x *piece, c *context, inherit bool) {
	cl := &p.out[i]
	p.deal(cl, cl.Span, c.depth)
	if inherit {
		cl.Polarity = "no"
		for k := range cl.Signals {
			cl.Signals[k].No = true
		}
	}
	for _, n := range x.negs {
		if p.ownerOf(x, n) == cl.Start && !p.consumed(x, n) {
			cl.Polarity = "no"
		}
	}
	if cl.Relation == "except" && c.prev >= 0 && p.out[c.prev].Polarity == "no" && cl.Polarity == "no" {
		cl.Polarity = "yes" // "no sealant other than S-2"
	}
	p.condition(cl, x, false)
	p.removal(cl, x, false)
	if cl.Polarity == "yes" && p.isGone(cl) {
		cl.Polarity = "conditional"
	}
	p.clearance(cl, x, 0)
	if cl.Clearance == nil && c.gap != nil && x.toks[0].low == "then" {
		cl.Clearance = c.gap // 1.2 m of sand, then the old pier
	}
}

// ownerOf is the start of the clause that a negator bears on: that of the next
// relation if no noun comes first, else the one it stands in.
func (p *clauseParser) ownerOf(x *piece, n hit) int {
	start := x.toks[0].Start
	for k, rel := range x.rels {
		if rel.from >= n.from && !slices.ContainsFunc(x.what[n.from:max(rel.from, n.from)], func(w int32) bool { return w > 0 }) || rel.to <= n.from {
			if k > 0 {
				start = x.toks[rel.from].Start
			}
			if rel.from >= n.from {
				break
			}
		}
	}
	return start
}

// consumed holds for the "no" of a signal such as "no frost", which says
// nothing of the nouns around it.
func (p *clauseParser) consumed(x *piece, n hit) bool {
	at := x.toks[n.from].Start
	for _, s := range p.signalsAround(x, n) {
		if s.End <= at {
			continue
		}
		i, _ := slices.BinarySearchFunc(p.nouns, at, func(w Noun, at int) int { return w.Start - at })
		noun := i < len(p.nouns) && p.nouns[i].Start < s.End
		related := slices.ContainsFunc(x.rels, func(h hit) bool {
			return x.toks[h.from].Start < s.End && x.toks[h.to-1].End > s.Start
		})
		if !noun && !related {
			return true
		}
	}
	return false
}

// signalsAround lists the signals that hold the negator, or are denied by it.
func (p *clauseParser) signalsAround(x *piece, n hit) []Signal {
	at, end := x.toks[n.from].Start, x.toks[min(n.to+2, len(x.toks)-1)].End
	i, _ := slices.BinarySearchFunc(p.signals, at-120, func(s Signal, at int) int { return s.Start - at })
	var out []Signal
	for ; i < len(p.signals) && p.signals[i].Start < end; i++ {
		if s := p.signals[i]; s.Start <= at && s.End > at || s.Start >= at && s.No {
			out = append(out, s)
		}
	}
	return out
}

// signalOnly holds if every negator of the piece belongs to a signal.
func (p *clauseParser) signalOnly(x *piece) bool {
	return !slices.ContainsFunc(x.negs, func(n hit) bool { return !p.consumed(x, n) })
}

func (p *clauseParser) condition(cl *Clause, x *piece, added bool) {
	for _, h := range p.lang.ifs.find(x.toks) {
		at := x.toks[h.from].Start
		if at < cl.Start || at >= cl.End || x.what[h.from] != 0 {
			continue
		}
		if cl.Polarity == "yes" && !added { // "laid in the sun, unless tented": the sheet is there
			cl.Polarity = "conditional"
		}
		for k := range cl.Signals {
			cl.Signals[k].If = cl.Signals[k].If || cl.Signals[k].Start > at
		}
		return
	}
}

// removal lets words such as "ground off" say what became of the nouns before
// them, and words such as "grind off" of the noun after them. A piece that was
// added to a clause speaks of its nouns only if it starts with the words.
func (p *clauseParser) removal(cl *Clause, x *piece, added bool) {
	if cl.Polarity != "yes" || len(cl.Nouns) == 0 {
		return
	}
	if len(cl.Nouns) > 1 && (cl.Relation == "to" || cl.Relation == "from") {
		return // what it is taken off stays: "strip the felt from the deck"
	}
	for _, h := range p.lang.removal.find(x.toks) {
		from := x.toks[h.from].Start
		if len(cl.Nouns) == 1 && slices.ContainsFunc(p.lang.formsOff.find(x.toks), func(o hit) bool { return o.from <= h.from && o.to >= h.to }) {
			continue // "concrete stripped May 3": its forms are
		}
		if x.what[h.from] > 0 || p.negatedAt(x.toks, x.negs, h) || from < cl.Start || from >= cl.End {
			continue
		}
		before := cl.Nouns[0].End <= from
		if added {
			before = !slices.ContainsFunc(x.toks[:h.from], func(t token) bool { return !p.lang.removalLead[t.low] })
		}
		if before {
			cl.Polarity = "removed"
			return
		}
	}
	if cl.Relation == "to" || cl.Relation == "from" {
		return
	}
	for _, h := range p.lang.removing.find(x.toks) {
		from, to := x.toks[h.from].Start, x.toks[h.to-1].End
		near := slices.ContainsFunc(cl.Nouns, func(n Noun) bool { return n.Start >= to && n.Start < to+removalReach })
		if near && from >= cl.Start && x.what[h.from] == 0 && !p.negatedAt(x.toks, x.negs, h) {
			cl.Polarity = "removed"
			return
		}
	}
}

// removalReach is how far, in bytes, a noun may stand behind "removal of".
const removalReach = 24

// extend adds a piece without nouns to the clause before it.
func (p *clauseParser) extend(c *context, x *piece) {
	cl := &p.out[c.prev]
	s := Span{x.toks[0].Start, x.toks[len(x.toks)-1].End}
	cl.End = max(cl.End, s.End)
	cl.Text = p.text[min(cl.Start, cl.End):cl.End]
	known := len(cl.Quantities)
	p.deal(cl, s, c.depth)
	p.condition(cl, x, true)
	p.removal(cl, x, true)
	p.clearance(cl, x, known)
	c.gap = cl.Clearance
}

// deal gives a clause the figures, dates and signals that start in a span and
// not in brackets that are read on their own.
func (p *clauseParser) deal(cl *Clause, s Span, depth int) {
	mine := func(at int) bool {
		i := p.tokenAt(at)
		return i < len(p.depth) && int(p.depth[i]) == depth
	}
	i, _ := slices.BinarySearchFunc(p.quantities, s.Start, func(q Quantity, at int) int { return q.Start - at })
	for ; i < len(p.quantities) && p.quantities[i].Start < s.End; i++ {
		if mine(p.quantities[i].Start) {
			cl.Quantities = append(cl.Quantities, p.quantities[i])
		}
	}
	j, _ := slices.BinarySearchFunc(p.dates, s.Start, func(d Date, at int) int { return d.Start - at })
	for ; j < len(p.dates) && p.dates[j].Start < s.End; j++ {
		if mine(p.dates[j].Start) {
			cl.Dates = append(cl.Dates, p.dates[j])
		}
	}
	k, _ := slices.BinarySearchFunc(p.signals, s.Start, func(g Signal, at int) int { return g.Start - at })
	for ; k < len(p.signals) && p.signals[k].Start < s.End; k++ {
		if mine(p.signals[k].Start) {
			cl.Signals = append(cl.Signals, p.signals[k])
		}
	}
}

// clearance names the role of each figure by the words around it; one that
// tells a distance becomes the clearance of the clause.
func (p *clauseParser) clearance(cl *Clause, x *piece, known int) {
	for i := known; i < len(cl.Quantities); i++ {
		q := &cl.Quantities[i]
		from, to := x.around(q.Span)
		if from < 0 || q.Role != "" || q.Kind != "length" && q.Kind != "size" && q.Kind != "days" && q.Kind != "months" {
			continue
		}
		q.Role = p.roleOf(x, from, to)
		if q.Role == "clear" && q.Kind == "length" && cl.Clearance == nil {
			clear := *q
			cl.Clearance = &clear
			switch cl.Relation {
			case "above", "below", "behind", "in_front", "inside", "from", "near", "of":
				cl.Relation = "clear_of"
			case "":
				if len(cl.Nouns) > 0 && cl.Polarity == "yes" {
					cl.Relation = "clear_of"
				}
			}
		}
	}
	if cl.Clearance == nil && cl.Relation == "clear_of" {
		cl.Clearance = p.bareClearance(cl, x)
	}
}

// bareClearance is the distance of "60 clr M-1", whose unit the words leave to the
// reader: a figure right before the words for clear.
func (p *clauseParser) bareClearance(cl *Clause, x *piece) *Quantity {
	for i, t := range x.toks {
		if t.kind != number || i+1 == len(x.toks) || p.measured(cl, t.Span) || p.roleOf(x, i, i+1) != "clear" {
			continue
		}
		value, err := strconv.ParseFloat(t.low, 64)
		if err != nil || value <= 0 {
			continue
		}
		return &Quantity{Span: t.Span, Kind: plainNumber.kind, Role: "clear", Text: t.low, Min: &value, Max: &value}
	}
	return nil
}

// measured holds for a figure that is part of a quantity or of a date.
func (p *clauseParser) measured(cl *Clause, s Span) bool {
	within := func(o Span) bool { return s.Start >= o.Start && s.Start < o.End }
	return slices.ContainsFunc(cl.Quantities, func(q Quantity) bool { return within(q.Span) }) ||
		slices.ContainsFunc(cl.Dates, func(d Date) bool { return within(d.Span) }) ||
		slices.ContainsFunc(cl.Nouns, func(n Noun) bool { return within(n.Span) })
}

// around finds the tokens of a span in the piece, -1 if it is not in it.
func (x *piece) around(s Span) (from, to int) {
	from, _ = slices.BinarySearchFunc(x.toks, s.Start, func(t token, at int) int { return t.Start - at })
	if from == len(x.toks) || x.toks[from].Start >= s.End {
		return -1, -1
	}
	for to = from; to < len(x.toks) && x.toks[to].Start < s.End; to++ {
	}
	return from, to
}

// roleOf judges a figure by the longest words right after it or shortly before.
func (p *clauseParser) roleOf(x *piece, from, to int) string {
	lapping := len(p.lang.overlap.find(x.toks[:from])) > 0
	best, role := 0, ""
	take := func(id, length int) {
		name := p.lang.roles[id]
		if name == "clear" && lapping || name == "lap" && !lapping && length == 1 && best > 0 {
			return
		}
		if length > best || length == best && name == "clear" {
			best, role = length, name
		}
	}
	after := x.toks[to:min(len(x.toks), to+10)]
	for _, h := range p.lang.roleAfter.at(after, 0, nil) {
		take(h.id, 10+h.to)
	}
	before := x.toks[max(0, from-8):from]
	for _, h := range p.lang.roleBefore.find(before) {
		if h.to >= len(before)-1 {
			take(h.id, h.to-h.from)
		}
	}
	return role
}
