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

// The sizes and the movement of joints, told in the cell of edges or in a remark; a
// groove's depth is none of the bead.
func TestJointsInWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Termination | Remarks
J1 | SL-3 | precast panels | none | 3/8 in wide, moves 1/4 in each way | -
J2 | SL-3 | precast panels | none | 20 mm wide, 10 mm deep | joint moves ±40%
J3 | SL-3 | precast panels | none | width 12 mm; depth of sealant 6 mm | 3 mm movement each way
J4 | SL-3 | precast panels | none | 3/4 in wide | rod set 3/8 in deep
J5 | SL-3 | precast panels | none | 5/8 in wide | moves 3 in a century`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open
SL-3 | neutral silicone sealant, +/-50% | 20 | no limit`})
	holdFigures(t, "products", func(tag string) map[string]schedule.Figure { return product(t, s, tag).Figures }, map[string]map[string]float64{
		"SL-3": {"movement": 0.5},
	})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"J1": {"joint_mm": 9.525, "movement_mm": 6.35, "joint_depth_mm": none},
		"J2": {"joint_mm": 20, "joint_depth_mm": 10, "movement": 0.4},
		"J3": {"joint_mm": 12, "joint_depth_mm": 6, "movement_mm": 3},
		"J4": {"joint_mm": 19.05, "joint_depth_mm": none},
		"J5": {"joint_mm": 15.875, "movement_mm": none},
	})
}

// How far fasteners and weeps are apart; a height above grade, a tie and a lap are no
// such spacing.
func TestSpacingInWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Termination | Remarks
W1 | SBS sheet | CMU | none | Bar, fasteners at 18 in. | Weep vents 32 in o.c.
W2 | SBS sheet | CMU | none | bar, screws 300 mm c/c | weeps @ 800 mm centres
W3 | SBS sheet | CMU | none | bar at 8 in above grade | weeps 6 in above grade
W4 | SBS sheet | CMU | none | bar and bead | ties 16 in o.c.
W5 | SBS sheet | CMU | none | anchored 12" on center | weep holes every 24 in
W6 | SBS sheet | CMU | none | screws lapped 4 in | weeps 3/8 in wide`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"spacing_mm": 457.2, "weep_spacing_mm": 812.8}, "W2": {"spacing_mm": 300, "weep_spacing_mm": 800},
		"W3": {"spacing_mm": none, "weep_spacing_mm": none}, "W4": {"spacing_mm": none},
		"W5": {"spacing_mm": 304.8, "weep_spacing_mm": 609.6}, "W6": {"spacing_mm": none, "weep_spacing_mm": none},
	})
}

// The wet film, told or by how far a volume goes; a primer's goes for the primer.
func TestWetFilmsInWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | FL-1 | CMU | none | single pass at 40 mils wet
W2 | FL-1 | CMU | none | WFT 45
W3 | FL-1 | CMU | none | 1 gal covers 50 sq ft
W4 | FL-1 | CMU | none | laid at 40 sf/gal, rolled
W5 | FL-1 | CMU | none | 0.9 L/m2 in one coat
W6 | FL-1 | CMU | none | primer goes 300 sf/gal
W7 | FL-1 | CMU | none | wet gauge every 100 sf
W8 | FL-1 | CMU | none | 5 gal pail does 400 sf
W9 | FL-1 | CMU | none | 200 sf from a 5 gal pail
W10 | FL-1 | CMU | none | 40 wet days in spring
W11 | FL-1 | CMU | none | 1.6 m²/L
W13 | FL-1 | CMU | none | acrylic flashing 20 wet mil
W14 | FL-1 | CMU | none | lot 20 wet mill
W12 | FL-1 | CMU | none | 2 coats, 30 wet`}, page{name: "P", grid: `
Tag | Type | Dry thickness, mils | Apply min °F | Max days open
FL-1 | acrylic fluid membrane | 30 | 40 | 90`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"wet_mm": 1.016}, "W2": {"wet_mm": 1.143}, "W3": {"wet_mm": 0.8149167}, "W4": {"wet_mm": 1.0186458}, "W5": {"wet_mm": 0.9},
		"W6": {"wet_mm": none}, "W7": {"wet_mm": none}, "W8": {"wet_mm": 0.5093229}, "W9": {"wet_mm": 1.0186458}, "W10": {"wet_mm": none},
		"W11": {"wet_mm": 0.625}, "W12": {"wet_mm": 0.762},
		"W13": {"wet_mm": 0.508}, "W14": {"wet_mm": none},
	})
}

