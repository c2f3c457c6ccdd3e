package schedule_test

import "testing"

// A log tells up to which day it is kept; what was not covered by then counts on.
func TestOpenOnTheDayOfTheLog(t *testing.T) {
	rows := `
Mark | Membrane | Substrate | Primer | Placed | Covered
D1 | butyl sheet | plywood | none | 2 Mar 2026 | not yet
D2 | butyl sheet | plywood | none | 3 Mar 2026 | 20 Mar 2026
D3 | butyl sheet | plywood | none | 3 Mar 2026 |
D4 | butyl sheet | plywood | none | 3 Mar 2026 | after the stair
D5 | butyl sheet | plywood | none | 4 Mar 2026 | 22 Mar 2026`
	for note, want := range map[string]int{
		"Progress to: Mon 1 June 2026":          91,
		"Site record, status as of 2026-06-01.": 91,
		"Issued 1 June 2026, revision 3":        0,
		"Next walk 1 June 2026":                 0,
	} {
		s := readPages(t, page{name: "S", grid: note + rows})
		if got := line(t, s, "D1").Spans["open_days"].Min; got != want {
			t.Errorf("%s: %d days, want %d", note, got, want)
		}
		if _, ok := line(t, s, "D3").Spans["open_days"]; ok != (want > 0) {
			t.Errorf("%s: an empty cell is counted: %v", note, ok)
		}
		for _, mark := range []string{"D2", "D4"} {
			if span, ok := line(t, s, mark).Spans["open_days"]; ok {
				t.Errorf("%s: %s has %+v", note, mark, span)
			}
		}
	}
}

// A remark tells the day on which a sheet without a cover date was still open; a day of
// something else, or one before the work, tells nothing.
func TestOpenByARemark(t *testing.T) {
	for remark, want := range map[string]int{
		"still uncovered 10/14":          42,
		"Still exposed as of 14 Oct":     42,
		"remains bare on 14 Oct 2026":    42,
		"still open 8/1":                 0,
		"joint still open; tested 10/14": 0,
		"window opening inspected 10/14": 0,
		"still open, 1/2 in gap at sill": 0,
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Placed | Covered | Remarks
D1 | butyl sheet | plywood | none | 2 Sep 2026 | | ` + remark + `
D2 | butyl sheet | plywood | none | 3 Sep 2026 | 20 Sep 2026 |
D3 | butyl sheet | plywood | none | 4 Sep 2026 | 22 Sep 2026 | still open 9/14`})
		if got := line(t, s, "D1").Spans["open_days"].Min; got != want {
			t.Errorf("%s: %d days, want %d", remark, got, want)
		}
		if span, ok := line(t, s, "D3").Spans["open_days"]; ok {
			t.Errorf("covered, and %+v", span)
		}
	}
}
