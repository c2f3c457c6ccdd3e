package schedule_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

func TestReadingsInWords(t *testing.T) {
	for remark, want := range map[string]string{
		"Board 38F, air 42F, 85% RH":                                     "air_c 5.6 rh 0.85 surface_c 3.3",
		"surface 4 °C, dew point 3 °C":                                   "dew_c 3.0 surface_c 4.0",
		"Wall at 5 °C / air 7 °C / RH 92%. Sheet rolled.":                "air_c 7.0 rh 0.92 surface_c 5.0",
		"surface 6.5°C (DP 4.1°C)":                                       "dew_c 4.1 surface_c 6.5",
		"38 F board and 42 F air, humidity 85 %":                         "air_c 5.6 rh 0.85 surface_c 3.3",
		"Checked at 8 am; surface 2 °F above dew point":                  "margin_k 1.1",
		"Surface must be 5 °F above dew point":                           "",
		"Keep the surface above 40 F":                                    "",
		"wait until air is 40 F":                                         "",
		"7 am: board 38F, air 42F, 85% RH; noon: board 46F":              "air_c 5.6 rh 0.85",
		"concrete at 4.2% MC":                                            "",
		"good to surface 20 F":                                           "",
		"room 21 °C, 40% RH":                                             "",
		"Brick to 120 F in July":                                         "",
		"Surf. 44 F, dew pt. 42 F":                                       "dew_c 5.6 surface_c 6.7",
		"Amb. 50 F, surf. 34 F. Rolled":                                  "air_c 10.0 surface_c 1.1",
		"Surface temp. 34 F at 8 am":                                     "surface_c 1.1",
		"Service temp. 180 F":                                            "",
		"Storage temp. max. 90 F":                                        "",
		"38 F; rolled twice":                                             "air_c 3.3",
		"Overcast, 3 °C":                                                 "air_c 3.0",
		"sunny, 61 F at noon":                                            "air_c 16.1",
		"25 F sheet on the truck":                                        "",
		"45 F min":                                                       "",
		"edge bead run 3/4/27, 44 F":                                     "",
		"readings: steel 1.5 °C, ambient 3 °C, relative humidity 88 pct": "air_c 3.0 rh 0.88 surface_c 1.5",
	} {
		t.Run(remark, func(t *testing.T) {
			head := "Mark | Membrane | Substrate | Primer | Touches | Remarks\n"
			s := readPages(t, page{name: "S", grid: head + "D1 | butyl sheet | plywood | none | brick | " + remark})
			if got := readingsOf(t, s.Lines[0].Figures); got != want {
				t.Errorf("got %q, want %q", got, want)
			}
		})
	}
}

func TestReadingsInColumns(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Surface temp F | Air temp F | RH % | Dew point
D1 | butyl sheet | plywood | none | @2026-03-02 | 38 | 42 | 85 | 37 F
D2 | butyl sheet | plywood | none | @2026-03-02 | | | n/a | `})
	if got, want := readingsOf(t, s.Lines[0].Figures), "air_c 5.6 dew_c 2.8 rh 0.85 surface_c 3.3"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got := readingsOf(t, s.Lines[1].Figures); got != "" {
		t.Errorf("empty cells: got %q", got)
	}
}

// Words before two readings tell where they were taken; words that name one of the
// two are heard as such.
func TestTwoReadingsWithWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Air / surface, °C
D1 | butyl sheet | plywood | none | @2026-03-02 | tented: 12 / 9 (street -6)
D2 | butyl sheet | plywood | none | @2026-03-02 | in hall +16 / +13
D3 | butyl sheet | plywood | none | @2026-03-02 | surface 5 / 8`})
	for mark, want := range map[string]string{"D1": "air_c 12.0 surface_c 9.0", "D2": "air_c 16.0 surface_c 13.0"} {
		if got := readingsOf(t, line(t, s, mark).Figures); got != want {
			t.Errorf("%s: got %q, want %q", mark, got, want)
		}
	}
	if !said(line(t, s, "D1"), "heated") {
		t.Errorf("signals %+v", line(t, s, "D1").Signals)
	}
	if f := line(t, s, "D3").Figures["reading_air_c"]; f.Min != nil {
		t.Errorf("the reading of the surface was taken for that of the air: %+v", f)
	}
}

