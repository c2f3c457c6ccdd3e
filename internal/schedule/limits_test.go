package schedule_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

const oneWall = "Mark | Location | Membrane | Substrate | Primer\nD1 | pool hall, north | rubberized asphalt membrane | CMU | none\nD2 | office, north | butyl tape | CMU | none\nD3 | office, south | butyl tape | CMU | none\nD4 | office, east | butyl tape | CMU | none\n\nNotes\n"

// limit finds the limit of a kind, with a bound near the one wanted.
func limit(s *schedule.Schedule, kind string) *schedule.Limit {
	for i := range s.Project.Limits {
		if s.Project.Limits[i].Kind == kind {
			return &s.Project.Limits[i]
		}
	}
	return nil
}

// Two figures without a word of what each is for hold nowhere, and a figure below
// what metal in the sun reaches is no temperature in service.
func TestLimitsToldApart(t *testing.T) {
	s := read(t, oneWall+"Sheets stay uncovered 45 days from April on, 75 days in the dark months.\nNo work under dark metal at 40 F.\n")
	for _, l := range s.Project.Limits {
		if l.Kind == "service_c" || l.Kind == "exposure_days" && l.Scope == "" {
			t.Errorf("%s holds everywhere: %+v", l.Kind, l)
		}
	}
}

// A limit of what the names of products say holds for those products.
func TestLimitsOfDescribedProducts(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer
1 | WM-1 | CMU | none
2 | WM-2 | CMU | none
3 | WM-3 | CMU | none

Tag | Type | Thickness
WM-1 | butyl membrane, for corner strips | 30 mil
WM-2 | stainless steel strip, mech. fixed | 10 mil
WM-3 | butyl membrane | 40 mil

Notes
Thickness: corner strips at least 30 mil
`)
	if l := limit(s, "thickness_mm"); l == nil || strings.Join(l.Keys, " ") != "WM-1" {
		t.Errorf("limit on thickness %+v", l)
	}
}

// A unit by another ends a sentence, and the letters of tags narrow a limit on air.
func TestLimitsOfTags(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer
1 | WM-1 | CMU | none
2 | WM-2 | CMU | none
3 | FT-1 | CMU | none

Tag | Type | Air | Apply min F
WM-1 | butyl tape | 0.001 | 20
WM-2 | butyl tape, wide | 0.001 | 20
FT-1 | EPDM membrane | | 20

Notes
Mastics at most 200 g/L. Air of WM goods 0.02 L/(s·m²) or less.
`)
	if l := limit(s, "voc_gl"); l == nil || strings.Contains(l.Text, "Air") {
		t.Errorf("limit on VOC %+v", l)
	}
	if l := limit(s, "air_lsm2"); l == nil || strings.Join(l.Keys, " ") != "WM-1 WM-2" {
		t.Errorf("limit on air %+v", l)
	}
}

// The unit of a list stands in its lead, whatever follows it there, and a primer of
// sealants has a limit of its own.
func TestLimitsOfAList(t *testing.T) {
	s := read(t, oneWall+"VOC, g/L, at most: sealants 200; primers for sealants 650; primers of sheets 300.\n")
	got := []string{}
	for _, l := range s.Project.Limits {
		if l.Kind == "voc_gl" && l.Max != nil {
			got = append(got, fmt.Sprint(*l.Max, l.Roles, l.Keys))
		}
	}
	if want := "200 [sealant] []; 650 [primer] [sealant-primer]; 300 [primer] []"; strings.Join(got, "; ") != want {
		t.Errorf("limits %q, want %q", strings.Join(got, "; "), want)
	}
}

// A note has a code of its own, tells of some walls only, or of all that is above the
// ground.
func TestNotesOfSomeWalls(t *testing.T) {
	grid := `Mark | Wall | Membrane | Substrate | Primer
1 | EW-3 | butyl tape | CMU | none
2 | EW-4 | butyl tape | CMU | none
3 | EW-4 | butyl tape | CMU | none
4 | EW-5 | butyl tape | CMU | none

Notes
C1 | Above grade, one vapor-tight layer in each wall.
C2 | EW-3, EW-5: all insulation outboard of the sheet.
C3 | State any heated enclosure in the remarks column.
`
	s := read(t, grid)
	got := []string{}
	for _, said := range s.Project.Signals {
		got = append(got, said.ID)
	}
	if strings.Join(got, " ") != "one_tight_layer" {
		t.Errorf("said of the job: %q", got)
	}
}

// A table of what rooms are held at is no log of the work, and the notes under it are
// read.
func TestLimitsUnderRooms(t *testing.T) {
	for heading, want := range map[string]string{
		"Zone | Room | Indoor, °C | RH, % | Dew point, °C | Sheet":     "D1 D2 D3 D4",
		"Zone | Room | Ambient, °C | RH, % | Dew point, °C | Sheet":    "D1 D2 D3 D4 E1 E2 E3 E4",
		"Zone | Laid | Inside air, °C | RH, % | Dew point, °C | Sheet": "D1 D2 D3 D4 E1 E2 E3 E4",
	} {
		cell := "lounge"
		if strings.Contains(heading, "Laid") {
			cell = "3 Mar 2026"
		}
		row := " | " + cell + " | 20 | 40 | 6.0 | butyl tape\n"
		s := read(t, strings.TrimSuffix(oneWall, "Notes\n")+heading+"\nE1"+row+"E2"+row+"E3"+row+"E4"+row+"\nNotes\nVOC of primers 250 g/L at most\n")
		if marks(s) != want {
			t.Errorf("%s: lines %q, want %q", heading, marks(s), want)
		}
		if limit(s, "voc_gl") == nil {
			t.Errorf("%s: no limit", heading)
		}
	}
}

// A note that gives the code of a wall holds for the rows under it, and its sentences
// with it; why a limit is set is no case of it.
func TestLimitsOfACode(t *testing.T) {
	s := read(t, `Mark | Wall | Membrane | Substrate | Primer
1 | EW-3 | butyl tape | CMU | none
2 | EW-4 | butyl tape | CMU | none
3 | EW-4 | butyl tape | CMU | none
4 | EW-5 | butyl tape | CMU | none

Notes
EW-3 (stud): brick and wool. Sheet 500 ng or more.
Walls filled with batts (EW-4): sheet 400 ng or more.
VOC: sealants 150 g/L at most (client's indoor air policy).
`)
	got := map[string]string{}
	for _, l := range s.Project.Limits {
		if l.Kind == "vapor_ng" {
			got[fmt.Sprint(*l.Min)] = l.Scope + " " + strings.Join(l.Keys, " ")
		}
		if l.Kind == "voc_gl" && len(l.When) > 0 {
			t.Errorf("VOC in the case of %v", l.When)
		}
	}
	if got["500"] != "ew-3 " || got["400"] != "ew-4 " {
		t.Errorf("limits %q", got)
	}
}

// The unit of a list may stand in its lead.
func TestLimitsWithTheirUnitInTheLead(t *testing.T) {
	s := read(t, oneWall+"VOC g/L max.: primers 240, sealants 130\n")
	got := map[string]float64{}
	for _, l := range s.Project.Limits {
		if l.Kind == "voc_gl" && l.Max != nil {
			got[strings.Join(l.Roles, " ")] = *l.Max
		}
	}
	if got["primer"] != 240 || got["sealant"] != 130 {
		t.Errorf("limits %v", got)
	}
}

// A thickness told of roofs is asked of no wall.
func TestLimitsOfRoofs(t *testing.T) {
	s := read(t, oneWall+"Thickness: sheets below grade 60 mil, roof vapor barriers 35 mil min., fluid membranes 25 mil dry.\n")
	for _, l := range s.Project.Limits {
		if near(l.Min, 0.889) && l.Scope != "roof" {
			t.Errorf("35 mil is asked of %+v", l)
		}
	}
	if !slices.ContainsFunc(s.Project.Limits, func(l schedule.Limit) bool { return near(l.Min, 0.889) }) {
		t.Errorf("limits %+v", s.Project.Limits)
	}
}

func TestLimitsByTag(t *testing.T) {
	s := read(t, `Mark | Product | Substrate | Primer | Lap
W-1 | ZB-1 | CMU | PR-1 | 3 in.
W-2 | ZB-2 | CMU | PR-1 | 3 in.

Tag | Type | Min apply F | UV days
ZB-1 | self-adhered SBS sheet | 40 | 60
ZB-2 | self-adhered SBS sheet, winter grade | 20 | 60
PR-1 | solvent primer | 20 | -

Notes
Uncovered: ZB-1 50 days, ZB-2 35 days.
Exposure 20 days for ZB-9.
`)
	got := map[float64]string{}
	for _, l := range s.Project.Limits {
		if l.Kind == "exposure_days" {
			got[*l.Max] = strings.Join(l.Keys, " ")
		}
	}
	if got[50] != "ZB-1" || got[35] != "ZB-2" || got[20] != "ZB-9" {
		t.Errorf("limits of %v", got)
	}
}

