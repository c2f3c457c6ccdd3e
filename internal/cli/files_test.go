package cli

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// contents gives the files of a folder with what they hold.
func contents(t *testing.T, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		text, err := os.ReadFile(filepath.Join(dir, e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		out[e.Name()] = string(text)
	}
	return out
}

func text(s string) func(io.Writer) error {
	return func(w io.Writer) error { _, err := io.WriteString(w, s); return err }
}

// TestWriteFails: a disk that is full half way leaves what was there, and
// nothing else.
func TestWriteFails(t *testing.T) {
	full := errors.New("no space left on device")
	half := func(w io.Writer) error { return errors.Join(text("half")(w), full) }
	dir := t.TempDir()
	file := filepath.Join(dir, "report.md")
	if err := writeFile(file, half); !errors.Is(err, full) || len(contents(t, dir)) != 0 {
		t.Errorf("%v leaves %v", err, contents(t, dir))
	}
	if err := writeFile(file, text("old")); err != nil {
		t.Fatal(err)
	}
	if err := writeFile(file, half); !errors.Is(err, full) {
		t.Error(err)
	}
	if got := contents(t, dir); len(got) != 1 || got["report.md"] != "old" {
		t.Errorf("got %v", got)
	}
	if err := writeFile(file, text("new")); err != nil || contents(t, dir)["report.md"] != "new" {
		t.Errorf("%v, %v", err, contents(t, dir))
	}
}

func TestCreateFile(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "new.xlsx")
	if err := createFile(file, text("first")); err != nil {
		t.Fatal(err)
	}
	if err := createFile(file, text("second")); err == nil || !strings.Contains(err.Error(), "it is there already") {
		t.Error(err)
	}
	if got := contents(t, dir); len(got) != 1 || got["new.xlsx"] != "first" {
		t.Errorf("got %v", got)
	}
}

func TestWritable(t *testing.T) {
	dir := t.TempDir()
	in := filepath.Join(dir, "in.xlsx")
	if err := os.WriteFile(in, []byte("x"), 0o600); err != nil {
		t.Fatal(err)
	}
	link, hard := filepath.Join(dir, "link.md"), filepath.Join(dir, "hard.xlsx")
	if err := errors.Join(os.Symlink("in.xlsx", link), os.Link(in, hard)); err != nil {
		t.Skip(err)
	}
	for name, tc := range map[string]struct {
		outputs []string
		want    string
	}{
		"new":          {[]string{filepath.Join(dir, "a.md"), filepath.Join(dir, "b.md")}, ""},
		"input":        {[]string{in}, "is never written over"},
		"other name":   {[]string{filepath.Join(dir, ".", "..", filepath.Base(dir), "in.xlsx")}, "is never written over"},
		"second name":  {[]string{hard}, "is never written over"},
		"link":         {[]string{link}, "it is a link, folder or device"},
		"folder":       {[]string{dir}, "it is a link, folder or device"},
		"named twice":  {[]string{filepath.Join(dir, "a.md"), dir + "/./a.md"}, "it is named twice"},
		"device named": {[]string{os.DevNull}, "it is a link, folder or device"},
	} {
		t.Run(name, func(t *testing.T) {
			err := writable(tc.outputs, []string{in, filepath.Join(dir, "missing.xlsx")})
			if tc.want == "" && err != nil || tc.want != "" && (err == nil || !strings.Contains(err.Error(), tc.want)) {
				t.Errorf("got %v, want %q", err, tc.want)
			}
		})
	}
}

// TestNoNameUntilWhole: while a file is written, nothing of it stands in the
// folder, so that a run that is killed leaves nothing.
func TestNoNameUntilWhole(t *testing.T) {
	dir := t.TempDir()
	if f, err := unnamed(dir); err != nil {
		t.Skipf("this disk knows no files without a name: %v", err)
	} else if err := f.Close(); err != nil {
		t.Fatal(err)
	}
	entries := func() (names []string) {
		list, err := os.ReadDir(dir)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range list {
			names = append(names, e.Name())
		}
		return names
	}
	write := func(w io.Writer) error {
		if _, err := io.WriteString(w, "whole"); err != nil {
			return err
		}
		if names := entries(); len(names) > 0 {
			t.Errorf("while it is written there is %v", names)
		}
		return nil
	}
	path := filepath.Join(dir, "report.md")
	if err := writeFile(path, write); err != nil {
		t.Fatal(err)
	}
	if text, err := os.ReadFile(path); err != nil || string(text) != "whole" || len(entries()) != 1 {
		t.Errorf("%q, %v, %v", text, err, entries())
	}
}
