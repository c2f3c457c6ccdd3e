package marked

import (
	"slices"
	"strconv"
	"strings"
)

// spot is a cell at fault: what is said of it, and the rows of the Findings
// sheet that say it.
type spot struct {
	row, col int
	label    string // the gravest of its findings
	notes    []note
	back     int   // first row on the Findings sheet
	hidden   bool  // in a hidden row, column or sheet
	fixed    bool  // a link would change how its text is shown
	joined   *spot // the spot of the merged cells it lies in
}

// shown is the spot that stands for this one.
func (s *spot) shown() *spot {
	if s.joined != nil {
		return s.joined
	}
	return s
}

// note is one finding as the comment of a cell tells it.
type note struct{ label, text string }

// layout is what a sheet's part says of itself besides its cells.
type layout struct {
	root     node
	merges   []block
	linked   []block
	cols     []column
	heights  map[int]float64
	hidden   map[int]bool // rows
	links    node         // <hyperlinks>, not started if there is none
	linksEnd int
	legacy   string         // relation of the drawing that holds the comments
	slots    map[string]int // where an element that is missing goes
}

type block struct{ top, left, bottom, right int }

func (b block) holds(row, col int) bool {
	return row >= b.top && row <= b.bottom && col >= b.left && col <= b.right
}

type column struct {
	from, to int
	width    float64
	style    int
	hidden   bool
}

// afterLegacy and afterLinks are what may follow the drawing of comments and the
// links: the format has a fixed order.
func afterLegacy() []string {
	return []string{
		"legacyDrawingHF", "drawingHF", "picture", "oleObjects", "controls", "webPublishItems", "tableParts", "extLst", "AlternateContent",
	}
}

func afterLinks() []string {
	return append([]string{
		"printOptions", "pageMargins", "pageSetup", "headerFooter", "rowBreaks", "colBreaks", "customProperties",
		"cellWatches", "ignoredErrors", "smartTags", "drawing", "legacyDrawing",
	}, afterLegacy()...)
}

// readLayout passes over a sheet once, before its cells are changed.
func readLayout(data []byte) (*layout, error) {
	l := &layout{heights: map[int]float64{}, hidden: map[int]bool{}, slots: map[string]int{}}
	row, past := 0, false
	err := walk(data, func(n node) error {
		switch {
		case n.depth == 0 && n.start:
			l.root = n
		case n.depth == 0:
			l.slot("hyperlinks", n.from)
			l.slot("legacyDrawing", n.from)
		case !n.start && n.name == "sheetData" && n.depth == 1:
			past = true
		case !n.start && n.name == "hyperlinks" && n.depth == 1:
			l.linksEnd = n.from
		case !n.start:
		case n.name == "row" && n.parent == "sheetData":
			row = next(n, row)
			l.row(n, row)
		case n.depth == 1 && past:
			l.tail(n)
		case n.name == "col" && n.parent == "cols":
			width, _ := strconv.ParseFloat(n.value("width"), 64) // none is 0: the usual width
			l.cols = append(l.cols, column{number(n.value("min")), number(n.value("max")), width, number(n.value("style")), yes(n.value("hidden"))})
		case n.name == "mergeCell":
			l.merges = appendBlock(l.merges, n.value("ref"))
		case n.name == "hyperlink":
			l.linked = appendBlock(l.linked, n.value("ref"))
		}
		return nil
	})
	return l, err
}

func (l *layout) row(n node, row int) {
	if yes(n.value("hidden")) {
		l.hidden[row] = true
	}
	if ht, err := strconv.ParseFloat(n.value("ht"), 64); err == nil {
		l.heights[row] = ht
	}
}

func (l *layout) tail(n node) {
	switch n.name {
	case "hyperlinks":
		l.links = n
	case "legacyDrawing":
		l.legacy = n.value("id")
	}
	if slices.Contains(afterLinks(), n.name) {
		l.slot("hyperlinks", n.from)
	}
	if slices.Contains(afterLegacy(), n.name) {
		l.slot("legacyDrawing", n.from)
	}
}

// slot remembers the first place before which an element may stand.
func (l *layout) slot(name string, at int) {
	if _, ok := l.slots[name]; !ok {
		l.slots[name] = at
	}
}

func (l *layout) column(col int) column {
	for _, c := range l.cols {
		if col >= c.from && col <= c.to {
			return c
		}
	}
	return column{}
}

// home is the cell that shows what is said of a place: of merged ones the top
// left.
func (l *layout) home(row, col int) (int, int) {
	for _, m := range l.merges {
		if m.holds(row, col) {
			return m.top, m.left
		}
	}
	return row, col
}

