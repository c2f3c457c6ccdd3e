package workbook

import (
	"strings"
	"testing"
)

func TestLimits(t *testing.T) {
	cell := `<c r="A1" t="inlineStr"><is><t>0123456789</t></is></c>`
	small := rawBook(inRow(cell + `<c r="B1" t="s"><v>0</v></c>`))
	long := rawBook(inRow(`<c r="A1" t="inlineStr"><is><t>` + strings.Repeat("x", 300_000) + `</t></is></c>`))
	two := small.with(parts{
		"xl/workbook.xml":      strings.Replace(small["xl/workbook.xml"], "</sheets>", `<sheet name="T" sheetId="2" r:id="rId1"/></sheets>`, 1),
		"xl/sharedStrings.xml": `<sst><si><t>a</t></si><si><t>b</t></si></sst>`})
	merged := rawBook(inRow(cell+`<c r="H1"><v>1</v></c>`) + `<mergeCells><mergeCell ref="A1:C1"/><mergeCell ref="A2:C2"/></mergeCells>`)
	for name, tt := range map[string]struct {
		book parts
		set  func(*Limits)
		want string
	}{
		"file":         {small, func(l *Limits) { l.FileBytes = 500 }, "a.xlsx: it has more than 500 bytes"},
		"unpacked":     {small, func(l *Limits) { l.UnpackedBytes = 500 }, "a.xlsx: it has more than 500 bytes when unpacked"},
		"part":         {small, func(l *Limits) { l.PartBytes = 100 }, "a.xlsx: it has more than 100 bytes in its part "},
		"parts":        {small, func(l *Limits) { l.Parts = 3 }, "a.xlsx: it has more than 3 parts"},
		"ratio":        {long, func(l *Limits) { l.Ratio, l.RatioFrom = 50, 1000 }, "a.xlsx: S: its part xl/worksheets/sheet1.xml unpacks to "},
		"sheets":       {two, func(l *Limits) { l.Sheets = 1 }, "a.xlsx: it has more than 1 sheets"},
		"texts":        {two, func(l *Limits) { l.Strings = 1 }, "a.xlsx: it has more than 1 shared texts"},
		"text":         {small, func(l *Limits) { l.TextBytes = 12 }, "a.xlsx: S!A1: it has more than 12 bytes of text"},
		"cells":        {two, func(l *Limits) { l.Cells = 3 }, "a.xlsx: T: it has more than 3 cells"},
		"cell length":  {small, func(l *Limits) { l.CellLength = 9 }, "a.xlsx: S!A1: it holds more than 9 characters"},
		"rows":         {rawBook(`<sheetData><row r="8"><c><v>1</v></c></row></sheetData>`), func(l *Limits) { l.Rows = 7 }, "a.xlsx: S!A8: it lies below row 7"},
		"columns":      {small, func(l *Limits) { l.Columns = 1 }, "a.xlsx: S!B1: it lies beyond column A"},
		"merges":       {merged, func(l *Limits) { l.Merges = 1 }, "a.xlsx: S: it has more than 1 merged ranges"},
		"merged cells": {merged, func(l *Limits) { l.Cells = 3 }, "a.xlsx: S: it has more than 3 cells"},
		"token":        {long, func(l *Limits) { l.CellLength = 10 }, "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (an element or text is too long)"},
		"depth":        {rawBook(strings.Repeat("<a>", 200)), func(*Limits) {}, "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (its elements are nested too deep)"},
		"stray corner": {rawBook(`<sheetData><row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>`), func(*Limits) {}, "a.xlsx: S!XFD1048576: it lies below row 200000"},
	} {
		t.Run(name, func(t *testing.T) {
			data := tt.book.zip(t)
			lim := DefaultLimits()
			tt.set(&lim)
			book, err := Read("a.xlsx", data, lim)
			refused(t, book, err, tt.want)
		})
	}
}

// TestLimitsLetPass reads each of those files' kin at the limit itself.
func TestLimitsLetPass(t *testing.T) {
	lim := DefaultLimits()
	lim.Rows, lim.Columns, lim.Cells, lim.CellLength, lim.TextBytes, lim.Strings, lim.Sheets = 1, 2, 2, 10, 16, 1, 1
	data := rawBook(inRow(`<c r="A1" t="inlineStr"><is><t>012345678é</t></is></c><c r="B1" t="s"><v>0</v></c>`))
	data["xl/sharedStrings.xml"] = `<sst><si><t>share</t></si></sst>`
	if _, err := Read("a.xlsx", data.zip(t), lim); err != nil {
		t.Error(err)
	}
}

// TestMergedBomb merges whole sheets over and over.
func TestMergedBomb(t *testing.T) {
	ranges := strings.Repeat(`<mergeCell ref="A1:XFD1048576"/>`, 1000)
	data := rawBook(`<sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="90000"><c r="BXX90000"><v>1</v></c></row></sheetData><mergeCells>` + ranges + `</mergeCells>`).zip(t)
	book, err := Read("a.xlsx", data, DefaultLimits())
	refused(t, book, err, "a.xlsx: S: it has more than 1000000 cells")
}
