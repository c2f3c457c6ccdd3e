package workbook

import (
	"fmt"
	"slices"
	"unicode/utf8"
)

// style is what matters of a cell's style.
type style struct {
	strike bool
	format *numFormat // nil for general
}

// styleSheet is the styles part as it is read.
type styleSheet struct {
	lim   Limits
	codes map[int]string // number formats of the workbook's own
	fonts []bool         // struck out or not
	cells []cellStyle
}

type cellStyle struct{ font, format int }

// readStyles reads every cell style once, by its number. Whether a style says
// that it applies its font or format is left out of account: spreadsheet
// programs show them all the same.
func (b *book) readStyles(part string) error {
	sheet := styleSheet{lim: b.lim, codes: map[int]string{}}
	if err := b.scanKept(part, sheet.read); err != nil {
		return err
	}
	formats := map[int]*numFormat{}
	b.styles = make([]style, len(sheet.cells))
	for i, c := range sheet.cells {
		if _, known := formats[c.format]; !known {
			code, custom := sheet.codes[c.format]
			if !custom {
				code = builtinFormat(c.format)
			}
			formats[c.format] = parseFormat(code)
		}
		b.styles[i] = style{strike: c.font < len(sheet.fonts) && sheet.fonts[c.font], format: formats[c.format]}
	}
	return nil
}

func (t *styleSheet) read(s *scanner) error {
	if !s.child(0) {
		return nil
	}
	for s.child(1) {
		list, count := string(s.name), 0
		if !slices.Contains([]string{"numFmts", "fonts", "cellXfs"}, list) {
			continue
		}
		for s.child(2) {
			if count++; count > t.lim.Styles {
				return tooMuch("styles, fonts or number formats", t.lim.Styles)
			}
			if err := t.entry(s, list); err != nil {
				return err
			}
		}
	}
	return nil
}

func (t *styleSheet) entry(s *scanner, list string) error {
	switch list {
	case "numFmts":
		code := s.attrText("formatCode")
		if utf8.RuneCountInString(code) > t.lim.FormatLength {
			return refuse(fmt.Sprintf("it has a number format of more than %d characters", t.lim.FormatLength), saveAgain)
		}
		t.codes[s.attrNumber("numFmtId")] = code
	case "fonts":
		t.fonts = append(t.fonts, readStrike(s))
	case "cellXfs":
		t.cells = append(t.cells, cellStyle{s.attrNumber("fontId"), s.attrNumber("numFmtId")})
	}
	return nil
}

// readStrike says whether the properties of a font or a run, the element just
// started, strike it out.
func readStrike(s *scanner) bool {
	out := false
	depth := s.depth
	for s.child(depth) {
		if name := string(s.name); name == "strike" || name == "dstrike" {
			out = out || s.attr("val") == nil || s.attrTrue("val")
		}
	}
	return out
}

// builtinFormat gives the code of a number format that a workbook names by
// number alone (ECMA-376 part 1, 18.8.30); those that change with the language
// are given by a date or time of their kind.
func builtinFormat(id int) string {
	switch {
	case id >= 27 && id <= 31, id == 36, id >= 50 && id <= 54, id == 57, id == 58:
		return "yyyy-mm-dd"
	case id >= 32 && id <= 35, id == 55, id == 56:
		return "h:mm:ss"
	}
	return map[int]string{
		1: "0", 2: "0.00", 3: "#,##0", 4: "#,##0.00", 9: "0%", 10: "0.00%", 11: "0.00E+00",
		12: "# ?/?", 13: "# ??/??", 14: "mm-dd-yy", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy",
		18: "h:mm AM/PM", 19: "h:mm:ss AM/PM", 20: "h:mm", 21: "h:mm:ss", 22: "m/d/yy h:mm",
		37: "#,##0 ;(#,##0)", 38: "#,##0 ;[Red](#,##0)", 39: "#,##0.00;(#,##0.00)",
		40: "#,##0.00;[Red](#,##0.00)", 45: "mm:ss", 46: "[h]:mm:ss", 47: "mmss.0", 48: "##0.0E+0", 49: "@",
	}[id]
}
