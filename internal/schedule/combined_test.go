package schedule_test

import (
	"fmt"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// Columns that are drawn together to one: what the heading names beside one another,
// each cell tells in that order (common practice).
func TestCombinedColumns(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Sheet + primer | Base | Set -> covered | Mil / overlap (in) | Remarks
J1 | SB-4 / WP-9 | CMU | 04/06/26 -> 05/04/26 | 40 mil / 2½ | -
J2 | SB-4 / none | CMU | 04/08/26 -> 06/19/26 | 60 mil / 4 | -
J3 | SB-4 on FB-2, 6 in. strips / none | plywood | 04/09/26 -> TBD | 45 mil / 3 | -
J4 | FB-2 | CMU | 04/13/26 | 1.2 mm DFT | -
J5 | ditto | CMU | 04/14/26 -> 04/20/26 | 1.3 mm DFT | -
J6 | SB-4 / WP-9 | CMU | 04/16/26 -> 05/20/26 | 40 mil / 3 | -`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open | Primer
SB-4 | SBS-modified asphalt self-adhered sheet | 40 | 60 | WP-9
FB-2 | acrylic fluid membrane | 40 | 90 | none
WP-9 | water-based acrylic primer | 40 | - | -`})
	for _, tc := range []struct{ mark, tag, primer, install, cover string }{
		{"J1", "SB-4", "WP-9", "2026-04-06", "2026-05-04"},
		{"J2", "SB-4", "none", "2026-04-08", "2026-06-19"},
		{"J3", "SB-4", "none", "2026-04-09", ""},
		{"J4", "FB-2", "", "2026-04-13", ""},
		{"J6", "SB-4", "WP-9", "2026-04-16", "2026-05-20"},
	} {
		l := line(t, s, tc.mark)
		if main := l.Main(); main == nil || main.Tag != tc.tag {
			t.Errorf("%s: main %+v, want %s", tc.mark, main, tc.tag)
		}
		if l.Texts["primer"] != tc.primer {
			t.Errorf("%s: primer %q, want %q", tc.mark, l.Texts["primer"], tc.primer)
		}
		if got := l.Dates["install"]; got.From != tc.install || got.To != tc.install {
			t.Errorf("%s: install %+v, want %s", tc.mark, got, tc.install)
		}
		if got := l.Dates["cover"].From; got != tc.cover {
			t.Errorf("%s: cover %q, want %q", tc.mark, got, tc.cover)
		}
	}
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"J1": {"thickness_mm": 1.016, "lap_mm": 63.5}, "J2": {"thickness_mm": 1.524, "lap_mm": 101.6},
		"J4": {"thickness_mm": 1.2, "lap_mm": none}, "J6": {"thickness_mm": 1.016, "lap_mm": 76.2},
	})
	if got := line(t, s, "J3").Dates["cover"].State; got != "unknown" {
		t.Errorf("J3: cover is %s", got)
	}
}

// Headings that name two things of which the cells tell one, and cells that only look
// parted, stay as they are.
func TestNotCombined(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane / primer | Base | Installed | Overlap; end dams | Remarks
J1 | SB-4 | CMU | 6 Apr 2026 - 9 Apr 2026 | 75 mm; dams 50 mm | -
J2 | SB-4 | CMU / parge | 8 Apr 2026 - 12 Apr 2026 | 75 mm; no dams at the jambs | -
J3 | SB-4 (with WP-9 / WP-8) | CMU | 14 Apr 2026 | 75 mm; dams 25 mm | -`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open | Primer
SB-4 | SBS-modified asphalt self-adhered sheet | 40 | 60 | WP-9
WP-8 | solvent-based rubber primer | 20 | - | -
WP-9 | water-based acrylic primer | 40 | - | -`})
	for _, mark := range []string{"J1", "J2", "J3"} {
		l := line(t, s, mark)
		if _, told := l.Texts["primer"]; told {
			t.Errorf("%s: primer %q", mark, l.Texts["primer"])
		}
		if l.Figures["lap_mm"].Min == nil || *l.Figures["lap_mm"].Min != 75 {
			t.Errorf("%s: lap %+v", mark, l.Figures["lap_mm"])
		}
	}
	if got := line(t, s, "J1").Dates["install"]; got.State != "span" || got.To != "2026-04-09" {
		t.Errorf("install %+v", got)
	}
	if dam := line(t, s, "J3").Figures["end_dam_mm"]; dam.Min == nil || *dam.Min != 25 {
		t.Errorf("end dam %+v", dam)
	}
}

