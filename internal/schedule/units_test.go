package schedule

import (
	"os"
	"testing"
)

// TestUnitOfHeading takes of two units in a heading the one that stands first,
// and no word of what the column is called.
func TestUnitOfHeading(t *testing.T) {
	h, err := loadHeadings(os.DirFS("../../policies"))
	if err != nil {
		t.Fatal(err)
	}
	r := &reader{head: h}
	for heading, want := range map[string]string{
		"Permeance ng/(Pa·s·m²), perm":   "ng/(Pa·s·m²)",
		"Permeance perm [ng/(Pa·s·m²)]":  "perm",
		"Permeance US perm, ng":          "perm",
		"Vapor perm (ng/(Pa·s·m²))":      "ng/(Pa·s·m²)",
		"Vapor perm, ng/(Pa·s·m²)":       "ng/(Pa·s·m²)",
		"Vapour perm (perms)":            "perm",
		"Water vapor permeance US perms": "perm",
		"Perms":                          "perm",
		"Perm ng":                        "ng/(Pa·s·m²)",
		"Perms ng/(Pa·s·m²)":             "ng/(Pa·s·m²)",
		"Perms (ng)":                     "perm",
		"Perms, ng":                      "perm",
		"Perm. (ng)":                     "ng/(Pa·s·m²)",
		"Perm. ng/(Pa·s·m²), E96 dry":    "ng/(Pa·s·m²)",
		"Perm. (perms)":                  "perm",
		"Perm.":                          "perm",
		"Water vap. perm., ng (wet cup)": "ng/(Pa·s·m²)",
		"Vap. perm. (perms)":             "perm",
		"Vap. US perms":                  "perm",
	} {
		for range 20 { // the units are in no order
			if got := r.slotUnit(heading, "vapor"); got != want {
				t.Errorf("%s: %q, want %q", heading, got, want)
			}
		}
	}
}
