package schedule

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
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
		if usual := h.same[w]; usual != "" {
			w = usual
		}
		out = append(out, w)
	}
	return out
}

// headingWords cuts a heading to lower-case words; underscores, slashes and
// points part words.
func headingWords(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	})
}

// partWeight is what a part of a heading counts against the whole of it; a later
// part counts less.
const partWeight = 0.42

var partMarks = regexp.MustCompile(`\s*(?:[/;,&+|]|\band\b|\bor\b)\s*`)

// headingParts lists what a heading names beside one another: "goes on / shape it
// is in"; nil where it names one thing.
func headingParts(text string) []string {
	parts := partMarks.Split(parenthesis.ReplaceAllString(strings.ToLower(text), " "), -1)
	if len(parts) < 2 {
		return nil
	}
	return slices.DeleteFunc(parts, func(p string) bool { return len(p) < minPart }) // "cfm/sf"
}

// minPart is how long a part of a heading is that names a thing of its own.
const minPart = 4
