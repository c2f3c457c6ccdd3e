package schedule_test

import "testing"

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
