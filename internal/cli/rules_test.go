package cli

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"abut/internal/engine"
)

func runRules(t *testing.T, args ...string) (string, error) {
	t.Helper()
	var out bytes.Buffer
	cmd := newRules(Streams{Out: &out, Err: &out})
	cmd.SilenceErrors, cmd.SilenceUsage = true, true
	cmd.SetArgs(args)
	err := cmd.Execute()
	return out.String(), err
}

func TestRulesCommand(t *testing.T) {
	rules, err := engine.Catalogue(engine.Options{})
	if err != nil {
		t.Fatal(err)
	}
	one := rules[0]
	tests := map[string]struct {
		args []string
		want []string
	}{
		"list":     {nil, []string{one.ID, one.Topic, one.Title}},
		"one":      {[]string{one.ID}, []string{one.ID, "Why it happens", "What to do", "Source"}},
		"one json": {[]string{one.ID, "--format", "json"}, []string{`"remedy"`, `"caution"`}},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			got, err := runRules(t, tc.args...)
			if err != nil {
				t.Fatal(err)
			}
			for _, want := range tc.want {
				if !strings.Contains(strings.Join(strings.Fields(got), " "), want) {
					t.Errorf("%q is not in\n%s", want, got)
				}
			}
		})
	}
}

func TestRulesListsEveryRuleAsJSON(t *testing.T) {
	rules, err := engine.Catalogue(engine.Options{})
	if err != nil {
		t.Fatal(err)
	}
	got, err := runRules(t, "--format", "json")
	if err != nil {
		t.Fatal(err)
	}
	var list struct {
		Rules []engine.Rule `json:"rules"`
	}
	if err := json.Unmarshal([]byte(got), &list); err != nil {
		t.Fatal(err)
	}
	if len(list.Rules) != len(rules) || len(rules) == 0 {
		t.Errorf("got %d rules, want %d", len(list.Rules), len(rules))
	}
}

func TestRulesCommandErrors(t *testing.T) {
	rules, err := engine.Catalogue(engine.Options{})
	if err != nil {
		t.Fatal(err)
	}
	id := rules[0].ID
	tests := map[string]struct {
		args []string
		want string
	}{
		"slip in the id": {[]string{strings.TrimSuffix(id, id[len(id)-1:])}, "did you mean " + id + "?"},
		"format":         {[]string{"--format", "sarif"}, "use text or json"},
		"two ids":        {[]string{"a", "b"}, "at most 1 arg"},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			if _, err := runRules(t, tc.args...); err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v, want %q in it", err, tc.want)
			}
		})
	}
}
