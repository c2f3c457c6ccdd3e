package schedule

import (
	"strings"
	"unicode/utf8"
)

// has looks a text up in a list of words in small letters. Every cell is asked
// for in several lists, and most are too short to need another text for that.
func has(list map[string]bool, text string) bool {
	text = strings.TrimSpace(text)
	var low [32]byte
	if len(text) > len(low) {
		return list[strings.ToLower(text)]
	}
	for i := range len(text) {
		c := text[i]
		if c >= utf8.RuneSelf {
			return list[strings.ToLower(text)]
		}
		if 'A' <= c && c <= 'Z' {
			c += 'a' - 'A'
		}
		low[i] = c
	}
	return list[string(low[:len(text)])]
}

// isBlank holds for cells that say there is nothing: empty, a dash, NULL.
func (w *wordlists) isBlank(s string) bool {
	return has(w.blank, s)
}

// isNone holds for cells that say that none is used: none, not required.
func (w *wordlists) isNone(s string) bool {
	return has(w.none, s)
}

// isDitto holds for cells that say the same again.
func (w *wordlists) isDitto(s string) bool {
	return has(w.ditto, s) || strings.Contains(s, "bove") && w.sameAbove.MatchString(strings.TrimSpace(s))
}

// hasAny tells whether one of the phrases stands in the text as whole words.
func (w *wordlists) hasAny(text string, phrases []string) bool {
	low := foldKeep(text)
	for _, p := range phrases {
		for range wholeWords(low, p) {
			return true
		}
	}
	return false
}

// unlimited holds for a text that says there is no limit, which "60 days; not for
// permanent exposure" does not.
func (w *wordlists) unlimited(text string) bool {
	low := foldKeep(text)
	for _, p := range w.noLimit {
		for i := range wholeWords(low, p) {
			if !w.hasAny(lastWords(low[:i], 2), w.accept.Off) {
				return true
			}
		}
	}
	return false
}

// without blanks out the phrases in a text.
func (w *wordlists) without(text string, phrases []string) string {
	low, out := foldKeep(text), []byte(text)
	for _, p := range phrases {
		for i, end := range wholeWords(low, p) {
			for ; i < end; i++ {
				out[i] = ' '
			}
		}
	}
	return string(out)
}

// before gives the text up to one of the phrases, unless it is denied: "put a
// tape between", never "do not put on EPDM".
func (w *wordlists) before(text string, phrases []string) string {
	low := foldKeep(text)
	for _, p := range phrases {
		if i := strings.Index(low, p); i > 0 && wholeWord(low, i, i+len(p)) && !endsDenied(low[:i]) {
			return text[:i]
		}
	}
	return text
}

func endsDenied(text string) bool {
	text = strings.TrimSpace(text)
	return strings.HasSuffix(text, "not") || strings.HasSuffix(text, "never") || strings.HasSuffix(text, "n't")
}