// What is stuck to and what it is primed with may share a column; a primer without it is
// said to be none, and a stroke within one name parts nothing.
func TestSubstrateBesidePrimer(t *testing.T) {
	for _, heading := range []string{"Substrate / primer", "Backing / Primer", "Primer / substrate"} {
		cells := [][2]string{{"CMU", "PR-1"}, {"plywood", "PR-1"}, {"concrete", "none"}, {"CMU", "PR-1"}}
		grid := "Mark | Membrane | " + heading + " | Lap\n"
		for i, c := range cells {
			if strings.HasPrefix(heading, "Primer") {
				c[0], c[1] = c[1], c[0]
			}
			grid += fmt.Sprintf("A%d | SBS sheet | %s / %s | 3 in.\n", i+1, c[0], c[1])
		}
		s := readPages(t, page{name: "S", grid: grid}, page{name: "P", grid: "Tag | Type | Apply min °F\nPR-1 | water-based acrylic primer | 40\nFB-2 | acrylic fluid membrane | 40"})
		for mark, want := range map[string]string{"A1": "CMU|PR-1", "A3": "concrete|none"} {
			l := line(t, s, mark)
			if got := l.Texts["substrate"] + "|" + l.Texts["primer"]; got != want {
				t.Errorf("%s: %s is %q, want %q", heading, mark, got, want)
			}
		}
	}
	s := read(t, "Mark | Membrane | Substrate | Lap\nA1 | SBS sheet | plywood / OSB | 3 in.\nA2 | SBS sheet | CMU / concrete | 3 in.")
	if got := line(t, s, "A1").Texts["primer"]; got != "" {
		t.Errorf("primer %q", got)
	}
}

// What a sheet goes on and its primer may be told in one column, parted by another sign
// than its heading has; a cell that tells no primer tells the bed. A sign for the number
// heads marks.
func TestBedWithItsPrimer(t *testing.T) {
	s := read(t, `
# | Sheet | Laid on, with primer | Installed | Covered
1 | SBS sheet | block / acrylic primer | 2027-05-03 | 2027-05-20
2 | SBS sheet | gypsum sheathing / no primer | 2027-05-04 | 2027-05-20
3 | SBS sheet | plywood | 2027-05-05 | 2027-05-20
4 | SBS sheet | concrete / acrylic primer | 2027-05-06 | 2027-05-20`)
	for i, want := range [][2]string{{"block", "acrylic primer"}, {"gypsum sheathing", "no primer"}, {"plywood", ""}, {"concrete", "acrylic primer"}} {
		if l := &s.Lines[i]; l.Mark != fmt.Sprint(i+1) || l.Texts["substrate"] != want[0] || l.Texts["primer"] != want[1] {
			t.Errorf("%q lies on %q over %q, want %q", l.Mark, l.Texts["substrate"], l.Texts["primer"], want)
		}
	}
}

// Under a heading for what layers go on and their primers, of which few rows have one, the
// column is of what they go on, and a primer is told where its cell names one.
func TestBedsAndFewPrimers(t *testing.T) {
	s := read(t, "Mark | Component | Applied over; primer | Install | Cover | Description of product / notes\n"+
		"A1 | Clay brick | ties | 2027-09-06 | | laid in the summer after the frames are in\n"+
		"A2 | Mineral wool | against the membrane | 2027-08-30 | 2027-09-06 | butted with joints tight and held by the clips\n"+
		"A3 | SBS sheet | Concrete block; solvent-borne primer | 2027-07-26 | 2027-08-30 | rolled on the day it is laid\n"+
		"A4 | Concrete block | footing | 2027-05-03 | | struck flush before the sheet is laid\n")
	if got := slots(s.Reading.Tables[0]); got != "mark material substrate install cover remark" {
		t.Errorf("columns %q", got)
	}
	l := line(t, s, "A3")
	if items(l, "substrate") != "concrete-masonry" || items(l, "primer") != "solvent-primer" {
		t.Errorf("bed %q, primer %q", items(l, "substrate"), items(l, "primer"))
	}
}

