package schedule_test

import (
	"slices"
	"testing"

	"abut/internal/schedule"
)

// written is a list of products that are called by names in words, with their data in
// sentences. The words are of our own making, the figures usual ones (common practice).
const written = `
What our names mean
Heat and cold in Celsius throughout.

SHEETS
Blue Skin | SBS self-adhered sheet with a polyethylene film, 1.0 mm. Lay between 5 and 35. Covered within 45 days. Rated to 80. Needs Rubber Primer on concrete, block and brick; no primer on clean steel. Fresh concrete must be 14 days old. Stay clear of creosote, solvent-based sealants and mastics.
Winter Blue Skin | Same sheet in a softer grade, for -10 to 15. Otherwise as Blue Skin.
Corner Tape | Butyl tape with foil face, 0.6 mm. -5 and warmer. May be left open for 60 days. Never on green concrete.
LIQUIDS
Rubber Primer | Synthetic rubber in solvent. 0 and up. VOC 250 g/L.
Gap Filler | Neutral silicone sealant. -5 to 40. VOC 30 g/L.
Copper | 0.6 mm cold-rolled copper.`

func TestProductsNamedInWords(t *testing.T) {
	s := readPages(t, page{name: "Names", grid: written}, page{name: "Walls", grid: `
Mark|Material|Substrate|Primer|Installed|Covered
A-1|Blue Skin|concrete|Rubber Primer|2026-06-01|2026-06-20
A-2|Winter Blue Skin|block|Rubber Primer|2026-12-01|2026-12-20
A-3|Corner Tape over the blue skin|Blue Skin|none|2026-06-02|2026-06-21
A-4|Gap Filler|copper-treated wood|none|2026-06-02|2026-06-21`})
	got := map[string]schedule.Product{}
	for _, p := range s.Products {
		got[p.Tag] = p
	}
	if len(s.Products) != 6 {
		t.Fatalf("%d products, want 6: %v", len(s.Products), got)
	}
	for _, want := range []struct {
		tag, figure string
		min         float64
	}{
		{"Blue Skin", "apply_min_c", 5}, {"Blue Skin", "apply_max_c", 35}, {"Blue Skin", "exposure_days", 45},
		{"Blue Skin", "service_max_c", 80}, {"Blue Skin", "concrete_age_days", 14}, {"Blue Skin", "thickness_mm", 1},
		{"Winter Blue Skin", "apply_min_c", -10}, {"Winter Blue Skin", "exposure_days", 45}, {"Winter Blue Skin", "concrete_age_days", 14},
		{"Corner Tape", "apply_min_c", -5}, {"Corner Tape", "exposure_days", 60},
		{"Rubber Primer", "apply_min_c", 0}, {"Rubber Primer", "voc_gl", 250},
		{"Gap Filler", "apply_min_c", -5}, {"Gap Filler", "apply_max_c", 40},
	} {
		f := got[want.tag].Figures[want.figure]
		if v := f.Min; v == nil && f.Max == nil || v != nil && *v != want.min || v == nil && *f.Max != want.min {
			t.Errorf("%s has %s %+v, want %v", want.tag, want.figure, f, want.min)
		}
	}
	for tag, role := range map[string]string{"Blue Skin": "membrane", "Winter Blue Skin": "membrane", "Rubber Primer": "primer", "Gap Filler": "sealant"} {
		if got[tag].Role != role {
			t.Errorf("%s is a %s of %q, want a %s", tag, got[tag].Role, got[tag].Family, role)
		}
	}
	off := got["Blue Skin"].KeepOff
	if !slices.ContainsFunc(off, func(k schedule.Target) bool { return k.Text == "solvent-based mastics" }) {
		t.Errorf("Blue Skin keeps off %v, want solvent-based mastics and no others", off)
	}
	ofLine(t, s.Lines[1], "Winter Blue Skin")
	ofLine(t, s.Lines[2], "Corner Tape")
	if len(s.Project.Limits) > 0 {
		t.Errorf("what the products bear became limits of the job: %v", s.Project.Limits)
	}
}

// ofLine holds a line's first material against a product.
func ofLine(t *testing.T, l schedule.Line, product string) {
	t.Helper()
	for _, it := range l.Items {
		if it.Slot == "material" {
			if it.Product != product {
				t.Errorf("line %s has %q, want %s", l.ID, it.Product, product)
			}
			return
		}
	}
	t.Errorf("line %s has no material", l.ID)
}

// A glossary and job notes are no list of products.
func TestSentencesThatNameNoProducts(t *testing.T) {
	s := readPages(t, page{name: "Notes", grid: `
Outer Leaf | What stands before the air space, such as brick. Hung or laid.
Warm Side | Where the gypsum board is. Heated.
Site Joint | What closes on site with silicone. Tooled.
Dry Day | One without rain. Asked of all work on concrete.`}, page{name: "Walls", grid: `
Mark|Material|Substrate|Primer|Installed|Covered
A-1|SBS sheet on the Warm Side|concrete|none|2026-06-01|2026-06-20
A-2|Silicone sealant at a Site Joint|brick of the Outer Leaf|none|2026-12-01|2026-12-20`})
	if len(s.Products) > 0 {
		t.Errorf("a glossary was taken for products: %v", s.Products)
	}
}
