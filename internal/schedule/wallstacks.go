package schedule

import (
	"strings"

	"abut/internal/workbook"
)

// stacks finds the walls of which each row tells a layer: below their code, beside it, or
// with a number after it ("W1-3").
func (w *wallSheet) stacks() []toldWall {
	col := w.layerColumn()
	if col == 0 {
		return nil
	}
	st := &wallStack{wallSheet: w, col: col, heads: map[int]string{}}
	for i := range w.rows {
		if i > 0 && w.s.Rows[i].Number != w.s.Rows[i-1].Number+1 || len(w.rows[i]) == 0 {
			st.close()
		}
		if len(w.rows[i]) > 0 {
			st.row(i)
		}
	}
	st.close()
	return st.out
}

// layerColumn is the column in which the most rows tell a layer.
func (w *wallSheet) layerColumn() int {
	counts, best := map[int]int{}, 0
	seen := map[string]bool{}
	for _, row := range w.rows {
		for _, c := range row {
			if w.walls.called.MatchString(c.Value) || !w.isLayer(c.Value) || len(c.Value) > longestTitle {
				continue
			}
			counts[c.Col] += 2
			if seen[c.Value] {
				counts[c.Col]--
			}
			seen[c.Value] = true
		}
	}
	for c := 1; c <= w.s.MaxCol; c++ {
		if counts[c] > counts[best] {
			best = c
		}
	}
	if counts[best] < fewestLayers*fewestListed {
		return 0
	}
	return best
}

// wallStack is a wall on the way, with the walls found before it.
type wallStack struct {
	*wallSheet
	col    int
	heads  map[int]string
	code   string
	begun  workbook.Cell
	layers []int // places of its rows
	gone   []int // numbers of the rows that it fills
	side   string
	number int // of the last layer, by a code of its own
	out    []toldWall
}

func (st *wallStack) close() {
	if st.code != "" && len(st.layers) > 0 {
		st.keep()
	}
	st.code, st.layers, st.number, st.gone = "", nil, 0, nil
}

// keep makes the wall of the rows collected.
func (st *wallStack) keep() {
	if st.falls() {
		return
	}
	col, unit := st.thickColumn(st.layers, st.col, st.heads)
	var words []string
	for _, i := range st.layers {
		words = append(words, text(st.s, st.s.Rows[i].Number, st.col))
	}
	metric := col == 0 && inMillimeters(words)
	var layers []listedLayer
	for n, i := range st.layers {
		c, _ := st.s.At(st.s.Rows[i].Number, st.col)
		layer := listedLayer{text: st.oneLayer(words[n], metric), at: st.atCell(c)}
		if size, ok := st.s.At(st.s.Rows[i].Number, col); ok && col > 0 {
			layer.thick = st.thickIn(size.Value, unit)
		}
		layers = append(layers, layer)
	}
	var title []string
	for c := 1; c <= st.s.MaxCol; c++ {
		title = append(title, st.heads[c])
	}
	st.out = append(st.out, st.listed(st.code, st.begun, layers, st.gone, append(title, st.side)...))
	st.side = ""
}

// falls holds for layers that are counted down, as no words of a list say.
func (st *wallStack) falls() bool {
	last := 0
	for n, i := range st.layers {
		number := st.numberAt(i)
		if number == 0 || n > 0 && number != last-1 {
			return false
		}
		last = number
	}
	return true
}

// numberAt is the number of the layer of a row, left of its words.
func (st *wallStack) numberAt(i int) int {
	for _, c := range st.rows[i] {
		if n := layerNumber(strings.TrimSpace(c.Value)); n > 0 && c.Col < st.col {
			return n
		}
	}
	return 0
}

// row takes one row: a heading, the code of a wall, a layer of it, or none of these.
func (st *wallStack) row(i int) {
	row := st.rows[i]
	layer, has := st.s.At(st.s.Rows[i].Number, st.col)
	text := strings.TrimSpace(layer.Value)
	has = has && !layer.Merged && text != ""
	switch code, number := st.codeBeside(row); {
	case has && st.isHead(i):
		st.heading(row)
		st.gone = append(st.gone, st.s.Rows[i].Number)
		return
	case code != "" && has && number == 0 && code != st.code && st.numbersFollow(i): // "EX-2 | Boards on studs" over 1, 2, 3
		st.begin(code, row[0], false)
		return
	case code != "" && has && number > 0:
		st.begin(code, row[0], number <= 1 && st.number != 0 || st.number == 0)
		st.number = number
	case code != "" && has:
		st.begin(code, row[0], false)
	case code != "" && !has:
		st.close()
		st.begin(code, row[0], false)
		return
	case code == "" && (!has || len(row) == 1 || st.col == row[0].Col || st.headsWall(row)):
		if called := st.calledBy(row); called != "" {
			st.close()
			st.begin(called, row[0], false)
			return
		}
	}
	st.marks(row)
	if st.code != "" && has && st.walls.skips.MatchString(text) {
		st.gone = append(st.gone, st.s.Rows[i].Number)
	}
	if st.code == "" || !has || st.walls.skips.MatchString(text) || st.words.isBlank(text) || st.begins(text) != "" || st.walls.noLayer.MatchString(text) && !st.isLayer(text) {
		return
	}
	st.layers = append(st.layers, i)
	st.gone = append(st.gone, st.s.Rows[i].Number)
}

