package value

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Source makes values of Go values, the same as by way of JSON, but that a list
// or map that was never made is an empty one. It is for one goroutine.
type Source struct {
	shapes map[reflect.Type]*shape
	// Err is what could not be made a value.
	Err error
}

// Of is the value of a Go value: structs, slices, maps by text, pointers, what
// is single, and Packed.
func (s *Source) Of(v any) Value {
	if p, ok := v.(Packed); ok {
		r := Reader{Rest: p}
		return r.Value()
	}
	return s.of(reflect.ValueOf(v))
}

func (s *Source) of(v reflect.Value) Value {
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if v.IsNil() {
			return ast.Null{}
		}
		return s.of(v.Elem())
	case reflect.Struct:
		shape := s.shape(v.Type())
		shape.count++
		return &Object{from: &record{source: s, of: v, shape: shape, number: shape.count - 1}}
	case reflect.Slice, reflect.Array:
		return &Array{size: v.Len(), make: func() []Value {
			elems := make([]Value, v.Len())
			for i := range elems {
				elems[i] = s.of(v.Index(i))
			}
			return elems
		}}
	case reflect.Map:
		return s.mapping(v)
	}
	return s.single(v)
}

func (s *Source) single(v reflect.Value) Value {
	switch v.Kind() {
	case reflect.String:
		if v.Type() == reflect.TypeFor[json.Number]() {
			return ast.Number(v.String())
		}
		return ast.String(v.String())
	case reflect.Bool:
		return ast.Boolean(v.Bool())
	case reflect.Int:
		return ast.Number(strconv.FormatInt(v.Int(), 10))
	case reflect.Float64:
		if !math.IsInf(v.Float(), 0) && !math.IsNaN(v.Float()) {
			return ast.Number(strconv.FormatFloat(v.Float(), 'g', -1, 64))
		}
		s.fail(fmt.Errorf("no value for the number %v", v.Float()))
		return ast.Null{}
	case reflect.Invalid:
		return ast.Null{}
	}
	s.fail(fmt.Errorf("no value for Go's %s", v.Type()))
	return ast.Null{}
}

func (s *Source) fail(err error) {
	if s.Err == nil {
		s.Err = err
	}
}

func (s *Source) mapping(v reflect.Value) Value {
	if v.Type().Key().Kind() != reflect.String {
		s.fail(fmt.Errorf("no value for Go's %s", v.Type()))
		return ast.Null{}
	}
	if texts, ok := reflect.TypeAssert[map[string]string](v); ok {
		return &Object{from: wording(texts)}
	}
	return &Object{from: &mapped{source: s, of: v}}
}

// wording is a map of texts, of which a line has several.
type wording map[string]string

func (w wording) get(by Value) Value {
	if key, ok := by.(ast.String); ok {
		if text, ok := w[string(key)]; ok {
			return ast.String(text)
		}
	}
	return nil
}

func (w wording) len() int { return len(w) }

func (w wording) all() (keys, values []Value) {
	for _, key := range slices.Sorted(maps.Keys(w)) {
		keys, values = append(keys, ast.String(key)), append(values, ast.String(w[key]))
	}
	return keys, values
}

// mapped is a map of Go's.
type mapped struct {
	source *Source
	of     reflect.Value
	made   map[ast.String]Value
}

func (m *mapped) get(by Value) Value {
	key, ok := by.(ast.String)
	if !ok {
		return nil
	}
	if v, ok := m.made[key]; ok {
		return v
	}
	found := m.of.MapIndex(reflect.ValueOf(string(key)).Convert(m.of.Type().Key()))
	var v Value
	if found.IsValid() {
		v = m.source.of(found)
	}
	if m.made == nil {
		m.made = map[ast.String]Value{}
	}
	m.made[key] = v
	return v
}

func (m *mapped) len() int { return m.of.Len() }

func (m *mapped) all() (keys, values []Value) {
	texts := make([]string, 0, m.of.Len())
	for i := m.of.MapRange(); i.Next(); {
		texts = append(texts, i.Key().String())
	}
	slices.Sort(texts)
	for _, text := range texts {
		keys = append(keys, ast.String(text))
		values = append(values, m.get(ast.String(text)))
	}
	return keys, values
}

