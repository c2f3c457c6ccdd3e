package schedule

import (
	"slices"
	"strings"
)

// byHeadNoun reads the heading of a column of figures by the thing that it names first or
// last, where more words than known ones stand about it ("Lap of sheet onto the frame below
// (mm)"): its unit, or that of the cells, tells that the figures are of that.
func (r *reader) byHeadNoun(t *table, i int) (slot, why string) {
	c := &t.cols[i]
	text := c.own
	if text == "" {
		text = c.Heading
	}
	words := r.head.usual(headingWords(parenthesis.ReplaceAllString(text, " ")))
	if len(words) < 2 || r.head.denied(text) != "" {
		return "", ""
	}
	for _, noun := range r.head.nouns(words) {
		if r.head.telling(strings.Fields(noun)) == 0 {
			continue // a unit
		}
		for _, g := range r.head.match(noun) {
			s := r.head.bySlot[g.slot]
			if g.score < 1 || s == nil || !nounKinds[s.kind] || s.in != "" && s.in != t.kind || t.column(g.slot) > 0 {
				continue
			}
			if r.figuresUnder(t, i, s) {
				return g.slot, "its heading names \"" + noun + "\", and figures of that stand under it"
			}
		}
	}
	return "", ""
}

// nounKinds are the kinds of figures whose units tell them apart.
var nounKinds = map[string]bool{"length": true, "days": true, "vapor_permeance": true, "air_permeance": true, "temperature": true}

// nouns lists what a heading may be about: its first words, those before a word that ties them
// to others, and its last.
func (h *headings) nouns(words []string) []string {
	var out []string
	head := words
	if at := slices.IndexFunc(words, func(w string) bool { return h.ties[w] }); at > 0 {
		head = words[:at]
	}
	for n := min(len(head), 3); n > 0; n-- {
		out = append(out, strings.Join(head[len(head)-n:], " "))
	}
	return append(out, head[0])
}

// figuresUnder holds for a column of figures in a unit that its heading or its cells tell, of the
// kind of a slot.
func (r *reader) figuresUnder(t *table, i int, s *headingSlot) bool {
	if !r.mostly(t.stretch(), t.nums[i], s.kind) || r.mostly(t.stretch(), t.nums[i], "date") {
		return false
	}
	return r.unitIn(t.cols[i].Heading, s.kind, s.name) != "" || r.unitInColumn(t, t.nums[i], s.kind, s.name) != ""
}
