package schedule_test

import (
	"fmt"
	"testing"
)

// TestFilmsByPlace: data that tells one film for flat work and another for upright
// work is a range; a wet film beside a dry one, and a second unit, are none.
func TestFilmsByPlace(t *testing.T) {
	for cell, want := range map[string]string{
		"2.3 mm horizontal, 1.5 mm vertical":    "1.5 2.3",
		"120 mil (3 mm) decks / 60 mil upturns": "1.5 3.0",
		"60 mil (1.5 mm)":                       "1.5 1.5",
		"30 mil dry / 45 mil wet":               "0.8 0.8",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | LM-1 | concrete | none | brick
D2 | LM-1 | CMU | none | brick`}, page{name: "P", grid: "Tag | Type | Thickness | Apply min °F\nLM-1 | urethane membrane | " + cell + " | 40\nTP-1 | butyl tape | 1 mm | 20"})
		f := product(t, s, "LM-1").Figures["thickness_mm"]
		if f.Min == nil || f.Max == nil {
			t.Errorf("%s: %+v", cell, f)
			continue
		}
		if got := fmt.Sprintf("%.1f %.1f", *f.Min, *f.Max); got != want {
			t.Errorf("%s: %s, want %s", cell, got, want)
		}
	}
}

// TestFilmsOfNotes: each figure of a note holds for the place right after it.
func TestFilmsOfNotes(t *testing.T) {
	s := read(t, oneWall+"Film: hot rubber 180 mil on decks and slabs, 120 mil on upstands, as gauged.\n")
	got := map[string]string{}
	for _, l := range s.Project.Limits {
		if l.Kind == "thickness_mm" && l.Min != nil {
			got[l.Scope] = fmt.Sprintf("%.2f", *l.Min)
		}
	}
	if len(got) != 2 || got["flat"] != "4.57" || got["upright"] != "3.05" {
		t.Errorf("got %v", got)
	}
}

// TestKindFromHead: the heading over rows of product data tells the kind where the
// words tell only the stuff; one of several kinds tells none.
func TestKindFromHead(t *testing.T) {
	for head, want := range map[string]string{
		"Membranes":            "membrane",
		"Sealants":             "sealant",
		"Membranes & sealants": "sealant", // as without a heading
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | LM-1 | concrete | none | brick
D2 | LM-1 | CMU | none | brick`}, page{name: "P", grid: "Tag | Kind | Apply min °F | Max days open\n" + head + "\nLM-1 | two-component polyurethane | 40 | 30\nTP-1 | butyl tape | 20 | 60"})
		if p := product(t, s, "LM-1"); p.Class != want {
			t.Errorf("under %q: %s, want %s", head, p.Class, want)
		}
		if p := product(t, s, "TP-1"); p.Class != "tape" {
			t.Errorf("under %q the tape is a %s", head, p.Class)
		}
	}
}

// TestTestDays: a remark tells when the work was flooded, also by a short word that
// the notes explain with figures of their own.
func TestTestDays(t *testing.T) {
	for remark, want := range map[string]string{
		"Water test 3 Aug 2026 to 5 Aug 2026, dry below": "2026-08-03 2026-08-05",
		"ponded Aug 3, 2026":                             "2026-08-03 2026-08-03",
		"WTR 8/3/2026, no leaks":                         "2026-08-03 2026-08-03",
		"delivered Aug 3, 2026":                          " ",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Installed | Covered | Rmks
D1 | SBS sheet | concrete | none | @2026-07-20 | @2026-08-10 | ` + remark},
			page{name: "N", grid: "WTR = ponding test, 50 mm of water, 24 hours"})
		d := line(t, s, "D1").Dates["inspected"]
		if got := d.From + " " + d.To; got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

// TestFirstUnit: of two units in a heading the figures are in the first.
func TestFirstUnit(t *testing.T) {
	for heading, want := range map[string]float64{"WVP ng (perm)": 12, "Perms (ng)": 686.562} {
		for range 20 { // a map would tell now one, now the other
			s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | LM-1 | concrete | none | brick
D2 | LM-1 | CMU | none | brick`}, page{name: "P", grid: "Tag | Kind | " + heading + " | Apply min °F\nLM-1 | butyl sheet | 12 | 40\nTP-1 | butyl tape | 9 | 20"})
			if f := product(t, s, "LM-1").Figures["vapor_ng"]; !near(f.Min, want) {
				t.Fatalf("%s: %v, want %v", heading, value(f.Min), want)
			}
		}
	}
}

// TestTwoUnits: a cell that tells its figure in both units of the heading tells
// whether they agree.
func TestTwoUnits(t *testing.T) {
	for cell, want := range map[string]bool{"2.9 (0.05)": false, "172 (3)": false, "1700 (3.0)": true, "17 (test A)": false} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | LM-1 | concrete | none | brick
D2 | LM-1 | CMU | none | brick`}, page{name: "P", grid: "Tag | Kind | WVP ng (perm) | Apply min °F\nLM-1 | butyl sheet | " + cell + " | 40\nTP-1 | butyl tape | 9 | 20"})
		if f := product(t, s, "LM-1").Figures["vapor_ng"]; f.Disagree != want || f.Min == nil {
			t.Errorf("%s: %+v", cell, f)
		}
	}
}

// TestFilmsWetFirst: of a film told wet and then dry, the dry one is that of the data
// and that of the row, whether or not brackets tell a second unit.
func TestFilmsWetFirst(t *testing.T) {
	for cell, want := range map[string]string{
		"45 mil wet / 30 mil dry":                    "0.8",
		"60 mils (1.5 mm) wet, 35 mils (0.9 mm) dry": "0.9",
		"1.2 mm [47 mil] WFT; 0.7 mm [28 mil] DFT":   "0.7",
		"60 mils [1.5 mm] wet":                       "1.5",
		"30 mils [0.8 mm] dry, 50 mils [1.3 mm] wet": "0.8",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Remarks
D1 | LM-1 | concrete | none | brick | 60 mils [1.5 mm] wet, 35 mils [0.9 mm] dry
D2 | LM-1 | CMU | none | brick | two passes`}, page{name: "P", grid: "Tag | Type | Thickness | Apply min °F\nLM-1 | urethane membrane | " + cell + " | 40\nTP-1 | butyl tape | 1 mm | 20"})
		f := product(t, s, "LM-1").Figures["thickness_mm"]
		if f.Min == nil || fmt.Sprintf("%.1f", *f.Min) != want {
			t.Errorf("%s: %+v, want %s", cell, f, want)
		}
	}
}
