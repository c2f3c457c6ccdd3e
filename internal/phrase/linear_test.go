package phrase

import (
	"strings"
	"testing"
	"time"
)

// TestLinear reads long texts of awkward repeats. Ten times the text may take
// some twenty times as long, a square would take a hundred.
func TestLinear(t *testing.T) {
	r := reader(t)
	for _, unit := range []string{"1-", "40 mil (1.0 mm) ", "10 to ", "wk of ", "mid ", "no more than ", "4/", "3/9/2026, ", "(", "not ", "a, ", "min. 40 F max. ", "heat .. ", "w/ ", "R-01/02", "laps over and ", "\n", "7 5/8 x ", "poured 3/9/2026 "} {
		times := [2]time.Duration{}
		for i, n := range []int{500, 5000} {
			text := strings.Repeat(unit, n)
			start := time.Now()
			r.Quantities(text, "length:mm")
			r.Dates(text, MonthFirst, 2026)
			r.Read(text, testLexicon(), Options{})
			times[i] = time.Since(start)
		}
		if times[1] > 40*times[0]+100*time.Millisecond {
			t.Errorf("%q: %v for ten times the text of %v", unit, times[1], times[0])
		}
		if testing.Verbose() {
			t.Logf("%-20q %v %v", unit, times[0], times[1])
		}
	}
}
