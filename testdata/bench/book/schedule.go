package main

import (
	"fmt"

	"github.com/xuri/excelize/v2"
)

var heads = []any{
	"Wall type", "Item", "Location", "Tag", "Description", "Thickness", "Laid on", "Primer", "Sealant", "Touches",
	"Concrete placed", "Sheet on", "Covered", "Edge", "Remarks", "Cost code", "Drawing", "Revision", "Area", "Checked by",
}

// cases are what the rows of a long schedule repeat, most of them sound: from
// Tag to Touches, then Edge and Remarks.
var cases = [][]any{
	{"SA-1", "Rubberized asphalt sheet", "60 mil (1.5 mm)", "Concrete", "P-1", "S-1", "Drainage board", "Bead at top edge", "Wall swept, dry"},
	{"SA-1", "Rubberized asphalt sheet", "60 mil (1.5 mm)", "Concrete", "P-1", "S-1", "XPS-1", "Bead at top edge", "-"},
	{"FL-1", "Rubberized asphalt strip", "40 mil (1.0 mm)", "CMU", "P-1", "S-1", "-", "Bead both edges", "Joints struck flush"},
	{"FL-1", "Rubberized asphalt strip", "40 mil (1.0 mm)", "CMU", "P-1", "S-1", "EPDM gasket", "Bead at frame", "-"},
	{"SF-1", "Stainless steel through-wall flashing", "26 ga.", "CMU", "-", "S-1", "FL-1 laps over upstand", "Hemmed drip", "-"},
	{"SA-1", "Rubberized asphalt sheet", "60 mil (1.5 mm)", "Gypsum sheathing", "P-1", "S-1", "XPS-1", "Lapped under upper lift", "-"},
	{"SA-1", "Rubberized asphalt sheet", "60 mil (1.5 mm)", "Concrete", "-", "S-1", "PVC waterstop, plasticized", "Bead at top edge", "-"},
}

var products = [][]any{
	{"Tag", "Generic description", "Thickness", "Min. application temperature", "Max. days open to sun"},
	{"SA-1", "Self-adhered SBS-modified asphalt sheet", "60 mil", "25 F", "60"},
	{"FL-1", "Self-adhered SBS-modified asphalt strip", "40 mil", "25 F", "60"},
	{"SF-1", "Stainless steel sheet", "26 ga.", "-", "-"},
	{"P-1", "Primer, synthetic rubber in solvent", "-", "25 F", "-"},
	{"S-1", "Silicone sealant, neutral cure", "-", "20 F", "-"},
	{"XPS-1", "Extruded polystyrene board", "2 in.", "-", "60"},
}

// writeSchedule writes a workbook with so many lines in 20 columns.
func writeSchedule(file string, lines int) error {
	book := excelize.NewFile()
	defer book.Close()
	rows := [][]any{{"Invented storehouse"}, {"Site: Portland, Maine"}, {}, heads}
	for i := range lines {
		rows = append(rows, line(i))
	}
	if err := writeSheet(book, "Schedule", rows); err != nil {
		return err
	}
	if err := writeSheet(book, "Products", products); err != nil {
		return err
	}
	if err := book.DeleteSheet("Sheet1"); err != nil {
		return err
	}
	return book.SaveAs(file)
}

func line(i int) []any {
	c := cases[i%len(cases)]
	row := []any{fmt.Sprintf("WT-%d", 1+i/12), fmt.Sprint(100 + i), fmt.Sprintf("Level %d, grid %d", 1+i/40, 1+i%40)}
	row = append(row, c[:7]...)
	day := 1 + i%20
	row = append(row, "2026-07-15", fmt.Sprintf("2026-09-%02d", day), fmt.Sprintf("2026-09-%02d", day+8))
	row = append(row, c[7:]...)
	return append(row, "07-110", fmt.Sprintf("A-%d", 500+i/100), "B", fmt.Sprint(20+i%30), "-")
}

func writeSheet(book *excelize.File, name string, rows [][]any) error {
	if _, err := book.NewSheet(name); err != nil {
		return err
	}
	w, err := book.NewStreamWriter(name)
	if err != nil {
		return err
	}
	for i, row := range rows {
		if err := w.SetRow(fmt.Sprintf("A%d", i+1), row); err != nil {
			return err
		}
	}
	return w.Flush()
}
