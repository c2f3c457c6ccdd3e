package phrase

import (
	"strings"
	"testing"
	"time"
)

// showDate prints a date as the tables below write it.
func showDate(d Date) string {
	s := d.State
	if !d.From.IsZero() {
		s += " " + d.From.Format("2006-01-02")
		if !d.To.Equal(d.From) {
			s += ".." + d.To.Format("2006-01-02")
		}
	}
	if d.State == "relative" {
		s += " " + d.Relation + " " + d.Ref
		if d.Offset != 0 {
			s += time.Duration(d.Offset).String()
		}
	}
	for _, x := range []struct {
		is   bool
		name string
	}{{d.Ambiguous, "ambiguous"}, {d.WeekdayOff, "weekday-off"}, {d.NoYear, "no-year"}, {d.Verb != "", d.Verb}, {d.Prep != "", d.Prep}} {
		if x.is {
			s += " " + x.name
		}
	}
	return strings.TrimSpace(s)
}

func TestDates(t *testing.T) {
	r := reader(t)
	for _, tc := range []struct {
		text  string
		order DateOrder
		year  int
		want  string
	}{
		{"Aug 4, 2026", Unknown, 0, "day 2026-08-04"},
		{"Sept. 3 2026", Unknown, 0, "day 2026-09-03"},
		{"17 Oct 2025", Unknown, 0, "day 2025-10-17"},
		{"17-Oct-25", Unknown, 0, "day 2025-10-17"},
		{"Oct-17-2025", Unknown, 0, "day 2025-10-17"},
		{"3rd of March 2026", Unknown, 0, "day 2026-03-03"},
		{"5/7/2026", MonthFirst, 0, "day 2026-05-07"},
		{"5/7/2026", DayFirst, 0, "day 2026-07-05"},
		{"5/7/2026", Unknown, 0, "day 2026-05-07 ambiguous"},
		{"5/5/2026", Unknown, 0, "day 2026-05-05"},
		{"25/7/26", MonthFirst, 0, "day 2026-07-25"},
		{"7-25-26", DayFirst, 0, "day 2026-07-25"},
		{"25.07.2026", Unknown, 0, "day 2026-07-25"},
		{"2026-07-25 00:00:00", Unknown, 0, "day 2026-07-25"},
		{"2026-07-25T08:30:00Z", Unknown, 0, "day 2026-07-25"},
		{"wk of 16 Mar 2026", Unknown, 0, "span 2026-03-16..2026-03-20"},
		{"wk of Wed 18 Mar 2026", Unknown, 0, "span 2026-03-16..2026-03-20"},
		{"wk 3/18/2026", MonthFirst, 0, "span 2026-03-16..2026-03-20"},
		{"week of 3/18/2026", MonthFirst, 0, "span 2026-03-16..2026-03-20"},
		{"W/C 6 April 2026", Unknown, 0, "span 2026-04-06..2026-04-10"},
		{"week ending 10 April 2026", Unknown, 0, "span 2026-04-06..2026-04-10"},
		{"wk 15, 2026", Unknown, 0, "span 2026-04-06..2026-04-10"},
		{"2026-W15", Unknown, 0, "span 2026-04-06..2026-04-10"},
		{"week 15", Unknown, 2026, "span 2026-04-06..2026-04-10 no-year"},
		{"week 15", Unknown, 0, "unknown no-year"},
		{"mid-April 2026", Unknown, 0, "span 2026-04-11..2026-04-20"},
		{"Early Oct 2026", Unknown, 0, "span 2026-10-01..2026-10-10"},
		{"end of Feb 2028", Unknown, 0, "span 2028-02-21..2028-02-29"},
		{"April 2026", Unknown, 0, "span 2026-04-01..2026-04-30"},
		{"May to July 2026", Unknown, 0, "span 2026-05-01..2026-07-31"},
		{"Q2 2026", Unknown, 0, "span 2026-04-01..2026-06-30"},
		{"winter 2026-27", Unknown, 0, "span 2026-12-01..2027-02-28"},
		{"6-9 Oct 2026", Unknown, 0, "span 2026-10-06..2026-10-09"},
		{"Oct 6 - 9, 2026", Unknown, 0, "span 2026-10-06..2026-10-09"},
		{"29 Dec to 8 Jan 2027", Unknown, 0, "span 2026-12-29..2027-01-08"},
		{"10/5 to 10/9/2026", MonthFirst, 0, "span 2026-10-05..2026-10-09"},
		{"primer Tue 6/2, membrane Wed 6/3", MonthFirst, 2026, "day 2026-06-02 no-year prime|day 2026-06-03 no-year install"},
		{"Mon 6/2/2026", MonthFirst, 0, "day 2026-06-02 weekday-off"},
		{"31 Apr 2026", Unknown, 0, "impossible"},
		{"29 Feb 2027", Unknown, 0, "impossible"},
		{"2/30/2026", MonthFirst, 0, "impossible"},
		{"14/14/2026", Unknown, 0, "impossible"},
		{"concrete (poured 9/2/26)", MonthFirst, 0, "day 2026-09-02 placed"},
		{"doors came late, hung + anchored 9/2/26", MonthFirst, 0, "day 2026-09-02 unit_set"},
		{"louver strip set 9/2/26", MonthFirst, 0, "day 2026-09-02 install"},
		{"slab cast Oct 2025, dry", Unknown, 0, "span 2025-10-01..2025-10-31 placed"},
		{"block laid Feb., dry", Unknown, 2026, "span 2026-02-01..2026-02-28 no-year built"},
		{"heated until 2026-01-30", Unknown, 0, "day 2026-01-30 heated until"},
		{"28 days on 10-12", MonthFirst, 2026, "day 2026-10-12 no-year on"},
		{"with layer 7", Unknown, 0, "relative with layer 7"},
		{"same as B3", Unknown, 0, "relative with B3"},
		{"3 days after step 2", Unknown, 0, "relative after step 23ns"},
		{"same day", Unknown, 0, "relative with"},
		{"following day", Unknown, 0, "relative after 1ns"},
		{"as K4 except at corners", Unknown, 0, "relative with K4"},
		{"after 10 am", Unknown, 0, ""},
		{"with layer above", Unknown, 0, "relative with layer above"},
		{"t.b.d.", Unknown, 0, "unknown"},
		{"TBC", Unknown, 0, "unknown"},
		{"to be confirmed", Unknown, 0, "unknown"},
		{"n/a", Unknown, 0, "none"},
		{"—", Unknown, 0, "none"},
		{"", Unknown, 0, "none"},
		{"remains exposed", Unknown, 0, "open"},
		{"permanently exposed", Unknown, 0, "open"},
		{"46150", Unknown, 0, "day 2026-05-08"},
		{"14 layers may lap", Unknown, 2026, ""},
		{"on 5/8 plywood", MonthFirst, 2026, ""},
		{"see 3/A8.1 and 12-04-10", MonthFirst, 2026, "day 2010-12-04"},
		{"16 x 16 in. at 24 o.c.", MonthFirst, 2026, ""},
		{"wall sheet laps over", Unknown, 0, ""},
	} {
		t.Run(tc.text, func(t *testing.T) {
			var got []string
			for _, d := range r.Dates(tc.text, tc.order, tc.year) {
				got = append(got, showDate(d))
				if d.Text != tc.text[d.Start:d.End] {
					t.Errorf("text %q is not at its span", d.Text)
				}
			}
			if s := strings.Join(got, "|"); s != tc.want {
				t.Errorf("got %q, want %q", s, tc.want)
			}
		})
	}
}

