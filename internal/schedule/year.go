package schedule

import (
	"strconv"
	"strings"

	"abut/internal/workbook"
)

// yearIn finds the year that a workbook states for dates that give none ("Year
// 2026", "all dates 2026", the heading "Installed, 2026"); 0 where it states none,
// or two.
func (r *reader) yearIn(b *workbook.Book) int {
	found := 0
	for i := range b.Sheets {
		for _, row := range b.Sheets[i].Rows {
			for _, c := range row.Cells {
				for _, m := range r.words.statedYear.FindAllStringSubmatch(c.Value, -1) {
					year, err := strconv.Atoi(strings.Join(m[1:], ""))
					if err != nil || found != 0 && found != year {
						return 0
					}
					found = year
				}
			}
		}
	}
	return found
}
