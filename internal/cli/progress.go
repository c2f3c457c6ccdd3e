package cli

import (
	"io"
	"os"

	"github.com/mattn/go-isatty"
	"github.com/schollz/progressbar/v3"
)

// progress shows how far a run of several files has come, to a person only.
type progress struct{ bar *progressbar.ProgressBar }

// newProgress makes a bar where out is a terminal and there is something to
// wait for.
func newProgress(n int, out io.Writer) progress {
	f, ok := out.(*os.File)
	if !ok || n < 2 || !isatty.IsTerminal(f.Fd()) {
		return progress{}
	}
	return progress{progressbar.NewOptions(n, progressbar.OptionSetWriter(out), progressbar.OptionSetDescription("reading"),
		progressbar.OptionClearOnFinish(), progressbar.OptionShowCount())}
}

func (p progress) step() {
	if p.bar != nil {
		_ = p.bar.Add(1) // a bar that cannot be drawn is no reason to stop
	}
}

func (p progress) done() {
	if p.bar != nil {
		_ = p.bar.Finish()
	}
}
