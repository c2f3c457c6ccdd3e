package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// explanation is a heading, and what a note says of it.
type explanation struct{ word, says string }

var (
	sayings   = regexp.MustCompile(`[.;|•·]\s+|\n`)
	explained = regexp.MustCompile(`^([^=]*?)\s*(?:=|\s(in)\s)\s*(.+)$`)
	unquoted  = regexp.MustCompile(`['"‘’“”]([^'"‘’“”]+)['"‘’“”]`)
	several   = regexp.MustCompile(`\s*[/&]\s*|\s+and\s+`)
	shortened = regexp.MustCompile(`^(\pL[\pL ]{2,40}?)\s*\(([^()\s]+)\)\s*(?::|=|$)`) // "Hold points (HP): ..."
	furtherOn = regexp.MustCompile(`\s*[,(:]|\s(?:as|that|which|when|where|while)\s`)
)

// meant is what a note says of a heading, up to where it goes on to other things:
// "finish as last updated".
func meant(says string) string {
	if at := furtherOn.FindStringIndex(says); at != nil && at[0] > 0 {
		return says[:at[0]]
	}
	return says
}

// explainColumns gives columns what notes say of their headings: "TS = surface at
// placing, in C", "LAP, THK in mm". A heading that tells nothing by itself gets its
// slot from that.
func (r *reader) explainColumns(b *workbook.Book, all []*table) {
	heads := map[string]bool{}
	for _, t := range all {
		for i, c := range t.cols {
			heads[c.Heading] = c.Heading != ""
			if t.lone(i) {
				heads[c.own] = true
			}
		}
	}
	for i := range b.Sheets {
		tables := onSheet(all, &b.Sheets[i])
		for _, row := range b.Sheets[i].Rows {
			if within(tables, row.Number) {
				continue
			}
			for _, c := range row.Cells {
				for _, e := range r.explanations(c.Value, heads) {
					r.explain(all, e)
				}
			}
		}
	}
}

// lone holds for a column whose own words stand under a heading of several, and in no
// other column of its table: a note may call it by them alone. "mm" under two headings
// calls neither.
func (t *table) lone(i int) bool {
	own := t.cols[i].own
	if own == "" || own == t.cols[i].Heading {
		return false
	}
	for k := range t.cols {
		if k != i && t.cols[k].own == own {
			return false
		}
	}
	return true
}

// explanations lists what a note says of headings.
func (r *reader) explanations(note string, heads map[string]bool) []explanation {
	var out []explanation
	for _, saying := range sayings.Split(note, -1) {
		var words []string // headings that share what is said of the next one
		open := false
		for part := range strings.SplitSeq(saying, ",") {
			part = strings.TrimRight(strings.TrimSpace(part), ".")
			m := explained.FindStringSubmatch(part)
			if m != nil {
				m[1] = unquoted.ReplaceAllString(m[1], "$1") // "'Days' = most days open"
			}
			named := shortened.FindStringSubmatch(part)
			switch {
			case named != nil && heads[named[2]]:
				out = append(out, explanation{named[2], named[1]})
				words, open = nil, false
			case heads[part]:
				words, open = append(words, part), false
			case m != nil && allIn(several.Split(m[1], -1), heads) && (m[2] == "" || r.beginsWithUnit(m[3])):
				out = append(out, dealOut(append(words, several.Split(m[1], -1)...), m[3])...)
				words, open = nil, true
			case open && !strings.Contains(part, "="):
				out[len(out)-1].says += ", " + part
			default:
				words, open = nil, false
			}
		}
	}
	return out
}

func allIn(words []string, known map[string]bool) bool {
	return !slices.ContainsFunc(words, func(w string) bool { return !known[w] })
}

// dealOut gives each heading its own part of what is said ("CVR / CVD = what covers
// it and the day it is shut"), or all of it where the parts are not as many.
func dealOut(words []string, says string) []explanation {
	parts := several.Split(says, -1)
	var out []explanation
	for i, w := range words {
		said := says
		if len(parts) == len(words) {
			said = parts[i]
		}
		out = append(out, explanation{w, said})
	}
	return out
}

// beginsWithUnit holds for "mm" and for "L/(s·m²) at 75 Pa".
func (r *reader) beginsWithUnit(says string) bool {
	fields := strings.Fields(says)
	for n := min(3, len(fields)); n > 0; n-- {
		if r.isUnit(strings.Join(fields[:n], " ")) {
			return true
		}
	}
	return false
}

// explain writes what a note says of a heading behind it, once.
func (r *reader) explain(all []*table, e explanation) {
	for _, t := range all {
		for i := range t.cols {
			c := &t.cols[i]
			if c.gloss != "" || c.Heading != e.word && !(c.own == e.word && t.lone(i)) {
				continue
			}
			c.gloss, c.Heading = e.says, c.Heading+" "+e.says
			if c.Slot == "" {
				r.takeFreeSlot(t, i)
			}
		}
	}
}

// takeFreeSlot gives a column the surest slot that its note tells, of those that no
// other column has.
func (r *reader) takeFreeSlot(t *table, i int) {
	c := &t.cols[i]
	for _, g := range append(r.guesses(c.gloss, "", c.gloss), r.guesses(meant(c.gloss), "", meant(c.gloss))...) {
		g.noted = true
		slot := r.head.bySlot[g.slot]
		fits := slot.in == "" || slot.in == t.kind
		if g.score >= toldByNote && fits && (slot.many || t.column(g.slot) == 0) && r.columnHolds(t.stretch(), t.nums[i], slot.kind) {
			c.Slot, c.Confidence, c.Why = g.slot, min(g.score, 1), g.why()
			return
		}
	}
}

// toldByNote is the share of a note on a heading that the words of a slot must cover.
const toldByNote = 0.6
