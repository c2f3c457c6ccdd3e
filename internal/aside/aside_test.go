package aside_test

import (
	"context"
	"errors"
	"fmt"
	"testing"
	"time"

	"abut/internal/aside"
)

func TestDo(t *testing.T) {
	late, failed := errors.New("too late"), errors.New("failed")
	for want, work := range map[string]func() (int, error){
		"too late":     func() (int, error) { time.Sleep(time.Hour); return 1, nil },
		"failed":       func() (int, error) { return 0, failed },
		"stumbled: no": func() (int, error) { panic("no") },
	} {
		ctx, stop := context.WithTimeoutCause(context.Background(), 50*time.Millisecond, late)
		_, err := aside.Do(ctx, work, func(p any) error { return fmt.Errorf("stumbled: %v", p) })
		stop()
		if err == nil || err.Error() != want {
			t.Errorf("%v, want %s", err, want)
		}
	}
	if n, err := aside.Do(context.Background(), func() (int, error) { return 7, nil }, nil); n != 7 || err != nil {
		t.Error(n, err)
	}
}
