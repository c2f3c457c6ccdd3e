package output

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/mattn/go-runewidth"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
	"abut/schema"
)

// sampleRun has what a report may meet: two files, sheets, waived and related
// findings, problems, and text that tries to steer a terminal or a page.
func sampleRun() Run {
	lap := engine.Finding{
		Rule: "sequence-lap", Topic: "sequence", Severity: "warning", File: "walls.xlsx", Sheet: "Walls", Row: 12,
		Cells: []string{"F12", "AA12"}, Mark: "W2",
		Message: `W2 laps 25 mm at the sill, and its own data ask for 50 mm; "flexible flashing at rough openings" is what the row calls it`,
		Reason:  "wind drives water past a short lap", Remedy: "lap 50 mm or more, and roll it", Source: "common practice",
	}
	again := lap
	again.Row, again.Cells, again.Mark, again.Message = 13, []string{"F13"}, "W3", "W3 laps 10 mm"
	again.Related = []engine.Related{
		{Sheet: "Walls", Row: 14, Cells: []string{"F14"}, What: "the sheet under it"},
		{Sheet: "Products", Row: 3, Cells: []string{"D3"}, What: "its own data"},
	}
	waived := lap
	waived.Row, waived.Cells, waived.Severity, waived.Message = 15, []string{}, "error", "W4 laps nothing"
	waived.Waived = &engine.Waived{Reason: "mock-up passed", By: "reviewer", Reference: "letter 4", Until: "2027-01-31"}
	hostile := engine.Finding{
		Rule: "contact-oil", Topic: "contact", Severity: "error", File: "roof.csv", Row: 2, Cells: []string{"B2"},
		Mark:    "R|1 \x1b[31m",
		Message: "<script>alert(1)</script> *bold* @team https://example.test www.example.test \u202egnp.exe \x07\nnext 接触 line",
		Reason:  "oil & plasticizer move", Remedy: "part them", Source: "from memory",
	}
	note := engine.Finding{
		Rule: "data-place", Topic: "data", Severity: "note", File: "roof.csv", Cells: []string{},
		Message: "no place is stated", Reason: "the season depends on it", Remedy: "state the city", Source: "common practice",
	}
	var reading schedule.Reading
	reading.Cells, reading.Known = 120, 117
	reading.Unread = []schedule.Unread{{Text: "as per AOR", Why: "no material is known by these words", At: schedule.At{Sheet: "Walls", Row: 9, Cell: "F9"}}}
	reading.Sheets = []schedule.SheetRead{
		{Name: "Walls", As: "schedule", State: "visible"}, {Name: "Cover \x1b[31m|", As: "notes", State: "hidden"},
		{Name: "Lists", As: "words", State: "visible"}, {Name: "Curve", As: "chartsheet", State: "visible"}, {Name: "Spare", As: "empty", State: "visible"},
	}
	doc := document.Document{Reading: reading}
	document.Complete(&doc)
	return Run{
		Version: "1.2.3", Files: []string{"roof.csv", "walls.xlsx", "broken.xlsx"},
		Findings: []engine.Finding{note, hostile, lap, again, waived},
		Reading:  []Reading{{File: "walls.xlsx", Reading: doc.Reading}},
		Rules: []engine.Rule{
			{ID: "contact-oil", Topic: "contact", Severity: "error", Title: "Oil", Description: "Oil moves.", Reason: "r", Remedy: "m", Source: "s"},
			{ID: "sequence-lap", Topic: "sequence", Severity: "warning", Title: "Lap", Description: "Water runs.", Reason: "r", Remedy: "m", Source: "s"},
		},
		Problems: []Problem{{File: "broken.xlsx", Message: "not a workbook; save it as .xlsx again"}, {Message: "rule x-y failed"}},
	}
}

func written(t *testing.T, format string, run Run) string {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, format, run); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestGolden compares each format with its file; UPDATE=1 writes them anew.
func TestGolden(t *testing.T) {
	clean := Run{Version: "1.2.3", Files: []string{"walls.xlsx"}}
	for _, format := range Formats() {
		for name, run := range map[string]Run{"full": sampleRun(), "clean": clean} {
			t.Run(format+"/"+name, func(t *testing.T) {
				golden(t, filepath.Join("testdata", name+"."+format), written(t, format, run))
			})
		}
	}
}

