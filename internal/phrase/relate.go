package phrase

import (
	"slices"
)

// piece is a segment in reading: its tokens, what they are, its relations.
type piece struct {
	toks  []token
	what  []int32
	rels  []hit
	negs  []hit
	selfs []hit
}

// read turns one segment into clauses and returns the last of them, or the one
// that the segment was added to.
func (p *clauseParser) read(s segment, c *context) int {
	if s.hard {
		c.prev, c.neg, c.gap = -1, false, nil
	}
	if len(s.at) == 0 {
		return c.prev
	}
	x := p.piece(s)
	inherit := c.neg && s.comma && p.listed(x)
	if c.prev >= 0 && !x.tellsNoun() && len(x.rels) == 0 && (len(x.negs) == 0 || p.signalOnly(x)) {
		p.extend(c, x)
		return c.prev
	}
	first := len(p.out)
	p.chain(x, c)
	for i := first; i < len(p.out); i++ {
		p.settle(i, x, c, inherit)
	}
	c.neg = inherit || len(x.toks) > 0 && p.lang.determiners[x.toks[0].low] && p.out[first].Polarity == "no"
	c.prev = len(p.out) - 1
	c.gap = p.out[c.prev].Clearance
	return c.prev
}

func (p *clauseParser) piece(s segment) *piece {
	x := &piece{toks: make([]token, len(s.at)), what: make([]int32, len(s.at))}
	for k, i := range s.at {
		x.toks[k], x.what[k] = p.view[i], p.what[i]
	}
	told := p.negations(x.toks)
	x.negs = slices.DeleteFunc(p.lang.negators.find(x.toks), func(h hit) bool {
		ofNoun := h.to < len(x.what) && x.what[h.to] > 0 // "no 7-B": no number, but a thing that is not there
		return x.what[h.from] != 0 || !ofNoun && !slices.Contains(told, h)
	})
	x.selfs = slices.DeleteFunc(p.lang.self.find(x.toks), func(h hit) bool { return x.what[h.from] != 0 })
	x.rels = p.related(x)
	return x
}

func (x *piece) tellsNoun() bool {
	return slices.ContainsFunc(x.what, func(w int32) bool { return w > 0 })
}

// listed holds for "oil or pigmented compound" in a list that "no" began.
func (p *clauseParser) listed(x *piece) bool {
	for i := range x.toks {
		if x.what[i] == 0 && p.lang.listOr[x.toks[i].low] {
			return true
		}
	}
	return false
}

// related finds the relations of a piece: the longest from left to right, not
// over nouns, and with an object where they need one.
func (p *clauseParser) related(x *piece) []hit {
	hits := p.lang.relations.find(x.toks)
	slices.SortStableFunc(hits, func(a, b hit) int {
		if a.from != b.from {
			return a.from - b.from
		}
		return b.to - a.to
	})
	var rels []hit
	end := 0
	for _, h := range hits {
		if h.from < end || slices.ContainsFunc(x.what[h.from:h.to], func(w int32) bool { return w > 0 }) || x.what[h.from] != 0 {
			continue
		}
		rels, end = append(rels, h), h.to
	}
	return p.parted(x, p.withObjects(x, p.steps(x, p.joined(x, rels))))
}

// parted reads "gasket with a steel plate between": what stands between the two is what
// parts them, and not one more thing that comes with the first.
func (p *clauseParser) parted(x *piece, rels []hit) []hit {
	name := func(h hit) string { return p.lang.relationNames[h.id] }
	for k := 0; k+1 < len(rels); k++ {
		if name(rels[k]) != "with" || name(rels[k+1]) != "between" || len(p.group(x, rels[k].to, rels[k+1].from)) == 0 {
			continue
		}
		stop := len(x.toks)
		if k+2 < len(rels) {
			stop = rels[k+2].from
		}
		sides := p.group(x, rels[k+1].to, stop)
		if slices.ContainsFunc(sides, func(n Noun) bool { return n.Kind != "self" }) {
			continue
		}
		rels[k].id = slices.Index(p.lang.relationNames, "separated_by")
		rels = slices.Delete(rels, k+1, k+2)
	}
	return rels
}

// steps drops the "then" of "then mastic along the edge of the sheet": it tells the
// next step of the work, and what comes after it where the material goes.
func (p *clauseParser) steps(x *piece, rels []hit) []hit {
	if len(rels) < 2 || p.lang.relationNames[rels[0].id] != "then" || len(p.group(x, 0, rels[0].from)) > 0 {
		return rels
	}
	for _, n := range p.group(x, rels[1].to, len(x.toks)) {
		if n.Kind == "self" {
			return rels[1:]
		}
	}
	return rels
}

