package schedule

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
)

// kinds of table.
const (
	kindSchedule = "schedule"
	kindProducts = "products"
	kindPours    = "pours"
	kindOther    = "other"
)

// productSlots are columns that only product data has; lineSlots those that
// only a schedule has.
var (
	productSlots = []string{"apply", "apply_min", "apply_max", "service_max", "exposure_days", "air", "vapor", "voc",
		"keep_off", "accepts", "accepts_primer", "suits", "chemistry", "report", "air_test"}
	figureSlots = productSlots[:8] // those of figures
	lineSlots   = []string{"substrate", "primer", "touches", "left", "right", "top", "bottom", "front", "behind", "edge", "lap",
		"sealant", "order", "layers", "cover"}
	readingSlots = []string{"reading_surface", "reading_air", "reading_dew", "reading_rh", "wood_moisture", "shelter"}
)

// classify tells by its shape what a table is, and never by its sheet's name,
// and gives its columns the slots of that sort.
func (r *reader) classify(t *table) {
	sort := kindSchedule
	r.bareEnds(t)
	figures, dates := t.has(productSlots...), r.dateColumns(t)
	if dates == 0 && t.has(figureSlots...) > 0 {
		figures += r.limitSigns(t)
	}
	placed := figures < dataColumns && t.column("substrate") > 0 && t.has("place", "group") > 0 // limits beside what is built somewhere
	if figures >= 2 && dates == 0 && !placed || figures >= dataColumns && dates <= 1 && t.has("install", "finish", "cover") == 0 {
		sort = kindProducts
	}
	if figures > 0 && dates == 0 && r.namesEach(t) {
		sort = kindProducts
	}
	listed, beds := r.headedByKind(t), r.keyOfBeds(t)
	if listed >= 0 || beds > 0 {
		sort = kindProducts
	}
	t.columnsOf(r, sort)
	if beds > 0 {
		c := &t.cols[slices.Index(t.nums, beds)]
		c.Slot, c.Confidence, c.Why = "type", 0.9, "beside the codes of a list it says what each of them is"
	}
	if listed >= 0 {
		c := &t.cols[listed]
		c.Slot, c.Confidence, c.Why = "tag", 0.9, "codes stand under the name of what they are, and what each is beside them"
	}
	if sort == kindSchedule {
		r.subject(t)
	} else {
		r.firstNames(t)
		r.genericNames(t)
	}
	if t.kind = t.kindOf(r, sort); t.kind == kindOther && r.isKey(t) {
		t.kind = kindProducts
		t.columnsOf(r, kindProducts) // "keep off" is no drawing reference there
	}
	r.airColumn(t)
	t.soleLap()
}

// namesEach holds for a table that tells of no place, day, neighbor or edge, and whose
// first column is different in every row and no number: each row tells one thing's data.
// Rows that go by codes, as marks are ("Q1"), are works.
func (r *reader) namesEach(t *table) bool {
	if len(t.cols) == 0 || t.has(placedSlots...) > 0 || t.cols[0].Slot != "" && !namesFirst[t.cols[0].Slot] {
		return false
	}
	seen := map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		name := fold(text(t.sheet, row, t.nums[0]))
		if name == "" {
			continue
		}
		if seen[name] || startsWithDigit(name) || r.isTag(name) || t.cols[0].Slot == "mark" && r.isCode(name) {
			return false
		}
		seen[name] = true
	}
	return len(seen) > 1
}

// placedSlots are those of columns that tell what is built of a product, and namesFirst those
// that the names of products may stand under.
var (
	placedSlots = []string{"group", "place", "order", "install", "cover", "finish", "planned_open", "touches", "left", "right", "top",
		"bottom", "front", "behind", "layers", "specified", "end_dam", "inspected", "lap"}
	namesFirst = map[string]bool{"material": true, "alias": true, "mark": true, "type": true, "tag": true}
)

// headedByKind finds the first column of a list whose tags are headed by the kind of what
// is listed ("Primers" above P-1, P-2), with what each is beside it; -1 if it is none.
func (r *reader) headedByKind(t *table) int {
	name := cmp.Or(t.column("type"), t.column("material"))
	if len(t.cols) < 2 || t.cols[0].Slot != "primer" && t.cols[0].Slot != "sealant" || name == 0 {
		return -1
	}
	if t.has(lineSlots...) > 1 || t.has("tag", "mark", "group", "install") > 0 || r.dateColumns(t) > 0 {
		return -1
	}
	seen, named := map[string]bool{}, 0
	for row := t.first; row <= t.last; row++ {
		tag, words := text(t.sheet, row, t.nums[0]), text(t.sheet, row, name)
		if tag == "" && words == "" {
			continue
		}
		if !r.isCode(tag) || seen[tag] {
			return -1
		}
		if seen[tag] = true; r.vocab.Family(words+" "+t.cols[0].Slot) != "" {
			named++
		}
	}
	if len(seen) < 2 || named*2 <= len(seen) {
		return -1
	}
	return 0
}

