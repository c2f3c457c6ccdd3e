package schedule_test

import (
	"strings"
	"testing"

	"abut/internal/schedule"
)

func named(list []schedule.Target) []string {
	var out []string
	for _, tg := range list {
		out = append(out, tg.Products...)
	}
	return out
}

func namedBeds(p *schedule.Product) []string {
	var out []string
	for _, a := range p.Accepts {
		out = append(out, a.Products...)
	}
	return out
}

// makers is product data in which one maker has several products.
var makers = page{name: "Data", grid: `Product | What it is | Goes on down to, °C | Stay bare, days | Goes on | Kept from
Tarn Ridge 40 | SBS sheet on polyethylene film | 5 | 60 | block | EPDM, solvent sealants; silicone acceptable
Tarn Ridge 40 HT | SBS sheet on aluminum foil | 5 | 90 | block | -
Tarn Tape B | butyl strip | -5 | 90 | plywood | -
Tarn Filler | asphalt mastic in solvent | 0 | - | Tarn asphalt sheets, block | -
Tarn Primer W | water primer | 5 | - | block | -
Reed 55N | neutral silicone sealant | 0 | - | metal | -
Reed Butyl Tape | butyl tape | 0 | 30 | plywood | -`}

// Schedules leave the maker's name out; what is left is the product, where it is a
// name and no word for a material.
func TestNamesWithoutTheirMaker(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mark | Material | Substrate | Primer | Sealant | Lap
D1 | Ridge 40 | block | Primer W | 55N | 75 mm
D2 | Ridge 40 HT strip | block | Primer W | none | 75 mm
D3 | butyl tape | plywood | none | none | 75 mm
D4 | a ridge 40 mm high | block | none | none | 75 mm`}, makers)
	for mark, want := range map[string]string{"D1": "Tarn Ridge 40", "D2": "Tarn Ridge 40 HT", "D3": "", "D4": ""} {
		got := ""
		if it := line(t, s, mark).Main(); it != nil {
			got = it.Product
		}
		if got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
	for _, it := range line(t, s, "D1").Items {
		if it.Slot == "primer" && it.Product != "Tarn Primer W" || it.Slot == "sealant" && it.Product != "Reed 55N" {
			t.Errorf("%s is %q", it.Text, it.Product)
		}
	}
}

// A maker's name before a kind of material means its products of that kind.
func TestProductsOfAMakerByKind(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | Lap\nD1 | Tarn Ridge 40 | block | none | 75 mm"}, makers)
	p := product(t, s, "Tarn Filler")
	got := map[string]bool{}
	for _, list := range [][]string{named(p.Suits), namedBeds(p)} {
		for _, name := range list {
			got[name] = true
		}
	}
	if !got["Tarn Ridge 40"] || !got["Tarn Ridge 40 HT"] || got["Tarn Tape B"] || got["Tarn Primer W"] {
		t.Errorf("made for %v, want the two asphalt sheets", got)
	}
	if least := product(t, s, "Tarn Tape B").Figures["apply_min_c"]; !near(least.Min, -5) {
		t.Errorf("goes on from %+v, want -5 °C", least)
	}
	if bare := product(t, s, "Tarn Tape B").Figures["exposure_days"]; !near(bare.Min, 90) {
		t.Errorf("bare for %+v, want 90 days", bare)
	}
	for _, tg := range product(t, s, "Tarn Ridge 40").KeepOff {
		if tg.Except != (tg.Text == "silicone") {
			t.Errorf("%s: excepted %v", tg.Text, tg.Except)
		}
	}
}

// Products with a maker and a code are called by the code alone; a code that two of
// them have, or that is a mark of the schedule, is none of them.
func TestNamesByTheirCode(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `Mark | Material | Substrate | Primer | Adjacent | Lap
D1 | Tarn RB-30 | block | none | PF-6 on the room side | 75 mm
D2 | RB-30 LT | block | none | none | 75 mm
D3 | Tarn RB-30 | block | none | BT-9 | 75 mm`}, page{name: "Data", grid: `Product | What it is | Goes on down to, °C | Stay bare, days
Tarn RB-30 | SBS sheet on polyethylene film | 5 | 60
Tarn RB-30 LT | SBS sheet on polyethylene film, winter grade | -9 | 60
Dorn PF-6 | polyethylene film | - | 30
Tarn BT-9 | butyl strip | -5 | 90
Dorn BT-9 | butyl strip | -5 | 60`})
	for mark, want := range map[string]string{"D1": "Tarn RB-30, Dorn PF-6", "D2": "Tarn RB-30 LT", "D3": "Tarn RB-30"} {
		var got []string
		for _, it := range line(t, s, mark).Items {
			if it.Product != "" {
				got = append(got, it.Product)
			}
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// A remark tells that another product came in place of the row's own; an offer, a part
// of the work and an answered change are none of that.
func TestProductsThatStandIn(t *testing.T) {
	remarks := map[string]string{
		"RB-30 LT on back order, use the regular RB-30":  "Tarn RB-30",
		"Out of stock; none":                             "Tarn RB-30 LT",
		"VS-8 delivered instead":                         "Dorn VS-8",
		"Winter grade not available, so crew took RB-30": "Tarn RB-30",
		"switched to VS-8":                               "Dorn VS-8",
		"RB-30 may be used in lieu if warm":              "Tarn RB-30 LT",
		"VS-8 used in lieu, approved by RFI 8":           "Tarn RB-30 LT",
		"laps onto RB-30":                                "Tarn RB-30 LT",
		"ran out, RB-30 used instead at the jambs":       "Tarn RB-30 LT",
		"LT sent in lieu of RB-30":                       "Tarn RB-30 LT",
		"LT swapped for VS-8":                            "Tarn RB-30 LT",
		"crew stapled VS-8 to the wall in its place":     "Dorn VS-8",
		"rolls gone, so VS-8 was laid instead":           "Dorn VS-8",
		"PF-6 sent instead":                              "Tarn RB-30 LT",
		"late, request to use VS-8":                      "Tarn RB-30 LT",
	}
	for remark, want := range remarks {
		s := readPages(t, page{name: "S", grid: `Mark | Material | Thickness, mm | Substrate | Primer | Remarks
D1 | Tarn RB-30 LT | 0.8 | block | none | ` + remark}, page{name: "Data", grid: `Product | What it is | Goes on down to, °C | Stay bare, days
Tarn RB-30 | SBS sheet on polyethylene film | 5 | 60
Tarn RB-30 LT | SBS sheet on polyethylene film, winter grade | -9 | 60
Dorn PF-6 | water-borne primer | 5 | -
Dorn VS-8 | self-adhered vapor permeable membrane, acrylic adhesive | -5 | 90`})
		l := line(t, s, "D1")
		if got := l.Main().Product; got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
		if _, told := l.Figures["thickness_mm"]; told != (want == "Tarn RB-30 LT") {
			t.Errorf("%s: the thickness of the sheet that is not there: %v", remark, told)
		}
	}
}

// A product may be called by its stuff alone, and described by its kind alone.
func TestKindBesideTheStuff(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Sealant
T1 | TPO 45 mil | polyiso | none | polysulfide
T2 | PVC 50 mil, plasticized | polyiso | none | acrylic latex
T3 | Orlo 9 | plywood | none | Orlo B`}, page{name: "Products", grid: `
Product | Type | Thickness | Apply min °F | Days in the sun
TPO 45 mil | roof sheet | 30 mil | 20 | 60
PVC 50 mil, plasticized | roof sheet | 30 mil | 20 | 60
polysulfide | sealant, two-part | 30 mil | 40 | -
acrylic latex | sealant | 30 mil | 40 | -
Orlo 9 | butyl sheet | 30 mil | 20 | 30
Orlo B | sealant | 30 mil | 20 | -`})
	for tag, want := range map[string]string{
		"TPO 45 mil": "tpo-membrane", "PVC 50 mil, plasticized": "pvc-roof-membrane", "polysulfide": "polysulfide-sealant",
		"acrylic latex": "acrylic-latex-sealant", "Orlo B": "sealant-unspecified",
	} {
		if got := product(t, s, tag).Family; got != want {
			t.Errorf("%s: %s, want %s", tag, got, want)
		}
	}
}

