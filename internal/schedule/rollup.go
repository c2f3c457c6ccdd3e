package schedule

// rollsUp holds for a row that heads the rows below it and gives the first and last day
// of all of them, as programs of work do: it names no material, and its day stands
// again in a row below.
func (r *reader) rollsUp(t *table, row int) bool {
	place, on := t.column("place"), t.column("install")
	if place == 0 || on == 0 || t.has("material", "tag") == 0 || !r.namesOnlyWork(t, row) {
		return false
	}
	first := text(t.sheet, row, on)
	for below := row + 1; below <= t.last && !r.namesOnlyWork(t, below); below++ {
		if text(t.sheet, below, on) == first {
			return true
		}
	}
	return false
}

// namesOnlyWork holds for a row with a place and a day, and nothing in the columns of
// materials, remarks and readings.
func (r *reader) namesOnlyWork(t *table, row int) bool {
	if text(t.sheet, row, t.column("place")) == "" || text(t.sheet, row, t.column("install")) == "" {
		return false
	}
	for i, col := range t.nums {
		_, figure := figureOf[t.cols[i].Slot]
		if (itemSlots[t.cols[i].Slot] || figure) && text(t.sheet, row, col) != "" {
			return false
		}
	}
	return true
}
