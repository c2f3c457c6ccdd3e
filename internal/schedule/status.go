package schedule

import "strings"

// statusWords tell the day up to which a log is kept, and what it says of work
// that was not covered by then; from policies/knowledge/reading.json.
type statusWords struct {
	Before string   `json:"before"` // stands before the day: "status as of"
	Open   []string `json:"open"`   // in the place of a cover date
	Lead   string   `json:"lead"`   // before the day on which a remark says that it is open
}

// statusDay is the day up to which the notes say that the log is kept, the last
// of several; no day where they do not say it.
func (r *reader) statusDay() Day {
	var last Day
	for _, note := range r.sched.Project.Notes {
		for _, d := range r.phrase.Dates(note.Text, r.bookOrder, r.yearSaid) {
			if d.State != "day" || d.NoYear || !r.words.status.MatchString(note.Text[:d.Start]) {
				continue
			}
			if from := iso(d.From); from > last.From {
				last = Day{From: from, To: iso(d.To), Text: d.Text, State: d.State, At: note.At}
			}
		}
	}
	return last
}

// stillOpen counts the days from the installation to the day of the log, where
// the line says that it was not covered by then.
func (r *reader) stillOpen(l *Line, status Day) {
	cover, ok := l.Dates["cover"]
	said := strings.ToLower(strings.Trim(cover.Text, " .-!"))
	if !ok || cover.From != "" || said != "" && !r.words.stillOpen[said] {
		return
	}
	if told := r.openSaid(l); told.From > status.From {
		status = told
	}
	l.count("open_days", l.openFrom(false), status)
}

// openSaid is the day on which a remark says that the sheet is still open: "still bare
// 14 Nov"; no day where it does not, or where the day lies before the work.
func (r *reader) openSaid(l *Line) Day {
	text := l.Texts["remark"]
	read := r.phrase.Dates
	year := r.year(l)
	if year > 0 {
		read = r.phrase.ColumnDates // "9/30" is a day there
	}
	for _, d := range read(text, r.bookOrder, year) {
		from := iso(d.From)
		if d.State == "day" && from >= l.Dates["install"].From && r.words.openLead.MatchString(text[:d.Start]) {
			return Day{From: from, To: iso(d.To), Text: d.Text, State: d.State, At: At{Sheet: l.Sheet, Row: l.Row, Cell: l.Cells["remark"]}}
		}
	}
	return Day{}
}
