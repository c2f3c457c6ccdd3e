package climate

import (
	"bufio"
	"cmp"
	"compress/gzip"
	"fmt"
	"math"
	"os"
	"slices"
	"sort"
	"strconv"
	"strings"
	"testing"
	"time"
)

// packed gives the lines of a packed test table.
func packed(t *testing.T, name string) []string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	z, err := gzip.NewReader(f)
	if err != nil {
		t.Fatal(err)
	}
	var l []string
	for sc := bufio.NewScanner(z); sc.Scan(); {
		l = append(l, sc.Text())
	}
	return l
}

// readLines leaves out the notes of sources.
func readLines(t *testing.T, name string) []string {
	t.Helper()
	return slices.DeleteFunc(packed(t, name), func(l string) bool { return strings.HasPrefix(l, "#") })
}

// siteOf gives the site of a named station.
func siteOf(t *testing.T, station, region string) *Site {
	t.Helper()
	a, err := theAtlas()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range a.stations {
		if r.region == region && strings.HasPrefix(r.name, station) {
			s, err := placeOf(r).Site()
			if err != nil {
				t.Fatal(err)
			}
			return s
		}
	}
	t.Fatalf("no station %q in %s", station, region)
	return nil
}

// cell is one comparison: a series, a month, a limit.
type cell struct {
	group, place string
	month        int
	limit        float64
	got, want    float64
	climate      string
	anomaly      float64 // how far the series' month lay from the normal, °C
	shifted      float64 // got, with the normals moved by the anomaly
}

func (c cell) err() float64 { return c.got - c.want }

// telling leaves out cells in which both sides are all or nothing, since they
// would only flatter the mean.
func (c cell) telling() bool {
	return c.got > 0.01 && c.got < 0.99 || c.want > 0.01 && c.want < 0.99
}

func month(m int) Span {
	from := time.Date(2026, time.Month(m), 1, 0, 0, 0, 0, time.UTC)
	return Span{From: from, To: from.AddDate(0, 1, -1)}
}

// heldOut names the places that no constant of the model was fitted to.
func heldOut(place string) bool {
	for _, p := range []string{"Anchorage", "Chicago", "Denver", "Houston", "London", "Miami", "Phoenix", "Portland", "San Francisco", "Seattle"} {
		if place == p {
			return false
		}
	}
	return true
}

func shareCells(t *testing.T) []cell {
	limits := []float64{-10, -5, 0, 2, 5, 7, 10, 12, 15, 18, 20, 25, 30, 32, 35}
	named := map[string]string{
		"Chicago": "Chicago airport (northwest)", "New York": "New York airport (southeast)",
		"Houston": "Houston airport (north)", "Dallas/Fort Worth": "Dallas", "Las Vegas": "Las Vegas",
		"Raleigh": "Raleigh", "Seattle": "Seattle",
	}
	var cells []cell
	for _, line := range readLines(t, "share_of_hours.csv.gz") {
		f := strings.Split(line, ",")
		name := f[0]
		if n, ok := named[name]; ok {
			name = n
		} else {
			name += " airport"
		}
		s := siteOf(t, name, f[1])
		m, _ := strconv.Atoi(f[3])
		middle, err := strconv.ParseFloat(f[4], 64)
		if err != nil {
			t.Fatal(err)
		}
		for i, l := range limits {
			want, err := strconv.ParseFloat(f[5+i], 64)
			if err != nil {
				t.Fatal(err)
			}
			hours := Hours{Start: 7.5, End: 17.5} // the series' values stand at 8 to 17
			if strings.HasPrefix(f[2], "observed") && f[1] != "BC" {
				hours.Daylight = m > 3 && m < 11
			}
			got := s.Odds(month(m), hours, l).ShareBelow
			_, _, normal, _ := s.Month(m)
			anomaly := middle - normal
			cells = append(cells, cell{group: f[2], place: f[0], month: m, limit: l, got: got, want: want,
				climate: climateOf(s), anomaly: anomaly, shifted: s.Odds(month(m), hours, l-anomaly).ShareBelow})
		}
	}
	return cells
}

