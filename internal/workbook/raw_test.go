package workbook

import (
	"bytes"
	"strings"
	"testing"

	"golang.org/x/text/encoding/unicode"
)

func TestStoredCells(t *testing.T) {
	tests := []struct {
		name, cell string
		want       Cell
	}{
		{"inline", `<c r="A1" t="inlineStr"><is><t>a &lt; b</t></is></c>`, Cell{Value: "a < b"}},
		{"inline in its value", `<c r="A1" t="inlineStr"><v>a &lt; b</v></c>`, Cell{Value: "a < b"}},
		{"inline struck", `<c r="A1" t="inlineStr"><is><r><rPr><strike/></rPr><t>old </t></r><r><t>new</t></r></is></c>`, Cell{Value: "new", Struck: "old"}},
		{"strike off in words", `<c r="A1" t="inlineStr"><is><r><rPr><strike val="false"/></rPr><t>kept</t></r></is></c>`, Cell{Value: "kept"}},
		{"phonetic reading left out", `<c r="A1" t="inlineStr"><is><t>a</t><rPh sb="0" eb="1"><t>b</t></rPh></is></c>`, Cell{Value: "a"}},
		{"shared", `<c r="A1" t="s"><v>0</v></c>`, Cell{Value: "shared"}},
		{"shared struck by style", `<c r="A1" t="s" s="1"><v>0</v></c>`, Cell{Struck: "shared", AllStruck: true}},
		{"style that unsets strike", `<c r="A1" t="s" s="2"><v>0</v></c>`, Cell{Value: "shared"}},
		{"no address", `<c t="s"><v>0</v></c>`, Cell{Value: "shared"}},
		{"number", `<c r="A1"><v>5.9999999999999995E-4</v></c>`, Cell{Value: "0.0006", Kind: Number, Number: 5.9999999999999995e-4}},
		{"formula with result", `<c r="A1"><f>B1*2</f><v>3</v></c>`, Cell{Value: "3", Kind: Number, Number: 3, Formula: true}},
		{"formula with text", `<c r="A1" t="str"><f>B1</f><v>W1</v></c>`, Cell{Value: "W1", Formula: true}},
		{"formula without result", `<c r="A1"><f>B1*2</f></c>`, Cell{Kind: FormulaEmpty, Formula: true}},
		{"formula with empty element", `<c r="A1"><f>B1*2</f><v/></c>`, Cell{Kind: FormulaEmpty, Formula: true}},
		{"true", `<c r="A1" t="b"><v>1</v></c>`, Cell{Value: "TRUE", Kind: Bool}},
		{"false", `<c r="A1" t="b"><v>0</v></c>`, Cell{Value: "FALSE", Kind: Bool}},
		{"error value", `<c r="A1" t="e"><f>X!A1</f><v>#REF!</v></c>`, Cell{Value: "#REF!", Kind: Error, Formula: true}},
		{"escaped character", `<c r="A1" t="inlineStr"><is><t>a_x000D_&#10;b _x0041_ _x12</t></is></c>`, Cell{Value: "a\nb A _x12"}},
		{"character data", `<c r="A1" t="inlineStr"><is><t><![CDATA[5 < 6 & 7]]></t></is></c>`, Cell{Value: "5 < 6 & 7"}},
		{"comment inside", `<c r="A1" t="inlineStr"><is><t>a<!-- <b> -->c</t></is></c>`, Cell{Value: "ac"}},
		{"prefixed", `<x:c r="A1" t="inlineStr"><x:is><x:t>p</x:t></x:is></x:c>`, Cell{Value: "p"}},
		{"quoted sign in attribute", `<c r="A1" t="s" cm='a>b'><v>0</v></c>`, Cell{Value: "shared"}},
		{"unknown children", `<c r="A1" t="s"><extLst><ext><v>7</v></ext></extLst><v>0</v></c>`, Cell{Value: "shared"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, ok := cellOf(t, inRow(tt.cell), nil)
			tt.want.Row, tt.want.Col = 1, 1
			if !ok || got != tt.want {
				t.Errorf("got %+v, want %+v", got, tt.want)
			}
		})
	}
}

func TestCellsThatHoldNothing(t *testing.T) {
	for name, cell := range map[string]string{
		"style only":       `<c r="A1" s="1"/>`,
		"empty value":      `<c r="A1" t="s"><v></v></c>`,
		"formula of space": `<c r="A1" t="str"><f>IF(B1,1,"")</f><v></v></c>`,
		"space":            `<c r="A1" t="inlineStr"><is><t xml:space="preserve">   </t></is></c>`,
	} {
		if c, ok := cellOf(t, inRow(cell), nil); ok {
			t.Errorf("%s: %+v", name, c)
		}
	}
}

