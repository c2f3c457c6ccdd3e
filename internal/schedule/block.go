package schedule

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"abut/internal/workbook"
)

// maxHead is how many rows a heading may take up.
const maxHead = 3

// headingBlock is a candidate for a heading: its rows and the slot of each column.
type headingBlock struct {
	rows  int
	cols  []Column
	nums  []int
	known int
	gloss bool // its last row only explains the columns
}

// mostLooked is how many rows of a sheet are looked at as headings before only those are
// that stand apart or repeat one: of so many with words of headings most are text.
const mostLooked = 2000

// headingSearch is the search for the headings of one sheet.
type headingSearch struct {
	looked int             // rows looked at closer so far
	found  map[string]bool // the words of those found
}

// headingAt finds the heading that begins at a row.
func (r *reader) headingAt(s *workbook.Sheet, row int, search *headingSearch) (headingBlock, bool) {
	if search.looked > mostLooked && !search.found[rowWords(s, row)] {
		if above, _ := r.ownTexts(s, row-1); above > 1 {
			return headingBlock{}, false
		}
	}
	if !r.mayHead(s, row, search) {
		return headingBlock{}, false
	}
	b, ok := r.tryHeading(s, row)
	if ok {
		search.found[rowWords(s, row)] = true
	}
	return b, ok
}

// rowWords are the words of a row in one text.
func rowWords(s *workbook.Sheet, row int) string {
	var out []string
	for _, c := range s.Row(row) {
		out = append(out, c.Value)
	}
	return strings.Join(out, "\x00")
}

// tryHeading tries one, two and three rows as a heading and keeps the block that
// makes most columns known; a further row must make more of them known.
func (r *reader) tryHeading(s *workbook.Sheet, row int) (headingBlock, bool) {
	var best headingBlock
	above, _ := r.ownTexts(s, row-1)
	for n := 1; n <= maxHead && row+n-1 <= s.MaxRow; n++ {
		if n > 1 && !r.mayContinueHeading(s, row+n-1) {
			break
		}
		if n == 1 && r.dividesRows(s, row) {
			continue
		}
		if r.isData(s, row+n-1) {
			if r.knowsAny(s, row, n) {
				break // it is a row below a heading
			}
			continue
		}
		b := r.assign(below(s, row+n), row, n, "", false)
		parts := n > 1 && b.known == best.known && best.rows == n-1 && r.partsAbove(s, row+n-1)
		if b.known > best.known || parts {
			if above < 2 && !r.isHeading(s, row, b) && r.isHeading(s, row, best) {
				break // below a gap or a title it is one without what is added
			}
			best = b
		}
	}
	switch next := row + best.rows; {
	case best.rows == 0:
	case r.endsRow(s, next):
		best = r.assign(below(s, next+1), row, best.rows+1, "", false)
	case r.glossRow(s, next):
		best = r.assign(below(s, next+1), row, best.rows+1, "", true)
	}
	return best, r.isHeading(s, row, best) && !r.isTitle(s, row, best)
}

// isTitle holds for a first row that only stands above a heading: one text over
// most of the columns or longer than a heading, or a row without which the rest
// makes the same columns known.
func (r *reader) isTitle(s *workbook.Sheet, row int, b headingBlock) bool {
	if b.rows == 1 {
		return false
	}
	own, only := r.ownTexts(s, row)
	widest := 1
	for _, m := range s.Merges {
		if m.Top <= row && row <= m.Bottom {
			widest = max(widest, m.Right-m.Left+1)
		}
	}
	rest := r.assign(below(s, row+b.rows), row+1, b.rows-1, "", b.gloss)
	switch {
	case !r.isHeading(s, row+1, rest) || own > 1 && widest > 1:
		return false
	case own == 1 && wallTitle.MatchString(strings.TrimSpace(only.Value)):
		return true // "Wall type B - metal panel", over each of its own headings
	case own == 1 && (widest*2 > len(b.nums) || len(headingWords(only.Value)) > longHeading || rest.tagsUnder(only.Col)):
		return true
	}
	return maps.Equal(rest.slots(), b.slots())
}

// tagsUnder holds for a heading whose first column is surely that of the tags or marks, and
// is the one given: what stands alone over it is a title, "Primers" over "Code".
func (b *headingBlock) tagsUnder(col int) bool {
	first := &b.cols[0]
	return b.nums[0] == col && isOwn(first.Slot) && first.Confidence >= sureHeading
}

