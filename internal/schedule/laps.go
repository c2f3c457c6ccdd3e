package schedule

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"abut/internal/material"
	"abut/internal/phrase"
	"abut/internal/regexp"
)

// lapPair is a cell of laps with two bare figures, that of the sides and that of the
// ends of a sheet: "50/75", "3 / 6", '3" / 4"'.
var lapPair = regexp.MustCompile(`^\s*(` + bareLap + `)\s*(` + lapUnit + `?)(\s*/\s*)(` + bareLap + `)\s*(` + lapUnit + `?)\s*$`)

const lapUnit = `(?:mm|cm|in\.?|"|inch(?:es)?)`

// inTwoUnits is how many times a figure in inches may be, less than a tenth off, what the
// other of a pair tells in millimeters.
const inTwoUnits = 25.4

// pairOfLaps parts a cell of laps that tells the sides and the ends and names neither.
// Ends lap no less than sides (common practice); what may be a fraction of an inch, or
// one lap in two units, is no pair.
func pairOfLaps(c source) (side, end string, ok bool) {
	m := lapPair.FindStringSubmatch(c.text)
	if m == nil || c.second != "" {
		return "", "", false
	}
	a, b := lapFigure(m[1]), lapFigure(m[4])
	if b < a || a == 0 || b > 0.9*inTwoUnits*a {
		return "", "", false
	}
	if m[2] == "" && m[3] == "/" && isInchFraction(a, b) { // neither unit nor space parts the two
		return "", "", false
	}
	return withUnit(m[1], m[2], m[5]), withUnit(m[4], m[5], m[2]), true
}

// endOnly is a cell of laps that has one of the ends and none of the sides, as a strip or a
// flashing of one width has: "- / 6", "n/a / 100".
var endOnly = regexp.MustCompile(`(?i)^\s*(?:[-–—]+|n/?a\.?|none)\s*/\s*(` + bareLap + `\s*` + lapUnit + `?)\s*$`)

// lapFigure is the value of a bare lap: 2.5 of "2-1/2".
func lapFigure(text string) float64 {
	whole, part, _ := strings.Cut(strings.ReplaceAll(text, " ", "-"), "-")
	a, _ := strconv.ParseFloat(whole, 64) // digits, by the pattern
	if over, under, ok := strings.Cut(part, "/"); ok {
		n, _ := strconv.ParseFloat(over, 64)
		if d, _ := strconv.ParseFloat(under, 64); d > 0 {
			a += n / d
		}
	}
	return a
}

// withUnit writes a figure in its own unit, else in that of the other of a pair.
func withUnit(figure, own, other string) string {
	unit := cmp.Or(own, other)
	if unit == "" || unit == `"` {
		return figure + unit
	}
	return figure + " " + unit
}

// endsAlone holds for a heading or label of the laps of the ends of sheets, and of no sides.
func (h *headings) endsAlone(heading string) bool {
	words := headingWords(heading)
	return holdsAny(words, h.lapsOf.End) && !holdsAny(words, h.lapsOf.Side)
}

// bothLaps takes the lap of the ends from a cell that tells two, and leaves that of the
// sides.
func (r *reader) bothLaps(figures map[string]Figure, c source) source {
	side, end, ok := pairOfLaps(c)
	if m := endOnly.FindStringSubmatch(c.text); m != nil {
		side, end, ok = "-", m[1], true
	}
	if !ok || c.ends && sideAndEnd.MatchString(c.text) { // the heading tells which is which
		return c
	}
	last := c
	last.text = end
	if f, ok := r.figure(last, "length"); ok && f.Min != nil {
		keep(figures, "end_lap_mm", f)
	}
	c.text = side
	return c
}

// isInchFraction holds for a fraction that a rule is marked with, in its lowest terms.
func isInchFraction(a, b float64) bool {
	return slices.Contains([]float64{2, 4, 8, 16, 32}, b) && a == float64(int(a)) && int(a)%2 == 1
}

// lapHeadings are the words of headings that tell of laps, and of which.
type lapHeadings struct{ Lap, Side, End []string }

// endLaps is the slot of a column of the laps of the ends of sheets alone.
const endLaps = "end_lap"

