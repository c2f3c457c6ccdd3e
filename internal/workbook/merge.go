package workbook

import (
	"bytes"
	"cmp"
	"fmt"
	"slices"
)

func (r *sheetReader) merges() error {
	depth := r.s.depth
	for r.s.child(depth) {
		ref := r.s.attr("ref")
		first, last, pair := bytes.Cut(ref, []byte(":"))
		if !pair {
			last = first
		}
		top, left, ok1 := ParseRef(first)
		bottom, right, ok2 := ParseRef(last)
		if !ok1 || !ok2 || bottom < top || right < left {
			return refuse(fmt.Sprintf("it merges %q, which is no range", ref), saveAgain)
		}
		if len(r.sheet.Merges) == r.lim.Merges {
			return tooMuch("merged ranges", r.lim.Merges)
		}
		r.sheet.Merges = append(r.sheet.Merges, Range{top, left, bottom, right})
	}
	if a, b, overlap := overlapping(r.sheet.Merges); overlap {
		return refuse(fmt.Sprintf("its merged ranges %s and %s overlap, so it is not sure which text their cells show", a, b), saveAgain)
	}
	return nil
}

// overlapping finds two different ranges that share a cell. A spreadsheet
// program never writes such, and each mends them in its own way: whatever
// is read of them may not be what the author sees.
func overlapping(ranges []Range) (a, b Range, overlap bool) {
	byTop := slices.SortedFunc(slices.Values(ranges), func(a, b Range) int {
		return cmp.Or(cmp.Compare(a.Top, b.Top), cmp.Compare(a.Left, b.Left), cmp.Compare(a.Bottom, b.Bottom), cmp.Compare(a.Right, b.Right))
	})
	var above []Range // the last one of each stretch of columns, from left to right
	for _, m := range slices.Compact(byTop) {
		from, _ := slices.BinarySearchFunc(above, m.Left, func(r Range, left int) int { return cmp.Compare(r.Right, left) })
		to := from
		for ; to < len(above) && above[to].Left <= m.Right; to++ {
			if above[to].Bottom >= m.Top {
				return above[to], m, true
			}
		}
		above = slices.Replace(above, from, to, m)
	}
	return a, b, false
}

// fillMerged copies what stands at the top left of each merged range to the
// cells it covers, within the rows and columns that hold something: a reader
// sees it as standing in all of them, and nothing else there.
func (r *sheetReader) fillMerged() error {
	sheet := r.sheet
	copies := map[int][]Cell{} // by row
	for _, m := range sheet.Merges {
		top, ok := sheet.At(m.Top, m.Left)
		if !ok {
			continue
		}
		top.Merged, top.Comment = true, ""
		for row := m.Top; row <= min(m.Bottom, sheet.MaxRow); row++ {
			hidden := sheet.RowHidden(row)
			for col := m.Left; col <= min(m.Right, sheet.MaxCol); col++ {
				if row == m.Top && col == m.Left {
					continue
				}
				if err := r.admit(row, col); err != nil {
					return err
				}
				top.Row, top.Col, top.Hidden = row, col, hidden || sheet.ColHidden(col)
				copies[row] = append(copies[row], top)
			}
		}
	}
	r.lay(copies)
	return nil
}

// lay puts cells, given by row, over those of the sheet.
func (r *sheetReader) lay(cells map[int][]Cell) {
	if len(cells) == 0 {
		return
	}
	sheet := r.sheet
	for i := range sheet.Rows {
		row := &sheet.Rows[i]
		if added := cells[row.Number]; added != nil {
			row.Cells = overlay(row.Cells, added)
			delete(cells, row.Number)
		}
	}
	for n, added := range cells {
		sheet.Rows = append(sheet.Rows, Row{Number: n, Hidden: sheet.RowHidden(n), Cells: overlay(nil, added)})
	}
	slices.SortFunc(sheet.Rows, func(a, b Row) int { return cmp.Compare(a.Number, b.Number) })
}

// overlay puts copies over the cells of a row; a comment stays.
func overlay(cells, added []Cell) []Cell {
	all := slices.Concat(added, cells)
	slices.SortStableFunc(all, func(a, b Cell) int { return cmp.Compare(a.Col, b.Col) })
	out := all[:0]
	for _, c := range all {
		if n := len(out); n > 0 && out[n-1].Col == c.Col {
			out[n-1].Comment = cmp.Or(out[n-1].Comment, c.Comment)
			continue
		}
		out = append(out, c)
	}
	return out
}
