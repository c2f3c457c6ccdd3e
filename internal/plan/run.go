package plan

import (
	"context"
	"errors"
	"fmt"
	"math"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"

	"abut/internal/plan/value"
	"abut/internal/regexp"
)

// errConflict is that a rule has two values at once.
var errConflict = errors.New("a rule has two values")

// Run answers for one input; what it has found once it keeps. It is for one
// goroutine.
type Run struct {
	program *Program
	context context.Context
	builtin topdown.BuiltinContext
	source  value.Source
	input   value.Value
	data    value.Value
	known   known
	told    []answers // of built-in functions on single values
	// patterns are those of the program that were met.
	patterns map[ast.String]*regexp.Regexp
	stack    []value.Value
	args     []value.Value // of a built-in function
	terms    []*ast.Term   // the same for OPA
	out      []*ast.Term   // what it gave
	put      func(term *ast.Term) error
	steps    int
	err      error
}

// stopped lies beyond any instruction.
const stopped = math.MaxInt

// first is the part of a rule's path that OPA puts before it.
const first = "g0/"

// often is after how many steps a look is taken at the clock.
const often = 1 << 14

// Run begins to judge an input with the data that the rules refer to. Both are
// Go values, taken as JSON would write them, and must not change meanwhile.
func (p *Program) Run(ctx context.Context, input, data any) *Run {
	r := &Run{program: p, context: ctx, known: newKnown(p), told: make([]answers, len(p.builtins)), patterns: map[ast.String]*regexp.Regexp{}}
	r.input, r.data = r.source.Of(input), r.source.Of(data)
	r.builtin = topdown.BuiltinContext{Context: ctx, Cancel: topdown.NewCancel()}
	r.put = func(t *ast.Term) error {
		r.out = append(r.out, t)
		return nil
	}
	return r
}

// Rule gives the value of a rule, nil if it is undefined. An error of a
// built-in function is one of the run, and the end of it.
func (r *Run) Rule(path string) (value.Value, error) {
	index, ok := r.program.rules[first+path]
	if !ok {
		return nil, fmt.Errorf("the plan has no rule %s", path)
	}
	v := r.call(int(index), []value.Value{r.input, r.data}, []operand{0, 1}, none)
	if r.err == nil {
		r.err = r.source.Err
	}
	if r.err != nil {
		return nil, r.err
	}
	return v, nil
}

// call runs a function with some of the caller's values, or tells what it gave
// before. With another input or data there is another known.
func (r *Run) call(index int, caller []value.Value, args []operand, slot operand) value.Value {
	f := &r.program.funcs[index]
	if len(args) == 2 {
		kept := &r.known.rules[index]
		if !kept.done {
			v := r.enter(f, caller, args)
			*kept = found{v, true}
		}
		return kept.value
	}
	if !f.memo || slot == none {
		return r.enter(f, caller, args)
	}
	var space [maxKeyed]value.Value
	key := space[:0]
	for _, o := range args[2:] {
		if o&constant == 0 {
			key = append(key, caller[o])
		}
	}
	kept := &r.known.calls[slot]
	if len(key) == 1 {
		if kind, number, ok := value.Row(key[0]); ok {
			told := kept.row(kind, number)
			if !told.done {
				v := r.enter(f, caller, args)
				*told = found{v, true}
			}
			return told.value
		}
	}
	if kept.useless() {
		return r.enter(f, caller, args)
	}
	if v, ok := kept.get(key); ok {
		return v
	}
	v := r.enter(f, caller, args)
	kept.keep(key, v)
	return v
}

func (r *Run) enter(f *function, caller []value.Value, args []operand) value.Value {
	frame := r.frame(int(f.registers))
	for i, o := range args {
		frame[i] = r.get(caller, o)
	}
	r.exec(frame, f.code, 0, len(f.code))
	v := frame[f.params]
	r.stack = r.stack[:len(r.stack)-int(f.registers)]
	return v
}

// frame is empty registers. Where the stack has no room they are from another,
// and those below stay where they are.
func (r *Run) frame(size int) []value.Value {
	at := len(r.stack)
	if at+size > cap(r.stack) {
		r.stack = make([]value.Value, at, 2*(at+size)+256)
	}
	r.stack = r.stack[:at+size]
	frame := r.stack[at : at+size : at+size]
	clear(frame)
	return frame
}

