package schedule_test

import "testing"

// Notes tell the office's own words for none, for an empty cell and for the row
// above; what they do not tell is left as it stands.
func TestLegendOfShortWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
T1 | SBS-modified self-adhered sheet | Plywood, frost in the corners | solvent-borne primer | Term bar with bead at top
T2 | SBS-modified self-adhered sheet | idem, brushed and dried | pdq | xu.
T3 | SBS-modified self-adhered sheet | CMU | zz. | qq`}, page{name: "Notes", grid: `
1 | pdq = none.   zz. = nicht verwendet (not used); xu. = as row above`})
	if got := line(t, s, "T2"); got.Texts["primer"] != "none" || got.Texts["substrate"] != "Plywood, brushed and dried" {
		t.Errorf("T2: %v", got.Texts)
	}
	if got := line(t, s, "T2"); !said(got, "edge_sealed") || said(got, "frost") {
		t.Errorf("T2: %v, want the remark of the row above and no frost", got.Signals)
	}
	if got := line(t, s, "T3"); got.Texts["remark"] != "qq" {
		t.Errorf("T3: %v", got.Texts)
	}
}
