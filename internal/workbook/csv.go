package workbook

import (
	"fmt"
	"io"
	"strings"
)

// readCSV reads a text table: one sheet without a name, every value as the
// text it is, row n being the nth record as a spreadsheet program shows it.
func readCSV(r io.ReaderAt, size int64, lim Limits) (*Book, error) {
	data, err := readAll(r, size)
	if err != nil {
		return nil, err
	}
	text, encoding, err := decodeText(data)
	if err != nil {
		return nil, err
	}
	if row := junkRow(text); row > 0 {
		return nil, &FileError{Cell: Ref(row, 1), Problem: "it holds bytes that are no text", Do: "save it again as .csv or .xlsx"}
	}
	if !strings.Contains(text, "\n") {
		text = strings.ReplaceAll(text, "\r", "\n") // line ends of old Macs
	}
	delim, text := delimiter(text)
	records := &records{rest: text, delim: delim}
	sheet := Sheet{State: "visible", Kind: Worksheet}
	b := &sheetReader{book: &book{packed: &packed{lim: lim}}, sheet: &sheet}
	for records.next() {
		if err := b.record(records); err != nil {
			return nil, err
		}
	}
	if err := records.err(); err != nil {
		return nil, err
	}
	if b.cells == 0 {
		return nil, refuse("no row of it holds anything", "check that it is the right file")
	}
	return &Book{Sheets: []Sheet{sheet}, Encoding: encoding, Delimiter: string(delim)}, nil
}

func (r *sheetReader) record(rec *records) error {
	row := Row{Number: rec.row}
	for i, field := range rec.fields {
		if strings.TrimSpace(field) == "" {
			continue
		}
		c := Cell{Row: rec.row, Col: i + 1, Value: field}
		if longer(field, r.lim.CellLength) {
			return &FileError{Cell: c.Ref(), Problem: fmt.Sprintf("it holds more than %d characters", r.lim.CellLength),
				Do: "shorten it, or look for a quotation mark that does not close"}
		}
		if err := r.admit(c.Row, c.Col); err != nil {
			return err
		}
		if err := r.count(len(field)); err != nil {
			err.Cell = c.Ref()
			return err
		}
		row.Cells = append(row.Cells, c)
	}
	if len(row.Cells) > 0 {
		r.sheet.Rows = append(r.sheet.Rows, row)
	}
	return nil
}

// junkRow gives the line of the first thing that no text file holds, 0 if
// there is none: a NUL, or control characters in number.
func junkRow(text string) int {
	odd, first := 0, -1
	for i := range len(text) {
		c := text[i]
		if c >= ' ' || c == '\t' || c == '\n' || c == '\r' {
			continue
		}
		if first < 0 {
			first = i
		}
		if odd++; c == 0 {
			return 1 + strings.Count(text[:i], "\n")
		}
	}
	if odd > 2 && odd > len(text)/1000 {
		return 1 + strings.Count(text[:first], "\n")
	}
	return 0
}

// records cuts a text table into records and fields. Unlike the standard
// reader it counts empty lines as rows, as a spreadsheet does, takes a lone
// quotation mark in a field for what it mostly is in this trade, inches, and
// tells a quotation mark that never closes from one that does.
type records struct {
	rest   string
	delim  rune
	fields []string
	row    int  // of the record just read, from 1
	open   bool // the last field's quotation mark never closed, or nobody knows where
	wide   bool // the record has more fields than a sheet has columns
}

func (r *records) next() bool {
	if r.rest == "" || r.open || r.wide {
		return false
	}
	r.row++
	r.fields = r.fields[:0]
	for {
		field, ended := r.field()
		r.fields = append(r.fields, field)
		if r.wide = len(r.fields) > lastCol; r.wide {
			return false
		}
		if ended {
			return !r.open
		}
	}
}

// err says why the records ended, nil if the text did.
func (r *records) err() error {
	at := Ref(r.row, len(r.fields))
	switch {
	case r.open:
		return &FileError{Cell: at, Problem: "a quotation mark opens here, and it is not clear where it closes",
			Do: "close it, or double it if it stands for inches"}
	case r.wide:
		return &FileError{Cell: at, Problem: "the row has too many fields", Do: "delete the empty ones at its end"}
	}
	return nil
}

// field cuts the next field off; ended says that the record ends with it.
func (r *records) field() (string, bool) {
	if strings.HasPrefix(r.rest, `"`) {
		return r.quoted()
	}
	i := strings.IndexAny(r.rest, string(r.delim)+"\n")
	if i < 0 {
		i = len(r.rest)
	}
	field := r.rest[:i]
	return r.close(field, i)
}

// close ends a field at i, where a delimiter, a line end or nothing stands.
func (r *records) close(field string, i int) (string, bool) {
	if i >= len(r.rest) {
		r.rest = ""
		return strings.TrimSuffix(field, "\r"), true
	}
	ended := r.rest[i] == '\n'
	r.rest = r.rest[i+1:]
	if ended {
		field = strings.TrimSuffix(field, "\r")
	}
	return field, ended
}

// quoted reads a field in quotation marks, in which a doubled one stands for
// itself. One that is followed by neither delimiter nor line end is a part of
// the text; but not where the field has swallowed the end of a line, since the
// rows below may have gone into it.
func (r *records) quoted() (string, bool) {
	var b strings.Builder
	lone := false
	for i := 1; ; {
		n := strings.IndexByte(r.rest[i:], '"')
		if n < 0 {
			r.open = true
			return "", true
		}
		b.WriteString(r.rest[i : i+n])
		i += n + 1
		after := strings.TrimLeft(r.rest[i:], " ")
		switch {
		case strings.HasPrefix(r.rest[i:], `"`):
			b.WriteByte('"')
			i++
		case after == "", after[0] == '\n', strings.HasPrefix(after, "\r\n"), strings.HasPrefix(after, string(r.delim)):
			if r.open = lone && strings.Contains(b.String(), "\n"); r.open {
				return "", true
			}
			i = len(r.rest) - len(after)
			if strings.HasPrefix(after, "\r\n") {
				i++
			}
			return r.close(strings.ReplaceAll(b.String(), "\r\n", "\n"), i)
		default:
			b.WriteByte('"')
			lone = true
		}
	}
}
