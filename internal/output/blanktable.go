package output

import (
	"fmt"
	"maps"
	"slices"

	"github.com/xuri/excelize/v2"
)

// blankHead is the row of the headings on every sheet of the blank workbook.
const blankHead = 4

// twoLines is the height in points of a row with two lines of text.
const twoLines = 31

// The sizes of paper, by their number in the file format.
const (
	letter  = 1
	tabloid = 3
)

// table writes a sheet with its headings, its examples and rows to fill in.
func (b *blankBook) table(t blankTable) error {
	if err := b.set(t.Sheet, 1, 1, t.Title, b.title); err != nil {
		return err
	}
	if err := b.set(t.Sheet, 1, 2, t.Hint, b.hint); err != nil {
		return err
	}
	for i, c := range t.Columns {
		if err := b.column(t, i+1, c); err != nil {
			return fmt.Errorf("column %s: %w", c.Head, err)
		}
	}
	for i, row := range t.Examples {
		for j, text := range row {
			if err := b.set(t.Sheet, j+1, blankHead+1+i, text, b.exam); err != nil {
				return err
			}
		}
		if err := b.file.SetRowHeight(t.Sheet, blankHead+1+i, twoLines); err != nil {
			return err
		}
	}
	if err := b.heading(t.Sheet); err != nil {
		return err
	}
	return b.page(t.Sheet, tabloid)
}

// column writes one heading and prepares the cells under it.
func (b *blankBook) column(t blankTable, n int, c blankColumn) error {
	letter, err := excelize.ColumnNumberToName(n)
	if err != nil {
		return err
	}
	if err := b.file.SetColWidth(t.Sheet, letter, letter, c.Width); err != nil {
		return err
	}
	if err := b.set(t.Sheet, n, blankHead, c.Head, b.head); err != nil {
		return err
	}
	style := b.cell
	if c.Kind == "date" {
		style = b.date
	}
	first, last := fmt.Sprintf("%s%d", letter, blankHead+1), fmt.Sprintf("%s%d", letter, blankHead+t.Rows)
	if err := b.file.SetCellStyle(t.Sheet, first, last, style); err != nil {
		return err
	}
	return b.help(t.Sheet, first+":"+last, c.Head, c.Tip, c.List)
}

// help puts a note and, where a list is named, a drop-down on cells. What is
// not on the list may be written all the same.
func (b *blankBook) help(sheet, cells, title, tip, list string) error {
	v := excelize.NewDataValidation(true)
	v.SetSqref(cells)
	v.SetInput(title, tip)
	if list != "" {
		source, err := b.source(list)
		if err != nil {
			return err
		}
		v.SetSqrefDropList(source)
		v.ShowErrorMessage = false
	}
	return b.file.AddDataValidation(sheet, v)
}

// source is the range of cells that a drop-down takes its words from, with some
// empty ones for words of the user's own.
func (b *blankBook) source(list string) (string, error) {
	const spare = 20
	if list == "tags" {
		return fmt.Sprintf("'%s'!$A$%d:$A$%d", b.Products.Sheet, blankHead+1, blankHead+b.Products.Rows), nil
	}
	n := slices.Index(slices.Sorted(maps.Keys(b.Words.Lists)), list)
	if n < 0 {
		return "", fmt.Errorf("list %q is not in words.lists", list)
	}
	letter, err := excelize.ColumnNumberToName(n + 1)
	if err != nil {
		return "", err
	}
	last := blankHead + len(b.Words.Lists[list].Offer) + spare
	return fmt.Sprintf("'%s'!$%s$%d:$%s$%d", b.Words.Sheet, letter, blankHead+1, letter, last), nil
}

// project writes the sheet with the place of the job and its limits.
func (b *blankBook) project(place string) error {
	p := b.Project
	if err := b.set(p.Sheet, 1, 1, p.Title, b.title); err != nil {
		return err
	}
	row := blankHead
	for _, fact := range p.Facts {
		value := ""
		if fact.Place {
			value = place
		}
		if err := b.set(p.Sheet, 1, row, fact.Label, b.head); err != nil {
			return err
		}
		if err := b.set(p.Sheet, 2, row, value, b.cell); err != nil {
			return err
		}
		if err := b.help(p.Sheet, fmt.Sprintf("B%d", row), fact.Label, fact.Tip, ""); err != nil {
			return err
		}
		row++
	}
	row++
	if err := b.set(p.Sheet, 1, row, p.LimitsHead, b.hint); err != nil {
		return err
	}
	for i, limit := range p.Limits {
		if err := b.set(p.Sheet, 1, row+1+i, fmt.Sprint(i+1), b.head); err != nil {
			return err
		}
		if err := b.set(p.Sheet, 2, row+1+i, limit, b.cell); err != nil {
			return err
		}
	}
	if err := b.file.SetColWidth(p.Sheet, "A", "A", 12); err != nil {
		return err
	}
	if err := b.file.SetColWidth(p.Sheet, "B", "B", 100); err != nil {
		return err
	}
	return b.page(p.Sheet, letter)
}

// heading freezes the heading of a table, with room for two lines in it, and
// repeats it on every printed page.
func (b *blankBook) heading(sheet string) error {
	if err := b.file.SetRowHeight(sheet, blankHead, twoLines); err != nil {
		return err
	}
	if err := b.file.SetPanes(sheet, &excelize.Panes{Freeze: true, YSplit: blankHead, TopLeftCell: fmt.Sprintf("A%d", blankHead+1), ActivePane: "bottomLeft"}); err != nil {
		return err
	}
	return b.file.SetDefinedName(&excelize.DefinedName{
		Name: "_xlnm.Print_Titles", RefersTo: fmt.Sprintf("'%s'!$%d:$%d", sheet, blankHead, blankHead), Scope: sheet,
	})
}

// page prints a sheet across one page of a size, letter or tabloid.
func (b *blankBook) page(sheet string, size int) error {
	fit, landscape, one, many := true, "landscape", 1, 0
	if err := b.file.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	return b.file.SetPageLayout(sheet, &excelize.PageLayoutOptions{Size: &size, Orientation: &landscape, FitToWidth: &one, FitToHeight: &many})
}
