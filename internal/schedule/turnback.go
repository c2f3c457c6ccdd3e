package schedule

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"abut/internal/workbook"
)

// turnBack gives all that was read from an upright sheet the addresses that it has in
// the workbook. The row of an item is that of the heading of its block, which it shares
// with the items beside it; what tells them apart is the cell.
func (u *upright) turnBack(s *Schedule) {
	ids := map[string]string{}
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
			u.line(l, ids[l.ID])
		}
	}
	for i := range s.Products {
		if p := &s.Products[i]; p.Sheet == u.sheet.Name {
			u.cells(p.Cells)
			p.Row = u.rowWas(p.Row)
		}
	}
	u.tables(s)
	u.walk(reflect.ValueOf(s).Elem())
}

// lineID names a line by the cell that heads its item.
func (u *upright) lineID(l *Line) string {
	row, col := u.was(l.Row, 1)
	return strings.Replace(l.ID, fmt.Sprintf("!%d", l.Row), "!"+workbook.Ref(row, col), 1)
}

func (u *upright) line(l *Line, id string) {
	for i := range l.Items {
		it := &l.Items[i]
		it.ID = id + strings.TrimPrefix(it.ID, l.ID)
		if it.Primes != "" {
			it.Primes = u.cell(it.Primes)
		}
	}
	for i := range l.Layers {
		l.Layers[i].ID = id + strings.TrimPrefix(l.Layers[i].ID, l.ID)
	}
	l.ID, l.Row, l.Turned = id, u.rowWas(l.Row), true
	u.cells(l.Cells)
}

// tables says of the upright table where its headings and its first and last property
// stand, and names each property by the cell of its label.
func (u *upright) tables(s *Schedule) {
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
			t.Columns[k].Letter = u.cell(t.Columns[k].Letter + strconv.Itoa(u.head))
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
func (u *upright) walk(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		if at, ok := v.Addr().Interface().(*At); ok {
			u.at(at)
			return
		}
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				u.walk(v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			u.walk(v.Index(i))
		}
	case reflect.Map:
		for _, key := range v.MapKeys() {
			one := reflect.New(v.Type().Elem()).Elem()
			one.Set(v.MapIndex(key))
			u.walk(one)
			v.SetMapIndex(key, one)
		}
	}
}

func (u *upright) at(at *At) {
	if at.Sheet != u.sheet.Name || at.Row == 0 {
		return
	}
	at.Row = u.rowWas(at.Row)
	if at.Cell != "" {
		at.Cell = u.cell(at.Cell)
	}
}

// rowWas is the row in the workbook of one of the upright sheet.
func (u *upright) rowWas(row int) int {
	was, _ := u.was(row, 1)
	return was
}

func (u *upright) cells(m map[string]string) {
	for slot, cell := range m {
		m[slot] = u.cell(cell)
	}
}

// cell is the address in the workbook of a cell of the upright sheet.
func (u *upright) cell(ref string) string {
	row, col, ok := workbook.ParseRef([]byte(ref))
	if !ok {
		return ref
	}
	return workbook.Ref(u.was(row, col))
}
