package schedule_test

import (
	"strings"
	"testing"
)

// The codes of the column that no heading tells stand on a sheet of their own, one short
// word in a cell and its meaning in the next.
func TestCodesOfShelter(t *testing.T) {
	table := "Mark | Where | Sheet | Goes on | Put up | Wk\n1 | East | SBS sheet | CMU | 2026-01-12 | OA\n2 | West | SBS sheet | CMU | 2026-01-19 | TH\n3 | South | SBS sheet | CMU | 2026-01-26 | TH"
	for name, tc := range map[string]struct {
		list          string
		heated, slots int
	}{
		"in two cells":     {list: "Abbreviations\nOA | in the open, no heat\nTH | tent, heated\nMW | mineral wool", heated: 2, slots: 1},
		"two in one row":   {list: "Key to short words\nOA / TH | open air / in heated tent", heated: 2, slots: 1},
		"of another thing": {list: "Abbreviations\nOA | north crew\nTH | south crew"},
		"not all told":     {list: "Abbreviations\nTH | tent, heated"},
		"no list of words": {list: "Issue 3\nOA | in the open, no heat\nTH | tent, heated"},
	} {
		s := readPages(t, page{name: "Rows", grid: table}, page{name: "Words", grid: tc.list})
		heated, slots := 0, 0
		for _, l := range s.Lines {
			for _, said := range l.Signals {
				if said.ID == "heated" && !said.No && said.Slot == "shelter" {
					heated++
				}
			}
		}
		for _, c := range s.Reading.Tables[0].Columns {
			if c.Slot == "shelter" {
				slots++
			}
		}
		if heated != tc.heated || slots != tc.slots {
			t.Errorf("%s: %d rows heated and %d columns of shelter, want %d and %d", name, heated, slots, tc.heated, tc.slots)
		}
	}
}

// A note lists the pairs of products for which letters are at hand.
func TestLetterPairs(t *testing.T) {
	for note, want := range map[string]string{
		"Letters on file: JS-1 and JS-2 with AB-1; JS-3 w/ AB-2, mill aluminum. No letter = no contact": "JS-1,JS-2|AB-1 JS-3|AB-2,aluminum only",
		"Both makers' letters in hand for JS-1 with AB-1, AB-2. AB-2 with primer only.":                 "JS-1|AB-1,AB-2",
		"Letters on file: JS-1 with AB-1, JS-2 with AB-2":                                               "",
		"Letters on file: JS-1 with AB-1; JS-2 with AB-2 pending. Contact only with a letter.":          "JS-1|AB-1 only",
		"Letters to follow: JS-1 with AB-1":                                                             "",
		"JS-3 is accepted with AB-1 (letter of 4 May 2026), JS-1 with AB-2 (maker's letter 9 May).":     "JS-3|AB-1 JS-1|AB-2",
		"JS-3 is accepted with AB-1 (letter asked), JS-1 on AB-2 (see A-501).":                          "",
		"Maker's letter on file for AB-1: 90 days":                                                      "",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Sealant
T1 | AB-1 | CMU | none | JS-1
T2 | AB-2 | CMU | none | JS-2

` + note}, page{name: "P", grid: `
Tag | What it is | Apply min °F | Max exposure, days
AB-1 | SBS self-adhered sheet | 40 | 60
AB-2 | butyl sheet | 20 | 90
JS-1 | neutral silicone sealant | 0 | –
JS-2 | polyurethane sealant | 40 | –
JS-3 | butyl sealant | 20 | –`})
		var got []string
		for _, l := range s.Project.Letters {
			var with []string
			for _, tg := range l.With {
				if with = append(with, tg.Products...); len(tg.Products) == 0 {
					with = append(with, tg.Keys[len(tg.Keys)-1])
				}
			}
			got = append(got, strings.Join(l.Products, ",")+"|"+strings.Join(with, ","))
		}
		for _, said := range s.Project.Signals {
			if said.ID == "letters_only" {
				got = append(got, "only")
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// Letters within the name of a product say nothing there, whatever they say elsewhere.
func TestLettersOfAName(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches
D1 | Alder 20 FR | CMU | Alder Key FR | brick
D2 | Alder 20 | CMU | Key FR | FR plywood`}, page{name: "P", grid: `
Tag | Type | Apply min F | Max days open
Alder 20 | SBS sheet | 40 | 60
Alder 20 FR | SBS sheet | 20 | 60
Alder Key FR | solvent-borne primer | 10 | -`}, page{name: "Notes", grid: `
FR fire-retardant; BW block wall; GS gypsum sheathing`})
	for i, want := range [][2]string{{"Alder 20 FR", "Alder Key FR"}, {"Alder 20", "Alder Key FR"}} {
		got := [2]string{}
		for _, it := range s.Lines[i].Items {
			switch it.Slot {
			case "material":
				got[0] = it.Product
			case "primer":
				got[1] = it.Product
			}
		}
		if got != want {
			t.Errorf("row %d: %q, want %q", i+1, got, want)
		}
	}
	if got := s.Lines[1].Texts["touches"]; got != "fire-retardant plywood" {
		t.Errorf("touches %q", got)
	}
}

