package engine

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"abut/internal/document"
	"abut/internal/schedule"
)

const header = `# METADATA
# title: Lap too short
# description: Why a short lap leaks.
# custom:
#   id: sequence-lap
#   topic: sequence
#   severity: warning
#   reason: wind drives water past it
#   remedy: lap more
#   source: common practice
package sequence.lap

`

const body = `findings contains f if {
	some line in input.lines
	line.figures.lap_mm.min < data.sequence.limits.lap_mm
	f := {"line": line.id, "cells": [line.cells.lap], "message": "too short"}
}
`

func policyTree(changes map[string]string) fstest.MapFS {
	files := fstest.MapFS{
		"sequence/lap.rego":    {Data: []byte(header + body)},
		"sequence/limits.json": {Data: []byte(`{"limits": {"lap_mm": 50, "words": ["a"]}}`)},
	}
	for name, text := range changes {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return files
}

// folder writes files to a folder on disk and returns it.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	root := t.TempDir()
	for name, text := range files {
		path := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return root
}

func lapDocument() *document.Document {
	lap := func(row int, mm float64, cell string) schedule.Line {
		return schedule.Line{
			ID: "W!" + cell, Sheet: "W", Row: row, Mark: "W1", Cells: map[string]string{"lap": cell},
			Figures: map[string]schedule.Figure{"lap_mm": {Min: &mm}},
		}
	}
	return &document.Document{
		File:     "a.xlsx",
		Lines:    []schedule.Line{lap(4, 25, "F4"), lap(5, 50, "F5"), lap(2, 40, "F2")},
		Products: []schedule.Product{{ID: "M-1", Tag: "M-1", Sheet: "Products", Row: 3}},
		Reading:  schedule.Reading{Sheets: []schedule.SheetRead{{Name: "W"}, {Name: "Products"}}},
	}
}

func load(t *testing.T, opts Options) *Engine {
	t.Helper()
	e, err := Load(opts)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func judge(t *testing.T, e *Engine) []Finding {
	t.Helper()
	findings, err := e.Judge(context.Background(), lapDocument())
	if err != nil {
		t.Fatal(err)
	}
	return findings
}

func TestJudge(t *testing.T) {
	got := judge(t, load(t, Options{Tree: policyTree(nil)}))
	base := Finding{
		Rule: "sequence-lap", Topic: "sequence", Severity: "warning", File: "a.xlsx", Sheet: "W", Mark: "W1",
		Message: "too short", Reason: "wind drives water past it", Remedy: "lap more", Source: "common practice",
	}
	first, second := base, base
	first.Row, first.Cells = 2, []string{"F2"}
	second.Row, second.Cells = 4, []string{"F4"}
	if want := []Finding{first, second}; !reflect.DeepEqual(got, want) {
		t.Errorf("got  %+v\nwant %+v", got, want)
	}
}

func TestRules(t *testing.T) {
	got := load(t, Options{Tree: policyTree(nil)}).Rules()
	want := []Rule{{
		ID: "sequence-lap", Topic: "sequence", Severity: "warning", Title: "Lap too short",
		Description: "Why a short lap leaks.", Reason: "wind drives water past it", Remedy: "lap more",
		Source: "common practice", Package: "sequence.lap", File: "policies/sequence/lap.rego", Line: 13,
	}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v", got)
	}
}

// TestLoadProblems: each mistake is told with its file and, if known, its line.
func TestLoadProblems(t *testing.T) {
	edit := func(old, new string) map[string]string {
		return map[string]string{"sequence/lap.rego": strings.Replace(header+body, old, new, 1)}
	}
	tests := map[string]struct {
		files map[string]string
		want  string
	}{
		"no source":        {edit("#   source: common practice\n", ""), "policies/sequence/lap.rego:10: metadata has no source"},
		"no metadata":      {map[string]string{"sequence/lap.rego": "package sequence.lap\n\n" + body}, "lap.rego:1: no metadata above the package"},
		"severity":         {edit("warning", "grave"), `severity "grave" is not error, warning or note`},
		"id":               {edit("sequence-lap", "Lap 1"), `id "Lap 1" is not words joined by hyphens`},
		"topic":            {edit("topic: sequence", "topic: contact"), `topic is "contact", the package says "sequence"`},
		"unknown key":      {edit("remedy:", "cure:"), "unknown key: cure"},
		"not a text":       {edit("lap more", "12"), "metadata remedy is not a text"},
		"basis":            {edit("source: common practice", "source: x\n#   basis: hearsay"), `basis "hearsay"`},
		"no findings":      {edit("findings contains", "others contains"), "no rule `findings contains ...`"},
		"syntax":           {edit("some line in", "some line im"), "policies/sequence/lap.rego:14: "},
		"unsafe variable":  {edit("input.lines", "inputs.lines"), "policies/sequence/lap.rego:14: var inputs is unsafe"},
		"unused variable":  {edit("f := {", "unused := 1\n\tf := {"), "assigned var unused unused"},
		"network":          {edit("f := {", "http.send({}).status_code == 200\n\tf := {"), "undefined function http.send"},
		"clock":            {edit("f := {", "time.now_ns() > 0\n\tf := {"), "undefined function time.now_ns"},
		"environment":      {edit("f := {", "opa.runtime().env.HOME\n\tf := {"), "undefined function opa.runtime"},
		"chance":           {edit("f := {", `rand.intn("a", 2) == 1`+"\n\tf := {"), "undefined function rand.intn"},
		"empty file":       {map[string]string{"contact/x.rego": ""}, "policies/contact/x.rego"},
		"id twice":         {map[string]string{"sequence/other.rego": strings.Replace(header+body, "sequence.lap", "sequence.other", 1)}, "id sequence-lap is also in policies/sequence/lap.rego"},
		"JSON":             {map[string]string{"sequence/x.json": "{\n\"a\": 1,\n}"}, "policies/sequence/x.json:3: invalid character"},
		"JSON list":        {map[string]string{"sequence/x.json": "[]"}, "policies/sequence/x.json:1: json: cannot unmarshal array"},
		"two JSON objects": {map[string]string{"sequence/x.json": "{} {}"}, "x.json: text after the end"},
		"data twice":       {map[string]string{"sequence/x.json": `{"limits": {"lap_mm": 60}}`}, "policies/sequence/x.json:1: data.sequence.limits.lap_mm is given by another file too"},
		"data hides rule":  {map[string]string{"sequence/x.json": `{"lap": {"findings": []}}`}, "conflicting"},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			_, err := Load(Options{Tree: policyTree(tc.files)})
			if err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v\nwant %q in it", err, tc.want)
			}
		})
	}
}

