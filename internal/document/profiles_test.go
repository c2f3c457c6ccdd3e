package document_test

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/hygro"
)

// TestPaintHasNoThickness: the thickness of a row is that of its board, not of
// the paint named beside it.
func TestPaintHasNoThickness(t *testing.T) {
	doc := build(t, `
Wall type|Layer|Material|Thickness, in
W1|1|Gypsum board, latex paint|0.625
W1|2|XPS|2
W1|3|Clay brick|3.625
`, document.Settings{})
	if len(doc.Profiles) != 1 || len(doc.Profiles[0].Layers) != 4 {
		t.Fatalf("not one profile of four layers: %+v", doc.Profiles)
	}
	for _, l := range doc.Profiles[0].Layers {
		if known := l.Thick != nil; known == (l.Family == "latex-paint") {
			t.Errorf("%s: thickness known %v", l.Text, known)
		}
	}
}

const walls = `
Wall types, layers from inside to outside. Site: Fargo, ND

Wall type|Layer|Material|Thickness, in
W1|1|gypsum board|0.5
W1|2|glass wool batt in 2x6 wood studs|5.5
W1|3|OSB sheathing|0.5
W1|4|air space|1
W1|5|fiber cement siding|0.3
W2|1|gypsum board|0.5
W2|2|glass wool batt in 2x6 wood studs|5.5
W2|3|quandle composite panel|2
W2|4|OSB sheathing|0.5
W2|5|hat channels|1
W2|6|fiber cement siding|0.3
`

// A layer that no word tells is said, and its section is not computed without
// it; a space and a rail take a number and are no layer.
func TestUnknownLayer(t *testing.T) {
	doc := build(t, walls, document.Settings{})
	if len(doc.Profiles) != 2 {
		t.Fatalf("%d profiles", len(doc.Profiles))
	}
	if r := result(t, doc, 0); !r.Known || len(doc.Profiles[0].Missing) != 0 {
		t.Errorf("known layers: %+v", r)
	}
	r := result(t, doc, 1)
	if r.Known || r.PeakGM2 != nil || len(r.Missing) == 0 || len(doc.Profiles[1].Missing) != len(r.Missing) {
		t.Errorf("an unknown layer: %+v", r)
	}
	for _, m := range r.Missing {
		if m.Name != "quandle composite panel" {
			t.Errorf("missing of %q", m.Name)
		}
	}
}

// What is told after the layers of a wall for a place of it is no layer: beads, metal
// trims, and sheets on what a sheet has covered.
func TestDetailsAreNoLayers(t *testing.T) {
	doc := build(t, `
Layers from inside to outside, then details. Site: Fargo, ND

Wall type|Layer|Item|Material|Substrate|Thickness, in
W1|1|Board|glass-mat sheathing||0.625
W1|2|Barrier|rubberized asphalt membrane|glass-mat sheathing|0.04
W1|3|Insulation|mineral wool board|rubberized asphalt membrane|4
W1|4|Second barrier|housewrap|mineral wool board|0.01
W1|5|Skin|prefinished steel||0.03
W1|6|Head drip|galvanized steel sheet||0.03
W1|7|Barrier at jambs|rubberized asphalt membrane|glass-mat sheathing|0.04
W1|8|Bead|silicone sealant|glass-mat sheathing|
`, document.Settings{})
	if len(doc.Profiles) != 1 {
		t.Fatalf("%d profiles", len(doc.Profiles))
	}
	rows := []int{}
	for _, l := range doc.Profiles[0].Layers {
		rows = append(rows, l.At.Row)
	}
	if want := []int{4, 5, 6, 7, 8}; !slices.Equal(rows, want) {
		t.Errorf("layers in rows %v, want %v", rows, want)
	}
	if n := len(doc.Profiles[0].Lines); n != 8 {
		t.Errorf("%d lines", n)
	}
}

func result(t *testing.T, doc *document.Document, i int) hygro.Result {
	t.Helper()
	r, ok := doc.Profiles[i].Result.(hygro.Result)
	if !ok {
		t.Fatalf("no result: %+v", doc.Profiles[i])
	}
	return r
}

// The studs that a batt lies between are no layer behind it.
func TestStudsAreNoLayer(t *testing.T) {
	doc := build(t, walls, document.Settings{})
	counted := map[string]bool{}
	for _, l := range result(t, doc, 0).Layers {
		counted[l.Name] = l.Counted
	}
	if counted["2x6 wood studs"] || !counted["glass wool batt"] || !counted["OSB sheathing"] {
		t.Errorf("counted %v", counted)
	}
}

// What a cladding is fixed on is no layer before or behind it.
func TestRailsAreNoLayer(t *testing.T) {
	doc := build(t, "Layers are listed inside to outside\n\nWall type|Layer|Material\nW1|1|Concrete block\nW1|2|Mineral wool board\nW1|3|Zinc panel on galvanized steel girts\nW2|1|Concrete block\nW2|2|Stucco on expanded polystyrene\n", document.Settings{})
	if len(doc.Profiles) != 2 {
		t.Fatalf("%d profiles", len(doc.Profiles))
	}
	if got := doc.Profiles[0].Layers; len(got) != 3 || got[2].Text != "Zinc panel" {
		t.Errorf("layers %+v", got)
	}
	if got := doc.Profiles[1].Layers; len(got) != 3 {
		t.Errorf("layers %+v: insulation behind stucco is one", got)
	}
}

