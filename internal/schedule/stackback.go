package schedule

import (
	"reflect"
	"strconv"
)

// was gives the row and column of the sheet as it is for one of the sheet laid out.
func (st *itemStack) was(row, col int) (int, int) {
	if i := col - st.base - 1; st.first[row] && i >= 0 && i < len(st.cols) {
		return row + st.cols[i].line, st.cols[i].col
	}
	return row, col
}

// turnStacksBack gives what was read from sheets laid out their own addresses.
func (r *reader) turnStacksBack() {
	for _, st := range r.stacks {
		st.turnBack(r.sched)
	}
}

// turnBack gives all that was read from the sheet its own addresses. The row of an item
// is that of its first line.
func (st *itemStack) turnBack(s *Schedule) {
	back := wayBack{st.sheet, st.was}
	for i := range s.Lines {
		if l := &s.Lines[i]; l.Sheet == st.sheet && st.first[l.Row] {
			back.line(l)
		}
	}
	for i := range s.Reading.Tables {
		if t := &s.Reading.Tables[i]; t.Sheet == st.sheet && len(t.Head) > 0 && st.first[t.Head[len(t.Head)-1]] {
			st.table(t, back)
		}
	}
	back.walk(reflect.ValueOf(s).Elem())
}

// table says of a table laid out where it begins and ends, and where its headings stand:
// those of further lines are named by their cells.
func (st *itemStack) table(t *Table, back wayBack) {
	head := t.Head[len(t.Head)-1]
	for k := range t.Columns {
		if ref := t.Columns[k].Letter + strconv.Itoa(head); back.cell(ref) != ref {
			t.Columns[k].Letter = back.cell(ref)
		}
	}
	for line := 1; line < st.items[0].lines; line++ {
		t.Head = append(t.Head, head+line)
	}
	t.First = max(t.First, head+st.items[0].lines)
	if st.first[t.Last] {
		t.Last += st.items[0].lines - 1
	}
}
