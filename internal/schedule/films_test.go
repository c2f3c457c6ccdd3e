package schedule_test

import (
	"math"
	"testing"
)

// A column of what was read may give the film wet and dry, with the unit in its
// heading alone; the wet one is no wet surface.
func TestFilmsReadWetAndDry(t *testing.T) {
	for cell, want := range map[string]float64{"52 wet / 30 dry": 0.762, "700 µm dry": 0.7, "40 wet": 0, "21 psi": 0} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Gauge reading, mils
D1 | fluid-applied acrylic membrane | CMU | none | ` + cell + `
D2 | fluid-applied acrylic membrane | CMU | none | 50 wet / 29 dry`})
		l := line(t, s, "D1")
		got := 0.0
		if f, ok := l.Figures["film_mm"]; ok && f.Min != nil {
			got = *f.Min
		}
		if math.Abs(got-want) > 0.001 {
			t.Errorf("%s: %v mm, want %v", cell, got, want)
		}
		if len(l.Signals) > 0 {
			t.Errorf("%s: heard %+v", cell, l.Signals)
		}
	}
}