func TestLimitsOfNotes(t *testing.T) {
	for note, want := range map[string]struct {
		kind     string
		min, max float64 // -1: none
		roles    string
		keys     string
		when     string
		scope    string
	}{
		"Air barrier materials 0.004 cfm/ft2 at 1.57 psf, maximum.":           {kind: "air_lsm2", min: -1, max: 0.02032},
		"Air permeance not over 0.02 L/(s·m²) @ 75 Pa.":                       {kind: "air_lsm2", min: -1, max: 0.02},
		"Primers 250 g/L max.":                                                {kind: "voc_gl", min: -1, max: 250, roles: "primer"},
		"Pool hall is humid all winter: membrane 0.1 perm or less.":           {kind: "vapor_ng", min: -1, max: 5.72135, scope: "pool hall"},
		"Sheet outside the batt 300 ng or more.":                              {kind: "vapor_ng", min: 300, max: -1},
		"On the cold side of the batt nothing tighter than 5 perm.":           {kind: "vapor_ng", min: 286.07, max: -1, scope: "outside of the insulation"},
		"Cold side of the wool 300 ng or more, warm side 60 ng.":              {kind: "vapor_ng", min: 300, max: -1, scope: "(place not found)"},
		"Vapor barrier on the room side: 60 ng or less.":                      {kind: "vapor_ng", min: -1, max: 60},
		"Primers in a confined space 50 g/L at most.":                         {kind: "voc_gl", min: -1, max: 50, roles: "primer", when: "closed_space"},
		"VOC (g/L): sealants 250":                                             {kind: "voc_gl", min: -1, max: 250, roles: "sealant"},
		"VOC limits: 100 g/L for sealants.":                                   {kind: "voc_gl", min: -1, max: 100, roles: "sealant"},
		"Sealants shall not exceed 250 g/L VOC.":                              {kind: "voc_gl", min: -1, max: 250, roles: "sealant"},
		"VOC 80 g/L at most for what is put on at the room side.":             {kind: "voc_gl", min: -1, max: 80, when: "indoors"},
		"Side and end laps 75 mm.":                                            {kind: "lap_mm", min: 75, max: -1},
		"Side laps 3 in., end laps 6 in. minimum.":                            {kind: "lap_mm", min: 76.2, max: -1},
		"End laps 6 in. minimum, side laps 2 in.":                             {kind: "lap_mm", min: 50.8, max: -1},
		"Side laps 3 in. minimum.":                                            {kind: "lap_mm", min: 76.2, max: -1},
		"Cavity flashing through wall: up 10 in. min. Laps 6 in., sealed.":    {kind: "lap_mm", min: 152.4, max: -1, scope: "through-wall"},
		"Sills: slope 1 in 12. Laps 6 in. min., sealed.":                      {kind: "lap_mm", min: 152.4, max: -1},
		"Through-wall flashing laps 6 in. min.":                               {kind: "lap_mm", min: 152.4, max: -1, scope: "through-wall"},
		"Concrete to be at least 28 days old before the sheet goes on.":       {kind: "concrete_age_days", min: 28, max: -1},
		"Allow 185 F under black metal laid direct.":                          {kind: "service_c", min: 85, max: -1, when: "dark_color laid_direct"},
		"Leave concrete twenty-eight days before priming.":                    {kind: "concrete_age_days", min: 28, max: -1, roles: ""},
		"Cover every sheet within forty-five days, left open longer it goes.": {kind: "exposure_days", min: -1, max: 45},
		"Flashings may be left uncovered 20 days.":                            {kind: "exposure_days", min: -1, max: 20, roles: "flashing"},
		"Prime and sheet the same day.":                                       {kind: "same_day", min: -1, max: -1},
		"All sheet edges are sealed or clamped with a termination bar.":       {kind: "termination", min: -1, max: -1},
		"In the archive nothing may give off acetic acid.":                    {kind: "no_acid_cure", min: -1, max: -1},
		"No curing compound on concrete that gets a sheet.":                   {kind: "no_curing_compound", min: -1, max: -1},
		"No sheet may stay uncovered for more than 30 days.":                  {kind: "exposure_days", min: -1, max: 30},
		"Asphaltic sheets 40 mil thick, minimum.":                             {kind: "thickness_mm", min: 1.016, max: -1, keys: "asphaltic"},
		"Surface at least 10 F above dew point when primed.":                  {kind: "dew_margin_k", min: 5.5556, max: -1},
		"Steel no less than 4 K above the dewpoint.":                          {kind: "dew_margin_k", min: 4, max: -1},
		"Pool hall is wet all winter: membrane 0.1 perm or less.":             {kind: "vapor_ng", min: -1, max: 5.72135, scope: "pool hall"},
		"Pool hall: asphaltic winter grade sheets 0.1 perm or less.":          {kind: "vapor_ng", min: -1, max: 5.72135, keys: "asphaltic", scope: "pool hall"},
	} {
		t.Run(note, func(t *testing.T) {
			s := read(t, oneWall+note+"\n")
			l := limit(s, want.kind)
			if l == nil {
				t.Fatalf("none; have %+v", s.Project.Limits)
			}
			if want.min != -1 && !near(l.Min, want.min) || want.max != -1 && !near(l.Max, want.max) || want.min == -1 && l.Min != nil || want.max == -1 && l.Max != nil {
				t.Errorf("bounds %v %v, want %g %g", value(l.Min), value(l.Max), want.min, want.max)
			}
			for _, pair := range [][2]string{{strings.Join(l.Roles, " "), want.roles}, {strings.Join(l.Keys, " "), want.keys}, {strings.Join(l.When, " "), want.when}, {l.Scope, want.scope}} {
				if pair[0] != pair[1] {
					t.Errorf("got %q, want %q", pair[0], pair[1])
				}
			}
		})
	}
}

// What a note asks of a sheet where it comes down over another part is no limit of its
// own laps.
func TestLapOverAnotherPart(t *testing.T) {
	for _, note := range []string{"Laps of the field sheet 5 in. onto the sill flashing.", "Sheet laps at least 6 in. down over the leg of the tray."} {
		s := read(t, oneWall+note+"\n")
		if l := limit(s, "lap_mm"); l != nil {
			t.Errorf("%s: %+v", note, l)
		}
	}
}

// TestKeysOfTagLetters: the products of tags that begin with letters of a note are
// listed in one order, however often the workbook is read.
func TestKeysOfTagLetters(t *testing.T) {
	for range 20 { // a map would list now these first, now those
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | QA-1 | concrete | none | brick
D2 | RB-1 | CMU | none | brick`}, page{name: "P", grid: "Tag | Kind | Thickness mm | Apply min °F\nQA-1 | butyl sheet | 1 | 40\nRB-1 | SBS asphalt sheet | 1.5 | 20"},
			page{name: "N", grid: "Laps: RB and QA sheets 75 mm"})
		l := limit(s, "lap_mm")
		if want := "butyl-flashing-tape rubberized-asphalt-membrane"; l == nil || strings.Join(l.Keys, " ") != want {
			t.Fatalf("got %+v, want %s", l, want)
		}
	}
}

// TestLimitOfWhatIsLaidHot: what is melted on site is no other asphalt.
func TestLimitOfWhatIsLaidHot(t *testing.T) {
	for note, want := range map[string]string{
		"Hot rubberized asphalt: 180 mils thick, reinforced": "hot-rubberized-asphalt-waterproofing",
		"Asphaltic sheets 60 mils thick":                     "asphaltic",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | SBS sheet | concrete | none | brick`}, page{name: "N", grid: note})
		if l := limit(s, "thickness_mm"); l == nil || strings.Join(l.Keys, " ") != want {
			t.Errorf("%q: got %+v, want %s", note, l, want)
		}
	}
}

// TestLimitsOfTheSentenceBefore: "under them" is under what the note has just named.
func TestLimitsOfTheSentenceBefore(t *testing.T) {
	for note, want := range map[string]string{
		"Charcoal caps: allow 80 °C at their back. Rolls beneath them serve to 95 °C at least.": "dark_color",
		"Charcoal caps: allow 80 °C at their back. Rolls on the deck serve to 95 °C service.":   "",
	} {
		s := read(t, oneWall+note+"\n")
		if n := len(s.Project.Limits); n != 2 || strings.Join(s.Project.Limits[1].When, " ") != want {
			t.Errorf("%s: limits %+v, want the second when %q", note, s.Project.Limits, want)
		}
	}
}

// TestLimitsOfCases: what follows a full stop is said of the next figure.
func TestLimitsOfCases(t *testing.T) {
	s := read(t, oneWall+"VOC: 400 g/L max. Within confined spaces 150 g/L.\n")
	got := map[string]float64{}
	for _, l := range s.Project.Limits {
		if l.Kind == "voc_gl" && l.Max != nil {
			got[strings.Join(l.When, " ")] = *l.Max
		}
	}
	if len(got) != 2 || got[""] != 400 || got["closed_space"] != 150 {
		t.Errorf("got %v", got)
	}
}

// The unit of a list stands in its lead or at its last figure; the lead holds for the
// whole list that a semicolon parts.
func TestLimitsOfOneList(t *testing.T) {
	for _, note := range []string{
		"4. VOC, g/L: primers 350; sealants 250; fluid-applied membranes 100. Cover the sheet within 30 days.\n",
		"4. VOC at most: primers 350, sealants 250 and fluid-applied membranes 100 g/L. Cover the sheet within 30 days.\n",
	} {
		want := map[string]float64{"primer": 350, "sealant": 250, "membrane": 100}
		for _, l := range read(t, oneWall+note).Project.Limits {
			if l.Kind != "voc_gl" {
				continue
			}
			if len(l.Roles) != 1 || l.Max == nil {
				t.Fatalf("limit %v at most %v", l.Roles, value(l.Max))
			}
			if want[l.Roles[0]] != *l.Max {
				t.Errorf("limit %v at most %v", l.Roles, value(l.Max))
			}
			delete(want, l.Roles[0])
		}
		if len(want) > 0 {
			t.Errorf("%s: not read: %v", note, want)
		}
	}
}

// The product that a limit is for may stand in brackets right after it.
func TestLimitsWithTheirProductsInBrackets(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FL-1 | CMU | none
W2 | FL-2 | CMU | none`}, page{name: "P", grid: `
Tag | Type | Application °C | Max days open
FL-1 | butyl sheet | 5 | 90
FL-2 | SBS sheet | 5 | 90`}, page{name: "Notes", grid: `
1. Sheets stay exposed 45 days at most (FL-1), 60 days (FL-2).
2. Cover all sheets within 80 days of placing.`})
	got := map[string]float64{}
	for _, l := range s.Project.Limits {
		if l.Kind == "exposure_days" && l.Max != nil && l.Scope == "" {
			got[strings.Join(l.Keys, " ")] = *l.Max
		}
	}
	if got["butyl-flashing-tape"] != 45 || got["rubberized-asphalt-membrane"] != 60 || got[""] != 80 {
		t.Errorf("got %v", got)
	}
}

// A build-up told from the top down states no least thickness; a figure of air "or
// better" is still the most; 2-1/2 in. after "sheets" is no day of February.
func TestNotesThatLookLikeOtherLimits(t *testing.T) {
	s := read(t, oneWall+`1. Deck, from the top: 80 mil TPO, 2 in. polyiso, 1/2 in. board.
2. Air permeance 0.003 cfm/sf or better.
3. Laps: sheets 2-1/2 in. at sides.
`)
	for _, l := range s.Project.Limits {
		switch {
		case l.Kind == "thickness_mm":
			t.Errorf("a layer was read as a limit: %v", value(l.Min))
		case l.Kind == "air_lsm2" && l.Max == nil:
			t.Errorf("the limit of air is at least %v", value(l.Min))
		case l.Kind == "lap_mm" && (l.Min == nil || *l.Min != 63.5):
			t.Errorf("the lap is %v, want 63.5", value(l.Min))
		}
	}
	if len(s.Project.Limits) != 2 {
		t.Errorf("%d limits, want the lap and the air", len(s.Project.Limits))
	}
}

func value(f *float64) any {
	if f == nil {
		return nil
	}
	return *f
}

func TestNotesThatStateNoLimit(t *testing.T) {
	for _, note := range []string{
		"Grid lines are 8 m apart.",
		"The crane stands for 14 days at the north wall.",
		"See sheet 4 for the lap at the parapet.",
		"Issued for tender, 30 days for questions.",
	} {
		if s := read(t, oneWall+note+"\n"); len(s.Project.Limits) != 0 {
			t.Errorf("%q: %+v", note, s.Project.Limits)
		}
	}
}

func TestRooms(t *testing.T) {
	for note, want := range map[string][2]float64{
		"Rooms are kept at 70 F and 40% RH in winter.": {21.11, 0.40},
		"Indoor conditions: 28 °C, 60 % RH.":           {28, 0.60},
	} {
		s := read(t, oneWall+note+"\n")
		if len(s.Project.Indoor) != 1 || !near(s.Project.Indoor[0].TempC, want[0]) || !near(s.Project.Indoor[0].RH, want[1]) {
			t.Errorf("%q: %+v", note, s.Project.Indoor)
		}
	}
	if s := read(t, oneWall+"Apply sealant inside the tent at 50 F or above.\n"); len(s.Project.Indoor) != 0 {
		t.Errorf("a tent is no room: %+v", s.Project.Indoor)
	}
	if s := read(t, oneWall+"Factory is heated to 18 °C, 30 % RH.\n"); len(s.Project.Indoor) != 0 {
		t.Errorf("where panels are made is no room of the building: %+v", s.Project.Indoor)
	}
	if s := read(t, oneWall+"In winter reckon with -3 °C outdoors.\n"); len(s.Project.Indoor) != 0 {
		t.Errorf("outdoors is no room: %+v", s.Project.Indoor)
	}
}

func TestPlaceInTheTitle(t *testing.T) {
	s := read(t, "Heron Street Depot, Saskatoon, Saskatchewan\n\n"+oneWall)
	if !slices.ContainsFunc(s.Project.Places, func(f schedule.Fact) bool { return strings.Contains(f.Text, "Saskatoon") && f.At.Row == 1 }) {
		t.Errorf("places %+v", s.Project.Places)
	}
	s = read(t, strings.ReplaceAll(strings.Replace(oneWall, "| Primer", "| Primer | City", 1), "| none", "| none | Moncton, NB"))
	if len(s.Project.Places) == 0 || s.Project.Places[0].Text != "Moncton, NB" {
		t.Errorf("places %+v", s.Project.Places)
	}
}

func TestLimitsInTheRow(t *testing.T) {
	s := read(t, `
Mark | Membrane | Substrate | Primer | Min. application temp (°C) | UV exposure days | Install date | Cover date
D1 | butyl tape | CMU | acrylic primer | -7 | 30 | 2026-01-05 | 2026-01-20
D2 | rubberized asphalt membrane | CMU | acrylic primer | 4 | 60 | 2026-01-05 | 2026-01-20
`)
	l := line(t, s, "D1")
	if !near(l.Figures["apply_min_c"].Min, -7) || !near(l.Figures["exposure_days"].Min, 30) && !near(l.Figures["exposure_days"].Max, 30) {
		t.Errorf("figures %+v", l.Figures)
	}
	if len(s.Lines) != 2 || len(s.Products) != 0 {
		t.Errorf("%d lines, %d products", len(s.Lines), len(s.Products))
	}
}

// A limit may name the wall types that it is for, or the products of tags that
// begin alike; the laps of ends have one of their own.
func TestLimitsOfMarksAndTags(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Wall type | Place | Membrane | Substrate | Primer
W-1 | north | BR-1 | plywood | none
W-2 | south | BR-2 | plywood | none
W-3 | east | KT-1 | plywood | none
W-4 | west | KT-1 | plywood | none`}, page{name: "P", grid: `
Tag | Type | Min apply °C | Max days open
BR-1 | butyl sheet | 5 | 60
BR-2 | rubberized asphalt sheet | 5 | 60
KT-1 | vapor-permeable sheet | 5 | 60`}, page{name: "N", grid: `
Notes
On W-2 all that is outside of the board 500 ng or more.
Laps of BR rolls: sides 60 mm, ends 120 mm.`})
	got := map[string]string{}
	for _, l := range s.Project.Limits {
		got[l.Kind] = fmt.Sprintf("%g %s %s", *l.Min, l.Scope, strings.Join(l.Keys, " "))
	}
	for kind, want := range map[string]string{
		"vapor_ng":   "500 w-2 ",
		"lap_mm":     "60  butyl-flashing-tape rubberized-asphalt-membrane",
		"end_lap_mm": "120  butyl-flashing-tape rubberized-asphalt-membrane",
	} {
		if got[kind] != want {
			t.Errorf("%s %q, want %q", kind, got[kind], want)
		}
	}
}

