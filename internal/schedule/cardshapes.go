package schedule

import (
	"maps"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// matrix finds a sheet with the products across and their properties down.
func (r *reader) matrix(s *workbook.Sheet, rows []workbook.Row, names *wordIndex) []card {
	for i, row := range rows {
		codes := filled(row)
		if len(codes) == 0 || codes[0].Col > maxSide {
			continue
		}
		side := codes[0].Col - 1
		if side == 0 || !isNamed(codes[0].Value, names) { // the corner holds a label
			side, codes = codes[0].Col, codes[1:]
		}
		used := 0
		for _, c := range codes {
			if isNamed(c.Value, names) {
				used++
			}
		}
		if len(codes) < minMatrix || used*2 <= len(codes) {
			continue
		}
		if found := r.across(s, rows[i:], side, codes); found != nil {
			return found
		}
	}
	return nil
}

// minMatrix is how many codes a matrix has at least, and maxSide the last column
// in which its labels or first code may stand.
const (
	minMatrix = 2
	maxSide   = 3
)

// across reads a matrix under its row of codes; nil where too few of the labels
// at its side are known.
func (r *reader) across(s *workbook.Sheet, rows []workbook.Row, side int, codes []workbook.Cell) []card {
	out := make([]card, len(codes))
	at := map[int]*card{}
	for i, c := range codes {
		out[i] = card{name: strings.TrimSpace(c.Value), sheet: s.Name, row: rows[0].Number, rows: []int{rows[0].Number}}
		at[c.Col] = &out[i]
	}
	known, labels := 0, 0
	for _, row := range rows[1:] {
		cells := filled(row)
		if len(cells) == 0 || cells[0].Col != side {
			break
		}
		labels++
		if r.labelOf(cells[0].Value) != "" {
			known++
		}
		for _, c := range cells[1:] {
			if p := at[c.Col]; p != nil {
				p.fields = append(p.fields, field{cells[0].Value, c})
				p.rows = append(p.rows, row.Number)
			}
		}
	}
	if known < 3 || known*2 < labels {
		return nil
	}
	return out
}

// propertyList finds a list of one property to a line, the product's code on the
// first of its lines or on each.
func (r *reader) propertyList(s *workbook.Sheet, rows []workbook.Row, names *wordIndex) []card {
	label := r.labelColumn(rows)
	if label == 0 {
		return nil
	}
	var out []card
	used := 0
	for _, row := range rows {
		cells := filled(row)
		i := slices.IndexFunc(cells, func(c workbook.Cell) bool { return c.Col == label })
		if i < 0 || i+1 >= len(cells) || r.labelOf(cells[i].Value) == "" && len(out) == 0 {
			continue
		}
		if name := strings.TrimSpace(cells[0].Value); i > 0 && (len(out) == 0 || out[len(out)-1].name != name) {
			c := card{name: name, sheet: s.Name, row: row.Number}
			for _, cell := range cells[1:i] {
				c.kind = append([]source{r.cardSource(s, toldSubject, cell)}, c.kind...)
			}
			if isNamed(name, names) {
				used++
			}
			out = append(out, c)
		}
		if n := len(out); n > 0 {
			out[n-1].fields = append(out[n-1].fields, field{cells[i].Value, cells[i+1]})
			out[n-1].rows = append(out[n-1].rows, row.Number)
		}
	}
	if used == 0 || used*3 < len(out) {
		return nil
	}
	return out
}

// labelColumn finds the column of a sheet in which labels of product data stand
// again and again, 0 if none.
func (r *reader) labelColumn(rows []workbook.Row) int {
	known, all := map[int]int{}, map[int]int{}
	seen := map[int]map[string]bool{}
	for _, row := range rows {
		for _, c := range filled(row) {
			if all[c.Col]++; r.labelOf(c.Value) == "" {
				continue
			}
			if known[c.Col]++; seen[c.Col] == nil {
				seen[c.Col] = map[string]bool{}
			}
			seen[c.Col][fold(c.Value)] = true
		}
	}
	best := 0
	for _, col := range slices.Sorted(maps.Keys(known)) {
		n := known[col]
		if col > 1 && n >= 6 && n*10 >= all[col]*6 && len(seen[col])*2 <= n && n > known[best] {
			best = col
		}
	}
	return best
}

// strips parts rows where a column is empty in all of them: cards may stand side
// by side.
func strips(rows []workbook.Row) [][]workbook.Row {
	used := map[int]bool{}
	last := 0
	for _, row := range rows {
		for _, c := range filled(row) {
			used[c.Col] = true
			last = max(last, c.Col)
		}
	}
	var out [][]workbook.Row
	for from := 1; from <= last; from++ {
		to := from
		for used[to] {
			to++
		}
		if to == from {
			continue
		}
		strip := make([]workbook.Row, 0, len(rows))
		for _, row := range rows {
			own := slices.DeleteFunc(filled(row), func(c workbook.Cell) bool { return c.Col < from || c.Col >= to })
			if len(own) > 0 {
				strip = append(strip, workbook.Row{Number: row.Number, Cells: own})
			}
		}
		out = append(out, strip)
		from = to
	}
	return out
}
