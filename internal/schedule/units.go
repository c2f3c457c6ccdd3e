package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// units finds the unit that a heading gives to the bare figures below it.
func (r *reader) units(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		fig, ok := figureOf[c.Slot]
		kind := fig.kind
		switch {
		case c.Slot == "value":
			kind = "length" // of films, the one figure that offices leave bare there
		case !ok:
			continue
		}
		c.Unit = cmp.Or(r.unitIn(c.gloss, kind, c.Slot), r.slotUnit(c.own, c.Slot), r.slotUnit(c.Heading, c.Slot), r.unitIn(parenthesis.ReplaceAllString(c.Heading, " "), kind, c.Slot), r.unitIn(c.Heading, kind, c.Slot))
		if kind == "days" && c.Unit == "" {
			c.Unit = r.unitIn(c.Heading, "months", c.Slot)
		}
		for _, part := range headingUnits.Split(c.Heading, -1) {
			if unit := r.unitIn(part, kind, c.Slot); c.second == "" && unit != c.Unit {
				c.second = unit
			}
		}
	}
}

// headingUnits parts the two units of a heading: "Lap, mm (in)".
var headingUnits = regexp.MustCompile(`[(),;/]`)

// unitIn tries the words of a heading as units of the kind; those that the slot
// has for its units go first.
func (r *reader) unitIn(heading, kind, slot string) string {
	heading = inNoUnit.ReplaceAllString(heading, " ")
	if unit := r.slotUnit(heading, slot); unit != "" {
		return unit
	}
	fields := strings.FieldsFunc(heading, func(c rune) bool { return strings.ContainsRune(" ,_[]:;", c) })
	for n := 3; n >= 1; n-- {
		for i := len(fields) - n; i >= 0; i-- {
			if unit := r.unitOf(strings.Join(fields[i:i+n], " "), kind); unit != "" {
				return unit
			}
		}
	}
	return ""
}

// inNoUnit is the word "in" where it is no inches: "IN THE JOINT", "laid in a bed", "tie in".
var inNoUnit = regexp.MustCompile(`(?i)^\s*in\s+\pL+|\bti(?:e|ed|es|e-)\s*in\b|\bin\s+(?:the|an?|this|that|its|each|both|contact|place|field|situ)\b`)

// slotUnit is the unit that a heading names first, by the words that the slot has
// for its units: that of the figures below "ng/(Pa·s·m²) (perm)". A word of what the
// column is called ("vapor perm, ng") is none, unless nothing else is.
func (r *reader) slotUnit(heading, slot string) string {
	s := r.head.bySlot[slot]
	if s == nil || len(s.units) == 0 {
		return ""
	}
	words := headingWords(heading)
	named, other := r.head.naming(s, words), ""
	named[0] = named[0] || lead.MatchString(heading) && s.unitAt(words[1:]) != "" && slices.Contains(s.words, words[0])
	for i := range words {
		unit := s.unitAt(words[i:])
		if unit != "" && !named[i] {
			return unit
		}
		other = cmp.Or(other, unit)
	}
	return other
}

// lead is the first word of a heading that runs on without a sign, or is cut short by a
// point: "Perm ng", "Perm. (ng)".
var lead = regexp.MustCompile(`^\s*\pL+(?: +\pL|\.[ ,;(]*\pL)`)

// naming marks the words of a heading that only name a slot, short as they may be ("vap.
// perm."); "US perms" is a unit.
func (h *headings) naming(s *headingSlot, words []string) map[int]bool {
	named := map[int]bool{}
	words = slices.Clone(words)
	for i, w := range words {
		words[i] = cmp.Or(h.same[w], h.short[w], w)
	}
	for i := range words {
		for _, w := range s.words {
			phrase := strings.Fields(w)
			if _, ok := begins(words[i:], phrase); !ok || len(phrase) < 2 || h.units[phrase[0]] {
				continue
			}
			for k := range phrase {
				named[i+k] = true
			}
		}
	}
	return named
}

// unitAt is the unit that words begin with, by the longest name.
func (s *headingSlot) unitAt(words []string) string {
	unit, long := "", ""
	for name, u := range s.units {
		if _, ok := begins(words, strings.Fields(name)); ok && len(name) > len(long) {
			unit, long = u, name
		}
	}
	return unit
}