// lapsApart finds the two columns of a table that tell the laps of the sides and those
// of the ends: "Side lap" and "End lap", "Lap (sides)" and "Lap (ends)".
func (r *reader) lapsApart(t *table) {
	sides, ends := -1, -1
	for i, c := range t.cols {
		words := headingWords(c.Heading)
		side, end := holdsAny(words, r.head.lapsOf.Side), holdsAny(words, r.head.lapsOf.End)
		if side == end || !holdsAny(words, r.head.lapsOf.Lap) || !r.columnHolds(t.stretch(), t.nums[i], "length") {
			continue
		}
		if side {
			sides = i
		} else {
			ends = i
		}
	}
	if sides < 0 || ends < 0 || t.column("lap") > 0 && t.column("lap") != t.nums[sides] && t.column("lap") != t.nums[ends] {
		return
	}
	for i, slot := range map[int]string{sides: "lap", ends: endLaps} {
		c := &t.cols[i]
		c.Slot, c.Confidence, c.Why = slot, 1, "one of two columns of laps, of the sides and of the ends"
	}
}

// lapUnits takes the unit of the columns of laps, where all of them have one: that of
// the bare laps of the notes.
func (r *reader) lapUnits(all []*table) {
	units := map[string]bool{}
	for _, t := range all {
		for i := range t.cols {
			if c := &t.cols[i]; t.kind == kindSchedule && c.Slot == "lap" && c.Unit != "" {
				units[c.Unit] = true
				r.lapUnit = c.Unit
			}
		}
	}
	if len(units) != 1 {
		r.lapUnit = ""
	}
}

// ledByLaps is a note that begins with laps: "1. Laps, min.: ...", "Side laps 3 in.".
var ledByLaps = regexp.MustCompile(`(?i)^\s*(?:(?:note\s*)?\d{1,2}[.):]\s*)?(?:(?:all|min\.?|minimum|least|side|end|sheet|membrane)\s+){0,3}(?:over)?laps?\b`)

// unitOfNotedLaps is the unit in which the notes on laps tell all their lengths, for a column
// of laps that has none of its own: bare laps are written as those of the notes are, provided
// that most of them are laps that the notes ask for. "3 / 6" under a note of 75 mm is not.
func (r *reader) unitOfNotedLaps(t *table, col int, slot string) string {
	if slot != "lap" && slot != endLaps || t.kind != kindSchedule || len(r.lapsNoted) == 0 {
		return ""
	}
	unit := strings.TrimSuffix(r.lapsNoted[0].Unit, ".")
	asked := map[float64]bool{}
	for _, q := range r.lapsNoted {
		if strings.TrimSuffix(q.Unit, ".") != unit {
			return ""
		}
		asked[lapFigure(bareLaps.FindString(q.Text))] = true
	}
	held, all := 0, 0
	for row := t.first; row <= t.last; row++ {
		laps := bareLaps.FindAllString(text(t.sheet, row, col), -1)
		if len(laps) == 0 {
			continue
		}
		all++
		if slices.ContainsFunc(laps, func(lap string) bool { return asked[lapFigure(lap)] }) {
			held++
		}
	}
	if 2*held <= all {
		return ""
	}
	return r.lapsNoted[0].Unit
}

// bareLaps are the figures of a cell of laps.
var bareLaps = regexp.MustCompile(bareLap)

// Laps of a note without a unit: two of a stroke, one before the word for where it is,
// and one after it, which "min" may follow. What is turned up a wall is no lap.
var (
	notedPair = regexp.MustCompile(`(\s` + bareLap + `)\s*/\s*(` + bareLap + `)(\s*$)`)
	notedSide = regexp.MustCompile(`(?i)(\s` + bareLap + `)(\s+(?:sides?|ends?)\b)`)
	notedEnd  = regexp.MustCompile(`(?i)(\b(?:sides?|ends?)\s+` + bareLap + `)(\s*(?:[,;/]|$))`)
	notedMin  = regexp.MustCompile(`(?i)(\b(?:sides?|ends?)\s+` + bareLap + `)(\s+min(?:imum)?\.?\s*(?:[,;/]|$|(?-i:[A-Z])))`)
	notedName = regexp.MustCompile(`^(\pL[\pL\d.&/-]*(?:\s+\pL[\pL\d.&/-]*){0,2})(\s+` + bareLap + `)(\s*(?:,\s*(?:all )?(?:sealed|rolled|taped|shingled)[^,;\d]*)?)$`)
)

// bareLap is a figure, or one with a fraction of an inch: "2-1/2".
const bareLap = `\d+(?:\.\d+|[- ]\d/\d+)?`

// ontoAnother are words of a lap onto something else than its own sheet: "strip onto WM 4".
var ontoAnother = regexp.MustCompile(`(?i)\b(?:onto|on|over|to|into|up|past|under|behind|from|at)\b`)

