package schedule

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"abut/internal/material"
	"abut/internal/phrase"
)

// productNames registers the tags of a product table, so that all other cells
// can be read with them. It runs over every product table before any is read.
func (r *reader) productNames(t *table) {
	col := t.nameColumn()
	for row := t.first; row <= t.last; row++ {
		name := strings.TrimSpace(text(t.sheet, row, col))
		if t.ownCells(row) < 2 || name == "" {
			continue
		}
		p := newProduct(name, t.sheet.Name, row)
		if first, again := r.lex.tags[fold(name)]; again {
			p.ID = fmt.Sprintf("%s@%s!%d", name, t.sheet.Name, row)
			p.Repeats, r.sched.Products[first].Repeats = true, true
		}
		r.sched.Products = append(r.sched.Products, p)
		r.lex.add(name, len(r.sched.Products)-1)
	}
}

func newProduct(tag, sheet string, row int) Product {
	return Product{
		ID: tag, Tag: tag, Sheet: sheet, Row: row, Cells: map[string]string{}, Texts: map[string]string{},
		Figures: map[string]Figure{}, Accepts: []Acceptance{}, KeepOff: []Target{}, Suits: []Target{}, Signals: []Said{},
		Traits: []string{}, Keys: []string{},
	}
}

// ownTags makes a schedule its own product data where the workbook has no other:
// a code that stands beside a material, again and again, stands for it in the
// cells of other rows too.
func (r *reader) ownTags(t *table) {
	code, name := t.codeColumn(r), t.column("material")
	if code < 0 || name == 0 {
		return
	}
	last := ""
	for row := t.first; row <= t.last; row++ {
		tag, words := text(t.sheet, row, t.nums[code]), text(t.sheet, row, name)
		if !r.words.isDitto(words) && words != "" {
			last = words
		}
		if _, known := r.lex.tags[fold(tag)]; known || t.ownCells(row) < 2 || !codeShape.MatchString(tag) || last == "" {
			continue
		}
		p := newProduct(tag, t.sheet.Name, row)
		p.Texts["type"] = last
		p.Cells["type"] = t.at(row, name).Cell
		r.identify(&p)
		r.ownFigures(t, row, &p)
		r.sched.Products = append(r.sched.Products, p)
		r.lex.add(tag, len(r.sched.Products)-1)
	}
	t.cols[code].Slot, t.cols[code].Why = "tag", "codes that stand for the materials beside them"
	r.lex.done()
}

var codeShape = regexp.MustCompile(`^[A-Za-z0-9]{1,4}[-.][A-Za-z0-9]{1,4}$`)

// codeColumn finds the column of short codes that repeat from row to row.
func (t *table) codeColumn(r *reader) int {
	for i, c := range t.cols {
		if c.Slot != "mark" && c.Slot != "tag" && c.Slot != "" {
			continue
		}
		n, seen := 0, map[string]bool{}
		for row := t.first; row <= t.last; row++ {
			if v := text(t.sheet, row, t.nums[i]); codeShape.MatchString(v) {
				n++
				seen[v] = true
			}
		}
		if n >= 4 && len(seen)*3 <= n*2 {
			return i
		}
	}
	return -1
}

// ownFigures takes the limits that stand in the row itself.
func (r *reader) ownFigures(t *table, row int, p *Product) {
	for i, col := range t.nums {
		fig, ok := figureOf[t.cols[i].Slot]
		cell, there := t.sheet.At(row, col)
		if ok && there {
			p.Texts[t.cols[i].Slot] = strings.TrimSpace(cell.Value)
		}
		if !ok || !there || r.words.isDitto(cell.Value) || t.cols[i].Slot == "lap" {
			continue
		}
		src := source{slot: t.cols[i].Slot, unit: r.unitIn(t.cols[i].Heading, fig.kind, t.cols[i].Slot), at: t.at(row, col), cell: cell, text: strings.TrimSpace(cell.Value)}
		if f, said := r.figure(src, fig.kind); said && f.Problem == "" {
			p.Figures[fig.key] = f
			p.Cells[t.cols[i].Slot] = src.at.Cell
		}
	}
}

