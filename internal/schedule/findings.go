package schedule

import (
	"strings"

	"abut/internal/workbook"
)

// MarkedCopy opens the second row of the sheet of findings in a marked copy.
const MarkedCopy = "This is a marked copy; the original is as it was."

// MarkedHeadings begin the headings of its table.
func MarkedHeadings() []string { return []string{"No.", "Weight", "Sheet", "Cell"} }

// listsFindings knows the sheet that a marked copy adds: what an earlier run
// said must not be read as what the author says.
func listsFindings(s *workbook.Sheet) bool {
	if c, _ := s.At(2, 1); !strings.HasPrefix(c.Value, MarkedCopy) {
		return false
	}
	const head = 20 // the table begins well above
	for _, row := range s.Rows {
		if row.Number > head {
			break
		}
		if hasHeadings(s, row.Number) {
			return true
		}
	}
	return false
}

func hasHeadings(s *workbook.Sheet, row int) bool {
	for i, want := range MarkedHeadings() {
		if c, _ := s.At(row, i+1); c.Value != want {
			return false
		}
	}
	return true
}
