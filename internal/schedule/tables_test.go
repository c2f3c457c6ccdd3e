package schedule_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
	"abut/internal/workbook"
)

func TestTitleBlockAndNotes(t *testing.T) {
	s := read(t, `
Osprey Point Visitor Center | | | |
Air barrier schedule, issue 2 | | | |
Duluth, Minnesota | | | |
 | | | |
Item | Membrane | Substrate | Primer | Installed
1 | butyl sheet | plywood | none | 3 Mar 2026
2 | butyl sheet | CMU | acrylic primer | 4 Mar 2026
 | | | |
Notes | | | |
1. | Primers 250 g/L max. | | |
2. | See the drawings for the grid lines. | | |
`)
	if marks(s) != "1 2" {
		t.Errorf("lines %q", marks(s))
	}
	if s.Project.Name != "Osprey Point Visitor Center" {
		t.Errorf("name %q", s.Project.Name)
	}
	if len(s.Project.Limits) != 1 || s.Project.Limits[0].Kind != "voc_gl" {
		t.Errorf("limits %+v", s.Project.Limits)
	}
	if !slices.ContainsFunc(s.Project.Places, func(f schedule.Fact) bool { return strings.Contains(f.Text, "Duluth") }) {
		t.Errorf("places %+v", s.Project.Places)
	}
}

func TestProjectNameByItsLabel(t *testing.T) {
	s := read(t, `EXPORT OF 3 MARCH
Project: Heron Basin Library
1 | butyl sheet | plywood | none | 3 Mar 2026
Item | Membrane | Substrate | Primer | Installed
1 | butyl sheet | plywood | none | 3 Mar 2026
`)
	if s.Project.Name != "Heron Basin Library" {
		t.Errorf("name %q", s.Project.Name)
	}
}

func TestHeadings(t *testing.T) {
	for name, tc := range map[string]struct {
		page page
		want string // slots
		head int    // rows
	}{
		"one row": {page{grid: `
Mark | Membrane | Substrate | Primer | Min. lap | Install date | Cover by
D1 | butyl sheet | plywood | none | 3 in. | 2 Mar 2026 | 9 Mar 2026`},
			"mark material substrate primer lap install cover", 1},
		"two rows, merged groups": {page{grid: `
Ref. | Membrane | | Dates | |
 | type | thickness, mm | installed | covered | Substrate
D1 | butyl sheet | 1.5 | 2 Mar 2026 | 9 Mar 2026 | plywood
D2 | butyl sheet | 1.5 | 3 Mar 2026 | 9 Mar 2026 | CMU`, merges: []string{"B1:C1", "D1:E1"}},
			"mark material thickness install cover substrate", 2},
		"three rows": {page{grid: `
Item | Wall materials | | Programme | |
 | Sheet | | Dates | | Remarks
 | Membrane | Substrate | Laid | Covered by |
D1 | butyl sheet | plywood | 2 Mar 2026 | 9 Mar 2026 | none
D2 | butyl sheet | CMU | 3 Mar 2026 | 9 Mar 2026 | none`, merges: []string{"B1:C1", "D1:E1", "B2:C2", "D2:E2"}},
			"mark material substrate install cover remark", 3},
		"plain words": {page{grid: `
No | Where | Our sheet | Stuck to | Goes on | Boxed in | Boxed in with
1 | Cheek wall, east | butyl sheet | plywood | 2 Mar 2026 | 9 Mar 2026 | cedar boards
2 | Roof hatch curb | butyl sheet | CMU | 3 Mar 2026 | 9 Mar 2026 | metal panel`},
			"mark place material substrate install cover front", 1},
		"units in a row of their own": {page{grid: `
Mark | Membrane | Thickness | Substrate | Lap
 | | mil | | in.
D1 | butyl sheet | 40 | plywood | 3
D2 | butyl sheet | 60 | CMU | 3`},
			"mark material thickness substrate lap", 2},
		"United Kingdom": {page{grid: `
Item no. | Where | VCL | Background | Neighbouring materials | Programme: laid | Overclad
1 | north | butyl sheet | blockwork | brick tie | 2/3/2026 | 20/3/2026
2 | south | butyl sheet | blockwork | brick tie | 3/3/2026 | 21/3/2026`},
			"mark place material substrate touches install cover", 1},
		"Canada": {page{grid: `
Detail no. | Wall assembly | AVB | Applied to | Primer | Mastic | Date installed | Cladding date
1 | W1 | butyl sheet | plywood | none | butyl sealant | 2026-03-02 | 2026-03-20
2 | W1 | butyl sheet | concrete | none | butyl sealant | 2026-03-03 | 2026-03-21`},
			"mark group material substrate primer sealant install cover", 1},
		"title over all columns": {page{grid: `
Enclosure install log, kept by the superintendent of the west tower | | | | |
Item | Product | | Dates | |
 | Tag | Membrane | Laid | Covered | Remarks
D1 | MB-1 | butyl sheet | 2 Mar 2026 | 9 Mar 2026 | none
D2 | MB-1 | butyl sheet | 3 Mar 2026 | 9 Mar 2026 | none`, merges: []string{"A1:F1", "B2:C2", "D2:E2"}},
			"mark tag material install cover remark", 2},
		"title in its first cell": {page{grid: `
Log of the west tower, kept by the superintendent since January
Item | Product | | Dates |
 | Tag | Membrane | Laid | Covered
D1 | MB-1 | butyl sheet | 2 Mar 2026 | 9 Mar 2026
D2 | MB-1 | butyl sheet | 3 Mar 2026 | 9 Mar 2026`, merges: []string{"B2:C2", "D2:E2"}},
			"mark tag material install cover", 2},
		"submittal log": {page{grid: `
No. | Membrane | Submittal | | | Field | |
 | | Submitted | Ret'd | Action | Sched. install | Insp. | Closed in by
1 | butyl sheet | 2 Jan 2026 | 9 Jan 2026 | A | 2 Mar 2026 | 6 Mar 2026 | 9 Mar 2026
2 | butyl sheet | 5 Jan 2026 | 12 Jan 2026 | A | 3 Mar 2026 | 6 Mar 2026 | 9 Mar 2026`, merges: []string{"C1:E1", "F1:H1"}},
			"mark material sent returned status install inspected cover", 2},
		"tracker with paperwork dates": {page{grid: `
ID | Air barrier | RFI date | Date received | Approved | On site | Wrapped by | Cladding start
1 | butyl sheet | 2 Jan 2026 | 9 Jan 2026 | 12 Jan 2026 | 1 Feb 2026 | 2 Mar 2026 | 9 Mar 2026
2 | butyl sheet | 5 Jan 2026 | 12 Jan 2026 | 13 Jan 2026 | 1 Feb 2026 | 3 Mar 2026 | 9 Mar 2026`},
			"mark material reference returned approved delivered install cover", 1},
		"dates under unknown headings, the work nearest to its cover": {page{grid: `
No. | Membrane | Put on | Vetted | Gone round | Dressed | Overclad
1 | butyl sheet | plywood | 2 Jan 2026 | 9 Jan 2026 | 2 Mar 2026 | 9 Mar 2026
2 | butyl sheet | CMU | 5 Jan 2026 | 12 Jan 2026 | 3 Mar 2026 | 9 Mar 2026`},
			"mark material substrate   install cover", 1},
		"hold points": {page{grid: `
No. | Product | Receives | Bond coat | Issued | Ret. | Fitted | Date checked | Concealed by | Tied to | Temp. on day
1 | butyl sheet | plywood | none | 2 Jan 2026 | 9 Jan 2026 | 2 Mar 2026 | 3 Mar 2026 | 9 Mar 2026 | door frame | 45 F
2 | butyl sheet | CMU | none | 5 Jan 2026 | 12 Jan 2026 | 3 Mar 2026 | 4 Mar 2026 | 9 Mar 2026 | door frame | 48 F`},
			"mark material substrate primer sent returned install inspected cover touches reading_air", 1},
		"bed and reading in short": {page{grid: `
Asm. | Where | Onto what | Membrane | Primer | Laid | Surf. °F | Covered with
C2 | east | plywood | butyl sheet | none | 2 Mar 2026 | 48 | rock wool
C2 | west | CMU | butyl sheet | none | 3 Mar 2026 | 51 | rock wool`},
			"group place substrate material primer install reading_surface front", 1},
		"words cut short, as databases have them": {page{grid: `
MRK | LCTN | SBSTRT | MEMBR | PRM | TCH | TRM | INSTLL
C2 | east | plywood | butyl sheet | none | brick | bar at head | 2 Mar 2026
C3 | west | CMU | butyl sheet | none | brick | bar at head | 3 Mar 2026`},
			"mark place substrate material primer touches edge install", 1},
		"unknown column said": {page{grid: `
Mark | Membrane | Substrate | Primer | Zeta index
D1 | butyl sheet | plywood | none | qq
D2 | butyl sheet | plywood | none | qq`},
			"mark material substrate primer ", 1},
	} {
		t.Run(name, func(t *testing.T) {
			tc.page.name = "S"
			s := readPages(t, tc.page)
			if got := slots(s.Reading.Tables[0]); got != tc.want || len(s.Reading.Tables[0].Head) != tc.head {
				t.Errorf("slots %q in %d rows, want %q in %d", got, len(s.Reading.Tables[0].Head), tc.want, tc.head)
			}
		})
	}
}

