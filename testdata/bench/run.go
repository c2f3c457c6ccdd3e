package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"runtime"
	"slices"
	"strings"
	"syscall"
	"time"
)

// command is a program and its arguments.
type command []string

// took is what one run of a program took.
type took struct {
	seconds float64
	cpu     float64 // seconds of all processors
	peakMB  float64
}

// pair is one run of each of two programs, one right after the other.
type pair struct{ a, b took }

// pairs runs two commands in turn, once unmeasured and then as often as asked.
func (b *bench) pairs(first, second command) ([]pair, error) {
	var pairs []pair
	for i := range b.runs + 1 {
		one, err := first.run()
		if err != nil {
			return nil, err
		}
		two, err := second.run()
		if err != nil {
			return nil, err
		}
		if i > 0 {
			pairs = append(pairs, pair{one, two})
		}
	}
	return pairs, nil
}

// run takes exit code 1 for a run that found something.
func (c command) run() (took, error) {
	cmd := exec.Command(c[0], c[1:]...)
	var told strings.Builder
	cmd.Stderr = &told
	start := time.Now()
	err := cmd.Run()
	seconds := time.Since(start).Seconds()
	var exit *exec.ExitError
	if errors.As(err, &exit) && exit.ExitCode() == 1 {
		err = nil
	}
	if err != nil {
		return took{}, fmt.Errorf("%s: %w: %s", strings.Join(c, " "), err, told.String())
	}
	usage := cmd.ProcessState.SysUsage().(*syscall.Rusage)
	cpu := cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()
	return took{seconds, cpu.Seconds(), float64(usage.Maxrss) / 1024}, nil // Linux counts in KB
}

// row prints the time that passed and that of the processors: on a machine with
// other work to do the second is the steadier.
func row(what string, pairs []pair, wanted string) {
	printRow(what, pairs, func(t took) float64 { return t.seconds }, "%.3f s", wanted)
	printRow(what+", CPU", pairs, func(t took) float64 { return t.cpu }, "%.3f s", "")
}

func memoryRow(what string, pairs []pair, wanted string) {
	printRow(what, pairs, func(t took) float64 { return t.peakMB }, "%.0f MB", wanted)
}

// printRow prints medians; the ratio is the median of the pairs' ratios, which
// holds when the machine's speed drifts.
func printRow(what string, pairs []pair, of func(took) float64, unit, wanted string) {
	fmt.Printf("| %s | "+unit+" | "+unit+" | %.2f | %s |\n", what,
		median(pairs, func(p pair) float64 { return of(p.a) }),
		median(pairs, func(p pair) float64 { return of(p.b) }),
		median(pairs, func(p pair) float64 { return of(p.a) / of(p.b) }), wanted)
}

func median(pairs []pair, of func(pair) float64) float64 {
	values := make([]float64, len(pairs))
	for i, p := range pairs {
		values[i] = of(p)
	}
	slices.Sort(values)
	return values[len(values)/2]
}

// slope is that of the straight line through points, by least squares.
func slope(x, y []float64) float64 {
	var sx, sy, sxx, sxy float64
	for i := range x {
		sx, sy, sxx, sxy = sx+x[i], sy+y[i], sxx+x[i]*x[i], sxy+x[i]*y[i]
	}
	n := float64(len(x))
	return (n*sxy - sx*sy) / (n*sxx - sx*sx)
}

// machine names the processor, where the system tells it.
func machine() string {
	text, err := os.ReadFile("/proc/cpuinfo")
	if err == nil {
		for line := range strings.Lines(string(text)) {
			if name, value, ok := strings.Cut(line, ":"); ok && strings.TrimSpace(name) == "model name" {
				return strings.TrimSpace(value) + ", " + runtime.GOOS
			}
		}
	}
	return runtime.GOARCH + ", " + runtime.GOOS
}
