package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// cardScan goes down a region and makes its cards.
type cardScan struct {
	*reader
	sheet *workbook.Sheet
	names *wordIndex
	region
	head    []cardRow // rows that may head the next card
	out     []card
	open    bool // the last card takes further fields
	used    int  // cards that the schedule names
	gap     bool // a blank row, or none, stands above this one
	fielded int  // cards with a known label
}

// labelled reads the cards of a region; none where the schedule uses too few of them.
func (r *reader) labelled(s *workbook.Sheet, reg region, names *wordIndex) []card {
	c := &cardScan{reader: r, sheet: s, names: names, region: reg}
	last := -1
	for _, row := range reg.rows {
		c.gap = row.starts || row.number > last+1
		last = row.number
		c.take(row)
	}
	c.bare()
	for _, one := range c.out {
		if len(namesIn(one.name, names)) > 0 {
			c.used++
		}
		if one.known > 0 {
			c.fielded++
		}
	}
	if c.used == 0 || c.used*3 < len(c.out) || c.fielded == 0 || len(c.out) > 1 && !c.repeats() {
		return nil
	}
	if c.fielded*2 <= len(c.out) {
		return slices.DeleteFunc(c.out, func(one card) bool { return one.known == 0 })
	}
	return c.out
}

// repeats holds where a label stands on more than one card: what notes open with
// stands once each.
func (c *cardScan) repeats() bool {
	seen := map[string]int{}
	for i, one := range c.out {
		for _, f := range one.fields {
			label := cmp.Or(c.labelOf(f.label), fold(f.label))
			if before, again := seen[label]; again && before != i && label != "" {
				return true
			}
			seen[label] = i
		}
	}
	return false
}

// take reads one row: a property, a name, or what stands at the head of a card.
func (c *cardScan) take(row cardRow) {
	i := slices.IndexFunc(row.cells, func(cell cardCell) bool { return cell.at == c.label })
	if i < 0 {
		c.besides(row)
		return
	}
	label, value, ok := pairAt(row.cells, i)
	rest := row.cells[i+1:]
	switch {
	case !ok:
		c.heads(row)
	case c.opener != "" && fold(label.Value) == c.opener:
		c.opens(row, value)
	case c.calls(label, value):
		c.begin(row, strings.TrimSpace(value.Value), nil)
	case i > 0 && c.region.tagged:
		if name := strings.TrimSpace(row.cells[0].Value); !c.sureLabel(label.Value) {
			c.heads(row)
		} else {
			if !c.open || c.out[len(c.out)-1].name != name {
				c.begin(row, name, row.cells[1:i])
			}
			c.add(row, label, value, rest)
		}
	case c.isHead(label, value):
		c.heads(row)
	case c.open || c.begun():
		c.add(row, label, value, rest)
	default:
		c.heads(row)
	}
}

// besides takes a row without a cell in the column of labels: a sentence under what the
// product is, or a head that stands left of it.
func (c *cardScan) besides(row cardRow) {
	if len(row.cells) == 1 && row.cells[0].at > c.label && c.open && !c.gap {
		c.add(row, cardCell{}, row.cells[0], nil)
		return
	}
	c.heads(row)
}

// opens begins a card with the row that says its name: "Product | Alder 30", or
// "Product | FM-1, butyl sheet".
func (c *cardScan) opens(row cardRow, value cardCell) {
	name, rest, ok := nameIn(value.Value, c.names)
	if !ok {
		name = strings.TrimSpace(value.Value)
	}
	var kind []cardCell
	if value.Value = rest; rest != "" {
		kind = append(kind, value)
	}
	c.begin(row, name, kind)
}

// calls holds for a label that calls the product itself: "Tag: FM-1", or "Product:
// Alder 30" where the schedule calls it so and no tag stands above.
func (c *cardScan) calls(label, value cardCell) bool {
	named := isNamed(value.Value, c.names)
	if c.callsProduct(label.Value) {
		return named || tagShape.MatchString(strings.TrimSpace(value.Value))
	}
	return named && !c.open && len(c.head) == 0 && c.callsMaterial(label.Value)
}

// sureLabel holds for a label that stands there again and again, or whose words all
// tell what it is.
func (c *cardScan) sureLabel(label string) bool {
	return c.often[fold(label)] > 1 && !isNamed(label, c.names) || c.wholeLabel(label)
}