// The number of a note is no figure of it.
func TestNumberOfANote(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Installed\nD1 | butyl sheet | plywood | none | 3 Mar 2026\n\n"
	for note, want := range map[string]int{
		"9  Days in the sun: as the data says":       0,
		"9. Days in the sun: as the data says":       0,
		"Days in the sun: 9 days at most":            1,
		"45 days in the sun at most for every sheet": 1,
	} {
		got := 0
		for _, l := range read(t, head+note).Project.Limits {
			if l.Kind == "exposure_days" {
				got++
			}
		}
		if got != want {
			t.Errorf("%q: %d limits of exposure, want %d", note, got, want)
		}
	}
}

// A limit for filled studs is a case, and asks nothing of the batts that tell it.
func TestLimitOfFilledStuds(t *testing.T) {
	s := read(t, `Mark | Product | Substrate | Primer | Lap
W-1 | KB-1 | block | none | 3 in.

Tag | Type | Min apply F | UV days
KB-1 | self-adhered SBS sheet | 40 | 60
KC-1 | fluid-applied STPE air barrier | 40 | 30

Notes
Over insulated studs the KC has at least 12 perms.
`)
	l := limit(s, "vapor_ng")
	if l == nil || strings.Join(l.When, " ") != "studs_filled" || l.Scope != "" || strings.Join(l.Keys, " ") != "fluid-applied-stpe-air-barrier" {
		t.Errorf("got %+v", l)
	}
}

// A maker's letter raises the limit of the product's data, at its place; what it asks in
// return, and what held before, are no limits.
func TestLettersRaiseLimits(t *testing.T) {
	table := "Mark | Location | Membrane | Substrate | Primer\n1 | ramp | FX-3 | CMU | none\n2 | yard | FX-4 | CMU | none\n\nTag | Type | Days open\nFX-3 | SBS sheet | 60\nFX-4 | butyl sheet | 45\n\nNotes\n"
	for note, want := range map[string]schedule.Limit{
		"K-7 Membrane manufacturer, 4 Mar: exposure of FX-3 extended to 75 days at the ramp, if tarped within 20 days of placing.": {Letter: "K-7", Scope: "the ramp"},
		"FX-3 maker, 4 Mar: exposure at L7 extended to 75 days.":                                                                   {Letter: "letter", Scope: "l7"},
		"Letter M12 of the supplier extends the exposure of FX-3 from 60 days to 75 days on this job.":                             {Letter: "M12"},
		"The maker has raised to 75 days the time that FX-3 may stay exposed.":                                                     {Letter: "letter"},
		"FX-3 may stay exposed 75 days.": {},
	} {
		var got []schedule.Limit
		for _, l := range read(t, table+note+"\n").Project.Limits {
			if l.Kind == "exposure_days" {
				got = append(got, l)
			}
		}
		if len(got) != 1 || got[0].Letter != want.Letter || got[0].Scope != want.Scope || got[0].Max == nil || *got[0].Max != 75 {
			t.Errorf("%s: %+v", note, got)
		}
	}
}

// A product with a figure of its own is not held to that of the letters of its tag.
func TestLimitsOfLettersAndOfATag(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer
1 | WM-1 | CMU | none
2 | WM-2 | CMU | none
3 | WM-3 | CMU | none

Tag | Type | Thickness
WM-1 | butyl sheet | 1 mm
WM-2 | butyl sheet, wide | 1 mm
WM-3 | fluid-applied acrylic membrane | 0.7 mm
XT-1 | self-adhered flashing | 1 mm

Notes
WM sheets & XT-1 40 mil min.; WM-3 28 mil DFT min.
`)
	got := ""
	for _, l := range s.Project.Limits {
		got += fmt.Sprintf("%.2f %v; ", *l.Min, l.Keys)
	}
	if want := "1.02 [WM-1 WM-2 self-adhered-flashing-unspecified]; 0.71 [fluid-applied-acrylic-air-barrier]; "; got != want {
		t.Errorf("got %s want %s", got, want)
	}
}

// A list of jobs and a list of their figures go together where they are equally long.
func TestLimitsInParallelLists(t *testing.T) {
	for note, want := range map[string]string{
		"VOC: sealants / primers / coatings, inside and out  220 / 330 / 90 g/L max": "coating 90, primer 330, sealant 220",
		"VOC 270/180 g/L for primers / adhesives":                                    "adhesive 180, primer 270",
		"VOC: primers / sealants 120 g/L max":                                        "primer sealant 120",
	} {
		var got []string
		for _, l := range read(t, oneWall+note+"\n").Project.Limits {
			if l.Kind == "voc_gl" && l.Max != nil && len(l.When) == 0 && strings.Contains(note, strings.TrimSpace(l.Text[len(l.Text)-9:])) {
				got = append(got, fmt.Sprint(strings.Join(l.Roles, " "), " ", *l.Max))
			}
		}
		slices.Sort(got)
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %q", note, got)
		}
	}
}

// What begins with its figure is asked of what stands before it in the row, and words for
// how open a sheet is narrow the letters of its tags.
func TestLimitsOfOneSubject(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer
1 | WM-1 | CMU | none
2 | WM-2 | CMU | none
3 | WM-3 | CMU | none

Tag | Type | Thickness | Permeance
WM-1 | rubberized asphalt membrane | 45 mil | 0.05 perm
WM-2 | vapor-permeable membrane, acrylic adhesive | 20 mil | 15 perm
WM-3 | butyl membrane | 45 mil | 0.04 perm

Notes
WM membrane, vapor impermeable: 45 mil thick or more; ≤ 0.15 perm
WM membrane, permeable: 20 mil thick or more
`)
	for _, l := range s.Project.Limits {
		open := slices.ContainsFunc(l.Keys, func(k string) bool { return strings.HasPrefix(k, "vapor-permeable") })
		switch {
		case l.Kind == "vapor_ng" && len(l.Keys) == 0:
			t.Errorf("%q holds for all: %+v", l.Text, l)
		case l.Kind == "thickness_mm" && open != (*l.Min < 1):
			t.Errorf("%q holds for %v", l.Text, l.Keys)
		}
	}
	if limit(s, "thickness_mm") == nil {
		t.Errorf("no limit on thickness: %+v, notes %+v", s.Project.Limits, s.Project.Notes)
	}
}

// The number of a section before an item and what is asked of it tells nothing itself.
func TestNotesBySection(t *testing.T) {
	s := read(t, "Job limits\n07 25 00 / 3.2 | Walls | Only one class I retarder in any assembly\n07 92 00, 07 27 26 | VOC of sealants | 210 g/L max\n\n"+areas)
	if len(s.Project.Signals) != 1 || s.Project.Signals[0].ID != "one_tight_layer" {
		t.Errorf("signals %+v", s.Project.Signals)
	}
	if l := limit(s, "voc_gl"); l == nil || l.Text != "VOC of sealants 210 g/L max" {
		t.Errorf("limit %+v", l)
	}
}

// A wall type after the number of a section is no product, whatever is asked of it.
func TestWallsBySection(t *testing.T) {
	s := read(t, "Job limits\n07 21 00 | WT2 (6 in. studs, wool batts) outer board | R-9 or more outboard; 40 mil wrap\n\n"+areas)
	for _, p := range s.Products {
		if p.ID == "WT2" {
			t.Error("WT2 is a product")
		}
	}
}

// A limit of a code that nothing else in the workbook names holds nowhere.
func TestLimitsOfUnreadCodes(t *testing.T) {
	for note, open := range map[string]bool{
		"Permeance in XW9 and XW12 ≤ 6 ng/(Pa·s·m²)": false,
		"Permeance by ASTM E96 ≤ 6 ng/(Pa·s·m²)":     true,
	} {
		l := limit(read(t, "Job limits\n"+note+"\n\n"+areas), "vapor_ng")
		if l == nil || (l.Scope == "") != open {
			t.Errorf("%s: %+v", note, l)
		}
	}
}

