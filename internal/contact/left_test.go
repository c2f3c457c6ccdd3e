package contact_test

import (
	"slices"
	"testing"
)

// What is left on a face touches, also where most of the same stuff came off.
func TestWhatIsLeftOn(t *testing.T) {
	for cell, want := range map[string]string{
		"old silicone cut out, smear of silicone left on the east side": "direct",
		"old silicone cut out, face ground":                             "apart",
	} {
		got := []string{}
		for _, c := range find(t, "Mark | Sealant | Substrate | Primer | Installed\nJ1 | urethane sealant | "+cell+" | urethane primer | 2027-05-04\n") {
			if c.A.Slot == "material" && slices.Contains(c.B.Keys, "silicone") {
				got = append(got, c.Kind)
			}
		}
		if slices.Contains(got, "direct") != (want == "direct") || len(got) == 0 {
			t.Errorf("%s: %v, want %s", cell, got, want)
		}
	}
}
