package schedule

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// usual writes heading words as the vocabulary does ("thick" for "thickness"), and
// as one those that a hyphen parts ("un-covered").
func (h *headings) usual(words []string) []string {
	var out []string
	for i := 0; i < len(words); i++ {
		w := words[i]
		if i+1 < len(words) && h.same[w+"-"+words[i+1]] != "" {
			out = append(out, h.same[w+"-"+words[i+1]])
			i++
			continue
		}
		if usual := cmp.Or(h.same[w], h.short[w]); usual != "" {
			w = usual
		}
		out = append(out, w)
	}
	return out
}

// headingWords cuts a heading to lower-case words; underscores, slashes, points and
// the capitals of "CoverDate" part words.
func headingWords(text string) []string {
	return strings.FieldsFunc(strings.ToLower(partCamelCase(text)), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	})
}

// numberAfter is the sign for numbers after the word for what has them: "Sheet #".
var numberAfter = regexp.MustCompile(`(\pL) ?#(?:\s|$)`)

// partCamelCase puts a space before each capital that follows three small letters.
func partCamelCase(text string) string {
	var out strings.Builder
	from, small := 0, 0
	for i, r := range text {
		if small >= 3 && unicode.IsUpper(r) {
			out.WriteString(text[from:i])
			out.WriteByte(' ')
			from = i
		}
		if small++; !unicode.IsLower(r) {
			small = 0
		}
	}
	if from == 0 {
		return text
	}
	out.WriteString(text[from:])
	return out.String()
}

// asked gives the words of a heading that asks without those that only ask: "What
// is it stuck to?" is about "stuck to"; "" where that leaves nothing or all.
func (h *headings) asked(text string) string {
	all := headingWords(text)
	var kept []string
	for i, w := range all {
		if asks := h.askers[w] || w == "s" && i > 0 && h.askers[all[i-1]]; !asks { // "what's"
			kept = append(kept, w)
		}
	}
	if len(kept) == len(all) || !slices.ContainsFunc(kept, func(w string) bool { return !h.bare[w] && !h.filler[w] }) {
		return ""
	}
	return strings.Join(kept, " ")
}

// askedWeight is what the words of a question count without those that only ask.
const askedWeight = 0.97

// isYear holds for a year of the dates below a heading.
func isYear(word string) bool { return yearWord.MatchString(word) }

var yearWord = regexp.MustCompile(`^20\d\d$`)

// partWeight is what a part of a heading counts against the whole of it; a later
// part counts less.
const partWeight = 0.42

var partMarks = regexp.MustCompile(`\s*(?:[/;,&+|]|\s[-–—]\s|\band\b|\bor\b)\s*`)

// headingParts lists what a heading names beside one another: "goes on / shape it
// is in"; nil where it names one thing.
func headingParts(text string) []string {
	parts := partMarks.Split(parenthesis.ReplaceAllString(strings.ToLower(text), " "), -1)
	if len(parts) < 2 {
		return nil
	}
	return slices.DeleteFunc(parts, func(p string) bool { return len(p) < minPart }) // "cfm/sf"
}

// namesMore holds for a heading of several parts, of which one does not stand for the slot:
// "Primer / remarks".
func (h *headings) namesMore(text, slot string) bool {
	parts := headingParts(text)
	return len(parts) > 1 && slices.ContainsFunc(parts, func(part string) bool {
		return !slices.ContainsFunc(h.match(part), func(g guess) bool { return g.slot == slot })
	})
}

// names holds for a heading of which one part stands for the slot.
func (h *headings) names(text, slot string) bool {
	return slices.ContainsFunc(partMarks.Split(text, -1), func(part string) bool {
		return slices.ContainsFunc(h.match(part), func(g guess) bool { return g.slot == slot && g.score >= 1 })
	})
}

