package schedule

import (
	"slices"
	"strconv"
	"strings"
	"time"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// textDates takes dates told in words ("placed 3 Aug", "prime Fri, sheet Mon")
// for the dates of the line that have no column of their own.
func (r *reader) textDates(l *Line, c source, orders map[string]dayOrder) {
	if r.coveredWith(l, c) {
		return
	}
	c.text = r.primedByTag(c.text)
	for _, x := range coverDay(r.phrase.Dates(c.text, orders[""].DateOrder, r.year(l)), c) {
		r.weekdayTold(l, x, c, orders[""])
		if c.slot == "remark" && x.State == "day" && r.words.bareUntil.MatchString(c.text[:x.Start]) {
			l.bareUntil(r.dayOf(sameSeason(x, l.Dates["install"], halfYear), c, orders[""]))
			continue
		}
		slot := x.Verb
		if c.slot == "substrate" && slot == "install" {
			slot = "placed" // "blockwork, laid in March"
		}
		if !tellsDay(x) || !isDateSlot(slot) || slot == "placed" && !tellsOfBed(c.slot) {
			continue
		}
		ahead := halfYear
		if slot == "placed" {
			x, ahead = monthOfYear(x), tradeSlip
		}
		d := r.dayOf(sameSeason(x, l.Dates["install"], ahead), c, orders[""])
		if have, ok := l.Dates[slot]; ok && (have.From != "" || have.State == "impossible") && have.At != r.over.dates[slot].At {
			l.told(slot, d)
			continue
		}
		l.Dates[slot] = d
	}
}

// primedByTag says "primed" for a primer that is told by its tag to go on: "P-4 rolled on
// Fri 9 Apr, sheet Mon", of which the words alone would have the sheet rolled on Friday.
func (r *reader) primedByTag(text string) string {
	if !putOn.MatchString(text) {
		return text
	}
	found := r.lex.findTags(text)
	slices.SortStableFunc(found, func(a, b mention) int { return b.start - a.start }) // the last first
	kept := len(text)                                                                 // where what lies behind is no longer as it was found
	for _, m := range found {
		if m.product < 0 || m.end > kept || !r.isPrimer(m) {
			continue
		}
		if did := primerGoesOn.FindString(text[m.end:]); did != "" {
			text, kept = text[:m.start]+"primed "+text[m.end+len(did):], m.start
		}
	}
	return text
}

// primerGoesOn stands right after the primer, before the day on which it goes on.
var primerGoesOn = regexp.MustCompile(`(?i)^\s+(?:(?:was|is|to be|goes|went|put)\s+)?(?:(?:brushed|brush|rolled|roller|sprayed|applied|painted|laid|put)\s*(?:on|out)?|on)\b\s*`)

// putOn is in every text with such words.
var putOn = regexp.MustCompile(`(?i)\s(?:brush|rolle|spraye|applie|painte|laid|put|on\b)`)

// weekdayTold keeps a day in words whose weekday falls on another, whatever is done on
// it ("crew comes Wednesday 06/14/2027"); of one that could be read both ways the
// weekday may tell which.
func (r *reader) weekdayTold(l *Line, x phrase.Date, c source, order dayOrder) {
	x = sameSeason(x, l.Dates["install"], halfYear)
	if x.WeekdayOff && x.State == "day" && !r.eitherWay([]string{x.Text}) {
		l.Dates["said"] = r.dayOf(x, c, order)
	}
}

// tellsDay holds for a date in words that says on which days something is done.
func tellsDay(x phrase.Date) bool {
	switch x.State {
	case "day", "impossible":
		return x.Verb != ""
	case "span":
		return x.Verb != "" && (x.Prep == "" || x.Prep == "on")
	}
	return false
}

// monthOfYear takes the whole month for a day without a year that could be one:
// concrete "poured April 25", in 2025; "poured 6/26" under work of 2027 too.
func monthOfYear(x phrase.Date) phrase.Date {
	back := 0
	if strings.Contains(x.Text, "/") && x.From.Day() == (x.From.Year()-1)%100 {
		back = 1
	}
	if x.State == "day" && x.NoYear && x.From.Day() == (x.From.Year()-back)%100 {
		x.From = x.From.AddDate(-back, 0, 1-x.From.Day())
		x.To, x.State, x.NoYear = x.From.AddDate(0, 1, -1), "span", false
	}
	return x
}

// tellsOfBed holds for columns whose words can tell when the bed was placed; a
// neighbor that is placed is none.
func tellsOfBed(slot string) bool {
	return slot == "substrate" || slot == "remark" || slot == "material"
}

// halfYear is the distance at which a date without a year, read in the year of
// the installation, must be of the year before or after. The bed comes before
// the work: one that is further ahead than the trades slip is of the year before.
const (
	halfYear  = 183 * 24 * time.Hour
	tradeSlip = 60 * 24 * time.Hour
)

// sameSeason moves a date that gives no year to the year that ends less than a
// stretch after another of the same work.
func sameSeason(x phrase.Date, near Day, ahead time.Duration) phrase.Date {
	at, _, ok := bounds(near)
	if !ok || !x.NoYear || x.From.IsZero() {
		return x
	}
	shift := 0
	switch d := x.From.Sub(at); {
	case d > ahead:
		shift = -1
	case d < ahead-2*halfYear:
		shift = 1
	}
	if shift != 0 { // the weekday beside it was held against another year
		x = x.Moved(shift)
		x.WeekdayOff = false
	}
	return x
}

// told keeps a date that words give next to the column's own: a remark that
// tells priming and sheet apart is finer than one install date.
func (l *Line) told(slot string, d Day) {
	if slot == "install" && d.From != l.Dates["install"].From {
		l.Dates["install_told"] = d
	}
}

// relatives fills in dates that hang on another line ("w/ layer 5"), which may
// hang on a third; one that leads nowhere is not known.
func (r *reader) relatives() {
	lines := map[string]*Line{}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		lines[l.layerKey("layer "+l.Order)] = l
		lines[fold(l.Mark)] = l
	}
	for again := true; again; {
		again = false
		for i := range r.sched.Lines {
			again = r.hang(&r.sched.Lines[i], lines) || again
		}
	}
	for i := range r.sched.Lines {
		for slot, d := range r.sched.Lines[i].Dates {
			if d.State == "relative" {
				d.State, d.Note = "unknown", "hangs on other work whose date is not found"
				r.sched.Lines[i].Dates[slot] = d
			}
		}
	}
}

