package schedule

import "strings"

// pours reads a table of concrete placements.
func (r *reader) pours(t *table) {
	orders := r.dateOrders(t)
	for row := t.first; row <= t.last; row++ {
		name := text(t.sheet, row, t.nums[0])
		if t.ownCells(row) < 2 || name == "" {
			continue
		}
		p := Pour{Name: name, At: At{Sheet: t.sheet.Name, Row: row}, Signals: []Said{}}
		probe := Line{Signals: []Said{}}
		for i, col := range t.nums {
			c, ok := t.sheet.At(row, col)
			if !ok {
				continue
			}
			src := source{slot: t.cols[i].Slot, text: strings.TrimSpace(c.Value), cell: c, at: t.at(row, col)}
			if src.slot == "placed" {
				p.Placed = r.day(nil, src, orders["placed"], 0)
				continue
			}
			r.signals(&probe, src)
		}
		p.Signals = probe.Signals
		r.sched.Pours = append(r.sched.Pours, p)
	}
}

// poured gives lines whose substrate names a placement its date and curing.
func (r *reader) poured() {
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		for _, p := range r.sched.Pours {
			if !r.words.hasAny(l.Texts["substrate"], []string{strings.ToLower(p.Name)}) {
				continue
			}
			if d, ok := l.Dates["placed"]; !ok || d.From == "" {
				l.Dates["placed"] = p.Placed
			}
			for _, s := range p.Signals {
				s.Slot = "substrate"
				l.Signals = append(l.Signals, s)
			}
		}
	}
	r.layersPlaced()
	r.laidInOtherRows()
}

// laidInOtherRows takes the dates of a row of masonry or concrete for the placement of the
// bed of a later row that names it: "new block, line E-01".
func (r *reader) laidInOtherRows() {
	rows := map[string]*Line{}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		main := l.Main()
		if main == nil || l.Mark == "" || main.Class != "masonry" && main.Family != "cast-concrete" {
			continue
		}
		key := l.Sheet + "\x00" + fold(l.Mark)
		if rows[key] != nil {
			l = nil // two rows of one mark: nothing tells which is meant
		}
		rows[key] = l
	}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		if d := l.Dates["placed"]; d.From != "" || d.State == "impossible" {
			continue
		}
		for _, m := range r.words.namesRow.FindAllStringSubmatch(l.Texts["substrate"], -1) {
			bed := rows[l.Sheet+"\x00"+fold(strings.TrimRight(m[1], ".,;"))]
			if bed != nil && bed.ID != l.ID && bed.Dates["install"].From != "" {
				l.Dates["placed"] = bed.done()
			}
		}
	}
}

// done is the day on which the work of a row ends.
func (l *Line) done() Day {
	if last := l.Dates["finish"]; last.From != "" {
		return last
	}
	return l.Dates["install"]
}

// layersPlaced takes the installation date of a concrete layer as the
// placement of the concrete that a later layer of the same group goes on.
func (r *reader) layersPlaced() {
	placed := map[string]Day{}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		if hasKey(l, "material", "cast-concrete") && l.Order != "" {
			placed[l.Sheet+"\x00"+l.Group] = l.Dates["install"]
		}
	}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		d, ok := placed[l.Sheet+"\x00"+l.Group]
		if !ok || l.Order == "" || !hasKey(l, "substrate", "cast-concrete") {
			continue
		}
		if _, known := l.Dates["placed"]; !known {
			l.Dates["placed"] = d
		}
	}
}

func hasKey(l *Line, slot, key string) bool {
	for _, it := range l.Items {
		if it.Slot != slot {
			continue
		}
		for _, k := range it.Keys {
			if k == key {
				return true
			}
		}
	}
	return false
}
