package schedule

import (
	"slices"
	"strconv"
	"strings"

	"abut/internal/regexp"
)

// sheetRoles are the roles of what a row of a schedule may be about.
var sheetRoles = []string{"membrane", "flashing", "film", "transition"}

// subject finds the column that says what each row is about where no heading does:
// the first unknown one whose cells mostly name sheets, or materials where the rows are layers.
func (r *reader) subject(t *table) {
	roles := sheetRoles
	switch {
	case t.has("material", "tag", "specified") > 0 || slices.ContainsFunc(t.cols, surelyTyped):
		return
	case t.column("order") > 0:
		roles = nil // a layer may be anything
	case t.column("sealant") > 0:
		return // a register of joints is about what it seals with
	}
	if r.brandColumn(t) {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "" && r.mostlyNames(t, t.nums[i], roles...) {
			c.Slot, c.Confidence, c.Why = "material", 0.4, materialsUnder
			return
		}
	}
}

// brandColumn takes a column that is headed as the names of products are in their data
// ("Brand name") for what the rows are about.
func (r *reader) brandColumn(t *table) bool {
	if t.has(lineSlots...) == 0 {
		return false
	}
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot != "" && (c.Slot != "reference" || c.Confidence >= sureHeading) || !r.columnHolds(t.stretch(), t.nums[i], "") || r.namesNothing(t.stretch(), t.nums[i]) {
			continue
		}
		for _, g := range r.head.match(c.Heading) {
			if g.slot == "alias" && g.score >= sureHeading {
				c.Slot, c.Confidence, c.Why = "material", g.score-headNoun, g.why()+", and no other column tells what the rows are about"
				return true
			}
		}
	}
	return false
}

// materialsUnder is why a column that no heading tells is what the rows are about.
const materialsUnder = "materials stand under it, and no heading tells which column names them"

// subjectTagged gives back a column that was taken for what the rows are about only for the materials
// under it, once another is known to hold the tags of the product data: it may name their beds.
func (r *reader) subjectTagged(t *table) {
	if t.column("tag") == 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Why == materialsUnder {
			c.Slot, c.Confidence, c.Why = "", 0, ""
		}
	}
}

// productColumn takes a column without a slot whose cells mostly begin with products of the
// workbook's data for what the rows are about, where the one taken for it tells only what
// kind of part each is: "Component" over "Strip, door head", then "Product".
func (r *reader) productColumn(t *table) {
	was := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "material" && c.Confidence < certain && c.parts == nil })
	if was < 0 || t.has("tag", "specified") > 0 || len(r.sched.Products) == 0 {
		return
	}
	rows, own := r.ledByProducts(t, t.nums[was])
	if own*5 > rows {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		filled, named := r.ledByProducts(t, t.nums[i])
		if c.Slot != "" || named < minNamed || named*3 < filled*2 || filled*3 < rows*2 {
			continue
		}
		if is := r.contents(t, t.nums[i]); is.most(is.tags) {
			return // the tags beside what the rows are about
		}
		c.Slot, c.Confidence, c.Why = "material", 0.9, "products of the workbook's data stand under it"
		r.kindColumn(t, was)
		return
	}
}

// minNamed is how many cells with a product tell that a column holds little else.
const minNamed = 3

// kindColumn is the slot of a column that tells what kind of part each row is: the type,
// as long as no other column tells that; codes of walls under "Type" are what the rows
// stand under.
func (r *reader) kindColumn(t *table, i int) {
	slot := "type"
	if j := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "type" }); j >= 0 {
		switch {
		case t.column("group") == 0 && r.holdsWalls(t, t.nums[j]):
			t.cols[j].Slot, t.cols[j].Why = "group", t.cols[j].Why+", and codes of walls stand under it"
		case t.column("place") == 0:
			slot = "place"
		}
	}
	t.cols[i].Slot, t.cols[i].Why = slot, t.cols[i].Why+", and another column names the products"
}

