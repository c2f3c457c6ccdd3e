// Command demo writes the demo project: the schedule of an invented building
// with its products, and the key that says which rows hold a mistake.
//
//	go run ./testdata/demo [FOLDER]
package main

import (
	"encoding/json"
	"fmt"
	"log"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"github.com/xuri/excelize/v2"
)

const (
	project       = "tern-landing"
	scheduleSheet = "Enclosure schedule"
	productSheet  = "Products"
	headRow       = 7 // the upper of two heading rows
)

func main() {
	log.SetFlags(0)
	folder := filepath.Join("testdata", "demo")
	if len(os.Args) > 1 {
		folder = os.Args[1]
	}
	if err := write(folder); err != nil {
		log.Fatal(err)
	}
}

// write makes the workbook and its key in a folder.
func write(folder string) error {
	s, err := newSheets()
	if err != nil {
		return err
	}
	k := key{Workbook: project + ".xlsx", Rows: []place{}, Arguable: []place{}}
	if err := s.schedule(&k); err != nil {
		return fmt.Errorf("sheet %q: %w", scheduleSheet, err)
	}
	if err := s.products(&k); err != nil {
		return fmt.Errorf("sheet %q: %w", productSheet, err)
	}
	if err := s.book.SaveAs(filepath.Join(folder, k.Workbook)); err != nil {
		return err
	}
	out, err := json.MarshalIndent(k, "", " ")
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(folder, project+".key.json"), append(out, '\n'), 0o644)
}

// sheets is the workbook on the way to be written, with its cell styles.
type sheets struct {
	book  *excelize.File
	looks map[string]int
}

func newSheets() (*sheets, error) {
	s := &sheets{excelize.NewFile(), map[string]int{}}
	if err := s.book.SetSheetName("Sheet1", scheduleSheet); err != nil {
		return nil, err
	}
	if _, err := s.book.NewSheet(productSheet); err != nil {
		return nil, err
	}
	line := []excelize.Border{}
	for _, side := range []string{"left", "right", "top", "bottom"} {
		line = append(line, excelize.Border{Type: side, Color: "#8A8F94", Style: 1})
	}
	fill := func(color string) excelize.Fill {
		return excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{color}}
	}
	wrap := &excelize.Alignment{WrapText: true, Vertical: "top"}
	day := "d-mmm-yy"
	styles := map[string]excelize.Style{
		"title":   {Font: &excelize.Font{Bold: true, Size: 14}},
		"small":   {Font: &excelize.Font{Size: 9}},
		"head":    {Font: &excelize.Font{Bold: true}, Fill: fill("#D9E1E8"), Border: line, Alignment: &excelize.Alignment{WrapText: true, Horizontal: "center", Vertical: "center"}},
		"divider": {Font: &excelize.Font{Bold: true}, Fill: fill("#EEF1E6"), Border: line},
		"cell":    {Border: line, Alignment: wrap},
		"day":     {Border: line, Alignment: wrap, CustomNumFmt: &day},
	}
	for _, look := range slices.Sorted(maps.Keys(styles)) { // ids in a fixed order
		style := styles[look]
		id, err := s.book.NewStyle(&style)
		if err != nil {
			return nil, err
		}
		s.looks[look] = id
	}
	return s, nil
}
