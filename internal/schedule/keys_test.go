package schedule_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// codeBook is a workbook whose products are called by codes A to F: a schedule in which
// they stand in one of several ways, data of the products, and a key to them.
const (
	codeSchedule = `
%[1]s
Line | Part of the building | Goes on | Primer | What is put there | Touches | Lap | Put on | Closed in
1 | north wall, low | plywood | {D} | {A} | cedar | 75 | 2 Mar 2026 | 20 Mar 2026
2 | north wall, high | plywood | {D} | {A} | cedar | 75 | 3 Mar 2026 | 20 Mar 2026
3 | south wall, low | plywood | none | {B} | cedar | 75 | 4 Mar 2026 | 20 Mar 2026
4 | south wall, high | plywood | none | {B} | cedar | 75 | 5 Mar 2026 | 21 Mar 2026
5 | window heads | CMU | {D} | {C} | {E} | 50 | 6 Mar 2026 | 22 Mar 2026
6 | door heads | CMU | {D} | {C} | {E} | 50 | 9 Mar 2026 | 22 Mar 2026`
	codeData = `
%s | Trade name | Thickness, mm | Apply at °C, least | Bare, most days | Keep off
{A} | Larkfell 60 | 1.5 | 5 | 60 | EPDM
{B} | Larkfell Open | 0.6 | -4 | 120 | solvents
{C} | Larkfell Ledge | 1.0 | 5 | 30 | EPDM
{D} | Larkfell Prime | - | 4 | - | -
{E} | Larkfell Seal | - | -20 | - | -`
	codeKey = `
%s | Material | Section
{A} | Self-adhered rubberized asphalt sheet | 07 13 00
{B} | Wall sheet, self-adhered, vapor-permeable | 07 27 00
{C} | Butyl flashing tape | 07 65 00
{D} | Water-based primer | 07 27 00
{E} | Neutral silicone sealant | 07 92 00
{F} | EPDM gasket | 07 95 00`
)

// write puts the codes in: as in {A} stands for.
func write(grid, how string, codes []string) string {
	for i, code := range codes {
		grid = strings.ReplaceAll(grid, "{"+string(rune('A'+i))+"}", fmt.Sprintf(how, code))
	}
	return strings.TrimSpace(strings.TrimPrefix(strings.TrimSpace(grid), "%!"))
}

func TestKeysUnderAnyHeading(t *testing.T) {
	for _, head := range []string{"Code", "Sym.", "Nr", "Key", "Item", "M#", "Keynote", "PD", ""} {
		for _, codes := range []string{
			"13-A 27-A 27-F 91-A 92-A 93-A", "K12 K13 K20 K31 K40 K55", "B-2a B-2b B-3 P-1 S-1 G-1",
			"07-27-01 07-27-02 07-65-01 07-27-09 07-92-01 07-95-01", "7.1 7.2 7.3 7.4 7.5 7.6", "A B C D E F",
		} {
			for _, how := range []string{"[%s]", "%s", "(%s)"} {
				t.Run(head+" "+codes+" "+how, func(t *testing.T) {
					list := strings.Fields(codes)
					s := readPages(t, page{name: "S", grid: write(fmt.Sprintf(codeSchedule, ""), how, list)},
						page{name: "K", grid: write(fmt.Sprintf(codeKey, head), "%s", list)},
						page{name: "P", grid: write(fmt.Sprintf(codeData, head), "%s", list)})
					wantCodes(t, s, list)
				})
			}
		}
	}
}

