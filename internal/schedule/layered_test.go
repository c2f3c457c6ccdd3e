package schedule_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
)

// layered is a schedule by assembly, with a bar over each, names of layers instead
// of numbers, and product data under headings of their own.
var layered = []page{
	{
		name: "Walls",
		grid: `Ref | Layer | Code | Fixed to | Primer | Adjoins | Overlap | Date fixed | Covered by | Date covered
EW-1 BRICK ON BLOCK, GROUND FLOOR TO ROOF, ALL INSULATION OUTSIDE OF THE SHEET, STUDS LEFT EMPTY, HEATED OFFICES | | | | | | | | |
1a | Facing brick, 102 mm | - | Ties | - | Ties only | - | 2026-09-01 | - | -
1b | Sheet on the block | SH-2 | Concrete, placed 2 Jun 2026 | PM-1 | QS-4 | 75 mm | 2026-06-20 | Wool | 2026-07-20
- base - | | | | | | | | |
1c | Sheet at the plinth | SH-2 | Concrete, placed 2 Jun 2026 | PM-1 | QS-9 | 75 mm | 2026-06-08 | Wool | "`,
		merges: []string{"A2:J2", "A5:J5"},
	},
	{
		name: "Data",
		grid: `Code | What it is | Lowest temperature | Days open | Goes on | Keep off
SHEETS | | | | |
SH-2 | SBS sheet on polyethylene film | 5 °C | 60 | Conc. >= 14 days, dry; block | EPDM
PRIMERS | | | | |
PM-1 | SBS in solvent | -4 °C | - | Concrete; block | -
SEALANTS | | | | |
QS-4 | hybrid polyether, no solvent | 0 °C | - | Metal; SH-2 | -
QS-5 | neutral silicone | -10 °C | - | Metal; glass | -`,
	},
	{name: "Issue", grid: "What changed\n30% DESIGN. EW-1 to EW-5 drawn"},
}

func TestAssemblyBars(t *testing.T) {
	s := readPages(t, layered...)
	if len(s.Lines) != 3 {
		t.Fatalf("%d lines: the bars head rows and are none", len(s.Lines))
	}
	brick, sheet := line(t, s, "1a"), line(t, s, "1b")
	if brick.Order != "1" || sheet.Order != "2" {
		t.Errorf("layers %q and %q, want 1 and 2", brick.Order, sheet.Order)
	}
	if brick.Main() == nil || brick.Main().Family != "clay-brick" {
		t.Errorf("a layer without a code is what its name says: %+v", brick.Main())
	}
	for _, said := range sheet.Signals {
		if said.ID == "heated" {
			t.Errorf("heated offices are no shelter of the work: %+v", said)
		}
	}
	if got := sheet.Group; got == "" || got[:4] != "EW-1" {
		t.Errorf("group %q: a mark without a sign has no meaning of its own", got)
	}
}

func TestDittoDate(t *testing.T) {
	s := readPages(t, layered...)
	if got := line(t, s, "1c").Dates["cover"].From; got != "2026-07-20" {
		t.Errorf("covered %q, want the date above", got)
	}
}

func TestCoveredByIsInFront(t *testing.T) {
	s := readPages(t, layered...)
	if got := line(t, s, "1b").Texts["front"]; got != "Wool" {
		t.Errorf("in front %q", got)
	}
}

func TestHeadsOfProducts(t *testing.T) {
	s := readPages(t, layered...)
	if p := product(t, s, "PM-1"); p.Role != "primer" || p.Class != "primer" {
		t.Errorf("PM-1 stands under primers, and is %s %s", p.Role, p.Class)
	}
	if p := product(t, s, "QS-4"); p.Role != "sealant" {
		t.Errorf("QS-4 is %s", p.Role)
	}
}

func TestAgeAfterAbbreviation(t *testing.T) {
	s := readPages(t, layered...)
	age, ok := product(t, s, "SH-2").Figures["concrete_age_days"]
	if !ok || age.Min == nil || *age.Min != 14 {
		t.Errorf("age %+v, want 14 days", age)
	}
}

