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
	rows        [][]*page // about structs of Go's, by their kinds and numbers
	one         map[value.Value]value.Value
	more        map[[maxKeyed]value.Value]value.Value
	asked, told int // how often, and how often of them the answer was there
}

// A function that is hardly ever asked the same again is no longer remembered:
// tried is how often it may be asked first, seldom of how many askings one must
// be the same.
const (
	tried  = 4096
	seldom = 16
)

// useless: there is no sense in remembering.
func (a *answers) useless() bool { return a.asked >= tried && a.told*seldom < a.asked }

// page is answers about so many structs one after the other.
type page [32]found

// row is where the answer about a struct of Go's is kept, which needs no map.
func (a *answers) row(kind, number int) *found {
	a.rows = reach(a.rows, kind)
	at := number / len(page{})
	pages := reach(a.rows[kind], at)
	if pages[at] == nil {
		pages[at] = &page{}
	}
	a.rows[kind] = pages
	return &pages[at][number%len(page{})]
}

// reach makes a list long enough to have an index.
func reach[T any](list []T, index int) []T {
	for len(list) <= index {
		list = append(list, *new(T))
	}
	return list
}

func (a *answers) get(args []value.Value) (v value.Value, ok bool) {
	a.asked++
	if len(args) == 1 {
		v, ok = a.one[args[0]]
	} else {
		v, ok = a.more[keyOf(args)]
	}
	if ok {
		a.told++
	}
	return v, ok
}

func (a *answers) keep(args []value.Value, v value.Value) {
	switch {
	case a.useless():
		a.one, a.more = nil, nil
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
	return known{make([]found, len(p.funcs)), make([]found, p.paths), make([]answers, p.calls), map[groupKey]*groups{}}
}
