package phrase

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// unitData is the layout of knowledge/units.json.
type unitData struct {
	Soft       map[string]float64 `json:"soft"`
	PrefixNext []string           `json:"prefix_next"`
	Kinds      []struct {
		Kind  string  `json:"kind"`
		Unit  string  `json:"unit"`
		Units []*unit `json:"units"`
	} `json:"kinds"`
}

// unit is one unit of measure: inner value = figure*Factor + Offset.
type unit struct {
	ID        string   `json:"id"`
	Factor    float64  `json:"factor"`
	Offset    float64  `json:"offset"`
	Spellings []string `json:"spellings"`
	Prefix    []string `json:"prefix"` // spellings that stand before the figure
	NotBefore []string `json:"not_before"`
	Case      bool     `json:"case"`  // one-letter spelling as written
	Upper     bool     `json:"upper"` // one-letter spelling in upper case only
	Lower     bool     `json:"lower"` // and in lower case only
	Clock     *float64 `json:"clock"` // a time of day, hours to add
	kind      string
	notBefore map[string]bool
}

func (u *unit) inner(v float64) float64 {
	if u.Clock == nil {
		return v*u.Factor + u.Offset
	}
	if v == 12 {
		v = 0
	}
	return v + *u.Clock
}

// unitTable finds the longest unit at a place in a text.
type unitTable struct {
	root       unitNode
	byName     map[string]*unit
	prefixes   map[string]*unit
	prefixNext map[string]bool
	soft       map[string]float64 // share by which rounded twins of a kind may differ
}

type unitNode struct {
	next map[rune]*unitNode
	unit *unit
}

func newUnitTable(d unitData) (*unitTable, error) {
	t := &unitTable{byName: map[string]*unit{}, prefixes: map[string]*unit{}, prefixNext: set(d.PrefixNext), soft: d.Soft}
	for _, k := range d.Kinds {
		for _, u := range k.Units {
			u.kind, u.notBefore = k.Kind, set(u.NotBefore)
			if u.Factor == 0 {
				return nil, fmt.Errorf("unit %q has no factor", u.ID)
			}
			t.byName[fold(u.ID)] = u
			for _, s := range u.Spellings {
				if err := t.add(s, u); err != nil {
					return nil, err
				}
			}
			for _, p := range u.Prefix {
				t.prefixes[strings.Trim(p, " -")] = u
			}
		}
	}
	return t, nil
}

func (t *unitTable) add(spelling string, u *unit) error {
	n := &t.root
	for _, r := range fold(spelling) {
		if n.next == nil {
			n.next = map[rune]*unitNode{}
		}
		if n.next[r] == nil {
			n.next[r] = &unitNode{}
		}
		n = n.next[r]
	}
	if n.unit != nil && n.unit != u {
		return fmt.Errorf("spelling %q stands for %s and %s", spelling, n.unit.ID, u.ID)
	}
	n.unit = u
	t.byName[fold(spelling)] = u
	return nil
}

func fold(s string) string { return strings.Map(unitRune, strings.ReplaceAll(s, "^", "")) }

// unitRune gives the plain form of a sign inside a unit.
func unitRune(r rune) rune {
	switch r {
	case '·', '•', '⋅', '∙', '*', '×':
		return '.'
	case '′', '’', '‘':
		return '\''
	case '″', '”', '“':
		return '"'
	case 'º', '˚':
		return '°'
	case 'μ':
		return 'µ'
	case '[', '{':
		return '('
	case ']', '}':
		return ')'
	case '\u00a0', '\u2009', '\u202f', '\u200a', '\t':
		return ' '
	case '–', '‑', '‐':
		return '-'
	}
	if d := raised(r); d != 0 {
		return d
	}
	return unicode.ToLower(r)
}

// match finds the longest unit that starts at byte at; end is at if there is none.
func (t *unitTable) match(text string, at int) (u *unit, end int) {
	best, bestEnd := (*unit)(nil), at
	n := &t.root
	var before rune
	for i := at; i < len(text); {
		raw, size := utf8.DecodeRuneInString(text[i:])
		r := unitRune(raw)
		c := n.step(r)
		switch {
		case c != nil:
			n = c
		case n == &t.root || !skippable(r, before, text[i+size:]):
			return best, bestEnd
		}
		i, before = i+size, r
		if n.unit != nil && c != nil && r != ' ' && r != '-' && n.unit.stands(text, at, i) {
			best, bestEnd = n.unit, i
			if i < len(text) && text[i] == '.' && n.step('.') != nil && n.step('.').unit != nil {
				bestEnd = i + 1
			}
		}
	}
	return best, bestEnd
}

func (n *unitNode) step(r rune) *unitNode {
	if c := n.next[r]; c != nil {
		return c
	}
	if r != ' ' && r != '-' {
		return nil
	}
	if c := n.next['.']; c != nil && len(c.next) > 0 {
		return c
	}
	return nil
}

// skippable holds for signs that may stand inside any unit: the dot of an
// abbreviation, a caret, and spaces around a slash or bracket.
func skippable(r, before rune, rest string) bool {
	switch r {
	case '^':
		return true
	case '.':
		return unicode.IsLetter(before) && rest != "" && rest[0] != '.'
	case ' ':
		return before == '/' || before == '(' || before == ' ' || strings.HasPrefix(rest, "/")
	}
	return false
}

// stands holds if text[at:end] can be this unit, judged by what follows and,
// for one letter, by its case.
func (u *unit) stands(text string, at, end int) bool {
	after, _ := utf8.DecodeRuneInString(text[end:])
	last, _ := utf8.DecodeLastRuneInString(text[:end])
	if end < len(text) && (unicode.IsLetter(last) || unicode.IsDigit(last)) && (unicode.IsLetter(after) || unicode.IsDigit(after) || raised(after) != 0) {
		return false
	}
	if end-at == 1 && unicode.IsLetter(last) {
		c := rune(text[at])
		if u.Upper && !unicode.IsUpper(c) || (u.Lower || u.Case) && !unicode.IsLower(c) {
			return false
		}
		if end+1 < len(text) && (after == '-' && wordByte(text[end+1]) || (after == '&' || after == '/') && text[end+1] >= 'A') {
			return false
		}
	}
	return u.notBefore == nil || !unicode.IsLetter(last) || !u.notBefore[wordAfter(text, end)] && !(u.notBefore[aCode] && codeAfter(text[end:]))
}

// aCode stands among the words that a unit is not before for any code.
const aCode = "(code)"

// codeAfter holds for " S-1" after a word that may be a unit: "50 in S-1".
func codeAfter(text string) bool {
	rest := strings.TrimLeft(text, " ")
	upper := strings.TrimLeft(rest, "ABCDEFGHIJKLMNOPQRSTUVWXYZ")
	digits := strings.TrimPrefix(upper, "-")
	return rest != text && upper != rest && digits != "" && unicode.IsDigit(rune(digits[0]))
}

func wordByte(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9'
}

// wordAfter is the next word in lower case, "" if a sign comes first.
func wordAfter(text string, at int) string {
	for at < len(text) && text[at] == ' ' {
		at++
	}
	end := at
	for end < len(text) && (text[end] >= 'a' && text[end] <= 'z' || text[end] >= 'A' && text[end] <= 'Z') {
		end++
	}
	return strings.ToLower(text[at:end])
}