func TestOrder(t *testing.T) {
	r := reader(t)
	for _, tc := range []struct {
		name  string
		texts []string
		want  DateOrder
		sure  bool
	}{
		{"a day over 12 first", []string{"3/4/2026", "25/4/2026"}, DayFirst, true},
		{"a day over 12 second", []string{"3/4/2026", "4/25/26", "TBD"}, MonthFirst, true},
		{"nothing over 12", []string{"3/4/2026", "5/6/2026"}, Unknown, false},
		{"both", []string{"25/4/2026", "4/25/2026"}, Unknown, false},
		{"month names tell nothing", []string{"25 Apr 2026"}, Unknown, false},
		{"none", nil, Unknown, false},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got, sure := r.Order(tc.texts)
			if got != tc.want || sure != tc.sure {
				t.Errorf("got %v %v, want %v %v", got, sure, tc.want, tc.sure)
			}
		})
	}
}

func TestOrderOf(t *testing.T) {
	r := reader(t)
	for country, want := range map[string]DateOrder{"US": MonthFirst, "gb": DayFirst, "CA": Unknown, "": Unknown} {
		if got := r.OrderOf(country); got != want {
			t.Errorf("%q: got %v, want %v", country, got, want)
		}
	}
}

func FuzzDates(f *testing.F) {
	for _, s := range []string{"Sept 21, 2026", "3/9/2026", "wk of 2/8/2027", "Nov 10-21, 2026", "31 Jun 2026", "w/ layer 5", "2026-W99", "Q", "Fri 4/30", "mid-", "1/1/", "winter 2026-", "99999", "\xff1/2/2026"} {
		f.Add(s, 1, 2026)
	}
	r := reader(f)
	f.Fuzz(func(t *testing.T, text string, order, year int) {
		for _, d := range r.Dates(text, DateOrder(order%3), year%3000) {
			if d.Start < 0 || d.End > len(text) || d.Start > d.End || d.Text != text[d.Start:d.End] {
				t.Fatalf("span %v outside %q", d.Span, text)
			}
			if d.State == "span" && d.To.Before(d.From) {
				t.Fatalf("%q ends before it starts", text)
			}
		}
	})
}

