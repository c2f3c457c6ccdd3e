package knowledge

import (
	"encoding/json"
	"strings"
)

// skip passes over a value that nobody reads.
func (r *reader) skip() {
	switch c := r.next(); c {
	case '"':
		r.string()
	case '[', '{':
		if r.depth++; r.depth > deepest {
			r.odd = true
			return
		}
		r.at++
		for first := true; r.more(first, c+2); first = false { // ']' and '}' are two after their like
			if c == '{' {
				r.key()
			}
			r.skip()
		}
		r.depth--
	case 't', 'f':
		r.bool()
	case 'n':
		r.odd = r.odd || !strings.HasPrefix(r.text[r.at:], "null")
		r.at = min(r.at+len("null"), len(r.text))
	default:
		r.number()
	}
}

// escaped is a text with escapes, which begins at a place.
func (r *reader) escaped(begin int) string {
	for ; r.at < len(r.text) && r.text[r.at] != '"'; r.at++ {
		if r.text[r.at] == '\\' {
			r.at++
		}
	}
	if r.at >= len(r.text) {
		r.at, r.odd = len(r.text), true
		return ""
	}
	r.at++
	var text string
	r.odd = r.odd || json.Unmarshal([]byte(r.text[begin-1:r.at]), &text) != nil
	return text
}
