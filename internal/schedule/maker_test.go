package schedule_test

import "testing"

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
