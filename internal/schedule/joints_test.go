package schedule_test

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

const register = `Mk | Location | From | To | Sealed with | Lap | Backing | Prime | When | Remarks
1 | lobby, base | DK-1 | TW-1, upright leg | SL-1 | 3 in. | gyp. sheathing | PR-1 | Phase 2 |
2 | lobby, coping | copper coping | DK-1 underlay | self | 4 in. | plywood | PR-1 | 5/4/2026; roof 5/20/2026 |
3 | court, pier | limestone | brick | SL-1 | - | closed-cell rod | - | Phase 2 |
4 | court, parapet | aluminum cleat | copper-treated nailer | none | - | butyl strip between | - | 5/6/2026 |

Tag | Type | Min apply F | UV days | Keep off - OK with
DK-1 | self-adhered SBS sheet | 40 | 60 | Keep off EPDM, coal tar. Stick to TW-1. Not under metal roofs.
DK-2 | self-adhered SBS sheet, winter grade | 20 | 60 | Else as DK-1
TW-1 | stainless through-wall flashing | - | - | -
SL-1 | neutral-cure silicone sealant | 20 | - | -
PR-1 | solvent primer | 20 | - | -
`

// A row of joints is about the side that laps, the sheet of the two, or else
// about the bead between them.
func TestJointsWithTwoSides(t *testing.T) {
	s := read(t, register)
	want := []string{"material DK-1, touches TW-1", "material DK-1, touches copper coping", "material SL-1, left limestone", "material aluminum cleat, touches copper-treated nailer"}
	for i, l := range s.Lines {
		texts := map[string]string{}
		for _, it := range l.Items {
			if texts[it.Slot] == "" {
				texts[it.Slot] = it.Text
			}
		}
		for _, pair := range strings.Split(want[i], ", ") {
			slot, text, _ := strings.Cut(pair, " ")
			if texts[slot] != text {
				t.Errorf("row %d: %s %q, want %q", l.Row, slot, texts[slot], text)
			}
		}
	}
	if texts := s.Lines[3].Items; !hasItem(texts, "separator", "butyl strip") {
		t.Errorf("the strip between is no separator: %+v", texts)
	}
	if d := s.Lines[1].Dates["install"]; d.From != "2026-05-04" {
		t.Errorf("installed %+v", d)
	}
}

func hasItem(items []schedule.Item, slot, text string) bool {
	for _, it := range items {
		if it.Slot == slot && it.Text == text {
			return true
		}
	}
	return false
}

func TestStancesOfOneCell(t *testing.T) {
	s := read(t, register)
	for _, tag := range []string{"DK-1", "DK-2"} {
		got := targets(product(t, s, tag).KeepOff)
		if !strings.Contains(got, "epdm") || !strings.Contains(got, "coal-tar") || strings.Contains(got, "TW-1") || strings.Contains(got, "metal") {
			t.Errorf("%s keeps off %q", tag, got)
		}
	}
}

// What a note says of a case is not said of the job.
func TestNotesOfACase(t *testing.T) {
	for note, want := range map[string]bool{
		"All winter work is in a heated tent.":                      true,
		"Below 40 F: winter grade, or tent and heat.":               false,
		"The air is read in the shade, or at the wall when tented.": false,
	} {
		s := read(t, oneWall+note+"\n")
		got := false
		for _, said := range s.Project.Signals {
			got = got || said.ID == "heated"
		}
		if got != want {
			t.Errorf("%q: heated %v", note, got)
		}
	}
}

// "Use from" and "use to" are no sides of a joint.
func TestRangeOfUseInTwoColumns(t *testing.T) {
	s := read(t, oneWall+`
Tag | What it is | VOC (g/L) | Use from (deg F) | Use to (deg F) | Remarks
Q-1 | solvent primer | 240 | 10 | 100 | flash off first
Q-2 | solvent-release butyl sealant | 245 | 20 | 120 | metal laps only
`)
	if got := product(t, s, "Q-2").Family; got != "butyl-sealant" {
		t.Errorf("Q-2 is %q", got)
	}
}

// A column of temperatures in a schedule holds readings, whatever its heading has
// beside the unit, and no air permeance.
func TestTemperaturesOfTheDay(t *testing.T) {
	s := read(t, `Item | Membrane | Substrate | Primer | Installed | AIR_F | Covered
1 | self-adhered SBS sheet | plywood | solvent primer | 2026-03-03 | 41 | 2026-03-20
2 | self-adhered SBS sheet | CMU | solvent primer | 2026-03-04 | 38 | 2026-03-20
3 | self-adhered SBS sheet | CMU | solvent primer | 2026-03-05 | 44 | 2026-03-20
`)
	if f, ok := s.Lines[1].Figures["reading_air_c"]; !ok || !near(f.Min, 3.3333) {
		t.Errorf("figures %+v", s.Lines[1].Figures)
	}
}

// TestBeadAtTheLapsOfAMetal: a bead that is kept to the laps of a metal named by its tag
// meets metal alone.
func TestBeadAtTheLapsOfAMetal(t *testing.T) {
	for words, want := range map[string]bool{
		"SL-5 at MT-2 joints only": true,
		"SL-5 at MT-2 joints":      false,
		"SL-5 at SH-1 laps only":   false,
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | SH-1 | concrete | none | ` + words}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open
SH-1 | SBS sheet on polyethylene film | 5 | 60
SL-5 | neutral silicone sealant | 0 | 90
MT-2 | stainless steel drip edge | - | -`})
		got := slices.ContainsFunc(line(t, s, "D1").Signals, func(s schedule.Said) bool { return s.ID == "metal_to_metal" })
		for _, it := range line(t, s, "D1").Items {
			got = got || slices.Contains(it.Signals, "metal_to_metal")
		}
		if got != want {
			t.Errorf("%q: %v, want %v", words, got, want)
		}
	}
}

