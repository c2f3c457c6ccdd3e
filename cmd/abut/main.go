// Command abut checks building-material schedules.
package main

import (
	"context"
	"os"
	"os/signal"
	"runtime"
	"runtime/debug"
	"syscall"

	"abut/internal/cli"
)

// Memory is first collected when 48 MB are in use, later than by itself, since a short
// run throws little away before, but not much later: memory that is used again costs less
// than memory that the system must clear. From then on it is collected whenever what is
// left has grown to three times that.
const (
	firstPercent = 1200 // of the 4 MB that Go takes for the least
	laterPercent = 200
)

func collectLate() {
	debug.SetGCPercent(firstPercent)
	runtime.AddCleanup(new([16]byte), func(percent int) { debug.SetGCPercent(percent) }, laterPercent)
}

func main() {
	collectLate()
	ends := []os.Signal{os.Interrupt, syscall.SIGTERM}
	if !signal.Ignored(syscall.SIGHUP) { // as a run that is to outlive its terminal has it
		ends = append(ends, syscall.SIGHUP)
	}
	ctx, stop := signal.NotifyContext(context.Background(), ends...)
	code := cli.Main(ctx, os.Args[1:], cli.Streams{In: os.Stdin, Out: os.Stdout, Err: os.Stderr})
	stop()
	os.Exit(code)
}
