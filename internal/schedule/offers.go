package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// offers finds the columns of what a contractor offers beside those of what was specified,
// under two bands of a heading: "SPECIFIED | OFFERED" over "Primer" each. What is offered
// counts, and what was specified where the same is offered; the material that was specified
// is what the offered one stands for (common practice of submittal reviews).
func (r *reader) offers(t *table) {
	asked, offered := r.banded(t, r.head.askedBand), r.banded(t, r.head.offerBand)
	if len(asked) > 0 && len(offered) == 0 {
		offered = r.putOn(t) // "Sched. product | Installed product" of a log
	}
	if len(asked) < 2 || len(offered) < 2 {
		r.specifiedName(t, asked, offered) // "Sched. product | Offered product", and all else said once
		return
	}
	r.unband(t, asked)
	r.unband(t, offered)
	t.offered, t.actual = map[int]int{}, map[int]int{}
	of := r.specifiedName(t, asked, offered)
	for i := range offered {
		t.offered[t.nums[i]] = 0
		if of >= 0 && namesMaterial(t.cols[i].Slot) {
			t.offered[t.nums[i]] = t.nums[of]
		}
	}
	for j := range t.cols {
		if _, is := asked[j]; !is || j == of || t.cols[j].Slot == "" || t.cols[j].Slot == "remark" {
			continue // what two sides remark both counts
		}
		if i := t.offerOf(j, asked, offered); i >= 0 {
			c := &t.cols[i]
			t.actual[t.nums[j]] = t.nums[i]
			c.Slot, c.Confidence, c.Why = "reference", 1, "what is offered counts before what was specified"
		}
	}
}

// putOn lists the columns of the products that were put on, in a log that has what was
// scheduled beside them; words of the work head dates too, which are none.
func (r *reader) putOn(t *table) map[int]string {
	out := r.banded(t, r.head.laidBand)
	for i := range out {
		if !namesMaterial(t.cols[i].Slot) {
			delete(out, i)
		}
	}
	return out
}

// offerOf is the column of what is offered for what another asks: that of the same words
// below its band, else of the same slot; -1 for none.
func (t *table) offerOf(asks int, asked, offered map[int]string) int {
	kin := -1
	for i, c := range t.cols {
		switch said, is := offered[i]; {
		case is && said == asked[asks]:
			return i
		case is && kin < 0 && c.Slot == t.cols[asks].Slot && c.Slot != "reference":
			kin = i
		}
	}
	return kin
}

// namesMaterial holds for the slots that tell which material a row is about.
func namesMaterial(slot string) bool { return slot == "material" || slot == "tag" }

// unband lets the columns below a band tell by the rest of their headings what they hold,
// where the band itself hid it: "Spec'd primer".
func (r *reader) unband(t *table, band map[int]string) {
	for i, rest := range band {
		c := &t.cols[i]
		for _, g := range r.head.match(rest) {
			if g.slot == c.Slot || g.slot == "mark" && c.Slot == "tag" { // the mark of what is offered
				break
			}
			if g.score >= 1 && !slices.Contains(productSlots, g.slot) && hiddenByBand(c, g.slot) {
				c.Slot, c.Confidence, c.Why = g.slot, g.score, `heading says "`+g.words+`" below its band`
				break
			}
		}
	}
}

// hiddenByBand holds for a column that may be of another slot than the one it has, if any:
// its band told that, or the tags under it, which are those of primers too.
func hiddenByBand(c *Column, slot string) bool {
	return slices.Contains([]string{"", "reference", "specified", "remark"}, c.Slot) || (c.Slot == "tag" || c.Slot == "with") && !namesMaterial(slot)
}

