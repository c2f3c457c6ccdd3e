package material

import (
	"strings"
	"unicode"
)

// isName holds where the next word, or the one after it, makes the words a
// proper name, a trade or a color: "Copper Street", "steel erector".
func (v *Vocabulary) isName(text string, toks []token, h hit) bool {
	if v.isColor(text, toks, h) || v.nameLeads[low(toks, h.first-1)] || v.nameLeads[low(toks, h.first-2)] {
		return true
	}
	for j := h.last + 1; j < len(toks) && j <= h.last+2; j++ {
		if strings.Trim(text[toks[j-1].end:toks[j].start], " ") != "" {
			return false
		}
		if v.nameWords[toks[j].low] {
			if j+1 < len(toks) && !toks[j].upper && v.breaks[toks[j+1].low] {
				return false // "rain off the zinc falls on the sill"
			}
			return j == h.last+1 || toks[j-1].upper && toks[j-1].key < 0
		}
	}
	return false
}

func low(toks []token, i int) string {
	if i < 0 {
		return ""
	}
	return toks[i].low
}

// isColor holds where the words stand alone in a list that a color begins ("in
// white, bronze and limestone").
func (v *Vocabulary) isColor(text string, toks []token, h hit) bool {
	if next := h.last + 1; next < len(toks) && strings.TrimSpace(text[toks[h.last].end:toks[next].start]) == "" && toks[next].key >= 0 && !v.breaks[toks[next].low] {
		return false
	}
	listed := 0
	for j := h.first - 1; j >= 0; j-- {
		between := strings.TrimSpace(text[toks[j].end:toks[j+1].start])
		switch {
		case v.colorLeads[toks[j].low] && between == "" || v.colorLeads[toks[j].low] && between == ":":
			return listed > 0
		case between != "" && between != ",":
			return false
		case v.colors[toks[j].low]:
			listed++
		case toks[j].low != "and" && toks[j].low != "or" && between != "," && toks[j+1].low != "and" && toks[j+1].low != "or":
			return false
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
	unknown, cited := 0, false
	for j := a.last; j < b.first; j++ {
		if j > a.last {
			switch low := toks[j].low; {
			case v.soft[low], breaks[low] && v.layered[toks[j-1].low]:
				if unknown > 0 {
					return wall
				}
				g = max(g, with)
			case v.cites[low] && b.sense.standard:
				cited = true
			case breaks[low] && !hyphened(text, &toks[j]), v.ofNumber[low] && !isDigit(toks[j-1].low[0]):
				return wall
			case !v.glue[low] && !v.breaks[low] && len(low) > 1 && !unicode.IsDigit(rune(low[0])):
				unknown++
			}
		}
		g = max(g, v.sign(text, &toks[j], &toks[j+1]))
	}
	switch {
	case g > tight && v.apart(toks, b):
		return wall
	case unknown > 2 || unknown > 1 && g == with:
		return wall
	case unknown > 0 && g == comma:
		return far
	case unknown > 0:
		return max(g, loose)
	case cited:
		return comma
	}
	return g
}

// apart holds where the words b begin are said to lie between what came before
// and something else ("PVC sheet, polyethylene film between"): no part of it.
func (v *Vocabulary) apart(toks []token, b hit) bool {
	for j := b.last + 1; j < len(toks) && j <= b.last+2; j++ {
		if v.partings[toks[j].low] {
			return true
		}
		if v.breaks[toks[j].low] {
			return false
		}
	}
	return false
}

// hyphened holds for the first part of an adjective ("under-slab"), which does
// not part what stands around it.
func hyphened(text string, t *token) bool {
	return t.end+1 < len(text) && text[t.end] == '-' && isASCIILetter(text[t.end+1])
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// sign reads the signs between two tokens.
func (v *Vocabulary) sign(text string, before, after *token) gap {
	s := text[before.end:after.start]
	switch {
	case strings.ContainsAny(s, ";|\n→@"):
		return wall
	case strings.ContainsAny(s, ",—–") || strings.Contains(s, " - "):
		return comma
	case strings.ContainsAny(s, "(["):
		return bracket
	case strings.Contains(s, ":"):
		return label
	case strings.ContainsAny(s, ")]/"):
		return loose
	case strings.Contains(s, ". ") && after.upper && !before.short && !v.shortened(text[before.start:before.end], before.low):
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
	if v.whole[low] {
		return false // "over rod. Precast ..."
	}
	return word != strings.ToUpper(word) && (len(low) < 4 || v.glue[low])
}
