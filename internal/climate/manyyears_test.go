package climate

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"
)

// manyLimits are in °C.
var manyLimits = []float64{-17.78, -10, -6.67, -5, 0, 4.44, 10, 15, 20, 25, 30}

// TestAgainstManyYears holds the shares of nights and days beyond a limit to a
// series of thirty years: as the tool gives them, and as it would if it did not
// know the deviation of that very series.
func TestAgainstManyYears(t *testing.T) {
	count := countDays(t, "milwaukee_daily.csv.gz")
	unknown := *recordOf(t, "Milwaukee", "WI")
	unknown.sdMean = nil
	for title, s := range map[string]*Site{
		"Milwaukee 1991-2020":                          siteOf(t, "Milwaukee", "WI"),
		"Milwaukee 1991-2020, the deviation not known": siteFrom(t, &unknown),
	} {
		for k, v := range table(t, title, manyCells(s, count), func(c cell) string { return c.group }) {
			if e := v.abs / float64(v.n); e > 0.05 {
				t.Errorf("%s, %s: mean error %.3f", title, k, e)
			}
			if b := v.sum / float64(v.n); math.Abs(b) > 0.03 {
				t.Errorf("%s, %s: bias %+.3f", title, k, b)
			}
		}
	}
}

// dayCount counts days, those with the minimum below a limit, and those with
// the maximum below it.
type dayCount struct{ days, cold, cool float64 }

// countDays counts by month and index of the limit.
func countDays(t *testing.T, name string) map[[2]int]dayCount {
	t.Helper()
	count := map[[2]int]dayCount{}
	for _, line := range readLines(t, name) {
		f := strings.Split(line, ",")
		day, err := time.Parse("2006-01-02", f[0])
		tx, e1 := strconv.Atoi(f[1])
		tn, e2 := strconv.Atoi(f[2])
		if err != nil || e1 != nil || e2 != nil {
			continue
		}
		for i, l := range manyLimits {
			k := [2]int{int(day.Month()), i}
			c := count[k]
			c.days++
			if float64(tn)/10 < l {
				c.cold++
			}
			if float64(tx)/10 < l {
				c.cool++
			}
			count[k] = c
		}
	}
	return count
}

func manyCells(s *Site, count map[[2]int]dayCount) []cell {
	var cells []cell
	for k, c := range count {
		var lo, hi, n float64
		l := manyLimits[k[1]]
		for day := range month(k[0]).sample(mostSampled) {
			i := dayIndex(day)
			lo += normal((l - s.dayMin[i]) / s.sdMin[i])
			hi += s.skewed((l-s.dayMax[i])/s.sdMax[i], s.dayMax[i])
			n++
		}
		cells = append(cells,
			cell{group: "daily minimum", place: "Milwaukee", month: k[0], limit: l, got: lo / n, want: c.cold / c.days},
			cell{group: "daily maximum", place: "Milwaukee", month: k[0], limit: l, got: hi / n, want: c.cool / c.days})
	}
	return cells
}

// TestMeanCourse holds the mean course of the day to hourly normals of thirty
// years, hour by hour of the working day in each season: one place that the
// model was fitted to, and one that it was not.
func TestMeanCourse(t *testing.T) {
	for _, place := range []struct{ file, station, region string }{
		{"seattle_hourly_normals.csv.gz", "Seattle", "WA"},
		{"san-francisco_hourly_normals.csv.gz", "San Francisco airport", "CA"},
	} {
		s := published(t, place.station, place.region)
		byHour, all := map[[2]int]*mean{}, mean{}
		for _, line := range readLines(t, place.file) {
			var m, d, h, v int
			if _, err := fmt.Sscanf(line, "%d,%d,%d,%d", &m, &d, &h, &v); err != nil {
				t.Fatal(err)
			}
			i := dayIndex(time.Date(2025, time.Month(m), d, 0, 0, 0, 0, time.UTC))
			k := [2]int{m % 12 / 3, h}
			if byHour[k] == nil {
				byHour[k] = &mean{}
			}
			e := s.meanAt(i, float64(h)) - float64(v)/10
			byHour[k].add(e)
			all.add(math.Abs(e))
		}
		t.Logf("%s hourly normals: mean difference %.2f °C; by season at 00, 01, ... 23:00", place.station, all.value())
		for q := range 4 {
			var line strings.Builder
			for h := range 24 {
				e := byHour[[2]int{q, h}].value()
				fmt.Fprintf(&line, " %+.1f", e)
				if h >= 7 && h <= 17 && math.Abs(e) > 1.3 {
					t.Errorf("%s, %s, %02d:00: %+.1f °C", place.station, season(3*q+1), h, e)
				}
			}
			t.Logf("  %-7s%s", season(3*q+1), line.String())
		}
		if all.value() > 0.6 {
			t.Errorf("%s: the mean course is off by %.2f °C", place.station, all.value())
		}
	}
}

// mean is a running mean.
type mean struct{ sum, n float64 }

func (m *mean) add(x float64)  { m.sum, m.n = m.sum+x, m.n+1 }
func (m *mean) value() float64 { return m.sum / m.n }

// meanAt gives the mean temperature of a day of the normal year at an hour.
func (s *Site) meanAt(i int, t float64) float64 {
	length, noon := dayLength(s.Place.Lat, float64(i+1)), solarNoon(s.Place.Lon, s.zone, float64(i+1))
	low, high := s.course.turns(s.dayMax[i], s.dayMin[i], (s.sdMax[i]+s.sdMin[i])/2, length)
	return low + s.course.shape(t, length, noon)*(high-low)
}
