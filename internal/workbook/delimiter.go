package workbook

import "strings"

// delimiter finds what parts the fields: the character that cuts the most
// records into the same number of fields. A first line "sep=;" says it itself
// and is no record; the text is returned without it.
func delimiter(text string) (rune, string) {
	if after, ok := strings.CutPrefix(text, "sep="); ok {
		line, rest, _ := strings.Cut(after, "\n")
		if line = strings.TrimSuffix(line, "\r"); len(line) == 1 {
			return rune(line[0]), rest
		}
	}
	best, most := ',', 0.0
	for _, d := range []rune{',', ';', '\t', '|'} {
		if s := evenness(text, d); s > most {
			best, most = d, s
		}
	}
	return best, text
}

// evenness is the share of records that are cut into the commonest number of
// fields above one, times the cuts. Rows of a title or note often have but
// one field, which speaks neither way.
func evenness(text string, delim rune) float64 {
	const enough = 500 // records; a table shows its shape well before
	r := &records{rest: text, delim: delim}
	counts := map[int]int{}
	total := 0
	for total < enough && r.next() {
		n := len(r.fields)
		if n == 1 && strings.TrimSpace(r.fields[0]) == "" {
			continue
		}
		total++
		if n > 1 {
			counts[n]++
		}
	}
	best := 0.0
	for n, times := range counts {
		best = max(best, float64(times)/float64(total)*float64(n-1))
	}
	return best
}
