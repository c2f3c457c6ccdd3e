package value

import (
	"encoding/binary"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Packed is a value as Writer writes it. A Source makes of it what is looked at.
type Packed []byte

// Kinds of values. A composite one has its length before it, to be passed over.
const (
	kindNull = iota
	kindFalse
	kindTrue
	kindNumber
	kindString
	kindArray
	kindObject
	kindSet
)

// Writer writes values, small numbers, and texts with their length.
type Writer struct{ Out []byte }

// Number writes one that is not negative.
func (w *Writer) Number(n int) { w.Out = binary.AppendUvarint(w.Out, uint64(n)) }

// Text writes a text.
func (w *Writer) Text(s string) {
	w.Number(len(s))
	w.Out = append(w.Out, s...)
}

// Value writes a value.
func (w *Writer) Value(v Value) {
	switch v := v.(type) {
	case ast.Boolean:
		w.Number(map[ast.Boolean]int{false: kindFalse, true: kindTrue}[v])
	case ast.Number:
		w.Number(kindNumber)
		w.Text(string(v))
	case ast.String:
		w.Number(kindString)
		w.Text(string(v))
	case *Array:
		w.list(kindArray, v.Elems(), nil)
	case *Set:
		w.list(kindSet, v.Elems(), nil)
	case *Object:
		keys, values := v.Pairs()
		w.list(kindObject, keys, values)
	default:
		w.Number(kindNull)
	}
}

func (w *Writer) list(kind int, keys, values []Value) {
	var in Writer
	in.Number(len(keys))
	for i, k := range keys {
		in.Value(k)
		if values != nil {
			in.Value(values[i])
		}
	}
	w.Number(kind)
	w.Text(string(in.Out))
}

// Reader reads until something is amiss, and then nothing more.
type Reader struct {
	Rest    []byte
	Damaged bool
}

// Number reads one that is not negative.
func (r *Reader) Number() int {
	n, size := binary.Uvarint(r.Rest)
	if size <= 0 {
		r.Damaged, r.Rest = true, nil
		return 0
	}
	r.Rest = r.Rest[size:]
	return int(n)
}

// Count is a number of things, each of which takes a byte at least.
func (r *Reader) Count() int {
	n := r.Number()
	if n < 0 || n > len(r.Rest) {
		r.Damaged, r.Rest = true, nil
		return 0
	}
	return n
}

// Text reads a text.
func (r *Reader) Text() string { return string(r.Bytes()) }

// Bytes are those of a text, in their place.
func (r *Reader) Bytes() []byte {
	n := r.Count()
	text := r.Rest[:n:n]
	r.Rest = r.Rest[n:]
	return text
}

// Value reads a value. What is in a list or object is read when it is looked at.
func (r *Reader) Value() Value {
	switch r.Number() {
	case kindFalse:
		return ast.Boolean(false)
	case kindTrue:
		return ast.Boolean(true)
	case kindNumber:
		return ast.Number(r.Text())
	case kindString:
		return ast.String(r.Text())
	case kindArray:
		in := Reader{Rest: r.Bytes()}
		n := in.Count()
		return &Array{size: n, make: func() []Value { return in.values(n) }}
	case kindSet:
		in := Reader{Rest: r.Bytes()}
		return NewSet(in.values(in.Count())...)
	case kindObject:
		return &Object{from: &packed{text: r.Bytes()}}
	}
	return ast.Null{}
}

func (r *Reader) values(n int) []Value {
	list := make([]Value, n)
	for i := range list {
		list[i] = r.Value()
	}
	return list
}

// packed is an object that is read at the first look.
type packed struct {
	text []byte
	read *Object
}

func (p *packed) object() *Object {
	if p.read == nil {
		in := Reader{Rest: p.text}
		n := in.Count()
		p.read = &Object{table: table{keys: make([]Value, n), sorted: true}, values: make([]Value, n)}
		for i := range n {
			p.read.keys[i], p.read.values[i] = in.Value(), in.Value()
		}
		if n > few {
			p.read.index()
		}
	}
	return p.read
}

func (p *packed) get(key Value) Value { return p.object().Get(key) }

func (p *packed) len() int { return p.object().Len() }

func (p *packed) all() (keys, values []Value) { return p.object().Pairs() }
