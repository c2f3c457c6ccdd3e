package schedule_test

import (
	"slices"
	"strings"
	"testing"
)

// A column of what a product goes onto, and runs of tags told by their ends.
func TestGoesOnto(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | FS-1 | CMU | none`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | Goes onto
FS-1 | butyl sheet | 5 | 30 | plywood, CMU
FS-2 | acrylic sheet | 5 | 30 | plywood
FS-3 | SBS sheet | 5 | 30 | FS-1, FS-5 to FS-9
GN-1 | neutral silicone sealant | 5 | no limit | anodized aluminum, FS-1 thru FS-3`})
	if got := len(product(t, s, "FS-1").Accepts); got != 2 {
		t.Errorf("FS-1 goes onto %+v", product(t, s, "FS-1").Accepts)
	}
	tags := ""
	for _, target := range product(t, s, "GN-1").Suits {
		tags += strings.Join(target.Products, " ") + " "
	}
	if got := strings.TrimSpace(tags); got != "FS-1 FS-2 FS-3" {
		t.Errorf("GN-1 goes with %q", got)
	}
}

// A primer may be made for a list of tags of which only the first is written out, in
// figures and letters; a tail that is no product leaves the list alone.
func TestTailsOfLetters(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Substrate | Primer
W1 | ROLL-30 | CMU | KEY-S`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | Goes onto
ROLL-30 | SBS sheet | 5 | 30 | plywood, CMU
ROLL-30C | SBS sheet, cold grade | -5 | 30 | plywood
ROLL-HI | butyl sheet | 5 | 30 | steel
KEY-S | solvent primer, for ROLL-30, -30C, -HI | -5 | - | CMU
KEY-W | water-borne primer, for ROLL-30, -XX | 5 | - | CMU`})
	for tag, want := range map[string]string{"KEY-S": "ROLL-30 ROLL-30C ROLL-HI", "KEY-W": "ROLL-30"} {
		tags := ""
		for _, target := range product(t, s, tag).Suits {
			tags += strings.Join(target.Products, " ") + " "
		}
		list := strings.Fields(tags)
		slices.Sort(list)
		if got := strings.Join(list, " "); got != want {
			t.Errorf("%s is for %q, want %q", tag, got, want)
		}
	}
}
