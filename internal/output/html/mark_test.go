package html

import "testing"

// Marks at one place are set apart, at whatever height: the sum of a height and the room
// between two may be rounded down, and is far enough all the same.
func TestMarksStandApart(t *testing.T) {
	for y := 0.0; y < 400; y += 0.137 {
		m := &marker{s: &section{}}
		for range 4 {
			m.number(found{}, point{100, y})
		}
		for i, p := range m.used[1:] {
			if gap := p.y - m.used[i].y; gap < 26.9 || gap > 27.1 {
				t.Fatalf("%v and %v", m.used[i], p)
			}
		}
	}
}
