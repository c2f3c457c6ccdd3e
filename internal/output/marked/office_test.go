package marked

import (
	"bytes"
	"errors"
	"image"
	"image/png"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"abut/internal/engine"
)

const longName = "Level 2 'East' wall & roof edge"

// office makes a workbook with what offices put into theirs.
func office(t *testing.T) []byte {
	t.Helper()
	var picture bytes.Buffer
	f := excelize.NewFile()
	defer f.Close()
	head, err := f.NewStyle(&excelize.Style{
		Font: &excelize.Font{Bold: true, Color: "FFFFFF"}, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"203040"}},
		Border: []excelize.Border{{Type: "bottom", Style: 2, Color: "000000"}}, NumFmt: 4,
	})
	paint, errPaint := f.NewConditionalStyle(&excelize.Style{Font: &excelize.Font{Color: "9A0511"}})
	choice := excelize.NewDataValidation(true)
	choice.Sqref = "C2:C9"
	rows, landscape, hidden := "$1:$1", "landscape", false
	err = errors.Join(err, errPaint, png.Encode(&picture, image.NewGray(image.Rect(0, 0, 3, 2))),
		f.SetSheetName("Sheet1", longName),
		f.SetSheetRow(longName, "A1", &[]any{"Item", "Area", "Primer", "Total", "Remark"}),
		f.SetSheetRow(longName, "A2", &[]any{101, 12.5, "P-1", nil, "=not(a formula)"}),
		f.SetSheetRow(longName, "A3", &[]any{102, 7, "P-2", nil, "a remark that is a good deal longer than its cell"}),
		f.SetCellFormula(longName, "D2", "B2*2"), f.SetCellFormula(longName, "D3", "SUM(B2:B3)"),
		f.SetCellStyle(longName, "A1", "E1", head), f.SetColWidth(longName, "B", "B", 33), f.SetRowHeight(longName, 3, 41),
		f.SetCellRichText(longName, "C3", []excelize.RichTextRun{{Text: "P-1", Font: &excelize.Font{Strike: true}}, {Text: " P-2"}}),
		f.MergeCell(longName, "A6", "B8"), f.SetCellStr(longName, "A6", "merged"),
		f.SetRowVisible(longName, 2, false), f.SetColVisible(longName, "D", hidden),
		f.AddComment(longName, excelize.Comment{Cell: "B2", Author: "spec writer", Text: "as agreed <here> & now"}),
		f.AddComment(longName, excelize.Comment{Cell: "B3", Author: "spec writer", Text: "untouched"}),
		f.SetCellHyperLink(longName, "A3", "https://example.org/", "External"),
		f.AddPictureFromBytes(longName, "G2", &excelize.Picture{Extension: ".png", File: picture.Bytes()}),
		f.AddChart(longName, "G6", &excelize.Chart{Type: excelize.Col, Series: []excelize.ChartSeries{{Values: "'Level 2 ''East'' wall & roof edge'!$B$2:$B$3"}}}),
		f.SetConditionalFormat(longName, "B2:B9", []excelize.ConditionalFormatOptions{{Type: "cell", Criteria: ">", Value: "10", Format: &paint}}),
		choice.SetDropList([]string{"P-1", "P-2"}), f.AddDataValidation(longName, choice),
		f.SetDefinedName(&excelize.DefinedName{Name: "Areas", RefersTo: "'Level 2 ''East'' wall & roof edge'!$B$2:$B$3"}),
		f.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: "'Level 2 ''East'' wall & roof edge'!" + rows, Scope: longName}),
		f.SetPageLayout(longName, &excelize.PageLayoutOptions{Orientation: &landscape}),
		f.ProtectSheet(longName, &excelize.SheetProtectionOptions{Password: "word", SelectLockedCells: true}),
		f.AddFormControl(longName, excelize.FormControl{Cell: "G20", Type: excelize.FormControlButton, Text: "press"}),
		newSheet(f, "Findings"), f.SetCellStr("Findings", "A1", "the author's own"),
		newSheet(f, "Behind"), f.SetCellStr("Behind", "B4", "hidden sheet"), f.SetSheetVisible("Behind", false),
	)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if _, err := f.WriteTo(&b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func newSheet(f *excelize.File, name string) error {
	_, err := f.NewSheet(name)
	return err
}

const evil = `=cmd|' /c calc'!A0 <b>&"_x0041_`

// marksOfOffice are findings at every kind of cell that office has.
func marksOfOffice() []engine.Finding {
	waived := found("o.xlsx", longName, "error", "waived one", "C2")
	waived.Waived = &engine.Waived{Reason: "letter 12", By: "reviewer"}
	return []engine.Finding{
		found("o.xlsx", longName, "error", "on a dark fill", "A1"),
		found("o.xlsx", longName, "note", evil, "B2", "D2"),
		found("o.xlsx", longName, "error", "second here", "B2"),
		waived,
		found("o.xlsx", longName, "warning", "a link of its own", "A3"),
		found("o.xlsx", longName, "warning", "struck out in part", "C3"),
		found("o.xlsx", longName, "warning", "in merged cells", "B7"),
		found("o.xlsx", longName, "error", "an empty cell", "F40"),
		found("o.xlsx", "Behind", "error", "on a hidden sheet", "B4"),
		found("o.xlsx", "Nowhere", "error", "on no sheet", "B4"),
	}
}

func TestOffice(t *testing.T) {
	data := office(t)
	after := mark(t, "o.xlsx", data, marksOfOffice()...)
	marks := map[string]bool{"Behind!B4": true}
	for _, cell := range []string{"A1", "B2", "D2", "C2", "A3", "C3", "A6", "F40"} {
		marks[longName+"!"+cell] = true
	}
	kept(t, data, after, marks)
	f := open(t, after)
	if want := []string{longName, "Findings", "Behind", "Findings 2"}; !slices.Equal(f.GetSheetList(), want) {
		t.Fatalf("sheets %q, want %q", f.GetSheetList(), want)
	}
	if s := style(t, f, longName, "A1"); s.Font.Color != "1F2328" {
		t.Errorf("white text on the fill of an error: %+v", s.Font)
	}
	if s := style(t, f, longName, "C2"); s.Fill.Pattern == 1 {
		t.Errorf("a waived finding is filled as others are: %+v", s.Fill)
	}
	commented(t, f)
	linked(t, f)
	listed(t, f)
}

// commented: the author's words come first, and what was theirs is as it was.
func commented(t *testing.T, f *excelize.File) {
	t.Helper()
	list, err := f.GetComments(longName)
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	for _, c := range list {
		texts[c.Cell] += c.Text
		for _, run := range c.Paragraph {
			texts[c.Cell] += run.Text
		}
	}
	in := func(cell string, want ...string) {
		at := -1
		for _, w := range want {
			next := strings.Index(texts[cell], w)
			if next <= at {
				t.Errorf("comment of %s: %q lacks %q, or in that order", cell, texts[cell], w)
			}
			at = next
		}
	}
	in("B2", "as agreed <here> & now", "abut, note: =cmd|' /c calc'!A0 <b>&\"", "Do: the remedy", "abut, error: second here")
	in("C2", "abut, waived error: waived one", "Waived by reviewer: letter 12")
	in("A6", "abut, warning: in merged cells")
	in("F40", "abut, error: an empty cell", "Findings 2, row")
	if texts["B3"] != "untouched" || len(list) != 9 {
		t.Errorf("%d comments, B3 %q", len(list), texts["B3"])
	}
}

// linked: cells lead to the list but where that would take or hide something.
func linked(t *testing.T, f *excelize.File) {
	t.Helper()
	for cell, want := range map[string]string{
		"A1": "'Findings 2'!A10", "B2": "'Findings 2'!A11", "A3": "https://example.org/", "C3": "", "B3": "",
	} {
		_, got, err := f.GetCellHyperLink(longName, cell)
		if err != nil || got != want {
			t.Errorf("link of %s: %q, want %q, %v", cell, got, want, err)
		}
	}
	_, got, err := f.GetCellHyperLink("Findings 2", "D11")
	if want := "'Level 2 ''East'' wall & roof edge'!B2"; err != nil || got != want {
		t.Errorf("link of the list: %q, want %q, %v", got, want, err)
	}
}

// listed: every finding has its row, and nothing in the list is a formula.
func listed(t *testing.T, f *excelize.File) {
	t.Helper()
	rows, err := f.GetRows("Findings 2")
	if err != nil {
		t.Fatal(err)
	}
	all := ""
	for i, row := range rows {
		all += strings.Join(row, " | ") + "\n"
		for j := range row {
			cell, _ := excelize.CoordinatesToCellName(j+1, i+1)
			if formula, err := f.GetCellFormula("Findings 2", cell); err != nil || formula != "" {
				t.Errorf("%s holds a formula %q, %v", cell, formula, err)
			}
		}
	}
	for _, want := range []string{
		"1 | error | " + longName + " | A1", evil, "B2 hidden | D2 hidden", "waived one", "A6", "F40", "Behind | B4 hidden",
		"error | Nowhere", "Not understood", "=unread(1) | no known material in it", "licensed professional decide", "rule a-rule",
	} {
		if !strings.Contains(all, want) {
			t.Errorf("the list lacks %q:\n%s", want, all)
		}
	}
}

// TestText makes a workbook of a text table, in which nothing is a formula.
func TestText(t *testing.T) {
	csv := "Item,Primer\n1,=HYPERLINK(\"x\")\n2,P-9\n"
	after := mark(t, "walls: [east] and a name that is long.csv", []byte(csv), found("walls: [east] and a name that is long.csv", "", "error", "wrong", "B3"))
	f := open(t, after)
	sheet := f.GetSheetName(0)
	if sheet != "walls- -east- and a name that i" {
		t.Errorf("sheet %q", sheet)
	}
	value, err := f.GetCellValue(sheet, "B2")
	formula, errFormula := f.GetCellFormula(sheet, "B2")
	if value != `=HYPERLINK("x")` || formula != "" || err != nil || errFormula != nil {
		t.Errorf("B2 holds %q, formula %q, %v %v", value, formula, err, errFormula)
	}
	if s := style(t, f, sheet, "B3"); len(s.Fill.Color) == 0 {
		t.Error("B3 has no fill")
	}
}
