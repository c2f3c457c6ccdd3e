package value

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Object is keys with a value each. One that comes from Go looks them up there.
type Object struct {
	table
	values []Value
	from   source // nil if all is in the table
	opa    *ast.Term
}

// source is where an object looks up what it lacks.
type source interface {
	get(key Value) Value
	len() int
	all() (keys, values []Value) // in order
}

// NewObject is an object without keys.
func NewObject() *Object { return &Object{} }

// Get is the value of a key, nil if there is none.
func (o *Object) Get(key Value) Value {
	if o.from != nil {
		return o.from.get(key)
	}
	if i, ok := o.find(key); ok {
		return o.values[i]
	}
	return nil
}

// GetBy is Get for a key that has a number, the same one for the whole run.
func (o *Object) GetBy(number int, key Value) Value {
	if r, ok := o.from.(*record); ok {
		return r.getBy(number, key)
	}
	return o.Get(key)
}

// Row tells which kind of Go's structs an object is, and its number among those
// of the kind that were looked at, both from 0 on.
func Row(v Value) (kind, number int, ok bool) {
	if o, isObject := v.(*Object); isObject {
		if r, isRecord := o.from.(*record); isRecord {
			return r.shape.number, r.number, true
		}
	}
	return 0, 0, false
}

// Insert gives a key its value, in place of one that it may have.
func (o *Object) Insert(key, v Value) {
	o.leave()
	o.opa, o.hash = nil, 0
	if i, ok := o.find(key); ok {
		o.values[i] = v
		return
	}
	o.put(key)
	o.values = append(o.values, v)
}

// Len is the number of keys.
func (o *Object) Len() int {
	if o.from != nil {
		return o.from.len()
	}
	return len(o.keys)
}

// Pairs are the keys in order, and their values. The source still looks keys up.
func (o *Object) Pairs() (keys, values []Value) {
	if o.from != nil && o.keys == nil {
		o.keys, o.values = o.from.all()
		o.sorted = true
	}
	o.sort(o.values)
	return o.keys, o.values
}

// leave takes everything from the source.
func (o *Object) leave() {
	if o.from == nil {
		return
	}
	o.Pairs()
	o.from = nil
	if len(o.keys) > few {
		o.index()
	}
}

// Copy has the same keys and values.
func (o *Object) Copy() *Object {
	out := NewObject()
	keys, values := o.Pairs()
	for i, k := range keys {
		out.Insert(k, values[i])
	}
	return out
}

func (o *Object) equal(p *Object) bool {
	keys, values := o.Pairs()
	otherKeys, otherValues := p.Pairs()
	return slices.EqualFunc(keys, otherKeys, Equal) && slices.EqualFunc(values, otherValues, Equal)
}

func (o *Object) compare(p *Object) int {
	keys, values := o.Pairs()
	otherKeys, otherValues := p.Pairs()
	for i := range min(len(keys), len(otherKeys)) {
		if order := Compare(keys[i], otherKeys[i]); order != 0 {
			return order
		}
		if order := Compare(values[i], otherValues[i]); order != 0 {
			return order
		}
	}
	return len(keys) - len(otherKeys)
}

func (o *Object) sum() uint64 {
	if o.hash == 0 {
		keys, values := o.Pairs()
		h := uint64(23)
		for i, k := range keys {
			h += mix(Hash(k), Hash(values[i]))
		}
		o.hash = h
	}
	return o.hash
}

// Merge has the keys of both; where both have an object it is merged, else the
// second one's value stands.
func Merge(a, b *Object) *Object {
	out := a.Copy()
	keys, values := b.Pairs()
	for i, k := range keys {
		v := values[i]
		if below, ok := v.(*Object); ok {
			if old, ok := out.Get(k).(*Object); ok {
				v = Merge(old, below)
			}
		}
		out.Insert(k, v)
	}
	return out
}
