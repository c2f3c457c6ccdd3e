package cli

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
	"unicode/utf8"
)

func season(args ...string) (string, error) {
	return written(newSeason, args)
}

func TestSeasonText(t *testing.T) {
	out, err := season("--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18")
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"Buffalo airport, NY", "1981-2010", "estimate", "47 days",
		"standard grade, 40 F", "mildest grade that suits: low-temperature grade", "2026-11-30", "% of working hours below 40 F",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	t.Log("\n" + out)
}

func TestSeasonVerdicts(t *testing.T) {
	for name, tc := range map[string]struct{ place, from, to, want string }{
		"summer":     {"Buffalo, NY", "2026-07-01", "2026-07-31", "standard"},
		"fall":       {"Buffalo, NY", "2026-12-01", "2026-12-20", "low-temperature"},
		"hard frost": {"Winnipeg, MB", "2026-11-12", "2026-11-26", "extra-low"},
		"none suits": {"Winnipeg, MB", "2027-01-05", "2027-01-25", ""},
	} {
		out, err := season("--place", tc.place, "--from", tc.from, "--to", tc.to, "--format", "json")
		if err != nil {
			t.Fatal(err)
		}
		var r struct {
			Mildest string `json:"mildest_grade"`
		}
		if err := json.Unmarshal([]byte(out), &r); err != nil {
			t.Fatal(err)
		}
		if r.Mildest != tc.want {
			t.Errorf("%s: mildest grade %q, want %q", name, r.Mildest, tc.want)
		}
	}
}

func TestSeasonJSON(t *testing.T) {
	out, err := season("--lat", "43.05", "--lon", "-88.2", "--from", "2026-12-01", "--to", "2026-12-20", "--limit", "40F", "--limit", "-5 °C", "--limit", "500 degrees Rankine", "--format", "json")
	if err != nil {
		t.Fatal(err)
	}
	var r struct {
		Station string
		Odds    []struct {
			LimitC     float64 `json:"limit_c"`
			ShareBelow float64 `json:"share_below"`
			DaysUsable float64 `json:"days_usable"`
		}
		Weeks []struct {
			From string
			Odds []struct {
				ShareBelow float64 `json:"share_below"`
			}
		}
	}
	if err := json.Unmarshal([]byte(out), &r); err != nil {
		t.Fatal(err)
	}
	if r.Station == "" || len(r.Odds) != 3 || len(r.Weeks) != 3 || len(r.Weeks[0].Odds) != 3 {
		t.Fatalf("%+v", r)
	}
	if a, b := r.Odds[0], r.Odds[1]; a.LimitC != 4.44 || b.LimitC != -5 || r.Odds[2].LimitC != 4.63 || a.ShareBelow < 0.8 || b.ShareBelow >= a.ShareBelow || b.DaysUsable <= a.DaysUsable {
		t.Errorf("odds %+v", r.Odds)
	}
}

