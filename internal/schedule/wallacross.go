package schedule

import (
	"cmp"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// layerNumbered is a label that only counts layers: "Layer 3", "3.", "c)".
var layerNumbered = regexp.MustCompile(`(?i)^\W*(?:(?:layer|lyr|no|course|row)\W*)?(?:\d{1,2}|[a-z])?\W*(?:material|mat)?\W*$`)

// across finds the walls whose codes stand beside one another, with the layers of each in
// the rows below its code, and perhaps the thickness of each in the next column.
func (w *wallSheet) across() []toldWall {
	var out []toldWall
	for i, row := range w.rows {
		var codes []workbook.Cell
		for _, c := range row {
			if w.codeAcross(c.Value) != "" {
				codes = append(codes, c)
			}
		}
		if len(codes) < fewestListed || len(codes)*3 < len(row) || w.countsColumns(i, codes) { // a row of a schedule has other cells too
			continue
		}
		out = append(out, w.tested(w.under(i, codes))...)
	}
	return out
}

// codeAcross is the code of a wall over its layers: alone, after a word for walls, or
// before what the wall is: "W1 - rainscreen".
func (w *wallSheet) codeAcross(text string) string {
	if m := w.walls.code.FindStringSubmatch(text); m != nil && len(w.lex.named(m[1])) == 0 {
		return m[1]
	}
	if m := w.walls.called.FindStringSubmatchIndex(text); m != nil && m[3] == len(strings.TrimRight(text, " ")) {
		return w.calledCode(text, m)
	}
	if m := w.walls.led.FindStringSubmatchIndex(text); m != nil && len(text) <= longestTitle && m[3] < m[1] &&
		strings.ContainsAny(text[m[3]:m[1]], ":=–—-\n") && strings.ContainsAny(text[m[2]:m[3]], "0123456789") {
		return text[m[2]:m[3]]
	}
	return ""
}

// countsColumns holds for codes that count the layers of walls whose own codes stand below
// one another, left of them: "L1 (ext)", "L2" over EW-10, EW-11.
func (w *wallSheet) countsColumns(head int, codes []workbook.Cell) bool {
	coded := 0
	for i := head + 1; i < len(w.rows) && i <= head+fewestListed; i++ {
		if len(w.rows[i]) > 0 && w.rows[i][0].Col < codes[0].Col && w.walls.code.MatchString(w.rows[i][0].Value) {
			coded++
		}
	}
	return coded == fewestListed
}

// under collects the layers below the codes of a row.
func (w *wallSheet) under(head int, codes []workbook.Cell) []toldWall {
	var out []toldWall
	for n, code := range codes {
		next := w.s.MaxCol + 1
		if n+1 < len(codes) {
			next = codes[n+1].Col
		}
		corner := ""
		if c := w.rows[head][0]; c.Col < codes[0].Col {
			corner = c.Value
		}
		wall := w.listed(w.codeAcross(code.Value), code, nil, []int{code.Row}, corner)
		first, last, side := "", "", ""
		for i := head + 1; i < len(w.rows) && w.s.Rows[i].Number == w.s.Rows[i-1].Number+1 && len(w.rows[i]) > 0; i++ {
			if len(w.rows[i]) == 1 && w.rows[i][0].Col < code.Col { // "INSIDE" alone over the layers or below them
				begins := w.begins(w.rows[i][0].Value)
				if begins == "" {
					break
				}
				if len(wall.parts) == 0 {
					side = cmp.Or(side, begins)
				}
				wall.rows = append(wall.rows, w.s.Rows[i].Number)
				continue
			}
			label, layer, size := w.acrossRow(w.rows[i], codes[0].Col, code.Col, next)
			wall.rows = append(wall.rows, w.s.Rows[i].Number)
			text := strings.TrimSpace(layer.Value)
			switch {
			case text == "", w.words.isBlank(text), w.words.isNone(text), w.walls.noLayer.MatchString(label), w.walls.skips.MatchString(label + " " + text), w.isHead(i):
			case w.begins(text) != "":
				side = cmp.Or(side, w.begins(text))
			default:
				l := listedLayer{text: w.underHead(text, label), at: w.atCell(layer)}
				if size != "" {
					l.thick = w.thickIn(size, "")
				}
				wall.parts = append(wall.parts, l)
				first, last = cmp.Or(first, label), label
			}
		}
		if len(wall.parts) > 0 {
			wall.at = wall.parts[0].at
		}
		wall.title = strings.TrimSpace(wall.title + " " + side + " " + w.ends(first, last))
		out = append(out, wall)
	}
	return out
}

// acrossRow is what a row has for one of the walls: its label, the layer, and a size beside.
func (w *wallSheet) acrossRow(row []workbook.Cell, firstCol, col, next int) (label string, layer workbook.Cell, size string) {
	for _, c := range row {
		switch {
		case c.Col < firstCol:
			label = cmp.Or(label, strings.TrimSpace(c.Value))
		case c.Col == col:
			layer = c
		case c.Col > col && c.Col < next && sizeCell.MatchString(strings.TrimSpace(c.Value)):
			size = cmp.Or(size, c.Value)
		}
	}
	return label, layer, size
}

// isHead holds for a row of headings: it has a word for layers, and no figure.
func (w *wallSheet) isHead(i int) bool {
	words := textsOf(w.rows[i])
	if len(words) < 2 {
		return false
	}
	heads := 0
	for _, t := range words {
		if strings.ContainsAny(t, "0123456789") && !strings.ContainsAny(t, "([=") {
			return false
		}
		if len(headingWords(t)) <= 6 && (w.walls.heads.MatchString(t) || w.walls.thick.MatchString(t) || w.walls.noLayer.MatchString(t)) {
			heads++
		}
	}
	return heads > 0 && heads*2 >= len(words)
}
