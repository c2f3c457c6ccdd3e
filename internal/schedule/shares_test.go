package schedule_test

import (
	"fmt"
	"reflect"
	"runtime"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// TestShares reads tables whose rows are shared out among processors, and holds their
// lines to those of rows read in turn.
func TestShares(t *testing.T) {
	for name, row := range map[string]func(i int) string{
		"rows alone":    func(i int) string { return sharedRow(i, "sheet", "2026-07-%02d") },
		"without years": func(i int) string { return sharedRow(i, "sheet", "%d July") },
		"the same again": func(i int) string {
			return sharedRow(i, []string{"SBS sheet, winter grade", "ditto", "ditto", "same as D-4"}[i%4], "2026-07-%02d")
		},
		"the first for all": func(i int) string {
			return sharedRow(i, []string{"ditto", "EPDM sheet"}[max(0, 1-i)], "2026-07-%02d")
		},
		"under dividers": func(i int) string {
			if i%90 == 0 && i < 100 {
				return fmt.Sprintf("North wall %d, week of %d July 2026|||||", i, 1+i/90)
			}
			return sharedRow(i, "sheet", "")
		},
		"layers of walls": func(i int) string {
			return fmt.Sprintf("W%d|%s|concrete|||", i/7, []string{"gypsum board", "mineral wool", "SBS sheet"}[i%3])
		},
	} {
		t.Run(name, func(t *testing.T) {
			grid := []string{"Item|Material|Laid on|Installed|Covered|Remarks"}
			for i := range 450 {
				grid = append(grid, row(i))
			}
			book := csvBook(t, strings.Join(grid, "\n"))
			defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
			inTurn := readBook(t, book, schedule.Settings{})
			runtime.GOMAXPROCS(4)
			if shared := readBook(t, book, schedule.Settings{}); !reflect.DeepEqual(shared, inTurn) {
				t.Error("the lines are others than those of rows read in turn")
			}
			if len(inTurn.Lines) < 400 {
				t.Errorf("%d lines", len(inTurn.Lines))
			}
		})
	}
}

func sharedRow(i int, material, day string) string {
	if strings.Contains(day, "%") {
		day = fmt.Sprintf(day, 1+i%28)
	}
	return fmt.Sprintf("D-%d|%s|%s|%s|2026-09-01|note %d, primer P-%d rolled on", i, material, []string{"CMU", "concrete, damp", "plywood"}[i%3], day, i, i)
}

// A second product of a row may be told by its grade alone.
func TestGradeOfTheSecondProduct(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Touches\nR1 | Alder SX-40 | CMU | Alder KM2-T"}, page{name: "P", grid: `
Product | Kind | Min °F | UV days
Alder SX-40 | SBS sheet | 40 | 60
Alder KM2 / KM2-T | polyurethane sealant / trowel grade | 40 | -
Rowan R-21 plain / kraft | glass fiber batt | - | -`})
	for _, tag := range []string{"Alder KM2", "Alder KM2-T"} {
		if p := product(t, s, tag); p.Class != "sealant" {
			t.Errorf("%s is %q", tag, p.Class)
		}
	}
	product(t, s, "Rowan R-21 plain / kraft")
}
