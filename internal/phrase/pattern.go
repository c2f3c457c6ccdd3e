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

// maxExpansions keeps a mistyped pattern from filling the memory.
const maxExpansions = 2000

// matcher finds many patterns at once in a tree of words.
type matcher struct{ root node }

type node struct {
	next map[string]*node
	stem map[string]*node
	num  *node
	gap  *node
	out  []int
}

// hit is one pattern found: the id it stands for and the tokens [from, to).
type hit struct {
	id       int
	from, to int
}

func newMatcher() *matcher { return &matcher{} }

// add makes the matcher report id for the pattern.
func (m *matcher) add(id int, pattern string) error {
	p := &patternParser{rest: strings.ToLower(pattern)}
	lines, err := p.sequence(0)
	if err != nil {
		return fmt.Errorf("pattern %q: %w", pattern, err)
	}
	for _, line := range lines {
		if len(line) == 0 || line[0] == ".." {
			return fmt.Errorf("pattern %q: may match nothing or start with a gap", pattern)
		}
		n := &m.root
		for _, w := range line {
			n = n.child(w)
		}
		n.out = append(n.out, id)
	}
	return nil
}

func (n *node) child(w string) *node {
	into := &n.next
	switch {
	case w == "#":
		if n.num == nil {
			n.num = &node{}
		}
		return n.num
	case w == "..":
		if n.gap == nil {
			n.gap = &node{}
		}
		return n.gap
	case strings.HasSuffix(w, "*"):
		into, w = &n.stem, strings.TrimSuffix(w, "*")
	}
	if *into == nil {
		*into = map[string]*node{}
	}
	if (*into)[w] == nil {
		(*into)[w] = &node{}
	}
	return (*into)[w]
}

// find reports every pattern in the tokens, by start and then by length.
func (m *matcher) find(toks []token) []hit {
	var hits []hit
	for i := range toks {
		hits = m.root.walk(toks, i, i, hits)
	}
	return hits
}

func (n *node) walk(toks []token, from, at int, hits []hit) []hit {
	for _, id := range n.out {
		hits = keepLongest(hits, hit{id, from, at})
	}
	if at < len(toks) {
		t := &toks[at]
		if c := n.next[t.low]; c != nil {
			hits = c.walk(toks, from, at+1, hits)
		}
		if n.num != nil && t.kind == number {
			hits = n.num.walk(toks, from, at+1, hits)
		}
		if n.stem != nil && t.kind == word {
			for l := 2; l <= len(t.low); l++ {
				if c := n.stem[t.low[:l]]; c != nil {
					hits = c.walk(toks, from, at+1, hits)
				}
			}
		}
	}
	if n.gap == nil {
		return hits
	}
	for k := 0; k <= gapWidth; k++ {
		hits = n.gap.walk(toks, from, at+k, hits)
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
// abbreviations are left out, the dots that end a sentence stay.
func (r *Reader) view(toks []token) []token {
	out := make([]token, 0, len(toks))
	for i, t := range toks {
		if t.kind == sign && (t.low == "-" && inWord(toks, i) || t.low == "." && !r.ends(toks, i)) {
			continue
		}
		out = append(out, t)
	}
	return out
}

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

// sequence expands the pattern up to the closing sign (0 for the end) into
// plain lines of words.
func (p *patternParser) sequence(closing byte) ([][]string, error) {
	var all [][]string
	lines := [][]string{nil}
	for {
		p.rest = strings.TrimLeft(p.rest, " -")
		if p.rest == "" {
			if closing != 0 {
				return nil, errOpen
			}
			return append(all, lines...), nil
		}
		c := p.rest[0]
		if c == closing || c == '|' {
			p.rest = p.rest[1:]
			all = append(all, lines...)
			if c == closing {
				return all, nil
			}
			lines = [][]string{nil}
			continue
		}
		options, err := p.element(c)
		if err != nil {
			return nil, err
		}
		if lines = cross(lines, options); len(lines) > maxExpansions {
			return nil, errors.New("too many variants")
		}
	}
}

func (p *patternParser) element(c byte) ([][]string, error) {
	switch c {
	case '(':
		p.rest = p.rest[1:]
		return p.sequence(')')
	case '[':
		p.rest = p.rest[1:]
		options, err := p.sequence(']')
		return append(options, nil), err
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
	if w == ".." || strings.HasSuffix(w, "*") || w == "#" {
		return [][]string{{w}}, nil
	}
	var line []string
	for _, t := range scan(w) {
		if t.low != "-" && t.low != "." || len(w) == 1 {
			line = append(line, t.low)
		}
	}
	return [][]string{line}, nil
}

func cross(lines, options [][]string) [][]string {
	out := make([][]string, 0, len(lines)*len(options))
	for _, l := range lines {
		for _, o := range options {
			out = append(out, append(l[:len(l):len(l)], o...))
		}
	}
	return out
}
