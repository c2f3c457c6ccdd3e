package engine

import "testing"

// BenchmarkLoad is what every start of the program pays.
func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		if _, err := Load(Options{}); err != nil {
			b.Fatal(err)
		}
	}
}
