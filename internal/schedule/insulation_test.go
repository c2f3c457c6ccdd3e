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
