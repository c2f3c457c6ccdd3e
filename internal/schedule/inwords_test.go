package schedule_test

import "testing"

// TestLapsInWords takes the lap of a wordy cell from the words that call it one,
// and none from words that tell of other things.
func TestLapsInWords(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Touches | Lap | Install date\n"
	for words, want := range map[string]float64{
		"75 mm side / 150 mm end; ends 25 mm below the sill": 75,
		"bedded both sides; held 20 mm below the sill":       0,
		"35 wet mils, comb each bay":                         0,
		"1-1/2\" all laps":                                   38.1,
		"3 in. side, 6 in. end":                              76.2,
		"2 in. down over the sheet below":                    50.8,
		"Open joints 3 mm max.":                              0,
		"2 weeks over programme":                             0,
		"5 mm gap min":                                       0,
		"ends butted w/ 3 mm":                                0,
		"butt to 1/4 in.":                                    0,
		"butted, 4 in. lap of the cover strip":               101.6,
		"4 in. laps, boards with 1/4 in. gaps":               101.6,
		"Slack loop over 3/4 in. rod, then 6 in. past it":    0,
		"Gasket sits on tape, stops 1 in. short of its edge": 0,
	} {
		s := readPages(t, page{name: "S", grid: head + "D1 | butyl sheet | plywood | none | brick | " + words + " | @2026-03-02"})
		got := 0.0
		if f, ok := line(t, s, "D1").Figures["lap_mm"]; ok && f.Min != nil {
			got = *f.Min
		}
		if got < want-0.1 || got > want+0.1 {
			t.Errorf("%q: %v mm, want %v", words, got, want)
		}
	}
}

// TestLeastLapAlone takes a column of least laps for the lap where no other column
// tells it, and no lap from the words of an edge that another layer laps.
func TestLeastLapAlone(t *testing.T) {
	const edges = " | upstand 200 mm; top edge lapped 50 mm by MV-2"
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap min. | Edge\nD1 | butyl sheet | plywood | none | 90 mm" + edges})
	if f := line(t, s, "D1").Figures["lap_mm"]; !near(f.Min, 90) {
		t.Errorf("lap %+v, want the 90 mm of its column", f)
	}
	s = readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap | Lap min. | Edge\nD1 | butyl sheet | plywood | none | 80 mm | 90 mm" + edges})
	l := line(t, s, "D1")
	if lap, least := l.Figures["lap_mm"], l.Figures["min_lap_mm"]; !near(lap.Min, 80) || !near(least.Min, 90) {
		t.Errorf("lap %+v and least lap %+v, want 80 and 90 mm", lap, least)
	}
	s = readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Edge\nD1 | butyl sheet | plywood | none | top edge lapped 50 mm by the wall sheet"})
	if f, ok := line(t, s, "D1").Figures["lap_mm"]; ok {
		t.Errorf("lap %+v: the wall sheet laps, and not this one", f)
	}
}

// TestLapCellIsHeard hears what a cell of laps says beside its figure.
func TestLapCellIsHeard(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Lap | Install date
D1 | butyl sheet | plywood | none | brick | 3 in., ends cut flush, no dams | @2026-03-02`})
	for _, said := range line(t, s, "D1").Signals {
		if said.ID == "end_dam" && said.No {
			return
		}
	}
	t.Error("nothing was heard of the dams")
}

// TestHeadingTellsOfShelter gives the rows under a heading its heat, unless they
// say otherwise.
func TestHeadingTellsOfShelter(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Env H = hoarded and heated, A = open air
Mark | Membrane | Substrate | Primer | Touches | Env | Install date | Remarks
STAIR (bldg heat on from 1 Dec)
D1 | butyl sheet | plywood | none | brick | | @2026-12-02 |
D2 | butyl sheet | plywood | none | brick | A | @2026-12-02 |
D3 | butyl sheet | plywood | none | brick | H | @2026-12-02 |
D4 | butyl sheet | plywood | none | brick | A | @2026-12-02 | hoard + heat, +10 °C
D5 | butyl sheet | plywood | none | brick | A | @2026-12-02 | site hoarding 2 m off`})
	for mark, want := range map[string]bool{"D1": true, "D2": false, "D3": true, "D4": true, "D5": false} {
		heated := false
		for _, said := range line(t, s, mark).Signals {
			heated = heated || said.ID == "heated" && !said.No
		}
		if heated != want {
			t.Errorf("%s heated: %v, want %v", mark, heated, want)
		}
	}
	for _, said := range s.Project.Signals {
		if said.ID == "heated" {
			t.Error("the legend was taken for a condition of the whole job")
		}
	}
}