// Where no column is for substrates, what stands behind a primed sheet is its own.
func TestBedBehindThePrimer(t *testing.T) {
	s := read(t, "Ref | Membrane | Inside | Outside | Primer | Lap\nD1 | butyl tape | plywood | mineral wool | none | 75 mm\n")
	if it := s.Lines[0].Items[1]; it.Slot != "substrate" || it.Family != "osb-plywood-sheathing" {
		t.Errorf("%s %s", it.Slot, it.Family)
	}
	s = read(t, "Ref | Membrane | Substrate | Inside | Primer | Lap\nD1 | butyl tape | plywood | mineral wool | none | 75 mm\n")
	if it := s.Lines[0].Items[2]; it.Slot != "behind" {
		t.Errorf("%s %s", it.Slot, it.Family)
	}
}

func TestUnknownColumnIsInTheReading(t *testing.T) {
	s := read(t, `
Mark | Membrane | Substrate | Primer | Zeta index
D1 | butyl sheet | plywood | none | qq
D2 | butyl sheet | plywood | none | ww
`)
	if len(s.Reading.Unread) != 2 || s.Reading.Unread[0].At.Cell != "E2" || s.Reading.Cells != 10 || s.Reading.Known != 8 {
		t.Errorf("unread %+v, %d of %d", s.Reading.Unread, s.Reading.Known, s.Reading.Cells)
	}
}

func TestRowsOfATable(t *testing.T) {
	longHead := "Type C, stair core from level 3 up. Weather to room: brick, cavity, rock wool, butyl sheet, block, plaster"
	heading := "Wall type | Membrane | Substrate | Primer | Install date\n"
	for name, tc := range map[string]struct {
		page  page
		marks string
		group string // of the last line
	}{
		"dividers": {page{grid: "Item | Membrane | Substrate | Primer\nNORTH WALL\n1 | butyl sheet | plywood | none\nSOUTH WALL\n2 | butyl sheet | CMU | none"},
			"1 2", "SOUTH WALL"},
		"merged divider": {page{grid: "Item | Membrane | Substrate | Primer\nNORTH WALL\n1 | butyl sheet | plywood | none\nSOUTH WALL\n2 | butyl sheet | CMU | none", merges: []string{"A2:D2", "A4:D4"}},
			"1 2", "SOUTH WALL"},
		"long merged divider": {page{grid: "Item | Membrane | Substrate | Primer\n" + longHead + "\n1 | butyl sheet | plywood | none", merges: []string{"A2:D2"}},
			"1", longHead},
		"group stands once, blank below": {page{grid: heading + "W1 | butyl sheet | plywood | none | @2026-03-02\n | butyl sheet | CMU | none | @2026-03-03\nW2 | butyl sheet | CMU | none | @2026-03-04\n | butyl sheet | steel | none | @2026-03-05"},
			"W1 W1 W2 W2", "W2"},
		"group merged": {page{grid: heading + "W1 | butyl sheet | plywood | none | @2026-03-02\n | butyl sheet | CMU | none | @2026-03-03\n | butyl sheet | CMU | none | @2026-03-04", merges: []string{"A2:A4"}},
			"W1 W1 W1", "W1"},
		"rows left empty between": {page{grid: "Item | Membrane | Substrate | Primer\n1 | butyl sheet | plywood | none\n\n2 | butyl sheet | CMU | none\n\n\n3 | butyl sheet | CMU | none"},
			"1 2 3", ""},
		"heading repeated on the next page": {page{grid: "Item | Membrane | Substrate | Primer\n1 | butyl sheet | plywood | none\nItem | Membrane | Substrate | Primer\n2 | butyl sheet | CMU | none"},
			"1 2", ""},
	} {
		t.Run(name, func(t *testing.T) {
			tc.page.name = "S"
			s := readPages(t, tc.page)
			if marks(s) != tc.marks {
				t.Errorf("marks %q, want %q", marks(s), tc.marks)
			}
			if got := s.Lines[len(s.Lines)-1].Group; got != tc.group {
				t.Errorf("group %q, want %q", got, tc.group)
			}
		})
	}
}

func TestSeveralTablesAndSheets(t *testing.T) {
	s := readPages(t,
		page{name: "North", grid: `
Revisions
Rev | Date | Description | By
A | @2026-01-05 | First issue | office
B | @2026-01-20 | Sheet changed at the sill | office

Item | Membrane | Substrate | Primer
N1 | butyl sheet | plywood | none

Tag | Type | Min apply °C | Max days open to sun
BT-1 | butyl flashing tape | -5 | 30`},
		page{name: "South", grid: `
Ref | Where | Barrier | Stuck to | Primed with | Laid
S1 | sill | BT-1 | steel angle | none | @2026-03-03`},
		page{name: "Reading list", grid: "Standards that apply\nsee the drawings"})
	if marks(s) != "N1 S1" {
		t.Errorf("marks %q", marks(s))
	}
	if l := line(t, s, "S1"); l.Sheet != "South" || items(l, "material") != "BT-1" || l.Items[0].Family != "butyl-flashing-tape" {
		t.Errorf("S1 %+v", l.Items)
	}
	as := map[string]string{}
	for _, sh := range s.Reading.Sheets {
		as[sh.Name] = sh.As
	}
	if as["North"] != "schedule" || as["South"] != "schedule" || as["Reading list"] != "notes" {
		t.Errorf("sheets %v", as)
	}
}

