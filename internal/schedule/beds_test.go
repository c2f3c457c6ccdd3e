package schedule_test

import (
	"fmt"
	"strings"
	"testing"
)

// A bed that another row lays is as old as that row's work, and one that names a row of
// something else is not.
func TestBedOfAnotherRow(t *testing.T) {
	s := read(t, `
Mark | Material | Substrate | Installed | Finished
A1 | Concrete block | old wall | 4 May 2026 | 6 May 2026
A2 | SBS sheet | fresh block, row A1 | 9 May 2026 | 9 May 2026
A3 | SBS sheet | block at grid line A1 | 9 May 2026 | 9 May 2026
A4 | butyl tape | sheet (item A2) | 12 May 2026 | 12 May 2026`)
	for mark, want := range map[string]string{"A2": "2026-05-06", "A3": "", "A4": ""} {
		if got := line(t, s, mark).Dates["placed"].From; got != want {
			t.Errorf("%s: bed of %q, want %q", mark, got, want)
		}
	}
	if got := line(t, s, "A2").Spans["concrete_age_days"].Max; got != 3 {
		t.Errorf("the block is %d days old, want 3", got)
	}
}

// The day of a wash is one of the bed, whichever words tell it.
func TestDayOfTheWash(t *testing.T) {
	s := read(t, `
Mark | Material | Substrate | Installed | Remarks
B1 | SBS sheet | limestone, hosed off 3 Oct 2026 | 4 Oct 2026 |
B2 | SBS sheet | brick | 9 Oct 2026 | brick power washed 2 Oct 2026
B3 | SBS sheet | brick, laid 1 May 2026 | 9 Oct 2026 |`)
	for mark, want := range map[string]string{"B1": "2026-10-03", "B2": "2026-10-02", "B3": ""} {
		if got := line(t, s, mark).Dates["washed"].From; got != want {
			t.Errorf("%s: washed %q, want %q", mark, got, want)
		}
	}
	if got := line(t, s, "B2").Spans["drying_days"].Max; got != 7 {
		t.Errorf("%d days to dry, want 7", got)
	}
}

// A build-up told in one cell tells the thickness of a layer right beside it.
func TestThicknessInABuildUp(t *testing.T) {
	s := read(t, `
Type | Where | Layers
P1 | north | gypsum board / 6 in. studs with mineral wool / XPS 2 in. / 4 in. rigid polyiso / brick (90 mm)
P2 | south | gypsum board / mineral wool, 3 to 4 in. / brick`)
	want := map[string]float64{"xps": 50.8, "polyiso": 101.6, "clay-brick": 90, "mineral-wool": 152.4}
	for _, l := range s.Lines {
		for _, it := range l.Items {
			switch mm, told := want[it.Family]; {
			case it.Slot != "layers":
			case told && l.Texts["type"] == "P1" && (it.ThickMM == nil || *it.ThickMM < mm-0.1 || *it.ThickMM > mm+0.1):
				t.Errorf("%s %s: %v, want %v", it.Text, it.Family, it.ThickMM, mm)
			case !told && it.ThickMM != nil:
				t.Errorf("%s %s is %v mm, but nothing tells that", it.Text, it.Family, *it.ThickMM)
			}
		}
	}
}

