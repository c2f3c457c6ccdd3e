package material

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// token is one word or number of a text, brought to one spelling.
type token struct {
	start, end int
	low        string // as written, in lower case
	key        int32  // number of the word in the vocabulary, -1 if it has none
	upper      bool   // starts with a capital letter or digit
	non        bool   // "nonasphaltic": denies the word
	short      bool   // cut off by a point
	fuzzy      bool   // taken for a word of the vocabulary that it nearly is
}

// scan cuts a text into tokens.
func (v *Vocabulary) scan(text string) []token {
	toks := v.part(cut(text))
	for i := range toks {
		t := &toks[i]
		if t.key != 0 {
			continue
		}
		if k, ok := v.keys[normal(t.low, v.spelling)]; ok {
			t.key = k
			continue
		}
		t.key = -1
		if rest, found := strings.CutPrefix(t.low, "non"); found && len(rest) > 4 {
			if k, ok := v.keys[normal(rest, v.spelling)]; ok {
				t.key, t.non = k, true
				continue
			}
		}
		if k, ok := v.wholeKey(text, t); ok {
			t.key, t.short = k, true
		} else if k, ok := v.nearKey(t.low); ok {
			t.key, t.fuzzy = k, true
		}
	}
	return toks
}

// part takes apart words that are written as one ("hotdip"), where the lists do
// not have them so. The key of a part is its word's.
func (v *Vocabulary) part(toks []token) []token {
	for i := 0; i < len(toks); i++ {
		t := toks[i]
		if len(t.low) < minJoined || t.end-t.start != len(t.low) {
			continue
		}
		j, ok := v.joints[t.low]
		if !ok {
			j, ok = v.joints[singular(t.low)]
		}
		if _, known := v.keys[normal(t.low, v.spelling)]; !ok || known {
			continue
		}
		second := t
		second.start, second.low, second.key = t.start+j.at, t.low[j.at:], j.second
		t.end, t.low, t.key = second.start, t.low[:j.at], j.first
		toks = slices.Insert(toks, i+1, second)
		toks[i] = t
		i++
	}
	return toks
}

// wholeKey finds the one word that a word cut off by a point begins ("neut.",
// "liq."); of words that go on from each other, the shortest.
func (v *Vocabulary) wholeKey(text string, t *token) (int32, bool) {
	if t.end >= len(text) || text[t.end] != '.' || len(t.low) < minCut || len(t.low) > maxCut {
		return 0, false
	}
	best := ""
	for n := len(t.low) + 2; n <= maxWhole; n++ {
		for _, w := range v.byLength[bucket{t.low[0], n}] {
			switch {
			case !strings.HasPrefix(w, t.low):
			case best == "":
				best = w
			case !strings.HasPrefix(w, best) && !strings.HasPrefix(w, best[:len(best)-1]):
				return 0, false
			}
		}
	}
	return v.keys[best], best != ""
}

// The letters of a word that is cut off, and of the whole word.
const (
	minCut   = 3
	maxCut   = 6
	maxWhole = 14
)

// cut finds words, numbers and the signs &, #, % and +; the rest is gap.
func cut(text string) []token {
	toks := make([]token, 0, 2+len(text)/5)
	for i := 0; i < len(text); {
		r, n := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == '&' || r == '#' || r == '%' || r == '+':
			toks = append(toks, token{start: i, end: i + n, low: sign(r)})
			i += n
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			end := wordEnd(text, i)
			toks = append(toks, token{start: i, end: end, low: fold(text[i:end]), upper: unicode.IsUpper(r) || unicode.IsDigit(r)})
			i = end
		default:
			i += n
		}
	}
	return toks
}

func sign(r rune) string {
	if r == '&' {
		return "and"
	}
	return string(r)
}

// wordEnd takes letters and digits, inner apostrophes, points inside numbers
// and initials ("0.5", "C.I.P."), and one-letter pairs ("S/S", "w/").
func wordEnd(text string, start int) int {
	if end := initialsEnd(text, start); end > 0 {
		return end
	}
	end := start
	for end < len(text) {
		r, n := utf8.DecodeRuneInString(text[end:])
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) && !inner(text, start, end, r) {
			break
		}
		end += n
	}
	if end-start == 1 && end < len(text) && text[end] == '/' {
		return pairEnd(text, end)
	}
	return end
}