// TestJudgeProblems: what a rule cannot say is told, and other rules still count.
func TestJudgeProblems(t *testing.T) {
	other := strings.NewReplacer("sequence-lap", "sequence-other", "sequence.lap", "sequence.other").Replace(header)
	tests := map[string]struct{ rule, want string }{
		"unknown key":      {`findings contains {"line": "W!F4", "message": "m", "cell": "F4"}`, `unknown field "cell"`},
		"no message":       {`findings contains {"line": "W!F4", "message": " "}`, "has no message"},
		"not an object":    {`findings contains "text"`, "wrong shape"},
		"unknown line":     {`findings contains {"line": "X!1", "message": "m"}`, `line "X!1", which is not in the document`},
		"unknown product":  {`findings contains {"product": "X", "message": "m"}`, `product "X", which is not in the document`},
		"no place":         {`findings contains {"message": "m"}`, "one of line, product and at"},
		"two places":       {`findings contains {"line": "W!F4", "product": "M-1", "message": "m"}`, "one of line, product and at"},
		"severity":         {`findings contains {"line": "W!F4", "message": "m", "severity": "grave"}`, `severity "grave"`},
		"cell":             {`findings contains {"line": "W!F4", "message": "m", "cells": ["row 4"]}`, `cell "row 4"`},
		"related":          {`findings contains {"line": "W!F4", "message": "m", "related": [{"line": "X", "what": "w"}]}`, "a related row"},
		"built-in error":   {`findings contains {"line": "W!F4", "message": "m"} if to_number(input.file) > 1`, "to_number"},
		"conflicting keys": {"findings contains {\"line\": \"W!F4\", \"message\": \"m\"} if x > 1\n\nx := 2 if input.file\n\nx := 3 if input.file", "conflict"},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			e := load(t, Options{Tree: policyTree(map[string]string{"sequence/other.rego": other + tc.rule + "\n"})})
			findings, err := e.Judge(context.Background(), lapDocument())
			var problems Problems
			if !errors.As(err, &problems) || !strings.Contains(err.Error(), tc.want) {
				t.Fatalf("got %v\nwant %q in it", err, tc.want)
			}
			if p := problems[0]; p.File != "policies/sequence/other.rego" || p.Line < 13 {
				t.Errorf("the problem stands at %s:%d", p.File, p.Line)
			}
			if len(findings) != 2 {
				t.Errorf("got %d findings of the other rule, want 2", len(findings))
			}
		})
	}
}

func TestDeadline(t *testing.T) {
	slow := strings.NewReplacer("sequence-lap", "contact-slow", "sequence.lap", "contact.slow", "topic: sequence", "topic: contact").Replace(header) +
		`findings contains {"line": "W!F4", "message": "m"} if count(numbers.range(1, 2000000000)) > 1` + "\n"
	e := load(t, Options{Tree: policyTree(map[string]string{"contact/slow.rego": slow}), Timeout: 50 * time.Millisecond})
	findings, err := e.Judge(context.Background(), lapDocument())
	if !errors.Is(err, context.DeadlineExceeded) || !strings.Contains(err.Error(), "nothing is judged") || findings != nil {
		t.Errorf("got %d findings and %v", len(findings), err)
	}
}

func TestSettings(t *testing.T) {
	milder := strings.Replace(header+body, `"message": "too short"`, `"severity": "note", "message": "too short"`, 1)
	tests := map[string]struct {
		files map[string]string
		opts  Options
		want  []string
	}{
		"off":              {nil, Options{Off: []string{"sequence-lap"}}, nil},
		"graded":           {nil, Options{Severity: map[string]string{"sequence-lap": "error"}}, []string{"error", "error"}},
		"mild stays mild":  {map[string]string{"sequence/lap.rego": milder}, Options{Severity: map[string]string{"sequence-lap": "error"}}, []string{"note", "note"}},
		"graded to a note": {nil, Options{Severity: map[string]string{"sequence-lap": "note"}}, []string{"note", "note"}},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			tc.opts.Tree = policyTree(tc.files)
			var got []string
			for _, f := range judge(t, load(t, tc.opts)) {
				got = append(got, f.Severity)
			}
			if !reflect.DeepEqual(got, tc.want) {
				t.Errorf("got %v, want %v", got, tc.want)
			}
		})
	}
}

func TestSettingsOfNoRule(t *testing.T) {
	_, err := Load(Options{Tree: policyTree(nil), Off: []string{"x-y"}, Severity: map[string]string{"sequence-lap": "grave", "z-z": "note"}})
	for _, want := range []string{"x-y", "z-z", "grave"} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q is not in %v", want, err)
		}
	}
}