// ledByProducts counts the telling cells of a column, and those that begin with a product
// of the workbook's data.
func (r *reader) ledByProducts(t *table, col int) (filled, named int) {
	for words := range r.said(t, col) {
		if r.words.isNone(words) || r.words.isDitto(words) {
			continue
		}
		filled++
		found := r.lex.findTags(words)
		if len(found) > 0 && found[0].product >= 0 && found[0].start == 0 {
			named++
		}
	}
	return filled, named
}

// surelyTyped holds for a column that surely says what each thing is.
func surelyTyped(c Column) bool { return c.Slot == "type" && c.Confidence >= sureType }

// mostlyNames holds for a column in which most cells name first a material of one
// of the roles (of any where there are none), and few are sentences.
func (r *reader) mostlyNames(t *table, col int, roles ...string) bool {
	filled, fit, long := 0, 0, 0
	for row := t.first; row <= t.last; row++ {
		words := text(t.sheet, row, col)
		if r.words.isBlank(words) || r.words.isNone(words) || r.words.isDitto(words) || t.ownCells(row) < 2 {
			continue
		}
		filled++
		if role := r.roleNamed(words); slices.Contains(roles, role) || len(roles) == 0 && role != "" {
			fit++
		}
		if len(words) > sentence {
			long++
		}
	}
	return filled >= 2 && fit*10 >= filled*6 && long*2 < filled
}

// sentence is the length from which a cell is more likely a sentence than a name.
const sentence = 45

// roleNamed is the role of the material that words name first, "" if none.
func (r *reader) roleNamed(words string) string {
	found := r.lex.find(words)
	if len(found) == 0 {
		return ""
	}
	class := found[0].mat.Class
	if i := found[0].product; i >= 0 {
		class = r.sched.Products[i].Class
	}
	return r.words.roleByClass[class]
}

// firstNames takes the first column of product data for the names of the products
// where no other column holds them: "Sealant", "Board", "Fluid".
func (r *reader) firstNames(t *table) {
	if r.itemNames(t); t.has("tag", "mark", "alias") > 0 || len(t.cols) == 0 || t.column("material") > 0 && !t.weaklyNamed() {
		return
	}
	c, seen := &t.cols[0], map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		name := fold(text(t.sheet, row, t.nums[0]))
		if name == "" {
			continue
		}
		if seen[name] || startsWithDigit(name) {
			return
		}
		seen[name] = true
	}
	if len(seen) > 1 && (c.Slot == "" || nameSlots[c.Slot]) {
		if at := t.column("material"); at > 0 {
			kinds := &t.cols[slices.Index(t.nums, at)]
			kinds.Slot, kinds.Why = "type", kinds.Why+", and the first column names the products"
		}
		c.Slot, c.Confidence, c.Why = "material", 0.4, "first column of product data, and different in every row"
	}
}

// weaklyNamed holds for a column of names that is known by less than half of its heading, right
// of the first column.
func (t *table) weaklyNamed() bool {
	at := t.column("material")
	return at != t.nums[0] && t.cols[slices.Index(t.nums, at)].Confidence < leastNamed && t.column("type") == 0
}

// itemNames takes items of product data that are called by names and no codes, in a table that
// names them nowhere else, for the names of the products: "Item" above "Alder Sheet 40".
func (r *reader) itemNames(t *table) {
	if t.has("material", "alias") > 0 {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		items := c.Slot == "mark" && t.column("tag") == 0 || c.Slot == "used_at" && lastWord(c.Heading) == "item"
		if items && r.namesOfItems(t, t.nums[i]) {
			c.Slot, c.Why = "material", c.Why+", and names stand under it"
			return
		}
	}
}

// namesOfItems holds for a column in which each telling cell stands once, and most are of
// several words or long.
func (r *reader) namesOfItems(t *table, col int) bool {
	seen, names := map[string]bool{}, 0
	for words := range r.said(t, col) {
		if seen[words] {
			return false
		}
		if seen[words] = true; len(words) > longCode || strings.Contains(words, " ") && countWords(words) > 0 {
			names++
		}
	}
	return len(seen) > 1 && names*3 >= len(seen)*2
}

