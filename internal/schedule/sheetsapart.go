package schedule

import (
	"slices"
	"strings"
)

// sheetHeadings are the words of headings for the side of a wall that a sheet lies on.
type sheetHeadings struct{ Outer, Inner []string }

// sheetsApart finds the two columns of a table of which one names the outer sheet of a
// wall, or its sheet and no side, and the other the inner one: "Sheet out" and "Sheet
// in", "Membrane" and "Int. membrane". The row is about the outer sheet, to which its
// thickness, laps and primer belong; the inner one lies behind it.
func (r *reader) sheetsApart(t *table) {
	outer, inner, plain := -1, -1, -1
	for i, c := range t.cols {
		words := headingWords(c.Heading)
		if !r.namesSheet(words) || !r.halfNamed(t, t.nums[i]) {
			continue
		}
		out, in := holdsAny(words, r.head.sheetsOf.Outer), holdsAny(words, r.head.sheetsOf.Inner)
		at := &plain
		switch {
		case out && in:
			return
		case out:
			at = &outer
		case in:
			at = &inner
		}
		if *at >= 0 {
			return // two of a side
		}
		*at = i
	}
	if outer < 0 {
		outer = plain
	}
	if inner < 0 || outer < 0 || t.column("behind") > 0 && t.column("behind") != t.nums[inner] {
		return
	}
	if main := t.column("material"); main > 0 && main != t.nums[outer] && main != t.nums[inner] {
		return
	}
	t.cols[outer].Slot, t.cols[outer].Confidence, t.cols[outer].Why = "material", 1, "one of two columns of sheets, the outer one"
	t.cols[inner].Slot, t.cols[inner].Confidence, t.cols[inner].Why = "behind", 1, "one of two columns of sheets, the inner one"
}

// namesSheet holds for a heading that, but for the words of a side, calls what a row is
// about: "sheet", "membrane", "vapor barrier".
func (r *reader) namesSheet(words []string) bool {
	rest := slices.DeleteFunc(slices.Clone(words), func(w string) bool {
		return slices.Contains(r.head.sheetsOf.Outer, w) || slices.Contains(r.head.sheetsOf.Inner, w)
	})
	if len(rest) == 0 {
		return false
	}
	return slices.ContainsFunc(r.head.match(strings.Join(rest, " ")), func(g guess) bool { return g.score >= 1 && g.slot == "material" })
}

// halfNamed holds for a column of which half of the cells or more name a material or a product:
// "Sheet (in.)" is a thickness, and "Membrane in" a day.
func (r *reader) halfNamed(t *table, col int) bool {
	filled, named := 0, 0
	for words := range r.said(t, col) {
		if r.words.isBlank(words) || r.words.isNone(words) {
			continue
		}
		filled++
		if len(r.lex.find(words)) > 0 {
			named++
		}
	}
	return filled > 0 && named*2 >= filled
}
