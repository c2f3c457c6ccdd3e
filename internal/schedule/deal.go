package schedule

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// dealCards registers the products of the cards of all sheets, and drops the
// tables that only seemed to stand where cards do.
func (r *reader) dealCards(b *workbook.Book, all []*table) []*table {
	names := scheduleWords(all)
	if names.text == "" {
		return all
	}
	for _, t := range all {
		if t.kind == kindSchedule {
			r.dealWide(t)
		}
	}
	for i := range b.Sheets {
		s := &b.Sheets[i]
		if s.Kind != workbook.Worksheet || s.FeedsDropDowns() {
			continue
		}
		tables := onSheet(all, s)
		if r.productTable(tables) {
			continue
		}
		list := r.proseList(s, tables, names)
		if len(list) == 0 {
			list = r.clauseList(s, tables, names)
		}
		if len(list) > 0 {
			r.dealProse(s, list)
			all = withoutFree(all, s)
			continue
		}
		found := r.eachName(r.cards(s, tables, names), names)
		if !slices.ContainsFunc(found, r.tellsProduct) {
			continue
		}
		r.valuesTell(found)
		units := r.cardUnits(found)
		for _, slot := range slices.Sorted(maps.Keys(units)) { // two slots of a kind may have two units
			r.dealtUnits[figureOf[slot].kind] = cmp.Or(r.dealtUnits[figureOf[slot].kind], units[slot])
		}
		for _, c := range found {
			r.deal(s, c, units)
			r.cardRows[s.Name] = append(r.cardRows[s.Name], c.rows...)
		}
		if len(r.cardRows[s.Name]) > 0 {
			all = withoutFree(all, s)
		}
	}
	return all
}

// tellsProduct holds for a card with a property that only products have, or with words for a
// material; a title block has neither: "Project", "Site", "Units".
func (r *reader) tellsProduct(c card) bool {
	if r.vocab.Family(c.name) != "" {
		return true
	}
	return slices.ContainsFunc(c.fields, func(f field) bool {
		slot := r.labelOf(f.label)
		_, figure := figureOf[slot]
		return figure || slices.Contains(productSlots, slot) || slot == "primer" || len(r.lex.named(f.value.Value)) > 0
	})
}

// productTable holds for tables that are product data of some size; a column may be
// known by its unit alone ("Min °F").
func (r *reader) productTable(tables []*table) bool {
	for _, t := range tables {
		if t.kind == kindProducts && t.has(productSlots...)+r.limitSigns(t) >= 3 {
			return true
		}
	}
	return false
}

// withoutFree drops the tables of a sheet that are no schedules.
func withoutFree(all []*table, s *workbook.Sheet) []*table {
	var out []*table
	for _, t := range all {
		if t.sheet != s || t.kind == kindSchedule {
			out = append(out, t)
		}
	}
	return out
}

// cardUnits are the units that figures of a label have on some card, for those
// that stand bare on another ("65 side, 150 end").
func (r *reader) cardUnits(cards []card) map[string]string {
	units := map[string]string{}
	for _, c := range cards {
		for _, f := range c.fields {
			slot := r.labelOf(f.label)
			fig, ok := figureOf[slot]
			if !ok || units[slot] != "" {
				continue
			}
			for _, q := range r.phrase.Quantities(f.value.Value, "") {
				if q.Kind == fig.kind && q.Unit != "" {
					units[slot] = q.Unit
					break
				}
			}
		}
	}
	return units
}

// deal registers the product of one card, with what each of its labels tells.
func (r *reader) deal(s *workbook.Sheet, c card, units map[string]string) {
	if _, known := r.lex.tags[fold(c.name)]; known {
		return
	}
	says := r.figuresOfKind(c)
	for _, f := range c.fields {
		says = append(says, r.noteOf(r.fieldSource(s, f, units), f)...)
	}
	r.sched.Products = append(r.sched.Products, newProduct(c.name, s.Name, c.row))
	r.lex.add(c.name, len(r.sched.Products)-1)
	for _, c := range says {
		if c.slot == "alias" {
			r.lex.addAlias(c.text, len(r.sched.Products)-1)
		}
	}
	r.told = append(r.told, told{product: len(r.sched.Products) - 1, says: says})
}

// noteOf sorts the sentences of a field whose label tells nothing ("Note: VOC 240
// g/L; 10 to 100 F") by what they open with, or by the figure that they begin with.
func (r *reader) noteOf(c source, f field) []source {
	if c.slot != "remark" {
		return []source{c}
	}
	out := []source{c}
	for _, part := range r.words.splitList(f.value.Value) {
		say := source{text: strings.TrimSpace(part.text), cell: c.cell, at: c.at}
		say.slot = r.sayOf(say.text)
		if say.slot != "" && say.slot != "remark" {
			out = append(out, say)
		}
	}
	return out
}

// sayOf is the slot of a sentence by what it opens with, else by the figure that
// it begins with, "" for none.
func (r *reader) sayOf(text string) string {
	text = strings.TrimSpace(text)
	if slot, _ := r.opening(text); slot != "" && slot != toldRest {
		return slot
	}
	return r.byFigure(text)
}

// byFigure is the slot of the figure that a sentence begins with, "" for none.
func (r *reader) byFigure(text string) string {
	found := r.phrase.Quantities(text, "")
	if len(found) == 0 {
		return ""
	}
	q := found[0]
	if q.Kind == "length" && !filmLap(q) && !r.words.hasAny(text, r.words.thick) {
		return "" // "goes 2 in. over the strips"
	}
	if len(headingWords(text[:q.Start])) > fewWords {
		return ""
	}
	return r.words.toldByKind[q.Kind]
}

// fewWords is how many words may stand before the figure that a sentence begins
// with: "air and wall 40 F and rising".
const fewWords = 3
