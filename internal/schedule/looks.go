package schedule

import "abut/internal/phrase"

// looks parts the cell of a row's inspections, of which each gives its day; nil where
// it tells of more than that.
func (r *reader) looks(text string) []string {
	var out []string
	for _, part := range r.words.splitList(text) {
		if len(r.phrase.ColumnDates(part.text, phrase.MonthFirst, anyYear)) == 0 {
			return nil
		}
		out = append(out, part.text)
	}
	return out
}

// onlyAhead holds for a cell of looks that all come before the work: "substrate
// accepted 4 May".
func (r *reader) onlyAhead(text string) bool {
	list := r.looks(text)
	for _, look := range list {
		if !r.words.lookedAhead.MatchString(look) {
			return false
		}
	}
	return len(list) > 0
}

// lastLook is the last of the looks at the work, which the cover waits for: "bed
// accepted 4 May; sheet 6 May".
func (r *reader) lastLook(c source) string {
	if list := r.looks(c.text); c.slot == "inspected" && len(list) > 1 {
		for i := len(list) - 1; i >= 0; i-- {
			if !r.words.lookedAhead.MatchString(list[i]) {
				return list[i]
			}
		}
	}
	return c.text
}