func wantCodes(t *testing.T, s *schedule.Schedule, codes []string) {
	t.Helper()
	for i, family := range []string{"rubberized-asphalt-membrane", "vapor-permeable-self-adhered-membrane", "butyl-flashing-tape", "water-primer", "neutral-silicone-sealant", "epdm-gasket"} {
		if p := product(t, s, codes[i]); p.Family != family || i < 3 && len(p.Figures) == 0 {
			t.Errorf("%s is %q with %d figures, want %s", codes[i], p.Family, len(p.Figures), family)
		}
	}
	for i, mark := range []string{"1", "3", "5"} {
		if it := line(t, s, mark).Main(); it == nil || it.Product != codes[i] {
			t.Errorf("row %s is about %+v, want %s", mark, it, codes[i])
		}
	}
	if got := items(line(t, s, "5"), "primer"); got != codes[3] {
		t.Errorf("primer %q", got)
	}
	if got := items(line(t, s, "5"), "touches"); got != codes[4] {
		t.Errorf("touches %q", got)
	}
}

// A table of codes with what they are finished with and a note is a key where its codes
// come back in a schedule that has days, and rows of their own where they do not.
func TestKeyBesideWork(t *testing.T) {
	for name, tc := range map[string]struct {
		used string
		want int
	}{
		"used":         {used: "ME-1 ME-2 ME-4", want: 3},
		"other tags":   {used: "QA-1 QA-2 QA-3"},
		"too few used": {used: "ME-1 QA-2 QA-3"},
	} {
		u := strings.Fields(tc.used)
		s := readPages(t, page{name: "Rows", grid: fmt.Sprintf(`
Mark | Tag | Goes on | Put on | Closed in
1 | %s | plywood | 2 Mar 2026 | 20 Mar 2026
2 | %s | CMU | 3 Mar 2026 | 20 Mar 2026
3 | %s | CMU | 4 Mar 2026 | 21 Mar 2026`, u[0], u[1], u[2])}, page{name: "Metals", grid: `
Tag | Type | Finish | Note
ME-1 | Stainless steel sheet flashing | mill | soldered
ME-2 | Aluminum coping | PVDF | splices sealed
ME-3 | Lead sheet | mill | patinated
ME-4 | Galvanized steel clip | G90 | -`})
		n := 0
		for _, p := range s.Products {
			if strings.HasPrefix(p.Tag, "ME-") && p.Family != "" && slices.Contains(u, p.Tag) {
				n++
			}
		}
		if n != tc.want {
			t.Errorf("%s: %d products with a material, want %d", name, n, tc.want)
		}
		if got := line(t, s, "1").Main(); tc.want > 0 && (got == nil || got.Product != "ME-1") {
			t.Errorf("%s: row 1 is of %v", name, got)
		}
	}
}

// besideOneAnother sets two blocks of cells side by side with an empty column between.
func besideOneAnother(left, right string) string {
	one, other := strings.Split(strings.TrimSpace(left), "\n"), strings.Split(strings.TrimSpace(right), "\n")
	width := strings.Count(one[0], "|")
	var out []string
	for i := range max(len(one), len(other)) {
		row := ""
		if i < len(one) {
			row = one[i]
		}
		if row += strings.Repeat(" | ", width-strings.Count(row, "|")); i < len(other) {
			row += " | | " + other[i]
		}
		out = append(out, row)
	}
	return strings.Join(out, "\n")
}

