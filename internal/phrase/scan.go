package phrase

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// tokenKind tells words, numbers, vulgar fractions and signs apart.
type tokenKind byte

const (
	word tokenKind = iota
	number
	fraction
	sign
)

// token is one word, number or sign. low is lower case with dashes, quotes and
// raised digits made plain. glued tells that no space stands before it.
type token struct {
	Span
	low   string
	kind  tokenKind
	glued bool
	upper bool // starts with an upper-case letter
}

// slashed are the abbreviations that end in, or hold, a slash.
const slashed = " w/ w/o n/a c/w b/w o/ w/c w/e n/r "

// scan cuts a text into tokens. A line break is a token of its own.
func scan(text string) []token {
	toks := make([]token, 0, len(text)/4+4)
	glued := false
	for i := 0; i < len(text); {
		r, n := utf8.DecodeRuneInString(text[i:])
		if r != '\n' && (unicode.IsSpace(r) || r == '\ufeff' || r == '\u200b') {
			i, glued = i+n, false
			continue
		}
		t := next(text, i, r, n)
		if glued && t.kind == word && (r == 'x' || r == 'X') && toks[len(toks)-1].kind == number && i+1 < len(text) && digit(text[i+1]) {
			t = token{Span: Span{i, i + 1}, low: "x", kind: sign} // 12x12
		}
		t.glued = glued
		toks = append(toks, t)
		i, glued = t.End, true
	}
	return toks
}

// atNouns cuts tokens within which a noun begins, as in no'EPDM, so that every
// noun has tokens of its own and the word before it keeps its sense.
func atNouns(text string, toks []token, nouns []Noun) []token {
	for _, n := range nouns {
		i, begins := slices.BinarySearchFunc(toks, n.Start, func(t token, at int) int { return t.Start - at })
		if begins || i == 0 || toks[i-1].End <= n.Start {
			continue
		}
		t := toks[i-1]
		pieces := append(rescan(text, t.Start, n.Start, t.glued), rescan(text, n.Start, t.End, true)...)
		toks = slices.Replace(toks, i-1, i, pieces...)
	}
	return toks
}

// rescan cuts a stretch of a text into tokens for itself.
func rescan(text string, from, to int, glued bool) []token {
	toks := scan(text[from:to])
	for i := range toks {
		toks[i].Start, toks[i].End = toks[i].Start+from, toks[i].End+from
		toks[i].glued = toks[i].glued || glued && i == 0
	}
	return toks
}

func next(text string, i int, r rune, n int) token {
	switch {
	case r < utf8.RuneSelf && digit(byte(r)), r == '.' && leadingPoint(text, i):
		end := numberEnd(text, i)
		return token{Span: Span{i, end}, low: text[i:end], kind: number}
	case vulgar(r) > 0:
		return token{Span: Span{i, i + n}, low: text[i : i+n], kind: fraction}
	case unicode.IsLetter(r):
		return wordToken(text, i, r)
	}
	return token{Span: Span{i, i + n}, low: plain(text[i:i+n], r), kind: sign}
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

// leadingPoint holds for the point of .040 in.
func leadingPoint(text string, i int) bool {
	if i+1 >= len(text) || !digit(text[i+1]) {
		return false
	}
	before, _ := utf8.DecodeLastRuneInString(text[:i])
	return i == 0 || unicode.IsSpace(before) || strings.ContainsRune("(<>≤≥=~+-−–/\"'", before)
}

// numberEnd takes digits with points or commas between digits, and the thin
// spaces that some offices put between thousands.
func numberEnd(text string, i int) int {
	for i < len(text) {
		c := text[i]
		switch {
		case digit(c):
			i++
		case (c == '.' || c == ',') && i+1 < len(text) && digit(text[i+1]):
			i++
		default:
			if n := thinThousand(text[i:]); n > 0 {
				i += n
				continue
			}
			return i
		}
	}
	return i
}

// thinThousand is the length of a thin or no-break space with just three
// digits after it, else 0.
func thinThousand(rest string) int {
	r, n := utf8.DecodeRuneInString(rest)
	if r != '\u2009' && r != '\u202f' && r != '\u00a0' || len(rest) < n+3 {
		return 0
	}
	for _, c := range []byte(rest[n : n+3]) {
		if c < '0' || c > '9' {
			return 0
		}
	}
	if after := rest[n+3:]; after != "" && (after[0] >= '0' && after[0] <= '9' || after[0] == '/') {
		return 0
	}
	return n
}

func wordToken(text string, i int, first rune) token {
	end := i
	for end < len(text) {
		r, n := utf8.DecodeRuneInString(text[end:])
		inside := unicode.IsLetter(r) || unicode.IsDigit(r) || raised(r) != 0 || r == '_' && end > i || unicode.IsMark(r)
		if !inside && (r == '\'' || r == '’') {
			after, _ := utf8.DecodeRuneInString(text[end+n:])
			inside = unicode.IsLetter(after) && end > i
		}
		if !inside {
			break
		}
		end += n
	}
	end = slashEnd(text, i, end)
	return token{Span: Span{i, end}, low: plainWord(text[i:end]), kind: word, upper: unicode.IsUpper(first)}
}

func slashEnd(text string, i, end int) int {
	if end-i != 1 || end >= len(text) || text[end] != '/' {
		return end
	}
	for _, n := range []int{2, 1} {
		if end+n > len(text) {
			continue
		}
		follows := end+n < len(text) && (text[end+n] >= 'a' && text[end+n] <= 'z' || text[end+n] >= 'A' && text[end+n] <= 'Z')
		if s := strings.ToLower(text[i : end+n]); strings.Contains(slashed, " "+s+" ") && (n == 1 || !follows) {
			return end + n
		}
	}
	return end
}

func plainWord(s string) string {
	simple := true
	for i := range len(s) {
		if s[i] >= utf8.RuneSelf || s[i] >= 'A' && s[i] <= 'Z' {
			simple = false
			break
		}
	}
	if simple {
		return s
	}
	return strings.Map(func(r rune) rune {
		if d := raised(r); d != 0 {
			return d
		}
		if r == '’' {
			return '\''
		}
		return unicode.ToLower(r)
	}, s)
}

func raised(r rune) rune {
	switch r {
	case '¹':
		return '1'
	case '²':
		return '2'
	case '³':
		return '3'
	}
	return 0
}

// plain gives the ordinary form of the sign r, written s.
func plain(s string, r rune) string {
	switch r {
	case '‐', '‑', '‒', '–', '—', '―', '−', '﹣', '-':
		return "-"
	case '’', '‘', '′', '`', '´':
		return "'"
	case '“', '”', '″', '〃':
		return "\""
	case 'º', '˚':
		return "°"
	case '·', '•', '⋅', '∙':
		return "·"
	case '×', '✕':
		return "x"
	case '≦':
		return "≤"
	case '≧':
		return "≥"
	}
	return s
}

// vulgar is the value of a one-character fraction, or 0.
func vulgar(r rune) float64 {
	switch r {
	case '¼':
		return 1. / 4
	case '½':
		return 1. / 2
	case '¾':
		return 3. / 4
	case '⅓':
		return 1. / 3
	case '⅔':
		return 2. / 3
	case '⅛':
		return 1. / 8
	case '⅜':
		return 3. / 8
	case '⅝':
		return 5. / 8
	case '⅞':
		return 7. / 8
	}
	return 0
}
