package schedule_test

import "testing"

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
