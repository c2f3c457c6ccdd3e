package schedule_test

import (
	"fmt"
	"strings"
	"testing"
)

// TestDaysBare: dates that are windows, that hang on other work, that run over
// the end of a year or of February, all give the days from the end of the
// installation to the cover.
func TestDaysBare(t *testing.T) {
	const brick = "W1 | 5 | brick | air space | 4-8 May 2026 | |\nW2 | 5 | brick | air space | 1 Jun 2026 | |\n"
	for name, tc := range map[string]struct {
		install, cover string
		min, last, max int
	}{
		"two days":                  {"6 Apr 2026", "16 Apr 2026", 10, 10, 10},
		"windows":                   {"6-8 Apr 2026", "20-24 Apr 2026", 12, 16, 18},
		"with a layer":              {"6 Apr 2026", "w/ layer 5", 28, 32, 32},
		"days after a layer":        {"6 Apr 2026", "2 days after layer 5", 34, 34, 34},
		"days before a layer":       {"6 Apr 2026", "3 days before layer 5", 25, 25, 25},
		"installed with a layer":    {"with layer 5", "28 May 2026", 20, 20, 24},
		"by another mark":           {"6 Apr 2026", "same as K9", 25, 25, 25},
		"with a numbered line":      {"6 Apr 2026", "with line K9", 25, 25, 25},
		"with an item":              {"6 Apr 2026", "w/ item K9", 25, 25, 25},
		"covered the same day":      {"6 Apr 2026", "same day", 0, 0, 0},
		"covered the next day":      {"6-8 Apr 2026", "following day", 1, 1, 3},
		"covered within days":       {"6-8 Apr 2026", "within 30 days", 30, 30, 32},
		"covered some weeks later":  {"6 Apr 2026", "2 to 3 weeks after install", 21, 21, 21},
		"over New Year":             {"28 Dec 2026", "4 Jan 2027", 7, 7, 7},
		"over a leap day":           {"27 Feb 2028", "1 Mar 2028", 3, 3, 3},
		"over February of any year": {"27 Feb 2027", "1 Mar 2027", 2, 2, 2},
		"over the change of clocks": {"7 Mar 2026", "9 Mar 2026", 2, 2, 2},
	} {
		t.Run(name, func(t *testing.T) {
			s := read(t, "Wall | Layer | Material | Substrate | Install date | Cover date\n"+
				fmt.Sprintf("W1 | 2 | butyl sheet | CMU | %s | %s\n", tc.install, tc.cover)+
				brick+"K9 | 1 | metal panel | clips | 1 May 2026 | |\n")
			if got := s.Lines[0].Spans["bare_days"]; got.Min != tc.min || got.Max != tc.max || got.Last != tc.last {
				t.Errorf("bare %+v; dates %+v", got, s.Lines[0].Dates)
			}
		})
	}
}

// TestDatesThatLeadNowhere: a circle, and work that is not found, give no date.
func TestDatesThatLeadNowhere(t *testing.T) {
	s := read(t, `Wall | Layer | Material | Substrate | Install date | Cover date
W1 | 2 | butyl sheet | CMU | w/ layer 3 | w/ layer 7
W1 | 3 | mineral wool | butyl sheet | w/ layer 2 | 
W1 | 4 | brick | air space | same day | 
`)
	for i, slot := range []string{"install", "install", "install", "cover"} {
		l := s.Lines[i%3]
		if d := l.Dates[slot]; d.State != "unknown" || d.From != "" {
			t.Errorf("%s %s: %+v", l.ID, slot, d)
		}
	}
	if got, ok := s.Lines[0].Spans["bare_days"]; ok {
		t.Errorf("bare %+v", got)
	}
}

