package engine

import (
	"strings"
	"testing"

	"abut/policies"
)

const ownRow = `{"id": "copper|lead|contact", "a": "copper", "b": "lead", "exposure": "contact", "state": "any",
 "verdict": "incompatible", "mechanism": "galvanic", "severity": "error", "condition": "", "source_key": "OWN",
 "basis": "common-practice", "confidence": 0.9}`

func TestOwnPairs(t *testing.T) {
	base := map[string]string{"knowledge/pairs.json": `{"pairs": {"lead": {"zinc": [` +
		strings.NewReplacer("copper", "lead", `"lead"`, `"zinc"`).Replace(ownRow) + `]}}}`}
	pair := func(a, b, row string) string {
		return "{\"pairs\": {\n\"" + a + "\": {\n\"" + b + "\": [" + row + "]}}}"
	}
	swap := func(pairs ...string) string { return strings.NewReplacer(pairs...).Replace(ownRow) }
	tests := map[string]struct{ text, want string }{
		"a good row":       {pair("copper", "lead", ownRow), ""},
		"no verdict":       {pair("copper", "lead", swap(`"verdict": "incompatible",`, "")), "pairs.json:3: data.knowledge.pairs.copper.lead.0 "},
		"unknown verdict":  {pair("copper", "lead", swap("incompatible", "bad")), "pairs.json:4: "},
		"unknown key":      {pair("copper", "lead", swap(`"a":`, `"aa":`)), "pairs.json:3: "},
		"another pair":     {pair("copper", "zinc", ownRow), "pairs.json:3: data.knowledge.pairs.copper.zinc holds a row of copper and lead"},
		"keys exchanged":   {pair("zinc", "lead", swap("copper", "zinc")), "pairs.json:3: data.knowledge.pairs.zinc.lead is judged already as lead, zinc"},
		"other exposure":   {pair("zinc", "lead", swap("copper", "zinc", `"exposure": "contact"`, `"exposure": "near"`)), ""},
		"a pair is a list": {`{"pairs": {"copper": [1]}}`, "pairs.json:1: data.knowledge.pairs.copper"},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			root := folder(t, map[string]string{"knowledge/pairs.json": tc.text})
			_, err := Load(Options{Tree: policyTree(base), Folders: []string{root}})
			switch {
			case tc.want == "" && err != nil:
				t.Errorf("got %v, want no error", err)
			case tc.want != "" && (err == nil || !strings.Contains(err.Error(), tc.want)):
				t.Errorf("got %v\nwant %q in it", err, tc.want)
			}
		})
	}
}

// TestBuiltInPairs holds the table of pairs itself to the schema.
func TestBuiltInPairs(t *testing.T) {
	sources, err := readSources(policies.FS, builtIn, func(p string) bool { return p == "knowledge/pairs.json" })
	if err != nil || len(sources) != 1 {
		t.Fatal(err, len(sources))
	}
	data, problems := readData(sources[0])
	sources[0].data = data
	problems = append(problems, checkPairs(sources[0], nil)...)
	if err := problems.asError(); err != nil {
		t.Error(err)
	}
}
