package engine

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestFolderAddsRulesAndChangesData(t *testing.T) {
	own := strings.NewReplacer("sequence-lap", "office-lap", "sequence.lap", "sequence.office_lap", "too short", "ours").Replace(header + body)
	root := folder(t, map[string]string{
		"sequence/office_lap.rego":      own,
		"sequence/office_lap_test.rego": "not even Rego",
		"sequence/limits.json":          `{"limits": {"lap_mm": 30}}`,
	})
	e := load(t, Options{Tree: policyTree(nil), Folders: []string{root}})
	if n := len(e.Rules()); n != 2 {
		t.Errorf("got %d rules, want 2", n)
	}
	findings := judge(t, e)
	if len(findings) != 2 || findings[0].Rule != "office-lap" || findings[0].Row != 4 || findings[1].Rule != "sequence-lap" {
		t.Errorf("got %+v", findings)
	}
}

func TestFolderProblems(t *testing.T) {
	rename := func(pkg string) string {
		return strings.NewReplacer("package sequence.lap", "package "+pkg, "sequence-lap", "office-lap").Replace(header + body)
	}
	tests := map[string]struct {
		file, text, want string
	}{
		"another's rule":      {"sequence/x.rego", rename("sequence.lap"), "/sequence/x.rego:11: package sequence.lap exists already"},
		"within a rule":       {"sequence/x.rego", rename("sequence.lap.inner"), "package sequence.lap exists already"},
		"above the rules":     {"sequence/x.rego", rename("sequence"), "begin with a topic and a name of your own"},
		"no topic":            {"sequence/x.rego", rename("ours.lap"), "begin with a topic and a name of your own"},
		"another's helper":    {"lib/x.rego", "package lib.help\n\nx := 1\n", "/lib/x.rego:1: package lib.help exists already"},
		"broken":              {"sequence/x.rego", "package sequence.x\n\nfindings contains {", "/sequence/x.rego:3: "},
		"broken data":         {"sequence/x.json", "{\n\"limits\": oops}", "/sequence/x.json:2: "},
		"wrong shape":         {"sequence/x.json", `{"limits": {"lap_mm": "long"}}`, "data.sequence.limits.lap_mm is a number, not a text"},
		"object to a list":    {"sequence/x.json", `{"limits": []}`, "data.sequence.limits is an object, not a list"},
		"adds to no list":     {"sequence/x.json", `{"limits": {"note+": ["b"]}}`, "/sequence/x.json:1: data.sequence.limits.note+ adds a list to nothing"},
		"adds to the unknown": {"sequence/x.json", `{"limits": {"verbs+": ["b"]}}`, "data.sequence.limits.verbs+ is read by nothing"},
		"adds no list":        {"sequence/x.json", "{\"limits\":\n{\"words+\": \"b\"}}", "/sequence/x.json:2: data.sequence.limits.words+ adds a text to a list"},
		"adds another sort":   {"sequence/x.json", `{"limits": {"words+": [1]}}`, "adds a number to a list of which each is a text"},
		"asks the network":    {"sequence/x.rego", rename("sequence.x") + "\nx := http.send({\"method\": \"get\", \"url\": \"http://localhost\"})\n", "/sequence/x.rego:19: undefined function http.send"},
		"hides findings":      {"sequence/x.json", `{"lap": {"findings": []}}`, "data.sequence.lap is read by nothing"},
		"metadata is short":   {"sequence/x.rego", "package sequence.x\n\nfindings contains \"x\"\n", "/sequence/x.rego:1: no metadata"},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			root := folder(t, map[string]string{tc.file: tc.text})
			files := policyTree(map[string]string{"lib/help.rego": "package lib.help\n\nx := 1\n"})
			_, err := Load(Options{Tree: files, Folders: []string{root}})
			if err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v\nwant %q in it", err, tc.want)
			}
		})
	}
}

// TestDataHidesNoRule: not even a key that a rule of the folder names.
func TestDataHidesNoRule(t *testing.T) {
	root := folder(t, map[string]string{
		"sequence/x.json": `{"lap": {"findings": []}}`, "lib/x.rego": "package lib.x\n\nlap := 1\n",
	})
	_, err := Load(Options{Tree: policyTree(nil), Folders: []string{root}})
	if err == nil || !strings.Contains(err.Error(), "conflicting") {
		t.Errorf("got %v", err)
	}
}

func TestFolderReplacesWhereSettingsSaySo(t *testing.T) {
	root := folder(t, map[string]string{"sequence/lap.rego": strings.ReplaceAll(header+body, "too short", "ours")})
	e := load(t, Options{Tree: policyTree(nil), Folders: []string{root}, Replace: []string{"sequence.lap"}})
	for _, f := range judge(t, e) {
		if f.Message != "ours" {
			t.Errorf("got %q of the replaced rule", f.Message)
		}
	}
	if n := len(e.Rules()); n != 1 {
		t.Errorf("got %d rules, want 1", n)
	}
}

func TestFolderIsMissing(t *testing.T) {
	if _, err := Load(Options{Tree: policyTree(nil), Folders: []string{"no/such/folder"}}); err == nil {
		t.Error("no error")
	}
}

// TestFolderIsALink: what is judged must not change with where a link leads.
func TestFolderIsALink(t *testing.T) {
	link := filepath.Join(t.TempDir(), "house")
	if err := os.Symlink(folder(t, map[string]string{"sequence/ours.rego": officeRule(body)}), link); err != nil {
		t.Skip(err)
	}
	if _, err := Load(Options{Tree: policyTree(nil), Folders: []string{link}}); err == nil || !strings.Contains(err.Error(), link+": it is a link; ") {
		t.Error(err)
	}
}
