package plan

import (
	"encoding/binary"
	"errors"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/internal/plan/value"
)

// format is told at the beginning of a kept program; a change of the
// instructions changes it.
const format = 2

var errDamaged = errors.New("the plan is damaged, or of another version of this program")

// Append writes the program behind what is there, for Read.
func (p *Program) Append(out []byte) []byte {
	w := value.Writer{Out: out}
	w.Number(format)
	w.Number(len(p.consts))
	for _, c := range p.consts {
		w.Value(c)
	}
	w.Number(len(p.builtins))
	for _, b := range p.builtins {
		w.Text(b.name)
	}
	w.Number(p.paths)
	w.Number(p.calls)
	w.Number(len(p.args))
	for _, a := range p.args {
		w.Number(int(a))
	}
	w.Number(len(p.funcs))
	for _, f := range p.funcs {
		w.Text(f.name)
		w.Number(int(f.params))
		w.Number(int(f.registers))
		w.Value(ast.Boolean(f.memo))
		w.Number(len(f.code))
		for _, i := range f.code {
			for _, n := range []uint16{uint16(i.op), i.a, i.b, i.c, i.fail} {
				w.Out = binary.LittleEndian.AppendUint16(w.Out, n)
			}
		}
	}
	return w.Out
}

// Read is the program that Append wrote.
func Read(text []byte) (*Program, error) {
	r := value.Reader{Rest: text}
	if r.Number() != format {
		return nil, errDamaged
	}
	p := &Program{rules: map[string]uint16{}}
	p.consts = make([]value.Value, r.Count())
	for i := range p.consts {
		p.consts[i] = value.Freeze(r.Value())
	}
	for range r.Count() {
		b, err := builtinOf(r.Text())
		if err != nil {
			return nil, err
		}
		p.builtins = append(p.builtins, b)
	}
	p.paths = r.Count()
	p.calls = r.Count()
	p.args = make([]operand, r.Count())
	for i := range p.args {
		p.args[i] = operand(r.Number())
	}
	p.funcs = make([]function, r.Count())
	for i := range p.funcs {
		p.funcs[i] = readFunction(&r)
		p.rules[p.funcs[i].name] = uint16(i)
	}
	if r.Damaged || len(r.Rest) > 0 {
		return nil, errDamaged
	}
	return p, nil
}

func readFunction(r *value.Reader) function {
	f := function{name: r.Text(), params: uint16(r.Number()), registers: uint16(r.Number())}
	f.memo = r.Value() == value.Value(ast.Boolean(true))
	f.code = make([]instr, r.Count())
	const size = 10
	if len(r.Rest) < size*len(f.code) {
		r.Damaged = true
		return f
	}
	word := binary.LittleEndian.Uint16
	for i := range f.code {
		at := r.Rest[size*i : size*i+size]
		f.code[i] = instr{opcode(word(at)), word(at[2:]), word(at[4:]), word(at[6:]), word(at[8:])}
	}
	r.Rest = r.Rest[size*len(f.code):]
	return f
}
