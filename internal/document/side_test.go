package document_test

import (
	"strings"
	"testing"

	"abut/internal/document"
)

// TestFirstSide: the words nearest to the layers tell the side, else the
// materials do, else nothing does.
func TestFirstSide(t *testing.T) {
	const sheetOutside = "W1|1|Gypsum board\nW1|2|Mineral wool batts\nW1|3|Rubberized asphalt sheet\nW1|4|Clay brick\n"
	const brickFirst = "W1|1|Clay brick\nW1|2|XPS\nW1|3|Rubberized asphalt sheet\nW1|4|Concrete block\n"
	const bare = "W1|1|XPS\nW1|2|Polyethylene film\n"
	const head = "Wall type|Layer|Material\n"
	for name, c := range map[string]struct{ grid, want string }{
		"note, outside first":         {"Layers are listed from the exterior to the interior.\n\n" + head + bare, "outside"},
		"note, room first":            {"Build-ups read room side to weather side\n\n" + head + bare, "room"},
		"note with an arrow":          {"Assemblies, out → in\n\n" + head + bare, "outside"},
		"note that speaks of a joint": {"Seal the frame from the exterior to the interior.\n\n" + head + bare, ""},
		"note under the table":        {head + bare + "\n\nLayers start at the outside face.\n", "outside"},
		"notes both ways":             {"Layers inside to outside\nLayers outside to inside\n\n" + head + bare, ""},
		"number":                      {"Layer 1 = exterior\n\n" + head + bare, "outside"},
		"number of another layer":     {"Layer 10 is exterior\n\n" + head + bare, ""},
		"numbers fall":                {"Layer 1 = exterior\n\n" + head + "W1|2|XPS\nW1|1|Polyethylene film\n", "room"},
		"heading of the column":       {"Wall type|Layer (interior to exterior)|Material\n" + bare, "room"},
		"heading beats the note":      {"Layers are listed outside to inside.\n\nWall type|Layer (interior to exterior)|Material\n" + bare, "room"},
		"words beat materials":        {"Layers are listed outside to inside.\n\n" + head + sheetOutside, "outside"},
		"materials, room first":       {head + sheetOutside, "room"},
		"materials, outside first":    {head + brickFirst, "outside"},
		"materials that do not tell":  {head + bare, ""},
		"materials that disagree":     {head + "W1|1|Clay brick\nW1|2|Gypsum board\nW1|3|Clay brick\n", ""},
	} {
		t.Run(name, func(t *testing.T) {
			doc := build(t, strings.ReplaceAll(c.grid, "\n\n", "\n||\n"), document.Settings{})
			if len(doc.Profiles) != 1 {
				t.Fatalf("not one profile: %+v", doc.Profiles)
			}
			p := doc.Profiles[0]
			if p.First != c.want {
				t.Errorf("first side %q, want %q", p.First, c.want)
			}
			turned := p.Layers[0].Line != p.Lines[0]
			if turned != (p.First == "outside") {
				t.Errorf("first side %q, but the layers begin with %q", p.First, p.Layers[0].Text)
			}
			if unknown := len(p.Missing) > 0 && p.Result == nil; unknown != (p.First == "") {
				t.Errorf("first side %q, missing %v", p.First, p.Missing)
			}
		})
	}
}

// TestFirstSideOfOneCell: a build-up told in one cell has its side from its own
// words or from its heading.
func TestFirstSideOfOneCell(t *testing.T) {
	for name, c := range map[string]struct{ grid, first, room string }{
		"own words": {"Mark|Material|Layers\nA1|Rubberized asphalt sheet|out to in: XPS; rubberized asphalt sheet; polyethylene film\n", "outside", "polyethylene film"},
		"heading":   {"Mark|Material|Layers inside to outside\nA1|Rubberized asphalt sheet|polyethylene film; rubberized asphalt sheet; XPS\n", "room", "polyethylene film"},
	} {
		t.Run(name, func(t *testing.T) {
			doc := build(t, c.grid, document.Settings{})
			if len(doc.Profiles) != 1 {
				t.Fatalf("not one profile: %+v", doc.Profiles)
			}
			if p := doc.Profiles[0]; p.First != c.first || p.Layers[0].Text != c.room {
				t.Errorf("first side %q, room side %q; want %q, %q", p.First, p.Layers[0].Text, c.first, c.room)
			}
		})
	}
}
