package material

import "slices"

// group is a run of words that may name one material.
type group struct {
	first, last int   // tokens
	order       []int // terms said, in order, without those implied
	has         map[int]bool
	implied     map[int]bool
	denied      []int
	lits        []literal
	bars        []int
	said        []said
	hits        int
	allWeak     bool
	fuzzy       bool
	after       gap  // how the next group parts from this one
	begins      bool // a clause
}

// literal is a family by its own words, which hold so many phrases.
type literal struct {
	family, terms int
	standard      bool
}

// said keeps the words of a term for the explanation.
type said struct {
	words string
	term  int // -1 for a family's own words
}

// weak holds where one ambiguous short form is all that was said.
func (g *group) weak() bool { return g.allWeak && g.hits == 1 }

// names holds where the words name a thing, a stuff, or a way that stands alone.
func (g *group) names() bool { return len(g.order)+len(g.lits) > 0 }

// segments are the groups of a text, parted at gaps and where the next words
// name another material.
func (v *Vocabulary) segments(text string, toks []token, breaks map[string]bool) []group {
	var out []group
	var before hit
	for i, h := range v.hits(text, toks) {
		next := v.groupOf(toks, h)
		next.begins = h.first == 0 || v.sign(text, &toks[h.first-1], &toks[h.first]) == wall
		between := wall
		if i > 0 {
			between = v.gap(text, toks, before, h, breaks)
		}
		before = h
		if h.sense.null || v.isName(text, toks, h) { // a look-alike parts what stands around it
			out = append(out, group{first: -1, after: wall})
			continue
		}
		if n := len(out); n > 0 && out[n-1].first >= 0 && between < label && v.oneName(&out[n-1], &next, between) {
			out[n-1].take(&next)
			continue
		}
		if n := len(out); n > 0 {
			out[n-1].after = between
		}
		out = append(out, next)
	}
	return slices.DeleteFunc(out, func(g group) bool { return g.first < 0 })
}

// oneName holds where b goes on with the name that a began.
func (v *Vocabulary) oneName(a, b *group, between gap) bool {
	if v.otherThing(a, b) {
		return v.better(a, b)
	}
	if !v.hasStuff(a) && !v.onlyWays(b) && between == tight || !v.hasStuff(b) && between == tight || v.onlyWays(a) && between == tight {
		return true
	}
	return between == tight && v.narrows(a, b) || v.better(a, b)
}

// otherThing holds where a is a thing by its own words and b names a thing of
// another class ("PVC conduit thru wall").
func (v *Vocabulary) otherThing(a, b *group) bool {
	h := v.headOf(b)
	if len(a.lits) == 0 || h < 0 || v.hasStuff(b) || !v.lastIsLit(a) {
		return false
	}
	r := v.resolve(a)
	return r.family >= 0 && r.lit && v.families[r.family].class == "other" && !v.takes(h, r.family)
}

// better holds where both together name something more exactly than each.
func (v *Vocabulary) better(a, b *group) bool {
	both := a.clone()
	both.take(b)
	return v.weight(&both) >= max(v.weight(a), v.weight(b))+perPart/2
}

// weight is the score of what the words name, less for what they leave open.
func (v *Vocabulary) weight(g *group) int {
	r := v.resolve(g)
	if r.family >= 0 && v.families[r.family].generic {
		return r.score - perPart
	}
	return r.score
}

// hasStuff: the words say what it is made of, or name a family.
func (v *Vocabulary) hasStuff(g *group) bool {
	return len(g.lits) > 0 || slices.ContainsFunc(g.order, func(t int) bool { return v.terms[t].kind == stuff })
}

func (v *Vocabulary) onlyWays(g *group) bool {
	return len(g.lits) == 0 && !slices.ContainsFunc(g.order, func(t int) bool { return v.terms[t].kind != way })
}

