package schedule

import (
	"fmt"
	"iter"
	"slices"
	"strconv"
	"strings"

	"abut/internal/workbook"
)

// table is one heading block of a sheet with the rows under it.
type table struct {
	id    string
	kind  string // schedule, products, pours, other
	sheet *workbook.Sheet
	head  []int
	first int
	last  int // last data row
	end   int // last row before the next heading or the end of the sheet
	cols  []Column
	nums  []int // column number of each of cols

	own []int // own cells of each row, counted the first time

	actual  map[int]int // column of planned days -> that of the days on which it was done
	offered map[int]int // column of an offer -> that of the material that was specified, 0 for none

	by     string // of a table as one of the works of its rows sees it: that work
	beside bool   // and the row has another
	strip  int    // its column of the strips of details, 0 if none
	common string // its first column, if a table before it has rows in common with it

	stacked bool        // each row is a layer of the wall beside it
	ofLayer map[int]int // of a list of walls: column of a layer -> that of its resistance

	joints bool          // each row is a joint between two sides
	listed []listedLayer // of a wall that a list tells, layer by layer
	gloss  bool          // the last row of its heading only explains the columns
}

// slotAt is the slot of a column by its number, "" for none.
func (t *table) slotAt(col int) string {
	if i := slices.Index(t.nums, col); i >= 0 {
		return t.cols[i].Slot
	}
	return ""
}

// column finds the number of the first column of a slot, 0 if the table has none.
func (t *table) column(slot string) int {
	for i, c := range t.cols {
		if c.Slot == slot {
			return t.nums[i]
		}
	}
	return 0
}

func (t *table) has(slots ...string) int {
	n := 0
	for _, s := range slots {
		if t.column(s) > 0 {
			n++
		}
	}
	return n
}

// text is the current text of a cell, without surrounding space.
func text(s *workbook.Sheet, row, col int) string {
	c, ok := s.At(row, col)
	if !ok {
		return ""
	}
	return strings.TrimSpace(c.Value)
}

// said goes through the words of a column, without its blank cells and the rows that
// head others.
func (r *reader) said(t *table, col int) iter.Seq[string] {
	return func(yield func(string) bool) {
		for row := t.first; row <= t.last; row++ {
			words := text(t.sheet, row, col)
			if !r.words.isBlank(words) && t.ownCells(row) > 1 && !yield(words) {
				return
			}
		}
	}
}

// smallTable is how many columns a table may have in which two known ones do.
const smallTable = 5

// mostTables is how many headings a sheet may have: no office writes so many, and
// each is held against the others.
const mostTables = 1000

// findTables finds every heading of a sheet and the rows that belong to it.
func (r *reader) findTables(s *workbook.Sheet) ([]*table, error) {
	var tables []*table
	search := headingSearch{found: map[string]bool{}}
	for row := 1; row <= s.MaxRow; {
		if len(tables) > mostTables {
			return nil, fmt.Errorf("it has more than %d headings of tables (row %d is another); put one heading over the rows it is for", mostTables, tables[mostTables].head[0])
		}
		b, ok := r.headingAt(s, row, &search)
		if !ok {
			row++
			continue
		}
		t := &table{sheet: s, cols: b.cols, nums: b.nums, first: row + b.rows, gloss: b.gloss}
		for i := range b.rows {
			t.head = append(t.head, row+i)
		}
		tables = append(tables, t)
		row += b.rows
	}
	for i, t := range tables {
		t.end = s.MaxRow
		if i+1 < len(tables) {
			t.end = tables[i+1].head[0] - 1
		}
		if r.bound(t); i+1 < len(tables) && t.last >= t.first { // the rows of the next table told of its columns too
			t.columnsOf(r, "")
		}
	}
	return slices.DeleteFunc(tables, func(t *table) bool { return t.last < t.first }), nil
}

// bound finds the last data row: the last row that fills, in known columns, at
// least a third of what rows of the table do. Sparser rows after it are notes.
func (r *reader) bound(t *table) {
	t.last = t.first - 1
	sum, rows, gap, noted := 0, 0, false, false
	for row := t.first; row <= t.end; row++ {
		n := t.ownCells(row)
		if n == 0 {
			gap = true
			continue
		}
		if n == 1 && rows > 0 && r.headsWalls(t.sheet, row) {
			return
		}
		noted = gap && (noted || r.headsNotes(t, row))
		if noted && n <= 2 && rows > 0 {
			continue // "L1 | Primers 250 g/L at most"
		}
		if n == 1 || n == 2 && r.isNote(t, row) && !t.countsOn(row) || gap && rows > 0 && n*2*rows <= sum && !t.codeFirst(row) {
			continue
		}
		gap = false
		t.last = row
		sum, rows = sum+n, rows+1
	}
}

// headsNotes holds for a row below a table that says that notes follow: "Notes", or "No."
// and "Limit".
func (r *reader) headsNotes(t *table, row int) bool {
	heads := false
	for _, c := range t.sheet.Row(row) {
		v := strings.TrimSpace(c.Value)
		switch {
		case v == "" || c.Merged || r.words.noteNumbers.MatchString(v):
		case r.words.noteHeading.MatchString(v):
			heads = true
		default:
			return false
		}
	}
	return heads
}

// noteLength is the length from which a text beside a number is a note.
const noteLength = 25

// isNote holds for a row of two cells that are a note and its number.
func (r *reader) isNote(t *table, row int) bool {
	number := ""
	for _, c := range t.sheet.Row(row) {
		v := strings.TrimSpace(c.Value)
		switch {
		case v == "" || c.Merged:
		case number == "":
			number = v
		default:
			return r.words.noteNumber.MatchString(number) && len(v) >= noteLength
		}
	}
	return false
}

// countsOn holds for a row whose number in the column of the order follows that of the row right
// above: it is the next layer, and no note.
func (t *table) countsOn(row int) bool {
	col := t.column("order")
	if col == 0 {
		return false
	}
	above, err := strconv.Atoi(strings.TrimSpace(text(t.sheet, row-1, col)))
	number, err2 := strconv.Atoi(strings.TrimSpace(text(t.sheet, row, col)))
	return err == nil && err2 == nil && row > t.first && number == above+1
}

// codeFirst holds for a row that begins with a short code, as the rows of a
// table do and notes do not.
func (t *table) codeFirst(row int) bool {
	first := strings.TrimSpace(text(t.sheet, row, t.nums[0]))
	return codeShape.MatchString(first) || tagShape.MatchString(first)
}

// ownCells counts the cells of a row that stand in the table's columns and are
// not a merged cell's shadow.
func (t *table) ownCells(row int) int {
	if t.own == nil {
		t.own = make([]int, t.end-t.first+1)
		for i := range t.own {
			t.own[i] = t.countOwn(t.first + i)
		}
	}
	return t.own[row-t.first]
}

func (t *table) countOwn(row int) int {
	n := 0
	for _, col := range t.nums {
		c, ok := t.sheet.At(row, col)
		if ok && !c.Merged && (strings.TrimSpace(c.Value) != "" || c.Struck != "" || c.Kind == workbook.FormulaEmpty) {
			n++
		}
	}
	return n
}
