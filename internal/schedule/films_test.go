package schedule_test

import (
	"fmt"
	"math"
	"testing"
)

// A column of what was read may give the film wet and dry, with the unit in its
// heading alone; the wet one is no wet surface.
func TestFilmsReadWetAndDry(t *testing.T) {
	for cell, want := range map[string]float64{"52 wet / 30 dry": 0.762, "700 µm dry": 0.7, "40 wet": 0, "21 psi": 0} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Gauge reading, mils
D1 | fluid-applied acrylic membrane | CMU | none | ` + cell + `
D2 | fluid-applied acrylic membrane | CMU | none | 50 wet / 29 dry`})
		l := line(t, s, "D1")
		got := 0.0
		if f, ok := l.Figures["film_mm"]; ok && f.Min != nil {
			got = *f.Min
		}
		if math.Abs(got-want) > 0.001 {
			t.Errorf("%s: %v mm, want %v", cell, got, want)
		}
		if len(l.Signals) > 0 {
			t.Errorf("%s: heard %+v", cell, l.Signals)
		}
	}
}

// Of several pull tests the least counts, in a remark or in a column of readings, and
// the notes may ask for a least.
func TestPullTests(t *testing.T) {
	for cell, want := range map[string]float64{"48 F. Pulls 19, 14, 22 psi": 14, "52 F; adhesion test 0.2 MPa": 29, "51 F, pulled tight": 0} {
		s := read(t, `Mark | Membrane | Substrate | Primer | Readings
D1 | fluid-applied acrylic membrane | CMU | none | `+cell+`
D2 | fluid-applied acrylic membrane | CMU | none | 50 F

Notes
Pull tests: 15 psi or more.
`)
		got := 0.0
		if f, ok := line(t, s, "D1").Figures["pull_pa"]; ok && f.Min != nil {
			got = *f.Min / 6894.757
		}
		if math.Abs(got-want) > 0.1 {
			t.Errorf("%s: %v psi, want %v", cell, got, want)
		}
		if l := limit(s, "pull_pa"); l == nil || l.Min == nil || math.Abs(*l.Min/6894.757-15) > 0.1 {
			t.Errorf("limits %+v", s.Project.Limits)
		}
	}
}

// A bare film beside the tag is read in the unit of films that the data gives; a
// unit of its own stands, and data in inches tells nothing of the gauge.
func TestFilmInTheUnitOfTheData(t *testing.T) {
	for _, tc := range []struct {
		cell, heading, thick string
		want                 float64
	}{
		{"FA-1, 31 DFT", "Thickness, mils", "40", 0.787},
		{"FA-1, 900 dry", "Thickness, µm", "1000", 0.9},
		{"FA-1, 700 µm dry", "Thickness, mils", "40", 0.7},
		{"FA-1, 0.71 dry", "Thickness, mils", "40", 0.71},
		{"FA-1, 0.7 mm dry", "Thickness in.", "0.04", 0.7},
		{"FA-1, 31 DFT", "Thickness in.", "0.04", 0},
		{"FA-1, coat 2", "Thickness, mils", "40", 0},
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | ` + tc.cell + ` | CMU | none | brick
D2 | TP-1 | CMU | none | brick`}, page{name: "P", grid: "Tag | Type | " + tc.heading + " | Apply min °F\nFA-1 | fluid-applied acrylic membrane | " + tc.thick + " | 40\nTP-1 | butyl tape | " + tc.thick + " | 20"})
		got := 0.0
		if f, ok := line(t, s, "D1").Figures["film_mm"]; ok && f.Min != nil {
			got = *f.Min
		}
		if math.Abs(got-tc.want) > 0.001 {
			t.Errorf("%s under %q: %v mm, want %v", tc.cell, tc.heading, got, tc.want)
		}
	}
}

