package schedule

import (
	"cmp"
	"iter"
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// card is the data of one product that stands by labels and not under headings.
type card struct {
	name   string
	sheet  string
	row    int
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

// cards finds the products of a sheet whose data stands by labels: a matrix with
// the products across and the labels down, or columns of labels with the values
// beside them, whatever names the products over them, left of them or by a label of
// their own. What schedules hold is no card.
func (r *reader) cards(s *workbook.Sheet, tables []*table, names *wordIndex) []card {
	rows := freeRows(s, tables)
	if found := r.matrices(s, rows, names); len(found) > 0 {
		return found
	}
	rows = r.unfold(rows, names)
	var out []card
	for _, reg := range r.regions(rows, names) {
		out = append(out, r.labelled(s, reg, names)...)
	}
	return out
}

// cardRow is a row of a sheet as cards see it.
type cardRow struct {
	number int
	starts bool // a card begins with it, as where it holds all of one
	cells  []cardCell
}

// cardCell is a cell with the column in which it counts, which is another where a
// whole card stands in one row.
type cardCell struct {
	workbook.Cell
	at int
}

// freeRows are the rows of a sheet without the cells of its schedules, and of tables of
// product data that name their products under a heading.
func freeRows(s *workbook.Sheet, tables []*table) []cardRow {
	taken := slices.DeleteFunc(slices.Clone(tables), func(t *table) bool { return t.kind != kindSchedule && !t.listsProducts() })
	out := make([]cardRow, 0, len(s.Rows))
	for _, row := range s.Rows {
		past := 0 // the last column of a schedule
		for _, t := range taken {
			if row.Number >= t.head[0] && row.Number <= t.last {
				past = max(past, t.nums[len(t.nums)-1])
			}
		}
		var own []cardCell
		for c := range filled(row.Cells) {
			if c.Col > past {
				own = append(own, cardCell{c, c.Col})
			}
		}
		if len(own) > 0 {
			out = append(out, cardRow{number: row.Number, cells: own})
		}
	}
	return out
}

// listsProducts holds for a table of product data in which each row has its tag and its
// words for what it is.
func (t *table) listsProducts() bool {
	tag := t.column("tag")
	if t.kind != kindProducts || tag == 0 || t.has("material", "type", "alias") == 0 {
		return false
	}
	for row := t.first; row <= t.last; row++ {
		if t.ownCells(row) > 1 && text(t.sheet, row, tag) == "" {
			return false
		}
	}
	return true
}

// maxCard is how many rows a card has at most, far above any.
const maxCard = 200

// filled goes through the cells of a row that hold something of their own.
func filled(cells []workbook.Cell) iter.Seq[workbook.Cell] {
	return func(yield func(workbook.Cell) bool) {
		for i := range cells {
			if c := &cells[i]; !c.Merged && strings.TrimSpace(c.Value) != "" && !yield(*c) {
				return
			}
		}
	}
}

// countFilled is how many such cells there are: a list of them is made for few rows only.
func countFilled(cells []workbook.Cell) int {
	n := 0
	for range filled(cells) {
		n++
	}
	return n
}

// textsOf are the texts of such cells, without surrounding space.
func textsOf(cells []workbook.Cell) []string {
	var texts []string
	for c := range filled(cells) {
		texts = append(texts, strings.TrimSpace(c.Value))
	}
	return texts
}

// loneCell is the only such cell of a row; not ok where there is none, or another.
func loneCell(cells []workbook.Cell) (lone workbook.Cell, ok bool) {
	for c := range filled(cells) {
		if ok {
			return workbook.Cell{}, false
		}
		lone, ok = c, true
	}
	return lone, ok
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
		loose = cmp.Or(loose, g.slot)
	}
	if loose == "reference" && r.namesKind(label) && r.namesProduct(value.Value) {
		return toldSubject
	}
	if o, _ := r.opening(label); loose == "" && o != toldRest {
		return r.head.endTold(o, label)
	}
	return loose
}

// namesKind holds for a label of several things of which one is what the product is:
// "Maker / type".
func (r *reader) namesKind(label string) bool {
	parts := labelParts.Split(label, -1)
	return len(parts) > 1 && slices.ContainsFunc(parts, func(part string) bool {
		return slices.ContainsFunc(r.head.match(part), func(g guess) bool { return g.score >= 1 && slices.Contains(kindSlots, g.slot) })
	})
}

// labelParts are the signs and words between what one label names.
var labelParts = regexp.MustCompile(`\s*(?:[/,;&+|]|\band\b)\s*`)

// kindSlots are slots that tell what a product is.
var kindSlots = []string{toldSubject, "chemistry", "material"}

// sureLabel is the share of a label that its slot's words must cover.
const sureLabel = 0.45

// notOfProducts are slots that a property of a product is never.
var notOfProducts = []string{"mark", "tag", "material", "group", "place", "order", "substrate", "touches", "install", "cover", "finish", "placed", "layers"}

// isNamed holds for a name that the schedule's cells use.
func isNamed(name string, names *wordIndex) bool {
	name = fold(name)
	return len(name) > 1 && strings.ContainsFunc(name, unicode.IsLetter) && names.has(name)
}

// scheduleWords are the words of the cells of all schedules, in which a name
// counts as used.
func scheduleWords(all []*table) *wordIndex {
	var b strings.Builder
	written := map[string]bool{} // cells that say the same again add no words
	for _, t := range all {
		if t.kind != kindSchedule {
			continue
		}
		for row := t.first; row <= t.last; row++ {
			for c := range filled(t.sheet.Row(row)) {
				if slot := t.slotAt(c.Col); slot == "place" || slot == "group" || c.Col > t.nums[len(t.nums)-1] {
					continue // a code there is that of a wall
				}
				if written[c.Value] {
					continue
				}
				written[c.Value] = true
				b.WriteString(fold(c.Value))
				b.WriteByte('\n')
			}
		}
	}
	return indexWords(b.String())
}

// wholeLabel holds for a label all of whose words tell what it is.
func (r *reader) wholeLabel(label string) bool {
	if slices.ContainsFunc(r.words.told, func(o toldOpening) bool { return o.words == foldKeep(label) }) {
		return true
	}
	return r.labelOf(label) != "" && slices.ContainsFunc(r.head.match(label), func(g guess) bool { return g.score >= 1 && !slices.Contains(notOfProducts, g.slot) })
}

// callsMaterial holds for a label whose value is what the product is sold as, or is.
func (r *reader) callsMaterial(label string) bool {
	return slices.ContainsFunc(r.head.match(label), func(g guess) bool { return g.score >= 1 && g.slot == "material" })
}

// isReference holds for a label of papers and people ("Rev", "Drawn by"), as title
// blocks have them, and no product is called.
func (r *reader) isReference(label string) bool {
	return slices.ContainsFunc(r.head.match(label), func(g guess) bool { return g.score >= 1 && g.slot == "reference" })
}

// callsProduct holds for a label whose value is the name of a product.
func (r *reader) callsProduct(label string) bool {
	return slices.ContainsFunc(r.head.match(label), func(g guess) bool {
		return g.score >= 1 && (g.slot == "tag" || g.slot == "mark")
	})
}

func (r *reader) cardSource(s *workbook.Sheet, slot string, c workbook.Cell) source {
	return source{slot: slot, text: strings.TrimSpace(c.Value), cell: c, at: At{Sheet: s.Name, Row: c.Row, Cell: c.Ref()}}
}
