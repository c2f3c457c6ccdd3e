package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// matrices finds the blocks of a sheet with the products across and their
// properties down.
func (r *reader) matrices(s *workbook.Sheet, rows []cardRow, names *wordIndex) []card {
	var out []card
	for i := 0; i < len(rows); i++ {
		side, codes := r.codesAcross(rows[i:], names)
		if codes == nil {
			continue
		}
		found, n := r.across(s, rows[i:], side, codes, names)
		out = append(out, found...)
		i += max(n-1, 0)
	}
	return out
}

// minMatrix is how many codes a matrix has at least, and maxSide the last column
// in which its labels may stand.
const (
	minMatrix = 2
	maxSide   = 3
)

// codesAcross are the cells of the first of the rows where most of them name products
// of the schedule, right of a column of labels in the rows below.
func (r *reader) codesAcross(rows []cardRow, names *wordIndex) (side int, codes []cardCell) {
	first := slices.IndexFunc(rows[0].cells, func(c cardCell) bool { return isNamed(c.Value, names) })
	if first < 0 || rows[0].cells[first].at == 1 {
		return 0, nil
	}
	side = r.sideColumn(rows[1:], min(rows[0].cells[first].at-1, maxSide))
	for _, c := range rows[0].cells {
		if c.at > side {
			codes = append(codes, c)
		}
	}
	used := 0
	for _, c := range codes {
		if isNamed(c.Value, names) {
			used++
		}
	}
	if side == 0 || len(codes) < minMatrix || used*2 <= len(codes) || callsAgain(rows[0].cells, side) {
		return 0, nil
	}
	return side, codes
}

// callsAgain holds where the word that calls the codes stands once more among them:
// "Tag | FM-1 | | Tag | FM-2" heads two cards side by side.
func callsAgain(cells []cardCell, side int) bool {
	i := slices.IndexFunc(cells, func(c cardCell) bool { return c.at == side })
	return i >= 0 && slices.ContainsFunc(cells[i+1:], func(c cardCell) bool { return fold(c.Value) == fold(cells[i].Value) })
}

// sideColumn is the column up to the last in which the most labels stand, 0 if none do.
func (r *reader) sideColumn(rows []cardRow, last int) int {
	known := make([]int, last+1)
	for _, row := range rows[:min(maxCard, len(rows))] {
		for _, c := range row.cells {
			if c.at <= last && r.labelOf(c.Value) != "" {
				known[c.at]++
			}
		}
	}
	best := 0
	for col := range known {
		if known[col] > known[best] {
			best = col
		}
	}
	return best
}

// across reads a matrix under its row of codes, and says how many rows it takes; none
// where too few of the labels at its side are known.
func (r *reader) across(s *workbook.Sheet, rows []cardRow, side int, codes []cardCell, names *wordIndex) ([]card, int) {
	out := make([]card, len(codes))
	at := map[int]*card{}
	for i, c := range codes {
		out[i] = card{name: strings.TrimSpace(c.Value), sheet: s.Name, row: rows[0].number, rows: []int{rows[0].number}}
		at[c.at] = &out[i]
	}
	known, labels, n := 0, 0, 1
	for k, row := range rows[1:] {
		i := slices.IndexFunc(row.cells, func(c cardCell) bool { return c.at == side })
		if labels > 0 && (i < 0 || r.callsProduct(row.cells[i].Value) || r.beginsMatrix(rows, k+1, side, names)) {
			break
		}
		label := ""
		if i >= 0 && len(row.cells) > i+1 {
			label = row.cells[i].Value
			if labels++; r.labelOf(label) != "" {
				known++
			}
		}
		n++
		for _, c := range row.cells {
			switch p := at[c.at]; {
			case p == nil || c.at == side:
			case i < 0: // what the product is called besides, under its code
				p.kind = append(p.kind, r.cardSource(s, r.kindOfWords(c.Value), c.Cell))
			default:
				p.fields = append(p.fields, field{label, c.Cell})
				p.rows = append(p.rows, row.number)
			}
		}
	}
	if known < leastLabels || known*2 < labels {
		return nil, 0
	}
	return out, n
}

// beginsMatrix holds for a row after a gap that names products, no two the same, over rows of
// which a label stood above already: another matrix begins with it, on the same columns.
// A property may name products too ("Primer | PR-1 | PR-2"), and no label comes again
// below it.
func (r *reader) beginsMatrix(rows []cardRow, k, side int, names *wordIndex) bool {
	if rows[k].number == rows[k-1].number+1 {
		return false
	}
	at, codes := r.codesAcross(rows[k:], names)
	seen := map[string]bool{}
	for _, c := range codes {
		if seen[fold(c.Value)] {
			return false
		}
		seen[fold(c.Value)] = true
	}
	return at == side && r.labelsAgain(rows, k, side)
}

// labelsAgain holds where a label below a row, up to the next gap, tells what one above
// it does.
func (r *reader) labelsAgain(rows []cardRow, k, side int) bool {
	above := map[string]bool{}
	for i, row := range rows {
		if i > k+1 && row.number > rows[i-1].number+1 {
			return false
		}
		at := slices.IndexFunc(row.cells, func(c cardCell) bool { return c.at == side })
		if i == 0 || i == k || at < 0 {
			continue
		}
		label := cmp.Or(r.labelOf(row.cells[at].Value), fold(row.cells[at].Value))
		if i > k && above[label] {
			return true
		}
		if i < k {
			above[label] = true
		}
	}
	return false
}

// leastLabels is how many known labels a matrix has at least.
const leastLabels = 3

// kindOfWords sorts words at the head of a card: what the product is, or how else it
// is called.
func (r *reader) kindOfWords(words string) string {
	if r.describes(words) {
		return toldSubject
	}
	return "alias"
}

// describes holds for words that name a material, its stuff at least ("uncured
// neoprene"), or point at another product.
func (r *reader) describes(words string) bool {
	return r.namesProduct(words) || len(r.vocab.Describe(words).Traits) > 0
}
