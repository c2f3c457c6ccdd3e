package main

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"github.com/xuri/excelize/v2"
)

// schedule fills the schedule sheet: title block, revisions, two heading rows,
// rows with dividers, notes.
func (s *sheets) schedule(k *key) error {
	if err := errors.Join(s.titleBlock(), s.heads()); err != nil {
		return err
	}
	n, wall := headRow+2, headRow+2
	for _, r := range rows {
		var err error
		switch {
		case r.divider != "":
			err = errors.Join(s.mergeWall(wall, n-1), s.divider(n, r.divider))
			wall = n + 1
		default:
			err = s.cells(scheduleSheet, n, r.cells)
			k.Rows = append(k.Rows, place{scheduleSheet, n})
			k.add(scheduleSheet, n, r)
		}
		if err != nil {
			return fmt.Errorf("row %d: %w", n, err)
		}
		n++
	}
	if err := s.mergeWall(wall, n-1); err != nil {
		return err
	}
	for i, note := range notes {
		if err := s.text(scheduleSheet, 1, n+1+i, note, "small"); err != nil {
			return err
		}
	}
	return s.page(scheduleSheet, len(columns), headRow+2)
}

func (s *sheets) titleBlock() error {
	return errors.Join(
		s.text(scheduleSheet, 1, 1, "Tern Landing Ferry Hall", "title"),
		s.text(scheduleSheet, 1, 2, "Enclosure materials schedule", "small"),
		s.text(scheduleSheet, 1, 3, "Site: Portland, Maine", "small"),
		s.text(scheduleSheet, 6, 3, "Heated rooms 70 F, 35% RH in winter", "small"),
		s.text(scheduleSheet, 1, 4, "Rev. A", "small"), s.text(scheduleSheet, 2, 4, "8 May 2026, for pricing", "small"),
		s.text(scheduleSheet, 1, 5, "Rev. B", "small"), s.text(scheduleSheet, 2, 5, "12 June 2026, primers and dates", "small"),
	)
}

// heads writes the two heading rows, merged across where columns share an
// upper heading and down where they have none.
func (s *sheets) heads() error {
	for i := 0; i < len(columns); i++ {
		c, col := columns[i], i+1
		end := i
		for c.over != "" && end+1 < len(columns) && columns[end+1].over == c.over {
			end++
		}
		var err error
		if c.over == "" {
			err = errors.Join(s.text(scheduleSheet, col, headRow, c.head, "head"), s.merge(scheduleSheet, col, headRow, col, headRow+1))
		} else {
			err = errors.Join(s.text(scheduleSheet, col, headRow, c.over, "head"), s.merge(scheduleSheet, col, headRow, end+1, headRow))
			for j := i; j <= end; j++ {
				err = errors.Join(err, s.text(scheduleSheet, j+1, headRow+1, columns[j].head, "head"))
			}
		}
		if err != nil {
			return err
		}
		i = end
	}
	for i, c := range columns {
		letter, err := excelize.ColumnNumberToName(i + 1)
		if err == nil {
			err = s.book.SetColWidth(scheduleSheet, letter, letter, c.width)
		}
		if err == nil && c.head == "Cost code" {
			err = s.book.SetColVisible(scheduleSheet, letter, false)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

func (s *sheets) divider(n int, text string) error {
	return errors.Join(s.text(scheduleSheet, 1, n, text, "divider"), s.merge(scheduleSheet, 1, n, len(columns), n))
}

// mergeWall merges the wall type over its rows.
func (s *sheets) mergeWall(from, to int) error {
	if to <= from {
		return nil
	}
	return s.merge(scheduleSheet, 1, from, 1, to)
}

// products fills the products sheet.
func (s *sheets) products(k *key) error {
	if err := s.text(productSheet, 1, 1, "Products of the enclosure schedule, with limits from their data sheets", "title"); err != nil {
		return err
	}
	for i, head := range productHeads {
		if err := s.text(productSheet, i+1, 3, head, "head"); err != nil {
			return err
		}
	}
	for i, r := range products {
		if err := s.cells(productSheet, 4+i, r.cells); err != nil {
			return fmt.Errorf("row %d: %w", 4+i, err)
		}
		k.add(productSheet, 4+i, r)
	}
	err := s.book.SetColWidth(productSheet, "A", "A", 8)
	return errors.Join(err, s.book.SetColWidth(productSheet, "B", "N", 21), s.page(productSheet, len(productHeads), 4))
}

// cells writes a row of cells parted by "|".
func (s *sheets) cells(sheet string, n int, line string) error {
	for i, text := range strings.Split(line, "|") {
		if err := s.cell(sheet, i+1, n, text); err != nil {
			return err
		}
	}
	return s.book.SetRowHeight(sheet, n, 31) // two lines of text
}

// cell writes a real date, a value with its old one struck out, or a text.
func (s *sheets) cell(sheet string, col, n int, text string) error {
	at, err := excelize.CoordinatesToCellName(col, n)
	if err != nil {
		return err
	}
	if day, err := time.Parse(time.DateOnly, text); err == nil {
		return errors.Join(s.book.SetCellValue(sheet, at, day), s.book.SetCellStyle(sheet, at, at, s.looks["day"]))
	}
	if old, current, ok := strings.Cut(strings.TrimPrefix(text, "~"), "~"); ok {
		err := s.book.SetCellRichText(sheet, at, []excelize.RichTextRun{
			{Text: old, Font: &excelize.Font{Strike: true, Family: "Calibri", Size: 11}},
			{Text: " " + current, Font: &excelize.Font{Family: "Calibri", Size: 11}},
		})
		return errors.Join(err, s.book.SetCellStyle(sheet, at, at, s.looks["cell"]))
	}
	return s.text(sheet, col, n, text, "cell")
}

func (s *sheets) text(sheet string, col, n int, text, look string) error {
	at, err := excelize.CoordinatesToCellName(col, n)
	if err != nil {
		return err
	}
	return errors.Join(s.book.SetCellStr(sheet, at, text), s.book.SetCellStyle(sheet, at, at, s.looks[look]))
}

// merge merges a block and gives all of it the look of its first cell.
func (s *sheets) merge(sheet string, col, n, toCol, toRow int) error {
	from, err := excelize.CoordinatesToCellName(col, n)
	if err != nil {
		return err
	}
	to, err := excelize.CoordinatesToCellName(toCol, toRow)
	if err != nil {
		return err
	}
	look, err := s.book.GetCellStyle(sheet, from)
	return errors.Join(err, s.book.SetCellStyle(sheet, from, to, look), s.book.MergeCell(sheet, from, to))
}

// page freezes the heading and sets the sheet to print across one page.
func (s *sheets) page(sheet string, cols, firstRow int) error {
	top, err := excelize.CoordinatesToCellName(1, firstRow)
	if err != nil {
		return err
	}
	landscape, tabloid, one, many, fit := "landscape", 3, 1, 0, true
	return errors.Join(
		s.book.SetPanes(sheet, &excelize.Panes{Freeze: true, YSplit: firstRow - 1, TopLeftCell: top, ActivePane: "bottomLeft"}),
		s.book.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}),
		s.book.SetPageLayout(sheet, &excelize.PageLayoutOptions{Orientation: &landscape, Size: &tabloid, FitToWidth: &one, FitToHeight: &many}),
	)
}
