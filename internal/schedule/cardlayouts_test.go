package schedule_test

import (
	"fmt"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// layouts are ways to set the same four cards.
var layouts = map[string]string{
	"labels beside the tag's column, below its trade name": `
our sheets, typed out
Moss 30 | Hollow 30 Plus, rev 2 | butyl sheet, foil face
 | temp | 25 to 110 °F
 | open | 45 days
 | keep off | solvent-borne sealants; creosote

Fern W | Hollow Rubber, rev 1 | rubberized asphalt sheet
 | temp | 40 to 100 °F
 | open | 30 days
 | keep off | EPDM

Moss Key | Primer Hollow | solvent primer
 | temp | 20 °F and up
 | VOC | 310 g/L

Reed B | Hollow N | neutral silicone sealant
 | temp | -10 to 120 °F
 | VOC | 30 g/L`,
	"the tag beside its block": `
Moss 30 | what it is | butyl sheet, foil face
 | min. temp | 25 to 110 °F
 | open to sun | 45 days
 | keep off | solvent-borne sealants; creosote
Fern W | what it is | rubberized asphalt sheet
 | min. temp | 40 to 100 °F
 | open to sun | 30 days
 | keep off | EPDM
Moss Key | what it is | solvent primer
 | min. temp | 20 °F and up
 | VOC | 310 g/L
Reed B | what it is | neutral silicone sealant
 | VOC | 30 g/L`,
	"tag and name in one cell": `
Moss 30 - butyl sheet, foil face
goes on at | 25 to 110 °F
open to sun | 45 days
keep off | solvent-borne sealants; creosote

Fern W - rubberized asphalt sheet
goes on at | 40 to 100 °F
keep off | EPDM

Moss Key - solvent primer
VOC | 310 g/L

Reed B - neutral silicone sealant
VOC | 30 g/L`,
	"tag in brackets after the name": `
Hollow 30 Plus (Moss 30) | butyl sheet, foil face
goes on at | 25 to 110 °F
open to sun | 45 days
keep off | solvent-borne sealants; creosote

Hollow Rubber (Fern W) | rubberized asphalt sheet
goes on at | 40 to 100 °F
keep off | EPDM

Primer Hollow (Moss Key) | solvent primer
VOC | 310 g/L

Hollow N (Reed B) | neutral silicone sealant
VOC | 30 g/L`,
	"lines with colons in one cell": `
Tag: Moss 30
Product: butyl sheet, foil face
Min temp: 25 to 110 °F
Open: 45 days
Keep off: solvent-borne sealants; creosote

Tag: Fern W
Product: rubberized asphalt sheet
Min temp: 40 to 100 °F
Keep off: EPDM

Tag: Moss Key
Product: solvent primer
VOC: 310 g/L

Tag: Reed B
Product: neutral silicone sealant
VOC: 30 g/L`,
	"side by side without a gap": `
Moss 30 | butyl sheet, foil face | Fern W | rubberized asphalt sheet | Moss Key | solvent primer | Reed B | neutral silicone sealant
goes on at | 25 to 110 °F | goes on at | 40 to 100 °F | goes on at | 20 °F and up | goes on at | -10 to 120 °F
open to sun | 45 days | open to sun | 30 days | VOC | 310 g/L | VOC | 30 g/L
keep off | solvent-borne sealants; creosote | keep off | EPDM`,
	"side by side, each called by its tag, with labels that differ": `
Tag | Moss 30 | | Tag | Fern W
What it is | butyl sheet, foil face | | What it is | rubberized asphalt sheet
Min. temp | 25 to 110 °F | | Open to sun | 30 days
Open to sun | 45 days | | Min. temp | 40 to 100 °F
Keep off | solvent-borne sealants; creosote | | Keep off | EPDM

Tag | Moss Key | | Tag | Reed B
What it is | solvent primer | | What it is | neutral silicone sealant
VOC | 310 g/L | | Min. temp | -10 to 120 °F
Min. temp | 20 °F and up | | VOC | 30 g/L`,
	"two and two": `
Moss 30 | Hollow 30 Plus | butyl sheet, foil face | | Fern W | Hollow Rubber | rubberized asphalt sheet
 | temp | 25 to 110 °F | | | temp | 40 to 100 °F
 | open | 45 days | | | open | 30 days
 | keep off | solvent-borne sealants; creosote | | | keep off | EPDM

Moss Key | Primer Hollow | solvent primer | | Reed B | Hollow N | neutral silicone sealant
 | temp | 20 °F and up | | | temp | -10 to 120 °F
 | VOC | 310 g/L | | | VOC | 30 g/L`,
	"name and tag in rows of their own": `
Moss 30
Hollow 30 Plus
butyl sheet, foil face
goes on at | 25 to 110 °F
open to sun | 45 days
keep off | solvent-borne sealants; creosote

Fern W
Hollow Rubber
rubberized asphalt sheet
goes on at | 40 to 100 °F
open to sun | 30 days
keep off | EPDM

Moss Key
Primer Hollow
solvent primer
VOC | 310 g/L

Reed B
Hollow N
neutral silicone sealant
VOC | 30 g/L`,
	"matrix with numbers and trade names": `
PRODUCT DATA
 | | Moss 30 | Fern W | Moss Key | Reed B
 | | Hollow 30 Plus | Hollow Rubber | Primer Hollow | Hollow N
1 | what it is | butyl sheet, foil face | rubberized asphalt sheet | solvent primer | neutral silicone sealant
2 | temp | 25 to 110 °F | 40 to 100 °F | 20 °F and up | -10 to 120 °F
3 | open | 45 days | 30 days | n/a | n/a
4 | keep off | solvent-borne sealants; creosote | EPDM | |
5 | VOC | | | 310 g/L | 30 g/L`,
	"a card to a cell": `
Moss 30\nbutyl sheet, foil face\nMin temp: 25 to 110 °F\nOpen: 45 days\nKeep off: solvent-borne sealants; creosote
Fern W\nrubberized asphalt sheet\nMin temp: 40 to 100 °F\nKeep off: EPDM
Moss Key\nsolvent primer\nVOC: 310 g/L
Reed B\nneutral silicone sealant\nVOC: 30 g/L`,
	"labels and values in a row": `
Moss 30 | butyl sheet, foil face | Min temp: 25 to 110 °F | Open: 45 days | Keep off: solvent-borne sealants; creosote
Fern W | rubberized asphalt sheet | Min temp: 40 to 100 °F | Open: 30 days | Keep off: EPDM
Moss Key | solvent primer | Min temp: 20 °F and up | VOC: 310 g/L
Reed B | neutral silicone sealant | Min temp: -10 to 120 °F | VOC: 30 g/L`,
	"with a source beside the value": `
Moss 30 | butyl sheet, foil face
goes on at | 25 to 110 °F | page 2
open to sun | 45 days | page 2
keep off | solvent-borne sealants; creosote | letter of May

Fern W | rubberized asphalt sheet
goes on at | 40 to 100 °F | page 1
keep off | EPDM | page 3

Moss Key | solvent primer
VOC | 310 g/L | page 1

Reed B | neutral silicone sealant
VOC | 30 g/L | page 1`,
	"the unit beside the value": `
Moss 30 | butyl sheet, foil face
goes on at | 25 to 110 | °F
open to sun | 45 | days
keep off | solvent-borne sealants; creosote

Fern W | rubberized asphalt sheet
goes on at | 40 to 100 | °F
keep off | EPDM

Moss Key | solvent primer
VOC | 310 | g/L

Reed B | neutral silicone sealant
VOC | 30 | g/L`,
	"the tag on each line": `
Moss 30 | what | butyl sheet, foil face
Moss 30 | temp | 25 to 110 °F
Moss 30 | open | 45 days
Moss 30 | keep off | solvent-borne sealants; creosote
Fern W | what | rubberized asphalt sheet
Fern W | temp | 40 to 100 °F
Fern W | open | 30 days
Fern W | keep off | EPDM
Moss Key | what | solvent primer
Moss Key | temp | 20 °F and up
Moss Key | VOC | 310 g/L
Reed B | what | neutral silicone sealant
Reed B | temp | -10 to 120 °F
Reed B | VOC | 30 g/L`,
	"numbered sheets": `
Data sheet 1: Moss 30
Description | butyl sheet, foil face
goes on at | 25 to 110 °F
open to sun | 45 days
keep off | solvent-borne sealants; creosote

Data sheet 2: Fern W
Description | rubberized asphalt sheet
goes on at | 40 to 100 °F
keep off | EPDM

Data sheet 3: Moss Key
Description | solvent primer
VOC | 310 g/L

Data sheet 4: Reed B
Description | neutral silicone sealant
VOC | 30 g/L`,
	"each called by what it is sold as, below a title": `
SUBMITTED SHEETS, RETYPED

Product | Moss 30
Maker & kind | Hollow – butyl sheet, foil face
Goes on at | 25 to 110 °F
Open to sun | 45 days
Keep off | solvent-borne sealants; creosote

Product | Fern W
Maker & kind | Hollow – rubberized asphalt sheet
Goes on at | 40 to 100 °F
Open to sun | 30 days
Keep off | EPDM

Product | Moss Key
Maker & kind | Hollow – solvent primer
Goes on at | 20 °F and up
VOC | 310 g/L

Product | Reed B
Maker & kind | Hollow – neutral silicone sealant
Goes on at | -10 to 120 °F
VOC | 30 g/L`,
	"the same without gaps": `
Product name | Moss 30
Maker & kind | Hollow – butyl sheet, foil face
Goes on at | 25 to 110 °F
Open to sun | 45 days
Keep off | solvent-borne sealants; creosote
Product name | Fern W
Maker & kind | Hollow – rubberized asphalt sheet
Goes on at | 40 to 100 °F
Open to sun | 30 days
Keep off | EPDM
Product name | Moss Key
Maker & kind | Hollow – solvent primer
Goes on at | 20 °F and up
VOC | 310 g/L
Product name | Reed B
Maker & kind | Hollow – neutral silicone sealant
Goes on at | -10 to 120 °F
VOC | 30 g/L`,
	"the same with colons": `
SUBMITTED SHEETS, RETYPED

Product: Moss 30
Maker & kind: Hollow – butyl sheet, foil face
Goes on at: 25 to 110 °F
Open to sun: 45 days
Keep off: solvent-borne sealants; creosote

Product: Fern W
Maker & kind: Hollow – rubberized asphalt sheet
Goes on at: 40 to 100 °F
Open to sun: 30 days
Keep off: EPDM

Product: Moss Key
Maker & kind: Hollow – solvent primer
Goes on at: 20 °F and up
VOC: 310 g/L

Product: Reed B
Maker & kind: Hollow – neutral silicone sealant
Goes on at: -10 to 120 °F
VOC: 30 g/L`,
	"the same, two and two": `
Material | Moss 30 | | Material | Fern W
Maker & kind | Hollow – butyl sheet, foil face | | Maker & kind | Hollow – rubberized asphalt sheet
Goes on at | 25 to 110 °F | | Goes on at | 40 to 100 °F
Open to sun | 45 days | | Open to sun | 30 days
Keep off | solvent-borne sealants; creosote | | Keep off | EPDM

Material | Moss Key | | Material | Reed B
Maker & kind | Hollow – solvent primer | | Maker & kind | Hollow – neutral silicone sealant
Goes on at | 20 °F and up | | Goes on at | -10 to 120 °F
VOC | 310 g/L | | VOC | 30 g/L`,
	"the name with what it is, again and again": `
Product | Moss 30 – butyl sheet, foil face
Goes on at | 25 to 110 °F
Open to sun | 45 days
Keep off | solvent-borne sealants; creosote

Product | Fern W – rubberized asphalt sheet
Goes on at | 40 to 100 °F
Keep off | EPDM

Product | Moss Key – solvent primer
VOC | 310 g/L

Product | Reed B – neutral silicone sealant
VOC | 30 g/L`,
}

func TestCardLayouts(t *testing.T) {
	for name, grid := range layouts {
		t.Run(name, func(t *testing.T) {
			holdsCards(t, readPages(t, page{name: "S", grid: cardSchedule}, page{name: "Data", grid: grid}))
		})
	}
}

// Cards may stand on the sheet of the schedule: below it, or right of it.
func TestCardsBesideSchedule(t *testing.T) {
	cards := layouts["labels beside the tag's column, below its trade name"]
	t.Run("below", func(t *testing.T) {
		holdsCards(t, readPages(t, page{name: "S", grid: cardSchedule + "\n\nDATA SHEETS\n" + strings.TrimSpace(cards)}))
	})
	t.Run("beside", func(t *testing.T) {
		left := strings.Split(strings.TrimSpace(cardSchedule), "\n")
		var rows []string
		for i, right := range strings.Split(strings.TrimSpace(cards), "\n") {
			row := strings.Repeat("|", 7)
			if i < len(left) {
				row = left[i]
			}
			rows = append(rows, row+"||"+right)
		}
		holdsCards(t, readPages(t, page{name: "S", grid: strings.Join(rows, "\n")}))
	})
}

func holdsCards(t *testing.T, s *schedule.Schedule) {
	t.Helper()
	if n := len(s.Products); n != 4 {
		for _, p := range s.Products {
			t.Errorf("product %q %v", p.Tag, p.Texts)
		}
		t.FailNow()
	}
	if len(s.Lines) != 3 {
		t.Errorf("%d lines", len(s.Lines))
	}
	moss, key := product(t, s, "Moss 30"), product(t, s, "Moss Key")
	if moss.Family != "butyl-flashing-tape" || key.Role != "primer" {
		t.Errorf("family %q, role %q", moss.Family, key.Role)
	}
	if f := moss.Figures["exposure_days"]; f.Min == nil || *f.Min != 45 || f.At.Cell == "" {
		t.Errorf("days open %+v", f)
	}
	if f := moss.Figures["apply_min_c"]; f.Min == nil || *f.Min > -3 || *f.Min < -4 {
		t.Errorf("application %+v", f)
	}
	if len(moss.KeepOff) != 2 {
		t.Errorf("keep off %+v", moss.KeepOff)
	}
	if f := key.Figures["voc_gl"]; f.Min == nil || *f.Min != 310 {
		t.Errorf("VOC %+v", f)
	}
	for _, l := range s.Project.Limits {
		t.Errorf("a card was read as a limit of the project: %q", l.Text)
	}
}

// A card of a product that the schedule does not use ends the one above it too. A label
// that says the name on one card only, under its tag, begins none.
func TestCardsCalledByALabel(t *testing.T) {
	s := readPages(t, page{name: "S", grid: cardSchedule}, page{name: "Data", grid: `
Product | Moss 30
Type | butyl sheet
Open to sun | 45 days

Product | Larch Deck
Type | acrylic roof coating
Open to sun | 900 days

Product | Fern W
Type | rubberized asphalt sheet
Open to sun | 30 days`})
	for tag, want := range map[string]float64{"Moss 30": 45, "Larch Deck": 900, "Fern W": 30} {
		if f := product(t, s, tag).Figures["exposure_days"]; f.Min == nil || *f.Min != want {
			t.Errorf("%s: days %+v, want %v", tag, f, want)
		}
	}
	s = readPages(t, page{name: "S", grid: cardSchedule}, page{name: "Data", grid: `
Moss 30
Product | Hollow 30 Plus
Type | butyl sheet
Open to sun | 45 days

Fern W
Product | Hollow Rubber
Type | rubberized asphalt sheet
Open to sun | 30 days`})
	if n := len(s.Products); n != 2 || s.Products[1].Texts["alias"] != "Hollow Rubber" {
		t.Errorf("%d products, %+v", n, s.Products)
	}
}

// A label of maker and kind tells what the product is; one of maker and paper does not.
func TestCardLabelOfMakerAndKind(t *testing.T) {
	for label, want := range map[string]string{
		"Mfr. / type": "butyl-flashing-tape", "Maker, family": "butyl-flashing-tape", "Maker / submittal no": "",
	} {
		s := readPages(t, page{name: "S", grid: cardSchedule}, page{name: "Data", grid: `
Product | Moss 30
` + label + ` | Hollow – butyl sheet, foil face
Open to sun | 45 days

Product | Fern W
` + label + ` | Hollow – rubberized asphalt sheet
Open to sun | 30 days`})
		if p := product(t, s, "Moss 30"); p.Family != want {
			t.Errorf("%s: family %q, want %q", label, p.Family, want)
		}
		if p := product(t, s, "Moss 30"); want != "" && p.Name != "butyl sheet, foil face" {
			t.Errorf("%s: name %q", label, p.Name)
		}
	}
}

// The two ends of the temperatures at application may have a row each under words that
// no list has whole: neither is taken for the other, whichever stands first. A row of
// one range keeps both of its ends.
func TestEndsOfApplicationInRowsOfTheirOwn(t *testing.T) {
	for _, tc := range []struct{ rows, want string }{
		{"Apply at min, °C | 4 | -6 | 3\nApply at max, °C | 42 | 38 | 35", "4 42; -6 38; 3 35; "},
		{"Application, upper end, °C | 42 | 38 | 35\nApplication, lower end, °C | 4 | -6 | 3", "4 42; -6 38; 3 35; "},
		{"Put on at min, °C | 4 | -6 | 3\nPut on at max, °C | 42 | 38 | 35", "4 42; -6 38; 3 35; "},
		{"Highest to put on, °C | 42 | 38 | 35\nLowest to put on, °C | 4 | -6 | 3", "4 42; -6 38; 3 35; "},
		{"Upper laying temp, °C | 42 | 38 | 35\nLower laying temp, °C | 4 | -6 | 3", "4 42; -6 38; 3 35; "},
		{"Temp to apply, °C | 4 to 42 | -6 to 38 | 3 to 35", "4 42; -6 38; 3 35; "},
		{"Lay at, min - max, °C | 4 to 42 | -6 to 38 | 3 to 35", "4 42; -6 38; 3 35; "},
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
1 | Q1 | plywood | R1
2 | Q2 | plywood | none`}, page{name: "Data", grid: `
Property | Q1 | Q2 | R1
Kind | butyl sheet | SBS rubberized asphalt sheet | water-borne primer
` + tc.rows + `
Thickness, mm | 1.0 | 1.5 |
Exposure, days | 60 | 45 |
VOC, g/L | | | 80`})
		got := ""
		for _, tag := range []string{"Q1", "Q2", "R1"} {
			f := product(t, s, tag).Figures
			for _, key := range []string{"apply_min_c", "apply_max_c"} {
				if f[key].Min == nil {
					got += "- "
					continue
				}
				got += fmt.Sprintf("%g ", *f[key].Min)
			}
			got = strings.TrimSpace(got) + "; "
		}
		if got != tc.want {
			t.Errorf("%s\ngot %s, want %s", tc.rows, got, tc.want)
		}
	}
}

// A sheet may hold two matrices below one another, each with products of its own: the
// second begins after a gap with names, and labels of the first stand below them again.
// A row of names after a gap is a property where none does.
func TestMatrixBelowAnother(t *testing.T) {
	sheet := page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Edge sealant
1 | Q1 | plywood | R1 | J1
2 | Q2 | plywood | R2 | J1`}
	days := func(s *schedule.Schedule, tag, key string) string {
		for _, p := range s.Products {
			if f := p.Figures[key]; p.Tag == tag && f.Min != nil {
				return fmt.Sprintf("%.0f", *f.Min)
			}
		}
		return "-"
	}
	two := readPages(t, sheet, page{name: "Data", grid: `
Property | Q1 | Q2
Kind | butyl sheet | SBS rubberized asphalt sheet
Application, lower end, °C | 5 | -4
Exposure, days | 60 | 45

Liquids | R1 | R2 | J1
Kind | solvent primer | water-borne primer | neutral silicone sealant
Application, lower end, °C | -10 | 4 | -20
VOC, g/L | 310 | 80 | 30`})
	for tag, want := range map[string]string{"Q1": "5", "Q2": "-4", "R1": "-10", "R2": "4", "J1": "-20"} {
		if got := days(two, tag, "apply_min_c"); got != want {
			t.Errorf("%s goes on from %s °C, want %s", tag, got, want)
		}
	}
	one := readPages(t, sheet, page{name: "Data", grid: `
Property | Q1 | Q2
Kind | butyl sheet | SBS rubberized asphalt sheet
Application, lower end, °C | 5 | -4

Primer | R1 | R2
Exposure, days | 60 | 45`})
	if got := days(one, "Q2", "exposure_days"); got != "45" || len(one.Products) != 2 {
		t.Errorf("Q2: %s days, %d products", got, len(one.Products))
	}
}

// Product data may have a primer to each substrate, each under a heading or beside a
// label of its own: what one says is of that substrate alone. What is not listed there
// sets none, and a heading that names no substrate is of all.
func TestPrimerByHeading(t *testing.T) {
	sheet := page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
1 | Q1 | plywood | R1
2 | Q2 | galvanized steel | R2`}
	across := page{name: "Data", grid: `
Property | Q1 | Q2 | R1 | R2
Kind | butyl sheet | SBS rubberized asphalt sheet | solvent primer | water-borne primer
Primer on plywood / OSB | R1 | R1 or R2 | |
Primer: clean steel | none | none, wipe | |
Prmr (EPS) | n/l | R2 only | |
Exposure, days | 60 | 45 | |`}
	down := page{name: "Data", grid: `
Tag | Product type | Primer on plywood / OSB | Primer: clean steel | Prmr (EPS) | Exposure, days
Q1 | butyl sheet | R1 | none | n/l | 60
Q2 | SBS rubberized asphalt sheet | R1 or R2 | none, wipe | R2 only | 45
R1 | solvent primer | | | |
R2 | water-borne primer | | | |`}
	for name, data := range map[string]page{"across": across, "down": down} {
		s := readPages(t, sheet, data)
		for tag, want := range map[string]string{
			"Q1": "plywood: listed R1; OSB: listed R1; steel: none",
			"Q2": "plywood: listed R1 R2; OSB: listed R1 R2; steel: none; EPS: listed R2",
		} {
			var got []string
			for _, a := range product(t, s, tag).Accepts {
				got = append(got, strings.TrimSpace(fmt.Sprintf("%s: %s %s", a.Text, a.Primer, strings.Join(a.Primers, " "))))
			}
			if strings.Join(got, "; ") != want {
				t.Errorf("%s, %s: %s\nwant %s", name, tag, strings.Join(got, "; "), want)
			}
		}
	}
	s := readPages(t, sheet, page{name: "Data", grid: `
Tag | Product type | Primer | Exposure, days | VOC, g/L
Q1 | butyl sheet | R1; none on metal | 60 |
Q2 | SBS rubberized asphalt sheet | R2 | 45 |
R1 | solvent primer | | | 310
R2 | water-borne primer | | | 80`})
	if a := product(t, s, "Q2").Accepts; len(a) != 1 || a[0].Keys[0] != "*" {
		t.Errorf("under Primer alone: %+v", a)
	}
}

// A card names a second primer by the last letters of its name; letters that are no name
// of a product stay as they are.
func TestCardsCutNamesShort(t *testing.T) {
	s := readPages(t, page{name: "Walls", grid: `
Mark | Membrane | Substrate | Primer
1 | Alder 40 | CMU | Alder Bond AQ`}, page{name: "Cards", grid: `
PRODUCT | Alder 40
What | SBS asphalt sheet
Apply from | 40 F
Primer | Alder Bond V or AQ, on CMU

PRODUCT | Alder Bond V
What | solvent primer
Apply from | 25 F

PRODUCT | Alder Bond AQ
What | water-based primer
Apply from | 40 F
Cover within | 8 h, OK WB`})
	got := []string{}
	for _, p := range s.Products {
		for _, a := range p.Accepts {
			got = append(got, a.Primers...)
		}
	}
	if strings.Join(got, ", ") != "Alder Bond AQ, Alder Bond V" && strings.Join(got, ", ") != "Alder Bond V, Alder Bond AQ" {
		t.Errorf("primers %v", got)
	}
}
