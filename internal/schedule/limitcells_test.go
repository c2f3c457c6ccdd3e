package schedule_test

import (
	"math"
	"slices"
	"strings"
	"testing"
)

const areas = `Mark | Area | Wall | Membrane | Substrate | Primer
1 | RINK | WT2 | AB-1 | CMU | none
2 | GYM | WT3 | AB-1 | CMU | none
3 | GYM | WT3 | AB-1 | CMU | none
4 | OFC | WT4 | AB-1 | CMU | none

Tag | Type | Apply min C | Vapor ng
AB-1 | SBS self-adhered sheet | 4 | 2
PF-1 | polyethylene sheet | 4 | 3

`

// A limit in cells of its own, with its number, what it is asked of and the figure, holds
// for the areas and wall types that the middle cell lists.
func TestLimitOfCells(t *testing.T) {
	for row, want := range map[string]string{
		"R1 | Permeance of AVB in RINK, GYM; also roofs | ≤ 6 ng/(Pa·s·m²)":       "rink, gym",
		"R2 | Outer sheet of WT3 (PF-1 is on the room side) | ≥ 250 ng/(Pa·s·m²)": "wt3",
		"R3 | Sheets anywhere | at most 6 ng/(Pa·s·m²)":                           "",
		"R4 | SHEETS OF ALL WALLS, GYM TOO | ≤ 6 NG/(PA·S·M²)":                    "",
	} {
		s := read(t, "Job limits\n"+row+"\n\n"+areas)
		l := limit(s, "vapor_ng")
		if l == nil {
			if want != "" {
				t.Errorf("%s: no limit", row)
			}
			continue
		}
		if l.Scope != want || want != "" && len(l.Keys) > 0 {
			t.Errorf("%s: scope %q, keys %v", row, l.Scope, l.Keys)
		}
	}
}

// A limit inboard of the air barrier is one for work inside.
func TestLimitInboard(t *testing.T) {
	for words, want := range map[string]bool{
		"VOC, mastic inboard of AVB":                true,
		"VOC, sealants inside of the air barrier":   true,
		"VOC, sealants outboard of the air barrier": false,
	} {
		l := limit(read(t, "Job limits\nR5 | "+words+" | ≤ 60 g/L\n\n"+areas), "voc_gl")
		if l == nil || slices.Contains(l.When, "indoors") != want {
			t.Errorf("%s: %+v", words, l)
		}
	}
}

// A title block may tell the units of the whole workbook, which cards with bare figures
// leave out; two of a kind tell none.
func TestUnitsOfWorkbook(t *testing.T) {
	for line, want := range map[string]float64{
		"Units | mm, °C, ng/(Pa·s·m²), g/L":                   700,
		"All units: mm / °F, US perms":                        700 * 57.2135,
		"Dimensions | mm":                                     0,
		"Units | perms or ng/(Pa·s·m²), either; ng/(Pa·s·m²)": 0,
	} {
		s := read(t, `Job | Quarry baths
`+line+`

Mark | Location | Membrane | Substrate | Primer
1 | hall, north | FL-1 | CMU | none
2 | hall, south | FL-1 | CMU | none
3 | office | FL-2 | CMU | none

Products

Tag | FL-1
Kind | water-borne acrylic air barrier
Permeance | 700
Primer | none

Tag | FL-2
Kind | self-adhered acrylic sheet
Permeance | 900
Primer | none
`)
		got := 0.0
		for _, p := range s.Products {
			if f := p.Figures["vapor_ng"]; p.Tag == "FL-1" && f.Min != nil {
				got = *f.Min
			}
		}
		if got < want*0.99 || got > want*1.01 {
			t.Errorf("%s: %v, want %v", line, got, want)
		}
	}
}

// A cover sheet may tell the units of all bare figures of the workbook; above one table
// the same words are of that table. "Perm." is then what the column is called.
func TestUnitsOfCoverSheet(t *testing.T) {
	work := page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Thk | Perm. | Lap
1 | FL-1 | CMU | none | 1 | 640 | 75
2 | FL-1 | CMU | none | 1 | 640 | 75
3 | FL-2 | CMU | none | 1 | 640 | 75`}
	for words, want := range map[string]float64{
		"All figures mm, °C and ng/(Pa·s·m²) unless noted.": 640,
		"All mm, deg C, perms U.N.O.":                       640 * 57.2135,
		"Sheets: mm, ng/(Pa·s·m²)":                          640 * 57.2135,
	} {
		s := readPages(t, page{name: "Cover", grid: "Job | Mill race baths\n" + words}, work)
		l := line(t, s, "1")
		if got := l.Figures["vapor_ng"]; got.Min == nil || math.Abs(*got.Min-want) > want/100 {
			t.Errorf("%s: %+v, want %.0f", words, got, want)
		}
		if lap := l.Figures["lap_mm"].Min; (lap != nil && *lap == 75) != strings.HasPrefix(words, "All") {
			t.Errorf("%s: lap %v", words, lap)
		}
	}
}
