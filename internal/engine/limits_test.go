package engine

import (
	"context"
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
)

// officeRule is a rule of an office in a package of its own.
func officeRule(body string) string {
	return strings.NewReplacer("sequence-lap", "office-rule", "sequence.lap", "sequence.ours").Replace(header) + body
}

// TestOfficeRuleIsStopped: a rule that takes too long is named with file and
// line, and the others' findings are told all the same.
func TestOfficeRuleIsStopped(t *testing.T) {
	const pairs = `findings contains {"line": "W!F4", "message": "m"} if {
	some x in numbers.range(1, 30000)
	some y in numbers.range(1, 30000)
	x * y == -1
}
`
	for name, tc := range map[string]struct {
		body string
		opts Options
		want string
	}{
		"steps":     {pairs, Options{RuleSteps: 10_000, RuleTime: time.Hour}, "it was stopped after 10000 steps"},
		"time":      {pairs, Options{RuleTime: time.Millisecond, RuleSteps: 1 << 40}, "it was stopped after 1ms"},
		"deaf call": {"findings contains {\"line\": \"W!F4\", \"message\": \"m\"} if sprintf(\"%d\", [bits.lsh(1, 30000000)]) == \"\"\n", Options{RuleTime: 20 * time.Millisecond}, "it was stopped after 20ms"},
		"one call":  {"findings contains {\"line\": \"W!F4\", \"message\": \"m\"} if count(numbers.range(1, 2000000000)) > 1\n", Options{RuleTime: 20 * time.Millisecond}, "it was stopped after 20ms"},
	} {
		t.Run(name, func(t *testing.T) {
			tc.opts.Tree = policyTree(nil)
			root := folder(t, map[string]string{"sequence/ours.rego": officeRule(tc.body)})
			tc.opts.Folders = []string{root}
			findings, err := load(t, tc.opts).Judge(context.Background(), lapDocument())
			var problems Problems
			if !errors.As(err, &problems) || !strings.Contains(err.Error(), tc.want) {
				t.Fatalf("got %v", err)
			}
			if p := problems[0]; p.Line != 13 || !strings.HasSuffix(p.File, "sequence/ours.rego") || p.Rule != "office-rule" {
				t.Errorf("it stands at %s:%d, rule %s", p.File, p.Line, p.Rule)
			}
			if len(findings) != 2 {
				t.Errorf("%d findings of the built-in rule, want 2", len(findings))
			}
		})
	}
}

// TestNested: what OPA would compile for hours is told at once, and what a rule
// may well hold is not.
func TestNested(t *testing.T) {
	for name, tc := range map[string]struct {
		open, rest string
		fine, far  int
	}{
		"sums":           {"1 + ", "1", 50, 20_000},
		"lists":          {"[", "1", 30, 200},
		"comprehensions": {"[a | a := ", "1", 5, 9},
		"loops":          {"every a in [1] { a == 1; ", "true", 5, 9},
	} {
		closing := map[string]string{"[": "]", "e": " }", "1": ""}[tc.open[:1]]
		rule := func(n int) map[string]string {
			text := strings.Repeat(tc.open, n) + tc.rest + strings.Repeat(closing, n)
			if name != "loops" {
				text = "x := " + text + "\n\tis_number(x)"
			}
			return map[string]string{"sequence/ours.rego": officeRule("findings contains {\"line\": \"W!F4\", \"message\": \"m\"} if {\n\t" + text + "\n}\n")}
		}
		t.Run(name, func(t *testing.T) {
			_, err := Load(Options{Tree: policyTree(nil), Folders: []string{folder(t, rule(tc.fine))}})
			if err != nil {
				t.Errorf("%d: %v", tc.fine, err)
			}
			_, err = Load(Options{Tree: policyTree(nil), Folders: []string{folder(t, rule(tc.far))}})
			if err == nil || !strings.Contains(err.Error(), "sequence/ours.rego:14: its expressions lie too deep") {
				t.Errorf("%d: %v", tc.far, err)
			}
		})
	}
}

// TestLoadingIsStopped: rules that take too long to compile are told.
func TestLoadingIsStopped(t *testing.T) {
	root := folder(t, map[string]string{"sequence/ours.rego": officeRule(body)})
	_, err := Load(Options{Tree: policyTree(nil), Folders: []string{root}, Timeout: time.Nanosecond})
	if err == nil || !strings.Contains(err.Error(), root+": it takes more than 1ns to compile the rules") {
		t.Error(err)
	}
}

// TestLongProblem: a message that quotes a stranger's text is of bearable length.
func TestLongProblem(t *testing.T) {
	p := Problem{File: "x.rego", Line: 3, Message: "regex.match: " + strings.Repeat("é(", 9000)}
	if got := p.Error(); len(got) > 450 || !strings.HasPrefix(got, "x.rego:3: regex.match: é(") || !strings.HasSuffix(got, "…") {
		t.Errorf("%d bytes: %q", len(got), got)
	}
}

// TestOfficeChangesAreKnown: what an office has otherwise can be told.
func TestOfficeChangesAreKnown(t *testing.T) {
	root := folder(t, map[string]string{
		"sequence/limits.json": `{"limits": {"lap_mm": 30, "words+": ["b"]}}`,
		"sequence/lap.rego":    header + body,
	})
	e := load(t, Options{
		Tree: policyTree(map[string]string{"sequence/ours.rego": officeRule(body)}), Folders: []string{root},
		Replace: []string{"sequence.lap"}, Off: []string{"office-rule"}, Severity: map[string]string{"sequence-lap": "note"},
	})
	var got []string
	for _, c := range e.Changes() {
		got = append(got, c.What+" "+c.Name)
	}
	want := "rules off office-rule, rules graded sequence-lap, rules replaced sequence.lap, data changed sequence.limits.lap_mm, data changed sequence.limits.words+"
	if strings.Join(got, ", ") != want {
		t.Errorf("got  %s\nwant %s", strings.Join(got, ", "), want)
	}
	if own := load(t, Options{Tree: policyTree(nil), Folders: []string{folder(t, map[string]string{"sequence/limits.json": `{"limits": {"lap_mm": 50}}`})}}); len(own.Changes()) != 0 {
		t.Errorf("the same value is told as a change: %v", own.Changes())
	}
}

// TestCapabilities wants nothing that reaches out of the document.
func TestCapabilities(t *testing.T) {
	for _, b := range capabilities().Builtins {
		for _, bad := range []string{"http.", "net.", "opa.", "rand.", "uuid.", "time.now", "io.", "crypto.", "rego."} {
			if strings.HasPrefix(b.Name, bad) {
				t.Errorf("a rule may call %s", b.Name)
			}
		}
		if b.IsNondeterministic() {
			t.Errorf("%s may answer otherwise the second time", b.Name)
		}
	}
	if n := len(ast.CapabilitiesForThisVersion().Builtins); len(capabilities().Builtins) == n || n == 0 {
		t.Error("nothing is left out")
	}
}