// nameColumn is the column that product rows are called by.
func (t *table) nameColumn() int {
	for _, slot := range []string{"tag", "mark", "material", "type"} {
		if col := t.column(slot); col > 0 {
			return col
		}
	}
	return t.nums[0]
}

// describe reads what each product of a table is. References to other products
// ("as AB-1") take the words of the cell they point at.
func (r *reader) describe(t *table) {
	for i := range r.sched.Products {
		p := &r.sched.Products[i]
		if p.Sheet != t.sheet.Name || p.Row < t.first || p.Row > t.last {
			continue
		}
		for n, col := range t.nums {
			slot := t.cols[n].Slot
			if slot == "" || slot == "reference" {
				continue
			}
			words := r.productWords(p, slot, text(t.sheet, p.Row, col))
			if _, again := p.Cells[slot]; !again {
				p.Cells[slot] = t.at(p.Row, col).Cell
			}
			if words != "" && !r.words.isBlank(words) {
				p.Texts[slot] = strings.TrimPrefix(p.Texts[slot]+"; "+words, "; ")
			}
		}
		r.identify(p)
	}
}

// productWords resolves "as FM-1, low-temp. grade" to the words of FM-1's cell
// followed by the rest.
func (r *reader) productWords(p *Product, slot, words string) string {
	if at := r.words.sameLead.FindStringIndex(words); at != nil {
		if above := r.productAbove(p); above != nil {
			return strings.Trim(above.Texts[slot]+", "+words[at[1]:], ", ")
		}
	}
	for _, pat := range r.words.sameAs {
		m := pat.FindStringSubmatch(words)
		if m == nil {
			continue
		}
		i, known := r.lex.tags[fold(m[1])]
		if !known || r.sched.Products[i].ID == p.ID {
			continue
		}
		rest := strings.Trim(words[len(m[0]):], " ,;.")
		return strings.Trim(r.sched.Products[i].Texts[slot]+", "+rest, ", ")
	}
	return words
}

// productAbove is the product of the row above in the same table, nil if none.
func (r *reader) productAbove(p *Product) *Product {
	for i := range r.sched.Products {
		if o := &r.sched.Products[i]; i > 0 && o.Sheet == p.Sheet && o.Row == p.Row && r.sched.Products[i-1].Sheet == p.Sheet {
			return &r.sched.Products[i-1]
		}
	}
	return nil
}

// identify names the family of a product from its description, its chemistry
// and its own name.
func (r *reader) identify(p *Product) {
	var parts []string
	for _, slot := range []string{"type", "material", "chemistry", "facer", "mark", "tag"} {
		if w := p.Texts[slot]; w != "" && !(len(parts) > 0 && r.isTag(w)) {
			parts = append(parts, w)
		}
	}
	m := r.vocab.Describe(parts...)
	if m.Family == "" || strings.HasSuffix(m.Family, "-unspecified") {
		// "Larch Primer", water-borne: the name says what the description leaves out
		if named := r.vocab.Describe(append(parts, p.Tag)...); named.Family != "" {
			m = named
		}
	}
	if m.Family == "" && len(m.Traits) > 0 {
		// the chemistry is told, and the rest of the row is that of a sheet
		if _, sheet := p.Cells["exposure_days"]; sheet {
			if as := r.vocab.Describe(append(parts, "self-adhered sheet")...); as.Family != "" {
				m = as
			}
		}
	}
	p.Name = firstNonEmpty(p.Texts["type"], p.Texts["material"], p.Tag)
	p.Family, p.Class, p.Traits, p.Keys = m.Family, m.Class, oneGrade(m.Traits), oneGrade(m.Keys)
	p.Role = r.role(p.Family, p.Class, p.Name)
}

