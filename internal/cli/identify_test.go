package cli

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"github.com/spf13/cobra"
)

func identify(t *testing.T, args ...string) (string, error) {
	t.Helper()
	return written(newIdentify, args)
}

// written runs one command and gives what it wrote.
func written(command func(Streams) *cobra.Command, args []string) (string, error) {
	var out, errs bytes.Buffer
	c := command(Streams{In: strings.NewReader(""), Out: &out, Err: &errs})
	c.SetArgs(args)
	c.SetOut(&errs)
	c.SetErr(&errs)
	c.SilenceErrors, c.SilenceUsage = true, true
	err := c.Execute()
	return out.String(), err
}

func TestIdentifyText(t *testing.T) {
	for text, want := range map[string][]string{
		"mod-bit peel & stick, 40 mil, HDPE face":  {"rubberized-asphalt-membrane", "asphaltic", "polyethylene-film", `"peel & stick" says`, "40 mil: length"},
		"EPDM boot on copper":                      {"EPDM boot\n", "epdm-gasket", "copper\n", "copper-sheet"},
		"peel and stick":                           {"adhesive not stated"},
		"bentonyt panell":                          {"not known", "nearest", "bentonite-waterproofing"},
		"asphalt":                                  {"not told by these words alone", "asphaltic"},
		"butyl sealant, no solvent \x1b[31mred":    {"butyl-sealant"},
		"EPDM":                                     {"not told by these words alone", "may be", "epdm-gasket, epdm-membrane"},
		"PVC":                                      {"not known", "pvc-roof-membrane"},
		"creosoted tie":                            {"creosote-timber", "coal-tar"},
		"26 ga galv. flashing":                     {`"26 ga galv" names it`, "26 ga: gauge"},
		"aluminum flashing w/ butyl tape":          {"aluminum flashing\n", "aluminum-sheet", "butyl tape\n", "butyl-flashing-tape"},
		"peel & stick, winter":                     {"adhesive not stated", "grade-low-temp"},
		"self-adhered flashing strip, butyl, 40 F": {"butyl-flashing-tape", "40 F: temperature"},
	} {
		out, err := identify(t, text)
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range want {
			if !strings.Contains(out, w) {
				t.Errorf("%q: no %q in\n%s", text, w, out)
			}
		}
		if strings.Contains(out, "\x1b") {
			t.Errorf("%q: control characters in %q", text, out)
		}
	}
}

func TestIdentifyJSON(t *testing.T) {
	out, err := identify(t, "--format", "json", "Copper sheet, 16 oz")
	if err != nil {
		t.Fatal(err)
	}
	var id identity
	if err := json.Unmarshal([]byte(out), &id); err != nil {
		t.Fatal(err)
	}
	if len(id.Materials) != 1 || id.Materials[0].Family != "copper-sheet" || id.Materials[0].Keys[0] != "copper-sheet" {
		t.Errorf("%+v", id)
	}
}

func TestIdentifyWrongUse(t *testing.T) {
	for _, args := range [][]string{{}, {"--format", "xml", "copper"}} {
		if _, err := identify(t, args...); err == nil {
			t.Errorf("%q: no error", args)
		}
	}
}
