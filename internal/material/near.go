package material

import (
	"strings"

	"github.com/hbollon/go-edlib"
)

// maxNear is the longest text, in bytes, that is compared with all words.
const maxNear = 80

// alike compares two texts word by word, 0..1: each word of the shorter finds
// its best partner, by the share of letters that need not change.
func alike(a, b string) float64 {
	aw, bw := strings.Fields(a), strings.Fields(b)
	if len(aw) == 0 || len(bw) == 0 {
		return 0
	}
	if len(aw) < len(bw) {
		aw, bw = bw, aw
	}
	sum := 0.0
	for _, w := range bw {
		best := 0.0
		for _, o := range aw {
			best = max(best, similarity(w, o))
		}
		sum += best
	}
	return sum / float64(len(aw))
}

func similarity(a, b string) float64 {
	longest := max(len([]rune(a)), len([]rune(b)))
	return 1 - float64(edlib.OSADamerauLevenshteinDistance(a, b))/float64(longest)
}
