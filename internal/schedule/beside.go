package schedule

import (
	"slices"
	"strings"

	"abut/internal/workbook"
)

// partSheets gives the book with each sheet as two on which a list of products stands
// beside the schedule: the two share rows and have nothing to do with one another there.
// Every cell keeps its address.
func (r *reader) partSheets(b *workbook.Book) *workbook.Book {
	out := *b
	out.Sheets = make([]workbook.Sheet, 0, len(b.Sheets))
	for i := range b.Sheets {
		parts := r.parts(&b.Sheets[i])
		if len(parts) > 1 {
			r.whole[b.Sheets[i].Name] = &b.Sheets[i]
		}
		out.Sheets = append(out.Sheets, parts...)
	}
	return &out
}

// oneRowEach takes the lists of walls, and lays out the sheets whose items have several lines
// with one row an item.
func (r *reader) oneRowEach(b *workbook.Book) {
	for i := range b.Sheets {
		s := joinBlockHeads(r.joinWallRows(r.takeWalls(b.Sheets[i])))
		b.Sheets[i] = joinSecondLines(r.layOut(s))
	}
}

// parts are a sheet, or what stands beside one another on it: the schedule first.
func (r *reader) parts(s *workbook.Sheet) []workbook.Sheet {
	if s.Kind != workbook.Worksheet || s.FeedsDropDowns() {
		return []workbook.Sheet{*s}
	}
	for _, cut := range gaps(s) {
		left, right := columnsOf(s, 1, cut-1), columnsOf(s, cut, s.MaxCol)
		switch {
		case r.keepLegend(&right) && len(left.Rows) > 0:
			return r.parts(&left)
		case r.listsFor(&right, &left):
			return append(r.parts(&left), right)
		case r.listsFor(&left, &right):
			right.Asides = s.Asides
			left.Asides = nil
			return append(r.parts(&right), left)
		}
	}
	return []workbook.Sheet{*s}
}

// leastLegend is how many entries a legend beside a schedule has at least.
const leastLegend = 3

// keepLegend keeps what stands right of a schedule where that is a legend: a title that
// says so, and below it nothing but short words with what each stands for. None of it
// tells of the rows of the schedule that it shares.
func (r *reader) keepLegend(s *workbook.Sheet) bool {
	var entries [][2]string
	for i, row := range s.Rows {
		own := textsOf(row.Cells)
		switch {
		case i == 0 && (len(own) == 0 || len(own) > 2 || !legendTitle.MatchString(own[0]) || len(headingWords(own[0])) > longHeading):
			return false
		case i == 0 || len(own) == 0:
		case len(own) != 2 || !shortShaped.MatchString(own[0]) || !meaningShaped.MatchString(own[1]):
			return false
		default:
			entries = append(entries, [2]string{own[0], own[1]})
		}
	}
	if len(entries) < leastLegend {
		return false
	}
	r.legendBeside = append(r.legendBeside, entries...)
	return true
}

// gaps lists the columns right of one in which nothing stands, and those over which the
// title of a legend begins.
func gaps(s *workbook.Sheet) []int {
	used, titled := make([]bool, s.MaxCol+1), make([]bool, s.MaxCol+1)
	for _, row := range s.Rows {
		for c := range filled(row.Cells) {
			used[c.Col] = true
			titled[c.Col] = titled[c.Col] || len(headingWords(c.Value)) <= longHeading && legendTitle.MatchString(c.Value)
		}
	}
	var out []int
	for col := 3; col <= s.MaxCol; col++ {
		if used[col] && (!used[col-1] || titled[col]) {
			out = append(out, col)
		}
	}
	return out
}

// columnsOf is what stands in some columns of a sheet. What a merged cell of others
// lays over them is left out.
func columnsOf(s *workbook.Sheet, from, to int) workbook.Sheet {
	out := *s
	out.Rows, out.MaxRow, out.MaxCol, out.Merges = nil, 0, 0, nil
	for _, m := range s.Merges {
		if from <= m.Left && m.Left <= to {
			m.Right = min(m.Right, to)
			out.Merges = append(out.Merges, m)
		}
	}
	for _, row := range s.Rows {
		row.Cells = slices.DeleteFunc(slices.Clone(row.Cells), func(c workbook.Cell) bool {
			return c.Col < from || c.Col > to || c.Merged && !covered(out.Merges, c)
		})
		if len(row.Cells) > 0 {
			out.Rows = append(out.Rows, row)
			out.MaxRow, out.MaxCol = row.Number, max(out.MaxCol, row.Cells[len(row.Cells)-1].Col)
		}
	}
	if from > 1 {
		out.Asides = nil
	}
	return out
}

