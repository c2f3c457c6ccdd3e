package workbook

import (
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"
)

// written makes a workbook with the library and reads it with this package.
func written(t *testing.T, write func(f *excelize.File) error) *Book {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	if err := write(f); err != nil {
		t.Fatal(err)
	}
	return mustRead(t, saved(t, f))
}

func at(t *testing.T, s *Sheet, ref string) Cell {
	t.Helper()
	row, col, ok := ParseRef([]byte(ref))
	if !ok {
		t.Fatalf("no address: %s", ref)
	}
	c, ok := s.At(row, col)
	if !ok {
		t.Fatalf("%s holds nothing", ref)
	}
	if c.Ref() != ref {
		t.Errorf("the cell at %s says it is at %s", ref, c.Ref())
	}
	return c
}

func TestKindsOfCell(t *testing.T) {
	day := time.Date(2026, 3, 31, 7, 30, 0, 0, time.UTC)
	book := written(t, func(f *excelize.File) error {
		for ref, v := range map[string]any{"A1": "self-adhered sheet", "B1": 1.5, "C1": true, "D1": day, "E1": 40, "F1": " ", "G1": "two\nlines"} {
			if err := f.SetCellValue("Sheet1", ref, v); err != nil {
				return err
			}
		}
		return f.SetCellFormula("Sheet1", "H1", "B1*2")
	})
	s := &book.Sheets[0]
	for ref, want := range map[string]Cell{
		"A1": {Kind: Text, Value: "self-adhered sheet"},
		"B1": {Kind: Number, Value: "1.5", Number: 1.5},
		"C1": {Kind: Bool, Value: "TRUE"},
		"E1": {Kind: Number, Value: "40", Number: 40},
		"G1": {Kind: Text, Value: "two\nlines"},
		"H1": {Kind: FormulaEmpty, Formula: true},
	} {
		want.Row, want.Col, _ = ParseRef([]byte(ref))
		if got := at(t, s, ref); got != want {
			t.Errorf("%s: got %+v, want %+v", ref, got, want)
		}
	}
	if d := at(t, s, "D1"); d.Kind != Date || !d.Date.Equal(day) || d.Value != "2026-03-31 07:30" || d.Format == "" {
		t.Errorf("D1: %+v", d)
	}
	if _, ok := s.At(1, 6); ok {
		t.Error("a cell of spaces counts as one that holds something")
	}
	if s.MaxRow != 1 || s.MaxCol != 8 || s.State != "visible" || s.Kind != Worksheet {
		t.Errorf("sheet: %+v", s)
	}
}

func TestDates1904(t *testing.T) {
	yes := true
	book := written(t, func(f *excelize.File) error {
		if err := f.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &yes}); err != nil {
			return err
		}
		style, err := f.NewStyle(&excelize.Style{NumFmt: 14})
		if err != nil {
			return err
		}
		if err := f.SetCellStyle("Sheet1", "A1", "A1", style); err != nil {
			return err
		}
		return f.SetCellInt("Sheet1", "A1", 44650)
	})
	// 44650 days after 1904-01-01; in the 1900 system it is 2022-03-30.
	if c := at(t, &book.Sheets[0], "A1"); c.Value != "2026-03-31" {
		t.Errorf("got %s", c.Value)
	}
}

func TestStruckText(t *testing.T) {
	strike, plain := &excelize.Font{Strike: true}, &excelize.Font{Bold: true}
	book := written(t, func(f *excelize.File) error {
		style, err := f.NewStyle(&excelize.Style{Font: strike})
		if err != nil {
			return err
		}
		for ref, runs := range map[string][]excelize.RichTextRun{
			"A1": {{Text: "SA-1 ", Font: strike}, {Text: "SA-2", Font: plain}},
			"A2": {{Text: "lap "}, {Text: "50", Font: strike}, {Text: " 75 mm"}},
			"A3": {{Text: "gone", Font: strike}},
			"A4": {{Text: "old ", Font: strike}, {Text: "kept", Font: plain}, {Text: "older", Font: strike}},
			"A5": {{Text: "bold ", Font: plain}, {Text: "only"}},
			"A8": {{Text: "struck by the cell "}, {Text: "not struck", Font: plain}},
		} {
			if err := f.SetCellRichText("Sheet1", ref, runs); err != nil {
				return err
			}
		}
		for ref, v := range map[string]any{"A6": "whole cell", "A7": 12.5} {
			if err := f.SetCellValue("Sheet1", ref, v); err != nil {
				return err
			}
		}
		return f.SetCellStyle("Sheet1", "A6", "A8", style)
	})
	tests := []struct {
		ref, value, struck string
		all                bool
	}{
		{"A1", "SA-2", "SA-1", false},
		{"A2", "lap 75 mm", "50", false},
		{"A3", "", "gone", true},
		{"A4", "kept", "old older", false},
		{"A5", "bold only", "", false},
		{"A6", "", "whole cell", true},
		{"A7", "", "12.5", true},
		{"A8", "not struck", "struck by the cell", false},
	}
	for _, tt := range tests {
		c := at(t, &book.Sheets[0], tt.ref)
		if c.Value != tt.value || c.Struck != tt.struck || c.AllStruck != tt.all {
			t.Errorf("%s: got %q, struck %q, all %v", tt.ref, c.Value, c.Struck, c.AllStruck)
		}
		if tt.all && (c.Kind != Text || c.Number != 0) {
			t.Errorf("%s: a struck cell still holds %v %v", tt.ref, c.Kind, c.Number)
		}
	}
}