// What is told without a unit where millimeters alone can be meant, a bead's size in the
// column of thicknesses, and the age of concrete told beside the row.
func TestBareSpacingsAndSizes(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Thickness mm | Termination | Remarks
W1 | SBS sheet | CMU | none | 1 | bar, screws at 450 | open perpends every 900
W2 | SBS sheet | CMU | none | 1 | bar at 250, bead | weeps 750
W3 | SBS sheet | CMU | none | 1 | bar at 300 above grade | weeps 150 above grade
W4 | SBS sheet | CMU | none | 1 | bar at level 200 | weeps 12 per bay
W5 | SBS sheet | CMU | none | 1 | ties at 600 | open joints 12
J1 | silicone sealant | brick | none | 14 x 7 | tooled | slab joint opens and closes ±30 %
J2 | silicone sealant | brick | none | 7 | tooled | joint works hard`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"spacing_mm": 450, "weep_spacing_mm": 900}, "W2": {"spacing_mm": 250, "weep_spacing_mm": 750},
		"W3": {"spacing_mm": none, "weep_spacing_mm": none}, "W4": {"spacing_mm": none, "weep_spacing_mm": none},
		"W5": {"spacing_mm": none, "weep_spacing_mm": none},
		"J1": {"joint_mm": 7, "thickness_mm": none, "movement": 0.3}, "J2": {"joint_mm": none, "thickness_mm": 7, "movement": none},
	})
}

func TestAgeOfConcreteInFigures(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Install | Values | Remarks
W1 | SBS sheet | concrete | none | 3 Aug 2026 | wall is 6 days old | -
W2 | SBS sheet | concrete | none | 3 Aug 2026 | age of slab 9 d | -
W3 | SBS sheet | concrete | none | 3 Aug 2026 | open 9 d | -
W4 | SBS sheet | concrete | none | 3 Aug 2026 | wall dried 9 days after rain | -`})
	for mark, want := range map[string]int{"W1": 6, "W2": 9, "W3": 0, "W4": 0} {
		if got := line(t, s, mark).Spans["concrete_age_days"].Min; got != want {
			t.Errorf("%s: %d days, want %d", mark, got, want)
		}
	}
}

// Sizes of beads are no mils, though the column of thicknesses has them.
func TestSizesAmongMils(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Thickness, mil | Remarks
J1 | silicone sealant | brick | none | 5/8 x 3/8 | tooled
J2 | silicone sealant | brick | none | 12 x 6 | tooled
J3 | silicone sealant | brick | none | 16 x 8 mm | tooled`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"J1": {"joint_mm": 9.525}, "J2": {"joint_mm": none}, "J3": {"joint_mm": 8},
	})
}

// The leg that a flashing turns up the wall, and its end dams, in words; a figure
// without a unit has that of the row's laps. A count, a tag and a lap are no heights.
func TestTurnedUp(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Lap (mm) | Edge | Remarks
W1 | butyl flashing | CMU wall | none | 150 | rear leg 180 up, end dams 30 | -
W2 | butyl flashing | CMU wall | none | 150 | 200 up the backup; drip | end dams: 2 places
W3 | butyl flashing | CMU wall | none | 150 | 120 upturn under the sheet | 2 turn-ups at ends
W4 | butyl flashing | CMU wall | none | 150 | under FL-1 turn-up | sheet laps over upstand 100
W5 | butyl flashing | CMU wall | none | 150 | upstand 6 in. high | end dams (2)
W7 | butyl flashing | CMU wall | none | 150 | up 190, laps 150 sealed | -
W8 | butyl flashing | CMU wall | none | 150 | 130 up, behind sheet above | -
W6 | butyl flashing | CMU wall | none | 150 | turned up 40 at ends | end dam 1 1/2 in.`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"upturn_mm": 180, "end_dam_mm": 30}, "W2": {"upturn_mm": 200, "end_dam_mm": none},
		"W3": {"upturn_mm": 120, "end_dam_mm": none}, "W4": {"upturn_mm": none},
		"W7": {"upturn_mm": 190}, "W8": {"upturn_mm": 130}, "W5": {"upturn_mm": 152.4, "end_dam_mm": none}, "W6": {"upturn_mm": none, "end_dam_mm": 38.1},
	})
}

