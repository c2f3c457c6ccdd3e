package schedule

import (
	"slices"
	"strings"
	"testing"
	"unicode"

	"pgregory.net/rapid"

	"abut/internal/regexp"
)

// TestHeadingWords holds the cutting against the expression that says it.
func TestHeadingWords(t *testing.T) {
	if got := headingWords("CoverDate_2 of UVExposure/days, µmÉté"); !slices.Equal(got, []string{"cover", "date", "2", "of", "uvexposure", "days", "µmété"}) {
		t.Errorf("%q", got)
	}
	capital := regexp.MustCompile(`(\p{Ll}{3})(\p{Lu})`)
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.OneOf(rapid.String(), rapid.StringMatching(`[a-zA-Zéßİµ ./_\d]*`)).Draw(t, "text")
		want := strings.FieldsFunc(strings.ToLower(capital.ReplaceAllString(text, "$1 $2")), func(c rune) bool {
			return !unicode.IsLetter(c) && !unicode.IsDigit(c)
		})
		if got := headingWords(text); !slices.Equal(got, want) {
			t.Fatalf("%q: got %q, want %q", text, got, want)
		}
	})
}

// A short word is written out where it stands by itself, and not in a tag before it.
func TestShortWordBesideItsTag(t *testing.T) {
	for text, want := range map[string]string{
		"KB-4, KB over the foam":  "KB-4, kraft board over the foam",
		"foam/KB by KB-4":         "foam/kraft board by KB-4",
		"2KB-1 KBX, KB":           "2KB-1 KBX, kraft board",
		"KB-4 on studs, no board": "KB-4 on studs, no board",
	} {
		if got := replaceWord(text, "KB", "kraft board"); got != want {
			t.Errorf("%s: %s", text, got)
		}
	}
}
