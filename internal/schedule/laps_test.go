package schedule_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
)

// A cell of laps may tell the sides and then the ends and name neither; a fraction of an
// inch and one lap in two units are no such pair.
func TestLapsOfSidesAndEnds(t *testing.T) {
	for _, tc := range []struct{ unit, cell, want string }{
		{"mm", "60/90", "60 90"},
		{"in.", "2 / 5", "51 127"},
		{"in.", "3/6", "76 152"},
		{"in.", "3/4", "19 -"},
		{"in.", `3" / 4"`, "76 102"},
		{"in.", `2"/3`, "51 76"},
		{"in.", "3 in / 75 mm", "76 -"},
		{"in.", "1/2", "13 -"},
		{"mm", "50 / 2", "50 -"},
		{"in.", "4 / 4", "102 102"},
		{"in.", "5", "127 -"},
		{"in.", "1¼ in. at the outer corners and mullions", "32 -"},
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap (` + tc.unit + `)
D1 | butyl sheet | plywood | none | ` + tc.cell + `
D2 | butyl sheet | plywood | none | 100`})
		got := []string{"-", "-"}
		for i, key := range []string{"lap_mm", "end_lap_mm"} {
			if f, ok := line(t, s, "D1").Figures[key]; ok && f.Min != nil {
				got[i] = fmt.Sprintf("%.0f", *f.Min)
			}
		}
		if strings.Join(got, " ") != tc.want {
			t.Errorf("%s under %s: %v, want %s", tc.cell, tc.unit, got, tc.want)
		}
	}
}

// The laps of a note without a unit are in that of the column of laps; what is turned up
// a wall is none.
func TestLapsOfNotesInTheUnitOfTheColumn(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Lap mm
1 | WM-1 | CMU | none | 50/75
2 | WM-2 | CMU | none | 75
3 | TF-1 | CMU | none | 100

Tag | Type | Thickness
WM-1 | rubberized asphalt membrane | 1 mm
WM-2 | butyl sheet | 1 mm
TF-1 | EPDM membrane | 1 mm

Notes
Overlaps: WM-1 75 sides / 150 ends. WM-2 60 / 90. TF-1 ends 100, 200 min. up the wall.
`)
	got := ""
	for _, l := range s.Project.Limits {
		got += fmt.Sprintf("%s %.0f %v; ", l.Kind, *l.Min, l.Keys)
	}
	want := "lap_mm 75 [rubberized-asphalt-membrane]; end_lap_mm 150 [rubberized-asphalt-membrane]; " +
		"lap_mm 60 [butyl-flashing-tape]; end_lap_mm 90 [butyl-flashing-tape]; end_lap_mm 100 [epdm-membrane]; "
	if got != want {
		t.Errorf("limits %s\nwant   %s", got, want)
	}
}

// A part of a list of laps may be a name and its figure and no more; what is lapped onto
// something else has no figure of its own sheet.
func TestLapsOfNotesByName(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Lap in.
1 | WM-1 | CMU | none | 3
2 | WM-2 | CMU | none | 3
3 | TF-1 | CMU | none | 4

Tag | Type | Thickness
WM-1 | rubberized asphalt membrane | 40 mil
WM-2 | butyl sheet | 40 mil
TF-1 | EPDM membrane | 40 mil

Notes
Min. laps: WM-1 side 1-1/2, end 5; thru-wall flashing 4; WM-2 2-1/2; strips onto WM-1 3; TF-1 up 8
`)
	got := ""
	for _, l := range s.Project.Limits {
		got += fmt.Sprintf("%s %.1f %s%v; ", l.Kind, *l.Min, l.Scope, l.Keys)
	}
	want := "lap_mm 38.1 [rubberized-asphalt-membrane]; end_lap_mm 127.0 [rubberized-asphalt-membrane]; " +
		"lap_mm 101.6 through-wall[]; lap_mm 63.5 [butyl-flashing-tape]; "
	if got != want {
		t.Errorf("limits %s\nwant   %s", got, want)
	}
}

// A width of bond beside the lap of a splice is no lap.
func TestLapsBesideBond(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Lap in.
1 | silicone transition sheet | CMU | 1 1/2 bonded; 4 seam
2 | silicone transition sheet | CMU | 1 bond
3 | silicone transition sheet | CMU | 4 seam
`)
	for _, l := range s.Lines {
		if f, ok := l.Figures["lap_mm"]; ok && f.Min != nil && *f.Min < 100 {
			t.Errorf("%s laps %v by %q", l.Mark, *f.Min, l.Texts["lap"])
		}
	}
}

