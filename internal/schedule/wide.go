package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// ownData is the slot of columns that hold the data of the row's product, and
// nothing of the row.
const ownData = "data"

// dealWide reads the product data that stands right of a schedule, in the row
// that names the product first: later rows say "as 103" or leave it blank.
func (r *reader) dealWide(t *table) {
	block := r.dataBlock(t)
	tag := t.column("tag")
	if len(block) == 0 || tag == 0 {
		return
	}
	for row := t.first; row <= t.last; row++ {
		name := text(t.sheet, row, tag)
		if name == "" || r.words.isBlank(name) || r.words.isDitto(name) {
			continue
		}
		c := card{name: name, sheet: t.sheet.Name, row: row}
		if what, ok := t.sheet.At(row, max(t.column("material"), t.column("type"))); ok {
			c.kind = append(c.kind, r.cardSource(t.sheet, toldSubject, what))
		}
		for _, i := range block {
			v, ok := t.sheet.At(row, t.nums[i])
			if ok && !r.words.isBlank(v.Value) && !r.pointsElsewhere(v) {
				c.fields = append(c.fields, field{t.cols[i].Heading, v})
			}
		}
		if len(c.fields) >= leastData {
			r.deal(t.sheet, c, nil)
		}
	}
	for _, i := range block {
		t.cols[i].Slot, t.cols[i].Why = ownData, "product data of the row's own material"
	}
}

// pointsElsewhere holds for "as 103", "same as 12", "see above".
func (r *reader) pointsElsewhere(c workbook.Cell) bool {
	return slices.ContainsFunc(r.words.sameAs, func(p *regexp.Regexp) bool { return p.MatchString(strings.TrimSpace(c.Value)) })
}

// leastData is how many cells of data a row has that describes its product, and
// leastBlock how many telling columns such a block has.
const (
	leastData  = 2
	leastBlock = 4
)

// dataBlock lists the columns right of a schedule's dates that hold product
// data, nil where too few of them tell so.
func (r *reader) dataBlock(t *table) []int {
	start := 0
	for i, c := range t.cols {
		if isDateSlot(c.Slot) || c.Slot == "status" {
			start = i + 1
		}
	}
	var block []int
	telling := 0
	for i := start; i < len(t.cols); i++ {
		c := &t.cols[i]
		if c.Slot == "remark" || c.Slot == "value" || c.Slot == "separator" {
			if len(block) > 0 {
				break
			}
			continue
		}
		slot := r.labelOf(c.Heading)
		if len(block) == 0 && !slices.Contains(productSlots, slot) {
			continue
		}
		if slices.Contains(productSlots, slot) {
			telling++
		}
		block = append(block, i)
	}
	if telling < leastBlock {
		return nil
	}
	return block
}
