package workbook

import (
	"bytes"
	"strconv"
	"strings"
	"unicode/utf8"
)

// child moves to the next element directly inside the one that was open at
// depth; false when that one ends. What a caller leaves unread is passed over.
func (s *scanner) child(depth int) bool {
	for s.next() {
		switch s.tok {
		case startTag:
			if s.depth == depth+1 {
				return true
			}
		case endTag:
			if s.depth < depth {
				return false
			}
		}
	}
	return false
}

// content gives the character data directly inside the element just started,
// up to its end, decoded; comments inside it must not make it longer than a
// token may be. Valid until the next call of content.
func (s *scanner) content() []byte {
	s.scratch = s.scratch[:0]
	depth := s.depth
	for s.next() {
		if s.tok == chars && s.depth == depth {
			s.scratch = s.decode(s.scratch, s.chars, s.literal)
			if len(s.scratch) > s.max {
				s.fail(errTooLong)
			}
		}
		if s.tok == endTag && s.depth < depth {
			break
		}
	}
	if !utf8.Valid(s.scratch) {
		s.fail(errNotUTF8)
	}
	return s.scratch
}

// attr gives an attribute of the start tag just read, raw; its name is
// compared with any prefix it has. A name that begins with a colon stands for
// any prefix, since writers choose their own.
func (s *scanner) attr(name string) []byte {
	rest := s.attrs
	for {
		rest = trimLeft(rest)
		if len(rest) == 0 {
			return nil
		}
		eq := bytes.IndexByte(rest, '=')
		if eq < 0 {
			s.fail(errMarkup)
			return nil
		}
		key := trimRight(rest[:eq])
		rest = trimLeft(rest[eq+1:])
		if len(rest) == 0 || rest[0] != '"' && rest[0] != '\'' {
			s.fail(errMarkup)
			return nil
		}
		end := bytes.IndexByte(rest[1:], rest[0])
		if end < 0 {
			s.fail(errMarkup)
			return nil
		}
		if string(key) == name || name[0] == ':' && bytes.HasSuffix(key, []byte(name)) {
			return rest[1 : end+1]
		}
		rest = rest[end+2:]
	}
}

// attrText gives an attribute decoded.
func (s *scanner) attrText(name string) string {
	text := s.decode(nil, s.attr(name), false)
	if !utf8.Valid(text) {
		s.fail(errNotUTF8)
	}
	return string(text)
}

// attrNumber gives an attribute that is a whole number, 0 if it is not there.
func (s *scanner) attrNumber(name string) int {
	raw := s.attr(name)
	n, ok := number(raw)
	if raw != nil && !ok {
		s.fail(errMarkup)
	}
	return n
}

// attrTrue reads an attribute that is a yes or no.
func (s *scanner) attrTrue(name string) bool {
	switch string(s.attr(name)) {
	case "1", "true", "on":
		return true
	}
	return false
}

func (s *scanner) decode(dst, raw []byte, literal bool) []byte {
	for len(raw) > 0 {
		i := len(raw)
		if !literal {
			if amp := bytes.IndexByte(raw, '&'); amp >= 0 {
				i = amp
			}
		}
		dst = append(dst, raw[:i]...)
		if raw = raw[i:]; len(raw) == 0 {
			break
		}
		end := bytes.IndexByte(raw, ';')
		if end < 0 {
			s.fail(errMarkup)
			break
		}
		r, ok := entity(string(raw[1:end]))
		if !ok {
			s.fail(errMarkup)
		}
		dst = utf8.AppendRune(dst, r)
		raw = raw[end+1:]
	}
	return dst
}

// The standard functions that trim build a table of the characters at each
// call, which is much of the time where tags are short.

func isSpace(c byte) bool { return c == ' ' || c == '\t' || c == '\n' || c == '\r' }

func trimLeft(b []byte) []byte {
	for len(b) > 0 && isSpace(b[0]) {
		b = b[1:]
	}
	return b
}

func trimRight(b []byte) []byte {
	for len(b) > 0 && isSpace(b[len(b)-1]) {
		b = b[:len(b)-1]
	}
	return b
}

func entity(name string) (rune, bool) {
	switch name {
	case "lt":
		return '<', true
	case "gt":
		return '>', true
	case "amp":
		return '&', true
	case "quot":
		return '"', true
	case "apos":
		return '\'', true
	}
	digits, base := strings.TrimPrefix(name, "#"), 10
	if len(digits) == len(name) {
		return 0, false
	}
	if hex, ok := strings.CutPrefix(digits, "x"); ok {
		digits, base = hex, 16
	}
	n, err := strconv.ParseUint(digits, base, 32)
	r := rune(n)
	return r, err == nil && n > 0 && utf8.ValidRune(r)
}

// cellText makes a string of what a text element holds: the escapes _x000D_
// that stand for characters XML cannot hold become those characters, and a
// line break is a line feed.
func cellText(b []byte) string {
	t := string(b)
	if strings.Contains(t, "_x") {
		t = unescape(t)
	}
	if strings.Contains(t, "\r") {
		t = strings.ReplaceAll(strings.ReplaceAll(t, "\r\n", "\n"), "\r", "\n")
	}
	return t
}

func unescape(t string) string {
	var b strings.Builder
	for {
		i := strings.Index(t, "_x")
		if i < 0 {
			break
		}
		b.WriteString(t[:i])
		t = t[i:]
		if len(t) >= 7 && t[6] == '_' {
			if n, err := strconv.ParseUint(t[2:6], 16, 16); err == nil {
				b.WriteRune(rune(n))
				t = t[7:]
				continue
			}
		}
		b.WriteString(t[:2])
		t = t[2:]
	}
	b.WriteString(t)
	return b.String()
}
