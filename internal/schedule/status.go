package schedule

import "strings"

// statusWords tell the day up to which a log is kept, and what it says of work
// that was not covered by then; from policies/knowledge/reading.json.
type statusWords struct {
	Before string   `json:"before"` // stands before the day: "status as of"
	Open   []string `json:"open"`   // in the place of a cover date
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
	l.count("open_days", l.openFrom(false), status)
}
