package plan

import "abut/internal/plan/value"

// group marks a scan that keeps only the elements in which something equals a
// value from without: `some other in rows; other.key == key`. Such scans stand
// in each other and would take the square of the rows, so what they look for
// is indexed.
func group(n *node) {
	at := n.dst
	body := n.blocks[0]
	var path []val
	for i, step := range body {
		if step.kind != plain {
			return
		}
		switch {
		case step.op == opDot && step.src[0] == (val{index: at}) && step.src[1].constant:
			path, at = append(path, step.src[1]), step.dst
		case step.op == opEqual && i > 0:
			for j, side := range step.src {
				if side == (val{index: at}) && outer(n, step.src[1-j]) {
					n.op, n.path, n.src = opScanBy, path, append(n.src, step.src[1-j])
				}
			}
			return
		default:
			return
		}
	}
}

// outer: a value is not made within the scan.
func outer(scan *node, v val) bool {
	return v.constant || uses([]*node{scan}, v.index).written == 0
}

// groups tell the places of a list's elements by the hash of what is at a path
// in each.
type groups struct {
	places map[uint64][]int
}

type groupKey struct {
	list value.Value
	path operand
}

// scanBy is a scan of those elements that can be equal; the check comes again
// within.
func (r *Run) scanBy(frame []value.Value, code []instr, at int, in *instr) int {
	args := r.program.operands(in.c, 3) // where the path stands, the list, and what is looked for
	list := r.get(frame, args[1])
	keys, values := pairs(list)
	if len(values) <= fewRows {
		return r.each(frame, code, at, in, keys, values, nil)
	}
	key := groupKey{list, args[0]}
	g := r.known.groups[key]
	switch {
	case g == nil:
		r.known.groups[key] = &groups{}
		return r.each(frame, code, at, in, keys, values, nil)
	case g.places == nil:
		g.places = r.index(values, r.program.operands(args[0]+1, r.program.args[args[0]]))
	}
	places := g.places[value.Hash(r.get(frame, args[2]))]
	if places == nil {
		return int(in.fail)
	}
	return r.each(frame, code, at, in, keys, values, places)
}

// fewRows are looked through.
const fewRows = 8

func (r *Run) index(values []value.Value, path []operand) map[uint64][]int {
	places := map[uint64][]int{}
	for i, v := range values {
		for _, o := range path {
			if v = value.Get(v, r.program.consts[o&^constant]); v == nil {
				break
			}
		}
		if v != nil {
			h := value.Hash(v)
			places[h] = append(places[h], i)
		}
	}
	return places
}
