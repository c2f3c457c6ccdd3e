package schedule

import (
	"math"
	"strings"
	"testing"
	"time"
)

// TestWholeDays: no figure of a cell, however large, turns into a count that no
// building has.
func TestWholeDays(t *testing.T) {
	figure := func(x float64) *float64 { return &x }
	for _, tt := range []struct {
		f    *float64
		want int
		ok   bool
	}{
		{nil, 0, false}, {figure(-5), 0, false}, {figure(0), 0, true}, {figure(14.9), 14, true},
		{figure(1e26), mostDays, true}, {figure(math.MaxFloat64), mostDays, true},
	} {
		if n, ok := wholeDays(tt.f); n != tt.want || ok != tt.ok {
			t.Errorf("%v: %d, %v", tt.f, n, ok)
		}
	}
}

// TestManyFiguresInOneCell: the words that name a figure are looked for near it,
// and not in all of a cell for each of its figures.
func TestManyFiguresInOneCell(t *testing.T) {
	one := &wordFigures{Lines: []wordFigure{{Key: "k", Kind: "length", Words: `kettle at #`}}}
	if err := one.compile(); err != nil {
		t.Fatal(err)
	}
	text := strings.Repeat("3' ", 10_000) + "kettle at 195 " + strings.Repeat("3' ", 10_000)
	at := strings.Index(text, "195")
	if w := &one.Lines[0]; !w.names(text, at, at+3) || w.names(text, 0, 2) {
		t.Error("the words beside a figure do not name it, or name another")
	}
	start := time.Now()
	for i := range 10_000 {
		one.Lines[0].names(text, 3*i, 3*i+2)
	}
	if took := time.Since(start); took > 20*time.Second {
		t.Errorf("10,000 figures of one cell took %v", took)
	}
}
