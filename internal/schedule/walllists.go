package schedule

import (
	"slices"
	"strings"

	"abut/internal/workbook"
)

// A list of walls is laid out in one of many ways: in one cell a wall, one row a layer, one
// column a layer, or the walls side by side. What tells it in all of them is the same: the
// code of a wall, and with it several materials that a wall is built of. It is read before
// the tables of its sheet are, and its rows are taken from the sheet.

// listedLayer is a layer of a wall as its cell has it.
type listedLayer struct {
	text  string
	thick *float64 // mm, told in a cell of its own
	at    At
}

// How many layers a listed wall has at least, how many different materials, how many such
// walls a sheet has, and how many rows a sheet may have to be looked at.
const (
	fewestLayers = 3
	fewestMade   = 2
	fewestListed = 2
	mostListed   = 600
)

// wallSheet is a sheet on the way to the walls that it lists.
type wallSheet struct {
	*reader
	s    *workbook.Sheet
	rows [][]workbook.Cell // filled cells of each row of s.Rows
	is   map[string]bool   // texts that are of layers
}

// takeWalls takes the walls that a sheet lists from it.
func (r *reader) takeWalls(s workbook.Sheet) workbook.Sheet {
	if s.Kind != workbook.Worksheet || s.FeedsDropDowns() || len(s.Rows) > mostListed || !r.speaksOfWalls(&s) {
		return s
	}
	w := &wallSheet{reader: r, s: &s, is: map[string]bool{}}
	for _, row := range s.Rows {
		w.rows = append(w.rows, slices.Collect(filled(row.Cells)))
	}
	var list []toldWall
	for _, layout := range []func() []toldWall{w.across, w.inRows, w.stacks} {
		if list = w.tested(layout()); len(list) > 0 {
			break
		}
	}
	gone := map[int]bool{}
	for _, wall := range list {
		for _, row := range wall.rows {
			gone[row] = true
		}
	}
	if len(list) == 0 || w.isAside(gone, list) || w.isRead(list) {
		return s
	}
	r.noted = append(r.noted, list...)
	s.Rows = slices.DeleteFunc(slices.Clone(s.Rows), func(row workbook.Row) bool { return gone[row.Number] })
	return s
}

// speaksOfWalls holds for a sheet whose name, title or heading does.
func (r *reader) speaksOfWalls(s *workbook.Sheet) bool {
	if r.walls.says.MatchString(s.Name) {
		return true
	}
	for i, row := range s.Rows {
		cells := slices.Collect(filled(row.Cells))
		for _, c := range cells {
			title := len(cells) == 1 && len(c.Value) <= longestTitle || len(headingWords(c.Value)) <= longHeading
			if i < mostTitles && title && !strings.ContainsAny(c.Value, ";,") && r.walls.says.MatchString(c.Value) {
				return true
			}
		}
	}
	return false
}

// In how many rows of a sheet its title and heading are looked for, and how long they are.
const (
	mostTitles   = 8
	longestTitle = 100
)

// tested leaves nothing where too few of the walls are of several layers, of which most
// name a material or what lies beside one. The others then stand among them.
func (w *wallSheet) tested(list []toldWall) []toldWall {
	codes, layered := map[string]bool{}, 0
	for _, wall := range list {
		codes[wall.code] = true
		if w.isLayered(wall) {
			layered++
		}
	}
	if layered < fewestListed || layered*2 < len(list) || len(codes) < len(list) {
		return nil
	}
	return w.among(list)
}

// among leaves of the walls that tell few layers those that stand among the others and are
// called alike: "W4 curtain wall", and no note with a number of its own.
func (w *wallSheet) among(list []toldWall) []toldWall {
	letters, first, last := map[string]bool{}, 0, 0
	for i, wall := range list {
		if !w.isLayered(wall) {
			continue
		}
		if letters[lettersOf(wall.code)] = true; last == 0 {
			first = i
		}
		last = i + 1
	}
	var out []toldWall
	for i, wall := range list {
		within := first <= i && i < last && lettersOf(wall.code) != ""
		if len(wall.parts) > 0 && (letters[lettersOf(wall.code)] || within) {
			out = append(out, wall)
		}
	}
	return out
}

func (w *wallSheet) isLayered(wall toldWall) bool {
	named, made := 0, map[string]bool{}
	for _, layer := range wall.parts {
		if w.isLayer(layer.text) {
			named++
		}
		for _, m := range w.lex.named(layer.text) {
			made[m.Family] = true
		}
	}
	return len(wall.parts) >= fewestLayers && named*3 >= len(wall.parts)*2 && len(made) >= fewestMade
}

// isLayer holds for words that name a material, or what lies in a wall and is none.
func (w *wallSheet) isLayer(text string) bool {
	is, known := w.is[text]
	if !known {
		is = w.walls.plain.MatchString(text) || len(w.lex.named(text)) > 0
		w.is[text] = is
	}
	return is
}

// mostBeside is how many rows of several cells a list of walls has beside its own.
const mostBeside = 1

