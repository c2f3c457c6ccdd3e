package contact_test

import (
	"cmp"
	"fmt"
	"strings"
	"time"

	"pgregory.net/rapid"

	"abut/internal/workbook"
)

// layout is one office's way to write lines down.
type layout struct {
	order   []string
	heading map[string]string
	unit    map[string]string
	bare    map[string]bool // the unit stands in the heading
	date    string
	country string
	ditto   string // stands for the material of the row above, "" never
	group   string // column, merged, once, divider, none
	title   []string
	notes   []string
	gap     bool // an empty row before the notes
}

func drawLayout(t *rapid.T, headings map[string][]string) layout {
	l := layout{heading: map[string]string{}, unit: map[string]string{}, bare: map[string]bool{}}
	slots := []string{"mark", "material", "substrate", "primer", "touches", "thickness", "lap", "install", "cover"}
	l.group = rapid.SampledFrom([]string{"column", "merged", "once", "divider", "none"}).Draw(t, "walls")
	if l.group == "column" || l.group == "merged" || l.group == "once" {
		slots = append(slots, "group")
	}
	l.order = rapid.Permutation(append(slots, rapid.SliceOfNDistinct(rapid.SampledFrom(idle()), 0, 2, rapid.ID).Draw(t, "idle")...)).Draw(t, "order")
	for _, s := range slots {
		w := rapid.SampledFrom(headings[s]).Draw(t, s+" heading")
		switch rapid.IntRange(0, 2).Draw(t, s+" case") {
		case 0:
			w = strings.ToUpper(w)
		case 1:
			w = strings.ToUpper(w[:1]) + w[1:]
		}
		l.heading[s] = w
	}
	l.ditto = rapid.SampledFrom([]string{"", "", "ditto", "″", "same as above"}).Draw(t, "ditto")
	for _, s := range []string{"thickness", "lap"} {
		l.unit[s] = rapid.SampledFrom(map[string][]string{"thickness": {"mm", "mil"}, "lap": {"mm", "in."}}[s]).Draw(t, s+" unit")
		if l.bare[s] = rapid.Bool().Draw(t, s+" bare"); l.bare[s] {
			l.heading[s] += " (" + l.unit[s] + ")"
		}
	}
	l.date = rapid.SampledFrom([]string{"2 Jan 2006", "January 2, 2006", "2006-01-02", "02-Jan-06", "1/2/2006", "Jan. 2, 2006", "Mon 2 Jan 2006", "2/1/2006", "02.01.2006", "real"}).Draw(t, "dates")
	l.country = map[bool]string{true: "GB", false: "US"}[l.date == "2/1/2006" || l.date == "02.01.2006"]
	l.title = rapid.SliceOfN(rapid.SampledFrom([]string{"Osprey Point Visitor Center", "Issue 3, for tender", "Duluth, Minnesota", "Drawn by the office", "Sheet 2 of 4"}), 0, 3).Draw(t, "title")
	l.notes = rapid.SliceOfN(rapid.SampledFrom([]string{"Primers 250 g/L max.", "See the drawings for grid lines.", "Keep rolls dry on site until they are used."}), 0, 2).Draw(t, "notes")
	l.gap = rapid.Bool().Draw(t, "gap")
	return l
}

// idle are columns that say nothing of the materials.
func idle() []string { return []string{"Cost code", "Drawing", "Qty", "Status"} }

// sheet writes the lines down.
func (l layout) sheet(lines []known) *workbook.Book {
	s := workbook.Sheet{Kind: workbook.Worksheet, State: "visible", MaxCol: len(l.order)}
	row := 0
	put := func(cells ...workbook.Cell) {
		row++
		r := workbook.Row{Number: row}
		for i, c := range cells {
			if c.Value != "" {
				c.Row, c.Col = row, i+1
				r.Cells = append(r.Cells, c)
			}
		}
		if len(r.Cells) > 0 {
			s.Rows, s.MaxRow = append(s.Rows, r), row
		}
	}
	for _, w := range l.title {
		put(workbook.Cell{Value: w})
	}
	var head []workbook.Cell
	for _, slot := range l.order {
		head = append(head, workbook.Cell{Value: cmp.Or(l.heading[slot], slot)})
	}
	put(head...)
	for i, k := range lines {
		first := i == 0 || lines[i-1].group != k.group
		if l.group == "divider" && first {
			put(workbook.Cell{Value: "Wall " + k.group})
		}
		var cells []workbook.Cell
		for _, slot := range l.order {
			c := l.cell(k, slot, first)
			if slot == "material" && i > 0 && l.ditto != "" && lines[i-1].material == k.material {
				c.Value = l.ditto
			}
			cells = append(cells, c)
		}
		put(cells...)
	}
	if l.gap {
		put()
	}
	for _, w := range l.notes {
		put(workbook.Cell{Value: w})
	}
	return &workbook.Book{Path: "wall.xlsx", Sheets: []workbook.Sheet{s}}
}

func (l layout) cell(k known, slot string, first bool) workbook.Cell {
	switch slot {
	case "mark":
		return workbook.Cell{Value: k.mark}
	case "group":
		switch {
		case l.group == "once" && !first:
			return workbook.Cell{}
		case l.group == "merged" && !first:
			return workbook.Cell{Value: k.group, Merged: true}
		}
		return workbook.Cell{Value: k.group}
	case "thickness":
		return l.figure(slot, k.thick, 0.0254)
	case "lap":
		return l.figure(slot, k.lap, 25.4)
	case "install":
		return l.day(k.install)
	case "cover":
		return l.day(k.cover)
	case "Cost code":
		return workbook.Cell{Value: "07-2" + k.mark[2:]}
	case "Drawing":
		return workbook.Cell{Value: "A-5" + k.mark[2:]}
	case "Qty":
		return workbook.Cell{Value: "40", Kind: workbook.Number, Number: 40}
	case "Status":
		return workbook.Cell{Value: "approved"}
	}
	return workbook.Cell{Value: k.words[slot]}
}

func (l layout) figure(slot string, mm, other float64) workbook.Cell {
	text := fmt.Sprintf("%g", mm)
	if l.unit[slot] != "mm" {
		text = fmt.Sprintf("%.2f", mm/other)
	}
	if !l.bare[slot] {
		text += " " + l.unit[slot]
	}
	return workbook.Cell{Value: text}
}

func (l layout) day(d time.Time) workbook.Cell {
	if l.date == "real" {
		return workbook.Cell{Value: d.Format(time.DateOnly), Kind: workbook.Date, Date: d}
	}
	return workbook.Cell{Value: d.Format(l.date)}
}