func golden(t *testing.T, file, got string) {
	t.Helper()
	if os.Getenv("UPDATE") == "1" {
		if err := os.WriteFile(file, []byte(got), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s differs:\n%s", file, got)
	}
}

// TestAside: a sheet without a table is named in every report for people, a few
// of many.
func TestAside(t *testing.T) {
	run := Run{Files: []string{"a.xlsx"}, Reading: []Reading{{}}}
	for i := range 9 {
		run.Reading[0].Reading.Sheets = append(run.Reading[0].Reading.Sheets, schedule.SheetRead{Name: fmt.Sprint(i), As: "notes"})
	}
	want := `No table on "0" (read as notes), "1" (read as notes), "2" (read as notes), "3" (read as notes), "4" (read as notes), "5" (read as notes), and 3 more.`
	if got := run.Summary().Aside(); got != want {
		t.Errorf("got %s", got)
	}
	run.Reading[0].Reading.Sheets = []schedule.SheetRead{{Name: "W", As: "schedule"}, {Name: "", As: "empty"}, {Name: "Found", As: "findings"}}
	if got := run.Summary().Aside(); got != "" {
		t.Errorf("got %s", got)
	}
}

func TestEveryReport(t *testing.T) {
	for _, format := range Formats() {
		t.Run(format, func(t *testing.T) {
			got := written(t, format, sampleRun())
			words := strings.Join(strings.Fields(got), " ")
			caution := Caution
			if format == "junit" {
				caution = strings.ReplaceAll(caution, "'", "&#39;")
			}
			if n := strings.Count(words, caution); n != 1 {
				t.Errorf("the caution stands %d times, want once", n)
			}
			for _, bad := range []string{"\x1b", "\x07"} {
				if strings.Contains(got, bad) {
					t.Errorf("the control character %q came through", bad)
				}
			}
			if format != "json" && strings.Contains(got, "\u202e") {
				t.Error("a character that turns the reading direction came through")
			}
			if got != written(t, format, sampleRun()) {
				t.Error("the same run gives other bytes")
			}
		})
	}
}

func TestTextFitsColumns(t *testing.T) {
	for i, line := range strings.Split(written(t, "text", sampleRun()), "\n") {
		if n := runewidth.StringWidth(line); n > columns {
			t.Errorf("line %d is %d columns wide: %s", i+1, n, line)
		}
	}
}

func TestMarkdownIsTame(t *testing.T) {
	got := written(t, "markdown", sampleRun())
	for _, bad := range []string{"<script", " *bold", "@team", "https://", "www.", "R|1"} {
		if strings.Contains(got, bad) {
			t.Errorf("%q came through", bad)
		}
	}
}

func TestJSONFollowsSchema(t *testing.T) {
	compiled := findingsSchema(t)
	tests := map[string]struct {
		change func(map[string]any)
		valid  bool
	}{
		"as written":        {func(map[string]any) {}, true},
		"unknown key":       {func(m map[string]any) { m["more"] = 1 }, false},
		"unknown severity":  {func(m map[string]any) { m["findings"].([]any)[0].(map[string]any)["severity"] = "grave" }, false},
		"missing mark":      {func(m map[string]any) { delete(m["findings"].([]any)[0].(map[string]any), "mark") }, false},
		"unknown in waived": {func(m map[string]any) { m["findings"].([]any)[4].(map[string]any)["waived"].(map[string]any)["x"] = 1 }, false},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			value, err := jsonschema.UnmarshalJSON(strings.NewReader(written(t, "json", sampleRun())))
			if err != nil {
				t.Fatal(err)
			}
			tc.change(value.(map[string]any))
			if err := compiled.Validate(value); (err == nil) != tc.valid {
				t.Errorf("valid is %v, want %v: %v", err == nil, tc.valid, err)
			}
		})
	}
}

func findingsSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	compiled, err := schema.Compile("findings.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

func TestJUnitCounts(t *testing.T) {
	tests := map[string]struct {
		failAt   string
		failures int
	}{
		"errors":   {"", 1},
		"warnings": {"warning", 3},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			run := sampleRun()
			run.FailAt = tc.failAt
			var report junitReport
			if err := xml.Unmarshal([]byte(written(t, "junit", run)), &report); err != nil {
				t.Fatal(err)
			}
			if report.Failures != tc.failures || report.Errors != 2 || report.Tests != 7 {
				t.Errorf("got %d failures, %d errors, %d tests", report.Failures, report.Errors, report.Tests)
			}
		})
	}
}

// TestFingerprints: they survive rows added above, and tell findings apart.
func TestFingerprints(t *testing.T) {
	run := sampleRun()
	before := fingerprints(run.Findings)
	for i := range run.Findings {
		run.Findings[i].Row += 3
		for j, cell := range run.Findings[i].Cells {
			run.Findings[i].Cells[j] = strings.TrimRight(cell, "0123456789") + "99"
		}
	}
	run.Findings = append(run.Findings, run.Findings[0])
	after := fingerprints(run.Findings)
	seen := map[string]bool{}
	for i, mark := range after {
		if i < len(before) && mark != before[i] {
			t.Errorf("finding %d changed its fingerprint", i)
		}
		if seen[mark] {
			t.Errorf("two findings have %s", mark)
		}
		seen[mark] = true
	}
}

func TestSARIFPoints(t *testing.T) {
	var log sarifLog
	if err := json.Unmarshal([]byte(written(t, "sarif", sampleRun())), &log); err != nil {
		t.Fatal(err)
	}
	run := log.Runs[0]
	if run.Invocations[0].Successful {
		t.Error("a run with problems is told to be a success")
	}
	for _, r := range run.Results {
		if r.Index != nil && run.Tool.Driver.Rules[*r.Index].ID != r.Rule {
			t.Errorf("%s points at rule %d", r.Rule, *r.Index)
		}
	}
}

func TestURI(t *testing.T) {
	tests := map[string]string{
		"a/b c.xlsx": "a/b%20c.xlsx", "/x/y.csv": "file:///x/y.csv", "50%.csv": "50%25.csv", "W1: walls.csv": "./W1:%20walls.csv",
	}
	for file, want := range tests {
		if got := uri(file); got != want {
			t.Errorf("%s is %s, want %s", file, got, want)
		}
	}
}

func TestFails(t *testing.T) {
	finding := func(severity string, waived *engine.Waived) []engine.Finding {
		return []engine.Finding{{Severity: severity, Waived: waived}}
	}
	tests := map[string]struct {
		run  Run
		want bool
	}{
		"nothing":                  {Run{}, false},
		"error":                    {Run{Findings: finding("error", nil)}, true},
		"waived error":             {Run{Findings: finding("error", &engine.Waived{})}, false},
		"warning":                  {Run{Findings: finding("warning", nil)}, false},
		"warning, asked for":       {Run{Findings: finding("warning", nil), FailAt: "warning"}, true},
		"note, warnings asked for": {Run{Findings: finding("note", nil), FailAt: "warning"}, false},
	}
	for name, tc := range tests {
		if got := tc.run.Fails(); got != tc.want {
			t.Errorf("%s: got %v, want %v", name, got, tc.want)
		}
	}
}

func TestUnknownFormat(t *testing.T) {
	if err := Write(io.Discard, "pdf", Run{}); err == nil || !strings.Contains(err.Error(), "text, json") {
		t.Errorf("got %v", err)
	}
}

func TestFormatOf(t *testing.T) {
	for file, want := range map[string]string{"a.json": "json", "a.SARIF": "sarif", "b/c.xml": "junit", "x.md": "markdown", "x.pdf": ""} {
		if got := FormatOf(file); got != want {
			t.Errorf("%s is %q, want %q", file, got, want)
		}
	}
}