// namedLap is the lap of the sheets that the sentence begins with, and no more of it
// than that and how it is closed: "TWF 6", "WM-2 75, sealed".
func (r *reader) namedLap(sentence, unit string) string {
	m := notedName.FindStringSubmatch(sentence)
	if m == nil || ontoAnother.MatchString(m[1]) || r.scopeIn(m[1]) == "" && len(r.keysIn(m[1])) == 0 {
		return sentence
	}
	return m[1] + m[2] + unit + m[3]
}

// lapsOfNote writes out the laps of a sentence under a lead that tells of laps, in the
// unit of the columns of laps: "Laps: FM sheets 3 side / 6 end", "HT-1 4 / 6", "TWF 6".
func (r *reader) lapsOfNote(lead, sentence string) (string, bool) {
	if r.lapUnit == "" || !r.words.hasAny(lead, r.words.laps) || slices.ContainsFunc(r.phrase.Quantities(sentence, ""), isLength) {
		return sentence, false
	}
	unit := " " + r.lapUnit
	out := notedPair.ReplaceAllString(sentence, "$1"+unit+" side, $2"+unit+" end$3")
	if out == sentence {
		out = notedSide.ReplaceAllString(out, "$1"+unit+"$2")
		out = notedEnd.ReplaceAllString(out, "$1"+unit+"$2")
		out = notedMin.ReplaceAllString(out, "$1"+unit+"$2") // "side 3, end 6 min."
	}
	if out == sentence {
		out = r.namedLap(sentence, unit)
	}
	return strings.ReplaceAll(out, " / ", ", "), out != sentence
}

// unitPair is a pair of laps with their unit at the end of a sentence: 3"/6".
var unitPair = regexp.MustCompile(`(\s` + bareLap + `\s*` + lapUnit + `)\.?\s*(?:/|and|&)\s*(` + bareLap + `\s*` + lapUnit + `)(?:\s*min\.?)?\s*$`)

// lapPairOf writes out a pair of laps, that of the sides and that of the ends, in a sentence
// that goes on with the laps of its cell: "SBS sheets: 2\" side laps. Under copings 3\"/6\"".
func (r *reader) lapPairOf(sentence string, at At) string {
	limits := r.sched.Project.Limits
	if n := len(limits); n == 0 || limits[n-1].At != at || !lapKind[limits[n-1].Kind] {
		return sentence
	}
	return unitPair.ReplaceAllString(sentence, " side laps$1, end laps $2")
}

// endsWithSides asks the laps of ends that follow those of the sides in a sentence of the
// same: "Under copings 3 in. sides, 6 in. ends".
func endsWithSides(limits []Limit) {
	for i := 1; i < len(limits); i++ {
		side, end := limits[i-1], &limits[i]
		if side.Kind == "lap_mm" && end.Kind == "end_lap_mm" && len(end.Roles)+len(end.Keys)+len(end.When) == 0 && end.Scope == "" {
			end.Roles, end.Keys, end.Scope, end.When = side.Roles, side.Keys, side.Scope, side.When
		}
	}
}

// lapKind are the limits on laps.
var lapKind = map[string]bool{"lap_mm": true, "end_lap_mm": true}

// lapGap is the gap before the next sheet of a list of laps that nothing else parts.
var lapGap = regexp.MustCompile(`(\d)\s{2,}(\pL[\pL\d.&/,-]*(?:\s[\pL\d.&/,-]*\pL[\pL\d.&/,-]*){0,3}\s` + bareLap + `\s*/)`)

// lapsListed parts a list of laps at its gaps: "Laps: AB-1 2-1/2 / 3   BG-1 3 / 4".
func (r *reader) lapsListed(note string) string {
	if r.lapUnit == "" || !r.words.hasAny(note, r.words.laps) {
		return note
	}
	return lapGap.ReplaceAllString(note, "$1; $2")
}

func isLength(q phrase.Quantity) bool { return q.Kind == "length" && q.Unit != "" }

// notedDam is the height of end dams or of a leg turned up in a note without a unit: "end dams 25
// min where it stops", "upturn 200 min., behind the sheet".
var notedDam = regexp.MustCompile(`(?i)(\b(?:end[- ]?dams?|upturns?|turn-?ups?|up-?legs?|(?:rear|back) legs?)(?:\s+(?:of|at|to be|are|at least|min\.?|high|height|ht\.?))*[\s:=]+` + bareLap + `)(\s*(?:[,;.)]|$)|\s+(?:min|high|where|at|tall|or more)\b)`)

