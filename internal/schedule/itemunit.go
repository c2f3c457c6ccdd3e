package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// itemUnit is the unit at the end of what a row of criteria is about: "VOC, g/L",
// "Permeance (perm)".
var itemUnit = regexp.MustCompile(`^(\pL[^,()\[]*?)(?:,\s*|\s*[(\[])(?:in\s+)?([^,()\[\]]+?)[)\]]?$`)

// bareBound is a bare figure that ends what is asked of one thing: "primers ≤ 350.",
// "sealants 250;".
var bareBound = regexp.MustCompile(`(\d)(\s*(?:[;,]\s|\.(?:\s|$)|$)|\s+(?:max|min)\b)`)

// withItemUnit writes the unit of the item of a row "Item | Requirement" beside the bare
// figures of what is asked.
func (r *reader) withItemUnit(words []string) []string {
	if len(words) < 2 {
		return words
	}
	m := itemUnit.FindStringSubmatch(words[0])
	if m == nil {
		return words
	}
	unit := strings.TrimSpace(m[2])
	one := r.phrase.Quantities("1 "+unit, "")
	if len(one) != 1 || one[0].Unit == "" || one[0].End != len("1 "+unit) {
		return words
	}
	out := slices.Clone(words)
	out[1] = bareBound.ReplaceAllString(words[1], "$1 "+strings.ReplaceAll(unit, "$", "$$")+"$2")
	return out
}
