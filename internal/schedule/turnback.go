package schedule

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"abut/internal/workbook"
)

// wayBack leads from a sheet that was laid out anew to the addresses that it has in the
// workbook.
type wayBack struct {
	sheet string
	was   func(row, col int) (int, int)
}

// turnBack gives all that was read from an upright sheet the addresses that it has in
// the workbook. The row of an item is that of the heading of its block, which it shares
// with the items beside it; what tells them apart is the cell.
func (u *upright) turnBack(s *Schedule) {
	ids, back := map[string]string{}, u.back()
	for i := range s.Lines {
		if l := &s.Lines[i]; l.Sheet == u.sheet.Name {
			ids[l.ID] = u.lineID(l)
		}
	}
	for i := range s.Lines {
		l := &s.Lines[i]
		for name, day := range l.Dates {
			if id, moved := ids[day.Ref]; moved {
				day.Ref = id
				l.Dates[name] = day
			}
		}
		if l.Sheet == u.sheet.Name {
			l.rename(ids[l.ID])
			l.Row = u.rowWas(l.Row)
			back.line(l)
		}
	}
	for i := range s.Products {
		if p := &s.Products[i]; p.Sheet == u.sheet.Name {
			back.cells(p.Cells)
			p.Row = u.rowWas(p.Row)
		}
	}
	u.tables(s, back)
	back.walk(reflect.ValueOf(s).Elem())
}

// lineID names a line by the cell that heads its item.
func (u *upright) lineID(l *Line) string {
	row, col := u.was(l.Row, 1)
	return strings.Replace(l.ID, fmt.Sprintf("!%d", l.Row), "!"+workbook.Ref(row, col), 1)
}

// back is the way back from the upright sheet.
func (u *upright) back() wayBack { return wayBack{u.sheet.Name, u.was} }

// rename gives a line and its items another id.
func (l *Line) rename(id string) {
	for i := range l.Items {
		l.Items[i].ID = id + strings.TrimPrefix(l.Items[i].ID, l.ID)
	}
	for i := range l.Layers {
		l.Layers[i].ID = id + strings.TrimPrefix(l.Layers[i].ID, l.ID)
	}
	l.ID = id
}

// line gives the cells of a line their addresses, which are in no one row.
func (w wayBack) line(l *Line) {
	for i := range l.Items {
		if it := &l.Items[i]; it.Primes != "" {
			it.Primes = w.cell(it.Primes)
		}
	}
	l.Turned = true
	w.cells(l.Cells)
}

// tables says of the upright table where its headings and its first and last property
// stand, and names each property by the cell of its label.
func (u *upright) tables(s *Schedule, back wayBack) {
	for i := range s.Reading.Tables {
		t := &s.Reading.Tables[i]
		if t.Sheet != u.sheet.Name {
			continue
		}
		if !u.isOwn(t) {
			for k := range t.Head {
				t.Head[k] = u.rowWas(t.Head[k])
			}
			t.First, t.Last = u.rowWas(t.First), u.rowWas(t.Last)
			continue
		}
		last := u.blocks[len(u.blocks)-1].rows
		t.Head, t.First, t.Last = []int{}, u.blocks[0].rows[1], last[len(last)-1]
		for _, b := range u.blocks {
			t.Head = append(t.Head, b.rows[0])
		}
		for k := range t.Columns {
			t.Columns[k].Letter = back.cell(t.Columns[k].Letter + strconv.Itoa(u.head))
		}
	}
	for i := range s.Reading.Sheets {
		if sheet := &s.Reading.Sheets[i]; sheet.Name == u.sheet.Name && sheet.As == kindSchedule {
			sheet.Why = strings.Replace(sheet.Why, "known columns", "known properties", 1) + ", its items across"
		}
	}
}

func (u *upright) isOwn(t *Table) bool { return len(t.Head) > 0 && t.Head[0] == u.head }

// walk goes through all that was read and sets right each address.
func (w wayBack) walk(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		if at, ok := v.Addr().Interface().(*At); ok {
			w.at(at)
			return
		}
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				w.walk(v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			w.walk(v.Index(i))
		}
	case reflect.Map:
		for _, key := range v.MapKeys() {
			one := reflect.New(v.Type().Elem()).Elem()
			one.Set(v.MapIndex(key))
			w.walk(one)
			v.SetMapIndex(key, one)
		}
	}
}

func (w wayBack) at(at *At) {
	if at.Sheet != w.sheet || at.Row == 0 {
		return
	}
	at.Row, _ = w.was(at.Row, 1)
	if at.Cell != "" {
		at.Cell = w.cell(at.Cell)
	}
}

// rowWas is the row in the workbook of one of the upright sheet.
func (u *upright) rowWas(row int) int {
	was, _ := u.was(row, 1)
	return was
}

func (w wayBack) cells(m map[string]string) {
	for slot, cell := range m {
		m[slot] = w.cell(cell)
	}
}

// cell is the address in the workbook of a cell of the upright sheet.
func (w wayBack) cell(ref string) string {
	row, col, ok := workbook.ParseRef([]byte(ref))
	if !ok {
		return ref
	}
	return workbook.Ref(w.was(row, col))
}