func TestHiddenIsReadAndSaid(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Item | Membrane | Substrate | Primer
1 | butyl sheet | plywood | none
2 | butyl sheet | CMU | acrylic primer`, hideRows: []int{3}, hideCols: []string{"D"}})
	l := line(t, s, "2")
	if !l.Hidden || line(t, s, "1").Hidden {
		t.Error("row 3 is hidden and row 2 is not")
	}
	if items(l, "primer") == "" {
		t.Error("the hidden column was not read")
	}
	if c := s.Reading.Tables[0].Columns[3]; !c.Hidden {
		t.Errorf("column %+v", c)
	}
}

func TestStruckRows(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Item | Membrane | Substrate | Primer
~1 | ~butyl sheet | ~plywood | ~none
2 | butyl sheet | CMU | none`})
	if len(s.Lines) != 2 || !s.Lines[0].Struck || s.Lines[1].Struck {
		t.Errorf("lines %+v", s.Lines)
	}
}

func TestNoTable(t *testing.T) {
	_, err := reader(t).Read(csvBook(t, "Dear all\nthe schedule follows next week\n"), schedule.Settings{})
	if err == nil || !strings.Contains(err.Error(), "wall.csv: no material schedule found") {
		t.Errorf("got %v", err)
	}
}

func TestColumnsNamedInTheSettings(t *testing.T) {
	b := csvBook(t, `
Item | Membrane | Substrate | Zeta
1 | butyl sheet | plywood | EPDM gasket
2 | butyl sheet | plywood | EPDM gasket
`)
	s := readBook(t, b, schedule.Settings{Columns: map[string]string{"zeta": "touches"}})
	if got := items(line(t, s, "1"), "touches"); !strings.HasPrefix(got, "epdm") {
		t.Errorf("touches %q", got)
	}
	_, err := reader(t).Read(b, schedule.Settings{Columns: map[string]string{"Omega": "touches"}})
	if err == nil || !strings.Contains(err.Error(), "Zeta") {
		t.Errorf("a wrong heading gave %v", err)
	}
	_, err = reader(t).Read(b, schedule.Settings{Columns: map[string]string{"Zeta": "omega"}})
	if err == nil || !strings.Contains(err.Error(), "none of") {
		t.Errorf("a wrong slot gave %v", err)
	}
}

// TestProductBooksAreLeftAlone: the same book of product data serves several
// workbooks.
func TestProductBooksAreLeftAlone(t *testing.T) {
	data := xlsxBook(t, "data.xlsx", page{name: "Data", grid: "Tag | Type | Min apply °C | Max days open to sun\nBT-1 | butyl flashing tape | -5 | 30"})
	b := csvBook(t, "Item | Membrane | Substrate | Primer\n1 | BT-1 | plywood | none\n")
	set := schedule.Settings{Products: []*workbook.Book{data}}
	for range 2 {
		s := readBook(t, b, set)
		if p := product(t, s, "BT-1"); p.Sheet != "data.xlsx: Data" {
			t.Errorf("sheet %q", p.Sheet)
		}
	}
}

// Under a merged heading, a row of "min" and "max" belongs to the heading; a
// heading of its own counts more than the one above it.
func TestBoundsUnderAHeading(t *testing.T) {
	s := read(t, "Tag | Description | Placing temp. °C | Placing temp. °C | Exposure max d\n | | min | max |\nA1 | butyl tape | -5 | 40 | 60\n\nRef | Tag | Substrate | Lap\nD1 | A1 | plywood | 75 mm\n")
	p := s.Products[0]
	if !near(p.Figures["apply_min_c"].Min, -5) || !near(p.Figures["apply_max_c"].Max, 40) {
		t.Errorf("figures %+v", p.Figures)
	}
}

// A register of joints is about its sealants; "Air L/(s·m²), std" holds figures.
func TestRegisterOfJoints(t *testing.T) {
	s := read(t, "Tag | Type | Keep off | Air L/(s.m²) @75 Pa, std\nB1 | breather membrane | EPDM | 0.06 ASTM E2178\n\nNo | Sealant | Primer | Face condition | Sealed\nJ1 | neutral silicone sealant | none | form oil left on | 2026-06-24\n")
	if l := s.Lines[0]; l.Role != "sealant" || l.Main() == nil || l.Main().Family != "neutral-silicone-sealant" {
		t.Errorf("%s %+v", l.Role, l.Main())
	}
	if f := s.Products[0].Figures["air_lsm2"]; !near(f.Min, 0.06) {
		t.Errorf("%+v", f)
	}
}

// Tags beside the row's own are in the row, and not in contact by that alone.
func TestTagsBesideTheRowsOwn(t *testing.T) {
	s := read(t, "Tag | Type | Keep off | UV days\nW1 | housewrap | - | 120\nT1 | butyl tape | - | 60\nT2 | SBS tape | EPDM | 60\n\nOpening | WRB | Sheathing | Jamb | Head | Lap\n101 | W1 | OSB | T1 | T2 | 4 in\n102 | W1 | OSB | T1 | T1 | 4 in\n103 | W1 | OSB | T2 | T1 | 4 in\n")
	slots := map[string]string{}
	for _, it := range s.Lines[0].Items {
		slots[it.Tag] = it.Slot
	}
	if slots["W1"] != "material" || slots["T2"] != "with" {
		t.Errorf("slots %v", slots)
	}
}

// The plies of a sheet are one thickness, and units stay as their author wrote them.
func TestPliesAndUnits(t *testing.T) {
	s := read(t, "Tag | Type | Thk mm | Air L/(s·m²) | Keep off\nC1 | cavity tray, butyl | 0.4+1.0 | 0.001 | EPDM\nC2 | cavity tray, butyl | 1.2 | 0.001 | EPDM\n\nRef | Tag | Substrate | Lap\nD1 | C1 | CMU | 75 mm\n")
	if f := s.Products[0].Figures["thickness_mm"]; !near(f.Min, 1.4) {
		t.Errorf("%+v", f)
	}
	if f := s.Products[0].Figures["air_lsm2"]; f.Unit != "L/(s·m²)" {
		t.Errorf("unit %q", f.Unit)
	}
}

func TestTooManyHeadings(t *testing.T) {
	one := "Item | Membrane | Substrate | Primer | Lap\nD1 | butyl tape | CMU | none | 3 in.\n"
	b := csvBook(t, strings.Repeat(one, 1001))
	_, err := reader(t).Read(b, schedule.Settings{})
	if err == nil || !strings.Contains(err.Error(), "more than 1000 headings") || !strings.Contains(err.Error(), "row 2001") {
		t.Errorf("error %v", err)
	}
}

// A hidden column of cost codes is no column of tags where another one holds the
// tags of the product data.
func TestCodesOfCosts(t *testing.T) {
	s := read(t, `Mk | Location | Item | Prod. | Over | Prime | Lap | Installed | code
1 | pier | strip | DK-1 | CMU | PR-1 | 4 in. | 2026-05-04 | C-1
2 | pier | strip | DK-1 | CMU | PR-1 | 4 in. | 2026-05-05 | C-2
3 | court | strip | DK-1 | concrete | PR-1 | 4 in. | 2026-05-06 | C-3

Tag | Type | Min apply F | UV days | May go over
DK-1 | self-adhered SBS sheet | 40 | 60 | CMU, concrete
PR-1 | solvent primer | 20 | - | -
`)
	for _, l := range s.Lines {
		if m := l.Main(); m == nil || m.Product != "DK-1" {
			t.Errorf("row %d is about %+v", l.Row, m)
		}
	}
	if got := accepted(product(t, s, "DK-1")); !strings.Contains(got, "concrete-masonry") {
		t.Errorf("goes over %q", got)
	}
}

