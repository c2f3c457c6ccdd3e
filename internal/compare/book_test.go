package compare

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/workbook"
	"abut/policies"
)

// job is a schedule with its product data, to be written in one form or another.
type job struct {
	rows     []entry
	products []sheetData
}

type entry struct {
	mark, place, sheet, substrate, primer, touches, edge string
	install, cover                                       time.Time
}

// sheetData is one product; lengths in mil, temperatures in °F, vapor in perms.
type sheetData struct {
	tag, what, accepts, keepOff string
	mil, minF, maxF, days       float64
	perms, voc                  float64
}

// form is how a workbook is laid out and written.
type form struct {
	metric  bool
	dates   string
	shuffle uint64              // 0 keeps the order of rows and columns
	mark    func(string) string // nil keeps the marks
}

func products() []sheetData {
	return []sheetData{
		{"Arvo S40", "self-adhered SBS-modified asphalt sheet, PE film", "concrete, CMU, glass-mat sheathing (Arvo W)", "EPDM, plasticized PVC", 40, 40, 180, 90, 0.05, 0},
		{"Arvo H45", "self-adhered butyl strip on aluminum foil", "metal, plywood, glass-mat sheathing (none)", "oils", 45, 20, 240, 180, 0.02, 0},
		{"Arvo V22", "self-adhered vapor-permeable sheet, acrylic", "glass-mat sheathing, plywood (none)", "oils", 22, 20, 180, 150, 18, 0},
		{"Arvo W", "emulsion primer, water-borne", "", "", 0, 40, 0, 0, 0, 40},
		{"Arvo N", "silicone sealant, neutral cure", "", "", 0, -20, 300, 0, 0, 30},
	}
}

func day(month time.Month, d int) time.Time { return time.Date(2026, month, d, 0, 0, 0, 0, time.UTC) }

func rows() []entry {
	return []entry{
		{"A-01", "Field, north, level 1", "Arvo S40", "Glass-mat sheathing", "Arvo W", "mineral wool", "bead of Arvo N", day(6, 8), day(7, 20)},
		{"A-02", "Field, north, level 2", "Arvo S40", "Glass-mat sheathing", "Arvo W", "mineral wool", "bead of Arvo N", day(6, 15), day(7, 27)},
		{"A-03", "Window heads, north", "Arvo S40", "Glass-mat sheathing", "Arvo W", "anodized aluminum frame; Arvo N", "wall sheet laps over", day(6, 4), day(7, 20)},
		{"A-04", "Louver, roof", "Arvo H45", "Galvanized steel frame", "none", "Arvo N", "bead all round", day(6, 22), day(8, 3)},
		{"B-01", "Base of wall, east", "Arvo S40", "CIP wall (placed 2026-04-06)", "Arvo W", "XPS board", "bead of Arvo N", day(6, 9), day(6, 30)},
		{"B-02", "Pavilion, field", "Arvo V22", "Plywood", "none", "mineral wool", "termination bar", day(7, 6), day(8, 10)},
	}
}

// write makes the workbook of a job in a form.
func (j job) write(t testing.TB, f form) *workbook.Book {
	t.Helper()
	x := excelize.NewFile()
	defer x.Close()
	check := func(err error) {
		if err != nil {
			t.Fatal(err)
		}
	}
	check(x.SetSheetName("Sheet1", "Schedule"))
	fill(t, x, "Schedule", [][]string{{"Town hall, Milwaukee, WI"}, {}}, f.rows(j.rows))
	_, err := x.NewSheet("Product data")
	check(err)
	fill(t, x, "Product data", nil, f.data(j.products))
	var b bytes.Buffer
	check(x.Write(&b))
	book, err := workbook.Read("job.xlsx", b.Bytes(), workbook.DefaultLimits())
	check(err)
	return book
}

