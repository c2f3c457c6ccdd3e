package compare

import "math"

// assign gives each row of a cost matrix a column so that the sum of costs is
// least; no column is given twice. There must be at least as many columns as
// rows. Shortest augmenting paths with potentials, O(rows² · columns): R. Jonker
// and A. Volgenant, Computing 38 (1987) 325-340, without their initial steps.
func assign(cost [][]float64) []int {
	if len(cost) == 0 {
		return nil
	}
	n := len(cost[0])
	a := assignment{cost: cost, row: make([]float64, len(cost)), column: make([]float64, n), owner: make([]int, n)}
	for j := range a.owner {
		a.owner[j] = -1
	}
	for i := range cost {
		a.augment(i)
	}
	columns := make([]int, len(cost))
	for j, i := range a.owner {
		if i >= 0 {
			columns[i] = j
		}
	}
	return columns
}

// assignment is the partial solution: potentials of rows and columns, and the
// row that owns each column, -1 for none.
type assignment struct {
	cost        [][]float64
	row, column []float64
	owner       []int
}

// augment brings in one more row along the cheapest path of reassignments.
func (a *assignment) augment(start int) {
	n := len(a.column)
	least, from, done := make([]float64, n), make([]int, n), make([]bool, n)
	for j := range least {
		least[j], from[j] = math.Inf(1), -1
	}
	row, last, path := start, -1, []int{}
	for {
		next, step := -1, math.Inf(1)
		for j := range n {
			if done[j] {
				continue
			}
			if d := a.cost[row][j] - a.row[row] - a.column[j]; d < least[j] {
				least[j], from[j] = d, last
			}
			if least[j] < step {
				next, step = j, least[j]
			}
		}
		a.shift(start, path, least, done, step)
		done[next], last = true, next
		path = append(path, next)
		if row = a.owner[next]; row < 0 {
			break
		}
	}
	for last >= 0 {
		before := from[last]
		if before < 0 {
			a.owner[last] = start
		} else {
			a.owner[last] = a.owner[before]
		}
		last = before
	}
}

// shift moves the potentials by a step, so that the cheapest edge out of the
// tree costs nothing.
func (a *assignment) shift(start int, path []int, least []float64, done []bool, step float64) {
	a.row[start] += step
	for _, j := range path {
		a.row[a.owner[j]] += step
		a.column[j] -= step
	}
	for j := range least {
		if !done[j] {
			least[j] -= step
		}
	}
}
