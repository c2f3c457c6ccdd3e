package schedule

import (
	"cmp"
	"fmt"
	"iter"
	"slices"
	"strings"
)

// nameProducts registers the tags of all tables of product data, so that all other
// cells can be read with them: those of tables with data first, which a table of tags
// and words adds to.
func (r *reader) nameProducts(all []*table) {
	var tables []*table
	r.each(all, kindProducts, func(t *table) { tables = append(tables, t) })
	slices.SortStableFunc(tables, func(a, b *table) int { return min(len(b.data()), 1) - min(len(a.data()), 1) })
	for _, t := range tables {
		r.productNames(t)
	}
}

// data lists the slots of a table that tell of a product more than what it is.
func (t *table) data() []string {
	var out []string
	for _, c := range t.cols {
		if _, figure := figureOf[c.Slot]; figure || slices.Contains(productSlots, c.Slot) || c.Slot == "primer" || c.Slot == "accepts_none" {
			out = append(out, c.Slot)
		}
	}
	return out
}

// productNames registers the tags of one product table.
func (r *reader) productNames(t *table) {
	col, section := t.nameColumn(), t.title()
	for row := t.first; row <= t.last; row++ {
		name := text(t.sheet, row, col)
		if code := withoutBrackets(name); r.isCode(code) {
			name = code
		}
		if name != "" && r.words.isBlank(name) { // "-" is no tag: it goes by what it is called
			name = cmp.Or(text(t.sheet, row, t.column("material")), text(t.sheet, row, t.column("type")))
		}
		if t.ownCells(row) < 2 || name == "" {
			if n := t.ownCells(row); n == 1 {
				section = r.rowText(t, row)
			}
			continue
		}
		if names := r.namesOfRow(t, row, name); len(names) > 1 {
			r.shareRow(t, row, section, names)
			continue
		}
		first, again := r.lex.tags[fold(name)]
		if again && r.tellsMore(t, row, first) {
			r.productRows[t.row(row)] = first
			r.layers[first] = r.layers[first] || r.isLayer(t, row)
			continue
		}
		p := newProduct(name, t.sheet.Name, row)
		p.section, p.home = section, t
		if again {
			p.ID = fmt.Sprintf("%s@%s!%d", name, t.sheet.Name, row)
			p.Repeats, r.sched.Products[first].Repeats = true, true
		}
		at := len(r.sched.Products)
		r.sched.Products = append(r.sched.Products, p)
		r.productRows[t.row(row)] = at
		r.layers[at] = r.isLayer(t, row)
		r.lex.add(name, at)
		if alias := t.column("alias"); alias > 0 && alias != col {
			r.lex.addAlias(text(t.sheet, row, alias), at)
		}
	}
}

// longTitle is how many words a title over a heading has that tells more than what the
// rows are: "Sealants", "Joint sealants", never "Data from the makers' sheets".
const longTitle = 3

// title is what stands alone over the heading of a table, or in its first row.
func (t *table) title() string {
	row := t.head[0]
	if len(t.head) == 1 || len(t.filledIn(row)) > 1 {
		row--
	}
	alone := t.filledIn(row)
	if len(alone) != 1 || len(strings.Fields(alone[0])) > longTitle {
		return ""
	}
	return alone[0]
}

// filledIn lists the texts of a row of the sheet.
func (t *table) filledIn(row int) []string {
	var out []string
	for _, r := range t.sheet.Rows {
		if r.Number != row {
			continue
		}
		for c := range filled(r.Cells) {
			out = append(out, strings.Join(strings.Fields(c.Value), " "))
		}
	}
	return out
}

// row is the address of a row.
func (t *table) row(row int) At { return At{Sheet: t.sheet.Name, Row: row} }

// tellsMore holds for a row with the tag of a product that another table has, which
// adds to it: the two tables tell different things, and name no two materials.
func (r *reader) tellsMore(t *table, row, product int) bool {
	home := r.sched.Products[product].home
	if home == nil || home == t || slices.ContainsFunc(t.data(), func(slot string) bool { return home.column(slot) > 0 }) {
		return false
	}
	here, there := r.vocab.Family(t.saysIs(row)), r.vocab.Family(home.saysIs(r.sched.Products[product].Row))
	return here == there || vague(here) || vague(there)
}

func vague(family string) bool { return family == "" || strings.HasSuffix(family, "-unspecified") }

// saysIs is what a row of product data says that its product is.
func (t *table) saysIs(row int) string {
	var words []string
	for _, slot := range []string{"type", "material"} {
		if col := t.column(slot); col > 0 {
			words = append(words, text(t.sheet, row, col))
		}
	}
	return strings.Join(words, ", ")
}

// isLayer holds for a row of product data of a sheet, a strip or a fluid, or of the
// same as the row above.
func (r *reader) isLayer(t *table, row int) bool {
	words := t.saysIs(row)
	if r.words.sameLead.MatchString(words) {
		above, known := r.productRows[t.row(row-1)]
		return known && r.layers[above]
	}
	switch m := r.vocab.Describe(words); r.role(m.Family, m.Class, words) {
	case "membrane", "flashing", "transition", "roofing", "film", "coating":
		return true
	}
	return false
}

// productsOf goes through the rows of a table with the products that they are of.
func (r *reader) productsOf(t *table) iter.Seq2[int, *Product] {
	return func(yield func(int, *Product) bool) {
		for row := t.first; row <= t.last; row++ {
			i, ok := r.productRows[t.row(row)]
			if ok && !yield(row, &r.sched.Products[i]) {
				return
			}
			for _, i := range r.rowMates[t.row(row)] {
				if !yield(row, &r.sched.Products[i]) {
					return
				}
			}
		}
	}
}

// productAbove is the product of the row above in the same table, nil if none.
func (r *reader) productAbove(at At) *Product {
	for at.Row--; at.Row > 0; at.Row-- {
		if i, ok := r.productRows[at]; ok {
			return &r.sched.Products[i]
		}
	}
	return nil
}

// describe reads what each product of a table is. References to other products
// ("as AB-1") take the words of the cell they point at.
func (r *reader) describe(t *table) {
	for row, p := range r.productsOf(t) {
		for n, col := range t.nums {
			slot := t.cols[n].Slot
			if slot == "" || slot == "reference" {
				continue
			}
			words := r.bedWords(slot, r.productWords(p, t.row(row), slot, text(t.sheet, row, col)))
			if _, again := p.Cells[slot]; !again && p.Sheet == t.sheet.Name { // the cells of a product are those of its own sheet
				p.Cells[slot] = t.at(row, col).Cell
			}
			if words != "" && !r.words.isBlank(words) && words != p.Texts[slot] {
				p.Texts[slot] = strings.TrimPrefix(p.Texts[slot]+"; "+words, "; ")
			}
		}
		p.beside, p.kind = t.unheaded(row), text(t.sheet, row, t.column("type"))
		r.identify(p)
	}
}

// unheaded is the first cell of a row under a heading that told nothing, or a name
// ("Product" beside "Type").
func (t *table) unheaded(row int) string {
	if t.column("type") == 0 {
		return ""
	}
	for n, col := range t.nums {
		switch t.cols[n].Slot {
		case "", "remark", "alias", "material":
			if words := text(t.sheet, row, col); words != "" {
				return words
			}
		}
	}
	return ""
}
