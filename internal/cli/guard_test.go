package cli

import (
	"context"
	"errors"
	"io"
	"runtime"
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

// TestGuardedWriting: who reads slowly is waited for; a file that takes too long and
// what fills the memory are not.
func TestGuardedWriting(t *testing.T) {
	slow := func(w io.Writer) error {
		time.Sleep(30 * time.Millisecond)
		_, err := io.WriteString(w, "all of it")
		return err
	}
	var out strings.Builder
	if err := (guard{time.Millisecond, 1 << 62}).whole(slow)(&out); err != nil || out.String() != "all of it" {
		t.Errorf("%v: %q", err, out.String())
	}
	if err := (guard{time.Millisecond, 1 << 62}).filed(1, slow)(io.Discard); err == nil || !strings.Contains(err.Error(), "it takes more than 0 seconds") {
		t.Errorf("got %v, want that a file has its time", err)
	}
	out.Reset()
	if err := (guard{10 * time.Millisecond, 1 << 62}).filed(500, slow)(&out); err != nil || out.String() != "all of it" {
		t.Errorf("%v: %q, want the time of all workbooks", err, out.String())
	}
	filling := func(io.Writer) error {
		var held [][]byte
		for range 2 * spare >> 20 {
			held = append(held, make([]byte, 1<<20))
		}
		defer runtime.KeepAlive(held)
		select {}
	}
	if err := (guard{time.Hour, 1}).whole(filling)(io.Discard); !errors.As(err, &exhausted{}) {
		t.Errorf("got %v, want that the memory is used up", err)
	}
	endless := func(io.Writer) error { select {} }
	stopped, stop := context.WithCancel(context.Background())
	stop()
	if err := (guard{time.Hour, 1 << 62}).write(stopped, io.Discard, endless); !errors.Is(err, errStopped) {
		t.Errorf("got %v, want that it was stopped", err)
	}
}

func TestOfFile(t *testing.T) {
	for _, tc := range []struct {
		err  error
		want string
	}{
		{exhausted{1}, "a.csv: it needs more than 1 MB of memory"},
		{errors.New("a.csv: row 3 is broken"), "a.csv: row 3 is broken"},
		{errStopped, errStopped.Error()},
	} {
		if got := ofFile("a.csv", tc.err); !strings.HasPrefix(got.Error(), tc.want) {
			t.Errorf("got %v, want %q", got, tc.want)
		}
	}
	if err := ofFile("a.csv", nil); err != nil {
		t.Error(err)
	}
}
