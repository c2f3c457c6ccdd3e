package schedule

import (
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

// classify tells by its shape what a table is, and never by its sheet's name.
func (t *table) classify() string {
	product, line := t.has(productSlots...), t.has(lineSlots...)
	dates := t.has("install", "cover", "finish")
	subject := t.has("material", "tag", "type", "specified")
	switch {
	case dates == 0 && product >= 2 && subject > 0 && t.has("order", "place", "left", "edge", "lap") == 0:
		return kindProducts
	case t.column("placed") > 0 && dates == 0 && line <= 1:
		return kindPours
	case subject > 0 && line >= 1, dates > 0 && line >= 1, t.column("order") > 0 && subject > 0:
		return kindSchedule
	}
	return kindOther
}

// columnHolds checks a heading against what stands under it: at least a third
// of the telling cells must be of the kind.
func (r *reader) columnHolds(s *workbook.Sheet, from, col int, kind string) bool {
	if kind == "" {
		return true
	}
	telling, fit := 0, 0
	for row := from; row <= s.MaxRow && telling < 40; row++ {
		c, ok := s.At(row, col)
		if !ok || c.Merged || r.words.isBlank(c.Value) {
			continue
		}
		telling++
		if r.holds(c, kind) {
			fit++
		}
	}
	return telling == 0 || fit*3 >= telling
}

func (r *reader) holds(c workbook.Cell, kind string) bool {
	if kind == "date" {
		return c.Kind == workbook.Date || len(r.phrase.Dates(c.Value, phrase.MonthFirst, 0)) > 0
	}
	if c.Kind == workbook.Number {
		return true
	}
	if c.Kind == workbook.Date {
		return false
	}
	return len(r.phrase.Quantities(c.Value, kind)) > 0 || startsWithDigit(c.Value)
}

func startsWithDigit(s string) bool {
	s = strings.TrimLeft(s, "<>≤≥~+-−. ")
	return s != "" && s[0] >= '0' && s[0] <= '9'
}

// fillUnknown gives columns without a telling heading a slot by what stands
// under them and by what is still missing.
func (r *reader) fillUnknown(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot != "" {
			continue
		}
		slot, why := r.byContent(t, t.nums[i])
		if slot != "" {
			c.Slot, c.Confidence, c.Why = slot, 0.4, why
		}
	}
}

// byContent looks at the cells of one column.
func (r *reader) byContent(t *table, col int) (slot, why string) {
	var filled, dates, tags, long, short int
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
		case len(c.Value) > 30:
			long++
		case len(c.Value) <= 10:
			short++
		}
	}
	most := func(n int) bool { return filled > 0 && n*10 >= filled*6 }
	switch {
	case filled == 0:
		return "", ""
	case most(dates) && t.kind == kindSchedule && t.column("install") == 0:
		return "install", "dates stand under it, and no other column is the installation"
	case most(dates) && t.kind == kindSchedule && t.column("cover") == 0:
		return "cover", "dates stand under it, right of the installation"
	case most(tags) && t.has("tag", "material") == 0:
		return "tag", "tags of the product data stand under it"
	case most(short) && len(seen)*10 >= filled*9 && t.has("mark") == 0:
		return "mark", "short codes, each once"
	case t.kind == kindSchedule && filled >= 3 && long*2 >= filled:
		return "remark", "sentences stand under it"
	}
	return "", ""
}
