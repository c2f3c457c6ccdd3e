package schedule_test

import (
	"testing"

	"abut/internal/schedule"
)

// The sentences are of our own making; the figures are usual ones of such sheets
// (common practice).
func TestProductsToldInNotes(t *testing.T) {
	s := readPages(t, page{name: "Notes", grid: `
FM1  SBS self-adhered sheet, 1.0 mm. Lay +5 to +35 C. Open 45 days. Primer KP1 on concrete; none on clean metal. Not against EPDM.
FM1W  as FM1, low-temperature grade. Lay -12 to +20 C. All else as FM1.
KP1: rubber primer in solvent. Not on polystyrene.
FM2  ;
G1  Every open edge gets a bead. Lay no sheet on wet concrete.`}, page{name: "Walls", grid: `
Mark|Material|Substrate|Primer|Installed|Covered
A-1|FM1|concrete|KP1|2026-06-01|2026-06-20
A-2|FM1W|galvanized steel|none|2026-12-01|2026-12-20
A-3|FM2|concrete|KP1|2026-06-02|2026-06-21`})
	got := map[string]schedule.Product{}
	for _, p := range s.Products {
		got[p.Tag] = p
	}
	if len(got) != 3 {
		t.Fatalf("%d products, want FM1, FM1W and KP1: %v", len(got), got)
	}
	fm, cold := got["FM1"], got["FM1W"]
	if f := fm.Figures["apply_min_c"]; f.Min == nil || *f.Min != 5 || f.At.Cell != "A1" {
		t.Errorf("FM1 goes on from %v, want 5 of A1", f)
	}
	if f := cold.Figures["apply_min_c"]; f.Min == nil || *f.Min != -12 {
		t.Errorf("FM1W goes on from %v, want -12", f)
	}
	if f := cold.Figures["exposure_days"]; f.Min == nil || *f.Min != 45 {
		t.Errorf("FM1W stays open %v, want the 45 of FM1", f)
	}
	if len(cold.KeepOff) != 1 || cold.Family != fm.Family || fm.Family == "" {
		t.Errorf("FM1W is %q and keeps off %v; want the family of FM1, %q, and EPDM", cold.Family, cold.KeepOff, fm.Family)
	}
	if got["KP1"].Role != "primer" {
		t.Errorf("KP1 is a %q, want primer", got["KP1"].Role)
	}
	for _, it := range s.Lines[1].Items {
		if it.Slot == "material" && it.Product != "FM1W" {
			t.Errorf("line A-2 has %q, want product FM1W", it.Product)
		}
	}
}

// Notes that run on under one letter are no products, though a row of the schedule
// cites one that tells of a material and of figures; products so numbered stay.
func TestRunningNotesAreNoProducts(t *testing.T) {
	walls := page{name: "Walls", grid: `
Mark|Material|Substrate|Primer|Installed|Comments
A-1|FM1|concrete|none|2026-06-01|K-5
A-2|FM1|concrete|none|2026-06-08|K-5`}
	s := readPages(t, page{name: "Notes", grid: `
No.|Note
K-1|Reading, winter, wind from the lake.
K-2|The tighter of data and notes counts.
K-3|Everything is reviewed before it is hidden.
K-4|Dates are those of the last plan.
K-5|Below black metal laid direct on a sheet 85 °C in service. Light metal 65.`}, walls)
	for _, p := range s.Products {
		t.Errorf("note %s was taken for a product", p.Tag)
	}
	if l := limit(s, "service_c"); l == nil || l.Min == nil || *l.Min != 85 {
		t.Errorf("limit under metal %+v, want 85 °C", l)
	}
	s = readPages(t, page{name: "Codes", grid: `
K-1|SBS self-adhered sheet, 1 mm. Lay +5 to +35 C. Open 45 days.
K-2|Butyl tape, 1 mm. Lay -5 to +35 C. Open 30 days.
K-3|Silicone sealant. Lay -10 to +35 C.
K-4|Water-borne primer. Lay +5 to +35 C.
K-5|EPDM membrane, 1.2 mm. Lay +5 to +35 C. Open 45 days.`}, walls)
	if len(s.Products) == 0 {
		t.Error("a legend of products was taken for notes")
	}
}

// A word that begins a cell of the schedule is no name of a product that a note tells of,
// unless it has a cell to itself.
func TestPlainWordsNameNoProduct(t *testing.T) {
	s := readPages(t, page{name: "Conditions", grid: `
Drips directly under the butyl flashing, 60 mil. Lay from 20 F up. Open 30 days.
Alder: butyl flashing, 60 mil. Lay from 20 F up. Open 30 days.`}, page{name: "Work", grid: `
Mark|Material|Substrate|Primer|Installed|Comments
A-1|Alder|concrete|none|2026-06-01|Drips at every pier
A-2|Alder|concrete|none|2026-06-08|`})
	var tags []string
	for _, p := range s.Products {
		tags = append(tags, p.Tag)
	}
	if len(tags) != 1 || tags[0] != "Alder" {
		t.Errorf("products %q, want Alder alone", tags)
	}
	if len(s.Project.Notes) != 1 {
		t.Errorf("%d notes, want the one on drips", len(s.Project.Notes))
	}
}
