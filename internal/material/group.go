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
	hits        int
	allWeak     bool
	fuzzy       bool
	after       gap // how the next group parts from this one
}

// literal is a family by its own words, which hold so many terms.
type literal struct{ family, terms int }

// said keeps the words of a term for the explanation.
type said struct {
	words string
	term  int // -1 for a family's own words
}

// weak holds where one ambiguous short form is all that was said.
func (g *group) weak() bool { return g.allWeak && g.hits == 1 }

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
		h.deny = h.deny || denies(text, toks, i+n) || i > 0 && (toks[i-1].low == "non" || v.denials[toks[i-1].low] && v.saysWay(s))
		out = append(out, h)
		i += n
	}
	return out
}

// saysWay: the phrase tells how a thing is made and names none. "No solvent" is
// a property; "no EPDM" is another material, and whether it is there is told by
// the clause.
func (v *Vocabulary) saysWay(s *sense) bool {
	return len(s.families) == 0 && !slices.ContainsFunc(s.terms, func(t int) bool { return v.terms[t].kind != way })
}

// denies holds for "-free" after a word.
func denies(text string, toks []token, next int) bool {
	return next < len(toks) && toks[next].low == "free" && strings.TrimLeft(text[toks[next-1].end:toks[next].start], "- ‐‑–") == ""
}

// isName holds where the next word, or the one after it, makes the words a
// proper name, a trade or a color: "Copper Street", "steel erector".
func (v *Vocabulary) isName(text string, toks []token, h hit) bool {
	for j := h.last + 1; j < len(toks) && j <= h.last+2; j++ {
		if strings.Trim(text[toks[j-1].end:toks[j].start], " ") != "" {
			return false
		}
		if v.nameWords[toks[j].low] {
			return j == h.last+1 || toks[j-1].upper && toks[j-1].key < 0
		}
	}
	return false
}

// gap says how the words before and after part.
type gap byte

const (
	tight   gap = iota // the words of one name
	loose              // a word or two that are not known, a slash or a closing bracket
	label              // a colon after what a thing is
	bracket            // an opening bracket
	comma              // a comma or dash
	with               // "with": what follows may be a part of it
	wall               // the end of a clause, or a word that parts
)

func (v *Vocabulary) gap(text string, toks []token, a, b hit, breaks map[string]bool) gap {
	g := tight
	unknown := 0
	for j := a.last; j < b.first; j++ {
		if j > a.last {
			switch low := toks[j].low; {
			case v.soft[low]:
				g = max(g, with)
			case breaks[low]:
				return wall
			case !v.glue[low] && !v.breaks[low] && !unicode.IsDigit(rune(low[0])):
				unknown++
			}
		}
		g = max(g, v.sign(text, &toks[j], &toks[j+1]))
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
func (v *Vocabulary) sign(text string, before, after *token) gap {
	s := text[before.end:after.start]
	switch {
	case strings.ContainsAny(s, ";|\n→"):
		return wall
	case strings.ContainsAny(s, ",—–") || strings.Contains(s, " - "):
		return comma
	case strings.ContainsAny(s, "(["):
		return bracket
	case strings.Contains(s, ":"):
		return label
	case strings.ContainsAny(s, ")]/"):
		return loose
	case strings.Contains(s, ". ") && after.upper && !v.shortened(text[before.start:before.end], before.low):
		return wall
	}
	return tight
}

// shortened holds for abbreviations, whose point ends no sentence. Short forms
// in capitals ("SAF", "PVC") take no point.
func (v *Vocabulary) shortened(word, low string) bool {
	if _, ok := v.spelling[low]; ok {
		return true
	}
	return word != strings.ToUpper(word) && (len(low) < 4 || v.glue[low])
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

// join puts groups together that a comma parts though they name one material:
// "sealant, silicone", "aluminum sheet, mill finish", "STPE (silyl-terminated
// polyether)".
func (v *Vocabulary) join(groups []group) []group {
	var out []group
	for i := range groups {
		g := &groups[i]
		if n := len(out); n > 0 && out[n-1].after < wall && (v.restates(&out[n-1], g) || out[n-1].after > tight && v.goesOn(&out[n-1], g)) {
			out[n-1].take(g)
			continue
		}
		out = append(out, *g)
	}
	return out
}

// restates holds where b says again what a said: the same family, or no term
// that a has not said.
func (v *Vocabulary) restates(a, b *group) bool {
	if a.after == with || !v.hasStuff(b) {
		return false
	}
	if saysAll(b, a) {
		return true
	}
	if len(b.lits) == 0 || slices.ContainsFunc(b.order, func(t int) bool { return !a.has[t] && v.terms[t].kind != way }) {
		return false
	}
	return v.resolve(a).family == v.resolve(b).family
}

// saysAll: b says all that a says.
func saysAll(a, b *group) bool {
	return len(a.lits) == 0 && !slices.ContainsFunc(a.order, func(t int) bool { return !b.has[t] && !b.implied[t] })
}

// goesOn holds where b, after a comma or "with", still speaks of a.
func (v *Vocabulary) goesOn(a, b *group) bool {
	switch {
	case a.after == with:
		return !v.onlyWays(a) && (v.onlyWays(b) || v.isComponent(b))
	case a.after == loose, a.after == label && !v.hasStuff(a) && v.better(a, b):
		return v.better(a, b)
	case a.after == bracket && saysAll(a, b):
		return true
	case v.onlyWays(b):
		return !v.onlyWays(a) || v.better(a, b)
	case v.onlyWays(a):
		return v.headOf(b) < 0 && v.better(a, b)
	case !v.hasStuff(a) && v.hasStuff(b):
		return v.headTakes(a, b)
	case !v.hasStuff(b):
		return v.headOf(b) < 0 && v.better(a, b)
	case v.isComponent(b):
		return v.headOf(a) >= 0 && v.better(a, b)
	}
	return v.isBase(a) && v.better(a, b)
}

// isComponent: all that b is made of is a layer or adhesive of another thing.
func (v *Vocabulary) isComponent(b *group) bool {
	if len(b.lits) > 0 {
		return false
	}
	return !slices.ContainsFunc(b.order, func(t int) bool {
		return v.terms[t].kind == stuff && !v.terms[t].component || v.terms[t].kind == head && len(v.terms[t].classes) > 0
	})
}

// headTakes: "flashing, copper" is one thing, "primer, concrete" is two.
func (v *Vocabulary) headTakes(a, b *group) bool {
	h := v.headOf(a)
	if other := v.headOf(b); other >= 0 && other != h {
		return h >= 0 && v.better(a, b) && (v.vague(a) || v.vague(b))
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

// vague: the words alone name no family, or one that leaves it open.
func (v *Vocabulary) vague(g *group) bool {
	r := v.resolve(g)
	return r.family < 0 || v.families[r.family].generic
}

// isBase: all that a is made of is a base that a narrower stuff may follow.
func (v *Vocabulary) isBase(a *group) bool {
	return !slices.ContainsFunc(a.order, func(t int) bool { return v.terms[t].kind == stuff && !v.terms[t].base })
}