// keyOfBeds holds for a list of codes with what each is beside it, headed as what the work
// goes on, and nothing else known: "Code", "Substrate" above "C1", "cast concrete". It gives the column of the latter, 0 if
// the table is no such list.
func (r *reader) keyOfBeds(t *table) int {
	tag, bed := t.column("tag"), t.column("substrate")
	if tag == 0 || bed == 0 || slices.ContainsFunc(t.cols, func(c Column) bool {
		return c.Slot != "" && c.Slot != "tag" && c.Slot != "substrate" && c.Slot != "remark"
	}) {
		return 0
	}
	seen, named := map[string]bool{}, 0
	for row := t.first; row <= t.last; row++ {
		if t.ownCells(row) < 2 {
			continue
		}
		code, words := text(t.sheet, row, tag), text(t.sheet, row, bed)
		if words == "" || seen[code] || len(code) > longestCode || code != strings.ToUpper(code) || !codeShaped.MatchString(code) {
			return 0 // "PLY" is a code too where others are
		}
		if seen[code] = true; r.vocab.Family(words) != "" {
			named++
		}
	}
	if len(seen) < 2 || named*2 <= len(seen) {
		return 0
	}
	return bed
}

// soleLap takes the least lap that a schedule tells for its lap, where no column of
// laps stands beside it that it could be held against.
func (t *table) soleLap() {
	for i := range t.cols {
		if t.cols[i].Slot == "min_lap" && t.column("lap") == 0 {
			t.cols[i].Slot = "lap"
		}
	}
}

func (t *table) columnsOf(r *reader, sort string) {
	b := r.assign(t.stretch(), t.head[0], len(t.head), sort, t.gloss)
	t.cols, t.nums, t.own = b.cols, b.nums, nil
	r.bareEnds(t)
}

// genericNames takes a column of product data that names materials, under a heading that
// could be of the products too, for what they are, where the column taken for them holds
// makers' names: "Product", "Material" above "Alder 40", "butyl sheet".
func (r *reader) genericNames(t *table) {
	name := t.column("material")
	if name == 0 || t.column("type") > 0 || r.mostlyNames(t, name) {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		alike := func(g guess) bool { return g.slot == "material" && g.score >= sureHeading }
		if c.Slot == "" && slices.ContainsFunc(r.head.match(c.Heading), alike) && r.mostlyNames(t, t.nums[i]) {
			c.Slot, c.Confidence, c.Why = "type", 0.7, "materials stand under it, and names of products in another column"
			return
		}
	}
}

// bareEnds takes two columns side by side of which the headings tell only that they are
// the least and the most for the temperatures at which products go on, where the notes
// say what unit temperatures are in, and the rows tell how long each may stay open.
func (r *reader) bareEnds(t *table) {
	if r.unitsNamed["temperature"] == "" || t.has("exposure_days") == 0 || t.has("apply", "apply_min", "apply_max", "install", "cover") > 0 {
		return
	}
	for i := range t.cols {
		if i == 0 || !r.areEnds(t, i-1, i) {
			continue
		}
		for k, slot := range []string{"apply_min", "apply_max"} {
			c := &t.cols[i-1+k]
			c.Slot, c.Confidence, c.Why = slot, 0.7, "of two columns the one end and the other, and a note tells the unit of temperatures"
		}
		return
	}
}

// areEnds holds for two columns under nothing but a word for the lower end and one for the
// upper, with rising figures in each row that has both.
func (r *reader) areEnds(t *table, low, high int) bool {
	lower, upper := &t.cols[low], &t.cols[high]
	if lower.Slot != "" || upper.Slot != "" || !slices.Contains(r.head.lower, strings.ToLower(strings.Trim(lower.Heading, ". "))) || !slices.Contains(r.head.upper, strings.ToLower(strings.Trim(upper.Heading, ". "))) {
		return false
	}
	both := 0
	for row := t.first; row <= t.last; row++ {
		one, other := text(t.sheet, row, t.nums[low]), text(t.sheet, row, t.nums[high])
		if r.words.isBlank(one) && r.words.isBlank(other) {
			continue
		}
		least, err := strconv.ParseFloat(one, 64)
		most, bad := strconv.ParseFloat(other, 64)
		if err != nil || bad != nil || least >= most {
			return false
		}
		both++
	}
	return both > 1
}

