package schedule

import (
	"strings"

	"abut/internal/workbook"
)

// sureHeading is the confidence from which a heading surely means its slot, and
// nearlySure that from which one does that also stands as a heading.
const (
	sureHeading = 0.9
	nearlySure  = 0.8
)

// isHeading holds for a block that names enough columns, two of them surely, or
// fewer where it also stands as a heading does; and has no dates in it.
func (r *reader) isHeading(s *workbook.Sheet, row int, b headingBlock) bool {
	filled, sure, nearly, known := 0, 0, 0, 0
	for i, c := range b.cols {
		if c.Heading == "" || i > 0 && c.Heading == b.cols[i-1].Heading { // one merged cell names one thing
			continue
		}
		filled++
		if c.Slot != "" && c.Confidence >= 0.5 {
			known++
		}
		if c.Slot != "" && c.Confidence >= sureHeading {
			sure++
		}
		if c.Slot != "" && c.Confidence >= nearlySure {
			nearly++
		}
		if strings.ContainsAny(c.Heading, "0123456789") && r.isDate(c.Heading) {
			return false
		}
	}
	enough := known >= 3 || known == 2 && filled <= smallTable
	if enough && sure >= 2 && known*5 >= filled*2 {
		return true
	}
	return known >= 2 && nearly >= 1 && known*5 >= filled && filled >= leastWide && r.standsAsHeading(s, row, b, filled)
}

// leastWide is how many columns a heading must name that is known more by where it
// stands than by its words.
const leastWide = 4

// rowsBelow is how many rows must stand under such a heading.
const rowsBelow = 2

// standsAsHeading holds for a block of different words with less than half of them
// above it, as titles are, and rows under it that hold more figures and materials.
func (r *reader) standsAsHeading(s *workbook.Sheet, row int, b headingBlock, filled int) bool {
	if above, _ := r.ownTexts(s, row-1); above*2 >= filled || r.isData(s, row+b.rows-1) {
		return false
	}
	seen := map[string]bool{}
	for i, c := range b.cols {
		if seen[c.Heading] || i == 0 && (codeShape.MatchString(c.Heading) || tagShape.MatchString(c.Heading)) {
			return false
		}
		if c.Heading != "" {
			if seen[c.Heading] = true; r.words.isBlank(c.Heading) || r.words.isNone(c.Heading) {
				return false
			}
		}
	}
	_, own := r.dataCells(s, row+b.rows-1)
	data := 0
	for i := range rowsBelow {
		below := row + b.rows + i
		if texts, _ := r.ownTexts(s, below); texts*2 < filled {
			return false
		}
		if _, n := r.dataCells(s, below); n > own {
			data++
		}
	}
	return data == rowsBelow
}
