package schedule

import (
	"encoding/json"
	"io/fs"
	"slices"
	"testing"

	"abut/policies"
)

func loadedHeadings(t *testing.T) *headings {
	t.Helper()
	h, err := loadHeadings(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// standOver holds headings to the columns that they stand over.
func standOver(t *testing.T, h *headings, want map[string]string) {
	t.Helper()
	for sub, slot := range want {
		if got := h.guesses("", sub); len(got) == 0 || got[0].slot != slot {
			t.Errorf("%q: %v, want %s", sub, got, slot)
		}
	}
}

// TestBound tells the lower from the upper end of an application range.
func TestBound(t *testing.T) {
	h := &headings{lower: []string{"down to", "min", "lowest"}, upper: []string{"max", "to"}, units: map[string]bool{"f": true}}
	for heading, want := range map[string]string{
		"Lowest temp. to apply":  "apply_min",
		"Apply at, min.":         "apply_min",
		"Apply, max.":            "apply_max",
		"Apply up to":            "apply_max",
		"Goes on down to, C":     "apply_min",
		"Put down at":            "apply",
		"Temp. range":            "apply",
		"Air temp to place":      "apply",
		"Degrees to roll out at": "apply",
		"Put on to, °F":          "apply_max",
	} {
		if got := h.bound(guess{slot: "apply"}, headingWords(heading)); got.slot != want {
			t.Errorf("%s: %s, want %s", heading, got.slot, want)
		}
	}
	if got := h.bound(guess{slot: "thickness"}, headingWords("Min. thickness")); got.slot != "thickness" {
		t.Errorf("a thickness became %s", got.slot)
	}
}

// TestFiguresHaveNames: a message names each figure in words, and not by its key.
func TestFiguresHaveNames(t *testing.T) {
	raw, err := fs.ReadFile(policies.FS, "lib/measures.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Measures struct {
			Names map[string]string `json:"names"`
		} `json:"measures"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	for slot, fig := range figureOf {
		if file.Measures.Names[fig.key] == "" {
			t.Errorf("the figure %s of a column %s has no name", fig.key, slot)
		}
	}
}

// "Others" under a heading are others of its kind, and codes are its codes; alone they
// may be anything.
func TestOthersOfAHeading(t *testing.T) {
	h := loadedHeadings(t)
	for _, tc := range []struct{ group, sub, want string }{
		{"CONTACTS", "Steel pieces + others", "touches"},
		{"NEIGHBORS", "Hoods, other", "touches"},
		{"", "Steel pieces + others", "remark"},
		{"CONTACTS", "Other remarks", "remark"},
		{"Primer", "Code", "primer"}, // a code is of what it stands under
		{"Joint sealant", "Tag", "sealant"},
		{"Adjacent", "Product code", "touches"},
		{"Air barrier", "Code", "tag"},
		{"Application", "Tag", "tag"},
	} {
		if got := h.guesses(tc.group, tc.sub); len(got) == 0 || got[0].slot != tc.want {
			t.Errorf("%q over %q: %v, want %s", tc.group, tc.sub, got, tc.want)
		}
	}
}

// Whoever makes remarks, they are remarks; a heading that tells of more is not.
func TestRemarksOfSomebody(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Shop notes": "remark", "Yard notes": "remark", "Superintendent's remarks": "remark", "PM clarifications": "remark",
		"Estimating notes (internal)": "remark", "See notes": "reference", "Note no.": "reference", "Primer notes": "primer",
	})
}

// Field logs cut the words of their headings to the bone.
func TestHeadingsOfFieldLogs(t *testing.T) {
	h := loadedHeadings(t)
	for _, tc := range []struct{ sub, want string }{
		{"SLT used", "sealant"},
		{"MEM", "material"},
		{"ED mm", "end_dam"},
		{"ED ht", "end_dam"},
		{"Salt", ""},
	} {
		got := ""
		if list := h.guesses("", tc.sub); len(list) > 0 {
			got = list[0].slot
		}
		if got != tc.want {
			t.Errorf("%q: %s, want %s", tc.sub, got, tc.want)
		}
	}
}

// A list of ties from a roof to its walls tells the sheet, the two sides, and which laps
// over which; figures that somebody quotes are known by their units.
func TestHeadingsOfTieIns(t *testing.T) {
	h := loadedHeadings(t)
	for sub, want := range map[string]string{
		"Tie-in membrane": "material", "Connecting strip": "material", "Tie in to": "touches", "Deck side": "touches",
		"Direction of laps": "remark", "Lap mm": "lap", "Wall": "group", "Room side": "behind",
		"Data quoted": "value", "Figures quoted": "value", "Quote": "",
	} {
		got := ""
		if list := h.guesses("", sub); len(list) > 0 {
			got = list[0].slot
		}
		if got != want {
			t.Errorf("%q: %q, want %q", sub, got, want)
		}
	}
}

// The limits of laying are told by the coldest and the warmest air, by any verb of laying; the heat that a
// material bears in place is another figure.
func TestWarmestToLay(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Warmest to put down": "apply_max", "Warmest to set": "apply_max", "Warmest air, °F": "apply_max",
		"Hottest to place": "apply_max", "Not warmer than": "apply_max", "Coldest to put down": "apply_min",
		"Hottest in place": "service_max",
	})
}

// A value that is called for is a value, and no product.
func TestValueCalledFor(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Figure called for": "value", "Required value": "value", "Called for": "specified", "Product called for": "specified",
	})
}

// A layer of a wall that is told beside its tag says what the row is about; one alone may count the layers.
func TestLayerAndItem(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Layer / component": "type", "Item / layer (outside first)": "type", "Layer or part": "type", "Layer": "order", "Item": "mark",
	})
}

// What a layer is fastened or stuck with touches it; an attachment alone is a paper.
func TestFastening(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Fastening": "touches", "Attachment / fastening": "touches", "Attached with": "touches", "Fastening & bedding": "touches",
		"Attachment": "reference",
	})
}

// Which piece goes over which is told in words, and no length stands below.
func TestWayOfLaps(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Way it laps": "remark", "Which way laps": "remark", "What laps over what": "remark", "Laps": "lap", "Lap, mm": "lap",
	})
}

// Offices head the same column in many ways: by what it is for, by a whole phrase, by a word of
// the site.
func TestHeadingsOfManyOffices(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Air & water control": "material", "Warranted product": "material", "Wrap used": "material", "Failed membrane": "material",
		"Supported by": "substrate", "Nailed onto": "substrate", "Lower leg on": "substrate", "Lap onto substrate (in)": "lap",
		"Adjoining assembly": "touches", "Frame type": "touches", "Continuity to": "touches", "Piece below": "bottom",
		"Secondary seal": "sealant", "Laps taped with": "sealant", "Edge held by": "edge", "Chased into": "edge",
		"Horiz. lap": "lap", "Vert. laps": "end_lap", "Overlap required": "min_lap", "Target DFT": "min_thickness",
		"May be left out": "exposure_days", "Days until clad": "exposure_days", "Sun allowance": "exposure_days",
		"Don't install below": "apply_min", "Stop work below (°C)": "apply_min", "Works down to": "apply_min",
		"Stands up to": "service_max", "Peak heat": "service_max", "End turn-up": "end_dam", "Backer rod": "separator",
		"Days since cast": "age", "Pairs with primer": "primer", "Wiped with": "primer", "Contact allowed": "suits",
		"Don't put against": "keep_off", "Permitted surfaces": "accepts", "Masonry moisture": "wood_moisture", "RSI out": "outside_r",
	})

	for sub, never := range map[string]string{ // near misses
		"Wrap date": "material", "Frame no.": "touches", "Roll / lap": "reference", "Weather": "sealant",
	} {
		if got := h.guesses("", sub); len(got) > 0 && got[0].slot == never {
			t.Errorf("%q: %v", sub, got)
		}
	}
}

// A sign for numbers after a word is one, and none after a figure.
func TestSignOfNumbers(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{"Sheet #": "reference", "Joint#": "mark", "Roll # ": "reference"})
	if got := headingWords("15# felt"); len(got) != 2 {
		t.Errorf("%q", got)
	}
}

// Sister forms of the main headings, and near misses that stay what they are.
func TestSisterFormsOfHeadings(t *testing.T) {
	h := loadedHeadings(t)
	standOver(t, h, map[string]string{
		"Primary membrane": "material", "WRB type": "material", "Maker & product": "material", "What it sticks to": "substrate",
		"Set over": "substrate", "Adhesion promoter": "primer", "Mating surface": "touches", "Work by others": "touches",
		"Bedded with": "sealant", "Stone starts": "cover", "Executed on": "install", "Avg. DFT": "thickness",
		"Max unprotected days": "exposure_days", "Sticks down to": "apply_min", "Softening point": "service_max",
		"Materials to avoid": "keep_off", "Degraded by": "keep_off", "May be applied over": "accepts", "Approved contacts": "suits",
	})
	for sub, want := range map[string]string{
		"Gauge reading, mils": "value", "Cold joint no.": "mark", "Stone color": "reference", "Overlaps & ends": "lap", "Primer / accepted substrates": "accepts",
	} {
		if got := h.guesses("", sub); len(got) > 0 && got[0].slot != want {
			t.Errorf("%q: %v, want %s", sub, got, want)
		}
	}
}

// Each word of the list is read as the column that it stands for, unless it stands for several.
func TestEachHeadingWordIsItsOwn(t *testing.T) {
	h := loadedHeadings(t)
	count := map[string]int{}
	for _, s := range h.slots {
		for _, w := range s.words {
			count[w]++
		}
	}
	for _, s := range h.slots {
		for _, w := range s.words {
			got := h.guesses("", w)
			own := slices.ContainsFunc(got, func(g guess) bool { return g.slot == s.name && g.score == got[0].score })
			if count[w] == 1 && !own {
				t.Errorf("%s: %q is read as %v", s.name, w, got)
			}
		}
	}
}
