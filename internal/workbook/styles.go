package workbook

import "github.com/xuri/excelize/v2"

// style is what matters of a cell's style.
type style struct {
	strike bool
	format *numFormat // nil for general
}

// readStyles reads every cell style once, by its number. Whether a style says
// that it applies its font or format is left out of account: spreadsheet
// programs show them all the same.
func readStyles(f *excelize.File) []style {
	sheet := f.Styles
	if sheet == nil || sheet.CellXfs == nil {
		return nil
	}
	codes := map[int]string{}
	if sheet.NumFmts != nil {
		for _, n := range sheet.NumFmts.NumFmt {
			if n != nil {
				codes[n.NumFmtID] = n.FormatCode
			}
		}
	}
	formats := map[int]*numFormat{}
	styles := make([]style, len(sheet.CellXfs.Xf))
	for i, xf := range sheet.CellXfs.Xf {
		if id := xf.FontID; id != nil && sheet.Fonts != nil && *id >= 0 && *id < len(sheet.Fonts.Font) {
			if font := sheet.Fonts.Font[*id]; font != nil && font.Strike != nil {
				styles[i].strike = font.Strike.Val == nil || *font.Strike.Val
			}
		}
		if xf.NumFmtID == nil {
			continue
		}
		id := *xf.NumFmtID
		if _, known := formats[id]; !known {
			code, custom := codes[id]
			if !custom {
				code = builtinFormat(id)
			}
			formats[id] = parseFormat(code)
		}
		styles[i].format = formats[id]
	}
	return styles
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
