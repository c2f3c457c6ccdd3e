package schedule_test

import "testing"

// "Same roll, winter compound" is the product above with more said of it.
func TestSameSheetAsAbove(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | ZB-2 | plywood | none`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open
ZB-1 | self-adhered rubberized asphalt | 5 | 90
ZB-2 | Same roll, winter adhesive | -5 | 90`})
	if p := product(t, s, "ZB-2"); p.Role != "membrane" || p.Family != product(t, s, "ZB-1").Family {
		t.Errorf("ZB-2 is a %s, %s", p.Role, p.Family)
	}
}

// A limit for two places names both.
func TestLimitForTwoPlaces(t *testing.T) {
	s := read(t, oneWall+"Sheet at pool hall walls and office south: 0.1 perm or less.\nSheet at pool hall, and north louvers by others: 0.2 perm or less.\n")
	for i, want := range []string{"pool hall and office south", "pool hall"} {
		if l := s.Project.Limits[i]; l.Kind != "vapor_ng" || l.Scope != want {
			t.Errorf("scope %q, want %q", l.Scope, want)
		}
	}
}

// Two columns may tell of the place under one heading; days below "place" are none.
func TestPlacesUnderOneHeading(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
WHERE | | PLANNED | | Membrane | Substrate | Primer
Opening / joint | Wall | Place | Cover | | |
Roof curb | W-1 | 4 May 2027 | 12 May 2027 | butyl sheet | plywood | none
Stair joint | " | 5 May 2027 | 12 May 2027 | butyl sheet | plywood | none`, merges: []string{"A1:B1", "C1:D1"}})
	if got := s.Lines[1]; got.Place != "Stair joint; W-1" || got.Dates["install"].From != "2027-05-05" {
		t.Errorf("place %q, %+v", got.Place, got.Dates)
	}
}
