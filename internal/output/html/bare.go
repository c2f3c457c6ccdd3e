package html

import (
	"fmt"
	"strings"
	"time"

	"abut/internal/engine"
	"abut/internal/schedule"
)

// bare holds the days in which sheets stay open to the sun against what they
// may.
type bare struct {
	Picture drawing
	Rows    []bareRow
	Left    int
	Undrawn int // rows of the table that have no bar
}

type bareRow struct {
	Where, Mark, Text, Dates, Days, Limits string
	Level                                  string
	Findings                               []found

	in engine.Bare
}

// mostBars bounds the picture; the table goes on.
const mostBars = 40

// newBare makes the bars of all rows that have a limit; nil where none has.
func newBare(id string, held []engine.Bare, board *board) *bare {
	b := &bare{}
	for _, h := range held {
		if l := board.byID[h.Line]; l != nil && len(h.Limits) > 0 {
			b.Rows = append(b.Rows, bareRowOf(h, l, board.of(l)))
		}
	}
	if len(b.Rows) == 0 {
		return nil
	}
	b.Rows, b.Left = shortened(b.Rows, func(r bareRow) bool { return r.Level != "" })
	b.draw(id)
	return b
}

func bareRowOf(h engine.Bare, l *schedule.Line, list []found) bareRow {
	r := bareRow{Where: rowName(l), Mark: l.Mark, Text: h.Text, Days: days(h.Min, h.Max), in: h}
	from, err := time.Parse(time.DateOnly, h.From)
	to, err2 := time.Parse(time.DateOnly, h.To)
	if err == nil && err2 == nil {
		r.Dates = dates(from, to)
	}
	var limits []string
	for _, limit := range h.Limits {
		limits = append(limits, fmt.Sprintf("%.0f days (%s)", limit.Days, limit.By))
		if r.Level == "" || limit.Level == "error" {
			r.Level = limit.Level
		}
	}
	r.Limits = strings.Join(limits, ", ")
	for _, f := range list {
		if f.Topic == "exposure" {
			r.Findings = append(r.Findings, f)
		}
	}
	return r
}

func days(least, most int) string {
	if least == most {
		return fmt.Sprintf("%d days", least)
	}
	return fmt.Sprintf("%d to %d days", least, most)
}

// Places of the bars.
const (
	bareLeft  = 210.0
	bareRight = 860.0
	bareTop   = 30.0
	bareRow1  = 22.0
)

// draw draws a bar for each row that is past a limit, then for the others as
// long as there is room.
func (b *bare) draw(id string) {
	rows := b.drawn()
	b.Undrawn = len(b.Rows) - len(rows)
	most := 1.0
	for _, r := range rows {
		most = max(most, float64(r.in.Max))
		for _, limit := range r.in.Limits {
			most = max(most, limit.Days)
		}
	}
	step := stepFor(most, 6)
	b.Picture = drawing{
		ID: id + "-bare", W: 900, H: bareTop + bareRow1*float64(len(rows)) + 12, Title: "Days open to the sun against the limit",
		Desc: "One bar a row, as long as the days in which the sheet stays bare; a hatched end where the date is a span. The upright line is the limit. The table gives the figures.",
	}
	d := &b.Picture
	x := func(n float64) float64 { return bareLeft + (bareRight-bareLeft)*n/(6*step) }
	for k := range 7 {
		at := x(float64(k) * step)
		d.path("grid", false, point{at, bareTop - 4}, point{at, d.H - 8})
		d.text(at, bareTop-12, "label middle", number(float64(k)*step))
	}
	for i, r := range rows {
		y := bareTop + bareRow1*float64(i)
		d.text(bareLeft-8, y+14, "label end", short(strings.TrimSpace(r.Mark+"  "+r.Text), 30))
		d.rect(bareLeft, y+4, x(float64(r.in.Min))-bareLeft, 12, strings.TrimSpace("days "+r.Level))
		if r.in.Max > r.in.Min {
			d.rect(x(float64(r.in.Min)), y+4, x(float64(r.in.Max))-x(float64(r.in.Min)), 12, strings.TrimSpace("maybe "+r.Level))
		}
		for _, limit := range r.in.Limits {
			d.path("limit", false, point{x(limit.Days), y}, point{x(limit.Days), y + bareRow1})
		}
		told := fmt.Sprint(r.in.Max)
		for _, f := range r.Findings {
			told += fmt.Sprintf(", finding %d", f.Number)
		}
		d.text(x(float64(r.in.Max))+8, y+14, "label", told)
	}
}

// drawn picks the rows for the picture, in their order.
func (b *bare) drawn() []bareRow {
	room := mostBars
	for _, r := range b.Rows {
		if r.Level != "" {
			room--
		}
	}
	var out []bareRow
	for _, r := range b.Rows {
		if r.Level == "" {
			room--
		}
		if len(out) < mostBars && (r.Level != "" || room >= 0) {
			out = append(out, r)
		}
	}
	return out
}

func short(text string, most int) string {
	r := []rune(text)
	if len(r) <= most {
		return text
	}
	return string(r[:most-1]) + "…"
}