// joined drops the "of" of "below the edge of the sheet": it only leads on to
// the object of the relation before.
func (p *clauseParser) joined(x *piece, rels []hit) []hit {
	out := rels[:0:0]
	for _, h := range rels {
		if n := len(out); n > 0 && p.lang.weak[p.lang.relationNames[h.id]] && len(p.group(x, out[n-1].to, h.from)) == 0 {
			continue
		}
		out = append(out, h)
	}
	return out
}

// withObjects drops the relations that mean nothing without an object, or are
// denied without one: "gasket, no contact" tells of the gasket.
func (p *clauseParser) withObjects(x *piece, rels []hit) []hit {
	for i := len(rels) - 1; i >= 0; i-- {
		stop := len(x.toks)
		if i+1 < len(rels) {
			stop = rels[i+1].from
		}
		denied := !x.tellsNoun() && slices.ContainsFunc(x.negs, func(n hit) bool { return n.to <= rels[i].from })
		if (denied || p.lang.needsObject[p.lang.relationNames[rels[i].id]] && !p.gapBefore(x, rels[i])) && len(p.group(x, rels[i].to, stop)) == 0 {
			rels = slices.Delete(rels, i, i+1)
		}
	}
	return rels
}

// gapBefore holds for "3 in. behind": a distance stands right before.
func (p *clauseParser) gapBefore(x *piece, h hit) bool {
	if h.from == 0 || x.what[h.from-1] >= 0 {
		return false
	}
	at := x.toks[h.from-1].Start
	i, _ := slices.BinarySearchFunc(p.quantities, at+1, func(q Quantity, at int) int { return q.Start - at })
	return i > 0 && p.quantities[i-1].Kind == "length" && at < p.quantities[i-1].End
}

// group lists the nouns among the tokens [from, to), or the words that stand
// for the row's own material if there is no noun.
func (p *clauseParser) group(x *piece, from, to int) []Noun {
	var out []Noun
	last := int32(0)
	for _, w := range x.what[from:to] {
		if w > 0 && w != last {
			out, last = append(out, p.nouns[w-1]), w
		}
	}
	if len(out) > 0 {
		return out
	}
	for _, h := range x.selfs {
		if h.from >= from && h.to <= to {
			return []Noun{{Span: Span{x.toks[h.from].Start, x.toks[h.to-1].End}, Kind: "self"}}
		}
	}
	return nil
}

// chain makes one clause of each relation of the piece, or one in all.
func (p *clauseParser) chain(x *piece, c *context) {
	n := len(x.toks)
	whole := p.text[x.toks[0].Start:x.toks[n-1].End]
	if len(x.rels) == 0 {
		g := p.group(x, 0, n)
		p.add(Clause{Span: Span{x.toks[0].Start, x.toks[n-1].End}, Text: whole, Nouns: g, Subject: g, Of: c.of})
		return
	}
	first := p.group(x, 0, x.rels[0].from)
	left := first
	switch {
	case len(left) > 0:
	case c.prev >= 0:
		left = p.carried(c.prev)
	case c.of >= 0:
		left = p.nounBefore(c.of, x.toks[0].Start)
	}
	head := left
	for k, rel := range x.rels {
		from, stop := x.toks[rel.from].Start, n
		if k == 0 {
			from = x.toks[0].Start
		}
		if k+1 < len(x.rels) {
			stop = x.rels[k+1].from
		}
		right := p.group(x, rel.to, stop)
		if len(right) == 0 && k > 0 && k+1 == len(x.rels) {
			left = head // the last relation without object is of the first subject
		}
		cl := Clause{Span: Span{from, x.toks[stop-1].End}, Text: whole, Nouns: right, Subject: left, Object: right, Relation: p.lang.relationNames[rel.id], Of: c.of}
		if k == 0 {
			cl.Nouns = append(first[:len(first):len(first)], right...)
		}
		p.add(cl)
		if len(right) > 0 {
			left = right
		}
	}
}

func (p *clauseParser) add(c Clause) {
	c.Polarity = "yes"
	p.order = append(p.order, len(p.out))
	p.out = append(p.out, c)
}

// nounBefore is the last noun of a clause before a byte: what brackets explain.
func (p *clauseParser) nounBefore(clause, at int) []Noun {
	nouns := p.out[clause].Nouns
	for i := len(nouns) - 1; i >= 0; i-- {
		if nouns[i].Start < at {
			return nouns[i : i+1]
		}
	}
	return nil
}

// carried is what a clause without subject of its own goes on about.
func (p *clauseParser) carried(prev int) []Noun {
	if s := p.out[prev].Subject; len(s) > 0 {
		return s
	}
	return p.out[prev].Nouns
}
