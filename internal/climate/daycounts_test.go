package climate

import (
	"fmt"
	"io/fs"
	"math"
	"testing"
)

// TestAgainstDayCounts holds the model to thirty years of thousands of stations:
// the days with a minimum of 50 °F or less, with a maximum of 90 °F or more, and
// with a minimum of 0 °C or less. Each station is asked as if its own counts were
// not known, as at a place that has none.
func TestAgainstDayCounts(t *testing.T) {
	cells := countCells(t)
	if len(cells) < 10000 {
		t.Fatalf("%d counts", len(cells))
	}
	for k, v := range table(t, "share of days, by count", cells, func(c cell) string { return c.group }) {
		within(t, k, v, 0.05, 0.03)
	}
	for k, v := range table(t, "by count, climate and season", cells, func(c cell) string { return c.group + ", " + c.climate + ", " + season(c.month) }) {
		if v.n >= 40 {
			within(t, k, v, 0.06, 0.045)
		}
	}
	for k, v := range table(t, "by count and state or province", cells, func(c cell) string { return c.group + ", " + c.place }) {
		if v.n >= 100 {
			within(t, k, v, 0.06, 0.05)
		}
	}
}

// within asks for a mean error and a bias no greater than given.
func within(t *testing.T, title string, v *tally, most, bias float64) {
	t.Helper()
	if e := v.abs / float64(v.n); e > most {
		t.Errorf("%s: mean error %.3f, at most %g wanted", title, e, most)
	}
	if b := v.sum / float64(v.n); math.Abs(b) > bias {
		t.Errorf("%s: bias %+.3f, at most %g wanted", title, b, bias)
	}
}

func season(month int) string {
	return []string{"winter", "spring", "summer", "fall"}[month%12/3]
}

// countCells compares the named stations and every fifth of the others.
func countCells(t *testing.T) []cell {
	t.Helper()
	a, err := theAtlas()
	if err != nil {
		t.Fatal(err)
	}
	var cells []cell
	for _, r := range a.stations {
		cells = append(cells, stationCounts(t, r)...)
	}
	for i, r := range allStations(t) {
		if i%5 == 0 {
			cells = append(cells, stationCounts(t, r)...)
		}
	}
	return cells
}

// stationCounts compares one station.
func stationCounts(t *testing.T, r *record) []cell {
	t.Helper()
	unknown := *r
	unknown.period = "as published"
	unknown.daysCold, unknown.daysHot, unknown.daysFrost, unknown.sdMean = nil, nil, nil, nil
	s := siteFrom(t, &unknown)
	cold := func(limit float64) func(int) float64 {
		return func(d int) float64 { return normal((limit - s.dayMin[d]) / s.sdMin[d]) }
	}
	hot := func(d int) float64 { return 1 - s.skewed((countHot-s.dayMax[d])/s.sdMax[d], s.dayMax[d]) }
	var cells []cell
	add := func(name string, limit float64, days *[12]float64, chance func(int) float64) {
		if days == nil {
			return
		}
		var got [12]float64
		for d := range yearDays {
			got[monthOfDay(d)] += chance(d) / float64(monthDays[monthOfDay(d)])
		}
		for m, n := range days {
			cells = append(cells, cell{group: name, place: r.region, month: m + 1, limit: limit, got: got[m],
				want: min(1, n/meanMonthDays(m)), climate: climateOf(s)})
		}
	}
	add("minimum of 50 °F", countCold, r.daysCold, cold(countCold))
	add("maximum of 90 °F", countHot, r.daysHot, hot)
	add("minimum of 0 °C", countFrost, r.daysFrost, cold(countFrost))
	return cells
}

func monthOfDay(day int) int {
	m := 0
	for day >= monthDays[m] {
		day -= monthDays[m]
		m++
	}
	return m
}

// Every station of the published tables is there, and where each stands it is
// found, or a named one close by.
func TestAllStations(t *testing.T) {
	all := allStations(t)
	if len(all) != 8226 {
		t.Errorf("%d stations, not 8226", len(all))
	}
	for i, r := range all {
		if i%200 != 0 {
			continue
		}
		p, err := Near(r.lat, r.lon, nil)
		if err != nil {
			t.Errorf("%s, %s: %v", r.name, r.region, err)
			continue
		}
		if p.DistanceKM == nil || *p.DistanceKM > namedGain {
			t.Errorf("%s, %s: the nearest station is %s", r.name, r.region, p.Where())
		}
	}
}

// allStations reads every tile of the tables.
func allStations(t *testing.T) []*record {
	t.Helper()
	names, err := fs.Glob(data, "data/stations/*.csv.gz")
	if err != nil {
		t.Fatal(err)
	}
	var all []*record
	for _, name := range names {
		var lat, lon int
		if _, err := fmt.Sscanf(name, "data/stations/%d_%d.csv.gz", &lat, &lon); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		rs, err := tileStations(lat, lon)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, rs...)
	}
	return all
}
