// Package material reads words into materials: a family, its class and traits,
// and why. What the words leave open stays open: a sheet whose adhesive nobody
// names is read as such, and words that are not known are said to be unknown.
package material

import "slices"

// Material is one material named in a text. Start and End are byte offsets of
// its words; both are 0 for a material that Describe put together.
type Material struct {
	Start      int      `json:"start"`
	End        int      `json:"end"`
	Text       string   `json:"text"`
	Family     string   `json:"family"` // "" where only traits are known, or nothing
	Name       string   `json:"name"`
	Class      string   `json:"class"`
	Traits     []string `json:"traits"`
	Keys       []string `json:"keys"`       // family and traits: what judgements are looked up by
	Why        []string `json:"why"`        // which words said what; of a vocabulary that explains
	Confidence float64  `json:"confidence"` // 0..1
	Unknown    bool     `json:"unknown"`    // no word was understood
	Generic    bool     `json:"generic"`    // the family leaves the chemistry open
	Weak       bool     `json:"weak"`       // read from an ambiguous word alone
	Near       []string `json:"near"`       // nearest families, where none is named; of a vocabulary that explains
}

// Find lists the materials of a text in order; their words do not overlap.
func (v *Vocabulary) Find(text string) []Material {
	toks := v.scan(text)
	groups := v.join(v.segments(text, toks, v.breaks))
	out := []Material{}
	for i := range groups {
		g := &groups[i]
		if m, ok := v.material(g); ok {
			m.Start, m.End = toks[g.first].start, toks[g.last].end
			m.Text = text[m.Start:m.End]
			out = append(out, m)
		}
	}
	if len(out) == 0 {
		return v.lone(text, groups, len(toks))
	}
	return out
}

// lone gives a text that is one ambiguous short form ("SS") as unknown, with
// what it may mean.
func (v *Vocabulary) lone(text string, groups []group, tokens int) []Material {
	if len(groups) != 1 || groups[0].last-groups[0].first+1 != tokens || !groups[0].weak() {
		return []Material{}
	}
	m := unknown(text)
	m.End, m.Weak = len(text), true
	if r := v.resolve(&groups[0]); r.family >= 0 {
		m.Near = []string{v.families[r.family].id}
	}
	return []Material{m}
}

func unknown(text string) Material {
	return Material{Text: text, Unknown: true, Traits: []string{}, Keys: []string{}, Why: []string{}, Near: []string{}}
}

// material turns a group into a material; ok is false where its words name none.
func (v *Vocabulary) material(g *group) (Material, bool) {
	if g.weak() || !g.names() {
		return Material{}, false
	}
	r := v.resolve(g)
	m := Material{Traits: []string{}, Keys: []string{}, Near: []string{}, Why: []string{}, Confidence: r.confidence(g)}
	if r.family >= 0 {
		f := &v.families[r.family]
		m.Family, m.Name, m.Class, m.Generic = f.id, f.name, f.class, f.generic
		m.Traits = append(m.Traits, f.traits...)
		m.Keys = append(m.Keys, f.id)
	}
	m.Traits = v.traits(g, m.Class, m.Traits, r)
	if r.family < 0 {
		m.Name = v.stuffName(g)
	}
	if v.explains {
		m.Why = v.why(g, r)
		if r.family < 0 {
			m.Near = append(m.Near, v.mayBe(g, m.Traits)...)
		}
	}
	m.Keys = append(m.Keys, m.Traits...)
	return m, m.Family != "" || len(m.Traits) > 0
}

// traits adds what the words say of how the thing is made to what its family
// has by itself, and drops what they deny.
func (v *Vocabulary) traits(g *group, class string, have []string, r result) []string {
	out := slices.Clone(have)
	var drop []string
	for _, c := range g.order {
		t := &v.terms[c]
		if t.kind == stuff && r.family >= 0 && len(t.on) == 0 || !t.suits(class, have) && r.family >= 0 {
			continue
		}
		if t.kind == way && r.family < 0 && len(t.on) > 0 && !t.alone && !t.grade && !t.suits(class, out) {
			continue
		}
		drop = append(drop, t.drop...)
		out = append(out, t.add...)
	}
	for _, c := range g.denied {
		drop = append(drop, v.terms[c].add...)
	}
	seen := map[string]bool{}
	return slices.DeleteFunc(out, func(t string) bool {
		again := seen[t]
		seen[t] = true
		return again || slices.Contains(drop, t)
	})
}

func (v *Vocabulary) stuffName(g *group) string {
	for _, c := range g.order {
		if t := &v.terms[c]; t.kind != head && len(t.add) > 0 {
			return t.name
		}
	}
	return ""
}
