package plan

import "abut/internal/plan/value"

// known keeps what rules and functions gave, nil if they were undefined.
type known struct {
	rules  []found
	paths  []found
	calls  map[call]value.Value
	groups map[groupKey]*groups
}

type found struct {
	value value.Value
	done  bool
}

// maxKeyed is of how many arguments a call is kept.
const maxKeyed = 3

// call is a function with its arguments. Composite ones are told apart by
// where they are and not by what they say, which is quick and never wrong.
type call struct {
	function int
	args     [maxKeyed]value.Value
}

func newKnown(p *Program) known {
	return known{make([]found, len(p.funcs)), make([]found, p.paths), map[call]value.Value{}, map[groupKey]*groups{}}
}
