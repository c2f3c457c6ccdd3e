// Command bench times abut beside a bare reader of workbooks and beside the
// stock OPA command, in pairs of runs that take turns, and prints the medians
// as a table. The workbooks are generated.
//
//	go run ./testdata/bench [-runs 5] [-lines 1000,2000,4000] [-books 500]
package main

import (
	"flag"
	"fmt"
	"log"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
)

const (
	startLines = 300 // of the workbook that a start is timed with
	bookLines  = 60  // of each workbook in a folder
)

func main() {
	log.SetFlags(0)
	runs := flag.Int("runs", 5, "runs of each pair")
	sizes := flag.String("lines", "1000,2000,4000", "lines of the long workbooks; 10,000 take some 4 GB")
	books := flag.Int("books", 500, "workbooks in the folder")
	flag.Parse()
	folder, err := os.MkdirTemp("", "abut-bench-")
	if err != nil {
		log.Fatal(err)
	}
	b := &bench{folder: folder, runs: *runs}
	err = b.all(*sizes, *books)
	if rm := os.RemoveAll(folder); err == nil {
		err = rm
	}
	if err != nil {
		log.Fatal(err)
	}
}

// bench holds where the programs and workbooks are.
type bench struct {
	folder string
	runs   int
}

func (b *bench) path(name string) string { return filepath.Join(b.folder, name) }

func (b *bench) all(sizes string, books int) error {
	if err := b.build(); err != nil {
		return err
	}
	fmt.Printf("%s, %d processors used, %s\n\n", machine(), runtime.GOMAXPROCS(0), runtime.Version())
	fmt.Println("| what | abut | beside it | ratio | wanted |")
	fmt.Println("|---|---|---|---|---|")
	if err := b.start(); err != nil {
		return err
	}
	if err := b.long(strings.Split(sizes, ",")); err != nil {
		return err
	}
	return b.many(books)
}

// build makes abut, the bare reader and the stock OPA command of the version
// that abut is linked with.
func (b *bench) build() error {
	version, err := exec.Command("go", "list", "-m", "-f", "{{.Version}}", "github.com/open-policy-agent/opa").Output()
	if err != nil {
		return fmt.Errorf("version of OPA: %w", err)
	}
	opa := exec.Command("go", "install", "github.com/open-policy-agent/opa@"+strings.TrimSpace(string(version)))
	opa.Env = append(os.Environ(), "GOBIN="+b.folder)
	for _, build := range []*exec.Cmd{
		exec.Command("go", "build", "-o", b.path("abut"), "./cmd/abut"),
		exec.Command("go", "build", "-o", b.path("bare"), "./testdata/bench/bare"),
		exec.Command("go", "build", "-o", b.path("book"), "./testdata/bench/book"),
		opa,
		exec.Command(b.path("abut"), "bundle", b.path("bundle.tar.gz")),
	} {
		if out, err := build.CombinedOutput(); err != nil {
			return fmt.Errorf("%s: %w\n%s", build, err, out)
		}
	}
	return nil
}

// write makes a workbook with a schedule of so many lines.
func (b *bench) write(file string, lines int) error {
	if out, err := exec.Command(b.path("book"), file, strconv.Itoa(lines)).CombinedOutput(); err != nil {
		return fmt.Errorf("write %s: %w\n%s", file, err, out)
	}
	return nil
}

// start times a cold start on a short schedule, and the stock OPA command on
// what abut reads of it.
func (b *bench) start() error {
	book, doc := b.path("start.xlsx"), b.path("start.json")
	if err := b.write(book, startLines); err != nil {
		return err
	}
	text, err := exec.Command(b.path("abut"), "read", book).Output()
	if err != nil {
		return fmt.Errorf("abut read: %w", err)
	}
	if err := os.WriteFile(doc, text, 0o644); err != nil {
		return err
	}
	check := command{b.path("abut"), "check", book}
	what := fmt.Sprintf("%d lines, cold", startLines)
	pairs, err := b.pairs(check, command{b.path("bare"), book})
	if err != nil {
		return err
	}
	row(what+", bare reader", pairs, "at most 3")
	pairs, err = b.pairs(check, command{b.path("opa"), "eval", "--bundle", b.path("bundle.tar.gz"), "--input", doc, "data.answer.findings"})
	if err != nil {
		return err
	}
	row(what+", stock `opa eval`", pairs, "at most 0.05")
	return nil
}

// long times schedules of growing length and fits how the work grows.
func (b *bench) long(sizes []string) error {
	var x, y []float64
	for _, size := range sizes {
		lines, err := strconv.Atoi(size)
		if err != nil {
			return fmt.Errorf("-lines: %w", err)
		}
		book := b.path("long-" + size + ".xlsx")
		if err := b.write(book, lines); err != nil {
			return err
		}
		pairs, err := b.pairs(command{b.path("abut"), "check", book}, command{b.path("bare"), book})
		if err != nil {
			return err
		}
		row(size+" lines of 20 columns, bare reader", pairs, "at most 1.5 at 100,000")
		memoryRow(size+" lines, peak memory", pairs, "at most 1.5 at 100,000")
		x, y = append(x, math.Log(float64(lines))), append(y, math.Log(median(pairs, func(p pair) float64 { return p.a.cpu })))
	}
	if len(x) > 1 {
		fmt.Printf("| growth over %s lines, exponent of CPU | | | %.2f | at most 1.05 |\n", strings.Join(sizes, ", "), slope(x, y))
	}
	return nil
}

// many times a folder of small workbooks on two processors and on one.
func (b *bench) many(books int) error {
	folder := b.path("books")
	if err := os.Mkdir(folder, 0o755); err != nil {
		return err
	}
	for i := range books {
		if err := b.write(filepath.Join(folder, fmt.Sprintf("book-%03d.xlsx", i)), bookLines); err != nil {
			return err
		}
	}
	check := []string{b.path("abut"), "check", folder}
	pairs, err := b.pairs(append(command{"env", "GOMAXPROCS=1"}, check...), append(command{"env", "GOMAXPROCS=2"}, check...))
	if err != nil {
		return err
	}
	row(fmt.Sprintf("%d workbooks of %d lines, one processor; beside it two", books, bookLines), pairs, "at least 1.8")
	return nil
}
