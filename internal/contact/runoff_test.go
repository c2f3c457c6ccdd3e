package contact_test

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/contact"
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

// Rain off one material comes down on another, or on the row's own, and touches nothing.
func TestRainOff(t *testing.T) {
	for remark, want := range map[string]string{
		"Rain off the zinc goes over the stainless":      "zinc-sheet>stainless-sheet",
		"Runoff of the zinc sheet washes over the ledge": "zinc-sheet>copper-sheet",
		"Water from the zinc falls on the ledge":         "zinc-sheet>copper-sheet",
		"Oak shingles drain in":                          "tannin-rich-wood>copper-sheet",
		"Redwood soffit drips on it":                     "tannin-rich-wood>copper-sheet",
		"Zinc laid over the lead":                        "",
		"Roof drain in deck":                             "",
	} {
		var got []string
		for _, c := range find(t, "Mark | Flashing | Substrate | Primer | Touches | Remarks\nD1 | copper sheet | plywood | none | brick | "+remark+"\nD2 | butyl tape | CMU | none | clay brick |\n") {
			if c.Line == "!2" && c.Kind == "runoff" {
				got = append(got, name(c.A)+">"+name(c.B))
			}
			if c.Line == "!2" && c.From == "remark" && c.Kind == "direct" && want != "" {
				t.Errorf("%s: %s touches %s", remark, name(c.A), name(c.B))
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: got %q, want %q", remark, got, want)
		}
	}
}

// What stands above and sheds its rain need not touch what lies below.
func TestRainedOnIsNear(t *testing.T) {
	for remark, want := range map[string]string{
		"Rain from the aluminum runs down to the copper": "near",
		"Screwed down": "direct",
	} {
		holdKinds(t, map[string]string{remark: want}, func(words string) string {
			return "Mark | Flashing | Substrate | Primer | Touches | Remarks\nD1 | copper sheet | plywood | none | aluminum fascia above | " + words + "\nD2 | butyl tape | CMU | none | clay brick |\n"
		}, func(c contact.Contact) bool {
			return c.From == "touches" && c.A.Family == "copper-sheet" && c.Kind != "runoff"
		})
	}
}

// "It" is the metal that the cell names just before, and else the row's own.
func TestRunoffOntoIt(t *testing.T) {
	for cell, want := range map[string]string{
		"zinc sill; copper downspout empties onto it":            "copper-sheet>zinc-sheet",
		"copper downspout empties onto it":                       "copper-sheet>stainless-sheet",
		"clay brick; copper downspout empties onto it":           "copper-sheet>stainless-sheet",
		"no zinc sill; copper downspout empties onto it":         "copper-sheet>stainless-sheet",
		"zinc sill; copper downspout does not empty onto it":     "",
		"zinc sill; copper downspout kept clear, led to a drain": "",
	} {
		t.Run(cell, func(t *testing.T) {
			var got []string
			for _, c := range find(t, "Mark | Flashing | Substrate | Primer | Touches\nD1 | stainless steel sheet | CMU | none | "+cell+"\nD2 | butyl tape | CMU | none | clay brick\n") {
				if c.Line == "!2" && c.Kind == "runoff" {
					got = append(got, name(c.A)+">"+name(c.B))
				}
			}
			if strings.Join(got, " ") != want {
				t.Errorf("got %q, want %q", got, want)
			}
		})
	}
}

// What lets the water of a roof out stands over what the water falls on, and words after a
// comma go on with the metal before it; what only covers another lets none out.
func TestRunoffOutOfASpout(t *testing.T) {
	for cell, want := range map[string]string{
		"copper downspout over the zinc sheet":               "copper-sheet>zinc-sheet",
		"copper downspout, reaches over the zinc sheet":      "copper-sheet>zinc-sheet",
		"copper flashing, empties onto zinc sheet":           "copper-sheet>zinc-sheet",
		"copper cap over the zinc sheet":                     "",
		"clay brick; drains onto zinc sheet":                 "aluminum-sheet>zinc-sheet",
		"copper flashing behind; drains onto the zinc sheet": "aluminum-sheet>zinc-sheet",
		"copper downspout held clear of the zinc sheet":      "",
	} {
		var got []string
		for _, c := range find(t, "Mark | Flashing | Substrate | Primer | Touches\nD1 | aluminum sheet | CMU | none | "+cell+"\nD2 | butyl tape | CMU | none | clay brick\n") {
			if c.Line == "!2" && c.Kind == "runoff" {
				got = append(got, name(c.A)+">"+name(c.B))
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: got %q, want %q", cell, got, want)
		}
	}
}

// Water that comes down on what the cell has named more fully comes down on that, and not on
// the row's own material.
func TestRunoffOntoWhatWasNamed(t *testing.T) {
	for cell, want := range map[string]string{
		"zinc apron below, copper coping above drains onto apron": "copper-sheet>zinc-sheet",
		"zinc sheet sill, lead flashing spills onto the sill":     "lead-sheet>zinc-sheet",
		"zinc sheet sill, lead flashing spills onto the sidewalk": "",
		"no zinc apron, copper coping drains onto apron":          "",
	} {
		var got []string
		for _, c := range find(t, "Mark | Flashing | Substrate | Primer | Touches\nD1 | butyl tape | brick | none | "+cell+"\nD2 | butyl tape | CMU | none | clay brick\n") {
			if c.Line == "!2" && c.Kind == "runoff" && c.A.Slot != "material" {
				got = append(got, name(c.A)+">"+name(c.B))
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: got %q, want %q", cell, got, want)
		}
	}
}

// Words after a comma go on with the metal before it, and may call what the water comes down on
// by its form alone, of which another cell tells the metal.
func TestRunoffOntoAFormNextDoor(t *testing.T) {
	for cells, want := range map[string]string{
		"copper cap flashing, drips onto apron below | zinc apron flashing":              "copper-sheet>zinc-sheet",
		"zinc apron flashing | copper cap flashing, runs down onto the apron underneath": "copper-sheet>zinc-sheet",
		"copper cap flashing, drips onto pavers below | zinc apron flashing":             "",
		"copper cap flashing, does not drip onto the apron | zinc apron flashing":        "",
		"copper cap flashing | zinc apron flashing":                                      "",
		"zinc apron flashing, zinc apron closer | copper cap flashing, drips onto apron": "",
	} {
		var got []string
		for _, c := range find(t, "Mark | Flashing | Substrate | Primer | Adjacent material 1 | Adjacent material 2\nD1 | butyl tape | plywood | none | "+cells+"\nD2 | butyl tape | CMU | none | clay brick | –\n") {
			if c.Line == "!2" && c.Kind == "runoff" {
				got = append(got, name(c.A)+">"+name(c.B))
			}
			if c.Line == "!2" && c.B.Family == "copper-sheet" && c.A.Slot == "material" && c.Kind != "direct" {
				t.Errorf("%s: the cap touches the sheet all the same, not %s", cells, c.Kind)
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: got %q, want %q", cells, got, want)
		}
	}
}
