package schedule_test

import (
	"errors"
	"testing"

	"abut/internal/schedule"
	"abut/internal/workbook"
)

// FuzzHeading reads any text as the heading of one column beside known ones:
// no panic, and every column of the sheet is in the reading.
func FuzzHeading(f *testing.F) {
	for _, s := range []string{"Primer", "min. lap (in.)", "(", "[]", "Sealant\n(°F)", "µ", "ſs", "s", "“adhered to”", "1", "Vapor (perms)", "İ"} {
		f.Add(s, "7 (")
	}
	f.Fuzz(func(t *testing.T, heading, cell string) {
		b := &workbook.Book{Path: "f.csv", Sheets: []workbook.Sheet{{Kind: workbook.Worksheet, MaxRow: 3, MaxCol: 5}}}
		for i, row := range [][]string{{"Mark", "Membrane", "Substrate", "Primer", heading}, {"D1", "butyl sheet", "plywood", "none", cell}, {"D2", "butyl sheet", "CMU", "none", cell}} {
			r := workbook.Row{Number: i + 1}
			for j, v := range row {
				r.Cells = append(r.Cells, workbook.Cell{Row: i + 1, Col: j + 1, Value: v})
			}
			b.Sheets[0].Rows = append(b.Sheets[0].Rows, r)
		}
		s, err := reader(t).Read(b, schedule.Settings{})
		var none *schedule.NoTable
		if errors.As(err, &none) {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		for _, tb := range s.Reading.Tables {
			if len(tb.Columns) < 4 {
				t.Errorf("%d columns", len(tb.Columns))
			}
		}
	})
}
