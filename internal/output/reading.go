package output

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
)

// WriteReading writes how a workbook was read, as a page in plain words, with
// the reason of each contact that was judged fine.
func WriteReading(w io.Writer, doc *document.Document, fine []engine.FineContact) error {
	p := page{bufio.NewWriter(w)}
	p.line("%s", doc.File)
	p.place(doc.Project.Place)
	p.sheets(doc.Reading)
	p.project(doc.Project)
	p.products(doc.Products)
	p.lines(doc, fine)
	p.unread(doc.Reading)
	if err := p.Flush(); err != nil {
		return fmt.Errorf("write the reading: %w", err)
	}
	return nil
}

type page struct{ *bufio.Writer }

func (p page) line(format string, args ...any) {
	text := fmt.Sprintf(format, args...)
	words := strings.TrimLeft(text, " ")
	fmt.Fprintln(p, strings.Repeat(" ", len(text)-len(words))+plain(words))
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

func (p page) lines(doc *document.Document, fine []engine.FineContact) {
	struck, hidden := 0, 0
	for _, l := range doc.Lines {
		if l.Struck {
			struck++
		}
		if l.Hidden {
			hidden++
		}
	}
	p.line("")
	p.line("%d lines (%d struck out, %d in hidden rows), %d contacts", len(doc.Lines), struck, hidden, len(doc.Contacts))
	reasons := map[string]string{}
	for _, f := range fine {
		reasons[f.Contact.ID] = f.Why
	}
	contacts := map[string][]contact.Contact{}
	for _, c := range doc.Contacts {
		contacts[c.Line] = append(contacts[c.Line], c)
	}
	for _, l := range doc.Lines {
		p.scheduleLine(l)
		for _, c := range contacts[l.ID] {
			p.contact(c, reasons[c.ID])
		}
	}
}

func (p page) scheduleLine(l schedule.Line) {
	if l.Struck {
		p.line("  %s row %d %s: struck out", l.Sheet, l.Row, l.Mark)
		return
	}
	words := l.Role
	if it := l.Main(); it != nil {
		words += " " + it.Text
		if it.Name != "" {
			words += " (" + it.Name + ")"
		}
	}
	for _, slot := range []string{"install", "cover"} {
		if d := l.Dates[slot]; d.From != "" {
			words += ", " + slot + " " + d.From
		}
	}
	p.line("  %s row %d %s: %s", l.Sheet, l.Row, strings.Join(strings.Fields(l.Mark), " "), words)
}

// contact tells one contact: how the two meet, where that was read, and why it
// is fine where it was judged so.
func (p page) contact(c contact.Contact, why string) {
	with := ""
	if c.Separator != nil {
		with = " by " + c.Separator.Text
	}
	if why != "" {
		why = "; fine: " + why
	}
	p.line("    %s / %s: %s%s (%s)%s", c.A.Text, c.B.Text, c.Kind, with, c.From, why)
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
