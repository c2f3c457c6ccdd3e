package engine

import (
	"strings"
	"testing"
	"testing/fstest"

	"abut/policies"
)

// TestGroupsHoldWhatRulesReferTo: a module that is left out would be undefined
// and its rule silent, so each way to refer to one is tried.
func TestGroupsHoldWhatRulesReferTo(t *testing.T) {
	tests := map[string]string{
		"import":         "import data.lib.a\n\nfindings contains a.f",
		"alias":          "import data.lib.a as other\n\nfindings contains other.f",
		"import of all":  "import data.lib\n\nfindings contains lib.a.f",
		"full path":      "findings contains data.lib.a.f",
		"name in a cell": "findings contains f if {\n\tsome name in [\"a\"]\n\tf := data.lib[name].f\n}",
		"by a helper":    "import data.lib.b\n\nfindings contains b.f",
		"another topic":  "findings contains f if some f in data.sequence.lap.findings",
	}
	for name, text := range tests {
		t.Run(name, func(t *testing.T) {
			rule := strings.NewReplacer("sequence-lap", "contact-own", "topic: sequence", "topic: contact").Replace(header)
			rule = strings.Replace(rule, "package sequence.lap\n\n", "package contact.own\n\n"+text+"\n", 1)
			e := load(t, Options{Tree: policyTree(map[string]string{
				"contact/own.rego": rule,
				"lib/a.rego":       "package lib.a\n\nf := {\"line\": \"W!F4\", \"message\": \"m\"}\n",
				"lib/b.rego":       "package lib.b\n\nimport data.lib.a\n\nf := a.f\n",
			})})
			for _, f := range judge(t, e) {
				if f.Rule == "contact-own" {
					return
				}
			}
			t.Error("the rule found nothing")
		})
	}
}

func TestUnusedHelperIsCompiled(t *testing.T) {
	_, err := Load(Options{Tree: policyTree(map[string]string{"lib/a.rego": "package lib.a\n\nx := y\n"})})
	if err == nil || !strings.Contains(err.Error(), "policies/lib/a.rego:3: ") {
		t.Errorf("got %v", err)
	}
}

func TestSplit(t *testing.T) {
	for _, count := range []int{1, 2, 4, 50} {
		built, rules, err := read(Options{Tree: policies.FS})
		if err != nil {
			t.Fatal(err)
		}
		seen := map[string]int{}
		found := map[string]bool{}
		for _, g := range split(built, rules, count) {
			for _, topic := range g.topics {
				seen[topic]++
			}
			for file := range g.modules {
				found[file] = true
			}
		}
		for _, r := range rules {
			if seen[r.Topic] != 1 {
				t.Errorf("%d groups: topic %s stands in %d of them", count, r.Topic, seen[r.Topic])
			}
		}
		if len(found) != len(built.modules) {
			t.Errorf("%d groups hold %d of %d modules", count, len(found), len(built.modules))
		}
	}
}

func TestNoRules(t *testing.T) {
	e := load(t, Options{Tree: fstest.MapFS{}})
	if findings := judge(t, e); len(findings) != 0 || len(e.Rules()) != 0 {
		t.Errorf("got %v", findings)
	}
}
