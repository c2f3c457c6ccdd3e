package value

import (
	"encoding/json"

	"github.com/open-policy-agent/opa/v1/ast"
)

// OPA is the same value for OPA. Composite ones keep it.
func OPA(v Value) *ast.Term {
	switch v := v.(type) {
	case *Array:
		if v.opa == nil {
			v.opa = ast.ArrayTerm(terms(v.Elems())...)
		}
		return v.opa
	case *Set:
		if v.opa == nil {
			v.opa = ast.SetTerm(terms(v.Elems())...)
		}
		return v.opa
	case *Object:
		if v.opa == nil {
			keys, values := v.Pairs()
			pairs := make([][2]*ast.Term, len(keys))
			for i, k := range keys {
				pairs[i] = [2]*ast.Term{OPA(k), OPA(values[i])}
			}
			v.opa = ast.ObjectTerm(pairs...)
		}
		return v.opa
	case ast.Value:
		return &ast.Term{Value: v}
	}
	return nil
}

func terms(list []Value) []*ast.Term {
	out := make([]*ast.Term, len(list))
	for i, v := range list {
		out[i] = OPA(v)
	}
	return out
}

// Freeze makes all that is made at need, so that several goroutines may use the
// value.
func Freeze(v Value) Value {
	switch v.(type) {
	case *Array, *Set, *Object:
		OPA(v)
		Hash(v)
	}
	return v
}

// From is the same as a value of OPA.
func From(v ast.Value) Value {
	switch v := v.(type) {
	case *ast.Array:
		out := &Array{elems: make([]Value, 0, v.Len())}
		v.Foreach(func(t *ast.Term) { out.elems = append(out.elems, From(t.Value)) })
		return out
	case ast.Object:
		out := NewObject()
		v.Foreach(func(k, t *ast.Term) { out.Insert(From(k.Value), From(t.Value)) })
		return out
	case ast.Set:
		out := NewSet()
		v.Foreach(func(t *ast.Term) { out.Add(From(t.Value)) })
		return out
	}
	return v
}

// Plain is the same as encoding/json reads it: numbers as texts, sets as lists
// in their order. A key that is no text is written as one.
func Plain(v Value) any {
	switch v := v.(type) {
	case ast.Boolean:
		return bool(v)
	case ast.Number:
		return json.Number(v)
	case ast.String:
		return string(v)
	case *Array:
		return plainList(v.Elems())
	case *Set:
		return plainList(v.Elems())
	case *Object:
		keys, values := v.Pairs()
		out := make(map[string]any, len(keys))
		for i, k := range keys {
			out[keyText(k)] = Plain(values[i])
		}
		return out
	}
	return nil
}

func plainList(list []Value) []any {
	out := make([]any, len(list))
	for i, v := range list {
		out[i] = Plain(v)
	}
	return out
}

func keyText(k Value) string {
	if text, ok := k.(ast.String); ok {
		return string(text)
	}
	return OPA(k).String()
}
