package html

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/engine"
)

// found is a finding with its number on the page.
type found struct {
	engine.Finding
	Number int
}

func newFound(n int, f engine.Finding) found { return found{f, n} }

// ID is the anchor of the finding.
func (f found) ID() string { return fmt.Sprintf("finding%d", f.Number) }

// Words is what the text filter looks into.
func (f found) Words() string {
	parts := []string{f.Rule, f.Topic, f.Severity, f.Sheet, f.Mark, f.Message, f.Remedy, strings.Join(f.Cells, " ")}
	return strings.ToLower(strings.Join(parts, " "))
}

// Where names the cells.
func (f found) Where() string {
	switch len(f.Cells) {
	case 0:
		return ""
	case 1:
		return "Cell " + f.Cells[0]
	}
	return "Cells " + strings.Join(f.Cells, ", ")
}

// With names the related rows.
func (f found) With() []string {
	var out []string
	for _, r := range f.Related {
		var parts []string
		if r.Sheet != f.Sheet {
			parts = append(parts, "sheet "+r.Sheet)
		}
		if r.Row > 0 {
			parts = append(parts, fmt.Sprintf("row %d", r.Row))
		}
		if len(r.Cells) > 0 {
			parts = append(parts, strings.Join(r.Cells, ", "))
		}
		out = append(out, strings.Join(parts, ", ")+": "+r.What)
	}
	return out
}

// sheet is the findings of one sheet, by row.
type sheet struct {
	ID, Name string
	Rows     []row
}

// row is the findings of one row with its drawing.
type row struct {
	ID      string
	Row     int
	Mark    string
	Place   string
	Words   string // the row's own material
	Section *section
	// Assembly is the anchor of the drawing that shows the row as a layer.
	Assembly string
	Findings []found
}

// sheets groups the findings by sheet and row and draws each row that can be.
func (b *board) sheets() []sheet {
	var out []sheet
	for _, f := range b.list {
		if len(out) == 0 || out[len(out)-1].Name != f.Sheet {
			out = append(out, sheet{ID: fmt.Sprintf("%s-sheet%d", b.id, len(out)+1), Name: f.Sheet})
		}
		s := &out[len(out)-1]
		if len(s.Rows) == 0 || s.Rows[len(s.Rows)-1].Row != f.Row || s.Rows[len(s.Rows)-1].Mark != f.Mark {
			s.Rows = append(s.Rows, row{ID: fmt.Sprintf("%s-row%d", s.ID, len(s.Rows)+1), Row: f.Row, Mark: f.Mark})
		}
		r := &s.Rows[len(s.Rows)-1]
		r.Findings = append(r.Findings, f)
	}
	for i := range out {
		for j := range out[i].Rows {
			b.tell(out[i].Name, &out[i].Rows[j])
		}
	}
	return out
}

// tell adds the row's own words and its drawing.
func (b *board) tell(sheetName string, r *row) {
	l := b.line(sheetName, r.Row)
	if l == nil {
		return
	}
	r.Place = l.Place
	if main := l.Main(); main != nil {
		r.Words = main.Text
		if main.Name != "" {
			r.Words += ", " + main.Name
		}
	}
	if a := slices.IndexFunc(b.made, func(a assembly) bool { return slices.Contains(a.lines, l.ID) }); a >= 0 {
		r.Assembly = b.made[a].ID
		if !b.reachesOut(&b.made[a], r.Findings) {
			return
		}
	}
	r.Section = b.detail(r.ID, l, r.Findings)
}
