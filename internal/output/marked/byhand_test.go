package marked

import (
	"archive/zip"
	"bytes"
	"strings"
	"testing"

	"abut/internal/output"
	"abut/internal/workbook"
)

// pieced makes a package of parts as they are given, in order.
func pieced(t *testing.T, parts ...string) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for i := 0; i < len(parts); i += 2 {
		p, err := w.Create(parts[i])
		if err != nil {
			t.Fatal(err)
		}
		if _, err := p.Write([]byte(parts[i+1])); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// sparse is a template with prefixes, without styles, and with cells and rows
// that do not say where they are; one cell holds a conversation.
func sparse(t *testing.T) []byte {
	const rels = `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">`
	const macro = "macros as they are"
	return pieced(t,
		"[Content_Types].xml", `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/>`+
			`<Override PartName="/xl/workbook.xml" ContentType="`+formatType+`template.main+xml"/></Types>`,
		"_rels/.rels", rels+`<Relationship Id="r1" Type="`+relsSpace+`/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
		"xl/workbook.xml", `<x:workbook xmlns:x="`+mainSpace+`" xmlns:r="`+relsSpace+`"><x:sheets><x:sheet name="S" sheetId="7" r:id="q"/></x:sheets><x:calcPr calcId="1"/></x:workbook>`,
		"xl/_rels/workbook.xml.rels", rels+`<Relationship Id="q" Type="`+relsSpace+`/worksheet" Target="worksheets/s.xml"/></Relationships>`,
		"xl/worksheets/s.xml", `<x:worksheet xmlns:x="`+mainSpace+`"><x:sheetData><x:row><x:c t="str"><x:v>one</x:v></x:c><x:c><x:v>2</x:v></x:c></x:row>`+
			`<x:row/></x:sheetData><x:pageMargins left="1" right="1" top="1" bottom="1" header="0" footer="0"/></x:worksheet>`,
		"xl/worksheets/_rels/s.xml.rels", rels+`<Relationship Id="t" Type="http://schemas.microsoft.com/office/2017/10/relationships/threadedComment" Target="../talk.xml"/></Relationships>`,
		"xl/talk.xml", `<ThreadedComments><threadedComment ref="B1"><text>well?</text></threadedComment></ThreadedComments>`,
		"xl/vbaProject.bin", macro,
	)
}

func TestSparse(t *testing.T) {
	data := sparse(t)
	after := mark(t, "s.xltx", data,
		found("s.xltx", "S", "error", "first", "A1"), found("s.xltx", "S", "note", "talked of", "B1"),
		found("s.xltx", "S", "note", "missing cell", "C1"), found("s.xltx", "S", "note", "missing row", "B9"), found("s.xltx", "S", "note", "empty row", "B2"))
	is := parts(t, after)
	for part, want := range map[string][]string{
		"[Content_Types].xml": {formatType + "sheet.main+xml", `PartName="/xl/styles1.xml"`},
		"xl/workbook.xml":     {`<x:sheet name="Findings" sheetId="8" r:id="rIdFindings`, `<x:definedNames><x:definedName name="_xlnm.Print_Titles" localSheetId="1">`, `</x:definedNames><x:calcPr`},
		"xl/worksheets/s.xml": {
			`<x:c t="str" s="1"><x:v>one</x:v></x:c>`, `<x:c r="C1" s="2"/></x:row>`, `<x:row><x:c r="B2" s="2"/></x:row>`, `<x:row r="9"><x:c r="B9" s="2"/></x:row></x:sheetData>`,
			`<x:hyperlinks><x:hyperlink ref="A1"`, `</x:hyperlinks><x:pageMargins`, `<x:legacyDrawing xmlns:r=`,
		},
		"xl/vbaProject.bin":           {"macros as they are"},
		"xl/talk.xml":                 {"well?"},
		"xl/worksheets/findings1.xml": {"B1 of sheet S holds a conversation"},
	} {
		for _, w := range want {
			if !strings.Contains(string(is[part]), w) {
				t.Errorf("%s lacks %q:\n%s", part, w, is[part])
			}
		}
	}
	if text := string(is["xl/findings/comments1.xml"]); strings.Contains(text, `ref="B1"`) || strings.Count(text, "<comment ref=") != 4 {
		t.Errorf("comments: %s", text)
	}
	book, err := workbook.Read("s.xlsx", after, workbook.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if c, _ := book.Sheets[0].At(1, 1); c.Value != "one" || !strings.Contains(c.Comment, "abut, error: first") {
		t.Errorf("A1 reads %+v", c)
	}
}

// TestRefused: what cannot be marked is told in one line, with the part.
func TestRefused(t *testing.T) {
	for name, data := range map[string][]byte{
		"no archive":    []byte("PK\x03\x04 and no more"),
		"no workbook":   pieced(t, "a.xml", "<a/>"),
		"other letters": pieced(t, "_rels/.rels", `<?xml version="1.0" encoding="UTF-16"?><a/>`),
		"broken":        pieced(t, "_rels/.rels", "<a><b></a>"),
		"cut":           pieced(t, "_rels/.rels", "<a><b>"),
	} {
		run := output.Run{Files: []string{"bad.xlsx"}}
		var b bytes.Buffer
		err := Write(&b, data, run)
		if err == nil || !strings.HasPrefix(err.Error(), "bad.xlsx: no marked copy can be made: ") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v", name, err)
		}
		if b.Len() > 0 {
			t.Errorf("%s: something was written", name)
		}
	}
}

func TestFits(t *testing.T) {
	for pair, want := range map[[2]string]bool{
		{"a.xlsx", "b.xlsx"}: true, {"a.xlsm", "b.xlsm"}: true, {"a.csv", "b.xlsx"}: true, {"a.xltx", "b.XLSX"}: true,
		{"a.xlsm", "b.xlsx"}: false, {"a.xlsx", "b.xlsm"}: false, {"a.csv", "b.xlsm"}: false,
	} {
		if err := Fits(pair[0], pair[1]); (err == nil) != want {
			t.Errorf("%v: %v", pair, err)
		}
	}
}
