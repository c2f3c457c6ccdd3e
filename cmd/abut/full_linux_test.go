package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// TestDiskFull writes to a disk that is full: what was there stays, nothing new
// does, and one line tells.
func TestDiskFull(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=64k"); err != nil {
		t.Skipf("no disk can be mounted here, so none is filled: %v", err)
	}
	t.Cleanup(func() {
		if err := syscall.Unmount(dir, 0); err != nil {
			t.Error(err)
		}
	})
	in := filepath.Join(t.TempDir(), "job.csv")
	if err := os.WriteFile(in, longSchedule(30), 0o600); err != nil {
		t.Fatal(err)
	}
	filler := filepath.Join(dir, "filler")
	if err := os.WriteFile(filler, make([]byte, 60<<10), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"report.html", "report.json", "report.sarif", "report.xml", "marked.xlsx", "blank.xlsx", "abut.tar.gz", "accepted.yaml"} {
		t.Run(name, func(t *testing.T) {
			out := filepath.Join(dir, name)
			args := map[string][]string{"blank.xlsx": {"new", out}, "abut.tar.gz": {"bundle", out}, "accepted.yaml": {"check", in, "--accept-as-is", out}}[name]
			old := args == nil
			if last := filepath.Join(dir, "last"); !old { // the page that an old file takes up
				if err := os.WriteFile(last, []byte("last"), 0o600); err != nil {
					t.Fatal(err)
				}
				defer os.Remove(last)
			}
			if old {
				args = []string{"check", in, "-o", out}
				if err := os.WriteFile(out, []byte("old"), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			cmd, temporary := process(t, args...)
			err := cmd.Run()
			errs := cmd.Stderr.(*bytes.Buffer).String()
			if err == nil || cmd.ProcessState.ExitCode() != 2 || strings.Count(errs, "\n") != 1 || !strings.Contains(errs, "no space left on device") || !strings.Contains(errs, name) {
				t.Errorf("%v: %s", err, errs)
			}
			text, err := os.ReadFile(out)
			if old && string(text) != "old" || !old && err == nil {
				t.Errorf("%d bytes are there now: %v", len(text), err)
			}
			for _, folder := range []string{dir, temporary} {
				if left, err := filepath.Glob(filepath.Join(folder, ".*")); err != nil || len(left) > 0 {
					t.Errorf("left: %v, %v", left, err)
				}
			}
			if old {
				if err := os.Remove(out); err != nil {
					t.Fatal(err)
				}
			}
		})
	}
}