// numbersFollow holds for a row without a number of a layer over one with the first.
func (st *wallStack) numbersFollow(i int) bool {
	return st.numberAt(i) == 0 && i+1 < len(st.rows) && len(st.rows[i+1]) > 0 && st.numberAt(i+1) == 1
}

// headsWall holds for a row that begins with a word for walls.
func (st *wallStack) headsWall(row []workbook.Cell) bool {
	return st.walls.called.MatchString(joinedTexts(row))
}

func joinedTexts(row []workbook.Cell) string { return strings.Join(textsOf(row), " ") }

// begin begins a wall where its code is another than that of the row above; anew where the
// row above only named it.
func (st *wallStack) begin(code string, at workbook.Cell, anew bool) {
	if code == st.code {
		if anew {
			st.layers = nil
		}
		return
	}
	st.close()
	st.code, st.begun = code, at
}

// codeBeside is the code of a wall left of the layers, with the number of the layer where
// it has one.
func (st *wallStack) codeBeside(row []workbook.Cell) (code string, number int) {
	for _, c := range row {
		if c.Col >= st.col {
			break
		}
		text := strings.TrimSpace(c.Value)
		if m := st.walls.numbered.FindStringSubmatch(text); m != nil {
			number = layerNumber(m[2])
			if number == 0 {
				number = int(m[2][0]-'a') + 1
			}
			if number == st.number+1 && m[1] == st.code || number == 1 {
				return m[1], number
			}
		}
		if m := st.walls.called.FindStringSubmatchIndex(text); m != nil && m[3] == len(text) && code == "" {
			code = st.calledCode(text, m)
		} else if m := st.walls.code.FindStringSubmatch(text); m != nil && code == "" && !sizeCell.MatchString(text) && st.begins(text) == "" {
			code = m[1]
		}
	}
	return code, 0
}

// calledBy is the code of the wall that a row above its layers calls: "W3 - Brick on
// block", "Wall type 100", "G1  Gallery / limestone".
func (st *wallStack) calledBy(row []workbook.Cell) string {
	words := joinedTexts(row)
	if m := st.walls.called.FindStringSubmatchIndex(words); m != nil && !st.isHeadText(words) {
		return st.calledCode(words, m)
	}
	m := st.walls.led.FindStringSubmatch(words)
	if m == nil || !strings.ContainsAny(m[1], "0123456789") || layerNumber(m[1]) > 0 || len(row) > 2 {
		return ""
	}
	if len(st.lex.named(m[1])) > 0 || len(m[1]) > len(row[0].Value) { // "CMU | 8": a layer and its size
		return ""
	}
	return m[1]
}

// isHeadText holds for the words of a heading, which "type" or "section" begins too.
func (st *wallStack) isHeadText(words string) bool {
	return len(strings.Fields(words)) > 12
}

// heading takes a row of headings for those below it.
func (st *wallStack) heading(row []workbook.Cell) {
	st.heads = map[int]string{}
	for _, c := range row {
		st.heads[c.Col] = strings.Join(strings.Fields(c.Value), " ")
	}
}

// marks takes a word for a side before the first layer for where the layers begin.
func (st *wallStack) marks(row []workbook.Cell) {
	if len(st.layers) > 0 || st.side != "" {
		return
	}
	for _, c := range row {
		if side := st.begins(c.Value); side != "" && st.walls.says.FindString(c.Value) == "" {
			st.side = side
			return
		}
	}
}

// layerNumber reads "4" and "4.", 0 for no number.
func layerNumber(text string) int {
	n := 0
	for _, c := range strings.TrimRight(text, ".)") {
		if c < '0' || c > '9' || n > 99 {
			return 0
		}
		n = n*10 + int(c-'0')
	}
	return n
}