// An office without a column of films tells those of liquids among the laps and ends; a
// small bare figure beside no word of coats is kept, as it may be a slip.
func TestFilmsAmongLaps(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Lap / termination mm
1 | fluid-applied acrylic air barrier | CMU | none | 0.8 dry; laps 75
2 | polyurethane waterproofing | concrete | none | 1.8, 2 coats
3 | polyurethane waterproofing | concrete | none | 2.2, fleece at corners
4 | rubberized asphalt membrane | CMU | none | 2.5
5 | rubberized asphalt membrane | CMU | none | 75
`)
	got := ""
	for _, l := range s.Lines {
		got += l.Mark
		for _, key := range []string{"thickness_mm", "lap_mm"} {
			if f := l.Figures[key]; f.Min != nil {
				got += fmt.Sprintf(" %s %.1f", key, *f.Min)
			}
		}
		got += "; "
	}
	want := "1 thickness_mm 0.8 lap_mm 75.0; 2 thickness_mm 1.8; 3 thickness_mm 2.2; 4 lap_mm 2.5; 5 lap_mm 75.0; "
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// A column of laps is known by the words for the sides and ends of a sheet before bare
// figures, whose unit is that of all figures not marked otherwise.
func TestLapsAfterTheirWords(t *testing.T) {
	s := read(t, `
All lengths in mm unless noted in.
Mark | Material | Substrate | Primer | Laps / ends
D1 | butyl sheet | plywood | none | sides 65, ends 130, top over bottom
D2 | butyl sheet | plywood | none | sides 2", ends 5", top over bottom
D3 | butyl sheet | plywood | none | one piece, no laps
D4 | butyl sheet | plywood | none | sides 65, ends 125`)
	for mark, want := range map[string][2]float64{"D1": {65, 130}, "D2": {50.8, 127}, "D4": {65, 125}} {
		l := line(t, s, mark)
		if side, end := l.Figures["lap_mm"], l.Figures["end_lap_mm"]; !near(side.Min, want[0]) || !near(end.Min, want[1]) {
			t.Errorf("%s: %+v and %+v, want %v", mark, side, end, want)
		}
	}
	s = read(t, `
Mark | Material | Substrate | Primer | Ends | Laps
D1 | butyl sheet | plywood | none | sealed at both ends | see 3
D2 | butyl sheet | plywood | none | mastic at the ends | see 4`)
	if l := line(t, s, "D1"); l.Texts["edge"] == "" || l.Texts["lap"] != "" {
		t.Errorf("words without a lap are one: %v", l.Texts)
	}
}

// The laps of flashings are no laps of the other sheets where a note has a figure for
// each. Where it has one figure, all sheets have it, as before; so do two that differ and
// of which nothing tells the first apart.
func TestLapsOfFlashingsBesideThoseOfSheets(t *testing.T) {
	for note, want := range map[string]string{
		"Overlaps: sides 60 mm, ends 120 mm minimum. Flashings 90 / 120.":     "60 []; 90 [flashing]; ",
		"Side laps 2 in. min., end laps 5 in. min. Flashing laps 4 in.":       "51 []; 102 [flashing]; ",
		"Lap the sheet 2 in. at its sides; lap flashings 4 in.":               "51 [membrane]; 102 [flashing]; ",
		"Flashing laps 4 in. min.":                                            "102 []; ",
		"Side laps 4 in., flashing laps 4 in.":                                "102 []; 102 []; ",
		"Flashing laps 4 in. Every lap at the inside corners has to be 6 in.": "102 []; 152 []; ",
	} {
		s := read(t, `Mark | Membrane | Substrate | Primer | Lap mm
1 | butyl sheet | CMU | none | 60/120
2 | butyl flashing | CMU | none | 90

Notes
`+note+"\n")
		got := ""
		for _, l := range s.Project.Limits {
			if l.Kind == "lap_mm" {
				got += fmt.Sprintf("%.0f %v%s; ", *l.Min, l.Roles, strings.TrimSpace(strings.Join(l.Keys, " ")))
			}
		}
		if got != want {
			t.Errorf("%s\ngot  %s\nwant %s", note, got, want)
		}
	}
}

// Two columns may tell the laps of the sides and of the ends; ends that tell of what
// closes them, and a lap that is told once, stay what they are.
func TestLapsInTwoColumns(t *testing.T) {
	for heads, want := range map[string]string{
		"Lap side (mm) | Lap end (mm)":            "lap end_lap",
		"End laps, mm | Side laps, mm":            "end_lap lap",
		"Overlap (long), mm | Overlap (butt), mm": "lap end_lap",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | "+heads+"\nA1 | SBS sheet | CMU | none | 75 | 150\nA2 | SBS sheet | CMU | none | 65 | n/a")
		slots := strings.Fields(want)
		l := line(t, s, "A1")
		for i, key := range map[string]string{"lap": "lap_mm", "end_lap": "end_lap_mm"} {
			at := slices.Index(slots, i)
			if f := l.Figures[key]; !near(f.Min, []float64{75, 150}[at]) {
				t.Errorf("%s: %s is %+v", heads, key, f)
			}
		}
	}
	s := read(t, "Mark | Membrane | Substrate | Primer | Side lap, mm | Ends\nA1 | SBS sheet | CMU | none | 75 | bead 150 long\nA2 | SBS sheet | CMU | none | 75 | term. bar")
	if f, ok := line(t, s, "A1").Figures["end_lap_mm"]; ok {
		t.Errorf("end lap %+v", f)
	}
}

// A note may say "min" after a lap without a unit; words for the wall's sheet, whichever it
// is, ask it of the sheets and not of the flashings.
func TestLeastLapsOfTheWallSheet(t *testing.T) {
	for note, want := range map[string]string{
		"AVB laps: sides 2.5 min, ends 4 minimum, rolled.": "lap_mm membrane 63.5; end_lap_mm membrane 101.6",
		"TWF laps: ends 6 min.":                            "end_lap_mm  152.4",
		"Laps: sides 30 min after priming.":                "",
	} {
		s := readPages(t, page{name: "Work", grid: `
Mark|Material|Substrate|Primer|Lap in
A-1|SBS sheet|block|none|3
A-2|SBS sheet|block|none|3`}, page{name: "Notes", grid: note})
		var got []string
		for _, l := range s.Project.Limits {
			if l.Min != nil {
				got = append(got, fmt.Sprintf("%s %s %.1f", l.Kind, strings.Join(l.Roles, " "), *l.Min))
			}
		}
		if strings.Join(got, "; ") != want {
			t.Errorf("%s: %q, want %q", note, strings.Join(got, "; "), want)
		}
	}
}

// A second column that is headed as a mark is tells what the rows are, where another has
// their numbers; alone it is the mark.
func TestItemBesideTheMark(t *testing.T) {
	for grid, want := range map[string]string{
		"Line|Item|Material|Substrate|Primer\n1|door pan|SBS sheet|block|none\n2|door pan|SBS sheet|block|none": "1 door pan",
		"Item|Material|Substrate|Primer\n1|SBS sheet|block|none\n2|SBS sheet|block|none":                        "1 ",
	} {
		l := readPages(t, page{name: "Work", grid: grid}).Lines[0]
		if got := l.Mark + " " + l.Texts["type"]; got != want {
			t.Errorf("%s: %q, want %q", grid, got, want)
		}
	}
}

// The data of a product may tell the laps of its sides and of its ends in one cell.
func TestLapsOfProductData(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Side lap | End lap
1 | BW-1 | CMU | none | 2 in | 4 in
2 | BW-2 | CMU | none | 3 in | 3 in

Tag | Type | Apply from | Max days exposed | Laps, side / end
BW-1 | butyl sheet | 40 F | 30 | 2" / 5"
BW-2 | SBS sheet | 25 F | 60 | 3" / 3"
BW-3 | EPDM sheet | 40 F | 90 | 4"`)
	got := ""
	for _, p := range s.Products {
		end, ok := p.Figures["end_lap_mm"]
		got += fmt.Sprintf("%s %.0f %v", p.Tag, *p.Figures["lap_mm"].Min, ok)
		if ok {
			got += fmt.Sprintf(" %.0f", *end.Min)
		}
		got += "; "
	}
	if want := "BW-1 51 true 127; BW-2 76 true 76; BW-3 102 false; "; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// The card of a product may tell the lap of its ends alone, or both under labels of
