package schedule_test

import "testing"

// A row below the heading may explain its columns and give their units; it is no
// row of the table, and the unit decides what "Air" is.
func TestRowThatExplainsTheHeading(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Placed | Air | Covered
 | code | | | | °C, coldest of the shift | by lining
D1 | butyl sheet | plywood | none | @2026-03-02 | 6 | @2026-03-09
D2 | butyl sheet | CMU | none | @2026-03-03 | -2 | @2026-03-09`})
	if len(s.Lines) != 2 {
		t.Fatalf("%d lines, want 2", len(s.Lines))
	}
	f := line(t, s, "D2").Figures["reading_air_c"]
	if f.Min == nil || *f.Min != -2 || f.Unit != "°C" {
		t.Errorf("reading %+v, want -2 °C", f)
	}
	plain := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap | Covered
 | butyl sheet | plywood | none | mm | @2026-03-09
D2 | butyl sheet | CMU | none | 50 | @2026-03-09`})
	if len(plain.Lines) != 2 {
		t.Errorf("%d lines, want 2: a row that names a sheet and a bed explains nothing", len(plain.Lines))
	}
}
