package schedule_test

import (
	"testing"
)

// TestTagThatBeginsAMaterial reads a short tag whose noun the vocabulary takes
// together with it; the noun is the tag's own and no second material.
func TestTagThatBeginsAMaterial(t *testing.T) {
	s := readPages(t,
		page{name: "P", grid: "Tag | Description | Application temp. | VOC g/L\nQ7 | self-adhered rubberized asphalt sheet | 40 to 100 F | -\nK2 | butyl sheet | 40 to 100 F | -"},
		page{name: "S", grid: "Mark | Tag | Substrate | Primer | Touches | Install date\nD1 | K2 | plywood | none | Q7 film | @2026-03-02"})
	if got := items(line(t, s, "D1"), "touches"); got != "Q7" {
		t.Errorf("touches %q, want Q7", got)
	}
}

// TestDatesAreNoFigures keeps a column of dates from a heading that could be one
// of temperatures.
func TestDatesAreNoFigures(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Put on | Cover date
D1 | butyl sheet | plywood | none | 8/18-8/20/26 | 9/1/26
D2 | butyl sheet | plywood | none | 8/21/26 | 9/2/26`})
	l := line(t, s, "D1")
	if f, ok := l.Figures["apply_min_c"]; ok {
		t.Errorf("a temperature was read: %+v", f)
	}
	if got := l.Dates["install"]; got.From != "2026-08-18" || got.To != "2026-08-20" {
		t.Errorf("install %+v", got)
	}
}

// TestSizeAfterATag keeps the size that follows a tag from being a further tag.
func TestSizeAfterATag(t *testing.T) {
	s := readPages(t,
		page{name: "P", grid: "Tag | Description | Application temp. | VOC g/L\nQ-2 | neutral silicone sealant | 20 to 120 F | 30\nQ-3 | solvent-release butyl sealant | 20 to 120 F | 230\nK-1 | butyl sheet | 40 to 100 F | -"},
		page{name: "S", grid: "Mark | Tag | Substrate | Primer | Sealant | Install date\nD1 | K-1 | plywood | none | Q-2, 3/8 in. deep | @2026-03-02\nD2 | K-1 | plywood | none | Q-2, 3 | @2026-03-02"})
	for mark, want := range map[string]string{"D1": "Q-2", "D2": "Q-2 Q-3"} {
		if got := items(line(t, s, mark), "sealant"); got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}
