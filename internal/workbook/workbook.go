// Package workbook turns the bytes of a workbook (xlsx, xlsm, xltx, csv) into
// a plain grid of cells with addresses. It knows nothing of what the cells
// mean: it says what a reader of the sheet sees, what was struck out, what is
// hidden or merged, and refuses whatever it cannot read whole.
package workbook

import (
	"slices"
	"strconv"
	"time"
)

// Kind says what a cell holds.
type Kind int

// The kinds of cell. A formula has the kind of its stored result; FormulaEmpty
// is a formula whose result was never stored.
const (
	Text Kind = iota
	Number
	Date
	Bool
	Error
	FormulaEmpty
)

// String gives the kind as one word or two, for messages.
func (k Kind) String() string {
	names := [...]string{"text", "number", "date", "yes/no", "error value", "formula without a result"}
	if k < 0 || int(k) >= len(names) {
		return "unknown"
	}
	return names[k]
}

// Cell is one cell that holds something. Value can be "" where all of it is
// struck out, where its number format hides it, where a formula has no stored
// result, or where only a comment is attached.
type Cell struct {
	Row, Col  int       // from 1
	Value     string    // what a reader sees, without struck-out text; a date as 2026-03-31 or 2026-03-31 07:30
	Kind      Kind      // Text as well when all is struck out
	Number    float64   // full precision, for Number and Date
	Date      time.Time // for Date only, UTC
	Format    string    // number format code, "" for general
	Struck    string    // superseded text, "" if none
	AllStruck bool      // nothing current is left
	Merged    bool      // copied from the top left of the merged range it lies in
	Hidden    bool      // in a hidden row or column
	Comment   string    // note attached to the cell
	Masked    string    // what its number format hides
	Formula   bool
}

// Ref is the cell's address in its sheet, such as "F12".
func (c Cell) Ref() string { return Ref(c.Row, c.Col) }

// Ref writes a row and column, both from 1, as an address such as "F12".
func Ref(row, col int) string { return ColumnName(col) + strconv.Itoa(row) }

// ColumnName writes a column, from 1, in letters: 1 is A, 27 is AA.
func ColumnName(col int) string {
	var b [8]byte
	i := len(b)
	for ; col > 0 && i > 0; col = (col - 1) / 26 {
		i--
		b[i] = byte('A' + (col-1)%26)
	}
	return string(b[i:])
}

// Row is one row that holds something, its cells from left to right.
type Row struct {
	Number int // from 1
	Hidden bool
	Cells  []Cell
}

// Range is a block of cells, bounds included, from 1.
type Range struct{ Top, Left, Bottom, Right int }

// String is the address of the range, as in B2:D4.
func (r Range) String() string { return Ref(r.Top, r.Left) + ":" + Ref(r.Bottom, r.Right) }

// Span is a run of rows or columns, bounds included, from 1.
type Span struct{ From, To int }

// SheetKind tells a worksheet from what holds no cells.
type SheetKind string

// The kinds of sheet; only a worksheet has rows.
const (
	Worksheet  SheetKind = "worksheet"
	Chartsheet SheetKind = "chartsheet"
	OtherSheet SheetKind = "other" // dialog or macro sheet
)

// Sheet is one sheet as a sparse grid: Rows ascend, and rows without anything
// are not in it.
type Sheet struct {
	Name           string // "" for csv
	State          string // visible, hidden, veryHidden
	Kind           SheetKind
	Rows           []Row
	MaxRow, MaxCol int // last row and column that hold something
	Merges         []Range
	Lists          []Range // what drop-downs, of this sheet or another, take their words from
	HiddenRows     []Span
	HiddenCols     []Span
	Asides         []Aside // text that stands in no cell
}

// Row gives the cells of a row, none if it holds nothing.
func (s *Sheet) Row(row int) []Cell {
	if i, ok := s.find(row); ok {
		return s.Rows[i].Cells
	}
	return nil
}

// At gives the cell at a row and column, and whether it holds anything.
func (s *Sheet) At(row, col int) (Cell, bool) {
	cells := s.Row(row)
	i, ok := findCell(cells, col)
	if !ok {
		return Cell{}, false
	}
	return cells[i], true
}

// RowHidden says whether a row is hidden, filtered away or of no height.
func (s *Sheet) RowHidden(row int) bool { return within(s.HiddenRows, row) }

// ColHidden says whether a column is hidden or of no width.
func (s *Sheet) ColHidden(col int) bool { return within(s.HiddenCols, col) }

// find looks where a row can stand: before it are all rows of smaller number but
// those that hold nothing.
func (s *Sheet) find(row int) (int, bool) {
	n := len(s.Rows)
	if n == 0 || row < 1 {
		return 0, false
	}
	bare := s.Rows[n-1].Number - n
	to := min(row, n)
	from := min(max(row-1-bare, 0), to)
	i, ok := slices.BinarySearchFunc(s.Rows[from:to], row, func(r Row, n int) int { return r.Number - n })
	return from + i, ok
}

func findCell(cells []Cell, col int) (int, bool) {
	// Most rows are filled from the first column on.
	if i := col - 1; i >= 0 && i < len(cells) && cells[i].Col == col {
		return i, true
	}
	return slices.BinarySearchFunc(cells, col, func(c Cell, n int) int { return c.Col - n })
}

func within(spans []Span, n int) bool {
	_, ok := slices.BinarySearchFunc(spans, n, func(s Span, n int) int {
		switch {
		case s.To < n:
			return -1
		case s.From > n:
			return 1
		}
		return 0
	})
	return ok
}

// Book is one workbook read whole.
type Book struct {
	Path      string
	Sheets    []Sheet
	Encoding  string // csv: utf-8, utf-16le, utf-16be, windows-1252, mac-roman
	Delimiter string // csv: "," ";" "\t" or "|"
}
