package output

import (
	"bytes"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"abut/internal/compare"
)

func logEntries() []compare.Entry {
	return []compare.Entry{{
		Specified: "FM-1", Offered: "=HYPERLINK(\"x\")", Lines: []string{"W1 (S, row 3)", "W2 (S, row 4)"},
		Worse: []string{"thickness 32 mil | 40 mil"}, Action: "revise and resubmit",
	}}
}

func TestLogMarkdown(t *testing.T) {
	var b strings.Builder
	if err := WriteLog(&b, "markdown", logEntries()); err != nil {
		t.Fatal(err)
	}
	want := `| FM-1 | =HYPERLINK("x") | W1 (S, row 3)<br>W2 (S, row 4) | thickness 32 mil \| 40 mil |  |  | revise and resubmit |  |  |`
	for _, text := range []string{"# Review log: 1 substitution\n", want, logNote, Caution} {
		if !strings.Contains(b.String(), text) {
			t.Errorf("no %q in\n%s", text, b.String())
		}
	}
}

// TestLogBook: texts stay texts, and the reviewer's column has the words to
// choose from and nothing chosen.
func TestLogBook(t *testing.T) {
	var b bytes.Buffer
	if err := WriteLog(&b, "xlsx", logEntries()); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&b)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	cells := map[string]string{
		"A1": "Specified", "B2": `=HYPERLINK("x")`, "C2": "W1 (S, row 3)\nW2 (S, row 4)", "G2": "revise and resubmit", "H2": "",
		"A4": logNote, "A5": Caution,
	}
	for cell, want := range cells {
		if got, err := f.GetCellValue("Review log", cell); err != nil || got != want {
			t.Errorf("%s is %q (%v), want %q", cell, got, err, want)
		}
	}
	if formula, err := f.GetCellFormula("Review log", "B2"); err != nil || formula != "" {
		t.Errorf("B2 became the formula %q (%v)", formula, err)
	}
	lists, err := f.GetDataValidations("Review log")
	if err != nil || len(lists) != 1 || lists[0].Sqref != "H2:H2" {
		t.Errorf("got %v, %v", lists, err)
	}
}

func TestLogFormat(t *testing.T) {
	for file, want := range map[string]string{"a.xlsx": "xlsx", "a.MD": "markdown", "a.json": "", "a": ""} {
		if got := LogFormatOf(file); got != want {
			t.Errorf("%s is %q, want %q", file, got, want)
		}
	}
	if err := WriteLog(&strings.Builder{}, "csv", nil); err == nil {
		t.Error("an unknown format passed")
	}
}
