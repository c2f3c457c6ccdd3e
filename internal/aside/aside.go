// Package aside does work that nothing stops from outside, so that whoever asked
// for it need not wait to its end.
package aside

import "context"

// Result is what a piece of work came to.
type Result[T any] struct {
	Value T
	Err   error
}

// Start does work beside that of the caller. A panic in it ends in the error that
// stumbled makes of it, and not the program.
func Start[T any](work func() (T, error), stumbled func(any) error) <-chan Result[T] {
	done := make(chan Result[T], 1)
	go func() {
		var r Result[T]
		defer func() {
			if p := recover(); p != nil {
				r.Err = stumbled(p)
			}
			done <- r
		}()
		r.Value, r.Err = work()
	}()
	return done
}

// Do waits for work until the context ends: then the error is its cause, and the
// work is left to itself.
func Do[T any](ctx context.Context, work func() (T, error), stumbled func(any) error) (T, error) {
	select {
	case r := <-Start(work, stumbled):
		return r.Value, r.Err
	case <-ctx.Done():
		var none T
		return none, context.Cause(ctx)
	}
}