// A tag that no data has is what all of its series are.
func TestRoleOfSeries(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Ref | Code | Fixed to | Primer | Overlap
1 | QS-7 | Concrete | none | -`}, layered[1])
	if got := line(t, s, "1").Role; got != "sealant" {
		t.Errorf("role %q, want sealant", got)
	}
}

// The primers stand left of the substrates that they are for, and three metals share
// their noun.
func TestPrimerLeftOfSubstrates(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Code | Substrate | Primer | Lap\nW-1 | SH-2 | block | none | 100 mm"}, page{name: "P", grid: `Tag | Type | Application temp. | Days open | Primer | Goes on
SH-2 | SBS asphalt sheet | 5 °C | 60 | PM-1 everywhere | Block, galv./painted/stainless steel
PM-1 | solvent primer | 0 °C | - | - | -`})
	p := product(t, s, "SH-2")
	var on []string
	for _, a := range p.Accepts {
		on = append(on, a.Keys[0])
		if a.Primer != "listed" || len(a.Primers) != 1 {
			t.Errorf("%s: %s %v, want PM-1", a.Text, a.Primer, a.Primers)
		}
	}
	if want := "concrete-masonry galvanized-sheet structural-steel stainless-sheet"; strings.Join(on, " ") != want {
		t.Errorf("goes on %q, want %q", on, want)
	}
}

// What a row refers to is kept, for papers that answer to it.
func TestRefs(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Line | Dwg | Code | Fixed to | Primer | Overlap
1 | A-501 / B-7 | SH-2 | Concrete | PM-1 | 75 mm`}, layered[1])
	if got := line(t, s, "1").Refs; len(got) != 1 || got[0] != "A-501 / B-7" {
		t.Errorf("refers to %q", got)
	}
}

// A list of what goes with a product ends where it says what does not.
func TestSuitsThenKeepsOff(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Code | Substrate | Primer | Lap\nW-1 | R-1 | block | none | 100 mm"}, page{name: "P", grid: `Tag | Type | Thickness | Application temp. | Days open | Seal with / keep off
R-1 | rubberized asphalt membrane | 1 mm | 5 °C | 60 | S-8, S-9. Keep off EPDM, creosote & coal tar
S-8 | neutral silicone sealant | - | 5 °C | - | lead
S-9 | rubberized asphalt mastic | - | 5 °C | - | coal tar`})
	p := product(t, s, "R-1")
	if got := targets(p.Suits); got != "S-8 S-9" {
		t.Errorf("goes with %q", got)
	}
	if got := targets(p.KeepOff); got != "epdm creosote-timber coal-tar-pitch" {
		t.Errorf("keeps off %q", got)
	}
}

// Numbers of layers begin anew in each assembly, and drips with tags of their own
// are no sheets.
func TestLayerNumbersBeginAnew(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Type | No. | Layer | Prod. | Perm | Remarks
EW-1 inner court
EW-1 | 1 | Gypsum board | NA | 20 |
EW-1 | 2 | Sheet | SH-2 | 0.05 |
EW-2 outer wall
EW-2 | 1 | Block | NA | 2 |
EW-2 | 2 | Sheet | SH-2 | 0.05 | all outside
EW-2 | 3 | Brick | NA | 2 |`}, layered[1])
	var got []string
	for _, l := range s.Lines {
		got = append(got, l.Group+"/"+l.Order)
	}
	if want := "EW-1/1 EW-1/2 EW-2/1 EW-2/2 EW-2/3"; strings.Join(got, " ") != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestTagsInTheMaterialColumn(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mk | Where | Item | Prod. | Over | Prime | Lap | Drip | Date
F-1 | base | TWF | SH-2 | block | PM-1 | 100 mm | QS-4 | 2026-05-04
F-2 | head | TWF | SH-2 | block | PM-1 | 100 mm | QS-4 | 2026-05-05
F-3 | sill | TWF | SH-2 | block | PM-1 | 100 mm | QS-4 | 2026-05-06`}, layered[1])
	if got := line(t, s, "F-1").Main().Tag; got != "SH-2" {
		t.Errorf("the row is %q, want the sheet", got)
	}
}

// Thermometers of the log and figures of the data are of one country.
func TestDegreesOfTheData(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mk | Code | Over | Prime | Lap | Date | AM temp
F-1 | SH-2 | block | PM-1 | 100 mm | 2026-01-12 | 3`}, layered[1])
	if f := line(t, s, "F-1").Figures["reading_air_c"]; f.Min == nil || *f.Min != 3 {
		t.Errorf("reading %+v, want 3 °C", f)
	}
}

