package settings

import (
	"strings"
	"testing"
)

// FuzzParse reads any text as settings: they are read, or refused in one line.
func FuzzParse(f *testing.F) {
	for _, s := range []string{
		"place: Buffalo, NY\ncolumns:\n  Bitumen roll: material\npolicies: [rules]\n",
		"severity: {contact-epdm: fatal}\n", "fail_at: warning\nhours: 07:00-17:00\n", "? [a]\n: b\n", "*a", "a: &a [*a]\n", "place: !!binary x\n",
		"--- \n...\n", "off: &a [x]\nreplace: *a\n", "\x00", "country: GB\n# end", "place: >-\n  x\n", "\"\\x\": 1", "<<: {place: x}\n",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, raw []byte) {
		if _, err := parse(raw); err != nil && strings.ContainsAny(err.Error(), "\n\r") {
			t.Fatalf("more than one line: %q", err)
		}
	})
}
