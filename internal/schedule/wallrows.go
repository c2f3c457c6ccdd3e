package schedule

import (
	"slices"
	"strings"

	"abut/internal/workbook"
)

// How many cells a row of a wall fills at least, its code among them, and how many such
// rows stand below one another.
const (
	fewestInWall = 4
	fewestWalls  = 2
)

// joinWallRows gives a sheet on which the layers of a wall stand in one cell where each
// had a cell of its own, beside the code of the wall and below a title for such a list, with
// nothing that heads the columns.
func (r *reader) joinWallRows(s workbook.Sheet) workbook.Sheet {
	joined := map[int]workbook.Row{}
	for i, row := range s.Rows {
		title, alone := loneCell(row.Cells)
		if !alone || !r.words.wallHeading.MatchString(title.Value) {
			continue
		}
		blocks := r.wallRows(s.Rows[i+1:], row.Number)
		metric := inMillimeters(blocks)
		for k, b := range blocks {
			joined[i+1+k] = r.joinedWall(b, metric)
		}
	}
	if len(joined) == 0 {
		return s
	}
	s.Rows = slices.Clone(s.Rows)
	for i, row := range joined {
		s.Rows[i] = row
	}
	return s
}

// wallRows are the walls in the rows right below a title, each as a block of layers.
func (r *reader) wallRows(rows []workbook.Row, title int) []wallBlock {
	var out []wallBlock
	for i, row := range rows {
		own := slices.Collect(filled(row.Cells))
		if row.Number != title+1+i || len(own) < fewestInWall || !wallMark.MatchString(strings.TrimSpace(own[0].Value)) {
			break
		}
		b := wallBlock{code: strings.TrimSpace(own[0].Value)}
		for _, c := range own[1:] {
			b.layers = append(b.layers, workbook.Row{Number: row.Number, Cells: []workbook.Cell{own[0], c}})
		}
		if !r.areLayers(b.layers) {
			break
		}
		out = append(out, b)
	}
	if len(out) < fewestWalls {
		return nil
	}
	return out
}

// joinedWall is the row of a wall with its layers in one cell.
func (r *reader) joinedWall(b wallBlock, metric bool) workbook.Row {
	row := b.layers[0]
	var words []string
	for _, layer := range b.layers {
		words = append(words, r.oneLayer(strings.TrimSpace(layer.Cells[1].Value), metric))
	}
	row.Cells = slices.Clone(row.Cells)
	row.Cells[1].Value, row.Cells[1].Kind = strings.Join(words, " / "), workbook.Text
	return row
}
