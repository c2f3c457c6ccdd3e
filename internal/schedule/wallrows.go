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

// wallBlock is a wall that a sheet tells in cells of its own: its code, and its layers as rows
// of that and one layer.
type wallBlock struct {
	code   string
	layers []workbook.Row
}

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

// numberedRow parts a row into its first cell and the words of the others.
func numberedRow(row workbook.Row) (first, rest string) {
	words := textsOf(row.Cells)
	if len(words) == 0 {
		return "", ""
	}
	return words[0], strings.Join(words[1:], " ")
}

// areLayers holds for rows of which at least half name a material.
func (r *reader) areLayers(rows []workbook.Row) bool {
	named := 0
	for _, row := range rows {
		if _, words := numberedRow(row); len(r.lex.named(words)) > 0 {
			named++
		}
	}
	return len(rows) > 1 && named*2 >= len(rows)
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
func inMillimeters(blocks []wallBlock) bool {
	all, bare := 0, 0
	for _, b := range blocks {
		for _, row := range b.layers {
			_, layer := numberedRow(row)
			if inches.MatchString(layer) {
				return false
			}
			if all++; bareThick.MatchString(layer) {
				bare++
			}
		}
	}
	return bare*3 >= all
}