// TestNarrowed: days in brackets behind a season, a quarter or a month narrow it, and
// take its year; brackets that tell of another time of the year leave it.
func TestNarrowed(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"Summer 2026 (Aug 3–5)":                      "2026-08-03 2026-08-05",
		"Late spring 2027 (May 24–June 11)":          "2027-05-24 2027-06-11",
		"Q3 2026 (14 to 18 Sept)":                    "2026-09-14 2026-09-18",
		"October 2026 (week of Oct 12), in the tent": "2026-10-12 2026-10-16",
		"Winter 2027 (Feb 8–26)":                     "2027-02-08 2027-02-26",
		"winter 2026/27 (11 to 29 Jan)":              "2027-01-11 2027-01-29",
		"Winter 2026-27 (Dec 7–11)":                  "2026-12-07 2026-12-11",
		"autumn 2026 (Sept 21, 2026)":                "2026-09-21 2026-09-21",
		"Summer 2026 (delivered Jan 5)":              "2026-06-01 2026-08-31",
		"Summer 2026 (Jan 5–9)":                      "2026-06-01 2026-08-31",
		"Summer 2026 (4 bays)":                       "2026-06-01 2026-08-31",
	} {
		got := ""
		if dates := r.ColumnDates(text, MonthFirst, 2026); len(dates) > 0 {
			got = dates[0].From.Format("2006-01-02") + " " + dates[0].To.Format("2006-01-02")
		}
		if got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// TestEndOfMonth: "end" before a month without a day of it is the end of the month; before
// a day it is a verb. Weeks run from one number to another.
func TestEndOfMonth(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"end-Sep '26":       "2026-09-21 2026-09-30",
		"end Nov 2026":      "2026-11-21 2026-11-30",
		"beg. Nov 2026":     "2026-11-01 2026-11-30",
		"beg Nov 2026":      "2026-11-01 2026-11-10",
		"4 Aug to end Sept": "2026-08-04 2026-09-30",
		"works end Jul 12":  "2026-07-12 2026-07-12",
		"wk 21-23":          "2026-05-18 2026-06-05",
		"wks 51 to 52/2027": "2027-12-20 2027-12-31",
		"wk 21, 3 men":      "2026-05-18 2026-05-22",
		"wk 52-wk 2":        "2026-12-21 2027-01-15",
	} {
		got := ""
		if dates := r.ColumnDates(text, MonthFirst, 2026); len(dates) > 0 {
			got = dates[0].From.Format("2006-01-02") + " " + dates[0].To.Format("2006-01-02")
		}
		if got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// TestTwoShortYears: behind a season two years in a row of two digits each are years; other
// figures are none.
func TestTwoShortYears(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"Winter 27/28":                 "2027-12-01 2028-02-29",
		"winter '29-'30":               "2029-12-01 2030-02-28",
		"in the winter of 28–29":       "2028-12-01 2029-02-28",
		"winter 27/28 (10 to 21 Jan)":  "2028-01-10 2028-01-21",
		"autumn 12/18 mil":             "",
		"summer 10-12 working days":    "",
		"spring 14 / 15 in the tables": "",
	} {
		got := ""
		if dates := r.ColumnDates(text, MonthFirst, 2026); len(dates) > 0 && dates[0].State == "span" {
			got = dates[0].From.Format("2006-01-02") + " " + dates[0].To.Format("2006-01-02")
		}
		if got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// TestThirdOfShortYear: behind a third of a month two digits are the year, and no day.
func TestThirdOfShortYear(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"late Mar 28":       "2028-03-21 2028-03-31",
		"mid-Nov 27":        "2027-11-11 2027-11-20",
		"early Aug 28, dry": "2028-08-01 2028-08-10",
		"early Aug 28 mils": "2026-08-01 2026-08-10",
		"early Aug 2027":    "2027-08-01 2027-08-10",
	} {
		got := ""
		if dates := r.ColumnDates(text, MonthFirst, 2026); len(dates) > 0 && dates[0].State == "span" {
			got = dates[0].From.Format("2006-01-02") + " " + dates[0].To.Format("2006-01-02")
		}
		if got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}
