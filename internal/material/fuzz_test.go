package material

import (
	"reflect"
	"strings"
	"testing"
)

// FuzzFind reads any text as materials: their words lie in the text, in order
// and apart, the sureness is a share, and a second reading is the same.
func FuzzFind(f *testing.F) {
	for _, s := range []string{"SBS-modified self-adhered sheet, 40 mil, HDPE face", "butyl (no solvent) / EPDM", "mod-bit peel & stick", "SS", "neutral-cure silicone, not acetoxy", "galv. stl. w/o zinc", "µ-porous PE film", "XPS; PIR; MW", "primer: as W-1", "Sealant\n(polyurethane)", "ſ\u0130 tape", "bituminous\u00a0coating"} {
		f.Add(s)
	}
	v := load(f)
	f.Fuzz(func(t *testing.T, text string) {
		found, at := v.Find(text), 0
		for _, m := range found {
			if m.Start < at || m.End < m.Start || m.End > len(text) || m.Text != text[m.Start:m.End] {
				t.Fatalf("%q at %d to %d is not in order in %q", m.Text, m.Start, m.End, text)
			}
			at = m.End
			sound(t, m)
		}
		if again := v.Find(text); !reflect.DeepEqual(found, again) {
			t.Fatalf("a second reading differs: %+v, then %+v", found, again)
		}
		name, rest, _ := strings.Cut(text, ";")
		sound(t, v.Describe(name, rest, text))
	})
}

func sound(t *testing.T, m Material) {
	t.Helper()
	if m.Confidence < 0 || m.Confidence > 1 || m.Unknown && m.Family != "" {
		t.Fatalf("no sound material: %+v", m)
	}
}
