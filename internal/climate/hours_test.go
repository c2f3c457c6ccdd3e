package climate

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// hourFile is one series of hours by day, °C, NaN where none was taken.
type hourFile struct {
	name, station, region string
	stands                float64 // hours from a value's label to the time it was taken
	clock                 bool    // labels follow daylight-saving time
	days                  map[[2]int][24]float64
}

func readHours(t *testing.T, name string) hourFile {
	t.Helper()
	h := hourFile{name: strings.TrimSuffix(name, ".txt.gz"), days: map[[2]int][24]float64{}}
	for _, line := range packed(t, name) {
		if rest, ok := strings.CutPrefix(line, "# station: "); ok {
			h.station, h.region, _ = strings.Cut(rest, ",")
			continue
		}
		if strings.HasPrefix(line, "#") {
			h.readNote(line)
			continue
		}
		f := strings.SplitN(line, ",", 3)
		m, _ := strconv.Atoi(f[0])
		d, _ := strconv.Atoi(f[1])
		var v [24]float64
		for i, w := range strings.Split(f[2], " ") {
			v[i] = math.NaN()
			if x, err := strconv.Atoi(w); err == nil {
				v[i] = float64(x) / 10
			}
		}
		h.days[[2]int{m, d}] = v
	}
	if h.station == "" || len(h.days) < 150 {
		t.Fatalf("%s: station %q, %d days", name, h.station, len(h.days))
	}
	return h
}

// readNote takes from a note of the source when the values were taken. Routine
// reports of an airport are made some minutes before the hour.
func (h *hourFile) readNote(line string) {
	switch {
	case strings.Contains(line, "hour ending"):
		h.stands = 1
	case strings.Contains(line, "before the next hour"):
		h.stands = 0.9
	}
	h.clock = h.clock || strings.Contains(line, "clock hours")
}

// hours gives the working hours in which the values labeled from and after it,
// before to, stand in the middle of their hours.
func (h *hourFile) hours(from, to, month int) Hours {
	return Hours{Start: float64(from) - 0.5 + h.stands, End: float64(to) - 0.5 + h.stands,
		Daylight: h.clock && month > 3 && month < 11}
}

// hourNames lists the hourly test series.
func hourNames(t *testing.T) []string {
	t.Helper()
	e, err := os.ReadDir("testdata")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, f := range e {
		if strings.HasSuffix(f.Name(), ".txt.gz") {
			names = append(names, f.Name())
		}
	}
	return names
}

// TestByHour holds the model to hourly series hour by hour, and the usable
// days and frost nights to the days of the same series.
func TestByHour(t *testing.T) {
	var hours, usable, frost []cell
	for _, name := range hourNames(t) {
		h := readHours(t, name)
		s := siteOf(t, h.station, h.region)
		for m := 1; m <= 12; m++ {
			for _, l := range []float64{-17.78, -6.67, 0, 4.44, 10, 20, 30} {
				for b := 7; b < 17; b += 2 {
					got := s.Odds(month(m), h.hours(b, b+2, m), l).ShareBelow
					if want, ok := h.share(m, b, b+2, l); ok {
						hours = append(hours, cell{group: fmt.Sprintf("%02d:00", b), place: h.name, month: m, limit: l, got: got, want: want, climate: climateOf(s)})
					}
				}
				o := s.Odds(month(m), h.hours(7, 17, m), l)
				if u, f, ok := h.dayShares(m, l); ok {
					usable = append(usable, cell{place: h.name, month: m, limit: l, got: o.DaysUsable, want: u})
					if l == 0 {
						frost = append(frost, cell{place: h.name, month: m, got: o.NightFrost, want: f})
					}
				}
			}
		}
	}
	for k, v := range table(t, "share below, by hour of the day", hours, func(c cell) string { return c.group }) {
		within(t, k, v, 0.10, 0.02)
	}
	for k, v := range table(t, "share below, by season", hours, func(c cell) string { return season(c.month) }) {
		within(t, k, v, 0.10, 0.03)
	}
	for k, v := range table(t, "share below, by climate", hours, func(c cell) string { return c.climate }) {
		within(t, k, v, 0.10, 0.03)
	}
	table(t, "share below, by series", hours, func(c cell) string { return c.place })
	for title, cells := range map[string][]cell{"usable days": usable, "frost nights": frost} {
		all := table(t, title, cells, func(cell) string { return "all" })["all"]
		if e := all.abs / float64(all.n); e > 0.10 {
			t.Errorf("%s: mean error %.3f", title, e)
		}
		if b := all.sum / float64(all.n); math.Abs(b) > 0.03 {
			t.Errorf("%s: bias %+.3f", title, b)
		}
		table(t, title+" by limit", cells, func(c cell) string { return fmt.Sprintf("%6.1f", c.limit) })
	}
}

func (h hourFile) share(m, from, to int, limit float64) (float64, bool) {
	n, below := 0.0, 0.0
	for d, v := range h.days {
		if d[0] != m {
			continue
		}
		for _, x := range v[from:to] {
			if !math.IsNaN(x) {
				n++
				if x < limit {
					below++
				}
			}
		}
	}
	return below / max(1, n), n > 30
}

func (h hourFile) dayShares(m int, limit float64) (usable, frost float64, ok bool) {
	n := 0.0
	for d, v := range h.days {
		if d[0] != m {
			continue
		}
		n++
		run, best, cold := 0, 0, false
		for i, x := range v {
			cold = cold || x < 0
			if i < 7 || i >= 17 {
				continue
			}
			if x >= limit {
				run++
			} else if !math.IsNaN(x) {
				run = 0
			}
			best = max(best, run)
		}
		if best >= 4 {
			usable++
		}
		if cold {
			frost++
		}
	}
	return usable / max(1, n), frost / max(1, n), n > 20
}
