package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// reference finds "same as W1", "as N-07", "ditto" in a cell.
type reference struct {
	whole bool   // the cell says nothing else
	mark  string // "" for the row above
}

// carried are the slots that a ditto or "same as" of the whole line carries;
// number, place, dates and remarks stay the line's own. A ditto in a column of
// dates is the date above it.
var carried = []string{"material", "tag", "type", "thickness", "min_thickness", "substrate", "primer", "sealant", "touches",
	"left", "right", "top", "bottom", "front", "behind", "edge", "lap", "layers", "chemistry", "facer"}

// inherit replaces dittos and "same as" by the words they stand for.
func (r *reader) inherit(l *Line, sources []source, last *Line) {
	base := last
	for _, c := range sources {
		if c.slot == "material" || c.slot == "tag" {
			if ref, ok := r.refersTo(c.text); ok && ref.mark != "" {
				if to := r.lineOf(ref.mark, l.Sheet); to != nil {
					base = to
				}
			}
		}
	}
	for i := range sources {
		c := &sources[i]
		if last != nil && stated[c.slot] {
			c.text = r.likeAbove(c.text, last.above(l, c))
		}
		ref, ok := r.refersTo(c.text)
		if !ok {
			continue
		}
		from := base
		if ref.mark != "" {
			from = r.lineOf(ref.mark, l.Sheet)
		}
		if from == nil || from.ID == l.ID {
			continue
		}
		switch {
		case ref.whole && (isCarried(c.slot) || c.slot == "shelter" || c.slot == "place" || ref.mark == "" && isDateSlot(c.slot)):
			c.text, c.cell = from.above(l, c), workbook.Cell{}
		case c.slot == "remark" && from.Texts["remark"] != "":
			c.text = strings.TrimSpace(c.text) + "\n" + from.Texts["remark"]
		}
	}
	l.retell(sources)
	l.Place = l.Texts["place"]
	for i := range sources {
		if stated[sources[i].slot] {
			sources[i].text = r.words.writtenOut(sources[i].text) // the line keeps the words of the cell
		}
	}
}

// above is what a line says under the column of a cell that refers to it; in
// another table, all that it says in the columns of that slot.
func (l *Line) above(by *Line, c *source) string {
	if l.Table == by.Table && !c.part {
		return l.columns[c.at.column()]
	}
	return l.Texts[c.slot]
}

// retell keeps what the line says under each column, and puts together what
// several columns of a slot say, once references are resolved.
func (l *Line) retell(sources []source) {
	l.columns = make(map[string]string, len(sources))
	texts := map[string][]string{}
	for _, c := range sources {
		l.columns[c.at.column()] = c.text
		if c.text != "" && !slices.Contains(texts[c.slot], c.text) {
			texts[c.slot] = append(texts[c.slot], c.text)
		}
	}
	for slot := range l.Texts {
		if slot != "remark" { // what it takes over is not its own
			l.Texts[slot] = strings.Join(texts[slot], "; ")
		}
	}
}

// stated are the slots whose cells tell a material and its state.
var stated = map[string]bool{"substrate": true}

// likeAbove writes out a cell that takes the material of the row above and tells a
// state of its own: "idem, brushed", below "Plywood, dry".
func (r *reader) likeAbove(text, above string) string {
	lead := r.words.sameLead.FindStringIndex(text)
	material, _, _ := strings.Cut(above, ",")
	if lead == nil || material == "" || r.vocab.Family(text[lead[1]:]) != "" {
		return text
	}
	return material + ", " + text[lead[1]:]
}

func isCarried(slot string) bool {
	if _, figure := figureOf[slot]; figure {
		return true
	}
	for _, s := range carried {
		if s == slot {
			return true
		}
	}
	return false
}

// refersTo reads a cell that points at another line.
func (r *reader) refersTo(text string) (reference, bool) {
	t := strings.TrimSpace(text)
	if r.words.isDitto(t) || r.words.isDitto(strings.TrimSuffix(t, ".")) {
		return reference{whole: true}, true
	}
	for _, p := range r.points.of(t, func() []pointer { return r.pointers(t) }) {
		if !r.marks[fold(p.to)] {
			continue
		}
		rest := strings.Trim(t[p.end:], " .,;")
		return reference{whole: rest == "", mark: p.to}, true
	}
	return reference{}, false
}

// pointer is what the beginning of a text may point at.
type pointer struct {
	to  string
	end int // of the words that point
}

func (r *reader) pointers(text string) []pointer {
	var out []pointer
	for _, p := range r.words.sameAs {
		if m := p.FindStringSubmatch(text); m != nil {
			out = append(out, pointer{strings.Trim(m[1], " .,;"), len(m[0])})
		}
	}
	return out
}

// lineOf finds the line of a mark, on the same sheet first.
func (r *reader) lineOf(mark, sheet string) *Line {
	r.pointed = true
	var other *Line
	for _, i := range r.marked[fold(mark)] {
		l := &r.sched.Lines[i]
		if l.Sheet == sheet {
			return l
		}
		other = l
	}
	return other
}

// collectMarks lists the marks of a table before its rows are read, so that
// tags and marks are told apart. The numbers of rows and drawings are no tags either.
func (r *reader) collectMarks(t *table) {
	for i, col := range t.nums {
		for row := t.first; t.cols[i].Slot == "reference" && row <= t.last; row++ {
			if m := firstLine(text(t.sheet, row, col)); m != "" {
				r.lex.marks[fold(m)] = true
			}
		}
	}
	for _, slot := range []string{"mark", "group"} {
		col := t.column(slot)
		if col == 0 {
			continue
		}
		for row := t.first; row <= t.last; row++ {
			if m := firstLine(text(t.sheet, row, col)); m != "" {
				r.marks[fold(m)] = true
				r.lex.marks[fold(m)] = true
			}
		}
	}
}

func compileAll(patterns []string) ([]*regexp.Regexp, error) {
	var out []*regexp.Regexp
	for _, p := range patterns {
		re, err := regexp.Compile("(?i)" + p)
		if err != nil {
			return nil, err
		}
		out = append(out, re)
	}
	return out, nil
}
