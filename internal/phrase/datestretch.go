package phrase

import (
	"strconv"
	"strings"
	"time"
)

// edge reads mid-May 2026, late June, early Oct 26, end of August.
func (p *dateParser) edge(i int) (part, bool) {
	days, j := p.longest(p.cal.edges, i)
	if j == i {
		return part{}, false
	}
	if p.is(j, "-") {
		j++
	}
	if p.is(j, "of") {
		j++
	}
	m, next, ok := p.month(j)
	if _, day := p.dayNumber(next); !ok || day && p.is(i, "end") { // "works end Jul 12"
		return part{}, false
	}
	a := part{m: m, first: p.cal.edgeDays[days][0], last: p.cal.edgeDays[days][1], next: next}
	k := p.skip(next, ",")
	if y, n, ok := p.yearAt(k, k == next && p.plainTwoDigits(k)); ok { // "early Oct 26": a third of a month has no day
		a.y, a.next = y, n
	}
	return a, true
}

// longest finds the longest pattern at token i.
func (p *dateParser) longest(m *matcher, i int) (id, next int) {
	next = i
	window := p.toks[i:min(len(p.toks), i+6)]
	for _, h := range m.at(window, 0, nil) {
		if h.to > 0 && i+h.to > next {
			id, next = h.id, i+h.to
		}
	}
	return id, next
}

// weekOf reads wk of 9 Feb 2026.
func (p *dateParser) weekOf(i int) (part, bool) {
	_, j := p.longest(p.cal.weeks, i)
	if j == i {
		return part{}, false
	}
	j = p.skip(j, ".:")
	if j < len(p.toks) {
		if _, ok := p.cal.Weekdays[p.toks[j].low]; ok {
			j = p.skip(j+1, ".,")
		}
	}
	if j >= len(p.toks) {
		return part{}, false
	}
	for _, form := range []func(int) (part, bool){p.iso, p.dotted, p.slash, p.dayMonth, p.monthDay, p.monthAndDay} {
		if a, ok := form(j); ok && a.d > 0 {
			a.ofWeek = true
			return a, true
		}
	}
	return part{}, false
}

// weekNumber reads week 23, wk 23 of 2026, 2026-W23.
func (p *dateParser) weekNumber(i int) (part, bool) {
	if y, j, ok := p.yearAt(i, false); ok && p.is(j, "-") && j+1 < len(p.toks) {
		if n, err := strconv.Atoi(strings.TrimPrefix(p.toks[j+1].low, "w")); err == nil && p.toks[j+1].kind == word && n >= 1 && n <= 53 {
			return part{y: y, week: n, next: j + 2}, true
		}
	}
	if !p.cal.weekNo[p.toks[i].low] {
		return part{}, false
	}
	j := p.skip(i+1, ".#")
	if p.is(j, "no") {
		j = p.skip(j+1, ".")
	}
	n, ok := p.dayNumberUpTo(j, 53)
	if !ok {
		return part{}, false
	}
	return p.yearOfWeek(part{week: n, next: j + 1}), true
}

// yearOfWeek reads the year that may follow the number of a week: "23/2026", "23 of 2026".
func (p *dateParser) yearOfWeek(a part) part {
	k := p.skip(a.next, ",/")
	if p.is(k, "of") {
		k++
	}
	if y, next, ok := p.yearAt(k, false); ok {
		a.y, a.next = y, next
	}
	return a
}

func (p *dateParser) dayNumberUpTo(i, most int) (int, bool) {
	if i >= len(p.toks) || p.toks[i].kind != number || len(p.toks[i].low) > 2 {
		return 0, false
	}
	n, err := strconv.Atoi(p.toks[i].low)
	return n, err == nil && n >= 1 && n <= most
}

// quarter reads Q3 2026, 3Q26.
func (p *dateParser) quarter(i int) (part, bool) {
	n, j := 0, i+1
	switch low := p.toks[i].low; {
	case p.toks[i].kind == word && len(low) == 2 && low[0] == 'q' && low[1] >= '1' && low[1] <= '4':
		n = int(low[1] - '0')
	case p.toks[i].kind == number && len(low) == 1 && low[0] >= '1' && low[0] <= '4' && p.is(j, "q") && p.toks[j].glued:
		n, j = int(low[0]-'0'), j+1
	default:
		return part{}, false
	}
	y, next, ok := p.yearAt(p.skip(j, "/,-"), true)
	if !ok {
		return part{}, false
	}
	return part{y: y, m: 3*n - 2, months: 3, next: next}, true
}

