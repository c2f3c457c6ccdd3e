package contact_test

import "testing"

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