// specifiedName is the column of the material that was specified, which becomes that for
// which another is offered; -1 where no column under the offer names a material.
func (r *reader) specifiedName(t *table, asked, offered map[int]string) int {
	names := func(i int) bool { return namesMaterial(t.cols[i].Slot) }
	stands := false
	for i := range offered {
		stands = stands || names(i)
	}
	found, most := -1, 0
	for j, rest := range asked {
		if n := r.asksMaterial(&t.cols[j], rest); stands && n > 0 && (n > most || n == most && j < found) {
			found, most = j, n
		}
	}
	if found >= 0 {
		p := &t.cols[found]
		p.Slot, p.Why = "specified", p.Why+", and another column has what is offered for it"
	}
	return found
}

// asksMaterial tells how surely a column under a band names the material that was asked
// for, 0 for not at all: one that was taken for what lies beside the row's own, since tags
// of the products stand under both, does so where its words below the band say "material".
func (r *reader) asksMaterial(c *Column, rest string) int {
	switch c.Slot {
	case "material":
		return 3
	case "tag":
		return 2
	case "with", "":
		if m := r.head.match(rest); len(m) > 0 && m[0].score >= 1 && namesMaterial(m[0].slot) {
			return 1
		}
	}
	return 0
}

// bandEnd is the end of a band's word that is cut short: "Spec'd primer", "Sub’d primer".
var bandEnd = regexp.MustCompile(`(?i)(\pL)['’]d\b`)

// banded lists the columns whose headings, or what of them stands below a band of another
// kind, begin or end with words of a band, with the rest of each: "Offered primer", "Primer
// (offered)", "Material | Offered primer".
func (r *reader) banded(t *table, words map[string]bool) map[int]string {
	out := map[int]string{}
	for i, c := range t.cols {
		for _, heading := range []string{c.Heading, c.own} {
			if rest, ok := r.belowBand(heading, words); ok {
				out[i] = rest
				break
			}
		}
	}
	return out
}

// belowBand is a heading without the words of a band at its beginning and end.
func (r *reader) belowBand(heading string, words map[string]bool) (rest string, ok bool) {
	all := headingWords(bandEnd.ReplaceAllString(heading, "$1"))
	n, end := 0, len(all)
	for n < end && (words[all[n]] || n > 0 && r.head.filler[all[n]]) {
		n++
	}
	for end > n && words[all[end-1]] {
		end--
	}
	return strings.Join(all[n:end], " "), end > n && end-n < len(all)
}

// asOffered is the column whose cell counts for a column of a table of offers: that of
// what was specified where the offer says that it is the same; 0 where it says so of
// nothing.
func (r *reader) asOffered(t *table, row, col int) int {
	if done, ok := t.sheet.At(row, t.actual[col]); ok && !done.Merged {
		if !r.words.isSame(done.Value) && !(t.offered != nil && r.words.sameAsAsked(done.Value)) {
			return t.actual[col]
		}
		return col
	}
	of, is := t.offered[col]
	if c, _ := t.sheet.At(row, col); is && r.words.sameAsAsked(c.Value) {
		return of
	}
	return col
}

// standsAside holds for a cell that counts for nothing since another does, or that says
// no more than that.
func (r *reader) standsAside(t *table, row, col int) bool {
	if t.offered == nil {
		return false
	}
	if r.asOffered(t, row, col) != col {
		return true
	}
	for asked, offered := range t.actual {
		if c, _ := t.sheet.At(row, col); offered == col {
			return r.asOffered(t, row, asked) == asked && c.Value != ""
		}
	}
	return false
}

// isSame holds for a cell that says that what was specified is offered: "=", "as spec".
func (w *wordlists) isSame(text string) bool {
	return w.isBlank(text) || w.asSpecified.MatchString(text)
}

// sameAsAsked holds for a cell under an offer that says no more than that it is what was
// specified. "Same" and "complies" mean that only there.
func (w *wordlists) sameAsAsked(text string) bool {
	plain := strings.Join(headingWords(text), " ")
	if slices.Contains(w.sameOffered, plain) && plain != "" {
		return true
	}
	at := w.asSpecified.FindStringIndex(text)
	return at != nil && at[1] == len(text)
}
