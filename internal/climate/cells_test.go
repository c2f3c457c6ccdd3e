package climate

import (
	"fmt"
	"math"
	"sort"
	"testing"
	"time"
)

// cell is one comparison: a series, a month, a limit.
type cell struct {
	group, place string
	month        int
	limit        float64
	got, want    float64
	climate      string
	site         *Site
	anomaly      float64 // how far the series' month lay from the normal, °C
	shifted      float64 // got, with the normals moved by the anomaly
	ownTime      float64 // got, with the normals of the series' own time
}

func (c cell) err() float64 { return c.got - c.want }

// telling leaves out cells in which both sides are all or nothing, since they
// would only flatter the mean.
func (c cell) telling() bool {
	return c.got > 0.01 && c.got < 0.99 || c.want > 0.01 && c.want < 0.99
}

type tally struct {
	n        int
	abs, sum float64
	worst    cell
}

func (a *tally) add(c cell) {
	a.n++
	a.abs += math.Abs(c.err())
	a.sum += c.err()
	if math.Abs(c.err()) > math.Abs(a.worst.err()) {
		a.worst = c
	}
}

func (a tally) String() string {
	return fmt.Sprintf("%5d cells, mean error %.3f, bias %+.3f, worst %+.2f (%s %s, %s, %g °C: %.2f, observed %.2f)",
		a.n, a.abs/float64(a.n), a.sum/float64(a.n), a.worst.err(), a.worst.place, a.worst.group,
		time.Month(a.worst.month).String()[:3], a.worst.limit, a.worst.got, a.worst.want)
}

func group(cells []cell, by func(cell) string) (map[string]*tally, []string) {
	g := map[string]*tally{}
	for _, c := range cells {
		if !c.telling() {
			continue
		}
		k := by(c)
		if g[k] == nil {
			g[k] = &tally{}
		}
		g[k].add(c)
	}
	var keys []string
	for k := range g {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return g, keys
}

func table(t *testing.T, title string, cells []cell, by func(cell) string) map[string]*tally {
	t.Helper()
	g, keys := group(cells, by)
	t.Log(title)
	for _, k := range keys {
		t.Logf("  %-28s %s", k, g[k])
	}
	return g
}
