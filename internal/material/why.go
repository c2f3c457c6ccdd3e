package material

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"
)

// why lists which words said what.
func (v *Vocabulary) why(g *group, r result) []string {
	out := []string{}
	for _, s := range g.said {
		line := fmt.Sprintf("%q names it", s.words)
		if s.term >= 0 {
			if !v.matters(s.term, r.family) {
				continue
			}
			line = v.terms[s.term].says(s.words)
		} else if !v.literally(g, s, r) {
			continue
		}
		if !slices.Contains(out, line) {
			out = append(out, line)
		}
	}
	for _, t := range g.denied {
		out = append(out, fmt.Sprintf("said not to have %s", v.terms[t].name))
	}
	return out
}

// says tells in words what the words of a text say by a term.
func (t *term) says(words string) string {
	what := [...]string{head: "what it is", stuff: "what it is made of", way: "how it is made or used"}[t.kind]
	if t.kind == head || strings.EqualFold(words, t.name) {
		return fmt.Sprintf("%q says %s", words, what)
	}
	return fmt.Sprintf("%q says %s: %s", words, what, t.name)
}

// matters holds where a term has a part in the family or its traits.
func (v *Vocabulary) matters(t, fam int) bool {
	if d := &v.terms[t]; fam < 0 || d.kind != way || len(d.add)+len(d.drop) > 0 {
		return true
	}
	return slices.Contains(v.families[fam].needs, t)
}

// literally holds where the words are those of the family that was chosen.
func (v *Vocabulary) literally(g *group, s said, r result) bool {
	return r.family < 0 || r.lit || slices.ContainsFunc(g.lits, func(l literal) bool { return l.family == r.family })
}

// mostMayBe is how many families are given for a stuff that many have.
const mostMayBe = 6

// mayBe lists the families with the traits of the stuff of a group that name it
// together with other words, those that need the fewest first.
func (v *Vocabulary) mayBe(g *group, traits []string) []string {
	needs := map[string]int{}
	for _, list := range v.entries {
		for i := range list {
			e := &list[i]
			f := &v.families[e.family]
			if f.generic || slices.ContainsFunc(traits, func(t string) bool { return !slices.Contains(f.traits, t) }) {
				continue
			}
			if slices.ContainsFunc(e.need, func(t int) bool { return g.has[t] && v.terms[t].kind == stuff }) && (needs[f.id] == 0 || len(e.need) < needs[f.id]) {
				needs[f.id] = len(e.need)
			}
		}
	}
	out := slices.Collect(maps.Keys(needs))
	slices.SortFunc(out, func(a, b string) int { return cmp.Or(cmp.Compare(needs[a], needs[b]), cmp.Compare(a, b)) })
	return out[:min(mostMayBe, len(out))]
}
