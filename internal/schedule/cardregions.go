package schedule

import (
	"maps"
	"slices"
	"strings"
)

// region is a stretch of columns with labels in one of them: right of these stand the
// values, and left of them what the cards are called, where that is not over them.
type region struct {
	label, from, to int
	rows            []cardRow
	often           map[string]int // how often a text stands in the column of labels, folded
	tagged          bool           // names of the schedule stand left of the labels
	opener          string         // the label that opens each card with its name, folded; "" where none does
}

// regions finds the columns in which labels of product data stand again and again, and
// parts the sheet between them.
func (r *reader) regions(rows []cardRow, names *wordIndex) []region {
	cols := r.labelColumns(rows)
	out := make([]region, 0, len(cols))
	from := 1
	for i, col := range cols {
		to := lastColumn(rows)
		if i+1 < len(cols) {
			to = partAt(rows, col, cols[i+1], names) - 1
		}
		out = append(out, r.region(rows, col, from, to, names))
		from = to + 1
	}
	return out
}

// labelColumns lists the columns in which a good part of what has something beside it
// is a label of product data.
func (r *reader) labelColumns(rows []cardRow) []int {
	known, all, slots := map[int]int{}, map[int]int{}, map[int]map[string]bool{}
	for _, row := range rows {
		for i, c := range row.cells {
			label, value, ok := pairAt(row.cells, i)
			if !ok || r.wholeLabel(value.Value) { // a heading with another beside it
				continue
			}
			if all[c.at]++; !r.isLabel(label.Value) {
				continue
			}
			if known[c.at]++; slots[c.at] == nil {
				slots[c.at] = map[string]bool{}
			}
			slots[c.at][r.labelOf(label.Value)] = true
		}
	}
	var out []int
	for _, col := range slices.Sorted(maps.Keys(known)) {
		if len(slots[col]) < leastKnown || known[col]*3 < all[col] {
			continue
		}
		if n := len(out); n > 0 && out[n-1] == col-1 { // one of the two holds values
			if known[col] > known[col-1] {
				out[n-1] = col
			}
			continue
		}
		out = append(out, col)
	}
	return out
}

// leastKnown is how many different labels a column of labels has at least that are
// known: a column of materials says "primer" again and again.
const leastKnown = 2

// isLabel holds for the name of a property of products, which "solvent primer" is not,
// or of what calls them.
func (r *reader) isLabel(label string) bool {
	return r.labelOf(label) != "" && (r.wholeLabel(label) || !r.namesProduct(label)) || r.callsProduct(label)
}

func lastColumn(rows []cardRow) int {
	last := 0
	for _, row := range rows {
		last = max(last, row.cells[len(row.cells)-1].at)
	}
	return last
}

// partAt is the column in which the cards of the second of two columns of labels
// begin: after a gap, or with the names of products, or with its labels.
func partAt(rows []cardRow, first, second int, names *wordIndex) int {
	used, named := map[int]bool{}, map[int]bool{}
	for _, row := range rows {
		for _, c := range row.cells {
			used[c.at] = true
			named[c.at] = named[c.at] || isNamed(c.Value, names)
		}
	}
	for col := first + 2; col < second; col++ {
		if !used[col] || named[col] {
			return col
		}
	}
	return second
}

func (r *reader) region(rows []cardRow, label, from, to int, names *wordIndex) region {
	reg := region{label: label, from: from, to: to, often: map[string]int{}}
	for _, row := range rows {
		row.cells = slices.DeleteFunc(slices.Clone(row.cells), func(c cardCell) bool { return c.at < from || c.at > to })
		if len(row.cells) == 0 {
			continue
		}
		reg.rows = append(reg.rows, row)
		for i, c := range row.cells {
			if c.at == label {
				l, _, ok := pairAt(row.cells, i)
				if reg.often[fold(l.Value)]++; ok && i > 0 && isNamed(row.cells[0].Value, names) {
					reg.tagged = true
				}
			}
		}
	}
	reg.opener = r.openerOf(reg, names)
	return reg
}

// openerOf is the label by which each card of a region begins: the first one that calls
// a product ("Product", "Tag"), where it stands again and again and the schedule uses
// what stands beside it.
func (r *reader) openerOf(reg region, names *wordIndex) string {
	opener, all, used := "", 0, 0
	for _, row := range reg.rows {
		label, value, ok := reg.pair(row)
		if !ok || opener != "" && fold(label.Value) != opener || !r.callsProduct(label.Value) && !r.callsMaterial(label.Value) {
			continue
		}
		opener = fold(label.Value)
		if all++; namedOrNames(value.Value, names) {
			used++
		}
	}
	if all < 2 || used*3 < all {
		return ""
	}
	return opener
}

// namedOrNames holds for a text that begins with a name of the schedule.
func namedOrNames(text string, names *wordIndex) bool {
	_, _, ok := nameIn(text, names)
	return ok
}

// pair gives the label of a row with its value; not ok where the column of labels is empty.
func (reg region) pair(row cardRow) (label, value cardCell, ok bool) {
	i := slices.IndexFunc(row.cells, func(cell cardCell) bool { return cell.at == reg.label })
	if i < 0 {
		return cardCell{}, cardCell{}, false
	}
	return pairAt(row.cells, i)
}

// pairAt gives the label and the value that a cell begins: with the cell right of it,
// or in itself with a colon between.
func pairAt(cells []cardCell, i int) (label, value cardCell, ok bool) {
	label = cells[i]
	if i+1 < len(cells) {
		label.Value = strings.TrimRight(strings.TrimSpace(label.Value), ":")
		return label, cells[i+1], true
	}
	before, after, found := strings.Cut(label.Value, ":")
	value = label
	label.Value, value.Value = strings.TrimSpace(before), strings.TrimSpace(after)
	return label, value, found && value.Value != ""
}
