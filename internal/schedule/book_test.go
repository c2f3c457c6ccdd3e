package schedule_test

import (
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"abut/internal/schedule"
	"abut/internal/workbook"
	"abut/policies"
)

var newReader = sync.OnceValues(func() (*schedule.Reader, error) { return schedule.NewReader(policies.FS) })

func reader(t testing.TB) *schedule.Reader {
	t.Helper()
	r, err := newReader()
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// read reads a csv text whose cells are parted by bars.
func read(t testing.TB, grid string) *schedule.Schedule {
	t.Helper()
	return readBook(t, csvBook(t, grid), schedule.Settings{})
}

func csvBook(t testing.TB, grid string) *workbook.Book {
	t.Helper()
	b, err := workbook.Read("wall.csv", []byte(strings.TrimLeft(grid, "\n")), workbook.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func readBook(t testing.TB, b *workbook.Book, set schedule.Settings) *schedule.Schedule {
	t.Helper()
	s, err := reader(t).Read(b, set)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// page is a sheet to write: rows of cells parted by bars, "@" before a real
// date, "#" before a number, "~" before struck-out text.
type page struct {
	name     string
	grid     string
	merges   []string // "A3:A5"
	hideRows []int
	hideCols []string
}

// readPages writes the sheets as xlsx and reads them back.
func readPages(t testing.TB, pages ...page) *schedule.Schedule {
	t.Helper()
	return readBook(t, xlsxBook(t, "wall.xlsx", pages...), schedule.Settings{})
}

func xlsxBook(t testing.TB, name string, pages ...page) *workbook.Book {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	for i, p := range pages {
		if i == 0 {
			must(t, f.SetSheetName("Sheet1", p.name))
		} else if _, err := f.NewSheet(p.name); err != nil {
			t.Fatal(err)
		}
		p.write(t, f)
	}
	buf, err := f.WriteToBuffer()
	must(t, err)
	b, err := workbook.Read(name, buf.Bytes(), workbook.DefaultLimits())
	must(t, err)
	return b
}

func (p page) write(t testing.TB, f *excelize.File) {
	t.Helper()
	struck, err := f.NewStyle(&excelize.Style{Font: &excelize.Font{Strike: true}})
	must(t, err)
	day, err := f.NewStyle(&excelize.Style{NumFmt: 14})
	must(t, err)
	for i, line := range strings.Split(strings.Trim(p.grid, "\n"), "\n") {
		for j, cell := range strings.Split(line, "|") {
			cell = strings.ReplaceAll(strings.TrimSpace(cell), `\n`, "\n")
			at := workbook.Ref(i+1, j+1)
			switch {
			case cell == "":
			case cell[0] == '@':
				when, err := time.Parse(time.DateOnly, cell[1:])
				must(t, err)
				must(t, f.SetCellValue(p.name, at, when))
				must(t, f.SetCellStyle(p.name, at, at, day))
			case cell[0] == '#':
				var x float64
				_, err := fmt.Sscanf(cell[1:], "%g", &x)
				must(t, err)
				must(t, f.SetCellValue(p.name, at, x))
			case cell[0] == '~':
				must(t, f.SetCellValue(p.name, at, cell[1:]))
				must(t, f.SetCellStyle(p.name, at, at, struck))
			default:
				must(t, f.SetCellValue(p.name, at, cell))
			}
		}
	}
	for _, m := range p.merges {
		from, to, _ := strings.Cut(m, ":")
		must(t, f.MergeCell(p.name, from, to))
	}
	for _, row := range p.hideRows {
		must(t, f.SetRowVisible(p.name, row, false))
	}
	for _, col := range p.hideCols {
		must(t, f.SetColVisible(p.name, col, false))
	}
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// line finds a line by its mark.
func line(t testing.TB, s *schedule.Schedule, mark string) *schedule.Line {
	t.Helper()
	for i := range s.Lines {
		if s.Lines[i].Mark == mark {
			return &s.Lines[i]
		}
	}
	var have []string
	for _, l := range s.Lines {
		have = append(have, l.Mark)
	}
	t.Fatalf("no line %q; the marks are %q", mark, have)
	return nil
}

// product finds a product by its tag.
func product(t testing.TB, s *schedule.Schedule, tag string) *schedule.Product {
	t.Helper()
	for i := range s.Products {
		if s.Products[i].Tag == tag {
			return &s.Products[i]
		}
	}
	t.Fatalf("no product %q", tag)
	return nil
}

// slots lists the slots of the columns of a table as one text.
func slots(tb schedule.Table) string {
	var out []string
	for _, c := range tb.Columns {
		out = append(out, c.Slot)
	}
	return strings.Join(out, " ")
}

// items lists what stands in a slot of a line: family, or tag where it has one.
func items(l *schedule.Line, slot string) string {
	var out []string
	for _, it := range l.Items {
		if it.Slot != slot {
			continue
		}
		word := it.Family
		if it.Tag != "" {
			word = it.Tag
		}
		if it.Polarity != "yes" {
			word = it.Polarity + ":" + word
		}
		out = append(out, word)
	}
	return strings.Join(out, " ")
}

func marks(s *schedule.Schedule) string {
	var out []string
	for _, l := range s.Lines {
		out = append(out, l.Mark)
	}
	return strings.Join(out, " ")
}

// near compares figures to one in a thousand.
func near(got *float64, want float64) bool {
	if got == nil {
		return false
	}
	d := *got - want
	return d <= 0.001*max(want, -want, 1) && -d <= 0.001*max(want, -want, 1)
}
