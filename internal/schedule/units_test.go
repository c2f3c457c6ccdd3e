package schedule

import (
	"os"
	"reflect"
	"testing"

	"abut/internal/workbook"
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

// TestTieInIsNoInches takes the second word of "tie in" for no unit.
func TestTieInIsNoInches(t *testing.T) {
	s, err := NewReader(os.DirFS("../../policies"))
	if err != nil {
		t.Fatal(err)
	}
	r := s.begin("x.csv", Settings{})
	for heading, want := range map[string]string{"TIE IN LAP (mm)": "mm", "Lap at tie in (in)": "in", "TIE IN LAP": "", "Lap in": "in"} {
		if got := r.unitIn(heading, "length", "lap"); got != want {
			t.Errorf("%s: %q, want %q", heading, got, want)
		}
	}
}

// TestNotedLapsLeaveTheMemory keeps what a text was once read as, though the notes take
// only its lengths: a row may say the same words.
func TestNotedLapsLeaveTheMemory(t *testing.T) {
	rd, err := NewReader(os.DirFS("../../policies"))
	if err != nil {
		t.Fatal(err)
	}
	const note = "Laps 6 in. over the curb, 2 gal pails"
	r := rd.begin("notes.csv", Settings{})
	r.unitsByName(&workbook.Book{Sheets: []workbook.Sheet{{Kind: workbook.Worksheet, Rows: []workbook.Row{{Number: 1, Cells: []workbook.Cell{{Value: note}}}}}}})
	if len(r.lapsNoted) != 1 {
		t.Errorf("laps noted: %+v", r.lapsNoted)
	}
	if got, want := r.phrase.Quantities(note, ""), rd.phrase.Quantities(note, ""); !reflect.DeepEqual(got, want) {
		t.Errorf("read again: %+v, want %+v", got, want)
	}
}
