package schedule

import (
	"cmp"
	"slices"
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
	lineSlots = []string{"substrate", "primer", "touches", "left", "right", "top", "bottom", "front", "behind", "edge", "lap",
		"sealant", "order", "layers", "cover"}
	readingSlots = []string{"reading_surface", "reading_air", "reading_dew", "reading_rh", "wood_moisture", "shelter"}
)

// classify tells by its shape what a table is, and never by its sheet's name,
// and gives its columns the slots of that sort.
func (r *reader) classify(t *table) {
	sort := kindSchedule
	figures, dates := t.has(productSlots...), r.dateColumns(t)
	placed := figures < dataColumns && t.column("substrate") > 0 && t.has("place", "group") > 0 // limits beside what is built somewhere
	if figures >= 2 && dates == 0 && !placed || figures >= dataColumns && dates <= 1 && t.has("install", "finish", "cover") == 0 {
		sort = kindProducts
	}
	t.columnsOf(r, sort)
	if sort == kindSchedule {
		r.subject(t)
	} else {
		r.firstNames(t)
	}
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
	b := r.assign(t.stretch(), t.head[0], len(t.head), sort, t.gloss)
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
	subject := t.has("material", "tag", "type", "specified", "mark", "alias")
	if t.has("left", "right", "sealant") == 3 {
		subject++ // a register of joints is about what it seals with
	}
	switch {
	case sort == kindProducts && subject > 0:
		return kindProducts
	case t.column("placed") > 0 && dates == 0 && line <= 1 && t.has("specified", "planned_open") == 0:
		return kindPours
	case subject > 0 && line >= 1, dates > 0 && line >= 1, t.column("order") > 0 && subject > 0:
		return kindSchedule
	case t.column("material") > 0 && (t.column("specified") > 0 || t.has(readingSlots...) >= 2): // what is offered for it, or a log of the work
		return kindSchedule
	}
	return kindOther
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
	if r.unitIn(c.Heading, "temperature", "") == "" {
		return "", ""
	}
	words := headingWords(strings.TrimSuffix(c.Heading, c.gloss))
	switch {
	case holdsAny(words, r.head.service):
		slot = "service_max"
	case holdsAny(words, r.head.lower):
		slot = "apply_min"
	case holdsAny(words, r.head.upper):
		slot = "apply_max"
	case t.kind == kindSchedule && holdsAny(headingWords(c.Heading), r.head.faces):
		slot = "reading_surface"
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
		if n := t.nums[i]; c.Slot == "" && col < n && n < cover && r.mostly(t.stretch(), n, "date") {
			return false
		}
	}
	return true
}

// besideCover holds for a column of materials right of that of the day of the cover,
// where no other tells what covers the sheets.
func (r *reader) besideCover(t *table, col int) bool {
	at := slices.Index(t.nums, col)
	if at < 1 || t.cols[at-1].Slot != "cover" || t.column("front") > 0 {
		return false
	}
	filled, named := 0, 0
	for row := t.first; row <= t.last; row++ {
		if words := text(t.sheet, row, col); !r.words.isBlank(words) {
			if filled++; len(r.lex.find(words)) > 0 {
				named++
			}
		}
	}
	return named > 1 && named*3 >= filled*2
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
	case t.kind == kindSchedule && r.besideCover(t, col):
		return "front", "materials stand under it, right of the day of the cover"
	case most(tags) && t.kind == kindSchedule && t.column("tag") == 0 && !r.hasTags(t):
		return "tag", "tags of the product data stand under it"
	case most(tags) && t.kind == kindSchedule:
		return "with", "tags of the product data stand under it, beside the row's own"
	case most(short) && len(seen)*10 >= filled*9 && t.has("mark", "tag") == 0 && t.mayMark(col):
		return "mark", "short codes, each once"
	case t.kind == kindSchedule && r.lacks(t, col, "primer"):
		return "primer", "primers stand under it"
	case t.kind == kindSchedule && r.lacks(t, col, "sealant"):
		return "sealant", "sealants stand under it"
	case t.kind == kindSchedule && filled >= 3 && long*2 >= filled:
		return "remark", "sentences stand under it"
	}
	return "", ""
}

// mayMark holds for a column in which the codes of rows may stand: the first of
// product data, or one of the first two of a schedule.
func (t *table) mayMark(col int) bool {
	return col == t.nums[0] || t.kind == kindSchedule && len(t.nums) > 1 && col == t.nums[1]
}

// lacks holds for a column that mostly names what a table has no other column for.
func (r *reader) lacks(t *table, col int, role string) bool {
	return t.column(role) == 0 && r.mostlyNames(t, col, role)
}
