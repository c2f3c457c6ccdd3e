package schedule

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"abut/internal/workbook"
)

// How many cells a row of a schedule that goes on below has at least, how many the row
// has at most in which it goes on, and how many such rows a sheet has at least.
const (
	fewestItem   = 4
	mostSecond   = 2
	fewestSecond = 2
)

// joinSecondLines gives a sheet on which the items of a schedule that go on in a second
// line stand in one: below a full row that its first cell numbers, a row of a cell or two
// and nothing in its first. A row of that sort right below a heading shows that they head
// what follows, and so do words that begin as titles do.
func joinSecondLines(s workbook.Sheet) workbook.Sheet {
	seconds := secondLines(&s)
	if len(seconds) < fewestSecond {
		return s
	}
	s.Rows = slices.Clone(s.Rows)
	for i := range s.Rows {
		if into, ok := seconds[i]; ok {
			s.Rows[into].Cells = joinedCells(s.Rows[into].Cells, s.Rows[i].Cells)
			s.Rows[i].Cells = nil
		}
	}
	s.Rows = slices.DeleteFunc(s.Rows, func(row workbook.Row) bool { return len(row.Cells) == 0 })
	return s
}

// secondLines are the places of second lines among the rows of a sheet, with those of the
// rows that they belong to; nil where some are titles.
func secondLines(s *workbook.Sheet) map[int]int {
	out := map[int]int{}
	item, first, last, small := -1, 0, 0, 0
	for i, row := range s.Rows {
		own, lead := 0, workbook.Cell{}
		for c := range filled(row.Cells) {
			if own++; own == 1 {
				lead = c
			}
		}
		next := row.Number == last+1
		last = row.Number
		switch {
		case own >= fewestItem && itemNumber(lead.Value):
			item, first = i, lead.Col
		case own >= fewestItem:
			item, first = -2, lead.Col // a heading, or a row without a number
		case own == 0 || own > mostSecond || !next || lead.Col <= first:
			item = -1
		case item == -2:
			return nil
		case item >= 0:
			out[i] = item
			if goesOnBelow(lead.Value) {
				small++
			}
		}
	}
	if small*2 <= len(out) {
		return nil
	}
	return out
}

// itemNumber holds for the number or the code of a row.
func itemNumber(text string) bool {
	text = strings.TrimSpace(text)
	return layerNumber(text) > 0 || codeShape.MatchString(text) && strings.ContainsFunc(text, unicode.IsDigit)
}

// goesOnBelow holds for words that begin as the rest of what was said, and no title.
func goesOnBelow(text string) bool {
	c, _ := utf8.DecodeRuneInString(strings.TrimSpace(text))
	return !unicode.IsUpper(c)
}

// joinedCells puts the words of a second line below those of the first in each column.
func joinedCells(first, second []workbook.Cell) []workbook.Cell {
	out := slices.Clone(first)
	for c := range filled(second) {
		at := slices.IndexFunc(out, func(o workbook.Cell) bool { return o.Col >= c.Col })
		switch {
		case at < 0:
			c.Row = first[0].Row
			out = append(out, c)
		case out[at].Col > c.Col:
			c.Row = first[0].Row
			out = slices.Insert(out, at, c)
		default:
			out[at].Value, out[at].Kind = strings.TrimSpace(out[at].Value+"\n"+c.Value), workbook.Text
		}
	}
	return out
}
