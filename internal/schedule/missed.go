package schedule

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// computed refuses a workbook in whose tables a formula stands without its
// result: what the row says there cannot be known, and it may be what matters.
func (r *reader) computed(b *workbook.Book, all []*table) error {
	for _, book := range append([]*workbook.Book{b}, r.set.Products...) {
		for i := range book.Sheets {
			for _, t := range onSheet(all, &book.Sheets[i]) {
				if c, ok := t.uncomputed(); ok && t.kind != kindOther {
					return notComputed(book.Path, t.sheet.Name, c)
				}
			}
		}
	}
	return nil
}

// uncomputed finds the first formula without a result in the columns that are
// read.
func (t *table) uncomputed() (workbook.Cell, bool) {
	for row := t.first; row <= t.end; row++ {
		for i, col := range t.nums {
			if c, ok := t.sheet.At(row, col); ok && c.Kind == workbook.FormulaEmpty && reads(t.cols[i]) {
				return c, true
			}
		}
	}
	return workbook.Cell{}, false
}

func notComputed(path, sheet string, c workbook.Cell) error {
	return &workbook.FileError{Path: path, Sheet: sheet, Cell: c.Ref(),
		Problem: "its formula was saved without a result", Do: "open the file in a spreadsheet program and save it again"}
}

// noTable is the error of a workbook without a table; where formulas have no
// results, that is the likelier fault.
func noTable(b *workbook.Book) error {
	for _, s := range b.Sheets {
		for _, row := range s.Rows {
			for _, c := range row.Cells {
				if c.Kind == workbook.FormulaEmpty {
					return notComputed(b.Path, s.Name, c)
				}
			}
		}
	}
	return &NoTable{Path: b.Path}
}

// missed lists what stands on a sheet and was not read, beside what tally lists.
func (r *reader) missed(s *workbook.Sheet, tables []*table) {
	var comments, formulas gathered
	for _, row := range s.Rows {
		for _, c := range row.Cells {
			if c.Comment != "" {
				comments.add(c)
			}
			row, column := across(c, tables)
			switch why := notShown(c); {
			case c.Merged, column != nil && column.kind == kindSchedule: // tally tells
			case c.Kind == workbook.FormulaEmpty:
				formulas.add(c)
			case why != "":
				r.unread(cmp.Or(c.Value, c.Masked), why, at(s, c))
			case row != nil && column == nil && strings.TrimSpace(c.Value) != "":
				r.unread(strings.TrimSpace(c.Value), "it stands beside the table, under no heading", at(s, c))
			}
		}
	}
	if comments.n > 0 {
		r.unread(comments.counted("comment"), "comments on cells are not read", at(s, comments.first))
	}
	if formulas.n > 0 {
		r.unread(formulas.counted("formula"), "saved without results; open the file in a spreadsheet program and save it again", at(s, formulas.first))
	}
	for _, a := range s.Asides {
		r.unread(a.Text, "it stands in a "+a.What+", which is not read", At{Sheet: s.Name})
	}
}

// across finds the table of whose rows a cell is in one, and the table of whose
// columns too.
func across(c workbook.Cell, tables []*table) (row, column *table) {
	for _, t := range tables {
		if t.kind == kindOther || c.Row < t.first || c.Row > t.last {
			continue
		}
		if row = t; slices.Contains(t.nums, c.Col) {
			column = t
		}
	}
	return row, column
}

// notShown says why a cell that holds something shows none of it.
func notShown(c workbook.Cell) string {
	switch {
	case c.Kind == workbook.Error:
		return "the cell shows an error instead of a value"
	case c.Kind == workbook.FormulaEmpty:
		return "the formula was saved without a result"
	case c.Masked != "":
		return "its number format hides it, so it was not read"
	}
	return ""
}

func (r *reader) unread(text, why string, at At) {
	r.sched.Reading.Unread = append(r.sched.Reading.Unread, Unread{Text: text, Why: why, At: at})
}

func at(s *workbook.Sheet, c workbook.Cell) At {
	return At{Sheet: s.Name, Row: c.Row, Cell: c.Ref()}
}

// gathered counts cells of a kind and keeps the first.
type gathered struct {
	n     int
	first workbook.Cell
}

func (g *gathered) add(c workbook.Cell) {
	if g.n++; g.n == 1 {
		g.first = c
	}
}

func (g *gathered) counted(word string) string {
	if g.n > 1 {
		word += "s"
	}
	return fmt.Sprintf("%d %s", g.n, word)
}
