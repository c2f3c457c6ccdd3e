package schedule

import "time"

// textDates takes dates told in words ("placed 3 Aug", "prime Fri, sheet Mon")
// for the dates of the line that have no column of their own.
func (r *reader) textDates(l *Line, c source, orders map[string]dayOrder) {
	for _, x := range r.phrase.Dates(c.text, orders[""].DateOrder, r.year(l)) {
		if x.State != "day" && x.State != "span" && x.State != "impossible" || x.Verb == "" {
			continue
		}
		if x.State == "span" && x.Prep != "" && x.Prep != "on" {
			continue
		}
		slot := x.Verb
		if !isDateSlot(slot) {
			continue
		}
		d := r.dayOf(x, c, orders[""])
		if have, ok := l.Dates[slot]; ok && have.From != "" {
			l.told(slot, d)
			continue
		}
		l.Dates[slot] = d
	}
}

// told keeps a date that words give next to the column's own: a remark that
// tells priming and sheet apart is finer than one install date.
func (l *Line) told(slot string, d Day) {
	if slot == "install" && d.From != l.Dates["install"].From {
		l.Dates["install_told"] = d
	}
}

// relatives fills in dates that hang on another line ("w/ layer 5").
func (r *reader) relatives() {
	byGroup := map[string]*Line{}
	byMark := map[string]*Line{}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		byGroup[l.Sheet+"\x00"+l.Group+"\x00layer "+fold(l.Order)] = l
		byMark[fold(l.Mark)] = l
	}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		for slot, d := range l.Dates {
			if d.State != "relative" || d.Ref == "" {
				continue
			}
			ref := byGroup[l.Sheet+"\x00"+l.Group+"\x00"+fold(d.Ref)]
			if ref == nil {
				ref = byMark[fold(d.Ref)]
			}
			if ref == nil || ref.ID == l.ID {
				continue
			}
			if from, ok := ref.Dates["install"]; ok && from.From != "" {
				d.From, d.To, d.State, d.Ref = from.From, from.To, "implied", ref.ID
				l.Dates[slot] = d
			}
		}
	}
}

// spans counts the days between the dates of each line.
func (r *reader) spans() {
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		l.count("bare_days", l.Dates["install"], l.Dates["cover"])
		l.count("concrete_age_days", l.Dates["placed"], l.Dates["install"])
		sheet := l.Dates["install"]
		if told, ok := l.Dates["install_told"]; ok {
			sheet = told
		}
		l.count("prime_gap_days", l.Dates["prime"], sheet)
		l.planned("bare_days", "planned_open_days")
		l.planned("concrete_age_days", "age_days")
	}
}

// planned takes a span that a column states in days where no dates give it.
func (l *Line) planned(span, figure string) {
	f, ok := l.Figures[figure]
	if _, counted := l.Spans[span]; counted || !ok || f.Min == nil {
		return
	}
	n := int(*f.Min)
	l.Spans[span] = Span{Min: n, Max: n, Last: n}
}

func (l *Line) count(key string, a, b Day) {
	a1, a2, ok := bounds(a)
	b1, b2, ok2 := bounds(b)
	if !ok || !ok2 {
		return
	}
	l.Spans[key] = Span{Min: days(a2, b1), Max: days(a1, b2), Last: days(a2, b2), From: a.From, To: b.To}
}

func bounds(d Day) (from, to time.Time, ok bool) {
	from, err := time.Parse("2006-01-02", d.From)
	if err != nil {
		return from, to, false
	}
	to, err = time.Parse("2006-01-02", d.To)
	if err != nil {
		to = from
	}
	return from, to, true
}

func days(a, b time.Time) int { return int(b.Sub(a).Hours() / 24) }
