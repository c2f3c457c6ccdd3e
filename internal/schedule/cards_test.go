package schedule_test

import (
	"strings"
	"testing"
)

const cardSchedule = `
Mark | Tag | Substrate | Primer | Touches | Lap | Install date | Cover date
D1 | Moss 30 | plywood | none | Reed B | 3 in. | @2026-05-04 | @2026-05-20
D2 | Fern W | CMU | Moss Key | brick | 2 in. | @2026-05-04 | @2026-05-20
D3 | Reed B | steel lintel | none | brick | 1 in. | @2026-05-05 | @2026-05-20`

// TestCards reads product data that stands by labels, in three layouts.
func TestCards(t *testing.T) {
	for name, grid := range map[string]string{
		"blocks": `
OUR OWN CARDS, ONE BLOCK EACH

Moss 30 | butyl sheet, foil face
 Goes on at | 25 to 110 °F
 Open to sun | 45 days
 Keep off | solvent-borne sealants; creosote

Fern W | rubberized asphalt sheet
 Goes on at | 40 to 100 °F
 Open to sun | 30 days
 Keep off | EPDM

Moss Key | solvent primer
 Goes on at | 20 °F and up
 VOC | 310 g/L

Reed B | neutral silicone sealant
 Made in | two colors`,
		"side by side": `
Moss 30 | butyl sheet, foil face | | Fern W | rubberized asphalt sheet | | Moss Key | solvent primer | | Reed B | neutral silicone sealant
Goes on at | 25 to 110 °F | | Goes on at | 40 to 100 °F | | Goes on at | 20 °F and up | | Goes on at | -10 to 120 °F
Open to sun | 45 days | | Open to sun | 30 days | | VOC | 310 g/L | | VOC | 30 g/L
Keep off | solvent-borne sealants; creosote | | Keep off | EPDM`,
		"the tag by its label": `
Tag | Moss 30
Description | butyl sheet, foil face
Goes on at | 25 to 110 °F
Open to sun | 45 days
Keep off | solvent-borne sealants; creosote
Tag | Fern W
Description | rubberized asphalt sheet
Goes on at | 40 to 100 °F
Keep off | EPDM

Tag | Moss Key
Description | solvent primer
VOC | 310 g/L

Tag | Reed B
Description | neutral silicone sealant
VOC | 30 g/L`,
		"label and value in one cell": `
Moss 30
Description: butyl sheet, foil face
Goes on at: 25 to 110 °F
Open to sun: 45 days
Keep off: solvent-borne sealants; creosote

Fern W
Description: rubberized asphalt sheet
Keep off: EPDM

Moss Key
Description: solvent primer
VOC: 310 g/L

Reed B
Description: neutral silicone sealant
VOC: 30 g/L`,
		"matrix without a corner": `
 | Moss 30 | Fern W | Moss Key | Reed B
What it is | butyl sheet, foil face | rubberized asphalt sheet | solvent primer | neutral silicone sealant
Put on at | 25 to 110 °F | 40 to 100 °F | 20 °F and up | -10 to 120 °F
Open to sun, most | 45 days | 30 days | |
Keep off | solvent-borne sealants; creosote | EPDM | |
VOC g/L | | | 310 | 30`,
		"matrix": `
Code | Moss 30 | Fern W | Moss Key | Reed B
What it is | butyl sheet, foil face | rubberized asphalt sheet | solvent primer | neutral silicone sealant
Put on at | 25 to 110 °F | 40 to 100 °F | 20 °F and up | -10 to 120 °F
Open to sun, most | 45 days | 30 days | |
Keep off | solvent-borne sealants; creosote | EPDM | |
VOC g/L | | | 310 | 30`,
		"one property to a line": `
Code | Description | Property | Value
Moss 30 | butyl sheet, foil face | application | 25 to 110 °F
 | | open to sun | 45 days
 | | keep off | solvent-borne sealants; creosote
Fern W | rubberized asphalt sheet | application | 40 to 100 °F
 | | open to sun | 30 days
 | | keep off | EPDM
Moss Key | solvent primer | application | 20 °F and up
 | | VOC | 310 g/L
Reed B | neutral silicone sealant | application | -10 to 120 °F
 | | VOC | 30 g/L`,
	} {
		t.Run(name, func(t *testing.T) {
			s := readPages(t, page{name: "S", grid: cardSchedule}, page{name: "Data", grid: grid})
			holdsCards(t, s)
			for _, n := range s.Project.Notes {
				if n.At.Sheet == "Data" && n.Text == "Keep off EPDM" {
					t.Error("a card was read as a note as well")
				}
			}
		})
	}
}

// A trade name may end in what looks like a figure.
func TestCardNamedLikeAFigure(t *testing.T) {
	s := readPages(t,
		page{name: "S", grid: "Mark | Product | Substrate | Primer | Lap\nW-1 | LQ | deck slab | none | 4 in.\nW-2 | LQ | deck slab | none | 4 in."},
		page{name: "P", grid: "LQ | Alder 3C\nType | Self-adhered butyl sheet, 1.5 mm\nApply | +5 to +35 °C\nSun, max. | 14 days"})
	if p := product(t, s, "LQ"); p.Family != "butyl-flashing-tape" {
		t.Errorf("%s: %q", p.Family, p.Name)
	}
}

// What a list of what to keep off names as made for the product may meet it, and so may
// what the product is there to part.
func TestKeepOffNamesItsOwn(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Not with / remarks
R-1 | rubberized asphalt membrane | 5 | Creosote, coal tar. Lap mastic R-4
R-2 | butyl sheet | 5 | EPDM. Isolates copper from galvanized steel
R-3 | butyl sheet | 5 | Creosote. Close all cut edges with R-4 or R-5
R-4 | STPE sealant | | R-6
R-5 | polyurethane sealant | | -
R-6 | solvent-based mastic | | Seam tape R-2, EPDM
`)
	for tag, want := range map[string]string{
		"R-1": "Creosote, coal tar, not R-4", "R-2": "EPDM, not copper, not galvanized steel", "R-3": "Creosote, not R-4, not R-5", "R-4": "R-6",
	} {
		got := []string{}
		for _, k := range product(t, s, tag).KeepOff {
			got = append(got, map[bool]string{true: "not "}[k.Except]+k.Text)
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s keeps off %q, want %q", tag, got, want)
		}
	}
	if got := targets(product(t, s, "R-6").KeepOff); !strings.Contains(got, "epdm") {
		t.Errorf("R-6 keeps off %q", got)
	}
}

// TestKeepOffMixed reads a column that says what is fine as well as what is not.
func TestKeepOffMixed(t *testing.T) {
	s := readPages(t,
		page{name: "S", grid: cardSchedule},
		page{name: "P", grid: `
Tag | Description | Application temp. | VOC g/L | Keep off / good to know
Moss 30 | butyl sheet | 25 to 110 F | | Keep off creosote. Adheres to brick, steel. Rigid PVC OK
Fern W | rubberized asphalt sheet | 40 to 100 F | | EPDM, coal tar
Moss Key | solvent primer | 20 F and up | 310 | For Fern only, not Moss 30`})
	barred := func(tag string) string {
		out := ""
		for _, k := range product(t, s, tag).KeepOff {
			if !k.Except {
				out += k.Text + ";"
			}
		}
		return out
	}
	for tag, want := range map[string]string{"Moss 30": "creosote;", "Fern W": "EPDM;coal tar;", "Moss Key": "Moss 30;"} {
		if got := barred(tag); got != want {
			t.Errorf("%s keeps off %q, want %q", tag, got, want)
		}
	}
}
