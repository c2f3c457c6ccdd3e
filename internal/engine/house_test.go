package engine

import (
	"context"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"

	"abut/policies"
)

// TestPolicies runs every Rego test of the tree as a test of its own.
func TestPolicies(t *testing.T) {
	results := runPolicyTests(t)
	slices.SortFunc(results, func(a, b *tester.Result) int {
		return strings.Compare(a.Package+a.Name, b.Package+b.Name)
	})
	for _, r := range results {
		t.Run(strings.TrimPrefix(r.Package, "data.")+"/"+r.Name, func(t *testing.T) {
			if !r.Pass() {
				t.Errorf("%s: %s\n%s", r.Location, r, r.Output)
			}
		})
	}
	if len(results) == 0 {
		t.Error("no Rego test was found")
	}
}

func runPolicyTests(t *testing.T) []*tester.Result {
	t.Helper()
	tests := map[string]*ast.Module{}
	for name, text := range regoFiles(t, policies.FS) {
		if strings.HasSuffix(name, "_test.rego") {
			tests[name] = parse(t, name, text)
		}
	}
	return runTests(t, Options{Tree: policies.FS}, tests)
}

// runTests runs the Rego tests in some modules over a policy tree.
func runTests(t *testing.T, opts Options, tests map[string]*ast.Module) []*tester.Result {
	t.Helper()
	built, err := readTree(opts)
	if err != nil {
		t.Fatal(err)
	}
	maps.Copy(built.modules, tests)
	store := inmem.NewFromObject(built.data)
	compiler := ast.NewCompiler().WithStrict(true).WithCapabilities(capabilities()).
		WithEnablePrintStatements(true).WithRewriteTestRules(true)
	var results []*tester.Result
	ctx := context.Background()
	err = storage.Txn(ctx, store, storage.TransactionParams{}, func(txn storage.Transaction) error {
		found, err := tester.NewRunner().SetCompiler(compiler).SetStore(store).RaiseBuiltinErrors(true).
			SetTimeout(time.Minute). // OPA's five seconds are too few on a busy machine
			CapturePrintOutput(true).SetModules(built.modules).RunTests(ctx, txn)
		if err != nil {
			return err
		}
		for r := range found {
			results = append(results, r)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return results
}

// TestHouse holds the Rego to the habits of this project.
func TestHouse(t *testing.T) {
	files := regoFiles(t, policies.FS)
	if len(files) == 0 {
		t.Fatal("no Rego file was found")
	}
	for name, text := range files {
		t.Run(name, func(t *testing.T) {
			module := parse(t, name, text)
			checkText(t, name, text)
			checkHeads(t, module)
			checkPackage(t, name, module)
			if _, tested := files[strings.TrimSuffix(name, ".rego")+"_test.rego"]; !tested && isRule(name) {
				t.Error("the rule has no test file beside it")
			}
		})
	}
}

func checkText(t *testing.T, name, text string) {
	formatted, err := format.SourceWithOpts(name, []byte(text), format.Opts{RegoVersion: ast.RegoV1})
	if err != nil {
		t.Fatal(err)
	}
	if string(formatted) != text {
		t.Error("not as `opa fmt` writes it")
	}
	for i, line := range strings.Split(text, "\n") {
		if n := len([]rune(line)); n > 120 {
			t.Errorf("line %d has %d characters, more than 120", i+1, n)
		}
	}
	if !strings.HasSuffix(name, "_test.rego") && strings.Contains(text, "print(") {
		t.Error("print is left in")
	}
}

// checkHeads wants short bodies and ground heads: a variable key is compared with every key
// before it, which makes a rule quadratic in the rows.
func checkHeads(t *testing.T, module *ast.Module) {
	for _, rule := range module.Rules {
		isTable := strings.HasPrefix(string(rule.Head.Name), "test_") || strings.HasPrefix(rule.Head.Ref().String(), "test_")
		if n := len(rule.Body); n > 15 {
			t.Errorf("line %d: the rule has %d expressions, more than 15", rule.Location.Row, n)
		}
		if len(rule.Head.Args) == 0 && !rule.Head.Ref().IsGround() && !isTable {
			t.Errorf("line %d: the head %s has a variable key", rule.Location.Row, rule.Head.Ref())
		}
	}
}

func checkPackage(t *testing.T, name string, module *ast.Module) {
	want := strings.ReplaceAll(strings.TrimSuffix(name, ".rego"), "/", ".")
	if got := packageName(module); got != want {
		t.Errorf("package %s, want %s as the file", got, want)
	}
}

func isRule(name string) bool {
	return slices.Contains(Topics(), path.Dir(name)) && !strings.HasSuffix(name, "_test.rego")
}

// TestFamiliesOfRules wants the main topics to be covered in earnest.
func TestFamiliesOfRules(t *testing.T) {
	e, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	count := map[string]int{}
	for _, r := range e.Rules() {
		count[r.Topic]++
		if r.Basis == "" {
			t.Errorf("%s: metadata has no basis", r.ID)
		}
		if r.Example == "" {
			t.Errorf("%s: metadata has no example", r.ID)
		}
	}
	for _, topic := range []string{"contact", "pairing", "temperature", "exposure"} {
		if count[topic] < 5 {
			t.Errorf("topic %s has %d rules, want 5 or more", topic, count[topic])
		}
	}
}

// TestDataFiles wants each key of a folder's data in one file alone, so that an
// office's value for it has one place to go.
func TestDataFiles(t *testing.T) {
	sources, err := readSources(policies.FS, builtIn, isData)
	if err != nil {
		t.Fatal(err)
	}
	owner := map[string]string{}
	for _, s := range sources {
		content, err := decode(s.text)
		if err != nil {
			t.Fatalf("%s: %v", s.name, err)
		}
		for key := range content {
			at := path.Dir(s.path) + "." + key
			if other, taken := owner[at]; taken {
				t.Errorf("%s stands in %s and in %s", at, other, s.name)
			}
			owner[at] = s.name
		}
	}
}

// regoFiles holds the text of each Rego file of the tree by its path.
func regoFiles(t *testing.T, tree fs.FS) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := fs.WalkDir(tree, ".", func(p string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(p) != ".rego" {
			return err
		}
		text, err := fs.ReadFile(tree, p)
		files[p] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func parse(t *testing.T, name, text string) *ast.Module {
	t.Helper()
	module, err := ast.ParseModuleWithOpts(name, text, ast.ParserOptions{RegoVersion: ast.RegoV1, ProcessAnnotation: true})
	if err != nil {
		t.Fatal(err)
	}
	return module
}