// their own.
func TestLapsOfCards(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Mark | Membrane | Substrate | Primer | Side lap | End lap
1 | Calla 30 | CMU | none | 2 in | 4 in
2 | Calla Strip | CMU | none | - | 3 in`}, page{name: "Cards", grid: `
PRODUCT | Calla 30 | | PRODUCT | Calla Strip
What | butyl sheet | | What | silicone transition strip
Apply from | 40 F | | Apply from | 0 F
Uncovered, max | 30 days | | Uncovered, max | no limit
Laps at ends | 5 in | | End lap | 2 in
Side lap | 3 in | |`})
	for tag, want := range map[string]string{"Calla 30": "76 127", "Calla Strip": "51 51"} {
		for _, p := range s.Products {
			side, end := p.Figures["lap_mm"].Min, p.Figures["end_lap_mm"].Min
			if p.Tag != tag {
				continue
			}
			if side == nil || end == nil || fmt.Sprintf("%.0f %.0f", *side, *end) != want {
				t.Errorf("%s: %v %v, want %s", tag, p.Figures["lap_mm"], p.Figures["end_lap_mm"], want)
			}
		}
	}
}

// What a drip does at its edge is no lap of the sheet on it; what the sheet does is.
func TestDripIsNoLap(t *testing.T) {
	for remark, want := range map[string]bool{"drip turns out 3/8 in.": false, "sheet turns down 3 in.": true} {
		s := read(t, "Mark | Material | Substrate | Primer | Remarks\nD1 | SBS sheet on stainless drip edge | block | none | "+remark+"\nD2 | SBS sheet | block | none | -")
		if f, told := line(t, s, "D1").Figures["lap_mm"]; told != want {
			t.Errorf("%s: %+v", remark, f)
		}
	}
}

// What the next sentence is about is no place of the figure before it, though "min." may
// or may not end that sentence; a place right after the figure is.
func TestLapBeforeTheNextSentence(t *testing.T) {
	for note, want := range map[string]string{
		"Wall sheets: side laps 2 in min, end laps 5 in min. Through-wall pieces: end laps 8 in min.": "127 wall sheets; 203 through-wall; ",
		"Wall sheets: side laps 2 in. min., end laps 5 in. min. TWF pieces: end laps 8 in. min.":      "127 wall sheets; 203 through-wall; ",
		"Wall sheets: side laps 2 in min, end laps 5 in min on verticals.":                            "127 upright; ",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Lap in\n1 | butyl sheet | CMU | none | 2 side / 5 end\n\nNotes\n"+note+"\n")
		got := ""
		for _, l := range s.Project.Limits {
			if l.Kind == "end_lap_mm" {
				got += fmt.Sprintf("%.0f %s; ", *l.Min, l.Scope)
			}
		}
		if got != want {
			t.Errorf("%s\ngot  %s\nwant %s", note, got, want)
		}
	}
}

// A heading may tell the order of two laps by their first letters, so that ends may lap
// less than sides; a note gives both without a unit, and "min" after the last.
func TestLapsByFirstLetters(t *testing.T) {
	s := read(t, `Notes
1 | Laps of sheets: side 50, end 100 min. Higher sheet outside.

Mark | Membrane | Substrate | Primer | Laps (s / e) mm
1 | butyl sheet | CMU | none | 50/100
2 | butyl sheet | CMU | none | 60/40
3 | butyl sheet | CMU | none | 50/100`)
	for mark, want := range map[string]float64{"1": 100, "2": 40} {
		if got := line(t, s, mark).Figures["end_lap_mm"]; got.Min == nil || *got.Min != want {
			t.Errorf("%s: %+v, want %v", mark, got, want)
		}
	}
	inches := line(t, read(t, "Mark | Membrane | Substrate | Primer | Laps S/E in\n1 | butyl sheet | CMU | none | 1/3\n2 | butyl sheet | CMU | none | 2/3"), "1")
	if side, end := inches.Figures["lap_mm"].Min, inches.Figures["end_lap_mm"].Min; !near(side, 25.4) || !near(end, 76.2) {
		t.Errorf("1/3: %+v", inches.Figures)
	}
	for kind, want := range map[string]float64{"lap_mm": 50, "end_lap_mm": 100} {
		if l := limit(s, kind); l == nil || l.Min == nil || *l.Min != want {
			t.Errorf("%s: %+v, want %v", kind, l, want)
		}
	}
	if _, told := line(t, read(t, "Mark | Membrane | Substrate | Primer | Laps mm\n1 | butyl sheet | CMU | none | 60/40\n2 | butyl sheet | CMU | none | 60"), "1").Figures["end_lap_mm"]; told {
		t.Error("two figures in an order that nothing tells are no lap of an end")
	}
}

// A note may list the laps of its sheets with nothing but gaps between them, and in
// fractions of an inch; what stands beside end dams in it is no lap.
func TestLapsListedByGaps(t *testing.T) {
	for note, want := range map[string]string{
		"Laps side/end in.: ZA-1 1-1/2 / 2   ZB-2 2 / 2-3/4   ZC-3 4 / 6.": "lap_mm ZA-1 38.1; end_lap_mm ZA-1 50.8; lap_mm ZB-2 50.8; end_lap_mm ZB-2 69.8; lap_mm ZC-3 101.6; end_lap_mm ZC-3 152.4",
		"Coats wet/dry: ZA-1 40 / 20   ZB-2 60 / 30":                       "",
		"Pans lap 4 in., e.d. 2 in. min.":                                  "lap_mm  101.6; end_dam_mm  50.8",
	} {
		s := readPages(t, page{name: "Work", grid: `
Mark|Material|Substrate|Primer|Lap in.
A-1|ZA-1|block|none|3
A-2|ZB-2|block|none|3
A-3|ZC-3|block|none|3`}, page{name: "Data", grid: `
Tag|Type|Apply min F|Max days open
ZA-1|SBS asphalt sheet|40|60
ZB-2|SBS asphalt sheet|25|60
ZC-3|SBS asphalt sheet, HDPE film|30|30`}, page{name: "Notes", grid: note})
		var got []string
		for _, l := range s.Project.Limits {
			if l.Min != nil {
				got = append(got, fmt.Sprintf("%s %s %.1f", l.Kind, strings.Join(l.Keys, " "), *l.Min))
			}
		}
		if strings.Join(got, "; ") != want {
			t.Errorf("%s: %q, want %q", note, strings.Join(got, "; "), want)
		}
	}
}

// End dams of a note without a unit have that of the columns of laps; what counts them,
// and a note that has a unit, are left as they are.
func TestEndDamsOfNoteWithoutUnit(t *testing.T) {
	for note, want := range map[string]float64{
		"Cavity tray: end dams 30 min at every stop.":           30,
		"Trays have end dams 40 high, sealed.":                  40,
		"Trays: end dams 2 each, drip 12 past face.":            0,
		"Trays: upstand 150 mm, end dams 30 min at every stop.": 0,
	} {
		s := readPages(t, page{name: "Work", grid: "Mark|Material|Substrate|Primer|Lap mm\nA-1|SBS sheet|block|none|75\nA-2|SBS sheet|block|none|75\nA-3|SBS sheet|block|none|75"}, page{name: "Notes", grid: note})
		if l := limit(s, "end_dam_mm"); (l != nil) != (want > 0) || l != nil && (l.Min == nil || *l.Min != want) {
			t.Errorf("%s: %+v, want %v", note, l, want)
		}
	}
}

// Notes of laps that go on in one cell, each for its own sheets and places: a pair behind
// a stroke is that of the sides and that of the ends.
func TestLapsOfNotesGoOn(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Lap
1 | Arden WM-30 | CMU | 2"
2 | Arden WM-30 | CMU | 2"
3 | Arden BG-50 | CMU | 3"

Tag | Type | Min apply °C | Thickness
Arden WM-30 | butyl membrane | 5 | 30 mil
Arden BG-50 | SBS membrane | 5 | 50 mil
Arden HT-30 | butyl membrane | 5 | 30 mil

Notes
1. Adhered sheets: 2" side laps, 4" end laps min. Beneath copings 3"/6". BG-50: 3"/5". XQ: 8" all laps.
`)
	var got []string
	for _, l := range s.Project.Limits {
		if !strings.Contains(l.Kind, "lap") {
			continue
		}
		got = append(got, fmt.Sprintf("%s %.0f %s %s", l.Kind, *l.Min/25.4, l.Scope, strings.Join(l.Keys, " ")))
	}
	want := []string{"lap_mm 2  ", "end_lap_mm 4  ", "lap_mm 3 coping ", "end_lap_mm 6 coping ", "lap_mm 3  rubberized-asphalt-membrane", "end_lap_mm 5  rubberized-asphalt-membrane", "lap_mm 8 (place not found) "}
	if !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
}