// A high and a low are a range, and words beside a reading tell of the work.
func TestReadingsThatAreRanges(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Air °F
D1 | butyl sheet | plywood | none | @2026-03-02 | 52/31
D2 | butyl sheet | plywood | none | @2026-03-02 | 41
D3 | butyl sheet | plywood | none | @2026-03-02 | tented, 50`})
	if f := line(t, s, "D1").Figures["reading_air_c"]; f.Min == nil || fmt.Sprintf("%.1f %.1f", *f.Min, *f.Max) != "-0.6 11.1" {
		t.Errorf("D1: %+v", f)
	}
	if f := line(t, s, "D2").Figures["reading_air_c"]; f.Min == nil || *f.Min != *f.Max {
		t.Errorf("D2: %+v", f)
	}
	if !said(line(t, s, "D3"), "heated") {
		t.Errorf("D3: %v", line(t, s, "D3").Signals)
	}
}

// readingsOf writes the readings of a line: "air_c 5.6 rh 0.85".
func readingsOf(t *testing.T, figures map[string]schedule.Figure) string {
	t.Helper()
	var out []string
	for _, key := range slices.Sorted(maps.Keys(figures)) {
		name, ok := strings.CutPrefix(key, "reading_")
		if !ok {
			continue
		}
		f := figures[key]
		if f.Min == nil || f.Problem != "" {
			t.Errorf("%s: %+v", key, f)
			continue
		}
		format := "%s %.1f"
		if name == "rh" {
			format = "%s %.2f"
		}
		out = append(out, fmt.Sprintf(format, name, *f.Min))
	}
	return strings.Join(out, " ")
}

// The result of an air test may stand where the inspection is told.
func TestAirResultOfAnInspection(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Installed | Inspected
W1 | butyl sheet | CMU | 2 May 2027 | 4 May 2027
W2 | butyl sheet | CMU | 2 May 2027 | 0.31 L/(s·m²) at 300 Pa
W3 | butyl sheet | CMU | 2 May 2027 | 6 May 2027
`)
	if f := line(t, s, "W2").Figures["air_result_lsm2"]; f.Min == nil || *f.Min != 0.31 || f.At.Cell != "E3" {
		t.Errorf("got %+v", f)
	}
	if f, is := line(t, s, "W1").Figures["air_result_lsm2"]; is {
		t.Errorf("W1: got %+v", f)
	}
}