// Of the limits of one sentence each figure is what stands by it, and a word of the
// trade that opens a note names no product.
func TestLimitsSideBySide(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mk | Item | Code | Over | Prime | Lap\nF-1 | TWF | SH-2 | block | PM-1 | 100 mm"}, layered[1],
		page{name: "Notes", grid: "1 | TWF: 100 mm laps in mastic. End dams 50 mm at each stop. Bed on the drip."})
	got := map[string]float64{}
	for _, l := range s.Project.Limits {
		if l.Min != nil {
			got[l.Kind+" "+l.Scope] = *l.Min
		}
	}
	if got["lap_mm through-wall"] != 100 || len(s.Products) != 4 {
		t.Errorf("limits %v, %d products", got, len(s.Products))
	}
	s = readPages(t, page{name: "S", grid: "Mk | Code | Over | Prime | Lap\nF-1 | SH-2 | block | PM-1 | 100 mm"}, layered[1],
		page{name: "Notes", grid: "1 | SH-2: 90 mm laps in QS-4, 40 mm end dams at every stop"})
	got = map[string]float64{}
	for _, l := range s.Project.Limits {
		got[l.Kind] = *l.Min
	}
	if got["lap_mm"] != 90 || got["end_dam_mm"] != 40 {
		t.Errorf("limits %v", got)
	}
}

// Products of two words are meant by both, and those of one maker by the last alone.
func TestNamesOfTwoWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | Lap\nW-1 | Alder 40 | block | Larch W | 100 mm"}, page{name: "P", grid: `Product | Type | Application temp. | Days open | Primer | Goes on | Keep off
Alder 40 | SBS asphalt sheet | 5 °C | 60 | Larch W or C | block; plywood | EPDM; creosote
Alder 40 LT | same, winter grade | -5 °C | 60 | as Alder 40 | as Alder 40 | as Alder 40
Teal TB | SBS torch base | 5 °C | 30 | Larch C | concrete | coal tar
Teal TC | SBS torch cap | 5 °C | - | - | Teal TB | as TB
Larch W | water-borne primer | 5 °C | - | - | - | -
Larch C | solvent primer | -10 °C | - | - | - | -`})
	for _, tag := range []string{"Alder 40", "Alder 40 LT"} {
		p := product(t, s, tag)
		if got := targets(p.KeepOff); got != "epdm creosote-timber" {
			t.Errorf("%s keeps off %q", tag, got)
		}
		if got := p.Accepts[0].Primers; len(p.Accepts) != 2 || strings.Join(got, "+") != "Larch C+Larch W" {
			t.Errorf("%s takes %v on %d beds", tag, got, len(p.Accepts))
		}
	}
	if got := targets(product(t, s, "Teal TC").KeepOff); got != "coal-tar-pitch" {
		t.Errorf("the cap keeps off %q", got)
	}
}

// What was done counts before what was planned, and a column of days that agrees
// with the dates of most rows counts them and allows nothing.
func TestActualDaysAndCounts(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mark | Code | Fixed to | Primer | Overlap | Laid, planned | Laid, actual | Covered, planned | Covered, actual | Days open
W-1 | SH-2 | block | PM-1 | 75 mm | @2026-05-04 | @2026-05-06 | @2026-05-20 | @2026-05-25 | 19
W-2 | SH-2 | block | PM-1 | 75 mm | @2026-05-05 | @2026-05-07 | @2026-05-21 | @2026-05-28 | 21
W-3 | SH-2 | block | PM-1 | 75 mm | @2026-05-06 | @2026-05-08 | @2026-05-22 | @2026-05-29 | 21
W-4 | SH-2 | block | PM-1 | 75 mm | @2026-05-07 | @2026-05-11 | @2026-05-25 | @2026-06-01 | 21
W-5 | SH-2 | block | PM-1 | 75 mm | @2026-05-08 |  | @2026-05-26 |  | `}, layered[1])
	for mark, want := range map[string]string{"W-1": "2026-05-06 2026-05-25", "W-5": "2026-05-08 2026-05-26"} {
		l := line(t, s, mark)
		if got := l.Dates["install"].From + " " + l.Dates["cover"].From; got != want {
			t.Errorf("%s: %s, want %s", mark, got, want)
		}
	}
	if f, allowed := line(t, s, "W-2").Figures["exposure_days"]; allowed {
		t.Errorf("a count of days became a limit: %+v", f)
	}
	s = readPages(t, page{name: "S", grid: `Mark | Code | Fixed to | Primer | Overlap | Laid | Covered | Max. days open
W-1 | SH-2 | block | PM-1 | 75 mm | @2026-05-06 | @2026-05-25 | 60
W-2 | SH-2 | block | PM-1 | 75 mm | @2026-05-07 | @2026-05-28 | 21
W-3 | SH-2 | block | PM-1 | 75 mm | @2026-05-08 | @2026-05-29 | 60
W-4 | SH-2 | block | PM-1 | 75 mm | @2026-05-11 | @2026-06-01 | 60`}, layered[1])
	if _, allowed := line(t, s, "W-2").Figures["exposure_days"]; !allowed {
		t.Error("a limit that one row meets exactly is one all the same")
	}
}

