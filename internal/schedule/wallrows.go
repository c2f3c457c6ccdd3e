package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
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
		walls := r.wallRows(s.Rows[i+1:], row.Number)
		metric := inMillimeters(slices.Concat(walls...))
		for k, layers := range walls {
			joined[i+1+k] = r.joinedWall(s.Rows[i+1+k], layers, metric)
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

// wallRows are the layers of the walls in the rows right below a title, wall by wall.
func (r *reader) wallRows(rows []workbook.Row, title int) [][]string {
	var out [][]string
	for i, row := range rows {
		words := textsOf(row.Cells)
		if row.Number != title+1+i || len(words) < fewestInWall || !wallMark.MatchString(words[0]) || !r.areLayers(words[1:]) {
			break
		}
		out = append(out, words[1:])
	}
	if len(out) < fewestWalls {
		return nil
	}
	return out
}

// joinedWall is the row of a wall with its code and all layers in one cell.
func (r *reader) joinedWall(row workbook.Row, layers []string, metric bool) workbook.Row {
	var words []string
	for _, layer := range layers {
		words = append(words, r.oneLayer(layer, metric))
	}
	row.Cells = slices.Collect(filled(row.Cells))[:2]
	row.Cells[1].Value, row.Cells[1].Kind = strings.Join(words, " / "), workbook.Text
	return row
}

// areLayers holds for texts of which at least half name a material.
func (r *reader) areLayers(layers []string) bool {
	named := 0
	for _, words := range layers {
		if len(r.lex.named(words)) > 0 {
			named++
		}
	}
	return len(layers) > 1 && named*2 >= len(layers)
}

// oneLayer writes a layer as a list of them in one cell has it: the first of several
// products that may be it, and its thickness with the unit.
func (r *reader) oneLayer(layer string, metric bool) string {
	parts := severalTags.Split(layer, -1)
	if !slices.ContainsFunc(parts, func(part string) bool { return !r.isCode(part) }) {
		return parts[0]
	}
	if metric {
		layer = bareThick.ReplaceAllString(layer, "$1 mm $2")
	}
	return strings.ReplaceAll(layer, " / ", " or ")
}

// bareThick is a figure without a unit that a layer begins with, as those of drawings in
// millimeters do: "140 steel stud", and never "20 ga. stud".
var bareThick = regexp.MustCompile(`^(\d{2,3})\s+(\pL{4}|[A-Z]{3}\b|\pL[^\s.]*-\pL)`)

// inches are what drawings in inches have beside their figures.
var inches = regexp.MustCompile(`\d\s*(?:"|”|in\b|-?inch)|\d/\d|\d\s*(?:ga|o\.?c)\b`)

// inMillimeters holds for layers of which many begin with a figure of millimeters and
// none tells inches (common practice of metric drawings: lengths without a unit are mm).
func inMillimeters(layers []string) bool {
	bare := 0
	for _, layer := range layers {
		if inches.MatchString(layer) {
			return false
		}
		if bareThick.MatchString(layer) {
			bare++
		}
	}
	return bare*3 >= len(layers)
}
