package schedule

import (
	"unicode"
	"unicode/utf8"
)

// foldKeep lower-cases without changing byte offsets.
func foldKeep(s string) string {
	out := []byte(s)
	for i, r := range s {
		low := unicode.ToLower(r)
		if low != r && utf8.RuneLen(low) == utf8.RuneLen(r) {
			utf8.EncodeRune(out[i:], low)
		}
	}
	return string(out)
}

func wholeWord(s string, start, end int) bool {
	before, _ := utf8.DecodeLastRuneInString(s[:start])
	after, _ := utf8.DecodeRuneInString(s[end:])
	return !wordRune(before) && !wordRune(after)
}

func wordRune(r rune) bool {
	return r != utf8.RuneError && (unicode.IsLetter(r) || unicode.IsDigit(r))
}

func mark(taken []bool, from, to int) {
	for i := from; i < to; i++ {
		taken[i] = true
	}
}
