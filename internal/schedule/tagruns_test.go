package schedule_test

import (
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
