package engine

import (
	"io/fs"
	"testing"
)

func TestOverlay(t *testing.T) {
	root := folder(t, map[string]string{"sequence/mine.json": `{"limits": {"lap_mm": 75, "words+": ["b", "a"]}}`})
	files, err := Overlay(policyTree(nil), []string{root})
	if err != nil {
		t.Fatal(err)
	}
	text, err := fs.ReadFile(files, "sequence/limits.json")
	if want := `{"limits":{"lap_mm":75,"words":["a","b"]}}`; err != nil || string(text) != want {
		t.Errorf("got %s, %v\nwant %s", text, err, want)
	}
	if _, err := fs.ReadFile(files, "sequence/mine.json"); err == nil {
		t.Error("a file that the tree has not is there")
	}
	text, err = fs.ReadFile(files, "sequence/lap.rego")
	if err != nil || string(text) != header+body {
		t.Errorf("the rule is changed: %s, %v", text, err)
	}
}

func TestOverlayWithoutFoldersIsTheTree(t *testing.T) {
	tree := policyTree(nil)
	files, err := Overlay(tree, nil)
	if err != nil {
		t.Fatal(err)
	}
	text, err := fs.ReadFile(files, "sequence/limits.json")
	if err != nil || string(text) != string(tree["sequence/limits.json"].Data) {
		t.Errorf("got %s, %v", text, err)
	}
}
