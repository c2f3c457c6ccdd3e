package workbook

import (
	"bytes"
	"fmt"
	"testing"

	"github.com/xuri/excelize/v2"
)

// generated is a schedule of the given size, with shared texts, numbers and
// dates in the shares a schedule has them.
func generated(tb testing.TB, rows, cols int) []byte {
	tb.Helper()
	f := excelize.NewFile()
	defer f.Close()
	date, err := f.NewStyle(&excelize.Style{NumFmt: 15})
	if err != nil {
		tb.Fatal(err)
	}
	for row := 1; row <= rows; row++ {
		for col := 1; col <= cols; col++ {
			cell := Ref(row, col)
			switch col % 4 {
			case 0:
				err = f.SetCellValue("Sheet1", cell, float64(row)*0.01+float64(col))
			case 1:
				err = f.SetCellValue("Sheet1", cell, 46000+row%300)
				if err == nil {
					err = f.SetCellStyle("Sheet1", cell, cell, date)
				}
			default:
				err = f.SetCellValue("Sheet1", cell, fmt.Sprintf("self-adhered sheet, 40 mil, type %d", (row*col)%500))
			}
			if err != nil {
				tb.Fatal(err)
			}
		}
	}
	return saved(tb, f)
}

func saved(tb testing.TB, f *excelize.File) []byte {
	tb.Helper()
	buf, err := f.WriteToBuffer()
	if err != nil {
		tb.Fatal(err)
	}
	return buf.Bytes()
}

// BenchmarkRead sets this reader, which gives types, dates, styles and
// addresses, beside the library's own row reader, which gives bare strings.
func BenchmarkRead(b *testing.B) {
	data := generated(b, 5000, 20)
	b.Run("grid", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := Read("bench.xlsx", data, DefaultLimits()); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("bare", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			f, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{RawCellValue: true})
			if err != nil {
				b.Fatal(err)
			}
			if _, err := f.GetRows("Sheet1"); err != nil {
				b.Fatal(err)
			}
			f.Close()
		}
	})
}

// BenchmarkEmptyFormatting reads a million rows that hold nothing but a style.
func BenchmarkEmptyFormatting(b *testing.B) {
	data := emptyRows(b, 1_000_000)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Read("bench.xlsx", data, DefaultLimits()); err != nil {
			b.Fatal(err)
		}
	}
}
