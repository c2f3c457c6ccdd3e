package value

import (
	"encoding/binary"
	"math"
	"math/bits"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// table is keys of any kind, each once. Few are looked through; many have an
// index by their hash.
type table struct {
	keys   []Value
	places *places // nil while the keys are few
	sorted bool
	hash   uint64 // of all, 0: not known
}

// places tell where the keys are.
type places struct {
	first map[uint64]int32 // the last key put in of each hash
	next  []int32          // the one before it of the same hash, -1 for none
}

// few is how many keys are compared rather than hashed.
const few = 8

func (t *table) find(key Value) (int, bool) {
	if t.places == nil {
		if text, ok := key.(ast.String); ok {
			for i, k := range t.keys {
				if k, ok := k.(ast.String); ok && k == text {
					return i, true
				}
			}
			return 0, false
		}
		for i, k := range t.keys {
			if Equal(k, key) {
				return i, true
			}
		}
		return 0, false
	}
	at, ok := t.places.first[Hash(key)]
	for ; ok && at >= 0; at = t.places.next[at] {
		if Equal(t.keys[at], key) {
			return int(at), true
		}
	}
	return 0, false
}

// put adds a key that is not there.
func (t *table) put(key Value) {
	t.keys = append(t.keys, key)
	t.sorted, t.hash = false, 0
	switch {
	case t.places != nil:
		t.link(len(t.keys) - 1)
	case len(t.keys) > few:
		t.index()
	}
}

func (t *table) index() {
	t.places = &places{first: make(map[uint64]int32, 2*len(t.keys))}
	for i := range t.keys {
		t.link(i)
	}
}

func (t *table) link(i int) {
	h := Hash(t.keys[i])
	before, ok := t.places.first[h]
	if !ok {
		before = -1
	}
	t.places.next = append(t.places.next, before)
	t.places.first[h] = int32(i)
}

// sort puts the keys in order, and the values with them.
func (t *table) sort(values []Value) {
	if t.sorted {
		return
	}
	t.sorted = true
	if slices.IsSortedFunc(t.keys, Compare) {
		return
	}
	order := make([]int, len(t.keys))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return Compare(t.keys[a], t.keys[b]) })
	arrange(t.keys, order)
	if values != nil {
		arrange(values, order)
	}
	if t.places != nil {
		t.index()
	}
}

func arrange(list []Value, order []int) {
	old := slices.Clone(list)
	for i, from := range order {
		list[i] = old[from]
	}
}

// Hash is the same for equal values.
func Hash(v Value) uint64 {
	switch v := v.(type) {
	case ast.Boolean:
		if v {
			return 3
		}
		return 5
	case ast.Number:
		f, _ := v.Float64()
		return mix(7, math.Float64bits(f+0)) // -0 is 0
	case ast.String:
		return hashText(string(v))
	case *Array:
		if v.hash == 0 {
			h := uint64(11)
			for _, e := range v.Elems() {
				h = mix(h, Hash(e))
			}
			v.hash = h
		}
		return v.hash
	case *Set:
		if v.table.hash == 0 {
			h := uint64(13)
			for _, k := range v.keys {
				h += mix(17, Hash(k))
			}
			v.table.hash = h
		}
		return v.table.hash
	case *Object:
		return v.sum()
	}
	return 1
}

const prime = 0x9E3779B97F4A7C15

func mix(a, b uint64) uint64 {
	high, low := bits.Mul64(a^prime, b^(prime>>7))
	return high ^ low
}

func hashText(s string) uint64 {
	h := uint64(len(s)) + 19
	for len(s) >= 8 {
		h = mix(h, binary.LittleEndian.Uint64([]byte(s[:8])))
		s = s[8:]
	}
	var rest uint64
	for i := range len(s) {
		rest = rest<<8 | uint64(s[i])
	}
	return mix(h, rest)
}
