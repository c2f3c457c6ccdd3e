package schedule_test

import (
	"math"
	"testing"
)

// The limit that holds with a primer is that of the rows that have it.
func TestLimitWithPrimer(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Placed
D1 | ZB-1 | plywood | ZP-2 | @2026-03-02
D2 | ZB-1 | plywood | ZP-1 | @2026-03-02
D3 | ZB-1 | plywood | none | @2026-03-02
D4 | ZB-2 | plywood | ZP-1 | @2026-03-02
D5 | ZB-2 | plywood | none | @2026-03-02`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open
ZB-1 | butyl sheet | 5 (-4 with ZP-2) | 90
ZB-2 | SBS sheet | 10, 0 over primer | 90
ZP-1 | solvent primer | -5 | 1
ZP-2 | solvent primer | -10 | 1`})
	for mark, want := range map[string]float64{"D1": -4, "D2": math.NaN(), "D3": math.NaN(), "D4": 0, "D5": math.NaN()} {
		f, ok := line(t, s, mark).Figures["primed_apply_min_c"]
		if ok == math.IsNaN(want) || ok && (f.Min == nil || *f.Min != want || f.At.Cell[0] != 'C') {
			t.Errorf("%s: %+v, want %v", mark, f, want)
		}
	}
}
