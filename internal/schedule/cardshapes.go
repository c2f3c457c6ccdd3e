package schedule

import (
	"maps"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// matrix finds a sheet with the products across and their properties down.
func (r *reader) matrix(s *workbook.Sheet, rows []workbook.Row, names string) []card {
	for i, row := range rows {
		cells := filled(row)
		if len(cells) < minMatrix || cells[0].Col > 3 {
			continue
		}
		used := 0
		for _, c := range cells[1:] {
			if isNamed(c.Value, names) {
				used++
			}
		}
		if used*2 <= len(cells[1:]) {
			continue
		}
		if found := r.across(s, rows[i:], cells); found != nil {
			return found
		}
	}
	return nil
}

// minMatrix is how many cells the row of codes of a matrix has at least.
const minMatrix = 4

// across reads a matrix under its row of codes; nil where too few of the labels
// at its side are known.
func (r *reader) across(s *workbook.Sheet, rows []workbook.Row, codes []workbook.Cell) []card {
	side := codes[0].Col
	out := make([]card, len(codes)-1)
	at := map[int]*card{}
	for i, c := range codes[1:] {
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
func (r *reader) propertyList(s *workbook.Sheet, rows []workbook.Row, names string) []card {
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
