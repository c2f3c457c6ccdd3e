package schedule_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// built writes the layers that a row tells, with the resistances that it gives.
func built(l *schedule.Line) string {
	var out []string
	for _, it := range l.Items {
		if it.Slot != "layers" {
			continue
		}
		words := it.Family
		if it.RM2KW != nil {
			words += fmt.Sprintf(" %.2f", *it.RM2KW)
		}
		out = append(out, words)
	}
	return strings.Join(out, ", ")
}

// A list of walls with a column for each part tells the layers of each row; a column of
// resistances is that of the insulation beside it. R-10 is 1.76 m²·K/W (NIST SP 811).
func TestWallsByTheirParts(t *testing.T) {
	s := read(t, `Exterior walls, outside to inside
Wall | Facing | Cont. insulation | Ext. R | Air barrier | Sheathing | Framing | Batt R | Interior
X-1 | brick veneer | 2 in. XPS | 10 | SBS sheet | plywood | 2x6 studs, glass fiber batts | 19 | gypsum board
X-2 | limestone | polyiso | 12.5 | SBS sheet | concrete block | - | 0 | paint
`)
	for mark, want := range map[string]string{
		"X-1": "clay-brick, xps 1.76, rubberized-asphalt-membrane, osb-plywood-sheathing, lumber-unspecified, glass-fiber-insulation 3.35, gypsum-board",
		"X-2": "limestone-marble, polyiso 2.20, rubberized-asphalt-membrane, concrete-masonry, paint-unspecified",
	} {
		if got := built(line(t, s, mark)); got != want {
			t.Errorf("%s\ngot  %s\nwant %s", mark, got, want)
		}
	}
}

// A schedule of rows that are worked on is no list of walls, whatever its columns.
func TestScheduleIsNoListOfWalls(t *testing.T) {
	s := read(t, `Wall | Cladding | Insulation | Air barrier | Sheathing | Interior | Installed
X-1 | brick | XPS | SBS sheet | plywood | gypsum board | 2026-05-04
`)
	if got := built(line(t, s, "X-1")); got != "" {
		t.Errorf("layers %s, want none", got)
	}
}

// Rows without a heading, each a code and its layers, are a list of walls as well.
func TestWallsInAList(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | SBS sheet | concrete | none | brick`}, page{name: "Types", grid: `Assemblies, inside to outside

A1 | gypsum board / R-21 unfaced batt in 6 in. studs / plywood / SBS sheet / 2 in. min. wool R-8.4 / brick
A2 | concrete > SBS sheet > 3 in. XPS, R-15 > stone
Notes: wool is semi-rigid. | see 07 21 00`})
	for mark, want := range map[string]string{
		"A1": "gypsum-board, batt-insulation 3.70, osb-plywood-sheathing, rubberized-asphalt-membrane, mineral-wool 1.48, clay-brick",
		"A2": "cast-concrete, rubberized-asphalt-membrane, xps 2.64, stone-unspecified",
	} {
		if got := built(line(t, s, mark)); got != want {
			t.Errorf("%s\ngot  %s\nwant %s", mark, got, want)
		}
	}
	if n := len(s.Lines); n != 3 {
		t.Errorf("%d lines, want 3", n)
	}
}

// One such row alone is a note, and codes beside names that are no layers are a key.
func TestNoListOfWalls(t *testing.T) {
	for _, grid := range []string{
		"Notes\nA1 | gypsum board / batts / plywood / brick",
		"Rooms\nA1 | office / lobby\nA2 | store / plant",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | SBS sheet | concrete | none | brick`}, page{name: "Types", grid: grid})
		if n := len(s.Lines); n != 1 {
			t.Errorf("%q: %d lines, want 1", grid, n)
		}
	}
}

