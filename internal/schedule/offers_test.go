package schedule_test

import (
	"cmp"
	"testing"
)

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

// The words below the two bands may differ, the bands may stand before or behind them in
// one heading, and an offer of the same may be told in other words.
func TestOffersInOtherWords(t *testing.T) {
	products := page{name: "P", grid: `
Tag | Type | Apply min °C
SH-1 | butyl sheet | 0
SH-3 | SBS sheet | 5
PM-1 | Primer, water-borne | 5
PM-2 | Primer, solvent-borne | -5`}
	for name, head := range map[string]string{
		"before": "No. | Spec'd sheet | Spec'd bed | Spec'd primer | Spec'd lap | Alternate sheet | Alternate primer | Alternate overlap | Installed",
		"behind": "No. | Sheet (contract) | Bed (contract) | Primer (contract) | Lap (contract) | Sheet (submitted) | Primer (submitted) | Lap (submitted) | Installed",
	} {
		s := readPages(t, page{name: "S", grid: head + `
1 | SH-1 | plywood | PM-1 | 75 mm | SH-3 | PM-2 | 50 mm | @2026-04-13
2 | SH-1 | plywood | PM-1 | 75 mm | same | complies | identical | @2026-04-13
3 | SH-1 | plywood | PM-1 | 75 mm | | none | as spec'd | @2026-04-13`}, products)
		for mark, want := range map[string][3]string{
			"1": {"SH-3", "PM-2", "50 mm"},
			"2": {"SH-1", "PM-1", "75 mm"},
			"3": {"SH-1", "none", "75 mm"},
		} {
			l := line(t, s, mark)
			material := cmp.Or(l.Texts["tag"], l.Texts["material"])
			if got := [3]string{material, l.Texts["primer"], l.Texts["lap"]}; got != want || l.Texts["specified"] != "SH-1" {
				t.Errorf("%s, %s: %v for %q, want %v", name, mark, got, l.Texts["specified"], want)
			}
		}
		for _, u := range s.Reading.Unread {
			t.Errorf("%s: %q was not understood: %s", name, u.Text, u.Why)
		}
	}
}

// Outside of an offer "same" is what stands above.
func TestSameWithoutOfferIsAbove(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Sheet | Bed | Primer | Installed
1 | butyl sheet | plywood | PM-1 | @2026-04-13
2 | SBS sheet | same | same | @2026-04-13`})
	if l := line(t, s, "2"); l.Texts["substrate"] != "plywood" || l.Texts["primer"] != "PM-1" {
		t.Errorf("on %q with %q", l.Texts["substrate"], l.Texts["primer"])
	}
}

// The bands may say who scheduled and who offers, the words below may say it once more, and
// tags of the products stand under both; a unit below a band is that of the figures.
func TestOffersUnderBandsOfTwoSides(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
 | Scheduled by the architect | | | Offered by contractor | | | Site |
No. | Sheet sched. | Thk mm | Perm. ng | Sheet offered | Thk mm | Perm. ng | Bed | Installed
1 | Larkso 5 | 1.2 | 1450 | Pinevel T | 0.9 | 380 | plywood | @2026-07-13
2 | Larkso 5 | 1.2 | 1450 | Pinevel T | 0.9 | 380 | plywood | @2026-07-14`, merges: []string{"B1:D1", "E1:G1", "H1:I1"}}, page{name: "P", grid: `
Product | Type | Apply min °C
Larkso 5 | acrylic self-adhered membrane, vapor permeable | -5
Pinevel T | acrylic self-adhered membrane, vapor permeable | 0`})
	l := line(t, s, "1")
	if got := [2]string{cmp.Or(l.Texts["tag"], l.Texts["material"]), l.Texts["specified"]}; got != [2]string{"Pinevel T", "Larkso 5"} || l.Texts["with"] != "" {
		t.Errorf("%v, with %q", got, l.Texts["with"])
	}
	for name, want := range map[string]float64{"thickness_mm": 0.9, "vapor_ng": 380} {
		if f := l.Figures[name]; f.Min == nil || *f.Min != want {
			t.Errorf("%s %v, want %v", name, f.Min, want)
		}
	}
}

// What two sides remark is no offer of the one in place of the other.
func TestRemarksOfTwoSidesBothCount(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Sheet | Bed | Consultant remarks | Contractor remarks | Consultant no. | Contractor no. | Installed
A1 | butyl sheet | plywood | heads first | left open till June | 4 | 5 | @2026-04-13`})
	l := line(t, s, "A1")
	if r := l.Texts["remark"]; r != "heads first left open till June" && r != "heads first; left open till June" {
		t.Errorf("remark %q", r)
	}
}

// One column of what was scheduled beside one of what is offered, below a band of another
// kind, is enough: all else is said once.
func TestOneColumnIsOfferedForAnother(t *testing.T) {
	for _, heads := range []string{"Sched. prod. | Proposed prod.", "Specified product | Submitted product"} {
		s := readPages(t, page{name: "S", grid: `
 | Materials | | | Work |
No. | ` + heads + ` | Bed | Day on | Day hid
1 | Larkso 5 | Pinevel T | plywood | @2026-07-13 | @2026-08-03
2 | Larkso 5 | Larkso 5 | plywood | @2026-07-14 | @2026-08-04`, merges: []string{"B1:D1", "E1:F1"}}, page{name: "P", grid: `
Product | Type | Apply min °C
Larkso 5 | acrylic self-adhered membrane, vapor permeable | -5
Pinevel T | acrylic self-adhered membrane, vapor permeable | 0`})
		l := line(t, s, "1")
		if got := [2]string{cmp.Or(l.Texts["tag"], l.Texts["material"]), l.Texts["specified"]}; got != [2]string{"Pinevel T", "Larkso 5"} {
			t.Errorf("%s: %v, beside it %q", heads, got, l.Texts["with"])
		}
	}
}

// A log of the work has the product that was put on beside the scheduled one, under one band; words
// over the days of the work tell no product.
func TestPutOnBesideWhatWasScheduled(t *testing.T) {
	products := page{name: "P", grid: `
Product | Type | Apply min °C
Sheet 11 | SBS sheet | 5
Sheet 11C | SBS sheet | -12
PM-1 | Primer, water-borne | 5`}
	for head, want := range map[string][2]string{
		"Line | Scheduled product | Installed product | Substrate | Installed on | Covered": {"Sheet 11C", "Sheet 11"},
		"Line | Product sched. | Product used | Substrate | Installed on | Covered":         {"Sheet 11C", "Sheet 11"},
		"Line | Sched'd product | Product applied | Substrate | Applied on | Covered":       {"Sheet 11C", "Sheet 11"},
	} {
		s := readPages(t, page{name: "S", grid: head + `
1 | Sheet 11 | Sheet 11C | CMU | @2026-04-13 | @2026-05-13
2 | Sheet 11 | Sheet 11 | CMU | @2026-04-14 | @2026-05-14`}, products)
		l := line(t, s, "1")
		if l.Texts["material"] != want[0] || l.Texts["specified"] != want[1] {
			t.Errorf("%s: %q for %q, want %v", head, l.Texts["material"], l.Texts["specified"], want)
		}
	}
	s := readPages(t, page{name: "S", grid: `
Line | Product | Scheduled start | Actual start | Substrate
1 | Sheet 11 | @2026-04-13 | @2026-04-14 | CMU`}, products)
	if l := line(t, s, "1"); l.Texts["material"] != "Sheet 11" || l.Texts["specified"] != "" {
		t.Errorf("of days alone: %q for %q", l.Texts["material"], l.Texts["specified"])
	}
}
