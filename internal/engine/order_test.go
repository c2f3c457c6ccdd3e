package engine

import (
	"reflect"
	"testing"

	"abut/internal/document"
	"abut/internal/schedule"
)

func TestFindingsAreSortedAndMerged(t *testing.T) {
	c := newCollector(&document.Document{Reading: schedule.Reading{Sheets: []schedule.SheetRead{{Name: "Walls"}, {Name: "Attic"}}}}, nil)
	f := func(sheet string, row int, severity, rule, message string, cells ...string) {
		c.made = append(c.made, Finding{Sheet: sheet, Row: row, Severity: severity, Rule: rule, Message: message, Cells: cells,
			Related: []Related{{Sheet: "Walls", Row: 9, What: "w"}}})
	}
	f("Other", 1, "error", "a-a", "m", "A1")
	f("Attic", 1, "error", "a-a", "m", "A1")
	f("Walls", 5, "note", "a-a", "m", "A5")
	f("Walls", 5, "error", "b-b", "m", "AA5")
	f("Walls", 5, "error", "b-b", "other", "A5")
	f("Walls", 5, "error", "b-b", "m", "B5", "AA5")
	f("Walls", 2, "warning", "a-a", "m", "A2")
	type key struct {
		sheet          string
		row            int
		rule, severity string
		cells, related int
	}
	var got []key
	for _, f := range c.findings() {
		got = append(got, key{f.Sheet, f.Row, f.Rule, f.Severity, len(f.Cells), len(f.Related)})
	}
	want := []key{
		{"Walls", 2, "a-a", "warning", 1, 1},
		{"Walls", 5, "b-b", "error", 2, 1},
		{"Walls", 5, "b-b", "error", 1, 1},
		{"Walls", 5, "a-a", "note", 1, 1},
		{"Attic", 1, "a-a", "error", 1, 1},
		{"Other", 1, "a-a", "error", 1, 1},
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got  %v\nwant %v", got, want)
	}
}

func TestSortCells(t *testing.T) {
	got := sortCells([]string{"A10", "AA2", "B2", "AA2", "B10"})
	if want := []string{"B2", "AA2", "A10", "B10"}; !reflect.DeepEqual(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
	if sortCells(nil) == nil {
		t.Error("no cells must be an empty list in JSON")
	}
}

// TestTurnedRow tells a finding on a line whose cells stand below one another at the first
// of them that does more than name it.
func TestTurnedRow(t *testing.T) {
	line := schedule.Line{ID: "W!C4", Sheet: "W", Row: 4, Mark: "D1", Turned: true, Cells: map[string]string{"mark": "C4", "material": "C6", "lap": "C10", "bed": "C9"}}
	flat := schedule.Line{ID: "W!3", Sheet: "W", Row: 3, Cells: map[string]string{}}
	c := newCollector(&document.Document{Lines: []schedule.Line{line, flat}}, nil)
	for _, tc := range []struct {
		line  string
		cells []string
		want  int
	}{
		{"W!C4", []string{"C6", "C10", "C9"}, 9},
		{"W!C4", []string{"C6"}, 6},
		{"W!C4", nil, 4},
		{"W!3", []string{"B7"}, 3},
	} {
		if got, err := c.spot(place{Line: tc.line, Cells: tc.cells}); err != nil || got.row != tc.want {
			t.Errorf("%s %v: row %d, %v; want %d", tc.line, tc.cells, got.row, err, tc.want)
		}
	}
}
