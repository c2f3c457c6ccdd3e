package cli

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"
	"time"

	"abut/internal/climate"
	"abut/internal/compare"
	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/settings"
	"abut/internal/workbook"
	"abut/policies"

	"github.com/spf13/cobra"
)

// projectFlags are the flags that every command shares which reads a schedule;
// a flag beats the settings file.
type projectFlags struct {
	Settings string
	Place    string
	Policies []string
}

func (p *projectFlags) add(cmd *cobra.Command) {
	p.addPolicies(cmd)
	cmd.Flags().StringVar(&p.Place, "place", "", "where the project is, if the workbook does not say or says it wrongly")
}

// addPolicies adds the flags of a command that needs the rules alone.
func (p *projectFlags) addPolicies(cmd *cobra.Command) {
	f := cmd.Flags()
	f.StringVar(&p.Settings, "settings", "", "settings file (default: the nearest abut.yaml, from the working folder upward)")
	f.StringArrayVar(&p.Policies, "policies", nil, "folder with an office's own rules and data; may be repeated")
}

// project is what a run goes by: the settings, the policy tree with the
// office's data in it, and the reader of workbooks.
type project struct {
	set     settings.Settings
	tree    fs.FS
	builder *document.Builder
	compare *compare.Comparer
	reading document.Settings
	folders []string
	limits  workbook.Limits
	guard   guard
	// engine loads the rules with the office's own, once.
	engine func() (*engine.Engine, error)
}

// open reads the settings and loads the vocabularies.
func (p projectFlags) open(ctx context.Context) (*project, error) { return p.openFor(ctx, false) }

// openFor also begins to load the rules, if the run will judge: they take as
// long as all the rest.
func (p projectFlags) openFor(ctx context.Context, judging bool) (*project, error) {
	set, err := p.settings()
	if err != nil {
		return nil, err
	}
	out := &project{
		set: set, folders: slices.Concat(set.Policies, p.Policies),
		limits: workbook.DefaultLimits().With(set.Limits), guard: newGuard(set.Limits),
	}
	out.engine = sync.OnceValues(func() (*engine.Engine, error) {
		return engine.Load(engine.Options{
			Folders: out.folders, Replace: set.Replace, Off: set.Off, Severity: set.Severity,
			Timeout: out.guard.time, RuleSteps: set.Limits["rule_steps"],
			RuleTime: time.Duration(set.Limits["rule_seconds"]) * time.Second,
		})
	})
	if judging {
		go out.engine()
	}
	return out, out.load(ctx, p)
}

// load reads the vocabularies and what the settings name.
func (p *project) load(ctx context.Context, flags projectFlags) (err error) {
	set := p.set
	if p.tree, err = engine.Overlay(policies.FS, p.folders); err != nil {
		return err
	}
	if p.builder, err = document.NewBuilder(p.tree); err != nil {
		return err
	}
	if p.compare, err = compare.New(p.tree); err != nil {
		return err
	}
	p.reading.Place = set.Place
	if flags.Place != "" {
		p.reading.Place = flags.Place
	}
	p.reading.Schedule.Country, p.reading.Schedule.Columns = set.Country, set.Columns
	p.reading.Schedule.Materials = defaultMaterials
	if n, ok := set.Limits["materials"]; ok {
		p.reading.Schedule.Materials = n
	}
	if set.Hours != "" {
		if p.reading.Hours, err = seasonHours(set.Hours); err != nil {
			return fmt.Errorf("%s: hours: %w", set.File, err)
		}
	}
	if set.Climate != "" {
		at, _ := climate.Named(p.reading.Place) // the figures hold without; the sun then rises as at a middle latitude
		if p.reading.Site, err = ownSite(set.Climate, climate.Place{Lat: at.Lat, Lon: at.Lon, Text: p.reading.Place}); err != nil {
			return err
		}
	}
	for _, file := range set.Products {
		book, err := guarded(ctx, p.guard, func(context.Context) (*workbook.Book, error) { return workbook.Open(file, p.limits) })
		if err != nil {
			return ofFile(file, err)
		}
		p.reading.Schedule.Products = append(p.reading.Schedule.Products, book)
	}
	return nil
}

func (p projectFlags) settings() (settings.Settings, error) {
	if p.Settings != "" {
		return settings.Load(p.Settings)
	}
	return settings.Find(".")
}

// inputs are the files that a run reads besides its workbooks.
func (p *project) inputs() []string {
	files := slices.Clone(p.set.Products)
	for _, f := range []string{p.set.File, p.set.Climate} {
		if f != "" {
			files = append(files, f)
		}
	}
	return files
}

// readOne reads the one workbook that a run is about, under the guard.
func (p *project) readOne(ctx context.Context, file string) (*document.Document, error) {
	doc, err := guarded(ctx, p.guard, func(context.Context) (*document.Document, error) { return p.read(file) })
	return doc, ofFile(file, err)
}

// ofFile names the file in what went wrong with it, if that does not yet.
func ofFile(file string, err error) error {
	if err == nil || errors.Is(err, errStopped) || strings.HasPrefix(err.Error(), file+": ") {
		return err
	}
	return fmt.Errorf("%s: %w", file, err)
}

// read turns one workbook into a document. Where its rows name what was
// specified beside what is offered, the two are compared.
func (p *project) read(file string) (*document.Document, error) {
	book, err := workbook.Open(file, p.limits)
	if err != nil {
		return nil, err
	}
	doc, err := p.builder.Build(book, p.reading)
	if err != nil {
		return nil, err
	}
	doc.Comparison = p.compare.Within(doc)
	return doc, nil
}