// What the remarks of a list of walls ask of the sheet holds for the rows on that wall; a
// figure that they only tell, and one of something else, asks nothing.
func TestLimitsOfWalls(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Wall | Membrane | Substrate | Primer | Lap
D1 | EW2 | SBS sheet | concrete | none | 3 in.
D2 | EW3 | SBS sheet | concrete | none | 3 in.
D3 | EW4 | SBS sheet | concrete | none | 3 in.`}, page{name: "Types", grid: `
Wall | Facing | Insulation | Air barrier | Backup | Remarks
EW2 | brick | 2 in. XPS | fluid | plywood on studs with batts | sheet at least 5 perm; 2 hr rated
EW3 | brick | 3 in. wool | SBS sheet | block | sheet has 0.05 perm, STC 50 min.
EW4 | stone | 3 in. wool | SBS sheet | block | 0.1 perm max. over the pool hall`})
	got := ""
	for _, l := range s.Project.Limits {
		got += fmt.Sprintf("%s %s %v %v; ", l.Kind, l.Scope, l.Min != nil, l.Max != nil)
	}
	if want := "vapor_ng ew2 true false; vapor_ng ew4 false true; "; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// The code of a wall before what the work goes on is that of the row, and its line in the
// notes no product; tags of product data, and codes that never come again, are none.
func TestBedsLedByWalls(t *testing.T) {
	head := "Mark | Membrane | Base | Primer | Touches\n"
	notes := page{name: "Notes", grid: `
WALLS
EW1   brick, 2 in. XPS, SBS sheet, block
EW2   limestone, 3 in. wool, SBS sheet, glass-mat sheathing, steel studs`}
	data := page{name: "P", grid: "Tag | Type | Apply min F\nSH-1 | SBS sheet | 40\nSH-2 | butyl sheet | 30"}
	for name, c := range map[string]struct{ rows, want string }{
		"with dashes": {"D1 | SH-1 | EW1 – block | none | brick\nD2 | SH-2 | EW1 – block, flush | none | brick\nD3 | SH-1 | EW2 – glass-mat sheathing | none | brick\nD4 | SH-1 | EW2 – steel lintel | none | brick", "EW1 EW1 EW2 EW2"},
		"with colons": {"D1 | SH-1 | EW1: block | none | brick\nD2 | SH-2 | EW1: block | none | brick\nD3 | SH-1 | EW2: glass-mat sheathing | none | brick\nD4 | SH-1 | EW2: plywood | none | brick", "EW1 EW1 EW2 EW2"},
		"tags":        {"D1 | SH-1 | SH-1 – lapped | none | brick\nD2 | SH-1 | SH-1 – lapped | none | brick\nD3 | SH-1 | SH-2 – lapped | none | brick\nD4 | SH-1 | SH-2 – lapped | none | brick", "   "},
		"once each":   {"D1 | SH-1 | G4 – block | none | brick\nD2 | SH-1 | G5 – block | none | brick\nD3 | SH-1 | G6 – plywood | none | brick\nD4 | SH-1 | G7 – plywood | none | brick", "   "},
	} {
		s := readPages(t, page{name: "S", grid: head + c.rows}, data, notes)
		var got []string
		for _, l := range s.Lines {
			got = append(got, l.Group)
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s: walls %q, want %q", name, got, c.want)
		}
		if name == "with dashes" && (len(s.Products) != 2 || s.Lines[2].Texts["substrate"] != "glass-mat sheathing") {
			t.Errorf("%d products, on %q", len(s.Products), s.Lines[2].Texts["substrate"])
		}
	}
}

// Numbers that begin anew are those of layers where the rows lie on one another, and not
// where each tells what it goes on and what it meets.
func TestNumbersOfDetails(t *testing.T) {
	s := read(t, `
Item | Membrane | Substrate | Primer | Touches
1 | SBS sheet | block | none | brick
2 | butyl sheet | plywood | none | steel angle
1 | SBS sheet | concrete | none | brick
2 | butyl sheet | steel lintel | none | brick`)
	for _, l := range s.Lines {
		if l.Order != "" {
			t.Errorf("row %d is layer %q", l.Row, l.Order)
		}
	}
}

// A wall may be told in rows of its own: its code with what it is, and below that one
// numbered layer to a row. Bare figures before layers are millimeters where no inches are.
func TestWallsInBlocks(t *testing.T) {
	const work = "Mark | Type | Material | Substrate | Primer | Lap\nD1 | EX-1 | QR-4 | block | none | 75 mm\nD2 | EX-2 | QR-4 | plywood | none | 75 mm"
	s := readPages(t, page{name: "S", grid: work}, page{name: "P", grid: "Tag | Type | Vapor, perm\nQR-4 | butyl sheet | 0.05\nQR-5 | butyl sheet, winter | 0.05"}, page{name: "Walls", grid: `
The walls, weather side first

EX-1 | Clay brick on block, offices
1 | 90 brick
2 | 90 mineral wool
3 | QR-4 / QR-5
4 | 190 block

EX-2 | Boards on studs, workshop (40% RH)
1 | cedar siding
2. | 140 mineral wool on girts
3 | QR-4
4 | plywood
5 | 140 wood stud, empty`})
	var walls []string
	for _, l := range s.Lines {
		if l.Sheet != "Walls" {
			continue
		}
		told := []string{l.Mark, l.Cells["layers"]}
		for _, it := range l.Items {
			thick := "-"
			if it.ThickMM != nil {
				thick = fmt.Sprint(*it.ThickMM)
			}
			told = append(told, it.Text+" "+thick)
		}
		walls = append(walls, strings.Join(told, ", "))
	}
	want := []string{"EX-1, B4, brick 90, mineral wool 90, QR-4 -, block 190", "EX-2, B10, cedar siding -, mineral wool 140, QR-4 -, plywood -, wood stud 140"}
	if !slices.Equal(walls, want) {
		t.Errorf("got %q, want %q", walls, want)
	}
	if !slices.ContainsFunc(s.Project.Notes, func(n schedule.Fact) bool { return strings.Contains(n.Text, "workshop") }) {
		t.Error("what a wall is was not read as a note")
	}
}

// Numbered notes under a code are no layers, and gauges no millimeters.
func TestNoWallsInBlocks(t *testing.T) {
	const work = "Mark | Type | Material | Substrate | Primer | Lap\nD1 | EX-1 | butyl sheet | block | none | 75 mm"
	for _, grid := range []string{
		"N1 | Before work\n1 | walk the deck with the super\n2 | keep a log of the day\nN2 | After work\n1 | sweep the floor\n2 | lock up",
		"EX-1 | Clay brick on block\n1 | 4 in. brick\n2 | 20 ga. steel stud",
	} {
		s := readPages(t, page{name: "S", grid: work}, page{name: "Notes", grid: "Read this first\n" + grid})
		for _, l := range s.Lines {
			if l.Sheet == "Notes" {
				t.Errorf("%q was read as a wall", l.Texts["layers"])
			}
		}
	}
	s := readPages(t, page{name: "S", grid: work}, page{name: "Walls", grid: "From outside in\nEX-1 | Brick on studs\n1 | 4 in. brick\n2 | 20 steel studs\nEX-2 | Panel on studs\n1 | metal panel\n2 | 20 steel studs"})
	for _, l := range s.Lines {
		for _, it := range l.Items {
			if l.Sheet == "Walls" && it.ThickMM != nil && *it.ThickMM == 20 {
				t.Errorf("%s of %q is %v mm thick", it.Text, l.Texts["layers"], *it.ThickMM)
			}
		}
	}
}

// What a column of a list of walls asks is a limit of the rows on each wall; figures of what
// the wall is made of, and cells that name a layer, are none. 12 perm is 686.6 ng.
func TestColumnsThatAskOfAWall(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Wall | Membrane | Substrate | Primer | Touches
D1 | EW-1 | SBS sheet | concrete | none | brick
D2 | EW-2 | SBS sheet | concrete | none | brick
D3 | EW-3 | SBS sheet | concrete | none | brick`}, page{name: "Walls", grid: `Type | Facing | Insulation | WRB | WRB perms | Sheathing | Interior | Req'd R-value | Batt R
EW-1 | brick | wool | film sheet | 12 or more | gypsum | paint | 8.4 | 13
EW-2 | stone | XPS | SBS sheet | < 0.2 | block | paint | 15 | 0
EW-3 | siding | polyiso | film sheet | no limit | OSB | paint | - | 19
`})
	var got []string
	for _, l := range s.Project.Limits {
		bound := ""
		if l.Min != nil {
			bound = fmt.Sprintf("min %.2f", *l.Min)
		} else if l.Max != nil {
			bound = fmt.Sprintf("max %.2f", *l.Max)
		}
		got = append(got, fmt.Sprintf("%s %s %s", l.Scope, l.Kind, bound))
	}
	want := []string{"ew-1 vapor_ng min 686.56", "ew-1 insulation_m2kw min 1.48", "ew-2 vapor_ng max 11.44", "ew-2 insulation_m2kw min 2.64"}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
}

