package climate

import (
	"cmp"
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
)

func month(m int) Span {
	from := time.Date(2026, time.Month(m), 1, 0, 0, 0, 0, time.UTC)
	return Span{From: from, To: from.AddDate(0, 1, -1)}
}

// heldOut names the places that no constant of the model was fitted to, but for
// the lags by an even sea and in the west: every third of the 28 by name.
func heldOut(place string) bool {
	return slices.Contains([]string{"Austin", "Cedar Rapids", "Colorado Springs", "Detroit", "Las Vegas",
		"New York", "Prince George", "San Francisco", "Tampa"}, place)
}

func fittedOrNot(c cell) string {
	if heldOut(c.place) {
		return "held out"
	}
	return "fitted"
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
		own := s
		if strings.HasPrefix(f[2], "TMY3") { // months of 1973-2005
			own = published(t, name, f[1])
		}
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
			hours := Hours{Start: 7.5, End: 17.5}                    // the series' values stand at 8 to 17
			if strings.HasPrefix(f[2], "observed") && f[1] != "BC" { // clock hours, taken before the next
				hours = Hours{Start: 8.4, End: 18.4, Daylight: m > 3 && m < 11}
			}
			got := s.Odds(month(m), hours, l).ShareBelow
			_, _, normal, _ := s.Month(m)
			anomaly := middle - normal
			cells = append(cells, cell{group: f[2], place: f[0], month: m, limit: l, got: got, want: want,
				climate: climateOf(s), site: s, anomaly: anomaly, shifted: s.Odds(month(m), hours, l-anomaly).ShareBelow,
				ownTime: own.Odds(month(m), hours, l).ShareBelow})
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

func TestShareOfWorkingHours(t *testing.T) {
	cells := shareCells(t)
	all := table(t, "all", cells, func(cell) string { return "all" })["all"]
	table(t, "by place", cells, func(c cell) string { return c.place + " " + c.group })
	table(t, "by month", cells, func(c cell) string { return fmt.Sprintf("%02d", c.month) })
	table(t, "by limit", cells, func(c cell) string { return fmt.Sprintf("%5.0f °C", c.limit) })
	held := table(t, "fitted or held out", cells, fittedOrNot)
	table(t, "by climate", cells, func(c cell) string { return c.climate })
	worst(t, cells)
	moved := slices.Clone(cells)
	for i := range moved {
		moved[i].got = moved[i].shifted
	}
	shape := table(t, "with the normals moved to each month's own mean: what is left is the model's shape", moved, func(cell) string { return "all" })["all"]
	table(t, "the same, by climate", moved, func(c cell) string { return c.climate })
	table(t, "the same, fitted or held out", moved, fittedOrNot)
	for i := range moved {
		moved[i].got = cells[i].ownTime
	}
	unbiased(t, moved)
	if e := shape.abs / float64(shape.n); e > 0.05 {
		t.Errorf("mean error %.3f with the weather of the single year taken out, at most 0.05 wanted", e)
	}
	if far := math.Abs(shape.worst.err()); far > 0.30 {
		t.Errorf("one cell %.2f off with the weather of the single year taken out, at most 0.30 wanted", far)
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

// unbiased asks for no bias by time of year, limit and climate of shares from
// the normals of the series' own time. A place's single years stray together,
// so what few places stand for has more room.
func unbiased(t *testing.T, cells []cell) {
	t.Helper()
	table(t, "with the normals of the series' own time", cells, fittedOrNot)
	for _, by := range []struct {
		name string
		most float64
		key  func(cell) string
	}{
		{"month", 0.03, func(c cell) string { return fmt.Sprintf("%02d", c.month) }},
		{"limit", 0.04, func(c cell) string { return fmt.Sprintf("%5.0f °C", c.limit) }},
		{"climate", 0.03, func(c cell) string { return c.climate }},
		{"climate and season", 0.045, func(c cell) string { return c.climate + ", " + season(c.month) }},
	} {
		for k, v := range table(t, "the same, by "+by.name, cells, by.key) {
			within(t, k, v, 0.10, by.most)
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

// levelLasts is the correlation of one day's level with the next: 0.62 to 0.77
// by month in the thirty years of Milwaukee. It sets how far single months
// stray, and nothing in the model.
const levelLasts = 0.7

// TestChance tells how far single years would lie from a model without fault,
// since no thirty days are the mean of thirty years: it draws months from the
// model itself. The errors against the series must not be greater.
func TestChance(t *testing.T) {
	cells := shareCells(t)
	all := table(t, "all", cells, func(cell) string { return "all" })["all"]
	rng := rand.New(rand.NewPCG(1, 2))
	var drawn []cell
	for _, c := range cells {
		c.want = drawMonth(c.site, c.month, c.limit, rng)
		drawn = append(drawn, c)
	}
	chance := table(t, "months drawn from the model", drawn, func(cell) string { return "all" })["all"]
	if got, most := all.abs/float64(all.n), chance.abs/float64(chance.n); got > most {
		t.Errorf("mean error %.3f, but %.3f by chance alone", got, most)
	}
}

// drawMonth gives the share of working hours below a limit in one month drawn
// from the model, with days that follow one another.
func drawMonth(s *Site, m int, limit float64, rng *rand.Rand) float64 {
	ts := Hours{Start: 7.5, End: 17.5}.times()
	below, n, level := 0.0, 0.0, rng.NormFloat64()
	zs := make([]float64, len(ts))
	for day := range month(m).sample(mostSampled) {
		s.day(dayIndex(day), ts, zs, limit)
		for _, z := range zs {
			n++
			if level < z {
				below++
			}
		}
		level = levelLasts*level + math.Sqrt(1-levelLasts*levelLasts)*rng.NormFloat64()
	}
	return below / n
}
