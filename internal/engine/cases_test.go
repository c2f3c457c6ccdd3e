package engine

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/schedule"
	"abut/internal/workbook"
	"abut/policies"
)

// TestCases judges each case once and holds that against judging every row,
// on workbooks in which each row stands three times.
func TestCases(t *testing.T) {
	e := loaded(t)
	for name, doc := range testDocuments(t, 2) {
		t.Run(name, func(t *testing.T) {
			c := e.shared.Held.cases(doc, true, 0)
			if name == "mixed.csv" && len(c.copies) == 0 {
				t.Error("no row says the same as another, so nothing is shown")
			}
			compareFindings(t, judged(t, e, doc, nil), judged(t, e, doc, c))
		})
	}
}

// TestLooks takes every other row away: only a rule that says that it looks
// across rows may then tell anything else of the rows that stay, or with the one
// half and the other anything else of a product or of the sheet.
func TestLooks(t *testing.T) {
	e := loaded(t)
	e.shared.Most = most{} // what is told once for a table counts its rows
	for name, doc := range testDocuments(t, 0) {
		t.Run(name, func(t *testing.T) {
			if len(doc.Products) > 0 {
				doc.Products[0].Texts["service"] = "#REF!" // something to tell of a product
			}
			whole := judged(t, e, doc, nil)
			var halves []Finding
			for odd := range 2 {
				part := everyOther(e.shared.Held, doc, odd)
				kept := map[string]bool{}
				for _, line := range part.Lines {
					kept[fmt.Sprint(line.Sheet, line.Row)] = true
				}
				of := func(findings []Finding) []Finding {
					var out []Finding
					for _, f := range findings {
						if kept[fmt.Sprint(f.Sheet, f.Row)] && !e.across()[fileOf(e, f.Rule)] {
							out = append(out, f)
						}
					}
					return out
				}
				half := judged(t, e, part, nil)
				compareFindings(t, of(whole), of(half))
				halves = append(halves, half...)
			}
			if want, got := toldAtNoRow(e, doc, whole), toldAtNoRow(e, doc, halves); !slices.Equal(want, got) {
				t.Errorf("told at no row\n%s\nof the two halves\n%s", strings.Join(want, "\n"), strings.Join(got, "\n"))
			}
		})
	}
}

// toldAtNoRow is what rules that do not look across rows tell of a product or at
// an address.
func toldAtNoRow(e *Engine, doc *document.Document, findings []Finding) []string {
	row := map[rowAt]bool{}
	for _, line := range doc.Lines {
		row[rowAt{line.Sheet, line.Row}] = true
	}
	var told []string
	for _, f := range findings {
		if !row[rowAt{f.Sheet, f.Row}] && !e.across()[fileOf(e, f.Rule)] {
			told = append(told, fmt.Sprintf("%s %s %d: %s", f.Rule, f.Sheet, f.Row, f.Message))
		}
	}
	slices.Sort(told)
	return slices.Compact(told)
}

