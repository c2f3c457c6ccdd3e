package schedule_test

import (
	"strings"
	"testing"
)

// A bracket takes what it names out of the list around it, and its condition bars
// nothing; cutback is the solvent asphalt alone and no asphaltic sheet.
func TestExceptedInBrackets(t *testing.T) {
	for cell, want := range map[string]string{
		"solvents (PR-7 on metal excepted), creosote":     "solvent-borne fine:PR-7 creosote-timber",
		"solvents (but not our PR-7), creosote":           "solvent-borne fine:PR-7 creosote-timber",
		"solvents (except PR-7 or PR-8 on CMU); creosote": "solvent-borne fine:PR-7 fine:PR-8 creosote-timber",
		"solvents (not on aluminum), creosote":            "solvent-borne aluminum-sheet creosote-timber",
		"cutback adhesive, creosote":                      "asphalt-cutback-mastic creosote-timber",
		"any primer but PR-7, creosote":                   "primer-unspecified fine:PR-7 creosote-timber",
		"metals other than copper and zinc, creosote":     "metal fine:copper-sheet fine:zinc-sheet creosote-timber",
		"all sheets except EPDM and TPO, creosote":        "fine:epdm fine:tpo-membrane creosote-timber",
		"OK with any sheet except EPDM; creosote":         "epdm creosote-timber",
		"Between TPO and creosote":                        "fine:tpo-membrane fine:creosote-timber",
	} {
		s := read(t, walls+`
Tag | Type | Min apply °C | Keep away from
R-1 | rubberized asphalt membrane | 5 | `+cell+`
PR-7 | solvent-borne rubber primer | -5 | -
PR-8 | solvent-borne rubber primer | -5 | -
`)
		if got := targets(product(t, s, "R-1").KeepOff); got != want {
			t.Errorf("%s\ngot  %s\nwant %s", cell, got, want)
		}
	}
	s := read(t, walls+"\nTag | Type | Min apply °C | Keep away from\nR-1 | rubberized asphalt membrane | 5 | cutback\n")
	if keys := product(t, s, "R-1").KeepOff[0].Keys; strings.Contains(strings.Join(keys, " "), "asphaltic") {
		t.Errorf("cutback bars %v", keys)
	}
}

// In a list of substrates a lone short form is the board, and a primer for steel is
// for zinc-coated steel too.
func TestShortFormsAndSteel(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | 2-ply butyl flashing tape | 5 | Ply; conc, CMU | PR-1; PR-7 on steel and ply
PR-1 | water-borne acrylic primer | 4 | - | -
PR-7 | solvent-borne rubber primer | -5 | - | -
`)
	p := product(t, s, "R-1")
	if got := accepted(p); !strings.HasPrefix(got, "osb-plywood-sheathing PR-1, cast-concrete PR-1") {
		t.Errorf("accepts %s", got)
	}
	steel, ply := p.Accepts[len(p.Accepts)-2], p.Accepts[len(p.Accepts)-1]
	if got := strings.Join(steel.Keys, " "); got != "carbon-steel zinc-coated" || steel.Primers[0] != "PR-7" {
		t.Errorf("steel: %s with %v", got, steel.Primers)
	}
	if ply.Keys[0] != "osb-plywood-sheathing" || ply.Primers[0] != "PR-7" {
		t.Errorf("ply: %v with %v", ply.Keys, ply.Primers)
	}
}

// An age that a note asks for under one sheet is not that of others of its family.
func TestAgeUnderOneSheet(t *testing.T) {
	s := read(t, `Mark | Product | Substrate | Primer | Lap
W-1 | ZB-1 | concrete | PR-1 | 3 in.
W-2 | ZB-2 | concrete | PR-1 | 3 in.

Tag | Type | Min apply F | UV days
ZB-1 | self-adhered SBS sheet | 40 | 60
ZB-2 | self-adhered SBS sheet, below grade | 40 | 30
PR-1 | solvent primer | 20 | -

Notes
Cast walls that take ZB-2 are 21 days old.
`)
	if l := limit(s, "concrete_age_days"); l == nil || strings.Join(l.Keys, " ") != "ZB-2" {
		t.Errorf("got %+v", l)
	}
}

// A submitting firm calls its products by their trade names, and says beside them
// which marks they stand for: the row's data is that of the product offered.
func TestOfferedInsteadOfAMark(t *testing.T) {
	s := readPages(t, page{name: "List", grid: `
Line | We offer | In lieu of | Onto | Primer | Touches
K-1 | Larchfelt 50 | TF-3 | CMU | none | brick
K-2 | Larchfelt 50 Cold | TF-4 | CMU | none | brick`}, page{name: "Data", grid: `
Product | Offered for | What | Put on at, °F | Do not place against
Larchfelt 50 | TF-3 | SBS flashing sheet | 45 | coal tar
Larchfelt 50 Cold | TF-4 | SBS flashing sheet, winter grade | 15 | coal tar`})
	for mark, want := range map[string]string{"K-1": "Larchfelt 50", "K-2": "Larchfelt 50 Cold"} {
		if l := line(t, s, mark); l.Texts["specified"] == "" || len(l.Items) == 0 || l.Items[0].Product != want {
			t.Errorf("%s: %+v", mark, l.Items)
		}
	}
	if got := targets(product(t, s, "Larchfelt 50").KeepOff); got != "coal-tar-pitch" {
		t.Errorf("keeps off %q", got)
	}
}

// A bed that is barred in a state that passes is not barred when that is over.
func TestBarredWhileDamp(t *testing.T) {
	holdKeptOff(t, map[string]string{
		"moist masonry; creosote":          "creosote-timber",
		"frozen or wet CMU / brick, EPDM":  "epdm",
		"dusty concrete and block":         "",
		"brick, creosote":                  "clay-brick creosote-timber",
		"EPDM, wet-treated lumber":         "epdm treated-lumber",
		"wet concrete, asphalt; CMU":       "asphaltic concrete-masonry",
		"not a wearing coat; oily plywood": "",
	})
}

// What a list of beds bars is no bed, and what it bars in some case only is one.
func TestBarredBeds(t *testing.T) {
	for cell, want := range map[string]string{
		"block, steel, not on EPS":          "concrete-masonry carbon-steel bars:eps",
		"block; never on EPS or cedar":      "concrete-masonry bars:eps bars:tannin-rich-wood",
		"any substrate but EPS":             "bars:eps",
		"all metals except copper, block":   "metal bars:copper-sheet concrete-masonry",
		"block, not on plywood over 19% MC": "concrete-masonry osb-plywood-sheathing",
		"block (no primer), steel":          "concrete-masonry carbon-steel",
	} {
		s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates
R-1 | rubberized asphalt membrane | 5 | `+cell+`
PR-7 | solvent-borne rubber primer | -5 | block
`)
		var got []string
		for _, a := range product(t, s, "R-1").Accepts {
			if a.Except {
				a.Keys[0] = "bars:" + a.Keys[0]
			}
			got = append(got, a.Keys[0])
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s\ngot  %s\nwant %s", cell, strings.Join(got, " "), want)
		}
	}
}

