package climate

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"
)

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
			hi += s.skewed((limits[k[1]]-s.dayMax[i])/s.sdMax[i], s.dayMax[i])
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
