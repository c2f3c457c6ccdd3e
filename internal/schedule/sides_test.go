package schedule_test

import (
	"slices"
	"testing"

	"abut/internal/schedule"
)

// twoSides is a register of junctions with a substrate and a primer for each
// side, dates and readings under headings in two tiers (common practice).
var twoSides = page{name: "Register", merges: []string{"B1:C1", "D1:E1", "G1:H1", "I1:J1"}, grid: `
No. | Wall side | | Frame side | | Membrane | Installed | | Covered | | Girth mm | Side lap | Notes
 | Substrate | Pr. | Substrate | Pr. | | On | Surface / air °C | With | Date | | |
1 | CMU | W-2 | steel frame | W-1 | T-1 | Tue 13-Jan-26 | 4 / -1 | brick | 3-Feb-26 | 300 (12 in.) | 75 | bead clear of it
2 | plywood | – | steel frame | W-1 | T-1 | Thu 15-Jan | 6 / 5 T | brick | Wed 4-Feb | 250 (12 in.) | 75 in B-1 |
3 | CMU | – | plywood | – | T-1 | 20-Jan-26 | 9 / 8 | brick | 5-Feb-26 | 250 (10 in.) | 50 | `}

var twoSidesData = page{name: "Data", grid: `
Tag | Type | Min apply °C | Goes on | Primer | VOC g/L
T-1 | butyl membrane | -5 | CMU, plywood, metals | W-1, W-2 (5 °C up, not metal) |
W-1 | solvent primer | -10 | | | 300
W-2 | water-borne primer | 4 | | | 30
B-1 | butyl sealant | -5 | | | 40`}

var twoSidesNotes = page{name: "Notes", grid: `
1 | VOC, g/L: sealants and adhesives 200 maximum; primers 320 max. No exceptions.
2 | T = tented and heated by the contractor.`}

func TestSidesAndTiers(t *testing.T) {
	s := readPages(t, twoSides, twoSidesData, twoSidesNotes)
	one, two := line(t, s, "1"), line(t, s, "2")
	for slot, want := range map[string]string{"install": "2026-01-13", "cover": "2026-02-03"} {
		if got := one.Dates[slot].From; got != want {
			t.Errorf("%s %q, want %s", slot, got, want)
		}
	}
	for slot, want := range map[string]string{"install": "2026-01-15", "cover": "2026-02-04"} {
		if got := two.Dates[slot].From; got != want {
			t.Errorf("%s %q, want %s: the year is that of the row above", slot, got, want)
		}
	}
	if f := one.Figures["reading_surface_c"]; !near(f.Min, 4) || !near(f.Max, 4) {
		t.Errorf("surface %+v, want 4", f)
	}
	if f := one.Figures["reading_air_c"]; !near(f.Min, -1) || !near(f.Max, -1) {
		t.Errorf("air %+v, want -1", f)
	}
	primes := map[string]string{}
	for _, it := range one.Items {
		if it.Slot == "primer" {
			primes[it.Tag] = it.Primes
		}
	}
	if primes["W-2"] != "B3" || primes["W-1"] != "D3" {
		t.Errorf("primers %v, want W-2 for B3 and W-1 for D3", primes)
	}
	if got := line(t, s, "3").Texts["primer"]; got != "–" {
		t.Errorf("primer %q, want a dash: neither side has one", got)
	}
	if !slices.ContainsFunc(two.Signals, func(s schedule.Said) bool { return s.ID == "heated" && s.At.Cell == "H4" }) {
		t.Errorf("signals %+v, want heated: T stands behind the readings", two.Signals)
	}
}

func TestUnitsBesideAndInBrackets(t *testing.T) {
	s := readPages(t, twoSides, twoSidesData, twoSidesNotes)
	for mark, want := range map[string]bool{"1": false, "2": true, "3": false} {
		if f := line(t, s, mark).Figures["width_mm"]; f.Disagree != want {
			t.Errorf("%s: %+v, disagrees: want %v", mark, f, want)
		}
	}
	for mark, want := range map[string]float64{"1": 75, "2": 75, "3": 50} {
		if f := line(t, s, mark).Figures["lap_mm"]; !near(f.Min, want) {
			t.Errorf("%s: lap %+v, want %g mm", mark, f, want)
		}
	}
}

func TestPrimerBarredInBrackets(t *testing.T) {
	s := readPages(t, twoSides, twoSidesData, twoSidesNotes)
	for _, a := range product(t, s, "T-1").Accepts {
		want := []string{"W-1", "W-2"}
		if a.Text == "metals" {
			want = []string{"W-1"}
		}
		if !slices.Equal(a.Primers, want) {
			t.Errorf("%s: %v, want %v", a.Text, a.Primers, want)
		}
	}
}

