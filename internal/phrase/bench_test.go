package phrase

import (
	"fmt"
	"strings"
	"testing"
)

func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		if _, err := New(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkRead(b *testing.B) {
	r := reader(b)
	for b.Loop() {
		r.Read("Back leg on the face of the sheet; bar and bead on its top edge, 6 in. strip laps down over bar. Primed 3/9/2026.", nil, Options{})
	}
}

func BenchmarkQuantities(b *testing.B) {
	r := reader(b)
	for b.Loop() {
		r.Quantities("40 mil (1.0 mm)", "length:mil")
	}
}

func BenchmarkDates(b *testing.B) {
	r := reader(b)
	for b.Loop() {
		r.Dates("Sept 21, 2026", MonthFirst, 2026)
	}
}

// BenchmarkAwkward reads long texts of awkward repeats; the time for ten times
// the text shows whether it grows as the text or as its square.
func BenchmarkAwkward(b *testing.B) {
	r := reader(b)
	for _, unit := range awkward {
		for _, n := range []int{500, 5000} {
			b.Run(fmt.Sprintf("%q/%d", unit, n), func(b *testing.B) {
				text := strings.Repeat(unit, n)
				for b.Loop() {
					readAll(r, text)
				}
			})
		}
	}
}

// awkward are units whose repeats have made readers look back over and over.
var awkward = []string{
	"1-", "40 mil (1.0 mm) ", "10 to ", "wk of ", "mid ", "no more than ", "4/", "3/9/2026, ", "(", "not ", "a, ", "min. 40 F max. ",
	"heat .. ", "w/ ", "R-01/02", "laps over and ", "\n", "7 5/8 x ", "poured 3/9/2026 ",
}

func readAll(r *Reader, text string) ([]Clause, int) {
	figures := r.Quantities(text, "length:mm")
	dates := r.Dates(text, MonthFirst, 2026)
	return r.Read(text, testLexicon(), Options{}), len(figures) + len(dates)
}

// TestAwkward: repeats are read to the end, every clause within the text.
func TestAwkward(t *testing.T) {
	r := reader(t)
	for _, unit := range awkward {
		text := strings.Repeat(unit, 500)
		clauses, _ := readAll(r, text)
		for _, c := range clauses {
			if c.Start < 0 || c.End > len(text) || c.Start > c.End {
				t.Fatalf("%q: clause from %d to %d of %d", unit, c.Start, c.End, len(text))
			}
		}
	}
}
