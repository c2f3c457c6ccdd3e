package schedule_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// TestValues reads a column in which each row states the figure that matters to
// it, by the figure's kind and the words beside it.
func TestValues(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Lap | Stated value | Install date
D1 | fluid-applied acrylic air barrier | plywood | none | brick | 2 in. | 22 mils dry, avg. | @2026-05-02
D2 | butyl sheet | plywood | none | brick | 2 in. | 0.05 perm | @2026-05-02
D3 | silicone sealant | steel | none | brick | - | VOC 30 g/L | @2026-05-02
D4 | butyl sheet | plywood | none | brick | 2 in. | 230 °F service | @2026-05-02
D5 | silicone sealant | steel | none | brick | - | 3/8 in. joint | @2026-05-02`})
	for mark, want := range map[string]string{"D1": "thickness_mm", "D2": "vapor_ng", "D3": "voc_gl", "D4": "service_max_c", "D5": ""} {
		figures := line(t, s, mark).Figures
		for _, key := range []string{"thickness_mm", "vapor_ng", "voc_gl", "service_max_c"} {
			if _, ok := figures[key]; ok != (key == want) {
				t.Errorf("%s: figure %s is there: %v", mark, key, ok)
			}
		}
	}
}

// TestBoundTurnedRound reads "nothing above" and "no layer under" for what they
// mean.
func TestBoundTurnedRound(t *testing.T) {
	s := readPages(t, page{name: "S", grid: cardSchedule}, page{name: "Notes", grid: `
VOC: nothing above 250 g/L on site.
No sheet under 40 mil thick.`})
	for _, l := range s.Project.Limits {
		if l.Kind == "voc_gl" && (l.Max == nil || l.Min != nil) {
			t.Errorf("VOC %+v", l)
		}
		if l.Kind == "thickness_mm" && (l.Min == nil || l.Max != nil) {
			t.Errorf("thickness %+v", l)
		}
	}
	if len(s.Project.Limits) < 2 {
		t.Errorf("%d limits", len(s.Project.Limits))
	}
}

// What went through a panel that was tested as a whole is no permeance of its sheet.
func TestPanelIsNoSheet(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Lap | Stated value | Install date
D1 | butyl sheet | plywood | none | brick | 2 in. | 0.002 L/(s·m²) at 75 Pa | @2026-05-02
D2 | butyl sheet | plywood | none | brick | 2 in. | test wall 0.15 L/(s·m²) at 75 Pa | @2026-05-02`})
	for mark, want := range map[string]bool{"D1": true, "D2": false} {
		if _, is := line(t, s, mark).Figures["air_lsm2"]; is != want {
			t.Errorf("%s: a sheet's air permeance is told: %v", mark, is)
		}
		if _, is := line(t, s, mark).Figures["air_result_lsm2"]; is == want {
			t.Errorf("%s: a panel's test is told: %v", mark, is)
		}
	}
}

// What a row orders stands beside its product, where the cell names no other; what was
// specified gives the least thickness where it says so.
func TestOrderedBesideTheProduct(t *testing.T) {
	for cell, want := range map[string]string{
		"SH-1, 36 mil":                         "0.91",
		"SH-1, delivered as 36 mil rolls":      "0.91",
		"SH-1, 0.9 mm":                         "",
		"SH-1, 36 mil fabric-reinforced":       "0.91",
		"SH-1, 36 mil reinforced concrete pad": "",
		"SH-1 over 6 mil poly":                 "",
		"SH-1; SH-2 strip, 36 mil":             "",
		"SH-1, 0.02 L/(s·m²) at 75 Pa (E2178)": "air",
		"SH-1, panel at 0.02 L/(s·m²) (E2357)": "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Specified | We propose | Substrate | Primer\nD1 | SA sheet, 40 mil min. | " + cell + " | CMU | none"},
			page{name: "P", grid: "Tag | Type | Apply min F\nSH-1 | SBS sheet | 40\nSH-2 | butyl sheet | 30"})
		got, l := "", line(t, s, "D1")
		if f := l.Figures["thickness_mm"]; f.Min != nil {
			got = fmt.Sprintf("%.2f", *f.Min)
		}
		if _, ok := l.Figures["air_lsm2"]; ok {
			got += "air"
		}
		if got != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
		if f := l.Figures["min_thickness_mm"]; f.Min == nil || *f.Min != 1.016 {
			t.Errorf("%s: asked %+v", cell, f)
		}
	}
}

