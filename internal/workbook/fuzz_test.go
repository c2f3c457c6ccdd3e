package workbook

import (
	"errors"
	"strings"
	"testing"
)

// FuzzRead gives the reader any bytes: it must answer with a sound book or a
// FileError of one line.
func FuzzRead(f *testing.F) {
	f.Add("a.xlsx", rawBook(inRow(`<c r="A1" t="s"><v>0</v></c><c r="B1" s="3"><f>A1</f><v>46000</v></c>`)+`<mergeCells><mergeCell ref="A1:A3"/></mergeCells>`).zip(f))
	f.Add("a.xlsx", generated(f, 3, 4))
	f.Add("a.xlsx", []byte(ole("EncryptedPackage")))
	f.Add("a.csv", []byte("a;\"b \"\"c\"\"\"\r\n1,0;2\n"))
	f.Add("a.csv", []byte("\xff\xfea\x00,\x00b\x00"))
	f.Add("a.csv", []byte("Temp\xe9rature,5 \xb0C"))
	lim := DefaultLimits()
	lim.UnpackedBytes, lim.PartBytes, lim.Cells = 1<<22, 1<<20, 10_000
	f.Fuzz(func(t *testing.T, name string, data []byte) {
		checkRead(t, name, data, lim)
	})
}

// FuzzSheet puts any text where the cells of a worksheet stand: random bytes
// seldom make a sound archive, so most of what FuzzRead tries ends early.
func FuzzSheet(f *testing.F) {
	f.Add(inRow(`<c r="A1" t="s"><v>0</v></c><c r="B1" s="3"><v>46000</v></c>`), "yyyy-mm-dd")
	f.Add(`<cols><col min="1" max="3" hidden="1"/></cols><sheetData><row r="2"><c r="C2" s="1" t="inlineStr"><is><r><rPr><strike/></rPr><t>a</t></r></is></c></row></sheetData>`, `0" mil"`)
	f.Add(inRow(`<c r="A1" s="3"><v>-1.5</v></c>`)+`<mergeCells><mergeCell ref="A1:C4"/></mergeCells>`, `# ??/16;[Red](0%);"-"`)
	lim := DefaultLimits()
	lim.Cells = 10_000
	f.Fuzz(func(t *testing.T, sheet, code string) {
		for _, x := range []float64{0, 1, -2.375, 46000.5, 1e20} {
			_ = parseFormat(code).show(x)
		}
		checkRead(t, "a.xlsx", rawBook(sheet).zip(t), lim)
	})
}

// FuzzCSV reads any bytes as a text table; FuzzRead's have a zip's beginning
// more often than not.
func FuzzCSV(f *testing.F) {
	for _, s := range []string{"a,b\n1,2\n", "a;\"b \"\"c\"\"\"\r\n1,0;2\n", "\xff\xfea\x00,\x00b\x00", "\xfe\xff\x00a\x00\t", "\xef\xbb\xbfa|b", "Temp\xe9rature,5 \xb0C", "a,\x00b", "1/2\" sheet,3\"\n\"open", "a\rb\rc", "sep=;\na;b\n", "\n\n,,,\n x", "\x1b[31m,\u202e"} {
		f.Add([]byte(s))
	}
	lim := DefaultLimits()
	lim.Cells = 10_000
	f.Fuzz(func(t *testing.T, data []byte) {
		checkRead(t, "a.csv", data, lim)
	})
}

func checkRead(t *testing.T, name string, data []byte, lim Limits) {
	t.Helper()
	book, err := Read(name, data, lim)
	var fe *FileError
	switch {
	case err == nil && book != nil:
	case book != nil, !errors.As(err, &fe):
		t.Fatalf("%v with %v", book, err)
	case strings.ContainsAny(err.Error(), "\n\r\x1b"), fe.Do == "":
		t.Fatalf("not one line with what to do: %q", err)
	case strings.Contains(fe.Problem, "stopped the reader"):
		t.Fatalf("a panic was caught: %v", err)
	default:
		return
	}
	for _, s := range book.Sheets {
		last := 0
		for _, row := range s.Rows {
			if row.Number <= last || row.Number > s.MaxRow || len(row.Cells) == 0 {
				t.Fatalf("row %d after %d of %d holds %d cells", row.Number, last, s.MaxRow, len(row.Cells))
			}
			last = row.Number
			for i, c := range row.Cells {
				if c.Row != row.Number || c.Col > s.MaxCol || c.Col < 1 || i > 0 && c.Col <= row.Cells[i-1].Col {
					t.Fatalf("cell %s is out of place in row %d", c.Ref(), row.Number)
				}
				if got, ok := s.At(c.Row, c.Col); !ok || got != c {
					t.Fatalf("%s is not found: %+v", c.Ref(), got)
				}
			}
		}
	}
}
