package schedule

import (
	"fmt"
	"reflect"
	"runtime"

	"abut/internal/aside"
	"abut/internal/material"
)

// share is what came of some rows of a table that were read beside those above.
type share struct {
	lines   []Line
	start   standing // what the rows above were taken to leave to it
	end     standing // what it leaves to the rows below
	pointed bool     // a row points at another by its mark, which may stand above
}

const (
	leastRows  = 100 // of a share: fewer are read before another processor has started
	rowsBefore = 20  // a share that are read too, for what they leave to it
	headBefore = 200 // rows before a share, in which what stands over it is looked for
)

// inShares reads the rows of a table in shares, one on each processor. What the rows above
// leave to a share is taken from the few right before it; where that turns out to be less
// than all, the share is read again, so that the lines are those of rows read in turn.
func (r *reader) inShares(t *table, orders map[string]dayOrder) {
	rows := t.last - t.first + 1
	count := max(1, min(runtime.GOMAXPROCS(0), rows/leastRows))
	size := (rows + count - 1) / count
	end := func(from int) int { return min(from+size-1, t.last) }
	var beside []<-chan aside.Result[share]
	if count > 1 {
		r.settled(t)
	}
	for from := t.first + size; from <= t.last; from += size {
		other := r.beside()
		beside = append(beside, aside.Start(
			func() (share, error) { return other.share(t, orders, from, end(from)), nil },
			func(p any) error { return fmt.Errorf("rows from %d on: %v", from, p) }, // which happens again when they are read in turn
		))
	}
	r.rows(t, orders, t.first, end(t.first))
	for i, one := range beside {
		from := t.first + (i+1)*size
		if got := <-one; got.Err != nil || !r.add(got.Value) {
			r.rows(t, orders, from, end(from))
		}
	}
}

// settled works out what is worked out when it is first needed, before several need it.
func (r *reader) settled(t *table) {
	t.ownCells(t.first)
	r.lex.index.in("", r.lex.names)
	r.lex.ends.in("", r.lex.shorts)
}

// beside is a reader of the same workbook that reads on another processor.
func (r *reader) beside() *reader {
	other, lex, sched := *r, *r.lex, *r.sched
	lex.seen = map[string][]material.Material{}
	sched.Lines = nil
	other.lex, other.sched = &lex, &sched
	other.remembered, other.phrase, other.head = remember(), newPhrases(r.phrase.Reader), r.head.remembering()
	other.marked, other.room = map[string][]int{}, nil
	return &other
}

// share reads a share, and before it the rows that may leave it something.
func (r *reader) share(t *table, orders map[string]dayOrder, from, to int) share {
	r.rows(t, orders, r.rowBefore(t, from), from-1)
	b := share{start: r.standing}
	r.sched.Lines, r.marked, r.pointed = nil, map[string][]int{}, false
	r.rows(t, orders, from, to)
	b.lines, b.end, b.pointed = r.sched.Lines, r.standing, r.pointed
	return b
}

// rowBefore is that of the next text over a share, or else the first of a few before it.
func (r *reader) rowBefore(t *table, from int) int {
	divides := func(row int) bool { return row >= t.first && t.ownCells(row) == 1 && r.isDivider(t, row) }
	for row := from - 1; row >= max(t.first, from-headBefore); row-- {
		if divides(row) {
			for divides(row - 1) {
				row--
			}
			return row
		}
	}
	return max(t.first, from-rowsBefore)
}

// add takes a share over, if the rows above leave to it what it was read with.
func (r *reader) add(b share) bool {
	if b.pointed || !reflect.DeepEqual(r.standing, b.start) {
		return false
	}
	for _, l := range b.lines {
		r.addLine(l)
	}
	r.standing = b.end
	return true
}
