package climate

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

func date(y, m, d int) time.Time { return time.Date(y, time.Month(m), d, 0, 0, 0, 0, time.UTC) }

// Sunrise and sunset in local standard time. Sources: Golden is the worked
// example of Reda and Andreas, Solar Position Algorithm for Solar Radiation
// Applications, NREL/TP-560-34302, to the second; the others are computed tables
// of the US national almanac office for 2024 (from memory, whole minutes).
func TestSunrise(t *testing.T) {
	tests := []struct {
		place           string
		lat, lon, zone  float64
		day             time.Time
		rise, set, near float64 // hours; near in minutes
	}{
		{"Golden, 17 October", 39.742476, -105.1786, -7, date(2003, 10, 17), 6 + 12./60 + 43./3600, 17 + 20./60 + 19./3600, 1.5},
		{"New York, 21 June", 40.71, -74.01, -5, date(2023, 6, 21), 4 + 25./60, 19 + 31./60, 2},
		{"New York, 21 December", 40.71, -74.01, -5, date(2023, 12, 21), 7 + 17./60, 16 + 32./60, 2},
		{"Denver, 21 June", 39.74, -104.99, -7, date(2023, 6, 21), 4 + 32./60, 19 + 31./60, 2},
		{"Seattle, 21 December", 47.61, -122.33, -8, date(2023, 12, 21), 7 + 55./60, 16 + 20./60, 2},
		{"Miami, 21 March", 25.77, -80.19, -5, date(2023, 3, 21), 6 + 24./60, 18 + 32./60, 2},
		{"Anchorage, 21 June", 61.22, -149.9, -9, date(2023, 6, 21), 3 + 20./60, 22 + 42./60, 2},
	}
	for _, tc := range tests {
		rise, set, ok := sunrise(tc.lat, tc.lon, tc.zone, float64(tc.day.YearDay()))
		dr, ds := (rise-tc.rise)*60, (set-tc.set)*60
		t.Logf("%-24s sunrise %+.1f min, sunset %+.1f min", tc.place, dr, ds)
		if !ok || math.Abs(dr) > tc.near || math.Abs(ds) > tc.near {
			t.Errorf("%s: sunrise %.2f, sunset %.2f, want %.2f and %.2f", tc.place, rise, set, tc.rise, tc.set)
		}
	}
	for _, n := range []float64{172, 355} {
		if _, _, ok := sunrise(82.5, -62.3, -5, n); ok {
			t.Errorf("the sun rises at 82.5° north on day %g", n)
		}
	}
}

func TestSmoothYearKeepsMeans(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		var means [12]float64
		for m := range means {
			means[m] = rapid.Float64Range(-40, 45).Draw(rt, "mean")
		}
		for m, v := range monthMeans(smoothYear(means)) {
			if math.Abs(v-means[m]) > 1e-9 {
				rt.Fatalf("month %d: %g became %g", m+1, means[m], v)
			}
		}
	})
}

// A real year must be smooth where months meet, too.
func TestSmoothYearIsSmooth(t *testing.T) {
	a, err := theAtlas()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range a.stations {
		y := smoothYear(r.tmin)
		for d := range y {
			if step := math.Abs(y[(d+1)%yearDays] - y[d]); step > 1.1 {
				t.Errorf("%s, day %d: step of %.2f °C", r.name, d+1, step)
			}
		}
	}
}