// ownTexts counts the texts of a row that are not a merged cell's shadow, and
// gives the last of them.
func (r *reader) ownTexts(s *workbook.Sheet, row int) (n int, last workbook.Cell) {
	for _, c := range s.Row(row) {
		if !c.Merged && !r.words.isBlank(c.Value) {
			n++
			last = c
		}
	}
	return n, last
}

// dividesRows holds for a row of one text over several columns ("Sealants"), which
// names the rows below it and no column.
func (r *reader) dividesRows(s *workbook.Sheet, row int) bool {
	n, only := r.ownTexts(s, row)
	return n == 1 && slices.ContainsFunc(s.Merges, func(m workbook.Range) bool {
		return m.Top == row && only.Row == row && m.Left == only.Col && m.Right > m.Left
	})
}

// slots gives the slot of each known column by its number.
func (b *headingBlock) slots() map[int]string {
	out := map[int]string{}
	for i, c := range b.cols {
		if c.Slot != "" {
			out[b.nums[i]] = c.Slot
		}
	}
	return out
}

// longHeading is how many words a heading may have, and one in fewLong may have more.
const (
	longHeading = 6
	fewLong     = 5
)

// mayContinueHeading tells whether a row could be the lower part of a heading:
// several texts, no dates or numbers, and short ones, but for a few.
func (r *reader) mayContinueHeading(s *workbook.Sheet, row int) bool {
	words, long := 0, 0
	for col := 1; col <= s.MaxCol; col++ {
		c, ok := s.At(row, col)
		if !ok || strings.TrimSpace(c.Value) == "" || c.Merged {
			continue
		}
		if c.Kind == workbook.Number || c.Kind == workbook.Date || r.isFigure(c.Value) || r.isMeasure(c.Value) || r.tellsDay(c.Value) {
			return false
		}
		words++
		if len(headingWords(c.Value)) > longHeading {
			long++
		}
	}
	return words > 1 && long*fewLong <= words // a single text heads the rows below it
}

// tellsDay holds for a text that tells a day, or with one word when it is not known: "TBD".
// Several words without a figure are a heading: "Left open".
func (r *reader) tellsDay(text string) bool {
	return r.says(text, anyYear) && (strings.ContainsAny(text, "0123456789") || len(strings.Fields(text)) == 1)
}

// partsAbove holds for a row of texts that all stand below cells which are merged over several
// columns: it parts those, and is none of the rows.
func (r *reader) partsAbove(s *workbook.Sheet, row int) bool {
	n := 0
	for _, c := range s.Row(row) {
		if c.Merged || r.words.isBlank(c.Value) {
			continue
		}
		if !slices.ContainsFunc(s.Merges, func(m workbook.Range) bool {
			return m.Top == row-1 && m.Bottom == row-1 && m.Left <= c.Col && c.Col <= m.Right && m.Right > m.Left
		}) {
			return false
		}
		n++
	}
	return n > 1
}

// bid is one slot that a column could take.
type bid struct {
	col int
	guess
	others int  // what else the column could be as surely
	first  bool // nothing else is as likely
}

// why says by what words a slot is known.
func (g guess) why() string {
	if g.noted {
		return "a note explains it as \"" + g.words + "\""
	}
	return "heading says \"" + g.words + "\""
}

// assign gives each column under a heading block the slot that suits it best;
// most slots stand once, and the surest column takes them. sort keeps to the
// slots of product data or of schedules; "" takes both. With gloss the last row
// only explains the columns.
func (r *reader) assign(under stretch, row, n int, sort string, gloss bool) headingBlock {
	b, bids := r.draft(under.sheet, row, n, gloss)
	r.award(&b, under, bids, sort)
	return b
}

