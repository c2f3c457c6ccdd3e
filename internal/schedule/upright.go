package schedule

import (
	"slices"
	"strings"

	"abut/internal/workbook"
)

// A schedule turned on its side has its items across and their properties down, in one
// block or in several below one another, as many to a block as the paper is wide. It is
// set upright and read like any other; turnBack gives what was read its own addresses.

// How many items a block of such a schedule has at least, and how many properties.
const (
	leastAcross = 2
	leastDown   = 3
)

// sideBlock is one block: its rows, of which the first names the items, and the columns
// of the items.
type sideBlock struct {
	rows  []int
	items []int
	under []int // row of the block by the column of the upright table, from 1; 0 for none
}

// upright is a sheet set upright, with the way back to its own addresses.
type upright struct {
	sheet  workbook.Sheet
	from   *workbook.Sheet
	side   int // column of the labels
	blocks []*sideBlock
	heads  []string       // labels, one a column of the upright table
	head   int            // row of its heading
	items  map[int]onSide // rows of items
	rows   map[int]int    // other rows, and which they were
}

// onSide is where an item stands in the sheet as it is.
type onSide struct {
	block *sideBlock
	col   int
}

// standUp gives the book with the schedules on their side set upright, and these; none
// where it has none.
func (rd *Reader) standUp(b *workbook.Book, set Settings) (*workbook.Book, []*upright) {
	r := rd.begin(b.Path, set)
	out := *b
	out.Sheets = slices.Clone(b.Sheets)
	var turned []*upright
	for i := range b.Sheets {
		s := &b.Sheets[i]
		if s.Kind != workbook.Worksheet || s.FeedsDropDowns() || r.isScheduleAlone(s) {
			continue
		}
		if u := r.upright(s); u != nil && !r.headedAcross(s) && r.isScheduleAlone(&u.sheet) {
			out.Sheets[i] = u.sheet
			turned = append(turned, u)
		}
	}
	return &out, turned
}

// headedAcross holds for a sheet with a heading that names most of its columns, and many of
// them surely: a list of products or a log of papers stands upright as it is.
func (r *reader) headedAcross(s *workbook.Sheet) bool {
	tables, err := r.findTables(s)
	return err == nil && slices.ContainsFunc(tables, func(t *table) bool {
		sure, headed := 0, 0
		for _, c := range t.cols {
			if c.Heading == "" {
				continue
			}
			if headed++; c.Slot != "" && c.Confidence >= sureHeading {
				sure++
			}
		}
		return sure >= surelyAcross && sure*2 >= headed
	})
}

// surelyAcross is how many columns such a heading names surely at least.
const surelyAcross = 4

// upright sets a sheet upright, nil where it has no blocks with items across.
func (r *reader) upright(s *workbook.Sheet) *upright {
	u := &upright{from: s, side: sideOf(s), items: map[int]onSide{}, rows: map[int]int{}}
	u.blocks = r.sideBlocks(s, u.side)
	if len(u.blocks) == 0 {
		return nil
	}
	u.columns()
	u.build()
	return u
}

// sideOf is the first column in which a row with items stands.
func sideOf(s *workbook.Sheet) int {
	side := s.MaxCol
	for _, row := range s.Rows {
		if ownCellsOf(s, row.Number) > leastAcross {
			for c := range filled(row.Cells) {
				side = min(side, c.Col)
				break
			}
		}
	}
	return side
}

// sideBlocks finds the blocks of a sheet. One ends at a row without a label, at one whose
// label says nothing of any item, and where the label that heads it stands again.
func (r *reader) sideBlocks(s *workbook.Sheet, side int) []*sideBlock {
	var all []*sideBlock
	var now *sideBlock
	for _, row := range s.Rows {
		label := text(s, row.Number, side)
		again := now != nil && fold(label) == fold(text(s, now.rows[0], side))
		if now != nil && row.Number == now.rows[len(now.rows)-1]+1 && label != "" && !again && (now.tells(s, row.Number) || len(r.head.match(label)) > 0 && ownCellsOf(s, row.Number) == 1) {
			now.rows = append(now.rows, row.Number)
			continue
		}
		if now = beginSide(row, side); now != nil {
			all = append(all, now)
		}
	}
	return slices.DeleteFunc(all, func(b *sideBlock) bool { return len(b.rows) <= leastDown })
}

// beginSide is the block that a row begins: several items, no two by the same name.
func beginSide(row workbook.Row, side int) *sideBlock {
	b := &sideBlock{rows: []int{row.Number}}
	seen := map[string]bool{}
	for c := range filled(row.Cells) {
		if c.Col <= side {
			continue
		}
		if seen[fold(c.Value)] {
			return nil
		}
		seen[fold(c.Value)] = true
		b.items = append(b.items, c.Col)
	}
	if len(b.items) < leastAcross {
		return nil
	}
	return b
}

// tells holds for a row that says something of an item of the block.
func (b *sideBlock) tells(s *workbook.Sheet, row int) bool {
	return slices.ContainsFunc(s.Row(row), func(c workbook.Cell) bool {
		return slices.Contains(b.items, c.Col) && strings.TrimSpace(c.Value) != ""
	})
}

// columns gives each label a column: the same one in all blocks, and another where a
// block has it again.
func (u *upright) columns() {
	for _, b := range u.blocks {
		b.under = []int{0, b.rows[0]}
		if len(u.heads) == 0 {
			u.heads = []string{"", u.label(b, b.rows[0])}
		}
		for _, row := range b.rows[1:] {
			label := u.label(b, row)
			col := 2
			for col < len(u.heads) && (fold(u.heads[col]) != fold(label) || col < len(b.under) && b.under[col] > 0) {
				col++
			}
			if col == len(u.heads) {
				u.heads = append(u.heads, label)
			}
			for len(b.under) <= col {
				b.under = append(b.under, 0)
			}
			b.under[col] = row
		}
	}
}

