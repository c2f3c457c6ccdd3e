package workbook

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
)

// The bounds of the format itself; an address beyond is damage.
const (
	lastRow = 1_048_576
	lastCol = 16_384
)

// sheetReader reads one worksheet's part from the stream into its sheet.
type sheetReader struct {
	*book
	s        *scanner
	sheet    *Sheet
	row, col int    // of the element being read
	line     []Cell // of the row being read
	value    []byte // reused from cell to cell
	jumbled  bool   // rows or cells do not ascend
}

// read reads the parts of a worksheet that matter, in the order they come.
func (r *sheetReader) read(s *scanner) error {
	r.s = s
	if !s.child(0) {
		return nil
	}
	if string(s.name) != "worksheet" {
		return refuse(fmt.Sprintf("its part is a %s and no worksheet", s.name), saveAgain)
	}
	for s.child(1) {
		var err error
		switch string(s.name) {
		case "cols":
			err = r.columns()
		case "sheetData":
			err = r.rows()
		case "mergeCells":
			err = r.merges()
		case "dataValidations", "extLst":
			err = r.lists()
		case "headerFooter":
			err = r.headerFooter()
		}
		if err != nil {
			return err
		}
	}
	return nil
}

func (r *sheetReader) columns() error {
	depth, count := r.s.depth, 0
	for r.s.child(depth) {
		if count++; count > lastCol {
			return refuse("it gives widths to more columns than a sheet has", saveAgain)
		}
		from, ok1 := number(r.s.attr("min"))
		to, ok2 := number(r.s.attr("max"))
		if !ok1 || !ok2 || from < 1 || to < from {
			return refuse("the width of a column is given for no column", saveAgain)
		}
		if r.s.attrTrue("hidden") || isZero(r.s.attr("width")) {
			r.sheet.HiddenCols = append(r.sheet.HiddenCols, Span{from, min(to, lastCol)})
		}
	}
	r.sheet.HiddenCols = mergeSpans(r.sheet.HiddenCols)
	return nil
}

func (r *sheetReader) rows() error {
	depth, count := r.s.depth, 0
	for r.s.child(depth) {
		if string(r.s.name) != "row" {
			continue
		}
		if count++; count > lastRow {
			return refuse("it has more rows than a sheet can have", saveAgain)
		}
		n := r.row + 1
		if at := r.s.attr("r"); at != nil {
			var ok bool
			if n, ok = number(at); !ok || n < 1 || n > lastRow {
				return refuse(fmt.Sprintf("it has a row numbered %q", at), saveAgain)
			}
		}
		r.jumbled = r.jumbled || n <= r.row
		r.row, r.col = n, 0
		hidden := r.s.attrTrue("hidden") || isZero(r.s.attr("ht"))
		if hidden && n <= r.lim.Rows { // below, nothing may stand
			r.hideRow(n)
		}
		if r.s.closing { // an empty element, of which there may be a million
			continue
		}
		if err := r.rowCells(hidden); err != nil {
			return err
		}
	}
	return nil
}

func (r *sheetReader) hideRow(n int) {
	spans := r.sheet.HiddenRows
	if k := len(spans); k > 0 && spans[k-1].To == n-1 {
		spans[k-1].To = n
		return
	}
	r.sheet.HiddenRows = append(spans, Span{n, n})
}

func (r *sheetReader) rowCells(hidden bool) error {
	r.line = r.line[:0]
	depth := r.s.depth
	for r.s.child(depth) {
		if string(r.s.name) != "c" {
			continue
		}
		if err := r.place(); err != nil {
			return err
		}
		if r.s.closing {
			continue
		}
		cell, holds, err := r.cell()
		if err != nil {
			err.Cell = Ref(r.row, r.col)
			return err
		}
		if holds {
			if err := r.admit(r.row, r.col); err != nil {
				return err
			}
			cell.Hidden = hidden || r.sheet.ColHidden(r.col)
			r.line = append(r.line, cell)
		}
	}
	if len(r.line) > 0 {
		r.sheet.Rows = append(r.sheet.Rows, Row{Number: r.row, Hidden: hidden, Cells: slices.Clone(r.line)})
	}
	return nil
}

