package climate

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// TestMeanHours holds the course of the working day to the mean hours of
// typical years, month by month, at places of the west and the Pacific coast.
// A typical year's months are single ones, warmer or colder than the normal and
// clearer or cloudier, so the level is taken out.
func TestMeanHours(t *testing.T) {
	byPlace, byHour := map[string]*mean{}, [10]mean{}
	var order []string
	for _, line := range readLines(t, "mean_hours.csv.gz") {
		f := strings.Split(line, ",")
		place := f[0] + ", " + f[1]
		if byPlace[place] == nil {
			byPlace[place] = &mean{}
			order = append(order, place)
		}
		for h, e := range courseErrors(t, place, f[3:]) {
			byPlace[place].add(e * e)
			byHour[h].add(e)
		}
	}
	if len(order) < 10 {
		t.Fatalf("only %d places", len(order))
	}
	slices.Sort(order)
	for _, place := range order {
		rms := math.Sqrt(byPlace[place].value())
		t.Logf("%-16s root mean square %.2f °C", place, rms)
		if rms > 1.1 {
			t.Errorf("%s: the course of the day is off by %.2f °C", place, rms)
		}
	}
	for h := range byHour {
		e := byHour[h].value()
		t.Logf("%02d:00 %+.2f °C", h+8, e)
		if math.Abs(e) > 0.8 {
			t.Errorf("%02d:00: %+.2f °C over all places and months", h+8, e)
		}
	}
}

// courseErrors gives, for the hours 8 to 17 of a month, by how much the model's
// course and the series' differ about their own means. The fields are the month
// and the hours, tenths of a degree.
func courseErrors(t *testing.T, place string, fields []string) [10]float64 {
	t.Helper()
	p, err := Locate(place)
	if err != nil {
		t.Fatal(err)
	}
	s := siteAt(t, p)
	month, err := strconv.Atoi(fields[0])
	if err != nil {
		t.Fatal(err)
	}
	var e [10]float64
	level := 0.0
	for h := range e {
		v, err := strconv.Atoi(fields[h+1])
		if err != nil {
			t.Fatal(err)
		}
		e[h] = s.meanOfMonth(month, float64(h+8)) - float64(v)/10
		level += e[h] / float64(len(e))
	}
	for h := range e {
		e[h] -= level
	}
	return e
}

// meanOfMonth gives the mean temperature of a month's days at an hour.
func (s *Site) meanOfMonth(m int, t float64) float64 {
	var all mean
	for day := range month(m).sample(mostSampled) {
		all.add(s.meanAt(dayIndex(day), t))
	}
	return all.value()
}

func siteAt(t *testing.T, p Place) *Site {
	t.Helper()
	s, err := p.Site()
	if err != nil {
		t.Fatal(err)
	}
	return s
}
