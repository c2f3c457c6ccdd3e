package html

import (
	"fmt"
	"slices"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/schedule"
)

// mostDrawn bounds the sections of one file, so that the page of a big
// workbook still opens and prints.
const mostDrawn = 60

// board draws the sections of one file.
type board struct {
	kinds    *kinds
	id       string
	doc      *document.Document
	list     []found
	lines    map[string]*schedule.Line // by sheet and row
	byID     map[string]*schedule.Line
	byRow    map[string][]found
	contacts map[string]*contact.Contact
	made     []assembly
	drawn    int
	left     int // sections that were not drawn
}

// part is one thing of a section, with its letter in the picture.
type part struct {
	Letter string
	Text   string // the author's words
	Read   string // what they were read as
	As     string // its part in the row: substrate, primer, left
	More   string // thickness, what keeps it apart
	Cell   string

	kind    string
	slot    string
	items   []string
	product string
	family  string
	at      []schedule.At // every cell that names it
	box     box
}

type box struct{ x, y, w, h float64 }

func (b box) middle() point { return point{b.x + b.w/2, b.y + b.h/2} }

// section is a picture with the table that says the same.
type section struct {
	Picture drawing
	Parts   []part
	Apart   []string // what the row says is not there or was taken away
	Faults  []fault
}

// fault is a finding as it is drawn: on the joint of two parts, or on one.
type fault struct {
	found
	On string // letters
}

func newBoard(k *kinds, id string, doc *document.Document, list []found) *board {
	b := &board{
		kinds: k, id: id, doc: doc, list: list,
		lines: map[string]*schedule.Line{}, byID: map[string]*schedule.Line{}, byRow: map[string][]found{},
		contacts: map[string]*contact.Contact{},
	}
	for i := range doc.Lines {
		l := &doc.Lines[i]
		b.lines[lineKey(l.Sheet, l.Row)], b.byID[l.ID] = l, l
	}
	for _, f := range list {
		b.byRow[lineKey(f.Sheet, f.Row)] = append(b.byRow[lineKey(f.Sheet, f.Row)], f)
	}
	for i := range doc.Contacts {
		b.contacts[doc.Contacts[i].ID] = &doc.Contacts[i]
	}
	return b
}

func lineKey(sheet string, row int) string { return fmt.Sprintf("%s!%d", sheet, row) }

func (b *board) line(sheet string, row int) *schedule.Line { return b.lines[lineKey(sheet, row)] }

// of lists the findings of a row.
func (b *board) of(l *schedule.Line) []found {
	if l == nil {
		return nil
	}
	return b.byRow[lineKey(l.Sheet, l.Row)]
}

// room says whether one more section may be drawn, and counts it.
func (b *board) room() bool {
	if b.drawn >= mostDrawn {
		b.left++
		return false
	}
	b.drawn++
	return true
}

// more tells what was left out.
func (b *board) more() string {
	if b.left == 0 {
		return ""
	}
	return fmt.Sprintf("%d sections are drawn, the first of this file; %d more are left out so that the page stays readable. "+
		"Their findings are all listed.", b.drawn, b.left)
}

// joints gives the pairs of parts that the contacts of a finding join; a pair
// of which one side is not among the parts is left out.
func (b *board) joints(f found, parts []part) [][2]int {
	var out [][2]int
	for _, id := range f.Facts {
		c := b.contacts[id]
		if c == nil {
			continue
		}
		one, other := partOf(parts, c.A), partOf(parts, c.B)
		if one >= 0 && other >= 0 {
			out = append(out, [2]int{one, other})
		}
	}
	return out
}

// judged lists the parts that a finding judges by name, each once.
func judged(f found, parts []part) []int {
	var out []int
	for _, id := range f.Facts {
		i := slices.IndexFunc(parts, func(p part) bool { return slices.Contains(p.items, id) })
		if i >= 0 && !slices.Contains(out, i) {
			out = append(out, i)
		}
	}
	return out
}

// partOf finds the part that an end of a contact stands for, -1 if none.
func partOf(parts []part, e contact.End) int {
	if i := slices.IndexFunc(parts, func(p part) bool { return slices.Contains(p.items, e.Item) }); i >= 0 || e.Item != "" {
		return i
	}
	return slices.IndexFunc(parts, func(p part) bool { return p.same(e) })
}

// same holds where an end of a contact names the part once more: its product,
// or its family where one of the two has no product.
func (p part) same(e contact.End) bool {
	if p.product != "" && e.Product != "" {
		return p.product == e.Product
	}
	if p.family != "" || e.Family != "" {
		return p.family == e.Family
	}
	return p.Text == e.Text
}

// named lists the parts whose cells a finding names.
func named(f found, parts []part) []int {
	var out []int
	for i, p := range parts {
		if slices.ContainsFunc(p.at, func(at schedule.At) bool {
			return at.Sheet == f.Sheet && at.Row == f.Row && slices.Contains(f.Cells, at.Cell)
		}) {
			out = append(out, i)
		}
	}
	return out
}