// A heading of clipped words, a condition told before the substrate, and what
// covers a sheet beside the day it does.
func TestClippedHeadings(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mk | Cond'n | Substr | Prmr | Matl | Inst'd | Cvr'd | Cvr by | Rmks
D1 | Sill | plywood | none | butyl sheet | 2 Mar 2026 | 9 Mar 2026 | stone sill | none
D2 | Jambs | CMU | none | butyl sheet | 3 Mar 2026 | 9 Mar 2026 | mineral wool | none`})
	want := "mark place substrate primer material install cover front remark"
	if got := slots(s.Reading.Tables[0]); got != want {
		t.Errorf("slots %q, want %q", got, want)
	}
	s = readPages(t, page{name: "S", grid: `
Mark | Bay | Membrane | Substrate | Condition | Primer
D1 | C-4 | butyl sheet | plywood | wet | none`})
	if got := slots(s.Reading.Tables[0]); got != "mark place material substrate substrate primer" {
		t.Errorf("slots %q: the condition after the substrate is its state", got)
	}
}

// A heading that could mean two things leaves to its neighbor the one thing that the
// neighbor means, and two columns may tell of the place.
func TestHeadingsThatShareAWord(t *testing.T) {
	for grid, want := range map[string]string{
		"Mark | Bay | Position | Membrane | Goes over | Prep | Primer\nD1 | C | Head | butyl sheet | CMU | swept | P-2": "mark place place material substrate substrate primer",
		"Mark | Membrane | Substrate | Prep | Laps\nD1 | butyl sheet | CMU | P-2 solvent primer | 3 in.":                "mark material substrate primer lap",
	} {
		s := readPages(t, page{name: "S", grid: grid})
		if got := slots(s.Reading.Tables[0]); got != want {
			t.Errorf("%s: slots %q, want %q", grid, got, want)
		}
		if p := s.Lines[0].Place; strings.Contains(grid, "Bay") && p != "C; Head" {
			t.Errorf("place %q", p)
		}
	}
}

// A text over all columns heads the rows below it, also where it would do for a heading.
func TestDividerIsNoHeading(t *testing.T) {
	s := readPages(t, page{name: "P", merges: []string{"A2:F2", "A4:F4"}, grid: `
Tag | Description | Apply min C | VOC g/L | Exposure days | Keep off
Membranes | | | | |
FX-1 | butyl sheet | -4 | 0 | 90 | oils
Sealants | | | | |
FX-2 | silicone sealant | -20 | 30 | no limit | butyl`}, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Sealant
D1 | FX-1 | plywood | none | FX-2`})
	if len(s.Products) != 2 || s.Products[1].Figures["voc_gl"].Min == nil {
		t.Errorf("products %+v", s.Products)
	}
}

// Among very many rows of words a heading is one that stands apart, or that repeats
// another.
func TestHeadingsBelowMuchText(t *testing.T) {
	const head = "Mark | Membrane | Substrate | Primer | Lap\n"
	text := strings.Repeat("about the membrane | and its primer | laps of it | some place | more\n", 2500)
	s := read(t, head+"A1 | SBS sheet | plywood | none | 3 in.\n"+head+"A2 | SBS sheet | plywood | none | 3 in.\n"+text+
		"\n\nNorth | | | |\n"+head+"A3 | SBS sheet | plywood | none | 3 in.\n"+head+"A4 | SBS sheet | plywood | none | 3 in.\n")
	for _, mark := range []string{"A1", "A2", "A3", "A4"} {
		if got := line(t, s, mark).Main(); got == nil || got.Family != "rubberized-asphalt-membrane" {
			t.Errorf("%s is %+v", mark, got)
		}
	}
	for i := range s.Lines {
		if s.Lines[i].Mark == "Mark" {
			t.Errorf("row %d repeats the heading and is read as a line", s.Lines[i].Row)
		}
	}
}

// TestRemarksBesideAWordForPapers: who makes the remarks may be told by a word for papers.
func TestRemarksBesideAWordForPapers(t *testing.T) {
	for heading, want := range map[string]string{"Inspector's remarks": "remark", "Inspector": "reference"} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap | " + heading + `
D1 | SBS sheet | plywood | none | 3 in. | left open for the crane
D2 | SBS sheet | plywood | none | 3 in. | OK`})
		if got := line(t, s, "D1").Texts[want]; want == "remark" && got == "" {
			t.Errorf("%s: remark %q", heading, got)
		}
		if got := line(t, s, "D1").Texts["remark"]; want != "remark" && got != "" {
			t.Errorf("%s: remark %q", heading, got)
		}
	}
}

// TestScheduleOnItsSide reads a schedule with its items across, in two blocks with other
// properties, and gives everything its own address.
func TestScheduleOnItsSide(t *testing.T) {
	s := read(t, `
Fern Hollow Depot | | |
Duluth, Minnesota | | |
 | | | |
Mark | | D1 | D2 | D3
Where | | cheek wall | roof hatch | dock
Sheet | | butyl sheet | SBS sheet | butyl sheet
Bed | | plywood | CMU | plywood
Thickness | mil | 40 | 60 | 30
Side lap | in | 3 | 2 | 3
Installed | | 2 Mar 2026 | 9 Mar 2026 | 16 Mar 2026
Covered by | | 30 Mar 2026 | 30 Mar 2026 | 13 Apr 2026
 | | | |
Upper level | | | |
Mark | | D4 | D5 |
Where | | ramp | canopy |
Sheet | | EPDM sheet | butyl sheet |
Remarks | | | by others |
Bed | | steel deck | plywood |
Installed | | 23 Mar 2026 | 6 Apr 2026 |
 | | | |
Notes | | | |
Primers 250 g/L max. | | | |
`)
	if marks(s) != "D1 D2 D3 D4 D5" {
		t.Fatalf("lines %q", marks(s))
	}
	for i, want := range []struct {
		id, sheet, bed, on string
		row                int
	}{
		{"!C4", "C6", "C7", "C10", 4},
		{"!D4", "D6", "D7", "D10", 4},
		{"!E4", "E6", "E7", "E10", 4},
		{"!C14", "C16", "C18", "C19", 14},
		{"!D14", "D16", "D18", "D19", 14},
	} {
		l := s.Lines[i]
		if !l.Turned || l.ID != want.id || l.Row != want.row || l.Cells["material"] != want.sheet || l.Cells["substrate"] != want.bed || l.Dates["install"].At.Cell != want.on || l.Dates["install"].At.Row != want.row {
			t.Errorf("line %s row %d, cells %v, install %+v", l.ID, l.Row, l.Cells, l.Dates["install"].At)
		}
		if !strings.HasPrefix(l.Items[0].ID, want.id+"/") || l.Items[0].At.Row != want.row {
			t.Errorf("item %s at %+v", l.Items[0].ID, l.Items[0].At)
		}
	}
	if lap := s.Lines[1].Figures["lap_mm"]; lap.Min == nil || *lap.Min != 50.8 || lap.At.Cell != "D9" {
		t.Errorf("lap %+v", lap)
	}
	if len(s.Project.Limits) != 1 || s.Project.Limits[0].At.Cell != "A22" {
		t.Errorf("limits %+v", s.Project.Limits)
	}
	table := s.Reading.Tables[0]
	if !slices.Equal(table.Head, []int{4, 14}) || table.First != 5 || table.Last != 19 || table.Columns[0].Letter != "A4" {
		t.Errorf("table %+v", table)
	}
}

// TestNoScheduleOnItsSide has products across, which are no items of a schedule.
func TestNoScheduleOnItsSide(t *testing.T) {
	_, err := reader(t).Read(csvBook(t, `
Product | Moss 30 | Fern W | Reed B
What it is | butyl sheet | rubberized asphalt sheet | solvent primer
Application temp. | 25 to 110 F | 40 to 100 F | 20 F and up
VOC, g/L | | | 310
UV exposure, days | 60 | 30 |
Vapor permeance, perms | 0.03 | 0.05 |
`), schedule.Settings{})
	var none *schedule.NoTable
	if !errors.As(err, &none) {
		t.Errorf("read as a schedule, or failed otherwise: %v", err)
	}
}

// TestScheduleOnItsSideBesideWalls reads it too where a list of walls stands upright.
func TestScheduleOnItsSideBesideWalls(t *testing.T) {
	s := readPages(t,
		page{name: "Sheets", grid: `
Mark | D1 | D2
Wall | EW1 | EW2
Sheet | butyl sheet | SBS sheet
Bed | plywood | CMU
Installed from | 2 Mar 2026 | 9 Mar 2026
Installed to | 6 Mar 2026 | 13 Mar 2026
Covered by | 30 Mar 2026 | 30 Mar 2026`},
		page{name: "Walls", grid: `
Mark | Layers int. to ext.
EW1 | gypsum board, steel stud, plywood, barrier, mineral wool, brick
EW2 | CMU, barrier, XPS board, brick`})
	if l := s.Lines[1]; marks(s) != "D1 D2 EW1 EW2" || l.Dates["install"].At.Cell != "C5" || l.Dates["finish"].At.Cell != "C6" || s.Lines[2].Turned || s.Lines[2].Row != 2 {
		t.Errorf("lines %q, dates %+v, walls %+v", marks(s), l.Dates, s.Lines[2])
	}
}

// An item may go on in a line of its own below, without a number: its words belong to it.
func TestSecondLines(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
No. | Where | Roll | Laid on | Next to it | Laid
1 | west bay | butyl sheet | plywood | brick | @2026-05-04
 | lines 4-6
2 | east bay | butyl sheet | OSB | brick | @2026-05-05
3 | sills | butyl flashing | block | brick | @2026-05-06
 | no end dams | | | and cedar trim
4 | heads | butyl flashing | block | brick | @2026-05-07
 | see sketch`})
	if len(s.Lines) != 4 {
		t.Fatalf("%d lines, want 4", len(s.Lines))
	}
	for i, want := range []string{"west bay\nlines 4-6", "east bay", "sills\nno end dams", "heads\nsee sketch"} {
		if l := s.Lines[i]; l.Texts["place"] != want || l.Group != "" {
			t.Errorf("row %d is at %q of %q, want %q", l.Row, l.Texts["place"], l.Group, want)
		}
	}
	if l := s.Lines[2]; l.Row != 5 || l.Texts["touches"] != "brick\nand cedar trim" {
		t.Errorf("row %d touches %q", l.Row, l.Texts["touches"])
	}
}

