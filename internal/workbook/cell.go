package workbook

import (
	"bytes"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"
)

// stored is a cell as the file holds it.
type stored struct {
	kind     string // the attribute t
	style    style
	value    []byte
	hasValue bool
	formula  bool
	inline   richText
}

// cell reads the cell just started; false if a reader of the sheet sees
// nothing there and nothing stood there.
func (r *sheetReader) cell() (Cell, bool, *FileError) {
	raw := stored{kind: "n"}
	if kind := r.s.attr("t"); kind != nil {
		raw.kind = string(kind)
	}
	if at := r.s.attr("s"); at != nil {
		if n, ok := number(at); ok && n < len(r.styles) {
			raw.style = r.styles[n]
		} else if len(r.styles) > 0 || !isZero(at) {
			return Cell{}, false, refuse(fmt.Sprintf("its style %q is not in the file", at), saveAgain)
		}
	}
	depth := r.s.depth
	for r.s.child(depth) {
		switch string(r.s.name) {
		case "v":
			r.value = append(r.value[:0], r.s.content()...)
			raw.value, raw.hasValue = r.value, true
		case "f":
			raw.formula = true
		case "is":
			raw.inline = readRich(r.s)
		}
	}
	if r.s.err != nil {
		return Cell{}, false, nil // reported by whoever started the scan
	}
	c := Cell{Row: r.row, Col: r.col, Formula: raw.formula}
	if f := raw.style.format; f != nil {
		c.Format = f.code
	}
	err := r.interpret(&c, raw)
	if err == nil && !r.shares(raw) {
		err = r.count(len(c.Value) + len(c.Struck) + len(c.Masked))
	}
	if err == nil && (longer(c.Value, r.lim.CellLength) || longer(c.Struck, r.lim.CellLength)) {
		err = refuse(fmt.Sprintf("it holds more than %d characters", r.lim.CellLength), "shorten it")
	}
	holds := c.Value != "" || c.Struck != "" || c.Masked != "" || c.Kind == FormulaEmpty || c.Kind == Number
	return c, holds, err
}

// shares says whether a cell holds one of the shared texts as it is, which
// takes no memory of its own.
func (r *sheetReader) shares(raw stored) bool {
	i, ok := number(raw.value)
	plain := raw.style.format == nil || raw.style.format.text == nil
	return raw.kind == "s" && ok && i < len(r.texts) && r.texts[i].runs == nil && plain
}

// longer says whether a text has more characters than n.
func longer(text string, n int) bool { return len(text) > n && utf8.RuneCountInString(text) > n }

// interpret turns what is stored into what a reader sees.
func (r *sheetReader) interpret(c *Cell, raw stored) *FileError {
	switch raw.kind {
	case "inlineStr":
		if raw.hasValue && raw.inline.isEmpty() {
			raw.inline.text = cellText(raw.value)
		}
		c.setText(raw.inline, raw.style)
		return nil
	case "s":
		if len(raw.value) == 0 {
			return nil
		}
		i, ok := number(raw.value)
		if !ok || i >= len(r.texts) {
			return refuse(fmt.Sprintf("its text number %q is not in the file", raw.value), saveAgain)
		}
		c.setText(r.texts[i], raw.style)
		return nil
	case "str":
		if raw.hasValue || !raw.formula {
			c.setText(richText{text: cellText(raw.value)}, raw.style)
			return nil
		}
	}
	if len(bytes.TrimSpace(raw.value)) == 0 {
		if !raw.inline.isEmpty() {
			return refuse(fmt.Sprintf("it holds a text and is marked as %q", raw.kind), saveAgain)
		}
		if raw.formula {
			c.Kind = FormulaEmpty
		}
		return nil
	}
	return c.setValue(raw, r.date1904)
}

// setValue fills a cell that holds no text.
func (c *Cell) setValue(raw stored, date1904 bool) *FileError {
	value := bytes.TrimSpace(raw.value)
	switch raw.kind {
	case "n", "str":
		x, err := strconv.ParseFloat(string(value), 64)
		if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
			return refuse(fmt.Sprintf("its number %q cannot be read", value), "enter the number again")
		}
		c.setNumber(x, raw.style.format, date1904)
	case "b":
		c.Kind, c.Value = Bool, "FALSE"
		if string(value) == "1" || string(value) == "true" {
			c.Value = "TRUE"
		}
	case "e":
		c.Kind, c.Value = Error, string(value)
	case "d":
		date, err := parseISO(string(value))
		if err != nil {
			return refuse(fmt.Sprintf("its date %q cannot be read", value), "enter the date again")
		}
		c.setDate(date)
	default:
		return refuse(fmt.Sprintf("it holds a value of unknown kind %q", raw.kind), saveAgain)
	}
	if raw.style.strike {
		c.strikeAll()
	}
	return nil
}

// lastDate is the day number of 9999-12-31, beyond which a sheet shows no date.
const lastDate = 2_958_466

func (c *Cell) setNumber(x float64, f *numFormat, date1904 bool) {
	c.Kind, c.Number = Number, x
	if f != nil && f.isDate {
		if x >= 0 && x < lastDate {
			if date, err := excelize.ExcelDateToTime(x, date1904); err == nil {
				c.setDate(date)
				return
			}
		}
		c.Value = plain(x)
		return
	}
	c.Value = f.show(x)
	if c.Value == "" && x != 0 { // many formats leave zeros out, and mean it
		c.Masked = plain(x)
	}
}

func (c *Cell) setDate(date time.Time) {
	c.Kind, c.Date = Date, date
	layout := "2006-01-02"
	if date.Hour() != 0 || date.Minute() != 0 {
		layout += " 15:04"
	}
	c.Value = date.Format(layout)
}

func (c *Cell) setText(t richText, st style) {
	now, old := t.split(st.strike)
	if strings.TrimSpace(now) == "" {
		now = "" // spaces alone are nothing to a reader
	}
	if strings.TrimSpace(old) == "" {
		old = ""
	}
	c.Value, c.Struck = st.format.showText(now), old
	if c.Value == "" {
		c.Masked = now
	}
	c.AllStruck = old != "" && now == ""
}

// strikeAll turns all that a cell holds into superseded text; its number and
// date go too, so that nobody reckons with them.
func (c *Cell) strikeAll() {
	*c = Cell{Row: c.Row, Col: c.Col, Struck: c.Value, AllStruck: true, Format: c.Format, Formula: c.Formula}
}

// parseISO reads the dates that some writers store as text.
func parseISO(text string) (time.Time, error) {
	var err error
	for _, layout := range []string{"2006-01-02", "2006-01-02T15:04:05", time.RFC3339, "2006-01-02T15:04"} {
		var date time.Time
		if date, err = time.Parse(layout, text); err == nil {
			return date.UTC(), nil
		}
	}
	return time.Time{}, err
}
