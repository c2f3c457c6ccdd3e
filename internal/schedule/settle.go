package schedule

import (
	"slices"
	"strconv"
	"strings"
)

// release takes the slot of the material, or of what it goes on, from a column whose
// heading says little and whose cells name no material ("Sheet / detail" above
// A-511/1, "Sub" above the names of firms).
func (r *reader) release(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		if !r.saysLittle(c) {
			continue
		}
		filled, named := 0, 0
		for words := range r.said(t, t.nums[i]) {
			filled++
			if len(r.lex.find(words)) > 0 {
				named++
			}
		}
		if filled >= 3 && named*10 <= filled {
			c.Slot, c.Confidence, c.Why = "", 0, ""
			if c.gloss != "" { // a note may tell what its heading does not
				r.takeFreeSlot(t, i)
			}
		}
	}
}

// saysLittle holds for a heading that makes a column one of materials only where
// its cells name some.
func (r *reader) saysLittle(c *Column) bool {
	vague := slices.Contains(r.head.vague, strings.ToLower(c.Heading)) || slices.Contains(r.head.vague, strings.ToLower(c.own))
	return c.Slot == "substrate" && vague ||
		c.Slot == "material" && c.Confidence < sureMaterial && !holdsAny(r.head.usual(headingWords(c.Heading)), r.head.sheets)
}

// sureMaterial is the confidence from which a heading for the material stands
// against cells that name none.
const sureMaterial = 0.95

// foreignCodes takes the slot of the tag from codes that the product data does not
// have: those of build-ups are their marks, others (of costs, of drawings) tell
// nothing where another column holds its tags.
func (r *reader) foreignCodes(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot == "tag" && len(r.sched.Products) == 0 && t.column("layers") > 0 && t.has("mark", "group", "material") == 0 {
			c.Slot, c.Why = "mark", "it names what is built of the layers in its row"
		}
		if c.Slot != "tag" || len(r.sched.Products) == 0 {
			continue
		}
		filled, known := r.knownTags(t, t.nums[i])
		if known*10 > filled {
			continue
		}
		if t.column("layers") > 0 && t.has("mark", "group") == 0 { // "Tag" over W1, W2
			c.Slot, c.Why = "mark", "it names what is built of the layers in its row"
			continue
		}
		if filled < 3 {
			continue
		}
		for j := range t.cols {
			if filled, known := r.knownTags(t, t.nums[j]); j != i && filled >= 3 && known*2 > filled {
				c.Slot, c.Confidence, c.Why = "", 0, ""
				break
			}
		}
	}
}

// knownTags counts the filled cells of a column, and those that are a tag of the
// product data.
func (r *reader) knownTags(t *table, col int) (filled, known int) {
	for words := range r.said(t, col) {
		filled++
		if _, is := r.lex.tags[fold(words)]; is {
			known++
		}
	}
	return filled, known
}

// tagColumn takes a column of marks that are tags of the product data for the
// tag column that it is, and one of marks that begin with them ("MB-2, two coats")
// for that of the materials.
func (r *reader) tagColumn(t *table) {
	defer r.kindsInstalled(t)
	defer r.subjectTagged(t)
	defer r.ledByTags(t)
	for i := range t.cols {
		c := &t.cols[i]
		doubtful := c.Slot == "type" && (c.Confidence < sureType || t.has("material", "tag") == 0)
		if !mayBeTags[c.Slot] && !doubtful || t.column("tag") > 0 {
			continue
		}
		if slot, why := r.byContent(t, i); slot == "tag" {
			c.Slot, c.Why = slot, why
		}
	}
}

// ledByTags takes marks that begin with tags of the product data for the materials
// of a table that names them nowhere else.
func (r *reader) ledByTags(t *table) {
	col := t.column("mark")
	if col == 0 || t.has("material", "tag") > 0 {
		return
	}
	filled, led := 0, 0
	for words := range r.said(t, col) {
		filled++
		first, _, _ := strings.Cut(words, " ")
		if _, is := r.lex.tags[fold(strings.TrimRight(first, ",;:"))]; is {
			led++
		}
	}
	if filled < 3 || led*2 <= filled {
		return
	}
	c := &t.cols[slices.Index(t.nums, col)]
	c.Slot, c.Why = "material", "its cells begin with tags of the product data"
}

