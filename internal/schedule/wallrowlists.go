package schedule

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// inRows finds the walls that each stand in a row: with all layers in a cell or two, or
// with a column for each. A heading over them tells which columns have none.
func (w *wallSheet) inRows() []toldWall {
	type found struct {
		i    int
		code string
		rest []workbook.Cell
	}
	var rows []found
	ofCodes := w.codeColumn()
	for i := range w.rows {
		if code, rest := w.codedRow(fromColumn(w.rows[i], ofCodes)); code != "" && len(rest) > 0 && !w.isHead(i) && !w.walls.prefixOnly.MatchString(code) {
			rows = append(rows, found{i, code, rest})
		}
	}
	if len(rows) == 0 || len(rows) > mostInRows {
		return nil
	}
	for k := range rows { // codes of other things above the list: "AB-1 | SBS sheet | 40 mil"
		if k > 0 && rows[k].i > rows[k-1].i+1 && !slices.ContainsFunc(rows[:k], func(row found) bool { return w.hasList(row.rest) }) && w.hasList(rows[k].rest) {
			rows = rows[k:]
			break
		}
	}
	heads, title := w.headsOver(rows[0].i)
	lists := map[int]bool{}
	for _, row := range rows {
		for _, c := range row.rest {
			if parts, _ := w.layersIn(c.Value); len(parts) >= fewestLayers && !w.tellsNone(heads[c.Col]) {
				lists[c.Col] = true
			}
		}
	}
	var out []toldWall
	for _, row := range rows {
		var layers []listedLayer
		side := ""
		if len(lists) > 0 {
			layers, side = w.fromLists(row.rest, lists, heads)
		} else {
			layers, side = w.fromColumns(row.rest, heads)
		}
		if len(layers) > 0 {
			filled := []int{w.s.Rows[row.i].Number}
			if len(out) == 0 && len(heads) > 0 {
				filled = append(filled, w.s.Rows[w.headRow(rows[0].i)].Number)
			}
			out = append(out, w.listed(row.code, fromColumn(w.rows[row.i], ofCodes)[0], layers, filled, title, side))
		}
	}
	return out
}

// mostInRows is how many walls a list has at most; more rows with marks of their own are a schedule.
const mostInRows = 100

// hasList holds for cells of which one lists several layers.
func (w *wallSheet) hasList(cells []workbook.Cell) bool {
	return slices.ContainsFunc(cells, func(c workbook.Cell) bool {
		parts, _ := w.layersIn(c.Value)
		return len(parts) >= fewestLayers
	})
}

// codeColumn is the column of the codes of walls where others stand left of it: what a
// heading calls so, over codes ("Mark | Membrane | Wall | Assembly").
func (w *wallSheet) codeColumn() int {
	for i, row := range w.rows {
		if i >= mostTitles {
			break
		}
		for n, c := range row {
			if n == 0 || !w.walls.prefixOnly.MatchString(strings.TrimSpace(c.Value)) || !w.walls.says.MatchString(c.Value) {
				continue
			}
			codes := 0
			for _, below := range w.rows[i+1:] {
				for _, b := range below {
					if b.Col == c.Col && w.walls.code.MatchString(b.Value) {
						codes++
					}
				}
			}
			if codes >= fewestListed {
				return c.Col
			}
		}
	}
	return 0
}

// fromColumn are the cells of a row from a column on; all of them where it has none there.
func fromColumn(row []workbook.Cell, col int) []workbook.Cell {
	for n, c := range row {
		if c.Col == col {
			return row[n:]
		}
	}
	return row
}

// codedRow parts a row into the code of the wall that it begins with and the cells that
// may tell its layers; a cell alone tells both.
func (w *wallSheet) codedRow(row []workbook.Cell) (code string, rest []workbook.Cell) {
	if len(row) == 0 {
		return "", nil
	}
	first := row[0]
	if len(row) == 1 {
		m := w.walls.led.FindStringSubmatchIndex(first.Value)
		called := w.walls.called.FindStringSubmatchIndex(first.Value)
		switch {
		case called != nil:
			code, first.Value = w.calledCode(first.Value, called), first.Value[called[1]:]
		case m != nil && m[3] < m[1] && (strings.ContainsAny(first.Value[m[3]:m[1]], ":)=–—-\n") || codeAside.MatchString(first.Value[m[3]:])):
			code, first.Value = first.Value[m[2]:m[3]], first.Value[m[3]:]
		default:
			return "", nil
		}
		first.Value = strings.TrimLeft(first.Value, " :)=–—-\n")
		return code, []workbook.Cell{first}
	}
	if called := w.walls.called.FindStringSubmatchIndex(first.Value); called != nil {
		return w.calledCode(first.Value, called), row[1:]
	}
	if m := w.walls.led.FindStringSubmatch(first.Value); m != nil && len(first.Value) <= longestTitle {
		return m[1], row[1:]
	}
	return "", nil
}

// calledCode is the code after a word for walls; a letter alone keeps the word: "Wall A".
func (w *wallSheet) calledCode(text string, m []int) string {
	if code := text[m[4]:m[5]]; strings.ContainsAny(code, "0123456789") {
		return code
	}
	return strings.TrimSpace(text[m[2]:m[3]])
}

