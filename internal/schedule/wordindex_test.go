package schedule

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestIndexesFindAllWords holds the indexes against going through everything.
func TestIndexesFindAllWords(t *testing.T) {
	stands := func(text, name string) bool {
		for range wholeWords(text, name) {
			return true
		}
		return false
	}
	rapid.Check(t, func(t *rapid.T) {
		some := rapid.StringMatching(`[ab1é .-]{1,6}`)
		text := strings.Join(rapid.SliceOf(some).Draw(t, "text"), " ")
		names := rapid.SliceOf(some).Draw(t, "names")
		words := indexWords(text)
		half := len(names) / 2
		var x nameIndex
		x.in(text, names[:half]) // the rest is added later
		found := x.in(text, names)
		if !slices.IsSorted(found) {
			t.Errorf("%v is out of order", found)
		}
		for i, name := range names {
			if got, want := words.has(name), stands(text, name); got != want {
				t.Errorf("%q in %q: %v, want %v", name, text, got, want)
			}
			if stands(text, name) && !slices.Contains(found, i) {
				t.Errorf("%q in %q is not found", name, text)
			}
		}
	})
}
