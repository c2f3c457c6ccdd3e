package schedule_test

import (
	"math"
	"testing"
)

// A column of temperatures of application may state both ends; the figures are usual
// ones of such sheets (common practice).
func TestBothEndsOfARange(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FL-1 | CMU | none`}, page{name: "P", grid: `
Tag | Type | Application °C | Service max °C
FL-1 | butyl sheet | -5 min., 30 max. | 80
FL-2 | butyl sheet | > 5 / < 35 | 80
FL-3 | butyl sheet | 5 min | 80
FL-4 | butyl sheet | 5 min; in service 90 max | 80
FL-5 | butyl sheet | -5 to 30 | 80`})
	for tag, want := range map[string]float64{"FL-1": 30, "FL-2": 35, "FL-3": math.NaN(), "FL-4": math.NaN(), "FL-5": 30} {
		f, ok := product(t, s, tag).Figures["apply_max_c"]
		if ok != !math.IsNaN(want) || ok && *f.Max != want {
			t.Errorf("%s goes on up to %v (stated %t), want %v", tag, f.Max, ok, want)
		}
	}
}

// A heading over primers and more does not make primers of what stands under it.
func TestHeadingOverPrimersAndMore(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FL-1 | CMU | PR-1`}, page{name: "P", grid: `
Tag | Description | Application °C | Open days
FL-1 | butyl sheet | 5 | 60
Primers & sealants
PR-1 | solvent-based rubber primer | 0 |
SL-1 | one-part polyurethane | 5 |
Primers
PR-2 | one-part polyurethane | 5 |`})
	for tag, want := range map[string]string{"PR-1": "primer", "SL-1": "sealant", "PR-2": "primer"} {
		if got := product(t, s, tag).Role; got != want {
			t.Errorf("%s is a %q, want %q", tag, got, want)
		}
	}
}

// Items that begin with tags of the product data are the materials of their rows.
func TestItemsLedByTags(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Item | Goes on | Primer | Lap
FL-1, 300 mm strip | CMU | PR-1 | 75 mm
FL-1 | plywood | none | 75 mm
FL-2 on FL-1 | concrete | PR-1 | back leg up 40 mm, 100 mm up each jamb
FL-2 | concrete | PR-1 | 75 mm
FL-3, 40 mils wet | sheathing | none | 75 mm`}, page{name: "P", grid: `
Tag | Type | Application °C | Open days | Air L/(s·m²), other
FL-1 | butyl sheet | 5 | 60 | 0.002
FL-2 | SBS flashing sheet | 5 | 60 | 0.01
FL-3 | acrylic fluid membrane | 5 | 90 | hose test passed
PR-1 | water-based primer | 5 | | 1 h to dry`})
	for i, want := range []string{"FL-1", "FL-1", "FL-2", "FL-2", "FL-3"} {
		if m := s.Lines[i].Main(); m == nil || m.Product != want {
			t.Errorf("row %d is of %+v, want %s", s.Lines[i].Row, m, want)
		}
	}
	if f, ok := s.Lines[2].Figures["lap_mm"]; ok {
		t.Errorf("lap %+v, want none: both figures are heights of what is turned up", f)
	}
	if f := s.Lines[4].Figures["thickness_mm"]; f.Min == nil || math.Abs(*f.Min-1.016) > 0.001 || f.Text != "40 mils wet" {
		t.Errorf("thickness %+v, want 40 mils wet", f)
	}
	if f := product(t, s, "FL-2").Figures["air_lsm2"]; f.Min == nil || *f.Min != 0.01 {
		t.Errorf("air permeance %+v, want 0.01", f)
	}
}

// Days that are known only by the dates under them are planned or done as others are;
// "cov" is the cover, and not what a coating gives off.
func TestPlannedAndDoneInShort(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer | Plan in | Plan cov | Actual in | Actual cov | Cov w/
W1 | FL-1 | CMU | none | 2026-05-04 | 2026-05-11 | 2026-05-06 | 2026-05-18 | wool, brick
W2 | FL-1 | CMU | none | 2026-05-05 | 2026-05-12 | 2026-05-07 | 2026-05-19 | wool, brick
W3 | FL-1 | CMU | none | 2026-05-06 | 2026-05-13 | | | wool, brick`}, page{name: "P", grid: `
Tag | Type | Application °C | Days open
FL-1 | butyl sheet | 5 | 60`})
	for mark, want := range map[string][2]string{"W1": {"2026-05-06", "2026-05-18"}, "W3": {"2026-05-06", "2026-05-13"}} {
		l := line(t, s, mark)
		if in, cov := l.Dates["install"].From, l.Dates["cover"].From; in != want[0] || cov != want[1] {
			t.Errorf("%s: put on %s, covered %s, want %v", mark, in, cov, want)
		}
	}
	if got := line(t, s, "W1").Texts["front"]; got != "wool, brick" {
		t.Errorf("covered with %q", got)
	}
}

// Air and face are both as warm as the least temperature to apply at, whichever of them
// a heading names.
func TestTemperatureToApplyOfAirAndFace(t *testing.T) {
	for heading, want := range map[string]string{
		"Lowest air/surface temp to apply, F":               "apply_min",
		"Least air and surface temperature for application": "apply_min",
		"Min air/substrate temp when installing":            "apply_min",
		"Install temp, lowest (air + surface)":              "apply_min",
		"Highest surface temp in service":                   "service_max",
		"Color of the surface":                              "",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Installed
A1 | SH-3 | plywood | PM-2 | @2026-04-13`}, page{name: "P", grid: `
Mark | SH-3 | PM-2
What it is | SBS sheet | primer, water-borne
Thickness | 40 mil | -
` + heading + ` | 40 | 35
Days it may stay open | 60 | 1`})
		cells := product(t, s, "SH-3").Cells
		for _, slot := range []string{"apply_min", "apply_max", "service_max"} {
			if _, is := cells[slot]; is != (slot == want) {
				t.Errorf("%q: %v, want %q alone", heading, cells, want)
			}
		}
	}
}

// "Done" beside "Planned" is the day of the work, where it is filled in; beside a start it
// is the end of the work.
func TestPlannedAndDoneOfOneWork(t *testing.T) {
	for heads, want := range map[string][2]string{
		"Planned | Done":        {"2026-05-06", "2026-05-06"},
		"Scheduled | Completed": {"2026-05-04", "2026-05-04"},
		"Install start | Done":  {"2026-05-04", "2026-05-06"},
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer | ` + heads + ` | Covered
W1 | FL-1 | CMU | none | 2026-05-04 | 2026-05-06 | 2026-05-18
W2 | FL-1 | CMU | none | 2026-05-05 | 2026-05-07 | 2026-05-19
W3 | FL-1 | CMU | none | 2026-05-06 | | 2026-05-20`}, page{name: "P", grid: `
Tag | Type | Application °C | Days open
FL-1 | butyl sheet | 5 | 60`})
		if l := line(t, s, "W1"); l.Dates["install"].From != want[0] {
			t.Errorf("%s: put on %s, want %v", heads, l.Dates["install"].From, want)
		}
	}
}
