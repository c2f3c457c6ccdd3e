package schedule_test

import (
	"strings"
	"testing"
)

// A dump of a program of work: headings that only the notes explain, and that stand
// again further down; rows with the first and last day of those below; looks of which
// one comes before the work.
const dump = `
Q1 / Q2 = begin work / work ends as reported, Q3 = date covered when all of it is. Looks (LK): L1 = bed accepted; L2 = sheet seen by inspector
QA | Where | Sheet | Base | Q1 | Q2 | Q3 | Q4 | LK | QR
1 | North side | | | 2 Mar 2026 | 6 Mar 2026 | | | 2 lines |
N1 | north, low | butyl sheet | plywood | 2 Mar 2026 | 3 Mar 2026 | 20 Mar 2026 | cedar siding | L1 1 Mar; L2 4 Mar | dry
N2 | north, high | butyl sheet | plywood | 5 Mar 2026 | 6 Mar 2026 | 20 Mar 2026 | brick | L1 4 Mar | dry
QA | Where | Sheet | Base | Q1 | Q2 | Q3 | Q4 | LK | QR
2 | South side | | | 9 Mar 2026 | 9 Mar 2026 | | | 1 line |
S1 | south | butyl sheet | CMU | 9 Mar 2026 | 9 Mar 2026 | 20 Mar 2026 | brick | L2 10 Mar | dry`

func TestDumpOfAProgram(t *testing.T) {
	s := read(t, dump)
	if len(s.Lines) != 3 {
		t.Fatalf("%d lines, want 3 without the rows that head them", len(s.Lines))
	}
	for mark, want := range map[string]map[string]string{
		"N1": {"install": "2026-03-02", "finish": "2026-03-03", "cover": "2026-03-20", "inspected": "2026-03-04"},
		"N2": {"install": "2026-03-05", "finish": "2026-03-06", "cover": "2026-03-20", "inspected": ""},
		"S1": {"install": "2026-03-09", "finish": "2026-03-09", "cover": "2026-03-20", "inspected": "2026-03-10"},
	} {
		for slot, day := range want {
			if got := line(t, s, mark).Dates[slot].From; got != day {
				t.Errorf("%s: %s on %q, want %q", mark, slot, got, day)
			}
		}
	}
	for mark, want := range map[string]string{"N1": "tannin-rich-wood", "S1": "clay-brick"} {
		if got := items(line(t, s, mark), "front"); got != want {
			t.Errorf("%s is covered by %q, want %q", mark, got, want)
		}
	}
}

// What a remark tells in full sentences: how long the sheet lay bare, the film that was
// read, and the weekday of a day in the next year.
func TestRemarksInSentences(t *testing.T) {
	s := read(t, `
Mark | Where | Membrane | Substrate | Installed | Covered | Remarks
1 | north | butyl sheet | plywood | 2 Nov 2026 | 5 Dec 2026 | The gable stood open until the roofer got to it on Thursday 14 Jan.
2 | east | butyl sheet | plywood | 2 Nov 2026 | 5 Dec 2026 | There was no siding over it until Mon 11 Jan.
3 | west | butyl sheet | plywood | 2 Nov 2026 | 5 Dec 2026 | The door was kept shut until 14 Jan.
4 | south | butyl sheet | plywood | 2 Nov 2026 | 5 Dec 2026 | Left uncovered until 20 Nov, then tarped.
5 | tank | liquid flashing | CMU | 2 Nov 2026 | 5 Dec 2026 | Dry readings ran 30 to 34 mil when the crew came back.
6 | pit | liquid flashing | CMU | 2 Nov 2026 | 5 Dec 2026 | Dry readings of 40 mil when asked.`)
	for mark, want := range map[string]string{"1": "2027-01-14", "2": "2027-01-11", "3": "2026-12-05", "4": "2026-12-05"} {
		if got := line(t, s, mark).Dates["cover"]; got.From != want || strings.Contains(got.Note, "weekday") {
			t.Errorf("row %s is covered on %+v, want %s", mark, got, want)
		}
	}
	if f, ok := line(t, s, "5").Figures["film_mm"]; !ok || *f.Max < 0.86 || *f.Min > 0.77 {
		t.Errorf("film %+v, want 30 to 34 mil", f)
	}
	if f, ok := line(t, s, "6").Figures["film_mm"]; ok {
		t.Errorf("film %+v of a condition", f)
	}
}

// A row without a material whose day no row below has is a row of the work.
func TestRowOfWorkWithoutMaterial(t *testing.T) {
	s := read(t, `
Mark | Where | Membrane | Substrate | Installed | Covered
1 | north | | | 2 Mar 2026 | 5 Mar 2026
2 | north | butyl sheet | plywood | 3 Mar 2026 | 9 Mar 2026
3 | south | butyl sheet | plywood | 4 Mar 2026 | 9 Mar 2026`)
	if len(s.Lines) != 3 {
		t.Errorf("%d lines, want 3", len(s.Lines))
	}
}
