package workbook

import (
	"math/rand/v2"
	"testing"
)

// TestRangesThatOverlap holds the search against comparing each with each.
func TestRangesThatOverlap(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 2))
	found := 0
	for range 3000 {
		ranges := make([]Range, rnd.IntN(9))
		for i := range ranges {
			top, left := rnd.IntN(20)+1, rnd.IntN(20)+1
			ranges[i] = Range{top, left, top + rnd.IntN(5), left + rnd.IntN(5)}
		}
		want := false
		for i, a := range ranges {
			for _, b := range ranges[:i] {
				want = want || a != b && share(a, b)
			}
		}
		a, b, got := overlapping(ranges)
		if got != want || got && (a == b || !share(a, b)) {
			t.Fatalf("%v: %v and %v, %v, want %v", ranges, a, b, got, want)
		}
		if got {
			found++
		}
	}
	if found == 0 || found == 3000 {
		t.Errorf("%d of 3000 overlap", found)
	}
}

func share(a, b Range) bool {
	return a.Top <= b.Bottom && b.Top <= a.Bottom && a.Left <= b.Right && b.Left <= a.Right
}

// TestSameRangeTwice: a range that is listed twice hides nothing.
func TestSameRangeTwice(t *testing.T) {
	merges := `<mergeCells><mergeCell ref="A1:A2"/><mergeCell ref="B1:B2"/><mergeCell ref="A1:A2"/></mergeCells>`
	book, err := Read("a.xlsx", rawBook(inRow(`<c r="A1"><v>1</v></c>`)+merges).zip(t), DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if c, ok := book.Sheets[0].At(1, 1); !ok || c.Value != "1" {
		t.Errorf("%+v", c)
	}
}
