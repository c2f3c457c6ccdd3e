package regexp

import (
	"regexp/syntax"
	"strings"
	"unicode/utf8"
)

// needles are short texts, small letters among them, one of which is in every text that
// matches, in whatever case. Where an expression has none, any text may match.
type needles struct {
	words [][]string // by their first byte, without it
	list  [256]uint8 // of words, from 1 on, for a byte in either case
}

// foldedToASCII are the letters, for kelvin and the long s, that in any case are ASCII.
var foldedToASCII = []string{"\u212a", "\u017f"}

const (
	mostNeedles  = 200 // fewer than a byte can number
	mostOfAClass = 16  // characters of a class that are looked for one by one
)

func needlesOf(re *syntax.Regexp) *needles {
	found := sought(re)
	if len(found) == 0 || len(found) > mostNeedles {
		return nil
	}
	n := &needles{words: [][]string{nil}}
	for _, word := range append(found, foldedToASCII...) {
		first := word[0]
		if n.list[first] == 0 {
			n.list[first] = uint8(len(n.words))
			n.list[upper(first)] = n.list[first]
			n.words = append(n.words, nil)
		}
		at := n.list[first]
		n.words[at] = append(n.words[at], word[1:])
	}
	return n
}

// in holds for a text that has one of them.
func (n *needles) in(text string) bool {
	if n == nil {
		return true
	}
	for i := range len(text) {
		list := n.list[text[i]]
		if list == 0 {
			continue
		}
		for _, rest := range n.words[list] {
			if begins(text[i+1:], rest) {
				return true
			}
		}
	}
	return false
}

// begins holds for a text that begins with a word of small letters, in whatever case.
func begins(text, word string) bool {
	if len(text) < len(word) {
		return false
	}
	for i := range len(word) {
		if text[i] != word[i] && text[i] != upper(word[i]) {
			return false
		}
	}
	return true
}

func upper(b byte) byte {
	if 'a' <= b && b <= 'z' {
		return b - 'a' + 'A'
	}
	return b
}

// sought lists texts one of which every match of an expression has, none where none are
// known.
func sought(re *syntax.Regexp) []string {
	switch re.Op {
	case syntax.OpLiteral:
		return literal(re)
	case syntax.OpCharClass:
		return class(re.Rune)
	case syntax.OpCapture, syntax.OpPlus:
		return sought(re.Sub[0])
	case syntax.OpRepeat:
		if re.Min > 0 {
			return sought(re.Sub[0])
		}
	case syntax.OpConcat:
		var best []string
		for _, sub := range re.Sub {
			if one := sought(sub); rarer(one, best) {
				best = one
			}
		}
		return best
	case syntax.OpAlternate:
		var all []string
		for _, sub := range re.Sub {
			one := sought(sub)
			if len(one) == 0 {
				return nil
			}
			all = append(all, one...)
		}
		return all
	}
	return nil
}

// rarer holds for needles that are in fewer texts than others, as far as their lengths
// and their number tell.
func rarer(one, other []string) bool {
	if len(one) == 0 || len(other) == 0 {
		return len(one) > 0
	}
	a, b := shortest(one), shortest(other)
	return a > b || a == b && len(one) < len(other)
}

func shortest(words []string) int {
	n := len(words[0])
	for _, w := range words[1:] {
		n = min(n, len(w))
	}
	return n
}

// literal gives a fixed text; of one in any case, which may have signs that are no ASCII
// for its letters, its longest part without such.
func literal(re *syntax.Regexp) []string {
	text := string(re.Rune)
	if re.Flags&syntax.FoldCase == 0 {
		return []string{strings.Map(small, text)}
	}
	best := ""
	for _, part := range strings.FieldsFunc(text, func(r rune) bool { return r >= utf8.RuneSelf }) {
		if len(part) > len(best) {
			best = part
		}
	}
	if best == "" {
		return nil
	}
	return []string{strings.ToLower(best)}
}

// class gives the characters of a class of few.
func class(ranges []rune) []string {
	var out []string
	for i := 0; i < len(ranges); i += 2 {
		if int(ranges[i+1]-ranges[i])+len(out) >= mostOfAClass {
			return nil
		}
		for r := ranges[i]; r <= ranges[i+1]; r++ {
			out = append(out, string(small(r)))
		}
	}
	return out
}

func small(r rune) rune {
	if 'A' <= r && r <= 'Z' {
		return r - 'A' + 'a'
	}
	return r
}
