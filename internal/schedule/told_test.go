package schedule_test

import (
	"slices"
	"strings"
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

// A note of the job keeps neighbors off the products that it begins with; one that begins
// with a place, or tells what they may touch, bars nothing.
func TestNotesBarNeighbors(t *testing.T) {
	for note, want := range map[string]string{
		"4  ZR-1, ZR-2 touch no EPDM, no silicone. Use KY-5.": "EPDM, silicone",
		"ZR-1 and ZR-2 must not touch creosote":               "creosote",
		"Keep ZR-1 dry; ZR-2 may touch EPDM":                  "",
		"Where ZR-1 and ZR-2 meet no EPDM is in the way":      "",
		"ZR-1 and ZR-2 meet at the corner, no EPDM there":     "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | Lap\nD1 | ZR-1 | block | none | 75 mm\nD2 | ZR-2 | block | none | 75 mm"},
			page{name: "P", grid: "Tag | Type | Open, days | Lay from, °C\nZR-1 | rubberized asphalt sheet | 30 | 5\nZR-2 | butyl sheet | 30 | 5"}, page{name: "Rules", grid: "Rules\n" + note})
		for _, tag := range []string{"ZR-1", "ZR-2"} {
			var got []string
			for _, off := range product(t, s, tag).KeepOff {
				got = append(got, off.Text)
			}
			if strings.Join(got, ", ") != want {
				t.Errorf("%s: %s keeps off %q, want %q", note, tag, got, want)
			}
		}
	}
}

// A cell that ends by denying that anything touches the row's own sheet keeps all that it
// names beside it near; one that denies another contact does not.
func TestCellDeniesTouch(t *testing.T) {
	for cell, want := range map[string]bool{
		"EPDM flap ends on a steel plate - no touch on ZR-1": true,
		"EPDM flap ends on ZR-1, no touching with brick":     false,
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer | Next to | Lap\nD1 | ZR-1 | block | none | " + cell + " | 75 mm\nD2 | ZR-1 | block | none | brick | 75 mm"},
			page{name: "P", grid: "Tag | Type | Open, days | Lay from, °C\nZR-1 | rubberized asphalt sheet | 30 | 5\nZR-2 | butyl sheet | 30 | 5"})
		for _, it := range line(t, s, "D1").Items {
			if it.Family == "epdm-membrane" && slices.Contains(it.Signals, "no_contact") != want {
				t.Errorf("%s: %v, want %v", cell, it.Signals, want)
			}
		}
	}
}

// A pull test in kPa is one in MPa.
func TestPullInKilopascals(t *testing.T) {
	s := read(t, "Mark | Material | Substrate | Primer | Lap | Remarks\nD1 | butyl sheet | block | none | 75 mm | pull tests 85 kPa, 3 of 3\nD2 | butyl sheet | block | none | 75 mm | tested at 75 Pa")
	if f := line(t, s, "D1").Figures["pull_pa"]; !near(f.Min, 85000) || f.Text != "85 kPa" {
		t.Errorf("%+v, want 85 kPa", f)
	}
	if _, told := line(t, s, "D2").Figures["pull_pa"]; told {
		t.Error("a pressure of air is no pull")
	}
}

// A note that begins with the code of a wall tells of no product, though a remark names
// the wall as well.
func TestWallsAreNoProducts(t *testing.T) {
	s := readPages(t, page{name: "Conditions", grid: `
EW2 has wool in its studs: sheet 8 perms or more, 40 mil. Primer on all faces.
KB2 SBS sheet, 40 mil. Lay from 20 F up. Open 30 days.`}, page{name: "Work", grid: `
Mark|Wall|Material|Substrate|Primer|Installed|Comments
A-1|EW1|KB2|concrete|none|2026-06-01|laps on to that of EW2
A-2|EW2|KB2|gypsum|none|2026-06-08|`})
	if len(s.Products) != 1 || s.Products[0].Tag != "KB2" {
		t.Errorf("products %+v, want KB2 alone", s.Products)
	}
	if l := limit(s, "vapor_ng"); l == nil || l.Scope != "ew2" {
		t.Errorf("limit %+v, want one of EW2", l)
	}
}

// A remark that tells where a thing is describes no product by what it is stuck to.
func TestWhereAThingIs(t *testing.T) {
	for remark, want := range map[string]string{
		"TPO is glued to gypsum cover board":          "",
		"EPDM under steel counterflashing":            "",
		"QX-2 is held on the aluminum angle":          "",
		"QX-2 is butyl on foil, 40 mil, open 30 days": "butyl-flashing-tape",
	} {
		s := readPages(t, page{name: "Work", grid: "\nMark|Material|Substrate|Primer|Touches|Installed|Comments\nA-1|QX-2 sheet|concrete|none|EPDM or TPO edge|2026-06-01|" + remark + "\nA-2|QX-2 sheet|gypsum|none|EPDM or TPO edge|2026-06-08|"})
		got := ""
		for _, p := range s.Products {
			got += p.Family
		}
		if got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}

// The R-value of an insulation is a part of its words, and no product of that name.
func TestRValueIsNoProduct(t *testing.T) {
	s := readPages(t, page{name: "Work", grid: `
Mark|Wall|Material|Substrate|Primer|Installed|Comments
A-1|W3|QX-2 sheet|gypsum|none|2026-06-01|R-21 batts, 10 mil poly inside
A-2|W3|QX-2 sheet|gypsum|none|2026-06-08|QX-2 butyl sheet, 40 mil, open 30 days`}, page{name: "Walls", grid: `
Wall|Layers
W3|siding / QX-2 / gypsum / 6 in. stud, R-21 batts / gypsum board`})
	got := ""
	for _, p := range s.Products {
		got += p.Tag + " "
	}
	if got != "QX-2 " || s.Lines[0].Texts["remark"] == "" {
		t.Errorf("products %q, remark %q", got, s.Lines[0].Texts["remark"])
	}
}