// Two readings that a heading names, and the night that the cell tells after them.
func TestTwoReadingsAndTheNight(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Air / wall °F
D1 | butyl sheet | plywood | acrylic primer | @2026-11-02 | 51 / 49, low tonight 24
D2 | butyl sheet | plywood | acrylic primer | @2026-11-03 | 52 / 50`})
	for mark, want := range map[string]string{"D1": "10.6 9.4 -4.4", "D2": "11.1 10.0 -"} {
		got := []string{"-", "-", "-"}
		for i, key := range []string{"reading_air_c", "reading_surface_c", "reading_night_c"} {
			if f, ok := line(t, s, mark).Figures[key]; ok && f.Min != nil {
				got[i] = fmt.Sprintf("%.1f", *f.Min)
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %v, want %s", mark, got, want)
		}
	}
}

// The air of the night after the work is told beside that of the day, in a column of its
// own unit or in a remark; a limit for nights is none.
func TestNightReadings(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Install date | Air F (lo-hi) | Remarks
D1 | butyl sheet | plywood | acrylic primer | @2026-03-02 | 47 at 2 pm; 27 overnight |
D2 | butyl sheet | plywood | acrylic primer | @2026-03-03 | 44-58 | night low -3 °C
D3 | butyl sheet | plywood | acrylic primer | @2026-03-04 | 44-58 | heat held at 50 F overnight
D4 | butyl sheet | plywood | acrylic primer | @2026-03-05 | 50 / 31 nite outside | tented
D6 | butyl sheet | plywood | acrylic primer | @2026-03-07 | 45 aft / 29 o/n |
D5 | butyl sheet | plywood | acrylic primer | @2026-03-06 | 44-58 | hard freeze expected tonight`})
	for mark, want := range map[string]string{"D1": "-2.8", "D2": "-3.0", "D3": "", "D4": "-0.6", "D5": "", "D6": "-1.7"} {
		got := ""
		if f, ok := line(t, s, mark).Figures["reading_night_c"]; ok {
			got = fmt.Sprintf("%.1f", *f.Min)
		}
		if got != want {
			t.Errorf("%s: night %q, want %q", mark, got, want)
		}
	}
	if f := line(t, s, "D3").Figures["reading_air_c"]; f.Min == nil || fmt.Sprintf("%.1f %.1f", *f.Min, *f.Max) != "6.7 14.4" {
		t.Errorf("a column of low and high gives %+v", f)
	}
	if !slices.ContainsFunc(line(t, s, "D5").Signals, func(g schedule.Said) bool { return g.ID == "frosty_night" }) {
		t.Errorf("no night of frost heard: %v", line(t, s, "D5").Signals)
	}
}

// The low and the high of the day's air in two columns are one reading, and no limits of
// what goes on; limits stay limits, and one end alone does.
func TestEndsOfTheDayInTwoColumns(t *testing.T) {
	for heads, want := range map[string]string{
		"Ambient lo °C | Ambient hi °C":                "air_c 4.0 to 13.0",
		"Outdoor low °C | Outdoor high °C":             "air_c 4.0 to 13.0",
		"Lay min °C | Lay max °C":                      "",
		"Outdoor limit low °C | Outdoor limit high °C": "",
		"Min °C | Max °C":                              "",
	} {
		s := read(t, `Item | Membrane | Substrate | Primer | Installed | `+heads+` | Covered
1 | self-adhered SBS sheet | plywood | solvent primer | 2026-03-03 | 4 | 13 | 2026-03-20
2 | self-adhered SBS sheet | CMU | solvent primer | 2026-03-04 | 5 | 12 | 2026-03-20
3 | self-adhered SBS sheet | CMU | solvent primer | 2026-03-05 | nt | nt | 2026-03-20
`)
		got := ""
		if f, read := s.Lines[0].Figures["reading_air_c"]; read {
			got = fmt.Sprintf("air_c %.1f to %.1f", *f.Min, *f.Max)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", heads, got, want)
		}
		if _, limit := s.Lines[0].Figures["apply_max_c"]; limit != (want == "") {
			t.Errorf("%s: limit %v", heads, limit)
		}
	}
}

// The moisture of wood is told by the meter that read it, in a column of results too.
func TestWoodMoistureByItsMeter(t *testing.T) {
	for cell, want := range map[string]float64{
		"wood meter 22 %":       0.22,
		"21 % by pins":          0.21,
		"plywood read 24 %":     0.24,
		"resistance meter 17%":  0.17,
		"plywood 40 % primed":   0,
		"wind gusts, 30 % done": 0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Results\nK1 | butyl sheet | plywood | none | "+cell+"\n")
		got := 0.0
		if f := line(t, s, "K1").Figures["wood_moisture"]; f.Min != nil {
			got = *f.Min
		}
		if got != want {
			t.Errorf("%q: %v, want %v", cell, got, want)
		}
	}
}

