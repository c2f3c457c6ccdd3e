package schedule

import "testing"

// TestBound tells the lower from the upper end of an application range.
func TestBound(t *testing.T) {
	h := &headings{lower: []string{"down to", "min", "lowest"}, upper: []string{"max", "to"}}
	for heading, want := range map[string]string{
		"Lowest temp. to apply": "apply_min",
		"Apply at, min.":        "apply_min",
		"Apply, max.":           "apply_max",
		"Apply up to":           "apply_max",
		"Goes on down to, C":    "apply_min",
		"Put down at":           "apply",
		"Temp. range":           "apply",
	} {
		if got := h.bound(guess{slot: "apply"}, headingWords(heading)); got.slot != want {
			t.Errorf("%s: %s, want %s", heading, got.slot, want)
		}
	}
	if got := h.bound(guess{slot: "thickness"}, headingWords("Min. thickness")); got.slot != "thickness" {
		t.Errorf("a thickness became %s", got.slot)
	}
}