// The words for what a product does there may ask for a film; a figure before a noun
// is of that, and lengths in other units are no film.
func TestFilmAmongWords(t *testing.T) {
	for kind, want := range map[string]string{
		"field coat, 45 mils dry": "45 mils dry",
		"upstand, 1500 µm":        "1500 µm",
		"base coat, 60 mil wet":   "60 mil wet",
		"over 10 mil poly":        "",
		"collar, 2 in. wide":      "",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Tag | Function | Substrate | Primer | Touches
D1 | FA-1 | ` + kind + ` | CMU | none | brick
D2 | FA-1 | jamb strip | CMU | none | brick`}, page{name: "P", grid: "Tag | Type | Thickness, mils | Apply min °F\nFA-1 | fluid-applied acrylic membrane | 40 | 40"})
		f := line(t, s, "D1").Figures["thickness_mm"]
		if f.Text != want {
			t.Errorf("%s: %q, want %q", kind, f.Text, want)
		}
	}
}

// What a test for air let through is told in a remark; what a product is rated is not it.
func TestAirResult(t *testing.T) {
	for remark, want := range map[string]float64{
		"Mock-up 4 May: 0.31 L/(s·m²) at 75 Pa.":        0.31,
		"blower door 0.05 cfm/ft² at 75 Pa":             0.254,
		"must be tested to 0.15 L/(s·m²) at 75 Pa max.": 0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nT1 | butyl sheet | plywood | none | "+remark)
		if f, ok := line(t, s, "T1").Figures["air_result_lsm2"]; ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// A film told in two units in the words for the material keeps both: they are held against
// each other.
func TestFilmToldInTwoUnits(t *testing.T) {
	for cell, want := range map[string]bool{"LM-1, 30 mil DFT (0.3 in.)": true, "LM-1, 30 mil dry (0.76 mm)": false} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | ` + cell + ` | CMU | none`}, page{name: "Products", grid: `
Tag | What it is | Thickness
LM-1 | fluid-applied acrylic membrane | 30 mil DFT`})
		f := line(t, s, "D1").Figures["film_mm"]
		if f.Min == nil || math.Abs(*f.Min-0.762) > 0.001 || f.Disagree != want {
			t.Errorf("%s: %+v, want two that disagree: %v", cell, f, want)
		}
	}
}

// A cell of laps may tell the thickness of the row's sheet by its name; that of something
// else is no thickness of the sheet.
func TestThicknessAmongLaps(t *testing.T) {
	for cell, want := range map[string]float64{
		"9 wide strip, 1.5 mm thk; laps 4": 1.5,
		"laps 4; 40 mm thick":              40,
		"4 (60 mil thick)":                 1.524,
		"laps 4 over 13 mm thick board":    0,
		"laps 4, 13 mm thick board":        0,
		"laps 4, bead 6 mm thick":          0,
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Laps and sequence (in.)
D1 | butyl membrane | CMU | none | ` + cell + `
D2 | butyl membrane | CMU | none | laps 4`})
		got := 0.0
		if f, ok := line(t, s, "D1").Figures["thickness_mm"]; ok && f.Min != nil {
			got = *f.Min
		}
		if math.Abs(got-want) > 0.001 {
			t.Errorf("%s: %v mm, want %v", cell, got, want)
		}
	}
}

// What a sheet lets through by the test of a material is told in a remark; an assembly's, and
// what is asked for, is not it.
func TestAirOfTheSheetInARemark(t *testing.T) {
	for remark, want := range map[string]float64{
		"0.09 L/(s·m²) @ 75 Pa by ASTM E2178, report on file":       0.09,
		"membrane approved with 0.03 cfm/ft² at 1.57 psf":           0.1524,
		"CAN/ULC-S741: 0.011 L/(s·m²)":                              0.011,
		"assembly 0.11 L/(s·m²) by E2357; sheet by E2178":           0,
		"membrane shall be tested to 0.02 L/(s·m²) max., E2178":     0,
		"0.11 L/(s·m²) at 75 Pa, as the drawings have it":           0,
		"mock-up wall 0.11 L/(s·m²) at 75 Pa, sheet to ASTM E2178.": 0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nT1 | butyl sheet | plywood | none | "+remark)
		if f, ok := line(t, s, "T1").Figures["air_lsm2"]; ok != (want > 0) || ok && (!near(f.Min, want) || f.At.Cell == "") {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// TestFilmsAfterTheirWords: the word for a film may stand before its figure.
func TestFilmsAfterTheirWords(t *testing.T) {
	for cell, want := range map[string]string{
		"wet 50 / dry 25":              "0.64 25 mil dry",
		"50 wet, 25 dry":               "0.64 25 mil dry",
		"WFT: 1.5 mm, DFT: 0.75 mm":    "0.75 0.75 mm DFT",
		"dry 25 / wet 50":              "0.64 dry 25 / wet 50",
		"wet 50":                       "1.27 wet 50",
		"25 mil, dry laid on wet slab": "0.64 25 mil, dry laid on wet slab",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Thickness, mil
D1 | LM-1 | concrete | none | ` + cell + `
D2 | LM-1 | CMU | none | 30`}, page{name: "P", grid: "Tag | Type | Thickness | Apply min °F\nLM-1 | fluid-applied acrylic membrane | 30 mil dry | 40\nTP-1 | butyl tape | 1 mm | 20"})
		f := line(t, s, "D1").Figures["thickness_mm"]
		if f.Min == nil || fmt.Sprintf("%.2f %s", *f.Min, f.Text) != want {
			t.Errorf("%s: %v %+v, want %s", cell, value(f.Min), f, want)
		}
	}
}

