package workbook

import (
	"bytes"
	"errors"
	"io"
)

type token int

const (
	startTag token = iota
	endTag
	chars
)

var (
	errCutShort = errors.New("it ends too early")
	errMarkup   = errors.New("malformed markup")
	errDoctype  = errors.New("it declares a document type")
	errTooLong  = errors.New("an element or text is too long")
	errTooDeep  = errors.New("its elements are nested too deep")
	errNotUTF8  = errors.New("its text is not valid UTF-8")
)

// scanner is a pull reader of the XML that workbooks are made of. The standard
// decoder allocates for every token, and in a sheet nearly every byte belongs
// to one; this one hands out slices of its buffer, which stay valid until the
// next call. It reads a stream, so that a sheet of nothing but formatting
// costs time and no memory. It is stricter than it need be: no document types
// and no entities but the five of XML.
type scanner struct {
	src      io.Reader
	buf      []byte
	pos, end int
	max      int // longest token
	maxDepth int

	tok     token
	name    []byte // local name of the tag
	attrs   []byte // its attributes, raw
	chars   []byte // character data, raw
	literal bool   // chars need no decoding
	closing bool   // the start tag just read was an empty element

	depth   int // elements open, the one just started counted
	names   []byte
	marks   []int
	rooted  bool
	scratch []byte
	err     error
}

func newScanner(src io.Reader, lim Limits) (*scanner, error) {
	s := &scanner{src: src, buf: make([]byte, 64<<10), max: lim.CellLength*8 + 64<<10, maxDepth: lim.Depth}
	for s.end < 256 && s.fill() { // enough for a declaration
	}
	if s.err != nil {
		return nil, s.err
	}
	return s, s.recode()
}

// fill reads more, keeping what lies behind pos.
func (s *scanner) fill() bool {
	if s.err != nil {
		return false
	}
	if s.pos > 0 {
		s.end = copy(s.buf, s.buf[s.pos:s.end])
		s.pos = 0
	}
	if s.end == len(s.buf) {
		if len(s.buf) >= s.max {
			s.err = errTooLong
			return false
		}
		s.buf = append(s.buf, make([]byte, len(s.buf))...)
	}
	for range 100 { // a reader may return nothing a few times
		n, err := s.src.Read(s.buf[s.end:])
		s.end += n
		if err != nil && err != io.EOF {
			s.err = err
		}
		if n > 0 || err != nil {
			return n > 0
		}
	}
	s.err = io.ErrNoProgress
	return false
}

// upto gives the distance from pos to the next delim at or after pos+from,
// reading on as needed.
func (s *scanner) upto(from int, delim string) (int, bool) {
	for {
		if s.pos+from <= s.end {
			if i := bytes.Index(s.buf[s.pos+from:s.end], []byte(delim)); i >= 0 {
				return from + i, true
			}
			from = max(from, s.end-s.pos-len(delim)+1)
		}
		if !s.fill() {
			return 0, false
		}
	}
}

func (s *scanner) fail(err error) bool {
	if s.err == nil {
		s.err = err
	}
	return false
}

// next reads one token; false at the end or at an error, which is in err.
func (s *scanner) next() bool {
	if s.closing {
		s.closing = false
		return s.pop(s.names[s.marks[len(s.marks)-1]:])
	}
	for s.err == nil {
		if s.pos == s.end && !s.fill() {
			if s.depth > 0 || !s.rooted {
				s.fail(errCutShort)
			}
			return false
		}
		if s.buf[s.pos] != '<' {
			if s.text() {
				return true
			}
			continue
		}
		for s.end-s.pos < 2 {
			if !s.fill() {
				return s.fail(errCutShort)
			}
		}
		switch s.buf[s.pos+1] {
		case '?':
			s.drop("?>")
		case '!':
			if s.declaration() {
				return true
			}
		default:
			return s.tag()
		}
	}
	return false
}