// A limit near something holds there, and for what the limit before it was for.
func TestLimitNearSomething(t *testing.T) {
	for note, want := range map[string]string{
		"VOC: primers at most 300 g/L; within 5 m of a fresh air inlet at most 80 g/L": "300 [primer] |80 [primer] within 5 m of a fresh air inlet|",
		"Sealants within 20 ft of louvers: 40 g/L":                                     "40 [sealant] within 20 ft of louvers|",
		"Primers within 5 m of louvers 80 g/L, sealants 250 g/L":                       "80 [primer] within 5 m of louvers|250 [sealant] |",
	} {
		s := read(t, "Job limits\nR5 | "+note+"\n\nMark | Membrane | Substrate\nA | SBS self-adhered sheet | CMU\nB | butyl tape | CMU")
		got := ""
		for _, l := range s.Project.Limits {
			if l.Kind == "voc_gl" && l.Max != nil {
				got += fmt.Sprintf("%v %v %s|", *l.Max, l.Roles, l.Scope)
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// A service temperature in degrees of no scale is in that of the data; other degrees
// are angles.
func TestServiceInBareDegrees(t *testing.T) {
	for note, want := range map[string]int{
		"Sheets below metal caps and copings: 230 deg service at least.": 1,
		"Underlayment beneath metal 220 degrees rated, no less.":         1,
		"Turn the coping edge 180 deg under the cleat.":                  0,
	} {
		s := read(t, walls+`
Tag | Type | Min apply, °F | Service to, °F
R-1 | rubberized asphalt membrane | 40 | 180

`+note+`
`)
		got := 0
		for _, l := range s.Project.Limits {
			if l.Kind == "service_c" && l.Min != nil && *l.Min > 100 && *l.Min < 112 {
				got++
			}
		}
		if got != want {
			t.Errorf("%s: %d limits, want %d (%+v)", note, got, want, s.Project.Limits)
		}
	}
}

// The unit of a row of criteria stands with what it is about, and its figures are bare.
func TestLimitsUnderTheUnitOfTheItem(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer
1 | rubberized asphalt membrane | CMU | P-1

Item | Requirement | Ref
Office | 21 °C, 30 % RH in winter. | C-3
VOC (g/L) | Wall and joint primers ≤ 300. Sealants ≤ 200. | C-4
`)
	got := ""
	for _, l := range s.Project.Limits {
		if l.Max != nil {
			got += fmt.Sprintf("%s %.0f %v%v; ", l.Kind, *l.Max, l.Roles, l.Keys)
		}
	}
	if want := "voc_gl 300 [primer][]; voc_gl 200 [sealant][]; "; got != want {
		t.Errorf("limits %s\nwant   %s", got, want)
	}
}

// TestExamplesInBrackets: a wall beside other things in brackets is an example of what a
// limit is asked of, and not the one place of it.
func TestExamplesInBrackets(t *testing.T) {
	for note, want := range map[string]string{
		"Membrane within 1 in. of dark metal (copings, W-2 panel): service rating 220 °F min.": "",
		"Membrane under dark metal (W-2): service rating 220 °F min.":                          "w-2",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Wall type | Place\nD1 | SBS sheet | CMU | none | W-1 | parapet\nD2 | SBS sheet | CMU | none | W-2 | panel\nD3 | SBS sheet | CMU | none | W-3 | brick\n\n"+note+"\n")
		for _, l := range s.Project.Limits {
			if l.Kind == "service_c" && l.Scope != want {
				t.Errorf("%s: scope %q, want %q", note, l.Scope, want)
			}
		}
	}
}

// How far apart fasteners of bars and weeps may be, and how deep beads: a height above
// grade, ties and the depth of a groove are none of these.
func TestLimitsOfSpacingAndDepth(t *testing.T) {
	for note, want := range map[string]string{
		"Term bars: screws 200 mm c/c max.":                      "spacing_mm 200",
		"Bars at all top edges, anchored every 12 in.":           "spacing_mm 305",
		"Bar at least 8 in above finished grade.":                "",
		"Brick ties 16 in on center.":                            "",
		"Weeps just above the flashing, 600 mm centres at most.": "weep_spacing_mm 600",
		"Weep vents at 24 in o.c.":                               "weep_spacing_mm 610",
		"Weeps 1 in above grade.":                                "",
		"Sealant beads: 12 mm maximum depth.":                    "joint_depth_mm 12",
		"Joint sealant: depth 1/2 in max.":                       "joint_depth_mm 13",
		"Reglet 1 in deep for the sealant.":                      "",
		"Weeps at 700 or closer.":                                "weep_spacing_mm 700",
		"Termination bar screws 250 max.":                        "spacing_mm 250",
		"Bar 250 above grade.":                                   "",
		"Weeps: 400 off in all.":                                 "",
	} {
		s := read(t, walls+"\n\n"+note+"\n")
		got := ""
		for _, l := range s.Project.Limits {
			if l.Max != nil && (l.Kind == "spacing_mm" || l.Kind == "weep_spacing_mm" || l.Kind == "joint_depth_mm") {
				got += fmt.Sprintf("%s %.0f", l.Kind, *l.Max)
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
		for _, p := range s.Products {
			if p.Tag == "Weeps" {
				t.Errorf("%s: made a product of a note", note)
			}
		}
	}
}

// A note on some wall types asks for insulation that does not burn in those alone.
func TestInsulationOfWallTypes(t *testing.T) {
	for note, want := range map[string]string{
		"Insulation in W-2 and W-3: stone wool only.":            "w-2, w-3",
		"No foam plastic insulation in W-3.":                     "w-3",
		"Sealant in W-2: no foam rod.":                           "none",
		"W-2: XPS insulation is part of the tested wall.":        "none",
		"Cavity insulation of W-2 is to be noncombustible wool.": "w-2",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Wall type | Place\nD1 | SBS sheet | CMU | none | W-1 | parapet\nD2 | SBS sheet | CMU | none | W-2 | panel\nD3 | SBS sheet | CMU | none | W-3 | brick\n\n"+note+"\n")
		got := "none"
		for _, l := range s.Project.Limits {
			if l.Kind == "noncombustible" {
				got = l.Scope
			}
		}
		if got != want {
			t.Errorf("%s: scope %q, want %q", note, got, want)
		}
	}
}

// One sentence asks the air of the material and of the tested assembly: each is a limit of
// its own, and holds everywhere.
func TestAirOfMaterialAndAssembly(t *testing.T) {
	for _, note := range []string{
		"Air permeance: material 0.02 L/(s·m²), mock-up walls 0.15 L/(s·m²) at 75 Pa.",
		"Air at 75 Pa 0.02 L/(s·m²) for the sheet, 0.15 L/(s·m²) for the assembly.",
		"Sheet: 0.02 L/(s·m²) max. by E2178. Whole wall by E2357: 0.15 L/(s·m²) max.",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\nD1 | SBS sheet | CMU | none\nD2 | SBS sheet | CMU | none\n\n"+note+"\n")
		for kind, want := range map[string]float64{"air_lsm2": 0.02, "air_result_lsm2": 0.15} {
			if l := limit(s, kind); l == nil || l.Max == nil || !near(l.Max, want) || l.Scope != "" {
				t.Errorf("%s: %s %+v, want %v everywhere", note, kind, l, want)
			}
		}
	}
}

// A letter that tells procedures apart ends a sentence; an initial does not.
func TestSentenceAfterALetter(t *testing.T) {
	for note, want := range map[string]string{
		"Sheets outside: 8 perms or more, ASTM E96 method B. No poly on the room side of studs.": "Sheets outside: 8 perms or more, ASTM E96 method B",
		"Sheets outside: 8 perms or more, as J. Larch wrote. No poly.":                           "Sheets outside: 8 perms or more, as J. Larch wrote",
	} {
		s := read(t, walls+"\n\n"+note+"\n")
		got := ""
		for _, l := range s.Project.Limits {
			if l.Kind == "vapor_ng" {
				got = l.Text
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// How narrow a joint may be: a width of the joint, and not of what covers it.
func TestLimitsOfJointWidth(t *testing.T) {
	for note, want := range map[string]float64{
		"Sealant joints 8 wide at least.":             8,
		"Joints: minimum width 10 mm, tooled concave": 10,
		"Tape over joints 75 mm wide.":                0,
		"Sealant joints at most 25 mm wide.":          0,
		"Joints 8 deep.":                              0,
	} {
		got := 0.0
		for _, l := range read(t, walls+"\n\n"+note+"\n").Project.Limits {
			if l.Kind == "joint_width_mm" && l.Min != nil {
				got = *l.Min
			}
		}
		if got != want {
			t.Errorf("%s: %v, want %v", note, got, want)
		}
	}
}

// The height that a flashing is turned up the wall is a limit of its own place.
func TestUpturnAsked(t *testing.T) {
	s := read(t, "Notes\n4 | Through-wall flashing: upstand 200 mm min., behind the sheet.\n5 | Roof upstands 150 mm.\n\n"+areas)
	if l := limit(s, "upturn_mm"); l == nil || l.Min == nil || *l.Min != 200 || l.Scope != "through-wall" {
		t.Errorf("limit %+v of %+v", l, s.Project.Limits)
	}
	s = read(t, "Notes\n4 | Flashings: 180 mm up the backing, laps 90 mm sealed, end dams 30 mm where it ends.\n\n"+areas)
	for kind, want := range map[string]float64{"upturn_mm": 180, "end_dam_mm": 30} {
		if l := limit(s, kind); l == nil || *l.Min != want || l.Scope != "" {
			t.Errorf("%s: %+v", kind, l)
		}
	}
}

// The points of a unit and of its bound part no figure from the words after it.
func TestPointsOfAUnit(t *testing.T) {
	for _, note := range []string{"Base flashing: 6 in. min. up the sheathing.", "Base flashing 6 in. up the sheathing, at least", "Base flashing: 6 in. minimum upstand."} {
		s := read(t, "Mark | Membrane | Substrate | Primer\nD1 | SBS sheet | CMU | none\nD2 | SBS sheet | CMU | none\n\n"+note+"\n")
		if l := limit(s, "upturn_mm"); l == nil || !near(l.Min, 152.4) {
			t.Errorf("%s: %+v, want 152.4 mm", note, l)
		}
	}
}

// The point of a bound that stands between a figure and its words ends no sentence.
func TestUpturnAfterItsBound(t *testing.T) {
	s := read(t, "Notes\n4 | Cavity trays: 150 mm min. up the backing, sheet laps over.\n\n"+areas)
	if l := limit(s, "upturn_mm"); l == nil || l.Min == nil || *l.Min != 150 {
		t.Errorf("limit %+v of %+v", l, s.Project.Limits)
	}
	if l := limit(read(t, "Notes\n4 | Sheet laps 150 mm min. Trays run up the backing.\n\n"+areas), "upturn_mm"); l != nil {
		t.Errorf("limit %+v", l)
	}
}

// What a note is about may stand before a colon, and its number before that; a lap that is
// told far into a sentence about something else is no limit.
func TestSubjectAfterAColon(t *testing.T) {
	for note, want := range map[string]bool{
		"3. Peel and stick sheets and window tapes: laps 3 in. minimum, sides and ends.": true,
		"Every membrane, tape and strip of the walls: lap 3 in. at least.":               true,
		"3. Wrap the posts of the canopy with tape so that it laps 3 in. minimum.":       false,
	} {
		s := read(t, "Mark | Membrane | Substrate | Lap\nD1 | SBS sheet | CMU | 3 in\n\nNOTES\n"+note+"\n")
		if l := limit(s, "lap_mm"); (l != nil) != want {
			t.Errorf("%q: %+v", note, l)
		}
	}
}

// The ages of concrete under sheets and under what is put on wet, in one note: each has
// its own, whichever stands first.
func TestAgeUnderFluids(t *testing.T) {
	for note, fluid := range map[string]float64{
		"Concrete 10 days old before sheets, 30 days before fluid applied membranes.":   30,
		"Concrete age: sheets 10 days, liquid-applied membranes 30 days.":               30,
		"Concrete 30 days old before fluids, 10 days before sheets.":                    30,
		"Concrete must be 21 days old before fluid-applied waterproofing is rolled on.": 21,
	} {
		s := read(t, oneWall+note+"\n")
		found := 0
		for _, l := range s.Project.Limits {
			if own := strings.Join(l.Keys, " ") == "fluid-applied-unspecified"; l.Kind == "concrete_age_days" && own {
				found++
				if !near(l.Min, fluid) {
					t.Errorf("%s: %v", note, value(l.Min))
				}
			}
		}
		if found != 1 {
			t.Errorf("%s: %+v", note, s.Project.Limits)
		}
	}
}

// Notes that ask for the date of every cover; other words of covers ask for none.
func TestCoverDateAsked(t *testing.T) {
	for note, want := range map[string]bool{
		"Each sheet must have a covering date.":             true,
		"A cover date is required on all rows.":             true,
		"Cover dates are those of the program of 12 March.": false,
		"All covers are bolted.":                            false,
	} {
		if got := limit(read(t, oneWall+note+"\n"), "cover_date") != nil; got != want {
			t.Errorf("%s: %v", note, got)
		}
	}
}

// What the sheets of a wall lie on is not what a note asks something of.
func TestBedOfLimitedSheets(t *testing.T) {
	for note, want := range map[string]int{"Sheets over plywood (EW4) shall be 8 perms or more.": 0, "Butyl sheets (EW4) shall be 8 perms or more.": 1} {
		s := readPages(t, page{name: "Work", grid: `
Mark|Wall|Material|Substrate|Primer|Installed
A-1|EW4|butyl sheet|plywood|none|2026-06-01
A-2|EW5|SBS sheet|gypsum|none|2026-06-08`}, page{name: "Notes", grid: note})
		if l := limit(s, "vapor_ng"); l == nil || l.Scope != "ew4" || len(l.Keys) != want {
			t.Errorf("%s: %+v", note, l)
		}
	}
}

// A note that begins with the codes of walls goes on about them, until a sentence says that
// it holds for all.
func TestNoteOfSomeWallsThenAll(t *testing.T) {
	for note, want := range map[string]bool{
		"EW-4: sheet 8 perms or more. No class I interior lining in any wall.":         true,
		"EW-4, EW-5: sheet 8 perms or more. Throughout, no class I film on room side.": true,
		"EW-4: sheet 8 perms or more. No class I interior lining.":                     false,
	} {
		s := read(t, "Mark | Wall | Membrane | Substrate | Primer\n1 | EW-3 | butyl tape | CMU | none\n2 | EW-4 | butyl tape | CMU | none\n3 | EW-5 | butyl tape | CMU | none\n\nNotes\n1 | "+note)
		got := slices.ContainsFunc(s.Project.Signals, func(said schedule.Said) bool { return said.ID == "one_tight_layer" && !said.No })
		if got != want {
			t.Errorf("%s: said of the job %v", note, got)
		}
	}
}

// The laps of sides and of ends stand at those words, too, and what holds above and below
// grade holds everywhere.
func TestLapsAtSidesAndAtEnds(t *testing.T) {
	for note, want := range map[string]string{
		"Adhered sheets, above and below grade, lap not less than 4 in. at sides and 6 in. at the ends.": "end_lap_mm 152.4, lap_mm 101.6",
		"All sheets lap at least 65 mm at sides and 150 mm at ends":                                      "end_lap_mm 150.0, lap_mm 65.0",
		"Sheets below grade lap 4 in.": "lap_mm 101.6 below grade",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\nD1 | SBS sheet | CMU | none | 4 in."}, page{name: "Notes", grid: note})
		var got []string
		for _, l := range s.Project.Limits {
			got = append(got, strings.TrimSpace(fmt.Sprintf("%s %.1f %s", l.Kind, *l.Min, l.Scope)))
		}
		slices.Sort(got)
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: got %q, want %q", note, got, want)
		}
	}
}

// The point of "max." ends what is asked of one wall where the next one has its colon, and is
// that of a short word elsewhere.
func TestLimitsOfWallsAfterShortWords(t *testing.T) {
	for note, want := range map[string]string{
		"EW-3: membrane 0.1 perm max. EW-4, EW-5: membrane 10 perms min.": "max 6 ew-3, min 572 ew-4, ew-5",
		"EW-4: membrane min. 10 perms":                                    "min 572 ew-4",
	} {
		s := read(t, "Mark | Wall | Membrane | Substrate | Primer\n1 | EW-3 | butyl tape | CMU | none\n2 | EW-4 | butyl tape | CMU | none\n3 | EW-5 | butyl tape | CMU | none\n\nNotes\n1 | "+note)
		var got []string
		for _, l := range s.Project.Limits {
			if l.Max != nil {
				got = append(got, fmt.Sprintf("max %.0f %s", *l.Max, l.Scope))
			}
			if l.Min != nil {
				got = append(got, fmt.Sprintf("min %.0f %s", *l.Min, l.Scope))
			}
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: got %q, want %q", note, got, want)
		}
	}
}

// "Rules" below a list of walls head notes, and a bare lap that no inches can be is in
// millimeters; the word after it is not the unit.
func TestRulesBelowAListOfWalls(t *testing.T) {
	for note, want := range map[string]string{
		"Sheet laps 65 min. side + end":          "lap_mm 65",
		"Metal flashing laps 125 in mastic":      "lap_mm 125",
		"Through-wall flashing laps at least 90": "lap_mm 90",
		"Sheet laps 3":                           "",
		"See laps of sheet A-401":                "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Wall | Membrane | Substrate | Primer\nD1 | EW1 | SBS sheet | CMU | none"},
			page{name: "Walls", grid: "Wall | Build-up, outside to inside\nEW1 | brick, air, SBS sheet, CMU\nEW2 | zinc, SBS sheet, CMU\n\nHOUSE RULES\n1 | Upper over lower, always and everywhere.\n2 | " + note})
		got := ""
		if l := limit(s, "lap_mm"); l != nil {
			got = fmt.Sprintf("lap_mm %.0f", *l.Min)
		}
		if got != want || slices.ContainsFunc(s.Lines, func(l schedule.Line) bool { return l.Sheet == "Walls" && l.Row > 3 }) {
			t.Errorf("%s: %q, %d lines", note, got, len(s.Lines))
		}
	}
}

// A list with a colon is of what stands before it; how far a flashing goes up, or past the
// face, is no lap, and a bound may stand behind a bracket.
func TestListsOfFlashing(t *testing.T) {
	for note, want := range map[string]string{
		"Through-wall flashing: laps 100 mm sealed, 200 mm up the backing, end dams 50 mm least, drip 10 mm past the brick.": "lap_mm 100.. through-wall|upturn_mm 200.. through-wall|end_dam_mm 50.. ",
		"Cavity flashing laps 100 mm; drip edge projects 10 mm.":                                                             "lap_mm 100.. ",
		"Side laps 60 mm least, end laps 120 mm least.":                                                                      "lap_mm 60.. |end_lap_mm 120.. ",
		"Breathable membranes 12 perms (E96 B) or more.":                                                                     "vapor_ng 687.. [vapor-permeable]",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\n1 | butyl sheet | CMU | none\n\nNotes\n"+note)
		var got []string
		for _, l := range s.Project.Limits {
			one := l.Kind + " " + l.Scope
			if l.Min != nil {
				one = fmt.Sprintf("%s %.0f.. %s", l.Kind, *l.Min, l.Scope)
			}
			if l.Max != nil {
				one = fmt.Sprintf("%s ..%.0f %s", l.Kind, *l.Max, l.Scope)
			}
			if len(l.Keys) > 0 {
				one += fmt.Sprint(l.Keys)
			}
			got = append(got, one)
		}
		if all := strings.Join(got, "|"); all != want {
			t.Errorf("%s\nreads %s\nwant  %s", note, all, want)
		}
	}
}

// What a note asks of the inside of the wall alone is asked of no row's sheet, though the words
// before its colon head some rows.
func TestLimitOfTheInside(t *testing.T) {
	for note, want := range map[string]string{
		"Moisture control: nothing of 0.5 perm or less inside.": "(place not found)",
		"Moisture control: nothing of 0.5 perm or less.":        "moisture control",
		"Nothing of 0.5 perm or less inboard":                   "(place not found)",
		"Nothing of 0.5 perm or less":                           "",
	} {
		s := read(t, "Mark | Wall | Membrane | Substrate | Primer\nMOISTURE CONTROL | | | |\n1 | EW-1 | butyl sheet | CMU | none\n2 | EW-1 | butyl sheet | CMU | none\nUPPER WALLS | | | |\n3 | EW-2 | butyl sheet | CMU | none\n4 | EW-2 | butyl sheet | CMU | none\n5 | EW-2 | butyl sheet | CMU | none\n6 | EW-2 | butyl sheet | CMU | none\n\nNotes\n"+note)
		if l := s.Project.Limits; len(l) != 1 || l[0].Scope != want {
			t.Errorf("%s: %+v, want of %q", note, l, want)
		}
	}
}

// A note may give one bed a limit for each of what is laid over it; what it names besides
// is on no row.
func TestLimitsByWhatIsLaidOver(t *testing.T) {
	table := "Mark | Membrane | Substrate | Primer\n1 | WM-1 | concrete | none\n\nTag | Type | Thickness\nWM-1 | SBS sheet | 1 mm\nWM-4 | STPE liquid flashing | 1 mm\n\nNotes\n"
	for note, want := range map[string]string{
		"Moisture: concrete 10 % max. under membranes, 4 % under WM-4.": "0.10 [membrane] [] ; 0.04 [] [liquid-flashing] ; ",
		"Moisture: concrete 10 % max., plywood 18 % max.":               "0.10 [] [] ; 0.18 [] [] ; ",
		"Moisture of concrete: 3 % under oak flooring.":                 "0.03 [] [] (place not found); ",
	} {
		got := ""
		for _, l := range read(t, table+note+"\n").Project.Limits {
			got += fmt.Sprintf("%.2f %v %v %s; ", *l.Max, l.Roles, l.Over, l.Scope)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// A note keeps the inside of walls open by their codes, after a statement of the climate
// too; one that names no wall asks it of the job by its words, and no walls by codes.
func TestWallsOpenInside(t *testing.T) {
	pages := func(note string) []page {
		return []page{
			{name: "S", grid: "Mark | Wall | Membrane | Substrate | Primer\nD1 | XW1 | SBS sheet | CMU | none\nD2 | XW2 | SBS sheet | CMU | none"},
			{name: "W", grid: "Wall type | Build-up\nXW1 | brick, air, SBS sheet, CMU\nXW2 | panel, air, SBS sheet, CMU"},
			{name: "N", grid: "Notes\n" + note},
		}
	}
	for note, want := range map[string]string{
		"XW2: left open to dry to the room.":               "xw2",
		"Climate zone 6. No film at the room side of XW1.": "xw1",
		"No film at the room side.":                        "none",
		"XW1 has its film on the room side.":               "none",
	} {
		got := "none"
		for _, l := range readPages(t, pages(note)...).Project.Limits {
			if l.Kind == "open_inside" {
				got = l.Scope
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// What a note asks of the weather barrier outside of batts it asks of the sheet that lies
// there, whichever it is; elsewhere the word stays one for a kind.
func TestAnySheetOutsideOfBatts(t *testing.T) {
	for note, want := range map[string]string{
		"Outboard of batts: WRB permeance 500 ng or more.": "[membrane] [] outside of the insulation",
		"WRB permeance 500 ng or more.":                    "[] [air-barrier-unspecified] ",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\n1 | SBS sheet | CMU | none\n\nNotes\n"+note+"\n")
		l := limit(s, "vapor_ng")
		if l == nil || fmt.Sprintf("%v %v %s", l.Roles, l.Keys, l.Scope) != want {
			t.Errorf("%s: %+v", note, l)
		}
	}
}

// A length after a thickness that goes onto or past something is a lap of it.
func TestThicknessThenLap(t *testing.T) {
	for note, want := range map[string]int{
		"Liquid flashing: 25 mil dry min., 3 in. onto the sheet.": 1,
		"Liquid flashing: 25 mil dry min., 50 mm over the frame.": 1,
		"Sheets: 40 mil min., pads 2 in. thick.":                  2,
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Installed
A1 | SBS sheet | plywood | none | @2026-04-13`}, page{name: "Notes", grid: note})
		n := 0
		for _, l := range s.Project.Limits {
			if l.Kind == "thickness_mm" {
				n++
			}
		}
		if n != want {
			t.Errorf("%q: %d thicknesses, want %d: %+v", note, n, want, s.Project.Limits)
		}
	}
}

// How far a flashing goes up stands after that word alone too, and is no lap; of a wall or a sheet it tells nothing.
func TestUpAlone(t *testing.T) {
	for note, want := range map[string]string{
		"Cavity trays lap 100 mm, up 200 mm min.":               "lap_mm 100|upturn_mm 200",
		"Base flashing: up 150 mm at least, laps 75 mm.":        "upturn_mm 150|lap_mm 75",
		"Sheets lap 100 mm, up 200 mm above grade.":             "lap_mm 100",
		"Flashing laps 100 mm where the sheet runs up 2 walls.": "lap_mm 100",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\n1 | butyl sheet | CMU | none\n\nNotes\n"+note)
		var got []string
		for _, l := range s.Project.Limits {
			if l.Min != nil {
				got = append(got, fmt.Sprintf("%s %.0f", l.Kind, *l.Min))
			}
		}
		if all := strings.Join(got, "|"); all != want {
			t.Errorf("%s\nreads %s\nwant  %s", note, all, want)
		}
	}
}

// A kind that stands right before a tag is that product's, and asks nothing of others of its kind.
func TestKindBeforeItsTag(t *testing.T) {
	for note, want := range map[string]string{
		"Fluid FL-7: 60 mil dry min.":             "[fluid-applied-acrylic-air-barrier]",
		"Fluids 60 mil dry min.":                  "[fluid-applied-unspecified]",
		"Fluids, also FL-7: 60 mil thick or more": "[fluid-applied-unspecified fluid-applied-acrylic-air-barrier]",
	} {
		s := read(t, "Notes\n1 | "+note+"\n\nTag | Product | Type\nFL-7 | Alder Coat | fluid-applied acrylic air barrier\nLF-2 | Alder Flash | STPE liquid flashing\n\n"+areas)
		got := ""
		for _, l := range s.Project.Limits {
			if l.Kind == "thickness_mm" {
				got += fmt.Sprint(l.Keys)
			}
		}
		if got != want {
			t.Errorf("%s: %s, want %s", note, got, want)
		}
	}
}

// What a note asks on a wall of a sheet "if asphaltic" it asks of no other there.
func TestLimitsOfWallsIfMadeOf(t *testing.T) {
	for note, want := range map[string]string{
		"Sheets on EW-4, where butyl: 30 mil minimum.":  "[butyl] ew-4",
		"Sheets on EW-4, if exposed: 30 mil minimum.":   "[] ew-4",
		"Sheets on EW-4: 30 mil minimum, where primed.": "[] ew-4",
	} {
		s := read(t, "Mark | Wall | Membrane | Substrate | Primer\n1 | EW-3 | SBS sheet | CMU | none\n2 | EW-4 | butyl sheet | CMU | none\n\nNotes\n1 | "+note)
		if l := limit(s, "thickness_mm"); l == nil || fmt.Sprintf("%v %s", l.Keys, l.Scope) != want {
			t.Errorf("%s: %+v, want %s", note, l, want)
		}
	}
}

// A maker's name narrows a lap or an age of concrete to the sheets of that maker; a word of the
// trade does not.
func TestLimitsByMaker(t *testing.T) {
	for note, want := range map[string]string{
		"Larkin sheet laps 75 mm min.":                           "lap_mm [Larkin 40 Sheet]",
		"Sheet laps 75 mm min.":                                  "lap_mm []",
		"Membrane laps 75 mm min.":                               "lap_mm []",
		"Concrete 10 days min for Larkin, 28 days for Tarnwell.": "concrete_age_days [Larkin 40 Sheet] concrete_age_days [Tarnwell Deck]",
		"Concrete 10 days min before the membrane.":              "concrete_age_days []",
	} {
		s := readPages(t, page{name: "S", grid: `
Line | Where | Goes onto | Product | Primer
1 | north wall | cast concrete | Larkin 40 Sheet | Larkin Wet Primer
2 | deck | structural slab | Tarnwell Deck | Tarnwell Base Primer`}, page{name: "Data", grid: `
Product | What it is | Thickness | Min. apply F | Max. days open to sun
Larkin 40 Sheet | self-adhered rubberized asphalt sheet | 60 mil | 40 | 30
Larkin Wet Primer | water-based primer | - | 40 | -
Tarnwell Deck | one-part cold urethane membrane | 60 mil | 40 | 21
Tarnwell Base Primer | two-part epoxy primer | - | 40 | -`}, page{name: "Notes", grid: note})
		var got []string
		for _, l := range s.Project.Limits {
			got = append(got, fmt.Sprint(l.Kind, " ", l.Keys))
		}
		if all := strings.Join(got, " "); all != want {
			t.Errorf("%s: %s, want %s", note, all, want)
		}
	}
}

// How far another sheet is held up is no upturn of the flashing.
func TestSheetHeldUp(t *testing.T) {
	for note, want := range map[string]bool{
		`Thru-wall flashing up the wall 8" min`:                         true,
		`At thru-wall the field sheet is held up 10" min`:               false,
		`Base flashing: laps 6" sealed, 8" min up and behind the sheet`: true,
		`Base flashing: lap 6" up to grid 4`:                            false,
	} {
		s := read(t, oneWall+note+"\n")
		got := slices.ContainsFunc(s.Project.Limits, func(l schedule.Limit) bool { return l.Kind == "upturn_mm" })
		if got != want {
			t.Errorf("%s: an upturn %v, want %v", note, got, want)
		}
	}
}

// The words of a material may go on past a tag, which then begins before they end.
func TestLimitAroundATag(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Insulation\n1 | WM-1 | CMU | INS-1\n2 | WM-1 | CMU | INS-1\n\n"+
		"Tag | Type | Thickness\nWM-1 | butyl membrane | 40 mil\nINS-1 | XPS board | 50 mm\n\n"+
		"Notes\nXPS insul., N lvl 2 INS-1 Ridgeway XPS-25, 60 mm\n")
	if l := limit(s, "thickness_mm"); l != nil && !slices.Contains(l.Keys, "INS-1") {
		t.Errorf("limit on thickness %+v", l)
	}
}

