package schedule

import (
	"slices"
	"strings"
	"sync"
)

// joinKeys finds the column by whose codes the products of a table are called: short
// codes, nearly all different, that come back in the cells of the schedules, whatever
// is written over them ("Keynote", "M#", nothing). A table of such codes and of words
// for materials is a key to them.
func (r *reader) joinKeys(all []*table) {
	used := map[string]map[string]bool{} // by the kinds of tables that ask for it
	cells := sync.OnceValue(func() *wordIndex { return scheduleWords(all) })
	for _, t := range all {
		if t.kind != kindProducts && (t.kind != kindOther || t.has(notOfKeys...) > 0) {
			r.keyBesideWork(t, all)
			continue
		}
		called, most := -1, 0
		if t.kind == kindProducts {
			called = slices.Index(t.nums, t.nameColumn())
			most = t.named(t.nums[called], cells())
			if most > 0 && t.cols[called].Slot == "tag" && t.cols[called].Confidence >= 1 {
				continue
			}
		}
		if used[t.kind] == nil {
			used[t.kind] = r.codesUsed(all, t.kind == kindOther)
		}
		if own := r.keyColumn(t, called, most, used[t.kind]); own >= 0 {
			r.rekey(t, own)
		}
	}
}

// notOfKeys are slots of tables whose codes are those of walls and papers.
var notOfKeys = []string{"group", "layers", "status", "sent", "returned", "approved", "install", "cover", "placed"}

// leastKeys is how many codes of a table must come back in the schedules, and at
// least one in fewUsed of them.
const (
	leastKeys = 3
	fewUsed   = 4
)

// notOfData are slots that a key of accessories has none of: what stands in its row is
// built somewhere, on something or on some day.
var notOfData = slices.Concat(notOfKeys, []string{"finish", "place", "substrate", "primer", "front", "behind", "edge", "lap", "sealant", "order",
	"left", "right", "top", "bottom", "specified", "submitted"}, readingSlots)

// keyBesideWork turns a table that was taken for a schedule into the key that it is: it
// tells where and when of nothing, and its codes come back in a schedule that has days
// ("Tag, Type, Finish, Note" of the metals below the data of the sheets).
func (r *reader) keyBesideWork(t *table, all []*table) {
	if t.kind != kindSchedule || t.has(notOfData...) > 0 {
		return
	}
	var dated []*table
	r.each(all, kindSchedule, func(other *table) {
		if other != t && other.has("install", "cover") > 0 {
			dated = append(dated, other)
		}
	})
	if own := r.keyColumn(t, -1, 0, r.codesUsed(dated, false)); own >= 0 {
		r.rekey(t, own)
	}
}

// codesUsed are the codes in the cells of the schedules that may name materials; those
// of columns that are not known too, or only where no column is known to name them.
func (r *reader) codesUsed(all []*table, sure bool) map[string]bool {
	used, read := map[string]bool{}, map[string]bool{}
	r.each(all, kindSchedule, func(t *table) {
		for i, col := range t.nums {
			if slot := t.cols[i].Slot; !r.mayName(t, i) || slot == "remark" || sure && slot == "" && t.has("tag", "material") > 0 {
				continue
			}
			for row := t.first; row <= t.last; row++ {
				if words := text(t.sheet, row, col); !read[words] && t.ownCells(row) > 1 {
					read[words] = true
					for _, code := range codesIn(words) {
						used[code] = true
					}
				}
			}
		}
	})
	return used
}

// mayName holds for a column whose cells may name materials by their codes: not days,
// figures, places, walls and numbers of layers, nor the marks of the rows, and papers
// only where no column is known to name materials.
func (r *reader) mayName(t *table, i int) bool {
	slot := t.cols[i].Slot
	_, figure := figureOf[slot]
	switch {
	case figure, isDateSlot(slot), slot == "place", slot == "group", slot == "order":
		return false
	case slot == "reference":
		return t.has("tag", "material") == 0
	case slot == "mark":
		return !r.ownCodes(t, t.nums[i])
	}
	return true
}