// The laps of the ends are told apart from those of the sides; a fraction of an
// inch is one figure.
func TestEndLaps(t *testing.T) {
	for _, tc := range []struct {
		heading, cell string
		side, end     float64
	}{
		{"Laps side / end mm", "60 / 100", 60, 100},
		{"Side, end laps in", "3 / 5", 76.2, 127},
		{"Side, end laps in", "3/4", 19.05, 0},
		{"Lap", "sides 2 in., ends 4 in.", 50.8, 101.6},
		{"Lap mm", "75", 75, 0},
		{"Lap mm", "60 side / 90 end", 60, 90},
		{"Overlap (mm)", "65 sides, 40 ends", 65, 40},
		{"Lap mm", "60, sealed at 2 ends", 60, 0},
		{"Lap mm", "60 both sides / 2 ends up", 60, 0},
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | " + tc.heading + "\nD1 | butyl sheet | plywood | none | " + tc.cell})
		figures := line(t, s, "D1").Figures
		for key, want := range map[string]float64{"lap_mm": tc.side, "end_lap_mm": tc.end} {
			got := 0.0
			if f := figures[key]; f.Min != nil {
				got = *f.Min
			}
			if got < want-0.1 || got > want+0.1 {
				t.Errorf("%q under %q: %s %v, want %v", tc.cell, tc.heading, key, got, want)
			}
		}
	}
}

// TestLapAfterItsWord takes the figure that stands after the word, bare where the
// column tells the unit; films of other rows are no unit of laps.
func TestLapAfterItsWord(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Overlaps | Install date
D1 | fluid-applied coating | plywood | none | brick | 60 mil wet, turn 3 in. into openings | @2026-03-02
D2 | butyl sheet | plywood | none | brick | 2 1/2 sides, 6 ends | @2026-03-02
D3 | butyl sheet | plywood | none | brick | up 9, barred and sealed; laps 5 | @2026-03-02
D4 | butyl sheet | plywood | none | brick | down 4 each face, overlap 3, back dam 1 in. | @2026-03-02`})
	for mark, want := range map[string]float64{"D2": 63.5, "D3": 127, "D4": 76.2} {
		f := line(t, s, mark).Figures["lap_mm"]
		if f.Min == nil || *f.Min < want-0.1 || *f.Min > want+0.1 {
			t.Errorf("%s: %+v, want %v mm", mark, f, want)
		}
	}
}

// A lap may say what it is sealed with, and its figure stands first all the same.
func TestLapSealed(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Lap, mm | Install date
D1 | butyl sheet | plywood | none | upper sheet to lap 60 mm over it | 90 sealed QS-2 | @2026-03-02`})
	if f := line(t, s, "D1").Figures["lap_mm"]; f.Min == nil || *f.Min != 90 {
		t.Errorf("%+v, want 90 mm", f)
	}
}

// The lap of the ends may have a fraction of an inch.
func TestEndLapWithAFraction(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Laps | Install date
D1 | butyl sheet | plywood | none | brick | 2 1/2" side, 3 1/4" end | @2026-03-02
D2 | butyl sheet | plywood | none | brick | 2" side; 2-1/2 in. end | @2026-03-02`})
	for mark, want := range map[string]float64{"D1": 82.55, "D2": 63.5} {
		f := line(t, s, mark).Figures["end_lap_mm"]
		if f.Min == nil || *f.Min < want-0.1 || *f.Min > want+0.1 {
			t.Errorf("%s: %+v, want %v mm", mark, f, want)
		}
	}
}

// A cell of thickness may tell the air that passes too, by the test of a material; what is said
// of an assembly is no figure of the sheet.
func TestAirInACellOfThickness(t *testing.T) {
	for cell, want := range map[string]bool{
		"36 mil; 0.01 cfm/sf (E2178)":          true,
		"36 mil; 0.01 cfm/sf by ASTM E2178":    true,
		"36 mil; assembly 0.03 cfm/sf (E2357)": false,
		"36 mil; 12 perm":                      false,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Thickness / test\n1 | butyl sheet | CMU | none | "+cell+"\n2 | butyl sheet | CMU | none | 36 mil\n")
		if _, got := s.Lines[0].Figures["air_lsm2"]; got != want {
			t.Errorf("%s: %+v, want air %v", cell, s.Lines[0].Figures, want)
		}
	}
}
