package settings

import (
	"strings"
	"testing"
	"time"
)

// TestInTime: what takes too long, or is stumbled over, is one line.
func TestInTime(t *testing.T) {
	for want, tc := range map[string]struct {
		most time.Duration
		work func() (int, error)
	}{
		"it takes more than 1ms to read": {time.Millisecond, func() (int, error) { time.Sleep(time.Hour); return 1, nil }},
		"it cannot be read (odd)":        {time.Minute, func() (int, error) { panic("odd") }},
	} {
		if _, err := inTime(tc.most, tc.work); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, want %s", err, want)
		}
	}
	if n, err := inTime(time.Minute, func() (int, error) { return 7, nil }); n != 7 || err != nil {
		t.Error(n, err)
	}
}

// TestBrackets: a file that would keep the library busy for hours.
func TestBrackets(t *testing.T) {
	if testing.Short() {
		t.Skip("it takes ten seconds")
	}
	path := write(t, "place: "+strings.Repeat("[", 200_000)+strings.Repeat("]", 200_000)+"\n")
	if _, err := Load(path); err == nil || !strings.Contains(err.Error(), path+": it takes more than 10s to read") {
		t.Error(err)
	}
}
