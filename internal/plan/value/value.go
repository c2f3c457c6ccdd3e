// Package value holds the values that a plan computes with: OPA's own where
// they are single, and leaner ones where they are composite. What comes from a
// Go value is made when it is looked at, since rules look at little of it.
package value

import (
	"cmp"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Value is ast.Null, ast.Boolean, ast.Number, ast.String, *Array, *Object or
// *Set; nil is undefined.
type Value any

// Array is a list of values. Only who makes it may append to it.
type Array struct {
	elems []Value
	make  func() []Value // makes them, nil if they are there
	size  int            // how many make will give
	opa   *ast.Term      // the same for OPA, once asked for
	hash  uint64
}

// NewArray holds the values themselves.
func NewArray(elems ...Value) *Array { return &Array{elems: elems} }

// Len is the number of elements.
func (a *Array) Len() int {
	if a.make != nil {
		return a.size
	}
	return len(a.elems)
}

// Elems are the elements, which the caller leaves as they are.
func (a *Array) Elems() []Value {
	if a.make != nil {
		a.elems, a.make = a.make(), nil
	}
	return a.elems
}

// Append adds an element.
func (a *Array) Append(v Value) {
	a.elems = append(a.elems, v)
	a.opa, a.hash = nil, 0
}

// At is the element at an index, nil if there is none.
func (a *Array) At(index Value) Value {
	n, ok := index.(ast.Number)
	if !ok {
		return nil
	}
	if i, ok := n.Int(); ok && i >= 0 && i < a.Len() {
		return a.Elems()[i]
	}
	return nil
}

// Set is a set of values.
type Set struct {
	table
	opa *ast.Term
}

// NewSet is a set of values.
func NewSet(elems ...Value) *Set {
	s := &Set{}
	for _, e := range elems {
		s.Add(e)
	}
	return s
}

// Add puts a value into the set.
func (s *Set) Add(v Value) {
	if _, is := s.find(v); !is {
		s.put(v)
		s.opa = nil
	}
}

// Has says whether a value is in the set.
func (s *Set) Has(v Value) bool {
	_, is := s.find(v)
	return is
}

// Len is the number of elements.
func (s *Set) Len() int { return len(s.keys) }

// Elems are the elements in order.
func (s *Set) Elems() []Value {
	s.sort(nil)
	return s.keys
}

// Get is the element that is equal to a key, the element at an index, or the
// value of a key; nil if there is none.
func Get(in, key Value) Value {
	switch v := in.(type) {
	case *Object:
		return v.Get(key)
	case *Array:
		return v.At(key)
	case *Set:
		if v.Has(key) {
			return key
		}
	}
	return nil
}

// Equal says whether two values are the same.
func Equal(a, b Value) bool {
	switch a := a.(type) {
	case ast.String:
		b, ok := b.(ast.String)
		return ok && a == b
	case ast.Boolean:
		b, ok := b.(ast.Boolean)
		return ok && a == b
	case *Array:
		b, ok := b.(*Array)
		return ok && (a == b || slices.EqualFunc(a.Elems(), b.Elems(), Equal))
	case *Object:
		b, ok := b.(*Object)
		return ok && (a == b || a.equal(b))
	case *Set:
		if b, ok := b.(*Set); ok && (a == b || a.Len() != b.Len()) {
			return a == b
		}
	}
	return Compare(a, b) == 0
}

// Compare orders any two values as OPA does.
func Compare(a, b Value) int {
	if a == b {
		return 0 // the same text, or the very same list
	}
	if order := cmp.Compare(rank(a), rank(b)); order != 0 {
		return order
	}
	switch a := a.(type) {
	case ast.Boolean:
		return a.Compare(b.(ast.Boolean))
	case ast.Number:
		return compareNumbers(a, b.(ast.Number))
	case ast.String:
		return cmp.Compare(a, b.(ast.String))
	case *Array:
		return slices.CompareFunc(a.Elems(), b.(*Array).Elems(), Compare)
	case *Set:
		return slices.CompareFunc(a.Elems(), b.(*Set).Elems(), Compare)
	case *Object:
		return a.compare(b.(*Object))
	}
	return 0
}

// compareNumbers need not read the digits where the nearest floats differ: they
// stand in the same order.
func compareNumbers(a, b ast.Number) int {
	f, isFloat := a.Float64()
	g, both := b.Float64()
	if isFloat && both && f != g {
		return cmp.Compare(f, g)
	}
	return ast.NumberCompare(a, b)
}

func rank(v Value) int {
	switch v.(type) {
	case ast.Null:
		return 0
	case ast.Boolean:
		return 1
	case ast.Number:
		return 2
	case ast.String:
		return 3
	case *Array:
		return 4
	case *Object:
		return 5
	}
	return 6
}
