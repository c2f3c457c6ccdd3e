package schedule_test

import (
	"slices"
	"testing"

	"abut/internal/schedule"
)

func TestDittoAndSameAs(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Touches | Install date\n"
	for name, tc := range map[string]struct {
		rows      string
		mark      string
		material  string
		substrate string
	}{
		"ditto marks":                       {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | ″ | \" | ditto | do. | @2026-03-03", "D2", "butyl-flashing-tape", "osb-plywood-sheathing"},
		"ditto of a ditto":                  {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | ditto | CMU | none | brick | @2026-03-03\nD3 | ditto | ditto | none | brick | @2026-03-03", "D3", "butyl-flashing-tape", "concrete-masonry"},
		"similar to the row above":          {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | butyl sheet | Similar to row above. | none | brick | @2026-03-03", "D2", "butyl-flashing-tape", "osb-plywood-sheathing"},
		"same as above":                     {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | same as above | CMU | none | brick | @2026-03-03", "D2", "butyl-flashing-tape", "concrete-masonry"},
		"same as a mark":                    {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | EPDM membrane | CMU | none | brick | @2026-03-02\nD3 | same as D1 | as D1 | none | brick | @2026-03-03", "D3", "butyl-flashing-tape", "osb-plywood-sheathing"},
		"mark first, then dittos follow it": {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | EPDM membrane | CMU | none | brick | @2026-03-02\nD3 | same as D1 | ″ | ″ | ″ | @2026-03-03", "D3", "butyl-flashing-tape", "osb-plywood-sheathing"},
		"a mark that is not there":          {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD3 | same as D9 | CMU | none | brick | @2026-03-03", "D3", "", "concrete-masonry"},
		"a date is never carried":           {"D1 | butyl sheet | plywood | none | brick | @2026-03-02\nD2 | ditto | ditto | none | brick | ", "D2", "butyl-flashing-tape", "osb-plywood-sheathing"},
	} {
		t.Run(name, func(t *testing.T) {
			s := readPages(t, page{name: "S", grid: head + tc.rows})
			l := line(t, s, tc.mark)
			if got := items(l, "material"); got != tc.material {
				t.Errorf("material %q, want %q", got, tc.material)
			}
			if got := items(l, "substrate"); got != tc.substrate {
				t.Errorf("substrate %q, want %q", got, tc.substrate)
			}
			if name == "a date is never carried" && l.Dates["install"].From != "" {
				t.Errorf("install %+v", l.Dates["install"])
			}
		})
	}
}

func TestDatesOfALine(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Wall | Layer | Material | Substrate | Primed | Install date | Cover date | Concrete placed | Remarks
W1 | 1 | cast concrete | footing | - | @2026-02-02 | | | 
W1 | 2 | butyl sheet | cast concrete | 1 Mar 2026 | 2-4 Mar 2026 | 20 Mar 2026 | 2 Feb 2026 | 
W1 | 3 | mineral wool | butyl sheet | | w/ layer 2 | TBD | N/A | 
W1 | 4 | brick | air space | | 31 Feb 2026 | | | 
W2 | 1 | butyl sheet | CMU | | wk of 9 Mar 2026 | 30 Mar 2026 | | Primed 8 Mar 2026`})
	day := func(i int, slot string) schedule.Day { return s.Lines[i].Dates[slot] }
	for _, tc := range []struct {
		got             schedule.Day
		from, to, state string
	}{
		{day(0, "install"), "2026-02-02", "2026-02-02", "day"},
		{day(1, "install"), "2026-03-02", "2026-03-04", "span"},
		{day(2, "install"), "2026-03-02", "2026-03-04", "implied"},
		{day(2, "cover"), "", "", "unknown"},
		{day(2, "placed"), "", "", "none"},
		{day(3, "install"), "", "", "impossible"},
		{day(3, "cover"), "", "", "missing"},
		{day(4, "install"), "2026-03-09", "2026-03-13", "span"},
		{day(4, "prime"), "2026-03-08", "2026-03-08", "day"},
	} {
		if tc.got.From != tc.from || tc.got.To != tc.to || tc.got.State != tc.state {
			t.Errorf("%q: got %s to %s, %s, want %s to %s, %s", tc.got.Text, tc.got.From, tc.got.To, tc.got.State, tc.from, tc.to, tc.state)
		}
	}
	if got := s.Lines[1].Spans["bare_days"]; got.Min != 16 || got.Max != 18 || got.Last != 16 {
		t.Errorf("days bare %+v", got)
	}
	if got := s.Lines[1].Spans["concrete_age_days"]; got.Min != 28 || got.Max != 30 {
		t.Errorf("age of concrete %+v", got)
	}
	if got := s.Lines[1].Spans["prime_gap_days"]; got.Min != 1 {
		t.Errorf("days from primer to sheet %+v", got)
	}
}

func TestOrderOfDayAndMonth(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Install date\n"
	for name, tc := range map[string]struct {
		rows, country, want string
		note                bool
	}{
		"by the column, day first":   {"D1 | butyl sheet | CMU | none | 3/4/2026\nD2 | butyl sheet | CMU | none | 25/4/2026", "US", "2026-04-03", true},
		"by the column, month first": {"D1 | butyl sheet | CMU | none | 3/4/2026\nD2 | butyl sheet | CMU | none | 4/25/2026", "GB", "2026-03-04", true},
		"by the country, UK":         {"D1 | butyl sheet | CMU | none | 3/4/2026", "GB", "2026-04-03", true},
		"by the country, US":         {"D1 | butyl sheet | CMU | none | 3/4/2026", "US", "2026-03-04", true},
		"not to be told apart":       {"D1 | butyl sheet | CMU | none | 3/4/2026", "", "2026-03-04", true},
		"written out":                {"D1 | butyl sheet | CMU | none | 3 Apr 2026", "US", "2026-04-03", false},
	} {
		t.Run(name, func(t *testing.T) {
			s := readBook(t, csvBook(t, head+tc.rows+"\n"), schedule.Settings{Country: tc.country})
			d := line(t, s, "D1").Dates["install"]
			if d.From != tc.want || (d.Note != "") != tc.note {
				t.Errorf("got %s, note %q, want %s", d.From, d.Note, tc.want)
			}
		})
	}
}

func TestPours(t *testing.T) {
	s := readPages(t,
		page{name: "Walls", grid: `
Mark | Membrane | Substrate | Primer | Install date
D1 | butyl sheet | concrete, pour P-2 | none | @2026-03-30
D2 | butyl sheet | CMU | none | @2026-03-30`},
		page{name: "Concrete", grid: `
Pour | Where | Placed | Curing
P-1 | footing | @2026-02-01 | wet burlap
P-2 | east wall | @2026-03-02 | curing compound`})
	if len(s.Pours) != 2 || s.Pours[1].Placed.From != "2026-03-02" {
		t.Fatalf("pours %+v", s.Pours)
	}
	l := line(t, s, "D1")
	if got := l.Spans["concrete_age_days"]; got.Min != 28 || got.Max != 28 {
		t.Errorf("age %+v", got)
	}
	if !said(l, "curing_compound") {
		t.Errorf("signals %+v", l.Signals)
	}
	if _, ok := line(t, s, "D2").Spans["concrete_age_days"]; ok {
		t.Error("the block has no pour")
	}
}

func said(l *schedule.Line, id string) bool {
	for _, s := range l.Signals {
		if s.ID == id && !s.No {
			return true
		}
	}
	return false
}

func TestBareNounsStandForWhatTheRowNamed(t *testing.T) {
	s := readPages(t,
		page{name: "S", grid: `
Mark | Membrane | Substrate | Touches | Remarks
D1 | SAF-1 | W-1 nailer | galv. lintel | Sheet stops on the nailer; bead at lintel
D2 | SAF-1 | CMU | brick | SAF laps 3 in.`},
		page{name: "Data", grid: `
Tag | Type | Min apply °C | Max days open to sun
SAF-1 | rubberized asphalt flashing tape | 5 | 30
W-1 | preservative-treated lumber, copper | - | -`})
	l := line(t, s, "D1")
	want := map[string]string{"nailer": "W-1", "lintel": ""}
	for _, it := range l.Items {
		if tag, ok := want[it.Text]; ok && it.Slot == "remark" && it.Tag != tag {
			t.Errorf("%s of the remark is %q, want %q", it.Text, it.Tag, tag)
		}
		if it.Text == "lintel" && it.Slot == "remark" && it.Family != "galvanized-sheet" && it.Family != l.Items[2].Family {
			t.Errorf("lintel is %s", it.Family)
		}
	}
	for _, it := range line(t, s, "D2").Items {
		if it.Text == "SAF" && it.Tag != "SAF-1" {
			t.Errorf("SAF stands for %q", it.Tag)
		}
	}
}

func TestBeds(t *testing.T) {
	for cell, want := range map[string]string{
		"plywood": "osb-plywood-sheathing",
		"glass-mat sheathing, room side of the wool":    "glass-mat-gypsum-sheathing",
		"CMU and steel angle":                           "concrete-masonry structural-steel",
		"zinc cap plate on concrete block":              "zinc-sheet",
		"glass-mat sheathing over galv. steel studs":    "glass-mat-gypsum-sheathing",
		"plywood, behind the brick":                     "osb-plywood-sheathing",
		"old mastic (butyl) scraped off, CMU":           "removed:butyl-sealant concrete-masonry",
		"existing coal tar pitch removed, then plywood": "removed:coal-tar-pitch osb-plywood-sheathing",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\nD1 | butyl tape | "+cell+" | none\nD2 | butyl tape | plywood | none\n")
		if got := items(&s.Lines[0], "substrate"); got != want {
			t.Errorf("%s: substrate %q, want %q", cell, got, want)
		}
	}
}

// A year told by the date columns holds for words left of them too, and a mark
// in ditto is that of the row above.
func TestDatesLeftOfTheirYear(t *testing.T) {
	s := read(t, "Det. | Membrane | Substrate | Surface condition | Primer | Laid\n5/A | butyl tape | concrete | poured 6/11, forms off 6/14 | none | 2027-06-16\ndo. | butyl tape | concrete | poured 6/1 | none | 2027-06-16\n")
	if got := s.Lines[0].Spans["concrete_age_days"]; got.Min != 5 {
		t.Errorf("%+v, dates %+v", got, s.Lines[0].Dates)
	}
	if got := s.Lines[1].Mark; got != "5/A" {
		t.Errorf("mark %q", got)
	}
}

// A ditto stands for what its own column says above, and not for the other columns
// that tell of neighbors too.
func TestDittoOfOneOfTwoColumns(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Tied to | Install date
D1 | butyl sheet | plywood | none | EPDM gasket | brick | @2026-03-02
D2 | butyl sheet | plywood | none | copper flashing | " | @2026-03-03
D3 | butyl sheet | plywood | none | - | " | @2026-03-04`})
	for mark, want := range map[string]string{"D2": "copper-sheet clay-brick", "D3": "clay-brick"} {
		if got := items(line(t, s, mark), "touches"); got != want {
			t.Errorf("%s touches %q, want %q", mark, got, want)
		}
	}
}

// Concrete "poured June 26" was poured some day of that month, where the year is 2026.
func TestPouredInAMonth(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Primer | Laid\nD1 | butyl sheet | concrete, poured June 26 | none | 2026-12-30\nD2 | butyl sheet | concrete, poured June 12 | none | 2026-07-30\n")
	for mark, want := range map[string]string{"D1": "2026-06-01 2026-06-30", "D2": "2026-06-12 2026-06-12"} {
		if d := line(t, s, mark).Dates["placed"]; d.From+" "+d.To != want {
			t.Errorf("%s placed %s to %s, want %s", mark, d.From, d.To, want)
		}
	}
}

// "Cast 3/26" is a month and a year under work of the year after too; a day of
// another number stays one.
func TestCastInMonthAndYear(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Primer | Laid\nD1 | butyl sheet | concrete, cast 3/26 | none | 2027-05-10\nD2 | butyl sheet | concrete, cast 3/25 | none | 2027-05-10\nD3 | butyl sheet | concrete, cast 3/27 | none | 2027-05-10\n")
	for mark, want := range map[string]string{"D1": "2026-03-01 2026-03-31", "D2": "2027-03-25 2027-03-25", "D3": "2027-03-01 2027-03-31"} {
		if d := line(t, s, mark).Dates["placed"]; d.From+" "+d.To != want {
			t.Errorf("%s placed %s to %s, want %s", mark, d.From, d.To, want)
		}
	}
}

// A bed comes before what goes on it: in the winter, "cast in May" was the spring before.
func TestBedOfTheYearBefore(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Primer | Laid\nD1 | butyl sheet | concrete, cast in May | none | 2027-01-20\nD2 | butyl sheet | concrete, cast in June | none | 2027-05-10\n")
	for mark, want := range map[string]string{"D1": "2026-05-01", "D2": "2027-06-01"} {
		if d := line(t, s, mark).Dates["placed"]; d.From != want {
			t.Errorf("%s placed %s, want %s", mark, d.From, want)
		}
	}
}

// What a cell tells to take off is not there, and what it is taken off is.
func TestTakenOff(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mark | Material | Substrate | Primer | Lap
D1 | SBS sheet | old wall: scrape off coal tar coating to sound brick | none | 75 mm
D2 | SBS sheet | remove coal tar coating from brick | none | 75 mm
D3 | SBS sheet | at pier, grind off coal tar coating | none | 75 mm
D4 | SBS sheet | do not remove coal tar coating | none | 75 mm`})
	for mark, want := range map[string]string{"D1": "removed", "D2": "removed", "D3": "removed", "D4": "yes"} {
		for _, it := range line(t, s, mark).Items {
			switch it.Family {
			case "coal-tar-pitch":
				if it.Polarity != want {
					t.Errorf("%s: %s is %s, want %s", mark, it.Text, it.Polarity, want)
				}
			case "clay-brick":
				if it.Polarity != "yes" {
					t.Errorf("%s: %s is %s", mark, it.Text, it.Polarity)
				}
			}
		}
	}
}

// A row whose own product is "as specified" has the one that it says was asked for.
func TestKeptAsSpecified(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Line | They asked for | We give | Substrate | Primer
1 | ZB-1 | As spec | CMU | none
2 | ZB-1 | no change | CMU | none
3 | ZB-1 | ZC-4 | CMU | none
4 | ZB-1 | As specified; ZS-2 for the beads | CMU | none`}, page{name: "P", grid: `
Tag | Type | Apply min F
ZB-1 | SBS sheet | 40
ZC-4 | butyl sheet | 30
ZS-2 | STPE sealant | 20`})
	for i, want := range []string{"ZB-1", "ZB-1", "ZC-4", "ZB-1"} {
		if m := s.Lines[i].Main(); m == nil || m.Product != want {
			t.Errorf("row %d: %+v, want %s", i+1, m, want)
		}
	}
}

// A cell of laps and edges may say what the row's material is set in; one that tells a lap,
// or what is done at an edge, does not.
func TestSetInAtTheEdges(t *testing.T) {
	for words, want := range map[string]string{
		"dabbed, set in cutback mastic": "asphalt-cutback-mastic",
		"joints taped, staggered":       "",
		"mastic at pipes by others":     "",
		"3 in., set in cutback mastic":  "",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Laps, edges | Install date
D1 | EPS board | concrete | none | ` + words + ` | @2026-05-04
D2 | butyl sheet | plywood | none | 3 in. | @2026-05-04
D3 | butyl sheet | plywood | none | 3 in. | @2026-05-04`})
		got := ""
		for _, it := range line(t, s, "D1").Items {
			if it.Slot == "edge" {
				got += it.Family
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// What is offered by a name that the data does not have is of the sort that was specified.
func TestOfferedByNameAlone(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Specified | Offered | Substrate | Primer | Remarks
D1 | Alder Sheet 40 | Quill Wrap | CMU | none | offered: 4 perms
D2 | Alder Sheet 40 | nothing yet | CMU | none |
D3 | Alder Sheet 40 | | CMU | none |`}, page{name: "P", grid: "Product | Type | Apply min °C | Max days open\nAlder Sheet 40 | SBS sheet | 5 | 60\nLarch HT | butyl sheet | 5 | 60"})
	for mark, want := range map[string]string{"D1": "membrane Quill Wrap", "D2": "other", "D3": "membrane Alder Sheet 40"} {
		l := line(t, s, mark)
		got := l.Role
		if m := l.Main(); m != nil {
			got += " " + m.Text
		}
		if got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// A remark may tell the day of the units by their type.
func TestUnitsSetByType(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Install date | Remarks
D1 | STPE liquid flashing | plywood | none | 2026-11-20 | frames type C set 11/9/2026
D2 | STPE liquid flashing | plywood | none | 2026-11-20 | frames of type C, see set 11`)
	for mark, want := range map[string]string{"D1": "2026-11-09", "D2": ""} {
		if got := line(t, s, mark).Dates["unit_set"].From; got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// One word of a product's name says nothing of the row.
func TestNameSaysNothing(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Sealant | Substrate | Primer | Remarks
D1 | Larch Clear N | brick | none | -
D2 | Larch Gray N | brick | none | clear of the sheet`}, page{name: "P", grid: "Product | Type | Apply min °C | Max days open\nLarch Clear N | neutral cure silicone sealant | 5 | -\nLarch Gray N | neutral cure silicone sealant | 5 | -"})
	for mark, want := range map[string]bool{"D1": false, "D2": true} {
		got := slices.ContainsFunc(line(t, s, mark).Signals, func(s schedule.Said) bool { return s.ID == "no_contact" })
		if got != want {
			t.Errorf("%s: kept clear %v", mark, got)
		}
	}
}