// record is a struct of Go's.
type record struct {
	source *Source
	of     reflect.Value
	shape  *shape
	number int
	made   []Value // by field, nil if it was not asked for
}

// shape is what JSON writes of a kind of struct, in the order of the keys.
type shape struct {
	number int // of the kind
	count  int // how many there are of it
	fields []field
	index  map[ast.String]int
	places []int16 // of keys by their numbers: 0 not looked for yet, else one more than that of the field
}

// noPlace is that of a key that no field has.
const noPlace = -1

type field struct {
	index     []int
	key       Value
	omitEmpty bool
}

func (r *record) get(key Value) Value {
	if text, ok := key.(ast.String); ok {
		if i, ok := r.shape.index[text]; ok {
			return r.field(i)
		}
	}
	return nil
}

// getBy is get for a key that has a number, by which the shape remembers it.
func (r *record) getBy(number int, key Value) Value {
	places := r.shape.places
	if number >= len(places) {
		places = append(places, make([]int16, number+1-len(places))...)
		r.shape.places = places
	}
	if places[number] == 0 {
		places[number] = noPlace
		if text, ok := key.(ast.String); ok {
			if i, ok := r.shape.index[text]; ok {
				places[number] = int16(i + 1)
			}
		}
	}
	if places[number] == noPlace {
		return nil
	}
	return r.field(int(places[number] - 1))
}

// field is nil if it is empty and left out.
func (r *record) field(i int) Value {
	if r.made == nil {
		r.made = make([]Value, len(r.shape.fields))
	}
	if r.made[i] == nil {
		r.made[i] = r.make(&r.shape.fields[i])
	}
	if r.made[i] == (leftOut{}) {
		return nil
	}
	return r.made[i]
}

func (r *record) make(f *field) Value {
	v := r.of
	for _, n := range f.index {
		v = v.Field(n)
	}
	if f.omitEmpty && IsEmpty(v) {
		return leftOut{}
	}
	return r.source.of(v)
}

// leftOut stands for a field that was looked at and is not there.
type leftOut struct{}

func (r *record) len() int {
	keys, _ := r.all()
	return len(keys)
}

func (r *record) all() (keys, values []Value) {
	for i, f := range r.shape.fields {
		if v := r.field(i); v != nil {
			keys = append(keys, f.key)
			values = append(values, v)
		}
	}
	return keys, values
}

// shape lists what JSON writes of a struct, what is embedded included.
func (s *Source) shape(t reflect.Type) *shape {
	if known, ok := s.shapes[t]; ok {
		return known
	}
	made := &shape{number: len(s.shapes), index: map[ast.String]int{}}
	for _, f := range Fields(t) {
		made.fields = append(made.fields, field{f.Index, ast.String(f.Name), f.OmitEmpty})
	}
	slices.SortFunc(made.fields, func(a, b field) int { return Compare(a.key, b.key) })
	for i, f := range made.fields {
		made.index[f.key.(ast.String)] = i
	}
	if s.shapes == nil {
		s.shapes = map[reflect.Type]*shape{}
	}
	s.shapes[t] = made
	return made
}

// Field is a field of a struct as JSON writes it.
type Field struct {
	Index     []int
	Name      string
	OmitEmpty bool
}

// Fields lists what JSON writes of a struct, those of embedded ones included.
func Fields(t reflect.Type) []Field {
	var fields []Field
	for _, f := range reflect.VisibleFields(t) {
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		if !f.IsExported() || f.Anonymous || name == "-" {
			continue
		}
		if name == "" {
			name = f.Name
		}
		fields = append(fields, Field{f.Index, name, options == "omitempty"})
	}
	return fields
}

// IsEmpty is what encoding/json leaves out by omitempty.
func IsEmpty(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Slice, reflect.Map, reflect.Array:
		return v.Len() == 0
	case reflect.Struct:
		return false
	}
	return v.IsZero()
}