// A list of products may stand beside the schedule, in rows that it has nothing to do
// with; the schedule is read without it, and the list as product data.
func TestListBesideSchedule(t *testing.T) {
	const work = `
Bay | Roll | Goes on to | Prime with | Next to it | Laid | Bricked up
NORTH
N1 | ZR-1 | plywood | KY-1 | vinyl trim | @2026-05-04 | @2026-05-20
N2 | ZR-2 | OSB | none | brick | @2026-05-05 | @2026-05-21
SOUTH
S1 | ZR-1 | CMU | KY-1 | brick | @2026-05-06 | @2026-05-22
S2 | ZR-1 | plywood | KY-2 | brick | @2026-05-07 | @2026-05-25
S3 | ZR-2 | plywood | none | brick | @2026-05-08 | @2026-05-25
S4 | ZR-1 | plywood | KY-2 | brick | @2026-05-08 | @2026-05-25`
	const list = `
Key | What it is | Put on, °C | Open, days
ZR-1 | rubberized asphalt sheet | 5 to 40 | 21
ZR-2 | vapor permeable self-adhered sheet, acrylic | -5 to 40 | 120
KY-1 | SBS primer, solvent | -10 and up |
KY-2 | acrylic primer, water-borne | 4 and up |
XB-9 | butyl tape | -5 to 40 | 60`
	for where, s := range map[string]*schedule.Schedule{
		"I2": read(t, besideOneAnother(work, list)),
		"A2": read(t, besideOneAnother(list, work)),
	} {
		if len(s.Products) != 5 || len(s.Lines) != 6 {
			t.Fatalf("%d products and %d lines, want 5 and 6", len(s.Products), len(s.Lines))
		}
		if p := s.Products[0]; p.Tag != "ZR-1" || p.Figures["apply_min_c"].Min == nil || *p.Figures["apply_min_c"].Min != 5 || p.Cells["tag"] != where {
			t.Errorf("first product is %s with %v, at %s", p.Tag, p.Figures, p.Cells["tag"])
		}
		if l := s.Lines[2]; l.Row != 6 || l.Group != "SOUTH" || l.Main() == nil || l.Main().Product != "ZR-1" {
			t.Errorf("row %d under %q is of %v", l.Row, l.Group, l.Main())
		}
		if tables := s.Reading.Tables; len(tables) != 2 || tables[0].ID == tables[1].ID {
			t.Errorf("the tables are %v", tables)
		}
		if len(s.Reading.Sheets) != 1 || s.Reading.Sheets[0].As != "schedule" {
			t.Errorf("the sheet is told as %v", s.Reading.Sheets)
		}
	}
}

// An empty column in a schedule parts nothing: what stands right of it tells of the same rows.
func TestGapInSchedule(t *testing.T) {
	s := read(t, `
Bay | Roll | Laid on to | | Node | Prime with | Next to it | Laid | Bricked up
N1 | rubberized asphalt sheet | plywood | | J-1 | none | vinyl trim | @2026-05-04 | @2026-05-20
N2 | butyl sheet | OSB | | J-2 | none | J-1 | @2026-05-05 | @2026-05-21
N3 | butyl sheet | OSB | | J-3 | none | J-1 | @2026-05-05 | @2026-05-21
N4 | butyl sheet | J-3 | | J-4 | none | J-3 | @2026-05-05 | @2026-05-21
N5 | butyl sheet | J-3 | | J-5 | none | J-2 | @2026-05-05 | @2026-05-21`)
	if len(s.Lines) != 5 || len(s.Products) != 0 || s.Lines[0].Dates["cover"].From != "2026-05-20" || s.Lines[0].Texts["substrate"] != "plywood" {
		t.Errorf("%d lines and %d products, the first is %v", len(s.Lines), len(s.Products), s.Lines[0].Texts)
	}
}

// The codes of the rows may stand under a heading of papers in the first column, where no
// other column has them; what stands there twice is no code of a row.
func TestFirstColumnMarksRows(t *testing.T) {
	for second, want := range map[string]string{"L-02": "L-01", "L-01": ""} {
		s := read(t, "Lot | Material | Substrate | Primer | Lap\nL-01 | butyl sheet | block | none | 75 mm\n"+second+" | butyl sheet | plywood | none | 75 mm")
		if got := s.Lines[0].Mark; got != want {
			t.Errorf("beside %s the first row is %q, want %q", second, got, want)
		}
	}
}

