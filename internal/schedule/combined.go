package schedule

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// combinedWords tell which columns an office draws together to one ("Membrane /
// primer", "Installed > covered", "Thk; laps"): what a heading names beside one another
// its cells tell in the same order. From policies/knowledge/columns.json.
type combinedWords struct {
	Groups [][]string     `json:"groups"` // slots that one heading may name, what the row is about first
	Marks  []combinedMark `json:"marks"`  // that part what is named, the strongest first

	Sided   []string `json:"sided"`  // slots whose cells may go on with the other side of the wall
	Inside  string   `json:"inside"` // by words with a colon
	Outside string   `json:"outside"`
	inside  *regexp.Regexp
	outside *regexp.Regexp
}

// combinedMark is one such mark, as headings and as cells write it.
type combinedMark struct {
	Heading string `json:"heading"`
	Cell    string `json:"cell"`
	heading *regexp.Regexp
	cell    *regexp.Regexp
}

func (w *combinedWords) compile() (err error) {
	for i := range w.Marks {
		m := &w.Marks[i]
		if m.heading, err = regexp.Compile("(?i)" + m.Heading); err != nil {
			return fmt.Errorf("combined: marks: %q: %w", m.Heading, err)
		}
		if m.cell, err = regexp.Compile("(?i)" + m.Cell); err != nil {
			return fmt.Errorf("combined: marks: %q: %w", m.Cell, err)
		}
	}
	if w.inside, err = regexp.Compile("(?i)" + w.Inside); err != nil {
		return fmt.Errorf("combined: inside: %w", err)
	}
	if w.outside, err = regexp.Compile("(?i)" + w.Outside); err != nil {
		return fmt.Errorf("combined: outside: %w", err)
	}
	return nil
}

// combination is what a column tells in each of its cells: slots in their order, and
// the mark between them.
type combination struct {
	slots []string
	mark  *regexp.Regexp
	units []string // of bare figures, as the parts of the heading tell them

	lead *regexp.Regexp // parts a cell by its groups, instead of the mark
}

// leastNamed is the share of a part of a heading that must name a slot: "flashing set".
const leastNamed = 0.5

// combined lists the slots that a heading names beside one another, nil where it does
// not name several that are drawn together, and the slot that the column is mainly of.
func (h *headings) combined(text string) (slots []string, main string) {
	text = parenthesis.ReplaceAllString(text, " ")
	for _, mark := range h.combos.Marks {
		parts := mark.heading.Split(text, -1)
		if len(parts) < 2 {
			continue
		}
		for _, group := range h.combos.Groups {
			if slots = h.eachNames(parts, group); slots != nil {
				return slots, mainOf(slots, group)
			}
		}
		return nil, "" // a weaker mark stands within what the stronger one parts
	}
	return nil, ""
}

// mainOf is what a column of several slots is mainly of: that which the rows are about,
// and of figures the one that the heading names first.
func mainOf(slots, group []string) string {
	if _, figures := figureOf[group[0]]; figures {
		return slots[0]
	}
	return group[slices.IndexFunc(group, func(s string) bool { return slices.Contains(slots, s) })]
}

// eachNames is the slot of a group that each part of a heading names, each another; nil
// where one does not.
func (h *headings) eachNames(parts, group []string) []string {
	var out []string
	for _, part := range parts {
		best := guess{}
		for _, g := range h.match(part) {
			if slices.Contains(group, g.slot) && g.score > best.score {
				best = g
			}
		}
		if best.score < leastNamed || slices.Contains(out, best.slot) {
			return nil
		}
		out = append(out, best.slot)
	}
	return out
}

