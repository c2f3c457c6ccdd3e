package phrase

import (
	"errors"
	"fmt"
	"strings"
)

// A pattern is a line of words as people write them: "a b" in sequence, "(a|b)"
// one of, "[a]" may be left out, "clamp*" words that start so, "#" any number,
// ".." up to four words of the same clause. Hyphens count as spaces.
const gapWidth = 4

// matcher finds many patterns at once. Each pattern is a small graph of words;
// an index of first words tells which to try.
type matcher struct {
	first map[string][]*node // by first word
	stems map[string][]*node // by how the first word starts
	nums  []*node            // patterns that start with a number
}

// node is a place in a pattern: the words that lead on, the places that are as
// good as this one, and the id of the pattern that ends here, counted from one.
type node struct {
	edges []edge
	same  []*node
	out   int
}

type edge struct {
	word string // "#" any number, ".." a gap
	stem bool
	to   *node
}

// hit is one pattern found: the id it stands for and the tokens [from, to).
type hit struct {
	id       int
	from, to int
}

func newMatcher() *matcher {
	return &matcher{first: map[string][]*node{}, stems: map[string][]*node{}}
}

// add makes the matcher report id for the pattern.
func (m *matcher) add(id int, pattern string) error {
	p := &patternParser{rest: strings.ToLower(pattern)}
	start := &node{}
	end, err := p.sequence(start, 0)
	if err != nil {
		return fmt.Errorf("pattern %q: %w", pattern, err)
	}
	end.out = id + 1
	if err := m.enter(start); err != nil {
		return fmt.Errorf("pattern %q: %w", pattern, err)
	}
	return nil
}

// enter files the first words of a pattern.
func (m *matcher) enter(n *node) error {
	if n.out > 0 {
		return errors.New("may match nothing")
	}
	for _, e := range n.edges {
		switch {
		case e.word == "..":
			return errors.New("starts with a gap")
		case e.word == "#":
			m.nums = append(m.nums, e.to)
		case e.stem:
			m.stems[e.word] = append(m.stems[e.word], e.to)
		default:
			m.first[e.word] = append(m.first[e.word], e.to)
		}
	}
	for _, s := range n.same {
		if err := m.enter(s); err != nil {
			return err
		}
	}
	return nil
}

// find reports every pattern in the tokens, by start.
func (m *matcher) find(toks []token) []hit {
	var hits []hit
	for i := range toks {
		hits = m.at(toks, i, hits)
	}
	return hits
}

// at adds the patterns that start at token i.
func (m *matcher) at(toks []token, i int, hits []hit) []hit {
	if i >= len(toks) {
		return hits
	}
	t := &toks[i]
	for _, n := range m.first[t.low] {
		hits = n.walk(toks, i, i+1, hits)
	}
	if t.kind == number && !ofTag(toks, i) {
		for _, n := range m.nums {
			hits = n.walk(toks, i, i+1, hits)
		}
	}
	if len(m.stems) > 0 && t.kind == word {
		for l := 2; l <= len(t.low) && l <= longestStem; l++ {
			for _, n := range m.stems[t.low[:l]] {
				hits = n.walk(toks, i, i+1, hits)
			}
		}
	}
	return hits
}

// ofTag holds for the number of a tag: the 4 of "RF-4 above" counts nothing.
func ofTag(toks []token, i int) bool {
	return i > 1 && toks[i].glued && toks[i-1].low == "-" && toks[i-1].glued && toks[i-2].kind == word
}

// longestStem is the longest start of a word that is looked up.
const longestStem = 16

func (n *node) walk(toks []token, from, at int, hits []hit) []hit {
	if n.out > 0 {
		hits = keepLongest(hits, hit{n.out - 1, from, at})
	}
	for _, s := range n.same {
		hits = s.walk(toks, from, at, hits)
	}
	for _, e := range n.edges {
		if e.word == ".." {
			hits = e.skip(toks, from, at, hits)
		} else if at < len(toks) && e.takes(&toks[at]) {
			hits = e.to.walk(toks, from, at+1, hits)
		}
	}
	return hits
}

func (e *edge) takes(t *token) bool {
	switch {
	case e.word == "#":
		return t.kind == number
	case e.stem:
		return t.kind == word && strings.HasPrefix(t.low, e.word)
	}
	return t.low == e.word
}

// skip goes on after a gap of up to gapWidth tokens.
func (e *edge) skip(toks []token, from, at int, hits []hit) []hit {
	for k := 0; k <= gapWidth; k++ {
		hits = e.to.walk(toks, from, at+k, hits)
		if at+k >= len(toks) || stops(toks[at+k]) {
			break
		}
	}
	return hits
}

// keepLongest keeps one hit an id and start.
func keepLongest(hits []hit, h hit) []hit {
	for i := len(hits) - 1; i >= 0 && hits[i].from == h.from; i-- {
		if hits[i].id == h.id {
			hits[i].to = max(hits[i].to, h.to)
			return hits
		}
	}
	return append(hits, h)
}

// stops holds for signs that a gap does not reach over.
func stops(t token) bool {
	if t.kind != sign {
		return false
	}
	switch t.low {
	case ".", ";", ",", ":", "(", ")", "\n", "[", "]", "!", "?":
		return true
	}
	return false
}

