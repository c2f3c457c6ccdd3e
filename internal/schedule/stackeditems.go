package schedule

import (
	"maps"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// A schedule that is wider than its paper gives each item two lines or three, and its
// heading as many: what stands in the first line of an item is headed by the first line
// of the heading, what stands in the second by the second. It is laid out with one row an
// item and read like any other; turnBack gives what was read its own addresses.

// How many items such a schedule has at least, how many headings each line of its heading
// has at least, in how many of the leftmost columns the numbers of items may stand, and how
// many lines an item has at most.
const (
	fewestStacked = 3
	fewestHeads   = 2
	mostLeading   = 3
	mostLines     = 4
)

// itemStack is a schedule of such items, with the way back to its own addresses.
type itemStack struct {
	sheet string
	items []stackedItem // the heading first
	base  int           // the last column of the sheet as it is
	cols  []lineColumn  // what stands right of it once it is laid out
	first map[int]bool  // numbers of the rows that the items are laid into
}

// stackedItem is the place of an item's first line among the rows of the sheet, and how
// many lines it has.
type stackedItem struct{ row, lines int }

// lineColumn is a column in one of the lines of an item, the first of which is 0.
type lineColumn struct{ line, col int }

// layOut gives a sheet with such a schedule one row an item, and others as they are.
func (r *reader) layOut(s workbook.Sheet) workbook.Sheet {
	if s.Kind != workbook.Worksheet || s.FeedsDropDowns() {
		return s
	}
	for _, col := range leadingColumns(&s) {
		st := r.stackBy(&s, col)
		if st == nil || !r.linesDiffer(&s, st) {
			continue
		}
		if wide := st.laidOut(&s); r.knowsMore(&wide, &s, st) {
			r.stacks = append(r.stacks, st)
			return wide
		}
	}
	return s
}

// leadingColumns are the leftmost columns in which full rows have something.
func leadingColumns(s *workbook.Sheet) []int {
	used := map[int]bool{}
	for _, row := range s.Rows {
		left := mostLeading
		if countFilled(row.Cells) < fewestItem {
			left = 0
		}
		for c := range filled(row.Cells) {
			if left--; left < 0 {
				break
			}
			used[c.Col] = true
		}
	}
	out := slices.Sorted(maps.Keys(used))
	return out[:min(len(out), mostLeading)]
}

// stackBy finds the items of a sheet whose first lines have something in a column and
// whose further lines have nothing there; nil where most of them have not as many lines
// as the heading over them.
func (r *reader) stackBy(s *workbook.Sheet, col int) *itemStack {
	items := itemsBy(s, col)
	if len(items) < fewestStacked {
		return nil
	}
	if top := items[0].row; itemNumber(ownAt(s, top, col)) || r.isData(s, s.Rows[top].Number) { // nothing heads the numbers
		lines := usualLines(items)
		items = slices.Insert(items, 0, stackedItem{top - lines, lines})
	}
	head, lines := &items[0], usualLines(items[1:])
	if lines < 2 || head.row < 0 || head.lines < lines || len(items) <= fewestStacked || !r.isStackedHead(s, *head, col) {
		return nil
	}
	st := &itemStack{sheet: s.Name, items: items, base: s.MaxCol, first: map[int]bool{}}
	for i := range items {
		items[i].lines = min(items[i].lines, lines)
		st.first[s.Rows[items[i].row].Number] = true
	}
	for line := 1; line < lines; line++ {
		before := len(st.cols)
		for c := range filled(s.Rows[head.row+line].Cells) {
			st.cols = append(st.cols, lineColumn{line, c.Col})
		}
		if len(st.cols) < before+fewestHeads {
			return nil // a divider over the first item, as over each of the others
		}
	}
	return st
}

// itemsBy are the full rows of a sheet that have something in a column, each with the
// rows right below it that have nothing there.
func itemsBy(s *workbook.Sheet, col int) []stackedItem {
	var out []stackedItem
	open := false
	for i, row := range s.Rows {
		n := countFilled(row.Cells)
		switch {
		case n == 0 || i > 0 && row.Number != s.Rows[i-1].Number+1 && ownAt(s, i, col) == "":
			open = false
		case ownAt(s, i, col) != "":
			if open = n >= fewestItem; open {
				out = append(out, stackedItem{i, 1})
			}
		case open:
			out[len(out)-1].lines++
		}
	}
	return out
}

// ownAt is what stands in a column of the row at a place, and is not merged into it.
func ownAt(s *workbook.Sheet, place, col int) string {
	for c := range filled(s.Rows[place].Cells) {
		if c.Col == col {
			return strings.TrimSpace(c.Value)
		}
	}
	return ""
}

// usualLines is the number of lines that two thirds of the items have, 0 for none.
func usualLines(items []stackedItem) int {
	have := map[int]int{}
	for _, it := range items {
		if have[it.lines]++; have[it.lines]*3 >= len(items)*2 && it.lines <= mostLines {
			return it.lines
		}
	}
	return 0
}

// isStackedHead holds for rows that stand as the lines of a heading do.
func (r *reader) isStackedHead(s *workbook.Sheet, head stackedItem, col int) bool {
	for i := range head.lines {
		row := s.Rows[head.row+i]
		if row.Number != s.Rows[head.row].Number+i || i == 0 && countFilled(row.Cells) < fewestItem || i > 0 && ownAt(s, head.row+i, col) != "" || r.isData(s, row.Number) {
			return false
		}
	}
	return true
}

// linesDiffer holds where what stands in two lines of a column is of two kinds, as only
// the heading of its own line says: the rows below one heading of two lines, as of a wall
// with its layers, are all alike.
func (r *reader) linesDiffer(s *workbook.Sheet, st *itemStack) bool {
	for _, lower := range st.cols {
		for line := range lower.line {
			upper := lineColumn{line, lower.col}
			for _, kind := range []string{r.kindHeaded(s, st, lower), r.kindHeaded(s, st, upper)} {
				one, other := r.lineHolds(s, st, lower, kind), r.lineHolds(s, st, upper, kind)
				if kind != "" && (one == mostlyHeld && other == hardlyHeld || one == hardlyHeld && other == mostlyHeld) {
					return true
				}
			}
		}
	}
	return false
}

// namedThings is the kind of cells that name materials.
const namedThings = "material"

// kindHeaded is the kind of cells that the heading of one line of a column stands over,
// "" where it tells none.
func (r *reader) kindHeaded(s *workbook.Sheet, st *itemStack, at lineColumn) string {
	list := r.head.guesses("", ownAt(s, st.items[0].row+at.line, at.col))
	if len(list) == 0 {
		return ""
	}
	slot := r.head.bySlot[list[0].slot]
	switch {
	case slot != nil && slot.kind != "" && slot.kind != "code":
		return slot.kind
	case itemSlots[list[0].slot] && list[0].slot != "remark":
		return namedThings
	}
	return ""
}

// How many of the telling cells of a line are of a kind.
const (
	halfHeld = iota
	mostlyHeld
	hardlyHeld
)

// lineHolds tells how many of the items have a cell of a kind in one of their lines.
func (r *reader) lineHolds(s *workbook.Sheet, st *itemStack, at lineColumn, kind string) int {
	telling, fit := 0, 0
	for _, it := range st.items[1:] {
		if at.line >= it.lines {
			continue
		}
		c, ok := s.At(s.Rows[it.row+at.line].Number, at.col)
		if !ok || c.Merged || r.words.isBlank(c.Value) || r.words.isNone(c.Value) || r.words.isDitto(c.Value) {
			continue
		}
		telling++
		if kind == namedThings && len(r.lex.find(c.Value)) > 0 || kind != namedThings && r.holds(c, kind) {
			fit++
		}
	}
	switch {
	case telling >= fewestStacked && fit*3 >= telling*2:
		return mostlyHeld
	case telling >= fewestStacked && fit*3 < telling:
		return hardlyHeld
	}
	return halfHeld
}

// laidOut is the sheet with one row an item: what the heading heads in a further line
// goes to a column of its own, and the rest of such a line on below the first.
func (st *itemStack) laidOut(s *workbook.Sheet) workbook.Sheet {
	out := *s
	out.Rows = slices.Clone(s.Rows)
	for _, it := range st.items {
		first := &out.Rows[it.row]
		var own []workbook.Cell
		for line := 1; line < it.lines; line++ {
			row := &out.Rows[it.row+line]
			var rest []workbook.Cell
			for c := range filled(row.Cells) {
				if i := slices.Index(st.cols, lineColumn{line, c.Col}); i >= 0 {
					c.Row, c.Col = first.Number, st.base+1+i
					own = append(own, c)
				} else {
					rest = append(rest, c)
				}
			}
			first.Cells = joinedCells(first.Cells, rest)
			row.Cells = nil
		}
		first.Cells = append(first.Cells, own...)
	}
	out.Rows = slices.DeleteFunc(out.Rows, func(row workbook.Row) bool { return len(row.Cells) == 0 })
	out.MaxRow, out.MaxCol = out.Rows[len(out.Rows)-1].Number, st.base+len(st.cols)
	out.HiddenCols = st.hidden(s)
	return out
}

// hidden are the hidden columns once the sheet is laid out.
func (st *itemStack) hidden(s *workbook.Sheet) []workbook.Span {
	var out []workbook.Span
	for _, span := range s.HiddenCols {
		if span.From <= st.base {
			out = append(out, workbook.Span{From: span.From, To: min(span.To, st.base)})
		}
	}
	for i, at := range st.cols {
		if s.ColHidden(at.col) {
			out = append(out, workbook.Span{From: st.base + 1 + i, To: st.base + 1 + i})
		}
	}
	return out
}

// knowsMore holds where the schedule has more known columns once it is laid out.
func (r *reader) knowsMore(wide, s *workbook.Sheet, st *itemStack) bool {
	head := s.Rows[st.items[0].row].Number
	columns := func(s *workbook.Sheet) (most int) {
		tables, err := r.findTables(s)
		if err != nil {
			return 0
		}
		for _, t := range tables {
			if r.classify(t); t.kind == kindSchedule && t.last > head {
				most = max(most, known(t.cols))
			}
		}
		return most
	}
	return columns(wide) > columns(s)
}
