package material

import (
	"strings"
	"unicode"
)

// isName holds where the next word, or the one after it, makes the words a
// proper name, a trade or a color: "Copper Street", "steel erector".
func (v *Vocabulary) isName(text string, toks []token, h hit) bool {
	for j := h.last + 1; j < len(toks) && j <= h.last+2; j++ {
		if strings.Trim(text[toks[j-1].end:toks[j].start], " ") != "" {
			return false
		}
		if v.nameWords[toks[j].low] {
			return j == h.last+1 || toks[j-1].upper && toks[j-1].key < 0
		}
	}
	return false
}

// gap says how the words before and after part.
type gap byte

const (
	tight   gap = iota // the words of one name
	loose              // a word or two that are not known, a slash or a closing bracket
	label              // a colon after what a thing is
	bracket            // an opening bracket
	comma              // a comma or dash
	far                // a comma and a word or two that are not known
	with               // "with": what follows may be a part of it
	wall               // the end of a clause, or a word that parts
)

func (v *Vocabulary) gap(text string, toks []token, a, b hit, breaks map[string]bool) gap {
	g := tight
	unknown := 0
	for j := a.last; j < b.first; j++ {
		if j > a.last {
			switch low := toks[j].low; {
			case v.soft[low]:
				g = max(g, with)
			case breaks[low]:
				return wall
			case !v.glue[low] && !v.breaks[low] && len(low) > 1 && !unicode.IsDigit(rune(low[0])):
				unknown++
			}
		}
		g = max(g, v.sign(text, &toks[j], &toks[j+1]))
	}
	switch {
	case unknown > 2 || unknown > 0 && g == with:
		return wall
	case unknown > 0 && g == comma:
		return far
	case unknown > 0:
		return max(g, loose)
	}
	return g
}

// sign reads the signs between two tokens.
func (v *Vocabulary) sign(text string, before, after *token) gap {
	s := text[before.end:after.start]
	switch {
	case strings.ContainsAny(s, ";|\n→"):
		return wall
	case strings.ContainsAny(s, ",—–") || strings.Contains(s, " - "):
		return comma
	case strings.ContainsAny(s, "(["):
		return bracket
	case strings.Contains(s, ":"):
		return label
	case strings.ContainsAny(s, ")]/"):
		return loose
	case strings.Contains(s, ". ") && after.upper && !v.shortened(text[before.start:before.end], before.low):
		return wall
	}
	return tight
}

// shortened holds for abbreviations, whose point ends no sentence. Short forms
// in capitals ("SAF", "PVC") take no point.
func (v *Vocabulary) shortened(word, low string) bool {
	if _, ok := v.spelling[low]; ok {
		return true
	}
	return word != strings.ToUpper(word) && (len(low) < 4 || v.glue[low])
}