// In a schedule of sheets the row of a joint has no sheet, and is about its bead.
func TestBeadWithoutASheet(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Sealant | Laps
1 | butyl sheet | plywood | none | neutral silicone | 3 in
2 | none at joint | granite both sides | none | acetoxy silicone | none
3 | none | zinc head | none | neutral silicone | 4 in soldered
4 | none at joint | brick both sides | none | none, gasket only | none`})
	for mark, want := range map[string]string{"1": "butyl-flashing-tape", "2": "acetoxy-silicone-sealant", "3": "", "4": ""} {
		got := ""
		if it := line(t, s, mark).Main(); it != nil {
			got = it.Family
		}
		if got != want {
			t.Errorf("row %s is about %q, want %q", mark, got, want)
		}
	}
}

// Where one column holds laps and sizes, the row of a bead has its joint there.
func TestSizeOfABead(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Backing | Primer | Sealer | Bears against | Lap / turn / size
1 | butyl sheet | plywood | none | neutral silicone at edges | aluminum frame | 3 in
2 | - | granite | none | acetoxy silicone over rod | granite return | 3/4 w x 3/8 d
3 | - | brick | none | neutral silicone | steel angle | 20 x 10 mm`})
	for mark, want := range map[string][2]string{"1": {"butyl-flashing-tape", ""}, "2": {"acetoxy-silicone-sealant", "3/4 w x 3/8 d"}, "3": {"neutral-silicone-sealant", "20 x 10 mm"}} {
		l := line(t, s, mark)
		if it := l.Main(); it == nil || it.Family != want[0] || l.Texts["joint"] != want[1] {
			t.Errorf("row %s is about %v with the joint %q, want %q", mark, it, l.Texts["joint"], want)
		}
	}
	if got := slots(s.Reading.Tables[0]); !strings.Contains(got, "material substrate primer sealant touches lap") {
		t.Errorf("slots %q: what a line goes against is beside it where its bed is told", got)
	}
}

// A bead that a remark tells of is that of the column of beads; where the row has two, or the
// remark tells of what it is, it is its own.
func TestBeadOfTheRow(t *testing.T) {
	for _, c := range []struct{ bead, remark, want string }{
		{"QB-1", "bead on the lead", "QB-1"},
		{"QB-1", "caulk tooled on steel", "QB-1"},
		{"QB-1 or QB-2", "bead on the lead", ""},
		{"QB-1", "butyl bead on the lead", ""},
		{"-", "bead on the lead", ""},
	} {
		s := readPages(t, page{name: "S", grid: "\nMark | Membrane | Substrate | Sealant | Date | Remarks\nR1 | ZA-1 | plywood | " + c.bead + " | 4/8/27 | " + c.remark},
			page{name: "P", grid: "\nTag | Type\nZA-1 | acrylic sheet\nQB-1 | one-part polyurethane\nQB-2 | neutral silicone sealant"})
		got := "?"
		for _, it := range s.Lines[0].Items {
			if it.Slot == "remark" && it.Class == "sealant" {
				got = it.Product
			}
		}
		if got != c.want {
			t.Errorf("%s, %s: %q, want %q", c.bead, c.remark, got, c.want)
		}
	}
}

// A heading that may tell the bed or the neighbors tells these, where another is the bed.
func TestNeighborsBesideABed(t *testing.T) {
	for heading, want := range map[string]string{"Bears on / next to": "touches", "Bears on": "substrate"} {
		s := read(t, "Mark | Membrane | Laid on | Primer | "+heading+"\n1 | butyl sheet | plywood | none | mineral wool 75 mm\n2 | butyl sheet | CMU | none | brick\n")
		if got := s.Reading.Tables[0].Columns[4].Slot; got != want {
			t.Errorf("%s: %s, want %s", heading, got, want)
		}
	}
}

// What sits between two sides may be nothing in most rows, which is no day; what one of them
// is bedded in there parts nothing. A column of days is no separator.
func TestSitsBetween(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
No. | Material | Meets | Sits between | Bead
1 | EPDM gasket | SBS sheet | nothing | -
2 | EPDM gasket | SBS sheet | nothing | -
3 | EPDM gasket | SBS sheet | nothing | -
4 | EPDM gasket | SBS sheet | stainless plate | -
5 | silicone strip | aluminum frame | bedded in polyurethane sealant | -`})
	got := map[string]string{}
	for i := range s.Lines {
		for _, it := range s.Lines[i].Items {
			if it.Slot == "separator" || it.Slot == "sealant" {
				got[s.Lines[i].Mark] += it.Slot + " " + it.Family
			}
		}
	}
	want := map[string]string{"4": "separator stainless-sheet", "5": "sealant polyurethane-sealant"}
	if len(got) != len(want) || got["4"] != want["4"] || got["5"] != want["5"] {
		t.Errorf("%v, want %v", got, want)
	}
	s = readPages(t, page{name: "S", grid: `
No. | Material | Substrate | Between | Covered
1 | SBS sheet | CMU | 5/3/27 | 6/3/27
2 | SBS sheet | CMU | 5/4/27 | 6/3/27
3 | SBS sheet | CMU | 5/5/27 | 6/3/27`})
	for i := range s.Lines {
		if s.Lines[i].Texts["separator"] != "" {
			t.Errorf("a day is a separator in row %d", s.Lines[i].Row)
		}
	}
}