// cells gives each spot its fill; cells and rows that are missing are added.
type cells struct {
	data   []byte
	spots  []*spot // by row and column
	styles *styles
	layout *layout
	texts  func(shared int) text
	edits  edits
	row    int
	col    int
	opened node // the row
	kind   string
	wraps  bool
	value  int // where the value of the cell begins
	at     *spot
	sheet  node
}

func (c *cells) visit(n node) error {
	switch {
	case n.name == "sheetData" && n.start && n.depth == 1:
		c.sheet = n
	case n.name == "sheetData" && n.depth == 1:
		c.missingRows(n.from, 1<<30)
	case n.name == "row" && n.parent == "sheetData" && n.start:
		row := next(n, c.row)
		c.missingRows(n.from, row)
		c.row, c.col, c.opened = row, 0, n
	case n.name == "row" && n.parent == "sheetData":
		if text := c.missingCells(1 << 30); text != "" {
			c.edits.into(c.data, c.opened, n.from, text)
		}
	case n.name == "c" && n.parent == "row" && n.start:
		c.cell(n)
	case c.at != nil && n.name == "v" && n.start:
		c.value = n.to
	case c.at != nil && n.name == "v" && c.kind == "s":
		c.fix(c.texts(number(strings.TrimSpace(string(c.data[c.value:n.from])))))
	case c.at != nil && n.name == "is" && n.start:
		c.value = n.to
	case c.at != nil && n.name == "r" && n.parent == "is":
		c.at.fixed = true
	case c.at != nil && n.name == "is":
		c.fix(text{length: n.from - c.value})
	case n.name == "c" && n.parent == "row":
		c.at = nil
	}
	return nil
}

// cell changes the format of a cell that is there.
func (c *cells) cell(n node) {
	col := c.col + 1
	if _, got, ok := place(n.value("r")); ok {
		col = got
	}
	if text := c.missingCells(col); text != "" {
		c.edits.insert(n.from, text)
	}
	c.col, c.at = col, nil
	if len(c.spots) == 0 || c.spots[0].row != c.row || c.spots[0].col != col {
		return
	}
	c.at, c.kind, c.wraps = c.spots[0], n.value("t"), c.styles.wraps(number(n.value("s")))
	c.spots = c.spots[1:]
	tag := string(c.data[n.from:n.to])
	c.edits.replace(n.from, n.to, withAttr(tag, "s", strconv.Itoa(c.styles.marked(number(n.value("s")), c.at.label))))
}

// fix keeps a link off a cell where some programs would then show its text
// without formats within it, or in one line.
func (c *cells) fix(t text) {
	width := c.layout.column(c.at.col).width
	if width == 0 {
		width = 8
	}
	if t.rich || c.wraps && float64(t.length) > width {
		c.at.fixed = true
	}
}

// missingCells writes the spots of the row before a column.
func (c *cells) missingCells(col int) string {
	var b strings.Builder
	for len(c.spots) > 0 && c.spots[0].row == c.row && c.spots[0].col < col {
		style := c.layout.column(c.spots[0].col).style
		if yes(c.opened.value("customFormat")) {
			style = number(c.opened.value("s"))
		}
		b.WriteString(c.blank(c.opened, style))
	}
	return b.String()
}

// missingRows writes the spots of all rows before a row.
func (c *cells) missingRows(at, row int) {
	var b strings.Builder
	for len(c.spots) > 0 && c.spots[0].row < row {
		this := c.spots[0].row
		tag := c.sheet.tagged("row")
		b.WriteString("<" + tag + ` r="` + strconv.Itoa(this) + `">`)
		for len(c.spots) > 0 && c.spots[0].row == this {
			b.WriteString(c.blank(c.sheet, c.layout.column(c.spots[0].col).style))
		}
		b.WriteString("</" + tag + ">")
	}
	if b.Len() == 0 {
		return
	}
	if row == 1<<30 {
		c.edits.into(c.data, c.sheet, at, b.String())
		return
	}
	c.edits.insert(at, b.String())
}

// blank writes a cell without a value for the next spot.
func (c *cells) blank(like node, style int) string {
	s := c.spots[0]
	c.spots = c.spots[1:]
	return "<" + like.tagged("c") + ` r="` + ref(s.row, s.col) + `" s="` + strconv.Itoa(c.styles.marked(style, s.label)) + `"/>`
}

// next gives the number of a row, which need not be written.
func next(n node, before int) int {
	if r := number(n.value("r")); r > 0 {
		return r
	}
	return before + 1
}

func yes(value string) bool { return value == "1" || value == "true" || value == "on" }
