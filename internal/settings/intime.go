package settings

import (
	"context"
	"fmt"
	"time"

	"abut/internal/aside"
)

// longest is the time that the reading of one file may take: a few kilobytes of
// brackets would keep the library busy for hours.
const longest = 10 * time.Second

// inTime leaves work to itself when the time ends, since nothing stops it.
func inTime[T any](most time.Duration, work func() (T, error)) (T, error) {
	ctx, stop := context.WithTimeoutCause(context.Background(), most,
		fmt.Errorf("it takes more than %s to read; write it plainer, without brackets in brackets", most))
	defer stop()
	return aside.Do(ctx, work, func(p any) error { return fmt.Errorf("it cannot be read (%v)", p) })
}
