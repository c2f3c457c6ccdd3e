package schedule

import (
	"slices"
	"strings"

	"abut/internal/workbook"
)

// mayHead holds for a row that could begin a heading, by its words and those of the
// rows that could be the rest of it. Of most rows it tells for little that they are
// none, before the cells under them are asked: every row is tried, and some workbooks
// are nothing but text.
func (r *reader) mayHead(s *workbook.Sheet, row int, search *headingSearch) bool {
	if len(s.Row(row)) == 0 || !r.maySpeak(s, row) {
		return false
	}
	search.looked++
	above, _ := r.ownTexts(s, row-1)
	for n := 1; n <= maxHead && row+n-1 <= s.MaxRow; n++ {
		if n > 1 && !r.mayContinueHeading(s, row+n-1) {
			break
		}
		if r.isData(s, row+n-1) {
			continue
		}
		if b, bids := r.draft(s, row, n, false); b.mayBeHeading(bids, above) || r.endsRow(s, row+n) || r.glossRow(s, row+n) {
			return true
		}
	}
	return false
}

// mayBeHeading is isHeading where each column is what it could be at the best.
func (b *headingBlock) mayBeHeading(bids []bid, above int) bool {
	best := make([]float64, len(b.cols))
	for _, x := range bids {
		lean := byCells
		if x.slot == "material" {
			lean += sureSheets
		}
		best[x.col] = max(best[x.col], x.score+lean)
	}
	filled, sure, nearly, known := 0, 0, 0, 0
	for i, score := range best {
		if b.cols[i].Heading != "" {
			filled++
		}
		if score >= 0.5 {
			known++
		}
		if score >= sureHeading {
			sure++
		}
		if score >= nearlySure {
			nearly++
		}
	}
	return known >= 2 && (sure >= 2 || nearly >= 1 && filled >= leastWide && above*2 < filled)
}

// maySpeak holds where two columns of a row, or of those that could be the rest of its
// heading, have words that could make them known. One is enough where it may stand over
// several columns.
func (r *reader) maySpeak(s *workbook.Sheet, row int) bool {
	if len(r.set.Columns) > 0 { // they may name any words
		return true
	}
	first, width := 0, 0
	for _, c := range s.Row(row) {
		if strings.TrimSpace(c.Value) != "" {
			width++
		}
	}
	for i := range maxHead + 1 { // below the heading may stand a row of units or ends
		for _, c := range s.Row(row + i) {
			if c.Col == first || !r.speaks(c.Value) {
				continue
			}
			if first > 0 || width < s.MaxCol && s.MaxCol > 1 {
				return true
			}
			first = c.Col
		}
	}
	return false
}

// speaks holds for a text that alone, or with the one above or below it, may stand for a
// slot.
func (r *reader) speaks(text string) bool {
	return r.spoken.of(text, func() bool {
		text = strings.Join(strings.Fields(text), " ")
		return r.head.speaks(text) || r.glossed[text] != ""
	})
}

func (h *headings) speaks(text string) bool {
	words := headingWords(text)
	if low := strings.ToLower(text); partCamelCase(text) != text { // parts of a heading are read in small letters
		words = append(words, headingWords(low)...)
	}
	return slices.ContainsFunc(h.usual(words), h.begun) || slices.ContainsFunc(words, func(w string) bool { return h.parted[w] }) ||
		strings.ContainsAny(text, h.money) || h.deniedFirst(text) != ""
}
