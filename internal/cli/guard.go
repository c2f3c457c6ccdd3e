package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"math"
	"runtime/debug"
	"runtime/metrics"
	"time"

	"abut/internal/aside"
)

// What a run may take where the settings say nothing: see `limits` in
// schema/settings.schema.json.
const (
	defaultSeconds   = 120
	defaultMemoryMB  = 850
	defaultMaterials = 250 // of one row: each is held against each
)

// errStopped ends a run that was interrupted; nothing is written.
var errStopped = errors.New("stopped before the end; nothing was written")

// guard bounds the time of each workbook and the memory of the process. Limits
// on what a file holds come first and say more; this is for what none of them
// foresees.
type guard struct {
	time   time.Duration
	memory uint64
}

// newGuard also has the collector spare memory from early on, so that a run
// does not end for what it could have given back.
func newGuard(limits map[string]int) guard {
	g := guard{defaultSeconds * time.Second, defaultMemoryMB << 20}
	if n, ok := limits["seconds"]; ok {
		g.time = time.Duration(n) * time.Second
	}
	if n, ok := limits["memory_mb"]; ok {
		g.memory = uint64(n) << 20
	}
	debug.SetMemoryLimit(int64(g.memory / 4 * 3))
	return g
}

// exhausted says that the memory is used up: the run must end, since what was
// asked for cannot be stopped in its tracks.
type exhausted struct{ megabytes uint64 }

func (e exhausted) Error() string {
	return fmt.Sprintf("it needs more than %d MB of memory, so it is given up; split the workbook, or raise limits: memory_mb in the settings", e.megabytes)
}

// guarded does one piece of work under the limits. When one is exceeded the
// work is left to itself, with its context ended.
func guarded[T any](ctx context.Context, g guard, work func(context.Context) (T, error)) (T, error) {
	ctx, cancel := context.WithCancelCause(ctx)
	defer cancel(nil)
	done := aside.Start(func() (T, error) { return work(ctx) }, func(p any) error {
		return fmt.Errorf("it cannot be checked: the program stumbled over it (%v); please report it with the file", p)
	})
	var none T
	late := time.After(g.time)
	look := time.NewTicker(10 * time.Millisecond)
	defer look.Stop()
	for {
		select {
		case r := <-done:
			return r.Value, r.Err
		case <-ctx.Done():
			return none, errStopped
		case <-late:
			return none, fmt.Errorf("it takes more than %.0f seconds, so it is given up; split the workbook, or raise limits: seconds in the settings", g.time.Seconds())
		case <-look.C:
			if memoryInUse() > g.memory {
				return none, exhausted{g.memory >> 20}
			}
		}
	}
}

// spare is what the writing of a report may take where the work before it has
// used up the memory: that this was so must be told.
const spare = 100 << 20

// write prints what was worked out under the limit of memory; for time there is
// none, since whoever reads it may take his.
func (g guard) write(ctx context.Context, w io.Writer, write func(io.Writer) error) error {
	g.time, g.memory = math.MaxInt64, max(g.memory, memoryInUse()+spare)
	_, err := guarded(ctx, g, func(context.Context) (struct{}, error) { return struct{}{}, write(w) })
	return err
}

// filed is the writing of a report on some workbooks to a file: nobody reads it
// meanwhile, so it has the time that the workbooks have.
func (g guard) filed(workbooks int, write func(io.Writer) error) func(io.Writer) error {
	g.memory, g.time = max(g.memory, memoryInUse()+spare), g.time*time.Duration(max(1, workbooks))
	return func(w io.Writer) error {
		_, err := guarded(context.Background(), g, func(context.Context) (struct{}, error) { return struct{}{}, write(w) })
		return err
	}
}

// whole is a writer under the guard that no signal stops, so that nothing is
// written by half.
func (g guard) whole(write func(io.Writer) error) func(io.Writer) error {
	return func(w io.Writer) error { return g.write(context.Background(), w, write) }
}

// memoryInUse is what the process holds of the system's memory.
func memoryInUse() uint64 {
	sample := []metrics.Sample{{Name: "/memory/classes/total:bytes"}, {Name: "/memory/classes/heap/released:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64() - sample[1].Value.Uint64()
}