// What a note asks of the insulation of a cavity is for the rows that have one.
func TestInsulationOfACavity(t *testing.T) {
	for note, want := range map[string]string{
		"Cavity insulation R-10 min.":          "cavity",
		"Insulation R-10 min.":                 "",
		"R-10 min. for insulation in cavities": "",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\nT1 | SBS sheet | block | none\nT2 | SBS sheet | block | none\n\nNotes\n"+note)
		if len(s.Project.Limits) != 1 || s.Project.Limits[0].Scope != want {
			t.Errorf("%s: %+v, want scope %q", note, s.Project.Limits, want)
		}
	}
}

// What a word for how open a sheet is means asks it of no sheet; a sheet that it calls so is
// asked for it.
func TestClassLegendAsksNothing(t *testing.T) {
	for note, want := range map[string]bool{
		"4. Vapor-permeable means 10 perm or more, wet cup.":                      false,
		"Class II: over 0.1 to 1 perm; class III: over 1 to 10 perm.":             false,
		"Classes by dry cup. Class I is 0.1 perm or less. Breathable: 5 perm up.": false,
		"Permeable sheets: 10 perm or more.":                                      true,
		"Air barrier 10 perm or more.":                                            true,
	} {
		s := read(t, oneWall+note+"\n")
		got := slices.ContainsFunc(s.Project.Limits, func(l schedule.Limit) bool { return l.Kind == "vapor_ng" })
		if got != want {
			t.Errorf("%s: a limit %v, want %v", note, got, want)
		}
	}
}