// kindsInstalled takes what a thing is for what is installed, in a table that names it
// nowhere else: "Type" over AB-1 and AB-2 strip, "What is in".
func (r *reader) kindsInstalled(t *table) {
	col := t.column("type")
	if col == 0 || t.has("material", "tag", "specified", "submitted", "layers") > 0 || t.column("order") > 0 && !t.layerHeaded() {
		return
	}
	filled, named := 0, 0
	for words := range r.said(t, col) {
		if r.words.isDitto(words) {
			continue
		}
		filled++
		if len(r.lex.find(words)) > 0 {
			named++
		}
	}
	if filled == 0 || named*2 < filled {
		return
	}
	t.stacked = t.layered() // "Layer" over what each is of
	c := &t.cols[slices.Index(t.nums, col)]
	c.Slot, c.Why = "material", c.Why+", and no other column names what is installed"
}

// hasTags holds for a table whose column of materials holds tags of the product data.
func (r *reader) hasTags(t *table) bool {
	col := t.column("material")
	if col == 0 {
		return false
	}
	filled, known := r.knownTags(t, col)
	return known*2 > filled
}

// layerNumbers takes numbers that begin anew at one within a table for those of
// layers, and the codes left of them that stay the same meanwhile for assemblies.
func (r *reader) layerNumbers(t *table) {
	number := t.column("mark")
	if number == 0 || t.column("order") > 0 || t.kind != kindSchedule || r.ownBeds(t) {
		return
	}
	runs, before := 0, 0
	for row := t.first; row <= t.last; row++ {
		words := text(t.sheet, row, number)
		if t.ownCells(row) < 2 || words == "" {
			continue
		}
		n, err := strconv.Atoi(words)
		switch {
		case err == nil && n == 1:
			runs++
		case err != nil || n != before+1:
			return
		}
		before = n
	}
	if runs < 2 {
		return
	}
	if was := t.column("group"); was > 0 && was < number && !r.steady(t, was, number) && t.column("place") == 0 && r.steadyBeside(t, was, number) {
		t.cols[slices.Index(t.nums, was)].Slot = "place" // the building, of several walls
	}
	for i := range t.cols {
		switch c := &t.cols[i]; {
		case t.nums[i] == number:
			c.Slot, c.Why = "order", c.Why+", and the numbers begin anew"
		case t.nums[i] < number && t.column("group") == 0 && r.steady(t, t.nums[i], number):
			c.Slot, c.Why = "group", c.Why+"; it stays the same while the numbers of layers run"
		case c.Slot == "layers":
			c.Slot = "type" // each row is one layer
		}
	}
}

// ownBeds holds for a table of which most rows tell what their sheet goes on and what it
// meets: each is a detail of its own and not a layer over the row above.
func (r *reader) ownBeds(t *table) bool {
	beds, meets := t.column("substrate"), t.column("touches")
	if beds == 0 || meets == 0 {
		return false
	}
	rows, told := 0, 0
	for row := t.first; row <= t.last; row++ {
		if t.ownCells(row) < 2 {
			continue
		}
		if rows++; !r.words.isBlank(text(t.sheet, row, beds)) && !r.words.isBlank(text(t.sheet, row, meets)) {
			told++
		}
	}
	return told*3 > rows*2
}

// steadyBeside holds where another column left of the numbers of layers is steady.
func (r *reader) steadyBeside(t *table, but, number int) bool {
	return slices.ContainsFunc(t.nums, func(col int) bool { return col != but && col < number && r.steady(t, col, number) })
}

// steady holds for a column whose cells change only where the numbers begin anew.
func (r *reader) steady(t *table, col, number int) bool {
	last := ""
	for row := t.first; row <= t.last; row++ {
		words := text(t.sheet, row, col)
		if t.ownCells(row) < 2 || words == "" {
			continue
		}
		if (text(t.sheet, row, number) == "1") == (words == last) {
			return false
		}
		last = words
	}
	return last != ""
}

// mayBeTags are slots by their headings whose cells may be tags all the same.
var mayBeTags = map[string]bool{"mark": true, "reference": true, "order": true, "site": true}

// sureType is the confidence from which a heading for what a thing is stands
// against cells that are tags.
const sureType = 0.6

// ageOfRow takes a column of a schedule that is headed as the age of concrete, and with no word
// for a least one, for that of the concrete in its rows.
func (r *reader) ageOfRow(t *table) {
	i := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "concrete_age" })
	if i < 0 || t.column("age") > 0 || strings.Contains(t.cols[i].Heading, "%") {
		return
	}
	words := headingWords(t.cols[i].Heading)
	if !holdsAny(words, r.head.lower) && !holdsAny(words, r.head.roles.Asked) && !holdsAny(words, r.head.roles.Allowed) && !holdsAny(words, []string{"before"}) {
		t.cols[i].Slot, t.cols[i].Why = "age", t.cols[i].Why+", and no word for the least that is asked"
	}
}

