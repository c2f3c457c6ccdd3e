package material

import (
	"cmp"
	"slices"
	"strings"
)

// Describe reads one product that several cells tell of: its name, then its
// chemistry or carrier, then notes. Name and chemistry together give the
// family; from notes come only grades, never what a thing is made of. What is
// not understood is given as unknown.
func (v *Vocabulary) Describe(parts ...string) Material {
	whole := strings.TrimSpace(strings.Join(parts, "; "))
	m, g, ok := v.describe(parts)
	if !ok {
		m = unknown(whole)
		if v.explains {
			if m.Near = v.mayBe(&g, nil); len(m.Near) == 0 {
				m.Near = v.near(whole)
			}
		}
	}
	m.Text = whole
	return m
}

// Family is that of Describe, "" for what is not understood.
func (v *Vocabulary) Family(parts ...string) string {
	m, _, _ := v.describe(parts)
	return m.Family
}

func (v *Vocabulary) describe(parts []string) (Material, group, bool) {
	g := group{has: map[int]bool{}, implied: map[int]bool{}, allWeak: true}
	for i, part := range parts {
		if i > 1 {
			v.takeGrade(&g, part)
			continue
		}
		if one, ok := v.product(part, i == 0); ok {
			v.merge(&g, &one)
		}
	}
	m, ok := v.material(&g)
	return m, g, ok
}

// product is what a cell says of its one product: the first thing it names and
// what follows in the same breath.
func (v *Vocabulary) product(text string, named bool) (group, bool) {
	toks := v.scan(text)
	groups := v.join(v.segments(text, toks, v.within))
	if len(groups) == 0 {
		return group{}, false
	}
	for len(groups) > 1 && groups[0].after < wall && v.onlyForm(&groups[0]) { // "Foundation / deck sheet"
		groups = groups[1:]
	}
	one := groups[0]
	for i := 1; i < len(groups); i++ {
		next := &groups[i]
		if v.onlyWays(&one) || one.after < wall && (named && v.better(&one, next) || v.onlyWays(next)) {
			one.take(next)
		} else if !named && !v.onlyWays(next) {
			one.take(next)
		} else {
			if named && !v.hasStuff(next) && v.headOf(next) >= 0 {
				v.lendWays(&one, next)
			}
			break
		}
	}
	return one, true
}

// lendWays gives a thing what its other form, of no other stuff, is said to be made
// without: "butyl sealant / tape, solvent-free" has none in either. What is added to the
// other form, as a facing is, stays with that.
func (v *Vocabulary) lendWays(g, form *group) {
	for _, t := range form.order {
		if one := &v.terms[t]; one.kind == way && len(one.drop) > 0 && len(one.add) == 0 {
			v.sayTerm(g, t)
		}
	}
}

// onlyForm holds for words that tell the part of a building that a thing is for, and
// not what it is.
func (v *Vocabulary) onlyForm(g *group) bool {
	return !v.hasStuff(g) && !v.onlyWays(g) && v.headOf(g) < 0 && v.resolve(g).family < 0
}

// merge adds the chemistry cell to the name. A chemistry that is another
// material than the name is left to the name.
func (v *Vocabulary) merge(g, b *group) {
	if len(g.said) == 0 {
		*g = b.clone()
		return
	}
	before := v.resolve(g)
	both := g.clone()
	both.take(b)
	after := v.resolve(&both)
	sameClass := before.family < 0 || after.family >= 0 && v.families[after.family].class == v.families[before.family].class
	if v.onlyWays(b) || !v.hasStuff(g) || sameClass || v.better(g, b) {
		*g = both
	}
}

// takeGrade takes from a note the words that tell a grade and nothing else.
func (v *Vocabulary) takeGrade(g *group, note string) {
	toks := v.scan(note)
	for _, h := range v.hits(note, toks) {
		for _, t := range h.sense.terms {
			if !h.deny && v.terms[t].grade {
				v.sayTerm(g, t)
				g.said = append(g.said, said{h.words, t})
			}
		}
	}
}

// near lists the three families whose words are most like a text.
func (v *Vocabulary) near(text string) []string {
	low := strings.ToLower(strings.TrimSpace(text))
	if low == "" || len(low) > maxNear {
		return []string{}
	}
	type rated struct {
		id    string
		alike float64
	}
	var all []rated
	for i := range v.families {
		f := &v.families[i]
		best := 0.0
		for _, w := range f.words {
			best = max(best, alike(low, strings.ToLower(w), max(best, v.nearAt)))
		}
		if best >= v.nearAt {
			all = append(all, rated{f.id, best})
		}
	}
	slices.SortFunc(all, func(a, b rated) int { return cmp.Or(cmp.Compare(b.alike, a.alike), cmp.Compare(a.id, b.id)) })
	out := []string{}
	for _, r := range all[:min(nearest, len(all))] {
		out = append(out, r.id)
	}
	return out
}