// A legend right of the schedule says what its short words stand for, and tells of none
// of the rows that it shares.
func TestLegendBesideSchedule(t *testing.T) {
	s := read(t, besideOneAnother(`
Bay | Roll | Laid on to | Prime with | Next to it | Laid | Bricked up
N1 | butyl sheet | p/s | solvent primer | u/s soffit | @2026-05-04 | @2026-05-20
N2 | butyl sheet | OC | n.r. | m.w. | @2026-05-05 | @2026-05-21
N3 | butyl sheet | p/s | solvent primer | brick | @2026-05-06 | @2026-05-21
N4 | butyl sheet | OC | n.r. | brick | @2026-05-07 | @2026-05-21`, `
Abbrev.
OC | old concrete
p/s | plywood sheathing
m.w. | mineral wool
n.r. | not required`))
	if len(s.Lines) != 4 {
		t.Fatalf("%d lines, want 4", len(s.Lines))
	}
	for i, want := range []string{"plywood sheathing", "old concrete"} {
		if l := s.Lines[i]; l.Texts["substrate"] != want {
			t.Errorf("row %d is on %q, want %q", l.Row, l.Texts["substrate"], want)
		}
	}
	if l := s.Lines[1]; l.Texts["touches"] != "mineral wool" || l.Texts["primer"] != "not required" {
		t.Errorf("row %d touches %q over %q", l.Row, l.Texts["touches"], l.Texts["primer"])
	}
}

// Columns under a word for codes are no legend where a row of them has a code and no
// meaning of its own.
func TestCodesOfTheRowsAreNoLegend(t *testing.T) {
	s := read(t, besideOneAnother(`
Bay | Roll | Laid on to | Prime with
N1 | butyl sheet | plywood | none
N2 | butyl sheet | concrete | none
N3 | butyl sheet | plywood | none`, `
Codes | Next to it
5.1.2 | brick
5.1.4 | vinyl trim
5.1.2 | brick`))
	if len(s.Lines) != 3 || s.Lines[1].Texts["touches"] != "vinyl trim" {
		t.Errorf("%d lines, the second touches %q", len(s.Lines), s.Lines[1].Texts["touches"])
	}
}

// Notes may give the unit of bare figures by what those are called, on any sheet; "In" before
// a word in a heading is no unit.
func TestUnitsByName(t *testing.T) {
	s := readPages(t, page{name: "Work", grid: `
Bay | Roll | Film | Overlap | In front of it | Laid | Bricked up
N1 | ZR-1 | 60 | 75 | brick | @2026-05-04 | @2026-05-20
N2 | ZR-2 | 40 | 50 | brick | @2026-05-05 | @2026-05-21

Notes
Films in mils, overlaps are in mm. Temps in °C.`}, page{name: "Key", grid: `
Code | Product | Material | Low | High | Days open
ZR-1 | Alder 60 | rubberized asphalt sheet | 4 | 35 | 30
ZR-2 | Alder 40 | butyl sheet | -5 | 40 | 60`})
	if f := s.Lines[0].Figures["thickness_mm"]; f.Unit != "mils" {
		t.Errorf("the film is in %q", f.Unit)
	}
	if f := s.Lines[0].Figures["lap_mm"]; f.Unit != "mm" {
		t.Errorf("the lap is in %q", f.Unit)
	}
	if len(s.Products) != 2 {
		t.Fatalf("%d products, want 2", len(s.Products))
	}
	p := s.Products[1]
	if f := p.Figures["apply_min_c"]; f.Min == nil || *f.Min != -5 || p.Family != "butyl-membrane" && p.Class == "" {
		t.Errorf("%s of %q goes on from %v", p.Tag, p.Family, f)
	}
}

// Two columns of a least and a most are no temperatures where nothing tells of such.
func TestEndsOfNoKind(t *testing.T) {
	s := readPages(t, page{name: "Work", grid: `
Bay | Roll | Overlap | Laid on | Laid | Bricked up
N1 | ZR-1 | 75 mm | plywood | @2026-05-04 | @2026-05-20
N2 | ZR-2 | 50 mm | plywood | @2026-05-05 | @2026-05-21`}, page{name: "Key", grid: `
Code | Product | Material | Low | High | Days open | Put on
ZR-1 | Alder 60 | rubberized asphalt sheet | 4 | 35 | 30 | plywood
ZR-2 | Alder 40 | butyl sheet | 5 | 40 | 60 | plywood`})
	for _, p := range s.Products {
		if f, told := p.Figures["apply_min_c"]; told {
			t.Errorf("%s goes on from %v", p.Tag, f)
		}
	}
}
