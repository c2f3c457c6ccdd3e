package schedule

import (
	"strconv"
	"testing"
)

func TestMemoryAsksOnceAndStaysSmall(t *testing.T) {
	m, asked := memory[string, int]{}, 0
	work := func() int { asked++; return asked }
	if a, b := m.of("x", work), m.of("x", work); a != 1 || b != 1 || asked != 1 {
		t.Errorf("answers %d and %d, asked %d times", a, b, asked)
	}
	for i := range mostRemembered + 10 {
		m.of(strconv.Itoa(i), work)
	}
	if len(m) > mostRemembered {
		t.Errorf("%d texts are kept", len(m))
	}
}