// primersByUse takes products that the primer columns of the schedule name, and
// that nothing else tells the kind of, for primers.
func (r *reader) primersByUse(t *table) {
	col := t.column("primer")
	for row := t.first; col > 0 && row <= t.last; row++ {
		for _, m := range r.lex.findTags(text(t.sheet, row, col)) {
			if m.product < 0 {
				continue
			}
			p := &r.sched.Products[m.product]
			if p.Class != "" && p.Class != "other" && !strings.HasSuffix(p.Family, "-unspecified") {
				continue
			}
			as := r.vocab.Describe("primer, "+firstNonEmpty(p.Texts["type"], p.Name), p.Texts["chemistry"])
			if as.Class == "primer" {
				p.Family, p.Class, p.Traits, p.Keys, p.Role = as.Family, as.Class, as.Traits, as.Keys, "primer"
			}
		}
	}
}

// oneGrade drops the standard grade where a description taken over from
// another product ("as R-01, low-temperature grade") names a second one.
func oneGrade(keys []string) []string {
	grades := 0
	for _, k := range keys {
		if strings.HasPrefix(k, "grade-") {
			grades++
		}
	}
	if grades < 2 {
		return keys
	}
	return slices.DeleteFunc(slices.Clone(keys), func(k string) bool { return k == "grade-standard" })
}

func firstNonEmpty(words ...string) string {
	for _, w := range words {
		if w != "" {
			return w
		}
	}
	return ""
}

// role is the job of a material by its class and family and the words for it.
func (r *reader) role(family, class, words string) string {
	role := r.words.roleByFamily[family]
	if role == "" {
		role = r.words.roleByClass[class]
	}
	if role == "" {
		role = "other"
	}
	if role == "membrane" && r.words.hasAny(words, r.words.flashing) {
		role = "flashing"
	}
	return role
}

// limits reads the figures, acceptances and keep-away lists of the products of
// a table, once every product is known by its family.
func (r *reader) limits(t *table) {
	for i := range r.sched.Products {
		p := &r.sched.Products[i]
		if p.Sheet != t.sheet.Name || p.Row < t.first || p.Row > t.last {
			continue
		}
		for n, col := range t.nums {
			c := source{slot: t.cols[n].Slot, unit: t.cols[n].Unit, at: t.at(p.Row, col)}
			cell, ok := t.sheet.At(p.Row, col)
			if !ok {
				continue
			}
			c.cell, c.text = cell, r.productWords(p, c.slot, strings.TrimSpace(cell.Value))
			if !r.words.isBlank(c.text) {
				r.productCell(p, c)
			}
		}
	}
}

func (r *reader) productCell(p *Product, c source) {
	if fig, ok := figureOf[c.slot]; ok {
		if f, said := r.figure(c, fig.kind); said {
			p.Figures[fig.key] = f
			if c.slot == "apply" && f.Max != nil && f.Min != nil && *f.Max > *f.Min {
				upper := f
				upper.Min = f.Max
				p.Figures["apply_max_c"] = upper
			}
		}
	}
	for _, cl := range r.phrase.Read(c.text, &heard{lex: r.lex}, phrase.Options{}) {
		for _, s := range cl.Signals {
			if s.If {
				continue // "unless tented", "if frost": said of a case, not of this one
			}
			p.Signals = append(p.Signals, Said{ID: s.ID, No: s.No, Text: s.Text, Slot: c.slot, At: c.at})
		}
	}
	switch c.slot {
	case "accepts", "accepts_primer":
		r.accepts(p, c)
	case "accepts_none":
		r.acceptsNone(p, c)
	case "primer":
		r.primerRule(p, c)
	case "keep_off":
		p.KeepOff = append(p.KeepOff, r.targets(p, c)...)
	case "suits":
		p.Suits = append(p.Suits, r.suited(p, c)...)
	case "remark":
		r.remarkTargets(p, c)
	}
}

