package schedule_test

import "testing"

// One cell tells in sentences when the work is done and when it is covered.
func TestWorkAndCoverInOneCell(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Mark|Material|Substrate|When
A-1|SBS sheet|concrete|Laid June 2, 2026. Insulation over it June 20, 2026.
A-2|SBS sheet|concrete|Strips April 3, sheet April 6, 2026. Clad April 20, stone April 28.
A-3|SBS sheet|concrete|June 9, 2026; brickwork July 1, 2026
A-4|SBS sheet|concrete|Laid June 12, 2026, tented through June 15. Closed in June 30, 2026.
A-5|SBS sheet|concrete|Laid June 15, 2026. Clad once the panels are made.
A-6|SBS sheet|concrete|June 16, 2026. Inspected June 17, 2026.
A-7|SBS sheet|concrete|North 6/7/2026-6/18/2026; South 7/5/2026-7/16/2026`})
	for mark, want := range map[string][4]string{
		"A-1": {"2026-06-02", "2026-06-02", "2026-06-20", "day"},
		"A-2": {"2026-04-03", "2026-04-06", "2026-04-20", "day"},
		"A-3": {"2026-06-09", "2026-06-09", "2026-07-01", "day"},
		"A-4": {"2026-06-12", "2026-06-12", "2026-06-30", "day"},
		"A-5": {"2026-06-15", "2026-06-15", "", "unknown"},
		"A-6": {"2026-06-16", "2026-06-16", "", ""},
		"A-7": {"", "", "", ""},
	} {
		l := line(t, s, mark)
		in, cover := l.Dates["install"], l.Dates["cover"]
		if in.From != want[0] || in.To != want[1] || cover.From != want[2] || cover.State != want[3] {
			t.Errorf("%s: work %s to %s, cover %q %q; want %v", mark, in.From, in.To, cover.From, cover.State, want)
		}
	}
}

// The word for the cover may be cut short, and the days of the work go before it.
func TestCoverCutShort(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Mark|Material|Substrate|Dates
A-1|SBS sheet|concrete|4/12-4/16, cov. 5/28
A-2|SBS sheet|concrete|4/19-4/23, cov'd 6/4
A-3|SBS sheet|concrete|4/26-4/30; cov 6/11
A-4|SBS sheet|concrete|5/3-5/7, primed 5/3

Notes
All dates 2027.`})
	for mark, want := range map[string]string{"A-1": "2027-05-28", "A-2": "2027-06-04", "A-3": "2027-06-11", "A-4": ""} {
		l := line(t, s, mark)
		if cover := l.Dates["cover"]; cover.From != want {
			t.Errorf("%s: covered %q, want %q", mark, cover.From, want)
		}
	}
}
