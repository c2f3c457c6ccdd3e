package material

import "slices"

// result is the family that a group of words names best.
type result struct {
	family int // -1 for none
	score  int
	parts  int
	lit    bool
}

const (
	perPart    = 10
	stuffBonus = 1 // what it is made of says more than its form
	impliedOff = 1 // a term that is only implied weighs a little less
	genericOff = 5 // a family that leaves the chemistry open gives way
	litBonus   = 4 // the family's own words beat the same count of terms
	maxLit     = 4
)

// resolve picks the family by the most terms, the family's own words counting
// as terms; equal ones go to the family that is not generic, then by name.
func (v *Vocabulary) resolve(g *group) result {
	h := v.headOf(g)
	best, any := result{family: -1}, result{family: -1}
	consider := func(r result, fits bool) {
		if slices.Contains(g.bars, r.family) {
			return
		}
		if v.families[r.family].generic {
			r.score -= genericOff
		}
		if r.beats(any, v) {
			any = r
		}
		if fits && r.beats(best, v) {
			best = r
		}
	}
	for _, l := range g.lits {
		r := result{family: l.family, score: min(l.terms, maxLit)*perPart + litBonus, parts: l.terms, lit: true}
		consider(r, h < 0 || v.takes(h, l.family) || v.lastIsLit(g))
	}
	for t := range g.has {
		v.weigh(g, t, h, consider)
	}
	for t := range g.implied {
		if !g.has[t] {
			v.weigh(g, t, h, consider)
		}
	}
	if best.family < 0 {
		return any
	}
	return best
}

func (v *Vocabulary) weigh(g *group, t, h int, consider func(result, bool)) {
	for i := range v.entries[t] {
		e := &v.entries[t][i]
		score, ok := e.score(g, func(t int) bool { return v.terms[t].kind == stuff && !v.terms[t].base })
		if !ok {
			continue
		}
		fits := h < 0 || v.takes(h, e.family) || slices.Contains(e.need, h)
		consider(result{family: e.family, score: score, parts: len(e.need)}, fits)
	}
}

func (e *entry) score(g *group, isStuff func(int) bool) (int, bool) {
	score := 0
	for _, t := range e.need {
		switch {
		case g.has[t]:
			score += perPart
			if isStuff(t) {
				score += stuffBonus
			}
		case g.implied[t]:
			score += perPart - impliedOff
		default:
			return 0, false
		}
	}
	for _, t := range e.bar {
		if g.has[t] || g.implied[t] {
			return 0, false
		}
	}
	return score, true
}

func (v *Vocabulary) takes(h, fam int) bool {
	return slices.Contains(v.terms[h].classes, v.families[fam].class)
}

// lastIsLit: the family's own words end the group, so that no other head
// follows them.
func (v *Vocabulary) lastIsLit(g *group) bool {
	return len(g.said) > 0 && g.said[len(g.said)-1].term < 0
}

func (r result) beats(o result, v *Vocabulary) bool {
	if o.family < 0 || r.score != o.score {
		return o.family < 0 || r.score > o.score
	}
	if a, b := v.families[r.family].generic, v.families[o.family].generic; a != b {
		return b
	}
	return r.family < o.family
}

// confidence is a plain measure: own words and several terms are surer than one.
func (r result) confidence(g *group) float64 {
	c := 0.6
	switch {
	case r.family < 0:
		c = 0.5
	case r.lit && r.parts > 1:
		c = 0.95
	case r.parts > 1:
		c = 0.9
	case r.parts == 1:
		c = 0.8
	}
	if g.fuzzy {
		c -= 0.15
	}
	return c
}
