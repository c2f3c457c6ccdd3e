package phrase

import (
	"strconv"
	"time"
)

// dateParser reads calendar dates from tokens.
type dateParser struct {
	cal   *calendar
	text  string
	toks  []token
	order DateOrder
	year  int
	last  int // end of the date before

	column bool // the cell is one of a column of dates
}

// part is one end of a date. Zero means not told. first and last are days of
// the month where only a stretch of it is told.
type part struct {
	y, m, d     int
	first, last int
	months      int // more than one month: a season or quarter
	weekday     int // -1 not told
	week        int // ISO week number
	ofWeek      bool
	ambiguous   bool
	impossible  bool
	next        int
}

// date reads a date or range of dates at token i.
func (p *dateParser) date(i int) (Date, int, bool) {
	t := p.toks[i]
	if t.kind == sign && t.low != "'" || p.afterCode(i) {
		return Date{}, 0, false
	}
	a, ok := p.shortRange(i)
	b := part{}
	ranged := ok
	if ok {
		a, b = p.splitRange(i, a)
	} else if a, ok = p.part(i, false); !ok {
		return Date{}, 0, false
	}
	next := a.next
	if !ranged {
		if e, ok := p.rangeEnd(a); ok {
			b, ranged, next = e, true, e.next
		}
	} else {
		next = b.next
	}
	if ranged {
		a, b = complete(a, b)
	}
	d := p.make(a)
	if ranged {
		d = merge(d, overNewYear(d, p.make(b)))
	}
	d.Span = Span{t.Start, p.toks[next-1].End}
	d.Text = p.text[d.Start:d.End]
	return d, next, true
}

// afterCode holds for a number that goes on from a tag or figure.
func (p *dateParser) afterCode(i int) bool {
	if i == 0 || !p.toks[i].glued {
		return false
	}
	s := p.toks[i-1].low
	return p.toks[i-1].End > p.last && (s == "-" || s == "/" || s == "." || s == "$" || s == "#") && i > 1 && p.toks[i-1].glued
}

// rangeEnd reads "to 21 Nov" after the first part of a range.
func (p *dateParser) rangeEnd(a part) (part, bool) {
	j := a.next
	if j+1 >= len(p.toks) || !p.cal.ranges[p.toks[j].low] {
		return part{}, false
	}
	if b, ok := p.part(j+1, true); ok {
		return b, true
	}
	if n, ok := p.dayNumberUpTo(j+1, 53); ok && n > a.week && a.week > 0 { // wk 21-23
		return p.yearOfWeek(part{week: n, weekday: -1, next: j + 2}), true
	}
	// Nov 10-21, 2026: a bare day ends the range
	if d, ok := p.dayNumber(j + 1); ok && a.d > 0 && a.y == 0 && d > a.d {
		b := part{m: a.m, d: d, weekday: -1, next: j + 2}
		b = p.yearAfter(b, false)
		return b, true
	}
	return part{}, false
}

// shortRange finds "10-14 Nov" at token i; splitRange reads it.
func (p *dateParser) shortRange(i int) (part, bool) {
	if i+3 >= len(p.toks) || !p.cal.ranges[p.toks[i+1].low] && p.toks[i+1].low != "/" {
		return part{}, false
	}
	d, ok := p.dayNumber(i)
	if !ok {
		return part{}, false
	}
	if e, ok := p.dayNumber(i + 2); !ok || e <= d {
		return part{}, false
	}
	b, ok := p.dayMonth(i + 2)
	return part{d: d, weekday: -1, m: b.m}, ok
}

func (p *dateParser) splitRange(i int, a part) (part, part) {
	b, _ := p.dayMonth(i + 2)
	b.weekday = -1
	return a, b
}

// complete fills the year and month that one end of a range leaves out.
func complete(a, b part) (part, part) {
	if a.y == 0 && b.y != 0 {
		a.y = b.y
		if a.m > b.m && b.m > 0 {
			a.y--
		}
	}
	if b.y == 0 && a.y != 0 {
		b.y = a.y
		if b.m < a.m && b.m > 0 {
			b.y++
		}
	}
	return a, b
}

// overNewYear takes the end of a stretch without a year for one of the year after its
// beginning, where that is near: "wk 52 - wk 2".
func overNewYear(a, b Date) Date {
	if a.NoYear && b.NoYear && b.To.Before(a.From) && b.Moved(1).To.Sub(a.From) < longestWrap {
		return b.Moved(1)
	}
	return b
}

// longestWrap is how long a stretch over the new year may be; a longer one is a slip.
const longestWrap = 120 * 24 * time.Hour

