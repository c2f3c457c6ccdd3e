package engine

import (
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/policies"
)

// TestKeysThatNothingReads: a typing mistake in an office's data is told with
// its line; what the office adds to a table or reads itself is not.
func TestKeysThatNothingReads(t *testing.T) {
	tests := map[string]struct {
		file, text, want string // want "" for no problem
	}{
		"a limit":                   {"sequence/lap.json", `{"lap": {"usual_mm": 76.2, "source": "ours"}}`, ""},
		"its key misspelt":          {"sequence/lap.json", "{\"lap\": {\n\"usual_m\": 76.2}}", "/sequence/lap.json:2: data.sequence.lap.usual_m is read by nothing; is usual_mm meant?"},
		"its record misspelt":       {"sequence/lap.json", `{"laps": {"usual_mm": 76.2}}`, "data.sequence.laps is read by nothing; is lap meant?"},
		"its topic misspelt":        {"sequenze/lap.json", `{"lap": {"usual_mm": 76.2}}`, "data.sequenze is read by nothing; is sequence meant?"},
		"like no known key":         {"sequence/lap.json", `{"quay": 1}`, "data.sequence.quay is read by nothing; take it out"},
		"a remark":                  {"sequence/lap.json", `{"lap": {"note": "ours", "usual_note": "ours"}}`, ""},
		"more in a list":            {"sequence/edge.json", `{"edge": {"none_words+": ["nix"]}}`, ""},
		"more in a misspelt list":   {"sequence/edge.json", `{"edge": {"non_words+": ["nix"]}}`, "is none_words meant?"},
		"a new family":              {"knowledge/x.json", `{"families": {"quay-roll": {"name": "q", "class": "membrane", "words": ["q"]}}}`, ""},
		"a new family, misspelt":    {"knowledge/x.json", `{"families": {"quay-roll": {"name": "q", "clas": "membrane"}}}`, "data.knowledge.families.quay-roll.clas is read by nothing; is class meant?"},
		"a key that a family lacks": {"knowledge/x.json", `{"families": {"silicone-sealant": {"not_words": ["q"]}}}`, ""},
		"a spelling":                {"knowledge/x.json", `{"vocabulary": {"spelling": {"allumn": "aluminum"}}}`, ""},
		"read by its own rule":      {"sequence/pan.json", `{"ours": {"back_mm": 25}}`, ""},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			root := folder(t, map[string]string{tc.file: tc.text, "lib/own.rego": "package lib.own\n\nx := data.sequence.ours.back_mm\n"})
			_, err := Overlay(policies.FS, []string{root})
			if tc.want == "" {
				if err != nil {
					t.Errorf("got %v, want none", err)
				}
				return
			}
			if err == nil || !strings.Contains(err.Error(), tc.want) || strings.Contains(err.Error(), "\n") {
				t.Errorf("got %v\nwant %q in it, in one line", err, tc.want)
			}
		})
	}
}

// TestBuiltInDataIsKnown: a copy of the built-in data, laid over itself, has no
// key that is unknown.
func TestBuiltInDataIsKnown(t *testing.T) {
	tree, err := readFiles(Options{Tree: policies.FS}, isData)
	if err != nil {
		t.Fatal(err)
	}
	sources, err := readSources(policies.FS, "", isData)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range sources {
		if s.parse(ast.ParserOptions{}); len(s.problems) > 0 {
			t.Fatal(s.problems)
		}
		for _, p := range checkKeys(s, tree.data, "") {
			t.Error(p)
		}
	}
}
