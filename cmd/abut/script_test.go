package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"abut": main})
}

// TestScripts runs the scripts of testdata/script with the tool itself. With
// UPDATE=1 in the environment the files that a script compares with are
// written anew.
func TestScripts(t *testing.T) {
	demo, err := filepath.Abs(filepath.Join("..", "..", "testdata", "demo"))
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 filepath.Join("..", "..", "testdata", "script"),
		UpdateScripts:       os.Getenv("UPDATE") != "",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits": exits, "mkxlsx": mkxlsx, "lines": lines, "piece": piece,
		},
		Setup: func(e *testscript.Env) error {
			e.Setenv("DEMO", demo)
			e.Setenv("CI", filepath.Join(demo, "..", "..", "ci"))
			return nil
		},
	})
}

// exits is "exits CODE COMMAND ARGS...": the command must end with that code.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE COMMAND [ARGS...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		var exit *exec.ExitError
		if !errors.As(err, &exit) {
			ts.Fatalf("%s did not run: %v", args[1], err)
		}
		got = exit.ExitCode()
	}
	if got != want {
		ts.Fatalf("exit code %d, want %d", got, want)
	}
}

// lines is "lines N FILE": the file, stdout or stderr has so many lines.
func lines(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: lines N FILE")
	}
	n := 0
	for _, r := range ts.ReadFile(args[1]) {
		if r == '\n' {
			n++
		}
	}
	if got := fmt.Sprint(n); got != args[0] {
		ts.Fatalf("%s has %s lines, want %s", args[1], got, args[0])
	}
}
