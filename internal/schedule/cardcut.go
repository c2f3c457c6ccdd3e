package schedule

import "slices"

// cutCards ends a schedule where cards of product data begin on its sheet: below it,
// after a blank row, or right of it, after an empty column.
func (r *reader) cutCards(t *table) {
	if t.kind != kindSchedule {
		return
	}
	for i := 1; i < len(t.nums); i++ {
		if t.nums[i] > t.nums[i-1]+1 && r.holdCards(t.part(t.head[0], t.end, t.nums[i])) {
			t.cols, t.nums, t.own = t.cols[:i], t.nums[:i], nil
			r.bound(t)
			break
		}
	}
	for row := t.first + 1; row <= t.last; row++ {
		if t.ownCells(row-1) == 0 && t.ownCells(row) > 0 && r.holdCards(t.part(row, t.end, 1)) {
			t.end, t.own = row-1, nil
			r.bound(t)
			return
		}
	}
}

// part are the rows of a table's sheet from one to another, from a column on.
func (t *table) part(from, to, col int) []cardRow {
	var out []cardRow
	for row := from; row <= min(to, from+maxCard); row++ {
		var cells []cardCell
		for _, c := range t.sheet.Row(row) {
			if c.Col >= col && !c.Merged && c.Value != "" {
				cells = append(cells, cardCell{c, c.Col})
			}
		}
		if len(cells) > 0 {
			out = append(out, cardRow{number: row, cells: cells})
		}
	}
	return out
}

// holdCards holds for rows with a column of labels of which several only product data
// has.
func (r *reader) holdCards(rows []cardRow) bool {
	for _, col := range r.labelColumns(rows) {
		slots := map[string]bool{}
		for _, row := range rows {
			for i, c := range row.cells {
				label, _, ok := pairAt(row.cells, i)
				if slot := r.labelOf(label.Value); c.at == col && ok && slices.Contains(productSlots, slot) && r.wholeLabel(label.Value) {
					slots[slot] = true
				}
			}
		}
		if len(slots) >= leastKnown {
			return true
		}
	}
	return false
}
