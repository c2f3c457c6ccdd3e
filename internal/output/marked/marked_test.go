package marked

import (
	"archive/zip"
	"bytes"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/schedule"
	"abut/internal/workbook"
)

// found makes a finding at cells of a sheet.
func found(file, sheet, severity, message string, cells ...string) engine.Finding {
	row, _, _ := place(cells[0])
	return engine.Finding{
		Rule: "a-rule", Topic: "data", Severity: severity, File: file, Sheet: sheet, Row: row, Cells: cells,
		Message: message, Reason: "the reason", Remedy: "the remedy", Source: "common practice",
	}
}

// mark gives the marked copy.
func mark(t *testing.T, file string, data []byte, findings ...engine.Finding) []byte {
	t.Helper()
	run := output.Run{
		Files: []string{file}, Findings: findings,
		Reading: []output.Reading{{File: file, Reading: schedule.Reading{Unread: []schedule.Unread{
			{Text: "=unread(1)", Why: "no known material in it", At: schedule.At{Row: 2, Cell: "B2", Sheet: findings[0].Sheet}},
		}}}},
	}
	var b, again bytes.Buffer
	kept := bytes.Clone(data)
	if err := Write(&b, data, run); err != nil {
		t.Fatal(err)
	}
	if err := Write(&again, data, run); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(b.Bytes(), again.Bytes()) {
		t.Error("the same workbook gives other bytes the second time")
	}
	if !bytes.Equal(kept, data) {
		t.Error("the original was changed")
	}
	return b.Bytes()
}

func open(t *testing.T, data []byte) *excelize.File {
	t.Helper()
	f, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { f.Close() })
	return f
}

// parts unpacks a workbook.
func parts(t *testing.T, data []byte) map[string][]byte {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string][]byte{}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		if out[f.Name], err = io.ReadAll(r); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

// kept holds a marked copy against its original: parts, and every cell. Only
// the fill, and where it was light the ink, of the cells in marks may differ,
// and their links and comments.
func kept(t *testing.T, before, after []byte, marks map[string]bool) {
	t.Helper()
	was, is := parts(t, before), parts(t, after)
	for name, data := range was {
		got, there := is[name]
		changes := slices.ContainsFunc([]string{"worksheets/", "styles.xml", "comments", "vmlDrawing", "workbook.xml", "[Content_Types].xml"},
			func(s string) bool { return strings.Contains(name, s) })
		if !there || !changes && !bytes.Equal(data, got) {
			t.Errorf("part %s is not as it was", name)
		}
	}
	a, b := open(t, before), open(t, after)
	for _, sheet := range a.GetSheetList() {
		keptSheet(t, a, b, sheet, marks)
	}
	if x, y := a.GetDefinedName(), b.GetDefinedName(); len(y) != len(x)+1 {
		t.Errorf("%d defined names, want %d and the titles of the new sheet", len(y), len(x))
	}
}

func keptSheet(t *testing.T, a, b *excelize.File, sheet string, marks map[string]bool) {
	t.Helper()
	for name, of := range map[string]func(f *excelize.File) (any, error){
		"merged cells":        func(f *excelize.File) (any, error) { return f.GetMergeCells(sheet) },
		"conditional formats": func(f *excelize.File) (any, error) { return f.GetConditionalFormats(sheet) },
		"data validations":    func(f *excelize.File) (any, error) { return f.GetDataValidations(sheet) },
		"page layout":         func(f *excelize.File) (any, error) { return f.GetPageLayout(sheet) },
		"margins":             func(f *excelize.File) (any, error) { return f.GetPageMargins(sheet) },
		"panes":               func(f *excelize.File) (any, error) { return f.GetPanes(sheet) },
		"tables":              func(f *excelize.File) (any, error) { return f.GetTables(sheet) },
		"cells with pictures": func(f *excelize.File) (any, error) { return f.GetPictureCells(sheet) },
		"protection":          func(f *excelize.File) (any, error) { return f.GetSheetProtection(sheet) },
		"visibility":          func(f *excelize.File) (any, error) { return f.GetSheetVisible(sheet) },
	} {
		x, errX := of(a)
		y, errY := of(b)
		same(t, sheet+": "+name, x, y, errX, errY)
	}
	rows, err := a.GetRows(sheet)
	if err != nil {
		return // a sheet of a chart
	}
	wide := 1
	for i, row := range rows {
		x, errX := a.GetRowHeight(sheet, i+1)
		y, errY := b.GetRowHeight(sheet, i+1)
		same(t, sheet+": height of a row", x, y, errX, errY)
		wide = max(wide, len(row)+2)
		for j := range len(row) + 2 {
			keptCell(t, a, b, sheet, workbook.Ref(i+1, j+1), marks[sheet+"!"+workbook.Ref(i+1, j+1)])
		}
	}
	for j := range wide {
		x, errX := a.GetColWidth(sheet, workbook.ColumnName(j+1))
		y, errY := b.GetColWidth(sheet, workbook.ColumnName(j+1))
		same(t, sheet+": width of a column", x, y, errX, errY)
	}
}

