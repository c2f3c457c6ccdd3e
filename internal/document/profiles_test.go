package document_test

import (
	"testing"

	"abut/internal/document"
)

// TestPaintHasNoThickness: the thickness of a row is that of its board, not of
// the paint named beside it.
func TestPaintHasNoThickness(t *testing.T) {
	doc := build(t, `
Wall type|Layer|Material|Thickness, in
W1|1|Gypsum board, latex paint|0.625
W1|2|XPS|2
W1|3|Clay brick|3.625
`, document.Settings{})
	if len(doc.Profiles) != 1 || len(doc.Profiles[0].Layers) != 4 {
		t.Fatalf("not one profile of four layers: %+v", doc.Profiles)
	}
	for _, l := range doc.Profiles[0].Layers {
		if known := l.Thick != nil; known == (l.Family == "latex-paint") {
			t.Errorf("%s: thickness known %v", l.Text, known)
		}
	}
}