// A product that a section in one cell names lies there with what its data says of it, as
// one in a row of its own does.
func TestProductsInOneCell(t *testing.T) {
	doc := build(t, "Layers are listed outside to inside\n\nWall type|Layers\nW1|Stucco / LM-1 / plywood / glass wool batt / gypsum board\nW2|Stucco / LM-1 / CMU\n\nTag|Type|Thickness mm|Vapor ng/(Pa·s·m²)\nLM-1|fluid-applied acrylic air barrier, permeable|0.7|740\nLM-2|fluid-applied acrylic air barrier, permeable|0.7|1100\n", document.Settings{})
	if len(doc.Profiles) != 2 {
		t.Fatalf("%d profiles", len(doc.Profiles))
	}
	for _, layer := range doc.Profiles[0].Layers {
		if layer.Text == "LM-1" {
			if layer.VaporBy != "stated" || *layer.VaporNG != 740 || *layer.Thick != 0.7 {
				t.Errorf("%s %v, %v mm", layer.VaporBy, *layer.VaporNG, *layer.Thick)
			}
			return
		}
	}
	t.Error("the sheet is no layer")
}

// Of two products that a section names in place of one another a wall has one, and they do
// not meet; of two materials the second may tell more, and a comma parts two layers.
func TestProductsInPlaceOfOneAnother(t *testing.T) {
	for layers, want := range map[string]struct {
		count int
		meet  bool
	}{
		"Stucco, SH-1 or SH-2, CMU":          {3, false},
		"Stucco, SH-1, SH-2, CMU":            {4, true},
		"Stucco, SH-1 or existing SH-2, CMU": {3, false},
		"Stucco, plywood or OSB, CMU":        {4, false},
	} {
		doc := build(t, "Layers are listed outside to inside\n\nWall type|Layers\nW1|"+layers+"\nW2|Stucco, SH-1, CMU\n\nTag|Type|Thickness mm|Vapor ng/(Pa·s·m²)\nSH-1|fluid-applied acrylic air barrier, permeable|0.7|740\nSH-2|butyl sheet|0.7|1\n", document.Settings{})
		if len(doc.Profiles) == 0 || len(doc.Profiles[0].Layers) != want.count {
			t.Errorf("%s: %d profiles %+v", layers, len(doc.Profiles), doc.Profiles)
		}
		met := slices.ContainsFunc(doc.Contacts, func(c contact.Contact) bool { return c.A.Product == "SH-1" && c.B.Product == "SH-2" })
		if met != want.meet {
			t.Errorf("%s: the two meet %v", layers, met)
		}
	}
}

// A vented space in a row of its own leaves what lies outside of it out of the balance, from
// whichever side the layers are listed; a board there does not.
func TestVentedSpaceInARow(t *testing.T) {
	for _, space := range []string{"20 mm ventilated cavity", "OSB sheathing 11 mm"} {
		vented := strings.Contains(space, "ventilated")
		for side, rows := range map[string][]string{
			"outside to inside": {"Fibre cement board 12 mm", space, "Mineral wool 100 mm", "Concrete block 190 mm", "Gypsum board 13 mm"},
			"inside to outside": {"Gypsum board 13 mm", "Concrete block 190 mm", "Mineral wool 100 mm", space, "Fibre cement board 12 mm"},
		} {
			text := "Layers are listed " + side + ". Site: Fargo, ND\n\nWall type|Layer|Material\n"
			for i, row := range rows {
				text += "W1|" + strconv.Itoa(i+1) + "|" + row + "\n"
			}
			text += "W2|1|Concrete block 190 mm\nW2|2|Mineral wool 100 mm\n"
			doc := build(t, text, document.Settings{})
			for _, l := range result(t, doc, 0).Layers {
				if want := !vented || !strings.HasPrefix(l.Name, "Fibre"); l.Counted != want {
					t.Errorf("%s, %s: %s counted %v", side, space, l.Name, l.Counted)
				}
			}
		}
	}
}

// What stands before a vented space in a section told in one cell dries to the outside,
// whichever side it is told from; a space that is not vented parts nothing.
func TestSkinBeforeAVentedSpace(t *testing.T) {
	for layers, want := range map[string]string{
		"CMU / mineral wool / 40 mm ventilated cavity / cement board":     "cement board",
		"CMU / mineral wool / 40 mm unvented cavity / cement board":       "",
		"cement board / 40 mm ventilated cavity / mineral wool / CMU":     "cement board",
		"gypsum board / vented cavity / mineral wool / OSB / butyl sheet": "",
	} {
		doc := build(t, "Layers are listed inside to outside\n\nWall type|Layers\nW1|"+layers+"\nW2|CMU / mineral wool / brick\n", document.Settings{})
		got := ""
		for _, layer := range doc.Profiles[0].Layers {
			if slices.Contains(layer.Keys, "vented") {
				got += layer.Text
			}
		}
		if got != want {
			t.Errorf("%s: %q is vented, want %q", layers, got, want)
		}
	}
}