// Permeance may be cut short before its figure, which ends no sentence; after a figure it is
// its unit, and ends one.
func TestPermeanceCutShort(t *testing.T) {
	for remark, want := range map[string]float64{
		"S741 air perm. 0.06 L/(s·m²) at 75 Pa":                          0.06,
		"E2178: air perm. 0.01 cfm/sf":                                   0.0508,
		"sheet has 14 perm. Mock-up by E2357 air perm. 0.2 L/(s·m²)":     0,
		"to E2178. Wall chamber: air perm. 0.2 L/(s·m²), leaks at sills": 0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nT1 | butyl sheet | plywood | none | "+remark)
		if f, ok := line(t, s, "T1").Figures["air_lsm2"]; ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// A film over joints is told in mil, in which nobody tells a lap.
func TestFilmOverJointsIsNoLap(t *testing.T) {
	for cell, want := range map[string]float64{
		"LF-1, 50 mil over joints, 6 in. wide": 0,
		"LF-1, lapped 2 in. over the sheet":    50.8,
	} {
		s := readPages(t, page{name: "S", grid: "Mark | What goes on | Substrate | Primer | Remarks\nT1 | " + cell + " | plywood | none | -\nT2 | LF-1 | plywood | none | -"},
			page{name: "P", grid: "Tag | Type | Apply min °F\nLF-1 | STPE liquid flashing | 25\nTP-1 | butyl tape | 20"})
		if f, ok := line(t, s, "T1").Figures["lap_mm"]; ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", cell, f)
		}
	}
}

// What stands behind the first product of a cell, before the next layer, is its own; and a
// gauge tells the wet film after its word.
func TestFiguresBeforeTheNextLayer(t *testing.T) {
	for cell, want := range map[string]string{
		"LM-1, 9 perm; then XPS 50 mm":             "vapor_ng 9 perm",
		"LM-1, 25 mil, then IN-1 75 mm":            "thickness_mm 25 mil",
		"LM-1 (9 perm) followed by IN-1 75 mm":     "vapor_ng 9 perm",
		"LM-1 and IN-1, 9 perm; then brick":        "",
		"IN-1 over LM-1, 9 perm":                   "",
		"LM-1; then IN-1, 9 perm":                  "",
		"LM-1, 2 passes, WFT gauge 45 mils in all": "thickness_mm 45 mils wet",
		"LM-1, wet film 45 mils":                   "thickness_mm 45 mils wet",
		"LM-1, wet wall 45 mils at joints":         "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | What goes on | Substrate | Primer | Remarks\nD1 | " + cell + " | concrete | none | -\nD2 | LM-1 | CMU | none | -"},
			page{name: "P", grid: "Tag | Type | Thickness | Apply min °F\nLM-1 | fluid-applied acrylic membrane | 30 mil dry | 40\nIN-1 | mineral wool | 75 mm | -"})
		got := ""
		for _, key := range []string{"thickness_mm", "vapor_ng"} {
			if f, ok := line(t, s, "D1").Figures[key]; ok {
				got += key + " " + f.Text
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}

// The figure may stand right behind what was tested.
func TestAirOfWhatWasTested(t *testing.T) {
	for remark, want := range map[string]float64{
		"result from the lab: sheet 0.05 L/(s·m²) at 75 Pa":  0.05,
		"film alone came out at 0.06 L/(s·m²)":               0.06,
		"membrane air permeance = 0.012 L/(s·m²)":            0.012,
		"membrane and frame 0.3 L/(s·m²) at 75 Pa":           0,
		"panel with the sheet 0.3 L/(s·m²) at 75 Pa":         0,
		"material limit 0.02 L/(s·m²)":                       0,
		"sheet at the mock-up, test gave 0.3 L/(s·m²)":       0,
		"membrane 0.02 L/(s·m²) max. as asked by the clause": 0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nT1 | butyl sheet | plywood | none | "+remark)
		if f, ok := line(t, s, "T1").Figures["air_lsm2"]; ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// Laps and joints of another sentence leave the air that the material passes; those of its own
// are what was tested.
func TestAirBesideLaps(t *testing.T) {
	for remark, want := range map[string]float64{
		"Rolled, laps 75 mm. Air 0.03 L/(s·m²) at 75 Pa, E2178": 0.03,
		"Air 0.03 L/(s·m²) (E2178). Joints taped":               0.03,
		"0.03 L/(s·m²) with taped joints, after E2178":          0,
		"laps at 0.03 L/(s·m²) by E2178":                        0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nT1 | butyl sheet | plywood | none | "+remark)
		if f, ok := line(t, s, "T1").Figures["air_lsm2"]; ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// The figure of what came in the place of a sheet is that sheet's, if it is not that of a wall.
func TestAirOfASubstitute(t *testing.T) {
	for remark, want := range map[string]float64{
		"alternate sheet, 0.06 L/(s·m²) at 75 Pa":            0.06,
		"alt. membrane, air leak. 0.3 L/(s·m²) at 75 Pa":     0.3,
		"subst. membrane: air perm. 0.01 cfm/sf":             0.0508,
		"replacement rolls, air leakage 0.11 L/(s·m²)":       0.11,
		"alt. sheet must not pass 0.02 L/(s·m²)":             0,
		"substitute sheet; wall tested at 0.2 L/(s·m²)":      0,
		"replacement sheet, mock-up leaked 0.2 L/(s·m²)":     0,
		"alternate girts, 0.2 L/(s·m²) at 75 Pa as designed": 0,
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Remarks\nT1 | butyl sheet | plywood | none | "+remark)
		if f, ok := line(t, s, "T1").Figures["air_lsm2"]; ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// A column of what sheets are rated holds figures of any kind, as remarks do.
func TestAirInAColumnOfRatings(t *testing.T) {
	for _, heading := range []string{"Rated", "Ratings", "Rated values"} {
		s := read(t, "Mark | Membrane | Substrate | Primer | "+heading+"\n"+
			"T1 | butyl sheet | plywood | none | air perm. 0.11 L/(s·m²) by E2178\n"+
			"T2 | butyl sheet | plywood | none | 1 h, ULC listed\n")
		if f, ok := line(t, s, "T1").Figures["air_lsm2"]; !ok || !near(f.Min, 0.11) {
			t.Errorf("%s: %+v", heading, f)
		}
		if f, ok := line(t, s, "T2").Figures["air_lsm2"]; ok {
			t.Errorf("%s: %+v", heading, f)
		}
	}
}
