package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/material"
	"abut/internal/regexp"
)

func newProduct(tag, sheet string, row int) Product {
	maker, _, _ := strings.Cut(fold(tag), " ")
	return Product{
		maker: maker, ID: tag, Tag: tag, Sheet: sheet, Row: row, Cells: map[string]string{}, Texts: map[string]string{},
		Figures: map[string]Figure{}, Accepts: []Acceptance{}, KeepOff: []Target{}, Suits: []Target{}, Signals: []Said{},
		Traits: []string{}, Keys: []string{},
	}
}

// nameColumn is the column that product rows are called by.
func (t *table) nameColumn() int {
	for _, slot := range []string{"tag", "mark", "material", "alias", "type"} {
		if col := t.column(slot); col > 0 {
			return col
		}
	}
	return t.nums[0]
}

// namesWritten writes out the names of products and of beds that a cell cuts short.
func (r *reader) namesWritten(slot, words string) string {
	return r.bedWords(slot, r.runsWritten(r.longNames(r.tagsWritten(words))))
}

// bedWords writes out the office's short words for what products go on, and over
// which primer.
func (r *reader) bedWords(slot, words string) string {
	switch slot {
	case "accepts_primer", "primer":
		return r.noneFirst(r.spelled(words, "substrate"))
	case "accepts", "accepts_none":
		return r.spelled(words, "substrate")
	}
	return words
}

// productWords resolves "as FM-1, low-temp. grade" to the words of FM-1's cell
// followed by the rest.
func (r *reader) productWords(p *Product, row At, slot, words string) string {
	words = r.ofGrade(p, r.ownPart(p, slot, words))
	if at := r.words.sameLead.FindStringIndex(words); at != nil {
		if above := r.productAbove(row); above != nil {
			return strings.Trim(above.Texts[slot]+", "+words[at[1]:], ", ")
		}
	}
	if m := r.words.gradeOf.FindStringSubmatchIndex(words); m != nil && (slot == "type" || slot == "material") {
		if i, end, known := r.namedAt(p, words, m[4], m[5]); known && r.sched.Products[i].ID != p.ID {
			return strings.Trim(r.sched.Products[i].Texts[slot]+", "+words[m[2]:m[3]]+", "+strings.Trim(words[end:], " ,;."), ", ")
		}
	}
	same := r.words.sameAs
	if slot == "type" || slot == "material" {
		same = slices.Concat(same, r.words.productAs)
	}
	for _, pat := range same {
		m := pat.FindStringSubmatch(words)
		if m == nil {
			continue
		}
		i, end, known := r.namedAt(p, words, strings.LastIndex(m[0], m[1]), len(m[0]))
		if !known || r.sched.Products[i].ID == p.ID {
			continue
		}
		rest, then := strings.Trim(words[end:], " ,;."), ", "
		if slot == "remark" {
			then = "; " // what comes after "not on foam" is no more of that list
		}
		return strings.Trim(r.sched.Products[i].Texts[slot]+then+rest, ",; ")
	}
	return words
}

// namedAt finds the product that words from start on name: by its whole tag, which
// may be several words, by the one word up to end, or by what a product of the same
// maker is called without him ("as TB" for "Corvid TB").
func (r *reader) namedAt(p *Product, words string, start, end int) (product, after int, known bool) {
	text := words[start:]
	for cut := len(text); cut > 0; cut = strings.LastIndexAny(text[:cut], " ,;.") {
		if i, ok := r.lex.tags[fold(text[:cut])]; ok {
			return i, start + cut, true
		}
	}
	maker, _, _ := strings.Cut(p.Tag, " ")
	i, ok := r.lex.tags[fold(maker+" "+words[start:end])]
	return i, end, ok
}

// forWhat is what a description says its product is for: "1 part, for brick joints".
var forWhat = regexp.MustCompile(`(?i)\bfor\b[^,;]*`)

// ofMaker is what a description says whose make its product is: "the SBS sheet maker's own".
var ofMaker = regexp.MustCompile(`(?i)(?:\b(?:of|by|from)\s+)?\b(?:the\s+)?(?:[\pL-]+\s+){1,4}(?:makers?|manufacturers?|mfrs?|suppliers?)(?:['’]s|['’])?(?:\s+own)?`)

