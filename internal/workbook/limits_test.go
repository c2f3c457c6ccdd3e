package workbook

import (
	"fmt"
	"strings"
	"testing"
)

// billion are entities that stand for one another ten times over.
const billion = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;"><!ENTITY f "&c;&c;&c;&c;&c;">]>`

func manyRelations(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, `<Relationship Id="x%d" Type="%stheme" Target="theme.xml"/>`, i, relURL)
	}
	return b.String()
}

func TestLimits(t *testing.T) {
	cell := `<c r="A1" t="inlineStr"><is><t>0123456789</t></is></c>`
	small := rawBook(inRow(cell + `<c r="B1" t="s"><v>0</v></c>`))
	long := rawBook(inRow(`<c r="A1" t="inlineStr"><is><t>` + strings.Repeat("x", 300_000) + `</t></is></c>`))
	two := small.with(parts{
		"xl/workbook.xml":            strings.Replace(small["xl/workbook.xml"], "</sheets>", `<sheet name="T" sheetId="2" r:id="rId4"/></sheets>`, 1),
		"xl/_rels/workbook.xml.rels": strings.Replace(small["xl/_rels/workbook.xml.rels"], "</Rel", `<Relationship Id="rId4" Type="`+relURL+`worksheet" Target="worksheets/sheet2.xml"/></Rel`, 1),
		"xl/worksheets/sheet2.xml":   small["xl/worksheets/sheet1.xml"],
		"xl/sharedStrings.xml":       `<sst><si><t>a</t></si><si><t>b</t></si></sst>`})
	commented := rawBook(inRow(cell)).with(parts{
		"xl/worksheets/_rels/sheet1.xml.rels": `<Relationships ` + relNS + `><Relationship Id="rId1" Type="` + relURL + `comments" Target="../comments1.xml"/></Relationships>`,
		"xl/comments1.xml":                    `<comments><commentList>` + strings.Repeat(`<comment ref="A1"><text><t>x</t></text></comment>`, 3) + `</commentList></comments>`})
	list := func(formula string) string {
		return `<dataValidation type="list"><formula1>` + formula + `</formula1></dataValidation>`
	}
	merged := rawBook(inRow(cell+`<c r="H1"><v>1</v></c>`) + `<mergeCells><mergeCell ref="A1:C1"/><mergeCell ref="A2:C2"/></mergeCells>`)
	for name, tt := range map[string]struct {
		book parts
		set  func(*Limits)
		want string
	}{
		"file":             {small, func(l *Limits) { l.FileBytes = 500 }, "a.xlsx: it has more than 500 bytes"},
		"unpacked":         {small, func(l *Limits) { l.UnpackedBytes = 500 }, "a.xlsx: it has more than 500 bytes when unpacked"},
		"part":             {small, func(l *Limits) { l.PartBytes = 100 }, "a.xlsx: it has more than 100 bytes in its part "},
		"parts":            {small, func(l *Limits) { l.Parts = 3 }, "a.xlsx: it has more than 3 parts"},
		"ratio":            {long, func(l *Limits) { l.Ratio, l.RatioFrom = 50, 1000 }, "a.xlsx: S: its part xl/worksheets/sheet1.xml unpacks to "},
		"sheets":           {two, func(l *Limits) { l.Sheets = 1 }, "a.xlsx: it has more than 1 sheets"},
		"texts":            {two, func(l *Limits) { l.Strings = 1 }, "a.xlsx: it has more than 1 shared texts"},
		"text":             {small, func(l *Limits) { l.TextBytes = 12 }, "a.xlsx: S!A1: it has more than 12 bytes of text"},
		"cells":            {two, func(l *Limits) { l.Cells = 3 }, "a.xlsx: T: it has more than 3 cells"},
		"cell length":      {small, func(l *Limits) { l.CellLength = 9 }, "a.xlsx: S!A1: it holds more than 9 characters"},
		"rows":             {rawBook(`<sheetData><row r="8"><c><v>1</v></c></row></sheetData>`), func(l *Limits) { l.Rows = 7 }, "a.xlsx: S!A8: it lies below row 7"},
		"columns":          {small, func(l *Limits) { l.Columns = 1 }, "a.xlsx: S!B1: it lies beyond column A"},
		"merges":           {merged, func(l *Limits) { l.Merges = 1 }, "a.xlsx: S: it has more than 1 merged ranges"},
		"merged cells":     {merged, func(l *Limits) { l.Cells = 3 }, "a.xlsx: S: it has more than 3 cells"},
		"token":            {long, func(l *Limits) { l.CellLength = 10 }, "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (an element or text is too long)"},
		"depth":            {rawBook(strings.Repeat("<a>", 200)), func(*Limits) {}, "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (its elements are nested too deep)"},
		"styles":           {small, func(l *Limits) { l.Styles = 2 }, "a.xlsx: it has more than 2 styles, fonts or number formats"},
		"format length":    {small.with(parts{"xl/styles.xml": `<styleSheet><numFmts><numFmt numFmtId="170" formatCode="0000000000"/></numFmts></styleSheet>`}), func(l *Limits) { l.FormatLength = 9 }, "a.xlsx: it has a number format of more than 9 characters"},
		"comments":         {commented, func(l *Limits) { l.Comments = 2 }, "a.xlsx: S: it has more than 2 comments"},
		"comment text":     {commented, func(l *Limits) { l.TextBytes = 18 }, "a.xlsx: S: it has more than 18 bytes of text"},
		"drop-downs":       {rawBook(inRow(cell) + `<dataValidations>` + list("A1:A2") + list("A1:A3") + `</dataValidations>`), func(l *Limits) { l.Lists = 1 }, "a.xlsx: S: it has more than 1 ranges that drop-downs take their words from"},
		"many relations":   {small.with(parts{"xl/_rels/workbook.xml.rels": `<Relationships>` + manyRelations(9) + `</Relationships>`}), func(l *Limits) { l.Parts = 8 }, "a.xlsx: it has more than 8 relations in its part "},
		"many widths":      {rawBook(`<cols>` + strings.Repeat(`<col min="1" max="1"/>`, lastCol+1) + `</cols>` + inRow(cell)), func(*Limits) {}, "a.xlsx: S: it gives widths to more columns than a sheet has"},
		"many rows":        {rawBook(`<sheetData>` + strings.Repeat(`<row r="1"/>`, lastRow+1) + `</sheetData>`), func(l *Limits) { l.Ratio = 1 << 20 }, "a.xlsx: S: it has more rows than a sheet can have"},
		"wide":             {rawBook(inRow(`<c r="XFD1"><v>1</v></c>`)), func(*Limits) {}, "a.xlsx: S!XFD1: it lies beyond column BXX"},
		"one text in bits": {rawBook(inRow(`<c r="A1" t="inlineStr"><is><t>` + strings.Repeat(`<!-- -->0123456789`, 2) + strings.Repeat(`xxxxxxxxx<!-- -->`, 40_000) + `</t></is></c>`)), func(l *Limits) { l.Ratio = 1 << 20 }, "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (an element or text is too long)"},
		"text by format": {small.with(parts{"xl/styles.xml": `<styleSheet><numFmts><numFmt numFmtId="170" formatCode="&quot;0123456789&quot;@"/></numFmts><cellXfs><xf numFmtId="170"/></cellXfs></styleSheet>`,
			"xl/worksheets/sheet1.xml": `<worksheet>` + inRow(strings.Repeat(`<c t="s" s="0"><v>0</v></c>`, 5)) + `</worksheet>`}), func(l *Limits) { l.TextBytes = 60 }, "a.xlsx: S!D1: it has more than 60 bytes of text"},
		"entities":              {small.with(parts{"xl/styles.xml": billion + `<styleSheet><numFmts><numFmt numFmtId="170" formatCode="&f;"/></numFmts></styleSheet>`}), func(*Limits) {}, "a.xlsx: its part xl/styles.xml is damaged (it declares a document type)"},
		"entities in the book":  {small.with(parts{"xl/workbook.xml": billion + `<workbook/>`}), func(*Limits) {}, "a.xlsx: its part xl/workbook.xml is damaged (it declares a document type)"},
		"entities in relations": {small.with(parts{"_rels/.rels": billion + `<Relationships/>`}), func(*Limits) {}, "a.xlsx: its part _rels/.rels is damaged (it declares a document type)"},
		"stray corner":          {rawBook(`<sheetData><row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>`), func(*Limits) {}, "a.xlsx: S!XFD1048576: it lies below row 200000"},
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

// TestSize writes sizes as the settings do.
func TestSize(t *testing.T) {
	for want, n := range map[string]int64{"500 bytes": 500, "1048575 bytes": megabyte - 1, "1 MB": megabyte, "512 MB": 512 * megabyte} {
		if got := size(n); got != want {
			t.Errorf("%d: %s, want %s", n, got, want)
		}
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

// TestNestedArchive: what is packed within the package is never unpacked.
func TestNestedArchive(t *testing.T) {
	inner := string(rawBook(inRow(`<c r="A1"><v>1</v></c>`)).zip(t))
	book := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`)).with(parts{"xl/embeddings/inner.xlsx": inner, "xl/media/bomb.zip": strings.Repeat("\x00", 40<<20)})
	if got := mustRead(t, book.zip(t)).Sheets; len(got) != 1 {
		t.Errorf("%d sheets", len(got))
	}
}

// TestWith sets every limit of the settings' schema that is about a workbook.
func TestWith(t *testing.T) {
	own := map[string]int{}
	for _, name := range []string{"file_mb", "unpacked_mb", "part_mb", "text_mb", "ratio", "parts", "sheets", "rows", "columns", "cells", "shared_texts",
		"cell_length", "merged_ranges", "styles", "format_length", "comments", "drop_downs", "depth"} {
		before := DefaultLimits().With(own)
		if own[name] = 7; DefaultLimits().With(own) == before {
			t.Errorf("%s changes nothing", name)
		}
	}
	if own["nothing"] = 7; DefaultLimits().With(nil) != DefaultLimits() {
		t.Error("no settings change something")
	}
}
