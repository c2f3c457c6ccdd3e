package phrase

import (
	"strconv"
	"strings"
)

// part reads one form of date at token i. loose allows a day without a year
// or month name, as at the end of a range.
func (p *dateParser) part(i int, loose bool) (part, bool) {
	weekday := -1
	if w, ok := p.cal.Weekdays[p.toks[i].low]; ok && p.toks[i].kind == word {
		weekday, i = w, p.skip(i+1, ".,")
		loose = true
		if i >= len(p.toks) {
			return part{}, false
		}
	}
	type form = func(*dateParser, int) (part, bool) // p.iso and the like would each be made anew for every word
	forms := append(make([]form, 0, 11), (*dateParser).iso, (*dateParser).dotted, (*dateParser).slash, (*dateParser).dayMonth, (*dateParser).monthDay)
	if loose || p.asksForDate(i) {
		forms = append(forms, (*dateParser).monthAndDay)
	}
	if weekday < 0 {
		forms = append(forms, (*dateParser).weekOf, (*dateParser).weekNumber, (*dateParser).edge, (*dateParser).quarter, (*dateParser).season)
	}
	for _, read := range forms {
		if a, ok := read(p, i); ok {
			a.weekday = weekday
			a.next = p.afterTime(a.next)
			return a, true
		}
	}
	return part{}, false
}

// skip passes over any of the one-byte signs.
func (p *dateParser) skip(i int, signs string) int {
	for i < len(p.toks) && p.toks[i].kind == sign && strings.Contains(signs, p.toks[i].low) {
		i++
	}
	return i
}

func (p *dateParser) is(i int, low string) bool { return i < len(p.toks) && p.toks[i].low == low }

// iso reads 2026-09-21, 2026/09/21.
func (p *dateParser) iso(i int) (part, bool) {
	y, j, ok := p.yearAt(i, false)
	if !ok || j+3 >= len(p.toks) && j+2 >= len(p.toks) || !(p.is(j, "-") || p.is(j, "/")) || !p.toks[j].glued {
		return part{}, false
	}
	m, ok1 := p.small(j + 1)
	if !ok1 || !p.is(j+2, p.toks[j].low) {
		return part{}, false
	}
	d, ok2 := p.small(j + 3)
	if !ok2 {
		return part{}, false
	}
	return part{y: y, m: m, d: d, next: j + 4, impossible: m < 1 || m > 12 || d < 1 || d > 31}, true
}

// small reads a number of one or two digits.
func (p *dateParser) small(i int) (int, bool) {
	if i >= len(p.toks) || p.toks[i].kind != number || len(p.toks[i].low) > 2 || !p.toks[i].glued {
		return 0, false
	}
	n, err := strconv.Atoi(p.toks[i].low)
	return n, err == nil
}

// dotted reads 15.06.2026, day first.
func (p *dateParser) dotted(i int) (part, bool) {
	t := p.toks[i]
	if t.kind != number || strings.Count(t.low, ".") != 2 {
		return part{}, false
	}
	f := strings.Split(t.low, ".")
	if len(f[0]) == 4 {
		f[0], f[2] = f[2], f[0]
	}
	d, _ := strconv.Atoi(f[0])
	m, _ := strconv.Atoi(f[1])
	y, _ := strconv.Atoi(f[2])
	if len(f[2]) == 2 && len(f[0]) == 2 {
		y += 2000
	}
	if y < 1900 || y > 2199 || len(f[0]) > 2 || len(f[1]) > 2 {
		return part{}, false
	}
	return part{y: y, m: m, d: d, next: i + 1, impossible: m < 1 || m > 12 || d < 1 || d > 31}, true
}

// slashDate reads 3/9/2026 or 3-9-26 at token i as its three numbers.
func slashDate(toks []token, i int) (a, b, y, next int, ok bool) {
	if i+4 >= len(toks) || toks[i].kind != number || len(toks[i].low) > 2 {
		return
	}
	sep := toks[i+1].low
	if sep != "/" && sep != "-" || toks[i+3].low != sep {
		return
	}
	for j := i + 1; j <= i+4; j++ {
		if !toks[j].glued {
			return
		}
	}
	p := dateParser{toks: toks}
	a, ok1 := smallAt(toks, i)
	b, ok2 := smallAt(toks, i+2)
	y, next, ok3 := p.yearAt(i+4, true)
	return a, b, y, next, ok1 && ok2 && ok3
}

