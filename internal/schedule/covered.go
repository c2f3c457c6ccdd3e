package schedule

import (
	"slices"
	"strings"
	"time"
	"unicode"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// coverDay takes the one day that the cell of what covers a sheet tells for the day
// it is covered: "brick by 8 May".
func coverDay(dates []phrase.Date, c source) []phrase.Date {
	if c.slot == "front" && len(dates) == 1 && dates[0].Verb == "" && dates[0].Prep != "" {
		x := dates[0] // what is remembered stays as it is
		x.Verb = "cover"
		return []phrase.Date{x}
	}
	return dates
}

// coverLast is the last of several days that a cell tells of what covers a sheet.
const coverLast = "cover_last"

// lastCover keeps the last day of a cover that comes in turns: "board 8 Oct; soil in
// 14 Oct". Its first day is that on which the sheet is no more bare.
func (r *reader) lastCover(l *Line, c source, order dayOrder) {
	first := l.Dates["cover"]
	if c.slot != "cover" || first.State != "day" && first.State != "span" || c.cell.Kind == workbook.Date {
		return
	}
	dates := r.phrase.ColumnDates(c.text, order.DateOrder, r.year(l))
	if len(dates) < 2 {
		return
	}
	whole := c.text
	c.text = whole[dates[len(dates)-1].Start:]
	if d := r.day(l, c, order, r.year(l)); d.From > first.To {
		d.Text = whole
		l.Dates[coverLast] = d
	}
}

// coverWithin takes the days that the cell of a cover counts from the installation
// for the last of them: "within 30 days", "4 to 6 weeks after install".
func (r *reader) coverWithin(l *Line, c source) {
	if c.slot != "cover" || l.Dates["cover"].State != "unknown" {
		return
	}
	q, ok := r.stay(c.text)
	if !ok {
		return
	}
	if n, ok := wholeDays(q.Max); ok {
		l.Dates["cover"] = Day{Text: c.text, State: "relative", At: c.at, relation: "after", offset: n}
	}
}

// stay is the count of days that a text tells in its unit and with few other words.
func (r *reader) stay(text string) (phrase.Quantity, bool) {
	found := r.phrase.Quantities(text, "")
	if len(found) != 1 || found[0].Kind != "days" || found[0].Unit == "" || found[0].Max == nil {
		return phrase.Quantity{}, false
	}
	rest := text[:found[0].Start] + " " + text[found[0].End:]
	return found[0], len(strings.Fields(rest)) <= besideStay
}

// besideStay is how many words may stand beside a count of days: "not more than 30
// days after install".
const besideStay = 5

// coveredWith takes the day of the row that covers a sheet, where the cell of what
// covers it names that row: "wool, see W-6".
func (r *reader) coveredWith(l *Line, c source) bool {
	if c.slot != "front" || l.Dates["cover"].From != "" {
		return false
	}
	for _, m := range r.words.coveringRow.FindAllStringSubmatch(c.text, -1) {
		if r.marks[fold(m[1])] && fold(m[1]) != fold(l.Mark) {
			l.Dates["cover"] = Day{Text: c.text, State: "relative", Ref: m[1], At: c.at}
			return true
		}
	}
	return false
}

// neverCovered takes a sheet for one that stays open where the row has no day of its
// cover and nothing that covers it, and says so of both.
func (r *reader) neverCovered(l *Line) {
	day, front := l.Dates["cover"], l.Texts["front"]
	if day.State != "none" || front == "" || r.words.isBlank(front) || !r.saysNone(front) {
		return
	}
	day.State, day.Text = "open", front
	l.Dates["cover"] = day
}

// bareUntil takes the day up to which a remark says that the sheet lay open for that of
// its cover, which was planned earlier or is not told.
func (l *Line) bareUntil(d Day) {
	_, planned, ok := bounds(l.Dates["cover"])
	if told, _, is := bounds(d); is && (!ok || told.After(planned)) {
		l.Dates["cover"] = d
	}
}

// coverSlips puts the day of the cover off by the time that a remark says it comes later:
// "cladder says add three weeks to the date".
func (r *reader) coverSlips(l *Line, c source) {
	if c.slot != "remark" {
		return
	}
	for _, sentence := range r.words.parted(moreTime.ReplaceAllString(c.text, "")) {
		if !r.words.coverSlips.MatchString(sentence) || r.words.slipsNot.MatchString(sentence) {
			continue
		}
		for _, q := range r.phrase.Quantities(sentence, "") {
			if q.Kind == "months" {
				q = inDays(q)
			}
			n, whole := wholeDays(q.Max)
			if q.Kind != "days" || !whole || !r.words.slipsBy.MatchString(sentence[:q.Start]+"#"+sentence[q.End:]) {
				continue
			}
			d := l.Dates["cover"]
			from, to, ok := bounds(d)
			if ok && d.State != "implied" {
				d.From, d.To = from.AddDate(0, 0, n).Format(time.DateOnly), to.AddDate(0, 0, n).Format(time.DateOnly)
				l.Dates["cover"] = d
			}
			return
		}
	}
}

// moreTime are words within a time that add to none: "three more weeks".
var moreTime = regexp.MustCompile(`(?i)\b(?:more|further|extra|additional|whole|full) `)

// openFromStart holds where a note counts the days in the open from the first day of
// the work, and not from its last.
func (r *reader) openFromStart() bool {
	return slices.ContainsFunc(r.sched.Project.Notes, func(n Fact) bool { return r.words.openFromStart.MatchString(n.Text) })
}

// openFrom is the day from which the sheet of a line lies open: what is wrapped does
// not until that is off.
func (l *Line) openFrom(start bool) Day {
	d := l.Dates["install"]
	if off := l.Dates[unwrapped]; off.From > d.To {
		return off
	}
	if start {
		d.To = d.From
	}
	return d
}

// severalParts holds for days that follow one another, each told of a part of the work:
// "North 6/7-6/18; South 7/5-7/16".
func severalParts(text string, dates []phrase.Date) bool {
	end := 0
	for i, d := range dates {
		if d.From.IsZero() || !strings.ContainsFunc(text[end:d.Start], unicode.IsUpper) || i > 0 && !d.From.After(dates[i-1].From) {
			return false
		}
		end = d.End
	}
	return len(dates) > 1
}

// coverMoved takes the day to which a remark says that what comes over the work was put
// off: "cladding pushed to 3 Sep", "brick now 8/31".
func (r *reader) coverMoved(l *Line, c source, order dayOrder) {
	if c.slot != "remark" || r.words.movedNot.MatchString(c.text) {
		return
	}
	for _, at := range r.words.coverMoved.FindAllStringIndex(c.text, -1) {
		rest := upTo(";)", c.text[at[1]:])
		found := r.phrase.ColumnDates(rest, order.DateOrder, r.year(l))
		if len(found) > 0 && found[0].Start == 0 && found[0].State == "day" {
			l.bareUntil(r.dayOf(sameSeason(found[0], l.Dates["install"], halfYear), c, order))
			return
		}
	}
}