// A brand alone is its one product where no other begins so, and its word is none of the
// trade; a figure after a brand of several is a size, where none of them is written so.
func TestBrandAlone(t *testing.T) {
	for remark, want := range map[string]string{
		"lapped 3 onto Hollow":   "Hollow W",
		"lapped 3 onto Primer":   "primer-unspecified",
		"lap Tarn 3 onto Hollow": "Hollow W",
		"lap Tarn 45 onto brick": "Tarn 45 clay-brick",
		"hollow block beside it": "concrete-masonry",
	} {
		s := readPages(t, page{name: "S", grid: `Mark | Material | Substrate | Primer | Remarks
D1 | Tarn 30 | plywood | none | ` + remark}, page{name: "Data", grid: `Product | What it is | Goes on down to, °C | Stay bare, days
Tarn 30 | SBS sheet on polyethylene film | 5 | 60
Tarn HT | butyl sheet | 5 | 60
Primer K | water-borne primer | 5 | -
Hollow W | fluid-applied silicone air barrier | -5 | 90`})
		var got []string
		for _, it := range line(t, s, "D1").Items {
			if it.Slot == "remark" {
				got = append(got, firstOf(it.Product, it.Tag, it.Family))
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

func firstOf(words ...string) string {
	for _, w := range words {
		if w != "" {
			return w
		}
	}
	return ""
}

// A list may name the kind of a product that the rows and the data of others leave out, and
// two kinds of one name are told apart by that word alone.
func TestKindInTheName(t *testing.T) {
	for listed, want := range map[string]string{"Larch K primer": "Larch K primer", "Larch K sealant | primer": ""} {
		name, other, two := strings.Cut(listed, " | ")
		grid := "Product | What it is | Stay bare, days | Min appl temp F | Primer\nTarn 30 | SBS sheet | 60 | 40 | Larch K on concrete\n" + name + " | water-borne primer | - | 40 | -"
		if two {
			grid += "\nLarch K " + other + " | solvent primer | - | 40 | -"
		}
		s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer\nD1 | Tarn 30 | concrete | Larch K"}, page{name: "P", grid: grid})
		got := ""
		for _, it := range line(t, s, "D1").Items {
			if it.Slot == "primer" {
				got = it.Product
			}
		}
		if got != want {
			t.Errorf("%s: the primer is %q", listed, got)
		}
	}
}
