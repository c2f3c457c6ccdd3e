package schedule_test

import "testing"

// One column may tell at what a sheet goes on and what it bears later; the figures are
// usual ones of such sheets (common practice).
func TestTemperaturesOfBothKindsInOneColumn(t *testing.T) {
	for heading, cells := range map[string]map[string][2]float64{
		"Laying temp. / service °C": {
			"5 and up; serves to 80": {5, 80}, "5 / 80": {5, 80}, "-4 to 30; service 70 max": {-4, 70}, "5": {5, unsaid}},
		"Service and application, °F": {"180 / 40": {4.444, 82.22}, "service 160 °F; apply at 25 °F": {-3.889, 71.11}, "195": {unsaid, 90.56}},
		"Application temperature, °C": {"5 min; in service 90 max": {5, 90}, "5 min": {5, unsaid}},
		"Service temperature, °C":     {"80": {unsaid, 80}, "80; 95 for an hour": {unsaid, 80}},
	} {
		for cell, want := range cells {
			s := readPages(t, page{name: "S", grid: "\nMark | Tag | Substrate | Primer\nW1 | FL-1 | CMU | none"},
				page{name: "P", grid: "\nTag | Type | Max days open | " + heading + "\nFL-1 | butyl sheet | 30 | " + cell})
			p := product(t, s, "FL-1")
			for i, key := range []string{"apply_min_c", "service_max_c"} {
				f, ok := p.Figures[key]
				at := f.Max
				if i == 0 || at == nil {
					at = f.Min
				}
				if ok != (want[i] != unsaid) || ok && !near(at, want[i]) {
					t.Errorf("%s, %q: %s is %+v, want %v", heading, cell, key, f, want[i])
				}
			}
		}
	}
}

const unsaid = -999

// "Apply to" over temperatures is the upper end; over faces it is what a sheet goes on.
func TestAppliedTo(t *testing.T) {
	schedule := page{name: "S", grid: "\nMark | Tag | Substrate | Primer\nW1 | FL-1 | CMU | none"}
	s := readPages(t, schedule, page{name: "P", grid: "\nTag | Type | Max days open | Apply from (°F) | Apply to (°F)\n" +
		"FL-1 | butyl sheet | 30 | 23 | 95\nFL-2 | SBS sheet | 40 | 41 | 104"})
	p := product(t, s, "FL-1")
	if f := p.Figures["apply_max_c"]; f.Max == nil || !near(f.Max, 35) {
		t.Errorf("apply_max_c is %+v", f)
	}
	if len(p.Accepts) > 0 {
		t.Errorf("a temperature is no face: %+v", p.Accepts)
	}
	s = readPages(t, schedule, page{name: "P", grid: "\nTag | Type | Max days open | Min. temp. (°F) | Apply to\n" +
		"FL-1 | butyl sheet | 30 | 23 | block, plywood\nFL-2 | SBS sheet | 40 | 41 | concrete"})
	if p = product(t, s, "FL-1"); len(p.Accepts) != 2 {
		t.Errorf("accepts %+v", p.Accepts)
	}
}

// A list of products may begin right of column A, beside what is no list.
func TestUpperEndRightOfColumnA(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\n1 | RL-1 | plywood | none"}, page{name: "P", grid: `
 | | | | | | | | Tag | Type | Max days open | Apply from (°F) | Apply to (°F)
 | | | | | | | | RL-1 | SBS self-adhered sheet | 60 | 40 | 110
 | | | | | | | | RL-2 | butyl self-adhered sheet | 90 | 25 | 120`})
	if f := product(t, s, "RL-1").Figures["apply_max_c"]; !near(f.Max, 43.3333333) {
		t.Errorf("goes on up to %+v", f)
	}
}
