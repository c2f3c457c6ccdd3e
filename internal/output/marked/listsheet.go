package marked

import (
	"fmt"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"github.com/mattn/go-runewidth"

	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/schedule"
	"abut/internal/workbook"
)

// opening is what stands above the findings, a line a row.
func (l *list) opening() []string {
	s := l.run.Summary()
	lines := []string{
		"Findings in " + output.Plain(filepath.Base(l.run.Files[0])),
		schedule.MarkedCopy + " Found " + s.Counts() + ".",
		"Each cell at fault is filled and has a comment, which names its row here. The addresses below lead to the cells; a short cell leads back.",
	}
	return append(lines, broken(output.Caution)...)
}

// broken cuts a long text into lines at its sentences.
func broken(text string) []string {
	const wide = 150
	var lines []string
	for _, sentence := range strings.SplitAfter(text, ". ") {
		if n := len(lines); n > 0 && len(lines[n-1])+len(sentence) <= wide {
			lines[n-1] += sentence
			continue
		}
		lines = append(lines, sentence)
	}
	return lines
}

// Fonts of the sheet.
const (
	fontText  = `<sz val="10"/><color rgb="FF1F2328"/>`
	fontBold  = `<b/><sz val="10"/><color rgb="FF1F2328"/>`
	fontTitle = `<b/><sz val="14"/><color rgb="FF1F2328"/>`
	fontLink  = `<u/><sz val="10"/><color rgb="FF1B4F80"/>`
)

// page writes the rows of the sheet.
type page struct {
	m         *marking
	addresses int // columns of them
	b         strings.Builder
	links     strings.Builder
	row       int
}

// sheet writes the part and gives the row of its headings.
func (l *list) sheet(m *marking) (part string, heading int) {
	p := &page{m: m, addresses: l.links}
	for i, line := range l.opening() {
		font := fontText
		if i == 0 {
			font = fontTitle
		}
		p.line(p.cell(1, line, font, "", ""))
	}
	p.legend()
	p.line("")
	heading = l.heading()
	p.headings(append(schedule.MarkedHeadings(), "Mark", "Finding", "What to do", "Why", "Where the rule comes from")...)
	for i, e := range l.rows {
		p.entry(e, strconv.Itoa(i+1))
	}
	end := p.row
	if len(l.unread) > 0 {
		p.line("")
		p.line(p.cell(1, "Not understood, and so not checked", fontBold, "", ""))
		p.headings("", "", "Sheet", "Cell", "", "Text", "Why")
		for _, e := range l.unread {
			p.entry(e, "")
		}
	}
	for _, aside := range l.asides {
		p.line(p.cell(1, output.Plain(aside), fontText, "", ""))
	}
	return p.part(heading, end), heading
}

func (p *page) line(cells string) {
	p.row++
	if cells != "" {
		fmt.Fprintf(&p.b, `<row r="%d">%s</row>`, p.row, cells)
	}
}

// tall writes a row as high as its highest cell: not every program finds that
// by itself.
func (p *page) tall(cells string, lines int) {
	const line, gap = 13.5, 4
	p.row++
	fmt.Fprintf(&p.b, `<row r="%d" ht="%g" customHeight="1">%s</row>`, p.row, min(line*float64(lines)+gap, 400), cells)
}

// linesOf gives how many lines a text takes in a column.
func linesOf(text string, width int) int {
	n := 0
	wide := runewidth.Condition{StrictEmojiNeutral: true} // not as the user's locale has it: same input, same bytes
	for line := range strings.SplitSeq(text, "\n") {
		n += 1 + wide.StringWidth(line)/max(width-1, 1)
	}
	return n
}

// cell writes a text as a text: whatever it begins with, it is no formula.
func (p *page) cell(col int, text, font, alignment, label string) string {
	if text == "" {
		return fmt.Sprintf(`<c r="%s" s="%d"/>`, ref(p.row+1, col), p.m.styles.own(font, alignment, label))
	}
	return fmt.Sprintf(`<c r="%s" s="%d" t="inlineStr"><is><t xml:space="preserve">%s</t></is></c>`,
		ref(p.row+1, col), p.m.styles.own(font, alignment, label), celled(text))
}

