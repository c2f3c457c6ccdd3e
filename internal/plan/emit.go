package plan

import (
	"errors"
	"fmt"
)

// emitter writes nodes as instructions.
type emitter struct {
	*assembler
	place  map[int]operand
	code   []instr
	scopes []*scope
	body   int // how many scopes out a rule's body is
}

// scope is a block: its instructions that go to its end. What is run by itself
// cannot be left by counting blocks.
type scope struct {
	exits []int
	apart bool
}

// scope writes a block; whoever is undefined in it goes to its end.
func (e *emitter) scope(list []*node) error {
	e.open(&scope{})
	if err := e.list(list); err != nil {
		return err
	}
	e.close()
	return nil
}

func (e *emitter) open(s *scope) { e.scopes = append(e.scopes, s) }

func (e *emitter) close() {
	s := e.scopes[len(e.scopes)-1]
	e.scopes = e.scopes[:len(e.scopes)-1]
	for _, at := range s.exits {
		e.code[at].fail = uint16(len(e.code))
	}
}

// emit writes an instruction that goes to the end of a scope if undefined.
func (e *emitter) emit(i instr, s *scope) {
	s.exits = append(s.exits, len(e.code))
	e.code = append(e.code, i)
}

// out is the scope so many blocks out.
func (e *emitter) out(count int) (*scope, error) {
	for i := len(e.scopes) - 1; i >= 0; i-- {
		if count == 0 {
			return e.scopes[i], nil
		}
		if e.scopes[i].apart {
			break
		}
		count--
	}
	return nil, errors.New("a statement leaves more blocks than it is in")
}

func (e *emitter) list(list []*node) error {
	for _, n := range list {
		if err := e.node(n); err != nil {
			return err
		}
	}
	return nil
}

func (e *emitter) node(n *node) error {
	here := e.scopes[len(e.scopes)-1]
	switch n.kind {
	case blocks:
		for _, inner := range n.blocks {
			if err := e.scope(inner); err != nil {
				return err
			}
		}
		return nil
	case leave:
		to, err := e.out(n.number)
		if err != nil {
			return err
		}
		e.emit(instr{op: opJump}, to)
		return nil
	case not:
		e.open(&scope{})
		if err := e.list(n.blocks[0]); err != nil {
			return err
		}
		e.emit(instr{op: opJump}, here)
		e.close()
		return nil
	case quit:
		e.emit(instr{op: opMove, a: e.place[n.dst], b: e.operand(n.src[0])}, here)
		e.emit(instr{op: opJump}, e.scopes[e.body])
		return nil
	}
	return e.plain(n, here)
}

func (e *emitter) plain(n *node, here *scope) error {
	i := instr{op: n.op}
	switch n.op {
	case opCall:
		i.a, i.b, i.c = e.to(n.dst), e.pool(n.src, e.slot(n)), uint16(n.number)
	case opBuiltin:
		i.a, i.b, i.c = e.to(n.dst), e.pool(n.src), uint16(n.number)
	case opDynamic:
		return e.dynamic(n, here)
	case opPath:
		i.a, i.b, i.c = e.to(n.dst), e.operand(n.src[0]), e.lookUp(n)
	case opScan:
		return e.apart(instr{op: opScan, a: e.to(n.also), b: e.to(n.dst), c: e.operand(n.src[0])}, n)
	case opScanBy:
		at := e.pool(n.src, e.pool(n.path, operand(len(n.path))))
		return e.apart(instr{op: opScanBy, a: e.to(n.also), b: e.to(n.dst), c: at}, n)
	case opWith:
		return e.with(n, here)
	default:
		fields := []*uint16{&i.a, &i.b, &i.c}
		if n.dst >= 0 {
			i.a = e.to(n.dst)
			fields = fields[1:]
		}
		for at, v := range n.src[:min(len(n.src), len(fields))] {
			*fields[at] = e.operand(v)
		}
	}
	e.emit(i, here)
	return nil
}

// apart writes what is nested as a run by itself.
func (e *emitter) apart(i instr, n *node) error {
	at := len(e.code)
	e.code = append(e.code, i)
	e.open(&scope{apart: true})
	if err := e.list(n.blocks[0]); err != nil {
		return err
	}
	e.close()
	e.code[at].fail = uint16(len(e.code))
	return nil
}

// with ends at a jump over another, which is taken if its block is undefined.
func (e *emitter) with(n *node, here *scope) error {
	at, path := len(e.code), e.pool(n.path, operand(len(n.path)))
	e.code = append(e.code, instr{op: opWith, a: e.to(n.dst), b: e.operand(n.src[1]), c: path})
	inner := &scope{apart: true}
	e.open(inner)
	if err := e.list(n.blocks[0]); err != nil {
		return err
	}
	e.code[at].fail = uint16(len(e.code))
	past := &scope{}
	e.emit(instr{op: opJump}, past)
	e.close()
	e.emit(instr{op: opJump}, here)
	e.open(past)
	e.close()
	return nil
}

// dynamic leaves three blocks more if the rule is there and has no value.
func (e *emitter) dynamic(n *node, here *scope) error {
	beyond, err := e.out(3)
	if err != nil {
		return err
	}
	at := e.pool(append(n.path, n.src...))
	e.emit(instr{op: opDynamic, a: e.to(n.dst), b: at, c: uint16(len(n.path))}, here)
	e.emit(instr{op: opJump}, beyond)
	return nil
}

// lookUp gives each path one place: its number, its length, and its parts.
func (e *emitter) lookUp(n *node) uint16 {
	key := fmt.Sprint(n.src, n.path)
	at, known := e.path[key]
	if !known {
		at = e.pool(n.path, operand(e.paths), operand(len(n.path)))
		e.path[key] = at
		e.paths++
	}
	return at
}

func (e *emitter) to(local int) operand {
	if local < 0 {
		return none
	}
	return e.place[local]
}

func (e *emitter) operand(v val) operand {
	if v.constant {
		return constant | operand(v.index)
	}
	return e.place[v.index]
}

// slot is where the run keeps what a function gave, by those of its arguments
// that are no constants: these are told by the slot.
func (e *emitter) slot(n *node) operand {
	if len(n.src) <= 2 || len(n.src) > 2+maxKeyed {
		return none
	}
	key := fmt.Sprint(n.number)
	for i, v := range n.src {
		if v.constant {
			key += fmt.Sprint(" ", i, ":", v.index)
		}
	}
	at, known := e.slots[key]
	if !known {
		at = operand(len(e.slots))
		e.slots[key] = at
	}
	return at
}

// pool puts operands where those of all calls are, with something before them;
// the same ones once.
func (e *emitter) pool(list []val, before ...operand) uint16 {
	all := before
	for _, v := range list {
		all = append(all, e.operand(v))
	}
	key := fmt.Sprint(all)
	at, known := e.pools[key]
	if !known {
		at = uint16(len(e.args))
		e.pools[key] = at
		e.args = append(e.args, all...)
	}
	return at
}
