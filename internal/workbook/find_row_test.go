package workbook

import (
	"testing"

	"pgregory.net/rapid"
)

// TestRowsAreFoundAmongGaps looks for every row of a sheet with rows left out.
func TestRowsAreFoundAmongGaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s Sheet
		held := map[int]bool{}
		last := 0
		for _, step := range rapid.SliceOf(rapid.IntRange(1, 4)).Draw(t, "steps") {
			last += step
			held[last] = true
			s.Rows = append(s.Rows, Row{Number: last, Cells: []Cell{{Row: last, Col: 1}}})
		}
		for row := -1; row <= last+2; row++ {
			c, ok := s.At(row, 1)
			if ok != held[row] || ok && c.Row != row {
				t.Fatalf("row %d of %v: %v, %d", row, held, ok, c.Row)
			}
		}
	})
}
