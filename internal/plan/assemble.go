package plan

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/ir"
	"github.com/open-policy-agent/opa/v1/topdown"

	"abut/internal/plan/value"
)

// assembler makes a program of a plan.
type assembler struct {
	Program
	policy  *ir.Policy
	index   map[string]int // of each function by its name in the plan
	sites   map[int]int    // from how many places it is called
	builtin map[string]int
	known   map[string]int    // constants
	path    map[string]uint16 // where each path into input or data stands
	pools   map[string]uint16 // where each list of operands stands
	slots   map[string]operand
	err     error
}

// Compile makes a program of OPA's plan.
func Compile(policy *ir.Policy) (*Program, error) {
	a := &assembler{
		policy: policy, index: map[string]int{}, sites: map[int]int{}, builtin: map[string]int{}, known: map[string]int{}, path: map[string]uint16{},
		pools: map[string]uint16{}, slots: map[string]operand{},
	}
	a.rules = map[string]uint16{}
	for i, b := range policy.Static.BuiltinFuncs {
		a.builtin[b.Name] = i
		made, err := builtinOf(b.Name)
		if err != nil {
			return nil, err
		}
		a.builtins = append(a.builtins, made)
	}
	for i, f := range policy.Funcs.Funcs {
		a.index[f.Name] = i
		a.rules[strings.Join(f.Path, "/")] = uint16(i)
	}
	for _, f := range policy.Funcs.Funcs {
		made, err := a.function(f)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", f.Name, err)
		}
		a.funcs = append(a.funcs, made)
	}
	for i := range a.funcs {
		a.funcs[i].memo = a.keeps(a.funcs[i], i)
	}
	if a.err != nil {
		return nil, a.err
	}
	a.calls = len(a.slots)
	if max(len(a.consts), len(a.funcs), len(a.slots)) >= int(none) || len(a.args) > 1<<16 {
		return nil, errors.New("the policy is too large for a plan")
	}
	return &a.Program, nil
}

func builtinOf(name string) (builtin, error) {
	decl, call := ast.BuiltinMap[name], topdown.GetBuiltin(name)
	if decl == nil || call == nil {
		return builtin{}, fmt.Errorf("built-in function %s is not there", name)
	}
	return builtin{name, decl.Decl.Arity(), decl.Relation, natives()[name], searches()[name], call}, nil
}

// constant gives each value one place.
func (a *assembler) constant(v value.Value) val {
	key := fmt.Sprintf("%T %s", v, value.OPA(v))
	i, known := a.known[key]
	if !known {
		i = len(a.consts)
		a.known[key] = i
		a.consts = append(a.consts, value.Freeze(v))
	}
	return val{true, i}
}

func (a *assembler) function(f *ir.Func) (function, error) {
	var parts [][]*node
	for _, b := range f.Blocks {
		nodes, err := lower{a}.block(b)
		if err != nil {
			return function{}, err
		}
		parts = append(parts, nodes)
	}
	fixed := len(f.Params) + 2 // and the result, and that of one body
	for i := range parts {
		fold := folder{a, parts[i], fixed}
		parts[i] = fold.paths(fold.fold(parts[i]))
		walk(parts[i], func(n *node) {
			if n.kind == plain && n.op == opScan {
				group(n)
			}
			a.note(n)
		})
		endEarly(bodies(parts[i]), fixed-1)
	}
	e := emitter{assembler: a, place: places(f, parts)}
	for _, nodes := range parts {
		e.body = depth(nodes)
		if err := e.scope(nodes); err != nil {
			return function{}, err
		}
	}
	if len(e.code) > 1<<16-1 || len(e.place) >= int(none) {
		return function{}, errors.New("the rule is too large for a plan")
	}
	made := function{name: strings.Join(f.Path, "/"), params: uint16(len(f.Params)), registers: uint16(len(e.place)), code: e.code}
	return made, nil
}

// keeps says whether what a function gave is kept for the same arguments: it is
// called from several places, and is no mere check of them, nor a mere look
// through a list among them, which is as quick as to remember it.
func (a *assembler) keeps(f function, index int) bool {
	has := func(ops ...opcode) bool {
		return slices.ContainsFunc(f.code, func(i instr) bool { return slices.Contains(ops, i.op) })
	}
	return a.sites[index] > 1 && f.params <= 2+maxKeyed &&
		(has(opCall) || has(opScan, opScanBy) && has(opPath, opAppend, opInsert, opAdd))
}

// note keeps what the rules read of data.
func (a *assembler) note(n *node) {
	for i, v := range n.src {
		switch {
		case v != local(ir.Data) || (n.op == opCall || n.op == opDynamic) && i == int(ir.Data):
		case n.op == opPath:
			var path []value.Value
			for _, p := range n.path {
				path = append(path, a.consts[p.index])
			}
			a.reads = append(a.reads, path)
		default:
			a.reads = append(a.reads, nil) // all of it
		}
	}
}

// bodies are the blocks in which a rule's value is found: one, or those of its
// else branches.
func bodies(list []*node) [][]*node {
	if depth(list) == 1 {
		return list[0].blocks
	}
	return [][]*node{list}
}

// depth is in how many blocks the bodies of a rule stand.
func depth(list []*node) int {
	if len(list) == 1 && list[0].kind == blocks {
		return 1
	}
	return 0
}

// endEarly ends a body that can give one value only, as soon as it is given.
func endEarly(bodies [][]*node, result int) {
	for _, body := range bodies {
		var found []*node
		walk(body, func(n *node) {
			if n.op == opOnce && n.dst == result {
				found = append(found, n)
			}
		})
		same := func(n *node) bool { return n.src[0].constant && n.src[0] == found[0].src[0] }
		if len(found) == 0 || slices.ContainsFunc(found, func(n *node) bool { return !same(n) }) {
			continue
		}
		for _, n := range found {
			n.op, n.kind, n.blocks = opMove, quit, nil
			n.src = n.src[:1]
		}
	}
}

// places gives each local of a function its register.
func places(f *ir.Func, parts [][]*node) map[int]operand {
	place := map[int]operand{}
	put := func(l int) {
		if _, ok := place[l]; !ok && l >= 0 {
			place[l] = operand(len(place))
		}
	}
	for _, p := range f.Params {
		put(int(p))
	}
	put(int(f.Return))
	for _, nodes := range parts {
		walk(nodes, func(n *node) {
			put(n.dst)
			put(n.also)
			for _, v := range slices.Concat(n.src, n.path) {
				if !v.constant {
					put(v.index)
				}
			}
		})
	}
	return place
}