// The parts of a wall may be headed by the side that they are on, and by words with a hyphen.
func TestWallPartsBySides(t *testing.T) {
	s := readPages(t, page{name: "Work", grid: `
Mark|Material|Wall|Primer|Laid
A-1|SBS sheet|Q1|none|@2026-05-04
A-2|SBS sheet|Q2|none|@2026-05-05`}, page{name: "Types", grid: `
Wall|Exterior|Insulation|WRB|Back-up
Q1|brick|2 XPS|SBS sheet|block
Q2|metal panel|3 mineral wool|SBS sheet|concrete`})
	last := s.Lines[len(s.Lines)-1]
	if want := "metal panel; 3 mineral wool; SBS sheet; concrete"; len(s.Lines) != 4 || last.Texts["layers"] != want {
		t.Errorf("%d lines, the last with layers %q, want %q", len(s.Lines), last.Texts["layers"], want)
	}
}

// Numbered layers of a schedule, with primers and dates of their own, are its lines and no
// list of walls, even where each wall begins with the code of it.
func TestNumberedItemsAreNoBlocks(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Wall | Layer | Component | Bonded to | Primer | Install
EX-1 Brick on block | 1 | butyl sheet | block | P-1 | 2026-07-06
1 | 2 | mineral wool | butyl sheet | none | 2026-07-08
2 | 3 | brick | - | none | 2026-07-09
EX-2 Panels on studs | 1 | butyl sheet | plywood | P-1 | 2026-07-10
1 | 2 | mineral wool | butyl sheet | none | 2026-07-11
2 | 3 | metal panel | - | none | 2026-07-12`})
	var rows []int
	for _, l := range s.Lines {
		rows = append(rows, l.Row)
	}
	if want := []int{2, 3, 4, 5, 6, 7}; !slices.Equal(rows, want) {
		t.Errorf("lines in rows %v, want %v", rows, want)
	}
}

// Numbered notes above a list of walls are none of it, though one names two things with
// a sign between.
func TestNotesAboveAListOfWalls(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | SBS sheet | concrete | none | brick`}, page{name: "Notes", grid: `
Rules of the job
R1 | Sheet laps 3 in.
R2 | Block + concrete: 28 days old
R3 | No frost

KEY | out to in
F1 | stone / 2 in. XPS / SBS sheet / block
F2 | brick / 3 in. wool / SBS sheet / gypsum board / steel studs`})
	var marks []string
	for _, l := range s.Lines {
		marks = append(marks, l.Mark)
	}
	if got := strings.Join(marks, " "); got != "D1 F1 F2" {
		t.Errorf("lines %s", got)
	}
	if len(s.Project.Limits) == 0 {
		t.Error("the notes state no limit")
	}
}

// A list of walls below the schedule may have a layer to each cell, beside the code of the
// wall, and nothing over them but its title. A divider of the schedule is no such title.
func TestWallsInRows(t *testing.T) {
	const work = `
Mark | Wall | Material | Substrate | Primer | Lap
D1 | EX-1 | QR-4 | block | none | 75 mm
D2 | EX-2 | QR-5 | plywood | none | 75 mm

`
	for title, want := range map[string][]string{
		"Wall types (outside to inside)": {"EX-1 90 brick / 40 air / QR-4 / 190 block", "EX-2 cedar siding / QR-5 / plywood / 140 glass batt / 0.15 polyethylene"},
		"Tower":                          nil,
	} {
		s := readPages(t, page{name: "S", grid: work + title + `
EX-1 | 90 brick | 40 air | QR-4 | 190 block
EX-2 | cedar siding | QR-5 | plywood | 140 glass batt | 0.15 polyethylene`},
			page{name: "P", grid: "Tag | Type | Vapor, perm\nQR-4 | butyl sheet | 0.05\nQR-5 | acrylic sheet, vapor permeable | 20"})
		var walls []string
		for _, l := range s.Lines {
			if l.Row > 5 && l.Texts["layers"] != "" {
				walls = append(walls, l.Mark+" "+strings.ReplaceAll(l.Texts["layers"], " mm", ""))
			}
		}
		if !slices.Equal(walls, want) {
			t.Errorf("%s: got %q, want %q", title, walls, want)
		}
	}
}

// A list of walls may stand below the product list, under a line that says so, with commas
// between the layers: its codes are no products, also where one names no material. Under
// another line the rows go on.
func TestWallsBelowProducts(t *testing.T) {
	const grid = `
Tag | Product | What it is | Sun, days
SH-1 | Alder 30 | SBS sheet, self-adhered | 60
IN-1 | Birch | mineral wool |
%s
K1 | CMU, SH-1, IN-1 90, brick |
K2 | steel studs with batt, plywood, SH-1, cement board |
K3 | see A-310 |`
	work := page{name: "S", grid: `
Mark | Wall | Membrane | Substrate | Primer | Touches
D1 | K1 | SH-1 | CMU | none | brick`}
	for head, want := range map[string]string{"EXTERIOR WALL TYPES": "D1 K1 K2 K3", "BUILD-UPS (inside to outside)": "D1 K1 K2 K3", "CLEANERS": "D1"} {
		s := readPages(t, work, page{name: "Data", grid: fmt.Sprintf(grid, head)})
		var marks []string
		for _, l := range s.Lines {
			marks = append(marks, l.Mark)
		}
		if got := strings.Join(marks, " "); got != want {
			t.Errorf("%s: lines %s, want %s", head, got, want)
		}
		listed := slices.ContainsFunc(s.Products, func(p schedule.Product) bool { return p.Tag == "K2" })
		if listed == (len(want) > 2) {
			t.Errorf("%s: K2 is a product: %v", head, listed)
		}
		if want != "D1" {
			if got := built(line(t, s, "K2")); got != "steel-stud-framing, batt-insulation, osb-plywood-sheathing, rubberized-asphalt-membrane, cement-board" {
				t.Errorf("K2: %s", got)
			}
		}
	}
}

