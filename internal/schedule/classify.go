package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/workbook"
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
	lineSlots = []string{"substrate", "primer", "touches", "left", "right", "top", "behind", "edge", "lap", "sealant",
		"order", "layers", "cover"}
)

// classify tells by its shape what a table is, and never by its sheet's name,
// and gives its columns the slots of that sort.
func (r *reader) classify(t *table) {
	sort := kindSchedule
	if figures, dates := t.has(productSlots...), r.dateColumns(t); figures >= 2 && dates == 0 || figures >= dataColumns && dates <= 1 && t.has("install", "finish", "cover") == 0 {
		sort = kindProducts
	}
	t.columnsOf(r, sort)
	if t.kind = t.kindOf(sort); t.kind == kindOther && r.isKey(t) {
		t.kind = kindProducts
		t.columnsOf(r, kindProducts) // "keep off" is no drawing reference there
	}
	r.airColumn(t)
	t.soleLap()
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
	b := r.assign(t.sheet, t.head[0], len(t.head), sort, t.gloss)
	t.cols, t.nums, t.own = b.cols, b.nums, nil
}

// isKey holds for a key of tags and what they stand for, where most of what it
// says names a material; a legend of other short words is none.
func (r *reader) isKey(t *table) bool {
	tag, name := t.column("tag"), cmp.Or(t.column("type"), t.column("material"))
	if tag == 0 || name == 0 {
		return false
	}
	rows, named := 0, 0
	for row := t.first; row <= t.last; row++ {
		words := text(t.sheet, row, name)
		if text(t.sheet, row, tag) == "" || words == "" {
			continue
		}
		if rows++; r.vocab.Describe(words).Family != "" {
			named++
		}
	}
	return rows > 1 && named*2 > rows
}

// dataColumns is how many columns of product data a table has that is product
// data though one of its columns holds dates, as those of submittals do.
const dataColumns = 4

func (t *table) kindOf(sort string) string {
	line := t.has(lineSlots...)
	dates := t.has("install", "cover", "finish")
	subject := t.has("material", "tag", "type", "specified", "mark")
	if t.has("left", "right", "sealant") == 3 {
		subject++ // a register of joints is about what it seals with
	}
	switch {
	case sort == kindProducts && subject > 0:
		return kindProducts
	case t.column("placed") > 0 && dates == 0 && line <= 1:
		return kindPours
	case subject > 0 && line >= 1, dates > 0 && line >= 1, t.column("order") > 0 && subject > 0:
		return kindSchedule
	}
	return kindOther
}

// dateColumns counts the columns that mostly hold dates.
func (r *reader) dateColumns(t *table) int {
	n := 0
	for _, col := range t.nums {
		if r.mostly(t.sheet, t.first, col, "date") {
			n++
		}
	}
	return n
}

// mostly holds where two thirds of the telling cells of a column are of a kind.
func (r *reader) mostly(s *workbook.Sheet, from, col int, kind string) bool {
	telling, fit := r.profile(s, from, col, kind)
	return telling > 0 && fit*3 >= telling*2
}

// profile counts the telling cells of a column, and those of a kind.
func (r *reader) profile(s *workbook.Sheet, from, col int, kind string) (telling, fit int) {
	for row := from; row <= s.MaxRow && telling < 40; row++ {
		c, ok := s.At(row, col)
		if !ok || c.Merged || r.words.isBlank(c.Value) || r.words.isNone(c.Value) || r.words.isDitto(c.Value) {
			continue
		}
		telling++
		if r.holds(c, kind) {
			fit++
		}
	}
	return telling, fit
}

// columnHolds checks a heading against what stands under it: at least a third
// of the telling cells must be of the kind, and words must not be dates.
func (r *reader) columnHolds(s *workbook.Sheet, from, col int, kind string) bool {
	if kind == "" {
		return !r.mostly(s, from, col, "date")
	}
	telling, fit := r.profile(s, from, col, kind)
	if kind == "date" && fit > 0 && fit*3 < telling {
		telling, fit = r.distinct(s, from, col, kind)
	}
	return telling == 0 || fit*3 >= telling
}

// distinct is the profile of a column's different texts: "Phase 3" in most rows is
// one text, and the dates of the others are many.
func (r *reader) distinct(s *workbook.Sheet, from, col int, kind string) (telling, fit int) {
	seen := map[string]bool{}
	for row := from; row <= s.MaxRow && len(seen) < 40; row++ {
		c, ok := s.At(row, col)
		if !ok || c.Merged || seen[c.Value] || r.words.isBlank(c.Value) {
			continue
		}
		seen[c.Value] = true
		telling++
		if r.holds(c, kind) {
			fit++
		}
	}
	return telling, fit
}

