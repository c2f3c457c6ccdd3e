package compare

import (
	"cmp"
	"math"
	"slices"
)

// match is a pair of lines by their numbers on either side.
type match struct {
	was, now    int
	score, next float64
	sure, split bool
}

// match pairs the lines so that the sum of likeness is greatest, then lets
// lines that are left over join the match they are most like.
func (c *Comparer) match(was, now *side) []match {
	s := newScorer(was, now, c.set)
	scores := s.all()
	var out []match
	for i, j := range assignBest(scores, c.set.Least) {
		if j >= 0 {
			out = append(out, match{was: i, now: j, score: scores[i][j]})
		}
	}
	out = append(out, c.leftOver(s, scores, out)...)
	joined := map[[2]int]bool{}
	for _, m := range out {
		joined[[2]int{m.was, m.now}] = true
	}
	for k := range out {
		c.rate(&out[k], joined, s, scores)
	}
	slices.SortFunc(out, func(a, b match) int { return cmp.Or(cmp.Compare(a.now, b.now), cmp.Compare(a.was, b.was)) })
	return out
}

// assignBest gives each row the column of the best assignment, -1 for none.
// The matrix has a column of its own for each row, which stands for none.
func assignBest(scores [][]float64, least float64) []int {
	if len(scores) == 0 {
		return nil
	}
	n := len(scores[0])
	cost := make([][]float64, len(scores))
	for i, row := range scores {
		cost[i] = make([]float64, n+len(scores))
		for j, score := range row {
			// The order of the rows settles what is alike in all else.
			cost[i][j] = 1 - score + 1e-9*math.Abs(float64(i-j))
		}
		for k := range scores {
			cost[i][n+k] = 1 - least
		}
	}
	columns := assign(cost)
	for i, j := range columns {
		if j >= n || scores[i][j] < least {
			columns[i] = -1
		}
	}
	return columns
}

// leftOver joins lines without a partner to one that has one already: a row
// that was split in two, or two rows that became one.
func (c *Comparer) leftOver(s *scorer, scores [][]float64, matches []match) []match {
	byRow, byColumn := map[int]bool{}, map[int]bool{}
	for _, m := range matches {
		byRow[m.was], byColumn[m.now] = true, true
	}
	var out []match
	join := func(i, j int) {
		if scores[i][j] >= c.set.Split && s.parts(s.was.features[i], s.now.features[j]) {
			out = append(out, match{was: i, now: j, score: scores[i][j], split: true})
		}
	}
	for j := range s.now.lines {
		best := bestOf(len(scores), func(i int) float64 { return scores[i][j] })
		if !byColumn[j] && best >= 0 && byRow[best] {
			join(best, j)
		}
	}
	for i := range scores {
		best := bestOf(len(scores[i]), func(j int) float64 { return scores[i][j] })
		if !byRow[i] && best >= 0 && byColumn[best] {
			join(i, best)
		}
	}
	return out
}

func bestOf(n int, score func(int) float64) int {
	best := -1
	for k := range n {
		if best < 0 || score(k) > score(best) {
			best = k
		}
	}
	return best
}

// rate finds the best other candidate of either line that is of another
// content and no part of the same match, and says whether the match is sure.
func (c *Comparer) rate(m *match, joined map[[2]int]bool, s *scorer, scores [][]float64) {
	for i := range scores {
		if !joined[[2]int{i, m.now}] && s.was.features[i].content != s.was.features[m.was].content {
			m.next = max(m.next, scores[i][m.now])
		}
	}
	for j := range scores[m.was] {
		if !joined[[2]int{m.was, j}] && s.now.features[j].content != s.now.features[m.now].content {
			m.next = max(m.next, scores[m.was][j])
		}
	}
	m.sure = m.score >= c.set.Sure && m.score-m.next >= c.set.Margin
}
