package schedule

import (
	"cmp"
	"maps"
	"slices"
	"strings"
)

// primedLimits are the figures of product data that may be others with a primer. An
// age is often told among the words of a list, and the primer after it.
var primedLimits = []struct {
	slot  string
	words func(*Product, Figure) string
}{
	{"apply_min", func(_ *Product, f Figure) string { return f.Text }},
	{"concrete_age", (*Product).cellText},
}

// primedLimit takes the least temperature or age of concrete that the product's data
// gives with a primer, where the row has that primer: "5 °C (-5 with PR-2)",
// "concrete 21 d (7 d over PR-2)".
func (r *reader) primedLimit(l *Line) {
	p := r.productOf(l.Main())
	if p == nil {
		return
	}
	for _, limit := range primedLimits {
		fig := figureOf[limit.slot]
		whole, ok := p.Figures[fig.key]
		if !ok {
			continue
		}
		for _, with := range r.primersToo(p, limit.slot, limit.words(p, whole)) {
			if !r.hasPrimer(l, with.primer) {
				continue
			}
			if f, ok := r.figure(source{slot: limit.slot, text: with.figure, unit: whole.Unit, at: whole.At}, fig.kind); ok {
				f.Text = with.text
				l.Figures["primed_"+fig.key] = f
			}
		}
	}
}

// figureWith is a figure that holds with a primer, as its words say.
type figureWith struct{ text, figure, primer string }

// primersToo lists the figures that words give with a primer. Which primer a younger
// concrete takes may be told among the primers as well: "P-4 if conc is 3 to 7 d old".
func (r *reader) primersToo(p *Product, slot, words string) []figureWith {
	var out []figureWith
	for _, m := range r.words.withPrimer.FindAllStringSubmatch(words, -1) {
		out = append(out, figureWith{m[0], m[1], m[2]})
	}
	if slot == "concrete_age" {
		for _, m := range r.words.primerIf.FindAllStringSubmatch(p.Texts["primer"], -1) {
			out = append(out, figureWith{m[0], m[2], m[1]})
		}
	}
	return out
}

// cellText is the text of the cell that a figure stands in.
func (p *Product) cellText(f Figure) string {
	for _, slot := range slices.Sorted(maps.Keys(p.Cells)) {
		if p.Cells[slot] == f.At.Cell && p.Texts[slot] != "" {
			return p.Texts[slot]
		}
	}
	return f.Text
}

// hasPrimer holds where the row has a primer that the words name, or any where
// they name none: "with primer".
func (r *reader) hasPrimer(l *Line, words string) bool {
	named := len(r.lex.findTags(words)) > 0
	for i := range l.Items {
		it := &l.Items[i]
		if it.Slot == "primer" && it.Polarity == "yes" && (named && r.words.hasAny(words, []string{fold(it.Tag)}) || !named && r.words.hasAny(words, r.words.accept.Primer)) {
			return true
		}
	}
	return false
}

// primersElsewhere tells of a primer that its own clause gives to something else than the
// row's bed and sheet, in which cell that stands: "none on board; PR-2 on the EPDM", where
// EPDM is what the sheet touches.
func (r *reader) primersElsewhere(l *Line) {
	for i := range l.Items {
		it := &l.Items[i]
		if it.Primes != "" || it.Class != "primer" || it.Polarity != "yes" || it.Side != "subject" || !primesBy[it.Relation] {
			continue
		}
		if cell, ok := r.otherFace(l, it); ok {
			it.Primes = cell
		}
	}
}

// primesBy are the relations of a primer to what it is put on, or under.
var primesBy = map[string]bool{"on": true, "over": true, "at": true, "to": true, "under": true}

// otherFace is the cell of the one thing that a primer's clause names after it; there is
// none where the row's bed or its own sheet is named, or what the row does not have.
func (r *reader) otherFace(l *Line, primer *Item) (string, bool) {
	h, cell := r.hear(primer.Clause), ""
	for _, cl := range h.clauses {
		if cl.Relation != primer.Relation {
			continue
		}
		for _, n := range cl.Object {
			m, ok := h.mention(n)
			if !ok || r.isPrimer(m) {
				continue
			}
			at := r.standsIn(l, m)
			if at == "" {
				return "", false
			}
			cell = cmp.Or(cell, at)
		}
	}
	return cell, cell != ""
}

// standsIn is the cell of what the row touches that a mention means, "" where it may mean
// the bed or the sheet.
func (r *reader) standsIn(l *Line, m mention) string {
	cell := ""
	for i := range l.Items {
		it := &l.Items[i]
		switch {
		case it.Slot == "primer" || it.Slot == "remark" || it.Polarity != "yes":
		case it.Slot == "touches" && r.means(m, it):
			cell = cmp.Or(cell, it.At.Cell)
		case it.Slot != "touches" && (r.means(m, it) || m.mayBe(it) && slices.ContainsFunc(m.mat.Traits, it.hasTrait)):
			return ""
		}
	}
	return cell
}

// mayBe holds where a mention could be of the item by its class: a sheet with a film face
// is no TPO roof, though both are polyolefin.
func (m mention) mayBe(it *Item) bool {
	return m.mat.Family == "" || m.mat.Class == "" || it.Class == "" || m.mat.Class == it.Class || it.Slot == "substrate"
}

// means holds for a mention of the item: its product, its family, what it is made of, or a
// bare noun of its class ("at flashing").
func (r *reader) means(m mention, it *Item) bool {
	bare := strings.HasSuffix(m.mat.Family, "-unspecified") && it.Class == m.mat.Class
	switch {
	case m.product >= 0:
		return it.Product == r.sched.Products[m.product].ID
	case bare || m.mat.Family == "" && len(m.mat.Traits) > 0:
		return !slices.ContainsFunc(m.mat.Traits, func(t string) bool { return !it.hasTrait(t) })
	}
	return m.mat.Family != "" && it.Family == m.mat.Family
}

func (it *Item) hasTrait(t string) bool { return slices.Contains(it.Traits, t) }
