package schedule

import (
	"strings"

	"abut/internal/phrase"
)

// workAndCover reads a cell that tells in sentences when the work is done and when it is
// covered ("Set May 11, 2026. Backfilled May 20, 2026."), where no column of its own has
// the cover. What stands before the first cover is the work.
func (r *reader) workAndCover(l *Line, c source, order dayOrder) {
	if _, own := l.Cells["cover"]; own || c.slot != "install" || !strings.ContainsAny(c.text, ".;,") {
		return
	}
	dates := r.datesOfCell(l, c, order)
	first := -1
	for i := range dates {
		if i > 0 && first < 0 && r.tellsCover(c.text, dates, i) {
			first = i
		}
	}
	switch {
	case first > 0 && !dates[first-1].From.IsZero():
		l.Dates["install"] = r.dayOf(spanOf(dates[:first]), c, order)
		l.Dates["cover"] = r.dayOf(dates[first], c, order)
		l.Cells["cover"] = c.at.Cell
		if last := dates[len(dates)-1]; last.From.After(dates[first].To) {
			l.Dates[coverLast] = r.dayOf(last, c, order)
		}
	case first < 0 && len(dates) > 0:
		end := dates[len(dates)-1].End
		if words := r.words.coverOpen.FindString(c.text[end:]); words != "" {
			l.Dates["cover"] = Day{Text: strings.TrimSpace(words), State: "unknown", At: c.at}
			l.Cells["cover"] = c.at.Cell
		}
	}
}

// datesOfCell are the dates of a cell, of which those without a year are of the year
// that another one beside them has.
func (r *reader) datesOfCell(l *Line, c source, order dayOrder) []phrase.Date {
	dates := r.phrase.ColumnDates(c.text, order.DateOrder, r.year(l))
	for _, d := range dates {
		if !d.From.IsZero() && !d.NoYear {
			dates = r.phrase.ColumnDates(c.text, order.DateOrder, d.From.Year())
			break
		}
	}
	out := make([]phrase.Date, 0, len(dates))
	for _, d := range dates { // "in a tent through December 6" is no day of the work
		if d.From.IsZero() || d.Verb == "" && (d.Prep == "until" || d.Prep == "since") || d.Verb == "heated" || d.Verb == "cured" {
			continue
		}
		out = append(out, d)
	}
	return out
}

// tellsCover holds for a date of which the words say that something comes over the work
// then, by a verb or as a sentence of its own that names a material and no work ("Slate
// August 28, 2026.").
func (r *reader) tellsCover(text string, dates []phrase.Date, i int) bool {
	d := dates[i]
	if d.Verb == "cover" {
		return true
	}
	between := text[dates[i-1].End:d.Start]
	if r.words.coverWords.MatchString(between) {
		return true
	}
	lead := strings.Trim(between, " ")
	if d.Verb != "" || !strings.HasPrefix(lead, ".") && !strings.HasPrefix(lead, ";") {
		return false
	}
	found := r.lex.find(lead)
	return len(found) == 1 && len(strings.Fields(lead)) <= fewestProse
}

// spanOf is the time from the first of several days to the last.
func spanOf(dates []phrase.Date) phrase.Date {
	d := dates[0]
	if last := dates[len(dates)-1]; last.To.After(d.To) {
		d.To, d.State = last.To, "span"
	}
	return d
}
