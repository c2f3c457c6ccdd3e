package schedule_test

import (
	"fmt"
	"strings"
	"testing"
)

// Of two columns of sheets the outer one, or the one of no side, is what the row is
// about; the inner one lies behind it. A column of inches or of days is none.
func TestSheetsOfTwoSides(t *testing.T) {
	for heads, want := range map[string]string{
		"Membrane ext. | Membrane int.": "material SBS sheet, behind polyethylene film",
		"Inner sheet | Outer sheet":     "behind SBS sheet, material polyethylene film",
		"Sheet | Sheet in":              "material SBS sheet, behind polyethylene film",
	} {
		s := read(t, "Mark | "+heads+` | Ground | Thk mm
1 | SBS sheet | polyethylene film | concrete | 1.5
2 | butyl sheet | - | plywood | 1.5`)
		got := []string{}
		for _, it := range line(t, s, "1").Items {
			if it.Slot != "substrate" {
				got = append(got, it.Slot+" "+it.Text)
			}
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %v, want %s", heads, got, want)
		}
	}
	s := read(t, `Mark | Sheet | Sheet (in.) | Substrate
1 | SBS sheet | 0.06 | concrete
2 | butyl sheet | 0.04 | plywood`)
	if f := line(t, s, "1"); f.Texts["behind"] != "" {
		t.Errorf("a thickness is no sheet: %v", f.Texts)
	}
}

// Vapor may be told as the layer of still air that resists as much, in tables and notes:
// its bounds are those of permeance turned round.
func TestAirLayers(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | sd [m] | Primer
1 | SBS sheet | concrete | 120 | none
2 | vapor-permeable membrane | plywood | 0,05 | none

Notes
Vapour-open foils: sd at most 0,2 m.
Polyethylene film: sd-value of 50 m or more.
Film inside, sd 2 m.`)
	for mark, want := range map[string]string{"1": "1.67", "2": "4000.00"} {
		f := line(t, s, mark).Figures["vapor_ng"]
		if f.Min == nil || fmt.Sprintf("%.2f", *f.Min) != want {
			t.Errorf("%s: %+v, want %s", mark, f, want)
		}
	}
	got := ""
	for _, l := range s.Project.Limits {
		switch {
		case l.Min != nil:
			got += fmt.Sprintf("min %.0f %v; ", *l.Min, l.Keys)
		case l.Max != nil:
			got += fmt.Sprintf("max %.0f %v; ", *l.Max, l.Keys)
		}
	}
	if want := "min 1000 [vapor-permeable]; max 4 [polyethylene-film]; "; got != want {
		t.Errorf("limits %s, want %s", got, want)
	}
}
