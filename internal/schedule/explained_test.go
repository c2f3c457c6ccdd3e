package schedule_test

import (
	"strings"
	"testing"
)

// filled writes one word into every gap of a grid.
func filled(grid, word string) string { return strings.ReplaceAll(grid, "%s", word) }

// Notes may explain the headings, alone or several together: with what stands under
// them, or with the unit of their figures.
func TestNotesExplainHeadings(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | PRM | Lap | Q1 | Placed | Q2 | Q3
D1 | BT-1 | plywood | none | 60 | 4 | @2026-03-02 | brick | @2026-03-09
D2 | BT-1 | CMU | none | 60 | -3 | @2026-03-03 | cedar siding | @2026-03-10

Q1 = deck at start of shift, in C. Lap in mm, Q2 / Q3 = covered with and covered on. Zone = north
Brick in spring, not in frost`}, page{name: "P", grid: `
Tag | Type | PM | Vap | Keep off | Max days open
BT-1 | butyl sheet | -5 | 12 | coal tar | 60

Vap in ng/(Pa·s·m²). PM = lowest application temperature, C`})
	l := line(t, s, "D2")
	if f := l.Figures["reading_surface_c"]; f.Min == nil || *f.Min != -3 {
		t.Errorf("reading %+v, want -3 °C of the face", f)
	}
	if f := l.Figures["lap_mm"]; f.Min == nil || *f.Min != 60 {
		t.Errorf("lap %+v, want 60 mm", f)
	}
	if l.Texts["front"] != "cedar siding" && l.Texts["touches"] != "cedar siding" || l.Dates["cover"].From != "2026-03-10" {
		t.Errorf("cover %q on %+v", l.Texts["front"], l.Dates["cover"])
	}
	p := product(t, s, "BT-1")
	if f := p.Figures["vapor_ng"]; f.Min == nil || *f.Min != 12 {
		t.Errorf("permeance %+v, want 12 ng", f)
	}
	if f := p.Figures["apply_min_c"]; f.Min == nil || *f.Min != -5 {
		t.Errorf("least temperature %+v, want -5 °C", f)
	}
}

// A note on another sheet may call a column by what stands in the lower row of its
// heading, where no other column has that there.
func TestNotesExplainLowerHeadings(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Ref | Sheet | | | Metal | | Air °C | | Work
No | Tag | Under | Lap mm | Tag | TE | Dy | Af | On
D1 | BT-1 | plywood | 60 | ST-1 | N | 7 | -3 | @2026-03-02
D2 | BT-1 | CMU | 60 | ST-1 | Y | 9 | 2 | @2026-03-03
D3 | BT-1 | CMU | 60 | - | - | 9 | 3 | @2026-03-04`, merges: []string{"B1:D1", "E1:F1", "G1:H1"}}, page{name: "P", grid: `
Tag | Type | Min apply °C | Keep off
BT-1 | butyl sheet | -5 | coal tar
ST-1 | stainless steel flashing | -20 | wet mortar`}, page{name: "Notes", grid: `
TE = stop ends, Y / N / - (none asked)
Dy / Af = low during the day / night after, from the forecast. Tag = as the product list`})
	l := line(t, s, "D1")
	if got := l.Texts["end_dam"]; got != "N" {
		t.Errorf("end dams %q, want N", got)
	}
	if f := l.Figures["reading_night_c"]; f.Min == nil || *f.Min != -3 {
		t.Errorf("night %+v, want -3 °C", f)
	}
	if f := l.Figures["reading_air_c"]; f.Min == nil || *f.Min != 7 {
		t.Errorf("air %+v, want 7 °C", f)
	}
}