// view is what patterns are matched on: hyphens inside words and the dots of
// abbreviations are left out, the dots that end a sentence stay; a mixed number is one
// number, the signs for inches and feet are words, words cut short are whole, and the
// half of the day is one word: 2-1/2" lwr is "2-1/2 in lower".
func (r *Reader) view(toks []token) []token {
	out := make([]token, 0, len(toks))
	for i := 0; i < len(toks); i++ {
		t := toks[i]
		if t.kind == sign && (t.low == "-" && inWord(toks, i) || t.low == "." && !r.ends(toks, i)) {
			continue
		}
		if half := halfDay(toks, i); half != "" {
			t.low, t.End = half, toks[i+2].End
			i += 2
		} else if n := mixed(toks[i:]); n > 1 {
			t.kind, t.End = number, toks[i+n-1].End
			i += n - 1
		} else if unit := unitSigns[t.low]; unit != "" && t.kind == sign && t.glued && i > 0 && toks[i-1].kind != sign && toks[i-1].kind != word {
			t.kind, t.low = word, unit
		} else if whole := r.lang.short[t.low]; whole != "" && t.kind == word && !(t.upper && len(t.low) < 3) { // "HD" is none
			t.low = whole
		}
		out = append(out, t)
	}
	return out
}

// halfDay is the half of the day behind an hour that is written with points, as one
// word: "7 a.m.".
func halfDay(toks []token, i int) string {
	if i == 0 || i+2 >= len(toks) || toks[i-1].kind != number || toks[i+1].low != "." || toks[i+2].low != "m" || !toks[i+1].glued || !toks[i+2].glued {
		return ""
	}
	return map[string]string{"a": "am", "p": "pm"}[toks[i].low]
}

// unitSigns are read as the words for them.
var unitSigns = map[string]string{"\"": "in", "'": "ft"}

// mixed counts the tokens of a fraction, or of a number with one: 3/8, 2-1/2, 2 1/2, 2½.
func mixed(toks []token) int {
	is := func(i int, low string) bool { return i < len(toks) && toks[i].low == low }
	part := func(i int) bool {
		return i+2 < len(toks) && toks[i].kind == number && is(i+1, "/") && toks[i+2].kind == number &&
			parts[toks[i+2].low] && len(toks[i].low) <= 2 && toks[i+2].glued && !is(i+3, "/")
	}
	switch {
	case len(toks) == 0 || toks[0].kind != number:
		return 0
	case part(0):
		return 3
	case len(toks) > 1 && toks[1].kind == fraction:
		return 2
	case is(1, "-") && toks[1].glued && part(2):
		return 5
	case part(1):
		return 4
	}
	return 0
}

// parts are what rulers and gauges divide an inch into.
var parts = map[string]bool{"2": true, "3": true, "4": true, "8": true, "16": true, "32": true, "64": true}

// inWord holds for a hyphen with a word right before and right after it.
func inWord(toks []token, i int) bool {
	return i > 0 && i+1 < len(toks) && toks[i].glued && toks[i+1].glued &&
		toks[i-1].kind != sign && toks[i+1].kind == word
}

// ends holds for a dot that ends a sentence: at the end of the text, or before
// a space and a capital, and not after an abbreviation.
func (r *Reader) ends(toks []token, i int) bool {
	if i+1 == len(toks) || toks[i+1].low == "\n" {
		return true
	}
	if toks[i+1].glued || toks[i+1].kind == word && !toks[i+1].upper {
		return false
	}
	if i == 0 || !toks[i].glued || toks[i-1].kind != word {
		return true
	}
	return !r.lang.abbreviations[toks[i-1].low]
}

var errOpen = errors.New("bracket left open")

type patternParser struct{ rest string }

// sequence reads the pattern up to the closing sign (0 for the end) into the
// graph that starts at from, and returns where it ends.
func (p *patternParser) sequence(from *node, closing byte) (*node, error) {
	end, here := &node{}, from
	for {
		p.rest = strings.TrimLeft(p.rest, " -")
		if p.rest == "" && closing != 0 {
			return nil, errOpen
		}
		if p.rest == "" || p.rest[0] == closing || p.rest[0] == '|' {
			here.same = append(here.same, end)
			if p.rest == "" {
				return end, nil
			}
			c := p.rest[0]
			p.rest = p.rest[1:]
			if c == closing {
				return end, nil
			}
			here = from
			continue
		}
		var err error
		if here, err = p.element(here); err != nil {
			return nil, err
		}
	}
}

func (p *patternParser) element(from *node) (*node, error) {
	c := p.rest[0]
	switch c {
	case '(':
		p.rest = p.rest[1:]
		return p.sequence(from, ')')
	case '[':
		p.rest = p.rest[1:]
		end, err := p.sequence(from, ']')
		from.same = append(from.same, end)
		return end, err
	}
	end := strings.IndexAny(p.rest, " ()[]|")
	if end < 0 {
		end = len(p.rest)
	}
	if end == 0 {
		return nil, fmt.Errorf("stray %q", c)
	}
	w := p.rest[:end]
	p.rest = p.rest[end:]
	if stem, ok := strings.CutSuffix(w, "*"); ok {
		return from.then(edge{word: stem, stem: true}), nil
	}
	if w == ".." || w == "#" {
		return from.then(edge{word: w}), nil
	}
	if isLetters(w) {
		return from.then(edge{word: w}), nil
	}
	for _, t := range scan(w) {
		if t.low != "-" && t.low != "." || len(w) == 1 {
			from = from.then(edge{word: t.low})
		}
	}
	return from, nil
}

// isLetters holds for most words of patterns, which are in small letters by now
// and one token each.
func isLetters(w string) bool {
	for i := range len(w) {
		if w[i] < 'a' || w[i] > 'z' {
			return false
		}
	}
	return true
}

func (n *node) then(e edge) *node {
	e.to = &node{}
	n.edges = append(n.edges, e)
	return e.to
}
