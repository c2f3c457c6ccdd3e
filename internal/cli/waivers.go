package cli

import (
	"context"
	"fmt"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/schedule"
	"abut/internal/settings"
	"abut/internal/waiver"
)

const onUsage = "day on which waivers are judged, as 2027-01-31 (default today)"

// waiving holds the findings of a run against its waivers.
type waiving struct {
	set *waiver.Set
	eng *engine.Engine
	run *output.Run
}

// newWaiving reads the waivers of the settings. About says of which topics
// the run judges all there is; keep that accept will be asked for.
func newWaiving(p *project, eng *engine.Engine, run *output.Run, on string, keep bool, about func(string) bool) (*waiving, error) {
	day := time.Now()
	if on != "" {
		var err error
		if day, err = time.Parse(time.DateOnly, on); err != nil {
			return nil, fmt.Errorf("--on %s: write the day as 2027-01-31", on)
		}
	}
	list, err := p.set.Accepted()
	if err != nil {
		return nil, err
	}
	set := waiver.New(waiver.Options{On: day, Rules: eng.Rules(), Keep: keep, About: about})
	for _, w := range list {
		set.Add(nearby(w.File), []schedule.Waiver{asRead(w)})
	}
	return &waiving{set: set, eng: eng, run: run}, nil
}

func asRead(w settings.Waiver) schedule.Waiver {
	out := schedule.Waiver{At: schedule.At{Row: w.Line}, Texts: w.Texts, Where: map[string]schedule.At{}}
	for key, line := range w.Lines {
		out.Where[key] = schedule.At{Row: line}
	}
	return out
}

// nearby names a file from the working folder where it lies in or above it, so
// that a report does not depend on the machine.
func nearby(file string) string {
	dir, err := os.Getwd()
	if err != nil {
		return file
	}
	rel, err := filepath.Rel(dir, file)
	if err != nil {
		return file
	}
	return rel
}

// file holds the findings on a workbook against the waivers, adds what is to
// be told of those written in the file named, and gives all in the order of
// the sheets.
func (w *waiving) file(ctx context.Context, doc *document.Document, findings []engine.Finding, from string, own []schedule.Waiver) error {
	told, err := w.judge(ctx, w.set.Apply(doc, findings, from, own))
	if err != nil {
		return err
	}
	if from != doc.File {
		w.add(findings)
		w.add(told)
		return nil
	}
	findings = append(findings, told...)
	order := map[string]int{}
	for i, s := range doc.Reading.Sheets {
		order[s.Name] = i
	}
	slices.SortStableFunc(findings, func(a, b engine.Finding) int { return order[a.Sheet] - order[b.Sheet] })
	w.add(findings)
	return nil
}

// rest tells of the waivers of the settings, once every workbook was judged. A
// report with pictures has a part for them too.
func (w *waiving) rest(ctx context.Context, draws bool) error {
	for _, doc := range w.set.Rest() {
		told, err := w.judge(ctx, doc)
		if err != nil {
			return err
		}
		w.add(told)
		if draws && len(told) > 0 {
			w.run.Drawn = append(w.run.Drawn, output.Drawn{Document: doc})
		}
	}
	return nil
}

func (w *waiving) judge(ctx context.Context, doc *document.Document) ([]engine.Finding, error) {
	if doc == nil {
		return nil, nil
	}
	found, err := w.eng.Judge(ctx, doc)
	if err != nil {
		return nil, err
	}
	return waiver.Of(found), nil
}

// add also lists the file of a finding, so that no report leaves it out.
func (w *waiving) add(findings []engine.Finding) {
	for _, f := range findings {
		if !slices.Contains(w.run.Files, f.File) {
			w.run.Files = append(w.run.Files, f.File)
		}
	}
	w.run.Findings = append(w.run.Findings, findings...)
}

// refused are the waivers that a submitted workbook holds and the specified
// one does not: nobody accepts what he offers himself.
func refused(specified, submitted *document.Document) []schedule.Waiver {
	var out []schedule.Waiver
	for _, w := range submitted.Waivers {
		if slices.ContainsFunc(specified.Waivers, func(s schedule.Waiver) bool { return maps.Equal(s.Texts, w.Texts) }) {
			continue
		}
		w.Problem = "it stands in the submitted workbook alone; a substitution is accepted in the specified workbook or in " + settings.Name
		out = append(out, w)
	}
	return out
}

// accept writes waivers of all that was found to a new file.
func (w *waiving) accept(file string, p *project, s Streams) error {
	if _, err := os.Stat(file); err == nil {
		return fmt.Errorf("--accept-as-is %s: the file is there already; name a new one, or remove it if its waivers are no longer wanted", file)
	}
	if ext := strings.ToLower(filepath.Ext(file)); ext != ".yaml" && ext != ".yml" {
		return fmt.Errorf("--accept-as-is %s: the ending must be .yaml", file)
	}
	n := 0
	err := writeFile(file, func(out io.Writer) (err error) {
		n, err = w.set.Write(out, p.tree)
		return err
	})
	if err != nil {
		return err
	}
	fmt.Fprintf(s.Err, "abut: findings accepted as they stand in %[2]s: %[1]d; name it under waivers in %[3]s, so that only new ones count\n", n, file, settings.Name)
	return nil
}
