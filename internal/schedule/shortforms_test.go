package schedule_test

import "testing"

// A short form of a bed is written out after a word for its state, and never among
// other words.
func TestShortFormAfterItsState(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | butyl sheet | 5 | ply, steel, conc | none on clean ply, steel; PR-1 on conc; under 5 °C PR-2
R-2 | butyl sheet | 5 | conc, two ply SBS | PR-1 on conc
PR-1 | water-borne acrylic primer | 5 | conc | -
PR-2 | solvent primer | -5 | conc, ply | -
`)
	want := map[string]string{"plywood": "none", "steel": "none", "conc": "listed"}
	for _, a := range product(t, s, "R-1").Accepts {
		if want[a.Text] != "" && a.Primer != want[a.Text] {
			t.Errorf("%s: primer %s, want %s", a.Text, a.Primer, want[a.Text])
		}
		delete(want, a.Text)
	}
	if len(want) > 0 {
		t.Errorf("not accepted: %v", want)
	}
	for _, a := range product(t, s, "R-2").Accepts {
		if a.Text == "plywood" {
			t.Error("the plies of a sheet are read as plywood")
		}
	}
	suits := targets(product(t, s, "PR-2").Suits)
	if suits != "cast-concrete cement-based osb-plywood-sheathing" && suits != "cast-concrete osb-plywood-sheathing" {
		t.Errorf("the solvent primer suits %s", suits)
	}
}
