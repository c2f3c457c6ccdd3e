package schedule

import "slices"

// namedAgain takes the tables of a workbook without a schedule that name again what another
// table lists: data tells of each product once, and a schedule names it wherever it goes.
func (r *reader) namedAgain(all []*table) {
	if slices.ContainsFunc(all, func(t *table) bool { return t.kind == kindSchedule && !t.listsWalls() }) {
		return
	}
	for _, t := range all {
		if slices.ContainsFunc(all, func(list *table) bool { return list != t && t.namesAgain(list) }) {
			t.kind = kindSchedule
			t.columnsOf(r, kindSchedule)
			r.subject(t)
		}
	}
}

// namesAgain holds for a table with a column of products that names again those of a list.
func (t *table) namesAgain(list *table) bool {
	return slices.ContainsFunc(t.names(), func(some names) bool { return slices.ContainsFunc(list.names(), some.again) })
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
	listed, repeated := 0, false
	for name, times := range n {
		if list[name] > 0 {
			listed++
			repeated = repeated || times > 1
		}
	}
	for _, times := range list {
		if times > 1 {
			return false
		}
	}
	return repeated && listed*3 >= len(n)*2
}