// An area without a unit after the volume that covered it: gallons go by square feet, liters
// by square meters. Counts, days and films that cannot be are no area.
func TestWetFilmsOverBareAreas(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | FL-1 | CMU | none | 2 gal kit did roughly 150, rolled
W2 | FL-1 | CMU | none | 20 L drum covered only 25 in all
W3 | FL-1 | CMU | none | 5 gal pail covered 12 openings
W4 | FL-1 | CMU | none | 5 gal pail went 100 days
W5 | FL-1 | CMU | none | 1 gal primer covered about 300
W6 | FL-1 | CMU | none | 5 gal covered 24, 26 and 28
W7 | FL-1 | CMU | none | 5 gal pail covered 300 lf of joint`}, page{name: "P", grid: `
Tag | Type | Dry thickness, mils | Apply min °F | Max days open
FL-1 | acrylic fluid membrane | 30 | 40 | 90`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"wet_mm": 0.5432765}, "W2": {"wet_mm": 0.8}, "W3": {"wet_mm": none}, "W4": {"wet_mm": none},
		"W5": {"wet_mm": none}, "W6": {"wet_mm": none}, "W7": {"wet_mm": none},
	})
}

// The lap that a remark tells beside its column; what is asked for, what laps onto something
// else, and the laps of tapes and patches are no such lap.
func TestLapsInRemarks(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap (in) | Remarks
W1 | SBS sheet | CMU | none | 3 | like W4, but laps only 2 in
W2 | SBS sheet | CMU | none | 3 | roll ran short, laps came out at 1-1/2"
W3 | SBS sheet | CMU | none | 3 | rolled, 2 in side laps
W4 | SBS sheet | CMU | none | 3 | laps 2 in onto flashing
W5 | SBS sheet | CMU | none | 3 | patch laps 2 in
W6 | SBS sheet | CMU | none | 3 | laps 2 in min by code
W7 | SBS sheet | CMU | none | 3 | end laps 2 in from joint
W8 | SBS sheet | CMU | none | 3 | was to be 2 in laps`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"told_lap_mm": 50.8}, "W2": {"told_lap_mm": 38.1}, "W3": {"told_lap_mm": 50.8}, "W4": {"told_lap_mm": none},
		"W5": {"told_lap_mm": none}, "W6": {"told_lap_mm": none}, "W7": {"told_lap_mm": none}, "W8": {"told_lap_mm": none},
	})
}

// The hours between coats and before backfill, by product data and by the words of a row.
func TestWaitsInWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | FL-1 | CMU | none | 2nd coat two hours after the first
W2 | FL-1 | CMU | none | recoat next day
W3 | FL-1 | CMU | none | 3 h of drying between showers
W4 | FL-2 | OSB, meter reads 21 percent | none | 5 h between coats`}, page{name: "P", grid: `
Tag | Type | Dry thickness, mils | Apply min °F | Max days open | Remarks
FL-1 | acrylic fluid membrane | 30 | 40 | 90 | Second coat after 16 h. Wait 72 h before backfilling
FL-2 | acrylic fluid membrane | 30 | 40 | 90 | Recoat within 48 h`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"recoat_h": 2}, "W2": {"recoat_h": none}, "W3": {"recoat_h": none}, "W4": {"recoat_h": 5, "wood_moisture": 0.21},
	})
	holdFigures(t, "products", func(tag string) map[string]schedule.Figure { return product(t, s, tag).Figures }, map[string]map[string]float64{
		"FL-1": {"recoat_h": 16, "backfill_wait_h": 72}, "FL-2": {"recoat_h": none, "backfill_wait_h": none},
	})
}

// What is submitted for a row may stand in one column for all, each figure known by its unit.
func TestSubmittedFigures(t *testing.T) {
	for _, heading := range []string{"Values submitted", "Data sheet value", "Submitted ratings", "Fire rating"} {
		s := read(t, "Mark | Membrane | Substrate | Primer | "+heading+` | Install
