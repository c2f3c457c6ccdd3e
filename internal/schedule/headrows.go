package schedule

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/material"
	"abut/internal/phrase"
	"abut/internal/workbook"
)

// unitRow holds for a row under a heading that gives nothing but units.
func (r *reader) unitRow(s *workbook.Sheet, row int) bool {
	n := 0
	for _, c := range s.Row(row) {
		if c.Merged || r.words.isBlank(c.Value) {
			continue
		}
		if !r.isUnit(c.Value) {
			return false
		}
		n++
	}
	return n >= 2
}

// boundRow holds for a row under a heading that tells only which end of a range
// stands below: "min", "max".
func (r *reader) boundRow(s *workbook.Sheet, row int) bool {
	n := 0
	for _, c := range s.Row(row) {
		if c.Merged || r.words.isBlank(c.Value) {
			continue
		}
		for _, w := range headingWords(c.Value) {
			if !slices.Contains(r.head.lower, w) && !slices.Contains(r.head.upper, w) {
				return false
			}
		}
		n++
	}
	return n >= 2
}

// endsRow holds for a row under a heading that gives the units of its columns, or tells
// which end of a range each is.
func (r *reader) endsRow(s *workbook.Sheet, row int) bool {
	return r.unitRow(s, row) || r.boundRow(s, row)
}

// glossRow holds for a row under a heading that explains some of its columns, a
// unit among them, and none that tells the rows apart: "°F, the lower of air and
// wall", "mils / psi".
func (r *reader) glossRow(s *workbook.Sheet, row int) bool {
	n, units, first := 0, 0, true
	for col := 1; col <= s.MaxCol; col++ {
		own, above := text(s, row, col), text(s, row-1, col)
		c, _ := s.At(row, col)
		switch {
		case own == "" && above == "":
		case first && own != "" || above == "" || c.Merged || r.isFigure(own):
			return false
		case own != "":
			n++
			if lead, _, _ := strings.Cut(own, ","); len(lead) > 1 && r.isUnit(strings.TrimSpace(strings.Split(lead, "/")[0])) {
				units++
			}
		}
		first = first && own == "" && above == ""
	}
	return n > 1 && units > 0 && !r.isData(s, row)
}

// isData holds for a row that fills a table: a good part of its cells are
// figures, dates, or name a material closer than a heading does.
func (r *reader) isData(s *workbook.Sheet, row int) bool {
	filled, data := r.dataCells(s, row)
	for _, c := range s.Row(row) {
		if !c.Merged && r.isMeasure(c.Value) && !r.isFigure(c.Value) && !r.namesMaterial(c.Value) {
			data++
		}
	}
	return data*3 > filled
}

// dataCells counts the filled cells of a row, and those that no heading holds.
func (r *reader) dataCells(s *workbook.Sheet, row int) (filled, data int) {
	for _, c := range s.Row(row) {
		if c.Merged || r.words.isBlank(c.Value) {
			continue
		}
		filled++
		if c.Kind == workbook.Number || c.Kind == workbook.Date || r.isFigure(c.Value) || r.namesMaterial(c.Value) {
			data++
		}
	}
	return filled, data
}

// isFigure holds for a text of digits without a word.
func (r *reader) isFigure(text string) bool {
	return startsWithDigit(text) && !strings.ContainsFunc(text, unicode.IsLetter)
}

// isMeasure holds for a text that is a figure with its unit and nothing else: "60 d", "40F".
func (r *reader) isMeasure(text string) bool {
	if len(text) > longCode || !startsWithDigit(text) {
		return false
	}
	return slices.ContainsFunc(r.phrase.Quantities(text, ""), func(q phrase.Quantity) bool {
		return q.Unit != "" && q.Min != nil && q.Start == 0 && q.End == len(strings.TrimSpace(text))
	})
}

// namesMaterial holds for a text that names one family and is no heading.
func (r *reader) namesMaterial(text string) bool {
	return r.materials.of(text, func() bool { return r.isMaterial(text) })
}

func (r *reader) isMaterial(text string) bool {
	for _, g := range r.head.match(text) {
		if g.score >= 1 {
			return false
		}
	}
	return slices.ContainsFunc(r.lex.named(text), func(m material.Material) bool { return m.Family != "" && !m.Generic })
}

// isUnit holds for a text that is a unit and nothing else.
func (r *reader) isUnit(text string) bool {
	text = strings.TrimSpace(text)
	if strings.HasPrefix(text, "(") || strings.HasPrefix(text, "[") {
		text = strings.TrimSpace(strings.Trim(text, "()[]"))
	}
	if text == "" || startsWithDigit(text) {
		return false
	}
	for _, q := range r.phrase.Quantities("7 "+text, "") {
		if q.Unit != "" && q.End == len(text)+2 {
			return true
		}
	}
	return false
}
