// Command abut checks building-material schedules.
package main

import (
	"context"
	"os"
	"os/signal"
	"runtime/debug"
	"syscall"

	"abut/internal/cli"
)

// garbagePercent lets a short run collect less often; a check lives for a
// fraction of a second.
const garbagePercent = 400

func main() {
	debug.SetGCPercent(garbagePercent)
	ends := []os.Signal{os.Interrupt, syscall.SIGTERM}
	if !signal.Ignored(syscall.SIGHUP) { // as a run that is to outlive its terminal has it
		ends = append(ends, syscall.SIGHUP)
	}
	ctx, stop := signal.NotifyContext(context.Background(), ends...)
	code := cli.Main(ctx, os.Args[1:], cli.Streams{In: os.Stdin, Out: os.Stdout, Err: os.Stderr})
	stop()
	os.Exit(code)
}