W1 | acrylic self-adhered sheet | glass-mat gypsum | none | 40 ng/(Pa·s·m²) | 2027-05-03
W2 | acrylic self-adhered sheet | glass-mat gypsum | none | RSI 2.1 | 2027-05-04
W3 | acrylic self-adhered sheet | glass-mat gypsum | none | 1 h | 2027-05-05`)
		want := map[bool]float64{true: 40, false: none}[heading != "Fire rating"]
		holdFigures(t, heading, func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
			"W1": {"vapor_ng": want}, "W2": {"vapor_ng": none}, "W3": {"vapor_ng": none},
		})
	}
}

// How open to vapor a batch is stands in perms after that word, or by the standard for it;
// what was asked, and another count, is none.
func TestPermsInRemarks(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Remarks
1 | butyl sheet | CMU | none | Roll tested: perms 12
2 | butyl sheet | CMU | none | 12 perms, ASTM E96, by lab
3 | butyl sheet | CMU | none | perms 12 min.
4 | butyl sheet | CMU | none | no perms, 12 rolls
5 | butyl sheet | CMU | none | 12 day test by E96`)
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"1": {"vapor_ng": 12 * 57.2135}, "2": {"vapor_ng": 12 * 57.2135}, "3": {"vapor_ng": none}, "4": {"vapor_ng": none}, "5": {"vapor_ng": none},
	})
}

// What a remark has from a data sheet is the figure of what the row has, and not what it
// asks for; a most of other things in the same remark is none of its air permeance.
func TestFiguresOfDataInARemark(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | acrylic self-adhered sheet | glass-mat gypsum | none | other make, the label shows 0.3 perm
W2 | acrylic self-adhered sheet | glass-mat gypsum | none | data sheet says no more than 20 perm needed
W3 | acrylic self-adhered sheet | glass-mat gypsum | none | E2178 0.03 cfm/sf at 75 Pa; 45 days max. open
W4 | acrylic self-adhered sheet | glass-mat gypsum | none | E2178 max. 0.004 cfm/sf; 45 days open`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"vapor_ng": 17.164}, "W2": {"vapor_ng": none}, "W3": {"air_lsm2": 0.152}, "W4": {"air_lsm2": none},
	})
}

// The two sizes of a bead stand in the unit of the heading, with letters for width and depth or none.
func TestBareSizesOfBeads(t *testing.T) {
	for said, want := range map[string][2]float64{
		"24 x 12": {12, 24}, "24 w x 12 d": {12, 24}, "20 wide x 10 deep, tooled": {10, 20}, "18": {18, 18},
	} {
		s := read(t, "Mark | Sealant | Substrate | Joint w x d (mm)\nJ1 | neutral silicone sealant | brick | "+said+"\n")
		f := s.Lines[0].Figures["joint_mm"]
		if f.Min == nil || f.Max == nil || *f.Min != want[0] || *f.Max != want[1] || f.Text != said {
			t.Errorf("%q: %+v, want %v", said, f, want)
		}
	}
}

// Millimeters right behind a product's name are its thickness, as far as sheets have them.
func TestMillimetersBehindAName(t *testing.T) {
	for said, want := range map[string]float64{"SM-4 1.5 mm": 1.5, "SM-4, 2 mm": 2, "SM-4 (1.2 mm)": 1.2, "SM-4, 75 mm": 0, "SM-4 in 3 mm bed": 0, "SM-4 1.5 mm gaps": 0} {
		s := readPages(t, page{name: "S", grid: "\nMark | Membrane | Substrate | Primer\nD1 | " + said + " | CMU | none\nD2 | SM-4 | CMU | none"}, page{name: "Data", grid: `
Tag | Type | Thickness mm | Min °C | Days open
SM-4 | SBS sheet | 1.0 | 5 | 60
SM-5 | butyl sheet | 0.8 | 5 | 60`})
		got := 0.0
		if f := line(t, s, "D1").Figures["thickness_mm"]; f.Min != nil {
			got = *f.Min
		}
		if got != want {
			t.Errorf("%q: %v mm, want %v", said, got, want)
		}
	}
}

// A lap may open a sentence, and come after words of where the sheets begin; a lap measured
// from somewhere is none.
func TestLapsThatOpenASentence(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
W1 | SBS sheet | CMU | none | Rolled. 1-1/2 in side laps, 4 in end laps
W2 | SBS sheet | CMU | none | Up from the sill, 1 in side laps, rolled
W3 | SBS sheet | CMU | none | From the corner 1 in laps
W4 | SBS sheet | CMU | none | Roll 39.5 in lap of the tape`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"told_lap_mm": 38.1}, "W2": {"told_lap_mm": 25.4}, "W3": {"told_lap_mm": none}, "W4": {"told_lap_mm": none},
	})
}

