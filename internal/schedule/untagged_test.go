package schedule_test

import (
	"strings"
	"testing"
)

// A material without a tag stands in the words for what it is.
func TestMaterialWithoutTag(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Element | Goes on | Primer | Remarks
1 | BT-1 | strip at slab edge | concrete | KP-1 | none
2 | - | Corridor finish: vinyl wall covering | gypsum board | n/a | none
3 | - | Corridor finish | gypsum board | n/a | none
4 | BT-1 | strip behind latex paint | concrete | KP-1 | none`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open
BT-1 | butyl sheet | 20 | 60
KP-1 | solvent primer | 20 | -`}, page{name: "Legend", grid: "n/a = not applicable. NA = not applicable"})
	for mark, want := range map[string]string{"1": "BT-1", "2": "vinyl wall covering", "3": "", "4": "BT-1"} {
		l := line(t, s, mark)
		got := ""
		if it := l.Main(); it != nil {
			got = it.Text
		}
		if got != want {
			t.Errorf("row %s is about %q, want %q", mark, got, want)
		}
		if p := items(l, "primer"); mark == "2" && p != "" {
			t.Errorf("row 2 has the primer %q, and its cell says that there is none", p)
		}
	}
}

// Tags under a heading for what a thing is are the tags of the rows.
func TestTagsUnderALooseHeading(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
No. | What it is | Goes on | Primer | Remarks
1 | BT-1 | concrete | KP-1 | none
2 | BT-1 | CMU | KP-1 | none`}, page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open
BT-1 | butyl sheet | 20 | 60
KP-1 | solvent primer | 20 | -`})
	if it := line(t, s, "1").Main(); it == nil || it.Product != "BT-1" {
		t.Errorf("row 1 is about %+v, want BT-1", it)
	}
}

// What is installed may stand under a heading for its kind, with words around the tags;
// a column of kinds beside one of tags stays what it is.
func TestKindsInstalled(t *testing.T) {
	data := page{name: "P", grid: `
Tag | Type | Apply min °F | Max days open
BT-1 | butyl sheet | 20 | 60
DR-2 | stainless drip edge | - | -
KP-1 | solvent primer | 20 | -`}
	s := readPages(t, page{name: "S", grid: `
Ln | Where | Type | Goes on | Prime | Laps
1 | N wall | BT-1 | concrete | KP-1 | 3
2 | base | BT-1 + DR-2 drip | CMU | KP-1 | 3
3 | E wall | " | " | " | 3
4 | joint | BT-1 strip 12 in. | CMU | KP-1 | 3`}, data)
	for _, mark := range []string{"1", "2", "3", "4"} {
		if it := line(t, s, mark).Main(); it == nil || it.Product != "BT-1" {
			t.Errorf("row %s is about %+v, want BT-1", mark, it)
		}
	}
	s = readPages(t, page{name: "S", grid: `
Ln | Tag | Type | Goes on | Prime
1 | BT-1 | strip at the head | concrete | KP-1`}, data)
	if l := line(t, s, "1"); l.Texts["type"] != "strip at the head" {
		t.Errorf("the kind beside a tag is %q", l.Texts["type"])
	}
}

// A column of names of the product list is what the rows are about, and the one beside it,
// which is headed as a material is, tells the kind of part; codes of walls under "Type" are
// what the rows stand under. Where that column names materials itself, both count.
func TestPartsAndProducts(t *testing.T) {
	parts := `Ref | Type | Component | Product | Substrate | Primer | Lap
1 | EX1 | Membrane, bay A | Hollow SB-5, 1 m roll | block | none | 3 in
2 | EX1 | Strip over XPS | Hollow SB-5, 9 in. | block | none | 3 in
3 | EX2 | Flashing, sill | Hollow BT (white) | block | none | 3 in
4 | EX2 | Membrane, bay C | Hollow BT, full | block | none | 3 in`
	data := "Product | What it is | Stay bare, days | Min appl temp F\nHollow SB-5 | SBS sheet | 60 | 40\nHollow BT | butyl sheet | 90 | 25"
	s := readPages(t, page{name: "S", grid: parts}, page{name: "D", grid: data})
	l := line(t, s, "2")
	if l.Texts["material"] != "Hollow SB-5, 9 in." || l.Texts["type"] != "Strip over XPS" || l.Group != "EX1" || l.Main() == nil || l.Main().Product != "Hollow SB-5" {
		t.Errorf("material %q, type %q, group %q, main %v", l.Texts["material"], l.Texts["type"], l.Group, l.Main())
	}
	swap := strings.NewReplacer("Hollow SB-5, 1 m roll", "reviewed", "Hollow SB-5, 9 in.", "open", "Hollow BT (white)", "closed", "Hollow BT, full", "open")
	s = readPages(t, page{name: "S", grid: swap.Replace(parts)}, page{name: "D", grid: data})
	if l := line(t, s, "2"); l.Texts["material"] != "Strip over XPS" {
		t.Errorf("beside no product: material %q", l.Texts["material"])
	}
}