// A tag in the rows above a table is no unit of its figures.
func TestTagIsNoUnit(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap mm
D1 | M3 | plywood | none | 60
D2 | M3 | CMU | none | 60

Tag | Type | Min apply °C | Air
M3 | butyl sheet | -5 | 0.02`})
	if f := product(t, s, "M3").Figures["air_lsm2"]; f.Unit == "m³/(h·m²)" {
		t.Errorf("air %+v", f)
	}
}

// A short heading is of substrates where its cells name some, and of firms where
// they do not.
func TestDoubtfulHeading(t *testing.T) {
	const rows = `
Mark | Membrane | SUB | Primer | Touch | Placed | Cover
D1 | butyl sheet | %s | none | brick | @2026-03-02 | cedar siding
D2 | butyl sheet | %s | none | brick | @2026-03-03 | cedar siding
D3 | butyl sheet | %s | none | brick | @2026-03-04 | cedar siding`
	for cell, want := range map[string]string{"CMU": "CMU", "Harrow & Pike": ""} {
		l := line(t, readPages(t, page{name: "S", grid: filled(rows, cell)}), "D2")
		if l.Texts["substrate"] != want || l.Texts["touches"] != "brick" || l.Texts["front"] != "cedar siding" {
			t.Errorf("%s: %v", cell, l.Texts)
		}
	}
}

// Data headed "base" tells what a product is made of, or what it goes on.
func TestBaseOfData(t *testing.T) {
	const data = `
Mark | Membrane | Substrate | Primer | Lap mm
D1 | KB-1 | OSB sheathing | none | 60

Tag | Type | Base | Min apply °C | Service max °C
KB-1 | self-adhered sheet | %s | -5 | 80
KB-2 | self-adhered sheet | %s | -5 | 80`
	for cell, want := range map[string]string{"SBS bitumen": "", "ply, CMU": "osb-plywood-sheathing unsaid, concrete-masonry unsaid"} {
		p := product(t, readPages(t, page{name: "S", grid: filled(data, cell)}), "KB-1")
		if got := accepted(p); got != want {
			t.Errorf("%s: accepts %q, want %q", cell, got, want)
		}
	}
}

// The short forms of a list of substrates are read in the rows too, and their words stay.
func TestShortFormsOfBeds(t *testing.T) {
	l := line(t, readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap mm
D1 | butyl sheet | ply + galv | none | 60`}), "D1")
	var got []string
	for _, it := range l.Items {
		if it.Slot == "substrate" {
			got = append(got, it.Family)
		}
	}
	if strings.Join(got, " ") != "osb-plywood-sheathing galvanized-sheet" || l.Texts["substrate"] != "ply + galv" {
		t.Errorf("%v of %q", got, l.Texts["substrate"])
	}
}

// What a note says around a bracket is one saying.
func TestNoteAroundBracket(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap mm
D1 | butyl sheet | plywood | none | 60

One vapor retarder (0.3 perm or tighter) per assembly.`})
	for _, said := range s.Project.Signals {
		if said.ID == "one_tight_layer" && !said.No {
			return
		}
	}
	t.Errorf("signals %+v", s.Project.Signals)
}

// A note may put the heading that it explains between quotes.
func TestNotesExplainQuotedHeadings(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap mm | Placed | Covered
D1 | BT-1 | plywood | none | 60 | @2026-03-02 | @2026-03-09`}, page{name: "P", grid: `
"TE" is the least for air and face. 'Open' = longest in the sun, "PM" = lowest application temperature, C

Tag | Type | PM | Open | Keep off
BT-1 | butyl sheet | -5 | 60 | coal tar`})
	p := product(t, s, "BT-1")
	if f := p.Figures["exposure_days"]; f.Min == nil || *f.Min != 60 {
		t.Errorf("days %+v, want 60", f)
	}
	if f := p.Figures["apply_min_c"]; f.Min == nil || *f.Min != -5 {
		t.Errorf("least temperature %+v, want -5 °C", f)
	}
}

// The face of the building on which the work is has a column of its own, and is no bed.
func TestFaceAndWhereIsPlace(t *testing.T) {
	s := read(t, `
Mark | Face / where | Membrane | On | Primer | Installed
D1 | N, grids 1-4 | R-1 | CMU | PR-1 | @2026-06-02
D2 | E, stair tower | R-1 | plywood | none | @2026-06-09`)
	if l := line(t, s, "D2"); l.Place != "E, stair tower" || l.Texts["substrate"] != "plywood" {
		t.Errorf("place %q, on %q", l.Place, l.Texts["substrate"])
	}
}