// Rows under a heading of details are no layers of the assembly above them.
func TestDetailsAreNoLayers(t *testing.T) {
	s := read(t, `Ref | Layer | Material | Substrate | Primer | Lap
B1 CAVITY WALL | | | | |
B1-1 | Sheathing | cement board | steel studs | none | none
B1-2 | Air barrier | butyl sheet | cement board | none | 3 in.
Openings, B1 | | | | |
B1-3 | Pipe | EPDM boot | butyl sheet | none | 2 in.
B1-4 | Vent | butyl sheet | steel sleeve | none | 2 in.`)
	for mark, want := range map[string]string{"B1-2": "2", "B1-3": "", "B1-4": ""} {
		if got := line(t, s, mark).Order; got != want {
			t.Errorf("%s: layer %q, want %q", mark, got, want)
		}
	}
}

// The age stands in brackets right after the concrete that it is for, and after no other bed.
func TestAgeInBrackets(t *testing.T) {
	s := readPages(t, layered[0], page{name: "P", grid: `
Code | Type | Apply at °C | Goes on
SH-2 | SBS sheet | 5 to 40 | Plywood, CMU, concrete (10 d min., dry), metal
SH-3 | SBS sheet | 5 to 40 | Concrete, plywood (10 days), metal`})
	if age := product(t, s, "SH-2").Figures["concrete_age_days"]; age.Min == nil || *age.Min != 10 {
		t.Errorf("age %+v, want 10 days", age)
	}
	if age, ok := product(t, s, "SH-3").Figures["concrete_age_days"]; ok {
		t.Errorf("age %+v of concrete from that of plywood", age)
	}
}

