package schedule

import "strings"

// offers finds the columns of what a contractor offers beside those of what was specified,
// under two bands of a heading: "SPECIFIED | OFFERED" over "Primer" each. What is offered
// counts, and what was specified where the same is offered; the material that was specified
// is what the offered one stands for (common practice of submittal reviews).
func (r *reader) offers(t *table) {
	asked, offered := r.banded(t, r.head.askedBand), r.banded(t, r.head.offerBand)
	if len(asked) < 2 || len(offered) < 2 {
		return
	}
	stands := false // a column under the offer says what material is offered
	for i, of := range offered {
		c := &t.cols[i]
		if c.Slot == "" {
			for _, g := range r.head.match(of) {
				if (g.slot == "material" || g.slot == "tag") && g.score >= 1 {
					c.Slot, c.Confidence, c.Why = g.slot, g.score, "what is offered for what was specified"
				}
			}
		}
		stands = stands || c.Slot == "tag" || c.Slot == "material"
	}
	for j, meant := range asked {
		p := &t.cols[j]
		if p.Slot == "material" && stands {
			p.Slot, p.Why = "specified", p.Why+", and another column has what is offered for it"
			continue
		}
		for i, of := range offered {
			if of != meant || p.Slot == "" {
				continue
			}
			if t.actual == nil {
				t.actual = map[int]int{}
			}
			t.actual[t.nums[j]] = t.nums[i]
			t.cols[i].Slot, t.cols[i].Confidence, t.cols[i].Why = "reference", 1, "what is offered counts before what was specified"
		}
	}
}

// banded lists the columns whose headings begin with words of a band, with the rest of
// each heading.
func (r *reader) banded(t *table, words map[string]bool) map[int]string {
	out := map[int]string{}
	for i := range t.cols {
		all := headingWords(t.cols[i].Heading)
		n := 0
		for n < len(all) && (words[all[n]] || n > 0 && r.head.filler[all[n]]) {
			n++
		}
		if n > 0 && n < len(all) {
			out[i] = strings.Join(all[n:], " ")
		}
	}
	return out
}

// isSame holds for a cell that says that what was specified is offered: "=", "as spec".
func (w *wordlists) isSame(text string) bool {
	return w.isBlank(text) || w.asSpecified.MatchString(text)
}