// A wet film may be read on a gauge, from one figure to another; a gauge of metal is none.
func TestWetFilmsReadOnAGauge(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer | Remarks
W1 | FL-1 | CMU | none | one coat, gauge 26-29 wet, even
W2 | FL-1 | CMU | none | gaged 31 wet
W3 | FL-1 | CMU | none | gauge reads 38 - 41 wet
W4 | FL-1 | CMU | none | 24 gauge wet set plates`}, page{name: "P", grid: `
Tag | Type | Thickness (mil) | Min °F | Max days exposed
FL-1 | STPE fluid membrane | 50 | 40 | 90`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"W1": {"wet_mm": 26 * 0.0254}, "W2": {"wet_mm": 31 * 0.0254}, "W3": {"wet_mm": 38 * 0.0254}, "W4": {"wet_mm": none},
	})
	if f := line(t, s, "W1").Figures["wet_mm"]; f.Max == nil || *f.Max < 0.736 || f.Text != "26-29 mil" {
		t.Errorf("%+v, want to 29 mil", f)
	}
}

// What a sheet lets through by the test of a material is no result of a wall.
func TestAirOfASheetIsNoResult(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
W1 | SBS sheet | CMU | none | air permeance 0.003 cfm/sf @ 1.57 psf
W2 | SBS sheet | CMU | none | air 0.003 cfm/sf by E 2178
W3 | SBS sheet | CMU | none | mock-up: air 0.05 cfm/sf @ 1.57 psf`})
	for mark, want := range map[string]bool{"W1": false, "W2": false, "W3": true} {
		if _, got := line(t, s, mark).Figures["air_result_lsm2"]; got != want {
			t.Errorf("%s: a result %v, want %v", mark, got, want)
		}
	}
}

// A film of coats that is worked out counts whole; what is not, as before.
func TestFilmWorkedOut(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | WFT/DFT mils
W1 | acrylic coating | CMU | none | 3 x 20 = 60 / 30
W2 | acrylic coating | CMU | none | 60 / 30`})
	for _, mark := range []string{"W1", "W2"} {
		if f := line(t, s, mark).Figures["thickness_mm"]; f.Problem != "" || f.Min == nil || *f.Min != 60*0.0254 {
			t.Errorf("%s: %+v", mark, f)
		}
	}
}

// What a strip bears on each side of its joint; what steel and masonry bear on, what is asked
// for, and a bar that bears on something are none.
func TestBearingsInWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap (in) | Remarks
J1 | silicone transition strip | CMU | none | 3 | bears only 1-1/2" on the mullion, 2" on block
J2 | silicone transition strip | CMU | none | 3 | rolled, 2 in bearing each side
J3 | silicone transition strip | CMU | none | 3 | bearing 50 mm either side
J4 | silicone transition strip | CMU | none | 3 | lintel bears 6 in on block
J5 | silicone transition strip | CMU | none | 3 | 3 in bearing required
J6 | silicone transition strip | CMU | none | 3 | plate with 4 in bearing on the slab
J7 | silicone transition strip | CMU | none | 3 | bears on angle at 2 in gap`})
	holdFigures(t, "lines", func(mark string) map[string]schedule.Figure { return line(t, s, mark).Figures }, map[string]map[string]float64{
		"J1": {"bearing_mm": 38.1}, "J2": {"bearing_mm": 50.8}, "J3": {"bearing_mm": 50},
		"J4": {"bearing_mm": none}, "J5": {"bearing_mm": none}, "J6": {"bearing_mm": none}, "J7": {"bearing_mm": none},
	})
}
