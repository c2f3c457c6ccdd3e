package schedule

import (
	"maps"
	"slices"
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