// Words in the second column that head the rows below them are no second lines.
func TestTitlesAreNoSecondLines(t *testing.T) {
	for _, titles := range [][3]string{{"west bay", "east bay", "sills"}, {"", "North tower", "South tower"}} {
		s := readPages(t, page{name: "S", grid: `
No. | Where | Roll | Laid on | Next to it | Laid
 | ` + titles[0] + `
1 | lines 1-3 | butyl sheet | plywood | brick | @2026-05-04
 | ` + titles[1] + `
2 | lines 1-3 | butyl sheet | OSB | brick | @2026-05-05
 | ` + titles[2] + `
3 | lines 4-6 | butyl flashing | block | brick | @2026-05-06`})
		if len(s.Lines) != 3 || s.Lines[1].Group != titles[1] || s.Lines[2].Group != titles[2] {
			t.Errorf("%d lines, the second under %q", len(s.Lines), s.Lines[1].Group)
		}
	}
}

// stackedItems is a schedule whose items have two lines each, under a heading of two.
const stackedItems = `
No. | Location | Membrane | Applied to | Sealant
 | | Notes | Installed | Clad by
1 | west bay | butyl sheet | plywood | silicone
 | lines 4-6 | keep off the gasket | 2026-05-04 | 2026-06-01
2 | east bay | SBS sheet | OSB | silicone
 | | brick on 40 mm ties | 2026-05-05 | 2026-06-02

Level 2 | | | |
3 | sills | butyl flashing | block | polyether
 | | | 2026-05-06 | TBD
4 | heads | butyl flashing | block | polyether
 | see sketch | | 2026-05-07 | 2026-06-04`

// What stands in the second line of an item is headed by the second line of the heading,
// and keeps its own address.
func TestItemsOfTwoLines(t *testing.T) {
	s := readPages(t, page{name: "S", grid: stackedItems})
	if got := marks(s); got != "1 2 3 4" {
		t.Fatalf("lines %q", got)
	}
	for i, want := range []struct{ place, sheet, bed, remark, on, cover, cell string }{
		{"west bay\nlines 4-6", "butyl sheet", "plywood", "keep off the gasket", "2026-05-04", "2026-06-01", "D4"},
		{"east bay", "SBS sheet", "OSB", "brick on 40 mm ties", "2026-05-05", "2026-06-02", "D6"},
		{"sills", "butyl flashing", "block", "", "2026-05-06", "", "D10"},
		{"heads\nsee sketch", "butyl flashing", "block", "", "2026-05-07", "2026-06-04", "D12"},
	} {
		l := &s.Lines[i]
		on := l.Dates["install"]
		if l.Place != want.place || l.Texts["material"] != want.sheet || l.Texts["substrate"] != want.bed || l.Texts["remark"] != want.remark || on.From != want.on || l.Dates["cover"].From != want.cover {
			t.Errorf("row %d reads %q, on %+v, cover %+v", l.Row, l.Texts, on, l.Dates["cover"])
		}
		if on.At.Cell != want.cell || l.Cells["install"] != want.cell || l.ID != fmt.Sprintf("S!%d", l.Row) || !l.Turned {
			t.Errorf("%s: installed in %s, cells %v", l.ID, on.At.Cell, l.Cells)
		}
	}
	table := s.Reading.Tables[0]
	if fmt.Sprint(table.Head, table.First, table.Last) != "[1 2] 3 12" {
		t.Errorf("the table has its heading in rows %v and runs from %d to %d", table.Head, table.First, table.Last)
	}
}

// Three lines of each item, under a heading that leaves out the column of the numbers,
// which are merged over the lines; and a list of the products below it.
func TestItemsOfThreeLines(t *testing.T) {
	s := readPages(t, page{name: "S", merges: []string{"A6:A8", "A9:A11", "A12:A14"}, grid: `
Register of joints

 | Joint | Sheet | Base | Primer
 | | Side lap | Air temp. °C | Sealant
 | | Laid | Covered |
W-1 | north sill | SBS sheet | block | acrylic primer
 | | 75 mm | 12 | silicone
 | | @2026-05-04 | @2026-06-01
W-2 | south sill | SBS sheet | block | acrylic primer
 | | 60 mm | 14 | silicone
 | | @2026-05-05 | @2026-06-02
W-3 | east sill | SBS sheet | block | acrylic primer
 | | 65 mm | 9 | polyether
 | | @2026-05-06 | @2026-06-03`})
	if len(s.Lines) != 3 {
		t.Fatalf("%d lines, want 3", len(s.Lines))
	}
	l := &s.Lines[2]
	if l.Row != 12 || l.Texts["sealant"] != "polyether" || l.Cells["sealant"] != "E13" || l.Dates["install"].From != "2026-05-06" || l.Cells["install"] != "C14" {
		t.Errorf("row %d reads %q from %v", l.Row, l.Texts, l.Cells)
	}
	if lap := l.Figures["lap_mm"]; lap.Min == nil || *lap.Min != 65 || lap.At.Cell != "C13" {
		t.Errorf("lap %+v", lap)
	}
}