// unitOf gives the unit of a kind that a few words begin with, "" if none;
// brackets around it do not count.
func (r *reader) unitOf(words, kind string) string {
	return r.unitsOf.of(kind+"\n"+words, func() string { return r.findUnit(words, kind) })
}

func (r *reader) findUnit(words, kind string) string {
	if strings.HasPrefix(words, "(") {
		words = strings.TrimSuffix(words[1:], ")")
	}
	for _, q := range r.phrase.Quantities("7 "+words, "") {
		if q.Kind == kind && q.Unit != "" && strings.HasPrefix(strings.ToLower(words), strings.ToLower(q.Unit)) {
			return q.Unit
		}
	}
	return ""
}

// missingUnits gives columns of bare figures a unit: by what other cells of the
// column say, by the sheet's own words ("mm and °C throughout"), by another
// column of the workbook.
func (r *reader) missingUnits(all []*table) {
	for _, t := range all {
		for i := range t.cols {
			c := &t.cols[i]
			fig, ok := figureOf[c.Slot]
			if ok && fig.kind == "vapor_permeance" && permName.MatchString(cmp.Or(c.own, c.Heading)) {
				c.Unit = cmp.Or(r.unitSaid(fig.kind, c.Slot), c.Unit)
			}
			if !ok || c.Unit != "" {
				continue
			}
			c.Unit = cmp.Or(r.unitUnlessMarked(t, fig.kind, c.Slot), r.unitOfPair(t, fig.kind, c.Slot), r.unitInColumn(t, t.nums[i], fig.kind, c.Slot), r.unitNamed(fig.kind, c.Slot), r.unitOnSheet(t, fig.kind, c.Slot), r.unitBeside(t, fig.kind, c.Slot),
				unitElsewhere(all, t, fig.kind, c.Slot), r.dealtUnits[fig.kind], r.unitSaid(fig.kind, c.Slot), r.unitOfNotedLaps(t, t.nums[i], c.Slot))
		}
	}
	degrees := degreesOf(all)
	r.scale = cmp.Or(degrees, r.unitSaid("temperature", "reading_air"))
	for _, t := range all {
		for i := range t.cols {
			if c := &t.cols[i]; c.Unit == "" && figureOf[c.Slot].kind == "temperature" {
				c.Unit = degrees
			}
		}
	}
}

// pairOf are the columns of what is asked and of what was found.
var pairOf = map[string]string{"min_thickness": "thickness", "thickness": "min_thickness", "min_lap": "lap", "lap": "min_lap"}

// unitOfPair takes the unit that the heading of what is asked gives for what was found, and the
// other way round: "Req'd thk (mil)" beside "Act. thk".
func (r *reader) unitOfPair(t *table, kind, slot string) string {
	for _, c := range t.cols {
		if c.Slot == pairOf[slot] && c.Slot != "" {
			return r.unitIn(c.Heading, kind, c.Slot)
		}
	}
	return ""
}

// permName is a heading that is short for permeance and says its unit by no other word:
// where a cover sheet tells the unit of the workbook, it is no unit.
var permName = regexp.MustCompile(`(?i)^(?:water\s+)?(?:vapou?r\s+)?perm\.?$`)

// unlessMarked follows the unit of all figures that show none: "mm unless marked in.",
// "All °C U.N.O.".
var unlessMarked = regexp.MustCompile(`(?i)\b(?:(?:unless|except (?:where|when|as)|where not|if not)\s+(?:otherwise\s+)?(?:noted|marked|stated|shown|said|given|told)|u\.?n\.?o\b)`)

// unitUnlessMarked is the unit that the words above a table give to all figures that are
// not marked otherwise: what is marked in the same column then tells nothing of the others.
func (r *reader) unitUnlessMarked(t *table, kind, slot string) string {
	for _, row := range r.rowsAbove(t) {
		for _, c := range row.Cells {
			if at := unlessMarked.FindStringIndex(c.Value); at != nil {
				if unit := r.unitInTitle(c.Value[:at[0]], kind, slot); unit != "" && unitFits(slot, unit) {
					return unit
				}
			}
		}
	}
	return ""
}