func mustSite(t testing.TB, text string) *Site {
	t.Helper()
	p, err := Locate(text)
	if err != nil {
		t.Fatal(err)
	}
	s, err := p.Site()
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestOddsEdges(t *testing.T) {
	s := mustSite(t, "Buffalo, NY")
	newYear := s.Odds(Span{date(2026, 12, 20), date(2027, 1, 10)}, Hours{}, 4.44)
	dec := s.Odds(Span{date(2026, 12, 20), date(2026, 12, 31)}, Hours{}, 4.44)
	jan := s.Odds(Span{date(2027, 1, 1), date(2027, 1, 10)}, Hours{}, 4.44)
	if want := (dec.ShareBelow*12 + jan.ShareBelow*10) / 22; newYear.Days != 22 || math.Abs(newYear.ShareBelow-want) > 1e-9 {
		t.Errorf("over New Year: %+v, parts give %.4f", newYear, want)
	}
	one := s.Odds(Span{date(2026, 2, 10), date(2026, 2, 10)}, Hours{}, 4.44)
	if one.Days != 1 || one.ShareBelow < 0.8 {
		t.Errorf("one day in February: %+v", one)
	}
	leapDay := s.Odds(Span{date(2028, 2, 29), date(2028, 2, 29)}, Hours{}, 4.44)
	day28 := s.Odds(Span{date(2028, 2, 28), date(2028, 2, 28)}, Hours{}, 4.44)
	if leapDay.Days != 1 || leapDay.ShareBelow != day28.ShareBelow {
		t.Errorf("leap day %+v, day before %+v", leapDay, day28)
	}
	if a, b := s.Odds(month(3), Hours{}, 4), s.Odds(Span{date(2028, 3, 1), date(2028, 3, 31)}, Hours{}, 4); a != b {
		t.Errorf("March of a leap year %+v differs from %+v", b, a)
	}
	if none := s.Odds(Span{date(2026, 3, 2), date(2026, 3, 1)}, Hours{}, 4); none != (Odds{LimitC: 4}) {
		t.Errorf("reversed span: %+v", none)
	}
	night := s.Odds(month(4), Hours{Start: 22, End: 6}, 4.44)
	day := s.Odds(month(4), Hours{}, 4.44)
	if night.ShareBelow <= day.ShareBelow {
		t.Errorf("nights %.2f are not colder than days %.2f", night.ShareBelow, day.ShareBelow)
	}
	year := s.Odds(Span{date(2026, 1, 1), date(2026, 12, 31)}, Hours{}, 4.44)
	sum := 0.0
	for m := 1; m <= 12; m++ {
		sum += s.Odds(month(m), Hours{}, 4.44).ShareBelow * float64(monthDays[m-1]) / yearDays
	}
	if math.Abs(year.ShareBelow-sum) > 0.01 {
		t.Errorf("sampled year %.3f, by months %.3f", year.ShareBelow, sum)
	}
	early := s.Odds(month(4), Hours{Daylight: true}, 4.44)
	if early.ShareBelow <= day.ShareBelow {
		t.Errorf("daylight-saving hours begin earlier and cannot be warmer: %.3f, %.3f", early.ShareBelow, day.ShareBelow)
	}
}

func TestOddsAtPoles(t *testing.T) {
	s := mustSite(t, "Alert, Nunavut")
	for m := 1; m <= 12; m++ {
		o := s.Odds(month(m), Hours{}, 0)
		if math.IsNaN(o.ShareBelow) || math.IsNaN(o.DaysUsable) || o.ShareBelow < 0 || o.ShareBelow > 1 {
			t.Errorf("month %d: %+v", m, o)
		}
	}
	if o := s.Odds(month(1), Hours{}, 0); o.ShareBelow < 0.99 {
		t.Errorf("polar night: %+v", o)
	}
}

// The same figures turned by half a year south of the line give the same odds
// half a year later.
func TestSouthernHemisphere(t *testing.T) {
	north, south := &strings.Builder{}, &strings.Builder{}
	for _, b := range []*strings.Builder{north, south} {
		b.WriteString("month,tmax,tmin\n")
	}
	for m := range 12 {
		mean := 12 - 12*math.Cos(2*math.Pi*(float64(m)+0.5)/12)
		fmt.Fprintf(north, "%d,%.2f,%.2f\n", m+1, mean+5, mean-5)
		fmt.Fprintf(south, "%d,%.2f,%.2f\n", (m+6)%12+1, mean+5, mean-5)
	}
	n, err := FromCSV(strings.NewReader(north.String()), Place{Lat: 40, Lon: -90})
	if err != nil {
		t.Fatal(err)
	}
	s, err := FromCSV(strings.NewReader(south.String()), Place{Lat: -40, Lon: -90})
	if err != nil {
		t.Fatal(err)
	}
	placeless, err := FromCSV(strings.NewReader(south.String()), Place{})
	if err != nil || placeless.Place.Lat >= 0 || !strings.Contains(placeless.Place.Note, "south") {
		t.Errorf("southern figures without a position: %+v, %v", placeless.Place, err)
	}
	for m := 1; m <= 12; m++ {
		a := n.Odds(month(m), Hours{}, 10).ShareBelow
		b := s.Odds(month((m+5)%12+1), Hours{}, 10).ShareBelow
		if math.Abs(a-b) > 0.04 {
			t.Errorf("month %d: north %.3f, south %.3f", m, a, b)
		}
	}
}

func TestOddsAreOrdered(t *testing.T) {
	s := mustSite(t, "Denver, CO")
	rapid.Check(t, func(rt *rapid.T) {
		m := rapid.IntRange(1, 12).Draw(rt, "month")
		l := rapid.Float64Range(-40, 45).Draw(rt, "limit")
		a, b := s.Odds(month(m), Hours{}, l), s.Odds(month(m), Hours{}, l+1)
		if b.ShareBelow < a.ShareBelow-1e-9 || b.DaysUsable > a.DaysUsable+1e-9 || a.ShareBelow < 0 || a.ShareBelow > 1 {
			rt.Fatalf("month %d, limit %g: %+v then %+v", m, l, a, b)
		}
	})
}

func FuzzLocate(f *testing.F) {
	for _, s := range []string{"Buffalo, NY", "18 mi west of Milwaukee", "43.1 N 88.2 W", "é, É", "12 km of of of", "St.", "near"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		p, err := Locate(s)
		if err == nil && p.Station == "" {
			t.Errorf("%q: no station and no error", s)
		}
	})
}

func BenchmarkOdds(b *testing.B) {
	s := mustSite(b, "Buffalo, NY")
	for b.Loop() {
		s.Odds(Span{date(2026, 11, 2), date(2026, 12, 18)}, Hours{}, 4.44)
	}
}

func BenchmarkLocateAndSite(b *testing.B) {
	for b.Loop() {
		mustSite(b, "Outpatient clinic, Framingham MA")
	}
}