// Insulation that a sentence opens with is what it asks something of; where it only tells on
// which side of it a sheet lies, it is not.
func TestLimitsOfInsulationOutside(t *testing.T) {
	for note, want := range map[string]string{
		"Outside insulation stays above 10 perm":               "insulation-unspecified",
		"Any sheet outside the insulation stays above 10 perm": "",
	} {
		l := limit(read(t, oneWall+note+"\n"), "vapor_ng")
		if l == nil || strings.Join(l.Keys, " ") != want {
			t.Errorf("%s: %+v, want the key %q", note, l, want)
		}
	}
}

// Sides and ends that a note asks in sentences, with their bounds between the word and the
// figure, one after the other by "and".
func TestLapsInSentences(t *testing.T) {
	for note, want := range map[string][2]float64{
		"Side laps of self-adhered sheets shall be no less than 2 1/2 in. and end laps no less than 6 in.": {63.5, 152.4},
		"Side laps of SBS sheets must be at least 75 mm and the end laps not less than 150 mm":             {75, 150},
		"End laps of all sheets are to be 6 in. or more, and side laps no less than 3 in.":                 {76.2, 152.4},
		"SBS sheets: side laps 3 in. & end laps minimum 6 in.":                                             {76.2, 152.4},
		"Side and end laps of sheets shall be no less than 3 in.":                                          {76.2, 0},
		"Side laps of sheets shall be 3 in. and end laps tight":                                            {76.2, 0},
	} {
		s := read(t, oneWall+note+"\n")
		var got [2]float64
		for _, l := range s.Project.Limits {
			if at := slices.Index([]string{"lap_mm", "end_lap_mm"}, l.Kind); at >= 0 && l.Min != nil {
				got[at] = math.Round(*l.Min*10) / 10
			}
		}
		if got != want {
			t.Errorf("%s: %v, want %v", note, got, want)
		}
	}
}

// A lap that a sentence on flashings tells after something else of them is that of the flashings.
func TestLapLaterInASentence(t *testing.T) {
	for note, want := range map[string]float64{
		"Through-wall flashing goes up 8 in. on the backing, has laps of 4 in. set in butyl": 101.6,
		"Flashings stand 1 in. proud of the brick and have end laps of 100 mm in mastic":     0,
		"Through-wall flashing stops a distance of 4 in. from the corner":                    0,
	} {
		got := 0.0
		if l := limit(read(t, oneWall+note+"\n"), "lap_mm"); l != nil && l.Min != nil {
			got = math.Round(*l.Min*10) / 10
		}
		if got != want {
			t.Errorf("%s: %v, want %v", note, got, want)
		}
	}
}

