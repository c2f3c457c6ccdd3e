package hygro

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func drawSection(t *rapid.T) section {
	n := rapid.IntRange(1, 6).Draw(t, "layers")
	var layers []LayerResult
	for range n {
		r := rapid.Float64Range(0, 4).Draw(t, "r")
		sd := math.Pow(10, rapid.Float64Range(-3, 3).Draw(t, "log sd"))
		layers = append(layers, LayerResult{Counted: true, R: &r, SdM: &sd})
	}
	return newSection(layers, 0.13, 0.04, 0.25, 0.001, 200)
}

func drawYear(t *rapid.T) (e Echo) {
	for m := range 12 {
		e.OutC[m] = rapid.Float64Range(-30, 40).Draw(t, "out")
		e.InC[m] = rapid.Float64Range(15, 30).Draw(t, "in")
		e.OutRH[m] = rapid.Float64Range(10, 100).Draw(t, "out rh")
		e.InRH[m] = rapid.Float64Range(10, 95).Draw(t, "in rh")
	}
	return e
}

// Whatever the section and the weather: no pressure above saturation, water
// only where saturated, no plane below empty, and what stays is what came in
// less what went out.
func TestBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, e := drawSection(t), drawYear(t)
		water := make([]float64, len(s.nodes))
		for m := range 12 {
			run := s.month(m, e, water)
			for i := range s.nodes {
				if over := run.pressure[i] - run.sat[i]; over > 1e-6*run.sat[i] {
					t.Fatalf("month %d node %d: %g Pa above saturation", m, i, over)
				}
				if water[i]+run.change[i] < -1e-9 || math.IsNaN(run.change[i]) {
					t.Fatalf("month %d node %d: holds %g, changes by %g", m, i, water[i], run.change[i])
				}
				if run.change[i] > 1e-3 && water[i] == 0 && run.potential[i] > 1e-3 && run.pressure[i] < run.sat[i]*(1-1e-6) {
					t.Fatalf("month %d node %d gathers below saturation", m, i)
				}
				water[i] += run.change[i]
			}
			checkFlux(t, s, run, m)
		}
	})
}

// checkFlux compares what stays at the rate of the start of the month with the
// flow at both faces, which is computed apart.
func checkFlux(t *rapid.T, s section, run monthRun, m int) {
	last := len(s.nodes) - 1
	in := s.delta0 * s.slope(run.pressure, last-1, last) * secondsOf(m)
	out := s.delta0 * s.slope(run.pressure, 0, 1) * secondsOf(m)
	size := math.Abs(in) + math.Abs(out)
	for _, g := range run.potential {
		size += math.Abs(g)
	}
	if gap := sum(run.potential) - (in - out); math.Abs(gap) > 1e-6*size+1e-6 {
		t.Fatalf("month %d: %g g/m2 out of balance of %g", m, gap, size)
	}
}

// Cutting a layer in two changes nothing.
func TestSplitLayer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := drawYear(t)
		var whole, split []LayerResult
		for range rapid.IntRange(1, 4).Draw(t, "layers") {
			// two steps of the same size whole or split, so that nodes agree
			r := rapid.Float64Range(0.26, 0.5).Draw(t, "r")
			sd := math.Pow(10, rapid.Float64Range(-2, 2).Draw(t, "log sd"))
			whole = append(whole, LayerResult{Counted: true, R: &r, SdM: &sd})
			half := LayerResult{Counted: true, R: ptr(r / 2), SdM: ptr(sd / 2)}
			split = append(split, half, half)
		}
		a, b := runYear(whole, e), runYear(split, e)
		for m := range a {
			if math.Abs(a[m]-b[m]) > 1e-6*(1+a[m]) {
				t.Fatalf("month %d: %g whole, %g split", m, a[m], b[m])
			}
		}
	})
}

func runYear(layers []LayerResult, e Echo) (held [12]float64) {
	s := newSection(layers, 0.13, 0.04, 0.25, 0.001, 200)
	water := make([]float64, len(s.nodes))
	for m := range 12 {
		for i, g := range s.month(m, e, water).change {
			water[i] = max(0, water[i]+g)
		}
		held[m] = sum(water)
	}
	return held
}