// rowsAbove are the rows over a table, with all that stands in them, that over what is
// beside it too.
func (r *reader) rowsAbove(t *table) []workbook.Row {
	s := t.sheet
	if whole := r.whole[s.Name]; whole != nil {
		s = whole
	}
	for i := range s.Rows {
		if s.Rows[i].Number >= t.head[0] {
			return s.Rows[:i]
		}
	}
	return s.Rows
}

// unitNotes keeps what a title block or a cover sheet tells of the units of the whole
// workbook: "Units | mm, °C, g/L", "Units: mm and °F", and on a cover sheet, which has no
// table that it might be of, "All mm, °C unless noted".
func (r *reader) unitNotes(s *workbook.Sheet, cover bool) {
	for _, row := range s.Rows {
		label := ""
		for _, c := range row.Cells {
			said := strings.TrimSpace(c.Value)
			before, after, led := strings.Cut(said, ":")
			switch {
			case said == "" || c.Merged:
			case label != "":
				r.unitsSaid = append(r.unitsSaid, said)
			case led && r.words.unitLabels[strings.ToLower(strings.TrimSpace(before))]:
				r.unitsSaid = append(r.unitsSaid, after)
			case cover && ofAll.MatchString(said):
				if at := unlessMarked.FindStringIndex(said); at != nil {
					r.unitsSaid = append(r.unitsSaid, said[:at[0]])
				}
			}
			if label = ""; r.words.unitLabels[strings.ToLower(strings.TrimRight(said, " :"))] {
				label = said
			}
		}
	}
}

// unitSaid is the one unit of a kind that title blocks tell for the whole workbook, ""
// where they tell none, or two.
func (r *reader) unitSaid(kind, slot string) string {
	one := ""
	for _, said := range r.unitsSaid {
		for _, part := range strings.FieldsFunc(said, func(c rune) bool { return strings.ContainsRune(",;|", c) }) {
			unit := r.unitInTitle(part, kind, slot)
			if unit == "" || !unitFits(slot, unit) {
				continue
			}
			if one != "" && one != unit {
				return ""
			}
			one = unit
		}
	}
	return one
}

// unitFits holds unless the unit is one of films and the figures are none.
func unitFits(slot, unit string) bool {
	return isThickness(slot) || !filmUnit(unit)
}

func isThickness(slot string) bool { return slot == "thickness" || slot == "min_thickness" }

func (r *reader) unitInColumn(t *table, col int, kind, slot string) string {
	for row := t.first; row <= t.last; row++ {
		for _, q := range r.phrase.Quantities(text(t.sheet, row, col), "") {
			if q.Kind == kind && q.Unit != "" && unitFits(slot, q.Unit) {
				return q.Unit
			}
		}
	}
	return ""
}

func (r *reader) unitOnSheet(t *table, kind, slot string) string {
	for _, row := range r.rowsAbove(t) {
		for _, c := range row.Cells {
			if unit := r.unitInTitle(c.Value, kind, slot); unit != "" {
				return unit
			}
		}
	}
	for row := t.first; row <= t.end; row++ {
		if t.ownCells(row) > 1 {
			continue
		}
		for _, c := range t.sheet.Row(row) {
			if ofAll.MatchString(c.Value) {
				if unit := r.unitInTitle(c.Value, kind, slot); unit != "" && unitFits(slot, unit) {
					return unit
				}
			}
		}
	}
	return ""
}

// ofAll is how a note below a table begins that tells the unit of all its figures: "All
// thicknesses in mm", "Units: mm".
var ofAll = regexp.MustCompile(`(?i)^(?:\d{1,2}[.)]\s*|note:\s*)?(?:all|units|dimensions|figures|values|measurements)\b`)

