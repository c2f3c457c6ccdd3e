package workbook

import (
	"slices"
	"strings"
	"testing"
)

func TestAsides(t *testing.T) {
	box := `<xdr:twoCellAnchor><xdr:sp><xdr:txBody><a:p><a:r><a:t>Keep EPDM</a:t></a:r></a:p><a:p><a:r><a:t>off the sheet</a:t></a:r></a:p></xdr:txBody></xdr:sp></xdr:twoCellAnchor>`
	book := rawBook(inRow(`<c r="A1"><v>1</v></c>`) + `<headerFooter><oddHeader>&amp;L&amp;"Arial,Bold"&amp;12Ferry hall&amp;C&amp;K01+000Portland, Maine &amp;&amp; Co.&amp;RPage &amp;P of &amp;N</oddHeader><oddFooter>&amp;F &amp;D</oddFooter></headerFooter><drawing r:id="rId1"/>`)
	book = book.with(parts{
		"xl/worksheets/_rels/sheet1.xml.rels": `<Relationships ` + relNS + `><Relationship Id="rId1" Type="` + relURL + `drawing" Target="../drawings/drawing1.xml"/></Relationships>`,
		"xl/drawings/drawing1.xml":            `<xdr:wsDr xmlns:xdr="x" xmlns:a="a">` + box + `<xdr:oneCellAnchor><xdr:pic/></xdr:oneCellAnchor></xdr:wsDr>`,
	})
	want := []Aside{{"header or footer", "Ferry hall Portland, Maine & Co."}, {"text box", "Keep EPDM off the sheet"}}
	if got := mustRead(t, book.zip(t)).Sheets[0].Asides; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	lim := DefaultLimits()
	lim.Comments = 1
	got, err := Read("a.xlsx", book.zip(t), lim)
	refused(t, got, err, "a.xlsx: S: it has more than 1 texts beside its cells")
	got, err = Read("a.xlsx", book.with(parts{"xl/drawings/drawing1.xml": `<xdr:wsDr>` + box}).zip(t), DefaultLimits())
	refused(t, got, err, "a.xlsx: S: its part xl/drawings/drawing1.xml is damaged (it ends too early)")
	if got := mustRead(t, book.with(parts{"xl/drawings/drawing1.xml": ""}).zip(t)).Sheets[0].Asides; len(got) != 1 {
		t.Errorf("without the drawing: %q", got)
	}
}

func TestPrinted(t *testing.T) {
	for code, want := range map[string]string{
		"": "", "&": "", "plain": "plain", "&CPage &P": "", "&LJob 7&RPage &P": "Job 7", `&L&"Arial`: "Arial", "&K": "", "&L&08Rev. B": "Rev. B", "&L&GLogo": "Logo", "&A": "", "R&&D": "R&D",
	} {
		if got := strings.TrimSpace(printed(code)); got != want {
			t.Errorf("%q: got %q, want %q", code, got, want)
		}
	}
}

// TestMasked: what a number format hides is no value, and is kept apart.
func TestMasked(t *testing.T) {
	masks := parts{"xl/styles.xml": `<styleSheet><numFmts><numFmt numFmtId="170" formatCode=";;;"/><numFmt numFmtId="171" formatCode="0;-0;;@"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="170"/><xf numFmtId="171"/></cellXfs></styleSheet>`}
	for name, tt := range map[string]struct{ cell, value, masked string }{
		"text":             {`<c r="A1" t="s" s="1"><v>0</v></c>`, "", "shared"},
		"number":           {`<c r="A1" s="1"><v>7.5</v></c>`, "", "7.5"},
		"zero":             {`<c r="A1" s="1"><v>0</v></c>`, "", ""},
		"zero left out":    {`<c r="A1" s="2"><v>0</v></c>`, "", ""},
		"text let through": {`<c r="A1" t="s" s="2"><v>0</v></c>`, "shared", ""},
	} {
		if c, _ := cellOf(t, inRow(tt.cell), masks); c.Value != tt.value || c.Masked != tt.masked {
			t.Errorf("%s: %+v", name, c)
		}
	}
}