// A bare "w" before a material stands for "with"; beside a side of the building it is none.
func TestWithByOneLetter(t *testing.T) {
	for cell, want := range map[string]string{
		"Zinc / plywood / steel studs 92 w batts / 6 mil poly / GWB": "zinc-sheet, osb-plywood-sheathing, steel-stud-framing, batt-insulation, polyethylene-sheet, gypsum-board",
		"Zinc / mineral wool / CMU W wall":                           "zinc-sheet, mineral-wool, concrete-masonry",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Wall | Membrane | Substrate | Primer\nD1 | EW1 | SBS sheet | CMU | none"},
			page{name: "Wall types", grid: "Type | Build-up, outside to inside\nEW1 | " + cell + "\nEW2 | Zinc / CMU"})
		var got []string
		for _, l := range s.Lines {
			for _, it := range l.Items {
				if l.Sheet == "Wall types" && l.Row == 2 {
					got = append(got, it.Family)
				}
			}
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %s", cell, strings.Join(got, ", "))
		}
	}
}

// A note that begins with the code of a listed wall asks of that wall, and describes no product;
// one that begins with a code of the schedule does.
func TestNoteOfAListedWall(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Item | Place | Substrate | Material | Primer | Install date | Cover date
1 | north | sheathing | AB-1 | none | 2027-05-03 | 2027-06-01
2 | south | sheathing | AB-4 | none | 2027-05-10 | 2027-06-01`},
		page{name: "Asked", grid: `
Limits that hold
1 | EW-2 air barrier 5 perm min. No poly inside of it.
2 | AB-4 butyl sheet, 1 mm. Open 45 days at most.

Wall types
EW-2 | steel studs, sheathing, air barrier, wool, panels
EW-3 | block, butyl sheet, XPS, brick`})
	var ids []string
	for _, p := range s.Products {
		ids = append(ids, p.ID)
	}
	if got := strings.Join(ids, ","); got != "AB-4" {
		t.Errorf("products %s, want AB-4", got)
	}
}

// Walls that notes tell in words are read as a list of them: several in one note below a
// title, or one to a note where a sign follows the code; what bounds one layer is asked of
// the rows on that wall. Notes that only begin with a code list none.
func TestWallsInNotes(t *testing.T) {
	rows := `
No. | Wall | Membrane | Substrate | Lap
1 | EX1 | SBS sheet | concrete block | 3 in
2 | EX2 | SBS sheet | plywood | 3 in
3 | EX1 | SBS sheet | concrete block | 3 in
4 | EX2 | SBS sheet | plywood | 3 in`
	for name, c := range map[string]struct{ notes, want string }{
		"one note":   {"Exterior wall types: EX1 face brick, XPS, sheet of 0.1 perm or less, concrete block. EX2 zinc panel, mineral wool, plywood. EX3 gate house.", "EX1 clay-brick xps concrete-masonry;EX2 mineral-wool osb-plywood-sheathing;EX3;max ex1"},
		"each its":   {"EX1 = face brick, XPS, concrete block, paint\nEX2 = stucco, mineral wool, plywood", "EX1 clay-brick xps concrete-masonry;EX2 portland-cement-stucco mineral-wool osb-plywood-sheathing"},
		"by signs":   {"EX1  90 face brick / XPS / concrete block / paint\nEX2 (stair) stucco / mineral wool / plywood\nEX3 zinc panel / mineral wool / plywood", "EX1 clay-brick xps concrete-masonry;EX2 portland-cement-stucco mineral-wool osb-plywood-sheathing"},
		"one short":  {"EX1  face brick / XPS / concrete block\nEX2 curtain wall", ""},
		"of pieces":  {"EX1 is of face brick, XPS and concrete block\nEX2 see face brick / concrete block on A-401", ""},
		"one alone":  {"EX1 = face brick, XPS, concrete block, paint", ""},
		"of work":    {"EX1: laps 3 in., edges sealed\nEX2: laps 4 in., edges sealed", ""},
		"of places":  {"Wall types are told on A-401. EX1 stops at grid 4, EX2 goes on.", ""},
		"other code": {"QX1 = face brick, XPS, concrete block, paint\nQX2 = stucco, mineral wool, plywood", ""},
	} {
		s := readPages(t, page{name: "S", grid: rows}, page{name: "N", grid: "Notes\n" + c.notes})
		var got []string
		for _, l := range s.Lines {
			if l.Sheet != "N" {
				continue
			}
			words := []string{l.Mark}
			for _, it := range l.Items {
				if it.Family != "paint-unspecified" && it.Class != "flashing-metal" {
					words = append(words, it.Family)
				}
			}
			got = append(got, strings.Join(words, " "))
		}
		for _, limit := range s.Project.Limits {
			if limit.Kind == "vapor_ng" && limit.Max != nil {
				got = append(got, "max "+limit.Scope)
			}
		}
		if all := strings.Join(got, ";"); all != c.want {
			t.Errorf("%s: %q, want %q", name, all, c.want)
		}
	}
}

// Under "Where" stand a zone and a wall: the codes of walls tell what the rows stand under.
func TestWallBesideItsZone(t *testing.T) {
	for name, c := range map[string]struct{ heading, codes, want string }{
		"walls":      {"Wall", "B1 B2 B1 B2", "B1"},
		"sides":      {"Wall", "north south north south", "A"},
		"each once":  {"Wall", "B1 B2 B3 B4", "A"},
		"other name": {"Bay", "B1 B2 B1 B2", ""},
	} {
		grid := " | Where | Where | What | What | What\nNo. | Zone | " + c.heading + " | Membrane | Substrate | Lap"
		for i, code := range strings.Fields(c.codes) {
			grid += fmt.Sprintf("\n%d | A | %s | SBS sheet | block | 3 in", i+1, code)
		}
		s := read(t, grid)
		if got := line(t, s, "1").Group; got != c.want {
			t.Errorf("%s: the group is %q, want %q", name, got, c.want)
		}
	}
}

// Of two sheets of a wall the one that is said to be open to vapor is not the other.
func TestOpenSheetIsNotTheOther(t *testing.T) {
	for layers, want := range map[string]string{
		"block / SBS sheet / mineral wool / breathable sheet":          "concrete-masonry, rubberized-asphalt-membrane, mineral-wool, air-barrier-unspecified",
		"block / acrylic permeable SA sheet / EPS / permeable sheet":   "concrete-masonry, vapor-permeable-self-adhered-membrane, eps, vapor-permeable-self-adhered-membrane",
		"block / SBS sheet / mineral wool / lapped on the sheet below": "concrete-masonry, rubberized-asphalt-membrane, mineral-wool",
	} {
		s := read(t, "Wall | Build-up | Membrane | Substrate | Primer\nB-1 | "+layers+" | SBS sheet | block | none")
		if got := built(line(t, s, "B-1")); got != want {
			t.Errorf("%s: %s", layers, got)
		}
	}
}

// The codes that places end in are kept before the walls that a sheet of notes tells by them; the
// number of a note is none.
func TestCodesOfListedWallsAreKept(t *testing.T) {
	grid := "Mark | Membrane | Place | Base\nH1 | SBS sheet | dock, EW1 | CMU\nH2 | SBS sheet | stair, EW2 | CMU\nH3 | SBS sheet | hall, EW3 | CMU"
	for text, want := range map[string]string{
		"EW1 | stone, mineral wool, SBS sheet, CMU\nEW2 | zinc panel, XPS, SBS sheet, concrete\nEW3 | as before, on posts that stand free": "EW1 EW2 EW3",
		"EW1 | stone, mineral wool, SBS sheet, CMU\nEW2 | nothing but what the drawings of the shop tell":                                  "stone, nothing",
	} {
		s := readPages(t, page{name: "S", grid: grid}, page{name: "N", grid: text})
		var got []string
		for _, note := range s.Project.Notes {
			if note.At.Sheet == "N" {
				got = append(got, strings.Fields(note.Text)[0])
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("notes begin with %q, want %q", got, want)
		}
	}
}

// Walls below a title for them are no products, though their layers tell figures, as words do
// that describe one; a code of a product below another title stays one.
func TestWallsBelowATitleAreNoProducts(t *testing.T) {
	schedule := page{name: "Log", grid: `
Place | Material | Substrate | Primer | Start | Remarks
EW1 - brick over block
L1 east | SBS self-adhered sheet | CMU | none | 2027-05-03 | as EW1
EW2 - panel over studs
L2 east | acrylic self-adhered sheet | glass-mat gypsum | none | 2027-05-04 | EW2 here`}
	for title, walls := range map[string]int{"Wall types": 2, "Products of the yard": 0} {
		s := readPages(t, schedule, page{name: "Rules", grid: "\nUpper over lower, always.\n\n" + title + `
EW1 - brick, 2 in. air, 4 in. mineral wool, SBS sheet on 8 in. CMU. Open 30 days.
EW2 - metal panel, 3 in. mineral wool, acrylic sheet on glass-mat gypsum, 6 in. studs. Wool is R-4.2 per in.`})
		listed := 0
		for _, l := range s.Lines {
			if l.Sheet == "Rules" && strings.HasPrefix(l.Mark, "EW") {
				listed++
			}
		}
		if listed != walls {
			t.Errorf("%q: %d walls of %d; products %+v", title, listed, walls, s.Products)
		}
		if products := len(s.Products); walls > 0 && products > 0 {
			t.Errorf("%q: %d products", title, products)
		}
	}
}

// A note may ask something of some walls and go on with other places and products; its number
// stands before all of it.
func TestWallsOfATopicAreNoneOfWhatFollows(t *testing.T) {
	s := readPages(t, page{name: "Log", grid: `
Wall | Material | Substrate | Primer | Start
EW1 | SM-1 | CMU | PR-1 | 2027-05-03
EW2 | SM-1 | CMU | PR-1 | 2027-05-04`}, page{name: "Data", grid: `
Tag | Type | Thickness mm | Min °C | Days open
SM-1 | SBS sheet | 1.0 | 5 | 60
HB-2 | high-temperature butyl sheet | 1.0 | 5 | 60`}, page{name: "Notes", grid: `
4. Laps, EW1/EW2 sheets: 50 mm side, 75 mm end. HB-2 90 mm / 150 mm.
5. EW2 sheet must be 500 ng or better.`})
	scopes := map[string]string{}
	for _, l := range s.Project.Limits {
		scopes[fmt.Sprintf("%s %.0f", l.Kind, *l.Min)] = l.Scope
	}
	for limit, want := range map[string]string{"lap_mm 50": "ew1, ew2", "end_lap_mm 75": "ew1, ew2", "lap_mm 90": "", "end_lap_mm 150": "", "vapor_ng 500": "ew2"} {
		if got, ok := scopes[limit]; !ok || got != want {
			t.Errorf("%s: scope %q %v, want %q", limit, got, ok, want)
		}
	}
}

// Areas that end in the codes of a few walls tell the place and the wall; the numbers of rooms
// and the tags of products are none.
func TestAreasThatEndInWalls(t *testing.T) {
	for name, c := range map[string]struct{ areas, group, place string }{
		"walls":   {"North front, EX1;South front, EX1;North tower, EX2;South tower, EX2", "EX1", "North front"},
		"without": {"Canopy;North front, EX1;South front, EX1;North tower, EX2;South tower, EX2", "", "Canopy"},
		"rooms":   {"Office, R101;Office, R102;Store, R103;Hall, R104", "Office, R101", ""},
		"product": {"North front, EX1;South front, EX1;North tower, SH1;South tower, SH1", "North front, EX1", ""},
	} {
		grid := "Item | Area | Membrane | Substrate | Lap"
		for i, area := range strings.Split(c.areas, ";") {
			grid += fmt.Sprintf("\n%d | %s | SH1 | block | 3 in", i+1, area)
		}
		s := readPages(t, page{name: "S", grid: grid}, page{name: "D", grid: "Tag | Type | Sun, days\nSH1 | SBS sheet | 60\nSH2 | butyl sheet | 90"})
		if l := line(t, s, "1"); l.Group != c.group || l.Place != c.place {
			t.Errorf("%s: group %q, place %q", name, l.Group, l.Place)
		}
	}
}

// Under "Position" stand a place and a wall: the codes of walls tell what the rows stand under,
// and the place stays one. Without another column of places they are the place.
func TestWallBesideItsPlace(t *testing.T) {
	for heading, want := range map[string]string{
		"Where | Where | What | What | What\nLocation | Wall | Membrane | Substrate | Lap":      "D1 / head of bay",
		"Where | Where | What | What | What\nLocation | Wall face | Membrane | Substrate | Lap": " / head of bay; D1",
	} {
		grid := heading
		for _, code := range strings.Fields("D1 D2 D1 D2") {
			grid += "\nhead of bay | " + code + " | SBS sheet | block | 3 in"
		}
		l := read(t, grid).Lines[0]
		if got := l.Group + " / " + l.Place; got != want {
			t.Errorf("%s: %q, want %q", heading, got, want)
		}
	}
}

// Systems that begin with the codes of a few walls tell the wall, where another column is
// headed as that of the products; what is a product or no code of a wall stays a material.
func TestSystemsThatBeginWithWalls(t *testing.T) {
	for name, c := range map[string]struct{ systems, heading, group, material string }{
		"walls":    {"EX1 rain screen;EX1 rain screen;EX2 / stucco;EX2 / stucco", "Membrane applied", "EX1", "SH1 Ostrava 60"},
		"codes":    {"EX1;EX1;EX2;EX2", "Applied material", "EX1", "SH1 Ostrava 60"},
		"products": {"SH2 butyl flashing;SH2 butyl flashing;SH1 SBS sheet;SH1 SBS sheet", "Applied product", "", "SH2 butyl flashing"},
		"names":    {"SBS sheet;SBS sheet;butyl flashing;butyl flashing", "Applied product", "", "SBS sheet"},
		"alone":    {"EX1 SBS sheet;EX1 SBS sheet;EX2 butyl flashing;EX2 butyl flashing", "Crew", "", "EX1 SBS sheet"},
	} {
		grid := "Item | System | " + c.heading + " | Substrate | Lap"
		for i, system := range strings.Split(c.systems, ";") {
			grid += fmt.Sprintf("\n%d | %s | SH1 Ostrava 60 | block | 3 in", i+1, system)
		}
		s := readPages(t, page{name: "S", grid: grid}, page{name: "D", grid: "Tag | Type | Sun, days\nSH1 | SBS sheet | 60\nSH2 | butyl sheet | 90"})
		if l := line(t, s, "1"); l.Group != c.group || l.Texts["material"] != c.material {
			t.Errorf("%s: group %q, material %q", name, l.Group, l.Texts["material"])
		}
	}
}

// A list under the products may be of the walls and the roofs together; one of another thing
// is no list of walls.
func TestWallsAndRoofsUnderProducts(t *testing.T) {
	for title, want := range map[string]string{
		"Roof and wall types (inside to outside)": "D1 EX1 EX2",
		"WALLS & ROOFS":       "D1",
		"WALL/ROOF BUILD-UPS": "D1 EX1 EX2",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Wall | Membrane | Substrate | Primer\nD1 | EX1 | Larkso 5 | block | none"}, page{name: "P", grid: `
Offer | Product | Kind | Place min °C
yes | Larkso 5 | SBS self-adhered sheet | 5
yes | Larkso 9 | butyl self-adhered sheet | -5

` + title + `
EX1 | block 190, SBS sheet, mineral wool 90, brick 90
EX2 | plywood 16, SBS sheet, mineral wool 90, zinc sheet`})
		var marks []string
		for _, l := range s.Lines {
			marks = append(marks, l.Mark)
		}
		if got := strings.Join(marks, " "); got != want {
			t.Errorf("%s: %q, want %q", title, got, want)
		}
	}
}

// Walls may go by letters, and those below grade by others, in one list under one title; notes
// that go on below with numbers of their own are none of it.
func TestLetteredWalls(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Item | Wall | Membrane | Substrate | Primer\n1 | W-A | SBS sheet | block | none"}, page{name: "Key", grid: `
WALL / BUILD-UP TYPES (inside to outside)
W-A | plasterboard / studs / plywood / SBS sheet / mineral wool / brick
W-B | block / SBS sheet / XPS / air space / metal panel
UG-1 | cast concrete / HDPE sheet / XPS / drain mat / backfill
UG-2 | trench, not occupied: concrete / emulsion / backfill
N4 | pans and flashing, end dams`})
	var marks []string
	for _, l := range s.Lines {
		marks = append(marks, l.Mark)
	}
	if got := strings.Join(marks, " "); got != "1 W-A W-B UG-1 UG-2" {
		t.Errorf("walls %q", got)
	}
}

// Codes under "Type" beside the layers of walls are the marks of a list of them; the same
// code again, or another word, is none.
func TestWallsListedByType(t *testing.T) {
	for second, want := range map[string]string{"EX2": "EX1", "EX1": "", "timber": ""} {
		s := readPages(t, page{name: "S", grid: "Mark | Wall | Membrane | Substrate | Primer\nD1 | EX1 | butyl sheet | block | none"}, page{name: "W", grid: `
Type | Where | Layers (in > out)
EX1 | north | block; butyl sheet; mineral wool; brick
` + second + ` | south | plywood; butyl sheet; mineral wool; zinc sheet`})
		got := ""
		for _, l := range s.Lines {
			if l.Sheet == "W" && l.Mark != "" {
				got = l.Mark
				break
			}
		}
		if got != want {
			t.Errorf("beside %s: %q, want %q", second, got, want)
		}
	}
}

// A cell of the bed that begins with the code of a listed wall, with nothing between, tells the
// wall; the grade of a concrete, which no list of walls has, tells none.
func TestWallCodeBeforeItsBed(t *testing.T) {
	rows := "No. | Product | On | Installed\n1 | SBS sheet | EW1 plywood | 2026-06-01\n2 | butyl sheet | EW1 plywood | 2026-06-02\n" +
		"3 | SBS sheet | EW2 block | 2026-06-03\n4 | butyl sheet | EW2 block, parged | 2026-06-04\n5 | butyl sheet | EW7 block | 2026-06-05\n6 | SBS sheet | EW1 plywood | 2026-06-06"
	list := page{name: "Walls", grid: "Type | Layers, outside to inside\nEW1 | siding / SBS sheet / plywood / gypsum board\nEW2 | brick / butyl sheet / block / gypsum board"}
	s := readPages(t, page{name: "S", grid: rows}, list)
	for mark, wall := range map[string]string{"1": "EW1", "4": "EW2", "5": "EW7"} {
		if got := line(t, s, mark).Group; got != wall {
			t.Errorf("row %s stands under %q, want %s", mark, got, wall)
		}
	}
	s = readPages(t, page{name: "S", grid: strings.NewReplacer("EW1", "C30", "EW2", "C40", "EW7", "C35").Replace(rows)}, list)
	if got := line(t, s, "1").Group; got == "C30" {
		t.Error("a grade of concrete is no wall")
	}
}

// wallsOf are the walls that a list tells beside a schedule: the code of each, and its
// layers by their families, with the thickness of those that insulate.
func wallsOf(t *testing.T, title, grid string) string {
	t.Helper()
	s := readPages(t, page{name: "S", grid: "Mark | Wall type | Material | Substrate | Primer | Lap\nD1 | Q1 | butyl sheet | plywood | none | 75 mm\nD2 | Q2 | butyl sheet | plywood | none | 75 mm"}, page{name: title, grid: grid})
	var walls []string
	for i := range s.Lines {
		l := &s.Lines[i]
		if l.Sheet != title {
			continue
		}
		told := []string{l.Mark + ":"}
		for _, it := range l.Items {
			words := it.Family
			if it.Class == "insulation" && it.ThickMM != nil {
				words += fmt.Sprintf(" %.0f", *it.ThickMM)
			}
			told = append(told, words)
		}
		walls = append(walls, strings.Join(told, " "))
	}
	return strings.Join(walls, "; ")
}

// A list of walls is read however it is laid out: below the codes of walls, beside them,
// under codes that number the layers, side by side, in one cell, or a column a layer.
func TestListsOfWalls(t *testing.T) {
	const want = "Q1: osb-plywood-sheathing butyl-flashing-tape mineral-wool 75 clay-brick; Q2: concrete-masonry butyl-flashing-tape xps 50 clay-brick"
	for name, grid := range map[string]string{
		"under their codes":   "Inside to outside\n\nQ1 - Brick on studs | |\nNo. | Layer | Thickness\n1 | plywood | 12 mm\n2 | butyl sheet | 1 mm\n3 | mineral wool | 75 mm\n4 | clay brick | 90 mm\n\nQ2 - Brick on block | |\nNo. | Layer | Thickness\n1 | concrete block | 190 mm\n2 | butyl sheet | 1 mm\n3 | XPS | 50 mm\n4 | clay brick | 90 mm",
		"beside their codes":  "Ref | Component | mm | RSI\nQ1 | plywood | 12 | 0.1\n | butyl sheet | 1 |\n | mineral wool | 75 | 2.1\n | clay brick | 90 | 0.1\n | Total RSI | | 2.4\nQ2 | concrete block | 190 | 0.2\n | butyl sheet | 1 |\n | XPS | 50 | 1.7\n | clay brick | 90 | 0.1",
		"sizes by their unit": "Wall type | Component (inside first) | Actual | Perms\nQ1 | plywood | 12 mm | 1\n | butyl sheet | 1 mm | 0.02\n | mineral wool | 75 mm | 30\n | clay brick | 90 mm | 2\nQ2 | concrete block | 190 mm | 2\n | butyl sheet | 1 mm | 0.02\n | XPS | 50 mm | 0.6\n | clay brick | 90 mm | 2",
		"numbered by codes":   "Code | Layer\nQ1.1 | plywood\nQ1.2 | butyl sheet\nQ1.3 | 75 mm mineral wool\nQ1.4 | clay brick\nQ2.1 | concrete block\nQ2.2 | butyl sheet\nQ2.3 | 50 mm XPS\nQ2.4 | clay brick",
		"side by side":        "In to out | Q1 | Q2\nUse | offices | plant room\nLayer 1 | plywood | concrete block\nLayer 2 | butyl sheet | butyl sheet\nLayer 3 | 75 mm mineral wool | 50 mm XPS\nLayer 4 | clay brick | clay brick",
		"in one cell":         "Tag | Where | Wall build-up (in → out)\nQ1 | north | plywood → butyl sheet → 75 mm mineral wool → clay brick\nQ2 | south | concrete block → butyl sheet → 50 mm XPS → clay brick",
		"a column a layer":    "Type Mark | Type Comments | Layer 1 Material | Layer 1 Thickness | Layer 2 Material | Layer 2 Thickness | Layer 3 Material | Layer 3 Thickness | Layer 4 Material | Layer 4 Thickness\nQ1 | brick | plywood | 12 mm | butyl sheet | 1 mm | mineral wool | 75 mm | clay brick | 90 mm\nQ2 | brick | concrete block | 190 mm | butyl sheet | 1 mm | XPS | 50 mm | clay brick | 90 mm",
	} {
		if got := wallsOf(t, "Wall types", grid); got != want {
			t.Errorf("%s:\ngot  %s\nwant %s", name, got, want)
		}
	}
}

// Batts fill the studs that are told beside them, and boards do not.
func TestBattsFillStuds(t *testing.T) {
	got := wallsOf(t, "Walls", "Mark | Assembly\nQ1 | gypsum board → 2x6 studs w/ R-21 glass fiber batts → plywood → XPS\nQ2 | gypsum board → 38x89 studs, mineral wool batts → plywood → brick")
	want := "Q1: gypsum-board lumber-unspecified glass-fiber-insulation 140 osb-plywood-sheathing xps; Q2: gypsum-board mineral-wool 89 osb-plywood-sheathing clay-brick"
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// A list of products, a legend and a schedule of work on a sheet of walls are none of walls.
func TestNoListsOfWalls(t *testing.T) {
	for _, grid := range []string{
		"Tag | Product | Kind\nAB-1 | Alder 40 | butyl sheet\nAB-2 | Alder 60 | SBS sheet\nIN-1 | Larch | mineral wool board",
		"Mark | Material | Substrate | Primer | Lap | Date\nA-1 | SBS sheet | plywood | none | 75 mm | 2027-05-03\nA-2 | SBS sheet | block | none | 75 mm | 2027-05-04",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Wall type | Material | Substrate | Primer | Lap\nD1 | Q1 | AB-1 | plywood | none | 75 mm"}, page{name: "Walls", grid: grid})
		for i := range s.Lines {
			if s.Lines[i].Texts["layers"] != "" {
				t.Errorf("%s: row %d is a wall", grid, s.Lines[i].Row)
			}
		}
	}
}

// Of numbered layers, and of a column for what the studs hold, the thickness is told so too.
func TestThicknessOfLayers(t *testing.T) {
	for grid, want := range map[string]string{
		"Wall | Layer | Material\nQ1 | 1 | gypsum board\nQ1 | 2 | 2x8 studs w/ glass fiber batts\nQ1 | 3 | plywood\nQ1 | 4 | 60 mm XPS":                                          "184 60",
		"Type | Cladding | CI | WRB | Sheathing | Studs + insulation | Interior\nQ1 | brick | 3\" XPS | SBS sheet | plywood | 2x4 @ 16\" o.c., glass fiber batts | gypsum board": "76 89",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Wall type | Material | Substrate | Primer | Lap\nD1 | Q1 | butyl sheet | plywood | none | 75 mm"}, page{name: "Walls", grid: grid})
		var got []string
		for i := range s.Lines {
			for _, it := range s.Lines[i].Items {
				if it.Class == "insulation" && it.ThickMM != nil {
					got = append(got, fmt.Sprintf("%.0f", *it.ThickMM))
				}
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %v, want %s", grid, got, want)
		}
	}
}

// More layouts of the same list: the codes with what each wall is, the ends of the list in
// rows of their own, the layers counted in a line, a heading of both sides, double slashes.
func TestMoreListsOfWalls(t *testing.T) {
	const want = "Q1: osb-plywood-sheathing butyl-flashing-tape mineral-wool 75 clay-brick; Q2: concrete-masonry butyl-flashing-tape xps 50 clay-brick"
	for name, grid := range map[string]string{
		"codes with names":  "INSIDE | Q1 - framed | Q2 - block\nBoard | plywood | concrete block\nSheet | butyl sheet | butyl sheet\nInsulation | 75 mm mineral wool | 50 mm XPS\nCladding | clay brick | clay brick\nOUTSIDE | |",
		"ends in rows":      " | Q1 | Q2\nROOM SIDE | |\nBoard | plywood | concrete block\nSheet | butyl sheet | butyl sheet\nInsulation | 75 mm mineral wool | 50 mm XPS\nCladding | clay brick | clay brick\nWEATHER SIDE | |",
		"counted in a line": "WALL NOTES\nQ1 (from inside): 1) plywood 2) butyl sheet 3) 75 mm mineral wool 4) clay brick\nQ2 (from inside): 1) concrete block 2) butyl sheet 3) 50 mm XPS 4) clay brick",
		"both sides told":   "Code | Description (inside to outside)\nQ1 | plywood // butyl sheet // 75 mm mineral wool // clay brick\nQ2 | concrete block // butyl sheet // 50 mm XPS // clay brick",
		"layers and sizes":  "Walls, inside to outside\nWall | Layer | mm | Basis\nQ1 | plywood | 12 |\n | butyl sheet | 1 | 0.1 perm\n | mineral wool | 75 |\n | clay brick | 90 |\n | | |\nQ2 | CMU | 190 |\n | butyl sheet | 1 | 0.1 perm\n | XPS | 50 |\n | clay brick | 90 |",
	} {
		if got := wallsOf(t, "Wall types", grid); got != want {
			t.Errorf("%s:\ngot  %s\nwant %s", name, got, want)
		}
	}
}

// Codes that number the layers of walls are none of walls beside one another, and counts
// in a text of another order are no layers.
func TestNumbersOfLayers(t *testing.T) {
	got := wallsOf(t, "Walls", "Wall | L1 (int) | L2 | L3 | L4 (ext)\nQ1 | plywood | butyl sheet | 75 mm mineral wool | clay brick\nQ2 | concrete block | butyl sheet | 50 mm XPS | clay brick")
	want := "Q1: osb-plywood-sheathing butyl-flashing-tape mineral-wool 75 clay-brick; Q2: concrete-masonry butyl-flashing-tape xps 50 clay-brick"
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	got = wallsOf(t, "Walls", "WALL NOTES\nQ1: plywood, see 2) and 4), butyl sheet, 75 mm mineral wool, clay brick\nQ2: (2) layers plywood, butyl sheet, 50 mm XPS, clay brick")
	if strings.Count(got, "clay-brick") != 2 || strings.Count(got, "osb-plywood-sheathing") != 2 {
		t.Errorf("numbers that count no layers: %s", got)
	}
}

// The codes of walls may stand beside other codes, a remark beside the whole list is no part
// of it, a sheet between its two halves is, and codes above it in a table are of others.
func TestListsBesideOthers(t *testing.T) {
	const want = "Q1: osb-plywood-sheathing butyl-flashing-tape mineral-wool 75 clay-brick; Q2: concrete-masonry butyl-flashing-tape xps 50 clay-brick"
	for name, grid := range map[string]string{
		"codes inside":   "Mark | Supplied | Wall | Assembly, in to out\nM-4 | coil | Q1 | plywood + butyl sheet + 75 mm mineral wool + clay brick\nM-4 | coil | Q2 | concrete block + butyl sheet + 50 mm XPS + clay brick",
		"remark beside":  "Wall | ROOM SIDE > ... > WEATHER SIDE | Tight (cladding not counted)\nQ1 | plywood > butyl sheet > 75 mm mineral wool > clay brick | butyl sheet\nQ2 | concrete block > butyl sheet > 50 mm XPS > clay brick | butyl sheet; XPS",
		"under a legend": "Mark | Kind | Perms\nM-1 | 40 mil | 0.1\nM-2 | 20 mil | 11\nM-3 | 6 mil | 30\n | |\nWALL LEGEND (int. to ext.) | |\nQ1 | plywood; butyl sheet; 75 mm mineral wool; clay brick |\nQ2 | concrete block; butyl sheet; 50 mm XPS; clay brick |",
	} {
		if got := wallsOf(t, "Wall types", grid); !strings.HasSuffix(got, want) {
			t.Errorf("%s:\ngot  %s\nwant %s", name, got, want)
		}
	}
}

// Bare figures in brackets after the layers of a list are millimeters; small ones tell nothing.
func TestThicknessInBrackets(t *testing.T) {
	for grid, want := range map[string]string{
		"Wall | Make-up, in to out\nQ1 | plywood (12)\nbutyl sheet (1)\nmineral wool (110)\nclay brick (90)\nQ2 | concrete block (190)\nbutyl sheet (1)\nXPS (60)\nclay brick (90)": "110 60",
		"Wall | Make-up, in to out\nQ1 | plywood (1); butyl sheet (2); mineral wool (3); clay brick (4)\nQ2 | concrete block (1); butyl sheet (2); XPS (3); clay brick (4)":         "",
	} {
		grid = strings.NewReplacer("\nbutyl", "; butyl", "\nmineral", "; mineral", "\nXPS", "; XPS", "\nclay", "; clay").Replace(grid)
		got := wallsOf(t, "Walls", grid)
		var thick []string
		for _, word := range strings.Fields(got) {
			if word = strings.TrimRight(word, ";"); word[0] >= '0' && word[0] <= '9' {
				thick = append(thick, word)
			}
		}
		if strings.Join(thick, " ") != want {
			t.Errorf("%q: %s, want %q", grid, got, want)
		}
	}
}