// A bare temperature that holds the day through counts no days.
func TestTemperatureDayAndNight(t *testing.T) {
	for cell, want := range map[string]float64{"45 day and night": 7.2, "45, days & nights": 7.2, "45 day/night": 7.2, "45 °F both day and night": 7.2, "45": 7.2} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\nD1 | FL-1 | CMU | none"},
			page{name: "P", grid: "Tag | FL-1 | SH-1\nwhat | acrylic fluid air barrier | SBS sheet\nmin temp °F | " + cell + " | 40\nUV days | 120 | 60"})
		for _, p := range s.Products {
			if f := p.Figures["apply_min_c"]; p.Tag == "FL-1" && (f.Min == nil || *f.Min < want-0.1 || *f.Min > want+0.1) {
				t.Errorf("%s: %+v", cell, f)
			}
		}
	}
}

// A column of thickness may tell the permeance too, by the dry and the wet cup; how wide a
// strip is tells nothing of its thickness.
func TestBesideTheThickness(t *testing.T) {
	for cell, want := range map[string]string{
		"15 mil / 9 perm":                  "thickness_mm 0.38 vapor_ng 514.92",
		"Class II (0.9 perm dry / 14 wet)": "vapor_ng 51.49",
		"35 wet / 18 dry":                  "thickness_mm 0.46",
		"EPDM strip, 6\" wide":             "",
		"6\" wide, 45 mil":                 "thickness_mm 1.14",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Thk / Rating, mil\nD1 | SBS sheet | CMU | none | " + cell + "\nD2 | SBS sheet | CMU | none | 40 mil\nD3 | SBS sheet | CMU | none | 40 mil"})
		l := line(t, s, "D1")
		var got []string
		for _, key := range []string{"film_mm", "thickness_mm", "vapor_ng"} {
			if f, ok := l.Figures[key]; ok && f.Min != nil {
				got = append(got, fmt.Sprintf("%s %.2f", key, *f.Min))
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %s", cell, strings.Join(got, " "))
		}
	}
}

// The permeance beside a product's name is the row's; what is asked for, or told of two
// materials or by two cups, is not.
func TestPermeanceBesideTheProduct(t *testing.T) {
	for cell, want := range map[string]string{
		"SH-1 (0.05 perm)":              "2.9",
		"SH-1, 80 ng/(Pa·s·m²)":         "80.0",
		"SH-1, 10 perm min.":            "",
		"SH-1, 5 perm dry, 12 perm wet": "",
		"SH-1; SH-2 strip (2 perm)":     "",
		"SH-1 over 60 g felt":           "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\nD1 | " + cell + " | CMU | none"},
			page{name: "P", grid: "Tag | Type | Apply min F\nSH-1 | SBS sheet | 40\nSH-2 | butyl sheet | 30"})
		got := ""
		if f := line(t, s, "D1").Figures["vapor_ng"]; f.Min != nil {
			got = fmt.Sprintf("%.1f", *f.Min)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}

// A remark may tell the thickness of the row's own sheet in a clause of its own; a sheet over
// or under it is another.
func TestSheetToldInARemark(t *testing.T) {
	for remark, want := range map[string]string{
		"80 mil membrane":                      "2.03",
		"at stair only; use 80 mil sheet here": "2.03",
		"80 mils thick sht.":                   "2.03",
		"80 mil sheet over it":                 "",
		"under 80 mil membrane":                "",
		"80 mil drain mat":                     "",
		"lap 80 mil sheets 3 in.":              "",
		"80 mil sheets were delivered":         "2.03",
		"80 mil rolls on hand of the other":    "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Remarks\nD1 | SH-1 | CMU | none | " + remark},
			page{name: "P", grid: "Tag | Type | Thickness\nSH-1 | SBS sheet | 45 mil\nSH-2 | butyl sheet | 30 mil"})
		got := ""
		if f := line(t, s, "D1").Figures["thickness_mm"]; f.Min != nil {
			got = fmt.Sprintf("%.2f", *f.Min)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

// A remark may tell the thickness of the row's own boards in a clause of its own.
func TestBoardToldInARemark(t *testing.T) {
	for remark, want := range map[string]string{
		"3 in. board":                  "76.20",
		"no 4 in. left; 2 in. boards":  "50.80",
		"3 in. slabs delivered":        "76.20",
		"out of 3 in. board":           "",
		"3 in. board over 2 in. board": "",
		"3 in. gap at boards":          "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | Remarks\nD1 | WB-1 | CMU | none | " + remark},
			page{name: "P", grid: "Tag | Type | Thickness\nWB-1 | mineral wool board | 4 in\nSH-2 | butyl sheet | 30 mil"})
		got := ""
		if f := line(t, s, "D1").Figures["board_mm"]; f.Min != nil {
			got = fmt.Sprintf("%.2f", *f.Min)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

// A remark may tell the permeance of the goods that the row is about. What somebody asks for, and
// what is told of another material, is not theirs.
func TestPermeanceOfTheGoods(t *testing.T) {
	for remark, want := range map[string]bool{
		"Batch 7 tested at 120 ng/(Pa·s·m²)":           true,
		"Rolls delivered are 2 perm, see cert":         true,
		"Second floor only. Submitted at 2.1 perms.":   true,
		"Lot must have 10 perm":                        false,
		"sheet 10 perm min.":                           false,
		"Vinyl inside submitted at 0.5 perm":           false,
		"sheet with 0.1 perm poly inside":              false,
		"Lot 12 delivered, notes ask 600 ng/(Pa·s·m²)": false,
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap | Remarks\nD1 | permeable self-adhered membrane | gypsum sheathing | none | 75 mm | " + remark + "\nD2 | permeable self-adhered membrane | gypsum sheathing | none | 75 mm | -"})
		if got := s.Lines[0].Figures["vapor_ng"].Min != nil; got != want {
			t.Errorf("%s: read %v, want %v", remark, got, want)
		}
	}
}

// How many sheets lie on one another is no measure of them; a measure beside it is.
func TestCountOfPlies(t *testing.T) {
	for cell, want := range map[string]float64{
		"3 ply": 0, "2 layers": 0, "2-ply": 0, "2 ply, 60 mil": 1.524, "60": 1.524, "2 x 30 = 60": 1.524,
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Thickness, mil\nD1 | building paper | plywood | " + cell +
			"\nD2 | SBS sheet | CMU | 40\nD3 | SBS sheet | plywood | 40"})
		f := line(t, s, "D1").Figures["thickness_mm"]
		got := 0.0
		if f.Min != nil {
			got = *f.Min
		}
		if math.Abs(got-want) > 0.001 || f.Problem != "" {
			t.Errorf("%s: %v %q, want %v", cell, got, f.Problem, want)
		}
	}
}

// The heading of what is asked tells the unit of what was found beside it, and a unit of its own
// stays.
func TestUnitOfThePair(t *testing.T) {
	for heading, want := range map[string]float64{"Act. thk": 1.143, "Act. thk (mm)": 45} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Req'd thk (mil) | " + heading +
			"\nD1 | SBS sheet | CMU | 40 | 45\nD2 | wool board | CMU | 2 in. | 2 in.\nD3 | SBS sheet | CMU | 40 | 40"})
		if f := line(t, s, "D1").Figures["thickness_mm"]; f.Min == nil || math.Abs(*f.Min-want) > 0.001 {
			t.Errorf("%s: %+v, want %v mm", heading, f, want)
		}
	}
}