func loaded(t *testing.T) *Engine {
	t.Helper()
	e, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func judged(t *testing.T, e *Engine, doc *document.Document, c *cases) []Finding {
	t.Helper()
	findings, err := e.judge(t.Context(), doc, c)
	if err != nil {
		t.Fatal(err)
	}
	return findings
}

func fileOf(e *Engine, rule string) string {
	for _, r := range e.rules {
		if r.ID == rule {
			return r.File
		}
	}
	return ""
}

func compareFindings(t *testing.T, want, got []Finding) {
	t.Helper()
	left := map[string]int{}
	for _, f := range want {
		left[fmt.Sprintf("%+v", f)]++
	}
	for _, f := range got {
		if left[fmt.Sprintf("%+v", f)]--; left[fmt.Sprintf("%+v", f)] < 0 {
			t.Errorf("%s: told but not wanted: %+v", f.Rule, f)
		}
	}
	for f, n := range left {
		if n > 0 {
			t.Errorf("wanted but not told: %s", f)
		}
	}
}

// everyOther leaves out every other row that nothing points at or may name.
func everyOther(h held, doc *document.Document, odd int) *document.Document {
	rows := h.rows(doc)
	at := func(r *row) rowAt { return rowAt{r.line.Sheet, r.line.Row} }
	stays, n := map[rowAt]bool{}, 0
	for i, r := range rows {
		if i > 0 && at(r) != at(rows[i-1]) { // a row may tell two works
			n++
		}
		stays[at(r)] = stays[at(r)] || r.alone || r.named || n%2 == odd
	}
	return reduced(doc, slices.DeleteFunc(rows, func(r *row) bool { return !stays[at(r)] }))
}

// testDocuments reads the demo, a schedule of many rows and the workbooks of
// ABUT_SAMPLES, with so many copies below each row.
func testDocuments(t *testing.T, copies int) map[string]*document.Document {
	t.Helper()
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	docs := map[string]*document.Document{}
	read := func(name string, text []byte) {
		book, err := workbook.Read(name, text, workbook.DefaultLimits())
		if err != nil {
			t.Fatal(err)
		}
		doc, err := builder.Build(book, document.Settings{})
		if err != nil {
			t.Fatal(err)
		}
		docs[name] = doc
	}
	read("mixed.csv", []byte(mixedSchedule(1+copies)))
	files, err := filepath.Glob("../../testdata/demo/*.xlsx")
	if err != nil || len(files) == 0 {
		t.Fatalf("no demo: %v", err)
	}
	if folder := os.Getenv("ABUT_SAMPLES"); folder != "" {
		more, err := fs.Glob(os.DirFS(folder), "*.xlsx")
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range more {
			files = append(files, filepath.Join(folder, name))
		}
	}
	for _, file := range files {
		read(filepath.Base(file), withCopies(t, file, copies))
	}
	return docs
}

// withCopies puts copies of each row of a workbook below it.
func withCopies(t *testing.T, file string, copies int) []byte {
	t.Helper()
	book, err := excelize.OpenFile(file)
	if err != nil {
		t.Fatal(err)
	}
	defer book.Close()
	for _, sheet := range book.GetSheetList() {
		rows, err := book.GetRows(sheet)
		if err != nil {
			t.Fatal(err)
		}
		for row := len(rows); row > 0; row-- {
			if len(rows[row-1]) < 5 {
				continue // a title or a note
			}
			for range copies {
				if err := book.DuplicateRow(sheet, row); err != nil {
					t.Fatal(err)
				}
			}
		}
	}
	var out bytes.Buffer
	if err := book.Write(&out); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// mixedSchedule has rows of many mixes, each so many times under other labels.
func mixedSchedule(times int) string {
	materials := []string{"Self-adhered SBS-modified asphalt sheet", "Self-adhered butyl flashing strip", "Copper flashing, 16 oz", "SA-7"}
	substrates := []string{"CMU", "Concrete", "Galvanized steel angle", "Gypsum sheathing", "Dimension lumber"}
	touches := []string{"EPDM gasket", "Plasticized PVC waterstop", "XPS board", "Zinc sheet", "-", "Silicone sealant", "Creosoted ties"}
	remarks := []string{"-", "mid-day work", "wet", "edge left open", "letter on file", "clear of the gasket"}
	var text strings.Builder
	text.WriteString("Item,Location,Material,Substrate,Primer,Touches,Thickness,Installed,Covered,Remarks\n")
	row := 0
	for n := range 40 {
		for range times {
			row++
			fmt.Fprintf(&text, "W-%d,Level %d grid %d,%s,%s,%s,%s,%d mil,2026-%02d-%02d,2026-%02d-20,%s\n", row, 1+row/9, row,
				materials[n%4], substrates[n%5], []string{"-", "solvent primer", ""}[n%3], touches[n%7], 10*(n%6),
				1+n%12, 1+n%28, 1+(n+2)%12, remarks[n%6])
		}
	}
	return text.String()
}

// TestCasesOfAnOffice: with an office's data the numbers of marks count, and
// where it replaces rules each row is judged.
func TestCasesOfAnOffice(t *testing.T) {
	row := func(id, mark string) schedule.Line { return schedule.Line{ID: id, Mark: mark} }
	names := &document.Document{Lines: []schedule.Line{row("a", "W-1"), row("b", "W-2")}}
	same := &document.Document{Lines: []schedule.Line{row("a", "W-1"), row("b", "W-1")}}
	for _, test := range []struct {
		changes    []Change
		doc        *document.Document
		judgedOnce bool
	}{
		{nil, names, true},
		{[]Change{{What: "data changed"}}, names, false},
		{[]Change{{What: "data changed"}}, same, true},
		{[]Change{{What: rulesReplaced}}, same, false},
	} {
		e := &Engine{changes: test.changes}
		if once := e.cases(test.doc) != nil; once != test.judgedOnce {
			t.Errorf("%v: marks %s and %s judged once %t", test.changes, test.doc.Lines[0].Mark, test.doc.Lines[1].Mark, once)
		}
	}
}

// TestSays changes one thing of a row that then says something else.
func TestSays(t *testing.T) {
	line := func(row int) *document.Document {
		id := fmt.Sprintf("S!%d", row)
		cell := fmt.Sprintf("C%d", row)
		at := schedule.At{Sheet: "S", Row: row, Cell: cell}
		doc := &document.Document{
			Lines: []schedule.Line{{
				ID: id, Sheet: "S", Row: row, Mark: fmt.Sprintf("W-%d", row), Refs: []string{"A-501"}, Cells: map[string]string{"material": cell},
				Texts: map[string]string{"material": "sheet"}, Items: []schedule.Item{{ID: id + "/1", Text: "sheet", At: at}},
			}},
			Contacts: []contact.Contact{{ID: id + "c", Line: id, Kind: "direct", A: contact.End{Item: id + "/1", Line: id, At: at}, B: contact.End{Line: id}}},
			Windows:  []document.Window{{Line: id, Checks: []document.Check{{Item: id + "/1", LimitC: 4}}}},
		}
		return doc
	}
	for name, test := range map[string]struct {
		change func(*document.Document)
		same   bool
	}{
		"nothing":              {func(*document.Document) {}, true},
		"the words":            {func(d *document.Document) { d.Lines[0].Texts["material"] = "strip" }, false},
		"the column":           {func(d *document.Document) { d.Lines[0].Cells["material"] = "D13" }, false},
		"another row's cell":   {func(d *document.Document) { d.Lines[0].Items[0].At.Row = 2 }, false},
		"the number of a mark": {func(d *document.Document) { d.Lines[0].Mark = "W-77" }, true},
		"the word of a mark":   {func(d *document.Document) { d.Lines[0].Mark = "X-13" }, false},
		"a drawing's number":   {func(d *document.Document) { d.Lines[0].Refs = []string{"A-502"} }, true},
		"a drawing's word":     {func(d *document.Document) { d.Lines[0].Refs = []string{"S-501"} }, false},
		"a contact":            {func(d *document.Document) { d.Contacts[0].Kind = "near" }, false},
		"a contact's row":      {func(d *document.Document) { d.Contacts[0].B.Line = "S!12" }, false},
		"a season's limit":     {func(d *document.Document) { d.Windows[0].Checks[0].LimitC = -4 }, false},
		"a requirement of a place": {func(d *document.Document) {
			d.Project.Limits = []schedule.Limit{{Kind: "thickness_mm", Scope: "W-13"}}
		}, false},
		"a day taken from the other": {func(d *document.Document) {
			d.Lines[0].Dates = map[string]schedule.Day{"cover": {Ref: "S!12"}}
		}, false},
	} {
		doc, other := line(12), line(13)
		test.change(other)
		doc.Lines = append(doc.Lines, other.Lines...)
		doc.Contacts = append(doc.Contacts, other.Contacts...)
		doc.Windows = append(doc.Windows, other.Windows...)
		doc.Project.Limits = other.Project.Limits
		if same := len(held{}.cases(doc, true, 0).copies) == 1; same != test.same {
			t.Errorf("%s changed: judged as one %t", name, same)
		}
	}
}

// TestHeld: rows that others look up stay, and of those that others may name one
// of each name.
func TestHeld(t *testing.T) {
	h := held{Columns: []string{"layers"}, Signals: []string{"heated"}}
	for name, test := range map[string]struct {
		mark, other, column, signal string
		same                        bool
	}{
		"plain rows":                  {"F-1", "F-2", "material", "mid_day", true},
		"heated rows of two names":    {"F-1", "F-2", "material", "heated", false},
		"heated rows of one name":     {"F-1", "F-1", "material", "heated", true},
		"two rows of a list of walls": {"W-1", "W-1", "layers", "mid_day", false},
	} {
		doc := &document.Document{}
		for i, mark := range []string{test.mark, test.other} {
			doc.Lines = append(doc.Lines, schedule.Line{
				ID: fmt.Sprintf("S!%d", i), Sheet: "S", Row: i, Mark: mark,
				Texts: map[string]string{test.column: "sheet"}, Signals: []schedule.Said{{ID: test.signal}},
			})
		}
		if same := len(h.cases(doc, true, 0).copies) == 1; same != test.same {
			t.Errorf("%s: judged as one %t", name, same)
		}
	}
	doc := &document.Document{Lines: []schedule.Line{
		{ID: "S!1", Group: "W1", Texts: map[string]string{}}, {ID: "S!2", Group: "W2", Texts: map[string]string{}},
		{ID: "L!1", Mark: "W1", Texts: map[string]string{"layers": "sheet, studs"}},
	}}
	if len(h.cases(doc, true, 0).copies) > 0 {
		t.Error("rows of two walls are judged as one beside a list of walls")
	}
}
