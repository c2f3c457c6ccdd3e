package schedule

import (
	"iter"
	"strings"
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

// wholeWords gives the start and end of each place, left to right, where word
// stands in s with no letter or digit beside it; an empty word stands nowhere.
func wholeWords(s, word string) iter.Seq2[int, int] {
	return func(yield func(start, end int) bool) {
		for from := 0; word != ""; {
			i := strings.Index(s[from:], word)
			if i < 0 {
				return
			}
			i += from
			from = i + len(word)
			if wholeWord(s, i, from) && !yield(i, from) {
				return
			}
		}
	}
}

func wholeWord(s string, start, end int) bool {
	before, _ := utf8.DecodeLastRuneInString(s[:start])
	after, _ := utf8.DecodeRuneInString(s[end:])
	return !wordRune(before) && !wordRune(after)
}

// wordsOf gives the words of a text, runs of letters and digits, with where each
// starts.
func wordsOf(s string) iter.Seq2[int, string] {
	return func(yield func(start int, word string) bool) {
		start := -1
		for i, r := range s {
			switch {
			case wordRune(r):
				if start < 0 {
					start = i
				}
			case start >= 0:
				if !yield(start, s[start:i]) {
					return
				}
				start = -1
			}
		}
		if start >= 0 {
			yield(start, s[start:])
		}
	}
}

func wordRune(r rune) bool {
	return r != utf8.RuneError && (unicode.IsLetter(r) || unicode.IsDigit(r))
}

func mark(taken []bool, from, to int) {
	for i := from; i < to; i++ {
		taken[i] = true
	}
}
