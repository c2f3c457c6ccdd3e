package climate

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"
)

func TestFromCSV(t *testing.T) {
	good := "# site office\nmonth,tmax_f,tmin_f,sd_f\n"
	for m := range 12 {
		good += fmt.Sprintf("%s,50,32,9\n", time.Month(m+1))
	}
	s, err := FromCSV(strings.NewReader(good), Place{})
	if err != nil {
		t.Fatal(err)
	}
	tx, tn, mean, dew := s.Month(3)
	if math.Abs(tx-10) > 1e-9 || math.Abs(tn) > 1e-9 || math.Abs(mean-5) > 1e-9 || dew == nil {
		t.Errorf("March: %g %g %g %v", tx, tn, mean, dew)
	}
	if s.Place.Note == "" {
		t.Error("a missing position is not said")
	}
	if o := s.Odds(month(3), Hours{}, 0); math.Abs(o.NightFrost-0.5) > 0.01 {
		t.Errorf("frost nights at a mean minimum of 0 °C: %.2f", o.NightFrost)
	}
	for name, tc := range map[string]struct{ text, says string }{
		"empty":        {"", "no heading"},
		"no tmin":      {"month,tmax\n1,5\n", `"tmin"`},
		"month twice":  {"month,tmax,tmin\n1,5,1\n1,5,1\n", "line 3"},
		"not a number": {"month,tmax,tmin\n1,warm,1\n", "warm"},
		"swapped":      {"month,tmax,tmin\n1,1,5\n", "not above"},
		"short":        {"month,tmax,tmin\n1,5,1\n", "February is missing"},
	} {
		if _, err := FromCSV(strings.NewReader(tc.text), Place{}); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// epw writes a weather file whose day runs from 0 °C at hour 1 to 23 °C at
// hour 24.
func epw(change func(month, day, hour int, fields []string)) string {
	var b strings.Builder
	b.WriteString("LOCATION,Testfield,WI,USA,made for the test,000000,43.0,-88.0,-6.0,200.0\n")
	b.WriteString(strings.Repeat("HEADING\n", 7))
	for d := date(2025, 1, 1); d.Year() == 2025; d = d.AddDate(0, 0, 1) {
		for h := 1; h <= 24; h++ {
			f := strings.Split(fmt.Sprintf("2025,%d,%d,%d,60,flags,%d.0,-2.0,50,101000", d.Month(), d.Day(), h, h-1), ",")
			if change != nil {
				change(int(d.Month()), d.Day(), h, f)
			}
			b.WriteString(strings.Join(f, ",") + "\n")
		}
	}
	return b.String()
}

func TestFromEPW(t *testing.T) {
	s, err := FromEPW(strings.NewReader(epw(nil)))
	if err != nil {
		t.Fatal(err)
	}
	// hours 8 to 17 hold 7 to 16 °C: three of ten are below 10 °C
	o := s.Odds(month(5), Hours{}, 10)
	if math.Abs(o.ShareBelow-0.3) > 1e-9 || o.DaysUsable != 1 || o.NightFrost != 0 || !s.Exact() {
		t.Errorf("counted odds: %+v", o)
	}
	if o := s.Odds(month(5), Hours{}, 14); o.DaysUsable != 0 {
		t.Errorf("three hours are no usable spell: %+v", o)
	}
	warm, err := FromEPW(strings.NewReader(epw(func(m, d, _ int, f []string) {
		if m == 7 && d == 4 {
			f[6] = "30"
		}
	})))
	if err != nil {
		t.Fatal(err)
	}
	year := warm.Odds(Span{date(2025, 1, 1), date(2025, 12, 31)}, Hours{}, 25)
	if math.Abs(year.ShareAbove-1./yearDays) > 1e-9 {
		t.Errorf("one warm day in a whole year counted: %+v", year)
	}
	if tx, tn, _, dew := s.Month(5); tx != 23 || tn != 0 || *dew != -2 {
		t.Errorf("May: %g %g %g", tx, tn, *dew)
	}
	for name, tc := range map[string]struct{ text, says string }{
		"other file": {"month,tmax,tmin\n", "LOCATION"},
		"short":      {strings.Join(strings.SplitN(epw(nil), "\n", 100)[:99], "\n"), "8760"},
		"bad value":  {epw(func(m, d, h int, f []string) { f[6] = "cold" }), "line 9"},
		"bad day":    {epw(func(m, d, h int, f []string) { f[2] = "32" }), "no hour of a year"},
		"half a month": {epw(func(m, d, h int, f []string) {
			if m == 3 && d > 15 {
				f[6] = "99.9"
			}
		}), "March has temperatures on 15 days only"},
		"an hour never": {epw(func(m, d, h int, f []string) {
			if h > 20 {
				f[6] = "99.9"
			}
		}), "hour 21 has no temperature"},
	} {
		if _, err := FromEPW(strings.NewReader(tc.text)); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Hours without a figure are filled from those beside them, whole days from the
// days beside them; a gap neither ends a spell nor counts as warm.
func TestFromEPWGaps(t *testing.T) {
	whole, err := FromEPW(strings.NewReader(epw(nil)))
	if err != nil {
		t.Fatal(err)
	}
	for name, gone := range map[string]func(m, d, h int) bool{
		"one hour of every day": func(_, _, h int) bool { return h == 12 },
		"every third hour":      func(m, _, h int) bool { return m == 5 && h%3 == 0 },
		"five days":             func(m, d, _ int) bool { return m == 5 && d > 9 && d < 15 },
		"the days at New Year":  func(m, d, _ int) bool { return m == 12 && d > 28 || m == 1 && d < 3 },
		"some working mornings": func(m, d, h int) bool { return m == 5 && d%2 == 0 && h > 6 && h < 13 },
	} {
		s, err := FromEPW(strings.NewReader(epw(func(m, d, h int, f []string) {
			if gone(m, d, h) {
				f[6] = "99.9"
			}
		})))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		for _, span := range []Span{month(5), {date(2026, 12, 29), date(2027, 1, 2)}} {
			got, want := s.Odds(span, Hours{}, 10), whole.Odds(span, Hours{}, 10)
			if math.Abs(got.ShareBelow-want.ShareBelow) > 1e-9 || got.DaysUsable != want.DaysUsable || got.NightFrost != want.NightFrost {
				t.Errorf("%s: %+v, want %+v", name, got, want)
			}
		}
		if !strings.Contains(s.Place.Note, "without a figure") {
			t.Errorf("%s: note %q", name, s.Place.Note)
		}
	}
}