// targets lists the materials that a keep-away or suits cell names.
func (r *reader) targets(p *Product, c source) []Target {
	var out []Target
	for _, part := range r.words.splitList(c.text) {
		except := r.words.hasAny(part.text, r.words.accept.Fine)
		part.text = r.words.before(part.text, r.words.accept.Unless)
		for _, m := range r.near(p, part.text) {
			tg := r.target(m, part.text[m.start:m.end], c.at)
			tg.Except = except
			out = append(out, tg)
		}
	}
	return out
}

// suited lists what a primer or sealant is for; "tested compatible with" is no
// exception there.
func (r *reader) suited(p *Product, c source) []Target {
	out := r.targets(p, c)
	for i := range out {
		out[i].Except = false
	}
	return out
}

// remarkTargets takes "EPDM may bear on it" and "No: coal tar" from notes.
func (r *reader) remarkTargets(p *Product, c source) {
	for _, part := range r.words.splitList(c.text) {
		fine, not := r.words.hasAny(part.text, r.words.accept.Fine), r.words.hasAny(part.text, r.words.accept.Not)
		if !fine && !not {
			continue
		}
		for _, m := range r.near(p, part.text) {
			tg := r.target(m, part.text[m.start:m.end], c.at)
			tg.Except = fine && !not
			p.KeepOff = append(p.KeepOff, tg)
		}
	}
}

func (r *reader) target(m mention, words string, at At) Target {
	tg := Target{Text: words, Keys: []string{}, Products: []string{}, At: at}
	if m.product >= 0 {
		tg.Products = append(tg.Products, r.sched.Products[m.product].ID)
		return tg
	}
	tg.Keys = r.targetKeys(m.mat)
	return tg
}

// targetKeys are the keys by which a list means a material: its family and the
// trait that names its chemistry, never a trait that many share. A generic word
// ("wood", "clean metal") means all that have its trait.
func (r *reader) targetKeys(m material.Material) []string {
	if m.Family == "" {
		return append([]string{}, m.Traits...)
	}
	if strings.HasSuffix(m.Family, "-unspecified") && len(m.Traits) > 0 {
		return []string{m.Traits[0]}
	}
	keys := []string{m.Family}
	if len(m.Traits) > 0 && m.Traits[0] != "metal" && m.Traits[0] != "wood" {
		keys = append(keys, m.Traits[0])
	}
	return append(keys, r.words.alsoMeans[m.Family]...)
}

// near finds mentions in a cell of product data, where products of one maker
// are also called by the last words of their names ("Prime W" or "W").
func (r *reader) near(p *Product, text string) []mention {
	found := r.lex.findListed(text)
	maker, _, _ := strings.Cut(fold(p.Tag), " ")
	for _, short := range r.lex.shorts {
		for _, i := range r.lex.short[short] {
			if first, _, _ := strings.Cut(fold(r.sched.Products[i].Tag), " "); first != maker {
				continue
			}
			found = addShort(found, text, short, i, r.sched.Products[i].Tag)
		}
	}
	slices.SortStableFunc(found, func(a, b mention) int { return a.start - b.start })
	return found
}

// addShort adds a product called by its short name where nothing else stands;
// a single letter must stand in capitals.
func addShort(found []mention, text, short string, product int, tag string) []mention {
	low := foldKeep(text)
	for from := 0; ; {
		i := strings.Index(low[from:], short)
		if i < 0 {
			return found
		}
		i += from
		from = i + len(short)
		if !wholeWord(low, i, from) || len(short) == 1 && text[i:from] == short {
			continue
		}
		free := true
		for k, m := range found {
			if m.start < from && i < m.end {
				free = m.product < 0 && m.end-m.start <= len(short) && !m.unknownTag || m.unknownTag
				if free {
					found = append(found[:k], found[k+1:]...)
				}
				break
			}
		}
		if free {
			found = append(found, mention{start: i, end: from, product: product, tag: tag})
		}
	}
}
