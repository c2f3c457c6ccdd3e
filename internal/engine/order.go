package engine

import (
	"cmp"
	"slices"
	"strings"
)

// findings merges what one rule says twice of a row in the same words, and
// sorts: sheet in the order of the workbook, row, severity, rule.
func (c *collector) findings() []Finding {
	slices.SortStableFunc(c.made, c.compare)
	merged := make([]Finding, 0, len(c.made))
	for _, f := range c.made {
		if last := len(merged) - 1; last >= 0 && sameMistake(merged[last], f) {
			merged[last].Cells = sortCells(append(merged[last].Cells, f.Cells...))
			merged[last].Related = append(merged[last].Related, f.Related...)
			merged[last].Facts = append(merged[last].Facts, f.Facts...)
			continue
		}
		merged = append(merged, f)
	}
	for i := range merged {
		merged[i].Related = c.sortRelated(merged[i].Related)
	}
	return merged
}

func sameMistake(a, b Finding) bool {
	return a.Rule == b.Rule && a.Severity == b.Severity && a.Sheet == b.Sheet && a.Row == b.Row &&
		a.Mark == b.Mark && a.Message == b.Message
}

func (c *collector) compare(a, b Finding) int {
	return cmp.Or(
		c.compareSheets(a.Sheet, b.Sheet),
		cmp.Compare(a.Row, b.Row),
		cmp.Compare(weight(b.Severity), weight(a.Severity)),
		cmp.Compare(a.Rule, b.Rule),
		cmp.Compare(a.Message, b.Message),
		cmp.Compare(a.Mark, b.Mark),
		compareCells(a.Cells, b.Cells),
	)
}

// compareSheets puts sheets that the reading does not list last, by name.
func (c *collector) compareSheets(a, b string) int {
	i, knownA := c.sheets[a]
	j, knownB := c.sheets[b]
	switch {
	case knownA && knownB:
		return cmp.Compare(i, j)
	case knownA != knownB:
		return map[bool]int{true: -1, false: 1}[knownA]
	}
	return strings.Compare(a, b)
}

func (c *collector) sortRelated(related []Related) []Related {
	slices.SortFunc(related, func(a, b Related) int {
		return cmp.Or(c.compareSheets(a.Sheet, b.Sheet), cmp.Compare(a.Row, b.Row),
			strings.Compare(a.What, b.What), compareCells(a.Cells, b.Cells))
	})
	return slices.CompactFunc(related, func(a, b Related) bool {
		return a.Sheet == b.Sheet && a.Row == b.Row && a.What == b.What && slices.Equal(a.Cells, b.Cells)
	})
}

// sortCells puts each address once, by row and then column: B2, AA2, A10.
func sortCells(cells []string) []string {
	sorted := slices.Clone(cells)
	if sorted == nil {
		sorted = []string{}
	}
	slices.SortFunc(sorted, compareCell)
	return slices.Compact(sorted)
}

func compareCells(a, b []string) int {
	return slices.CompareFunc(a, b, compareCell)
}

func compareCell(a, b string) int {
	columnA, rowA := splitCell(a)
	columnB, rowB := splitCell(b)
	return cmp.Or(cmp.Compare(len(rowA), len(rowB)), strings.Compare(rowA, rowB),
		cmp.Compare(len(columnA), len(columnB)), strings.Compare(columnA, columnB))
}

func splitCell(cell string) (column, row string) {
	i := strings.IndexAny(cell, "0123456789")
	if i < 0 {
		return cell, ""
	}
	return cell[:i], cell[i:]
}