func TestISODateAndBuiltinFormat(t *testing.T) {
	c, _ := cellOf(t, inRow(`<c r="A1" t="d"><v>2026-03-31T00:00:00</v></c>`), nil)
	if c.Kind != Date || c.Value != "2026-03-31" {
		t.Errorf("%+v", c)
	}
	c, _ = cellOf(t, inRow(`<c r="A1" s="3"><v>46112</v></c>`), nil)
	if c.Kind != Date || c.Value != "2026-03-31" || c.Format != "mm-dd-yy" {
		t.Errorf("%+v", c)
	}
}

// TestWritersDiffer reads the same cell from packages that are put together in
// other ways than the usual one.
func TestWritersDiffer(t *testing.T) {
	sheet := inRow(`<c r="A1" t="s"><v>0</v></c>`)
	plain := rawBook(strings.Replace(sheet, "</sheetData>", `<row r="9"><c r="A9"><v>1</v></c></row></sheetData>`, 1))
	wide, err := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder().String(
		strings.Replace(plain["xl/worksheets/sheet1.xml"], "UTF-8", "UTF-16", 1))
	if err != nil {
		t.Fatal(err)
	}
	strict := strings.NewReplacer(
		"http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main",
		"http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://purl.oclc.org/ooxml/officeDocument/relationships")
	for name, changes := range map[string]parts{
		"UTF-16 sheet":  {"xl/worksheets/sheet1.xml": wide},
		"byte mark":     {"xl/worksheets/sheet1.xml": "\xef\xbb\xbf" + plain["xl/worksheets/sheet1.xml"]},
		"no styles":     {"xl/styles.xml": ""},
		"Latin-1 texts": {"xl/sharedStrings.xml": `<?xml version="1.0" encoding="ISO-8859-1"?><sst><si><t>shared</t></si></sst>`},
		"strict": {"xl/worksheets/sheet1.xml": strict.Replace(plain["xl/worksheets/sheet1.xml"]), "xl/workbook.xml": strict.Replace(plain["xl/workbook.xml"]),
			"xl/_rels/workbook.xml.rels": strict.Replace(plain["xl/_rels/workbook.xml.rels"]), "_rels/.rels": strict.Replace(plain["_rels/.rels"])},
		"texts elsewhere": {"xl/sharedStrings.xml": "", "texts/All.xml": plain["xl/sharedStrings.xml"],
			"xl/_rels/workbook.xml.rels": strings.Replace(plain["xl/_rels/workbook.xml.rels"], "/xl/sharedStrings.xml", "../texts/all.xml", 1)},
		"backslashes": {"xl/worksheets/sheet1.xml": "", `xl\worksheets\sheet1.xml`: plain["xl/worksheets/sheet1.xml"]},
	} {
		t.Run(name, func(t *testing.T) {
			book := mustRead(t, plain.with(changes).zip(t))
			if c, _ := book.Sheets[0].At(1, 1); c.Value != "shared" {
				t.Errorf("got %+v", c)
			}
		})
	}
}

func TestEveryEnding(t *testing.T) {
	data := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`)).zip(t)
	for _, name := range []string{"a.xlsx", "a.XLSM", "a.xltx", "a"} {
		if book, err := Read(name, data, DefaultLimits()); err != nil || book.Path != name {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestRowsOutOfOrder(t *testing.T) {
	book := mustRead(t, rawBook(`<sheetData><row r="5" hidden="1"><c r="B5"><v>52</v></c><c r="A5"><v>51</v></c></row><row r="2"><c r="A2"><v>21</v></c></row><row><c><v>31</v></c></row></sheetData>`).zip(t))
	s := &book.Sheets[0]
	for ref, want := range map[string]string{"A5": "51", "B5": "52", "A2": "21", "A3": "31"} {
		if got := at(t, s, ref).Value; got != want {
			t.Errorf("%s: %s", ref, got)
		}
	}
	if !s.RowHidden(5) || s.RowHidden(2) {
		t.Error("hidden rows are wrong")
	}
}

func TestHugeEmptyFormatting(t *testing.T) {
	data := emptyRows(t, 1_000_000)
	if len(data) > 16<<20 {
		t.Fatalf("the fixture is no test: %d bytes", len(data))
	}
	s := &mustRead(t, data).Sheets[0]
	if len(s.Rows) != 1 || s.MaxRow != 1 || len(s.HiddenRows) != 1 || s.HiddenRows[0] != (Span{2, DefaultLimits().Rows}) {
		t.Errorf("%d rows, last %d, hidden %v", len(s.Rows), s.MaxRow, s.HiddenRows)
	}
	if cells := testing.AllocsPerRun(1, func() { mustRead(t, data) }); cells > 5000 {
		t.Errorf("%.0f allocations for rows that hold nothing", cells)
	}
}

func TestReadIsRepeatable(t *testing.T) {
	data := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`)).zip(t)
	again := bytes.Clone(data)
	mustRead(t, data)
	if !bytes.Equal(data, again) {
		t.Error("reading changed the bytes given")
	}
}