// A title over a heading tells what the rows are, and the name of a figure is no product.
func TestTitleOverProducts(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Code | Goes on | Primer | Lap | Remarks
1 | QS-4 | Concrete | PM-1 | - | VOC 90
2 | QS-5 | Steel | PM-2 | - | -`}, page{name: "P", grid: `
Sealants | | |
Code | Type | Apply at °C | VOC, g/L
QS-4 | Solvent-borne terpolymer | 5 to 40 | 90
QS-5 | Hybrid, one part | 5 to 40 | 20

Primers | | |
Code | Type | Apply at °C | VOC, g/L
PM-1 | Quick-dry resin | 5 to 40 | 90
PM-2 | Slow-dry resin | 5 to 40 | 80

VOC: solvent primers 250 g/L. Apply above 5 C.`})
	for tag, want := range map[string]string{"QS-4": "sealant", "QS-5": "sealant", "PM-1": "primer", "PM-2": "primer"} {
		if p := product(t, s, tag); p.Role != want {
			t.Errorf("%s is %s %s, want %s", tag, p.Role, p.Class, want)
		}
	}
	for _, p := range s.Products {
		if p.Tag == "VOC" {
			t.Error("VOC is a product")
		}
	}
}

// A column of build-ups may tell one layer a row, while the wall beside it stays the same.
func TestLayersRowByRow(t *testing.T) {
	for _, head := range []string{"Wall type | No. | Inside to outside", "Type | # | Build-up", "Mark | No. | Layers inside to outside"} {
		s := read(t, head+` | Thickness
F2 | 1 | gypsum board | 1/2 in
F2 | 2 | glass fiber batts | 3-1/2 in
F2 | 3 | plywood | 1/2 in
F2 | 4 | SBS sheet | 40 mil
`)
		var got []string
		for i := range s.Lines {
			l := &s.Lines[i]
			got = append(got, l.Group+" "+l.Order+" "+l.Main().Family)
		}
		want := "F2 1 gypsum-board, F2 2 glass-fiber-insulation, F2 3 osb-plywood-sheathing, F2 4 rubberized-asphalt-membrane"
		if strings.Join(got, ", ") != want {
			t.Errorf("%s\ngot  %s\nwant %s", head, strings.Join(got, ", "), want)
		}
	}
}

// Build-ups of walls that each stand in one row are no such list.
func TestBuildUpsOfOneRowEach(t *testing.T) {
	s := read(t, `Wall type | Where | Build-up | Thickness
F2 | north | gypsum board / batts / plywood / SBS sheet | 200 mm
F2 | south | gypsum board / plywood / SBS sheet / XPS | 220 mm
F2 | east | concrete / SBS sheet / XPS | 300 mm
`)
	if l := &s.Lines[0]; l.Order != "" || l.Texts["layers"] == "" {
		t.Errorf("order %q, layers %q", l.Order, l.Texts["layers"])
	}
}

// What product data allows only after a trial, or with a gap, stays a question.
func TestSuitsOnAProviso(t *testing.T) {
	for text, want := range map[string]string{
		"marble: stain test first; glass":                      "architectural-glass",
		"brick after a trial on site; aluminum":                "aluminum-sheet",
		"cedar with a vented gap; plywood":                     "osb-plywood-sheathing",
		"tested with glass and aluminum":                       "aluminum-sheet architectural-glass",
		"glass, aluminum; letter required before use on brick": "aluminum-sheet architectural-glass",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Code | Substrate | Primer | Lap\nW-1 | R-1 | block | none | 100 mm"}, page{name: "P", grid: "Tag | Type | Thickness | Application temp. | Days open | Use with\nR-1 | neutral silicone sealant | 1 mm | 5 °C | 60 | " + text})
		got := strings.Fields(targets(product(t, s, "R-1").Suits))
		slices.Sort(got)
		if strings.Join(got, " ") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// blocks is a schedule by assembly: each wall a line over its layers, the layers as
// rows, and what products are told in sentences beside them.
const blocks = `
Layers are listed outside to inside
No. | Layer | Thk. | Set on / with | Placed | Closed in | Data and remarks
%s | | | | | |
1.1 | Clay brick | 90 mm | Stainless ties | @2027-09-06 | | Air space behind.
1.2 | Fell Sheet 30, air barrier | 1 mm | On concrete block, primer FX-1 | @2027-06-07 | @2027-09-06 | Fell Sheet 30 is rubberized asphalt on a polyethylene film, 1.0 mm, 3 ng. Lay at 5 °C and rising. Cover within 40 days. Joints pointed first. FX-1 is a solvent-borne rubber primer for block, down to -5 °C.
1.3 | Concrete block | 190 mm | Joints struck flush | @2027-05-03 | |
 | | | | | |
%s | | | | | |
2.1 | Aluminum panel on steel girts | 3 mm | Screwed | @2027-10-04 | |
2.2 | Fell Sheet 30 | 1 mm | On plywood, no primer | @2027-09-06 | @2027-10-04 | Fell Sheet 30 is rubberized asphalt on a polyethylene film, 1.0 mm, 3 ng.
2.3 | Sill pans: soft PVC sheet | 1 mm | Bedded on the Fell Sheet | @2027-09-13 | @2027-10-04 | No separator.
2.4 | Plywood sheathing | 13 mm | Studs | @2027-08-30 | |`

func TestBlocksOfLayers(t *testing.T) {
	for _, heads := range [][2]string{
		{"EW-1: Brick on block", "EW-2: Panel on studs"}, {"Assembly 1 – brick on block", "Assembly 2 – panel on studs"},
		{"W1 | Brick on block", "W2 | Panel on studs"},
	} {
		s := readPages(t, page{name: "Walls", grid: fmt.Sprintf(blocks, heads[0], heads[1])})
		sheet := line(t, s, "1.2")
		if m := sheet.Main(); m == nil || m.Product != "Fell Sheet 30" || sheet.Order != "2" {
			t.Errorf("%s: the layer is %+v, number %q", heads[0], m, sheet.Order)
		}
		if got, want := sheet.Group, strings.ReplaceAll(heads[0], " | ", " "); got != want {
			t.Errorf("group %q, want %q", got, want)
		}
		if got := items(sheet, "primer"); got != "FX-1" {
			t.Errorf("primers %q, want that of the cell of what it is set on", got)
		}
		if got := items(line(t, s, "2.2"), "primer"); got != "no:primer-unspecified" {
			t.Errorf("primers %q, want none", got)
		}
		if got := items(sheet, "substrate"); got != "concrete-masonry" {
			t.Errorf("beds %q", got)
		}
		if got := sheet.Texts["remark"]; got != "Joints pointed first" {
			t.Errorf("remark %q: what describes a product is not said of the row", got)
		}
		pan := line(t, s, "2.3")
		if m := pan.Main(); m == nil || !slices.Contains(m.Traits, "plasticized") {
			t.Errorf("a sill pan of PVC sheet is %+v", m)
		}
		if got := items(pan, "substrate"); got != "Fell Sheet" {
			t.Errorf("beds %q, want the sheet by its name without the number", got)
		}
	}
}

func TestProductsToldInRows(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: fmt.Sprintf(blocks, "W1 Brick on block", "W2 Panel on studs")})
	if len(s.Products) != 2 {
		t.Fatalf("products %+v, want two", s.Products)
	}
	p := product(t, s, "Fell Sheet 30")
	if p.Family != "rubberized-asphalt-membrane" || !near(p.Figures["apply_min_c"].Min, 5) || !near(p.Figures["exposure_days"].Max, 40) || !near(p.Figures["vapor_ng"].Min, 3) {
		t.Errorf("the sheet is %s with %+v", p.Family, p.Figures)
	}
	if p := product(t, s, "FX-1"); p.Role != "primer" || !slices.Contains(p.Traits, "solvent-borne") {
		t.Errorf("FX-1 is %s of %v", p.Role, p.Traits)
	}
}

// A name that no cell uses, the code of a wall, a word of the trade and a product that has
// data of its own are not described by the remark of a row.
func TestRemarksThatDescribeNoProduct(t *testing.T) {
	for _, remark := range []string{
		"Heron 20 is a butyl sheet, 20 mils. Cover within 10 days.", "EW1 is brick on butyl sheet, 40 mils", "CMU is damp concrete block, 5 C and rising",
		"RZ-1 is butyl, 20 mils. Cover within 10 days.", "Strip is butyl, 20 mils, cover within 10 days",
	} {
		s := readPages(t, page{name: "Walls", grid: `
Mark|Wall|Material|Substrate|Primer|Installed|Covered|Remarks
A-1|EW1|RZ-1|CMU|none|@2027-06-01|@2027-06-20|` + remark + `
A-2|EW1|Strip over RZ-1|CMU|none|@2027-06-02|@2027-06-20|strip is rolled`},
			page{name: "Data", grid: "Tag|Type|Open, days|Lay from, °C\nRZ-1|rubberized asphalt sheet|30|5\nRZ-2|butyl sheet|30|5"})
		if len(s.Products) != 2 || !near(product(t, s, "RZ-1").Figures["exposure_days"].Max, 30) {
			t.Errorf("%s: products %+v", remark, s.Products)
		}
		if got := line(t, s, "A-1").Texts["remark"]; got != remark {
			t.Errorf("remark %q, want %q", got, remark)
		}
	}
}

// A grade that a remark tells of a series is made of what its series is; of several of one
// name only what they are is known.
func TestGradeToldInRows(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Ref|Layer|Set on|Placed|Covered|Comments
a|Moor Tape 25|plywood|@2027-06-01|@2027-06-20|Moor Tape 25 is butyl on a polyethylene film, butyl flashing tape, 25 mils. 25 F and up.
b|Moor Tape W, strip|plywood|@2027-12-01|@2027-12-20|Moor Tape W is the winter grade, 0 F to 60 F.
c|Soft PVC sheet|lapped on the Moor Tape|@2027-12-03|@2027-12-20|
d|Clay brick|ties|@2027-12-20||`})
	winter := product(t, s, "Moor Tape W")
	if winter.Family != product(t, s, "Moor Tape 25").Family || winter.Family == "" || !near(winter.Figures["apply_max_c"].Max, 15.56) {
		t.Errorf("the winter grade is %q with %+v", winter.Family, winter.Figures)
	}
	for _, it := range line(t, s, "c").Items {
		if it.Text == "Moor Tape" && (it.Product != "" || it.Family != winter.Family) {
			t.Errorf("the tape is %q of %q: which of the two is not told", it.Product, it.Family)
		}
	}
}

