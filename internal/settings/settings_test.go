package settings

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func write(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), Name)
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestLoad(t *testing.T) {
	path := write(t, "place: Buffalo, NY\ncolumns:\n  Bitumen roll: material\npolicies: [rules]\nproducts:\n  - data.xlsx\n")
	s, err := Load(path)
	if err != nil {
		t.Fatal(err)
	}
	if s.Place != "Buffalo, NY" || s.Columns["Bitumen roll"] != "material" {
		t.Errorf("got %+v", s)
	}
	if s.Lines["place"] != 1 || s.Lines["products"] != 5 || s.Lines["hours"] != 0 {
		t.Errorf("lines are %v", s.Lines)
	}
	dir := filepath.Dir(path)
	if s.Policies[0] != filepath.Join(dir, "rules") || s.Products[0] != filepath.Join(dir, "data.xlsx") {
		t.Errorf("paths are not held against the settings file: %v %v", s.Policies, s.Products)
	}
}

func TestLoadRefuses(t *testing.T) {
	for name, c := range map[string]struct{ text, want string }{
		"unknown key":          {"place: X\nplaces: Y\n", "line 2: places"},
		"wrong value":          {"fail_at: always\n", "line 1: fail_at"},
		"wrong type":           {"place: [1]\n", "line 1: place"},
		"bad severity":         {"severity:\n  contact-epdm: fatal\n", "line 2: severity.contact-epdm"},
		"a word met before":    {"place: severity, off\noff:\n  - a\n  - [b]\nseverity:\n  off: note\n", "line 4: off.1"},
		"misspelt, met before": {"# colums\nplace: colums\ncolums: {a: b}\n", "line 3: colums: no such setting"},
		"not yaml":             {"place: \"x\n", "abut.yaml"},
		"not UTF-8":            {"place: Caf\xe9\n", "its text is not valid UTF-8"},
		"alias":                {"off: &a [x]\nreplace: *a\n", "line 2: *a stands for a value given elsewhere"},
		"alias of all":         {"limits:\n  <<: *a\n", "line 2: *a stands for"},
		"billion":              {"off: &a [x, x, x]\nreplace: &b [*a, *a, *a]\npolicies: &c [*b, *b, *b]\n", "line 2: *a stands for"},
		"two documents":        {"place: X\n---\nplace: Y\n", "line 3: a second document begins"},
		"a bare number":        {"12\n", "abut.yaml"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := Load(write(t, c.text))
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Fatalf("got %v, want an error with %q", err, c.want)
			}
			if strings.Contains(err.Error(), "\n") {
				t.Errorf("more than one line: %q", err)
			}
		})
	}
}

func TestEmptyFileIsNoError(t *testing.T) {
	for _, text := range []string{"", "# nothing yet\n", "---\n", "---\nplace: X\n...\n", "place: X\n---\n"} {
		if _, err := Load(write(t, text)); err != nil {
			t.Errorf("%q: %v", text, err)
		}
	}
}

func TestFindGoesUpward(t *testing.T) {
	path := write(t, "place: Boise, ID\n")
	deep := filepath.Join(filepath.Dir(path), "a", "b")
	if err := os.MkdirAll(deep, 0o700); err != nil {
		t.Fatal(err)
	}
	s, err := Find(deep)
	if err != nil || s.File != path || s.Place != "Boise, ID" {
		t.Errorf("got %+v, %v", s, err)
	}
}
