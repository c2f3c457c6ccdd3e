package phrase

import "testing"

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
