package output

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"abut/internal/document"
	"abut/internal/schedule"
)

// WriteReading writes how a workbook was read, as a page in plain words.
func WriteReading(w io.Writer, doc *document.Document) error {
	p := page{bufio.NewWriter(w)}
	p.line("%s", doc.File)
	p.place(doc.Project.Place)
	p.sheets(doc.Reading)
	p.project(doc.Project)
	p.products(doc.Products)
	p.lines(doc)
	p.unread(doc.Reading)
	if err := p.Flush(); err != nil {
		return fmt.Errorf("write the reading: %w", err)
	}
	return nil
}

type page struct{ *bufio.Writer }

func (p page) line(format string, args ...any) {
	fmt.Fprintln(p, plain(fmt.Sprintf(format, args...)))
}

func (p page) place(pl document.Place) {
	if pl.Problem != "" {
		p.line("Place: not known: %s", pl.Problem)
		return
	}
	p.line("Place: %s, %s (from %q, %s); normals %s, %s", pl.Station, pl.Region, pl.Text, addressOf(pl.At), pl.Period, pl.Source)
}

func addressOf(at schedule.At) string {
	switch {
	case at.Row == 0:
		return "as given"
	case at.Sheet == "":
		return firstOf(at.Cell, fmt.Sprintf("row %d", at.Row))
	}
	return at.Sheet + "!" + firstOf(at.Cell, fmt.Sprintf("row %d", at.Row))
}

func firstOf(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

func (p page) sheets(r schedule.Reading) {
	p.line("")
	p.line("Sheets")
	for _, s := range r.Sheets {
		state := ""
		if s.State != "visible" && s.State != "" {
			state = " (" + s.State + ")"
		}
		p.line("  %q%s: read as %s; %s", s.Name, state, s.As, s.Why)
	}
	for _, t := range r.Tables {
		p.line("")
		p.line("Table of %s on %q, rows %d to %d", t.Kind, t.Sheet, t.First, t.Last)
		for _, c := range t.Columns {
			p.column(c)
		}
	}
}

func (p page) column(c schedule.Column) {
	hidden := ""
	if c.Hidden {
		hidden = ", hidden"
	}
	if c.Slot == "" {
		p.line("  %s %q: not known%s", c.Letter, c.Heading, hidden)
		return
	}
	unit := ""
	if c.Unit != "" {
		unit = ", bare figures in " + c.Unit
	}
	p.line("  %s %q: %s (%.0f %% sure: %s%s%s)", c.Letter, c.Heading, strings.ReplaceAll(c.Slot, "_", " "), 100*c.Confidence, c.Why, unit, hidden)
}

func (p page) project(pr document.Project) {
	p.line("")
	p.line("Stated for the project")
	for _, l := range pr.Limits {
		p.line("  %s: %s (%s)", strings.ReplaceAll(l.Kind, "_", " "), l.Text, addressOf(l.At))
	}
	for _, r := range pr.Indoor {
		p.line("  indoor: %s (%s)", r.Text, addressOf(r.At))
	}
}

func (p page) products(list []schedule.Product) {
	if len(list) == 0 {
		return
	}
	p.line("")
	p.line("Product data")
	for _, x := range list {
		p.line("  %s: %s, read as %s", x.Tag, x.Name, firstOf(x.Family, "not known"))
	}
}

func (p page) lines(doc *document.Document) {
	struck := 0
	for _, l := range doc.Lines {
		if l.Struck {
			struck++
		}
	}
	p.line("")
	p.line("%d lines (%d struck out), %d contacts", len(doc.Lines), struck, len(doc.Contacts))
}

func (p page) unread(r schedule.Reading) {
	share := 100.0
	if r.Cells > 0 {
		share = 100 * float64(r.Known) / float64(r.Cells)
	}
	p.line("%d of %d non-empty schedule cells understood (%.1f %%)", r.Known, r.Cells, share)
	for _, u := range r.Unread {
		p.line("  %s %q: %s", addressOf(u.At), u.Text, u.Why)
	}
}
