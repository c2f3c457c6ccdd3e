package plan

import (
	"slices"

	"abut/internal/plan/value"
)

// known keeps what rules and functions gave, nil if they were undefined.
type known struct {
	rules  []found
	paths  []found
	calls  []answers
	groups map[groupKey]*groups
}

type found struct {
	value value.Value
	done  bool
}

// maxKeyed is of how many arguments a call is kept.
const maxKeyed = 3

// answers are what a function gave by its arguments. Composite ones are told
// apart by where they are and not by what they say, which is quick and never
// wrong. Most functions have one argument.
type answers struct {
	one  map[value.Value]value.Value
	more map[[maxKeyed]value.Value]value.Value
}

func (a *answers) get(args []value.Value) (v value.Value, ok bool) {
	if len(args) == 1 {
		v, ok = a.one[args[0]]
		return v, ok
	}
	v, ok = a.more[keyOf(args)]
	return v, ok
}

func (a *answers) keep(args []value.Value, v value.Value) {
	switch {
	case len(args) != 1 && a.more == nil:
		a.more = map[[maxKeyed]value.Value]value.Value{keyOf(args): v}
	case len(args) != 1:
		a.more[keyOf(args)] = v
	case a.one == nil:
		a.one = map[value.Value]value.Value{args[0]: v}
	default:
		a.one[args[0]] = v
	}
}

func keyOf(args []value.Value) (key [maxKeyed]value.Value) {
	copy(key[:], args)
	return key
}

// keeps: the arguments are few enough, and none is composite.
func keeps(args []value.Value) bool {
	return len(args) <= maxKeyed && !slices.ContainsFunc(args, isComposite)
}

func newKnown(p *Program) known {
	return known{make([]found, len(p.funcs)), make([]found, p.paths), make([]answers, len(p.funcs)), map[groupKey]*groups{}}
}