// text reads character data up to the next tag; false if it lies outside the
// root, where only space is allowed.
func (s *scanner) text() bool {
	n, ok := s.upto(0, "<")
	if !ok {
		n = s.end - s.pos
	}
	s.chars, s.literal, s.tok = s.buf[s.pos:s.pos+n], false, chars
	s.pos += n
	if s.depth == 0 && len(bytes.TrimSpace(s.chars)) > 0 {
		s.fail(errMarkup)
	}
	return s.err == nil && s.depth > 0
}

// declaration passes over a comment and hands out character data.
func (s *scanner) declaration() bool {
	for s.end-s.pos < len("<![CDATA[") && s.fill() {
	}
	switch head := s.buf[s.pos:s.end]; {
	case bytes.HasPrefix(head, []byte("<!--")):
		s.drop("-->")
	case bytes.HasPrefix(head, []byte("<![CDATA[")) && s.depth > 0:
		s.pos += len("<![CDATA[")
		n, ok := s.upto(0, "]]>")
		if !ok {
			return s.fail(errCutShort)
		}
		s.chars, s.literal, s.tok = s.buf[s.pos:s.pos+n], true, chars
		s.pos += n + len("]]>")
		return true
	case bytes.HasPrefix(head, []byte("<!DOCTYPE")):
		s.fail(errDoctype)
	default:
		s.fail(errMarkup)
	}
	return false
}

func (s *scanner) drop(end string) {
	if n, ok := s.upto(2, end); ok {
		s.pos += n + len(end)
	} else {
		s.fail(errCutShort)
	}
}

// tag reads a start or end tag.
func (s *scanner) tag() bool {
	n, ok := s.tagEnd()
	if !ok {
		return s.fail(errCutShort)
	}
	body := s.buf[s.pos+1 : s.pos+n]
	s.pos += n + 1
	if len(body) > 0 && body[0] == '/' {
		return s.pop(trimRight(body[1:]))
	}
	if len(body) > 0 && body[len(body)-1] == '/' {
		s.closing = true
		body = body[:len(body)-1]
	}
	i := 0
	for i < len(body) && !isSpace(body[i]) {
		i++
	}
	return s.push(body[:i], body[i:])
}

// tagEnd finds the end of the tag at pos; a quoted value may hold a ">".
func (s *scanner) tagEnd() (int, bool) {
	var quote byte
	for i := 1; ; {
		for window := s.buf[s.pos:s.end]; i < len(window); i++ {
			switch c := window[i]; {
			case quote != 0:
				if c == quote {
					quote = 0
				}
			case c == '>':
				return i, true
			case c == '"' || c == '\'':
				quote = c
			case c == '<':
				return 0, false
			}
		}
		if !s.fill() {
			return 0, false
		}
	}
}

func (s *scanner) push(name, attrs []byte) bool {
	if len(name) == 0 || s.depth == 0 && s.rooted {
		return s.fail(errMarkup)
	}
	if s.depth == s.maxDepth {
		return s.fail(errTooDeep)
	}
	s.rooted = true
	s.depth++
	s.marks = append(s.marks, len(s.names))
	s.names = append(s.names, name...)
	s.name, s.attrs, s.tok = local(name), attrs, startTag
	return true
}

func (s *scanner) pop(name []byte) bool {
	if s.depth == 0 {
		return s.fail(errMarkup)
	}
	mark := s.marks[len(s.marks)-1]
	if !bytes.Equal(s.names[mark:], name) {
		return s.fail(errMarkup)
	}
	s.name, s.tok = local(name), endTag
	s.names, s.marks = s.names[:mark], s.marks[:len(s.marks)-1]
	s.depth--
	return true
}

// local cuts a prefix off: strict and transitional workbooks, and other
// writers' prefixes, differ in nothing else that matters here.
func local(name []byte) []byte {
	if i := bytes.IndexByte(name, ':'); i > 0 && i+1 < len(name) {
		return name[i+1:]
	}
	return name
}
