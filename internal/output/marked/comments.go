package marked

import (
	"fmt"
	"strconv"
	"strings"
)

// author signs the comments.
const author = "abut"

// bareComments is the part of a sheet that has no comments yet.
const bareComments = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<comments xmlns="` + mainSpace + `"><authors/><commentList/></comments>`

// comments is the part with the comments of a sheet.
type comments struct {
	data    []byte
	authors node
	signed  int // authors there are
	shutBy  int // where the list of authors ends
	list    node
	shut    int            // where the list of comments ends
	texts   map[string]own // by cell
}

// own is the text of a comment that is there already.
type own struct {
	start      node
	end        int // of the last text in it, after which more may stand
	shut       int
	bare       [2]int // a text that is not in a run
	bareOpened bool
}

func readComments(data []byte) (*comments, error) {
	c := &comments{data: data, texts: map[string]own{}}
	cell := ""
	err := walk(data, func(n node) error {
		switch {
		case n.name == "authors" && n.start:
			c.authors = n
		case n.name == "authors":
			c.shutBy = n.from
		case n.name == "author" && n.start:
			c.signed++
		case n.name == "commentList" && n.start:
			c.list = n
		case n.name == "commentList":
			c.shut = n.from
		case n.name == "comment" && n.start:
			cell = n.value("ref")
		case n.name == "text" || n.parent == "text":
			o := c.texts[cell]
			o.see(n)
			c.texts[cell] = o
		}
		return nil
	})
	if err == nil && (!c.authors.start || !c.list.start) {
		err = fmt.Errorf("it has no list of authors or comments; open it in a spreadsheet program and save it again")
	}
	return c, err
}

func (o *own) see(n node) {
	switch {
	case n.name == "text" && n.start:
		o.start, o.end = n, n.to
	case n.name == "text":
		o.shut = n.from
	case n.name == "t" && n.start:
		o.bare[0], o.bareOpened = n.from, true
	case n.name == "t":
		o.bare[1], o.end = n.to, n.to
	case n.name == "r" && !n.start:
		o.end = n.to
	}
}

// add writes the findings of each spot: a comment of its own, or after the
// author's words where there is one. It gives the spots that got a new one.
func (c *comments) add(spots []*spot) (data []byte, fresh []*spot) {
	var e edits
	var list strings.Builder
	like := c.list
	for _, s := range spots {
		runs := elements(like, s.runs())
		o, there := c.texts[ref(s.row, s.col)]
		if !there {
			fresh = append(fresh, s)
			fmt.Fprintf(&list, "<%s ref=%q authorId=\"%d\"><%s>%s</%[4]s></%[1]s>", like.tagged("comment"), ref(s.row, s.col), c.signed, like.tagged("text"), runs)
			continue
		}
		between := elements(like, `<r><t xml:space="preserve">&#10;&#10;</t></r>`)
		if o.start.empty {
			e.into(c.data, o.start, o.shut, runs)
			continue
		}
		if o.bareOpened {
			e.insert(o.bare[0], "<"+like.tagged("r")+">")
			e.insert(o.bare[1], "</"+like.tagged("r")+">")
		}
		e.insert(o.end, between+runs)
	}
	if list.Len() > 0 {
		name := c.authors.tagged("author")
		e.into(c.data, c.authors, c.shutBy, "<"+name+">"+author+"</"+name+">")
		e.into(c.data, c.list, c.shut, list.String())
	}
	return e.apply(c.data), fresh
}

// runs writes what a comment says, the label of each finding in bold.
func (s *spot) runs() string {
	const font = `<sz val="9"/><color indexed="81"/><rFont val="Tahoma"/><family val="2"/>`
	var b strings.Builder
	for i, n := range s.notes {
		between := ""
		if i > 0 {
			between = "\n\n"
		}
		fmt.Fprintf(&b, `<r><rPr><b/>%s</rPr><t xml:space="preserve">%s</t></r><r><rPr>%s</rPr><t xml:space="preserve">%s</t></r>`,
			font, celled(between+author+", "+n.label+": "), font, celled(n.text))
	}
	return b.String()
}

// size is how many characters a comment has, and how many lines it starts.
func (s *spot) size() (chars, lines int) {
	for _, n := range s.notes {
		chars += len(n.label) + len(n.text) + 8
		lines += 2 + strings.Count(n.text, "\n")
	}
	return chars, lines
}

// bareDrawing is the drawing of a sheet that has no comments yet.
const bareDrawing = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" ` +
	`xmlns:x="urn:schemas-microsoft-com:office:excel"></xml>`

const noteShape = `<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">` +
	`<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>`

// draw adds the boxes of new comments to the drawing of a sheet. Such a part
// need not be well-formed XML, so it is added to by its last tag alone.
func draw(data []byte, l *layout, spots []*spot) ([]byte, error) {
	text := string(data)
	at := strings.LastIndex(text, "</xml>")
	for _, space := range []string{`xmlns:v="urn:schemas-microsoft-com:vml"`, `xmlns:o=`, `xmlns:x=`} {
		if at < 0 || !strings.Contains(text, space) {
			return nil, fmt.Errorf("the drawing of its comments is written in an unusual way; open it in a spreadsheet program and save it again")
		}
	}
	var b strings.Builder
	if !strings.Contains(text, "_x0000_t202") {
		b.WriteString(noteShape)
	}
	id := lastShape(text)
	for _, s := range spots {
		id++
		b.WriteString(l.box(s, id))
	}
	return []byte(text[:at] + b.String() + text[at:]), nil
}

// lastShape gives the highest number of a shape.
func lastShape(text string) int {
	most := 1024
	for rest := text; ; {
		_, after, ok := strings.Cut(rest, "_x0000_s")
		if !ok {
			return most
		}
		end := strings.IndexFunc(after, func(r rune) bool { return r < '0' || r > '9' })
		if end > 0 {
			most = max(most, number(after[:end]))
		}
		rest = after
	}
}

// box draws one comment, hidden until it is pointed at, as wide as some 45
// characters and as high as its text.
func (l *layout) box(s *spot, id int) string {
	const wide, usual, lineHeight = 45.0, 8.5, 12.0
	right, sum := s.col, 0.0
	for sum < wide && right < s.col+12 {
		right++
		switch c := l.column(right); {
		case c.hidden:
		case c.width > 0:
			sum += c.width
		default:
			sum += usual
		}
	}
	chars, lines := s.size()
	need := float64(lines+chars/max(int(sum*1.1), 20)+1) * lineHeight
	bottom, high := s.row, 0.0
	for high < need && bottom < s.row+40 {
		if !l.hidden[bottom] {
			ht := l.heights[bottom]
			if ht == 0 {
				ht = 15
			}
			high += ht
		}
		bottom++
	}
	return fmt.Sprintf(`<v:shape id="_x0000_s%d" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#fffdf2" o:insetmode="auto">`+
		`<v:fill color2="#fffdf2"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/>`+
		`<v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>`+
		`<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>%s</x:Anchor><x:AutoFill>False</x:AutoFill>`+
		`<x:Row>%d</x:Row><x:Column>%d</x:Column></x:ClientData></v:shape>`, id, l.anchor(s, right, bottom), s.row-1, s.col-1)
}

// anchor is left, top, right and bottom of a box, each a column or row and what
// lies beyond its edge.
func (l *layout) anchor(s *spot, right, bottom int) string {
	parts := []int{s.col, 12, s.row - 1, 4, right, 0, bottom, 0}
	out := make([]string, len(parts))
	for i, n := range parts {
		out[i] = strconv.Itoa(n)
	}
	return strings.Join(out, ", ")
}
