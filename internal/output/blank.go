package output

import (
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"slices"
	"time"

	"github.com/xuri/excelize/v2"
)

// blank is the layout of the workbook that WriteBlank makes: knowledge.blank of
// the policy tree.
type blank struct {
	Schedule blankTable `json:"schedule"`
	Products blankTable `json:"products"`
	Project  struct {
		Sheet string `json:"sheet"`
		Title string `json:"title"`
		Facts []struct {
			Label string `json:"label"`
			Tip   string `json:"tip"`
			Place bool   `json:"place"` // the one that names the place of the job
		} `json:"facts"`
		LimitsHead string   `json:"limits_head"`
		Limits     []string `json:"limits"`
	} `json:"project"`
	Words struct {
		Sheet string               `json:"sheet"`
		Title string               `json:"title"`
		Lists map[string]blankList `json:"lists"`
	} `json:"words"`
}

// blankTable is one sheet with a table to fill in.
type blankTable struct {
	Sheet    string        `json:"sheet"`
	Title    string        `json:"title"`
	Hint     string        `json:"hint"`
	Rows     int           `json:"rows"` // rows prepared to be filled in
	Columns  []blankColumn `json:"columns"`
	Examples [][]string    `json:"examples"`
}

// blankColumn is one column. List names a list of words, or tags for the tags
// of the products sheet; kind date makes its cells dates.
type blankColumn struct {
	Head  string  `json:"head"`
	Width float64 `json:"width"` // characters
	Tip   string  `json:"tip"`
	List  string  `json:"list"`
	Kind  string  `json:"kind"`
}

// blankList is what a drop-down offers: words, and the family each stands for.
type blankList struct {
	Head  string            `json:"head"`
	Offer map[string]string `json:"offer"`
}

// WriteBlank writes a schedule workbook to fill in: headings, drop-downs and
// notes to each column, product data, the project's place and limits. place
// may be "". Its layout is data of the policy tree, so that an office can have
// its own. The same tree and place give the same bytes.
func WriteBlank(w io.Writer, tree fs.FS, place string) error {
	raw, err := fs.ReadFile(tree, "knowledge/blank.json")
	if err != nil {
		return fmt.Errorf("layout of the blank workbook: %w", err)
	}
	var layout struct {
		Blank blank `json:"blank"`
	}
	if err := json.Unmarshal(raw, &layout); err != nil {
		return fmt.Errorf("layout of the blank workbook: %w", err)
	}
	b, err := newBlankBook(layout.Blank)
	if err != nil {
		return err
	}
	defer b.file.Close()
	for _, step := range []func() error{
		func() error { return b.table(b.Schedule) },
		func() error { return b.table(b.Products) },
		func() error { return b.project(place) },
		b.words,
	} {
		if err := step(); err != nil {
			return fmt.Errorf("blank workbook: %w", err)
		}
	}
	return b.file.Write(w)
}

// blankBook is the workbook on the way to be written.
type blankBook struct {
	blank
	file                                     *excelize.File
	title, hint, head, cell, date, exam, day int // styles
}

func newBlankBook(layout blank) (*blankBook, error) {
	b := &blankBook{blank: layout, file: excelize.NewFile()}
	if err := b.file.SetSheetName(b.file.GetSheetName(0), layout.Schedule.Sheet); err != nil {
		return nil, err
	}
	for _, sheet := range []string{layout.Products.Sheet, layout.Project.Sheet, layout.Words.Sheet} {
		if _, err := b.file.NewSheet(sheet); err != nil {
			return nil, err
		}
	}
	border := []excelize.Border{}
	for _, side := range []string{"left", "right", "top", "bottom"} {
		border = append(border, excelize.Border{Type: side, Color: "#9AA3AB", Style: 1})
	}
	top := &excelize.Alignment{WrapText: true, Vertical: "top"}
	iso, gray := "yyyy-mm-dd", &excelize.Font{Italic: true, Color: "#5A6570"}
	for _, style := range []struct {
		id *int
		is excelize.Style
	}{
		{&b.title, excelize.Style{Font: &excelize.Font{Bold: true, Size: 14}}},
		{&b.hint, excelize.Style{Font: gray}},
		{&b.head, excelize.Style{Font: &excelize.Font{Bold: true}, Border: border, Alignment: top, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"#DDE5E0"}}}},
		{&b.cell, excelize.Style{Border: border, Alignment: top}},
		{&b.date, excelize.Style{Border: border, Alignment: top, CustomNumFmt: &iso}},
		{&b.exam, excelize.Style{Border: border, Alignment: top, Font: gray}},
		{&b.day, excelize.Style{Border: border, Alignment: top, Font: gray, CustomNumFmt: &iso}},
	} {
		id, err := b.file.NewStyle(&style.is)
		if err != nil {
			return nil, err
		}
		*style.id = id
	}
	return b, nil
}

// set writes a text, or a day as a real date, in a style.
func (b *blankBook) set(sheet string, col, row int, text string, style int) error {
	at, err := excelize.CoordinatesToCellName(col, row)
	if err != nil {
		return err
	}
	if day, err := time.Parse(time.DateOnly, text); err == nil {
		if err := b.file.SetCellValue(sheet, at, day); err != nil {
			return err
		}
		style = b.day
	} else if text != "" {
		if err := b.file.SetCellStr(sheet, at, text); err != nil {
			return err
		}
	}
	return b.file.SetCellStyle(sheet, at, at, style)
}

// words writes the lists that the drop-downs offer, one a column.
func (b *blankBook) words() error {
	sheet := b.Words.Sheet
	if err := b.set(sheet, 1, 1, b.Words.Title, b.title); err != nil {
		return err
	}
	for i, name := range slices.Sorted(maps.Keys(b.Words.Lists)) {
		list := b.Words.Lists[name]
		if err := b.set(sheet, i+1, blankHead, list.Head, b.head); err != nil {
			return err
		}
		for j, word := range slices.Sorted(maps.Keys(list.Offer)) {
			if err := b.set(sheet, i+1, blankHead+1+j, word, b.cell); err != nil {
				return err
			}
		}
	}
	if err := b.file.SetColWidth(sheet, "A", "Z", 48); err != nil {
		return err
	}
	return b.page(sheet, letter)
}
