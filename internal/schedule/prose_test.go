package schedule_test

import (
	"slices"
	"strings"
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

// Where products are called by names in words, one that is written so and stands in no
// list was left out of it; words of the trade in capitals are none.
func TestNameLeftOutOfTheList(t *testing.T) {
	s := readPages(t, page{name: "Names", grid: written + `
Deck Paint | Bituminous paint. 5 and up.
Outer Wool | Mineral wool board, 100 mm.
Inner Film | Polyethylene sheet, 0.2 mm.`}, page{name: "Walls", grid: `
Mark|Material|Substrate|Installed
A-1|Blue Skin|concrete|2026-06-01
A-2|Winter Blue Skin|block|2026-12-01
A-3|Corner Tape|Blue Skin|2026-06-02
A-4|Stone Shield D, two coats|brick|2026-06-02
A-5|Mineral Wool between studs|brick|2026-06-02
A-6|Sloping saddle of lead|brick|2026-06-02`})
	for _, l := range s.Lines {
		unknown := ""
		for _, it := range l.Items {
			if it.Slot == "material" && it.Unknown && it.Tag != "" {
				unknown = it.Tag
			}
		}
		if want := map[string]string{"A-4": "Stone Shield D"}[l.Mark]; unknown != want {
			t.Errorf("%s: unknown name %q, want %q", l.Mark, unknown, want)
		}
	}
}

// The layers that a cell of substrates lists after a colon lie over what stands before.
func TestLayersListedOverABed(t *testing.T) {
	s := readPages(t, page{name: "Roof", grid: `
Mark|Material|Substrate|Installed
A-1|PVC roof membrane|On the old asphalt roof: EPS board, gypsum board and polyester fleece|2026-06-01
A-2|PVC roof membrane|Concrete: swept and dry|2026-06-01`})
	slots := func(mark string) map[string]string {
		out := map[string]string{}
		for _, it := range line(t, s, mark).Items {
			out[it.Family] = it.Slot
		}
		return out
	}
	got := slots("A-1")
	if got["polyester-separation-fleece"] != "substrate" || got["eps"] != "substrate" {
		t.Errorf("the layers are %v, want them for the bed", got)
	}
	for family, slot := range got {
		if strings.Contains(family, "asphalt") && slot != "under" {
			t.Errorf("%s is %s, want under", family, slot)
		}
	}
	if got := slots("A-2"); got["cast-concrete"] != "substrate" {
		t.Errorf("concrete is %v, want the bed", got)
	}
}

// A note that begins with what it asks something of states a lap right before the figure.
func TestLapOfSheetsThatStick(t *testing.T) {
	for note, want := range map[string]float64{
		"Membranes and strips of all kinds on walls lap 100 mm or more.":      100,
		"At patches the crew cleans, primes and may lap 50 mm to be on time.": 0,
	} {
		s := readPages(t, page{name: "Walls", grid: `
NOTES
1. ` + note + `

Mark|Material|Substrate|Installed|Lap
A-1|SBS sheet|concrete|2026-06-01|75 mm
A-2|SBS sheet|concrete|2026-06-02|100 mm`})
		l := limit(s, "lap_mm")
		if (l != nil) != (want > 0) || l != nil && (l.Min == nil || *l.Min != want) {
			t.Errorf("%q: limit %+v, want %v", note, l, want)
		}
	}
}

// clauses tell of products in running text, several to a clause, by names in words and by
// codes, with their numbers before them or in cells of their own.
const clauses = `
FROM THE PROJECT MANUAL, SECTION 07 27 00

(1) Alder 25: self-adhering sheet of rubberized asphalt on polyethylene film, 25 mils. It shall not be applied when the air is below 40 F, nor be left uncovered more than 21 days. Daub 1 or Daub 2.
(2) Alder 25 L: as (1), low temperature grade, for use between 20 F and 60 F.
(3) Moss Trim is butyl on polyethylene film, 30 mils; 25 F and above; laps 4 inches; service to 180 F. Daub 1 on wood, none on metal.
(4) Primers. Daub 1 is rubber in solvent, usable at 15 F and above, and shall be kept off polystyrene. Daub 2 is water-borne, 40 F and above. Both are for Alder sheets.
5.1 | Sealants. Gun K is a polyether. Gun S is a one-part silicone; it shall not touch Alder sheets.
5.2 | Joints. Concrete is 14 days old. Sheets lap 2-1/2 inches at sides.`

const clausedWork = `
Mark|Material|Substrate|Primer|Sealant|Installed|Covered
A-1|Alder 25|concrete|Daub 1|Gun K|2026-06-01|2026-06-20
A-2|Alder 25 L|block|Daub 2|Gun K|2026-12-01|2026-12-20
A-3|Moss Trim|plywood|Daub 1|Gun S|2026-06-02|2026-06-21`

func TestClausesOfASpecification(t *testing.T) {
	s := readPages(t, page{name: "Clauses", grid: clauses}, page{name: "Walls", grid: clausedWork})
	if got := len(s.Products); got != 7 {
		t.Fatalf("%d products, want 7: %+v", got, s.Products)
	}
	for _, want := range []struct {
		tag, family, figure string
		value               float64
	}{
		{"Alder 25", "rubberized-asphalt-membrane", "apply_min_c", 40}, {"Alder 25", "rubberized-asphalt-membrane", "exposure_days", 21},
		{"Alder 25 L", "rubberized-asphalt-membrane", "apply_min_c", 20}, {"Alder 25 L", "rubberized-asphalt-membrane", "exposure_days", 21},
		{"Moss Trim", "butyl-flashing-tape", "lap_mm", 4},
		{"Moss Trim", "butyl-flashing-tape", "apply_min_c", 25}, {"Moss Trim", "butyl-flashing-tape", "service_max_c", 180},
		{"Daub 1", "solvent-primer", "apply_min_c", 15}, {"Daub 2", "water-primer", "apply_min_c", 40},
		{"Gun K", "hybrid-sealant", "", 0},
	} {
		p := product(t, s, want.tag)
		f := p.Figures[want.figure]
		switch got := f.Min; {
		case p.Family != want.family:
			t.Errorf("%s is %q, want %q", want.tag, p.Family, want.family)
		case want.figure == "":
		case got == nil || strings.HasSuffix(want.figure, "_c") && !near(got, (want.value-32)/1.8) || want.figure == "lap_mm" && !near(got, want.value*25.4) || want.figure == "exposure_days" && *got != want.value:
			t.Errorf("%s has %s %+v, want %v", want.tag, want.figure, f, want.value)
		}
	}
	if a := product(t, s, "Alder 25").Accepts; len(a) != 1 || strings.Join(a[0].Primers, " ") != "Daub 1 Daub 2" {
		t.Errorf("Alder 25 takes %+v", a)
	}
	for tag, want := range map[string]string{"Daub 2": "Alder 25 L, Alder 25", "Daub 1": "Alder 25 L, Alder 25"} {
		if got := strings.Join(named(product(t, s, tag).Suits), ", "); got != want {
			t.Errorf("%s is for %q, want %q", tag, got, want)
		}
	}
	if got := strings.Join(named(product(t, s, "Gun S").KeepOff), ", "); got != "Alder 25 L, Alder 25" {
		t.Errorf("Gun S keeps off %q", got)
	}
	if off := product(t, s, "Daub 1").KeepOff; len(off) != 1 || off[0].Text != "polystyrene" {
		t.Errorf("Daub 1 keeps off %+v", off)
	}
	for _, l := range s.Project.Limits {
		if l.At.Cell != "B8" {
			t.Errorf("what a product bears became a limit of the job: %+v", l)
		}
	}
}

// Clauses about the work tell of no product, though they begin with words that the
// schedule has.
func TestClausesOfTheWork(t *testing.T) {
	s := readPages(t, page{name: "Clauses", grid: `
3.1 Concrete is 14 days old or more, and block 7 days.
3.2 Plywood: dry, below 19 percent by a meter; nailed at 6 in. at edges.
3.3 Openings: sill first, then jambs, then head, each lapping the one below.
3.4 Silicone is for glass, a neutral-cure one, and is tooled.
3.5 It is mineral wool, 4 inches, that stands outside. Both are rigid boards, 30 days bare at most.`}, page{name: "Walls", grid: `
Mark|Material|Substrate|Sealant|Installed|Covered|Remarks
A-1|SBS sheet|concrete|silicone|2026-06-01|2026-06-20|openings first
A-2|SBS sheet|plywood|silicone|2026-12-01|2026-12-20|it waits`})
	if len(s.Products) > 0 {
		t.Errorf("clauses of the work were taken for products: %+v", s.Products)
	}
}

// A description that names the stuff of a sheet and the film it lies on is of the sheet; a
// bead on a film is none.
func TestSheetToldByItsFilm(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Goes on | Installed
1 | TM-1 | plywood | 2027-05-03
2 | TM-2 | polyethylene film | 2027-05-03`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open
TM-1 | butyl on a polyethylene film | 25 | 60
TM-2 | bead of butyl on polyethylene film | 25 | -`})
	if p := product(t, s, "TM-1"); p.Family != "butyl-flashing-tape" {
		t.Errorf("TM-1 is %q", p.Family)
	}
	if p := product(t, s, "TM-2"); p.Family == "butyl-flashing-tape" {
		t.Errorf("TM-2 is %q", p.Family)
	}
}