// fail ends the run.
func (r *Run) fail(err error) {
	if r.err == nil {
		r.err = err
	}
}

func (r *Run) get(frame []value.Value, o operand) value.Value {
	if o&constant != 0 {
		return r.program.consts[o&^constant]
	}
	return frame[o]
}

// exec runs the instructions from one to another, and gives the one to go on
// with; it lies beyond, since all jumps lead ahead.
func (r *Run) exec(frame []value.Value, code []instr, at, end int) int {
	for at < end {
		in := &code[at]
		at++
		defined := true
		switch in.op {
		case opJump:
			at = int(in.fail)
		case opMove:
			frame[in.a] = r.get(frame, in.b)
		case opDot:
			frame[in.a] = r.dot(frame, in)
			defined = frame[in.a] != nil
		case opPath:
			frame[in.a] = r.path(frame, in)
			defined = frame[in.a] != nil
		case opCall:
			args := r.program.operands(in.b, r.program.funcs[in.c].params+1)
			frame[in.a] = r.call(int(in.c), frame, args[1:], args[0])
			defined = frame[in.a] != nil
		case opBuiltin:
			frame[in.a] = r.builtinAt(frame, in)
			defined = frame[in.a] != nil
		case opScan:
			at = r.scan(frame, code, at, in)
		case opScanBy:
			at = r.scanBy(frame, code, at, in)
		case opDynamic:
			at = r.dynamic(frame, at, in)
		case opWith:
			at = r.with(frame, code, at, in)
		default:
			if in.op < opEqual || in.op > opUndefined {
				r.make(frame, in)
			} else {
				defined = r.holds(frame, in)
			}
		}
		if r.err != nil {
			return stopped
		}
		if !defined {
			at = int(in.fail)
		}
	}
	return at
}

// dot looks a key up. That of a constant has a number to find it by.
func (r *Run) dot(frame []value.Value, in *instr) value.Value {
	of := r.get(frame, in.b)
	if object, ok := of.(*value.Object); ok && in.c&constant != 0 {
		number := int(in.c &^ constant)
		return object.GetBy(number, r.program.consts[number])
	}
	return value.Get(of, r.get(frame, in.c))
}

// holds is a check.
func (r *Run) holds(frame []value.Value, in *instr) bool {
	a := r.get(frame, in.a)
	is := true
	switch in.op {
	case opEqual:
		return value.Equal(a, r.get(frame, in.b))
	case opUnequal:
		return !value.Equal(a, r.get(frame, in.b))
	case opIsArray:
		_, is = a.(*value.Array)
	case opIsObject:
		_, is = a.(*value.Object)
	case opIsSet:
		_, is = a.(*value.Set)
	case opDefined:
		is = a != nil
	case opUndefined:
		is = a == nil
	}
	return is
}

// make is an instruction that builds a value.
func (r *Run) make(frame []value.Value, in *instr) {
	switch in.op {
	case opReset:
		frame[in.a] = nil
	case opArray:
		frame[in.a] = value.NewArray()
	case opObject:
		frame[in.a] = value.NewObject()
	case opSet:
		frame[in.a] = value.NewSet()
	case opAppend:
		frame[in.a].(*value.Array).Append(r.get(frame, in.b))
	case opInsert:
		frame[in.a].(*value.Object).Insert(r.get(frame, in.b), r.get(frame, in.c))
	case opAdd:
		frame[in.a].(*value.Set).Add(r.get(frame, in.b))
	case opLen:
		frame[in.a] = count(r.get(frame, in.b))
	case opOnce:
		v := r.get(frame, in.b)
		r.once(frame[in.a], v)
		frame[in.a] = v
	case opInsertOnce:
		object, key, v := frame[in.a].(*value.Object), r.get(frame, in.b), r.get(frame, in.c)
		r.once(object.Get(key), v)
		object.Insert(key, v)
	case opMerge:
		r.merge(frame, in)
	default:
		r.fail(fmt.Errorf("instruction %d is not known", in.op))
	}
}

// once: what has a value must have that one.
func (r *Run) once(old, v value.Value) {
	if old != nil && !value.Equal(old, v) {
		r.fail(errConflict)
	}
}