// A list of products before the laps asks them of each, however many it has; words between
// them and the figure do not.
func TestLapsOfAListOfProducts(t *testing.T) {
	for note, want := range map[string]int{
		"1. TR-40, TR-LT and OK-3 side laps shall be 3 in. and end laps 6 in.":     2,
		"TR-40/TR-LT/OK-3 shall have side laps of 3 in.":                           1,
		"TR-40, TR-LT and OK-3 stay off the frames of all of the windows by 3 in.": 0,
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | TR-40 | CMU | none
W2 | TR-LT | CMU | none`}, page{name: "P", grid: `
Tag | Type | Application °C | Days open
TR-40 | butyl sheet | 5 | 60
TR-LT | butyl sheet | 5 | 60
OK-3 | rubberized asphalt sheet | 5 | 60`}, page{name: "N", grid: "Notes\n\n" + note})
		n := 0
		for _, l := range s.Project.Limits {
			if strings.HasSuffix(l.Kind, "lap_mm") && len(l.Keys) == 3 {
				n++
			}
		}
		if n != want {
			t.Errorf("%s: %d limits on laps, want %d", note, n, want)
		}
	}
}

// What one of a unit is worth in another asks for nothing, unless a bound stands with it.
func TestUnitEquationIsNoLimit(t *testing.T) {
	for note, want := range map[string]bool{
		"Permeance: 57.2 ng/(Pa·s·m²) = 1 perm.":            false,
		"7. Vapor permeance: 1 perm = 57 ng/(Pa·s·m²)":      false,
		"57.2 ng/(Pa·s·m²) = 1 perm":                        false,
		"Permeance: at most 57.2 ng/(Pa·s·m²) = 1 perm":     true,
		"Permeance, max.: 57.2 ng/(Pa·s·m²) = 1 perm":       true,
		"Permeance of sheets: 572 ng/(Pa·s·m²) or 10 perms": true,
	} {
		if got := limit(read(t, oneWall+note+"\n"), "vapor_ng") != nil; got != want {
			t.Errorf("%s: a limit %v, want %v", note, got, want)
		}
	}
}

// Laps in millimeters without the unit, which the words behind them bed in something.
func TestBareLapsInABed(t *testing.T) {
	for note, want := range map[string]float64{
		"Through-wall flashing: laps 150 set in S-4":        150,
		"Through-wall flashing: laps 100 sealed in mastic":  100,
		"Through-wall flashing: laps 150 fasteners per bay": 0,
	} {
		got := 0.0
		if l := limit(read(t, oneWall+note+"\n"), "lap_mm"); l != nil && l.Min != nil {
			got = math.Round(*l.Min*10) / 10
		}
		if got != want {
			t.Errorf("%s: %v, want %v", note, got, want)
		}
	}
}

// What stands before the first colon of a sentence is what all its figures are asked of, and
// the point of "max." before another such item ends it.
func TestLimitsAfterASubject(t *testing.T) {
	note := "Air seal sheet, SBS: 40 mil min., vap. perm. 0.1 perm max. Roof deck: 0.5 perm max."
	s := read(t, oneWall+note+"\n")
	var got []string
	for _, l := range s.Project.Limits {
		if l.Kind == "vapor_ng" && l.Max != nil {
			got = append(got, fmt.Sprintf("%.0f %s", *l.Max, strings.Join(l.Keys, "+")))
		}
	}
	if want := []string{"6 asphaltic", "29 roofing-unspecified"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// Figures of laps and upturns without a unit are in that of the columns of laps.
func TestBareLapsAndUpturns(t *testing.T) {
	for note, want := range map[string][2]float64{
		"Laps: SBS sheets 75 / 100; butyl tapes 120, sealed":                 {120, 0},
		"Laps: SBS sheets 75 / 100; butyl tapes 120, see A-401":              {75, 0},
		"Through-wall flashing: rear leg 200 min., its edge under the sheet": {0, 200},
		"Through-wall flashing rear leg 200 pcs on hand":                     {0, 0},
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Lap mm
A1 | SBS sheet | CMU | 75
A2 | SBS sheet | CMU | 75

` + note})
		var got [2]float64
		for _, l := range s.Project.Limits {
			if i := slices.Index([]string{"lap_mm", "upturn_mm"}, l.Kind); i >= 0 && l.Min != nil {
				got[i] = *l.Min
			}
		}
		if got != want {
			t.Errorf("%s: %v, want %v", note, got, want)
		}
	}
}

// An upturn is asked of the product that the note names, and the point of a unit before the
// code of the next product ends what is said of the figure.
func TestUpturnsOfProducts(t *testing.T) {
	const grid = `
Mark | Membrane | Substrate | Primer | Upturn
E1 | FM-1 | CMU | none | 8 in
E2 | FM-2 | CMU | none | 4 in

Notes
`
	for note, want := range map[string]string{
		"FM-1 turned up 6 in. min; FM-2 turned up 3 in.":           "rubberized-asphalt-membrane 6, butyl-flashing-tape 3",
		"FM-1 turn-up 8 in.; night joints 5 in. FM-2 turn-up 3 in": "rubberized-asphalt-membrane 8, butyl-flashing-tape 3",
		"Flashing turned up 8 in. min":                             " 8",
	} {
		s := readPages(t, page{name: "S", grid: grid + note}, page{name: "D", grid: "Tag | Type | Sun, days\nFM-1 | SBS sheet | 60\nFM-2 | butyl sheet | 90"})
		var got []string
		for _, l := range s.Project.Limits {
			if l.Kind == "upturn_mm" && l.Min != nil {
				got = append(got, strings.Join(l.Keys, "+")+fmt.Sprintf(" %.0f", *l.Min/25.4))
			}
		}
		if all := strings.Join(got, ", "); all != want {
			t.Errorf("%s: %q, want %q", note, all, want)
		}
	}
}

// What a product laps over the work beside it is its lap; what it laps onto something else is not.
func TestLapsOntoAdjoiningWork(t *testing.T) {
	for note, want := range map[string]string{
		"Laps: WM-1 65 mm; WM-4 90 mm onto adjacent work.": "lap_mm 65 [rubberized-asphalt-membrane]; lap_mm 90 [liquid-flashing]; ",
		"Min. laps: WM-4 4 in. over adjoining membrane.":   "lap_mm 102 [liquid-flashing]; ",
		"Laps: WM-1 65 mm; WM-4 90 mm onto the footing.":   "lap_mm 65 [rubberized-asphalt-membrane]; ",
		"WM-4 90 mm onto adjacent work.":                   "",
	} {
		s := read(t, `Mark | Membrane | Substrate | Primer
1 | WM-1 | CMU | none
2 | WM-4 | CMU | none

Tag | Type | Thickness
WM-1 | rubberized asphalt membrane | 40 mil
WM-4 | STPE liquid flashing | 25 mil

Notes
`+note)
		got := ""
		for _, l := range s.Project.Limits {
			got += fmt.Sprintf("%s %.0f %v; ", l.Kind, *l.Min, l.Keys)
		}
		if got != want {
			t.Errorf("%s: %s, want %s", note, got, want)
		}
	}
}

