package cli

import (
	"context"
	"errors"
	"strings"
	"testing"
	"time"
)

// forever does what no reader of cells may: it goes on until it is told to stop.
func forever(ctx context.Context) (int, error) {
	<-ctx.Done()
	return 0, context.Cause(ctx)
}

func TestGuarded(t *testing.T) {
	stopped, stop := context.WithCancel(context.Background())
	stop()
	wide := guard{time.Hour, 1 << 62}
	for name, tc := range map[string]struct {
		ctx   context.Context
		guard guard
		work  func(context.Context) (int, error)
		want  string
	}{
		"time":   {context.Background(), guard{time.Millisecond, 1 << 62}, forever, "it takes more than 0 seconds"},
		"memory": {context.Background(), guard{time.Hour, 1}, forever, "it needs more than 0 MB of memory"},
		"signal": {stopped, wide, func(context.Context) (int, error) { select {} }, errStopped.Error()},
		"panic":  {context.Background(), wide, func(context.Context) (int, error) { panic("index out of range") }, "the program stumbled over it (index out of range)"},
		"error":  {context.Background(), wide, func(context.Context) (int, error) { return 0, errors.New("as it is") }, "as it is"},
	} {
		t.Run(name, func(t *testing.T) {
			if _, err := guarded(tc.ctx, tc.guard, tc.work); err == nil || !strings.HasPrefix(err.Error(), tc.want) && !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v, want %q", err, tc.want)
			}
		})
	}
	if n, err := guarded(context.Background(), wide, func(context.Context) (int, error) { return 7, nil }); n != 7 || err != nil {
		t.Errorf("%d, %v", n, err)
	}
}