// A flashing that tells what it goes on lies at an edge of its wall, and not between
// the layers above and below.
func TestFlashingAmongLayers(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Ref|Layer|Set on|Placed|Covered
W1 Brick on block||||
a|Clay brick|ties|@2027-09-06|
b|SBS sheet|block, no primer|@2027-07-26|@2027-09-06
c|Butyl flashing strip|on block|@2027-07-26|@2027-09-06
d|Concrete block||@2027-05-03|`})
	if b, c := line(t, s, "b").Order, line(t, s, "c").Order; b != "2" || c != "3a" {
		t.Errorf("layers %q and %q, want 2 and 3a", b, c)
	}
}

// A title with the code of a wall over each of several headings is no heading, and names
// the wall of the rows.
func TestTitledBlocks(t *testing.T) {
	s := read(t, `
Walls of the annex,,,,,
,,,,,
Wall type A - brick,,,,,
Ref,Layer,Set on,Placed,Covered,Notes
a1,Clay brick,ties,2027-09-06,,
a2,SBS sheet,block,2027-07-26,2027-09-06,
,,,,,
Wall type B - panel,,,,,
Ref,Layer,Set on,Placed,Covered,Notes
b1,Aluminum panel,clips,2027-09-06,,
b2,SBS sheet,plywood,2027-07-26,2027-09-06,
`)
	if a, b := line(t, s, "a2"), line(t, s, "b2"); a.Group != "Wall type A - brick" || b.Group != "Wall type B - panel" || b.Order != "2" {
		t.Errorf("groups %q and %q, layer %q", a.Group, b.Group, b.Order)
	}
}

// Layers with numbers under the line of their wall are rows of work where they have days.
func TestNumberedLayersOfWork(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Ref|Layer|Thk|Fixed over|Installed|Enclosed|Remarks
W1|Brick on block
#1|Clay brick|90 mm|ties|@2027-09-06||
#2|SBS sheet|1 mm|block|@2027-07-26|@2027-09-06|
#3|Concrete block|190 mm||@2027-05-03||

W2|Panel on studs
#1|Aluminum panel|3 mm|girts|@2027-09-06||
#2|SBS sheet|1 mm|plywood|@2027-07-26|@2027-09-06|
#3|Plywood|13 mm||@2027-05-03||`})
	if len(s.Lines) != 6 || s.Lines[4].Group != "W2 Panel on studs" || s.Lines[4].Order != "2" || s.Lines[4].Main() == nil {
		t.Errorf("%d lines; %+v", len(s.Lines), s.Lines)
	}
}