func merge(a, b Date) Date {
	a.To, a.Week, a.ofWeek = b.To, 0, time.Time{}
	a.Ambiguous, a.WeekdayOff, a.NoYear = a.Ambiguous || b.Ambiguous, a.WeekdayOff || b.WeekdayOff, a.NoYear || b.NoYear
	if a.State == "impossible" || b.State == "impossible" || !a.To.IsZero() && a.To.Before(a.From) {
		a.State = "impossible"
		return a
	}
	if a.State != "unknown" {
		a.State = "span"
	}
	return a
}

// make turns a part into days.
func (p *dateParser) make(a part) Date {
	d := Date{State: "day", Ambiguous: a.ambiguous}
	if a.impossible || a.d > daysIn(a.y, a.m) && a.m > 0 {
		d.State = "impossible"
		return d
	}
	if a.y == 0 {
		d.NoYear = true
		if a.y = p.year; a.y == 0 {
			d.State = "unknown"
			return d
		}
		if a.d > daysIn(a.y, a.m) && a.m > 0 {
			d.State = "impossible"
			return d
		}
	}
	switch {
	case a.week > 0:
		d.From, d.Week = isoWeek(a.y, a.week), a.week
		d.To, d.State = d.From.AddDate(0, 0, workDays-1), "span"
	case a.months > 0:
		d.From = day(a.y, a.m, 1)
		d.To, d.State = day(a.y, a.m+a.months, 0), "span"
	case a.m == 0:
		d.From, d.To, d.State = day(a.y, 1, 1), day(a.y, 12, 31), "span"
	case a.d == 0:
		d.From, d.To, d.State = day(a.y, a.m, max(a.first, 1)), day(a.y, a.m+1, 0), "span"
		if a.last > 0 {
			d.To = day(a.y, a.m, a.last)
		}
	default:
		d.From = day(a.y, a.m, a.d)
		d.To = d.From
	}
	d.WeekdayOff = a.weekday >= 0 && a.d > 0 && int(d.From.Weekday()) != a.weekday
	if a.ofWeek && a.d > 0 {
		d.ofWeek = d.From
		d.From, d.To, d.State = workWeek(d.From)
	}
	return d
}

func day(y, m, d int) time.Time {
	return time.Date(y, time.Month(m), d, 0, 0, 0, 0, time.UTC)
}

func daysIn(y, m int) int {
	if y == 0 {
		y = 2024 // a leap year: 29 February may be right
	}
	return day(y, m+1, 0).Day()
}

// workWeek is Monday to Friday of the week of a day; a Sunday starts a week.
func workWeek(t time.Time) (from, to time.Time, state string) {
	back := int(t.Weekday()) - 1
	from = t.AddDate(0, 0, -back)
	return from, from.AddDate(0, 0, workDays-1), "span"
}

// workDays are those of a week, Monday to Friday.
const workDays = 5

// isoWeek is the Monday of an ISO 8601 week.
func isoWeek(y, week int) time.Time {
	t := day(y, 1, 4)
	back := (int(t.Weekday()) + 6) % 7
	return t.AddDate(0, 0, 7*(week-1)-back)
}

// year reads a year at token i: four digits, or two if short is set.
func (p *dateParser) yearAt(i int, short bool) (int, int, bool) {
	if i < len(p.toks) && p.toks[i].low == "'" && i+1 < len(p.toks) && p.toks[i+1].glued {
		i, short = i+1, true
	}
	if i >= len(p.toks) || p.toks[i].kind != number {
		return 0, 0, false
	}
	n, err := strconv.Atoi(p.toks[i].low)
	if err != nil {
		return 0, 0, false
	}
	switch l := len(p.toks[i].low); {
	case l == 4 && n >= 1900 && n < 2200:
		return n, i + 1, true
	case l == 2 && short && n < 70:
		return 2000 + n, i + 1, true
	case l == 2 && short:
		return 1900 + n, i + 1, true
	}
	return 0, 0, false
}

// dayNumber reads 1 to 31, with "st", "nd", "rd", "th" or without.
func (p *dateParser) dayNumber(i int) (int, bool) {
	if i >= len(p.toks) || p.toks[i].kind != number || len(p.toks[i].low) > 2 {
		return 0, false
	}
	n, err := strconv.Atoi(p.toks[i].low)
	return n, err == nil && n >= 1 && n <= 31
}

func (p *dateParser) afterOrdinal(i int) int {
	if i < len(p.toks) && p.toks[i].glued {
		switch p.toks[i].low {
		case "st", "nd", "rd", "th":
			return i + 1
		}
	}
	return i
}