// The cell of what covers a sheet tells the day too, or the row whose work it is; of
// two days none is taken.
func TestDayInTheCellOfTheCover(t *testing.T) {
	s := read(t, `Year 2026 | | | |
Mark | Membrane | Substrate | Installed | Covered with
A1 | butyl sheet | plywood | 6-8 Apr 2026 | Cedar boards by 28 Apr
A3 | butyl sheet | plywood | 6-8 Apr 2026 | Cork board, see A9
A4 | butyl sheet | plywood | 6-8 Apr 2026 | Cork: north by 28 Apr, south by 12 May
A5 | butyl sheet | plywood | 6-8 Apr 2026 | Cedar boards, see drawings
A9 | cork board | butyl sheet | 1 Apr 2026 | Render`)
	for mark, want := range map[string]string{"A1": "2026-04-28", "A3": "2026-04-01", "A4": "", "A5": ""} {
		if got := line(t, s, mark).Dates["cover"].From; got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// Days in the open run from the last day of the work, or from its first where a note
// says so.
func TestOpenFromTheFirstDay(t *testing.T) {
	const rows = `
Mark | Membrane | Substrate | Installed | Covered
A1 | butyl sheet | plywood | 6-16 Apr 2026 | 30 Apr 2026`
	for note, want := range map[string]int{
		"Exposure starts on the first day of laying.":                 24,
		"Days uncovered = first day of work to the day of cladding.":  24,
		"Time open runs from the last day of the work to the boards.": 14,
		"First day of work: 6 April.":                                 14,
	} {
		s := readPages(t, page{name: "S", grid: rows}, page{name: "Notes", grid: "1 | " + note})
		if got := line(t, s, "A1").Spans["bare_days"].Last; got != want {
			t.Errorf("%s: %d days, want %d", note, got, want)
		}
	}
}

// A cover that comes in turns: the first day ends the days in the open, the last one is
// kept beside it.
func TestCoverInTurns(t *testing.T) {
	for cell, want := range map[string]string{
		"mats 3 May 2027; ballast on 9 May 2027": "2027-05-03 2027-05-09",
		"mats 3 May 2027":                        "2027-05-03 ",
		"mats 3 May 2027, ballast by others":     "2027-05-03 ",
	} {
		s := read(t, "Mark | Membrane | Substrate | Installed | Covered\nW1 | butyl sheet | CMU | 2 May 2027 | "+cell+"\nW2 | butyl sheet | CMU | 2 May 2027 | 4 May 2027\n")
		l := line(t, s, "W1")
		if got := l.Dates["cover"].From + " " + l.Dates["cover_last"].From; got != want {
			t.Errorf("%s: got %s, want %s", cell, got, want)
		}
	}
}

// A short word heads the last day of the work; over a paint it heads no date.
func TestShortWordForTheLastDay(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Start | Fin | Cover by
A1 | butyl sheet | plywood | @2026-04-06 | @2026-04-16 | @2026-04-30
A2 | butyl sheet | plywood | @2026-04-06 | @2026-04-20 | @2026-04-30`)
	if got := line(t, s, "A2").Dates["install"]; got.To != "2026-04-20" {
		t.Errorf("done by %q, want 2026-04-20", got.To)
	}
	s = read(t, `Mark | Membrane | Substrate | Start | Fin | Cover by
A1 | butyl sheet | steel angle | @2026-04-06 | painted | @2026-04-30
A2 | butyl sheet | steel angle | @2026-04-06 | galv. | @2026-04-30`)
	if got := line(t, s, "A2").Dates["install"]; got.To != "2026-04-06" || len(s.Lines) != 2 {
		t.Errorf("done by %q, want 2026-04-06", got.To)
	}
}

// The clock of the sun may be told from the first sheet to the last one covered.
func TestSunCountedFromTheFirstSheet(t *testing.T) {
	for note, want := range map[string]int{
		"UV clock: first roll up to last board on.":           24,
		"UV days run from start of sheet until fully clad":    24,
		"UV limit: first see the data sheet.":                 14,
		"UV limits: per data. First delivery to site 6 April": 14,
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Installed | Covered
A1 | butyl sheet | plywood | 6-16 Apr 2026 | 30 Apr 2026`}, page{name: "Notes", grid: "1 | " + note})
		if got := line(t, s, "A1").Spans["bare_days"].Last; got != want {
			t.Errorf("%s: %d days, want %d", note, got, want)
		}
	}
}