// withoutMaker leaves out of a description whose make its product is, where its name
// tells another kind: "Edge mastic", "the SBS sheet maker's own".
func (r *reader) withoutMaker(parts []string, alias string) []string {
	named := r.vocab.Describe(alias).Class
	if named == "" || !ofMaker.MatchString(strings.Join(parts, ", ")) || named == r.vocab.Describe(parts...).Class {
		return parts
	}
	var own []string
	for _, part := range parts {
		own = append(own, ofMaker.ReplaceAllString(part, ""))
	}
	return own
}

// withoutUse names a product by its description and its name without what it is for,
// where that alone would make it a base that work goes on.
func (r *reader) withoutUse(parts []string, alias string, m material.Material) material.Material {
	var own []string
	for _, part := range append(slices.Clone(parts), alias) {
		own = append(own, forWhat.ReplaceAllString(part, ""))
	}
	if as := r.vocab.Describe(own...); as.Family != "" {
		return as
	}
	return m
}

// withoutBond names a board of insulation without what it is stuck on with: "XPS 50 mm,
// foam-safe adhesive".
func (r *reader) withoutBond(parts []string) []string {
	own := slices.Clone(parts)
	for i, part := range parts {
		if board := bondedWith.ReplaceAllString(part, ""); board != part && r.vocab.Describe(board).Class == "insulation" {
			own[i] = board
		}
	}
	return own
}

// bondedWith is an adhesive that the words for a board end in.
var bondedWith = regexp.MustCompile(`(?i)(?:\s*[,;+(]|\s+(?:w/|with|in|on))\s*[^,;+(]*\badhesive\)?\s*$`)

// identify names the family of a product from its description, its chemistry
// and its own name.
func (r *reader) identify(p *Product) {
	var parts []string
	for _, slot := range []string{"type", "material", "chemistry", "facer", "mark", "tag"} {
		if w := p.Texts[slot]; w != "" && !(len(parts) > 0 && r.isTag(w)) {
			parts = append(parts, w)
		}
	}
	parts = r.withoutMaker(parts, p.Texts["alias"])
	if len(parts) > 0 && !sealantWord.MatchString(parts[0]) {
		parts[0] = r.words.prose.carried.ReplaceAllString(parts[0], "$1 sheet on $2") // "butyl on polyethylene film"
	}
	parts = r.withoutBond(parts)
	parts, m := r.byShortWords(parts, r.vocab.Describe(parts...))
	if p.section != "" && (m.Family == "" || m.Class == "sealant") { // "two-part urethane" under "Membranes"
		m = r.underHead(parts, p.section, m)
	}
	if m.Family == "" || strings.HasSuffix(m.Family, "-unspecified") {
		// "Larch Primer", water-borne: the name says what the description leaves out
		if named := r.vocab.Describe(append(parts, p.Texts["alias"], p.Tag)...); named.Family != "" && !(p.coined && m.Class != "" && named.Class != m.Class) {
			m = named
		}
		// "polyurethane", sealant: the name is the stuff, and the description only the kind
		if named := r.vocab.Describe(append(slices.Clone(parts), p.Tag)...); strings.HasSuffix(m.Family, "-unspecified") && named.Class == m.Class {
			m = named
		}
		if m.Family == "" && len(m.Traits) == 0 && tradeWords.MatchString(p.Tag) {
			m = r.vocab.Describe(p.Tag)
		}
	}
	if r.role(m.Family, m.Class, "") == "substrate" && forWhat.MatchString(strings.Join(parts, ", ")) {
		m = r.withoutUse(parts, p.Texts["alias"], m)
	}
	if m.Family == "" && len(m.Traits) > 0 {
		m, p.byRow = r.byRestOfRow(p, parts, m), true
	}
	if m.Class == "sealant" && r.isFilm(p, parts) { // "two-part urethane", so many mils thick and so many days bare
		if as := r.vocab.Describe(strings.Join(parts, " ") + " fluid-applied membrane"); as.Class == "membrane" {
			m = as
		}
	}
	p.Name = cmp.Or(p.Texts["type"], p.Texts["material"], p.Tag)
	if as, words := r.byCellBeside(p, m); as.Family != "" {
		m, p.Name = as, words
	}
	p.Family, p.Class, p.Traits, p.Keys = m.Family, m.Class, oneGrade(m.Traits), oneGrade(m.Keys)
	p.Role = r.role(p.Family, p.Class, p.Name)
	if p.Class != "primer" && r.primersOnly(p.section) {
		r.asPrimer(p, p.Name)
	}
}