const wrapped = `vertical="top" wrapText="1"`

func (p *page) legend() {
	text := p.cell(1, "Fills", fontText, "", "")
	for i, label := range append(engine.Severities(), "waived") {
		text += p.cell(2+i, label, fontBold, "", label)
	}
	p.line(text)
}

// headings writes the names of the columns; that of the addresses stands once.
func (p *page) headings(names ...string) {
	text := ""
	names = slices.Insert(names, 4, make([]string, p.addresses-1)...)
	for i, name := range names {
		text += p.cell(i+1, name, fontBold, wrapped, "")
	}
	p.line(text)
}

// widths are those of the columns.
func (p *page) widths() []int {
	out := []int{5, 9, 18}
	for range p.addresses {
		out = append(out, 8)
	}
	return append(out, 10, 52, 40, 40, 30)
}

func (p *page) entry(e entry, n string) {
	var b strings.Builder
	widths := p.widths()
	lines := max(linesOf(e.place, widths[2]), 1)
	if n != "" {
		fmt.Fprintf(&b, `<c r="%s" s="%d"><v>%s</v></c>`, ref(p.row+1, 1), p.m.styles.own(fontText, wrapped, ""), n)
	}
	if e.label != "" {
		b.WriteString(p.cell(2, e.label, fontBold, wrapped, e.label))
	}
	b.WriteString(p.cell(3, e.place, fontText, wrapped, ""))
	for i, s := range e.spots[:min(len(e.spots), p.addresses)] {
		b.WriteString(p.address(4+i, e.sheet, s))
		if s.shown().hidden {
			lines = max(lines, 2)
		}
	}
	for col := 4 + min(len(e.spots), p.addresses); col < 4+p.addresses; col++ {
		b.WriteString(p.cell(col, "", fontText, wrapped, "")) // for the line under the row
	}
	for i, t := range e.texts {
		col := 4 + p.addresses + i
		b.WriteString(p.cell(col, t, fontText, wrapped, ""))
		lines = max(lines, linesOf(t, widths[col-1]))
	}
	p.tall(b.String(), lines)
}

// address writes one address and has it lead to its cell.
func (p *page) address(col int, sheet string, s *spot) string {
	s = s.shown()
	shown, target := ref(s.row, s.col), location(sheet, ref(s.row, s.col))
	if s.hidden {
		shown += " hidden"
	}
	fmt.Fprintf(&p.links, `<hyperlink ref="%s" location="%s" tooltip="%s"/>`, ref(p.row+1, col), escaped(target), escaped("To "+target))
	return p.cell(col, shown, fontLink, wrapped, "")
}

// part is the whole of the sheet: its first rows stay in view, and on paper it
// is as wide as a page.
func (p *page) part(heading, end int) string {
	widths := p.widths()
	var cols strings.Builder
	for i, w := range widths {
		fmt.Fprintf(&cols, `<col min="%d" max="%[1]d" width="%d" customWidth="1"/>`, i+1, w)
	}
	hyperlinks, filter := "", ""
	if p.links.Len() > 0 {
		hyperlinks = "<hyperlinks>" + p.links.String() + "</hyperlinks>"
	}
	if end > heading {
		filter = fmt.Sprintf(`<autoFilter ref="A%d:%s%d"/>`, heading, workbook.ColumnName(len(widths)), end)
	}
	return fmt.Sprintf(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<worksheet xmlns="%s"><sheetPr><tabColor rgb="FF%s"/><pageSetUpPr fitToPage="1"/></sheetPr>`+
		`<sheetViews><sheetView showGridLines="0" workbookViewId="0"><pane ySplit="%d" topLeftCell="A%d" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>`+
		`<cols>%s</cols><sheetData>%s</sheetData>%s%s<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.5" header="0.3" footer="0.3"/>`+
		`<pageSetup orientation="landscape" fitToHeight="0"/></worksheet>`,
		p.m.mainSpace(), fillColor("error"), heading, heading+1, cols.String(), p.b.String(), filter, hyperlinks)
}
