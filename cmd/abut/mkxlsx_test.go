package main

import (
	"encoding/csv"
	"errors"
	"strings"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/xuri/excelize/v2"
)

// mkxlsx is "mkxlsx [-chart] [-password WORD] OUT.xlsx IN.csv...": a workbook
// with one sheet a CSV file, named as the file is. With -chart it has a chart
// sheet and no other, with -password it is locked.
func mkxlsx(ts *testscript.TestScript, neg bool, args []string) {
	chart, password := false, ""
	for len(args) > 0 && strings.HasPrefix(args[0], "-") {
		switch {
		case args[0] == "-chart":
			chart, args = true, args[1:]
		case args[0] == "-password" && len(args) > 1:
			password, args = args[1], args[2:]
		default:
			ts.Fatalf("mkxlsx: unknown flag %s", args[0])
		}
	}
	if neg || len(args) < 2 {
		ts.Fatalf("usage: mkxlsx [-chart] [-password WORD] OUT.xlsx IN.csv...")
	}
	f := excelize.NewFile()
	first := f.GetSheetName(0)
	for _, in := range args[1:] {
		ts.Check(addSheet(f, strings.TrimSuffix(in, ".csv"), ts.ReadFile(in)))
	}
	if chart {
		sheet := strings.TrimSuffix(args[1], ".csv")
		ts.Check(f.AddChartSheet("Chart", &excelize.Chart{Type: excelize.Col, Series: []excelize.ChartSeries{{Values: sheet + "!$A$1:$A$2"}}}))
		ts.Check(f.DeleteSheet(sheet))
	}
	ts.Check(f.DeleteSheet(first))
	ts.Check(f.SaveAs(ts.MkAbs(args[0]), excelize.Options{Password: password}))
}

// addSheet writes CSV text to a new sheet, every cell as text.
func addSheet(f *excelize.File, name, text string) error {
	r := csv.NewReader(strings.NewReader(text))
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	if err != nil {
		return err
	}
	if _, err := f.NewSheet(name); err != nil {
		return err
	}
	for i, row := range rows {
		for j, cell := range row {
			at, err := excelize.CoordinatesToCellName(j+1, i+1)
			if err := errors.Join(err, f.SetCellStr(name, at, cell)); err != nil {
				return err
			}
		}
	}
	return nil
}