func covered(merges []workbook.Range, c workbook.Cell) bool {
	return slices.ContainsFunc(merges, func(m workbook.Range) bool {
		return m.Top <= c.Row && c.Row <= m.Bottom && m.Left <= c.Col && c.Col <= m.Right
	})
}

// How many codes a list beside a schedule has at least, and how many of its rows and of
// the schedule's stand alone.
const (
	leastBeside = 3
	aloneOf     = 5
)

// listsFor holds for a list of codes and what they stand for, most of which the rest of
// the sheet uses in rows of its own, again and again. A row of it is no part of the row of
// the schedule that it shares: many of either stand without one.
func (r *reader) listsFor(list, rest *workbook.Sheet) bool {
	codes := r.codesOf(list)
	if len(codes) < leastBeside {
		return false
	}
	used, again := usesOf(rest, codes, headsLegend(list))
	return used*2 >= len(codes) && again && standApart(list, rest) && r.listsMaterials(list, codes) && r.isScheduleAlone(rest)
}

// codesOf are the rows of a list by the codes in its first column, nil where one
// stands there twice.
func (r *reader) codesOf(list *workbook.Sheet) map[string]int {
	first := list.MaxCol
	for _, row := range list.Rows {
		first = min(first, row.Cells[0].Col)
	}
	codes := map[string]int{}
	for _, row := range list.Rows {
		code := strings.TrimSpace(row.Cells[0].Value)
		if row.Cells[0].Col != first || row.Cells[0].Merged || ownCellsOf(list, row.Number) < 2 || !r.isCode(code) {
			continue
		}
		if _, twice := codes[fold(code)]; twice {
			return nil
		}
		codes[fold(code)] = row.Number
	}
	return codes
}

// headsLegend holds for a list over which the title of a legend stands.
func headsLegend(list *workbook.Sheet) bool {
	if len(list.Rows) == 0 {
		return false
	}
	top := list.Rows[0]
	return ownCellsOf(list, top.Number) == 1 && slices.ContainsFunc(top.Cells, func(c workbook.Cell) bool { return legendTitle.MatchString(c.Value) })
}

// usesOf counts the codes that stand alone in a cell of a row that is not their own,
// and tells whether one stands in several. What a legend has is a short form, which may
// stand among other words of a cell: "MW insul.".
func usesOf(rest *workbook.Sheet, codes map[string]int, legend bool) (used int, again bool) {
	in := map[string]int{}
	for _, row := range rest.Rows {
		for c := range filled(row.Cells) {
			words := []string{fold(c.Value)}
			if legend && len(headingWords(c.Value)) <= longHeading {
				words = append(words, strings.Fields(words[0])...)
			}
			slices.Sort(words)
			for _, word := range slices.Compact(words) {
				if at, ok := codes[word]; ok && at != row.Number {
					in[word]++
				}
			}
		}
	}
	for _, n := range in {
		again = again || n > 1
	}
	return len(in), again
}

// standApart holds where many rows of either part have nothing beside them.
func standApart(list, rest *workbook.Sheet) bool {
	all, alone := 0, 0
	for row := 1; row <= max(list.MaxRow, rest.MaxRow); row++ {
		one, other := ownCellsOf(list, row) > 1, ownCellsOf(rest, row) > 1
		if one || other {
			all++
		}
		if one != other {
			alone++
		}
	}
	return alone*aloneOf >= all
}

func ownCellsOf(s *workbook.Sheet, row int) int {
	n := 0
	for range filled(s.Row(row)) {
		n++
	}
	return n
}

// listsMaterials holds for a list that names a material for most of its codes.
func (r *reader) listsMaterials(list *workbook.Sheet, codes map[string]int) bool {
	named := 0
	for _, row := range codes {
		if slices.ContainsFunc(list.Row(row), func(c workbook.Cell) bool { return len(r.lex.named(c.Value)) > 0 }) {
			named++
		}
	}
	return named*2 >= len(codes)
}

// isScheduleAlone holds for a part of a sheet on which a schedule is found without the
// rest of it.
func (r *reader) isScheduleAlone(s *workbook.Sheet) bool {
	tables, err := r.findTables(s)
	if err != nil {
		return false
	}
	return slices.ContainsFunc(tables, func(t *table) bool {
		r.classify(t)
		return t.kind == kindSchedule
	})
}