// An office may cut the words for priming and for the sheet short.
func TestShortWordsForPriming(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Installed | Notes
A1 | butyl sheet | plywood | P-1 | @2026-04-13 | prmd Thu 4/9/2026, shts on Mon 4/13/2026
A2 | butyl sheet | plywood | P-1 | @2026-04-13 | prm delivery later`)
	if got := line(t, s, "A1").Spans["prime_gap_days"]; got.Min != 4 {
		t.Errorf("%+v, want 4 days", got)
	}
	if got, ok := line(t, s, "A2").Spans["prime_gap_days"]; ok {
		t.Errorf("%+v, want none", got)
	}
}

// A day in a remark whose weekday falls on another; one that fits, one without a
// weekday and one that could be read both ways are none.
func TestWeekdaysInRemarks(t *testing.T) {
	for remark, want := range map[string]string{
		"mock-up seen Tuesday 06/16/2027":   "2027-06-16",
		"lab comes Fri., 17 June 2027":      "2027-06-17",
		"rolls promised Sunday 2027-06-21":  "2027-06-21",
		"mock-up seen Wednesday 06/16/2027": "",
		"mock-up seen 06/16/2027":           "",
		"crew off Mondays; back on 16 June": "",
		"lab comes Monday 06/07/2027":       "",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Install date | Remarks\nD1 | SBS sheet | CMU | none | 06/14/2027 | "+remark+"\n")
		if got := line(t, s, "D1").Dates["said"].From; got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

// A remark that puts off what comes over the work adds to the cover's day; other times,
// and a day that is right already, do not.
func TestCoverPutOff(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Install | Cover | Remarks
W1 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | brick slips another 2 weeks
W2 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | siding crew wants 10 more days
W3 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | panels will be 1 month behind schedule
W4 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | brick came 2 weeks late
W5 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | brick pushed 2 weeks, already in the dates
W6 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | start slips 2 weeks, panels as planned
W7 | SBS sheet | CMU | none | 3 Aug 2026 | 1 Sep 2026 | mortar needs 7 days before the brick`})
	for mark, want := range map[string]string{
		"W1": "2026-09-15", "W2": "2026-09-11", "W3": "2026-10-01", "W4": "2026-09-01", "W5": "2026-09-01", "W6": "2026-09-01", "W7": "2026-09-01",
	} {
		if got := line(t, s, mark).Dates["cover"].To; got != want {
			t.Errorf("%s: %s, want %s", mark, got, want)
		}
	}
}

