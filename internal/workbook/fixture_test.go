package workbook

import (
	"archive/zip"
	"bytes"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
)

const (
	mainNS = `xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"`
	relNS  = `xmlns="http://schemas.openxmlformats.org/package/2006/relationships"`
	relURL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/"
)

// parts are the parts of a workbook written by hand, by name.
type parts map[string]string

// rawBook is a workbook of one sheet with the given inside of its worksheet
// element, for what the library cannot write.
func rawBook(sheet string) parts {
	return parts{
		"[Content_Types].xml":        `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>`,
		"_rels/.rels":                `<Relationships ` + relNS + `><Relationship Id="rId1" Type="` + relURL + `officeDocument" Target="xl/workbook.xml"/></Relationships>`,
		"xl/workbook.xml":            `<workbook ` + mainNS + `><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`,
		"xl/_rels/workbook.xml.rels": `<Relationships ` + relNS + `><Relationship Id="rId1" Type="` + relURL + `worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="` + relURL + `sharedStrings" Target="/xl/sharedStrings.xml"/><Relationship Id="rId3" Type="` + relURL + `styles" Target="styles.xml"/></Relationships>`,
		"xl/sharedStrings.xml":       `<sst ` + mainNS + `><si><t>shared</t></si></sst>`,
		"xl/styles.xml":              `<styleSheet ` + mainNS + `><fonts><font/><font><strike/></font><font><strike val="0"/></font></fonts><cellXfs><xf fontId="0" numFmtId="0"/><xf fontId="1" numFmtId="0"/><xf fontId="2" numFmtId="0"/><xf fontId="0" numFmtId="14" applyNumberFormat="0"/></cellXfs></styleSheet>`,
		"xl/worksheets/sheet1.xml":   `<?xml version="1.0" encoding="UTF-8"?><worksheet ` + mainNS + `>` + sheet + `</worksheet>`,
	}
}

// with gives a copy in which some parts differ; "" takes a part out.
func (p parts) with(changes parts) parts {
	out := maps.Clone(p)
	for name, text := range changes {
		if out[name] = text; text == "" {
			delete(out, name)
		}
	}
	return out
}

func (p parts) zip(tb testing.TB) []byte {
	tb.Helper()
	var buf bytes.Buffer
	w := zip.NewWriter(&buf)
	for _, name := range slices.Sorted(maps.Keys(p)) {
		out, err := w.Create(name)
		if err != nil {
			tb.Fatal(err)
		}
		if _, err := out.Write([]byte(p[name])); err != nil {
			tb.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		tb.Fatal(err)
	}
	return buf.Bytes()
}

// inRow puts cells into the sheet data of a sheet.
func inRow(cells string) string {
	return `<sheetData><row r="1">` + cells + `</row></sheetData>`
}

// emptyRows is a workbook with a title and rows that hold only formatting.
func emptyRows(tb testing.TB, rows int) []byte {
	tb.Helper()
	var b strings.Builder
	b.WriteString(`<sheetData><row r="1"><c r="A1" t="s"><v>0</v></c></row>`)
	for n := 2; n <= rows; n++ {
		if n%2 == 0 {
			fmt.Fprintf(&b, `<row r="%d" s="1" customFormat="1" hidden="1"/>`, n)
		} else {
			fmt.Fprintf(&b, `<row r="%d" hidden="1"><c r="A%d" s="1"/><c r="B%d" s="1"/></row>`, n, n, n)
		}
	}
	b.WriteString(`</sheetData>`)
	return rawBook(b.String()).zip(tb)
}

func mustRead(tb testing.TB, data []byte) *Book {
	tb.Helper()
	book, err := Read("book.xlsx", data, DefaultLimits())
	if err != nil {
		tb.Fatal(err)
	}
	return book
}

// cellOf reads a raw sheet and gives its cell at A1, and whether there is one.
func cellOf(tb testing.TB, sheet string, changes parts) (Cell, bool) {
	tb.Helper()
	// A second row keeps a sheet whose first cell is empty from being refused.
	sheet = strings.Replace(sheet, "</sheetData>", `<row r="9"><c r="A9" t="inlineStr"><is><t>end</t></is></c></row></sheetData>`, 1)
	book := mustRead(tb, rawBook(sheet).with(changes).zip(tb))
	return book.Sheets[0].At(1, 1)
}
