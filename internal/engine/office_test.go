package engine

import (
	"os"
	"path"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
)

// officeFolder is the worked example of an office's own rules and data.
const officeFolder = "../../testdata/office/house"

// TestOfficeExample runs the Rego tests of the worked example over the built-in
// tree, and holds its rule to what the built-in rules are held to.
func TestOfficeExample(t *testing.T) {
	rules, err := Catalogue(Options{Folders: []string{officeFolder}})
	if err != nil {
		t.Fatal(err)
	}
	own := 0
	for _, r := range rules {
		if strings.HasPrefix(r.ID, "office-") {
			own++
			teaches(t, r)
		}
	}
	if own != 1 {
		t.Errorf("got %d rules of the office, want 1", own)
	}
	tests := map[string]*ast.Module{}
	for name, text := range regoFiles(t, os.DirFS(officeFolder)) {
		checkText(t, name, text)
		if strings.HasSuffix(name, "_test.rego") {
			tests[path.Join(officeFolder, name)] = parse(t, name, text)
		}
	}
	results := runTests(t, Options{Folders: []string{officeFolder}}.withDefaults(), tests)
	own = 0
	for _, r := range results {
		if !strings.HasPrefix(r.Location.File, "sequence/pan") {
			continue
		}
		own++
		if !r.Pass() {
			t.Errorf("%s: %s\n%s", r.Location, r, r.Output)
		}
	}
	if own < 2 {
		t.Errorf("only %d tests of the office ran", own)
	}
}
