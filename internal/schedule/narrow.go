package schedule

import (
	"slices"
	"strings"
)

func firstOf(a, b *float64) *float64 {
	if a != nil {
		return a
	}
	return b
}

func (r *reader) rolesIn(text string) []string {
	out := []string{}
	for role, words := range r.limitRules.Roles {
		if r.words.hasAny(text, words) {
			out = append(out, role)
		}
	}
	if len(out) > 1 { // "primers for membranes"
		out = slices.DeleteFunc(out, func(role string) bool { return role == "membrane" })
	}
	slices.Sort(out)
	return out
}

func (r *reader) whenIn(text string) []string {
	out := []string{}
	for id, words := range r.limitRules.When {
		if r.words.hasAny(text, words) {
			out = append(out, id)
		}
	}
	slices.Sort(out)
	return out
}

func (r *reader) scopeIn(text string) string {
	for scope, words := range r.limitRules.Scopes {
		if r.words.hasAny(text, words) {
			return scope
		}
	}
	return ""
}

// keysIn lists the chemistry that the words before a figure name ("asphaltic
// and butyl sheets").
func (r *reader) keysIn(text string) []string {
	out := []string{}
	add := func(key string) {
		if !slices.Contains(out, key) {
			out = append(out, key)
		}
	}
	for _, m := range r.lex.find(text) {
		switch {
		case m.mat.Class == "insulation" && r.words.hasAny(lastWords(text[:m.start], 3), r.limitRules.Beside):
			// "membrane outside the batt": the limit is not the batt's
		case m.product >= 0:
			add(r.keyOf(m.product))
		case m.unknownTag:
			add(m.tag) // of a material that the workbook does not have
		case m.product < 0 && m.mat.Family == "" && len(m.mat.Traits) > 0 && strings.HasPrefix(m.mat.Traits[0], "grade-"):
			// "humid all winter" tells of the season and not of a winter grade
		case m.product < 0 && len(m.mat.Traits) > 0:
			add(m.mat.Traits[0])
		case m.product < 0 && m.mat.Family != "" && m.mat.Class != "substrate" && !r.limitRules.skip[lastWord(m.mat.Text)+"s"]:
			add(m.mat.Family)
		}
	}
	return out
}

// keyOf is the key that tells a product: its family, where no other product of the
// workbook is of it, else its id.
func (r *reader) keyOf(product int) string {
	p := &r.sched.Products[product]
	for i := range r.sched.Products {
		if i != product && r.sched.Products[i].Family == p.Family {
			return p.ID
		}
	}
	return firstNonEmpty(p.Family, p.ID)
}

// sheetsIn lists the sheets that the words after a figure name ("28 days before
// AB-4"), by family or by what says how they go on.
func (r *reader) sheetsIn(text string) []string {
	out := []string{}
	for _, m := range r.lex.find(text) {
		keys, class := m.mat.Keys, m.mat.Class
		if m.product >= 0 {
			p := &r.sched.Products[m.product]
			keys, class = p.Keys, p.Class
		}
		if role := r.words.roleByClass[class]; m.product < 0 && role != "membrane" && role != "flashing" || len(keys) == 0 {
			continue
		}
		if strings.HasSuffix(keys[0], "-unspecified") {
			keys = keys[1:]
		}
		if len(keys) > 0 {
			out = append(out, keys[0])
		}
	}
	return out
}

// coinsWord holds for the words before the sign of a definition, where they are
// one word that is no figure's own name.
func (r *reader) coinsWord(before string) bool {
	words := slices.DeleteFunc(headingWords(before), func(w string) bool { return strings.Trim(w, "0123456789") == "" })
	if len(words) != 1 {
		return false
	}
	return !slices.ContainsFunc(r.head.match(words[0]), func(g guess) bool { return g.score >= 1 })
}