// nameSlots are slots by a heading that may name the sort of all products below it.
var nameSlots = map[string]bool{"suits": true, "primer": true, "type": true}

// leftmostMark gives the mark to a column of codes left of all known ones, from a
// column whose heading tells of a drawing as well ("Det.").
func (r *reader) leftmostMark(t *table) {
	if len(t.cols) > 0 && (t.cols[0].Slot == "reference" || headsRows[t.cols[0].Slot] && r.numbersRows(t)) && t.column("mark") == 0 && r.ownCodes(t, t.nums[0]) {
		t.cols[0].Slot, t.cols[0].Why = "mark", t.cols[0].Why+", and codes of the rows stand under it, each once"
		return
	}
	if len(t.cols) == 0 || t.cols[0].Slot != "" || !r.ownCodes(t, t.nums[0]) {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot == "mark" && slices.ContainsFunc(r.head.match(c.Heading), func(g guess) bool { return g.slot == "reference" }) {
			c.Slot, c.Why = "reference", c.Why+", and codes of the rows stand in the first column"
			t.cols[0].Slot, t.cols[0].Confidence, t.cols[0].Why = "mark", 0.4, "codes in the first column, each once"
			return
		}
	}
}

// headsRows are slots by a heading that may name what the rows are of, over their numbers:
// "Tie-in" above TI-1, "Comment" above 1.
var headsRows = map[string]bool{"remark": true, "touches": true, "site": true, "place": true, "status": true, "value": true, "order": true}

// numbersRows holds for a first column of numbers, or of letters with one, that rise row by
// row, beside others that tell what the rows are about.
func (r *reader) numbersRows(t *table) bool {
	if t.has("material", "tag", "specified") == 0 || t.cols[0].Slot == "place" && t.has("place", "group") < 2 || t.cols[0].Slot == "order" && t.column("group") > 0 && t.column("place") == 0 {
		return false
	}
	last, n := 0, 0
	for words := range r.said(t, t.nums[0]) {
		m := rowNumber.FindStringSubmatch(words)
		if m == nil {
			return false
		}
		at, err := strconv.Atoi(m[1])
		if err != nil || at <= last {
			return false
		}
		last, n = at, n+1
	}
	return n >= 3
}

// rowNumber is the number of a row, with the letters of what the rows are.
var rowNumber = regexp.MustCompile(`^(?:[A-Z]{1,3}[- ]?)?(\d{1,4})$`)

// ownCodes holds for a column of short codes, each once.
func (r *reader) ownCodes(t *table, col int) bool {
	seen := map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		code := text(t.sheet, row, col)
		if t.ownCells(row) < 2 || code == "" {
			continue
		}
		if seen[code] || len(code) > longCode || r.isDate(code) {
			return false
		}
		seen[code] = true
	}
	return len(seen) > 1
}

// siteReviews takes "reviewed" in a table without a way out and back of papers for
// a look at the work.
func (r *reader) siteReviews(t *table) {
	if t.has("sent", "approved") > 0 || t.column("inspected") > 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "returned" && slices.Contains(r.head.seen, headingWords(c.Heading)[0]) {
			c.Slot, c.Why = "inspected", c.Why+", and nothing was sent for review"
		}
	}
}

// ownMarks takes tags that are different in every row and that no product data
// explains for the marks of the rows, where another column names the materials.
func (r *reader) ownMarks(t *table) {
	col := t.column("tag")
	if col == 0 || t.column("mark") > 0 || t.column("material") == 0 || !r.ownCodes(t, col) {
		return
	}
	if _, known := r.knownTags(t, col); known > 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "tag" {
			c.Slot, c.Why = "mark", c.Why+", and each stands once and is no product's"
		}
	}
}