// isKey holds for a key of tags and what they stand for, where most of what it
// says names a material, alone or by the title over them ("waterborne acrylic" under
// "Primers"), or a figure of theirs stands beside; a legend of other short words is none.
func (r *reader) isKey(t *table) bool {
	tag, name := t.column("tag"), cmp.Or(t.column("type"), t.column("material"))
	if tag == 0 || name == 0 {
		return false
	}
	rows, named, title := 0, 0, t.title()
	for row := t.first; row <= t.last; row++ {
		words := text(t.sheet, row, name)
		if text(t.sheet, row, tag) == "" || words == "" {
			continue
		}
		if rows++; r.vocab.Family(words) != "" || title != "" && r.vocab.Family(words+" "+title) != "" {
			named++
		}
	}
	return rows > 1 && (named*2 > rows || t.has(figureSlots...) > 0 && r.dateColumns(t) == 0)
}

// dataColumns is how many columns of product data a table has that is product
// data though one of its columns holds dates, as those of submittals do.
const dataColumns = 4

func (t *table) kindOf(r *reader, sort string) string {
	line := t.has(lineSlots...)
	dates := t.has("install", "cover", "finish")
	subject := t.has("material", "tag", "type", "specified", "mark", "alias")
	if t.has("left", "right", "sealant") == 3 {
		subject++ // a register of joints is about what it seals with
	}
	switch {
	case sort == kindProducts && subject > 0:
		return kindProducts
	case t.column("placed") > 0 && dates == 0 && line <= 1 && t.has("specified", "planned_open") == 0:
		return kindPours
	case t.column("layers") > 0 && t.column("group") > 0: // a list of wall types
		return kindSchedule
	case subject > 0 && line >= 1, dates > 0 && line >= 1, t.column("order") > 0 && subject > 0:
		return kindSchedule
	case dates > 0 && t.has("material", "tag") > 0 && t.has("group", "place") > 0: // what is put on somewhere on a day
		return kindSchedule
	case t.has("sent", "returned", "approved", "delivered") > 1 && t.has("material", "tag") > 0: // a log of papers on what is put on
		return kindSchedule
	case t.column("material") > 0 && (t.column("specified") > 0 || t.has(readingSlots...) >= 2 && !t.ofRooms(r)): // what is offered for it, or a log of the work
		return kindSchedule
	}
	return kindOther
}

// ofRooms holds for a table of the air that rooms are held at: it tells the inside of
// each, and no day, where a log of the work tells what the air was on one.
func (t *table) ofRooms(r *reader) bool {
	if t.has("install", "cover", "finish", "reading_surface") > 0 || r.dateColumns(t) > 0 {
		return false
	}
	for i, c := range t.cols {
		inner := slices.ContainsFunc(headingWords(c.Heading), func(w string) bool { return r.head.inner[w] })
		if inner && r.columnHolds(t.stretch(), t.nums[i], "temperature") {
			return true
		}
	}
	return false
}

// dateColumns counts the columns that mostly hold dates.
func (r *reader) dateColumns(t *table) int {
	n := 0
	for _, col := range t.nums {
		if r.mostly(t.stretch(), col, "date") {
			n++
		}
	}
	return n
}

// byUnit takes the unit in the heading of a column of figures for what it is: "GL"
// over names of places is no unit.
func (r *reader) byUnit(t *table, col int, c Column) (slot, why string) {
	for kind, slot := range r.head.byUnit {
		if t.column(slot) == 0 && kind != "note" {
			if unit := r.unitIn(c.Heading, kind, slot); unit != "" && r.columnHolds(t.stretch(), col, kind) {
				return slot, "figures in " + unit
			}
		}
	}
	return r.byTemperature(t, c)
}

// byTemperature tells the columns of temperatures apart by the words for
// service and for the lower and upper end.
func (r *reader) byTemperature(t *table, c Column) (slot, why string) {
	words := headingWords(strings.TrimSuffix(c.Heading, c.gloss))
	united := r.unitIn(c.Heading, "temperature", "") != "" || r.bareEnd(t, c)
	if !united && !r.ofHeat(t, c, words) {
		return "", ""
	}
	all := headingWords(c.Heading)
	lower, upper := r.head.lower, r.head.upper
	if r.head.denied(c.Heading) != "" { // "not below"
		lower, upper = upper, lower
	}
	switch {
	case holdsAny(words, r.head.service):
		slot = "service_max"
	case t.kind == kindSchedule && holdsAny(all, lower) && holdsAny(all, upper) && !holdsAny(r.toldOfDay(c), r.head.applies):
		slot = "reading_air" // "Air °F (lo-hi)": both ends of the day, and no limit of what goes on
	case holdsAny(words, lower), holdsAny(words, r.head.cold):
		slot = "apply_min"
	case holdsAny(words, upper), holdsAny(words, r.head.hot) && holdsAny(words, r.head.applies):
		slot = "apply_max"
	case t.kind == kindSchedule && holdsAny(headingWords(c.Heading), r.head.faces):
		slot = "reading_surface"
	case t.kind == kindSchedule:
		slot = "reading_air" // of the day, or its normals
	case united && r.tooHotToApply(t, c):
		slot = "service_max"
	case united:
		slot = "apply"
	}
	if slot == "" || t.column(slot) > 0 {
		return "", ""
	}
	return slot, "temperatures stand under it"
}