// isAside holds for a list on a sheet that tells other things in rows, without a title for
// it: a legend, or the codes of what the schedule has.
func (w *wallSheet) isAside(gone map[int]bool, list []toldWall) bool {
	others, codes := 0, map[string]bool{}
	for _, wall := range list {
		codes[wall.code] = true
	}
	for i, row := range w.rows {
		if len(row) == 1 && (w.words.wallHeading.MatchString(row[0].Value) || w.isTitle(row[0].Value) && i+1 < len(w.rows) && gone[w.s.Rows[i+1].Number]) {
			return false
		}
		if len(row) > 1 && !gone[w.s.Rows[i].Number] && !w.isHead(i) && !w.walls.called.MatchString(joinedTexts(row)) && !codes[strings.TrimSpace(row[0].Value)] {
			others++
		}
	}
	return others > mostBeside
}

// isTitle holds for a short line that speaks of walls and of both their sides.
func (w *wallSheet) isTitle(text string) bool {
	return len(headingWords(text)) <= longHeading && w.walls.says.MatchString(text) && w.tellsBoth(text)
}

// isRead holds where a table of the sheet has the rows of the walls already: as work, as
// data of products, or as a list of walls that tells them well.
func (w *wallSheet) isRead(list []toldWall) bool {
	r, codes := w.reader, w.codeColumn()
	tables, err := r.findTables(w.s)
	if err != nil {
		return true
	}
	for _, t := range tables {
		r.classify(t)
		r.wallTypes(t)
		r.listedByType(t)
		if !r.tellsWalls(t) || codes > 0 && t.column("layers") > 0 && !t.codedBy(codes) {
			continue
		}
		if slices.ContainsFunc(list, func(wall toldWall) bool { return wall.at.Row >= t.first && wall.at.Row <= t.last }) {
			return true
		}
	}
	return false
}

// codedBy holds for a table of which the rows are called by what a column has.
func (t *table) codedBy(col int) bool {
	for i, c := range t.cols {
		if i < len(t.nums) && t.nums[i] == col && (c.Slot == "mark" || c.Slot == "group") {
			return t.column("mark") == 0 || c.Slot == "mark"
		}
	}
	return false
}

// tellsWalls holds for a table of work, of data, or of walls that are told well: by a part
// of them a column, in cells of several layers, or by numbered layers.
func (r *reader) tellsWalls(t *table) bool {
	switch {
	case t.has("install", "finish", "cover", "lap", "primer", "sealant", "specified", "submitted", "edge", "left", "right") > 0:
		return true
	case t.kind == kindProducts:
		return t.has("apply", "apply_min", "apply_max", "service_max", "exposure_days", "voc", "keep_off", "air") > 0
	case t.kind != kindSchedule:
		return false
	case t.ofLayer != nil:
		return true
	case t.has("order", "mark") > 0 && t.has("material", "tag", "type") > 0 && t.column("group") > 0:
		return true
	case t.column("layers") > 0 && t.has("mark", "group", "tag") > 0, t.column("layers") > 0 && t.column("type") > 0 && t.has("material", "touches", "substrate", "behind", "front") > 0:
		return r.listsLayers(t) || r.layersRun(t, t.column("layers"), max(t.column("group"), t.column("mark"), t.column("type")))
	}
	return false
}

// listsLayers holds for a column of build-ups of which most cells tell several layers.
func (r *reader) listsLayers(t *table) bool {
	rows, lists := 0, 0
	for words := range r.said(t, t.column("layers")) {
		if rows++; metricEnds(layerEnds.Split(words, -1)) {
			return false // figures that only the layers apart show to be millimeters
		}
		if len(layerParts.FindAllString(layerMark.ReplaceAllString(words, "$1; "), -1)) >= fewestLayers-1 {
			lists++
		}
	}
	return lists*2 > rows
}

// listed makes a wall of its layers, which fill the rows.
func (w *wallSheet) listed(code string, at workbook.Cell, layers []listedLayer, rows []int, titles ...string) toldWall {
	wall := toldWall{code: code, parts: layers, codeAt: at.Ref(), at: w.atCell(at), rows: rows}
	if len(layers) > 0 {
		wall.at = layers[0].at
	}
	for _, title := range titles {
		if title = strings.TrimSpace(title); title != "" && !strings.Contains(wall.title, title) {
			wall.title = strings.TrimSpace(wall.title + " " + title)
		}
	}
	return wall
}

// ends tells from the words at both ends of a list which side it begins on.
func (w *wallSheet) ends(first, last string) string {
	out, in := w.walls.outer, w.walls.inner
	switch {
	case out.MatchString(first) && in.MatchString(last) && !in.MatchString(first) && !out.MatchString(last):
		return "outside to inside"
	case in.MatchString(first) && out.MatchString(last) && !out.MatchString(first) && !in.MatchString(last):
		return "inside to outside"
	}
	return ""
}

// begins tells the same from a word for a side that stands alone before the first layer.
func (w *wallSheet) begins(text string) string {
	switch {
	case w.walls.outside.MatchString(text):
		return "outside to inside"
	case w.walls.inside.MatchString(text):
		return "inside to outside"
	}
	return ""
}