// place finds where the cell just started stands.
func (r *sheetReader) place() error {
	col := r.col + 1
	if ref := r.s.attr("r"); ref != nil {
		row, c, ok := ParseRef(ref)
		if !ok || row != r.row {
			return refuse(fmt.Sprintf("a cell in row %d is addressed %q", r.row, ref), saveAgain)
		}
		col = c
	}
	if col > lastCol {
		return refuse(fmt.Sprintf("row %d has too many columns", r.row), saveAgain)
	}
	r.jumbled = r.jumbled || col <= r.col
	r.col = col
	return nil
}

// admit judges the limits for one more cell at an address.
func (r *sheetReader) admit(row, col int) error {
	if r.cells++; r.cells > r.lim.Cells {
		return tooMuch("cells", r.lim.Cells)
	}
	beyond := ""
	switch {
	case row > r.lim.Rows:
		beyond = fmt.Sprintf("it lies below row %d", r.lim.Rows)
	case col > r.lim.Columns:
		beyond = "it lies beyond column " + ColumnName(r.lim.Columns)
	}
	if beyond != "" {
		return &FileError{Cell: Ref(row, col), Problem: beyond, Do: "delete it if it is a stray cell, or split the file"}
	}
	r.sheet.MaxRow, r.sheet.MaxCol = max(r.sheet.MaxRow, row), max(r.sheet.MaxCol, col)
	return nil
}

// arrange puts rows and cells in order if the writer did not; two cells at one
// address are refused, since nobody can say which of them is meant.
func (r *sheetReader) arrange() error {
	sheet := r.sheet
	if !r.jumbled {
		return nil
	}
	byRow := func(a, b Row) int { return cmp.Compare(a.Number, b.Number) }
	slices.SortStableFunc(sheet.Rows, byRow)
	rows := sheet.Rows[:0]
	for _, row := range sheet.Rows {
		if n := len(rows); n > 0 && rows[n-1].Number == row.Number {
			rows[n-1].Cells = append(rows[n-1].Cells, row.Cells...)
		} else {
			rows = append(rows, row)
		}
	}
	sheet.Rows = rows
	for _, row := range rows {
		slices.SortStableFunc(row.Cells, func(a, b Cell) int { return cmp.Compare(a.Col, b.Col) })
		for i := 1; i < len(row.Cells); i++ {
			if row.Cells[i].Col == row.Cells[i-1].Col {
				return &FileError{Cell: row.Cells[i].Ref(), Problem: "it stands in the file twice", Do: saveAgain}
			}
		}
	}
	sheet.HiddenRows = mergeSpans(sheet.HiddenRows)
	return nil
}

func mergeSpans(spans []Span) []Span {
	slices.SortFunc(spans, func(a, b Span) int { return a.From - b.From })
	out := spans[:0]
	for _, s := range spans {
		if n := len(out); n > 0 && s.From <= out[n-1].To+1 {
			out[n-1].To = max(out[n-1].To, s.To)
		} else {
			out = append(out, s)
		}
	}
	return out
}

// ParseRef reads an address such as F12; dollar signs are allowed.
func ParseRef(ref []byte) (row, col int, ok bool) {
	i := 0
	for ; i < len(ref); i++ {
		c := ref[i] &^ 0x20 // upper case
		if ref[i] == '$' {
			continue
		}
		if c < 'A' || c > 'Z' {
			break
		}
		if col = col*26 + int(c-'A') + 1; col > lastCol {
			return 0, 0, false
		}
	}
	row, ok = number(ref[i:])
	return row, col, ok && col > 0 && row > 0 && row <= lastRow
}

// number reads a whole number of at most nine digits.
func number(b []byte) (int, bool) {
	if len(b) == 0 || len(b) > 9 {
		return 0, false
	}
	n := 0
	for _, c := range b {
		if c < '0' || c > '9' {
			return 0, false
		}
		n = n*10 + int(c-'0')
	}
	return n, true
}

func isZero(b []byte) bool {
	if len(b) == 0 || b[0] != '0' {
		return false
	}
	x, err := strconv.ParseFloat(string(b), 64)
	return err == nil && x == 0
}