// layerKey names a layer of the line's own assembly.
func (l *Line) layerKey(layer string) string {
	return l.Sheet + "\x00" + l.Group + "\x00" + fold(layer)
}

// hang takes the dates of other work for those that hang on it, and tells
// whether there were any.
func (r *reader) hang(l *Line, lines map[string]*Line) bool {
	found := false
	for slot, d := range l.Dates {
		if d.State != "relative" {
			continue
		}
		ref, day := l, l.Dates[dayBefore[slot]]
		if d.Ref != "" {
			if ref = r.other(l, d.Ref, lines); ref == nil || ref.ID == l.ID {
				continue
			}
			day = ref.Dates["install"]
		}
		if from, to, ok := bounds(day); ok {
			d.hangOn(from, to)
			d.Ref = ref.ID
			l.Dates[slot], found = d, true
		}
	}
	return found
}

// other finds the line that a date hangs on: a layer of the same assembly, a
// mark, or a mark with a word for it before ("line 5", "item 5").
func (r *reader) other(l *Line, ref string, lines map[string]*Line) *Line {
	if found := lines[l.layerKey(ref)]; found != nil {
		return found
	}
	if found := lines[fold(ref)]; found != nil {
		return found
	}
	words := strings.Fields(ref)
	word := fold(strings.Trim(strings.Join(words[:max(0, len(words)-1)], " "), ".#:"))
	if word == "" || !slices.Contains(r.head.bySlot["mark"].words, word) {
		return nil
	}
	return lines[fold(words[len(words)-1])]
}

// dayBefore is the date of the same line that "same day" and "next day" hang on.
var dayBefore = map[string]string{"cover": "install", "install": "prime", "prime": "install", "inspected": "install"}

// hangOn sets a date by that of the work it hangs on: after the last day of
// that work, or before its first.
func (d *Day) hangOn(from, to time.Time) {
	switch d.relation {
	case "after":
		from = to
	case "before":
		to = from
	}
	d.From, d.To, d.State = iso(from.AddDate(0, 0, d.offset)), iso(to.AddDate(0, 0, d.offset)), "implied"
}