func TestMergedRanges(t *testing.T) {
	book := written(t, func(f *excelize.File) error {
		for ref, v := range map[string]string{"A1": "Title", "A3": "W1", "B3": "x", "B4": "y", "C6": "end", "B5": "under", "D6": "last"} {
			if err := f.SetCellStr("Sheet1", ref, v); err != nil {
				return err
			}
		}
		if err := f.AddComment("Sheet1", excelize.Comment{Cell: "A3", Text: "one note"}); err != nil {
			return err
		}
		for _, m := range [][2]string{{"A1", "Z1"}, {"A3", "A5"}, {"A6", "B6"}, {"C6", "C9"}} {
			if err := f.MergeCell("Sheet1", m[0], m[1]); err != nil {
				return err
			}
		}
		return nil
	})
	s := &book.Sheets[0]
	for _, ref := range []string{"A4", "A5"} {
		if c := at(t, s, ref); c.Value != "W1" || !c.Merged || c.Comment != "" {
			t.Errorf("%s: %+v", ref, c)
		}
	}
	if c := at(t, s, "A3"); c.Merged || c.Comment != "one note" {
		t.Errorf("A3: %+v", c)
	}
	if c := at(t, s, "D1"); c.Value != "Title" || !c.Merged {
		t.Errorf("D1: %+v", c)
	}
	if _, ok := s.At(1, 5); ok {
		t.Error("a merged title reaches beyond the last column that holds something")
	}
	if _, ok := s.At(6, 1); ok {
		t.Error("an empty merged range holds something")
	}
	if s.MaxRow != 6 || s.MaxCol != 4 || len(s.Merges) != 4 {
		t.Errorf("sheet ends at %d, %d, with %d merged ranges", s.MaxRow, s.MaxCol, len(s.Merges))
	}
	for i := 1; i < len(s.Rows); i++ {
		if s.Rows[i-1].Number >= s.Rows[i].Number {
			t.Errorf("rows do not ascend: %d, %d", s.Rows[i-1].Number, s.Rows[i].Number)
		}
	}
}

func TestHiddenAndSheets(t *testing.T) {
	book := written(t, func(f *excelize.File) error {
		for _, ref := range []string{"A1", "B1", "C1", "A2", "A3"} {
			if err := f.SetCellStr("Sheet1", ref, ref); err != nil {
				return err
			}
		}
		for _, name := range []string{"Hidden", "Deep"} {
			if _, err := f.NewSheet(name); err != nil {
				return err
			}
		}
		steps := []error{
			f.SetColVisible("Sheet1", "B", false),
			f.SetRowVisible("Sheet1", 2, false),
			f.SetRowHeight("Sheet1", 3, 0),
			f.SetSheetVisible("Hidden", false),
			f.SetSheetVisible("Deep", false, true),
			f.SetCellStr("Hidden", "A1", "kept"),
			f.AddChartSheet("Curve", &excelize.Chart{Type: excelize.Col, Series: []excelize.ChartSeries{{Values: "Sheet1!$A$1:$A$2"}}}),
		}
		for _, err := range steps {
			if err != nil {
				return err
			}
		}
		return nil
	})
	s := &book.Sheets[0]
	for ref, want := range map[string]bool{"A1": false, "B1": true, "C1": false, "A2": true, "A3": true} {
		if got := at(t, s, ref).Hidden; got != want {
			t.Errorf("%s hidden: %v", ref, got)
		}
	}
	if !s.ColHidden(2) || s.ColHidden(3) || !s.RowHidden(2) || s.RowHidden(1) {
		t.Error("hidden rows or columns are wrong")
	}
	var states []string
	for _, s := range book.Sheets {
		states = append(states, s.Name+" "+s.State+" "+string(s.Kind))
	}
	if got := strings.Join(states, ", "); got != "Sheet1 visible worksheet, Hidden hidden worksheet, Deep veryHidden worksheet, Curve visible chartsheet" {
		t.Error(got)
	}
	if at(t, &book.Sheets[1], "A1").Value != "kept" {
		t.Error("a hidden sheet lost its cells")
	}
}

func TestComments(t *testing.T) {
	book := written(t, func(f *excelize.File) error {
		if err := f.SetCellStr("Sheet1", "B2", "x"); err != nil {
			return err
		}
		if err := f.AddComment("Sheet1", excelize.Comment{Cell: "D5", Text: "on nothing"}); err != nil {
			return err
		}
		return f.AddComment("Sheet1", excelize.Comment{Cell: "B2", Paragraph: []excelize.RichTextRun{{Text: "prime "}, {Text: "first"}}})
	})
	s := &book.Sheets[0]
	if c := at(t, s, "B2"); c.Comment != "prime first" || c.Value != "x" {
		t.Errorf("B2: %+v", c)
	}
	if c := at(t, s, "D5"); c.Comment != "on nothing" || c.Value != "" {
		t.Errorf("D5: %+v", c)
	}
}

// TestSameAsLibrary holds the values against those that the library reads.
func TestSameAsLibrary(t *testing.T) {
	data := generated(t, 40, 9)
	f, err := excelize.OpenReader(strings.NewReader(string(data)), excelize.Options{RawCellValue: true})
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := f.GetRows("Sheet1")
	if err != nil {
		t.Fatal(err)
	}
	s := &mustRead(t, data).Sheets[0]
	for i, row := range rows {
		for j, want := range row {
			c, _ := s.At(i+1, j+1)
			got := c.Value
			if c.Kind == Date {
				got = plain(c.Number)
			}
			if got != want {
				t.Errorf("%s: got %q, want %q", Ref(i+1, j+1), got, want)
			}
		}
	}
	if len(rows) != s.MaxRow {
		t.Errorf("%d rows, want %d", s.MaxRow, len(rows))
	}
}