// A remark that names a later day for what comes over the work puts the cover off to it;
// a day of something else, an earlier one, and one of a cover over a cover do not.
func TestCoverMovedTo(t *testing.T) {
	for remark, want := range map[string]string{
		"stone crew left, veneer now 10/19":              "2026-10-19",
		"siding pushed out to 12 Oct 2026":               "2026-10-12",
		"panels won't be here before 10/5/2026":          "2026-10-05",
		"cladding rescheduled for Oct 5, 2026":           "2026-10-05",
		"cover moved from 9/1 to 9/15":                   "2026-09-15",
		"brick now 8/20":                                 "2026-09-01",
		"insulation on it already, brick now 10/19":      "2026-09-01",
		"veneer samples now 10/19":                       "2026-09-01",
		"crew now 10/19 on the north side":               "2026-09-01",
		"inspector moved to 10/19":                       "2026-09-01",
		"brick as planned. Scaffold moved to 10/19/2026": "2026-09-01",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Install date | Cover date | Remarks\nD1 | SBS sheet | CMU | none | 08/03/2026 | 09/01/2026 | "+remark+"\n")
		if got := line(t, s, "D1").Dates["cover"].To; got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

// A divider tells once for the rows below it when they are built and covered; their own
// dates go before it. Papers, and a wall that follows, date nothing.
func TestDaysOnDividers(t *testing.T) {
	for divider, want := range map[string]string{
		"Wk of 7/13/26 - 7/17/26; brick by 8/14/26": "2026-07-13..2026-07-17 2026-08-14",
		"13-17 July 2026, covered 14 Aug 2026":      "2026-07-13..2026-07-17 2026-08-14",
		"Level 3: 7/13/26 to 7/17/26":               "2026-07-13..2026-07-17 ",
		"South end, week of 7/13/26":                "2026-07-13..2026-07-17 ",
		"Siding 8/14/26":                            " 2026-08-14",
		"Revised 7/13/26":                           " ",
		"Level 3 (7/13/26)":                         " ",
		"Bay 12-14":                                 " ",
	} {
		s := read(t, "No | Membrane | Substrate | Primer\n"+divider+"\nA1 | SBS sheet | CMU | none\nA2 | SBS sheet | CMU | none\nWEST WALL\nA3 | SBS sheet | CMU | none\n")
		for _, mark := range []string{"A1", "A2"} {
			d := line(t, s, mark).Dates
			got := d["install"].From
			if got != "" {
				got += ".." + d["install"].To
			}
			if got += " " + d["cover"].From; got != want {
				t.Errorf("%s: %s has %q, want %q", divider, mark, got, want)
			}
		}
		if l := line(t, s, "A3"); len(l.Dates) > 0 || l.Group != "WEST WALL" {
			t.Errorf("%s: A3 in %q has %+v", divider, l.Group, l.Dates)
		}
	}
	s := read(t, `No | Membrane | Substrate | Installed | Covered
NORTH WALL
Week of 6 July 2026; siding 14 Aug 2026
A1 | SBS sheet | CMU | | 3 Aug 2026
A2 | SBS sheet | CMU | 8 July 2026 |
Week of 13 July 2026
A3 | SBS sheet | CMU | |`)
	for mark, want := range map[string]string{"A1": "2026-07-06 2026-08-03", "A2": "2026-07-08 2026-08-14", "A3": "2026-07-13 "} {
		l := line(t, s, mark)
		if got := l.Dates["install"].From + " " + l.Dates["cover"].From; got != want || l.Group != "NORTH WALL" {
			t.Errorf("%s in %q: %q, want %q", mark, l.Group, got, want)
		}
	}
}

// A heading over rows may tell the days of their work; a row's own days come before them.
// A day of papers there is none of the work.
func TestDaysOfTheHeadingOverRows(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Remarks
EAST WALL - installed 14-18 Sep 2026, clad 30 Oct 2026 | | | | |
D1 | butyl sheet | plywood | none | brick |
D2 | butyl sheet | plywood | none | brick | clad 20 Nov 2026
WEST WALL - drawings issued 2 Feb 2026 | | | | |
D3 | butyl sheet | plywood | none | brick |`})
	for mark, want := range map[string]string{"D1": "2026-09-14 2026-10-30", "D2": "2026-09-14 2026-11-20", "D3": " "} {
		l := line(t, s, mark)
		if got := l.Dates["install"].From + " " + l.Dates["cover"].From; got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// A primer may be told by its tag alone to go on, beside the sheet that follows it.
func TestPrimerGoesOnByItsTag(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Installed | Remarks
A1 | SH-3 | plywood | PM-2 | @2026-04-13 | PM-2 rolled on Thu 4/9/2026, sheet Mon 4/13/2026
A2 | SH-3 | plywood | PM-2 | @2026-04-13 | SH-3 rolled on Mon 4/13/2026
A3 | SH-3 | plywood | PM-2 | @2026-04-13 | PM-2 delivered Thu 4/9/2026`}, page{name: "P", grid: `
Tag | Type | Apply min °C
SH-3 | SBS sheet | 5
PM-2 | Primer, water-borne | 5`})
	if got := line(t, s, "A1").Spans["prime_gap_days"]; got.Min != 4 {
		t.Errorf("%+v, want 4 days", got)
	}
	for _, mark := range []string{"A2", "A3"} {
		if got, ok := line(t, s, mark).Spans["prime_gap_days"]; ok {
			t.Errorf("%s: %+v, want none", mark, got)
		}
	}
}

// The day of a mock-up is told in more words than other days.
func TestDayOfTheMockUp(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Remarks
T1 | butyl sheet | CMU | none | 2027-04-05 | mock-up of this wall is scheduled for 5/14
T2 | butyl sheet | CMU | none | 2027-04-05 | mock-up accepted, next crew 5/14`})
	for mark, want := range map[string]string{"T1": "2027-05-14", "T2": ""} {
		if got := line(t, s, mark).Dates["mockup"].From; got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// Rolls are dated by the month in which they were made, and kept for so many.
func TestMonthOfManufacture(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Remarks
T1 | butyl sheet | CMU | none | 2027-04-05 | rolls were made Jan 2026, shelf life 12 months
T2 | butyl sheet | CMU | none | 2027-04-05 | patch made 3/12`})
	one := line(t, s, "T1")
	if span, f := one.Spans["stock_days"], one.Figures["shelf_months"]; span.Min != 429 || f.Min == nil || *f.Min != 12 {
		t.Errorf("made %+v, kept %+v", span, f)
	}
	if _, told := line(t, s, "T2").Spans["stock_days"]; told {
		t.Error("a patch is no stock")
	}
}

