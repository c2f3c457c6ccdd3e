package compare

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestAssign(t *testing.T) {
	tests := map[string]struct {
		cost [][]float64
		want []int
	}{
		"none":                 {nil, nil},
		"one":                  {[][]float64{{3}}, []int{0}},
		"greedy would be dear": {[][]float64{{1, 2}, {1, 9}}, []int{1, 0}},
		"more columns":         {[][]float64{{9, 5, 1}, {9, 1, 1}}, []int{2, 1}},
		"by the book":          {[][]float64{{4, 1, 3}, {2, 0, 5}, {3, 2, 2}}, []int{1, 0, 2}},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			if got := assign(tc.cost); !slices.Equal(got, tc.want) {
				t.Errorf("got %v, want %v", got, tc.want)
			}
		})
	}
}

// TestAssignIsBest holds the result against every possible assignment.
func TestAssignIsBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows := rapid.IntRange(1, 5).Draw(t, "rows")
		columns := rows + rapid.IntRange(0, 2).Draw(t, "more columns")
		cost := make([][]float64, rows)
		for i := range cost {
			cost[i] = rapid.SliceOfN(rapid.Float64Range(0, 1), columns, columns).Draw(t, "costs")
		}
		got := assign(cost)
		sum, used := 0.0, map[int]bool{}
		for i, j := range got {
			if used[j] {
				t.Fatalf("column %d twice in %v", j, got)
			}
			used[j] = true
			sum += cost[i][j]
		}
		if best := cheapest(cost, 0, map[int]bool{}); math.Abs(sum-best) > 1e-9 {
			t.Fatalf("cost %v of %v, the best is %v", sum, got, best)
		}
	})
}

func cheapest(cost [][]float64, row int, used map[int]bool) float64 {
	if row == len(cost) {
		return 0
	}
	best := math.Inf(1)
	for j, c := range cost[row] {
		if used[j] {
			continue
		}
		used[j] = true
		best = min(best, c+cheapest(cost, row+1, used))
		used[j] = false
	}
	return best
}

func BenchmarkAssign(b *testing.B) {
	const n = 500
	cost := make([][]float64, n)
	for i := range cost {
		cost[i] = make([]float64, 2*n)
		for j := range cost[i] {
			cost[i][j] = math.Abs(math.Sin(float64(i*7919 + j*104729)))
		}
	}
	for b.Loop() {
		assign(cost)
	}
}