// byShortWords reads a description again with the office's short words written out, where it tells
// no kind without them: "FLM AVB, vapor-tight", and "FLM = fluid-applied membrane".
func (r *reader) byShortWords(parts []string, m material.Material) ([]string, material.Material) {
	if len(r.short) == 0 || !strings.HasSuffix(m.Family, "-unspecified") {
		return parts, m
	}
	long := slices.Clone(parts)
	for i, part := range parts {
		long[i] = r.spelled(part, "material")
	}
	if slices.Equal(long, parts) {
		return parts, m
	}
	if as := r.vocab.Describe(long...); as.Family != "" && as.Class == m.Class {
		return long, as
	}
	return parts, m
}

// kindWords is how many words a cell has at most that says what a product is; a remark
// has more.
const kindWords = 6

// byCellBeside is what a product of a lower part of a list is by another cell of its row,
// where the columns of that part are not those of the heading above: under "Type" stands
// what it is used with ("SH-1 laps, metal") or nothing that names a stuff ("frames"), and
// what it is stands where others have their maker's name ("butyl tape").
func (r *reader) byCellBeside(p *Product, m material.Material) (as material.Material, words string) {
	words = p.beside
	if p.section == "" || words == "" || len(strings.Fields(words)) > kindWords || m.Family != "" && !r.namesOthers(p, p.kind) {
		return as, ""
	}
	if len(r.lex.findTags(r.tagsWritten(words))) > 0 || strings.Contains(p.kind, " for ") {
		return as, ""
	}
	as = r.vocab.Describe(words)
	if vague(as.Family) || !slices.Contains(besideClasses, as.Class) {
		return material.Material{}, ""
	}
	return as, words
}

// besideClasses are the classes of what such lower parts list: what seals and joins.
var besideClasses = []string{"sealant", "mastic", "tape", "adhesive", "primer"}

// namesOthers holds for words that begin with the tag of another product.
func (r *reader) namesOthers(p *Product, words string) bool {
	for _, found := range r.lex.findTags(r.tagsWritten(words)) {
		if found.start == 0 && found.product >= 0 && r.sched.Products[found.product].ID != p.ID {
			return true
		}
	}
	return false
}

// tradeWords are the name of a product in words of the trade and not of a maker: "hot
// rubberized asphalt", of which the description says "from a kettle at 375 F".
var tradeWords = regexp.MustCompile(`^\p{Ll}+(?:[ -]\p{Ll}+)+$`)

// byRestOfRow is what a product is of which the chemistry is told, by the rest of its
// row: that of a sheet, or that of a sealant, which has no thickness of its own and no
// count of days in the sun.
func (r *reader) byRestOfRow(p *Product, parts []string, m material.Material) material.Material {
	if _, limited := p.Cells["exposure_days"]; !limited {
		return m
	}
	if r.isBead(p, parts) {
		own := strings.Split(strings.Join(parts, ", "), ", ")
		if as := r.vocab.Describe(append(own, "sealant")...); as.Class == "sealant" {
			return as
		}
		if as := r.vocab.Describe(strings.Join(m.Traits, " ") + " sealant"); as.Class == "sealant" { // "butyl metal-lap sealant"
			return as
		}
	}
	if as := r.vocab.Describe(append(parts, "self-adhered sheet")...); as.Family != "" {
		return as
	}
	return m
}

// isBead holds for what is called a sealant, and for what has a dash for its thickness
// and no days in the sun.
func (r *reader) isBead(p *Product, words []string) bool {
	if sealantWord.MatchString(strings.Join(words, " ")) {
		return true
	}
	_, thick := p.Cells["thickness"]
	return thick && r.words.isBlank(p.Texts["thickness"]) && !strings.ContainsAny(p.Texts["exposure_days"], "0123456789")
}

