package schedule_test

import "testing"

// A year that stands once for the whole workbook holds for dates without one; the
// cover of what goes on in December comes after it.
func TestStatedYear(t *testing.T) {
	rows := `
Mark | Membrane | Substrate | Installed | Covered
1 | butyl sheet | plywood | May 4 | May 30
2 | butyl sheet | plywood | Jun 8 | Jul 2
3 | butyl sheet | plywood | Dec 8 | Jan 20`
	s := read(t, "Log of the east wing, all dates 2026 | | | | "+rows)
	for mark, want := range map[string]string{"1": "2026-05-04 2026-05-30", "3": "2026-12-08 2027-01-20"} {
		if l := line(t, s, mark); l.Dates["install"].From+" "+l.Dates["cover"].From != want {
			t.Errorf("%s: %s, want %s", mark, l.Dates["install"].From+" "+l.Dates["cover"].From, want)
		}
	}
	for _, title := range []string{"Log of the east wing, dates: 2026-03-04", "Date 2026", "Dates 2026; year 2027"} {
		s := read(t, title+" | | | | "+rows)
		if d := line(t, s, "1").Dates["install"]; d.From != "" {
			t.Errorf("%s: the year of %s is a guess", title, d.From)
		}
	}
}