// damsOfNote writes out the height of what a flashing turns up in a sentence that has no length
// with a unit, in the unit of the columns of laps, else in that of the title block.
func (r *reader) damsOfNote(sentence string) string {
	unit := cmp.Or(r.lapUnit, r.unitSaid("length", "lap"))
	if unit == "" || !notedDam.MatchString(sentence) || slices.ContainsFunc(r.phrase.Quantities(sentence, ""), isLength) {
		return sentence
	}
	return notedDam.ReplaceAllString(sentence, "$1 "+unit+"$2")
}

// sidesAndEnds are a figure of the sides and one of the ends of something.
var sidesAndEnds = regexp.MustCompile(`(?i)(^|\s)(` + bareLap + `\s*` + lapUnit + `\s+(?:min\.?\s+)?(?:at\s+)?(?:the\s+)?sides?\s*(?:[,;/&+]|and)\s*` + bareLap + `\s*` + lapUnit + `\s+(?:min\.?\s+)?(?:at\s+)?(?:the\s+)?ends?\b)`)

// sidesOfSheet writes out that it is laps that a sentence asks of a sheet where it tells of its
// sides and ends right after its name: "HT-1: 3 in. sides, 6 in. ends".
func (r *reader) sidesOfSheet(sentence string) string {
	at := sidesAndEnds.FindStringSubmatchIndex(sentence)
	if at == nil || lapSaid.MatchString(sentence) || len(r.sheetsIn(sentence[:at[4]])) == 0 {
		return sentence
	}
	named := r.lex.find(sentence[:at[4]])
	if !afterName.MatchString(sentence[named[len(named)-1].end:at[4]]) {
		return sentence // "SH-1 held back from frames 10 mm sides, 20 mm ends"
	}
	return sentence[:at[4]] + "laps " + sentence[at[4]:]
}

// lapSaid is a word that calls a figure a lap.
var lapSaid = regexp.MustCompile(`(?i)\b(?:over|end|side)?-?laps?\b`)

// afterName is what stands between the name of a sheet and its figures.
var afterName = regexp.MustCompile(`(?i)^s?[\s:,–—-]*(?:(?:sheets?|membranes?|min\.?|at least)[\s:,–—-]*)*$`)

// lapAlone is a part of a note that tells a lap and not of what.
var lapAlone = regexp.MustCompile(`^(?i:(?:side |end )?(?:over)?laps?)(?:\s+(?i:of|at least|min\.?|minimum))*\s+` + bareLap + `\s*` + lapUnit + `(?:\s+(?i:min\.?|minimum|or more))?(?:,?\s+(?i:sealed|bedded|in sealant|set in sealant|bedded in sealant))?\.?$`)

// lapsOfSubject gives a lap that a note tells after a semicolon and names nothing with to the
// place that the note begins with ("Through-wall flashing up 8 in.; laps 6 in. min."), and one
// that is a sentence of its own to what the colon of the note is of: "Cavity flashing: up 8 in.
// Laps 6 in., sealed."
func (r *reader) lapsOfSubject(note string, limits []Limit) {
	place := r.scopeIn(firstWords(noteStart.ReplaceAllString(note, ""), subjectWords))
	for i := range limits {
		l := &limits[i]
		if !lapKind[l.Kind] || l.Scope != "" || len(l.Roles)+len(l.Keys)+len(l.When) > 0 {
			continue
		}
		switch {
		case !lapAlone.MatchString(l.Text):
		case strings.Contains(note, "; "+l.Text), r.scopeIn(leadOf(note)) == place && strings.Contains(note, ". "+l.Text):
			l.Scope = place
		}
	}
}

// noteStart is the number of a note before its words.
var noteStart = regexp.MustCompile(`^\W*\d{1,2}\W+`)

// subjectWords is how many words in the place is that a note begins with.
const subjectWords = 3

// metalsIn are the keys of a head that names metal and nothing else: what a list under it asks
// of laps it asks of no sheet ("Metal flashings: 24 ga., laps 4 in. in sealant").
func (r *reader) metalsIn(head string) []string {
	named := r.lex.named(head)
	if len(named) == 0 || slices.ContainsFunc(named, func(m material.Material) bool { return !metalClass[m.Class] }) {
		return []string{}
	}
	return r.keysIn(head)
}