// The cell of a row's own insulation tells its thickness; of a list in words a length
// between two layers is that of the second.
func TestThicknessToldBesideTheBoard(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Mark|Material|Substrate|Installed
A-1|3 in. of mineral wool, one layer|SBS sheet|2026-06-01
A-2|Mineral wool over the sheet|SBS sheet|2026-06-01`}, page{name: "Types", grid: `
Type|Where|What it is made of
W1|South|Gypsum board, steel studs, SBS sheet, 4 in. mineral wool, 1 1/2 in. air, brick.
W2|North|CMU, 8 in., SBS sheet, 3 in. mineral wool, brick.`})
	if f := line(t, s, "A-1").Figures["board_mm"]; f.Min == nil || *f.Min < 76 || *f.Min > 77 {
		t.Errorf("A-1 is %+v, want 3 in.", f)
	}
	if f, ok := line(t, s, "A-2").Figures["board_mm"]; ok {
		t.Errorf("A-2 is %+v, which nothing tells", f)
	}
	thick := func(text string) bool { return strings.HasPrefix(text, "mineral wool") || text == "CMU" }
	for _, l := range s.Lines {
		for _, it := range l.Items {
			if it.Slot == "layers" && (it.ThickMM != nil) != thick(it.Text) {
				t.Errorf("%s of %s: %v", it.Text, l.Texts["type"], it.ThickMM)
			}
		}
	}
}

// A bead in the substrate cell of a sealant is that sealant, and what it lies on its bed;
// a heading of what things go on and stand against is one of beds.
func TestBedsOfBeads(t *testing.T) {
	s := read(t, `Mark | Material | On / against | Primer
1 | solvent-release butyl sealant | bead on rubberized asphalt membrane edge | none
2 | rubberized asphalt membrane | CMU, dry | none
`)
	for i, want := range []string{"rubberized-asphalt-membrane", "concrete-masonry"} {
		beds := ""
		for _, it := range s.Lines[i].Items {
			if it.Slot == "substrate" || it.Slot == "under" {
				beds += it.Slot + " " + it.Family
			}
		}
		if beds != "substrate "+want {
			t.Errorf("row %d lies on %q", i+1, beds)
		}
	}
}

// A wash may be told with what is washed before its last word.
func TestDayOfTheWashInOtherWords(t *testing.T) {
	s := read(t, `
Mark | Material | Substrate | Installed | Remarks
B1 | SBS sheet | limestone | 14 Oct 2026 | Mason rinses the stone down 14 Oct 2026
B2 | SBS sheet | brick | 19 Oct 2026 | hosed the face off 17 Oct 2026`)
	for mark, want := range map[string]string{"B1": "2026-10-14", "B2": "2026-10-17"} {
		if got := line(t, s, mark).Dates["washed"].From; got != want {
			t.Errorf("%s: washed %q, want %q", mark, got, want)
		}
	}
}

// In a workbook of millimeters a build-up may tell its insulation by the figure alone;
// what is counted, and what is not insulation, has no such thickness.
func TestBareThicknessInABuildUp(t *testing.T) {
	types := page{name: "Types", grid: `
Type|Where|What it is made of
W1|South|100 brick / 35 air / 90 mineral wool / SBS sheet / 140 wood stud with batts / 13 gypsum board
W2|North|brick / 2 layers mineral wool / SBS sheet / gypsum board, 90 XPS`}
	books := map[string]map[string]float64{
		"Lap mm": {"mineral wool": 90, "batts": 140},
		"Lap in": {},
	}
	for heading, want := range books {
		s := readPages(t, page{name: "Walls", grid: "\nMark|Material|Substrate|Installed|" + heading + "\nA-1|SBS sheet|block|2026-06-01|75"}, types)
		for _, l := range s.Lines {
			for _, it := range l.Items {
				if it.Slot != "layers" || it.Class != "insulation" || it.Text == "XPS" {
					continue
				}
				mm := want[it.Text]
				if l.Mark == "W2" {
					mm = 0
				}
				if (it.ThickMM == nil) != (mm == 0) || it.ThickMM != nil && *it.ThickMM != mm {
					t.Errorf("%s: %s of %s: %v, want %v", heading, it.Text, l.Mark, it.ThickMM, mm)
				}
			}
		}
	}
}

// In a workbook with its laps in inches the insulation of a build-up, and that of a row, may
// be told by a small figure alone. A count of layers, a larger figure and what lies between
// two units are none.
func TestBareInchesOfInsulation(t *testing.T) {
	s := readPages(t, page{name: "Work", grid: `
Mark|Wall|Material|Substrate|Touches|Lap in
A-1|K1|SBS sheet|block|2-1/2 polyiso|3
A-2|K1|SBS sheet|block|2 layers polyiso|3
A-3|K1|SBS sheet|block|40 XPS|3
A-4|K1|SBS sheet|block|brick, 2 ties|3`}, page{name: "Walls", grid: `
Wall|Layers, out to in
K1|brick / 2 air / 3 polyiso / SBS sheet / 8 block
K2|panel / 2 layers wool / SBS sheet / 8 block`})
	want := map[string]string{"A-1": "polyiso 63.5", "A-2": "polyiso -", "A-3": "xps -", "K1": "polyiso 76.2", "K2": "mineral-wool -"}
	for _, l := range s.Lines {
		for _, it := range l.Items {
			if it.Class != "insulation" {
				continue
			}
			got := it.Family + " -"
			if it.ThickMM != nil {
				got = fmt.Sprintf("%s %.1f", it.Family, *it.ThickMM)
			}
			if mark := l.Mark + l.Texts["type"]; got != want[mark] {
				t.Errorf("%s: %s, want %s", mark, got, want[mark])
			}
			if f, told := l.Figures["insulation_mm"]; told != (l.Mark == "A-1") {
				t.Errorf("%s: insulation %+v", l.Mark, f)
			}
		}
	}
}

// A face that is on a board is the bed, whatever it is of; what only says how the sheet lies
// is none.
func TestFaceOfTheBed(t *testing.T) {
	for words, want := range map[string]string{
		"Scrim facing over plywood":                "",
		"White jacket on the mineral wool":         "",
		"Continuous over plywood":                  "osb-plywood-sheathing",
		"Plywood facing the court":                 "osb-plywood-sheathing",
		"Both faces, skins sanded, over the block": "concrete-masonry",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\nD1 | butyl sheet | "+words+" | none\nD2 | butyl sheet | CMU | none")
		if got := items(line(t, s, "D1"), "substrate"); got != want {
			t.Errorf("%s: the bed is %q, want %q", words, got, want)
		}
	}
}

// The size of an insulation may stand before the word that its tag explains in brackets; the
// number of its layers is none.
func TestBareThicknessBeforeABracket(t *testing.T) {
	for layer, want := range map[string]float64{"90 wool (IN-7)": 90, "120 stone wool (IN-7)": 120, "25 layers (IN-7)": 0, "wool (IN-7)": 0} {
		s := readPages(t, page{name: "Walls", grid: "\nMark|Material|Substrate|Installed|Lap mm\nA-1|SBS sheet|block|2026-06-01|75"},
			page{name: "Types", grid: "Type|Where|What it is made of\nW1|South|brick, 35 air, " + layer + ", SBS sheet, block\nW2|North|zinc, SBS sheet, block"},
			page{name: "Products", grid: "Tag|Product|Type|Days open\nIN-7|Tansy 40|mineral wool board|90\nFM-2|Yarrow|SBS sheet|60"})
		got, found := 0.0, false
		for _, l := range s.Lines {
			for _, it := range l.Items {
				if it.Product == "IN-7" && it.Slot == "layers" {
					found = true
					if it.ThickMM != nil {
						got = *it.ThickMM
					}
				}
			}
		}
		if got != want || !found {
			t.Errorf("%s: %v, want %v", layer, got, want)
		}
	}
}

// The tag of a board may be followed by its size alone in a list of walls, in a workbook of millimeters; a tag
// without one, and a workbook of inches, tell none.
func TestSizeAfterTheTagInABuildUp(t *testing.T) {
	for heading, want := range map[string]float64{"Lap mm": 90, "Lap in": 0} {
		s := readPages(t, page{name: "Walls", grid: "\nMark|Material|Substrate|Installed|" + heading + "\nA-1|SBS sheet|block|2026-06-01|75\nA-2|WB-2|block|2026-06-01|-"},
			page{name: "Products", grid: "\nTag|Type|Apply min C|Max days open\nWB-2|mineral wool board|-5|60\nXB-1|XPS board|-5|60\nFM-1|SBS asphalt sheet|5|60"},
			page{name: "Types", grid: "\nType|Where|What it is made of\nW1|South|brick; WB-2 90; SBS sheet; block\nW2|North|brick; WB-2 / XB-1; block"})
		told := 0.0
		for _, l := range s.Lines {
			for _, it := range l.Items {
				if it.Slot == "layers" && it.Class == "insulation" && it.ThickMM != nil {
					told += *it.ThickMM
				}
			}
		}
		if told != want {
			t.Errorf("%s: %v, want %v", heading, told, want)
		}
	}
}

// What the cell of the work itself says that it goes on is its bed where the cell for beds
// names none; where that names one, the row has no second.
func TestBedOfTheTask(t *testing.T) {
	for prep, want := range map[string]string{
		"joints struck, fins off": "concrete-masonry",
		"mortar fins off, dry":    "concrete-masonry",
		"plywood, dry":            "osb-plywood-sheathing",
	} {
		s := read(t, "Mark | Task and membrane | Prep | Primer\n1 | SBS sheet on block | "+prep+" | none\n2 | SBS sheet on block | "+prep+" | none\n")
		got := ""
		for _, it := range line(t, s, "1").Items {
			if it.Slot == "substrate" {
				got += it.Family
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", prep, got, want)
		}
	}
}

// Laps under a heading that names a roll make it no column of materials.
func TestRollsAndTheirLaps(t *testing.T) {
	for cell, want := range map[string]string{"side 75 / end 150": "lap", "SBS sheet, laps 75": "material"} {
		s := read(t, "Mark | Task / membrane | Substrate | Roll / lap | Primer\n1 | SBS sheet | CMU | "+cell+" | none\n2 | SBS sheet | plywood | "+cell+" | none\n")
		if got := s.Reading.Tables[0].Columns[3].Slot; got != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}
