// Package plan runs rules that were compiled beforehand. OPA compiles a policy
// into a plan, a list of simple statements; Compile makes of it a Program that
// can be kept in a file and read back in no time, and Run judges by it with
// OPA's own values and built-in functions.
package plan

import (
	"maps"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"

	"abut/internal/plan/value"
)

// Program is a compiled policy; it may be run by several goroutines.
type Program struct {
	consts   []value.Value
	builtins []builtin
	funcs    []function
	args     []operand // of all calls, and the paths of all look-ups
	paths    int       // how many paths into input and data are looked up
	calls    int       // in how many slots is kept what functions gave
	rules    map[string]uint16
	reads    [][]value.Value // paths in data, known when it was compiled
	patterns patterns
}

// Prune leaves of data what the rules read, down to its second level. The
// program is one that was just compiled.
func (p *Program) Prune(data map[string]any) map[string]any {
	out := map[string]any{}
	for _, path := range p.reads {
		if len(path) == 0 {
			return data
		}
		name := text(path[0])
		folder, ok := data[name].(map[string]any)
		if !ok {
			continue
		}
		kept, ok := out[name].(map[string]any)
		if !ok {
			kept = map[string]any{}
			out[name] = kept
		}
		if len(path) == 1 {
			maps.Copy(kept, folder)
		} else if v, ok := folder[text(path[1])]; ok {
			kept[text(path[1])] = v
		}
	}
	return out
}

// operands are so many of those of all calls.
func (p *Program) operands(at, count uint16) []operand {
	return p.args[at : int(at)+int(count)]
}

func text(v value.Value) string {
	s, _ := v.(ast.String)
	return string(s)
}

type builtin struct {
	name     string
	arity    int
	relation bool // gives any number of values
	native   native
	search   search
	call     topdown.BuiltinFunc
}

// function is a rule, or a function of the policy. Its parameters are the first
// of its registers, input and data before all, and the next one is its result.
type function struct {
	name      string // its path: contact/epdm/findings
	params    uint16
	registers uint16
	memo      bool // worth keeping for the same arguments
	code      []instr
}

// instr is one instruction. Where it is undefined, the run goes on at fail;
// all targets lie ahead.
type instr struct {
	op            opcode
	a, b, c, fail uint16
}

// operand is a register, or with its highest bit a constant.
type operand = uint16

const (
	constant operand = 1 << 15
	none     operand = constant - 1 // a register that nobody reads
)

type opcode uint16

const (
	opJump       opcode = iota // to fail
	opCall                     // a = function c with the arguments after b, where its slot stands
	opBuiltin                  // a = built-in function c with the arguments from b on
	opDynamic                  // a = the rule at the path of c parts from b on; next if undefined, fail if there is none
	opDot                      // a = b[c]
	opPath                     // a = b, input or data, at the path that stands at c
	opLen                      // a = length of b
	opScan                     // for each key a and value b in c: all up to fail
	opScanBy                   // the same, for those in which something is equal: see group
	opMove                     // a = b
	opOnce                     // a = b, which a must be if it is anything
	opReset                    // a is undefined
	opArray                    // a = []
	opObject                   // a = {}
	opSet                      // a = set()
	opEqual                    // a == b
	opUnequal                  // a != b
	opIsArray                  // a is an array
	opIsObject                 // a is an object
	opIsSet                    // a is a set
	opDefined                  // a is defined
	opUndefined                // a is not
	opAppend                   // a gets b as its last
	opInsert                   // a[b] = c
	opInsertOnce               // a[b] = c, which it must be if it is anything
	opAdd                      // the set a gets b
	opMerge                    // a = b and c in one object
	opWith                     // with b at the path c of a: all up to fail
)
