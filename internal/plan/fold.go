package plan

import (
	"github.com/open-policy-agent/opa/v1/ir"

	"abut/internal/plan/value"
)

// folder makes the body of a rule shorter: what is only a copy of a value, or
// made of constants, is put where it is read.
type folder struct {
	*assembler
	body  []*node // all of the rule's body
	fixed int     // the first locals belong to the function and stay
}

func (f folder) fold(list []*node) []*node {
	out := list[:0:0]
	for i := 0; i < len(list); i++ {
		n, rest := list[i], list[i+1:]
		if n.op == opArray || n.op == opObject || n.op == opSet {
			if v, used := f.literal(n, rest); used > 0 && f.replace(n.dst, v, rest[used-1:]) {
				i += used - 1
				continue
			}
		}
		if n.kind == plain && n.op == opMove && f.replace(n.dst, n.src[0], rest) {
			continue
		}
		for j, inner := range n.blocks {
			n.blocks[j] = f.fold(inner)
		}
		if n.kind == plain && n.op == opScan && uses(f.body, n.also).read == 0 {
			n.also = -1
		}
		out = append(out, n)
	}
	return out
}

// replace puts a value in the place of a local that holds nothing else, in all
// that follows; false if there is more to it.
func (f folder) replace(local int, by val, rest []*node) bool {
	if local < f.fixed || uses(rest, local).written > 0 {
		return false
	}
	if uses(rest, local).read != uses(f.body, local).read {
		return false
	}
	if !by.constant && uses(rest, by.index).written > 0 {
		return false
	}
	walk(rest, func(n *node) {
		swap(n.src, local, by)
		swap(n.path, local, by)
	})
	return true
}

func swap(list []val, local int, by val) {
	for i, v := range list {
		if !v.constant && v.index == local {
			list[i] = by
		}
	}
}

// literal is the constant that a list of statements makes, beginning with the
// one before them, and how many of all were used for it.
func (f folder) literal(first *node, rest []*node) (val, int) {
	made := map[int]value.Value{first.dst: empty(first.op)}
	used, whole := 1, 1 // whole: up to here nothing is half made
	get := func(v val) value.Value {
		if v.constant {
			return f.consts[v.index]
		}
		return made[v.index]
	}
	for _, n := range rest {
		if n.kind != plain {
			break
		}
		if n.op == opMove && n.src[0].constant {
			made[n.dst] = f.consts[n.src[0].index]
		} else if e := empty(n.op); e != nil {
			made[n.dst] = e
		} else if !grow(n, get) {
			break
		}
		used++
		if n.op.grows() && n.src[0].index == first.dst {
			whole = used
		}
	}
	if uses(rest[whole-1:], first.dst).written > 0 {
		return val{}, 0
	}
	for _, n := range rest[:whole-1] {
		if n.dst >= 0 && uses(rest[:whole-1], n.dst).read != uses(f.body, n.dst).read {
			return val{}, 0
		}
	}
	return f.constant(made[first.dst]), whole
}

func (o opcode) grows() bool {
	return o == opAppend || o == opInsert || o == opAdd
}

func empty(op opcode) value.Value {
	switch op {
	case opArray:
		return value.NewArray()
	case opObject:
		return value.NewObject()
	case opSet:
		return value.NewSet()
	}
	return nil
}

// grow puts constants into one that is being made; false if it cannot.
func grow(n *node, get func(val) value.Value) bool {
	if !n.op.grows() {
		return false
	}
	parts := make([]value.Value, len(n.src))
	for i, v := range n.src {
		if parts[i] = get(v); parts[i] == nil {
			return false
		}
	}
	switch of := parts[0].(type) {
	case *value.Array:
		of.Append(parts[1])
	case *value.Object:
		of.Insert(parts[1], parts[2])
	case *value.Set:
		of.Add(parts[1])
	}
	return true
}

// paths joins look-ups of constants, one in the other, that begin at input or
// data: what stands there is looked up once in a run.
func (f folder) paths(list []*node) []*node {
	out := list[:0:0]
	for _, n := range list {
		for i, inner := range n.blocks {
			n.blocks[i] = f.paths(inner)
		}
		if n.kind == plain && n.op == opDot && n.src[1].constant && !n.src[0].constant {
			if n.src[0].index <= int(ir.Data) {
				n.op, n.path, n.src = opPath, n.src[1:2:2], n.src[:1:1] // a new list: more is put to it
			} else if last := len(out) - 1; last >= 0 && out[last].op == opPath && out[last].dst == n.src[0].index &&
				n.dst != n.src[0].index && uses(f.body, n.src[0].index).read == 1 {
				out[last].path, out[last].dst = append(out[last].path, n.src[1]), n.dst
				continue
			}
		}
		out = append(out, n)
	}
	return out
}

// use counts how often a local is read and written.
type use struct{ read, written int }

func uses(list []*node, local int) use {
	var u use
	walk(list, func(n *node) {
		for _, v := range n.src {
			if !v.constant && v.index == local {
				u.read++
			}
		}
		for _, v := range n.path {
			if !v.constant && v.index == local {
				u.read++
			}
		}
		if n.dst == local {
			u.written++
		}
		if n.also == local {
			u.written++
		}
		if n.changes() && n.src[0].index == local {
			u.written++
		}
	})
	return u
}

// changes: the value in the first source is changed in its place.
func (n *node) changes() bool {
	return n.kind == plain && (n.op.grows() || n.op == opInsertOnce)
}

func walk(list []*node, visit func(*node)) {
	for _, n := range list {
		visit(n)
		for _, inner := range n.blocks {
			walk(inner, visit)
		}
	}
}