func (r *reader) holds(c workbook.Cell, kind string) bool {
	if kind == "date" {
		return c.Kind == workbook.Date || r.isDate(c.Value)
	}
	if c.Kind == workbook.Number {
		return true
	}
	if kind == "code" {
		return len(c.Value) <= shortCode || len(c.Value) <= longCode && strings.ContainsAny(c.Value, "0123456789")
	}
	if c.Kind == workbook.Date || r.isDate(c.Value) { // "8/18-8/20/25" begins with a digit too
		return false
	}
	return startsWithDigit(c.Value) || r.held.of(kind+"\n"+c.Value, func() bool { return len(r.phrase.Quantities(c.Value, kind)) > 0 })
}

// How long the letters and the number of a layer or step may be.
const (
	shortCode = 3
	longCode  = 12
)

// isDate holds for a text that is a date and little else, or hangs on one.
func (r *reader) isDate(text string) bool {
	return r.dates.of(text, func() bool { return r.readsAsDate(text) })
}

func (r *reader) readsAsDate(text string) bool {
	said := 0
	for _, d := range r.phrase.Dates(text, phrase.MonthFirst, r.yearSaid) {
		switch d.State {
		case "relative", "open":
			return true
		case "day", "span", "impossible":
			said += d.End - d.Start
		}
	}
	return said*2 >= len(strings.TrimSpace(text))
}

func startsWithDigit(s string) bool {
	s = strings.TrimLeft(s, "<>≤≥~+-−. ")
	return s != "" && s[0] >= '0' && s[0] <= '9'
}

// byUnit takes the unit in the heading of a column of figures for what it is: "GL"
// over names of places is no unit.
func (r *reader) byUnit(t *table, col int, c Column) (slot, why string) {
	for kind, slot := range r.head.byUnit {
		if t.column(slot) == 0 && kind != "note" {
			if unit := r.unitIn(c.Heading, kind, slot); unit != "" && r.columnHolds(t.sheet, t.first, col, kind) {
				return slot, "figures in " + unit
			}
		}
	}
	return r.byTemperature(t, c)
}

// byTemperature tells the columns of temperatures apart by the words for
// service and for the lower and upper end.
func (r *reader) byTemperature(t *table, c Column) (slot, why string) {
	if r.unitIn(c.Heading, "temperature", "") == "" {
		return "", ""
	}
	words := headingWords(strings.TrimSuffix(c.Heading, c.gloss))
	has := func(list []string) bool {
		return slices.ContainsFunc(list, func(w string) bool { return holdsWords(words, strings.Fields(w)) })
	}
	switch {
	case has(r.head.service):
		slot = "service_max"
	case has(r.head.lower):
		slot = "apply_min"
	case has(r.head.upper):
		slot = "apply_max"
	case t.kind == kindSchedule:
		slot = "reading_air" // of the day, or its normals
	default:
		slot = "apply"
	}
	if t.column(slot) > 0 {
		return "", ""
	}
	return slot, "temperatures by its unit"
}

// nearestToCover holds where no other column of dates without a known heading
// stands between this one and that of the cover: what goes before the work, as
// its paper does, stands left of it.
func (r *reader) nearestToCover(t *table, col int) bool {
	cover := t.column("cover")
	for i, c := range t.cols {
		if n := t.nums[i]; c.Slot == "" && col < n && n < cover && r.mostly(t.sheet, t.first, n, "date") {
			return false
		}
	}
	return true
}

// byContent looks at the cells of one column.
func (r *reader) byContent(t *table, col int) (slot, why string) {
	var filled, dates, tags, known, long, short int
	seen := map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		c, ok := t.sheet.At(row, col)
		if !ok || r.words.isBlank(c.Value) {
			continue
		}
		filled++
		seen[c.Value] = true
		switch {
		case r.holds(c, "date"):
			dates++
		case r.isTag(c.Value):
			tags++
			if _, is := r.lex.tags[fold(c.Value)]; is {
				known++
			}
		case len(c.Value) > 30:
			long++
		case len(c.Value) <= 10:
			short++
		}
	}
	most := func(n int) bool { return filled > 0 && n*10 >= filled*6 }
	if known*2 < tags { // codes of the shape that tags have, as those of costs
		tags = 0
	}
	switch {
	case filled == 0:
		return "", ""
	case most(dates) && t.kind == kindSchedule && t.column("install") == 0 && r.nearestToCover(t, col):
		return "install", "dates stand under it, and no other column is the installation"
	case most(dates) && t.kind == kindSchedule && t.column("cover") == 0:
		return "cover", "dates stand under it, right of the installation"
	case most(tags) && t.kind == kindSchedule && t.column("tag") == 0 && !r.hasTags(t):
		return "tag", "tags of the product data stand under it"
	case most(tags) && t.kind == kindSchedule:
		return "with", "tags of the product data stand under it, beside the row's own"
	case most(short) && len(seen)*10 >= filled*9 && t.has("mark", "tag") == 0:
		return "mark", "short codes, each once"
	case t.kind == kindSchedule && filled >= 3 && long*2 >= filled:
		return "remark", "sentences stand under it"
	}
	return "", ""
}