func inner(text string, start, at int, r rune) bool {
	if at == start || at+1 >= len(text) {
		return false
	}
	before, after := rune(text[at-1]), rune(text[at+1])
	switch r {
	case '.', ',':
		return r == '.' && unicode.IsDigit(before) && unicode.IsDigit(after)
	case '\'':
		return unicode.IsLetter(before) && unicode.IsLetter(after)
	}
	return false
}

// initialsEnd is the end of "C.I.P." or "p.t", 0 for anything else.
func initialsEnd(text string, i int) int {
	letters, end := 0, i
	for end < len(text) && isASCIILetter(text[end]) && end+1 < len(text) && text[end+1] == '.' {
		letters++
		end += 2
	}
	if letters > 0 && end < len(text) && isASCIILetter(text[end]) && (end+1 == len(text) || !isASCIILetter(text[end+1])) {
		letters++
		end++
	}
	if letters < 2 {
		return 0
	}
	return end
}

func pairEnd(text string, slash int) int {
	one := slash+1 < len(text) && isASCIILetter(text[slash+1])
	if one && (slash+2 == len(text) || !isASCIILetter(text[slash+2])) {
		return slash + 2
	}
	if text[slash-1] == 'w' || text[slash-1] == 'W' {
		return slash + 1
	}
	return slash
}

func isASCIILetter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' }

// fold lower-cases a word and drops accents and the points of initials.
func fold(word string) string {
	low := strings.ToLower(word)
	if strings.ContainsFunc(low, func(r rune) bool { return r >= utf8.RuneSelf }) {
		low = strings.Map(func(r rune) rune {
			if unicode.Is(unicode.Mn, r) {
				return -1
			}
			return r
		}, norm.NFD.String(low))
	}
	if strings.Contains(low, ".") && (low[0] < '0' || low[0] > '9') {
		low = strings.ReplaceAll(low, ".", "")
	}
	return low
}

// normal brings a word to its singular and to one spelling.
func normal(low string, spelling map[string]string) string {
	if s, ok := spelling[low]; ok {
		return s
	}
	one := singular(low)
	if s, ok := spelling[one]; ok {
		return s
	}
	return one
}

func singular(w string) string {
	n := len(w)
	switch {
	case n < 4 || w[n-1] != 's' || w[n-2] == 's' || w[n-2] == 'u' || w[n-2] == 'i':
		return w
	case strings.HasSuffix(w, "sses"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "xes"):
		return w[:n-2]
	case w[n-2] == '\'':
		return w[:n-2]
	}
	return w[:n-1]
}

// nearKey finds the word of the vocabulary that a long word is a slip of the
// pen away from: one letter more, less or other. A shorter word may only have
// lost a letter, for with another letter it may be a word of its own.
func (v *Vocabulary) nearKey(low string) (int32, bool) {
	n := len(low)
	if n < v.slipLength || v.plain[low] || v.plain[singular(low)] || strings.HasSuffix(low, "ed") || strings.HasSuffix(low, "ly") || strings.HasSuffix(low, "ing") && n < v.fuzzyLength+2 {
		return 0, false
	}
	word := singular(low)
	for d := -1; d <= 1; d++ {
		for _, w := range v.byLength[bucket{word[0], len(word) + d}] {
			if oneSlip(word, w) && (len(word) >= v.fuzzyLength || len(word) < len(w) || doubled(word, w)) {
				return v.keys[w], true
			}
		}
	}
	return 0, false
}

// doubled holds where a has a letter of b once too often ("woool").
func doubled(a, b string) bool {
	for i := 1; len(a) == len(b)+1 && i < len(a); i++ {
		if a[i] == a[i-1] && a[:i]+a[i+1:] == b {
			return true
		}
	}
	return false
}

// slipStart is how many letters must stand before one left out near the end.
const slipStart = 4

// oneSlip holds for one letter added, dropped or changed, or two swapped, before
// the end of the word: a different ending is a different word.
func oneSlip(a, b string) bool {
	i := 0
	for i < len(a) && i < len(b) && a[i] == b[i] {
		i++
	}
	j := 0
	for j < len(a)-i && j < len(b)-i && a[len(a)-1-j] == b[len(b)-1-j] {
		j++
	}
	ra, rb := len(a)-i-j, len(b)-i-j
	if ra == 0 && rb == 1 && i >= slipStart && (i < len(a) || b[i] == 'g') { // a letter left out late in the word
		return true
	}
	if j < 2 {
		return false
	}
	swapped := ra == 2 && rb == 2 && a[i] == b[i+1] && a[i+1] == b[i]
	return ra <= 1 && rb <= 1 || swapped
}
