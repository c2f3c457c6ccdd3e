package cli

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/workbook"
	"abut/policies"

	"github.com/spf13/cobra"
)

// checkOptions are the flags of the check command.
type checkOptions struct {
	Paths    []string
	Format   string
	Outputs  []string
	FailAt   string
	Place    string
	Policies []string
}

func newCheck(s Streams) *cobra.Command {
	var o checkOptions
	cmd := &cobra.Command{
		Use:   "check PATH...",
		Short: "Read workbooks or folders and list the findings by line",
		Long: `Check reads every workbook named, and every workbook in the folders named, and
lists what a reviewer would stop at, by sheet and row.

It ends with 0 if nothing is at or above the chosen severity, 1 if something is,
and 2 if a file could not be read; the findings of the others are still listed.`,
		Example: `  abut check schedule.xlsx
  abut check --format markdown project/ -o report.sarif`,
		Args: cobra.MinimumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			o.Paths = args
			return runCheck(c.Context(), o, s)
		},
	}
	f := cmd.Flags()
	f.StringVar(&o.Format, "format", "text", "text, json, sarif, junit or markdown")
	f.StringArrayVarP(&o.Outputs, "output", "o", nil, "also write a file, its format by its ending (.json .sarif .xml .md .txt); may be repeated")
	f.StringVar(&o.FailAt, "fail-at", "error", "mildest severity that fails: error or warning")
	f.StringVar(&o.Place, "place", "", "where the project is, if the workbook does not say or says it wrongly")
	f.StringArrayVar(&o.Policies, "policies", nil, "folder with an office's own rules and data; may be repeated")
	return cmd
}

func runCheck(ctx context.Context, o checkOptions, s Streams) error {
	if o.FailAt != "error" && o.FailAt != "warning" {
		return fmt.Errorf("--fail-at %s: use error or warning", o.FailAt)
	}
	for _, out := range o.Outputs {
		if output.FormatOf(out) == "" {
			return fmt.Errorf("-o %s: the ending tells no format; use .json, .sarif, .xml, .md or .txt", out)
		}
	}
	files, err := workbook.Find(o.Paths)
	if err != nil {
		return err
	}
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		return err
	}
	eng, err := engine.Load(engine.Options{Folders: o.Policies})
	if err != nil {
		return err
	}
	run := output.Run{Version: version(), Files: files, Rules: eng.Rules(), FailAt: o.FailAt}
	bar := newProgress(len(files), s.Err)
	for _, file := range files {
		checkFile(ctx, file, o, builder, eng, &run)
		bar.step()
	}
	bar.done()
	return report(run, o, s)
}

// checkFile judges one workbook; what fails is kept as a problem, so that the
// findings of the others are still told.
func checkFile(ctx context.Context, file string, o checkOptions, b *document.Builder, eng *engine.Engine, run *output.Run) {
	doc, err := readFile(file, o.Place, b)
	if err == nil {
		var findings []engine.Finding
		findings, err = eng.Judge(ctx, doc)
		run.Findings = append(run.Findings, findings...)
		run.Reading = append(run.Reading, output.Reading{File: doc.File, Reading: doc.Reading})
	}
	if err != nil {
		run.Problems = append(run.Problems, output.Problem{File: file, Message: err.Error()})
	}
}

func readFile(file, place string, b *document.Builder) (*document.Document, error) {
	book, err := workbook.Open(file, workbook.DefaultLimits())
	if err != nil {
		return nil, err
	}
	return b.Build(book, document.Settings{Place: place})
}

// report writes the run to every output and turns it into the exit code.
func report(run output.Run, o checkOptions, s Streams) error {
	for _, out := range o.Outputs {
		if err := writeFile(out, func(w io.Writer) error { return output.Write(w, output.FormatOf(out), run) }); err != nil {
			return err
		}
	}
	if err := output.Write(s.Out, o.Format, run); err != nil {
		return err
	}
	for _, p := range run.Problems {
		fmt.Fprintln(s.Err, "abut:", p.Message)
	}
	switch {
	case len(run.Problems) > 0:
		return errReported
	case run.Fails():
		return errFindings
	}
	return nil
}

// writeFile writes a file whole or not at all: beside the target first, then
// in its place.
func writeFile(path string, write func(io.Writer) error) error {
	tmp, err := os.CreateTemp(filepath.Dir(path), ".abut-*")
	if err != nil {
		return fmt.Errorf("write %s: %w", path, err)
	}
	defer os.Remove(tmp.Name()) // gone already where the rename worked
	if err := write(tmp); err != nil {
		tmp.Close()
		return err
	}
	if err := tmp.Close(); err != nil {
		return fmt.Errorf("write %s: %w", path, err)
	}
	if err := os.Chmod(tmp.Name(), 0o644); err != nil {
		return fmt.Errorf("write %s: %w", path, err)
	}
	if err := os.Rename(tmp.Name(), path); err != nil {
		return fmt.Errorf("write %s: %w", path, err)
	}
	return nil
}
