package contact_test

import (
	"slices"
	"strings"
	"testing"
)

func TestRunoff(t *testing.T) {
	for cell, want := range map[string]string{
		"drains onto aluminum panels below":           "copper-sheet>aluminum-sheet",
		"runs off onto zinc sheet and aluminum sheet": "copper-sheet>aluminum-sheet copper-sheet>zinc-sheet",
		"drips onto galvanized steel flashing":        "copper-sheet>galvanized-sheet",
		"aluminum sheet below":                        "copper-sheet>aluminum-sheet",
		"aluminum sheet above":                        "aluminum-sheet>copper-sheet",
		"downstream of the zinc gutter":               "zinc-sheet>copper-sheet",
		"lead flashing drains onto zinc sheet":        "lead-sheet>zinc-sheet",
		"takes the runoff from cedar shingles":        "tannin-rich-wood>copper-sheet",
		"lead flashing above the zinc sheet":          "lead-sheet>zinc-sheet",
		"lead flashing below the zinc sheet":          "zinc-sheet>lead-sheet",
		"aluminum panels":                             "",
		"does not drain onto the aluminum panels":     "",
		"aluminum panels, see above":                  "",
		"aluminum panels 2 ft above grade":            "",
		"lapped over the zinc sheet":                  "",
		"zinc sheet drains to the roof drain":         "",
		"copper sheet above drains onto it":           "",
		"zinc sheet above drains onto it":             "zinc-sheet>copper-sheet",
	} {
		t.Run(cell, func(t *testing.T) {
			grid := "Mark | Flashing | Substrate | Primer | Touches\nD1 | copper sheet | CMU | none | " + cell + "\nD2 | butyl tape | CMU | none | clay brick\n"
			var got []string
			for _, c := range find(t, grid) {
				if c.Line == "!2" && c.Kind == "runoff" {
					got = append(got, name(c.A)+">"+name(c.B))
				}
			}
			slices.Sort(got)
			if strings.Join(got, " ") != want {
				t.Errorf("got %q, want %q", got, want)
			}
		})
	}
}

func TestRunoffTouchesNothing(t *testing.T) {
	got := told(find(t, "Mark | Flashing | Substrate | Primer | Touches\nD1 | copper sheet | CMU | none | drains onto aluminum panels\nD2 | butyl tape | CMU | none | clay brick\n"), "!2")
	if slices.Contains(got, "copper-sheet|aluminum-sheet direct") || !slices.Contains(got, "copper-sheet|aluminum-sheet runoff") {
		t.Errorf("got %q", got)
	}
}

// A gutter that is named again is the one of which the row has told the metal.
func TestRunoffIntoTheNamedGutter(t *testing.T) {
	for cells, want := range map[string]string{
		"galvanized gutter, 150 half round, bare | copper valley discharges into the gutter": "copper-sheet>galvanized-sheet",
		"zinc gutter half round | copper valley empties in gutter":                           "copper-sheet>zinc-sheet",
		"galvanized gutter brackets | copper valley empties in the hopper":                   "",
		"galvanized gutter, bare | copper valley set in gutter":                              "",
		"no galvanized gutter, bare | copper valley empties in gutter":                       "copper-sheet>sheet-metal-unspecified",
	} {
		var got []string
		for _, c := range find(t, "Mark | Flashing | Substrate | Primer | Touches | Termination\nD1 | – | plywood | none | "+cells+"\nD2 | butyl tape | CMU | none | clay brick | –\n") {
			if c.Line == "!2" && c.Kind == "runoff" {
				got = append(got, name(c.A)+">"+name(c.B))
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: got %q, want %q", cells, got, want)
		}
	}
}