// label is what stands left of the items of a block: the property, and its unit.
func (u *upright) label(b *sideBlock, row int) string {
	var words []string
	for col := u.side; col < b.items[0]; col++ {
		if c, ok := u.from.At(row, col); ok && !c.Merged {
			words = append(words, strings.TrimSpace(c.Value))
		}
	}
	return strings.TrimSpace(strings.Join(words, " "))
}

// build lays out the upright sheet: what stands over the blocks, the items, and below
// them all the rest.
func (u *upright) build() {
	s := u.from
	u.sheet = *s
	u.sheet.Rows, u.sheet.Merges, u.sheet.Lists, u.sheet.HiddenRows, u.sheet.HiddenCols, u.sheet.MaxCol = nil, nil, nil, nil, nil, 0
	u.head = u.blocks[0].rows[0]
	i := 0
	for ; i < len(s.Rows) && s.Rows[i].Number < u.head; i++ {
		u.add(s.Rows[i].Number, s.Rows[i].Number, s.Rows[i].Cells)
	}
	u.heading()
	next := u.head + 1
	for _, b := range u.blocks {
		for _, col := range b.items {
			u.item(next, b, col)
			next++
		}
	}
	for shift := 0; i < len(s.Rows); i++ {
		row := s.Rows[i]
		rest := slices.DeleteFunc(slices.Clone(row.Cells), func(c workbook.Cell) bool { return u.taken(c) })
		if len(rest) == 0 {
			continue
		}
		if shift == 0 {
			shift = next + 1 - row.Number
		}
		u.add(max(row.Number+shift, next), row.Number, rest)
		next = max(row.Number+shift, next) + 1
	}
	u.moveMerges()
	u.sheet.MaxRow = u.sheet.Rows[len(u.sheet.Rows)-1].Number
}

// taken holds for a cell of a block.
func (u *upright) taken(c workbook.Cell) bool {
	return slices.ContainsFunc(u.blocks, func(b *sideBlock) bool {
		return slices.Contains(b.rows, c.Row) && (slices.Contains(b.items, c.Col) || u.side <= c.Col && c.Col < b.items[0])
	})
}

// add lays the cells of a row that is none of a block into another row.
func (u *upright) add(row, was int, cells []workbook.Cell) {
	u.rows[row] = was
	u.lay(row, u.from.RowHidden(was), slices.Clone(cells))
}

func (u *upright) lay(row int, hidden bool, cells []workbook.Cell) {
	for i := range cells {
		cells[i].Row = row
		u.sheet.MaxCol = max(u.sheet.MaxCol, cells[i].Col)
	}
	if hidden {
		u.sheet.HiddenRows = append(u.sheet.HiddenRows, workbook.Span{From: row, To: row})
	}
	u.sheet.Rows = append(u.sheet.Rows, workbook.Row{Number: row, Hidden: hidden, Cells: cells})
}

// heading lays the labels of all blocks into one row.
func (u *upright) heading() {
	var cells []workbook.Cell
	for col := 1; col < len(u.heads); col++ {
		row, was := u.was(u.head, col)
		c, _ := u.from.At(row, was)
		c.Value, c.Kind, c.Merged, c.Col = u.heads[col], workbook.Text, false, col
		if c.Value != "" {
			cells = append(cells, c)
		}
		if u.from.RowHidden(row) {
			u.sheet.HiddenCols = append(u.sheet.HiddenCols, workbook.Span{From: col, To: col})
		}
	}
	u.lay(u.head, false, cells)
}

// item lays one item into a row.
func (u *upright) item(row int, b *sideBlock, was int) {
	u.items[row] = onSide{b, was}
	var cells []workbook.Cell
	for col, at := range b.under {
		if c, ok := u.from.At(at, was); ok {
			c.Col = col
			cells = append(cells, c)
		}
	}
	u.lay(row, u.from.ColHidden(was), cells)
}

// moveMerges gives the merged cells of what is in no block their new rows. Within the
// blocks each item has its own copy of what it shares with others.
func (u *upright) moveMerges() {
	moved := map[int]int{}
	for row, was := range u.rows {
		moved[was] = row
	}
	for i := range u.sheet.Rows {
		if _, item := u.items[u.sheet.Rows[i].Number]; item {
			for k := range u.sheet.Rows[i].Cells {
				u.sheet.Rows[i].Cells[k].Merged = false
			}
		}
	}
	for _, m := range u.from.Merges {
		c := workbook.Cell{Row: m.Top, Col: m.Left}
		if row, ok := moved[m.Top]; ok && !u.taken(c) {
			m.Top, m.Bottom = row, row+m.Bottom-m.Top
			u.sheet.Merges = append(u.sheet.Merges, m)
		}
	}
}

// was gives the row and column of the sheet as it is for one of the upright sheet.
func (u *upright) was(row, col int) (int, int) {
	if it, ok := u.items[row]; ok {
		if col > 0 && col < len(it.block.under) && it.block.under[col] > 0 {
			return it.block.under[col], it.col
		}
		return it.block.rows[0], it.col
	}
	if row == u.head {
		for _, b := range u.blocks {
			if col > 0 && col < len(b.under) && b.under[col] > 0 {
				return b.under[col], u.side
			}
		}
		return row, u.side
	}
	if old, ok := u.rows[row]; ok {
		return old, col
	}
	return row, col
}
