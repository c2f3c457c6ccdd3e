package html

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/workbook"
	"abut/policies"
)

// runOf checks workbooks as the tool does, and keeps what is drawn.
func runOf(t *testing.T, files ...string) output.Run {
	t.Helper()
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	eng, err := engine.Load(engine.Options{})
	if err != nil {
		t.Fatal(err)
	}
	run := output.Run{Version: "1.2.3", Files: files, Rules: eng.Rules(), FailAt: "error"}
	for _, file := range files {
		book, err := workbook.Open(file, workbook.DefaultLimits())
		if err != nil {
			t.Fatal(err)
		}
		doc, err := builder.Build(book, document.Settings{})
		if err != nil {
			t.Fatal(err)
		}
		findings, err := eng.Judge(context.Background(), doc)
		if err != nil {
			t.Fatal(err)
		}
		bare, err := eng.Bare(context.Background(), doc)
		if err != nil {
			t.Fatal(err)
		}
		run.Findings = append(run.Findings, findings...)
		run.Reading = append(run.Reading, output.Reading{File: doc.File, Reading: doc.Reading})
		run.Drawn = append(run.Drawn, output.Drawn{Document: doc, Bare: bare})
	}
	return run
}

func written(t *testing.T, run output.Run) string {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, run); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestSmall holds the page of a small schedule against its golden text, without
// style and script. UPDATE=1 writes it anew.
func TestSmall(t *testing.T) {
	run := runOf(t, "testdata/small.csv")
	page := written(t, run)
	if again := written(t, runOf(t, "testdata/small.csv")); again != page {
		t.Error("the same workbook gave two different pages")
	}
	got := undressed(t, page)
	golden := filepath.Join("testdata", "small.html")
	if os.Getenv("UPDATE") != "" {
		if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("the page differs from %s; UPDATE=1 writes it anew, then read the difference", golden)
	}
}

// undressed cuts the style, the script and the policy that names their hashes.
func undressed(t *testing.T, page string) string {
	t.Helper()
	for _, cut := range [][2]string{{"<style>", "</style>"}, {"<script>", "</script>"}, {`Policy" content="`, `"`}} {
		before, rest, ok := strings.Cut(page, cut[0])
		_, after, ok2 := strings.Cut(rest, cut[1])
		if !ok || !ok2 {
			t.Fatalf("no %s in the page", cut[0])
		}
		page = before + cut[0] + cut[1] + after
	}
	return page
}

// TestHostile has cells that try to be markup, script, style or a reading
// direction; none may reach the page as such.
func TestHostile(t *testing.T) {
	page := written(t, hostile(t))
	for _, bad := range []string{"<script>alert", "<img", "\u202e", "\x1b", `" onfocus`, "</style></title>"} {
		if strings.Contains(page, bad) {
			t.Errorf("%q stands in the page as it came", bad)
		}
	}
	if n := strings.Count(page, "<script>"); n != 1 {
		t.Errorf("%d scripts, want the page's own alone", n)
	}
	if !strings.Contains(page, `\u202egnp.exe`) {
		t.Error("the turned reading direction is not shown")
	}
}

// hostile puts such text wherever a workbook's own words go.
func hostile(t *testing.T) output.Run {
	t.Helper()
	const evil = "</style></title><script>alert(1)</script><img src=x onerror=alert(2)>\" onfocus=alert(3) '{{.}} \u202egnp.exe \x1b[31m"
	run := runOf(t, "testdata/small.csv")
	doc := run.Drawn[0].Document
	doc.Project.Name, doc.Project.Place.Text, doc.Project.Place.Station = evil, evil, evil
	for i := range doc.Lines {
		l := &doc.Lines[i]
		l.Mark, l.Place = evil, evil
		for j := range l.Items {
			l.Items[j].Text, l.Items[j].Name = evil, evil
		}
	}
	for i := range doc.Contacts {
		doc.Contacts[i].A.Text, doc.Contacts[i].B.Text = evil, evil
	}
	for i := range run.Findings {
		f := &run.Findings[i]
		f.Message, f.Mark, f.Remedy, f.Source, f.Rule = evil, evil, evil, evil, evil
	}
	run.Problems = []output.Problem{{File: "x", Message: evil}}
	return run
}

// TestWaived tells waived findings apart and does not count them.
func TestWaived(t *testing.T) {
	run := runOf(t, "testdata/small.csv")
	run.Findings[0].Waived = &engine.Waived{Reason: "mock-up passed", By: "reviewer", Reference: "letter 4", Until: "2027-01-31", At: "abut.yaml:4"}
	page := written(t, run)
	_, apart, ok := strings.Cut(page, "Waived findings</h3>")
	if !ok || !strings.Contains(apart, "mock-up passed (by reviewer, letter 4, until 2027-01-31)") || !strings.Contains(apart, "written in abut.yaml:4") {
		t.Error("the waived finding is not told apart")
	}
	if !strings.Contains(page, "<b>1</b> waived") {
		t.Error("the waived finding is not counted as waived")
	}
}

// TestSettings tells what is found in a file that is no workbook.
func TestSettings(t *testing.T) {
	run := runOf(t, "testdata/small.csv")
	lapsed := engine.Finding{
		Rule: "data-waiver-expired", Topic: "data", Severity: "warning", File: "abut.yaml", Row: 4, Cells: []string{}, Message: "the waiver has expired",
	}
	run.Findings = append(run.Findings, lapsed)
	page := written(t, run)
	_, apart, ok := strings.Cut(page, `<h2 id="file2">abut.yaml</h2>`)
	if !ok || !strings.Contains(apart, "the waiver has expired") {
		t.Error("the finding of the settings is not told")
	}
	if strings.Contains(page, "file2-reading") {
		t.Error("the settings have a reading")
	}
}

// TestFault marks the joint that the finding judges: the asphaltic sheet with
// the EPDM gasket, and no other.
func TestFault(t *testing.T) {
	run := runOf(t, "testdata/small.csv")
	p, err := newPage(run)
	if err != nil {
		t.Fatal(err)
	}
	told := 0
	for _, r := range p.Files[0].Sheets[0].Rows {
		if r.Section == nil {
			t.Errorf("row %d has no section", r.Row)
			continue
		}
		for _, f := range r.Section.Faults {
			if f.Rule != "contact-epdm-on-asphalt" {
				continue
			}
			told++
			words := ""
			for _, part := range r.Section.Parts {
				if f.Has(part.Letter) {
					words += part.Text + "|"
				}
			}
			if want := "SBS self-adhered sheet|EPDM gasket|"; words != want {
				t.Errorf("marked %q, want %q", words, want)
			}
		}
	}
	if told != 1 {
		t.Errorf("the contact is marked %d times", told)
	}
}

// TestManySections bounds the sections and says how many are left out.
func TestManySections(t *testing.T) {
	run := runOf(t, "testdata/small.csv")
	doc := run.Drawn[0].Document
	first, f := doc.Lines[0], run.Findings[0]
	for i := range mostDrawn + 5 {
		l := first
		l.Row = 100 + i
		doc.Lines = append(doc.Lines, l)
		f.Row = l.Row
		run.Findings = append(run.Findings, f)
	}
	page := written(t, run)
	if n := strings.Count(page, `<div class="section">`); n != mostDrawn {
		t.Errorf("%d sections, want %d", n, mostDrawn)
	}
	if !strings.Contains(page, "more are left out so that the page stays readable") {
		t.Error("it is not said that sections are left out")
	}
}
