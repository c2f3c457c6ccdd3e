package schedule

import "strings"

// unfold sets the lines of cells that hold several labels with their values under one
// another, as in other cards, and those of rows with several such cells.
func (r *reader) unfold(rows []cardRow, names *wordIndex) []cardRow {
	var out []cardRow
	for _, row := range rows {
		var head []cardCell
		var rest []cardCell
		labels := 0
		for _, c := range row.cells {
			for i, line := range strings.Split(c.Value, "\n") {
				cell := c
				cell.Value = strings.TrimSpace(line)
				label, _, ok := pairAt([]cardCell{cell}, 0)
				switch {
				case cell.Value == "":
				case ok && r.isLabel(label.Value):
					labels++
					rest = append(rest, cell)
				case i == 0 && len(rest) == 0:
					head = append(head, cell)
				default:
					rest = append(rest, cell)
				}
			}
		}
		named := false
		if len(head) > 0 {
			_, _, named = nameIn(head[0].Value, names)
		}
		if labels < leastKnown && !(named && labels > 0) {
			out = append(out, row)
			continue
		}
		out = append(out, unfolded(row.number, head, rest)...)
	}
	return out
}

// unfolded are the rows of one card that stood in one row; what follows its head is set
// in one column.
func unfolded(number int, head []cardCell, rest []cardCell) []cardRow {
	var out []cardRow
	if len(head) > 0 {
		out = append(out, cardRow{number: number, starts: true, cells: head})
	}
	for i, c := range rest {
		c.at = rest[0].at
		out = append(out, cardRow{number: number, starts: len(head) == 0 && i == 0, cells: []cardCell{c}})
	}
	return out
}
