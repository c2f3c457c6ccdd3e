package engine

import (
	"context"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"abut/internal/plan/build"
	"abut/internal/plan/value"
	"abut/policies"
)

// TestPlanOfRegoTests runs every Rego test of the tree by a plan and by OPA: what
// a rule says of each of their inputs must be the same.
func TestPlanOfRegoTests(t *testing.T) {
	texts := regoFiles(t, policies.FS)
	built, err := readTree(Options{Tree: policies.FS})
	if err != nil {
		t.Fatal(err)
	}
	rules := testRules(t, texts)
	program, err := build.Program(texts, rules)
	if err != nil {
		t.Fatal(err)
	}
	compiler, err := ast.CompileModules(texts)
	if err != nil {
		t.Fatal(err)
	}
	store := inmem.NewFromObject(built.data)
	for _, path := range rules {
		got, err := program.Run(t.Context(), map[string]any{}, built.data).Rule(path)
		if err != nil {
			t.Errorf("%s: %v", path, err)
			continue
		}
		want := evaluated(t, compiler, rego.Store(store), path)
		if want == nil || got == nil || value.Compare(got, value.From(want)) != 0 {
			t.Errorf("%s: the plan gives %v, OPA %v", path, value.Plain(got), want)
		}
	}
}

func testRules(t *testing.T, texts map[string]string) []string {
	t.Helper()
	var rules []string
	for name, text := range texts {
		if !strings.HasSuffix(name, "_test.rego") {
			continue
		}
		module := parse(t, name, text)
		for _, r := range module.Rules {
			ref := r.Head.Ref()
			if head := string(ref[0].Value.(ast.Var)); strings.HasPrefix(head, "test_") {
				rules = append(rules, strings.ReplaceAll(packageName(module), ".", "/")+"/"+head)
			}
		}
	}
	slices.Sort(rules)
	if len(rules) == 0 {
		t.Error("no Rego test was found")
	}
	return slices.Compact(rules)
}

func evaluated(t *testing.T, compiler *ast.Compiler, store func(*rego.Rego), path string) ast.Value {
	t.Helper()
	result, err := rego.New(rego.Query("x = data."+strings.ReplaceAll(path, "/", ".")), rego.Compiler(compiler), store,
		rego.ParsedInput(ast.NewObject()),
		rego.GenerateJSON(func(term *ast.Term, _ *rego.EvalContext) (any, error) { return term.Value, nil }),
	).Eval(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if len(result) == 0 {
		return nil
	}
	return result[0].Bindings["x"].(ast.Value)
}