func TestLimitsOfAListWithALead(t *testing.T) {
	s := readPages(t, twoSides, twoSidesData, twoSidesNotes)
	got := map[string]float64{}
	for _, l := range s.Project.Limits {
		if l.Kind == "voc_gl" && l.Max != nil {
			for _, role := range l.Roles {
				got[role] = *l.Max
			}
		}
	}
	if got["sealant"] != 200 || got["adhesive"] != 200 || got["primer"] != 320 {
		t.Errorf("limits %v, want 200 for sealants and adhesives, 320 for primers", got)
	}
}

// What a title block says of revision and author is no product, also where the
// schedule has the word.
func TestTitleBlockIsNoProduct(t *testing.T) {
	s := read(t, `
Quarry Bank School, Duluth MN | | | | Rev | C, 3 March 2026
Openings | | | | Checked | n.d.

Mark | Membrane | Substrate | Primer | Lap mm | Place
1 | butyl tape | CMU | none | 75 | rev. door
2 | butyl tape | CMU | none | 75 | sill
`)
	if len(s.Products) > 0 {
		t.Errorf("products %+v, want none", s.Products)
	}
}

// The row's own product is its sheet, and what brackets say of a tag is no second
// material.
func TestClearOfTheProduct(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Sealant | Touches
1 | BT-3 | CMU | none | SX-2, frame to the brick angle, 25 mm clear of BT-3 | -
2 | BT-3 | CMU | none | - | RF-5 (EPDM) stops under the apron, 50 mm clear
3 | BT-3 | CMU | none | - | RF-5 (EPDM gasket below) | `}, page{name: "P", grid: `
Tag | Type | Thickness | Keep off
BT-3 | butyl tape | 1 mm | silicone
RF-5 | EPDM roof membrane | 1.5 mm | -
SX-2 | neutral cure silicone sealant | - | -`})
	for _, tc := range []struct{ mark, tag, relation, items string }{
		{"1", "SX-2", "clear_of", ""},
		{"2", "RF-5", "clear_of", "RF-5"},
		{"3", "RF-5", "", "RF-5 epdm-gasket"},
	} {
		l := line(t, s, tc.mark)
		for _, it := range l.Items {
			if it.Tag == tc.tag && it.Relation != tc.relation {
				t.Errorf("%s: %s is %q, want %q", tc.mark, tc.tag, it.Relation, tc.relation)
			}
		}
		if got := items(l, "touches"); got != tc.items {
			t.Errorf("%s: touches %q, want %q", tc.mark, got, tc.items)
		}
	}
}

// What goes over the sheet is not what it goes over.
func TestGoesOverIt(t *testing.T) {
	s := read(t, `
Mark | Membrane | Substrate | Primer | Goes over it | Remarks
1 | butyl tape | CMU | none | XPS | -
2 | butyl tape | CMU | none | mineral wool | -
`)
	l := line(t, s, "1")
	if got := items(l, "front") + "/" + items(l, "substrate"); got != "xps/concrete-masonry" {
		t.Errorf("front and substrate %s", got)
	}
}

func TestClearOfTheSheet(t *testing.T) {
	s := read(t, `
Mark | Membrane | Substrate | Primer | Touches
1 | butyl tape | CMU | none | EPDM gasket at the frame only, well clear of the membrane
2 | butyl tape | CMU | none | EPDM gasket at the frame, copper clip clear of the membrane
`)
	for mark, want := range map[string]string{"1": "clear_of", "2": ""} {
		for _, it := range line(t, s, mark).Items {
			if it.Family == "epdm-gasket" && it.Relation != want {
				t.Errorf("%s: %q, want %q", mark, it.Relation, want)
			}
		}
	}
}

// What is set in a lap and clear of the sheet is the bead, not the metal of the lap.
func TestClearInTheLap(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap mm | Remarks
1 | BT-3 | CMU | none | 75 | SX-2 in metal joint on cover plate, 40 clr BT-3
2 | BT-3 | CMU | none | 75 | SX-2 in metal joint on cover plate`}, page{name: "P", grid: `
Tag | Type | Thickness | Keep off
BT-3 | SBS self-adhered sheet | 1 mm | solvent
SX-2 | solvent-release butyl sealant | - | -`})
	for mark, want := range map[string]string{"1": "clear_of", "2": "set_in"} {
		for _, it := range line(t, s, mark).Items {
			if it.Tag == "SX-2" && it.Relation != want {
				t.Errorf("%s: the bead is %q, want %q", mark, it.Relation, want)
			}
		}
	}
}
