package schedule

import (
	"regexp"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// card is the data of one product that stands by labels and not under headings.
type card struct {
	name   string
	sheet  string
	row    int
	cols   []int    // in which its labels may stand
	kind   []source // what the product is
	fields []field
	known  int // labels of product data among them
	rows   []int
}

// field is one label of a card with what stands beside it.
type field struct {
	label string
	value workbook.Cell
}

// cards finds the products of a sheet whose data stands by labels: a block of
// labels and values for each, a matrix with the products across and the labels
// down, or a list of one property to a line. Rows of schedules are no cards.
func (r *reader) cards(s *workbook.Sheet, tables []*table, names *wordIndex) []card {
	free := make([]workbook.Row, 0, len(s.Rows))
	for _, row := range s.Rows {
		if !inKind(tables, row.Number, kindSchedule) {
			free = append(free, row)
		}
	}
	if found := r.matrix(s, free, names); len(found) > 0 {
		return found
	}
	if found := r.propertyList(s, free, names); len(found) > 0 {
		return found
	}
	var out []card
	for _, strip := range strips(free) {
		out = append(out, r.blocks(s, strip, names)...)
	}
	return out
}

func inKind(tables []*table, row int, kind string) bool {
	return slices.ContainsFunc(tables, func(t *table) bool {
		return t.kind == kind && row >= t.head[0] && row <= t.last
	})
}

// filled lists the cells of a row that hold something of their own.
func filled(row workbook.Row) []workbook.Cell {
	out := make([]workbook.Cell, 0, len(row.Cells))
	for _, c := range row.Cells {
		if !c.Merged && strings.TrimSpace(c.Value) != "" {
			out = append(out, c)
		}
	}
	return out
}

// labelOf gives the slot of product data that a label names, "" if none.
func (r *reader) labelOf(label string) string {
	return r.labels.of(label, func() string { return r.slotOfLabel(label, workbook.Cell{}) })
}

// slotOfLabel is the slot that a label names and that can hold the value beside
// it; a label of two meanings ("film") is told by its value.
func (r *reader) slotOfLabel(label string, value workbook.Cell) string {
	label = strings.TrimSpace(label)
	for _, o := range r.words.told {
		if foldKeep(label) == o.words {
			return o.slot
		}
	}
	loose := ""
	for _, g := range r.head.guesses("", label) {
		slot := r.head.bySlot[strings.TrimSuffix(strings.TrimSuffix(g.slot, "_min"), "_max")]
		if g.score < sureLabel || slot != nil && slot.in == "schedule" || slices.Contains(notOfProducts, g.slot) {
			continue
		}
		if slot != nil && slot.kind != "" && value.Value != "" && r.holds(value, slot.kind) {
			return g.slot
		}
		loose = firstNonEmpty(loose, g.slot)
	}
	if o, _ := r.opening(label); loose == "" && o != toldRest {
		return o
	}
	return loose
}

// sureLabel is the share of a label that its slot's words must cover.
const sureLabel = 0.45

// notOfProducts are slots that a property of a product is never.
var notOfProducts = []string{"mark", "tag", "material", "group", "place", "order", "substrate", "touches", "install", "cover", "finish", "placed", "layers"}

// isNamed holds for a name that the schedule's cells use.
func isNamed(name string, names *wordIndex) bool {
	name = fold(name)
	if len(name) < 2 {
		return false
	}
	return names.has(name)
}

// scheduleWords are the words of the cells of all schedules, in which a name
// counts as used.
func scheduleWords(all []*table) *wordIndex {
	var b strings.Builder
	for _, t := range all {
		if t.kind != kindSchedule {
			continue
		}
		for row := t.first; row <= t.last; row++ {
			for _, c := range filled(workbook.Row{Cells: t.sheet.Row(row)}) {
				if slot := t.slotAt(c.Col); slot == "place" || slot == "group" {
					continue // a code there is that of a wall
				}
				b.WriteString(fold(c.Value))
				b.WriteByte('\n')
			}
		}
	}
	return indexWords(b.String())
}

// cardLead is what may stand before the name at the head of a card.
var cardLead = regexp.MustCompile(`^(?i:(?:tag|code|product|item|mark|no\.?|card)\s*[:.#]?\s+)`)

// blocks finds stacked cards: a row of name and description, and under it, to
// the next blank row, rows of label and value.
func (r *reader) blocks(s *workbook.Sheet, rows []workbook.Row, names *wordIndex) []card {
	var out []card
	used := 0
	for i := 0; i < len(rows); i++ {
		after := i == 0 || rows[i-1].Number < rows[i].Number-1 || len(filled(rows[i-1])) == 0 // a blank row
		c, n := r.block(s, rows[i:], after, names)
		if n == 0 {
			continue
		}
		if isNamed(c.name, names) {
			used++
		}
		out = append(out, c)
		i += n - 1
	}
	told := slices.DeleteFunc(slices.Clone(out), func(c card) bool { return c.known == 0 })
	if used == 0 || used*3 < len(out) || len(told) == 0 {
		return nil
	}
	if len(told)*2 <= len(out) {
		return told
	}
	return out
}

// block reads one card from the first of the rows on; n is how many it takes, 0
// where there is none. A name may look like a label ("Prime S") where it stands
// after a blank row and the schedule uses it.
func (r *reader) block(s *workbook.Sheet, rows []workbook.Row, after bool, names *wordIndex) (c card, n int) {
	c, ok := r.cardHead(s, rows[0], after, names)
	if !ok {
		return c, 0
	}
	for _, row := range rows[1:min(maxCard, len(rows))] {
		cells := filled(row)
		label, value, ok := pair(cells)
		if !ok && len(cells) == 1 && cells[0].Col > c.cols[0] { // a sentence without a label, under what the product is
			label, value, ok = workbook.Cell{Col: cells[0].Col}, cells[0], true
		}
		if row.Number != c.rows[len(c.rows)-1]+1 || !ok || !slices.Contains(c.cols, label.Col) || r.startsCard(label, names) {
			break
		}
		if r.labelOf(label.Value) != "" || label.Value == "" && r.sayOf(value.Value) != "" {
			c.known++
		}
		c.fields = append(c.fields, field{label.Value, value})
		c.rows = append(c.rows, row.Number)
	}
	bare := after && len(c.kind) > 0 && len(c.fields) > 0 && isNamed(c.name, names) // "Note: no limits given"
	if !bare && (c.known == 0 || c.known*2 < len(c.fields)) {
		return card{}, 0
	}
	return c, len(c.rows)
}

// maxCard is how many rows a card has at most, far above any: a list without end
// is not read to its end for each of its rows.
const maxCard = 200

// maxHeadCells is how many cells head a card at most: name, trade name and what
// the product is.
const maxHeadCells = 3

// cardHead reads the first row of a card: a name with or without what it is, in
// one cell or two, or the name as the value of a label ("Tag | FM-1").
func (r *reader) cardHead(s *workbook.Sheet, row workbook.Row, after bool, names *wordIndex) (c card, ok bool) {
	head := filled(row)
	if len(head) == 0 || len(head) > maxHeadCells {
		return c, false
	}
	first := head[0]
	name := strings.TrimSpace(cardLead.ReplaceAllString(first.Value, ""))
	c = card{sheet: s.Name, row: row.Number, cols: []int{first.Col}, rows: []int{row.Number}}
	if label, value, ok := pair(head); ok && r.callsProduct(label.Value) && (isNamed(value.Value, names) || tagShape.MatchString(value.Value)) {
		c.name = strings.TrimSpace(value.Value)
		return c, true
	}
	if m := leadingCode.FindStringSubmatch(name); len(head) == 1 && m != nil && !isNamed(name, names) && isNamed(m[1], names) {
		name, first.Value = m[1], m[2]
		head = append(head, first)
	}
	c.name = name
	if name == "" || len(strings.Fields(name)) > maxName {
		return c, false
	}
	if len(head) > 1 && (!(after && isNamed(name, names)) && r.labelOf(name) != "" || r.isReference(name)) {
		return c, false
	}
	if n := len(head); n > 1 {
		c.kind = append(c.kind, r.cardSource(s, toldSubject, head[n-1]))
		c.cols = append(c.cols, head[1].Col)
	}
	if len(head) == maxHeadCells {
		c.kind = append(c.kind, r.cardSource(s, "alias", head[1]))
	}
	return c, true
}

// isReference holds for a label of papers and people ("Rev", "Drawn by"), as title
// blocks have them, and no product is called.
func (r *reader) isReference(label string) bool {
	return slices.ContainsFunc(r.head.match(label), func(g guess) bool { return g.score >= 1 && g.slot == "reference" })
}

// startsCard holds for a label that a new card begins with.
func (r *reader) startsCard(label workbook.Cell, names *wordIndex) bool {
	name := strings.TrimSpace(cardLead.ReplaceAllString(label.Value, ""))
	return r.callsProduct(label.Value) || isNamed(name, names) && r.labelOf(name) == "" && tagShape.MatchString(name)
}

// callsProduct holds for a label whose value is the name of a product.
func (r *reader) callsProduct(label string) bool {
	return slices.ContainsFunc(r.head.match(label), func(g guess) bool {
		return g.score >= 1 && (g.slot == "tag" || g.slot == "mark")
	})
}

// pair gives the label and the value of a row of two cells, or of one with a
// colon between them.
func pair(cells []workbook.Cell) (label, value workbook.Cell, ok bool) {
	switch len(cells) {
	case 2:
		return cells[0], cells[1], true
	case 1:
		before, after, found := strings.Cut(cells[0].Value, ":")
		label, value = cells[0], cells[0]
		label.Value, value.Value = before, strings.TrimSpace(after)
		return label, value, found && value.Value != ""
	}
	return label, value, false
}

// maxName is how many words the name of a product has at most.
const maxName = 4

func (r *reader) cardSource(s *workbook.Sheet, slot string, c workbook.Cell) source {
	return source{slot: slot, text: strings.TrimSpace(c.Value), cell: c, at: At{Sheet: s.Name, Row: c.Row, Cell: c.Ref()}}
}
