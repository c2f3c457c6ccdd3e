package marked

import (
	"bytes"
	"testing"

	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/workbook"
)

// FuzzWrite: whatever the parts hold that are changed, marking them ends in a
// copy that can be opened as an archive, or in an error, and never in a panic.
func FuzzWrite(f *testing.F) {
	f.Add(`<worksheet><cols><col min="1" max="2" style="1"/></cols><sheetData><row r="1" s="1" customFormat="1"><c r="A1" t="s"><v>0</v></c></row></sheetData><mergeCells><mergeCell ref="A1:B2"/></mergeCells><hyperlinks><hyperlink ref="A2"/></hyperlinks></worksheet>`,
		`<styleSheet><fonts><font><color theme="0"/></font></fonts><fills><fill/></fills><borders><border/></borders><cellXfs><xf fontId="0"/></cellXfs></styleSheet>`,
		`<comments><authors><author>a</author></authors><commentList><comment ref="A1"><text><t>words</t></text></comment></commentList></comments>`,
		`<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="o" xmlns:x="x"><v:shape id="_x0000_s1025"/></xml>`)
	f.Add(`<worksheet><sheetData/></worksheet>`, `<styleSheet/>`, `<comments><authors/><commentList/></comments>`, ``)
	f.Fuzz(func(t *testing.T, sheet, styles, comments, drawing string) {
		const rels = `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">`
		data := pieced(t,
			"[Content_Types].xml", `<Types></Types>`,
			"_rels/.rels", rels+`<Relationship Id="r1" Type="x/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
			"xl/workbook.xml", `<workbook xmlns:r="r"><sheets><sheet name="S" sheetId="1" r:id="q"/></sheets></workbook>`,
			"xl/_rels/workbook.xml.rels", rels+`<Relationship Id="q" Type="x/worksheet" Target="s.xml"/><Relationship Id="y" Type="x/styles" Target="y.xml"/></Relationships>`,
			"xl/s.xml", sheet, "xl/y.xml", styles, "xl/c.xml", comments, "xl/v.vml", drawing,
			"xl/_rels/s.xml.rels", rels+`<Relationship Id="c" Type="x/comments" Target="c.xml"/><Relationship Id="v" Type="x/vmlDrawing" Target="v.vml"/></Relationships>`,
		)
		var out bytes.Buffer
		run := output.Run{Files: []string{"f.xlsx"}, Findings: []engine.Finding{
			found("f.xlsx", "S", "error", "one", "A1"), found("f.xlsx", "S", "note", "two", "B2", "D9"), found("f.xlsx", "S", "note", "three", "A3"),
		}}
		if err := Write(&out, data, run); err != nil {
			return
		}
		if len(parts(t, out.Bytes())) < 9 {
			t.Error("parts are lost")
		}
		if _, err := workbook.Read("f.xlsx", data, workbook.DefaultLimits()); err != nil {
			return // the original could not be read either
		}
		if _, err := workbook.Read("f.xlsx", out.Bytes(), workbook.DefaultLimits()); err != nil {
			t.Errorf("the copy cannot be read, though the original can: %v", err)
		}
	})
}
