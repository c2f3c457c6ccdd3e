package material

import (
	"strings"

	"github.com/hbollon/go-edlib"
)

// nearest is how many families are given for words that name none.
const nearest = 3

// maxNear is the longest text, in bytes, that is compared with all words.
const maxNear = 80

// alike compares two texts word by word, 0..1: each word of the shorter finds
// its best partner, by the share of letters that need not change. Texts that
// cannot reach least give 0.
func alike(a, b string, least float64) float64 {
	aw, bw := strings.Fields(a), strings.Fields(b)
	if len(aw) < len(bw) {
		aw, bw = bw, aw
	}
	if len(bw) == 0 || float64(len(bw)) < least*float64(len(aw)) {
		return 0
	}
	sum := 0.0
	for _, w := range bw {
		best := 0.0
		for _, o := range aw {
			if float64(min(len(w), len(o))) > best*float64(max(len(w), len(o))) {
				best = max(best, similarity(w, o))
			}
		}
		sum += best
	}
	return sum / float64(len(aw))
}

func similarity(a, b string) float64 {
	longest := max(len([]rune(a)), len([]rune(b)))
	return 1 - float64(edlib.OSADamerauLevenshteinDistance(a, b))/float64(longest)
}
