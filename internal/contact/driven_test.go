package contact_test

import (
	"strings"
	"testing"

	"abut/internal/contact"
)

// A column of fixings names the fastener by its tag, and the remark tells what it goes
// through, in words after a comma as in one sentence.
func TestFastenerThroughMetal(t *testing.T) {
	for _, head := range []string{"Fasteners", "Fixing", "Screws", "Anchor tag"} {
		for remark, want := range map[string]string{
			"screws at 12 in. o.c., through the CU-1":    "direct",
			"anchors at 400, thru CU-1 and the block":    "direct",
			"screws to block only, CU-1 laps over heads": "",
		} {
			got := ""
			for _, c := range find(t, `
Mark | Membrane | Substrate | Primer | Flashing | `+head+` | Remarks
T1 | AB-1 | CMU | none | CU-1 | AN-1 | `+remark+`
T2 | AB-1 | CMU | none | CU-1 | AN-1 | –

Tag | Name | Type | Apply min °F | Max exposure, days
AB-1 | wall sheet | SBS self-adhered sheet | 40 | 60
CU-1 | sill flashing | copper sheet | – | –
AN-1 | block screw or anchor | galvanized screw anchor | – | –`) {
				if c.A.Product == "AN-1" && c.B.Product == "CU-1" {
					got = c.Kind
				}
			}
			if got != want {
				t.Errorf("%s: %s: %q, want %q", head, remark, got, want)
			}
		}
	}
}

// A bare distance from the row's own sheet, in the unit of the row's laps, keeps a bead
// off it.
func TestBareClearance(t *testing.T) {
	for words, want := range map[string]string{
		"S-1 in metal laps only, 60 clr AB-1":           "apart",
		"S-1 under the coping hooks, 50 clear of AB-1":  "apart",
		"S-1 in metal laps, onto AB-1":                  "direct",
		"S-1 in metal laps, bead 10 wide, runs on AB-1": "direct",
	} {
		got := ""
		for _, c := range find(t, `
Mark | Membrane | Substrate | Primer | Lap mm | Sealant | Remarks
T1 | AB-1 | plywood | none | 100 | S-1 | `+words+`
T2 | AB-1 | plywood | none | 100 | S-1 | –

Tag | Type | Apply min °F | Max exposure, days
AB-1 | SBS self-adhered sheet | 40 | 60
S-1 | solvent-release butyl sealant | – | –`) {
			if c.From == "sealant" && c.A.Product == "AB-1" && c.B.Product == "S-1" {
				got = c.Kind
				break
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// A fastener that holds one thing to another goes through the first as well.
func TestFastenerThroughBoth(t *testing.T) {
	got := map[string]bool{}
	for _, c := range find(t, `
Mark | Membrane | Substrate | Primer | Remarks
T1 | AB-1 | concrete | none | WD-5 to concrete with SC-1 at 16 in. o.c.; AB-1 over

Tag | Name | Type | Apply min °F | Max exposure, days
AB-1 | wall sheet | SBS self-adhered sheet | 40 | 60
WD-5 | nailer | ACQ-treated lumber | – | –
SC-1 | screw | zinc-plated steel screw | – | –`) {
		got[c.A.Product+" "+c.B.Product] = true
	}
	if !got["WD-5 SC-1"] {
		t.Errorf("got %v", got)
	}
}

// What a sheet goes to by way of a plate or bar lies on that; a bar beside it parts nothing.
func TestByWayOfAPlate(t *testing.T) {
	holdKinds(t, map[string]string{
		"SBS self-adhered sheet via aluminum bar":     "separated",
		"SBS self-adhered sheet via a stainless clip": "separated",
		"SBS self-adhered sheet, aluminum bar below":  "direct",
		"SBS self-adhered sheet":                      "direct",
	}, func(words string) string {
		return "\nMark | Membrane | Substrate | Primer | Touches\nT1 | EPDM sheet | plywood | none | " + words + "\nT2 | EPDM sheet | plywood | none | –\n"
	}, func(c contact.Contact) bool {
		return c.A.Family == "epdm-membrane" && strings.Contains(c.B.Family, "asphalt") || c.B.Family == "epdm-membrane" && strings.Contains(c.A.Family, "asphalt")
	})
}

// Words that open with how a thing is fixed put on another what the cell named right before;
// what tells the place of the row's own sheet, and what has a subject of its own, do not.
func TestLaidOnInTheNextWords(t *testing.T) {
	for words, want := range map[string]bool{
		"copper cap, bare, bedded on the galv. angle":                  true,
		"copper cap; screwed on galv. angle":                           true,
		"copper cap, galv. angle on the far side":                      false,
		"copper cap, SBS self-adhered sheet bedded on the galv. angle": false,
		"copper cap, laid on the SBS sheet":                            false,
	} {
		got := false
		for _, c := range find(t, "\nMark | Membrane | Substrate | Primer | Touches\nT1 | SBS self-adhered sheet | plywood | none | "+words+"\nT2 | SBS self-adhered sheet | plywood | none | –\n") {
			pair := c.A.Family + " " + c.B.Family
			got = got || c.Kind == "direct" && strings.Contains(pair, "copper") && (strings.Contains(pair, "galvanized") || strings.Contains(pair, "zinc"))
		}
		if got != want {
			t.Errorf("%s: %v, want %v", words, got, want)
		}
	}
}
