package build

import (
	"context"
	"encoding/json"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"abut/internal/plan"
	"abut/internal/plan/value"
)

const input = `{"rows": [{"id": "a", "n": 3, "tags": ["x", "y"]}, {"id": "b", "n": 5, "tags": []}, {"id": "c", "tags": ["y"]}],
	"name": "walls", "none": null, "no": false, "deep": {"k": {"v": [1, [2, 3]]}}}`

const data = `{"limits": {"n": 4, "by": {"a": 1, "b": 9}}, "names": ["a", "c"]}`

// TestSnippets holds plans against OPA's own evaluation: each rule `r` alone.
func TestSnippets(t *testing.T) {
	for name, text := range snippets {
		t.Run(name, func(t *testing.T) {
			want, wantErr := evaluated(t, text)
			got, gotErr := planned(t, text)
			if (wantErr != nil) != (gotErr != nil) {
				t.Fatalf("plan: %v, error %v; OPA: %v, error %v", got, gotErr, want, wantErr)
			}
			if wantErr == nil && compare(got, want) != 0 {
				t.Errorf("plan gives %v, OPA %v", got, want)
			}
		})
	}
}

func compare(a, b ast.Value) int {
	if a == nil || b == nil {
		return map[bool]int{true: 0, false: 1}[a == nil && b == nil]
	}
	return a.Compare(b)
}

func evaluated(t *testing.T, text string) (ast.Value, error) {
	t.Helper()
	v, err, ok := tryOPA(text)
	if !ok {
		t.Fatal(err)
	}
	return v, err
}

// tryOPA gives the value or the error of the rule, and false if it cannot be
// compiled.
func tryOPA(text string) (ast.Value, error, bool) {
	store := inmem.NewFromObject(ast.MustJSON(ast.MustParseTerm(data).Value).(map[string]any))
	q, err := rego.New(rego.Query("x = {v | v := data.t.r}"), rego.Module("t.rego", "package t\n"+text), rego.Store(store),
		rego.StrictBuiltinErrors(true), rego.GenerateJSON(func(term *ast.Term, _ *rego.EvalContext) (any, error) { return term.Value, nil }),
	).PrepareForEval(context.Background())
	if err != nil {
		return nil, err, false
	}
	result, err := q.Eval(context.Background(), rego.EvalParsedInput(ast.MustParseTerm(input).Value))
	if err != nil {
		return nil, err, true
	}
	set := result[0].Bindings["x"].(ast.Set)
	if set.Len() == 0 {
		return nil, nil, true
	}
	return set.Slice()[0].Value, nil, true
}

func planned(t *testing.T, text string) (ast.Value, error) {
	t.Helper()
	p, err := Program(map[string]string{"t.rego": "package t\n" + text}, []string{"t/r"})
	if err != nil {
		t.Fatal(err)
	}
	kept := p.Append(nil)
	if p, err = plan.Read(kept); err != nil {
		t.Fatal(err)
	}
	v, err := p.Run(context.Background(), plain(t, input), plain(t, data)).Rule("t/r")
	if v == nil {
		return nil, err
	}
	return value.OPA(v).Value, err
}

func plain(t *testing.T, text string) any {
	t.Helper()
	d := json.NewDecoder(strings.NewReader(text))
	d.UseNumber()
	var v any
	if err := d.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return v
}
