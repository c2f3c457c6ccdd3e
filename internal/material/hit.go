package material

import (
	"slices"
	"strings"
)

// hit is a phrase found in the text.
type hit struct {
	sense       *sense
	first, last int
	deny        bool
	words       string
}

// hits lists the phrases of a text, longest first at each place.
func (v *Vocabulary) hits(text string, toks []token) []hit {
	var out []hit
	inPhrase := func(j int) bool {
		gap := text[toks[j-1].end:toks[j].start]
		return !strings.ContainsAny(gap, ",;:|()\n\t") || strings.TrimSpace(gap) == "," && isDesignation(toks[j-1].low)
	}
	for i := 0; i < len(toks); {
		s, n := v.longest(toks, i, inPhrase)
		if n == 0 {
			i++
			continue
		}
		if v.outside(text, toks, i+n) {
			i += n
			continue
		}
		h := hit{sense: s, first: i, last: i + n - 1, words: text[toks[i].start:toks[i+n-1].end], deny: toks[i].non}
		h.deny = h.deny || denies(text, toks, i+n) || i > 0 && (toks[i-1].low == "non" || v.denials[toks[i-1].low] && v.saysWay(s) && strings.Trim(text[toks[i-1].end:toks[i].start], " -") == "")
		out = append(out, h)
		i += n
	}
	return out
}

// isDesignation holds for the number of a standard ("C578"), which a comma may
// part from its type.
func isDesignation(low string) bool {
	letters := 0
	for letters < len(low) && low[letters] >= 'a' && low[letters] <= 'z' {
		letters++
	}
	return letters > 0 && letters < 3 && len(low) >= letters+2 && strings.Trim(low[letters:], "0123456789") == ""
}

// saysWay: the phrase tells how a thing is made and names none. "No solvent" is
// a property; "no EPDM" is another material, and whether it is there is told by
// the clause.
func (v *Vocabulary) saysWay(s *sense) bool {
	return len(s.families) == 0 && !slices.ContainsFunc(s.terms, func(t int) bool { return v.terms[t].kind != way })
}

// outside holds where the next word makes the words name what a thing gets on
// with and not the thing ("silicone-compatible tape", "oil-resistant").
func (v *Vocabulary) outside(text string, toks []token, next int) bool {
	return next < len(toks) && v.outsiders[toks[next].low] && strings.Trim(text[toks[next-1].end:toks[next].start], "- ") == ""
}

// denies holds for "-free" after a word.
func denies(text string, toks []token, next int) bool {
	return next < len(toks) && toks[next].low == "free" && strings.TrimLeft(text[toks[next-1].end:toks[next].start], "- ‐‑–") == ""
}
