package schedule_test

import "testing"

// Days may be told in months and years; a column of the most may begin with "to" (common
// practice).
func TestMostInOtherWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer | Laps
W1 | FL-1 | CMU | none | min 3 in., rolled with the steel roller
W2 | FL-1 | CMU | none | slack loop over 3/4 in. rod, corners cut`}, page{name: "P", grid: `
Tag | Type | Application °C | Max days open | Service max °C
FL-1 | butyl sheet | 5 | 3 months | to 80
FL-2 | butyl sheet | 5 | 1 yr | good to 95
FL-3 | butyl sheet | 5 | 18 mo. | -20 to 70`})
	for tag, want := range map[string][2]float64{"FL-1": {90, 80}, "FL-2": {365, 95}, "FL-3": {545, 70}} {
		days, heat := product(t, s, tag).Figures["exposure_days"], product(t, s, tag).Figures["service_max_c"]
		if days.Max == nil || *days.Max != want[0] || heat.Max == nil || *heat.Max != want[1] {
			t.Errorf("%s: %v days and %v °C, want %v", tag, days.Max, heat.Max, want)
		}
	}
	if f := line(t, s, "W1").Figures["lap_mm"]; f.Min == nil || *f.Min < 76 || *f.Min > 77 {
		t.Errorf("lap %v, want 3 in.", f.Min)
	}
	if f, ok := line(t, s, "W2").Figures["lap_mm"]; ok {
		t.Errorf("a loop was read as a lap: %+v", f)
	}
}

// The material may come within the week that a Monday stands for, and not after the day
// that another weekday is.
func TestDaysOnSite(t *testing.T) {
	s := read(t, `
Mark | Membrane | Substrate | Arrived on site | Installed
M1 | SBS sheet | CMU | 2026-02-04 | 2026-02-02
M2 | SBS sheet | CMU | 2026-02-09 | 2026-02-02
M3 | SBS sheet | CMU | 2026-02-06 | 2026-02-05
M4 | SBS sheet | CMU | - | 2026-02-05
M5 | SBS sheet | CMU | 2026-02-05 | 2026-02-05`)
	for mark, late := range map[string]bool{"M1": false, "M2": true, "M3": true, "M4": false, "M5": false} {
		if span, ok := line(t, s, mark).Spans["site_days"]; ok == (mark == "M4") || span.Max < 0 != late {
			t.Errorf("%s: %+v", mark, span)
		}
	}
}
