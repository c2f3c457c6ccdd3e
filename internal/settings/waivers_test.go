package settings

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestAccepted(t *testing.T) {
	path := write(t, "place: Boise, ID\nwaivers:\n  - rule: contact-epdm\n    mark: 301\n    until: 2027-01-31\n    odd: 3\n  - more.yaml\n  - reason: |\n      two\n      lines\n")
	more := filepath.Join(filepath.Dir(path), "more.yaml")
	if err := os.WriteFile(more, []byte("# begin\nwaivers:\n  - rule: data-x\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	s, err := Load(path)
	if err != nil {
		t.Fatal(err)
	}
	got, err := s.Accepted()
	if err != nil || len(got) != 3 {
		t.Fatalf("got %+v, %v", got, err)
	}
	first := got[0]
	if first.Line != 3 || first.Texts["mark"] != "301" || first.Texts["until"] != "2027-01-31" || first.Lines["odd"] != 6 {
		t.Errorf("got %+v", first)
	}
	if got[1].Texts["reason"] != "two\nlines" || got[2].File != more || got[2].Line != 3 {
		t.Errorf("got %+v", got[1:])
	}
}

func TestAcceptedRefuses(t *testing.T) {
	for name, c := range map[string]struct{ text, want string }{
		"no list":      {"waivers: all\n", "line 1: waivers"},
		"missing file": {"waivers: [gone.yaml]\n", "gone.yaml"},
		"list in one":  {"waivers:\n  - rule: [a]\n", "waivers.0.rule"},
	} {
		t.Run(name, func(t *testing.T) {
			s, err := Load(write(t, c.text))
			if err == nil {
				_, err = s.Accepted()
			}
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, want an error with %q", err, c.want)
			}
		})
	}
}

// TestReadFile refuses what would be waited for, or leads elsewhere.
func TestReadFile(t *testing.T) {
	path := write(t, "waivers: []\n")
	link := filepath.Join(t.TempDir(), "link.yaml")
	if err := os.Symlink(path, link); err != nil {
		t.Skip(err)
	}
	for file, most := range map[string]int64{link: 100, filepath.Dir(path): 100, os.DevNull: 100, path: 5} {
		if got, err := ReadFile(file, most); err == nil || !strings.Contains(err.Error(), file+": it ") {
			t.Errorf("%s: %q, %v", file, got, err)
		}
	}
	s, err := Load(write(t, "waivers: ["+link+"]\n"))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := s.Accepted(); err == nil || !strings.Contains(err.Error(), "it is a link") {
		t.Error(err)
	}
}

// TestNoWaivers: a file without the key, and no file at all.
func TestNoWaivers(t *testing.T) {
	s, err := Load(write(t, "place: Boise, ID\n"))
	if err != nil {
		t.Fatal(err)
	}
	for _, set := range []Settings{s, {}} {
		if got, err := set.Accepted(); err != nil || len(got) > 0 {
			t.Errorf("got %+v, %v", got, err)
		}
	}
}