// Walls of two layers each under a heading of two rows are no such items: what stands
// in either row is of the same kinds.
func TestTwoLayersAreNoTwoLines(t *testing.T) {
	s := readPages(t, page{name: "S", merges: []string{"B1:C1", "D1:E1"}, grid: `
Wall | Membrane | | Bed | | Installed
 | Sheet | Lap | Goes on | Primer |
W1 | SBS sheet | 75 mm | plywood | acrylic primer | @2026-05-04
 | butyl sheet | 75 mm | SBS sheet | none | @2026-05-05
W2 | SBS sheet | 75 mm | block | acrylic primer | @2026-05-06
 | butyl sheet | 75 mm | SBS sheet | none | @2026-05-07
W3 | SBS sheet | 75 mm | OSB | acrylic primer | @2026-05-08
 | butyl sheet | 75 mm | SBS sheet | none | @2026-05-09`})
	if len(s.Lines) != 6 || s.Lines[1].Texts["material"] != "butyl sheet" || s.Lines[1].Turned {
		t.Errorf("%d lines, the second %q", len(s.Lines), s.Lines[1].Texts)
	}
}

// Dividers with one item below each are no second lines of the items before them.
func TestDividersOverOneItemEach(t *testing.T) {
	s := read(t, `Membrane | Mark | Substrate | Primer | Installed | Covered
Wall W1 | | | | |
butyl sheet | D1 | CMU | none | @2026-06-01 | @2026-06-20
Wall W2 | | | | |
butyl sheet | D2 | plywood | none | @2026-06-02 | @2026-06-20
Wall W3 | | | | |
butyl sheet | D3 | CMU | none | @2026-06-03 | @2026-06-20
Wall W4 | | | | |
butyl sheet | D4 | plywood | none | @2026-06-04 | @2026-06-20
`)
	for i, want := range []string{"Wall W1", "Wall W2", "Wall W3", "Wall W4"} {
		if got := s.Lines[i].Group; got != want {
			t.Errorf("line %d is of %q, want %q", i+1, got, want)
		}
	}
}

// A list of materials tells the ends of the temperatures by no more than an end and its
// unit, and a group stands over the days of the work and of the cover.
func TestEndsByTheirUnits(t *testing.T) {
	for _, heads := range [][3]string{
		{"Min °F", "Max °F", "Planned weeks"}, {"Not under °F", "Not over °F", "Sequence"}, {"Not below F", "Not above F", "Trades"},
	} {
		s := readPages(t, page{name: "S", merges: []string{"E1:F1"}, grid: `
Item | Where | Sheet | Goes on | ` + heads[2] + ` |
 | | | | Placed | Covered
1 | north | Butyl sheet, thick | plywood | Aug 2027 | Sep 2027
2 | south | Butyl sheet, thin | CMU | Sep 2027 | Oct 2027`}, page{name: "Stuff", grid: `
Material | ` + heads[0] + ` | ` + heads[1] + ` | Days in sun | Permeance | Comments
Butyl sheet, thick | 25 | 110 | 90 | 0.05 perm | Keep off PVC
Butyl sheet, thin | 40 | 100 | 60 | 0.06 perm | none`})
		p := product(t, s, "Butyl sheet, thin")
		low, high := p.Figures["apply_min_c"].Min, p.Figures["apply_max_c"].Max
		if low == nil || math.Abs(*low-4.44) > 0.01 || high == nil || math.Abs(*high-37.78) > 0.01 {
			t.Errorf("%v: from %v to %v, want 40 and 100 °F", heads, low, high)
		}
		if d := line(t, s, "1").Dates["install"]; d.From != "2027-08-01" || d.To != "2027-08-31" {
			t.Errorf("%v: installed %+v, want August", heads, d)
		}
	}
}

// Of a schedule's own columns those are limits and not the air of the day; concrete that
// was placed under the same group is no installation.
func TestLimitsOfAirAndPlacedConcrete(t *testing.T) {
	s := readPages(t, page{name: "S", merges: []string{"D1:E1", "F1:G1"}, grid: `
Item | Sheet | Goes on | Air & surface, °F | | Weeks |
 | | | Not under | Not over | Concrete placed | Covered
1 | butyl sheet | concrete | 25 | 110 | Aug 2027 | Oct 2027
2 | butyl sheet | concrete | 40 | 100 | Sep 2027 | Nov 2027`})
	l := line(t, s, "2")
	low, high := l.Figures["apply_min_c"].Min, l.Figures["apply_max_c"].Max
	if low == nil || math.Abs(*low-4.44) > 0.01 || high == nil || math.Abs(*high-37.78) > 0.01 {
		t.Errorf("figures %v, want from 40 to 100 °F", l.Figures)
	}
	if d, ok := l.Dates["install"]; ok {
		t.Errorf("installed %+v, want none: the concrete was placed then", d)
	}
}

// A heading over rows that name their walls in a column tells of the rows all the same;
// where it is what they are grouped by, it is told once.
func TestHeadingOverRowsWithGroups(t *testing.T) {
	s := read(t, `Item | Wall | Membrane | Substrate | Primer | Lap
Cavity flashing | | | | |
1 | EW-1 | butyl sheet | CMU | none | 100 mm
2 | EW-2 | butyl sheet | CMU | none | 100 mm
Upper walls | | | | |
3 | EW-1 | butyl sheet | plywood | none | 50 mm`)
	for mark, want := range map[string]string{"1": "Cavity flashing", "2": "Cavity flashing", "3": "Upper walls"} {
		if l := line(t, s, mark); l.Texts["section"] != want || l.Group == want {
			t.Errorf("row %s: section %q, group %q, want %q over it", mark, l.Texts["section"], l.Group, want)
		}
	}
	s = read(t, `Item | Membrane | Substrate | Primer | Lap
Cavity flashing | | | |
1 | butyl sheet | CMU | none | 100 mm
2 | butyl sheet | CMU | none | 100 mm`)
	if l := line(t, s, "1"); l.Texts["section"] != "" || l.Group != "Cavity flashing" {
		t.Errorf("section %q, group %q", l.Texts["section"], l.Group)
	}
}

// A column of tags makes that of the materials beside it one of beds, whatever its heading;
// the code of a wall is no mark of the row beside one.
func TestBedsBesideTags(t *testing.T) {
	data := page{name: "Data", grid: `
Code | What it is | Min °C | Days open
AX | SBS sheet | 5 | 60
BX | butyl sheet | 0 | 90
P-A | solvent primer | -5 | -`}
	for head, want := range map[string]string{
		"Mark | Where | Wall code | Air/vapour layer | Carried on | Priming | Bounded by": "mark place group material substrate primer touches",
		"Mark | Where | Wall mark | Layer ltr | Underneath | Priming | Borders":           "mark place group tag substrate primer touches",
	} {
		s := readPages(t, page{name: "S", grid: "\n" + head + `
K-1 | north | W1 | AX | glass-mat gypsum sheathing | P-A | aluminum frame
K-2 | south | W2 | BX | cast concrete | P-A | copper flashing
K-3 | west | W1 | AX | concrete block | none | EPDM gasket`}, data)
		if got := slots(s.Reading.Tables[0]); got != want {
			t.Errorf("%s: slots %q, want %q", head, got, want)
		}
	}
}