// bedColumn takes what stands behind the sheets for their substrate, in a table
// of primed sheets that has no other column for it.
func (r *reader) bedColumn(t *table) {
	if t.column("primer") == 0 || t.column("substrate") > 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "behind" {
			c.Slot, c.Why = "substrate", c.Why+", and no other column tells what the sheets go on"
			return
		}
	}
}

// conditionColumn takes a column "condition" before that of the substrate for
// what is being built there: the state of the substrate is told after it.
func (r *reader) conditionColumn(t *table) {
	beds := 0
	for i := len(t.cols) - 1; i >= 0; i-- {
		switch c := &t.cols[i]; {
		case c.Slot != "substrate":
		case beds > 0 && strings.HasSuffix(c.Why, `"condition"`):
			c.Slot, c.Why = "place", c.Why+", and what it goes on is told after it"
		default:
			beds++
		}
	}
}

// primerBesideBed takes a column that is headed as a surface and its primer for that of the
// primers, where another tells what the line goes on: "Goes on", then "Surface & primer".
func (r *reader) primerBesideBed(t *table) {
	if t.column("primer") == 0 {
		t.besideBed("primer", ", with the primer", func(c Column) bool { return r.head.names(c.Heading, "primer") })
	}
}

// againstColumn takes a column that says what a line goes against, beside one of what it goes
// on ("Back-up", then "Goes against", or "Goes on", then "Bears on / next to"), for what the
// line touches.
func (r *reader) againstColumn(t *table) {
	t.besideBed("touches", "", func(c Column) bool {
		return strings.HasSuffix(c.Why, `against"`) || slices.ContainsFunc(strings.Split(c.Heading, "/"), func(part string) bool {
			found := r.head.match(part)
			return len(found) > 0 && found[0].slot == "touches" && found[0].score >= leastNamed
		})
	})
}

// besideBed gives another slot to the columns that were taken for the substrate and may be
// something else, where one that may not tells what the line goes on; why adds to what is
// told of the reason.
func (t *table) besideBed(slot, why string, other func(Column) bool) {
	if !slices.ContainsFunc(t.cols, func(c Column) bool { return c.Slot == "substrate" && !other(c) }) {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "substrate" && other(*c) {
			c.Slot, c.Why = slot, c.Why+why+", and what it goes on is told beside it"
		}
	}
}

// airUnit takes a column of air figures for that, where its heading names the
// test or more besides ("Air L/(s·m²) @75 Pa, std", "Air cfm/sf, other").
func (r *reader) airUnit(t *table) {
	if t.column("air") > 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; (c.Slot == "air_test" || c.Slot == "remark") && r.unitIn(c.Heading, "air_permeance", "air") != "" {
			c.Slot = "air"
		}
	}
}

// placedSheets takes "placed" between priming and cover, in a table with no other
// installation, for the day the sheet is placed and not its concrete.
func (r *reader) placedSheets(t *table) {
	if t.column("install") > 0 || t.column("cover") == 0 || t.has("tag", "material") == 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "placed" && r.onlyPlaced(c.Heading, t.cols[slices.Index(t.nums, t.column("cover"))].Heading) {
			c.Slot, c.Why = "install", c.Why+", and no other column is the installation"
		}
	}
}

// doneSheets takes the one day that a table tells of its sheets before their cover for that of
// their installation, where its heading tells the end of the work: "Done", "Completed".
func (r *reader) doneSheets(t *table) {
	if t.has("install", "placed", "works") > 0 || t.column("cover") == 0 || t.has("tag", "material") == 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "finish" {
			c.Slot, c.Why = "install", c.Why+", and no other column is the installation"
			return
		}
	}
}

// onlyPlaced holds for "placed", or "placed: on", without a word for concrete; what stands
// over the day of the cover too ("Planned weeks") tells of neither.
func (r *reader) onlyPlaced(heading, cover string) bool {
	shared := headingWords(cover)
	words := slices.DeleteFunc(headingWords(heading), func(w string) bool { return r.head.bare[w] || slices.Contains(shared, w) })
	return len(words) == 1
}

// actualDays finds the columns of days on which the work was done, beside those of
// the days that were planned for it: what was done counts, where it is filled in.
func (r *reader) actualDays(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		of, is := lessWords(r.head.actual, c.Heading)
		bare := of == "" && c.Slot == "finish" // "Done" beside "Planned": one matter, not the two ends of the work
		if c.Slot != "" && !bare || !is || !r.mostly(t.stretch(), t.nums[i], "date") {
			continue
		}
		for j := range t.cols {
			p := &t.cols[j]
			if meant, is := lessWords(r.head.planned, p.Heading); is && meant == of && isDateSlot(p.Slot) && i != j {
				if t.actual == nil {
					t.actual = map[int]int{}
				}
				t.actual[t.nums[j]] = t.nums[i]
				c.Slot, c.Why = "reference", "what was done counts before what was planned, where it is filled in"
			}
		}
	}
}

