package engine

import (
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"abut/internal/schedule"
)

// writer writes all that a row says, so that rows that write the same are
// judged alike: addresses in the row itself, ids and the numbers of labels are
// left out, everything else is in, fields to come included.
type writer struct {
	masks bool // the numbers in labels are mere names
	line  *schedule.Line
	named bool   // and those in the labels of this line are not
	row   string // its number
	text  []byte
	keys  []string // of a map, for the next one to use again
	parts map[reflect.Type][]part
}

// part is a field that a struct says.
type part struct {
	index int
	name  string // in small letters
}

// says is what a row and all that hangs on it says, until the next is asked.
func (w *writer) says(r *row) []byte {
	w.line, w.named, w.row, w.text = r.line, r.named, rowText(r.line), w.text[:0]
	w.write(reflect.ValueOf(r.line).Elem(), "")
	for _, c := range r.contacts {
		w.write(reflect.ValueOf(c).Elem(), "")
	}
	for _, window := range r.windows {
		w.write(reflect.ValueOf(window).Elem(), "")
	}
	return w.text
}

func (w *writer) write(v reflect.Value, key string) {
	switch v.Kind() {
	case reflect.Struct:
		w.fields(v)
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			w.write(v.Index(i), key)
		}
		w.text = append(w.text, ']')
	case reflect.Map:
		if texts, ok := reflect.TypeAssert[map[string]string](v); ok {
			w.texts(texts, key)
			return
		}
		keys := v.MapKeys()
		slices.SortFunc(keys, func(a, b reflect.Value) int { return strings.Compare(a.String(), b.String()) })
		for _, k := range keys {
			w.text = append(append(w.text, k.String()...), ':')
			if key != "cells" {
				key = strings.ToLower(k.String())
			}
			w.write(v.MapIndex(k), key)
		}
		w.text = append(w.text, '}')
	case reflect.Pointer, reflect.Interface:
		if v.IsNil() {
			w.text = append(w.text, '-', 0)
			return
		}
		w.write(v.Elem(), key)
	case reflect.String:
		w.string(v.String(), key)
	case reflect.Bool:
		w.text = strconv.AppendBool(w.text, v.Bool())
	case reflect.Int:
		w.text = append(strconv.AppendInt(w.text, v.Int(), 10), 0)
	case reflect.Float64:
		w.text = append(strconv.AppendFloat(w.text, v.Float(), 'g', -1, 64), 0)
	}
}

// texts are a map of texts, of which a row has many: cells by their columns.
func (w *writer) texts(m map[string]string, key string) {
	w.keys = slices.AppendSeq(w.keys[:0], maps.Keys(m))
	slices.Sort(w.keys)
	for _, k := range w.keys {
		w.text = append(append(w.text, k...), ':')
		if key != "cells" {
			key = strings.ToLower(k)
		}
		w.string(m[k], key)
	}
	w.text = append(w.text, '}')
}

func (w *writer) fields(v reflect.Value) {
	if v.Type() == reflect.TypeFor[schedule.At]() {
		at, _ := reflect.TypeAssert[schedule.At](v)
		if at.Sheet == w.line.Sheet && at.Row == w.line.Row {
			column, _ := columnIn(at.Cell, w.row)
			w.text = append(append(append(w.text, "here "...), column...), 0)
			return
		}
	}
	for _, p := range w.partsOf(v.Type()) {
		w.write(v.Field(p.index), p.name)
	}
}

func (w *writer) partsOf(t reflect.Type) []part {
	if known, ok := w.parts[t]; ok {
		return known
	}
	var parts []part
	for i := range t.NumField() {
		switch field := t.Field(i); {
		case !field.IsExported() || t == reflect.TypeFor[schedule.Line]() && field.Name == "Row":
		case field.Name == "ID" && t != reflect.TypeFor[schedule.Item]():
		default:
			parts = append(parts, part{i, strings.ToLower(field.Name)})
		}
	}
	w.parts[t] = parts
	return parts
}

// string writes a text: ids and cells of the row without its number, and its
// labels without theirs.
func (w *writer) string(s, key string) {
	switch key {
	case "id", "line", "item", "ref":
		if rest, own := strings.CutPrefix(s, w.line.ID); own && (rest == "" || rest[0] == '/') {
			s = "this" + rest
		}
	case "cells":
		if column, own := columnIn(s, w.row); own {
			s = "here " + column
		}
	case "mark", "group", "place", "refs":
		if w.masks && !w.named {
			w.text = append(masked(w.text, s), 0)
			return
		}
	}
	w.text = append(append(w.text, s...), 0)
}

// masked appends a label with 0 for each of its numbers.
func masked(text []byte, label string) []byte {
	number := false
	for i := range len(label) {
		digit := label[i] >= '0' && label[i] <= '9'
		if !digit {
			text = append(text, label[i])
		} else if !number {
			text = append(text, '0')
		}
		number = digit
	}
	return text
}

// columnIn is the column of a cell that stands in the row.
func columnIn(cell, number string) (string, bool) {
	column, own := strings.CutSuffix(cell, number)
	if !own || column == "" {
		return "", false
	}
	for i := range len(column) {
		if column[i] < 'A' || column[i] > 'Z' {
			return "", false
		}
	}
	return column, true
}

func rowText(line *schedule.Line) string { return strconv.Itoa(line.Row) }
