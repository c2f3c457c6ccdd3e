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

// firstDated is the first day of a table that is told with its year: the rows above it
// begin in the same season, as those below it go on from it.
func (r *reader) firstDated(t *table, orders map[string]dayOrder) Day {
	if r.yearSaid != 0 {
		return Day{}
	}
	for row := t.first; row <= t.last; row++ {
		for _, slot := range []string{"install", "cover"} {
			c, ok := t.sheet.At(row, t.column(slot))
			if !ok || c.Merged {
				continue
			}
			if d := r.day(nil, source{slot: slot, text: strings.TrimSpace(c.Value), cell: c, at: t.at(row, c.Col)}, orders[slot], 0); d.From != "" {
				return d
			}
		}
	}
	return Day{}
}