// tooHotToApply holds for temperatures of products of which none is one that sheets and fluids
// are put on at: "Design temp. (°F)" above 180, 240.
func (r *reader) tooHotToApply(t *table, c Column) bool {
	i := slices.IndexFunc(t.cols, func(o Column) bool { return o.Letter == c.Letter })
	unit := r.unitIn(c.Heading, "temperature", "")
	if i < 0 || unit == "" || t.kind == kindSchedule {
		return false
	}
	told := 0
	for words := range r.said(t, t.nums[i]) {
		for _, q := range r.phrase.Quantities(words, hint("temperature", unit)) {
			if q.Kind != "temperature" || q.Min == nil {
				continue
			}
			if *q.Min < r.head.hotApplied {
				return false
			}
			told++
		}
	}
	return told > 1
}

// toldOfDay are the words of a heading; of one that names the air itself those above it,
// as in "Installation | Air °F lo/hi", tell nothing of limits.
func (r *reader) toldOfDay(c Column) []string {
	if own := headingWords(c.own); holdsAny(own, r.head.dayAir) {
		return own
	}
	return headingWords(c.Heading)
}

// limitSigns counts the columns of a table that tell a limit of a product by less than
// its words: figures in a unit of one ("Min (°C)", "ng/(Pa·s·m²)"), or how long it may
// stand open, where no day is told that it could have stood open from.
func (r *reader) limitSigns(t *table) int {
	signs := map[string]bool{}
	for i, c := range t.cols {
		switch {
		case c.Slot == "planned_open" && t.has("exposure_days", "place") == 0:
			signs["exposure_days"] = true
		case c.Slot == "":
			if slot, _ := r.byUnit(t, t.nums[i], c); slices.Contains(productSlots, slot) {
				signs[slot] = true
			}
		}
	}
	return len(signs)
}

// bareEnd holds for one of two columns of product data that are headed by nothing but
// their end of a range, where the lower end of some is below zero, as only temperatures
// are: "Min", "Max" over -12, 20.
func (r *reader) bareEnd(t *table, c Column) bool {
	if t.kind == kindSchedule {
		return false
	}
	lower, upper := r.endColumn(t, r.head.lower), r.endColumn(t, r.head.upper)
	if lower < 0 || upper < 0 || c.Letter != t.cols[lower].Letter && c.Letter != t.cols[upper].Letter {
		return false
	}
	for words := range r.said(t, t.nums[lower]) {
		if v := strings.Replace(words, "−", "-", 1); strings.HasPrefix(v, "-") && r.isFigure(v[1:]) && r.mostly(t.stretch(), t.nums[upper], "temperature") {
			return true
		}
	}
	return false
}

// endColumn is the first column that is headed by words for one end alone, -1 if none.
func (r *reader) endColumn(t *table, end []string) int {
	return slices.IndexFunc(t.cols, func(c Column) bool {
		words := headingWords(c.Heading)
		return len(words) == 1 && slices.Contains(end, words[0]) && (c.Slot == "" || c.Slot == "apply_min" || c.Slot == "apply_max")
	})
}

// otherEnd turns a column of temperatures at application to the end that its heading
// tells of by words for cold or heat: "Coldest to put on".
func (r *reader) otherEnd(t *table) {
	ends := map[string]struct {
		is          string
		says, never []string
	}{
		"apply_max": {"apply_min", r.head.cold, r.head.hot},
		"apply_min": {"apply_max", r.head.hot, r.head.cold},
	}
	for i := range t.cols {
		c := &t.cols[i]
		words := headingWords(c.Heading)
		if end, is := ends[c.Slot]; is && t.column(end.is) == 0 && r.head.denied(c.Heading) == "" && holdsAny(words, end.says) && !holdsAny(words, end.never) {
			c.Slot, c.Why = end.is, c.Why+", and of the two ends it tells this one"
		}
	}
}

// ofHeat holds for a column of product data whose heading speaks of heat or cold, or of
// a lower end at application, and whose cells are temperatures.
func (r *reader) ofHeat(t *table, c Column, words []string) bool {
	heat := slices.Concat(r.head.cold, r.head.hot, r.head.heat)
	if t.kind != kindProducts || !holdsAny(words, heat) && !(holdsAny(words, r.head.applies) && (holdsAny(words, r.head.lower) || holdsAny(words, r.head.upper))) {
		return false
	}
	col := t.nums[slices.IndexFunc(t.cols, func(o Column) bool { return o.Letter == c.Letter })]
	return r.mostly(t.stretch(), col, "temperature") && !r.mostly(t.stretch(), col, "date")
}
