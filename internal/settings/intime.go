package settings

import (
	"fmt"
	"time"
)

// longest is the time that the reading of one file may take: a few kilobytes of
// brackets would keep the library busy for hours.
const longest = 10 * time.Second

// inTime leaves work to itself when the time ends, since nothing stops it.
func inTime[T any](most time.Duration, work func() (T, error)) (T, error) {
	type result struct {
		value T
		err   error
	}
	done := make(chan result, 1)
	go func() {
		var r result
		defer func() {
			if p := recover(); p != nil {
				r.err = fmt.Errorf("it cannot be read (%v)", p)
			}
			done <- r
		}()
		r.value, r.err = work()
	}()
	select {
	case r := <-done:
		return r.value, r.err
	case <-time.After(most):
		var none T
		return none, fmt.Errorf("it takes more than %s to read; write it plainer, without brackets in brackets", most)
	}
}
