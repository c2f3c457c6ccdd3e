package schedule

import "slices"

// namedAgain takes the tables of a workbook without a schedule that name again what another
// table lists: data tells of each product once, and a schedule names it wherever it goes.
func (r *reader) namedAgain(all []*table) {
	if slices.ContainsFunc(all, func(t *table) bool { return t.kind == kindSchedule && !t.listsWalls() }) {
		return
	}
	columns := make([][]names, len(all))
	for i, t := range all {
		columns[i] = t.names()
	}
	for i, t := range all {
		again := slices.ContainsFunc(columns[i], func(some names) bool {
			for k, lists := range columns {
				if k != i && slices.ContainsFunc(lists, some.again) {
					return true
				}
			}
			return false
		})
		if again {
			t.kind = kindSchedule
			t.columnsOf(r, kindSchedule)
			r.subject(t)
			columns[i] = t.names()
		}
	}
}

// names counts how often each name stands in a column.
type names map[string]int

// names are those of the columns of a table that may name products: its first, those for that
// and those that are not known.
func (t *table) names() []names {
	var out []names
	for i, c := range t.cols {
		if i > 0 && c.Slot != "" && c.Slot != "tag" && c.Slot != "material" && c.Slot != "alias" {
			continue
		}
		some := names{}
		for row := t.first; row <= t.last; row++ {
			if name := fold(text(t.sheet, row, t.nums[i])); name != "" {
				some[name]++
			}
		}
		out = append(out, some)
	}
	return out
}

// again holds where most names stand in a list that has each of its own once, and some stand
// more than once.
func (n names) again(list names) bool {
	if !n.repeats() || list.repeats() {
		return false
	}
	listed, repeated := 0, false
	for name, times := range n {
		if list[name] > 0 {
			listed++
			repeated = repeated || times > 1
		}
	}
	return repeated && listed*3 >= len(n)*2
}

// repeats holds for names of which one stands more than once.
func (n names) repeats() bool {
	for _, times := range n {
		if times > 1 {
			return true
		}
	}
	return false
}