// fromLists collects the layers of the cells that list several.
func (w *wallSheet) fromLists(cells []workbook.Cell, lists map[int]bool, heads map[int]string) (out []listedLayer, side string) {
	whole, first, last := false, 0, 0
	for c := 1; c <= w.s.MaxCol; c++ {
		if lists[c] {
			whole = whole || w.tellsBoth(heads[c])
			first, last = cmp.Or(first, c), c
		}
	}
	for _, c := range cells {
		sided := !whole && (w.walls.outer.MatchString(heads[c.Col]) || w.walls.inner.MatchString(heads[c.Col]) || first < c.Col && c.Col < last)
		if !lists[c.Col] && !sided || w.tellsNone(heads[c.Col]) {
			continue
		}
		parts, from := w.layersIn(c.Value)
		if !lists[c.Col] && !slices.ContainsFunc(parts, w.isLayer) {
			continue
		}
		side = cmp.Or(side, from)
		metric := metricEnds(parts)
		for _, part := range parts {
			layer := listedLayer{text: part, at: w.atCell(c)}
			if m := endFigure.FindStringSubmatch(part); m != nil && metric {
				layer.text, layer.thick = strings.TrimSpace(strings.TrimSuffix(part, m[0])), w.thickIn(m[1], "mm")
			}
			out = append(out, layer)
		}
	}
	return out, side
}

// metricEnds holds for layers of which most end with a bare figure in brackets, some of
// them more than a wall in inches has: "gypsum board (13)", "mineral wool (125)".
func metricEnds(parts []string) bool {
	figures, large := 0, false
	for _, part := range parts {
		if m := endFigure.FindStringSubmatch(part); m != nil {
			figures++
			whole, err := strconv.Atoi(m[1])
			large = large || err == nil && whole > mostInches
		}
	}
	return large && figures >= fewestLayers && figures*3 >= len(parts)*2
}

var endFigure = regexp.MustCompile(`\s*[(\[](\d{1,3}(?:\.\d+)?)[)\]]$`)

var layerEnds = regexp.MustCompile(`\s*[;\n]\s*`)

func (w *wallSheet) atCell(c workbook.Cell) At {
	return At{Sheet: w.s.Name, Row: c.Row, Cell: c.Ref()}
}

// fromColumns collects the layers that each have a cell; a cell of a size beside one is
// its thickness.
func (w *wallSheet) fromColumns(cells []workbook.Cell, heads map[int]string) (out []listedLayer, side string) {
	first, last := "", ""
	for _, c := range cells {
		head, text := heads[c.Col], strings.TrimSpace(c.Value)
		switch {
		case w.tellsNone(head), w.words.isBlank(text), w.words.isNone(text):
		case len(out) > 0 && sizeCell.MatchString(text) && (w.walls.thick.MatchString(head) || head == ""):
			out[len(out)-1].thick = w.thickIn(text, "")
		default:
			out = append(out, listedLayer{text: w.underHead(text, head), at: w.atCell(c)})
			first, last = cmp.Or(first, head), head
		}
	}
	return out, w.ends(first, last)
}

// tellsNone holds for the heading of a column that has no layers: "Location", and not
// "Description (outside to inside)".
func (w *wallSheet) tellsNone(head string) bool {
	return w.walls.noLayer.MatchString(head) && !w.tellsBoth(head)
}

// tellsBoth holds for a heading of both sides: what stands below it is the whole wall.
func (w *wallSheet) tellsBoth(head string) bool {
	return w.walls.outer.MatchString(head) && w.walls.inner.MatchString(head) || sideToSide.MatchString(head)
}

var sideToSide = regexp.MustCompile(`(?i)\b(?:in|warm|inner|room)\b[^,;]*(?:\bto\b|→|->|/|\.\.)[^,;]*\b(?:out|cold|outer|weather)\b|\b(?:out|cold|outer|weather)\b[^,;]*(?:\bto\b|→|->|/|\.\.)[^,;]*\b(?:in|warm|inner|room)\b`)

// underHead puts what a heading calls a layer to the words of a cell that leave it open:
// "fluid, permeable" under "Air barrier", "5/8 in. glass mat" under "Sheathing".
func (w *wallSheet) underHead(text, head string) string {
	if head == "" || layerNumbered.MatchString(head) {
		return text
	}
	more := text + " " + strings.ToLower(head)
	known, with := w.lex.named(text), w.lex.named(more)
	if len(known) == 0 && len(with) > 0 || len(known) == 1 && len(with) == 1 && strings.HasSuffix(known[0].Family, "-unspecified") {
		return more
	}
	return text
}

// headRow is the place of the heading over a row: the last one above it with two cells.
func (w *wallSheet) headRow(i int) int {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		if code, _ := w.codedRow(w.rows[k]); code != "" && !w.isHead(k) {
			break
		}
		if len(w.rows[k]) > 1 {
			return k
		}
	}
	return i
}

// headsOver are the headings of the columns over a row, by their numbers, and all of them.
func (w *wallSheet) headsOver(i int) (heads map[int]string, title string) {
	heads = map[int]string{}
	k := w.headRow(i)
	if k == i {
		if i > 0 && len(w.rows[i-1]) == 1 {
			title = strings.TrimSpace(w.rows[i-1][0].Value)
		}
		return heads, title
	}
	side := ""
	for _, c := range w.rows[k] {
		heads[c.Col] = strings.Join(strings.Fields(c.Value), " ")
		side = cmp.Or(side, w.begins(c.Value))
		title += " " + heads[c.Col]
	}
	return heads, strings.TrimSpace(title + " " + side)
}