func TestSeasonOwnFigures(t *testing.T) {
	file := filepath.Join(t.TempDir(), "site.csv")
	lines := "month,tmax,tmin\n"
	for _, m := range strings.Fields("1 2 3 4 5 6 7 8 9 10 11 12") {
		lines += m + ",12,2\n"
	}
	if err := os.WriteFile(file, []byte(lines), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := season("--climate", file, "--from", "2026-11-02", "--to", "2026-11-20")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(out, "own monthly figures") || !strings.Contains(out, "43° north") {
		t.Error(out)
	}
}

// A weather file is counted and not estimated: hours 08 to 17 of every day here
// hold 7 to 16 °C.
func TestSeasonWeatherFile(t *testing.T) {
	var b strings.Builder
	b.WriteString("LOCATION,Testfield,WI,USA,made for the test,000000,43.0,-88.0,-6.0,200.0\n" + strings.Repeat("HEADING\n", 7))
	for day := time.Date(2025, 1, 1, 0, 0, 0, 0, time.UTC); day.Year() == 2025; day = day.AddDate(0, 0, 1) {
		for h := 1; h <= 24; h++ {
			fmt.Fprintf(&b, "2025,%d,%d,%d,60,flags,%d.0,-2.0,50,101000\n", day.Month(), day.Day(), h, h-1)
		}
	}
	file := filepath.Join(t.TempDir(), "site.epw")
	if err := os.WriteFile(file, []byte(b.String()), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := season("--climate", file, "--from", "2026-11-02", "--to", "2026-11-20", "--limit", "10C", "--format", "json")
	if err != nil {
		t.Fatal(err)
	}
	var r struct {
		Basis    string
		Estimate bool
		Odds     []struct {
			ShareBelow float64 `json:"share_below"`
		}
	}
	if err := json.Unmarshal([]byte(out), &r); err != nil {
		t.Fatal(err)
	}
	if len(r.Odds) != 1 || math.Abs(r.Odds[0].ShareBelow-0.3) > 1e-9 || r.Estimate || !strings.Contains(r.Basis, "counted") {
		t.Errorf("%+v", r)
	}
}

func TestSeasonRefuses(t *testing.T) {
	for name, tc := range map[string]struct {
		args []string
		says string
	}{
		"no place":    {[]string{"--from", "2026-11-02", "--to", "2026-12-18"}, "--place"},
		"ambiguous":   {[]string{"--place", "Portland", "--from", "2026-11-02", "--to", "2026-12-18"}, "Portland, OR"},
		"bad date":    {[]string{"--place", "Buffalo, NY", "--from", "Nov 2", "--to", "2026-12-18"}, "--from"},
		"reversed":    {[]string{"--place", "Buffalo, NY", "--from", "2026-12-02", "--to", "2026-11-18"}, "before"},
		"bad limit":   {[]string{"--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18", "--limit", "40"}, "40F"},
		"bad hours":   {[]string{"--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18", "--hours", "morning"}, "--hours"},
		"bad format":  {[]string{"--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18", "--format", "xml"}, "text or json"},
		"cold limit":  {[]string{"--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18", "--limit", "-500F"}, "no air"},
		"no hour":     {[]string{"--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18", "--hours", "13pm-5pm"}, "22:00-06:00"},
		"no hours":    {[]string{"--place", "Buffalo, NY", "--from", "2026-11-02", "--to", "2026-12-18", "--hours", "07:00-07:00"}, "22:00-06:00"},
		"no such day": {[]string{"--place", "Buffalo, NY", "--from", "2027-02-29", "--to", "2027-03-18"}, "no such day"},
		"no end":      {[]string{"--place", "Buffalo, NY", "--from", "2027-02-28"}, "say when"},
		"years":       {[]string{"--place", "Buffalo, NY", "--from", "2020-01-01", "--to", "2026-01-01"}, "5 years"},
		"no flag":     {[]string{"Buffalo", "--from", "2026-11-02", "--to", "2026-12-18"}, `--place "Buffalo"`},
		"both":        {[]string{"--place", "Buffalo, NY", "--lat", "43", "--lon", "-79", "--from", "2026-11-02", "--to", "2026-12-18"}, "not both"},
		"far south":   {[]string{"--lat", "-33.9", "--lon", "151.2", "--from", "2026-11-02", "--to", "2026-12-18"}, "--climate FILE"},
		"half":        {[]string{"--lat", "43", "--from", "2026-11-02", "--to", "2026-12-18"}, "together"},
		"device":      {[]string{"--climate", os.DevNull, "--from", "2026-11-02", "--to", "2026-12-18"}, "it is a link, folder or device"},
		"no file":     {[]string{"--climate", "no-such.csv", "--from", "2026-11-02", "--to", "2026-12-18"}, "no-such.csv"},
	} {
		if _, err := season(tc.args...); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Whatever is asked, the report fits a terminal, and odd spans and hours have
// an answer.
func TestSeasonFits(t *testing.T) {
	for name, tc := range map[string]struct {
		args []string
		says string
	}{
		"a year of seven limits": {[]string{"--place", "18 mi west of Fargo, ND", "--from", "2026-01-01", "--to", "2026-12-31",
			"--limit", "40F", "--limit", "20F", "--limit", "0F", "--limit", "-10C", "--limit", "283.15K", "--limit", "50F", "--limit", "5C"}, "283.15 K"},
		"none suits":    {[]string{"--place", "Winnipeg, MB", "--from", "2027-01-05", "--to", "2027-01-25"}, "no grade suits"},
		"over New Year": {[]string{"--place", "Toronto, Ontario", "--from", "2026-12-28", "--to", "2027-01-03"}, "7 days"},
		"leap day":      {[]string{"--place", "Buffalo, NY", "--from", "2028-02-29", "--to", "2028-02-29"}, "1 day,"},
		"nights":        {[]string{"--place", "Buffalo, NY", "--from", "2026-12-01", "--to", "2026-12-05", "--hours", "22:00-06:00"}, "22:00-06:00"},
		"half days":     {[]string{"--place", "Buffalo, NY", "--from", "2026-12-01", "--to", "2026-12-05", "--hours", "7 am to 5:30 p.m."}, "7 am to 5:30 p.m."},
		"two hours":     {[]string{"--place", "Buffalo, NY", "--from", "2026-12-01", "--to", "2026-12-05", "--hours", "8-10"}, "fewer than four"},
		"polar night":   {[]string{"--place", "Alert, Nunavut", "--from", "2026-12-15", "--to", "2027-01-15"}, "no grade suits"},
	} {
		out, err := season(tc.args...)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if !strings.Contains(out, tc.says) {
			t.Errorf("%s: no %q in\n%s", name, tc.says, out)
		}
		for line := range strings.Lines(out) {
			if w := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); w > 80 {
				t.Errorf("%s: %d columns: %s", name, w, line)
			}
			if strings.Contains(line, "-0 ") {
				t.Errorf("%s: a zero below zero: %s", name, line)
			}
		}
	}
}
