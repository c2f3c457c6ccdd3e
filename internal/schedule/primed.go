package schedule

// primedLimit takes the least temperature that the product's data gives with a
// primer, where the row has that primer: "5 °C (-5 with PR-2)".
func (r *reader) primedLimit(l *Line) {
	p := r.productOf(l.Main())
	if p == nil {
		return
	}
	whole := p.Figures["apply_min_c"]
	for _, m := range r.words.withPrimer.FindAllStringSubmatch(whole.Text, -1) {
		if !r.hasPrimer(l, m[2]) {
			continue
		}
		if f, ok := r.figure(source{slot: "apply_min", text: m[1], unit: whole.Unit, at: whole.At}, "temperature"); ok {
			f.Text = m[0]
			l.Figures["primed_apply_min_c"] = f
		}
	}
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