// climateOf sorts a site by the ranges of the year and of the day.
func climateOf(s *Site) string {
	cold, warm, daily := math.Inf(1), math.Inf(-1), 0.0
	for m := range 12 {
		mean := (s.tmax[m] + s.tmin[m]) / 2
		cold, warm, daily = min(cold, mean), max(warm, mean), daily+(s.tmax[m]-s.tmin[m])/12
	}
	switch {
	case warm-cold < 16:
		return "maritime or tropical"
	case daily > 13:
		return "dry"
	case cold < 0:
		return "continental, cold winter"
	}
	return "mild winter, hot summer"
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

func TestShareOfWorkingHours(t *testing.T) {
	cells := shareCells(t)
	all := table(t, "all", cells, func(cell) string { return "all" })["all"]
	table(t, "by place", cells, func(c cell) string { return c.place + " " + c.group })
	table(t, "by month", cells, func(c cell) string { return fmt.Sprintf("%02d", c.month) })
	table(t, "by limit", cells, func(c cell) string { return fmt.Sprintf("%5.0f °C", c.limit) })
	held := table(t, "fitted or held out", cells, func(c cell) string {
		if heldOut(c.place) {
			return "held out"
		}
		return "fitted"
	})
	for k, v := range table(t, "by climate", cells, func(c cell) string { return c.climate }) {
		if b := v.sum / float64(v.n); math.Abs(b) > 0.05 {
			t.Errorf("%s: bias %+.3f", k, b)
		}
	}
	worst(t, cells)
	moved := slices.Clone(cells)
	for i := range moved {
		moved[i].got = moved[i].shifted
	}
	shape := table(t, "with the normals moved to each month's own mean: what is left is the model's shape", moved, func(cell) string { return "all" })["all"]
	table(t, "the same, by climate", moved, func(c cell) string { return c.climate })
	if e := shape.abs / float64(shape.n); e > 0.05 {
		t.Errorf("mean error %.3f with the weather of the single year taken out, at most 0.05 wanted", e)
	}
	if e := all.abs / float64(all.n); e > 0.10 {
		t.Errorf("mean error %.3f over single and typical years, at most 0.10 wanted", e)
	}
	if b := all.sum / float64(all.n); math.Abs(b) > 0.02 {
		t.Errorf("bias %+.3f", b)
	}
	for k, v := range held {
		if e := v.abs / float64(v.n); e > 0.10 {
			t.Errorf("%s: mean error %.3f", k, e)
		}
	}
}

// worst shows the largest errors and how far off normal their months were.
func worst(t *testing.T, cells []cell) {
	sorted := slices.Clone(cells)
	slices.SortFunc(sorted, func(a, b cell) int { return cmp.Compare(math.Abs(b.err()), math.Abs(a.err())) })
	t.Log("largest errors")
	for _, c := range sorted[:12] {
		t.Logf("  %+.2f %s, %s, %s, below %g °C; that month lay %+.1f °C from the normal; %+.2f is left without that",
			c.err(), c.place, c.group, time.Month(c.month), c.limit, c.anomaly, c.shifted-c.want)
	}
}

// hourFile is one series of hours by day, °C, NaN where none was taken.
type hourFile struct {
	name, station, region string
	ending                bool // values stand at the end of their hour
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
			h.ending = h.ending || strings.Contains(line, "hour ending")
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
		shift := 0.0
		if h.ending {
			shift = 1
		}
		for m := 1; m <= 12; m++ {
			for _, l := range []float64{-17.78, -6.67, 0, 4.44, 10, 20, 30} {
				for b := 7; b < 17; b += 2 {
					at := float64(b) + 0.5 // readings at b and b+1
					got := s.Odds(month(m), Hours{Start: at - 1 + shift, End: at + 1 + shift}, l).ShareBelow
					if want, ok := h.share(m, b, b+2, l); ok {
						hours = append(hours, cell{group: fmt.Sprintf("%02d:00", b), place: h.name, month: m, limit: l, got: got, want: want})
					}
				}
				o := s.Odds(month(m), Hours{}, l)
				if u, f, ok := h.dayShares(m, l); ok {
					usable = append(usable, cell{place: h.name, month: m, limit: l, got: o.DaysUsable, want: u})
					if l == 0 {
						frost = append(frost, cell{place: h.name, month: m, got: o.NightFrost, want: f})
					}
				}
			}
		}
	}
	byHour := table(t, "share below, by hour of the day", hours, func(c cell) string { return c.group })
	for k, v := range byHour {
		if b := v.sum / float64(v.n); math.Abs(b) > 0.03 {
			t.Errorf("%s: bias %+.3f", k, b)
		}
	}
	table(t, "share below, by season", hours, func(c cell) string { return fmt.Sprintf("quarter %d", c.month%12/3) })
	table(t, "share below, by series", hours, func(c cell) string { return c.place })
	for title, cells := range map[string][]cell{"usable days": usable, "frost nights": frost} {
		all := table(t, title, cells, func(cell) string { return "all" })["all"]
		if e := all.abs / float64(all.n); e > 0.10 {
			t.Errorf("%s: mean error %.3f", title, e)
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

// TestAgainstManyYears holds the shares of nights and days beyond a limit, and
// the mean course of the day, to series of thirty years.
func TestAgainstManyYears(t *testing.T) {
	s := siteOf(t, "Milwaukee", "WI")
	limits := []float64{-17.78, -10, -6.67, -5, 0, 4.44, 10, 15, 20, 25, 30}
	count := map[[2]int][3]float64{} // month, limit: days, minimum below, maximum below
	for _, line := range readLines(t, "milwaukee_daily.csv.gz") {
		f := strings.Split(line, ",")
		day, err := time.Parse("2006-01-02", f[0])
		tx, e1 := strconv.Atoi(f[1])
		tn, e2 := strconv.Atoi(f[2])
		if err != nil || e1 != nil || e2 != nil {
			continue
		}
		for i, l := range limits {
			c := count[[2]int{int(day.Month()), i}]
			c[0]++
			if float64(tn)/10 < l {
				c[1]++
			}
			if float64(tx)/10 < l {
				c[2]++
			}
			count[[2]int{int(day.Month()), i}] = c
		}
	}
	var cells []cell
	for k, c := range count {
		var lo, hi float64
		n := 0.0
		for day := range month(k[0]).sample(mostSampled) {
			i := dayIndex(day)
			lo += normal((limits[k[1]] - s.dayMin[i]) / s.sdMin[i])
			hi += skewed((limits[k[1]]-s.dayMax[i])/s.sdMax[i], s.dayMax[i])
			n++
		}
		cells = append(cells,
			cell{group: "daily minimum", place: "Milwaukee", month: k[0], limit: limits[k[1]], got: lo / n, want: c[1] / c[0]},
			cell{group: "daily maximum", place: "Milwaukee", month: k[0], limit: limits[k[1]], got: hi / n, want: c[2] / c[0]})
	}
	for k, v := range table(t, "Milwaukee 1991-2020", cells, func(c cell) string { return c.group }) {
		if e := v.abs / float64(v.n); e > 0.05 {
			t.Errorf("%s: mean error %.3f", k, e)
		}
	}
}

// TestMeanCourse holds the mean course of the day to hourly normals.
func TestMeanCourse(t *testing.T) {
	s := siteOf(t, "Seattle", "WA")
	sum, n, worst := 0.0, 0.0, 0.0
	byHour := map[int][2]float64{}
	for _, line := range readLines(t, "seattle_hourly_normals.csv.gz") {
		var m, d, h, v int
		if _, err := fmt.Sscanf(line, "%d,%d,%d,%d", &m, &d, &h, &v); err != nil {
			t.Fatal(err)
		}
		i := dayIndex(time.Date(2025, time.Month(m), d, 0, 0, 0, 0, time.UTC))
		length, noon := dayLength(s.Place.Lat, float64(i+1)), solarNoon(s.Place.Lon, s.zone, float64(i+1))
		low, high := turns(s.dayMax[i], s.dayMin[i], (s.sdMax[i]+s.sdMin[i])/2, length)
		e := low + dayShape(float64(h), length, noon)*(high-low) - float64(v)/10
		sum, n, worst = sum+math.Abs(e), n+1, max(worst, math.Abs(e))
		b := byHour[h]
		byHour[h] = [2]float64{b[0] + e, b[1] + 1}
	}
	t.Logf("Seattle hourly normals: mean difference %.2f °C, largest %.1f °C", sum/n, worst)
	for h := range 24 {
		t.Logf("  %02d:00 %+.2f", h, byHour[h][0]/byHour[h][1])
	}
	if sum/n > 0.8 {
		t.Errorf("mean course is off by %.2f °C", sum/n)
	}
}
