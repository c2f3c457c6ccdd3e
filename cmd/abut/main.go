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
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	code := cli.Main(ctx, os.Args[1:], cli.Streams{In: os.Stdin, Out: os.Stdout, Err: os.Stderr})
	stop()
	os.Exit(code)
}
