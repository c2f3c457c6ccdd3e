package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/rogpeppe/go-internal/testscript"
)

var recipes = filepath.Join("..", "..", "ci")

// pieces are the shell pieces of a recipe by the name of their step.
func pieces(file string) (map[string]string, error) {
	raw, err := os.ReadFile(file)
	if err != nil {
		return nil, err
	}
	var recipe struct { // the keys of three hosts
		Jobs struct {
			Check struct {
				Steps []struct{ Name, Run string }
			}
		}
		Steps []struct {
			DisplayName string `yaml:"displayName"`
			Bash        string
		}
		Schedules struct {
			Script      []string
			AfterScript []string `yaml:"after_script"`
		}
	}
	if err := yaml.Unmarshal(raw, &recipe); err != nil {
		return nil, err
	}
	found := map[string]string{}
	for _, s := range recipe.Jobs.Check.Steps {
		found[s.Name] = s.Run
	}
	for _, s := range recipe.Steps {
		found[s.DisplayName] = s.Bash
	}
	if len(recipe.Schedules.Script) > 0 {
		found["check"] = strings.Join(recipe.Schedules.Script, "\n")
		found["comment"] = strings.Join(recipe.Schedules.AfterScript, "\n")
	}
	return found, nil
}

// piece is "piece RECIPE STEP FILE": writes the shell piece of a step to a file.
func piece(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: piece RECIPE STEP FILE")
	}
	found, err := pieces(filepath.Join(ts.Getenv("CI"), args[0]))
	ts.Check(err)
	if found[args[1]] == "" {
		ts.Fatalf("%s has no step %s", args[0], args[1])
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[2]), []byte(found[args[1]]), 0o600))
}

// TestShellPieces: what a recipe and a hook run is sound shell.
func TestShellPieces(t *testing.T) {
	shellcheck, err := exec.LookPath("shellcheck")
	if err != nil {
		t.Skip("shellcheck is not here")
	}
	texts := map[string]string{}
	for _, name := range []string{"github-actions.yml", "gitlab-ci.yml", "azure-pipelines.yml"} {
		found, err := pieces(filepath.Join(recipes, name))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for step, text := range found {
			if strings.Contains(text, "${{") {
				t.Errorf("%s, %s: what a change brings is put into the shell; hand it over in the environment", name, step)
			}
			texts[name+", "+step] = "#!/usr/bin/env bash\n" + text + "\n"
		}
		if found["check"] == "" || found["comment"] == "" {
			t.Errorf("%s lacks a step", name)
		}
	}
	for _, name := range []string{"check-changed.sh", "pre-commit", "release.sh", "test.sh"} {
		raw, err := os.ReadFile(filepath.Join(recipes, name))
		if err != nil {
			t.Fatal(err)
		}
		texts[name] = string(raw)
	}
	for name, text := range texts {
		cmd := exec.Command(shellcheck, "-")
		cmd.Stdin = strings.NewReader(text)
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Errorf("%s: %v\n%s", name, err, out)
		}
	}
}

// TestContainerfile: every file that it copies is there, and each image ends
// with a user that is not root. ci/test.sh runs the build that it names.
func TestContainerfile(t *testing.T) {
	raw, err := os.ReadFile(filepath.Join(recipes, "Containerfile"))
	if err != nil {
		t.Fatal(err)
	}
	users := map[string]string{}
	stage := ""
	copied := 0
	for line := range strings.Lines(string(raw)) {
		f := strings.Fields(line)
		if len(f) == 0 || strings.HasPrefix(f[0], "#") {
			continue
		}
		switch f[0] {
		case "FROM":
			stage = strings.Join(f[1:], " ")
			users[stage] = "root"
		case "USER":
			users[stage] = f[1]
		case "COPY":
			for _, from := range f[1 : len(f)-1] {
				if strings.HasPrefix(f[1], "--from") {
					break
				}
				copied++
				if _, err := os.Stat(filepath.Join("..", "..", from)); err != nil {
					t.Error(err)
				}
			}
		case "RUN", "WORKDIR", "ENTRYPOINT":
		default:
			t.Errorf("what is %s?", f[0])
		}
	}
	for stage, user := range users {
		if (user == "root") != strings.HasSuffix(stage, "AS build") {
			t.Errorf("%s runs as %s", stage, user)
		}
	}
	if copied == 0 || len(users) != 3 || !slices.Contains(strings.Split(string(raw), "\n"), "FROM scratch") {
		t.Errorf("%d files copied, stages %v", copied, users)
	}
}
