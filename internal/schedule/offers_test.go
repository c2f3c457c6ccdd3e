package schedule_test

import "testing"

// What a contractor offers stands beside what was specified, under bands of their own.
func TestOffersBesideWhatWasSpecified(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Line | Specified | | | Proposed by the sub | | | Installed
 | Sheet | Bed | Primer | Product | Primer | Bed |
1 | SH-1 | plywood | PM-1 | SH-3 | PM-2 | = | @2026-04-13
2 | SH-1 | plywood | PM-1 | = | none | as specified | @2026-04-13
3 | SH-1 | plywood | PM-1 | as spec | | CMU | @2026-04-13`, merges: []string{"B1:D1", "E1:G1"}}, page{name: "P", grid: `
Tag | Type | Apply min °C
SH-1 | butyl sheet | 0
SH-3 | SBS sheet | 5
PM-1 | Primer, water-borne | 5
PM-2 | Primer, solvent-borne | -5`})
	for mark, want := range map[string][3]string{
		"1": {"SH-3", "PM-2", "plywood"},
		"2": {"SH-1", "none", "plywood"},
		"3": {"SH-1", "PM-1", "CMU"},
	} {
		l := line(t, s, mark)
		material := l.Texts["tag"] + l.Texts["material"]
		if material != want[0] || l.Texts["primer"] != want[1] || l.Texts["substrate"] != want[2] {
			t.Errorf("%s: %q on %q with %q, want %v", mark, material, l.Texts["substrate"], l.Texts["primer"], want)
		}
		if l.Texts["specified"] != "SH-1" {
			t.Errorf("%s: %q specified", mark, l.Texts["specified"])
		}
	}
}

// Without both bands there is nothing to choose from.
func TestOneBandOffersNothing(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Contract sheet | Contract primer | Bed | Installed
A1 | butyl sheet | water-borne primer | plywood | @2026-04-13`})
	if l := line(t, s, "A1"); l.Texts["primer"] != "water-borne primer" {
		t.Errorf("primer %q", l.Texts["primer"])
	}
}
