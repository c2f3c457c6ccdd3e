// Package marked writes the marked copy of a workbook: the author's own, with
// the cells at fault filled and commented, and a sheet that lists the findings.
//
// The archive is patched rather than written anew: parts that need no change
// are copied byte for byte, and of the others only the places that change. So
// pictures, charts, macros and whatever a library does not know stay as they
// are.
package marked

import (
	"cmp"
	"fmt"
	"io"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"abut/internal/engine"
	"abut/internal/output"
)

// Fits says whether a marked copy of a file may bear a name: macros need an
// ending of their own, and a workbook without them may not have it.
func Fits(file, out string) error {
	from, to := strings.ToLower(filepath.Ext(file)), strings.ToLower(filepath.Ext(out))
	if (from == ".xlsm") != (to == ".xlsm") {
		want := map[bool]string{true: ".xlsm, as its original", false: ".xlsx"}[from == ".xlsm"]
		return fmt.Errorf("-o %s: a marked copy of %s must end in %s", out, file, want)
	}
	return nil
}

// Write writes the marked copy of the one file of a run, whose bytes are given.
func Write(w io.Writer, data []byte, run output.Run) error {
	file := run.Files[0]
	if err := write(w, file, data, run); err != nil {
		return fmt.Errorf("%s: no marked copy can be made: %w", file, err)
	}
	return nil
}

func write(w io.Writer, file string, data []byte, run output.Run) error {
	if !strings.HasPrefix(string(data[:min(len(data), 2)]), "PK") {
		var err error
		if data, err = ofText(file, data); err != nil {
			return err
		}
	}
	b, err := openBook(data)
	if err != nil {
		return err
	}
	m := &marking{book: b, file: file, name: b.freeName(), list: newList(run)}
	m.list.gather(m)
	if err := m.styled(); err != nil {
		return err
	}
	for _, s := range b.sheets {
		if len(m.spots[s.name]) == 0 {
			continue
		}
		if err := b.inside("mark", s.part, func() error { return m.sheet(s) }); err != nil {
			return err
		}
	}
	if b.has("_xmlsignatures/origin.sigs") {
		m.list.asides = append(m.list.asides, "The original is signed; a signature does not hold for a marked copy.")
	}
	sheet, heading := m.list.sheet(m)
	b.put(m.stylesPart, m.styles.bytes())
	if err := b.addSheet(m.name, []byte(sheet), heading); err != nil {
		return err
	}
	if err := b.untemplated(); err != nil {
		return err
	}
	return b.write(w)
}

// marking is one workbook on the way to its marked copy.
type marking struct {
	*book
	file, name string // name: of the new sheet
	list       *list
	spots      map[string][]*spot // by sheet
	styles     *styles
	stylesPart string
	texts      []text // shared by the cells
	textsRead  bool
}

// sheetOf gives the sheet a finding stands on; the one of a text table has no
// name.
func (m *marking) sheetOf(file, sheet string) (string, bool) {
	if file != m.file {
		return "", false
	}
	if sheet == "" && len(m.sheets) == 1 {
		return m.sheets[0].name, true
	}
	return sheet, slices.ContainsFunc(m.sheets, func(s sheetEntry) bool { return s.name == sheet })
}

// styled reads the part with the formats.
func (m *marking) styled() error {
	rels, err := m.relations(m.book.name)
	if err != nil {
		return err
	}
	data := []byte(strings.Replace(bareStyles, mainSpace, m.mainSpace(), 1))
	for _, r := range rels {
		if r.kind == "styles" && m.has(r.target) {
			m.stylesPart = r.target
		}
	}
	if m.stylesPart != "" {
		if data, err = m.read(m.stylesPart); err != nil {
			return err
		}
	} else {
		m.stylesPart = m.free(path.Dir(m.book.name), "styles", ".xml")
		m.put(m.stylesPart, data)
		if _, err := m.relate(m.book.name, "styles", m.stylesPart); err != nil {
			return err
		}
		if err := m.declare(m.stylesPart, formatType+"styles+xml"); err != nil {
			return err
		}
	}
	return m.inside("read", m.stylesPart, func() error {
		m.styles, err = readStyles(data)
		return err
	})
}

