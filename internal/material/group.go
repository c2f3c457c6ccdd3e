package material

import (
	"slices"
	"strings"
	"unicode"
)

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
	allWeak     bool
	fuzzy       bool
	commaAfter  bool // a comma or bracket stands before the next group
}

// literal is a family by its own words, which hold so many terms.
type literal struct{ family, terms int }

// said keeps the words of a term for the explanation.
type said struct {
	words string
	term  int // -1 for a family's own words
}

// weak holds where one ambiguous short form is all that was said.
func (g *group) weak() bool { return g.allWeak && len(g.said) == 1 }

// names holds where the words name a thing, a stuff, or a way that stands alone.
func (g *group) names() bool { return len(g.order)+len(g.lits) > 0 }

// hit is a phrase found in the text.
type hit struct {
	sense       *sense
	first, last int
	deny        bool
	words       string
}

// hits lists the phrases of a text, longest first at each place.
func (v *Vocabulary) hits(text string, toks []token) []hit {
	var out []hit
	inPhrase := func(j int) bool { return !strings.ContainsAny(text[toks[j-1].end:toks[j].start], ",;:|()\n\t") }
	for i := 0; i < len(toks); {
		s, n := v.longest(toks, i, inPhrase)
		if n == 0 {
			i++
			continue
		}
		h := hit{sense: s, first: i, last: i + n - 1, words: text[toks[i].start:toks[i+n-1].end], deny: toks[i].non}
		h.deny = h.deny || i > 0 && toks[i-1].low == "non" || denies(text, toks, i+n)
		out = append(out, h)
		i += n
	}
	return out
}

// denies holds for "-free" after a word.
func denies(text string, toks []token, next int) bool {
	return next < len(toks) && toks[next].low == "free" && strings.TrimLeft(text[toks[next-1].end:toks[next].start], "- ‐‑–") == ""
}

// gap says how the words before and after part.
type gap byte

const (
	tight gap = iota // the words of one name
	loose            // a word or two that are not known
	comma            // a comma, bracket, slash or dash
	wall             // the end of a clause, or a word that parts
)

func (v *Vocabulary) gap(text string, toks []token, a, b hit, breaks map[string]bool) gap {
	g := tight
	unknown := 0
	for j := a.last; j < b.first; j++ {
		if j > a.last {
			switch low := toks[j].low; {
			case breaks[low]:
				return wall
			case !v.glue[low] && !v.breaks[low] && !unicode.IsDigit(rune(low[0])):
				unknown++
			}
		}
		g = max(g, v.sign(text[toks[j].end:toks[j+1].start], &toks[j], &toks[j+1]))
	}
	switch {
	case unknown > 2:
		return wall
	case unknown > 0:
		return max(g, loose)
	}
	return g
}

// sign reads the signs between two tokens.
func (v *Vocabulary) sign(s string, before, after *token) gap {
	switch {
	case strings.ContainsAny(s, ";|\n:→"):
		return wall
	case strings.ContainsAny(s, ",()[]/—–") || strings.Contains(s, " - "):
		return comma
	case strings.Contains(s, ". ") && after.upper && !v.shortened(before.low):
		return wall
	}
	return tight
}

// shortened holds for abbreviations, whose point ends no sentence.
func (v *Vocabulary) shortened(low string) bool {
	_, ok := v.spelling[low]
	return ok || len(low) < 4 || v.glue[low]
}

// segments are the groups of a text, parted at gaps and where the next words
// name another material.
func (v *Vocabulary) segments(text string, toks []token, breaks map[string]bool) []group {
	var out []group
	var before hit
	for i, h := range v.hits(text, toks) {
		next := v.groupOf(toks, h)
		between := wall
		if i > 0 {
			between = v.gap(text, toks, before, h, breaks)
		}
		before = h
		if len(next.said) == 0 && len(next.denied) == 0 { // a look-alike parts what stands around it
			out = append(out, group{first: -1})
			continue
		}
		if n := len(out); n > 0 && out[n-1].first >= 0 && between < comma && v.oneName(&out[n-1], &next, between) {
			out[n-1].take(&next)
			continue
		}
		if n := len(out); n > 0 && between == comma {
			out[n-1].commaAfter = true
		}
		out = append(out, next)
	}
	return slices.DeleteFunc(out, func(g group) bool { return g.first < 0 })
}

// oneName holds where b goes on with the name that a began.
func (v *Vocabulary) oneName(a, b *group, between gap) bool {
	if !v.hasStuff(a) && !v.onlyWays(b) && between == tight || !v.hasStuff(b) && between == tight || v.onlyWays(a) && between == tight {
		return true
	}
	return v.better(a, b)
}

// better holds where both together name something more exactly than each.
func (v *Vocabulary) better(a, b *group) bool {
	both := a.clone()
	both.take(b)
	score := v.resolve(&both).score
	return score > v.resolve(a).score && score > v.resolve(b).score
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
		g.lits = append(g.lits, literal{f, 1})
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
		if !s.null {
			for _, t := range s.terms {
				v.sayTerm(g, t)
				if len(h.sense.families) == 0 {
					g.said = append(g.said, said{h.words, t})
				}
			}
		}
		i += n
	}
	for i := range g.lits {
		g.lits[i].terms = max(1, len(g.order))
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
	g.last, g.commaAfter = max(g.last, b.last), b.commaAfter
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
	g.denied, g.said = append(g.denied, b.denied...), append(g.said, b.said...)
	g.allWeak, g.fuzzy = g.allWeak && b.allWeak, g.fuzzy || b.fuzzy
}

// join puts groups together that a comma parts though they name one material:
// "sealant, silicone", "aluminum sheet, mill finish".
func (v *Vocabulary) join(groups []group) []group {
	var out []group
	for i := range groups {
		g := &groups[i]
		if n := len(out); n > 0 && out[n-1].commaAfter && v.goesOn(&out[n-1], g) {
			out[n-1].take(g)
			continue
		}
		out = append(out, *g)
	}
	return out
}

// goesOn holds where b, after a comma, still speaks of a.
func (v *Vocabulary) goesOn(a, b *group) bool {
	switch {
	case v.onlyWays(b):
		return !v.onlyWays(a)
	case v.onlyWays(a):
		return v.headOf(b) < 0 && v.better(a, b)
	case !v.hasStuff(a) && v.hasStuff(b):
		return v.headTakes(a, b)
	case !v.hasStuff(b) || !v.isBase(a):
		return false
	}
	return v.better(a, b)
}

// headTakes: "flashing, copper" is one thing, "primer, concrete" is two.
func (v *Vocabulary) headTakes(a, b *group) bool {
	h := v.headOf(a)
	if other := v.headOf(b); other >= 0 && other != h {
		return h >= 0 && v.better(a, b)
	}
	if v.better(a, b) {
		return true
	}
	if h < 0 {
		return true
	}
	r := v.resolve(b)
	return r.family >= 0 && slices.Contains(v.terms[h].classes, v.families[r.family].class)
}

// isBase: all that a is made of is a base that a narrower stuff may follow.
func (v *Vocabulary) isBase(a *group) bool {
	return !slices.ContainsFunc(a.order, func(t int) bool { return v.terms[t].kind == stuff && !v.terms[t].base })
}
