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

// TestMeanCourse holds the mean course of the day to hourly normals.
func TestMeanCourse(t *testing.T) {
	s := published(t, "Seattle", "WA")
	sum, n, worst := 0.0, 0.0, 0.0
	byHour := map[int][2]float64{}
	for _, line := range readLines(t, "seattle_hourly_normals.csv.gz") {
		var m, d, h, v int
		if _, err := fmt.Sscanf(line, "%d,%d,%d,%d", &m, &d, &h, &v); err != nil {
			t.Fatal(err)
		}
		i := dayIndex(time.Date(2025, time.Month(m), d, 0, 0, 0, 0, time.UTC))
		length, noon := dayLength(s.Place.Lat, float64(i+1)), solarNoon(s.Place.Lon, s.zone, float64(i+1))
		low, high := s.course.turns(s.dayMax[i], s.dayMin[i], (s.sdMax[i]+s.sdMin[i])/2, length)
		e := low + s.course.shape(float64(h), length, noon)*(high-low) - float64(v)/10
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
