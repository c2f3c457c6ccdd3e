//go:build unix

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// longSchedule has rows of which none is like another.
func longSchedule(rows int) []byte {
	var b bytes.Buffer
	b.WriteString("Item,Wall,Membrane,Thickness,Substrate,Primer,Touches,Lap,Installed,Covered,Remarks\n")
	for i := range rows {
		fmt.Fprintf(&b, "%d,W%d,SBS-modified self-adhered sheet no %[1]d,%[3]d mil,CMU,P-%[1]d,plasticized PVC sheet %[1]d,%[4]d in.,2026-%02[5]d-%02[6]d,2026-12-%02[6]d,held %[4]d in. back from edge %[1]d; covers W%[2]d\n",
			i, i/6, 10+i%70, 1+i%6, 1+i%12, 1+i%28)
	}
	return b.Bytes()
}

// process is the tool as a process of its own, with a temporary folder of its own.
func process(t *testing.T, args ...string) (cmd *exec.Cmd, temporary string) {
	t.Helper()
	program, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	temporary = t.TempDir()
	return &exec.Cmd{Path: program, Args: append([]string{"abut"}, args...), Env: append(os.Environ(), "TMPDIR="+temporary), Stderr: &bytes.Buffer{}}, temporary
}

// TestStopped ends runs by a signal, sooner and later: the folder holds a whole
// report or none, and nothing else, and the temporary folder holds nothing.
func TestStopped(t *testing.T) {
	if testing.Short() {
		t.Skip("runs that take long enough to be stopped are left out of short tests")
	}
	in := filepath.Join(t.TempDir(), "long.csv")
	if err := os.WriteFile(in, longSchedule(3000), 0o600); err != nil {
		t.Fatal(err)
	}
	for name, tc := range map[string]struct {
		stop syscall.Signal
		args []string
	}{
		"check":     {syscall.SIGTERM, []string{"check", in}},
		"interrupt": {syscall.SIGINT, []string{"check", in, "--accept-as-is", "accepted.yaml"}},
		"hang up":   {syscall.SIGHUP, []string{"check", in}},
		"compare":   {syscall.SIGTERM, []string{"compare", "--specified", in, "--submitted", in}},
	} {
		t.Run(name, func(t *testing.T) {
			if signal.Ignored(tc.stop) {
				t.Skip("the tests themselves run deaf to this signal, and so does what they start")
			}
			once := false
			for wait := 200 * time.Millisecond; wait < time.Second || !once && wait < 20*time.Second; wait *= 2 {
				dir := t.TempDir()
				cmd, temporary := process(t, append(tc.args, "-o", "report.md", "-o", "report.html")...)
				cmd.Dir = dir
				if err := cmd.Start(); err != nil {
					t.Fatal(err)
				}
				time.Sleep(wait)
				if err := cmd.Process.Signal(tc.stop); err != nil {
					t.Logf("it had ended: %v", err)
				}
				_ = cmd.Wait() // how it ended is told by what it left
				errs := cmd.Stderr.(*bytes.Buffer).String()
				stopped := cmd.ProcessState.ExitCode() == 2 && strings.Contains(errs, "stopped before the end; nothing was written\n")
				leftovers(t, dir, temporary, stopped)
				once = once || stopped
			}
			if !once {
				t.Error("no run was stopped in the midst")
			}
		})
	}
}

// leftovers fails for what a run has left that is no whole report.
func leftovers(t *testing.T, dir, temporary string, stopped bool) {
	t.Helper()
	for _, folder := range []string{dir, temporary} {
		entries, err := os.ReadDir(folder)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range entries {
			text, err := os.ReadFile(filepath.Join(folder, e.Name()))
			if whole := folder == dir && e.Name() == "report.md" && bytes.Contains(text, []byte("licensed professional decide")) ||
				e.Name() == "report.html" && bytes.HasSuffix(bytes.TrimSpace(text), []byte("</html>")) || e.Name() == "accepted.yaml" && bytes.HasSuffix(text, []byte("\n")); !whole || stopped || err != nil {
				t.Errorf("%s is left, stopped %v: %v", filepath.Join(folder, e.Name()), stopped, err)
			}
		}
	}
}

// TestLimitsOfRun: what takes longer, or needs more memory, than the settings
// allow is one line and 2, and nothing of it is reported as checked.
func TestLimitsOfRun(t *testing.T) {
	for limit, want := range map[string]string{
		"seconds: 1":    "long.csv: it takes more than 1 seconds, so it is given up; ",
		"memory_mb: 64": "long.csv: it needs more than 64 MB of memory, so it is given up; ",
	} {
		t.Run(limit, func(t *testing.T) {
			dir := t.TempDir()
			for name, text := range map[string][]byte{"long.csv": longSchedule(30_000), "abut.yaml": []byte("limits:\n  " + limit + "\n")} {
				if err := os.WriteFile(filepath.Join(dir, name), text, 0o600); err != nil {
					t.Fatal(err)
				}
			}
			cmd, _ := process(t, "check", "long.csv", "--format", "json")
			cmd.Dir = dir
			var out bytes.Buffer
			cmd.Stdout = &out
			err := cmd.Run()
			errs := cmd.Stderr.(*bytes.Buffer).String()
			if err == nil || cmd.ProcessState.ExitCode() != 2 || strings.Count(errs, "\n") != 1 || !strings.HasPrefix(errs, "abut: "+want) {
				t.Errorf("%v: %s", err, errs)
			}
			if !strings.Contains(out.String(), strings.TrimPrefix(want, "long.csv: ")) || !strings.Contains(out.String(), `"findings": []`) {
				t.Errorf("the report does not tell: %.500s", out.String())
			}
		})
	}
}
