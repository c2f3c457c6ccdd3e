package schedule_test

import (
	"strings"
	"testing"
)

// A description may tell whose make a product is, which is not what it is.
func TestWhoseMake(t *testing.T) {
	for words, want := range map[string]string{
		"Edge mastic | the SBS sheet maker's own, solvent-free":       "mastic",
		"Lap sealant | by the EPDM membrane manufacturer, one part":   "sealant",
		"Wall primer | the butyl tape supplier's own, water-borne":    "primer",
		"Wall sheet | SBS self-adhered sheet, to the maker's sheet 2": "membrane",
		"Base sheet | SBS sheet":                                      "membrane",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer\n1 | AB-1 | CMU | none\n2 | AB-1 | CMU | none\n\nTag | Name | Type | Apply min C\nAB-1 | wall wrap | SBS self-adhered sheet | 4\nXX-1 | "+words+" | 4\n")
		got := ""
		for _, p := range s.Products {
			if p.Tag == "XX-1" {
				got = p.Class
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// A bead of the make of the sheets is for those of its chemistry; that of another's make is not.
func TestBeadOfTheSheetsMake(t *testing.T) {
	for words, want := range map[string]string{
		"Asphalt cutback mastic, membrane manufacturer's own": "asphaltic",
		"Asphalt cutback mastic, the roofer's own":            "",
		"Silicone sealant, sheet maker's own":                 "",
	} {
		s := read(t, "Mark | Membrane | Substrate | Sealant\n1 | AB-1 | CMU | XX-1\n2 | AB-1 | CMU | XX-1\n\nTag | Type | Apply min C\nAB-1 | SBS self-adhered sheet | 4\nXX-1 | "+words+" | 4\n")
		got := ""
		for _, to := range product(t, s, "XX-1").Suits {
			got += strings.Join(to.Keys, "+")
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// A bead whose data says that it is for the laps or edges of a kind of sheet goes with that
// sheet; what is denied, what is of metal, and what only comes near are none.
func TestBeadForPartsOfASheet(t *testing.T) {
	for words, want := range map[string]string{
		"edges and end laps of butyl sheet; 10 mm bead":       "butyl",
		"For terminations on SBS membranes. Not on foam.":     "asphaltic",
		"not for laps of SBS sheet":                           "",
		"laps of metal":                                       "",
		"clean the edges of SBS sheet first; tool after 1 hr": "",
	} {
		s := read(t, "Mark | Membrane | Substrate | Sealant\n1 | AB-1 | CMU | XX-1\n2 | AB-1 | CMU | XX-1\n\nTag | Type | Apply min C | Remarks\nAB-1 | SBS self-adhered sheet | 4 | -\nXX-1 | solvent-borne mastic | 4 | "+words+"\n")
		got := ""
		for _, to := range product(t, s, "XX-1").Suits {
			got += to.Keys[len(to.Keys)-1]
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// Sheets may be told by their tags alone; a sentence that goes on after them tells of something else.
func TestBeadForPartsOfTags(t *testing.T) {
	for words, want := range map[string]string{
		"laps and terminations of AB-1, AB-2":           "AB-1 AB-2",
		"for seams on AB-2. Not on foam.":               "AB-2",
		"edges of AB-1 and metal":                       "",
		"edges of AB-1 are wiped with alcohol before":   "",
		"holds the edges of boards over AB-1":           "",
		"never for laps of AB-1":                        "",
		"top edges of AB-1; 3 mm thick, tooled to AB-2": "AB-1",
	} {
		s := read(t, "Mark | Membrane | Substrate | Sealant\n1 | AB-1 | CMU | XX-1\n2 | AB-2 | CMU | XX-1\n\nTag | Type | Apply min C | Remarks\nAB-1 | SBS self-adhered sheet | 4 | -\nAB-2 | butyl self-adhered sheet | 4 | -\nXX-1 | solvent-borne mastic | 4 | "+words+"\n")
		var got []string
		for _, to := range product(t, s, "XX-1").Suits {
			got = append(got, to.Products...)
		}
		if got := strings.Join(got, " "); got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// What the data of a product says goes over it may meet it; what never does may not.
func TestMayGoOverIt(t *testing.T) {
	for words, want := range map[string]bool{"AB-1 goes over it after a day": true, "AB-1 never goes over it": false} {
		s := read(t, "Mark | Membrane | Substrate | Flashing\n1 | AB-1 | CMU | XX-1\n2 | AB-1 | CMU | XX-1\n\nTag | Type | Apply min C | Remarks\nAB-1 | fluid-applied silicone air barrier | 4 | -\nXX-1 | STPE liquid flashing | 4 | "+words+"\n")
		off := product(t, s, "XX-1").KeepOff
		if len(off) != 1 || off[0].Except != want || strings.Join(off[0].Products, " ") != "AB-1" {
			t.Errorf("%s: %+v", words, off)
		}
	}
}