// What lies in the wall there tells why a limit is asked, and not of which sheets; names in
// the same place tell of which.
func TestLimitsWithAReason(t *testing.T) {
	const grid = `
Mark | Wall | Membrane | Substrate | Primer
E1 | EX1 | FM-1 | CMU | none
E2 | EX2 | FM-2 | CMU | none

Notes
`
	for note, want := range map[string]string{
		"Sheets on EX2: 9 perms or more (wool in all studs).":       "",
		"Sheets on EX2: 9 perms min. (batts inside the walls).":     "",
		"Sheets on EX2: 9 perms or more (butyl flashing).":          "butyl",
		"Sheets on EX2: 9 perms or more (FM-2), 0.1 or less (FM-1)": "butyl-flashing-tape",
	} {
		s := readPages(t, page{name: "S", grid: grid + note}, page{name: "D", grid: "Tag | Type | Sun, days\nFM-1 | SBS sheet | 60\nFM-2 | butyl sheet | 90"})
		got := "no limit"
		for _, l := range s.Project.Limits {
			if l.Kind == "vapor_ng" && l.Min != nil {
				got = strings.Join(l.Keys, "+")
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// A note that speaks of the sheets of the walls, or of those in the ground, asks nothing of
// the others.
func TestLimitsOfSheetsByTheirPlace(t *testing.T) {
	for note, want := range map[string]string{
		"Laps: wall membrane 65 mm, foundation membrane 90 mm.":                   "lap_mm 65 (wall sheets) lap_mm 90 (foundation sheets)",
		"Side and end laps: roof and wall membranes min. 65 mm.":                  "lap_mm 65 (roof, wall sheets)",
		"Asphaltic wall membrane: thickness min. 1.1 mm.":                         "thickness_mm 1.1 (wall sheets)",
		"Foundation wall membrane: thickness min. 1.4 mm.":                        "thickness_mm 1.4 (foundation sheets)",
		"Asphaltic membranes: thickness min. 1.1 mm.":                             "thickness_mm 1.1 ()",
		"Wall membrane laps onto foundation membrane: laps min. 120 mm there.":    "lap_mm 120 ()",
		"Through-wall flashing laps min. 110 mm under the sheets of the wall too": "lap_mm 110 (through-wall)",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Lap mm\nD1 | SBS sheet | CMU | none | 70\nD2 | SBS sheet | CMU | none | 70\n\n"+note+"\n")
		var got []string
		for _, l := range s.Project.Limits {
			got = append(got, fmt.Sprintf("%s %v (%s)", l.Kind, *l.Min, l.Scope))
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// Beside the sheets of the walls, those of the waterproofing are the ones in the ground.
func TestLimitsOfWaterproofingSheets(t *testing.T) {
	for note, want := range map[string]string{
		"Side laps: wall sheets 55 mm min, waterproofing sheets 75 mm min.": "55 wall sheets; 75 foundation sheets; ",
		"Laps: sheets 55 mm, also where waterproofing is near.":             "55 ; ",
	} {
		got := ""
		for _, l := range read(t, "Mark | Membrane | Substrate | Primer | Lap mm\nD1 | SBS sheet | CMU | none | 70\nD2 | SBS sheet | CMU | none | 70\n\n"+note+"\n").Project.Limits {
			got += fmt.Sprintf("%.0f %s; ", *l.Min, l.Scope)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// What a note forbids is bound the other way: the least that it turns down is the most it
// allows. A figure that is asked for beside something else that is forbidden keeps its own.
func TestLimitsTurnedRound(t *testing.T) {
	for note, want := range map[string]string{
		"Do not lay sheets on concrete under 21 days old.":                       "concrete_age_days 21..",
		"Primed block less than 6 days old shall not be used under membranes.":   "concrete_age_days 6..",
		"Primers shall not be greater than 300 g/L.":                             "voc_gl ..300",
		"Adhesives over 120 g/L are prohibited.":                                 "voc_gl ..120",
		"The permeance of sheets should never fall under 400 ng.":                "vapor_ng 400..",
		"Sheets above 2 ng will be rejected.":                                    "vapor_ng ..2",
		"Sheets with a UV rating of less than 90 days will not be accepted.":     "exposure_days 90..",
		"Sheets left uncovered more than 45 days shall be removed.":              "exposure_days ..45",
		"Do not leave sheets exposed over 45 days.":                              "exposure_days ..45",
		"Do not install sheets on plywood above 18 % moisture.":                  "wood_moisture ..0.18",
		"Sheets under metal shall withstand service temperatures of up to 90 C.": "service_c 90..",
		"Sheets that do not breathe are 5 ng max.":                               "vapor_ng ..5",
		"Primers that are not thinned on site: 300 g/L or less.":                 "voc_gl ..300",
		"Do not thin primers, 300 g/L is the maximum.":                           "voc_gl ..300",
	} {
		s := read(t, oneWall+note+"\n")
		got := "none"
		for _, l := range s.Project.Limits {
			if got = l.Kind + " "; l.Min != nil {
				got += fmt.Sprint(*l.Min)
			}
			if got += ".."; l.Max != nil {
				got += fmt.Sprint(*l.Max)
			}
		}
		if got != want {
			t.Errorf("%s: %s, want %s", note, got, want)
		}
	}
}

// notesAsk holds notes below a schedule to the limits that they state.
func notesAsk(t *testing.T, schedule string, want map[string]string) {
	t.Helper()
	for note, limits := range want {
		if got := told(read(t, schedule+note+"\n")); got != limits {
			t.Errorf("%s: %q, want %q", note, got, limits)
		}
	}
}

// each limit of a note: kind and figure, whom it is for, and where.
func told(s *schedule.Schedule) string {
	var out []string
	for _, l := range s.Project.Limits {
		one := l.Kind
		if l.Min != nil {
			one += fmt.Sprintf(" %.4g", *l.Min)
		}
		if l.Max != nil {
			one += fmt.Sprintf(" ..%.4g", *l.Max)
		}
		if for_ := append(slices.Clone(l.Roles), l.Keys...); len(for_) > 0 {
			one += " " + strings.Join(for_, "+")
		}
		if l.Scope != "" {
			one += " (" + l.Scope + ")"
		}
		out = append(out, one)
	}
	return strings.Join(out, "; ")
}

// Figures of several kinds in one sentence are each of the kind whose words stand by them, and
// a sentence may ask for laps by any word beside the figure.
func TestLimitsOfTheirOwnKind(t *testing.T) {
	notesAsk(t, oneWall, map[string]string{
		"Sheets: 50 mil min, 65 mm laps min.":                                        "thickness_mm 1.27; lap_mm 65",
		"Wall sheets shall be not less than 1.2 mm thick and lapped at least 80 mm.": "thickness_mm 1.2 membrane (wall sheets); lap_mm 80 membrane (wall sheets)",
		"Loose-laid wraps shall be lapped a minimum of 90 mm.":                       "lap_mm 90",
		"Contractor to provide 120 mm laps.":                                         "lap_mm 120",
		"We will not take sheets lapped less than 55 mm.":                            "lap_mm 55 membrane",
		"All laps 60 mm except end laps, which are 110 mm.":                          "lap_mm 60; end_lap_mm 110",
		"The through-wall tray shall turn up 180 mm, lap 130 mm and be sealed.":      "upturn_mm 180 (through-wall); lap_mm 130 (through-wall)",
		"Min DFT of coats is 1.1 mm.":                                                "thickness_mm 1.1 fluid-applied-unspecified",
		"Onto the old membrane the new one shall carry 200 mm of lap.":               "",
		"The strip is 90 mm wide where sheets are lapped.":                           "",
	})
}

// A figure is asked of the walls and the part of the building that its own words name, whether
// a row names them or not; what only tells of any wall narrows nothing.
func TestLimitsOfPartsOfTheBuilding(t *testing.T) {
	const grid = "Mark | Wall type | Membrane | Substrate | Primer\nD1 | W1 | SBS sheet | CMU | none\nD2 | W2 | butyl sheet | CMU | none\nD3 | W3 | butyl sheet | CMU | none\nD4 | W4 | butyl sheet | CMU | none\n\n"
	notesAsk(t, grid, map[string]string{
		"Membranes at W2 shall be at least 600 ng and at W3 no more than 60 ng.":      "vapor_ng 600 (w2); vapor_ng ..60 (w3)",
		"Permeance: over 600 ng @ W-1; under 60 ng @ W-4.":                            "vapor_ng 600 (w1); vapor_ng ..60 (w4)",
		"On W1 and W2 laps 80 mm, on W3 laps 110 mm.":                                 "lap_mm 80 (w1, w2); lap_mm 110 (w3)",
		"Membranes at wall type K-9 shall be at least 600 ng.":                        "vapor_ng 600 (k-9)",
		"In the swimming hall walls alone, exposure shall be held to 20 days.":        "exposure_days ..20 (swimming hall)",
		"Soffits: laps 140 mm, elsewhere 70 mm.":                                      "lap_mm 140 (soffits); lap_mm 70",
		"Sheets 1.1 mm thick, 1.4 mm thick at parapets.":                              "thickness_mm 1.1; thickness_mm 1.4 (parapets)",
		"Maximum permeance 4 ng and minimum thickness 30 mil in the freezer walls.":   "vapor_ng ..4 (freezer); thickness_mm 0.762 (freezer)",
		"Minimum lap 70 mm, except that seams facing upslope need 120 mm laps.":       "lap_mm 70; lap_mm 120 ((place not found))",
		"Except at soffits, laps are 90 mm minimum.":                                  "lap_mm 90",
		"Laps in the field of the exterior framed walls: 90 mm minimum.":              "lap_mm 90",
		"Laps 90 mm at all walls.":                                                    "lap_mm 90",
		"Outside of all insulation provide sheets of 600 ng or more.":                 "vapor_ng 600 (outside of the insulation)",
		"Sheets behind the insulation 60 ng at most, outside of the insulation none.": "vapor_ng ..60 ((place not found))",
	})
}

// Months of sun are days, ratings have a least, and a stretch has both ends; what a sentence
// only reports it does not ask for.
func TestLimitsInUsualTurns(t *testing.T) {
	notesAsk(t, oneWall, map[string]string{
		"Sheets shall be capable of 5 months exposure min.":               "exposure_days 150",
		"Wraps not covered inside 3 weeks shall be replaced.":             "exposure_days ..21",
		"Concrete shall be at least four weeks old when covered.":         "concrete_age_days 28",
		"Sheets over new concrete not before day 18.":                     "concrete_age_days 18 membrane",
		"Sheets on the penthouse must tolerate 95 C sustained.":           "service_c 95 (penthouse)",
		"Service temperature of sheets -30 to 85 C.":                      "service_c 85",
		"Prime no more than can be covered by quitting time.":             "same_day",
		"Strips extend 80 mm onto both frame and sheet.":                  "bearing_mm 80",
		"Tape with 40 mm of contact each side of the crack.":              "bearing_mm 40",
		"Trays shall rise at least 140 mm.":                               "upturn_mm 140",
		"Permeance of sheets between 100 and 500 ng.":                     "vapor_ng 100 ..500",
		"VOC max: 90 g/L membranes / 240 g/L primers / 260 g/L sealants.": "voc_gl ..90 membrane; voc_gl ..240 primer; voc_gl ..260 sealant",
		"Permeance at most 3 ng where exposed to ground gas.":             "vapor_ng ..3 ((place not found))",
		"Each coat at least 12 mils wet, dry film at least 16 mils.":      "thickness_mm 0.4064 fluid-applied-unspecified",
		"Our last project used 50 mil sheets.":                            "",
		"Tenderers asked whether concrete of 21 days is needed.":          "",
		"50 mil equals 1.27 mm.":                                          "",
		"A thickness of 50 mil equals 1.27 mm and is the minimum.":        "thickness_mm 1.27; thickness_mm 1.27",
		"The panel was tested in May and leaked 0.03 cfm/sf.":             "",
		"Joints in metal shall be backed with a strip 150 mm wide.":       "",
		"Sheets are stored at up to 60 C continuous.":                     "",
	})
}

// A liquid flashing is called by what it is for, and a fluid of which no more is known by its name:
// what is asked of them is asked of no other fluid of like chemistry.
func TestLimitsOfOneFluid(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Thickness, mil\nW1 | LQ-1 | CMU | 25\nW2 | LQ-2 | CMU | 45\nW3 | LF-3 | CMU | 60"},
		page{name: "P", grid: "Tag | Type | Min °F | UV days\nLQ-1 | silane-terminated membrane, fluid-applied | 35 | 90\nLQ-2 | fluid-applied membrane | 40 | 90\nLF-3 | liquid flashing | 35 | 90"},
		page{name: "Notes", grid: "1. Liquid flashing at openings shall be at least 60 mil dry.\n2. LQ-2 shall be not less than 45 mil dry."})
	got := map[string]bool{}
	for _, l := range s.Project.Limits {
		if l.Kind == "thickness_mm" {
			got[strings.Join(l.Keys, " ")] = true
		}
	}
	if !got["liquid-flashing"] || !got["LQ-2"] || len(got) != 2 {
		t.Errorf("limits for %v, want liquid-flashing and LQ-2", got)
	}
}

// A sentence that tells several figures of one kind tells each for what it names; where that is
// nothing known, the figure holds nowhere.
func TestLimitsOfSeveralFigures(t *testing.T) {
	notesAsk(t, oneWall, map[string]string{
		"Wraps shall be lapped a minimum of 140 mm horizontally and 290 mm vertically.": "lap_mm 140; end_lap_mm 290",
		"Horizontal overlaps at least 90 mm, vertical overlaps at least 140 mm.":        "lap_mm 90; end_lap_mm 140",
		"Laps on vertical surfaces 90 mm, on horizontal surfaces 140 mm.":               "lap_mm 90 (upright); lap_mm 140 (flat)",
		"End dams not less than 30 mm at sills & 60 mm at thresholds.":                  "end_dam_mm 30; end_dam_mm 60 ((place not found))",
		"End dams not less than 30 mm at sills; 60 mm at thresholds.":                   "end_dam_mm 30; end_dam_mm 60 ((place not found))",
		"Sheets left uncovered no more than 40 days; wind wraps 80 days.":               "exposure_days ..40; exposure_days ..80 ((place not found))",
		"Transition strips bear 70 mm each side, 30 mm on frames.":                      "bearing_mm 70 transition; bearing_mm 30 transition",
		"Liquids 55 mils dry on block, 35 mils dry on plywood.":                         "thickness_mm 1.397 fluid-applied-unspecified ((place not found)); thickness_mm 0.889 cement-based ((place not found))",
		"Sheets: thickness 1.1 mm; perm >= 9; laps 70 mm.":                              "thickness_mm 1.1; vapor_ng 514.9; lap_mm 70 membrane",
		"Tapes are exempt; all other barriers shall have a rating of 600 ng or higher.": "vapor_ng 600",
		"Laps of the sheets are 90 mm; drip 10 mm.":                                     "lap_mm 90 membrane",
		"End dams are to be 40 mm high; drip 10 mm past the brick.":                     "end_dam_mm 40",
	})
}

// Few words turn what a note asks for: what it rejects, which end laps, what cover it means,
// and that only what is put on wet has a dry film.
func TestLimitsByFewWords(t *testing.T) {
	notesAsk(t, oneWall, map[string]string{
		"Reject membranes under 400 ng.":                              "vapor_ng 400",
		"Provide 130 mm lap at ends.":                                 "end_lap_mm 130",
		"Laps: 80 mm horiz / 130 mm vert.":                            "lap_mm 80; end_lap_mm 130",
		"Cover the sheets within 25 days.":                            "exposure_days ..25",
		"Prime what can be covered in one day.":                       "same_day",
		"Liquid membranes need 45 mils over block.":                   "thickness_mm 1.143 fluid-applied-unspecified",
		"Fluid-applied air barrier: thickness 45 mils at least.":      "thickness_mm 1.143 fluid-applied-unspecified",
		"Minimum dry film 45 mils.":                                   "thickness_mm 1.143 fluid-applied-unspecified",
		"Dry film of the wall 45 mils, of the sill 30 mils at least.": "thickness_mm 1.143 ((place not found)); thickness_mm 0.762 ((place not found))",
		"Cover the pails within the tent.":                            "",
	})
}

// A figure right after the tag of a product of which no more is known than that it bars air is
// of that product, and of no other barrier; a note that names barriers by that word alone asks it
// of all.
func TestLimitsOfOneBarrier(t *testing.T) {
	for note, want := range map[string]string{
		"LQ-1 55 mil dry, LQ-2 30 mil dry min.": "thickness_mm 1.397 LQ-1; thickness_mm 0.762 fluid-applied-stpe-air-barrier",
		"AVB not less than 45 mil thick.":       "thickness_mm 1.143 air-barrier-unspecified",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Thickness, mil\nW1 | LQ-1 | CMU | 55\nW2 | LQ-2 | CMU | 30"},
			page{name: "P", grid: "Tag | Type | Min °F | UV days\nLQ-1 | air barrier, vapor-tight | 35 | 90\nLQ-2 | fluid-applied STPE air barrier | 20 | 90"},
			page{name: "Notes", grid: "1. " + note})
		if got := told(s); got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}
