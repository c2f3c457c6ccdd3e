package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"abut/internal/output"
	"abut/internal/output/html"
	"abut/internal/workbook"

	"github.com/spf13/cobra"
)

// checkOptions are the flags of the check command.
type checkOptions struct {
	Paths   []string
	Format  string
	Outputs []string
	FailAt  string
	On      string
	Accept  string
	projectFlags
}

func newCheck(s Streams) *cobra.Command {
	var o checkOptions
	cmd := &cobra.Command{
		Use:   "check PATH...",
		Short: "Read workbooks or folders and list the findings by line",
		Long: `Check reads every workbook named, and every workbook in the folders named, and
lists what a reviewer would stop at, by sheet and row.

It ends with 0 if nothing is at or above the chosen severity, 1 if something is,
and 2 if a file could not be read; the findings of the others are still listed.

With -o marked.xlsx it writes a marked copy of the one workbook named: the cells
at fault are filled and commented, and a sheet lists the findings. The workbook
itself is never changed.`,
		Example: `  abut check schedule.xlsx
  abut check schedule.xlsx -o marked.xlsx
  abut check --format markdown project/ -o report.sarif`,
		Args: needs(0, "the name of a workbook or folder"),
		RunE: func(c *cobra.Command, args []string) error {
			o.Paths = args
			return runCheck(c.Context(), o, s)
		},
	}
	f := cmd.Flags()
	f.StringVar(&o.Format, "format", "text", "text, json, sarif, junit or markdown")
	f.StringArrayVarP(&o.Outputs, "output", "o", nil, "also write a file, its format by its ending (.xlsx for a marked copy, .html .json .sarif .xml .md .txt); may be repeated")
	f.StringVar(&o.FailAt, "fail-at", "", "mildest severity that fails: error or warning (default error)")
	f.StringVar(&o.On, "on", "", onUsage)
	f.StringVar(&o.Accept, "accept-as-is", "", "write waivers of all errors and warnings found to a new file (.yaml), for the settings to name")
	o.add(cmd)
	offer(cmd, "format", output.Formats()...)
	offer(cmd, "fail-at", "error", "warning")
	return cmd
}

func runCheck(ctx context.Context, o checkOptions, s Streams) error {
	if err := o.valid(); err != nil {
		return err
	}
	files, unread := workbook.Find(o.Paths)
	if err := o.copies(files); err != nil {
		return err
	}
	p, err := o.openFor(ctx, true)
	if err != nil {
		return err
	}
	if err := writable(o.Outputs, slices.Concat(files, p.inputs())); err != nil {
		return err
	}
	results := p.judgeAll(ctx, files, o.draws())
	eng, err := p.engine()
	if err != nil {
		return err
	}
	run := output.Run{Version: version(), Files: files, Rules: eng.Rules(), Changes: eng.Changes(), FailAt: first(o.FailAt, p.set.FailAt, "error")}
	waived, err := newWaiving(p, eng, &run, o.On, o.Accept != "", func(topic string) bool { return topic != "substitution" })
	if err != nil {
		return err
	}
	bar := newProgress(len(files), s.Err)
	for i, result := range results {
		err := addJudged(ctx, <-result, &run, waived)
		if errors.Is(err, errStopped) {
			return err
		}
		if errors.As(err, &exhausted{}) {
			run.Problems = append(run.Problems, unchecked(files[i], files[i+1:])...)
			break
		}
		bar.step()
	}
	bar.done()
	addUnread(&run, unread)
	if err := waived.rest(ctx, o.draws()); err != nil {
		return err
	}
	if o.Accept != "" {
		if err := waived.accept(o.Accept, p, s); err != nil {
			return err
		}
	}
	return report(p.guard, run, o, s)
}

// addUnread adds what workbook.Find could not reach, each as a problem of its
// own path.
func addUnread(run *output.Run, err error) {
	list := []error{err}
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		list = joined.Unwrap()
	}
	for _, e := range list {
		var fe *workbook.FileError
		if errors.As(e, &fe) {
			run.Files = append(run.Files, fe.Path)
			run.Problems = append(run.Problems, output.Problem{File: fe.Path, Message: fe.Error()})
		}
	}
}

func (o checkOptions) valid() error {
	if o.FailAt != "" && o.FailAt != "error" && o.FailAt != "warning" {
		return fmt.Errorf("--fail-at %s: use error or warning", o.FailAt)
	}
	if !slices.Contains(output.Formats(), o.Format) {
		return fmt.Errorf("--format %s: use %s", o.Format, strings.Join(output.Formats(), ", "))
	}
	for _, out := range o.Outputs {
		if output.FormatOf(out) == "" {
			return fmt.Errorf("-o %s: the ending tells no format; use .xlsx, .html, .json, .sarif, .xml, .md or .txt", out)
		}
	}
	return nil
}

// first gives the first of several texts that says something.
func first(texts ...string) string {
	for _, t := range texts {
		if t != "" {
			return t
		}
	}
	return ""
}

// addJudged adds what was found in one workbook; what fails is kept as a
// problem, so that the findings of the others are still told, and given back.
func addJudged(ctx context.Context, j judged, run *output.Run, waived *waiving) error {
	err := j.err
	if j.doc != nil {
		err = errors.Join(err, waived.file(ctx, j.doc, j.findings, j.doc.File, j.doc.Waivers))
		run.Reading = append(run.Reading, output.Reading{File: j.doc.File, Reading: j.doc.Reading})
	}
	if j.drawn != nil {
		run.Drawn = append(run.Drawn, *j.drawn)
	}
	if err != nil {
		run.Problems = append(run.Problems, output.Problem{File: j.file, Message: err.Error()})
	}
	return err
}

// unchecked are the workbooks that a run did not come to, since it ended at one.
func unchecked(at string, rest []string) []output.Problem {
	var out []output.Problem
	for _, file := range rest {
		out = append(out, output.Problem{File: file, Message: "it is not checked, since the run ended at " + at})
	}
	return out
}

// draws says whether an output needs more than the findings.
func (o checkOptions) draws() bool {
	return slices.ContainsFunc(o.Outputs, func(out string) bool { return output.FormatOf(out) == "html" })
}

// report writes the run to every output and turns it into the exit code.
func report(g guard, run output.Run, o checkOptions, s Streams) error {
	var failed []error // a file that cannot be written keeps nothing from being told
	tried := func(err error) {
		if err != nil {
			failed = append(failed, err)
		}
	}
	for _, out := range o.Outputs {
		write := func(w io.Writer) error { return output.Write(w, output.FormatOf(out), run) }
		if output.FormatOf(out) == "html" {
			write = func(w io.Writer) error { return html.Write(w, run) }
		}
		if isMarked(out) {
			tried(writeMarked(out, g, run))
			continue
		}
		tried(writeFile(out, g.filed(len(run.Files), write)))
	}
	write := g.whole(func(w io.Writer) error { return output.Write(w, o.Format, run) })
	if err := write(s.Out); err != nil {
		return err
	}
	for _, p := range run.Problems {
		say(s, p.Line()+o.uncopied(run))
	}
	for _, err := range failed {
		say(s, err.Error())
	}
	switch {
	case len(run.Problems)+len(failed) > 0:
		return errReported
	case run.Fails():
		return errFindings
	}
	return nil
}