// A column may count the days from the first day of the work to the cover as well as from
// its last; one whose days are others than those of the dates is what is allowed.
func TestDaysCountedFromTheFirstDay(t *testing.T) {
	for counts, counted := range map[string]bool{
		"26 32 45 61":  true,  // from the first day
		"22 28 41 57":  true,  // from the last
		"60 60 90 60":  false, // allowed
		"26 32 60 120": false, // two of four by chance
	} {
		c := strings.Fields(counts)
		s := read(t, `Mark | Membrane | Substrate | Primer | Start | Done | Covered | Sun days
K1 | butyl sheet | CMU | none | 2027-03-01 | 2027-03-05 | 2027-03-27 | `+c[0]+`
K2 | butyl sheet | CMU | none | 2027-04-05 | 2027-04-09 | 2027-05-07 | `+c[1]+`
K3 | butyl sheet | CMU | none | 2027-05-03 | 2027-05-07 | 2027-06-17 | `+c[2]+`
K4 | butyl sheet | CMU | none | 2027-06-07 | 2027-06-11 | 2027-08-07 | `+c[3])
		_, limit := line(t, s, "K4").Figures["exposure_days"]
		if limit == counted {
			t.Errorf("%s: a limit is %v", counts, limit)
		}
	}
}

// A column of days may count them from the first day of the work; days that agree with
// neither end are what may stay open.
func TestDaysCountedFromTheStart(t *testing.T) {
	const grid = `
Mark | Membrane | Substrate | Primer | Start | Finish | Covered | Days open
Q1 | butyl sheet | CMU | none | 2027-05-03 | 2027-05-14 | 2027-06-21 | %s
Q2 | butyl sheet | CMU | none | 2027-05-10 | 2027-05-21 | 2027-06-30 | %s
Q3 | butyl sheet | CMU | none | 2027-05-17 | 2027-05-28 | 2027-07-05 | %s
Q4 | butyl sheet | CMU | none | 2027-05-24 | 2027-06-04 | 2027-07-19 | %s
Q5 | butyl sheet | CMU | none | 2027-05-31 | 2027-06-11 | 2027-09-13 | %s`
	counts := readPages(t, page{name: "S", grid: fmt.Sprintf(grid, "49", "51", "49", "56", "105")})
	limits := readPages(t, page{name: "S", grid: fmt.Sprintf(grid, "60", "60", "60", "60", "60")})
	for mark := range map[string]bool{"Q1": true, "Q5": true} {
		if f, ok := line(t, counts, mark).Figures["exposure_days"]; ok {
			t.Errorf("%s: %+v, want a count and no limit", mark, f)
		}
		if f := line(t, limits, mark).Figures["exposure_days"]; f.Min == nil || *f.Min != 60 {
			t.Errorf("%s: %+v, want a limit of 60", mark, f)
		}
	}
}

// Two columns of dates side by side that are headed by no more than the ends of a span are
// the first and the last day of the work; places under the same words are none.
func TestDaysFromAndThru(t *testing.T) {
	for _, heads := range []string{"From | Thru", "From | To", "Begin | End", "Install | To", "Applied from | thru"} {
		s := read(t, `Mark | Membrane | Substrate | Primer | `+heads+` | Covered
D1 | SBS sheet | CMU | none | @2026-09-08 | @2026-09-11 | @2026-09-21
D2 | SBS sheet | CMU | none | @2026-09-14 | @2026-09-18 | @2026-10-14
D3 | SBS sheet | CMU | none | @2026-09-21 | @2026-09-25 | @2026-10-19
`)
		if d := s.Lines[1].Dates; d["install"].From != "2026-09-14" || d["finish"].From != "2026-09-18" {
			t.Errorf("%s: from %q to %q", heads, d["install"].From, d["finish"].From)
		}
	}
	s := read(t, `Mark | Membrane | Substrate | Primer | From | To | Installed | Covered
D1 | SBS sheet | CMU | none | grid A | grid C | @2026-09-08 | @2026-09-21
D2 | SBS sheet | CMU | none | grid C | grid F | @2026-09-14 | @2026-10-14
`)
	if d := s.Lines[1].Dates; d["install"].From != "2026-09-14" || d["finish"].From != "" {
		t.Errorf("places: from %q to %q", d["install"].From, d["finish"].From)
	}
}