// century is that of years of two figures.
const century = 2000

func smallAt(toks []token, i int) (int, bool) {
	if toks[i].kind != number || len(toks[i].low) > 2 {
		return 0, false
	}
	n, err := strconv.Atoi(toks[i].low)
	return n, err == nil
}

func (p *dateParser) slash(i int) (part, bool) {
	a, b, y, next, ok := slashDate(p.toks, i)
	if !ok {
		return part{}, false
	}
	if c, short := smallAt(p.toks, i+4); short && p.order == YearFirst {
		return part{y: century + a, m: b, d: c, next: i + 5, impossible: b < 1 || b > 12 || c < 1 || c > 31}, true
	}
	return p.ordered(part{y: y, next: next}, a, b), true
}

// ordered puts two numbers to month and day.
func (p *dateParser) ordered(x part, a, b int) part {
	dayFirst := p.order == DayFirst
	switch {
	case a > 12 && b <= 12:
		dayFirst = true
	case b > 12 && a <= 12:
		dayFirst = false
	default:
		x.ambiguous = p.order == Unknown && a != b && a <= 12
	}
	x.m, x.d = a, b
	if dayFirst {
		x.m, x.d = b, a
	}
	x.impossible = x.m < 1 || x.m > 12 || x.d < 1 || x.d > 31
	return x
}

// monthAndDay reads 4/30 or 9-29, where the words around ask for a date.
func (p *dateParser) monthAndDay(i int) (part, bool) {
	if i+2 >= len(p.toks) || !p.is(i+1, "/") && !p.is(i+1, "-") || !p.toks[i+1].glued || !p.toks[i+2].glued {
		return part{}, false
	}
	a, ok1 := smallAt(p.toks, i)
	b, ok2 := smallAt(p.toks, i+2)
	if !ok1 || !ok2 || a < 1 || b < 1 || a > 31 || b > 31 || a > 12 && b > 12 {
		return part{}, false
	}
	if p.is(i+1, "-") && p.is(i+3, "/") && p.toks[i+3].glued {
		return part{}, false // "sheet 2-1/2 in."
	}
	if next := i + 3; next < len(p.toks) && p.toks[next].kind != sign && !p.cal.ranges[p.toks[next].low] {
		if p.toks[next].glued || p.is(i+1, "-") {
			return part{}, false
		}
	}
	return p.ordered(part{next: i + 3}, a, b), true
}

// asksForDate holds in a column of dates, or if a preposition or verb of dates stands
// right before, where the figure before token i+3 is not a fraction of an inch.
func (p *dateParser) asksForDate(i int) bool {
	if p.toks[i].kind != number {
		return false
	}
	if i+4 < len(p.toks) && p.cal.ranges[p.toks[i+3].low] {
		if _, _, _, _, ok := slashDate(p.toks, i+4); ok {
			return true // 3/9 to 3/13/2026
		}
	}
	if i == 0 && !p.column {
		return false
	}
	if i+3 < len(p.toks) && p.toks[i+3].kind == word && !p.cal.ranges[p.toks[i+3].low] || i+3 < len(p.toks) && (p.toks[i+3].low == "\"" || p.toks[i+3].low == "'") {
		return false
	}
	return p.column || p.saidBefore(i)
}

// saidBefore holds if a preposition or verb of dates ends right before token i.
func (p *dateParser) saidBefore(i int) bool {
	before := p.toks[max(0, i-3):i]
	for _, h := range append(p.cal.preps.find(before), p.cal.verbs.find(before)...) {
		if h.to == len(before) {
			return true
		}
	}
	return false
}

