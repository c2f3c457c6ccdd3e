package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"abut/internal/compare"
	"abut/internal/engine"
	"abut/internal/output"

	"github.com/spf13/cobra"
)

// compareOptions are the flags of the compare command.
type compareOptions struct {
	Specified string
	Submitted string
	Matches   bool
	Report    checkOptions
}

func newCompare(s Streams) *cobra.Command {
	var o compareOptions
	cmd := &cobra.Command{
		Use:   "compare --specified A --submitted B",
		Short: "Hold a submitted schedule against the specified one: what got worse, and what the swaps break",
		Long: `Compare matches the lines of two workbooks, or of the workbooks of the same
name in two folders, and lists how each substitute is worse than what was
specified, what it breaks on its own and other lines, and which lines were left
out or added. Findings stand at the rows of the submitted workbook.

With -o log.xlsx or -o log.md it writes a review log, one row a substitution,
with a proposed action for the reviewer to confirm.`,
		Example: `  abut compare --specified spec.xlsx --submitted offer.xlsx
  abut compare --specified spec.xlsx --submitted offer.xlsx -o log.xlsx --matches`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return runCompare(c.Context(), o, s) },
	}
	f := cmd.Flags()
	f.StringVar(&o.Specified, "specified", "", "the specified workbook, or a folder of them")
	f.StringVar(&o.Submitted, "submitted", "", "the submitted workbook, or a folder of them")
	f.BoolVar(&o.Matches, "matches", false, "list on standard error which lines were matched, and how surely")
	f.StringVar(&o.Report.Format, "format", "text", "text, json, sarif, junit or markdown")
	f.StringArrayVarP(&o.Report.Outputs, "output", "o", nil, "also write a file: the review log (.xlsx .md) or a report (.html .json .sarif .xml .txt)")
	f.StringVar(&o.Report.FailAt, "fail-at", "", "mildest severity that fails: error or warning (default error)")
	f.StringVar(&o.Report.On, "on", "", onUsage)
	o.Report.add(cmd)
	cobra.CheckErr(cmd.MarkFlagRequired("specified"))
	cobra.CheckErr(cmd.MarkFlagRequired("submitted"))
	offer(cmd, "format", output.Formats()...)
	offer(cmd, "fail-at", "error", "warning")
	return cmd
}

// comparing is what one run of compare needs for each pair of files.
type comparing struct {
	project *project
	engine  *engine.Engine
	options compareOptions
	entries []compare.Entry
	run     output.Run
	waived  *waiving
	err     io.Writer
}

func runCompare(ctx context.Context, o compareOptions, s Streams) error {
	logs, reports := o.logs()
	o.Report.Outputs = reports
	if err := errors.Join(o.Report.valid(), o.Report.noCopy()); err != nil {
		return err
	}
	pairs, lone, err := compare.Files(o.Specified, o.Submitted)
	if err != nil {
		return err
	}
	w, err := newComparing(ctx, o, s)
	if err != nil {
		return err
	}
	inputs := w.project.inputs()
	for _, p := range pairs {
		inputs = append(inputs, p.Specified, p.Submitted)
	}
	if err := writable(slices.Concat(logs, reports), inputs); err != nil {
		return err
	}
	w.run.Problems = append(w.run.Problems, lonely(lone)...)
	for _, p := range pairs {
		w.run.Files = append(w.run.Files, p.Submitted)
		got, err := guarded(ctx, w.project.guard, func(ctx context.Context) (judged, error) { return w.pair(ctx, p) })
		if errors.Is(err, errStopped) || errors.As(err, &exhausted{}) {
			return ofFile(p.Submitted, err)
		}
		if err == nil {
			err = w.add(ctx, got)
		}
		if err != nil {
			w.run.Problems = append(w.run.Problems, output.Problem{File: p.Submitted, Message: err.Error()})
		}
	}
	if err := w.waived.rest(ctx, o.Report.draws()); err != nil {
		return err
	}
	for _, file := range logs {
		write := func(out io.Writer) error { return output.WriteLog(out, output.LogFormatOf(file), w.entries) }
		if err := writeFile(file, w.project.guard.filed(len(w.run.Files), write)); err != nil {
			return err
		}
	}
	return report(w.project.guard, w.run, o.Report, s)
}

// logs parts the outputs into review logs and reports.
func (o compareOptions) logs() (logs, reports []string) {
	for _, out := range o.Report.Outputs {
		if output.LogFormatOf(out) != "" {
			logs = append(logs, out)
			continue
		}
		reports = append(reports, out)
	}
	return logs, reports
}

func newComparing(ctx context.Context, o compareOptions, s Streams) (*comparing, error) {
	p, err := o.Report.open(ctx)
	if err != nil {
		return nil, err
	}
	eng, err := p.engine()
	if err != nil {
		return nil, err
	}
	run := output.Run{Version: version(), Rules: eng.Rules(), Changes: eng.Changes(), FailAt: first(o.Report.FailAt, p.set.FailAt, "error")}
	w := &comparing{project: p, engine: eng, options: o, run: run, err: s.Err}
	w.waived, err = newWaiving(p, eng, &w.run, o.Report.On, o.Report.Accept != "", func(topic string) bool { return topic == "substitution" })
	return w, err
}

// pair compares one specified workbook with the submitted one.
func (w *comparing) pair(ctx context.Context, p compare.FilePair) (judged, error) {
	specified, err := w.project.read(p.Specified)
	if err != nil {
		return judged{}, err
	}
	submitted, err := w.project.read(p.Submitted)
	if err != nil {
		return judged{}, err
	}
	specified.Comparison = nil // what it was compared with before is settled
	before, err := w.engine.Judge(ctx, specified)
	if err != nil {
		return judged{}, err
	}
	submitted.Comparison = w.project.compare.Documents(specified, submitted)
	after, err := w.engine.Judge(ctx, submitted)
	if err != nil {
		return judged{}, err
	}
	got := judged{doc: submitted, against: specified}
	got.findings = compare.Brought(submitted.Comparison, specified, submitted, before, after)
	if w.options.Report.draws() {
		got.drawn, err = drawn(ctx, submitted, w.engine)
	}
	return got, err
}

// add takes up what one pair gave.
func (w *comparing) add(ctx context.Context, got judged) error {
	if err := w.waived.file(ctx, got.doc, got.findings, got.against.File, got.against.Waivers); err != nil {
		return err
	}
	if err := w.waived.file(ctx, got.doc, nil, got.doc.File, refused(got.against, got.doc)); err != nil {
		return err
	}
	w.run.Reading = append(w.run.Reading, output.Reading{File: got.doc.File, Reading: got.doc.Reading})
	if got.drawn != nil {
		w.run.Drawn = append(w.run.Drawn, *got.drawn)
	}
	w.entries = append(w.entries, w.project.compare.Log(got.doc, got.findings)...)
	if w.options.Matches {
		return output.WriteMatches(w.err, got.doc)
	}
	return nil
}

func lonely(files []string) []output.Problem {
	var out []output.Problem
	for _, f := range files {
		message := fmt.Sprintf("%s has no workbook of the same name in the other folder, so it was not compared", f)
		out = append(out, output.Problem{File: f, Message: strings.TrimSpace(message)})
	}
	return out
}