// sheet marks the cells of one sheet.
func (m *marking) sheet(s sheetEntry) error {
	data, err := m.read(s.part)
	if err != nil {
		return err
	}
	l, err := readLayout(data)
	if err != nil {
		return err
	}
	spots := settled(m.spots[s.name], l, s.hidden)
	m.spots[s.name] = spots
	c := &cells{data: data, spots: slices.Clone(spots), styles: m.styles, layout: l, texts: m.sharedText}
	if err := walk(data, c.visit); err != nil {
		return err
	}
	m.linkBack(&c.edits, data, l, spots)
	if err := m.comment(s, l, spots, &c.edits); err != nil {
		return err
	}
	m.put(s.part, c.edits.apply(data))
	return nil
}

// settled puts spots in the order of the sheet, those within merged cells at
// the top left, where they join what is said there.
func settled(spots []*spot, l *layout, hiddenSheet bool) []*spot {
	at := map[[2]int]*spot{}
	var out []*spot
	for _, s := range spots {
		s.row, s.col = l.home(s.row, s.col)
		s.hidden = hiddenSheet || l.hidden[s.row] || l.column(s.col).hidden
		first := at[[2]int{s.row, s.col}]
		if first == nil {
			at[[2]int{s.row, s.col}] = s
			out = append(out, s)
			continue
		}
		for _, n := range s.notes {
			if !slices.Contains(first.notes, n) {
				first.notes = append(first.notes, n)
			}
		}
		first.label = graver(first.label, s.label)
		s.joined = first
	}
	slices.SortFunc(out, func(a, b *spot) int { return cmp.Or(a.row-b.row, a.col-b.col) })
	return out
}

// graver gives the label that counts more.
func graver(a, b string) string {
	order := append(engine.Severities(), "waived")
	if a == "" || slices.Index(order, b) < slices.Index(order, a) {
		return b
	}
	return a
}

// linkBack has cells lead to the Findings sheet. A cell with a link of its own
// keeps that, and one whose text is long or has formats within, such as what was
// struck out, is left alone: some programs show a link as plain text in one line.
func (m *marking) linkBack(e *edits, data []byte, l *layout, spots []*spot) {
	var b strings.Builder
	for _, s := range spots {
		taken := slices.ContainsFunc(l.linked, func(r block) bool { return r.holds(s.row, s.col) })
		if taken || s.fixed {
			continue
		}
		fmt.Fprintf(&b, `<%s ref="%s" location="%s" tooltip="%s"/>`, l.root.tagged("hyperlink"), ref(s.row, s.col),
			escaped(location(m.name, "A"+strconv.Itoa(s.back))), escaped("To row "+strconv.Itoa(s.back)+" of "+m.name))
	}
	if b.Len() == 0 {
		return
	}
	if l.links.start {
		e.into(data, l.links, l.linksEnd, b.String())
		return
	}
	name := l.root.tagged("hyperlinks")
	e.insert(l.slots["hyperlinks"], "<"+name+">"+b.String()+"</"+name+">")
}

// text is what is known of a shared text.
type text struct {
	rich   bool // it has formats within
	length int
}

// sharedText tells of a shared text; what is not known counts as rich, which
// only costs a link.
func (m *marking) sharedText(n int) text {
	if !m.textsRead {
		m.textsRead = true
		if err := m.readTexts(); err != nil {
			m.texts = nil
		}
	}
	if n < 0 || n >= len(m.texts) {
		return text{rich: true}
	}
	return m.texts[n]
}

func (m *marking) readTexts() error {
	rels, err := m.relations(m.book.name)
	if err != nil {
		return err
	}
	for _, r := range rels {
		if r.kind != "sharedStrings" || !m.has(r.target) {
			continue
		}
		data, err := m.read(r.target)
		if err != nil {
			return err
		}
		begun := 0
		return walk(data, func(n node) error {
			switch {
			case n.name == "si" && n.start:
				m.texts = append(m.texts, text{})
			case n.name == "r" && n.parent == "si":
				m.texts[len(m.texts)-1].rich = true
			case n.name == "t" && n.start:
				begun = n.to
			case n.name == "t" && len(m.texts) > 0:
				m.texts[len(m.texts)-1].length += n.from - begun
			}
			return nil
		})
	}
	return nil
}
