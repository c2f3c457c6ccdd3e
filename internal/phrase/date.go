package phrase

import (
	"slices"
	"strings"
	"time"
)

// DateOrder is the order of day and month in dates such as 3/4/2026.
type DateOrder int

// The orders. Unknown reads as MonthFirst and marks the date as ambiguous.
const (
	Unknown DateOrder = iota
	MonthFirst
	DayFirst
	YearFirst // 26-03-31, where a whole column is written so
)

// Date is one day or span of days. From and To are midnight UTC, zero if not
// known. A week is its five working days, Monday to Friday; early, mid and
// late are the 1st to 10th, 11th to 20th, 21st to the end of a month.
type Date struct {
	Span
	Text  string
	From  time.Time
	To    time.Time
	State string // day, span, impossible, unknown, none, relative, open
	// Ref is what a relative date hangs on ("layer 5", "W1"), "" where only the
	// day is told ("same day"). Relation is with, after or before; Offset the
	// days told ("2 days after", "next day").
	Ref      string
	Relation string
	Offset   int
	Verb     string // what happens then: prime, sheet, placed, covered, ...
	Prep     string // on, by, until, since, before, after
	// Ambiguous: day and month could be read both ways.
	Ambiguous bool
	// WeekdayOff: the weekday written does not fall on the date.
	WeekdayOff bool
	// NoYear: the text gives no year; From and To are in the context year, or
	// zero without one.
	NoYear bool
	// Week is the number of the week, where that tells the days.
	Week int
	// Serial: the cell held a bare day number of a spreadsheet.
	Serial bool

	ofWeek time.Time // the day by which a week is told: "wk of 11/16"
}

// Moved is a date that gives no year so many years later: the same day, or the week of
// the same number or of the same day.
func (d Date) Moved(years int) Date {
	if d.Week > 0 {
		year, _ := d.From.ISOWeek()
		d.From = isoWeek(year+years, d.Week)
		d.To = d.From.AddDate(0, 0, workDays-1)
		return d
	}
	if !d.ofWeek.IsZero() {
		d.ofWeek = d.ofWeek.AddDate(years, 0, 0)
		d.From, d.To, _ = workWeek(d.ofWeek)
		return d
	}
	d.From, d.To = d.From.AddDate(years, 0, 0), d.To.AddDate(years, 0, 0)
	return d
}

// Dates lists the dates of a text in order. year completes dates without one.
// A text with no date in it may still say that there is none, that it is not
// known, left open, or tied to other work; it then gives one Date of that state.
func (r *Reader) Dates(text string, order DateOrder, year int) []Date {
	return r.datesIn(text, dateParser{order: order, year: year})
}

// ColumnDates is Dates for a cell of a column of dates, where "5/3-5/21" names days
// and no fractions.
func (r *Reader) ColumnDates(text string, order DateOrder, year int) []Date {
	return r.datesIn(text, dateParser{order: order, year: year, column: true})
}

func (r *Reader) datesIn(text string, p dateParser) []Date {
	toks := scan(text)
	if d, ok := r.cal.whole(text, toks); ok {
		return []Date{d}
	}
	view := r.view(toks)
	dates := r.dates(text, toks, p)
	if len(dates) == 0 {
		if d, ok := r.cal.worded(text, view); ok {
			return []Date{d}
		}
		return nil
	}
	r.cal.tellVerbs(view, dates)
	return dates
}

// dates finds the calendar dates in tokens.
func (r *Reader) dates(text string, toks []token, p dateParser) []Date {
	if !r.cal.likely(toks) {
		return nil
	}
	p.cal, p.text, p.toks = r.cal, text, toks
	var out []Date
	for i := 0; i < len(toks); {
		d, next, ok := p.date(i)
		if !ok {
			i++
			continue
		}
		p.last, i = toks[next-1].End, next
		if fine, end, ok := p.narrowed(d, next); ok {
			d, i = fine, end
			p.last = fine.End
		}
		out = append(out, d)
	}
	return out
}

// dateSpans tells which parts of a text are dates and no quantities.
func (r *Reader) dateSpans(text string, toks []token) []Span {
	var out []Span
	for _, d := range r.dates(text, toks, dateParser{}) {
		out = append(out, d.Span)
	}
	return out
}

// likely is a cheap test that most cells fail: no figure and no month, no date.
func (c *calendar) likely(toks []token) bool {
	for i := range toks {
		if toks[i].kind == number || toks[i].kind == word && toks[i].upper && c.Months[toks[i].low] > 0 {
			return true
		}
	}
	return false
}

// Order decides the order of day and month from a whole column: a first part
// over 12 can only be a day. Contradicting cells decide nothing. Where the first
// parts are years by what the last ones are, the year stands first.
func (r *Reader) Order(texts []string) (DateOrder, bool) {
	var first, second int
	var starts, ends []int
	for _, text := range texts {
		toks := scan(text)
		for i := range toks {
			a, b, _, _, ok := slashDate(toks, i)
			if ok {
				if c, short := smallAt(toks, i+4); short && b <= 12 {
					starts, ends = append(starts, a), append(ends, c)
				} else {
					starts = append(starts, 0)
				}
			} else if a, b, ok = strokedPair(toks, i); !ok {
				continue
			}
			switch {
			case a > 12 && b <= 12:
				first++
			case b > 12 && a <= 12:
				second++
			}
		}
	}
	switch {
	case second == 0 && yearsFirst(starts, ends):
		return YearFirst, true
	case first > 0 && second == 0:
		return DayFirst, true
	case second > 0 && first == 0:
		return MonthFirst, true
	}
	return Unknown, false
}

// Years of two figures: the first that is taken for one, and how many years the
// work of a schedule spans.
const (
	earliestYear = 20
	jobYears     = 2
)

// yearsFirst holds where the first parts of dates are near one another and could
// be years, and the last ones could not.
func yearsFirst(starts, ends []int) bool {
	if len(ends) == 0 || len(starts) != len(ends) || slices.Min(starts) < earliestYear || slices.Max(starts)-slices.Min(starts) > jobYears {
		return false
	}
	return slices.Min(ends) < earliestYear || slices.Max(ends)-slices.Min(ends) > jobYears
}

// OrderOf is the usual order in a country by its two-letter code, Unknown
// where both are in use.
func (r *Reader) OrderOf(country string) DateOrder {
	switch r.cal.orders[strings.ToUpper(country)] {
	case "month":
		return MonthFirst
	case "day":
		return DayFirst
	}
	return Unknown
}

// strokedPair reads 17/4, a day and a month without a year, at token i.
func strokedPair(toks []token, i int) (a, b int, ok bool) {
	stroke := func(j int) bool { return j >= 0 && j < len(toks) && toks[j].low == "/" }
	if i+2 >= len(toks) || stroke(i-1) || !stroke(i+1) || stroke(i+3) || !toks[i+1].glued || !toks[i+2].glued {
		return 0, 0, false
	}
	a, ok1 := smallAt(toks, i)
	b, ok2 := smallAt(toks, i+2)
	return a, b, ok1 && ok2 && a > 0 && b > 0 && a <= 31 && b <= 31
}