// unitInTitle finds the unit of a kind in the words above a table, one or two
// words long: "limits in deg F and mils", "Values in mm and ng/(Pa·s·m²)".
func (r *reader) unitInTitle(title, kind, slot string) string {
	words := strings.FieldsFunc(title, func(c rune) bool { return strings.ContainsRune(" ,()_[]:;.", c) })
	for i, word := range words {
		if i > 0 && r.words.sheetUnits[words[i-1]+" "+word] && r.unitIn(word, kind, slot) != "" {
			return word
		}
		if r.words.sheetUnits[word] && r.unitIn(word, kind, slot) != "" {
			return word
		}
	}
	if kind == "vapor_permeance" || kind == "air_permeance" || kind == "voc" { // units that mean nothing else
		return r.unitIn(title, kind, "") // "M3" is a tag there
	}
	return ""
}

// unitBeside takes the unit of a table's other headings for one that has none,
// "width mm" for "end lap"; films are told in units of their own.
func (r *reader) unitBeside(t *table, kind, slot string) string {
	if isThickness(slot) {
		return ""
	}
	for _, c := range t.cols {
		if inWord.MatchString(c.Heading) {
			continue
		}
		if unit := r.unitIn(c.Heading, kind, ""); unit != "" && !isThickness(c.Slot) && unitFits(slot, unit) {
			return unit
		}
	}
	return ""
}

// inWord is a heading with "in" for no unit: "In contact with", "Laid in".
var inWord = regexp.MustCompile(`(?i)^in\s+\pL|\pL\s+in\s+\pL{2}`)

// unitsByName keeps the units that the notes of a workbook give to bare figures by what
// they are called: "Thickness in mils, laps in inches". Of two for one name neither counts.
func (r *reader) unitsByName(b *workbook.Book) {
	r.unitsNamed = map[string]string{}
	r.lapsNoted = nil
	for i := range b.Sheets {
		if b.Sheets[i].Kind != workbook.Worksheet || b.Sheets[i].FeedsDropDowns() {
			continue
		}
		for _, row := range b.Sheets[i].Rows {
			for c := range filled(row.Cells) {
				for _, m := range nameInUnit.FindAllStringSubmatch(c.Value, -1) {
					r.unitByName(m[1], m[2])
				}
				if !ledByLaps.MatchString(c.Value) {
					continue
				}
				for _, q := range r.phrase.Quantities(c.Value, "") {
					if isLength(q) {
						r.lapsNoted = append(r.lapsNoted, q)
					}
				}
			}
		}
	}
}

// nameInUnit is what figures are called and the unit that they are in.
var nameInUnit = regexp.MustCompile(`(?i)(\pL+)(?: are| is|:)? in (?:the )?((?:deg(?:rees|\.)? ?|°)?\pL+)`)

func (r *reader) unitByName(name, unit string) {
	for kind, names := range r.words.unitOf {
		of := kind
		if kind != "temperature" {
			of = "length"
		}
		if !slices.Contains(names, strings.ToLower(name)) || r.unitOf(unit, of) == "" {
			continue
		}
		if before, again := r.unitsNamed[kind]; again && before != unit {
			unit = ""
		}
		r.unitsNamed[kind] = unit
	}
}

// unitNamed is the unit that notes give to figures of a kind by their name, "" for none.
func (r *reader) unitNamed(kind, slot string) string {
	switch {
	case kind == "temperature":
		return r.unitsNamed["temperature"]
	case kind == "length" && isThickness(slot):
		return r.unitsNamed["thickness"]
	case kind == "length" && strings.Contains(slot, "lap"):
		return r.unitsNamed["lap"]
	}
	return ""
}

// degreesOf is the unit of all temperatures of the workbook, "" where they differ:
// the thermometer of the log is that of the data.
func degreesOf(all []*table) string {
	one := ""
	for _, t := range all {
		for _, c := range t.cols {
			if figureOf[c.Slot].kind != "temperature" || c.Unit == "" {
				continue
			}
			if one != "" && one != c.Unit {
				return ""
			}
			one = c.Unit
		}
	}
	return one
}

// unitElsewhere looks for a column of the same kind, with a unit, in the same
// sort of table.
func unitElsewhere(all []*table, not *table, kind, slot string) string {
	for _, t := range all {
		for _, c := range t.cols {
			if fig, ok := figureOf[c.Slot]; ok && t != not && t.kind == not.kind && fig.kind == kind && c.Unit != "" && unitFits(slot, c.Unit) {
				return c.Unit
			}
		}
	}
	return ""
}
