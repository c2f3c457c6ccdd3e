package workbook

import (
	"bytes"
	"slices"
	"testing"

	"github.com/xuri/excelize/v2"
)

// TestLists reads where drop-downs take their words from, in every form that
// spreadsheet programs write.
func TestLists(t *testing.T) {
	plain := func(formula string) string {
		return `<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData><dataValidations count="1"><dataValidation type="list" sqref="B1:B9"><formula1>` +
			formula + `</formula1></dataValidation></dataValidations>`
	}
	for name, tt := range map[string]struct {
		sheet string
		want  []Range
	}{
		"range":          {plain("S!$A$2:$A$9"), []Range{{2, 1, 9, 1}}},
		"same sheet":     {plain("$A$2:$A$9"), []Range{{2, 1, 9, 1}}},
		"quoted":         {plain("'S'!A2:B3"), []Range{{2, 1, 3, 2}}},
		"whole column":   {plain("S!$C:$C"), []Range{{1, 3, lastRow, 3}}},
		"words":          {plain(`"yes,no"`), nil},
		"computed":       {plain("INDIRECT(A1)"), nil},
		"other sheet":    {plain("T!$A$2:$A$9"), nil},
		"backward":       {plain("S!$A$9:$A$2"), nil},
		"not a list":     {`<sheetData/><dataValidations><dataValidation type="whole"><formula1>A1:A2</formula1></dataValidation></dataValidations>`, nil},
		"extension form": {`<sheetData/><extLst><ext><x14:dataValidations><x14:dataValidation type="list"><x14:formula1><xm:f>S!$A$1:$A$2</xm:f></x14:formula1></x14:dataValidation></x14:dataValidations></ext></extLst>`, []Range{{1, 1, 2, 1}}},
	} {
		t.Run(name, func(t *testing.T) {
			book := mustRead(t, rawBook(filled(tt.sheet)).zip(t))
			if got := book.Sheets[0].Lists; !slices.Equal(got, tt.want) {
				t.Errorf("got %v, want %v", got, tt.want)
			}
		})
	}
}

// filled puts a cell into a sheet without any, which would be refused.
func filled(sheet string) string {
	const bare = `<sheetData/>`
	if len(sheet) >= len(bare) && sheet[:len(bare)] == bare {
		return `<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>` + sheet[len(bare):]
	}
	return sheet
}

// TestFeedsDropDowns tells a sheet of words from one whose first column is
// offered elsewhere too.
func TestFeedsDropDowns(t *testing.T) {
	f := excelize.NewFile()
	defer f.Close()
	for _, sheet := range []string{"Words", "Products"} {
		if _, err := f.NewSheet(sheet); err != nil {
			t.Fatal(err)
		}
	}
	for at, text := range map[string]string{"A1": "offered", "A2": "brick", "A3": "block"} {
		set(t, f, "Words", at, text)
	}
	for at, text := range map[string]string{"A2": "M-1", "B2": "sheet", "C2": "40 mil"} {
		set(t, f, "Products", at, text)
	}
	set(t, f, "Sheet1", "A1", "Item")
	if err := f.SetDefinedName(&excelize.DefinedName{Name: "Walls", RefersTo: "Words!$A$2:$A$40"}); err != nil {
		t.Fatal(err)
	}
	for cells, source := range map[string]string{"B2:B9": "Walls", "C2:C9": "Products!$A$2:$A$40"} {
		v := excelize.NewDataValidation(true)
		v.SetSqref(cells)
		v.SetSqrefDropList(source)
		if err := f.AddDataValidation("Sheet1", v); err != nil {
			t.Fatal(err)
		}
	}
	var out bytes.Buffer
	if err := f.Write(&out); err != nil {
		t.Fatal(err)
	}
	for _, s := range mustRead(t, out.Bytes()).Sheets {
		if want := s.Name == "Words"; s.FeedsDropDowns() != want {
			t.Errorf("%s feeds drop-downs: %v, want %v (%v)", s.Name, !want, want, s.Lists)
		}
	}
}

func set(t *testing.T, f *excelize.File, sheet, at, text string) {
	t.Helper()
	if err := f.SetCellStr(sheet, at, text); err != nil {
		t.Fatal(err)
	}
}
