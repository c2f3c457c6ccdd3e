package engine

import (
	"bytes"
	"context"
	"encoding/csv"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"abut/internal/document"
	"abut/internal/workbook"
	"abut/policies"
)

// FuzzChanged changes a sound workbook at random, as hands in a hurry do: sheets,
// rows and columns deleted, cells emptied, cut off or copied elsewhere. Whatever is
// left is judged without an error, and does not hang. Of a folder named by
// ABUT_SAMPLES the workbooks are changed too.
func FuzzChanged(f *testing.F) {
	books := [][]byte{wideBook(f)}
	if folder := os.Getenv("ABUT_SAMPLES"); folder != "" {
		files, err := filepath.Glob(filepath.Join(folder, "*.xlsx"))
		if err != nil {
			f.Fatal(err)
		}
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				f.Fatal(err)
			}
			books = append(books, data)
		}
	}
	for seed := range uint64(24) {
		f.Add(seed)
	}
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		f.Fatal(err)
	}
	rules, err := Load(Options{})
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, seed uint64) {
		data := changed(t, books[seed%uint64(len(books))], rand.New(rand.NewPCG(seed, 0)))
		book, err := workbook.Read("changed.xlsx", data, workbook.DefaultLimits())
		if err != nil {
			return // nothing is left, and that is said
		}
		doc, err := builder.Build(book, document.Settings{})
		if err != nil {
			return // no schedule is left
		}
		ctx, cancel := context.WithTimeout(t.Context(), time.Minute) // a hang, not a pace: the race detector is slow
		defer cancel()
		if _, err := rules.Judge(ctx, doc); err != nil {
			t.Fatal(err)
		}
	})
}

// wideBook is the demo with sheets that say what it does not.
func wideBook(f *testing.F) []byte {
	f.Helper()
	book, err := excelize.OpenFile("../../testdata/demo/tern-landing.xlsx")
	if err != nil {
		f.Fatal(err)
	}
	defer book.Close()
	for i, text := range append(schedules, mixedSchedule(1)) {
		sheet := fmt.Sprintf("More %d", i)
		if _, err := book.NewSheet(sheet); err != nil {
			f.Fatal(err)
		}
		records := csv.NewReader(strings.NewReader(text))
		records.FieldsPerRecord = -1
		if strings.Contains(text, "|") {
			records.Comma = '|'
		}
		rows, err := records.ReadAll()
		if err != nil {
			f.Fatal(err)
		}
		for r, row := range rows {
			if err := book.SetSheetRow(sheet, workbook.Ref(r+1, 1), &row); err != nil {
				f.Fatal(err)
			}
		}
	}
	out, err := book.WriteToBuffer()
	if err != nil {
		f.Fatal(err)
	}
	return out.Bytes()
}

// changed is a workbook with every sixth cell of it another, about half of its
// sheets gone, and in some of the others a row or a column less.
func changed(t *testing.T, data []byte, random *rand.Rand) []byte {
	t.Helper()
	book, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	defer book.Close()
	for _, sheet := range book.GetSheetList() {
		if random.IntN(2) == 0 {
			if err := book.DeleteSheet(sheet); err != nil { // the last one stays
				t.Fatal(err)
			}
			continue
		}
		rows, err := book.GetRows(sheet)
		if err != nil {
			t.Fatal(err)
		}
		var texts []string
		for _, row := range rows {
			texts = append(texts, row...)
		}
		for r, row := range rows {
			for c, text := range row {
				if random.IntN(6) > 0 {
					continue
				}
				if err := book.SetCellValue(sheet, workbook.Ref(r+1, c+1), another(random, text, texts)); err != nil {
					t.Fatal(err)
				}
			}
		}
		if random.IntN(3) == 0 {
			_ = book.RemoveRow(sheet, 1+random.IntN(12)) // of some sheets excelize takes no row or column; then it stays
		}
		if random.IntN(3) == 0 {
			_ = book.RemoveCol(sheet, workbook.ColumnName(1+random.IntN(6)))
		}
	}
	out, err := book.WriteToBuffer()
	if err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// another is what may come to stand where a text stood.
func another(random *rand.Rand, text string, texts []string) any {
	signs := []rune(text)
	switch random.IntN(6) {
	case 0:
		return nil
	case 1:
		return texts[random.IntN(len(texts))]
	case 2:
		return string(signs[:random.IntN(1+len(signs))])
	case 3:
		tails := []string{" 1", ";", "(", "–", " 40 mil", " R-10", " 5 gal", "½", "\u202e"}
		return text + tails[random.IntN(len(tails))]
	case 4:
		return []float64{0, -1, 1e9, 3.5}[random.IntN(4)]
	}
	slices.Reverse(signs)
	return string(signs)
}