// season reads spring 2026, winter 2026-27, winter 26/27.
func (p *dateParser) season(i int) (part, bool) {
	s, ok := p.cal.Seasons[p.toks[i].low]
	if !ok || p.toks[i].kind != word || len(s) != 2 {
		return part{}, false
	}
	j := i + 1
	if p.is(j, "of") || p.is(j, ",") {
		j++
	}
	y, next, ok := p.yearAt(j, p.twoYears(j))
	if !ok {
		return part{}, false
	}
	if (p.is(next, "-") || p.is(next, "/")) && next+1 < len(p.toks) && p.toks[next].glued {
		if _, n, ok := p.yearAt(next+1, true); ok {
			next = n
		}
	}
	return part{y: y, m: s[0], months: s[1], next: next}, true
}

// twoYears holds for two years in a row of two digits each with a sign between, which
// behind a season are no other figures: "winter 26/27".
func (p *dateParser) twoYears(i int) bool {
	first, next, ok := p.yearAt(i, true)
	if !ok || !p.is(next, "-") && !p.is(next, "/") || !p.toks[next].glued || next+1 >= len(p.toks) || !p.toks[next+1].glued {
		return false
	}
	second, _, ok := p.yearAt(next+1, true)
	return ok && second == first+1
}

// A stretch that finer days may be told of is longer than a week; they lie in it or
// within a month of it, as seasons begin on other days from office to office.
const (
	leastStretch  = 8 * 24 * time.Hour
	besideStretch = 31 * 24 * time.Hour
)

// narrowed reads the days that brackets behind a season, a quarter or a month tell of
// it, which has the year: "summer 2026 (Aug 3–5)".
func (p *dateParser) narrowed(d Date, i int) (Date, int, bool) {
	if d.State != "span" || d.NoYear || d.To.Sub(d.From) < leastStretch || i+1 >= len(p.toks) || !p.is(i, "(") && !p.is(i, "[") {
		return Date{}, 0, false
	}
	for _, year := range []int{d.From.Year(), d.To.Year()} {
		q := *p
		q.year = year
		fine, next, ok := q.date(i + 1)
		if !ok || fine.State != "day" && fine.State != "span" || !p.is(next, ")") && !p.is(next, "]") && !p.is(next, ",") {
			continue
		}
		if !fine.of(d) {
			continue
		}
		fine.Start, fine.NoYear = d.Start, false
		fine.Text = p.text[fine.Start:fine.End]
		return fine, next, true
	}
	return Date{}, 0, false
}

// of holds for days of a longer stretch. A winter is called by either of its two years
// where only one is written: "winter 2027 (Feb 8–26)" is February of that year.
func (d Date) of(longer Date) bool {
	if d.To.Sub(d.From) >= longer.To.Sub(longer.From) {
		return false
	}
	within := func(from, to time.Time) bool {
		return !d.From.Before(from.Add(-besideStretch)) && !d.To.After(to.Add(besideStretch))
	}
	twoYears := longer.From.Year() != longer.To.Year()
	if twoYears && !strings.ContainsAny(longer.Text, "-/–") {
		return d.From.Year() == longer.From.Year() && (within(longer.From, longer.To) || within(longer.From.AddDate(-1, 0, 0), longer.To.AddDate(-1, 0, 0)))
	}
	return within(longer.From, longer.To)
}

// afterTime passes over a time of day that an export put behind the date.
func (p *dateParser) afterTime(i int) int {
	j := i
	if j < len(p.toks) && strings.HasPrefix(p.toks[j].low, "t") && p.toks[j].glued && p.toks[j].kind == word && len(p.toks[j].low) == 3 && digit(p.toks[j].low[1]) {
		j++
	} else if _, ok := p.dayNumberOrZero(j); ok {
		j++
	} else {
		return i
	}
	if !p.is(j, ":") || !p.toks[j].glued {
		return i
	}
	for p.is(j, ":") && j+1 < len(p.toks) && p.toks[j+1].kind == number {
		j += 2
	}
	if p.is(j, "z") && p.toks[j].glued {
		j++
	}
	return j
}

func (p *dateParser) dayNumberOrZero(i int) (int, bool) {
	if i >= len(p.toks) || p.toks[i].kind != number || len(p.toks[i].low) != 2 && len(p.toks[i].low) != 1 {
		return 0, false
	}
	n, err := strconv.Atoi(p.toks[i].low)
	return n, err == nil && n < 24
}
