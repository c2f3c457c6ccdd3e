package schedule

import (
	"regexp"
	"slices"
	"strings"
)

var bracket = regexp.MustCompile(`\(([^()]*)\)`)

// withoutPrimer takes what a bracket leaves bare, and the bed for which it allows one
// primer only, for a piece of its own, heard first: "PR-1 (none on metal)", "PR-1 or PR-2
// on block, foam (foam: PR-2 only)".
func (r *reader) withoutPrimer(p *Product, pieces []part) []part {
	var bare, out []part
	for _, piece := range pieces {
		if m := bracket.FindStringSubmatch(piece.text); m != nil && (r.saysNone(m[1]) || r.onlyThere(p, m[1])) {
			bare = append(bare, part{m[1], piece.listed})
			piece.text = strings.Replace(piece.text, m[0], "", 1)
		}
		out = append(out, piece)
	}
	return append(bare, out...)
}

// onlyThere holds for words that allow a bed nothing but the primer that they name.
func (r *reader) onlyThere(p *Product, text string) bool {
	if !r.words.hasAny(text, r.words.accept.Only) {
		return false
	}
	primers, beds := 0, 0
	for _, m := range r.near(p, text) {
		if r.isPrimer(m) {
			primers++
		} else {
			beds++
		}
	}
	return primers > 0 && beds > 0
}

// barred is a primer that is not for some substrates.
type barred struct {
	primer string
	beds   []mention
}

// barredBeds cuts out of a piece the brackets that bar a primer from substrates:
// "P-1 (10 °C up, not metal)".
func (r *reader) barredBeds(p *Product, piece *part) []barred {
	var out []barred
	notIn := r.words.accept.notIn
	for m := notIn.FindStringSubmatchIndex(piece.text); m != nil; m = notIn.FindStringSubmatchIndex(piece.text) {
		before := r.near(p, piece.text[:m[0]])
		if n := len(before); n == 0 || before[n-1].product < 0 || !r.isPrimer(before[n-1]) {
			break
		}
		out = append(out, barred{r.sched.Products[before[len(before)-1].product].ID, r.near(p, piece.text[m[2]:m[3]])})
		piece.text = piece.text[:m[0]] + piece.text[m[1]:]
	}
	return out
}

func without(list []string, one string) []string {
	return slices.DeleteFunc(slices.Clone(list), func(s string) bool { return s == one })
}