// headOf is the last head that belongs to certain classes, -1 for none.
func (v *Vocabulary) headOf(g *group) int {
	for _, t := range slices.Backward(g.order) {
		if v.terms[t].kind == head && len(v.terms[t].classes) > 0 {
			return t
		}
	}
	return -1
}

func (v *Vocabulary) groupOf(toks []token, h hit) group {
	g := group{first: h.first, last: h.last, has: map[int]bool{}, implied: map[int]bool{}, allWeak: h.sense.weak}
	if h.sense.null {
		return g
	}
	for i := h.first; i <= h.last; i++ {
		g.fuzzy = g.fuzzy || toks[i].fuzzy
	}
	v.say(&g, h.sense, h)
	g.hits = 1
	if len(h.sense.families)+len(h.sense.bars) > 0 && h.last > h.first {
		v.sayInner(&g, toks, h)
	}
	return g
}

func (v *Vocabulary) say(g *group, s *sense, h hit) {
	for _, t := range s.terms {
		if h.deny {
			g.denied = append(g.denied, t)
			continue
		}
		v.sayTerm(g, t)
		g.said = append(g.said, said{h.words, t})
	}
	if h.deny {
		return
	}
	for _, f := range s.families {
		g.lits = append(g.lits, literal{f, 1, s.standard})
		g.said = append(g.said, said{h.words, -1})
	}
	g.bars = append(g.bars, s.bars...)
}

func (v *Vocabulary) sayTerm(g *group, t int) {
	if !g.has[t] {
		g.has[t] = true
		g.order = append(g.order, t)
	}
	for _, o := range v.terms[t].implies {
		g.implied[o] = true
		for _, oo := range v.terms[o].implies {
			g.implied[oo] = true
		}
	}
}

// sayInner adds the terms of shorter phrases inside a family's own words, so
// that words beside it can still make it another family.
func (v *Vocabulary) sayInner(g *group, toks []token, h hit) {
	phrases := 0
	for i := h.first; i <= h.last; {
		to := h.last + 1
		if i == h.first {
			to = h.last // not the whole phrase again
		}
		s, n := v.longest(toks[:to], i, func(int) bool { return true })
		if n == 0 {
			i++
			continue
		}
		if i+n < len(toks) && v.outsiders[toks[i+n].low] {
			i += n
			continue
		}
		if h.deny && i == h.first || i > h.first && toks[i-1].low == "non" || i+n < len(toks) && toks[i+n].low == "free" {
			g.denied = append(g.denied, s.terms...)
		} else if !s.null {
			for _, t := range s.terms {
				v.sayTerm(g, t)
				if len(h.sense.families) == 0 {
					g.said = append(g.said, said{h.words, t})
				}
			}
		}
		i += n
		phrases++
	}
	for i := range g.lits {
		g.lits[i].terms = max(1, phrases)
	}
}

func (g *group) clone() group {
	c := *g
	c.order, c.lits, c.said = slices.Clone(g.order), slices.Clone(g.lits), slices.Clone(g.said)
	c.bars, c.denied = slices.Clone(g.bars), slices.Clone(g.denied)
	c.has, c.implied = map[int]bool{}, map[int]bool{}
	for t := range g.has {
		c.has[t] = true
	}
	for t := range g.implied {
		c.implied[t] = true
	}
	return c
}

// take adds the words of b to those of g.
func (g *group) take(b *group) {
	g.last, g.after = max(g.last, b.last), b.after
	for _, t := range b.order {
		if !g.has[t] {
			g.has[t] = true
			g.order = append(g.order, t)
		}
	}
	for t := range b.implied {
		g.implied[t] = true
	}
	g.lits, g.bars = append(g.lits, b.lits...), append(g.bars, b.bars...)
	g.denied, g.said, g.hits = append(g.denied, b.denied...), append(g.said, b.said...), g.hits+b.hits
	g.allWeak, g.fuzzy = g.allWeak && b.allWeak, g.fuzzy || b.fuzzy
}