// otherPlaces takes further columns that tell of the place for that: "Grid | Where".
func (r *reader) otherPlaces(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot != "" || t.column("place") == 0 || !r.suits(t.stretch(), t.nums[i], r.head.bySlot["place"]) {
			continue
		}
		for _, g := range slices.Concat(r.head.match(c.Heading), r.head.match(c.own)) {
			if g.slot == "place" && g.score >= 1 {
				c.Slot, c.Confidence, c.Why = g.slot, 1, "heading says \""+g.words+"\", beside another that tells of the place"
			}
		}
	}
}

// lessWords takes some words out of a heading; false where it has none of them.
func lessWords(words map[string]bool, heading string) (rest string, had bool) {
	all := headingWords(heading)
	kept := slices.DeleteFunc(slices.Clone(all), func(w string) bool { return words[w] })
	return strings.Join(kept, " "), len(kept) < len(all)
}

// fillUnknown gives columns without a telling heading a slot by what stands
// under them and by what is still missing.
func (r *reader) fillUnknown(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot != "" {
			continue
		}
		slot, why := r.byUnit(t, t.nums[i], *c)
		if slot == "" {
			slot, why = r.byContent(t, i)
		}
		if slot == "" {
			slot, why = r.byHeadNoun(t, i)
		}
		if slot == "" && r.callsItems(t, c) {
			slot, why = "type", "its heading calls the items, and another column has their marks"
		}
		if slot != "" {
			c.Slot, c.Confidence, c.Why = slot, 0.4, why
		}
	}
}

// callsItems holds for a second column that is headed as a mark is ("Item" beside "Line"),
// in a table that tells nowhere else what its rows are.
func (r *reader) callsItems(t *table, c *Column) bool {
	return t.kind == kindSchedule && t.column("mark") > 0 && t.column("type") == 0 && strings.EqualFold(c.Heading, "item")
}

// likeRepeated gives a column that is not known the slot that it has under the same
// heading, where that stands again further up or down.
func (r *reader) likeRepeated(all []*table) {
	for _, t := range all {
		for _, other := range all {
			if t == other || t.kind != other.kind || !slices.EqualFunc(t.cols, other.cols, func(a, b Column) bool { return a.Heading == b.Heading }) {
				continue
			}
			for i := range t.cols {
				c, like := &t.cols[i], other.cols[i]
				if c.Slot == "" && c.Heading != "" && like.Slot != "" && (r.head.bySlot[like.Slot].many || t.column(like.Slot) == 0) {
					c.Slot, c.Confidence, c.Why = like.Slot, like.Confidence, like.Why+", in another part of the table"
				}
			}
		}
	}
}

// appliedTo takes a column that reads as one of substrates for the upper end of the
// temperatures at application, where its heading has their unit and figures stand under
// it: "Apply from (°C)", "Apply to (°C)".
func (r *reader) appliedTo(t *table) {
	i := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "accepts" })
	if i < 0 || t.has("apply_max") > 0 {
		return
	}
	c := &t.cols[i]
	if unit := r.unitIn(c.Heading, "temperature", "apply_max"); unit != "" && r.mostly(t.stretch(), t.nums[i], "temperature") {
		c.Slot, c.Unit, c.Why = "apply_max", unit, c.Why+", and temperatures stand under it"
	}
}

// bedsOfData takes a column of product data that is headed as what a product is made
// of ("base"), and whose cells name substrates, for those that the products go on.
func (r *reader) bedsOfData(t *table) {
	if t.has("accepts", "accepts_primer") > 0 {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot != "chemistry" {
			continue
		}
		if r.mostlyBeds(t, t.nums[i]) {
			c.Slot, c.Why = "accepts", c.Why+", and substrates stand under it"
		}
	}
}

// mostlyBeds holds for a column of product data of whose telling cells most name what
// sheets go on.
func (r *reader) mostlyBeds(t *table, col int) bool {
	telling, beds := 0, 0
	for row := t.first; row <= t.last; row++ {
		words := text(t.sheet, row, col)
		if r.words.isBlank(words) || r.words.isNone(words) {
			continue
		}
		telling++
		if slices.ContainsFunc(r.lex.find(words), func(m mention) bool { return r.words.roleByClass[m.mat.Class] == "substrate" }) {
			beds++
		}
	}
	return beds >= 2 && beds*2 > telling
}