// On a job with one scale of temperatures a reading needs no degrees; what is counted or
// measured in other ways is none, and on a job with two scales nothing is guessed.
func TestReadingsWithoutDegrees(t *testing.T) {
	for remark, want := range map[string]string{
		"surf 38, rolled twice":                        "surface_c 3.3",
		"ambient was 44 at start":                      "air_c 6.7",
		"plywood read 122 by laser at 2 pm":            "surface_c 50.0",
		"wall 41 in the shade, sun by ten":             "surface_c 5.0",
		"88 air, plywood 104 by IR":                    "air_c 31.1 surface_c 40.0",
		"low of 35 overnight, rolled by noon":          "night_c 1.7",
		"freezer running, 30 inside, patch rolled":     "air_c -1.1",
		"block 12 courses up":                          "",
		"rod + 50 air, tooled":                         "",
		"240 F membrane under black metal":             "",
		"wall 14 and 15 done, roof next":               "",
		"deck 40, bay 3, rolled":                       "",
		"air 75 Pa, no leak":                           "",
		"block 22 by the stair":                        "",
		"freezer lot 22, 30 rolls inside":              "",
		"surface must be 40 or more":                   "",
		"patched the night of 12 May, wall dry":        "",
		"2 coats, 35 mils dry at 16 places, no misses": "",
	} {
		book := `Mark | Membrane | Substrate | Primer | Touches | Remarks
D1 | QB-1 | plywood | none | brick | ` + remark + `
D2 | QB-1 | plywood | none | brick |

Tag | Type | Apply min, °F`
		one := read(t, book+"\nQB-1 | butyl sheet | 20\n")
		figures := line(t, one, "D1").Figures
		got := strings.TrimSpace(readingsOf(t, figures))
		if f, told := figures["reading_night_c"]; told && !strings.Contains(got, "night") {
			got = strings.TrimSpace(got + fmt.Sprintf(" night_c %.1f", *f.Min))
		}
		if got != want {
			t.Errorf("%q: %q, want %q", remark, got, want)
		}
		two := read(t, book+" | Service, °C\nQB-1 | butyl sheet | 20 | 80\n")
		if f, told := line(t, two, "D1").Figures["reading_surface_c"]; told {
			t.Errorf("%q in two scales: %+v", remark, f)
		}
	}
}

// A temperature that stands alone is the air of the day, unless no air is as hot.
func TestNoAirAsHot(t *testing.T) {
	for said, want := range map[string]bool{"75 F": true, "175 F": false} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nR1 | butyl sheet | plywood | none | "+said+"\nR2 | butyl sheet | plywood | none | -\n")
		if _, got := s.Lines[0].Figures["reading_air_c"]; got != want {
			t.Errorf("%s: a reading of the air %v, want %v", said, got, want)
		}
	}
}

// The air of the day stands below a band of the work, and so do the days that a row counts
// beside those that are allowed; one column of the low that a sheet bears stays a limit.
func TestReadingsBelowABandOfTheWork(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
 | Installation | | | | Protection | | |
Mark | Membrane | Substrate | Put up | Air °F low/high | UV lim. (d) | Hidden on | Exposure (d)
D1 | butyl sheet | plywood | @2026-03-02 | 41/55 | 60 | @2026-03-20 | 18
D2 | butyl sheet | plywood | @2026-03-03 | 44/58 | 60 | @2026-03-24 | 21`, merges: []string{"B1:E1", "F1:H1"}})
	if f := line(t, s, "D1").Figures["reading_air_c"]; f.Min == nil || fmt.Sprintf("%.0f %.0f", *f.Min, *f.Max) != "5 13" {
		t.Errorf("air %+v", f)
	}
	for key, want := range map[string]float64{"exposure_days": 60, "planned_open_days": 18} {
		if f := line(t, s, "D1").Figures[key]; f.Min == nil || *f.Min != want {
			t.Errorf("%s: %+v, want %g", key, f, want)
		}
	}
	s = readPages(t, page{name: "S", grid: `
 | Installation | | |
Mark | Membrane | Substrate | Put up | Low temp °F
D1 | butyl sheet | plywood | @2026-03-02 | 25`, merges: []string{"B1:E1"}})
	if f, read := line(t, s, "D1").Figures["reading_air_c"]; read {
		t.Errorf("a limit is read as the air of the day: %+v", f)
	}
}
