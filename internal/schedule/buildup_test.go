package schedule_test

import (
	"fmt"
	"strings"
	"testing"
)

// A row tells an assembly where headings name both its sides; the room side comes first,
// whichever end of a cell it stands at.
func TestBuildUpAcrossColumns(t *testing.T) {
	for _, tc := range []struct{ inner, outer, inside, want string }{
		{"Inner side", "Outer side", "fiberglass batts, poly, gypsum board", "gypsum-board polyethylene-sheet glass-fiber-insulation osb-plywood-sheathing rubberized-asphalt-membrane mineral-wool"},
		{"Room side", "Weather side", "poly, fiberglass batts", "polyethylene-sheet glass-fiber-insulation osb-plywood-sheathing rubberized-asphalt-membrane mineral-wool"},
		{"Room side", "Weather side", "fiberglass batts, poly", ""},
		{"Room side", "Weather side", "gypsum board, no poly", "gypsum-board osb-plywood-sheathing rubberized-asphalt-membrane mineral-wool"},
		{"Behind", "Covered by", "gypsum board, fiberglass batts", ""},
		{"Inboard", "Outboard", "", ""},
	} {
		s := read(t, fmt.Sprintf(`
Mark | Where | Membrane | Substrate | %s | %s | Installed
1 | north | SBS sheet | plywood | %s | mineral wool | 2 Mar 2026
2 | south | SBS sheet | plywood | %s | mineral wool | 3 Mar 2026`, tc.inner, tc.outer, tc.inside, tc.inside))
		var got []string
		for _, it := range line(t, s, "1").Layers {
			got = append(got, it.Family)
		}
		if strings.Join(got, " ") != tc.want {
			t.Errorf("%s %q: layers %q, want %q", tc.inner, tc.inside, got, tc.want)
		}
	}
}

// A sheet said to be on the bed is what the next one goes on.
func TestSheetOnTheBed(t *testing.T) {
	s := read(t, `
Mark | Where | Membrane | Substrate | Installed
1 | north | butyl tape | CMU with the SBS sheet across it | 2 Mar 2026
2 | south | butyl tape | CMU with steel angle | 3 Mar 2026`)
	if got := items(line(t, s, "1"), "under"); got != "concrete-masonry" {
		t.Errorf("under the sheet lies %q", got)
	}
	if got := items(line(t, s, "2"), "under"); got != "" {
		t.Errorf("an angle covers no block, and under it lies %q", got)
	}
}

// A day that there is not stays one, whatever else the row dates.
func TestImpossibleDayStays(t *testing.T) {
	s := read(t, `
Mark | Where | Membrane | Substrate | Installed | Covered | Remarks
1 | north | butyl sheet | plywood | 31 Jun 2026 | 9 Jul 2026 | Sashes installed 4 Jul 2026
2 | south | butyl sheet | plywood | 3 Jun 2026 | 9 Jul 2026 | none`)
	if got := line(t, s, "1").Dates["install"]; got.State != "impossible" || got.Text != "31 Jun 2026" {
		t.Errorf("installed %+v", got)
	}
}

// The layers of one cell may be parted by arrows of any kind, and no limit is one.
func TestLayersBetweenArrows(t *testing.T) {
	s := read(t, `
Wall | Membrane | Build-up, room to street | Remarks
V1 | butyl sheet | gypsum board > steel studs > butyl sheet > mineral wool > brick | -
V2 | butyl sheet | concrete block -> butyl sheet -> XPS, R > 10 -> brick | -
`)
	for mark, want := range map[string]string{
		"V1": "gypsum-board steel-stud-framing butyl-flashing-tape mineral-wool clay-brick",
		"V2": "concrete-masonry butyl-flashing-tape xps clay-brick",
	} {
		if got := items(line(t, s, mark), "layers"); got != want {
			t.Errorf("%s: %s, want %s", mark, got, want)
		}
	}
}

// A list of build-ups installs nothing: a column of it that tells the tight layer names no
// material of a row.
func TestTightLayerOfABuildUp(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mark | Wall | Code | Substrate | Primer | Install date
A | T-1 | RX-1 | plywood | none | @2026-05-04
B | T-2 | PF-2 | studs | none | @2026-05-05`}, page{name: "Walls", grid: `Wall | Layers outside to inside | Keeps vapor
T-1 | brick / RX-1 / plywood / studs | RX-1 layer
T-2 | siding / plywood / studs with batts / PF-2 | PF-2 layer`}, page{name: "P", grid: `Tag | Type | Thickness | Application temp. | Days open
RX-1 | rubberized asphalt membrane | 1 mm | 5 °C | 60
PF-2 | humidity-adaptive film | 0.2 mm | - | 30`})
	for _, l := range s.Lines {
		if l.Sheet == "Walls" && (l.Cells["material"] != "" || l.Cells["tag"] != "") {
			t.Errorf("row %d: %v", l.Row, l.Cells)
		}
	}
	if p := product(t, s, "PF-2"); p.Family != "vapor-retarder-smart" {
		t.Errorf("PF-2 is %q", p.Family)
	}
}

// A cell of what covers the sheet may go on with the inside of the wall, and come back.
func TestInsideAfterOutside(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Covered with
D1 | butyl sheet | CMU | none | XPS, then clay brick. Room side: mineral wool batts, gypsum board; outside: copper trim
D2 | butyl sheet | CMU | none | Interior: gypsum board
D3 | butyl sheet | CMU | none | Clay brick; inside corner: steel angle`)
	for mark, want := range map[string][2]string{
		"D1": {"xps clay-brick copper-sheet", "mineral-wool gypsum-board"},
		"D2": {"", "gypsum-board"},
		"D3": {"clay-brick structural-steel", ""},
	} {
		l := line(t, s, mark)
		if got := [2]string{items(l, "front"), items(l, "behind")}; got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}