// "In" before what it leads into is no inch, in a band of headings either.
func TestInThatIsNoUnit(t *testing.T) {
	for head, inches := range map[string]bool{"In the gap": false, "Joint, in": true} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | ` + head + `: lap | Note
D1 | SBS sheet | CMU | 80 | all sizes in mm`}, page{name: "N", grid: "All lengths in mm"})
		if f := line(t, s, "D1").Figures["lap_mm"]; (f.Unit == "in") != inches {
			t.Errorf("%s: %+v, in inches: %v", head, f, inches)
		}
	}
}

// wantSlots reads each grid and compares the slots of its columns.
func wantSlots(t *testing.T, grids map[string]string) {
	t.Helper()
	for grid, want := range grids {
		s := readPages(t, page{name: "S", grid: "\n" + grid})
		if got := slots(s.Reading.Tables[0]); got != want {
			t.Errorf("%s: slots %q, want %q", grid, got, want)
		}
	}
}

// The one day before the cover is that of the sheet, though its heading tells that it was done;
// beside the day on which it was begun it stays the end.
func TestDoneBeforeCover(t *testing.T) {
	wantSlots(t, map[string]string{
		"Mark | Sheet | Base | Done | Covered\nD1 | SBS sheet | CMU | 6 May 2027 | 20 May 2027":                        "mark material substrate install cover",
		"Mark | Sheet | Base | Started | Done | Covered\nD1 | SBS sheet | CMU | 5 May 2027 | 6 May 2027 | 20 May 2027": "mark material substrate install finish cover",
	})
}

// A column of surfaces and primers beside one of what the line goes on is that of the primers;
// alone it tells the surface.
func TestPrimersBesideBeds(t *testing.T) {
	wantSlots(t, map[string]string{
		"Mark | Where | Sheet | Goes on | Surface & primer | Sits between | Laid\nD1 | north | SBS sheet | CMU | none | PE strip | 3 May 2027": "mark place material substrate primer separator install",
		"Mark | Sheet | Surface & primer | Spot | Lap\nD1 | SBS sheet | CMU; P-1 | north | 3 in":                                               "mark material substrate place lap",
	})
}

// The name of a maker beside what needs no primer is that of its sheets, and not of its primer;
// a sentence of the data tells the heat of service.
func TestFacesOfAMaker(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "\nMark | Sheet | Substrate\nD1 | SL-3 | brick"}, page{name: "Data", grid: `
Tag | Name | Type | Min °C | Days open | Primer
SL-3 | Orley H | hybrid sealant | 5 | 60 | No primer on brick, metal, Corwin faces
CW-1 | Corwin 40 | SBS sheet | 5 | 60 | PR-9 on block. Service to 75 °C.
PR-9 | Corwin Prime | solvent primer | 0 | - | -`})
	for _, a := range product(t, s, "SL-3").Accepts {
		if len(a.Keys) > 0 && a.Primer != "none" {
			t.Errorf("on %s: primer %s %v, want none", a.Text, a.Primer, a.Primers)
		}
	}
	if f := product(t, s, "CW-1").Figures["service_max_c"]; f.Max == nil || *f.Max != 75 {
		t.Errorf("service %+v, want 75", f)
	}
}

// A legend sheet has a list under each title, with its headings again where they fit: what
// stands alone over the codes is a title and heads no column, and each list is product data.
// A group over a first column of other words is a part of its heading.
func TestListsUnderTitles(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Sheet | Bed | Primer | Bead\nD1 | M7 | SX | K2 | J4"}, page{name: "Legend", grid: `
MEMBRANES
Code | Trade name | Type | Thk (mil) | Open days
M7 | Orvane 40 | SBS self-adhered sheet | 40 | 60
M8 | Orvane B | butyl flashing | 30 | 90

PRIMERS
Code | Trade name | Type | | Apply temp | For
K1 | Stellin S | solvent rubber | | 0 F and up | M7 M8
K2 | Stellin W | waterborne acrylic | | 40 F and up | M7, not below frost

SEALANTS
Code | Trade name | Type | | Apply temp | Bounds
J3 | Corrin N | neutral cure silicone | | -20 F and up | NOT in contact with M7
J4 | Corrin P | STPE | | 0 F and up | taken in writing with all sheets above

SUBSTRATES
Code | Substrate
BLK | concrete block, joints flush
SX | glass-mat gypsum sheathing`})
	for tag, want := range map[string]string{"M7": "membrane", "K1": "primer", "K2": "primer", "J3": "sealant", "J4": "sealant", "BLK": "masonry", "SX": "substrate"} {
		if p := product(t, s, tag); p.Class != want {
			t.Errorf("%s is %q, want %q", tag, p.Class, want)
		}
	}
	if len(s.Products) != 8 {
		t.Errorf("%d products, want 8", len(s.Products))
	}
	wantSlots(t, map[string]string{
		"SUBSTRATES\nMark | Substrate | Primer | Laid\nD1 | CMU | none | 3 May 2027":                  "mark substrate primer install",
		"Membrane | | |\nType | Substrate | Primer | Laid\nSBS sheet | CMU | none | 3 May 2027":       "material substrate primer install",
		"Code | Substrate | Primer | Laid\nSB-1 | CMU | none | 3 May 2027\nSB-2 | CMU | none | 4 May": "tag substrate primer install",
	})
}

// Days from and to beside the sheets, under the words that head those, are of the work with
// them; under other words they are not taken for that.
func TestSpanOfTheSheets(t *testing.T) {
	days := " | 3 May 2027 | 7 May 2027 | 28 May 2027"
	wantSlots(t, map[string]string{
		"Mark | Base | AVB | AVB from | AVB to | Backfilled\nD1 | CMU | SBS sheet" + days:           "mark substrate material install finish cover",
		"Mark | Base | AVB | Scaffold from | Scaffold to | Backfilled\nD1 | CMU | SBS sheet" + days: "mark substrate material  install cover",
	})
}

// Lists of products stand upright by their headings, whatever the cells of their first
// column say, and a list of different names with a limit is none of works.
func TestListsOfProductsStandUpright(t *testing.T) {
	schedule := page{name: "S", grid: `
Ref | Where | Membrane | Substrate | Lap
1 | north | Alder 30 | plywood | 3 in.
2 | south | Alder W | CMU | 3 in.`}
	for name, grid := range map[string]string{
		"names of kinds below the heading": `
Label name | What it is | Wet film | Lay above | Leave bare | Sticks to
Alder 30 | fluid membrane | 70 mils | 40 F | 6 months | CMU, plywood
Alder W | strip | 25 mils | 25 F | 90 days | CMU
Alder P | primer | - | 25 F | 1 day | plywood`,
		"one limit": `
Product | Role | Coldest to lay (°F) | Mils | Primer
Alder 30 | sheet membrane | 40 | 30 | Alder P
Alder W | fluid membrane | 35 | 60 | none`,
	} {
		s := readPages(t, schedule, page{name: "P", grid: grid})
		found := ""
		for _, one := range s.Reading.Tables {
			if strings.HasPrefix(one.ID, "P#") {
				found += one.Kind
			}
		}
		if found != "products" || len(s.Lines) != 2 {
			t.Errorf("%s: kind %q, %d lines", name, found, len(s.Lines))
		}
	}
	// near miss: different names in each row, but each on a place
	s := read(t, `
Membrane | Where | Substrate | Lay above (°F)
Alder sheet | north | plywood | 40
butyl sheet | south | CMU | 35`)
	if s.Reading.Tables[0].Kind != "schedule" {
		t.Errorf("kind %q", s.Reading.Tables[0].Kind)
	}
}

// Below one heading over figures the words for what is allowed, asked for and done tell the
// columns apart, as they do beside the matter itself; a heading that tells all stays what it is.
func TestBandsOfFigures(t *testing.T) {
	for head, want := range map[string]string{
		"Ref | Membrane | Substrate | Film (mils) | | Sun (days) | \n | | | Required | Measured | Maker's limit | Forecast": "mark material substrate min_thickness thickness exposure_days planned_open",
		"Ref | Membrane | Substrate | Overlap (mm) | | Days bare | \n | | | Needed | Achieved | Permitted | Counted":        "mark material substrate min_lap lap exposure_days planned_open",
		"Ref | Membrane | Substrate | Laps and edges | | Days bare | \n | | | Min. lap | Other | Permitted | Counted":       "mark material substrate lap remark exposure_days planned_open",
	} {
		s := readPages(t, page{name: "S", merges: []string{"D1:E1", "F1:G1"}, grid: "\n" + head + "\n1 | butyl sheet | plywood | 40 | 38 | 60 | 45\n2 | butyl sheet | CMU | 40 | 41 | 60 | 50"})
		if got := slots(s.Reading.Tables[0]); got != want {
			t.Errorf("%s: %q, want %q", head, got, want)
		}
	}
}

// Names under "item" are those of the products, codes are their tags.
func TestNamesOfItems(t *testing.T) {
	schedule := page{name: "S", grid: "\nRef | Where | Membrane | Substrate | Lap\n1 | north | Alder Sheet 40 | plywood | 3 in.\n2 | south | Larch Coat | CMU | 3 in."}
	for grid, want := range map[string]string{
		"Item | Polymer | Coldest to lay (°F) | Days bare\nAlder Sheet 40 | SBS | 40 | 60\nLarch Coat | acrylic | 35 | 90":                      "material chemistry apply_min exposure_days",
		"Item | Product | Coldest to lay (°F) | Days bare\nA-1 | Alder Sheet 40 | 40 | 60\nA-2 | Larch Coat | 35 | 90":                          "mark material apply_min exposure_days",
		"Fluid or accessory | Fluid or strip | Coldest to lay (°F) | Days bare\nAlder Sheet 40 | sheet | 40 | 60\nLarch Coat | fluid | 35 | 90": "material type apply_min exposure_days",
		"Item | Polymer | Design temp. (°F) | Days bare\nAlder Sheet 40 | SBS | 180 | 60\nLarch Coat | acrylic | 200 | 90":                      "material chemistry service_max exposure_days",
		"Item | Polymer | Design temp. (°F) | Days bare\nAlder Sheet 40 | SBS | 40 | 60\nLarch Coat | acrylic | 35 | 90":                        "material chemistry apply exposure_days",
	} {
		s := readPages(t, schedule, page{name: "P", grid: "\n" + grid})
		for _, one := range s.Reading.Tables {
			if got := slots(one); strings.HasPrefix(one.ID, "P#") && got != want {
				t.Errorf("%s: %q, want %q", grid, got, want)
			}
		}
	}
}

// Numbers that rise row by row in the first column are those of the rows, whatever heads them;
// a brand is what a row is about where nothing else tells; an age without a least one is the row's.
func TestNumbersBrandsAndAges(t *testing.T) {
	wantSlots(t, map[string]string{
		"Comment | Membrane | Substrate | Lap\nC-1 | butyl sheet | plywood | 3 in.\nC-2 | butyl sheet | CMU | 3 in.\nC-4 | SBS sheet | CMU | 3 in.":     "mark material substrate lap",
		"Comment | Membrane | Substrate | Lap\nC-1 | butyl sheet | plywood | 3 in.\nsee C-1 | butyl sheet | CMU | 3 in.\nC-4 | SBS sheet | CMU | 3 in.": "remark material substrate lap",
		"Ref | Trade name | Goes on | In contact with\n1 | Alder Sheet | plywood | PVC\n2 | Larch Coat | CMU | brick":                                   "mark material substrate touches",
		"Ref | Membrane | Substrate | Concrete cure (d) | Lap\n1 | butyl sheet | concrete | 30 | 3 in.\n2 | butyl sheet | concrete | 12 | 3 in.":        "mark material substrate age lap",
		"Ref | Membrane | Substrate | Min. concrete age (d) | Lap\n1 | butyl sheet | concrete | 28 | 3 in.\n2 | butyl sheet | concrete | 28 | 3 in.":    "mark material substrate concrete_age lap",
	})
}

// A long heading over figures is of the thing that it names first, by the unit; one over other
// figures is not, nor one of a place.
func TestHeadNounsOverFigures(t *testing.T) {
	wantSlots(t, map[string]string{
		"Ref | Membrane | Substrate | Overlap of each course beyond joint line, left and right (mm)\n1 | butyl sheet | plywood | 75\n2 | butyl sheet | CMU | 80":      "mark material substrate lap",
		"Ref | Membrane | Substrate | Lap of roofer beyond our cut line, drawing office to confirm\n1 | butyl sheet | plywood | 75 mm\n2 | butyl sheet | CMU | 80 mm": "mark material substrate lap",
		"Ref | Membrane | Substrate | Lap of gutter joints beyond our cut line, count\n1 | butyl sheet | plywood | 7\n2 | butyl sheet | CMU | 8":                      "mark material substrate reference",
		"Ref | Membrane | Substrate | On frame mm\n1 | butyl sheet | plywood | 75\n2 | butyl sheet | CMU | 80":                                                        "mark material substrate ",
		"Ref | Membrane | Base | Temperatures (F) Substrate\n1 | butyl sheet | plywood | 58\n2 | butyl sheet | CMU | 61":                                              "mark material substrate reading_surface",
	})
}

// A figure of meters under a heading for vapor is that of the air that resists as much.
func TestAirLayersInMeters(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "\nRef | Where | Membrane | Substrate | Lap\n1 | north | Alder 30 | plywood | 3 in.\n2 | south | Larch V | CMU | 3 in."},
		page{name: "P", grid: "\nProduct | Kind | sd | Stay bare, days\nAlder 30 | polyethylene sheet | 20 m | 60\nLarch V | breather sheet | 0.05 m | 90"})
	for _, p := range s.Products {
		f, ok := p.Figures["vapor_ng"]
		if !ok || p.Tag == "Alder 30" && (*f.Max < 9 || *f.Max > 11) {
			t.Errorf("%s: %+v", p.Tag, p.Figures)
		}
	}
}

// Without a table that is surely a schedule, the one that names again what a list has once is
// taken for it, whatever its columns are called; data told twice is none.
func TestScheduleNamesAgainWhatIsListed(t *testing.T) {
	list := page{name: "Data", grid: `
Trade name | Stuff | Mils | Coldest °F
Alder Peel | SBS sheet | 40 | 40
Alder Brush | fluid membrane | 60 | 35
Alder Prime | water-borne primer | - | 40`}
	s := readPages(t, page{name: "Openings", grid: `
Opening | Lined with | Put upon | Perms
W-1 | Alder Peel | plywood | 0.05
W-2 | Alder Peel | CMU | 0.05
W-3 | Alder Brush | CMU | 12`}, list)
	if len(s.Lines) != 3 || s.Lines[0].Main() == nil || s.Lines[2].Sheet != "Openings" {
		t.Errorf("%d lines: %+v", len(s.Lines), s.Lines)
	}
	// near miss: beside a schedule, a table that tells of a product twice is data
	s = readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Lap
1 | Alder Peel | plywood | 3 in.
2 | Alder Brush | CMU | 3 in.`}, list, page{name: "Rolls", grid: `
Product | Color | Days in the sun | Perms
Alder Peel | gray | 60 | 0.05
Alder Peel | white | 90 | 0.05
Alder Brush | gray | 90 | 12`})
	if len(s.Lines) != 2 {
		t.Errorf("%d lines", len(s.Lines))
	}
}