// isFilm holds for what the words for it call no sealant and its data takes for a film:
// with its thickness and the days that it may stay bare.
func (r *reader) isFilm(p *Product, words []string) bool {
	thick := r.phrase.Quantities(filmFirst.ReplaceAllString(p.Texts["thickness"], "$1 $3 $2"), "")
	if len(thick) == 0 || !filmUnits.MatchString(strings.ToLower(thick[0].Unit)) || sealantWord.MatchString(strings.Join(words, " ")) {
		return false
	}
	return !r.words.isBlank(p.Texts["exposure_days"])
}

var sealantWord = regexp.MustCompile(`(?i)seala?nt|caulk|\bbeads?\b|joint|glaz`)

// primersOnly holds for a heading over rows of primers and nothing besides, which
// "Primers + sealants" is not.
func (r *reader) primersOnly(section string) bool {
	return section != "" && len(headingParts(section)) == 0 && r.vocab.Describe(section).Class == "primer"
}

// underHead is what a product is by its words, which tell only the stuff, and the
// heading over its rows, which tells the kind.
func (r *reader) underHead(parts []string, section string, m material.Material) material.Material {
	if len(headingParts(section)) > 0 {
		return m // "Boards, mats and metal"
	}
	as := r.vocab.Describe(section, strings.Join(parts, ", "))
	if as.Family == "" || strings.HasSuffix(as.Family, "-unspecified") || as.Class != r.vocab.Describe(section).Class {
		return m
	}
	return as
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
	columns := make([]source, len(t.cols))
	for n, col := range t.cols {
		columns[n] = source{slot: col.Slot, unit: col.Unit, second: col.second, heading: col.Heading, mixed: headingParts(col.Heading) != nil, goes: r.head.goesFirst(col.Heading)}
		columns[n].worded = columns[n].mixed && col.Slot == "keep_off" && r.barsInWords(t, t.nums[n])
	}
	for row, p := range r.productsOf(t) {
		var primer []source // it speaks of the substrates, which may stand right of it
		for n, col := range t.nums {
			c := columns[n]
			c.at = t.at(row, col)
			cell, ok := t.sheet.At(row, col)
			if !ok {
				continue
			}
			c.cell, c.text = cell, r.namesWritten(c.slot, r.productWords(p, t.row(row), c.slot, strings.TrimSpace(cell.Value)))
			switch {
			case r.words.isBlank(c.text):
			case c.slot == "primer":
				primer = append(primer, c)
			default:
				r.productCell(p, c)
			}
		}
		for _, c := range primer {
			r.productCell(p, c)
		}
		r.madeFor(p)
	}
}

// barsInWords holds for a column of which a good part of the cells say in words what is
// barred ("keep off EPDM"): a bare list there bars nothing.
func (r *reader) barsInWords(t *table, col int) bool {
	filled, worded := 0, 0
	for row := t.first; row <= t.last; row++ {
		if words := text(t.sheet, row, col); words != "" && !r.words.isBlank(words) {
			filled++
			if r.words.hasAny(words, r.words.accept.Off) {
				worded++
			}
		}
	}
	return worded*3 > filled
}

// stated takes the figure of a cell in a column of figures.
func (r *reader) stated(p *Product, c source) {
	fig, ok := figureOf[c.slot]
	if !ok {
		return
	}
	if c.slot == "lap" {
		c = r.bothLaps(p.Figures, c)
	}
	if f, said := r.figure(c, fig.kind); said {
		if c.slot == "thickness" {
			r.placed(&f, c.text, fig.kind)
		}
		if c.slot == "lap" && r.head.endsAlone(c.heading) { // the sides may have a figure of their own
			p.Figures[figureOf[endLaps].key] = f
			keep(p.Figures, fig.key, f)
		} else {
			p.Figures[endOf(fig.key, f)] = f
		}
		r.upperFigure(p.Figures, c, f)
		if p.Cells[c.slot] == "" && c.at.Sheet == p.Sheet {
			p.Cells[c.slot], p.Texts[c.slot] = c.at.Cell, c.text
		}
	}
}

func (r *reader) productCell(p *Product, c source) {
	for _, one := range r.heats(c) {
		r.stated(p, one)
	}
	r.ageOfBed(p, c)
	r.aside(p, c)
	r.figuresNamed(p.Figures, c.text, c.at, r.words.figures.Products)
	for _, cl := range r.hear(c.text).clauses {
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
		r.primerInRemark(p, c)
	}
}