func keptCell(t *testing.T, a, b *excelize.File, sheet, cell string, marked bool) {
	t.Helper()
	where := sheet + "!" + cell
	for name, of := range map[string]func(f *excelize.File) (any, error){
		"value": func(f *excelize.File) (any, error) { return f.GetCellValue(sheet, cell) },
		"raw": func(f *excelize.File) (any, error) {
			return f.GetCellValue(sheet, cell, excelize.Options{RawCellValue: true})
		},
		"formula":  func(f *excelize.File) (any, error) { return f.GetCellFormula(sheet, cell) },
		"type":     func(f *excelize.File) (any, error) { return f.GetCellType(sheet, cell) },
		"rich":     func(f *excelize.File) (any, error) { return f.GetCellRichText(sheet, cell) },
		"pictures": func(f *excelize.File) (any, error) { return f.GetPictures(sheet, cell) },
	} {
		x, errX := of(a)
		y, errY := of(b)
		same(t, where+": "+name, x, y, errX, errY)
	}
	x, y := style(t, a, sheet, cell), style(t, b, sheet, cell)
	if marked {
		if len(y.Fill.Color) == 0 {
			t.Errorf("%s has no fill", where)
		}
		x.Fill, y.Fill = excelize.Fill{}, excelize.Fill{}
		if x.Font != nil && y.Font != nil && y.Font.Color == "1F2328" {
			x.Font.Color, y.Font.Color, x.Font.ColorTheme, x.Font.ColorIndexed, y.Font.ColorIndexed, x.Font.ColorTint = "", "", nil, 0, 0, 0
		}
	}
	same(t, where+": style", x, y, nil, nil)
}

// style gives the format of a cell; where a workbook has none, an empty one.
func style(t *testing.T, f *excelize.File, sheet, cell string) *excelize.Style {
	t.Helper()
	id, err := f.GetCellStyle(sheet, cell)
	if err != nil {
		t.Fatal(err)
	}
	s, err := f.GetStyle(id)
	if err != nil {
		return &excelize.Style{}
	}
	return s
}

// TestKept: of every workbook at hand all is kept, whatever cells are marked.
func TestKept(t *testing.T) {
	folders := []string{filepath.Join("..", "..", "..", "testdata")}
	if more := os.Getenv("ABUT_SAMPLES"); more != "" {
		folders = append(folders, more)
	}
	files, err := workbook.Find(folders)
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		if filepath.Ext(file) == ".csv" {
			continue
		}
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		t.Run(filepath.Base(file), func(t *testing.T) { keptSpread(t, file, data) })
	}
}

// keptSpread marks every seventh cell of each sheet, and one beyond the last.
func keptSpread(t *testing.T, file string, data []byte) {
	book, err := workbook.Read(file, data, workbook.DefaultLimits())
	if err != nil {
		t.Skip(err) // what cannot be read has no findings
	}
	var findings []engine.Finding
	marks := map[string]bool{}
	severities := engine.Severities()
	for _, sheet := range book.Sheets {
		if sheet.Kind != workbook.Worksheet {
			continue
		}
		n := 0
		for _, row := range sheet.Rows {
			for _, c := range row.Cells {
				if n++; n%7 == 1 && !c.Merged && n < 2000 {
					findings = append(findings, found(file, sheet.Name, severities[n%3], "what is wrong", c.Ref()))
					marks[sheet.Name+"!"+c.Ref()] = true
				}
			}
		}
		end := workbook.Ref(sheet.MaxRow+2, sheet.MaxCol+1)
		findings = append(findings, found(file, sheet.Name, "error", "beyond", end))
		marks[sheet.Name+"!"+end] = true
	}
	kept(t, data, mark(t, file, data, findings...), marks)
}

// TestThroughout: what is told once for many rows is still shown in each of them.
func TestThroughout(t *testing.T) {
	book := excelize.NewFile()
	defer book.Close()
	for _, cell := range []string{"A1", "A2", "A3"} {
		if err := book.SetCellStr("Sheet1", cell, "text"); err != nil {
			t.Fatal(err)
		}
	}
	data, err := book.WriteToBuffer()
	if err != nil {
		t.Fatal(err)
	}
	once := found("walls.xlsx", "Sheet1", "error", "2 of the 2 rows below", "A1")
	once.Throughout = true
	once.Related = []engine.Related{
		{Sheet: "Sheet1", Row: 2, Cells: []string{"A2"}, What: "wrong in the second"},
		{Sheet: "Sheet1", Row: 3, Cells: []string{"A3"}, What: "wrong in the third"},
	}
	comments, err := open(t, mark(t, "walls.xlsx", data.Bytes(), once)).GetComments("Sheet1")
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]string{"A1": "2 of the 2 rows below", "A2": "wrong in the second", "A3": "wrong in the third"}
	for _, c := range comments {
		text := c.Text
		for _, run := range c.Paragraph {
			text += run.Text
		}
		if !strings.Contains(text, want[c.Cell]) {
			t.Errorf("%s says %q, want %q", c.Cell, text, want[c.Cell])
		}
		delete(want, c.Cell)
	}
	if len(want) > 0 {
		t.Errorf("no comment at %v", want)
	}
	once.Throughout = false // related rows of other findings take part, and are not at fault
	comments, err = open(t, mark(t, "walls.xlsx", data.Bytes(), once)).GetComments("Sheet1")
	if err != nil || len(comments) != 1 {
		t.Errorf("%d comments (%v), want one", len(comments), err)
	}
}
