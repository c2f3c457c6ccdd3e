package html

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"time"

	"abut/internal/document"
	"abut/internal/schedule"
)

// season holds the lowest temperatures of the materials against the usual year
// of the place, over the days on which they go on.
type season struct {
	Picture drawing
	Rows    []seasonRow
	Left    int // rows that the table leaves out; none of them has a finding
	Months  []monthRow
}

type seasonRow struct {
	Where, Mark, Text, Role, Dates, Limit, Air, Below, Usable string
	Findings                                                  []found

	check document.Check
	span  [2]time.Time
}

type monthRow struct{ Month, Min, Max string }

// mostRows bounds the tables beside the charts.
const mostRows = 150

// newSeason makes the chart, nil where no place or no date is known.
func newSeason(id string, doc *document.Document, b *board) *season {
	months := doc.Project.Place.Months
	if len(months) != 12 || len(doc.Windows) == 0 {
		return nil
	}
	s := &season{}
	for _, w := range doc.Windows {
		if w.Place != "" {
			continue // the chart is of the project's place
		}
		for _, c := range w.Checks {
			if r, ok := seasonRowOf(w, c, b); ok {
				s.Rows = append(s.Rows, r)
			}
		}
	}
	if len(s.Rows) == 0 {
		return nil
	}
	for m, band := range months {
		s.Months = append(s.Months, monthRow{monthName(m + 1), degrees(band.MeanMinC), degrees(band.MeanMaxC)})
	}
	s.draw(id, doc, s.Rows)
	s.Rows, s.Left = shortened(s.Rows, func(r seasonRow) bool { return len(r.Findings) > 0 })
	return s
}

// shortened keeps the rows that matter and as many others as there is room
// for, in their order.
func shortened[T any](rows []T, matters func(T) bool) ([]T, int) {
	room := mostRows
	for _, r := range rows {
		if matters(r) {
			room--
		}
	}
	var kept []T
	for _, r := range rows {
		if !matters(r) {
			if room <= 0 {
				continue
			}
			room--
		}
		kept = append(kept, r)
	}
	return kept, len(rows) - len(kept)
}

// seasonRowOf tells one check. An upper limit is told where a finding judges it.
func seasonRowOf(w document.Window, c document.Check, b *board) (seasonRow, bool) {
	l := b.byID[w.Line]
	from, err := time.Parse(time.DateOnly, w.From)
	if err != nil || l == nil {
		return seasonRow{}, false
	}
	to, err := time.Parse(time.DateOnly, w.To)
	if err != nil {
		to = from
	}
	r := seasonRow{
		Where: rowName(l), Mark: l.Mark, Text: c.Text, Role: c.Role, Dates: dates(from, to),
		Limit: "from " + degrees(c.LimitC), Air: fmt.Sprintf("%.0f to %.0f °C", w.MeanMinC, w.MeanMaxC),
		Below: percent(c.ShareBelow) + " below", Usable: percent(c.DaysUsable), check: c, span: [2]time.Time{from, to},
	}
	if !c.Stated {
		r.Limit += ", usual for its grade"
	}
	for _, f := range b.of(l) {
		if slices.Contains(f.Facts, c.Item+" "+c.Bound) {
			r.Findings = append(r.Findings, f)
		}
	}
	if c.Bound == "apply_max_c" {
		r.Limit, r.Below, r.Usable = "up to "+degrees(c.LimitC), percent(c.ShareAbove)+" above", ""
		return r, len(r.Findings) > 0
	}
	return r, true
}

// rowName names a row for a table of all sheets.
func rowName(l *schedule.Line) string {
	if l.Sheet == "" {
		return fmt.Sprintf("row %d", l.Row)
	}
	return fmt.Sprintf("%s, row %d", l.Sheet, l.Row)
}

func dates(from, to time.Time) string {
	const day = "2 Jan 2006"
	if from.Equal(to) {
		return from.Format(day)
	}
	return from.Format(day) + " to " + to.Format(day)
}

func percent(share float64) string { return fmt.Sprintf("%.0f%%", 100*share) }

// years are the months that a chart shows: whole months around all windows,
// half a year at least and three years at most.
func years(rows []seasonRow) (from, to time.Time) {
	from, to = rows[0].span[0], rows[0].span[1]
	for _, r := range rows {
		from, to = earlier(from, r.span[0]), later(to, r.span[1])
	}
	from = time.Date(from.Year(), from.Month(), 1, 0, 0, 0, 0, time.UTC)
	to = time.Date(to.Year(), to.Month()+1, 1, 0, 0, 0, 0, time.UTC)
	to = later(to, from.AddDate(0, 6, 0))
	if most := from.AddDate(3, 0, 0); to.After(most) {
		to = most
	}
	return from, to
}

func earlier(a, b time.Time) time.Time {
	if b.Before(a) {
		return b
	}
	return a
}

func later(a, b time.Time) time.Time {
	if b.After(a) {
		return b
	}
	return a
}

// bar is what goes on in the same days down to the same temperature.
type bar struct {
	span  [2]time.Time
	limit float64
	role  string
	bad   []found
	rows  int
}

// bars joins equal rows, those with a finding last, so that they lie on top.
func bars(rows []seasonRow) []bar {
	var out []bar
	for _, r := range rows {
		i := slices.IndexFunc(out, func(b bar) bool {
			return b.span == r.span && b.limit == r.check.LimitC && b.role == r.Role && len(b.bad) == 0 == (len(r.Findings) == 0)
		})
		if i < 0 {
			i = len(out)
			out = append(out, bar{span: r.span, limit: r.check.LimitC, role: r.Role})
		}
		out[i].rows++
		out[i].bad = append(out[i].bad, r.Findings...)
	}
	slices.SortStableFunc(out, func(a, b bar) int { return cmp.Compare(len(a.bad), len(b.bad)) })
	return out
}

// stepFor is a round step that covers a span in at most so many steps.
func stepFor(span float64, steps int) float64 {
	raw := span / float64(steps)
	size := math.Pow(10, math.Floor(math.Log10(raw)))
	for _, k := range []float64{1, 2, 2.5, 5, 10} {
		if k*size >= raw {
			return k * size
		}
	}
	return 10 * size
}