// isHead holds for a first cell that begins a card though something stands beside it.
func (c *cardScan) isHead(label, value cardCell) bool {
	text := label.Value
	if label.Ref() == value.Ref() { // "Data sheet 1: FM-1"
		text += ": " + value.Value
	}
	_, _, named := nameIn(text, c.names)
	switch {
	case c.isReference(label.Value) || c.wholeLabel(label.Value):
		return false
	case named && c.gap:
		return true
	case named && c.labelOf(label.Value) == "" && (!c.open || looksCoded(label.Value)): // and not "Edges", which the schedule has as well
		return true
	}
	return c.gap && c.labelOf(label.Value) == "" && c.often[fold(label.Value)] < 2
}

// heads keeps a row that may head the next card. After a gap, or with another name, it
// has nothing to do with the rows before.
func (c *cardScan) heads(row cardRow) {
	if len(row.cells) > maxHeadCells {
		return
	}
	named := slices.ContainsFunc(row.cells, func(cell cardCell) bool {
		_, _, ok := nameIn(cell.Value, c.names)
		return ok
	})
	switch {
	case c.gap || named:
		c.bare()
		c.head, c.open = nil, false
	case c.open:
		return // a sentence among its properties
	}
	c.head = append(c.head, row)
}

// begun makes a card of the rows at its head, false where there are none.
func (c *cardScan) begun() bool {
	if len(c.head) == 0 {
		return false
	}
	name, kind, rows := c.headed()
	c.head = nil
	if name == "" {
		return false
	}
	c.out = append(c.out, card{name: name, sheet: c.sheet.Name, row: rows[0], rows: rows, kind: kind})
	c.open = true
	return true
}

// bare makes a card of a name with what it is and nothing below.
func (c *cardScan) bare() {
	if len(c.head) == 0 {
		return
	}
	if name, kind, _ := c.headed(); len(kind) > 0 && len(namesIn(name, c.names)) > 0 {
		c.begun()
	}
	c.head, c.open = nil, false
}

// headed reads the rows at the head of a card: its name, which the schedule uses, or
// else the first of their cells; what it is, and how it is called besides.
func (c *cardScan) headed() (name string, kind []source, rows []int) {
	var others []cardCell
	used := false
	for _, row := range c.head {
		rows = append(rows, row.number)
		for _, cell := range row.cells {
			found, rest, ok := nameIn(cell.Value, c.names)
			if !ok || used {
				others = append(others, cell)
				continue
			}
			name, used = found, true
			if cell.Value = rest; rest != "" {
				others = append(others, cell)
			}
		}
	}
	if !used && len(others) > 0 {
		name = strings.TrimSpace(cardLead.ReplaceAllString(others[0].Value, ""))
		if others = others[1:]; len(strings.Fields(name)) > maxName || c.isReference(name) {
			return "", nil, nil
		}
	}
	what := len(others) - 1
	if what >= 0 && !c.describes(others[what].Value) {
		what = max(slices.IndexFunc(others, func(cell cardCell) bool { return c.describes(cell.Value) }), 0)
	}
	for i, cell := range others {
		slot := "alias"
		if i == what {
			slot = toldSubject
		}
		kind = append(kind, c.cardSource(c.sheet, slot, cell.Cell))
	}
	return name, kind, rows
}

// begin makes a card of a name that stands left of its labels, or by one.
func (c *cardScan) begin(row cardRow, name string, kind []cardCell) {
	c.bare()
	one := card{name: name, sheet: c.sheet.Name, row: row.number, rows: []int{row.number}}
	for _, cell := range kind {
		one.kind = append([]source{c.cardSource(c.sheet, toldSubject, cell.Cell)}, one.kind...)
	}
	c.out, c.open = append(c.out, one), true
}

// add takes one property to the last card.
func (c *cardScan) add(row cardRow, label, value cardCell, rest []cardCell) {
	one := &c.out[len(c.out)-1]
	if len(rest) > 1 {
		switch {
		case c.isUnit(value.Value): // "VOC | g/L | 310"
			label.Value += " " + value.Value
			value = rest[1]
		case c.isUnit(rest[1].Value): // "VOC | 310 | g/L"
			value.Value = strings.TrimSpace(value.Value) + " " + strings.TrimSpace(rest[1].Value)
		}
	}
	if c.labelOf(label.Value) != "" || label.Value == "" && c.sayOf(value.Value) != "" {
		one.known++
	}
	one.fields = append(one.fields, field{label.Value, value.Cell})
	one.rows = append(one.rows, row.number)
}
