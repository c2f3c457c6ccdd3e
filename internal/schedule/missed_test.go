package schedule_test

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
	"abut/internal/workbook"
)

// changed is a book of one schedule in which one cell is made into something else.
func changed(t *testing.T, row, col int, change func(*workbook.Cell)) *workbook.Book {
	t.Helper()
	b := xlsxBook(t, "wall.xlsx", page{name: "S", grid: `
Item | Membrane | Substrate | Qty | Note
1 | butyl sheet | plywood | 40 | x
2 | SBS sheet | CMU | 50 | x`}, page{name: "Cover", grid: "Ferry hall | Portland, Maine"})
	cells := b.Sheets[0].Row(row)
	for i := range cells {
		if cells[i].Col == col {
			change(&cells[i])
			return b
		}
	}
	t.Fatalf("%s holds nothing", workbook.Ref(row, col))
	return nil
}

func uncomputed(c *workbook.Cell) {
	*c = workbook.Cell{Row: c.Row, Col: c.Col, Kind: workbook.FormulaEmpty, Formula: true}
}

// TestUncomputed: a formula without a result is never taken for an empty cell.
func TestUncomputed(t *testing.T) {
	const do = ": its formula was saved without a result; open the file in a spreadsheet program and save it again"
	for _, col := range []int{2, 3} {
		_, err := reader(t).Read(changed(t, 3, col, uncomputed), schedule.Settings{})
		if want := "wall.xlsx: S!" + workbook.Ref(3, col) + do; err == nil || err.Error() != want {
			t.Errorf("got %v, want %s", err, want)
		}
	}
	b := changed(t, 2, 2, uncomputed) // no row is left that shows a material
	for i := range b.Sheets[0].Rows[1:] {
		for j := range b.Sheets[0].Rows[i+1].Cells {
			uncomputed(&b.Sheets[0].Rows[i+1].Cells[j])
		}
	}
	if _, err := reader(t).Read(b, schedule.Settings{}); err == nil || err.Error() != "wall.xlsx: S!A2"+do {
		t.Errorf("got %v", err)
	}
	s := readBook(t, changed(t, 3, 4, uncomputed), schedule.Settings{}) // a quantity that nobody judges
	if got := unread(s); !slices.Contains(got, "S!D3 a formula: the formula was saved without a result") {
		t.Errorf("got %q", got)
	}
}

// TestMissed: what is not read is said.
func TestMissed(t *testing.T) {
	for name, tc := range map[string]struct {
		row, col int
		change   func(*workbook.Cell)
		want     string
	}{
		"error":   {3, 3, func(c *workbook.Cell) { c.Kind, c.Value = workbook.Error, "#REF!" }, "S!C3 #REF!: the cell shows an error instead of a value"},
		"remark":  {3, 5, func(c *workbook.Cell) { c.Kind, c.Value = workbook.Error, "#N/A" }, "S!E3 #N/A: the cell shows an error instead of a value"},
		"masked":  {2, 2, func(c *workbook.Cell) { c.Value, c.Masked = "", "butyl sheet" }, "S!B2 butyl sheet: its number format hides it, so it was not read"},
		"comment": {2, 2, func(c *workbook.Cell) { c.Comment = "SBS instead?" }, "S!B2 1 comment: comments on cells are not read"},
		"beside":  {3, 5, func(c *workbook.Cell) { c.Col = 9 }, "S!I3 x: the column is not known"},
	} {
		b := changed(t, tc.row, tc.col, tc.change)
		b.Sheets[0].MaxCol = 9
		s := readBook(t, b, schedule.Settings{})
		if got := unread(s); !slices.Contains(got, tc.want) {
			t.Errorf("%s: got %q, want %q", name, got, tc.want)
		}
	}
	b := changed(t, 2, 2, func(*workbook.Cell) {})
	if got := unread(readBook(t, b, schedule.Settings{})); strings.Contains(strings.Join(got, " "), "read") {
		t.Errorf("the sound book: %q", got)
	}
	b.Sheets[1].Asides = []workbook.Aside{{What: "text box", Text: "Keep EPDM off"}}
	uncomputed(&b.Sheets[1].Rows[0].Cells[1])
	got := unread(readBook(t, b, schedule.Settings{}))
	for _, want := range []string{"Cover Keep EPDM off: it stands in a text box, which is not read", "Cover!B1 1 formula: saved without results; open the file in a spreadsheet program and save it again"} {
		if !slices.Contains(got, want) {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// TestBeside: a word far below and beside the headings is not lost.
func TestBeside(t *testing.T) {
	s := read(t, "Item | Membrane | Substrate | Primer\n"+strings.Repeat("1 | butyl sheet | CMU | none\n", 280)+"2 | butyl sheet | CMU | none | | | keep EPDM off\n")
	if got := unread(s); !slices.Equal(got, []string{"!G282 keep EPDM off: it stands beside the table, under no heading"}) {
		t.Errorf("got %q", got)
	}
}

// unread writes what was not read, one text each.
func unread(s *schedule.Schedule) []string {
	var out []string
	for _, u := range s.Reading.Unread {
		at := u.At.Sheet
		if u.At.Cell != "" {
			at += "!" + u.At.Cell
		}
		out = append(out, at+" "+u.Text+": "+u.Why)
	}
	return out
}
