package cli

import (
	"fmt"
	"io/fs"
	"slices"

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
}

// open reads the settings and loads the vocabularies.
func (p projectFlags) open() (*project, error) {
	set, err := p.settings()
	if err != nil {
		return nil, err
	}
	out := &project{set: set, folders: slices.Concat(set.Policies, p.Policies)}
	if out.tree, err = engine.Overlay(policies.FS, out.folders); err != nil {
		return nil, err
	}
	if out.builder, err = document.NewBuilder(out.tree); err != nil {
		return nil, err
	}
	if out.compare, err = compare.New(out.tree); err != nil {
		return nil, err
	}
	out.reading.Place = set.Place
	if p.Place != "" {
		out.reading.Place = p.Place
	}
	out.reading.Schedule.Country, out.reading.Schedule.Columns = set.Country, set.Columns
	if set.Hours != "" {
		if out.reading.Hours, err = seasonHours(set.Hours); err != nil {
			return nil, fmt.Errorf("%s: hours: %w", set.File, err)
		}
	}
	if set.Climate != "" {
		if out.reading.Site, err = ownSite(set.Climate, climate.Place{Text: set.Place}); err != nil {
			return nil, err
		}
	}
	for _, file := range set.Products {
		book, err := workbook.Open(file, workbook.DefaultLimits())
		if err != nil {
			return nil, err
		}
		out.reading.Schedule.Products = append(out.reading.Schedule.Products, book)
	}
	return out, nil
}

func (p projectFlags) settings() (settings.Settings, error) {
	if p.Settings != "" {
		return settings.Load(p.Settings)
	}
	return settings.Find(".")
}

// engine loads the rules with the office's own.
func (p *project) engine() (*engine.Engine, error) {
	return engine.Load(engine.Options{
		Folders: p.folders, Replace: p.set.Replace, Off: p.set.Off, Severity: p.set.Severity,
	})
}

// read turns one workbook into a document. Where its rows name what was
// specified beside what is offered, the two are compared.
func (p *project) read(file string) (*document.Document, error) {
	book, err := workbook.Open(file, workbook.DefaultLimits())
	if err != nil {
		return nil, err
	}
	doc, err := p.builder.Build(book, p.reading)
	if err != nil {
		return nil, err
	}
	doc.Comparison = p.compare.Within(doc)
	document.Complete(doc)
	return doc, nil
}
