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

// A year told in a sentence on the dates, or in the heading of a column of them, holds
// for days written as figures with a stroke; without a year they are no dates.
func TestYearOfStrokedDays(t *testing.T) {
	const rows = `
1 | butyl sheet | plywood | 4/6-4/17 | 5/3
2 | butyl sheet | plywood | 11/29-12/3 | 1/14
3 | butyl sheet | plywood | 9/27-9/31 | 10/29`
	for _, head := range []string{
		"All dates are planned windows in 2027. | | | |\nMark | Membrane | Substrate | Installed | Covered",
		"Mark | Membrane | Substrate | Installed, 2027 | Covered",
		"Mark | Membrane | Substrate | Installed | Covered by 2027",
	} {
		s := read(t, head+rows)
		for mark, want := range map[string]string{"1": "2027-04-06 2027-04-17 2027-05-03", "2": "2027-11-29 2027-12-03 2028-01-14"} {
			d := line(t, s, mark).Dates
			if got := d["install"].From + " " + d["install"].To + " " + d["cover"].From; got != want {
				t.Errorf("%s, %s: %s, want %s", head, mark, got, want)
			}
		}
		if d := line(t, s, "3").Dates["install"]; d.State != "impossible" {
			t.Errorf("%s: 31 September is %+v", head, d)
		}
	}
	s := read(t, "Mark | Membrane | Substrate | Installed | Covered"+rows)
	if d := line(t, s, "1").Dates["install"]; d.From != "" {
		t.Errorf("the year is a guess: %+v", d)
	}
}

// Thicknesses and slopes with a stroke are no days, though the book tells a year.
func TestStrokedFractionsAreNoDays(t *testing.T) {
	s := read(t, `Season 2027 | | | |
Mark | Board | Substrate | Thk, in | Installed
1 | gypsum sheathing | steel studs | 1/2 | 4/6
2 | gypsum sheathing | steel studs | 5/8 | 4/19`)
	if f := line(t, s, "2").Figures["thickness_mm"]; f.Min == nil || *f.Min < 15 || *f.Min > 16 {
		t.Errorf("thickness %+v", f)
	}
	if d := line(t, s, "2").Dates["install"]; d.From != "2027-04-19" {
		t.Errorf("installed %+v", d)
	}
}

// Days with a stroke and no year show by themselves which of the two is the day.
func TestOrderOfStrokedDays(t *testing.T) {
	s := read(t, `All dates 2027 | | | |
Mark | Membrane | Substrate | Installed | Covered
1 | butyl sheet | plywood | 6/4-17/4 | 3/5
2 | butyl sheet | plywood | North 7/6-18/6; South 5/7-16/7 | 9/8`)
	if d := line(t, s, "1").Dates; d["install"].From != "2027-04-06" || d["install"].To != "2027-04-17" || d["cover"].From != "2027-05-03" {
		t.Errorf("1: %+v", d)
	}
	if d := line(t, s, "2").Dates["install"]; d.State != "parts" || d.From != "" {
		t.Errorf("two parts of the work have one day: %+v", d)
	}
}

// The year of the weeks that a programme counts may be told of the weeks; a week that is
// dated, or that is told with a month, tells no year of the others.
func TestYearOfWeeks(t *testing.T) {
	const rows = `
Mark | Membrane | Substrate | Installed | Covered
1 | butyl sheet | plywood | wk 14 | wk 19
2 | butyl sheet | plywood | wk 50 | wk 3`
	for _, title := range []string{"Week numbers are ISO weeks of 2026", "Weeks: calendar 2026, other years written out", "CW 2026"} {
		s := read(t, title+" | | | | "+rows)
		for mark, want := range map[string]string{"1": "2026-03-30 2026-05-04", "2": "2026-12-07 2027-01-18"} {
			d := line(t, s, mark).Dates
			if got := d["install"].From + " " + d["cover"].From; got != want {
				t.Errorf("%s, %s: %s, want %s", title, mark, got, want)
			}
		}
	}
	for _, title := range []string{"Updated last week, Feb 2026", "Weeks after 4 March 2026", "wk of 2026-03-02"} {
		if d := line(t, read(t, title+" | | | | "+rows), "1").Dates["install"]; d.From != "" {
			t.Errorf("%s: the year of %s is a guess", title, d.From)
		}
	}
}

// A buyer's column of deliveries tells when the material is there; one of lead times
// tells no day.
func TestDeliveryColumn(t *testing.T) {
	for head, cell := range map[string]string{"Del'y": "June 7", "Delivery": "wk 23"} {
		s := read(t, `All dates 2027 | | | |
Mark | Membrane | Substrate | `+head+` | Installed
1 | butyl sheet | plywood | `+cell+` | May 10
2 | butyl sheet | plywood | wk 17 | May 11`)
		if d := line(t, s, "1").Dates["delivered"]; d.From != "2027-06-07" {
			t.Errorf("%s: %+v", head, d)
		}
	}
	s := read(t, `All dates 2027 | | | |
Mark | Membrane | Substrate | Delivery | Installed
1 | butyl sheet | plywood | 6 wks | May 10
2 | butyl sheet | plywood | ex stock | May 11`)
	if d, ok := line(t, s, "1").Dates["delivered"]; ok {
		t.Errorf("a lead time is no day: %+v", d)
	}
}

// Days without a year at the top of a table are of the season of its first day with one,
// which may lie over the new year; a table with no year at all tells none.
func TestYearOfRowsBelow(t *testing.T) {
	const head = `
Mark | Membrane | Substrate | Installed | Covered
1 | butyl sheet | plywood | wk of 11/16 | wk of 1/18
2 | butyl sheet | plywood | Nov 30 | Feb 1`
	s := read(t, head+"\n3 | butyl sheet | plywood | 2028-01-10 | Feb 7\n4 | butyl sheet | plywood | 3/6/2029 | 4/3/2029")
	for mark, want := range map[string]string{"1": "2027-11-15 2028-01-17", "2": "2027-11-30 2028-02-01", "3": "2028-01-10 2028-02-07"} {
		d := line(t, s, mark).Dates
		if got := d["install"].From + " " + d["cover"].From; got != want {
			t.Errorf("%s: %s, want %s", mark, got, want)
		}
	}
	s = read(t, head+"\n3 | butyl sheet | plywood | TBD | Feb 7, 2028")
	if d := line(t, s, "1").Dates["install"]; d.From != "2027-11-15" {
		t.Errorf("the year of a cover below: %+v", d)
	}
	s = read(t, head+"\n3 | butyl sheet | plywood | Jan 10 | Feb 7")
	if d := line(t, s, "1").Dates["install"]; d.From != "" {
		t.Errorf("the year is a guess: %+v", d)
	}
}