// The material of a separator that the list asks for is not kept off.
func TestKeepOffNamesItsSeparator(t *testing.T) {
	holdKeptOff(t, map[string]string{
		"bitumen in any form: separator of sheet steel": "asphaltic",
		"creosote; EPDM, copper slip sheet between":     "creosote-timber epdm",
		"creosote, separated by a stainless plate":      "creosote-timber",
		"bitumen, copper without separator":             "asphaltic copper-sheet",
		"no separator known for: EPDM":                  "epdm",
		"EPDM (PE slip sheet)":                          "epdm",
		"no EPDM, creosote (poly film between)":         "epdm creosote-timber",
		"bitumen (asphalt felt, cutback)":               "asphaltic asphalt-felt asphalt-cutback-mastic",
	})
}

// What the product holds badly on is kept off.
func TestKeepOffWhereItDoesNotHold(t *testing.T) {
	holdKeptOff(t, map[string]string{
		"No stick to EPDM":                   "epdm",
		"Does not bond to PE film":           "polyethylene-sheet",
		"Won't adhere to HDPE/PP film; EPDM": "polyethylene-sheet epdm",
	})
}

// holdKeptOff holds what cells of a coating's data keep off against what they should.
func holdKeptOff(t *testing.T, cells map[string]string) {
	t.Helper()
	for cell, want := range cells {
		s := read(t, walls+`
Tag | Type | Min apply °C | Keep away from
R-1 | fluid-applied acrylic membrane | 5 | `+cell+`
`)
		if got := targets(product(t, s, "R-1").KeepOff); got != want {
			t.Errorf("%s\ngot  %s\nwant %s", cell, got, want)
		}
	}
}

// A short form of plasticized ends no sentence.
func TestKeepOffShortForms(t *testing.T) {
	holdKeptOff(t, map[string]string{
		"EPDM, plast. PVC":       "epdm pvc-plasticized",
		"plast. PVC, coal tar":   "pvc-plasticized coal-tar-pitch",
		"interior plaster, EPDM": "gypsum-plaster epdm",
	})
}

// Where a cell of what to keep off turns to that after a comma, what comes before and is
// allowed alone is no part of it; a plain list stays barred on both sides.
func TestOnlyThenKeepOff(t *testing.T) {
	for cell, want := range map[string]string{
		"steel joints only, keep off creosote":       "fine:carbon-steel creosote-timber",
		"for steel joints, keep it away from EPDM":   "fine:carbon-steel epdm",
		"steel only, keep clear of EPDM, creosote":   "fine:carbon-steel epdm creosote-timber",
		"EPDM, keep off creosote":                    "epdm creosote-timber",
		"EPDM, keeps its bond; creosote":             "epdm creosote-timber",
		"Keep off EPDM, keep off creosote near fire": "epdm creosote-timber",
	} {
		s := read(t, walls+`
Tag | Type | Min apply °C | Keep away from
R-1 | butyl sealant | 5 | `+cell+`
`)
		if got := targets(product(t, s, "R-1").KeepOff); got != want {
			t.Errorf("%s\ngot  %s\nwant %s", cell, got, want)
		}
	}
}

// A remark that denies what touches the product keeps that off; what is not in it, and what
// is not to be done to it, do not touch it.
func TestRemarkOfNoContact(t *testing.T) {
	for remark, want := range map[string]string{
		"no silicone against it":                             "silicone",
		"30 year roll; no EPDM contact":                      "EPDM",
		"no butyl sealant on the film until a letter is had": "butyl sealant",
		"no silicone":                  "",
		"no foot traffic on it":        "",
		"no silicone on wet faces":     "",
		"no solvent contact with foam": "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\n1 | SH-1 | CMU | PR-1 | 3 in."},
			page{name: "P", grid: "\nTag | Type | Min °F | Max °F | Days in sun | Comments\nSH-1 | SBS sheet | 25 | 110 | 90 | " + remark + "\nPR-1 | solvent primer | 25 | 110 | - | -"})
		got := ""
		for _, off := range product(t, s, "SH-1").KeepOff {
			got += off.Text
		}
		if got != want {
			t.Errorf("%s: %q, want %q", remark, got, want)
		}
	}
}