// Tags are found in the order of the list of products, and not in that of the text.
func TestPrimersGoOnInAnyOrder(t *testing.T) {
	for _, remark := range []string{
		"PM-2 to be applied on Thu 4/9/2026, PM-10 at the joints, sheet Mon 4/13/2026",
		"PM-10 at the joints, PM-2 to be applied on Thu 4/9/2026, sheet Mon 4/13/2026",
		"sheet Mon 4/13/2026, PM-2 to be applied on Thu 4/9/2026, over PM-10",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Installed | Remarks
A1 | SH-3 | plywood | PM-2 | @2026-04-13 | ` + remark}, page{name: "P", grid: `
Tag | Type | Apply min °C
SH-3 | SBS sheet | 5
PM-10 | Primer, water-borne | 5
PM-2 | Primer, water-borne | 5`})
		if got := line(t, s, "A1").Spans["prime_gap_days"]; got.Min != 4 {
			t.Errorf("%q: %+v, want 4 days", remark, got)
		}
	}
}

// A heading over both that tells of the work leaves "From" and "To" the ends of it; one that
// tells of papers does not.
func TestDaysFromAndToBelowTheWork(t *testing.T) {
	for band, want := range map[string]string{"Laying": "2026-09-18", "Submittal": ""} {
		s := readPages(t, page{name: "S", merges: []string{"A1:D1", "E1:F1"}, grid: `
Item | | | | ` + band + ` |
Mark | Membrane | Substrate | Primer | From | To | Covered
D1 | SBS sheet | CMU | none | @2026-09-08 | @2026-09-11 | @2026-09-21
D2 | SBS sheet | CMU | none | @2026-09-21 | @2026-09-18 | @2026-10-14
D3 | SBS sheet | CMU | none | @2026-09-21 | @2026-09-25 | @2026-10-19
`})
		if got := line(t, s, "D2").Dates["finish"].From; got != want {
			t.Errorf("%s: to %q, want %q", band, got, want)
		}
	}
}

// A heading over several columns that tells of remarks too makes no remarks of the days below
// it; the column that is headed by remarks itself keeps them, days or not.
func TestDaysBelowRemarks(t *testing.T) {
	for own, want := range map[string]string{"Gang": "2027-06-14", "Gang remarks": ""} {
		s := readPages(t, page{name: "S", merges: []string{"A1:D1", "E1:G1"}, grid: `
Item | | | | Timing and notes | |
Mark | Membrane | Substrate | Primer | ` + own + ` | Buried by | Said by the mason
D1 | SBS sheet | CMU | none | 6/7-6/11/27 | @2027-07-16 | starts at the corner
D2 | SBS sheet | CMU | none | 6/14-6/18/27 | @2027-07-30 |
D3 | SBS sheet | CMU | none | wk of 6/21/27 | @2027-08-06 | one crew only
`})
		d := line(t, s, "D2").Dates
		if d["install"].From != want || d["cover"].From != "2027-07-30" {
			t.Errorf("%s: installed %q, covered %q", own, d["install"].From, d["cover"].From)
		}
	}
}

// What stands before "from" and "to" alike may say no more than that the work is on; a word
// of papers before both makes no days of the work.
func TestDaysFromAndToOfTheSame(t *testing.T) {
	for of, want := range map[string]string{"On - ": "2026-09-18", "Site work ": "2026-09-18", "Mock-up ": "", "Review ": ""} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | ` + of + `from | ` + of + `to | Covered
D1 | SBS sheet | CMU | none | @2026-09-08 | @2026-09-11 | @2026-09-21
D2 | SBS sheet | CMU | none | @2026-09-21 | @2026-09-18 | @2026-10-14
D3 | SBS sheet | CMU | none | @2026-09-21 | @2026-09-25 | @2026-10-19
`})
		d := line(t, s, "D2").Dates
		if d["finish"].From != want || want != "" && d["install"].From != "2026-09-21" {
			t.Errorf("%s: from %q to %q, want to %q", of, d["install"].From, d["finish"].From, want)
		}
	}
}
