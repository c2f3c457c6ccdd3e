package schedule_test

import "testing"

// Figures that stand in cells of words are those of the product, where it has no
// column for them; the figures are usual ones (common practice).
func TestFiguresInCellsOfWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer | Remarks
W1 | FL-1 | CMU | none | DFT 22 mil by gauge
W2 | FL-2 | CMU | none | wet film 40 mil`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open | VOC g/L | Further data
FL-1 | STPE fluid membrane | 30 | 90 | 40 | 25 mil dry; 14 perm E96 B; 0.002 cfm/sf E2178; VOC 900 g/L
FL-2 | STPE fluid membrane | 30 | 90 | 40 | 8 perm dry cup, 12 perm wet cup; laps 2 in.`})
	one, two := product(t, s, "FL-1"), product(t, s, "FL-2")
	if f := one.Figures["thickness_mm"]; f.Min == nil || *f.Min != 0.635 || f.At.Cell != "F2" {
		t.Errorf("thickness %+v, want 25 mil of F2", f)
	}
	if f := one.Figures["vapor_ng"]; f.Min == nil || *f.Min < 790 || *f.Min > 810 {
		t.Errorf("vapor %+v, want 14 perm", f)
	}
	if f := one.Figures["air_lsm2"]; f.Min == nil || *f.Min < 0.010 || *f.Min > 0.0103 {
		t.Errorf("air %+v, want 0.002 cfm/sf", f)
	}
	if f := one.Figures["voc_gl"]; f.Min == nil || *f.Min != 40 {
		t.Errorf("VOC %+v, want the 40 of its own column", f)
	}
	for _, key := range []string{"vapor_ng", "thickness_mm"} {
		if f, ok := two.Figures[key]; ok {
			t.Errorf("FL-2 has %s %+v, want none: two figures, and a lap", key, f)
		}
	}
	if f := line(t, s, "W1").Figures["film_mm"]; f.Min == nil || int(*f.Min*1000) != 558 || f.At.Cell != "E2" {
		t.Errorf("film %+v, want 22 mil of E2", f)
	}
	if f, ok := line(t, s, "W2").Figures["film_mm"]; ok {
		t.Errorf("a wet film was read as a dry one: %+v", f)
	}
}

// The heading of a cell of words gives the unit of a figure that its name is before.
func TestBareFiguresInCellsOfWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FL-1 | CMU | none`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | Remarks (VOC in g/L)
FL-1 | butyl sheet | 5 | 30 | VOC 65; cure 8 h
FL-2 | butyl sheet | 5 | 30 | cure 8 h`})
	if f := product(t, s, "FL-1").Figures["voc_gl"]; f.Min == nil || *f.Min != 65 {
		t.Errorf("VOC %+v, want 65 g/L", f)
	}
	if f, ok := product(t, s, "FL-2").Figures["voc_gl"]; ok {
		t.Errorf("VOC %+v, want none", f)
	}
}

// A heading may name a figure beside a list; under one that does not, the figure is of
// what the list names.
func TestFiguresBesideAList(t *testing.T) {
	for heading, want := range map[string]bool{"VOC + keep away from": true, "Keep away from, other": false, "Keep away from": false} {
		s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FL-1 | CMU | none`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | ` + heading + `
FL-1 | butyl sheet | 5 | 30 | 120 g/L; primers with solvent, polystyrene`})
		p := product(t, s, "FL-1")
		if f, ok := p.Figures["voc_gl"]; ok != want || ok && *f.Min != 120 {
			t.Errorf("%s: VOC %+v, want it told: %t", heading, f, want)
		}
		if len(p.KeepOff) == 0 {
			t.Errorf("%s: nothing to keep off", heading)
		}
	}
}

// A sentence that opens with a temperature tells where the product goes on; other
// words make it one of storage, service or a test.
func TestTemperaturesInRemarks(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FL-1 | CMU | none`}, page{name: "P", grid: `
Tag | Type | Max days open | VOC g/L | Remarks
FL-1 | butyl sheet | 30 | 40 | Clean face. Apply at 40 °F or above.
FL-2 | butyl sheet | 30 | 40 | Never below 25 °F, no frost.
FL-3 | butyl sheet | 30 | 40 | Use from 20 to 60 °F only; keep rolls flat.
FL-4 | butyl sheet | 30 | 40 | Do not store below 40 °F.
FL-5 | butyl sheet | 30 | 40 | Flexible down to -20 °F.
FL-6 | butyl sheet | 30 | 40 | Serves down to -40 °F.`})
	for tag, want := range map[string]float64{"FL-1": 4.44, "FL-2": -3.89, "FL-3": -6.67} {
		if f := product(t, s, tag).Figures["apply_min_c"]; f.Min == nil || *f.Min < want-0.01 || *f.Min > want+0.01 {
			t.Errorf("%s: %+v, want %g", tag, f, want)
		}
	}
	if f := product(t, s, "FL-3").Figures["apply_max_c"]; f.Min == nil || *f.Min < 15.5 || *f.Min > 15.6 {
		t.Errorf("FL-3: at most %+v, want 60 °F", f)
	}
	for _, tag := range []string{"FL-4", "FL-5", "FL-6"} {
		if f, ok := product(t, s, tag).Figures["apply_min_c"]; ok {
			t.Errorf("%s: %+v, want none", tag, f)
		}
	}
}
