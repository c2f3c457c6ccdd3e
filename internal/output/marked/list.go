package marked

import (
	"cmp"
	"fmt"

	"abut/internal/engine"
	"abut/internal/output"
)

// list is what the Findings sheet says.
type list struct {
	run    output.Run
	rows   []entry
	unread []entry
	asides []string // what a reader of the copy must know besides
	links  int      // columns of addresses
}

// entry is one row: addresses that lead to cells, and texts.
type entry struct {
	label string
	spots []*spot
	sheet string
	texts []string
	place string // the sheet, or the file, by its name
}

// mostCells is how many cells of a finding its row leads to.
const mostCells = 4

func newList(run output.Run) *list { return &list{run: run, links: 1} }

// heading is the row of the headings; findings follow it.
func (l *list) heading() int { return len(l.opening()) + 3 }

// gather makes the rows and the spots they speak of.
func (l *list) gather(m *marking) {
	m.spots = map[string][]*spot{}
	at := map[string]*spot{}
	for _, f := range l.run.Findings {
		told := output.Tell(f)
		row := l.heading() + 1 + len(l.rows)
		e := entry{label: told.Label, texts: findingTexts(f, told), place: output.Plain(cmp.Or(f.Sheet, f.File))}
		if sheet, ok := m.sheetOf(f.File, f.Sheet); ok {
			e.sheet, e.place = sheet, output.Plain(sheet)
			for _, t := range tellings(f, told) {
				for _, cell := range t.cells {
					if s := m.spot(at, sheet, cell, row); s != nil {
						s.label = graver(s.label, told.Label)
						s.notes = append(s.notes, note{labelOf(f, told), noteText(m.name, row, t.told)})
						e.spots = append(e.spots, s)
					}
				}
			}
		}
		l.links = max(l.links, min(len(e.spots), mostCells))
		l.rows = append(l.rows, e)
	}
	l.gatherUnread(m)
}

// telling is what cells are told.
type telling struct {
	cells []string
	told  output.Told
}

// tellings are the finding at its own cells and, where it is told once for many
// rows, what it says of each of them there.
func tellings(f engine.Finding, told output.Told) []telling {
	all := []telling{{cellsOf(f), told}}
	if f.Throughout {
		for _, r := range f.Related {
			here := told
			here.Message = output.Plain(r.What)
			all = append(all, telling{r.Cells, here})
		}
	}
	return all
}

// cellsOf gives the cells of a finding, or the first of its row.
func cellsOf(f engine.Finding) []string {
	if len(f.Cells) == 0 && f.Row > 0 {
		return []string{ref(f.Row, 1)}
	}
	return f.Cells
}

// spot gives the spot at a cell, nil where the cell is no address.
func (m *marking) spot(at map[string]*spot, sheet, cell string, back int) *spot {
	row, col, ok := place(cell)
	if !ok {
		return nil
	}
	key := sheet + "\x00" + cell
	if at[key] == nil {
		at[key] = &spot{row: row, col: col, back: back}
		m.spots[sheet] = append(m.spots[sheet], at[key])
	}
	return at[key]
}

func labelOf(f engine.Finding, told output.Told) string {
	if told.Waiver != "" {
		return told.Label + " " + f.Severity
	}
	return told.Label
}

func noteText(sheet string, row int, told output.Told) string {
	do := "Do: " + told.Do
	if told.Waiver != "" {
		do = told.Waiver
	}
	return fmt.Sprintf("%s\n%s\n(%s, row %d)", told.Message, do, sheet, row)
}

// findingTexts are the columns after the addresses.
func findingTexts(f engine.Finding, told output.Told) []string {
	message := told.Message
	for _, with := range told.With {
		message += "\nWith: " + with
	}
	do := told.Do
	if told.Waiver != "" {
		do = told.Waiver
	}
	return []string{output.Plain(f.Mark), message, do, output.Plain(f.Reason), output.Plain(f.Source) + "\nrule " + f.Rule}
}

// gatherUnread lists what was not understood, and what could not be done.
func (l *list) gatherUnread(m *marking) {
	for _, p := range l.run.Problems {
		l.unread = append(l.unread, entry{place: "not done", texts: []string{"", output.Plain(p.Line()), ""}})
	}
	for _, r := range l.run.Reading {
		for _, u := range r.Reading.Unread {
			e := entry{texts: []string{"", output.Plain(u.Text), output.Plain(u.Why)}, place: output.Plain(cmp.Or(u.At.Sheet, r.File))}
			if sheet, ok := m.sheetOf(r.File, u.At.Sheet); ok {
				e.sheet, e.place = sheet, output.Plain(sheet)
				if row, col, ok := place(cmp.Or(u.At.Cell, ref(u.At.Row, 1))); ok {
					e.spots = []*spot{{row: row, col: col}}
				}
			}
			l.unread = append(l.unread, e)
		}
	}
}