func fill(t testing.TB, x *excelize.File, sheet string, above, rows [][]string) {
	t.Helper()
	for i, row := range append(above, rows...) {
		for j, text := range row {
			cell, _ := excelize.CoordinatesToCellName(j+1, i+1)
			if err := x.SetCellStr(sheet, cell, text); err != nil {
				t.Fatal(err)
			}
		}
	}
}

func (f form) rows(list []entry) [][]string {
	out := [][]string{{"Item", "Location", "Membrane", "Substrate", "Primer", "In contact with", "Edge", "Install", "Cover by"}}
	for _, e := range list {
		if f.mark != nil {
			e.mark = f.mark(e.mark)
		}
		out = append(out, []string{
			e.mark, e.place, e.sheet, e.substrate, e.primer, e.touches, e.edge, e.install.Format(f.dates), e.cover.Format(f.dates),
		})
	}
	return f.shuffled(out)
}

// shuffled mixes the rows below the heading, and the columns after the first.
func (f form) shuffled(table [][]string) [][]string {
	if f.shuffle == 0 {
		return table
	}
	r := rand.New(rand.NewPCG(f.shuffle, 1))
	body := table[1:]
	r.Shuffle(len(body), func(i, j int) { body[i], body[j] = body[j], body[i] })
	order := r.Perm(len(table[0]) - 1)
	for i, row := range table {
		mixed := []string{row[0]}
		for _, k := range order {
			mixed = append(mixed, row[k+1])
		}
		table[i] = mixed
	}
	return table
}

func (f form) data(list []sheetData) [][]string {
	out := [][]string{{"Product", "What it is", "Goes on (primer)", "Keep away from", "Thickness", "Min. install temp.", "Max. service temp.", "Max. days uncovered", "Vapor permeance", "VOC"}}
	for _, p := range list {
		out = append(out, []string{
			p.tag, p.what, p.accepts, p.keepOff, f.said(p.mil, "%.0f mil", 0.0254, 0, "%.2f mm"),
			f.degrees(p.minF, true), f.degrees(p.maxF, p.maxF != 0), f.said(p.days, "%.0f days", 1, 0, "%.0f days"),
			f.said(p.perms, "%g perm", 57.2135, 0, "%.2f ng/(Pa·s·m²)"), f.said(p.voc, "%.0f g/L", 1, 0, "%.0f g/L"),
		})
	}
	return out
}

func (f form) said(value float64, us string, size, offset float64, si string) string {
	if value == 0 {
		return "-"
	}
	if f.metric {
		return fmt.Sprintf(si, (value-offset)*size)
	}
	return fmt.Sprintf(us, value)
}

func (f form) degrees(value float64, known bool) string {
	switch {
	case !known:
		return "-"
	case f.metric:
		return fmt.Sprintf("%.0f °C", (value-32)*5/9)
	}
	return fmt.Sprintf("%.0f °F", value)
}

// desk reads, compares and judges.
type desk struct {
	builder *document.Builder
	compare *Comparer
	engine  *engine.Engine
}

func newDesk(t testing.TB) desk {
	t.Helper()
	b, err := document.NewBuilder(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	e, err := engine.Load(engine.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return desk{b, comparer(t), e}
}

func (d desk) read(t testing.TB, book *workbook.Book) *document.Document {
	t.Helper()
	doc, err := d.builder.Build(book, document.Settings{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// findings of a submitted workbook against the specified one.
func (d desk) findings(t testing.TB, specified, submitted *workbook.Book) (*document.Document, []engine.Finding) {
	t.Helper()
	was, now := d.read(t, specified), d.read(t, submitted)
	before, err := d.engine.Judge(t.Context(), was)
	if err != nil {
		t.Fatal(err)
	}
	now.Comparison = d.compare.Documents(was, now)
	after, err := d.engine.Judge(t.Context(), now)
	if err != nil {
		t.Fatal(err)
	}
	if err := document.Validate(now); err != nil {
		t.Fatal(err)
	}
	return now, Brought(now.Comparison, was, now, before, after)
}
