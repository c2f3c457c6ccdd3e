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