// partColumns finds the columns of a table whose cells tell several things in the order
// in which the heading names them. Most cells must be parted so, else the heading is
// of one thing in two words.
func (r *reader) partColumns(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		told, _ := r.head.combined(c.own)
		if !slices.Contains(told, c.Slot) || slices.ContainsFunc(told, func(s string) bool { return s != c.Slot && t.column(s) > 0 }) {
			continue
		}
		for _, mark := range r.cellMarks(c.own) {
			one := &combination{slots: told, mark: mark}
			if r.mostlyParted(t, t.nums[i], one) {
				one.units = r.unitsOfParts(c.own, told)
				c.parts = one
				c.Why += "; its cells tell " + strings.Join(told, ", then ")
				break
			}
		}
		if c.parts == nil && c.Slot == "primer" && slices.Contains(told, "substrate") && !r.mostlyNames(t, t.nums[i], "primer") {
			c.Slot, c.Why = "substrate", c.Why+"; some cells tell a primer too"
		}
	}
}

// unitsOfParts are the units that the parts of a heading give to bare figures, each to
// its own: "Mil / overlap (in)".
func (r *reader) unitsOfParts(heading string, slots []string) []string {
	units := make([]string, len(slots))
	for _, mark := range r.head.combos.Marks {
		at := outsideBrackets(heading, mark.heading.FindAllStringIndex(heading, -1))
		if len(at) != len(slots)-1 {
			continue
		}
		from := 0
		for i, slot := range slots {
			to := len(heading)
			if i < len(at) {
				to = at[i][0]
			}
			units[i] = r.unitIn(heading[from:to], figureOf[slot].kind, slot)
			if i < len(at) {
				from = at[i][1]
			}
		}
		return units
	}
	return units
}

// cellMarks are the marks that may part cells under a heading: its own first.
func (r *reader) cellMarks(heading string) []*regexp.Regexp {
	var own, others []*regexp.Regexp
	for _, mark := range r.head.combos.Marks {
		if mark.heading.MatchString(heading) {
			own = append(own, mark.cell)
		} else {
			others = append(others, mark.cell)
		}
	}
	return append(own, others...)
}

// mostlyParted holds where half of the telling cells of a column are parted as its
// heading is.
func (r *reader) mostlyParted(t *table, col int, by *combination) bool {
	telling, parted := 0, 0
	for words := range r.said(t, col) {
		if r.words.isDitto(words) {
			continue
		}
		telling++
		if pieces := r.pieces(words, by); len(pieces) == len(by.slots) && r.eachFits(pieces, by.slots) {
			parted++
		}
	}
	return parted > 0 && parted*2 >= telling
}

// pieces parts a cell in as many as its heading names. Of more, a primer is the last,
// and of all others the last keeps the rest.
func (r *reader) pieces(text string, by *combination) []string {
	if by.lead != nil {
		if m := by.lead.FindStringSubmatch(text); m != nil {
			return m[1:]
		}
		return []string{text}
	}
	n := len(by.slots)
	at := outsideBrackets(text, by.mark.FindAllStringIndex(text, -1))
	switch {
	case len(at) < n-1:
		return []string{text}
	case by.slots[n-1] == "primer":
		at = at[len(at)-n+1:]
	default:
		at = at[:n-1]
	}
	var out []string
	from := 0
	for _, mark := range at {
		out = append(out, strings.TrimSpace(text[from:mark[0]]))
		from = mark[1]
	}
	return append(out, strings.TrimSpace(text[from:]))
}

// outsideBrackets leaves out what stands in brackets.
func outsideBrackets(text string, at [][]int) [][]int {
	return slices.DeleteFunc(at, func(mark []int) bool { return inBrackets(text, mark[0]) })
}

// eachFits holds where the pieces of a cell can be what the heading names there: dates,
// figures, and primers or none.
func (r *reader) eachFits(pieces, slots []string) bool {
	for i, text := range pieces {
		fits := true
		switch slot := slots[i]; {
		case text == "":
			fits = false
		case r.words.isBlank(text) || r.words.isNone(text):
		case isDateSlot(slot):
			fits = r.isDate(text)
		case slot == "primer":
			fits = slices.ContainsFunc(r.lex.find(text), r.isPrimer) || r.saysNone(text)
		case slot == "lap" || slot == "thickness":
			fits = r.hasLength(text)
		case slot == "exposure_days":
			fits = r.hasDays(text)
		}
		if !fits {
			return false
		}
	}
	return true
}