// goesFirst holds for a heading that names first what goes with the product, and
// then what it is kept from: "works with / keep away from".
func (h *headings) goesFirst(text string) bool {
	parts := headingParts(text)
	if len(parts) == 0 {
		return false
	}
	for _, g := range h.match(parts[0]) {
		if g.slot == "suits" && g.score >= 1 {
			return true
		}
	}
	return false
}

// dated lists the dates that a group names, where the heading below it says only
// that a date stands there: "Covered: date".
func (h *headings) dated(group, sub string) []guess {
	if slices.ContainsFunc(headingWords(sub), func(w string) bool { return !h.bare[w] }) {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(h.match(group)), func(g guess) bool { return h.bySlot[g.slot] == nil || h.bySlot[g.slot].kind != "date" })
}

// onlyOthers holds for a heading that ends with others and tells of nothing else that
// is known ("metals + others"): those of the heading above it, where there is one.
func onlyOthers(sub string, best map[string]guess) bool {
	_, remark := best["remark"]
	return remark && len(best) == 1 && lastWord(sub) == "other"
}

// endsInRemarks holds for a heading whose last word is one for remarks, whoever makes
// them: "Shop notes", "Consultant's remarks". Before that stands a word that tells.
func (h *headings) endsInRemarks(sub string) bool {
	words := h.usual(headingWords(parenthesis.ReplaceAllString(sub, " ")))
	if n := len(words) - 1; n > 0 && n < mostOfRemarks && h.remarks[words[n]] {
		return h.telling(words[:n]) > 0
	}
	return false
}

// mostOfRemarks is how many words may tell whose remarks stand under a heading; more
// are a sentence.
const mostOfRemarks = 4

// minPart is how long a part of a heading is that names a thing of its own.
const minPart = 3

// begins tells whether words begin with a phrase; a plural s is the same word
// but not exact.
func begins(words, phrase []string) (exact, ok bool) {
	if len(phrase) > len(words) {
		return false, false
	}
	exact = true
	for i, p := range phrase {
		if singular(words[i]) != singular(p) {
			return false, false
		}
		exact = exact && words[i] == p
	}
	return exact, true
}

// holdsWords tells whether a phrase stands among words.
func holdsWords(words, phrase []string) bool {
	for i := range words {
		if _, ok := begins(words[i:], phrase); ok {
			return true
		}
	}
	return false
}

// holdsAny tells whether one of the phrases stands among words.
func holdsAny(words, phrases []string) bool {
	return slices.ContainsFunc(phrases, func(p string) bool { return holdsWords(words, strings.Fields(p)) })
}

// beginsAny tells whether words begin with one of the phrases.
func beginsAny(words, phrases []string) bool {
	return slices.ContainsFunc(phrases, func(p string) bool {
		_, ok := begins(words, strings.Fields(p))
		return ok
	})
}

// headingText gives the merged group heading over a column, its own heading,
// and a unit that stands in a row of its own below.
func headingText(s *workbook.Sheet, row, n, col int, units bool) (group, sub, unit string) {
	var parts []string
	for i := range n {
		t := strings.Join(strings.Fields(text(s, row+i, col)), " ")
		switch {
		case t == "" || slices.Contains(parts, t):
		case units && i == n-1 && len(parts) > 0:
			unit = t
		default:
			parts = append(parts, t)
		}
	}
	if len(parts) == 0 {
		return "", "", unit
	}
	return strings.Join(parts[:len(parts)-1], " "), parts[len(parts)-1], unit
}

// headedByOthers holds for a column with no heading of its own, under one that is
// merged over its neighbors.
func headedByOthers(s *workbook.Sheet, row, n, col int) bool {
	for i := range n {
		if c, ok := s.At(row+i, col); ok && !c.Merged && strings.TrimSpace(c.Value) != "" {
			return false
		}
	}
	return true
}

func columnEmpty(s *workbook.Sheet, from, col int) bool {
	for row := from; row <= min(s.MaxRow, from+200); row++ {
		if text(s, row, col) != "" {
			return false
		}
	}
	return true
}
