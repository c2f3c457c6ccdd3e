package schedule

import (
	"slices"
	"strings"

	"abut/internal/phrase"
)

// daysOver are the days that a divider tells once for the rows below it ("Week of 6
// July; brick by 14 Aug"), and the row it stands in.
type daysOver struct {
	row   int
	dates map[string]Day
}

// dividers lists the texts of a table that head rows and may tell their days.
func (r *reader) dividers(t *table) []string {
	if t.kind != kindSchedule {
		return nil
	}
	var out []string
	for row := t.first; row <= t.last; row++ {
		if t.ownCells(row) != 1 || !r.isDivider(t, row) {
			continue
		}
		if text := r.rowText(t, row); strings.ContainsAny(text, "0123456789") {
			out = append(out, text)
		}
	}
	return out
}

// divide takes what a divider says for the rows below it. One of days alone is no wall:
// the rows stay under the wall named before. One of a wall alone ends the days above,
// if it does not stand right below them.
func (r *reader) divide(c source, orders map[string]dayOrder) {
	dates, alone := r.daysTold(c, orders[""])
	nested := r.over.row > 0 && r.over.row+1 == c.at.Row
	switch {
	case len(dates) > 0:
		r.over = daysOver{c.at.Row, dates}
	case nested:
		r.over.row = c.at.Row
	default:
		r.over = daysOver{}
	}
	if !alone {
		r.overRows.divider = c
	}
}

// daysTold reads the days of a divider by what is done on them, and whether it tells
// nothing else.
func (r *reader) daysTold(c source, order dayOrder) (told map[string]Day, alone bool) {
	told, alone = map[string]Day{}, true
	year := r.yearSaid
	if y, ok := r.above.year(); ok && year == 0 {
		year = y
	}
	from := 0
	for _, x := range r.phrase.Dates(c.text, order.DateOrder, year) {
		if x.State != "day" && x.State != "span" || x.Start < from {
			continue
		}
		slot, bare := r.doneOn(x, c.text[from:x.Start])
		alone, from = alone && bare, x.End
		if _, twice := told[slot]; slot == "" || twice {
			continue
		}
		one := c
		one.text = c.text[x.Start:x.End]
		told[slot] = r.dayOf(sameSeason(x, told["install"], halfYear), one, order)
	}
	return told, alone && len(told) > 0 && len(headingWords(c.text[from:])) == 0
}

// doneOn tells what is done on a day of a divider by the words before it, and whether
// those tell nothing else. Days without a word for the work are those of the rows' own:
// bare ones, a week, or several, which no paper is dated by ("Level 3: 6-17 July").
func (r *reader) doneOn(x phrase.Date, before string) (slot string, bare bool) {
	words := headingWords(before)
	bare = !slices.ContainsFunc(words, func(w string) bool {
		_, _, work := r.head.work(w)
		return !work && !r.head.weekWords[w]
	})
	slot, _, said := r.head.work(before)
	if !said && isDateSlot(x.Verb) {
		slot, said = x.Verb, true
	}
	several := x.State == "span" || len(words) > 0 && r.head.weekWords[words[len(words)-1]]
	if slot == "finish" && several || !said && (bare || several) {
		return "install", bare // "South end, 6-17 July" tells of the end of a wall
	}
	return slot, bare
}

// datedOver gives a line the days told over it that its own cells do not tell.
func (r *reader) datedOver(l *Line) {
	for slot, d := range r.over.dates {
		if own, ok := l.Dates[slot]; !ok || own.State == "missing" {
			l.Dates[slot] = d
		}
	}
}

// countedBeside takes the second of two columns of days in the sun for those that a row
// counts, where the other has what is allowed: "UV limit (d)" beside "Protection | Exp. (d)".
func (r *reader) countedBeside(t *table) {
	allowed := t.column("exposure_days")
	if allowed == 0 || t.column("planned_open") > 0 {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		if t.nums[i] == allowed || c.Slot != "" && c.Slot != "shelter" || !r.columnHolds(t.stretch(), t.nums[i], "days") {
			continue
		}
		if says := r.head.guesses("", c.own); len(says) > 0 && says[0].slot == "exposure_days" && says[0].score >= 1 {
			c.Slot, c.Confidence, c.Why = "planned_open", says[0].score, `heading says "`+says[0].words+`", beside a column of what is allowed`
			return
		}
	}
}
