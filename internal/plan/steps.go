package plan

import (
	"fmt"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/internal/plan/value"
)

// scan runs what is nested for each element.
func (r *Run) scan(frame []value.Value, code []instr, at int, in *instr) int {
	keys, values := pairs(r.get(frame, in.c))
	return r.each(frame, code, at, in, keys, values, nil)
}

// each runs what is nested for each element, or those at some places. Whatever
// leaves it by a jump beyond its end leaves the scan.
func (r *Run) each(frame []value.Value, code []instr, at int, in *instr, keys, values []value.Value, places []int) int {
	end, count := int(in.fail), len(values)
	if places != nil {
		count = len(places)
	}
	for n := range count {
		i := n
		if places != nil {
			i = places[n]
		}
		switch {
		case in.a == none:
		case keys == nil:
			frame[in.a] = index(i)
		default:
			frame[in.a] = keys[i]
		}
		if in.b != none {
			frame[in.b] = values[i]
		}
		if r.tick() {
			return stopped
		}
		if to := r.exec(frame, code, at, end); to != end {
			return to
		}
	}
	return end
}

// pairs are the elements with their keys; those of an array are their indexes.
func pairs(v value.Value) (keys, values []value.Value) {
	switch v := v.(type) {
	case *value.Array:
		return nil, v.Elems()
	case *value.Object:
		return v.Pairs()
	case *value.Set:
		return v.Elems(), v.Elems()
	}
	return nil, nil
}

func index(i int) value.Value { return ast.InternedTerm(i).Value }

// tick looks at the clock now and then; true ends the run.
func (r *Run) tick() bool {
	if r.steps++; r.steps%often == 0 && r.context.Err() != nil {
		r.fail(r.context.Err())
	}
	return r.err != nil
}

// path looks up what stands at a path of constants, once in a run.
func (r *Run) path(frame []value.Value, in *instr) value.Value {
	args := r.program.args[in.c:]
	kept := &r.known.paths[args[0]]
	if !kept.done {
		v := r.get(frame, in.b)
		for _, o := range args[2 : 2+args[1]] {
			if v = value.Get(v, r.get(frame, o)); v == nil {
				break
			}
		}
		*kept = found{v, true}
	}
	return kept.value
}

// merge puts two objects into one, the second first; it is of rules that lie
// beside data.
func (r *Run) merge(frame []value.Value, in *instr) {
	a, isObject := r.get(frame, in.b).(*value.Object)
	b, both := r.get(frame, in.c).(*value.Object)
	if !isObject || !both {
		r.fail(errConflict)
		return
	}
	frame[in.a] = value.Merge(a, b)
}

// with runs what is nested with another value of input or data, or one in them.
func (r *Run) with(frame []value.Value, code []instr, at int, in *instr) int {
	saved, before := frame[in.a], r.known
	begin := int(in.c) + 1
	path := r.program.args[begin : begin+int(r.program.args[in.c])]
	frame[in.a] = r.upsert(saved, path, r.get(frame, in.b))
	r.known = newKnown(r.program)
	to := r.exec(frame, code, at, int(in.fail))
	frame[in.a], r.known = saved, before
	return to
}

// upsert is a value with another at a path in it; the old one stays as it is.
func (r *Run) upsert(in value.Value, path []operand, v value.Value) value.Value {
	if len(path) == 0 {
		return v
	}
	key := r.program.consts[path[0]&^constant]
	out := value.NewObject()
	if object, ok := in.(*value.Object); ok {
		out = object.Copy()
	}
	out.Insert(key, r.upsert(out.Get(key), path[1:], v))
	return out
}

// dynamic finds a rule by a path that was not known beforehand.
func (r *Run) dynamic(frame []value.Value, at int, in *instr) int {
	begin := int(in.b)
	name := ""
	for i, o := range r.program.args[begin : begin+int(in.c)] {
		text, ok := r.get(frame, o).(ast.String)
		if !ok {
			return int(in.fail)
		}
		if i > 0 {
			name += "/"
		}
		name += string(text)
	}
	index, ok := r.program.rules[name]
	if !ok {
		return int(in.fail)
	}
	args := r.program.operands(in.b+in.c, r.program.funcs[index].params)
	if frame[in.a] = r.call(int(index), frame, args, none); frame[in.a] == nil {
		return at // the jump out of all
	}
	return at + 1
}

// builtinAt calls a function of OPA's, or does the same itself where that is
// quicker. A failure is the end of the run.
func (r *Run) builtinAt(frame []value.Value, in *instr) value.Value {
	b := &r.program.builtins[in.c]
	r.args, r.terms, r.out = r.args[:0], r.terms[:0], r.out[:0]
	for _, o := range r.program.operands(in.b, uint16(b.arity)) {
		r.args = append(r.args, r.get(frame, o))
	}
	if b.native != nil {
		if v := b.native(r.args); v != nil {
			return v
		}
	}
	told := &r.told[in.c]
	if told.useless() || !keeps(r.args) {
		return r.ask(b)
	}
	if v, ok := told.get(r.args); ok {
		return v
	}
	v := r.ask(b)
	if r.err == nil {
		told.keep(r.args, v)
	}
	return v
}

// ask works out a search, and has OPA work out any other built-in function.
func (r *Run) ask(b *builtin) value.Value {
	if b.search != nil {
		if v := r.find(b.search, r.args); v != nil {
			return v
		}
	}
	for _, a := range r.args {
		r.terms = append(r.terms, value.OPA(a))
	}
	if err := b.call(r.builtin, r.terms, r.put); err != nil {
		r.fail(fmt.Errorf("%s: %w", b.name, err))
		return nil
	}
	if b.relation {
		return value.From(ast.NewArray(slices.Clone(r.out)...))
	}
	if len(r.out) == 0 {
		return nil
	}
	return value.From(r.out[0].Value)
}

// isComposite: it is told apart by where it is, so another one is seldom the same.
func isComposite(v value.Value) bool {
	switch v.(type) {
	case *value.Array, *value.Object, *value.Set:
		return true
	}
	return false
}
