package marked

import (
	"bytes"
	"path/filepath"
	"strings"

	"github.com/xuri/excelize/v2"

	"abut/internal/workbook"
)

// ofText makes a workbook of a text table, every value as the text it is, so
// that none is taken for a formula.
func ofText(file string, data []byte) ([]byte, error) {
	table, err := workbook.Read(file, data, workbook.DefaultLimits())
	if err != nil {
		return nil, err
	}
	f := excelize.NewFile()
	defer f.Close()
	sheet := sheetName(strings.TrimSuffix(filepath.Base(file), filepath.Ext(file)))
	if err := f.SetSheetName("Sheet1", sheet); err != nil {
		return nil, err
	}
	widths := map[int]int{}
	for _, row := range table.Sheets[0].Rows {
		for _, c := range row.Cells {
			if err := f.SetCellStr(sheet, c.Ref(), c.Value); err != nil {
				return nil, err
			}
			widths[c.Col] = max(widths[c.Col], min(len(c.Value), 40))
		}
	}
	for col, width := range widths {
		name := workbook.ColumnName(col)
		if err := f.SetColWidth(sheet, name, name, float64(max(width, 6)+2)); err != nil {
			return nil, err
		}
	}
	var b bytes.Buffer
	_, err = f.WriteTo(&b)
	return b.Bytes(), err
}

// sheetName makes a name of a file's that a sheet may have: 31 characters, and
// none that stands for something in an address.
func sheetName(name string) string {
	name = strings.Map(func(r rune) rune {
		if r < ' ' || strings.ContainsRune(`:\/?*[]'`, r) {
			return '-'
		}
		return r
	}, name)
	units := 0 // as the format counts them
	for i, r := range name {
		if r > 0xFFFF {
			units++
		}
		if units++; units > 31 {
			name = name[:i]
			break
		}
	}
	if strings.TrimSpace(name) == "" || strings.EqualFold(name, "history") {
		return "Schedule"
	}
	return name
}