// draft is a heading block before the cells under it are asked, with what each of its
// columns could be.
func (r *reader) draft(s *workbook.Sheet, row, n int, gloss bool) (headingBlock, []bid) {
	width := len(s.Row(row))
	b := headingBlock{rows: n, gloss: gloss, cols: make([]Column, 0, width), nums: make([]int, 0, width)}
	var bids []bid
	upper, _ := r.ownTexts(s, row)
	over := "" // what is written over a column left of this one, and over none since
	heads := slices.Collect(r.heads(s, row, n, gloss || n > 1 && r.unitRow(s, row+n-1)))
	works := r.works(heads, func(h columnHead) string { return text(s, row, h.col) })
	for i, h := range heads {
		b.nums = append(b.nums, h.col)
		b.cols = append(b.cols, Column{Letter: workbook.ColumnName(h.col), Heading: h.whole, Hidden: s.ColHidden(h.col), gloss: h.unit, own: h.sub})
		list := r.bids(h)
		if works != nil {
			b.cols[i].work, list = works[i].work, r.bidsIn(works[i])
		}
		if h.group != "" || n == 1 || text(s, row, h.col) != "" {
			over = h.group
		} else if len(list) == 0 && over != "" && h.sub != "" && upper > 1 { // "Application temp." over the first of "Min." and "Max."
			h.whole, h.group = over+" "+h.sub, over
			list = r.bids(h)
		}
		for k, g := range list {
			bids = append(bids, bid{i, g, others(list, k), k == 0 && (len(list) == 1 || g.score-list[1].score > 2*headNoun)})
		}
	}
	return b, bids
}

// award gives the columns their slots by the bids, as far as the rows under the
// heading fit.
func (r *reader) award(b *headingBlock, under stretch, bids []bid, sort string) {
	for i := range bids {
		if sort == kindProducts {
			break // its materials are trade names
		}
		bids[i].score += r.leaning(under, b.nums[bids[i].col], &bids[i], b.cols[bids[i].col].Heading)
	}
	// of two columns as sure of a slot, it goes to the one that could be nothing else
	slices.SortStableFunc(bids, func(x, y bid) int {
		return cmp.Or(cmp.Compare(y.score, x.score), x.others-y.others, x.col-y.col)
	})
	taken := map[[2]string]string{} // the words that each slot of a work is taken by
	for _, x := range bids {
		c, slot := &b.cols[x.col], r.head.bySlot[x.slot]
		of := [2]string{c.work, x.slot}
		by, again := taken[of]
		if c.Slot != "" || again && !slot.many && !(slot.sides && by == x.words && b.rows > 1) || slot.in != "" && sort != "" && slot.in != sort {
			continue
		}
		if !r.columnFits(under, b.nums[x.col], x.guess) || r.daysNotRemarks(under, b.nums[x.col], c, x.guess) {
			continue
		}
		taken[of] = x.words
		c.Slot, c.Confidence = x.slot, min(x.score, 1)
		c.Why = x.why()
		b.known++
	}
}

// leaning is what the cells of a column add to one of several readings of its heading,
// and a word that surely means the sheets to that of the materials.
func (r *reader) leaning(under stretch, col int, x *bid, heading string) float64 {
	lean := 0.0
	if x.slot == "material" && x.first && holdsAny(r.head.usual(headingWords(heading)), r.head.sheets) {
		lean += sureSheets
	}
	if (meets[x.slot] || isOwn(x.slot)) && (x.others > 0 || x.slot == "material" && x.score >= sureHeading) && r.names(under, col) {
		lean += byCells
	}
	return lean
}

// What a word for the sheets, and cells that name materials, count beside the words of
// the headings.
const (
	sureSheets = 0.2
	byCells    = 0.1
)

// names holds where most telling cells of a column name a material.
func (r *reader) names(under stretch, col int) bool {
	telling, named := 0, 0
	for row := under.first; row <= under.last && telling < 40; row++ {
		words := text(under.sheet, row, col)
		if r.words.isBlank(words) || r.words.isNone(words) || r.words.isDitto(words) {
			continue
		}
		if telling++; len(r.lex.find(words)) > 0 {
			named++
		}
	}
	return telling > 0 && named*2 > telling
}

// daysNotRemarks holds for days below a heading over several columns that tells of remarks
// ("When / remarks"), where the heading of the column itself does not: the remarks are those
// of another column.
func (r *reader) daysNotRemarks(under stretch, col int, c *Column, g guess) bool {
	if g.slot != "remark" || c.own == "" || c.own == c.Heading || r.head.own(c.own)["remark"].score > 0 {
		return false
	}
	return r.mostly(under, col, "date")
}
