package plan

import (
	"fmt"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/ir"
)

// node is a statement on its way from OPA's plan to instructions.
type node struct {
	op     opcode
	kind   kind
	dst    int       // local that is written, -1: none
	src    []val     // what is read
	also   int       // a second local that is written: the key of a scan, else -1
	number int       // of blocks to leave, of a function, of a built-in function
	path   []val     // of a look-up
	blocks [][]*node // what is nested
}

// kind tells nodes that are not one instruction.
type kind int

const (
	plain kind = iota
	blocks
	leave // so many blocks
	not
	quit // the body of the rule: no other value can come
)

// val is a constant of the program, or a local of the function.
type val struct {
	constant bool
	index    int
}

func local(l ir.Local) val { return val{index: int(l)} }

// lower turns statements into nodes.
type lower struct {
	*assembler
}

func (l lower) block(b *ir.Block) ([]*node, error) {
	nodes := make([]*node, 0, len(b.Stmts))
	for _, s := range b.Stmts {
		n, err := l.stmt(s)
		if err != nil {
			return nil, err
		}
		if n != nil {
			nodes = append(nodes, n)
		}
	}
	return nodes, nil
}

func (l lower) nested(n *node, list ...*ir.Block) (*node, error) {
	for _, b := range list {
		nodes, err := l.block(b)
		if err != nil {
			return nil, err
		}
		n.blocks = append(n.blocks, nodes)
	}
	return n, nil
}

func (l lower) stmt(s ir.Stmt) (*node, error) {
	switch s := s.(type) {
	case *ir.NopStmt, *ir.ReturnLocalStmt: // the result has its place
		return nil, nil
	case *ir.BlockStmt:
		return l.nested(&node{kind: blocks, dst: -1, also: -1}, s.Blocks...)
	case *ir.NotStmt:
		return l.nested(&node{kind: not, dst: -1, also: -1}, s.Block)
	case *ir.BreakStmt:
		return &node{kind: leave, dst: -1, also: -1, number: int(s.Index)}, nil
	case *ir.ScanStmt:
		n := &node{op: opScan, dst: int(s.Value), also: int(s.Key), src: []val{local(s.Source)}}
		return l.nested(n, s.Block)
	case *ir.WithStmt:
		n := &node{op: opWith, dst: int(s.Local), also: -1, src: []val{local(s.Local), l.val(s.Value)}}
		for _, i := range s.Path {
			n.path = append(n.path, l.text(i))
		}
		return l.nested(n, s.Block)
	case *ir.CallStmt:
		return l.call(s)
	case *ir.CallDynamicStmt:
		n := &node{op: opDynamic, dst: int(s.Result), also: -1}
		for _, a := range s.Args {
			n.src = append(n.src, local(a))
		}
		for _, p := range s.Path {
			n.path = append(n.path, l.val(p))
		}
		return n, nil
	}
	return l.value(s)
}

// value is a statement that makes or looks up a value.
func (l lower) value(s ir.Stmt) (*node, error) {
	to := func(op opcode, dst ir.Local, src ...val) (*node, error) {
		return &node{op: op, dst: int(dst), also: -1, src: src}, nil
	}
	switch s := s.(type) {
	case *ir.DotStmt:
		return to(opDot, s.Target, l.val(s.Source), l.val(s.Key))
	case *ir.LenStmt:
		return to(opLen, s.Target, l.val(s.Source))
	case *ir.AssignVarStmt:
		return to(opMove, s.Target, l.val(s.Source))
	case *ir.AssignVarOnceStmt:
		return to(opOnce, s.Target, l.val(s.Source), local(s.Target))
	case *ir.AssignIntStmt:
		return to(opMove, s.Target, l.number(strconv.FormatInt(s.Value, 10)))
	case *ir.MakeNumberIntStmt:
		return to(opMove, s.Target, l.number(strconv.FormatInt(s.Value, 10)))
	case *ir.MakeNumberRefStmt:
		return to(opMove, s.Target, l.number(l.policy.Static.Strings[s.Index].Value))
	case *ir.MakeNullStmt:
		return to(opMove, s.Target, l.constant(ast.Null{}))
	case *ir.ResetLocalStmt:
		return to(opReset, s.Target)
	case *ir.MakeArrayStmt:
		return to(opArray, s.Target)
	case *ir.MakeObjectStmt:
		return to(opObject, s.Target)
	case *ir.MakeSetStmt:
		return to(opSet, s.Target)
	case *ir.ObjectMergeStmt:
		return to(opMerge, s.Target, local(s.A), local(s.B))
	}
	return l.check(s)
}

// check is a statement that writes no local.
func (l lower) check(s ir.Stmt) (*node, error) {
	of := func(op opcode, src ...val) (*node, error) {
		return &node{op: op, dst: -1, also: -1, src: src}, nil
	}
	switch s := s.(type) {
	case *ir.EqualStmt:
		return of(opEqual, l.val(s.A), l.val(s.B))
	case *ir.NotEqualStmt:
		return of(opUnequal, l.val(s.A), l.val(s.B))
	case *ir.IsArrayStmt:
		return of(opIsArray, l.val(s.Source))
	case *ir.IsObjectStmt:
		return of(opIsObject, l.val(s.Source))
	case *ir.IsSetStmt:
		return of(opIsSet, l.val(s.Source))
	case *ir.IsDefinedStmt:
		return of(opDefined, local(s.Source))
	case *ir.IsUndefinedStmt:
		return of(opUndefined, local(s.Source))
	case *ir.ArrayAppendStmt:
		return of(opAppend, local(s.Array), l.val(s.Value))
	case *ir.ObjectInsertStmt:
		return of(opInsert, local(s.Object), l.val(s.Key), l.val(s.Value))
	case *ir.ObjectInsertOnceStmt:
		return of(opInsertOnce, local(s.Object), l.val(s.Key), l.val(s.Value))
	case *ir.SetAddStmt:
		return of(opAdd, local(s.Set), l.val(s.Value))
	}
	return nil, fmt.Errorf("a plan has a statement that is not known: %T", s)
}

func (l lower) call(s *ir.CallStmt) (*node, error) {
	n := &node{op: opCall, dst: int(s.Result), also: -1}
	for _, a := range s.Args {
		n.src = append(n.src, l.val(a))
	}
	index, isFunction := l.index[s.Func]
	if !isFunction {
		n.op = opBuiltin
		if index, isFunction = l.builtin[s.Func]; !isFunction {
			return nil, fmt.Errorf("a plan calls %s, which is not there", s.Func)
		}
	}
	if n.number = index; n.op == opCall {
		l.sites[index]++
	}
	return n, nil
}

// val takes operands as they are read from JSON.
func (l lower) val(o ir.Operand) val {
	switch v := o.Value.(type) {
	case *ir.Local:
		return local(*v)
	case *ir.StringIndex:
		return l.text(int(*v))
	case *ir.Bool:
		return l.constant(ast.Boolean(*v))
	}
	l.err = fmt.Errorf("a plan has an operand that is not known: %T", o.Value)
	return val{}
}

func (l lower) text(index int) val {
	return l.constant(ast.String(l.policy.Static.Strings[index].Value))
}

func (l lower) number(text string) val {
	return l.constant(ast.Number(text))
}