// The height of a dam or an upstand in a cell of laps is no lap; the lap beside it is.
func TestDamsAmongLaps(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Lap / term.
1 | rubberized asphalt membrane | CMU | none | back dam 1 in., end dams
2 | rubberized asphalt membrane | CMU | none | 20 mm upstand
3 | rubberized asphalt membrane | CMU | none | upturn min. 25 mm; laps 75 mm
4 | rubberized asphalt membrane | CMU | none | 1 in., end dams
5 | rubberized asphalt membrane | CMU | none | 3 in. sides, end dams 2 in.
6 | rubberized asphalt membrane | CMU | none | rear dam height: 1-1/2"
`)
	got := ""
	for _, l := range s.Lines {
		got += l.Mark
		if f := l.Figures["lap_mm"]; f.Min != nil {
			got += fmt.Sprintf(" %.0f", *f.Min)
		}
		got += "; "
	}
	if want := "1; 2; 3 75; 4 25; 5 76; 6; "; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

// A sheet's sides and ends are told of its laps, though no word of the note says so; gaps and
// distances are not.
func TestSidesAndEndsOfASheet(t *testing.T) {
	for note, want := range map[string]string{
		`WM-2: 2-1/2" sides, 5" ends.`:                                          "lap_mm 64 end_lap_mm 127 ",
		"WM-1 side laps 50 mm, end laps 100 mm. WM-2: 60 mm sides / 90 mm ends": "lap_mm 50 end_lap_mm 100 lap_mm 60 end_lap_mm 90 ",
		"Butyl sheet 75 mm at sides and 150 mm at ends":                         "lap_mm 75 end_lap_mm 150 ",
		"WM-2 is held back from frames 75 mm sides, 150 mm ends":                "",
		"WM-2 gaps: 3 mm sides, 6 mm ends":                                      "",
		"Cement boards: 3 mm sides, 6 mm ends":                                  "",
		"WM-2: 75 mm sides":                                                     "",
	} {
		s := read(t, `Mark | Membrane | Substrate | Primer
1 | WM-1 | CMU | none
2 | WM-2 | CMU | none

Tag | Type | Thickness
WM-1 | rubberized asphalt membrane | 40 mil
WM-2 | butyl sheet | 40 mil

Notes
`+note)
		got := ""
		for _, l := range s.Project.Limits {
			got += fmt.Sprintf("%s %.0f ", l.Kind, *l.Min)
		}
		if got != want {
			t.Errorf("%s: %s, want %s", note, got, want)
		}
	}
}

// Two laps that follow those of the sides and of the ends are in the same order; a lap that
// a part of a note tells alone is of what the note begins with.
func TestLapsGoOn(t *testing.T) {
	for note, want := range map[string]string{
		"Side laps 2.5 in., end laps 4 in. min. On roofs 4 in. and 8 in.":                   "lap_mm 64 ; end_lap_mm 102 ; lap_mm 102 roof; end_lap_mm 203 roof; ",
		"3. Through-wall flashing 200 mm min. up the wall; laps 100 mm or more":             "upturn_mm 200 through-wall; lap_mm 100 through-wall; ",
		"3. Sheets 200 mm min. up the wall; laps 100 mm or more":                            "upturn_mm 200 ; lap_mm 100 ; ",
		"3. Through-wall flashing 200 mm min. up the wall; laps of sheets 100 mm or more":   "upturn_mm 200 through-wall; lap_mm 100 ; ",
		"3. Through-wall flashing 200 mm min. up the wall. Laps 100 mm or more everywhere.": "upturn_mm 200 through-wall; lap_mm 100 ; ",
	} {
		s := read(t, oneWall+note+"\n")
		got := ""
		for _, l := range s.Project.Limits {
			got += fmt.Sprintf("%s %.0f %s; ", l.Kind, *l.Min, l.Scope)
		}
		if got != want {
			t.Errorf("%s\n got %s\nwant %s", note, got, want)
		}
	}
}

// A lap that its cell tells to be bedded or sealed is a lap; a width of bond beside it is none.
func TestLapBedded(t *testing.T) {
	for cell, want := range map[string]float64{
		"3 in. bedded in butyl sealant": 76.2, "100 mm, set in mastic": 100, "5 in. sealed with a bead": 127, "4 in. taped": 101.6,
		"2 in. bond; 3 in. splice": 76.2,
	} {
		s := read(t, "Mark | Membrane | Substrate | Laps\nD1 | SBS sheet | CMU | 3 in.\nD2 | SBS sheet | CMU | "+cell)
		if got := line(t, s, "D2").Figures["lap_mm"].Min; got == nil || math.Abs(*got-want) > 0.1 {
			t.Errorf("%q: %v, want %v", cell, got, want)
		}
	}
}

// A list of what is asked of metal asks its laps of metal, and of no sheet; one headed by what
// may be either asks them of all.
func TestLapsOfMetalAlone(t *testing.T) {
	for note, want := range map[string]string{
		"Metal flashings: zinc-coated 24 ga, copper 20 oz. Laps 5 in. in sealant.": "127 [metal]",
		"3. Sheet metal flashings: soldered, laps 6 in.":                           "152 [metal]",
		"Stainless: 24 ga, laps 4 in. in butyl":                                    "102 [stainless]",
		"Flashings: up 8 in., laps 6 in.":                                          "152 []",
		"Edges: sealed, laps 3 in.":                                                "76 []",
	} {
		s := read(t, oneWall+note+"\n")
		l := limit(s, "lap_mm")
		if l == nil {
			t.Errorf("%s: no lap", note)
			continue
		}
		if got := fmt.Sprintf("%.0f %v", *l.Min, l.Keys); got != want {
			t.Errorf("%s: %s, want %s", note, got, want)
		}
	}
}

// A code stands for the plain word of its product where a lap is told: over the face of AB-1
// is over that of the sheet. The code of a bead stands for no sheet.
func TestLapsOverTheFaceOfACode(t *testing.T) {
	for words, want := range map[string]bool{
		"leg over face of AB-1, top left open": true,
		"leg over face of SE-1 fillet":         false,
		"AB-1 over the face of its leg":        false,
	} {
		s := read(t, "Mark | Membrane | Substrate | Lap | Primer\n1 | TW-1 | CMU | "+words+" | none\n2 | TW-1 | CMU | "+words+" | none\n\nTag | Type | Apply min C\nAB-1 | SBS self-adhered sheet | 4\nTW-1 | rubberized asphalt thru-wall flashing | 4\nSE-1 | silicone sealant | 4\n")
		got := false
		for _, said := range line(t, s, "1").Signals {
			got = got || said.ID == "lap_reversed" && !said.No
		}
		if got != want {
			t.Errorf("%s: %v, want %v", words, got, want)
		}
	}
}

// What transitions bear on each side is asked of what makes one, whatever it is made of; what
// steel bears on masonry is asked of no sheet.
func TestBearings(t *testing.T) {
	for note, want := range map[string]string{
		"Transition strips: 4 in. bearing on each side of the joint.": "102 [transition] []",
		"Laps 3 in.; transitions bear 100 mm min. either side.":       "100 [transition] []",
		"Lintels bear 8 in. each end.":                                "",
		"Transitions: laps 4 in.":                                     "",
	} {
		s, got := read(t, oneWall+note+"\n"), ""
		if l := limit(s, "bearing_mm"); l != nil {
			got = fmt.Sprintf("%.0f %v %v", *l.Min, l.Roles, l.Keys)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
	if l := limit(read(t, oneWall+"Transitions: laps 4 in.\n"), "lap_mm"); l == nil || len(l.Keys) > 0 || len(l.Roles) != 1 {
		t.Errorf("%+v, want it of all transitions", l)
	}
}

// Bare laps are in the unit of the laps of the notes, where most of them are laps that the
// notes ask for: three under a note of millimeters is no lap of three millimeters.
func TestLapsInTheUnitOfTheNotes(t *testing.T) {
	for _, tc := range []struct{ note, cells, want string }{
		{"2. Laps, min.: wall sheet side 2-1/2 in., end 4 in.", "2-1/2 / 4, 2 / 4, - / 4, 2-1/2 / 4", "64 102; 51 102; - 102; 64 102"},
		{"Side laps 75 mm, end laps 150 mm.", "75 / 150, 50 / 150, 75 / 100, n/a / 150", "75 150; 50 150; 75 100; - 150"},
		{"Side laps 75 mm, end laps 150 mm.", "3 / 6, 2 / 6, 3 / 6, 3 / 6", "- -; - -; - -; - -"},        // inches, it seems
		{"Side laps 3 in., end laps 150 mm.", "3 / 6, 2 / 6, 3 / 6, 3 / 6", "- -; - -; - -; - -"},        // in two units
		{"Side laps 3 in., end laps 6 in.", "2 / 4, 2 / 4, 3 / 6, 2 / 4", "- -; - -; - -; - -"},          // few are those of the notes
		{"Insulation 3 in., in two layers of 6 in.", "3 / 6, 2 / 6, 3 / 6, 3 / 6", "- -; - -; - -; - -"}, // of no laps
	} {
		grid := "Mark | Membrane | Substrate | Primer | Side/end lap\n"
		for i, cell := range strings.Split(tc.cells, ", ") {
			grid += fmt.Sprintf("D%d | butyl sheet | plywood | none | %s\n", i+1, cell)
		}
		s, got := read(t, grid+"\n"+tc.note+"\n"), []string{}
		for i := range 4 {
			told := []string{"-", "-"}
			for k, key := range []string{"lap_mm", "end_lap_mm"} {
				if f, ok := line(t, s, fmt.Sprintf("D%d", i+1)).Figures[key]; ok && f.Min != nil {
					told[k] = fmt.Sprintf("%.0f", *f.Min)
				}
			}
			got = append(got, strings.Join(told, " "))
		}
		if strings.Join(got, "; ") != tc.want {
			t.Errorf("%s: %s, want %s", tc.note, strings.Join(got, "; "), tc.want)
		}
	}
}

// How far laps are staggered is no lap.
func TestStaggerIsNoLap(t *testing.T) {
	for note, want := range map[string]string{
		"Laps: side 60 mm, end 120 mm, ends staggered 300 mm.":                    "[60] [120]",
		"Side laps 3 in., end laps 6 in., end laps offset 18 in.":                 "[76] [152]",
		"Side laps 3 in., end laps 6 in., end laps 24 in. apart in next courses.": "[76] [152]",
		"Laps staggered 300 mm.":                          "[] []",
		"Side laps 3 in., ends staggered, end laps 6 in.": "[76] [152]",
	} {
		sides, ends := []string{}, []string{}
		for _, l := range read(t, oneWall+note+"\n").Project.Limits {
			switch l.Kind {
			case "lap_mm":
				sides = append(sides, fmt.Sprintf("%.0f", *l.Min))
			case "end_lap_mm":
				ends = append(ends, fmt.Sprintf("%.0f", *l.Min))
			}
		}
		if got := fmt.Sprint(sides, ends); got != want {
			t.Errorf("%s: %s, want %s", note, got, want)
		}
	}
}
