package schedule_test

import (
	"math"
	"testing"

	"abut/internal/schedule"
)

// Figures that the words around them name: solids by volume, movement of joints,
// the heat of a kettle; usual ones (common practice).
func TestFiguresNamedByWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Size of joint | Substrate | Primer | Thk; laps | Remarks
W1 | SL-3 | 20 x 10 mm | precast panels | none | - | movement ± 4 mm each way
W2 | SL-4 | bead | precast panels | none | - | moves 3 mm in all; strip 6 mm each way
W3 | FL-1 | - | CMU | none | 60 mils wet; side 4 in.; ends without dams | melter at 360
W4 | HR-1 | - | concrete | none | 180 mil | melter ran at 410 °F, deck 45 °F
W5 | SL-5 | 25 mm | precast panels | none | - | moving 5 mm either way
W6 | HR-1 | - | concrete | none | 180 mil | melter not over 390; melter 2 of 3
W7 | HR-1 | - | concrete | none | 180 mil | melter 400 lb, deck dry`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open | Kettle temp.
SL-3 | neutral silicone sealant, movement ±50% | 20 | no limit | -
SL-4 | polyurethane sealant, Type S, Grade NS, Class 25, Use NT | 40 | no limit | -
SL-5 | polyurethane sealant for class 2 roads, elongation 35 % | 40 | no limit | -
FL-1 | STPE fluid membrane, 60 % volume solids | 30 | 90 | -
FL-2 | acrylic fluid membrane, 64% solids by weight | 40 | 90 | -
HR-1 | hot rubberized asphalt | 0 | 30 | 350 to 400 °F`})
	holdFigures(t, "products", func(tag string) map[string]schedule.Figure { return product(t, s, tag).Figures }, map[string]map[string]float64{
		"SL-3": {"movement": 0.5}, "SL-4": {"movement": 0.25}, "SL-5": {"movement": none},
		"FL-1": {"solids": 0.6}, "FL-2": {"solids": none}, "HR-1": {"kettle_c": 176.66667},
	})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"movement_mm": 4, "joint_mm": 10}, "W2": {"movement_mm": none, "joint_mm": none},
		"W3": {"lap_mm": 101.6, "reading_kettle_c": 182.22222}, "W4": {"reading_kettle_c": 210},
		"W5": {"movement_mm": 5, "joint_mm": 25}, "W6": {"reading_kettle_c": none}, "W7": {"reading_kettle_c": none},
	})
	dams := false
	for _, said := range line(t, s, "W3").Signals {
		dams = dams || said.ID == "end_dam" && said.No
	}
	if !dams {
		t.Error("the words beside a thickness were not heard")
	}
}

// A dry film read without its unit has that of the product data; a count of readings
// or coats is no film.
func TestDryFilmsWithoutUnit(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | FL-1 | CMU | none | dry film averaged 27 (9 points)
W2 | FL-1 | CMU | none | DFT taken at 12 spots
W3 | FL-1 | CMU | none | DFT on 3/14, fine
W4 | FL-1 | CMU | none | DFT 31-36, 2 coats
W5 | FL-1 | CMU | none | DFT must be 40
W6 | FL-1 | CMU | none | nine gauge readings, avg 26 mil
W7 | FL-1 | CMU | none | wet gauge 60 mil; 22 ga. pan`}, page{name: "P", grid: `
Tag | Type | Dry thickness, mils | Apply min °F | Max days open
FL-1 | acrylic fluid membrane | 30 | 40 | 90`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"film_mm": 0.6858}, "W2": {"film_mm": none}, "W3": {"film_mm": none}, "W4": {"film_mm": 0.7874}, "W5": {"film_mm": none},
		"W6": {"film_mm": 0.6604}, "W7": {"film_mm": none},
	})
}

// The same figures in columns of their own.
func TestFiguresNamedByHeadings(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Joint width (mm) | Substrate | Primer | Kettle °C | Remarks
W1 | SL-3 | 12 | precast panels | none | - | -
W2 | HR-1 | - | concrete | none | 231 | -`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Movement | Solids by volume | Heat to
SL-3 | neutral silicone sealant | -5 | ± 35 % | - | -
HR-1 | hot rubberized asphalt | -10 | - | 100 % | 175–205 °C`})
	holdFigures(t, "products", func(tag string) map[string]schedule.Figure { return product(t, s, tag).Figures }, map[string]map[string]float64{
		"SL-3": {"movement": 0.35, "solids": none}, "HR-1": {"solids": 1, "kettle_c": 175},
	})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"joint_mm": 12}, "W2": {"reading_kettle_c": 231},
	})
}

// none stands for a figure that must not be there.
const none = -1

func holdFigures(t *testing.T, what string, of func(string) map[string]schedule.Figure, want map[string]map[string]float64) {
	t.Helper()
	for name, figures := range want {
		for key, v := range figures {
			f, ok := of(name)[key]
			if v == none && ok || v != none && !near(f.Min, v) {
				t.Errorf("%s: %s: %s %+v, want %v", what, name, key, f, v)
			}
		}
	}
}

// What a row says that its sheet serves to is no reading, and what it asks for or tells
// of the metal is no figure of the sheet.
func TestServiceInRemarks(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | butyl sheet | plywood | none | Serves to 180 F
W2 | butyl sheet | plywood | none | Service temp. 82 °C; rolled twice
W3 | butyl sheet | plywood | none | service rating max. 240 °F
W4 | butyl sheet | plywood | none | Service range -20 to 160 F
W5 | butyl sheet | plywood | none | coping: service temp. 190 F
W6 | butyl sheet | plywood | none | needs a service temp. of 240 F
W7 | butyl sheet | plywood | none | serves up to 116 °C
W8 | butyl sheet | plywood | none | service entrance, 40 F`})
	for mark, want := range map[string]float64{"W1": 82.2, "W2": 82, "W3": 115.6, "W4": 71.1, "W5": none, "W6": none, "W7": 116, "W8": none} {
		f, ok := line(t, s, mark).Figures["service_max_c"]
		if want == none && ok || want != none && (f.Max == nil || math.Abs(*f.Max-want) > 0.1) {
			t.Errorf("%s: %+v, want %g", mark, f, want)
		}
		if air, ok := line(t, s, mark).Figures["reading_air_c"]; ok && mark != "W8" {
			t.Errorf("%s: read as the air: %+v", mark, air)
		}
	}
}
