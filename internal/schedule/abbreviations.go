package schedule

import (
	"strings"

	"abut/internal/workbook"
)

// abbreviations reads what notes and title blocks say of the office's own
// short words ("HE = heated enclosure"), so that cells can be read with them.
func (r *reader) abbreviations(s *workbook.Sheet, tables []*table) {
	for _, row := range s.Rows {
		if within(tables, row.Number) {
			continue
		}
		for _, c := range row.Cells {
			for _, m := range r.words.definition.FindAllStringSubmatch(c.Value, -1) {
				r.define(m[1], strings.TrimSpace(m[2]))
			}
		}
	}
}

func within(tables []*table, row int) bool {
	for _, t := range tables {
		if t.kind != kindOther && row >= t.head[0] && row <= t.last {
			return true
		}
	}
	return false
}

// define keeps the first meaning of a short word that is no tag or mark.
func (r *reader) define(short, meaning string) {
	if _, tag := r.lex.tags[fold(short)]; tag || r.marks[fold(short)] || r.short[short] != "" {
		return
	}
	r.short[short] = meaning
}

// spelled writes out the office's short words in a cell.
func (r *reader) spelled(text string) string {
	if len(r.short) == 0 {
		return text
	}
	fields := strings.FieldsFunc(text, func(c rune) bool { return strings.ContainsRune(" ,;()/\n", c) })
	for _, f := range fields {
		if meaning, ok := r.short[f]; ok && len(r.vocab.Find(f)) == 0 {
			text = strings.Replace(text, f, meaning, 1)
		}
	}
	return text
}
