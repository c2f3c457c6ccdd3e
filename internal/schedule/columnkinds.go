package schedule

import (
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// stretch is the rows that a heading may be of: those of its table, or all below it
// where the end of that is not known.
type stretch struct {
	sheet       *workbook.Sheet
	first, last int
}

func below(s *workbook.Sheet, first int) stretch { return stretch{s, first, s.MaxRow} }

func (t *table) stretch() stretch { return stretch{t.sheet, t.first, t.last} }

// mostly holds where two thirds of the telling cells of a column are of a kind.
func (r *reader) mostly(under stretch, col int, kind string) bool {
	telling, fit := r.profile(under, col, kind)
	return telling > 0 && fit*3 >= telling*2
}

// profile counts the telling cells of a column, and those of a kind.
func (r *reader) profile(under stretch, col int, kind string) (telling, fit int) {
	for row := under.first; row <= under.last && telling < 40; row++ {
		c, ok := under.sheet.At(row, col)
		if !ok || c.Merged || r.words.isBlank(c.Value) || r.words.isNone(c.Value) || r.words.isDitto(c.Value) {
			continue
		}
		telling++
		if r.holds(c, kind) {
			fit++
		}
	}
	return telling, fit
}

// columnHolds checks a heading against what stands under it: at least a third
// of the telling cells must be of the kind, and words must not be dates.
func (r *reader) columnHolds(under stretch, col int, kind string) bool {
	if kind == "" {
		return !r.mostly(under, col, dayTold)
	}
	telling, fit := r.profile(under, col, kind)
	if kind == "date" && fit*3 < telling && r.yearSaid == 0 {
		telling, fit = r.profile(under, col, dayOnly)
	}
	if kind == "date" && fit > 0 && fit*3 < telling {
		telling, fit = r.distinct(under, col, kind)
	}
	return telling == 0 || fit*3 >= telling
}

// suits holds for a column whose cells can be what its heading says; remarks and
// codes may look like anything ("07-27-11" reads as a date).
func (r *reader) suits(under stretch, col int, slot *headingSlot) bool {
	switch {
	case slot.name == "remark" || slot.name == "reference":
		return true
	case slot.name == "cover" && r.mostly(under, col, stays):
		return true
	case (meets[slot.name] || slot.name == "sealant" || slot.name == "keep_off" || slot.name == "specified") && r.namesNothing(under, col):
		return false
	case slot.name == "lap" && r.namesLaps(under, col):
		return true
	case slot.name == "material" && r.beginsWithLaps(under, col):
		return false // "Roll / lap" over "side 75 / end 150"
	}
	return r.columnHolds(under, col, slot.kind)
}

// namesLaps holds for a column in which a third of the telling cells have a bare figure
// by the word for where the sheet laps: "side 65, end 130, top over bottom".
func (r *reader) namesLaps(under stretch, col int) bool {
	telling, named := 0, 0
	for row := under.first; row <= under.last && telling < 40; row++ {
		words := text(under.sheet, row, col)
		if r.words.isBlank(words) || r.words.isNone(words) || r.words.isDitto(words) {
			continue
		}
		if telling++; startsWithDigit(words) || saidLap.MatchString(words) {
			named++
		}
	}
	return named > 0 && named*3 >= telling
}

// beginsWithLaps holds for a column in which a good part of the telling cells begin with a
// lap, and few name a material.
func (r *reader) beginsWithLaps(under stretch, col int) bool {
	telling, laps, named := 0, 0, 0
	for row := under.first; row <= under.last && telling < 40; row++ {
		words := text(under.sheet, row, col)
		if r.words.isBlank(words) || r.words.isNone(words) || r.words.isDitto(words) {
			continue
		}
		telling++
		if m := saidLap.FindStringIndex(words); m != nil && m[0] == 0 {
			laps++
		} else if len(r.vocab.Find(words)) > 0 {
			named++
		}
	}
	return laps*3 > telling && named*3 < telling
}

// saidLap is a figure right after the word for a lap.
var saidLap = regexp.MustCompile(`(?i)\b(?:sides?|ends?|(?:over)?laps?)(?:\s+laps?)?\s*:?\s*\d`)

// namesNothing holds for a column whose telling cells are mostly answers, figures or
// days, and no materials: "Meets?", "Tie-in date", "Back leg".
func (r *reader) namesNothing(under stretch, col int) bool {
	telling, bare := 0, 0
	for row := under.first; row <= under.last && telling < 40; row++ {
		c, ok := under.sheet.At(row, col)
		if !ok || c.Merged || r.words.isBlank(c.Value) || r.words.isNone(c.Value) || r.words.isDitto(c.Value) {
			continue
		}
		telling++
		if c.Kind == workbook.Number || r.isFigure(c.Value) || r.head.answers[fold(c.Value)] || r.holds(c, dayOnly) || r.holds(c, stays) {
			bare++
		}
	}
	return telling > 0 && bare*3 >= telling*2
}

// distinct is the profile of a column's different texts: "Phase 3" in most rows is
// one text, and the dates of the others are many.
func (r *reader) distinct(under stretch, col int, kind string) (telling, fit int) {
	seen := map[string]bool{}
	for row := under.first; row <= under.last && len(seen) < 40; row++ {
		c, ok := under.sheet.At(row, col)
		if !ok || c.Merged || seen[c.Value] || r.words.isBlank(c.Value) {
			continue
		}
		seen[c.Value] = true
		telling++
		if r.holds(c, kind) {
			fit++
		}
	}
	return telling, fit
}

// dayOnly is the kind of cells that give a day without its year, dayTold that of dates and
// of words for them which could not mean that there is none of a thing, stays that of cells
// which count days from other work, and anyYear a year in which every day is.
const (
	dayTold = "day told"
	dayOnly = "day"
	stays   = "stay"
	anyYear = 2000
)

func (r *reader) holds(c workbook.Cell, kind string) bool {
	if kind == "date" {
		return c.Kind == workbook.Date || r.isDate(c.Value)
	}
	if kind == dayTold { // "nothing" is no day between two sheets
		return r.holds(c, "date") && !r.saysNone(c.Value)
	}
	if kind == dayOnly {
		return r.says(c.Value, anyYear)
	}
	if kind == stays {
		_, ok := r.stay(c.Value)
		return ok
	}
	if c.Kind == workbook.Number {
		return true
	}
	if kind == "code" {
		return len(c.Value) <= shortCode || len(c.Value) <= longCode && strings.ContainsAny(c.Value, "0123456789")
	}
	if c.Kind == workbook.Date || r.isDate(c.Value) { // "8/18-8/20/25" begins with a digit too
		return false
	}
	return r.held.of(kind+"\n"+c.Value, func() bool { return r.gives(c.Value, kind) })
}

// gives holds for a text with a figure of a kind, or a bare one that may be of any.
func (r *reader) gives(text, kind string) bool {
	if kind == "vapor_permeance" && meters.MatchString(text) {
		return true
	}
	if kind == "temperature" {
		text = dayAndNight.ReplaceAllString(text, "$1")
	}
	found := r.phrase.Quantities(text, kind)
	if slices.ContainsFunc(found, func(q phrase.Quantity) bool { return q.Kind == kind || q.Kind == "size" }) {
		return true
	}
	return startsWithDigit(text) && !slices.ContainsFunc(found, func(q phrase.Quantity) bool { return q.Unit != "" && q.Start == 0 && q.Kind != "months" })
}

// How long the letters and the number of a layer or step may be.
const (
	shortCode = 3
	longCode  = 12
)

// isDate holds for a text that is a date and little else, or hangs on one.
func (r *reader) isDate(text string) bool {
	return r.dates.of(text, func() bool { return r.says(text, r.yearSaid) })
}

// says holds for a text that is a date, if that were said for days without one, in
// some year.
func (r *reader) says(text string, year int) bool {
	if sectionCode.MatchString(withoutBrackets(text)) {
		return false
	}
	said, read := 0, r.phrase.Dates
	if year > 0 && strings.Contains(r.words.fraction.ReplaceAllString(text, ""), "/") { // "5/3-5/21"
		read = r.phrase.ColumnDates
	}
	for _, d := range read(text, phrase.MonthFirst, year) {
		switch d.State {
		case "relative", "open":
			return true
		case "day", "span", "impossible":
			said += d.End - d.Start
		}
	}
	return said*2 >= len(strings.TrimSpace(text))
}

// sectionCode is a code of a section of the specification, which no day of this century's
// first years is meant by: "07-27-01", "07 27 13".
var sectionCode = regexp.MustCompile(`^0?\d[- ]\d\d[- ](?:0\d|1[0-4])$`)

func startsWithDigit(s string) bool {
	s = strings.TrimLeft(s, "<>≤≥~+-−. ")
	return s != "" && s[0] >= '0' && s[0] <= '9'
}
