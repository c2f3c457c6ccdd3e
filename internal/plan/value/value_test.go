package value

import (
	"cmp"
	"encoding/json"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"pgregory.net/rapid"
)

// anyValue draws values that are often alike.
func anyValue(depth int) *rapid.Generator[ast.Value] {
	single := rapid.SampledFrom([]ast.Value{
		ast.Null{}, ast.Boolean(true), ast.Boolean(false), ast.String(""), ast.String("a"), ast.String("a longer text"), ast.String("b"),
		ast.Number("0"), ast.Number("-0.0"), ast.Number("1"), ast.Number("1.0"), ast.Number("1e0"), ast.Number("1.5"), ast.Number("12345678901234567890"),
	})
	if depth == 0 {
		return single
	}
	return rapid.Custom(func(t *rapid.T) ast.Value {
		list := rapid.SliceOfN(anyValue(depth-1), 0, 12)
		switch rapid.IntRange(0, 3).Draw(t, "kind") {
		case 0:
			return ast.NewArray(asTerms(list.Draw(t, "list"))...)
		case 1:
			return ast.NewSet(asTerms(list.Draw(t, "set"))...)
		case 2:
			object := ast.NewObject()
			values := list.Draw(t, "values")
			for _, v := range values {
				key := ast.NewTerm(anyValue(depth-1).Draw(t, "key"))
				if object.Get(key) == nil { // OPA may keep a key twice where two sums are alike
					object.Insert(key, ast.NewTerm(v))
				}
			}
			return object
		}
		return single.Draw(t, "single")
	})
}

func asTerms(list []ast.Value) []*ast.Term {
	out := make([]*ast.Term, len(list))
	for i, v := range list {
		out[i] = ast.NewTerm(v)
	}
	return out
}

// TestValuesAreThoseOfOPA: order, equality, what is looked up, and the way there
// and back.
func TestValuesAreThoseOfOPA(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := anyValue(2).Draw(t, "a"), anyValue(2).Draw(t, "b")
		if rapid.Bool().Draw(t, "same") {
			b = a
		}
		mine, other := From(a), From(b)
		if got, want := Compare(mine, other), a.Compare(b); cmp.Compare(got, 0) != cmp.Compare(want, 0) {
			t.Fatalf("%v and %v compare as %d, in OPA as %d", a, b, got, want)
		}
		if Equal(mine, other) != (a.Compare(b) == 0) {
			t.Fatalf("%v and %v are not equal as in OPA", a, b)
		}
		if Equal(mine, other) && Hash(mine) != Hash(other) {
			t.Fatalf("%v and %v are equal and their sums differ", a, b)
		}
		if OPA(mine).Value.Compare(a) != 0 {
			t.Fatalf("%v came back as %v", a, OPA(mine))
		}
		got, want := Get(mine, other), ast.NewTerm(a).Get(ast.NewTerm(b))
		if (got == nil) != (want == nil) || want != nil && OPA(got).Value.Compare(want.Value) != 0 {
			t.Fatalf("%v at %v is %v, in OPA %v", a, b, got, want)
		}
	})
}

func TestPackedValuesComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := From(anyValue(2).Draw(t, "a"))
		var w Writer
		w.Value(a)
		var s Source
		if back := s.Of(Packed(w.Out)); !Equal(a, back) || Compare(back, a) != 0 {
			t.Fatalf("%v came back as %v", OPA(a), OPA(back))
		}
	})
}

// TestValuesOfGo are those that JSON would give, but that empty lists are there.
func TestValuesOfGo(t *testing.T) {
	type inner struct {
		Kept  string   `json:"kept"`
		Left  string   `json:"left,omitempty"`
		List  []string `json:"list"`
		Other any      `json:"other"`
		never int
	}
	type outer struct {
		inner
		Number  float64           `json:"number"`
		Count   int               `json:"count,omitempty"`
		Map     map[string]inner  `json:"map"`
		None    *inner            `json:"none"`
		Some    *inner            `json:"some"`
		Skipped string            `json:"-"`
		Empty   map[string]string `json:"empty"`
	}
	v := outer{
		inner: inner{Kept: "k", never: 1, List: []string{}}, Number: 0.1, Map: map[string]inner{"b": {List: []string{"x"}}, "a": {List: []string{}}},
		Some: &inner{Left: "l", List: []string{}, Other: []any{1.5, "a", nil, true}}, Skipped: "s", Empty: map[string]string{},
	}
	text, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	want := ast.MustParseTerm(string(text))
	var s Source
	if got := OPA(s.Of(v)); got.Value.Compare(want.Value) != 0 || s.Err != nil {
		t.Errorf("got %v, %v\nwant %v", got, s.Err, want)
	}
	v.List, v.Empty = nil, nil
	if got := OPA(s.Of(&v)); got.Value.Compare(want.Value) != 0 {
		t.Errorf("with lists that were never made %v\nwant %v", got, want)
	}
	if s.Of([]complex64{1}).(*Array).Elems(); s.Err == nil || !strings.Contains(s.Err.Error(), "complex64") {
		t.Errorf("a complex number gives %v", s.Err)
	}
}