// keyColumn is the place of the column whose codes come back in the schedules in more
// rows than most, in which those of the column that it is called by now do; -1 for none.
func (r *reader) keyColumn(t *table, called, most int, used map[string]bool) int {
	best := -1
	for i := range t.cols {
		found, codes := 0, r.keyCodes(t, i)
		for _, code := range codes {
			if used[code] {
				found++
			}
		}
		if (found > most || i == called && best < 0) && found >= leastKeys && found*fewUsed >= len(codes) {
			best, most = i, max(found, most)
		}
	}
	return best
}

// named counts the rows of a table whose names in a column stand in the schedules.
func (t *table) named(col int, cells *wordIndex) int {
	n := 0
	for row := t.first; row <= t.last; row++ {
		if name := text(t.sheet, row, col); t.ownCells(row) > 1 && isNamed(name, cells) {
			n++
		}
	}
	return n
}

// keyCodes lists the codes of a column of words; none where a good part of its cells are
// others, or come again.
func (r *reader) keyCodes(t *table, i int) []string {
	if slot := r.head.bySlot[t.cols[i].Slot]; slot != nil && slot.kind != "" {
		return nil // figures
	}
	var out []string
	seen, filled := map[string]bool{}, 0
	for row := t.first; row <= t.last; row++ {
		c, ok := t.sheet.At(row, t.nums[i])
		if !ok || c.Merged || r.words.isBlank(c.Value) || t.ownCells(row) < 2 {
			continue
		}
		filled++
		if code := withoutBrackets(c.Value); r.isCode(code) && !seen[fold(code)] {
			seen[fold(code)] = true
			out = append(out, fold(code))
		}
	}
	if len(out)*5 < filled*4 {
		return nil
	}
	return out
}

// rekey makes one column the key of the products, and the one that was it the trade
// name. A table that was no product data stays so where most of what it says names no
// material.
func (r *reader) rekey(t *table, own int) {
	cols := append([]Column(nil), t.cols...)
	if t.kind != kindProducts {
		t.columnsOf(r, kindProducts)
	}
	for i := range t.cols {
		if c := &t.cols[i]; i != own && c.Slot == "tag" {
			c.Slot = "alias"
		}
	}
	c := &t.cols[own]
	c.Slot, c.Confidence, c.Why = "tag", 1, "its codes come back in the schedule"
	if t.kind == kindProducts {
		return
	}
	r.wordsOfKey(t)
	if !r.isKey(t) {
		t.cols = cols
		return
	}
	t.kind = kindProducts
}

// wordsOfKey takes the column that names materials for what the codes stand for, where
// its heading does not tell it.
func (r *reader) wordsOfKey(t *table) {
	if t.has("type", "material") > 0 {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot != "tag" && r.mostlyNames(t, t.nums[i]) {
			c.Slot, c.Confidence, c.Why = "type", 0.4, "materials stand under it, beside their codes"
			return
		}
	}
}

// buildsUp holds for a list of build-ups, which tells of no work.
func (t *table) buildsUp() bool {
	return t.has("layers") > 0 && t.has("install", "substrate", "cover") == 0
}

// installedColumn takes the column in which the codes of sheets and fluids stand row
// by row for what is installed, in a schedule that names it in no other. A list of build-ups
// installs nothing: such a column tells there which of the layers is the tight one.
func (r *reader) installedColumn(t *table) {
	if t.has("tag", "material", "specified") > 0 || len(r.layers) == 0 {
		return
	}
	if t.buildsUp() {
		return
	}
	best, most, bare := -1, 0, false
	for i, col := range t.nums {
		if !r.mayName(t, i) || itemSlots[t.cols[i].Slot] {
			continue
		}
		filled, layers, alone := 0, 0, 0
		for words := range r.said(t, col) {
			if r.words.isDitto(words) {
				continue
			}
			filled++
			found := r.lex.findTags(words)
			if len(found) > 0 && r.layers[found[0].product] {
				layers++
			}
			if len(found) == 1 && strings.Trim(mask(words, found), "|[](){}<> ") == "" {
				alone++
			}
		}
		if layers > most && layers*2 >= filled {
			best, most, bare = i, layers, alone*10 >= filled*9
		}
	}
	if best < 0 {
		return
	}
	c := &t.cols[best]
	c.Slot, c.Confidence, c.Why = "material", 0.6, "the codes of sheets and fluids of the product data stand under it"
	if bare {
		c.Slot = "tag"
	}
}