// spans counts the days between the dates of each line.
func (r *reader) spans() {
	status, fromStart := r.statusDay(), r.openFromStart()
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		l.count("work_days", l.Dates["install"], l.Dates["finish"])
		l.lastDay()
		l.count("site_days", l.Dates["delivered"], l.Dates["install"].week())
		l.count("stock_days", l.Dates["made"], l.Dates["install"])
		l.count("seen_days", l.Dates["install"], l.Dates["inspected"])
		l.count("unseen_days", l.Dates["inspected"], l.Dates["cover"])
		l.count("unseen_last_days", l.Dates["inspected"], l.Dates[coverLast])
		l.count("bare_days", l.openFrom(fromStart), l.Dates["cover"])
		r.stillOpen(l, status)
		l.count("concrete_age_days", l.Dates["placed"], l.Dates["install"])
		l.count("drying_days", l.Dates["washed"], l.Dates["install"])
		sheet := l.Dates["install"]
		if told, ok := l.Dates["install_told"]; ok {
			sheet = told
		}
		l.count("prime_gap_days", l.Dates["prime"], sheet)
		l.planned("bare_days", "planned_open_days")
		l.planned("concrete_age_days", "age_days")
	}
	r.countedDays()
}

// countedDays tells the days that a column counts between the row's own dates from
// those that it allows: where most of a table agree with the dates, they are counts.
// Offices count from the last day of the work or from its first.
func (r *reader) countedDays() {
	type tally struct{ both, fromLast, fromFirst int }
	tables := map[string]tally{}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		f, stated := l.Figures["exposure_days"]
		bare, dated := l.Spans["bare_days"]
		if !stated || !dated || f.Min == nil {
			continue
		}
		n := tables[l.Table]
		n.both++
		if stated, ok := wholeDays(f.Min); ok {
			n.fromLast += agrees(stated, bare.Last)
			n.fromFirst += agrees(stated, bare.Max)
		}
		tables[l.Table] = n
	}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		f, stated := l.Figures["exposure_days"]
		if n := tables[l.Table]; !stated || n.both < fewCounts || max(n.fromLast, n.fromFirst)*2 <= n.both {
			continue
		}
		l.Figures["planned_open_days"] = f
		delete(l.Figures, "exposure_days")
	}
}

// agrees is 1 where two counts of days differ by no more than a day that one of them
// leaves out.
func agrees(a, b int) int {
	if max(a-b, b-a) <= 1 {
		return 1
	}
	return 0
}

// fewCounts is how many rows must have both dates and a count of days.
const fewCounts = 4

// lastDay takes the day the work is done for the end of the installation; one
// before its beginning is a slip, and changes nothing.
func (l *Line) lastDay() {
	start, last := l.Dates["install"], l.Dates["finish"]
	_, from, ok := bounds(start)
	_, to, ok2 := bounds(last)
	if !ok || !ok2 || !to.After(from) {
		return
	}
	start.To, start.State = iso(to), "span"
	l.Dates["install"] = start
}

// planned takes a span that a column states in days where no dates give it.
func (l *Line) planned(span, figure string) {
	n, ok := wholeDays(l.Figures[figure].Min)
	if _, counted := l.Spans[span]; counted || !ok {
		return
	}
	l.Spans[span] = Span{Min: n, Max: n, Last: n}
}

// mostDays is more than any building stands; a count above it is held at it.
const mostDays = 1_000_000

// wholeDays is a figure of days as a count, if there is one; none is below 0.
func wholeDays(f *float64) (int, bool) {
	if f == nil || *f < 0 {
		return 0, false
	}
	return int(min(*f, mostDays)), true
}

func (l *Line) count(key string, a, b Day) {
	a1, a2, ok := bounds(a)
	b1, b2, ok2 := bounds(b)
	if !ok || !ok2 {
		return
	}
	l.Spans[key] = Span{Min: days(a2, b1), Max: days(a1, b2), Last: days(a2, b2), From: a.From, To: b.To}
}

// week is the day, or the week of a Monday, by which schedules call it.
func (d Day) week() Day {
	from, to, ok := bounds(d)
	if ok && from.Equal(to) && from.Weekday() == time.Monday {
		d.To = from.AddDate(0, 0, 6).Format("2006-01-02")
	}
	return d
}

func bounds(d Day) (from, to time.Time, ok bool) {
	if d.From == "" {
		return from, to, false
	}
	from, err := time.Parse("2006-01-02", d.From)
	if err != nil {
		return from, to, false
	}
	if to = from; d.To != "" {
		if end, err := time.Parse("2006-01-02", d.To); err == nil {
			to = end
		}
	}
	return from, to, true
}

// year is that of the day on which it begins.
func (d Day) year() (int, bool) {
	text, _, _ := strings.Cut(d.From, "-")
	year, err := strconv.Atoi(text)
	return year, err == nil
}

func days(a, b time.Time) int { return int(b.Sub(a).Hours() / 24) }
