package regexp_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	std "regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"abut/internal/regexp"
)

// TestFinds holds what is found to what the standard library finds.
func TestFinds(t *testing.T) {
	texts := []string{"", "laps 50 mm", "LAP 2 in.", "side laps: 75; ends 100", "2 \u212am", "ſide lap", "SIDES", "15 °C", "Ärmel", "ärmel", "a\xffb", "3/8\"", "none"}
	for _, expr := range []string{
		`(?i)\blaps?\s+(\d+)`, `(?i)(?:sides?|ends?)\b`, `(?i)km\b`, `(?i)°c`, `(?i)ärmel`, `Ärmel`, `\d+`, `[/"]`, `^$`, `a*`, `(?i)l(?:ap|ip)|none`,
		`x{0}`, `x{0}lap`, `(?:lap){1,2}`, `(?s).`, `a\x{fffd}?b`, `a[^b]b`,
	} {
		re, err := regexp.Compile(expr)
		if err != nil {
			t.Fatal(err)
		}
		want := std.MustCompile(expr)
		for _, s := range texts {
			same(t, expr, s, re.MatchString(s), want.MatchString(s))
			same(t, expr, s, re.FindString(s), want.FindString(s))
			same(t, expr, s, re.ReplaceAllString(s, "<$0>"), want.ReplaceAllString(s, "<$0>"))
			same(t, expr, s, re.ReplaceAllStringFunc(s, strings.ToUpper), want.ReplaceAllStringFunc(s, strings.ToUpper))
			equal(t, expr, s, re.FindStringIndex(s), want.FindStringIndex(s))
			equal(t, expr, s, re.FindStringSubmatch(s), want.FindStringSubmatch(s))
			equal(t, expr, s, re.FindStringSubmatchIndex(s), want.FindStringSubmatchIndex(s))
			for _, n := range []int{-1, 0, 1} {
				equal(t, expr, s, re.Split(s, n), want.Split(s, n))
				equal(t, expr, s, re.FindAllString(s, n), want.FindAllString(s, n))
				equal(t, expr, s, slices.Concat(re.FindAllStringIndex(s, n)...), slices.Concat(want.FindAllStringIndex(s, n)...))
				equal(t, expr, s, slices.Concat(re.FindAllStringSubmatch(s, n)...), slices.Concat(want.FindAllStringSubmatch(s, n)...))
				equal(t, expr, s, slices.Concat(re.FindAllStringSubmatchIndex(s, n)...), slices.Concat(want.FindAllStringSubmatchIndex(s, n)...))
			}
		}
	}
	if _, err := regexp.Compile(`(`); err == nil {
		t.Error("a bracket that is not closed is taken")
	}
}

func same[T comparable](t *testing.T, expr, text string, got, want T) {
	t.Helper()
	if got != want {
		t.Errorf("%s in %q: %v, want %v", expr, text, got, want)
	}
}

func equal[T comparable](t *testing.T, expr, text string, got, want []T) {
	t.Helper()
	if (got == nil) != (want == nil) || !slices.Equal(got, want) {
		t.Errorf("%s in %q: %v, want %v", expr, text, got, want)
	}
}

// TestOwn compiles every expression that the program writes, which it does itself only
// when one is needed, and finds matches of each.
func TestOwn(t *testing.T) {
	exprs := written(t)
	if len(exprs) < 200 {
		t.Fatalf("%d expressions", len(exprs))
	}
	for _, expr := range exprs {
		want, err := std.Compile(expr)
		if err != nil {
			t.Error(err)
			continue
		}
		re, matching := regexp.MustCompile(expr), rapid.StringMatching(bare(expr))
		for seed := range 20 {
			s := matching.Example(seed)
			for _, s := range []string{s, strings.ToUpper(s), strings.ToLower(s), "a " + s + " b"} {
				same(t, expr, s, re.MatchString(s), want.MatchString(s))
			}
		}
	}
}

// bare leaves out what a text to match can not be made from: the ends of words.
func bare(expr string) string { return strings.NewReplacer(`\b`, "", `\B`, "").Replace(expr) }

// written lists the expressions that the packages write as one text each.
func written(t *testing.T) []string {
	var out []string
	err := filepath.WalkDir("..", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, text, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if expr, ok := compiled(n); ok {
				out = append(out, expr)
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func compiled(n ast.Node) (string, bool) {
	call, ok := n.(*ast.CallExpr)
	if !ok || len(call.Args) != 1 {
		return "", false
	}
	to, ok := call.Fun.(*ast.SelectorExpr)
	if !ok || to.Sel.Name != "MustCompile" {
		return "", false
	}
	text, ok := call.Args[0].(*ast.BasicLit)
	if !ok {
		return "", false
	}
	expr, err := strconv.Unquote(text.Value)
	return expr, err == nil
}
