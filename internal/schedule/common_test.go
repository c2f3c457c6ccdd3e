package schedule

import (
	"testing"

	"abut/internal/workbook"
)

// Tables beside one another may have rows in common: each line has an id of its own, or no
// rule could be asked.
func TestLinesOfTablesWithRowsInCommon(t *testing.T) {
	at := func(sheet string, first, last, col int) *table {
		return &table{kind: kindSchedule, sheet: &workbook.Sheet{Name: sheet}, first: first, last: last, nums: []int{col, col + 1}}
	}
	all := []*table{at("Walls", 2, 5, 1), at("Walls", 4, 9, 7), at("Walls", 10, 12, 1), at("Roofs", 2, 5, 1)}
	tellApart(all)
	for i, want := range []string{"Walls!5", "Walls!5 G", "Walls!5", "Roofs!5"} {
		if got := all[i].lineID(5); got != want {
			t.Errorf("table %d: %s, want %s", i, got, want)
		}
	}
}