// The short forms of a key beside the schedule may stand among other words of its cells;
// the key is no column of it, and the headings over groups stay what they are.
func TestKeyBesideTheScheduleOfFormsWithinCells(t *testing.T) {
	for title, want := range map[string]string{"KEY": "Mineral (stone or slag) wool", "Key:": "Mineral (stone or slag) wool"} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Remarks | | ` + title + ` |
EAST WALL | | | | | | | MF | mineral wool boards
D1 | butyl sheet | DG | none | MF boards in clips | | | DG | glass-mat gypsum sheathing
D2 | butyl sheet | DG | none | SST drip, hemmed | | | SST | stainless steel
NORTH WALL | | | | | | | ZB | zinc
D3 | butyl sheet | DG | none | MF boards | | | PT | pine, treated
D4 | butyl sheet | plywood | none | ZB cap over it | | |
D5 | butyl sheet | plywood | none | brick | | |
D6 | butyl sheet | plywood | none | brick | | |`})
		if got := len(s.Lines); got != 6 {
			t.Errorf("%s: %d rows, want 6", title, got)
		}
		got := ""
		for _, it := range line(t, s, "D1").Items {
			if it.Slot == "touches" {
				got += it.Name + ";"
			}
		}
		if got != want+";" {
			t.Errorf("%s: touches %q, want %q alone", title, got, want)
		}
	}
}

// A list may say what all tags of a series are; a word that is no tag begins none.
func TestSeriesOfTags(t *testing.T) {
	for entry, want := range map[string]string{
		"FX-n | cavity tray": "cavity tray", "FX-## | cavity tray": "cavity tray", "FX x | cavity tray": "cavity tray",
		"fx-n | cavity tray": "", "FX-1 | cavity tray": "", "GX-n | cavity tray": "", "FX-n | 12": "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\nD1 | FX-1 | CMU | none\nD2 | FX-2 | CMU | none"},
			page{name: "P", grid: "Tag | Type | Apply min F\nFX-1 | stainless foil with butyl | 40\nFX-2 | copper sheet | 30"},
			page{name: "Key", grid: "Tag | Stands for\n" + entry + "\nCB | concrete block"})
		for _, p := range s.Products {
			if p.Texts["series"] != want {
				t.Errorf("%s: %s has %q, want %q", entry, p.Tag, p.Texts["series"], want)
			}
		}
	}
}

// A code of shelter may end in a figure, as tags of walls do; of such codes only what the
// list says of heat, or of none, is kept.
func TestShelterCodeWithAFigure(t *testing.T) {
	s := readPages(t, page{name: "Rows", grid: `
Mark | Sheet | Goes on | Put up | Weather | Detail
1 | SBS sheet | CMU | 2026-01-12 | H5 | D7
2 | SBS sheet | CMU | 2026-01-19 | OA | D8
3 | SBS sheet | CMU | 2026-01-26 | H-10 | D7`}, page{name: "Words", grid: `
Key
OA | open air
H5 | heated tent at 5 °C or more
H-10 | tarped and heated to 10 °C
D7 | sealed at the head with butyl tape`})
	for mark, want := range map[string]bool{"1": true, "2": false, "3": true} {
		l, heated := line(t, s, mark), false
		for _, said := range l.Signals {
			heated = heated || said.ID == "heated" && !said.No
		}
		if heated != want {
			t.Errorf("%s: heated is %v under %q", mark, heated, l.Texts["shelter"])
		}
		for _, it := range l.Items {
			if strings.Contains(it.Family, "butyl") {
				t.Errorf("%s: the code of a detail was written out", mark)
			}
		}
	}
}

// The description of a product is read with the office's short words where it tells no kind
// without them; one that does is left as it is.
func TestShortWordsNameProducts(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Thickness, mil\nW1 | LQ-1 | CMU | 55\nW2 | LQ-2 | CMU | 40"},
		page{name: "P", grid: "Tag | Type | Min °F | UV days\nLQ-1 | FLM AVB, vapor-tight | 35 | 90\nLQ-2 | FLM AVB, acrylic, water-based | 20 | 90"},
		page{name: "Notes", grid: "ABBREV.: FLM fluid-applied membrane; TYP typical; GMS glass-mat gypsum sheathing; CW curtain wall"})
	for i, want := range []string{"fluid-applied-unspecified", "fluid-applied-acrylic-air-barrier"} {
		if got := s.Products[i].Family; got != want {
			t.Errorf("%s: family %q, want %q", s.Products[i].Tag, got, want)
		}
	}
}
