package engine

import (
	"reflect"
	"slices"
	"strings"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/schedule"
)

// worthSharing is the least share of rows that must be spared for a document
// of distinct cases to be made: to make and ask a second one has its price.
const worthSharing = 0.25

// cases is a document with one row of each case, and the rows that such a row
// stands for, itself first.
type cases struct {
	doc    *document.Document
	copies map[string][]*row
}

// row is a line with what hangs on it.
type row struct {
	line     *schedule.Line
	contacts []*contact.Contact
	windows  []*document.Window
	alone    bool // another row or a section points at it
	named    bool // other rows may name it
}

// held says which rows others are held against by their names; see
// policies/lib/held.json.
type held struct {
	Columns []string `json:"columns"`
	Signals []string `json:"signals"`
}

// lists: the line is one of those that others look up in a list.
func (h held) lists(l *schedule.Line) bool {
	return slices.ContainsFunc(h.Columns, func(slot string) bool { return l.Texts[slot] != "" })
}

// tells: the line has a word that others may be judged by.
func (h held) tells(l *schedule.Line) bool {
	return slices.ContainsFunc(l.Signals, func(s schedule.Said) bool { return slices.Contains(h.Signals, s.ID) })
}

// cases finds the rows that are judged once. What an office brings is not held
// to our habits: its data may know the numbers of marks, and what it replaces
// may look across rows.
func (e *Engine) cases(doc *document.Document) *cases {
	replaced := func(c Change) bool { return c.What == rulesReplaced }
	if doc.Comparison != nil || slices.ContainsFunc(e.changes, replaced) {
		return nil // the pairs of a comparison point at rows
	}
	return e.shared.Held.cases(doc, len(e.changes) == 0, worthSharing)
}

// cases finds the rows in which the same is said, whatever their addresses
// and, where these are mere names, the numbers of their labels. It gives nil
// where that spares less than the least share of the rows.
func (h held) cases(doc *document.Document, names bool, least float64) *cases {
	rows := h.rows(doc)
	w := writer{masks: names && !h.namesPlaces(doc), parts: map[reflect.Type][]part{}}
	first := map[string]*row{}
	c := &cases{copies: map[string][]*row{}}
	var kept []*row
	for _, r := range rows {
		if !r.alone {
			says := w.says(r)
			if head := first[string(says)]; head != nil {
				if c.copies[head.line.ID] == nil {
					c.copies[head.line.ID] = []*row{head}
				}
				c.copies[head.line.ID] = append(c.copies[head.line.ID], r)
				continue
			}
			first[string(says)] = r
		}
		kept = append(kept, r)
	}
	if float64(len(rows)-len(kept)) < least*float64(len(rows)) {
		return nil
	}
	c.doc = reduced(doc, kept)
	return c
}

func (h held) rows(doc *document.Document) []*row {
	rows := make([]*row, len(doc.Lines))
	byID := make(map[string]*row, len(rows))
	for i := range doc.Lines {
		l := &doc.Lines[i]
		rows[i] = &row{line: l, alone: l.Turned || h.lists(l), named: h.tells(l)} // what is turned has its cells in no one row
		byID[l.ID] = rows[i]
	}
	alone := func(id string) {
		if r := byID[id]; r != nil {
			r.alone = true
		}
	}
	for i := range doc.Contacts {
		c := &doc.Contacts[i]
		if r := byID[c.Line]; r != nil {
			r.contacts = append(r.contacts, c)
		}
		for _, end := range []*contact.End{&c.A, &c.B, c.Separator} {
			if end != nil && end.Line != c.Line {
				alone(end.Line)
				alone(c.Line)
			}
		}
	}
	for i := range doc.Windows {
		if r := byID[doc.Windows[i].Line]; r != nil {
			r.windows = append(r.windows, &doc.Windows[i])
		}
	}
	for _, r := range rows {
		for _, day := range r.line.Dates {
			alone(day.Ref)
		}
	}
	for _, p := range doc.Profiles {
		for _, id := range p.Lines {
			alone(id)
		}
		for _, l := range p.Layers {
			alone(l.Line)
		}
	}
	return rows
}

// namesPlaces: a requirement, a letter, a room or the row of a list is for a
// place or mark, so the numbers in labels are no mere names.
func (h held) namesPlaces(doc *document.Document) bool {
	return slices.ContainsFunc(doc.Project.Limits, func(l schedule.Limit) bool { return l.Scope != "" || l.Letter != "" }) ||
		slices.ContainsFunc(doc.Project.Indoor, func(r schedule.Room) bool { return r.Scope != "" }) ||
		slices.ContainsFunc(doc.Lines, func(l schedule.Line) bool { return h.lists(&l) })
}

// reduced is the document with some of its rows.
func reduced(doc *document.Document, kept []*row) *document.Document {
	d := *doc
	d.Lines = make([]schedule.Line, 0, len(kept))
	d.Contacts, d.Windows = []contact.Contact{}, []document.Window{}
	for _, r := range kept {
		d.Lines = append(d.Lines, *r.line)
		for _, c := range r.contacts {
			d.Contacts = append(d.Contacts, *c)
		}
		for _, w := range r.windows {
			d.Windows = append(d.Windows, *w)
		}
	}
	return &d
}

// moved are the findings of a row, told again for each row that says the same.
func (c *cases) moved(f Finding, line string) []Finding {
	all := []Finding{f}
	if c == nil || len(c.copies[line]) == 0 {
		return all
	}
	from := c.copies[line][0]
	for _, to := range c.copies[line][1:] {
		m := f
		m.Row, m.Mark = to.line.Row, to.line.Mark
		m.Cells = movedCells(f.Cells, from, to)
		m.Facts = movedFacts(f.Facts, from, to)
		m.Related = slices.Clone(f.Related)
		for i, r := range m.Related {
			if r.Sheet == from.line.Sheet && r.Row == from.line.Row {
				m.Related[i].Row, m.Related[i].Cells = to.line.Row, movedCells(r.Cells, from, to)
			}
		}
		all = append(all, m)
	}
	return all
}

func movedCells(cells []string, from, to *row) []string {
	moved := slices.Clone(cells)
	for i, cell := range cells {
		if column, ok := columnIn(cell, rowText(from.line)); ok {
			moved[i] = column + rowText(to.line)
		}
	}
	return moved
}

func movedFacts(facts []string, from, to *row) []string {
	moved := slices.Clone(facts)
	for i, fact := range facts {
		if rest, own := strings.CutPrefix(fact, from.line.ID+"/"); own {
			moved[i] = to.line.ID + "/" + rest
			continue
		}
		if n := slices.IndexFunc(from.contacts, func(c *contact.Contact) bool { return c.ID == fact }); n >= 0 {
			moved[i] = to.contacts[n].ID
		}
	}
	return moved
}