// month reads a month name at token i, with the dot of an abbreviation.
func (p *dateParser) month(i int) (m, next int, ok bool) {
	if i >= len(p.toks) || p.toks[i].kind != word {
		return 0, 0, false
	}
	if m, ok = p.cal.Months[p.toks[i].low]; !ok {
		return 0, 0, false
	}
	if next = i + 1; p.is(next, ".") && p.toks[next].glued {
		next++
	}
	return m, next, true
}

// modal holds for month names that are also words, written small.
func (p *dateParser) modal(i int) bool {
	return p.cal.modal[p.toks[i].low] && !p.toks[i].upper
}

// dayMonth reads 15 Apr 2026, 15-Apr-26, 12th of June.
func (p *dateParser) dayMonth(i int) (part, bool) {
	d, ok := p.dayNumber(i)
	if !ok {
		return part{}, false
	}
	j := p.afterOrdinal(i + 1)
	if p.is(j, "of") {
		j++
	} else if (p.is(j, "-") || p.is(j, "/")) && p.toks[j].glued {
		j++
	}
	m, next, ok := p.month(j)
	if !ok {
		return part{}, false
	}
	a := p.yearAfter(part{m: m, d: d, next: next}, true)
	return a, a.y != 0 || !p.modal(j)
}

// yearAfter reads the year that may follow a day and month, over a dash too
// where the parts are dashed.
func (p *dateParser) yearAfter(a part, dashed bool) part {
	j := a.next
	if j < len(p.toks) && p.toks[j].kind == sign && (p.is(j, ",") || (p.is(j, "-") && dashed || p.is(j, "/") || p.is(j, ".")) && p.toks[j].glued) {
		j++
	}
	glued := j < len(p.toks) && j > a.next && p.toks[j].glued
	y, next, ok := p.yearAt(j, glued && !p.is(a.next, ",") || j == a.next && p.plainTwoDigits(j))
	if ok {
		a.y, a.next = y, next
	}
	return a
}

// plainTwoDigits holds for "15 Apr 26" at its end or before a sign: a year.
func (p *dateParser) plainTwoDigits(j int) bool {
	return j < len(p.toks) && p.toks[j].kind == number && len(p.toks[j].low) == 2 &&
		(j+1 == len(p.toks) || p.toks[j+1].kind == sign && strings.Contains(",;)\n", p.toks[j+1].low))
}

// monthDay reads Sept 21, 2026; Apr 15; June 2026; Jun '26; and a month alone
// where the words before ask for a date.
func (p *dateParser) monthDay(i int) (part, bool) {
	m, j, ok := p.month(i)
	if !ok {
		return part{}, false
	}
	if p.is(j, "-") && j+1 < len(p.toks) && p.toks[j].glued && p.toks[j+1].glued && p.toks[j+1].kind == number {
		if short, next, ok := p.yearAt(j+1, true); ok && !p.is(next, "-") && !p.is(next, ",") {
			return part{y: short, m: m, next: next}, true // Apr-26
		}
		j++ // Apr-15-2026
	}
	if y, next, ok := p.yearAt(p.skip(j, ","), false); ok {
		return part{y: y, m: m, next: next}, true
	}
	if d, ok := p.dayNumber(j); ok && !p.modal(i) {
		a := p.yearAfter(part{m: m, d: d, next: p.afterOrdinal(j + 1)}, p.is(j-1, "-"))
		return a, true
	}
	if p.toks[i].upper && !p.tagged(i, j) && (len(p.toks) == j || p.asksForMonth(i) || p.monthRange(j)) {
		return part{m: m, next: j}, true
	}
	return part{}, false
}

// monthRange holds for the May of "May to June 2026".
func (p *dateParser) monthRange(j int) bool {
	if j >= len(p.toks) || !p.cal.ranges[p.toks[j].low] {
		return false
	}
	_, next, ok := p.month(j + 1)
	_, _, year := p.yearAt(next, false)
	return ok && year
}

func (p *dateParser) tagged(i, j int) bool {
	return i > 0 && p.toks[i].glued || j < len(p.toks) && p.toks[j].glued && p.toks[j].kind != sign
}

func (p *dateParser) asksForMonth(i int) bool {
	return i > 0 && (p.toks[i-1].low == "in" || p.saidBefore(i))
}
