package schedule_test

import (
	"math"
	"testing"
)

// Insulation over the row's own sheet has a column for its thickness, beside that of the
// sheet; in a table without one it is the thickness of the row.
func TestInsulationThickness(t *testing.T) {
	const products = "\n\nTag | Type | Apply min C\nAB-1 | SBS self-adhered sheet | 4\nWB-1 | mineral wool board | \n"
	for _, head := range []string{"Insulation mm", "Insul Thk, mm", "Insulation depth (mm)"} {
		s := read(t, "Mark | Location | Membrane | Thk mm | Substrate | Primer | Insulation | "+head+
			"\nA | north | AB-1 | 1 | CMU | none | WB-1 | 90\nB | south | AB-1 | 1.5 | CMU | none | WB-1 | 120"+products)
		f := line(t, s, "A").Figures
		if v := f["insulation_mm"].Min; v == nil || *v != 90 {
			t.Errorf("%s: %+v", head, f)
		}
		if v := f["thickness_mm"].Min; v == nil || *v != 1 {
			t.Errorf("%s: %+v", head, f)
		}
	}
	s := read(t, "Mark | Location | Material | Insulation thickness mm | Substrate\nA | north | WB-1 | 90 | CMU\nB | south | WB-1 | 120 | CMU"+products)
	if v := line(t, s, "A").Figures["thickness_mm"].Min; v == nil || *v != 90 {
		t.Errorf("rows of insulation: %+v", line(t, s, "A").Figures)
	}
}

// Boards are told by their tag and the millimeters, in a workbook of millimeters.
func TestSizeAfterTag(t *testing.T) {
	const products = "\n\nTag | Type | Apply min C\nAB-1 | SBS self-adhered sheet | 4\nWB-1 | mineral wool board | \n"
	for text, want := range map[string]float64{"WB-1 90": 90, "WB-1 120 (two layers)": 120, "WB-1": 0, "WB-1 9": 0, "WB-1 90 kg": 0} {
		s := read(t, "Mark | Tag | Lap mm | Substrate | Touches\nA | "+text+" | - | CMU | -\nB | AB-1 | 75 | CMU | "+text+products)
		if f := line(t, s, "A").Figures["board_mm"]; (f.Min == nil) != (want == 0) || f.Min != nil && *f.Min != want {
			t.Errorf("%s: board %+v, want %v", text, f.Min, want)
		}
		for _, it := range line(t, s, "B").Items {
			if it.Tag == "WB-1" && ((it.ThickMM == nil) != (want == 0) || it.ThickMM != nil && *it.ThickMM != want) {
				t.Errorf("%s: neighbor %v, want %v", text, it.ThickMM, want)
			}
		}
	}
	s := read(t, "Mark | Tag | Lap in. | Substrate\nA | WB-1 90 | - | CMU\nB | AB-1 | 3 | CMU"+products)
	if f := line(t, s, "A").Figures["board_mm"]; f.Min != nil {
		t.Errorf("in inches: %v", *f.Min)
	}
}

// A column of the resistance outside is the row's own, under a heading that spans others too.
func TestResistanceOutside(t *testing.T) {
	for heading, want := range map[string]float64{
		"RSI outboard":             3.1,
		"Exterior R-value":         3.1 * 0.1761102,
		"ci R":                     3.1 * 0.1761102,
		"Outside RSI (m²·K/W)":     3.1,
		"R (h·ft²·°F/Btu) outside": 3.1 * 0.1761102,
		"R-value":                  0,
	} {
		s := read(t, "Mark | Wall type | Membrane | Substrate | Primer | "+heading+" | Remarks\nT1 | EX-4 | butyl sheet | plywood | none | 3.1 | none\nT2 | EX-4 | butyl sheet | CMU | none | 2.9 | rolled twice")
		f, ok := line(t, s, "T1").Figures["outside_r_m2kw"]
		if ok != (want > 0) || ok && !near(f.Min, want) {
			t.Errorf("%s: %+v", heading, f)
		}
	}
}

// The cell of what comes over a sheet may tell the insulation with its size; a length that
// says where something is, is none.
func TestInsulationOverTheSheet(t *testing.T) {
	for text, want := range map[string]float64{
		"XPS 2 in, drain mat": 50.8, "3 in. of mineral wool; brick": 76.2, "polyiso 2 in; brick": 50.8, "mineral wool 4 in. outboard": 101.6,
		"XPS cut 3 in back": 0, "XPS 3 in back from the edge": 0, "8 in above XPS": 0, "bar, 8 in CMU, XPS": 0, "no XPS 2 in": 0, "brick": 0,
	} {
		for _, head := range []string{"Touches", "Covered by"} {
			s := read(t, "Mark | Membrane | Lap in | Substrate | "+head+"\nA | SBS sheet | 3 | CMU | "+text+"\nB | SBS sheet | 3 | CMU | brick")
			got := 0.0
			if f := line(t, s, "A").Figures["insulation_mm"]; f.Min != nil {
				got = *f.Min
			}
			if math.Abs(got-want) > 0.01 {
				t.Errorf("%s: %s: %v, want %v", head, text, got, want)
			}
		}
	}
}

// After the tag of a board, in a workbook of millimeters, "in" and a sign end its size.
func TestSizeAfterTagAmongOthers(t *testing.T) {
	for layers, want := range map[string]float64{
		"block / SBS sheet / WB-2 120 in rails / zinc": 120, "block / SBS sheet / WB-2 80 / 30 air / brick": 80,
		"block / SBS sheet / WB-2 40 / 60 / brick": 0, "block / SBS sheet / WB-2 12 in rails": 304.8,
		"block, SBS sheet, WB-2 (75 mm north, 125 mm south), brick": 0, "block, SBS sheet, WB-2 (4 in., 100 mm), brick": 101.6,
	} {
		s := readPages(t, page{name: "Walls", grid: "\nMark|Material|Substrate|Installed|Lap mm\nA-1|SBS sheet|block|2026-06-01|75\nA-2|WB-2|block|2026-06-01|-"},
			page{name: "Products", grid: "\nTag|Type|Apply min C|Max days open\nWB-2|mineral wool board|-5|60\nFM-1|SBS asphalt sheet|5|60"},
			page{name: "Types", grid: "\nType|Where|What it is made of\nW1|South|" + layers + "\nW2|North|brick, SBS sheet, block"})
		got := 0.0
		for _, l := range s.Lines {
			for _, it := range l.Items {
				if it.Slot == "layers" && it.Product == "WB-2" && it.ThickMM != nil {
					got = *it.ThickMM
				}
			}
		}
		if math.Abs(got-want) > 0.01 {
			t.Errorf("%s: %v, want %v", layers, got, want)
		}
	}
}