// hasLength holds for a text that tells a length, or a bare figure.
func (r *reader) hasLength(text string) bool {
	for _, q := range r.phrase.Quantities(text, "length") {
		if q.Kind == "length" || q.Kind == "number" {
			return true
		}
	}
	return false
}

// hasDays holds for a text that tells how long something may last, or a bare figure, and
// no day.
func (r *reader) hasDays(text string) bool {
	return !r.isDate(text) && slices.ContainsFunc(r.phrase.Quantities(text, "days"), func(q phrase.Quantity) bool {
		return q.Kind == "days" || q.Kind == "months" || q.Kind == "number"
	})
}

// parted adds the pieces of a cell, each as a cell of its own. One that is not parted
// tells what the column is mainly of ("32 mil DFT" under "Thk; laps"), and a ditto all.
func (r *reader) parted(out []source, c source, by *combination) []source {
	if by == nil || c.text == "" {
		return r.head.combos.bySide(out, c)
	}
	pieces := r.pieces(c.text, by)
	if _, refers := r.refersTo(c.text); refers {
		pieces = slices.Repeat([]string{c.text}, len(by.slots))
	}
	if len(pieces) < len(by.slots) {
		c.slot = r.soleSlot(c, by)
		return append(out, c)
	}
	for i, text := range pieces {
		one := c
		one.slot, one.text, one.part = by.slots[i], text, true
		one.cell.Value = text
		one.ends = c.ends && one.slot == "lap"
		switch {
		case by.units[i] != "":
			one.unit, one.second = by.units[i], ""
		case figureOf[one.slot].kind != figureOf[c.slot].kind:
			one.unit, one.second = "", ""
		}
		out = append(out, one)
	}
	return out
}

// bySide adds a cell of what lies about the sheet, and the part of it that tells of the other
// side of the wall as a cell of that: "Brick. Inside: studs, batts, gypsum board".
func (w *combinedWords) bySide(out []source, c source) []source {
	if !slices.Contains(w.Sided, c.slot) || !strings.Contains(c.text, ":") {
		return append(out, c)
	}
	side, slot := w.inside, "behind"
	if c.slot == slot {
		side, slot = w.outside, "front"
	}
	at := side.FindStringIndex(c.text)
	if at == nil {
		return append(out, c)
	}
	other := c
	other.slot, other.text, other.part = slot, strings.TrimLeft(c.text[at[0]:], ".; \n"), true
	c.text = strings.TrimSpace(c.text[:at[0]])
	return w.bySide(append(out, c), other)
}

// soleSlot is what a cell tells that is not parted: what the column is mainly of, and the
// other one where that is the primer and the cell names none ("metal to metal"), or where
// one allows days, the other is a day, and the cell tells that other ("covered 12 Jun").
func (r *reader) soleSlot(c source, by *combination) string {
	i := slices.IndexFunc(by.slots, func(slot string) bool { return slot != c.slot })
	if i < 0 || r.eachFits([]string{c.text}, []string{c.slot}) {
		return c.slot
	}
	switch other := by.slots[i]; {
	case c.slot == "primer", c.slot == "exposure_days" && r.isDate(c.text), other == "exposure_days" && r.hasDays(c.text):
		return other
	}
	return c.slot
}

// beside takes a heading that names several columns which are drawn together for the
// one that the row is about, where no phrase is of the whole of it.
func (h *headings) beside(best ballot, sub string) {
	_, main := h.combined(sub)
	if main == "" {
		return
	}
	for _, g := range best {
		if g.score >= 1 {
			return
		}
	}
	best.take([]guess{{slot: main, score: besideOthers, words: strings.Join(headingWords(sub), " ")}}, 1)
}

// besideOthers is the score of a slot that a heading names beside others.
const besideOthers = 0.9