// The days that a sheet may stay open and the day on which it is covered may share a column,
// in either order; a cell with one of the two tells that, and one without a count keeps its
// words.
func TestDaysBesideCover(t *testing.T) {
	grid := "Mark | Membrane | Base | Set on | %s\nQ1 | SBS sheet | CMU | 2027-05-03 | %s\nQ2 | SBS sheet | CMU | 2027-05-04 | %s\n" +
		"Q3 | SBS sheet | CMU | 2027-05-05 | %s\nQ4 | SBS sheet | CMU | 2027-05-06 | %s\nQ5 | EPDM sheet | CMU | 2027-05-07 | stays exposed\nQ6 | SBS sheet | CMU | 2027-05-10 | %s"
	for heading, cells := range map[string][]any{
		"Sun days allowed / clad by":   {"45 d / clad 9 Jun 2027", "6 weeks / clad 23 Jul 2027", "clad 1 Jun 2027", "60 d", "30 d / clad 9 Jun 2027"},
		"Max days open; covered":       {"45; 2027-06-09", "42; 23 Jul 2027", "2027-06-01", "60", "30; 9 Jun 2027"},
		"UV limit, days -> covered by": {"45 -> 2027-06-09", "42 -> 2027-07-23", "2027-06-01", "60", "30 -> 2027-06-09"},
	} {
		s := read(t, fmt.Sprintf(grid, append([]any{heading}, cells...)...))
		for mark, want := range map[string]string{"Q1": "45 2027-06-09", "Q2": "42 2027-07-23", "Q3": "- 2027-06-01", "Q4": "60 ", "Q5": "- "} {
			l, days := line(t, s, mark), "-"
			if f, ok := l.Figures["exposure_days"]; ok && f.Max != nil {
				days = fmt.Sprint(*f.Max)
			}
			if got := days + " " + l.Dates["cover"].From; got != want {
				t.Errorf("%s: %s tells %q, want %q", heading, mark, got, want)
			}
		}
	}
	s := read(t, "Mark | Membrane | Base | Set on | Max days open / covered by\n"+
		"Q1 | SBS sheet | CMU | 2027-05-03 | 30 d / brick\nQ2 | SBS sheet | CMU | 2027-05-04 | 30 d / stone")
	if l := line(t, s, "Q1"); l.Dates["cover"].From != "" || *l.Figures["exposure_days"].Max != 30 {
		t.Errorf("cover %+v, days %+v", l.Dates["cover"], l.Figures["exposure_days"])
	}
}

// The thickness of a sheet and its permeance may share a column, each bare figure in its unit;
// a fraction of an inch is one figure.
func TestThicknessBesidePermeance(t *testing.T) {
	s := read(t, "Mark | Membrane | Base | Primer | Mils / perms\nQ1 | SBS sheet | CMU | none | 40 mil / 0.05\nQ2 | acrylic sheet | CMU | none | 20 mil / 14")
	if v, ok := line(t, s, "Q2").Figures["vapor_ng"]; !ok || v.Min == nil || *v.Min < 800 || *v.Min > 802 {
		t.Errorf("vapor %+v, want 801", v)
	}
	s = read(t, "Mark | Membrane | Base | Primer | Thickness, in\nQ1 | SBS sheet | CMU | none | 1/16\nQ2 | SBS sheet | CMU | none | 3/32")
	if _, ok := line(t, s, "Q1").Figures["vapor_ng"]; ok {
		t.Error("a fraction tells a permeance")
	}
}
