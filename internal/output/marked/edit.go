package marked

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
)

// node is a start or end tag of a part, with the bytes it takes.
type node struct {
	start        bool
	prefix, name string
	attr         []xml.Attr
	from, to     int
	depth        int    // 0 is the root
	parent       string // name of what it lies in
	empty        bool   // <x/>, of which the end comes at once
}

// value gives an attribute by its local name, "" if it is not there.
func (n node) value(name string) string {
	for _, a := range n.attr {
		if a.Name.Local == name && a.Name.Space != "xmlns" {
			return a.Value
		}
	}
	return ""
}

// tagged writes an element's name with the prefix the part uses.
func (n node) tagged(name string) string {
	if n.prefix == "" {
		return name
	}
	return n.prefix + ":" + name
}

// walk visits the tags of a part in order.
func walk(data []byte, visit func(n node) error) error {
	d := xml.NewDecoder(bytes.NewReader(data))
	d.CharsetReader = func(charset string, in io.Reader) (io.Reader, error) {
		if strings.EqualFold(charset, "us-ascii") {
			return in, nil
		}
		return nil, fmt.Errorf("its text is in %s, not in UTF-8; open it in a spreadsheet program and save it again", charset)
	}
	var open []string
	for {
		from := int(d.InputOffset())
		token, err := d.RawToken()
		if errors.Is(err, io.EOF) && len(open) == 0 {
			return nil
		}
		if err != nil {
			return fmt.Errorf("read as XML: %w", err)
		}
		n := node{from: from, to: int(d.InputOffset())}
		switch t := token.(type) {
		case xml.StartElement:
			n.start, n.prefix, n.name, n.attr = true, t.Name.Space, t.Name.Local, t.Attr
			n.empty = n.to >= 2 && data[n.to-2] == '/'
			n.depth, n.parent = len(open), last(open)
			open = append(open, n.name)
		case xml.EndElement:
			n.prefix, n.name = t.Name.Space, t.Name.Local
			if last(open) != n.name {
				return fmt.Errorf("read as XML: </%s> where <%s> is open", n.name, last(open))
			}
			open = open[:len(open)-1]
			n.depth, n.parent = len(open), last(open)
		default:
			continue
		}
		if err := visit(n); err != nil {
			return err
		}
	}
}

func last(list []string) string {
	if len(list) == 0 {
		return ""
	}
	return list[len(list)-1]
}

// edits are changes to a part that leave every other byte of it alone.
type edits struct{ list []edit }

type edit struct {
	from, to int
	text     string
}

func (e *edits) insert(at int, text string)        { e.replace(at, at, text) }
func (e *edits) replace(from, to int, text string) { e.list = append(e.list, edit{from, to, text}) }

// apply makes the changes; those at one place keep their order.
func (e *edits) apply(data []byte) []byte {
	slices.SortStableFunc(e.list, func(a, b edit) int { return a.from - b.from })
	var out bytes.Buffer
	at := 0
	for _, c := range e.list {
		out.Write(data[at:c.from])
		out.WriteString(c.text)
		at = c.to
	}
	out.Write(data[at:])
	return out.Bytes()
}

// into puts text at the end of an element, whose tags are given; an empty one
// is opened for it.
func (e *edits) into(data []byte, start node, endFrom int, text string) {
	if !start.empty {
		e.insert(endFrom, text)
		return
	}
	tag := string(data[start.from:start.to])
	tag = strings.TrimRight(strings.TrimSuffix(tag, "/>"), " \t\r\n") + ">"
	e.replace(start.from, start.to, tag+text+"</"+start.tagged(start.name)+">")
}

// withAttr sets an attribute in the bytes of a start tag.
func withAttr(tag, name, value string) string {
	set := fmt.Sprintf(` %s="%s"`, name, escaped(value))
	if from, to := attrSpan(tag, name); from >= 0 {
		return tag[:from] + set + tag[to:]
	}
	end := len(tag) - 1
	if strings.HasSuffix(tag, "/>") {
		end--
	}
	return strings.TrimRight(tag[:end], " \t\r\n") + set + tag[end:]
}

// attrSpan finds an attribute in a start tag, the space before it included.
func attrSpan(tag, name string) (from, to int) {
	for i := strings.IndexAny(tag, " \t\r\n"); i >= 0 && i < len(tag); {
		begin := i
		for i < len(tag) && strings.IndexByte(" \t\r\n", tag[i]) >= 0 {
			i++
		}
		eq := strings.IndexByte(tag[i:], '=')
		if eq < 0 {
			break
		}
		word := strings.TrimSpace(tag[i : i+eq])
		open := strings.IndexAny(tag[i+eq:], `"'`)
		if open < 0 {
			break
		}
		open += i + eq
		shut := strings.IndexByte(tag[open+1:], tag[open])
		if shut < 0 {
			break
		}
		i = open + 1 + shut + 1
		if word == name {
			return begin, i
		}
	}
	return -1, -1
}

// escaped writes a text for XML; what XML cannot hold is replaced.
func escaped(text string) string {
	var b strings.Builder
	if err := xml.EscapeText(&b, []byte(text)); err != nil {
		return "" // a builder does not fail
	}
	return b.String()
}

// celled writes a text for a cell or comment, where _x0041_ would stand for A.
func celled(text string) string {
	return regexp.MustCompile(`_(x[0-9A-Fa-f]{4}_)`).ReplaceAllString(escaped(clip(text)), "_x005F_$1")
}

// clip keeps a text within what a cell takes.
func clip(text string) string {
	const most = 32_000
	if n := 0; len(text) > most {
		for i := range text {
			if n++; n > most {
				return text[:i] + "…"
			}
		}
	}
	return text
}
