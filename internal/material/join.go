package material

import (
	"slices"
	"strings"
)

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
	case v.onlyStandard(b):
		return a.after <= comma && v.hasStuff(a)
	case a.after == far:
		return v.onlyWays(b) && !v.onlyWays(a) || v.isFinish(b) && !v.hasStuff(a) && v.headOf(a) >= 0 && v.better(a, b)
	case a.after == loose, a.after == label && !v.hasStuff(a) && v.better(a, b):
		return v.better(a, b)
	case a.after == bracket && saysAll(a, b):
		return true
	case v.onlyWays(b):
		return !v.onlyWays(a) || v.better(a, b)
	case v.onlyWays(a):
		return (v.headOf(b) < 0 || a.begins) && v.better(a, b)
	case !v.hasStuff(a) && v.hasStuff(b):
		return v.headTakes(a, b)
	case !v.hasStuff(b):
		return (v.headOf(b) < 0 || v.isAdjective(a)) && v.better(a, b)
	case v.isComponent(b):
		return v.headOf(a) >= 0 && (v.better(a, b) || v.same(a, b))
	}
	return v.isBase(a) && (v.better(a, b) || v.narrows(a, b)) || v.isBase(b) && v.narrows(b, a)
}

// onlyStandard: b cites a standard and says nothing of what the thing is made
// of, so that other words decide.
func (v *Vocabulary) onlyStandard(b *group) bool {
	for _, l := range b.lits {
		if !l.standard {
			return false
		}
	}
	return len(b.lits) > 0 && v.headOf(b) != -1 || len(b.lits) > 0 && len(b.order) == 0
}

// isAdjective: a ends in a word that goes with a later one ("butyl-based, ...").
func (v *Vocabulary) isAdjective(a *group) bool {
	if len(a.said) == 0 || v.headOf(a) >= 0 {
		return false
	}
	last := strings.ToLower(a.said[len(a.said)-1].words)
	return slices.ContainsFunc(v.adjectives, func(end string) bool { return strings.HasSuffix(last, end) })
}

// isFinish: b is one word for what something is made of, and nothing more.
func (v *Vocabulary) isFinish(b *group) bool {
	return len(b.lits) == 0 && len(b.order) == 1 && v.terms[b.order[0]].kind == stuff
}

// narrows: all that a says of its stuff, b says too, and more ("steel, A606
// siding").
func (v *Vocabulary) narrows(a, b *group) bool {
	if len(a.lits) > 0 || v.headOf(a) >= 0 {
		return false
	}
	told := []string{}
	for _, l := range b.lits {
		told = append(told, v.families[l.family].traits...)
	}
	for _, t := range b.order {
		told = append(told, v.terms[t].add...)
	}
	none := true
	for _, t := range a.order {
		for _, add := range v.terms[t].add {
			if none = false; !slices.Contains(told, add) {
				return false
			}
		}
	}
	return !none && v.hasStuff(b)
}

// same: b changes nothing of what a names.
func (v *Vocabulary) same(a, b *group) bool {
	both := a.clone()
	both.take(b)
	return !v.vague(a) && v.resolve(&both).family == v.resolve(a).family
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
	if h < 0 && !a.begins {
		return v.isFinish(b) && len(a.order) > 0 && v.better(a, b)
	}
	if h < 0 || v.better(a, b) {
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