// What a list of uses asks to part the product from is barred, and what stands between is not.
func TestSuitsParted(t *testing.T) {
	for uses, want := range map[string][2]string{
		"canopy; S-9 strip between it and R-1": {"S-9", "R-1"},
		"canopy; S-9 between R-1 and this":     {"S-9", "R-1"},
		"steel, R-1; S-9 between the laps":     {"carbon-steel R-1 S-9", ""},
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Code | Substrate | Primer | Lap\nW-1 | R-1 | block | none | 100 mm"}, page{name: "P", grid: `Tag | Type | Thickness | Application temp. | Days open | Use on / with
R-1 | rubberized asphalt membrane | 1 mm | 5 °C | 60 | block
R-2 | vinyl roof membrane | 1 mm | 5 °C | 60 | ` + uses + `
S-9 | stainless steel strip | - | 5 °C | - | -`})
		p := product(t, s, "R-2")
		if got := [2]string{targets(p.Suits), targets(p.KeepOff)}; got != want {
			t.Errorf("%s: %q", uses, got)
		}
	}
}

// Of two columns left of the numbers of layers the wall is the one that changes where they
// begin anew: a building has several walls. With one wall each it stays what it was.
func TestWallsOfBuildings(t *testing.T) {
	for south, want := range map[string]string{"North": "EX-2", "South": "South"} {
		s := readPages(t, page{name: "Walls", grid: `Type | Building | No. | Layer | Thickness
EX-1 | North | 1 | Brick | 90 mm
 | | 2 | Air space | 25 mm
 | | 3 | Concrete | 200 mm
EX-2 | ` + south + ` | 1 | Metal panel | 4 mm
 | | 2 | Mineral wool board | 75 mm
 | | 3 | CMU | 190 mm`})
		if len(s.Lines) != 6 {
			t.Fatalf("%d lines", len(s.Lines))
		}
		if l := &s.Lines[4]; l.Group != want || l.Order != "2" {
			t.Errorf("group %q, want %q, order %q", l.Group, want, l.Order)
		}
	}
}

// A row that tells one layer gives its thickness in its own words, and a column of resistances
// that of its insulation. A row of another list has none, and a column per thickness none at all.
func TestLayerInWords(t *testing.T) {
	of := func(v *float64) float64 {
		if v == nil {
			return 0
		}
		return math.Round(100**v) / 100
	}
	for _, c := range []struct {
		heading, row string
		mm, r        float64
	}{
		{"RSI", "Rigid stone wool 90 mm | 2.1", 90, 2.1},
		{"R-value", "Rigid stone wool 90 mm | 15", 90, 2.64},
		{"R value", "4 in. XPS | 20", 101.6, 3.52},
		{"R per inch", "4 in. XPS | 5", 101.6, 0},
		{"RSI", "Metal studs 92 mm with glass fibre batt 89 mm | 2.1", 92, 2.1},
		{"RSI", "Concrete block | 0.2", 0, 0},
	} {
		s := readPages(t, page{name: "Walls", grid: "Wall | Layer | Material | " + c.heading + `
EX-1 | 1 | Brick | 0.1
 | 2 | ` + c.row + `
 | 3 | Concrete block 190 mm | 0.2
EX-2 | 1 | Metal panel | 0.1
 | 2 | Concrete | 0.2`})
		l := &s.Lines[1]
		thick := of(l.Items[0].ThickMM)
		var r float64
		for i := range l.Items {
			r = max(r, of(l.Items[i].RM2KW))
		}
		if thick != c.mm || r != c.r {
			t.Errorf("%s, %s: %v mm, R %v", c.heading, c.row, thick, r)
		}
	}
	s := readPages(t, page{name: "Walls", grid: "Wall | Layer | Material | Thickness, mm | RSI\nA | 1 | Brick | 90 | 0.1\nA | 2 | Stone wool | 75 | 2\nB | 1 | Brick | 90 | 0.1\nB | 2 | Stone wool | 100 | 2.7"})
	if got := of(s.Lines[3].Items[0].RM2KW); got != 2.7 {
		t.Errorf("beside a column of thicknesses R %v, want 2.7", got)
	}
	s = readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | R\nW-1 | XPS 50 mm | block | none | 10\nW-2 | XPS 50 mm | block | none | 10"})
	if it := s.Lines[0].Items[0]; it.ThickMM != nil || it.RM2KW != nil {
		t.Errorf("a row that is no layer: %v, %v", it.ThickMM, it.RM2KW)
	}
}

// The last layer of a list of walls goes on counting, though it has only its number and its words
// as a note below has.
func TestLastLayerIsNoNote(t *testing.T) {
	for last, want := range map[string]int{
		" | 3 | Plasterboard 12.5 mm, two coats of paint":     5,
		" | 1 | All layers by the trades named in section 09": 4,
		"1 | All layers by the trades named in section 09":    4,
		"\n | 3 | Plasterboard 12.5 mm, two coats of paint":   4,
	} {
		s := readPages(t, page{name: "Walls", grid: `Wall | Layer | Material | RSI
EX-1 | 1 | Brick | 0.1
 | 2 | Concrete | 0.2
EX-2 | 1 | Metal panel 1 mm | 0.1
 | 2 | Mineral wool 75 mm | 2
` + last})
		if len(s.Lines) != want {
			t.Errorf("%q: %d lines, want %d", last, len(s.Lines), want)
		}
	}
}
