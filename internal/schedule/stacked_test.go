package schedule_test

import "testing"

// scattered lists one material a row at its place, under a heading that speaks of layers.
const scattered = `Item | Wall | Where | Layer | Code | Goes on | Put up
1 | A1 | Plinth, west | Waterproofing | SBS sheet | Concrete | 2026-05-04
2 | A1 | Upper storeys, west | Air barrier | SBS sheet | Plywood | 2026-05-11
3 | A1 | Upper storeys, south | Air barrier | SBS sheet | Plywood | 2026-05-18
4 | A1 | Upper storeys, south | Insulation | Mineral wool | SBS sheet | 2026-05-25
5 | B2 | Plant room | Air barrier | Acrylic coating | Plywood | 2026-06-01
6 | B2 | Plant room | Vapor control | Polyethylene sheet | Studs | 2026-06-08`

func TestRowsByPlaceAreNoStack(t *testing.T) {
	s := readPages(t, page{name: "Materials", grid: scattered})
	for _, l := range s.Lines {
		if l.Order != "" {
			t.Errorf("row %d has layer number %q: the rows of A1 lie at several places", l.Row, l.Order)
		}
	}
}

// stacked names a place for each layer, and each layer once.
const stacked = `Item | Wall | Where | Layer | Code | Goes on | Put up
1 | A1 | Room side | Board | Gypsum board | Studs | 2026-05-04
2 | A1 | Stud space | Insulation | Glass fiber batts | Studs | 2026-05-11
3 | A1 | On sheathing | Air barrier | SBS sheet | Plywood | 2026-05-18
4 | B2 | Room side | Board | Gypsum board | Studs | 2026-06-01
5 | B2 | On sheathing | Air barrier | SBS sheet | Plywood | 2026-06-08`

func TestLayersWithPlacesAreAStack(t *testing.T) {
	s := readPages(t, page{name: "Materials", grid: stacked})
	want := []string{"1", "2", "3", "1", "2"}
	for i, l := range s.Lines {
		if l.Order != want[i] {
			t.Errorf("row %d has layer number %q, want %q", l.Row, l.Order, want[i])
		}
	}
}

// "Layer function" heads what each row is for; rows that tell their own bed and neighbors are
// details, and no layers over one another.
func TestLayerFunctionOfDetails(t *testing.T) {
	rows := "\nA | 1 | Sheet | butyl sheet | CMU | brick\nA | 2 | Sheet | butyl sheet | steel | wool\nA | 3 | Sheet | butyl sheet | CMU | wool\nA | 4 | Bead | silicone sealant | steel frame | steel, rod\nA | 5 | Sheet | butyl sheet | plywood | wool"
	s := readPages(t, page{name: "S", grid: "Wall | Item | Layer function | Material | Substrate | Touches" + rows})
	for _, l := range s.Lines {
		if l.Order != "" {
			t.Errorf("%s is layer %s", l.Mark, l.Order)
		}
	}
	s = readPages(t, page{name: "S", grid: "Wall | Layer | Material | Primer\nA | Cladding | brick | -\nA | Air barrier | butyl sheet | none\nA | Sheathing | plywood | -"})
	for i, l := range s.Lines {
		if l.Order != string(rune('1'+i)) {
			t.Errorf("row %d is layer %q", i, l.Order)
		}
	}
}
