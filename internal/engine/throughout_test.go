package engine

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"abut/internal/document"
	"abut/internal/schedule"

	"github.com/open-policy-agent/opa/v1/rego"
)

// coveredFirst is a schedule in which some rows are covered before their sheet is on.
func coveredFirst(rows, wrong int) *document.Document {
	doc := &document.Document{File: "walls.xlsx"}
	doc.Reading.Sheets = []schedule.SheetRead{{Name: "Walls", As: "schedule"}}
	doc.Reading.Tables = []schedule.Table{{ID: "Walls#3", Kind: "schedule", Sheet: "Walls", Head: []int{3, 4}, First: 5, Last: rows + 4}}
	for i := range rows {
		row, cover, bare := i+5, "2026-05-20", 9
		if i < wrong {
			cover, bare = "2026-05-01", -10
		}
		id := fmt.Sprintf("Walls!%d", row)
		at := func(col string) schedule.At {
			return schedule.At{Sheet: "Walls", Row: row, Cell: fmt.Sprint(col, row)}
		}
		doc.Lines = append(doc.Lines, schedule.Line{
			ID: id, Sheet: "Walls", Row: row, Table: "Walls#3", Mark: fmt.Sprintf("W-%d", row), Role: "membrane",
			Cells: map[string]string{"material": at("A").Cell, "install": at("B").Cell, "cover": at("C").Cell}, Texts: map[string]string{"material": "SBS sheet"},
			Items: []schedule.Item{{
				ID: id + "/1", Slot: "material", Text: "SBS sheet", Family: "rubberized-asphalt-membrane", Class: "membrane",
				Keys: []string{"rubberized-asphalt-membrane", "asphaltic"}, Polarity: "yes", At: at("A"),
			}},
			Spans: map[string]schedule.Span{"bare_days": {Min: bare, Max: bare, Last: bare, From: "2026-05-11", To: cover}},
			Dates: map[string]schedule.Day{
				"install": {From: "2026-05-11", To: "2026-05-11", Text: "11 May", State: "day", At: at("B")},
				"cover":   {From: cover, To: cover, Text: cover, State: "day", At: at("C")},
			},
		})
	}
	return doc
}

func TestThroughout(t *testing.T) {
	e, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		name        string
		rows, wrong int
		want        int // findings of the rule
		row         int // of the first
		related     int
	}{
		{"a few rows are told each", 40, 4, 4, 5, 0},
		{"many of a small part are told each", 100, 6, 6, 5, 0},
		{"one row in fourteen is told once", 70, 5, 1, 4, 5},
		{"all of a short table are told each", 4, 4, 4, 5, 0},
		{"all of a table are told once", 30, 30, 1, 4, 30},
	} {
		t.Run(tc.name, func(t *testing.T) {
			doc := coveredFirst(tc.rows, tc.wrong)
			found, err := e.Judge(context.Background(), doc)
			if err != nil {
				t.Fatal(err)
			}
			of := slices.DeleteFunc(slices.Clone(found), func(f Finding) bool { return f.Rule != "sequence-cover-first" })
			if len(of) != tc.want || of[0].Row != tc.row || len(of[0].Related) != tc.related {
				t.Fatalf("%d findings, the first %+v", len(of), of[0])
			}
			if tc.want == 1 && !strings.HasPrefix(of[0].Message, fmt.Sprintf("%d of the %d rows", tc.wrong, tc.rows)) {
				t.Errorf("message %q", of[0].Message)
			}
			if a, b := answered(t, doc), answerOf(t, found); a != b {
				t.Errorf("the bundle answers\n%s\nthe engine\n%s", a, b)
			}
		})
	}
}

func TestThroughoutLeavesComparisonsAlone(t *testing.T) {
	e, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	made := []Finding{}
	for i := range 20 {
		made = append(made, Finding{Rule: "substitution-worse", Severity: "error", Sheet: "Walls", Row: i + 5})
	}
	doc := coveredFirst(20, 0)
	if got := e.shared.Most.throughout(doc, made); len(got) != 1 {
		t.Errorf("%d findings without a comparison, want 1", len(got))
	}
	doc.Comparison = &document.Comparison{}
	if got := e.shared.Most.throughout(doc, made); len(got) != 20 {
		t.Errorf("%d findings of a comparison, want 20", len(got))
	}
}

// answered is what the bundle answers on a document, one finding a line.
func answered(t *testing.T, doc *document.Document) string {
	t.Helper()
	b, err := readBundle(bundleOf(t, Options{}, Signing{}), nil)
	if err != nil {
		t.Fatal(err)
	}
	result, err := rego.New(rego.Query("data.answer.findings"), rego.ParsedBundle("abut", &b), rego.Input(plainly(t, doc))).Eval(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(result[0].Expressions[0].Value)
	if err != nil {
		t.Fatal(err)
	}
	var found []Finding
	if err := json.Unmarshal(text, &found); err != nil {
		t.Fatal(err)
	}
	return answerOf(t, found)
}

func plainly(t *testing.T, doc *document.Document) any {
	t.Helper()
	text, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	var out any
	if err := json.Unmarshal(text, &out); err != nil {
		t.Fatal(err)
	}
	return out
}

func answerOf(t *testing.T, found []Finding) string {
	t.Helper()
	var lines []string
	for _, f := range found {
		slices.SortFunc(f.Related, func(a, b Related) int { return a.Row - b.Row })
		var line bytes.Buffer
		if err := json.NewEncoder(&line).Encode(f); err != nil {
			t.Fatal(err)
		}
		lines = append(lines, line.String())
	}
	slices.Sort(lines)
	return strings.Join(lines, "")
}
