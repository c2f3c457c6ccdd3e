//go:build unix

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// TestVulnerabilities: a known vulnerability fails; data that cannot be had is
// one line and no failure. What the check itself says is played.
func TestVulnerabilities(t *testing.T) {
	script, err := filepath.Abs(filepath.Join(testdata, "..", "ci", "vulnerabilities.sh"))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := exec.LookPath("bash"); err != nil {
		t.Skip("no bash here")
	}
	for name, tc := range map[string]struct {
		says string
		code int
		want string
	}{
		"none":    {"echo No vulnerabilities found.", 0, "none is known\n"},
		"found":   {"echo 'Vulnerability #1: in x'; echo 'exit status 3' >&2; exit 1", 1, "Vulnerability #1: in x\nexit status 3\n"},
		"no data": {"echo 'go: downloading x' >&2; echo 'fetching: no such host' >&2; echo 'exit status 1' >&2; exit 1", 0, "the data of known vulnerabilities cannot be had, so nothing is held against it: fetching: no such host\n"},
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			if err := os.WriteFile(filepath.Join(dir, "go"), []byte("#!/bin/sh\n"+tc.says+"\n"), 0o700); err != nil {
				t.Fatal(err)
			}
			cmd := exec.Command("bash", script)
			cmd.Env = append(os.Environ(), "PATH="+dir+string(os.PathListSeparator)+os.Getenv("PATH"))
			out, err := cmd.CombinedOutput()
			if cmd.ProcessState == nil || cmd.ProcessState.ExitCode() != tc.code || string(out) != tc.want {
				t.Errorf("%v: %q, want %q", err, out, strings.TrimSpace(tc.want))
			}
		})
	}
}
