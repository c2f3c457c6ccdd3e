package schedule_test

import "testing"

// A title block of labels is no data of a product, and the site of the work comes before the
// address of who wrote it.
func TestSiteBeforeTheOffice(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | Lap\nD1 | butyl sheet | plywood | none | 3 in"}, page{name: "Front", grid: `
ALDER ENCLOSURES | Duluth, MN
Project | Mill Street flats, four floors over shops
Site | Fargo, North Dakota
File no. | 26-114
Issue | B - for the contractor
Units | in, deg F, perm
Sheets | S = schedule; the walls are on the drawings`})
	if len(s.Products) > 0 {
		t.Errorf("products %+v", s.Products)
	}
	if p := s.Project.Places; len(p) == 0 || p[0].Text != "Site Fargo, North Dakota" {
		t.Errorf("places %+v", p)
	}
}
