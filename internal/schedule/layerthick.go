package schedule

import (
	"cmp"
	"math"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// thickBeside reads the thickness that a build-up told in one cell gives of a layer: the
// length that stands right beside it ("4 in. thick I-2", "block (190 mm)"), or that of the
// studs it lies between. Where one stands on either side, nothing tells which is meant, and
// a range is none.
func (r *reader) thickBeside(text string, at phrase.Span) *float64 {
	if q := r.lengthBeside(text, at); q != nil {
		return q.Min
	}
	return nil
}

// layerThick is the thickness of a layer of a build-up. An insulation may tell it without
// a unit, before it or after its tag ("WB-2 90").
func (r *reader) layerThick(it *Item, text string, at phrase.Span) *float64 {
	tagged := r.sizeAfterTag(it, text[at.End:])
	if it.Class != "insulation" {
		tagged = nil
	}
	if tagged != nil && sizeIn.MatchString(text[at.End:]) {
		return tagged.Min // "in" is no unit
	}
	if mm := r.thickBeside(text, at); mm != nil {
		return mm
	}
	if q := r.bareThick(text, at, it.Class); q != nil {
		return q.Min
	}
	if tagged != nil {
		return tagged.Min
	}
	return nil
}

// bareThick is the thickness of an insulation that opens its part of a build-up without a
// unit, in the unit that the workbook has its laps in: "90 brick / 40 air / 75 XPS / 190
// block", "brick / 2 air / 3 XPS / 8 block".
func (r *reader) bareThick(text string, at phrase.Span, class string) *phrase.Quantity {
	unit := cmp.Or(r.lapUnit, r.unitSaid("length", "thickness"))
	leading := leadingSizes[unit]
	if class != "insulation" || leading == nil {
		return nil
	}
	start, _ := partAround(text, at)
	size := leading.FindStringSubmatchIndex(text[start:at.Start])
	if size == nil || !r.words.thickBefore.MatchString(text[start+size[3]:at.Start]) && !namedInBrackets.MatchString(text[start+size[3]:at.Start]) || countOf.MatchString(text[start+size[3]:at.Start]) {
		return nil
	}
	for _, q := range r.phrase.Quantities(text[start+size[2]:start+size[3]]+" "+unit, "length") {
		return &q
	}
	return nil
}

// leadingSizes are figures that open the part of a build-up, by the unit of the workbook:
// of two or three digits in millimeters, which are no count of layers, and up to a foot in
// inches.
var leadingSizes = map[string]*regexp.Regexp{
	"mm": regexp.MustCompile(`^\s*(\d{2,3})\s+`),
	"in": regexp.MustCompile(`^\s*((?:1[0-2]|[1-9])(?:\.\d+|[- ]\d/\d)?)\s+`),
}

// namedInBrackets stands between a size and the tag of its layer: "100 wool (IN-1)".
var namedInBrackets = regexp.MustCompile(`^\s*\pL+(?:[ -]\pL+){0,2}\s*\($`)

// countOf stands after the count of layers: "2 layers mineral wool".
var countOf = regexp.MustCompile(`(?i)^\s*(?:layers?|ply|plies|lifts?|courses?|sheets?|rows?|boards?)\b`)

// lengthBeside is the one length that stands right beside a layer.
func (r *reader) lengthBeside(text string, at phrase.Span) *phrase.Quantity {
	var found *phrase.Quantity
	lengths := r.phrase.Quantities(text[:at.Start], "length") // apart, as "4 in. min. wool" has no least
	for _, q := range r.phrase.Quantities(text, "length") {
		if q.Start >= at.Start {
			lengths = append(lengths, q)
		}
	}
	for _, q := range lengths {
		before := q.End <= at.Start && r.words.thickBefore.MatchString(text[q.End:at.Start])
		after := q.Start >= at.End && r.words.thickAfter.MatchString(text[at.End:q.Start]) && !ofNextLayer(text[at.End:q.Start], text[q.End:])
		if !before && !after || q.Kind != "length" || q.Unit == "" {
			continue
		}
		if found != nil {
			return nil
		}
		found = &q
	}
	if found == nil || found.Disagree || found.Bound != "" || found.Min == nil || found.Max == nil || *found.Min != *found.Max || otherInBrackets(text, found, lengths) {
		return nil
	}
	return found
}

// otherInBrackets holds for a length in brackets beside another that is no conversion of
// it: "wool (3 in. tower, 4 in. annex)" has two sizes, each somewhere.
func otherInBrackets(text string, found *phrase.Quantity, lengths []phrase.Quantity) bool {
	open := strings.LastIndexAny(text[:found.Start], "()")
	if open < 0 || text[open] == ')' {
		return false
	}
	end := strings.IndexByte(text[found.End:], ')')
	for _, q := range lengths {
		if q.Start > open && (end < 0 || q.Start < found.End+end) && q.Min != nil && math.Abs(*q.Min-*found.Min) > nominal**found.Min {
			return true
		}
	}
	return false
}

// nominal is how far two ways to write one size lie apart: "4 in. (100 mm)".
const nominal = 0.05

// ofNextLayer holds for a length between two layers of a list in words, which is that of
// the second: "sheet, 4 in. wool", and not "block, 8 in., parge".
func ofNextLayer(between, rest string) bool {
	return strings.Contains(between, ",") && nextLayer.MatchString(rest)
}

var nextLayer = regexp.MustCompile(`^\s+(?:of\s+)?\pL`)

// insulationColumn takes a thickness of insulation for that of the row's own material in a
// table that tells no other: its rows are of insulation.
func (r *reader) insulationColumn(t *table) {
	if t.column("thickness") > 0 {
		return
	}
	for i := range t.cols {
		if t.cols[i].Slot == "insulation_thickness" {
			t.cols[i].Slot = "thickness"
			return
		}
	}
}

// boardThick keeps the thickness that the cell of a row's own insulation tells right
// beside it: "2 in. of mineral wool, one layer". That of a neighbor is its own.
func (r *reader) boardThick(l *Line, it *Item, c source, at phrase.Span) {
	if it.Class != "insulation" || it.Polarity != "yes" {
		return
	}
	q := r.sizeAfterTag(it, c.text[at.End:])
	switch it.Slot {
	case "material":
		if q == nil {
			q = r.lengthBeside(c.text, at)
		}
	case "touches", "front":
		if q == nil {
			q = r.bareThick(c.text, at, it.Class)
		}
		if q == nil {
			q = r.boardAlone(c.text, at)
		}
	}
	switch {
	case q == nil:
	case it.Slot == "material" || it.Slot == "tag":
		keep(l.Figures, "board_mm", figureTold(*q, c.at))
	case it.Slot == "touches" || it.Slot == "front":
		it.ThickMM = q.Min
		keep(l.Figures, "insulation_mm", figureTold(*q, c.at))
	}
}

// boardAlone is the thickness beside an insulation that fills its part of a cell with it:
// "3 in. XPS; brick", "polyiso 2 in. + brick". In "foam cut 3 in. back" and "8 in. above
// the wool" the length is a distance.
func (r *reader) boardAlone(text string, at phrase.Span) *phrase.Quantity {
	q := r.lengthBeside(text, at)
	if q == nil {
		return nil
	}
	start, end := partAround(text, phrase.Span{Start: min(at.Start, q.Start), End: max(at.End, q.End)})
	lead, rest := text[start:min(at.Start, q.Start)], text[max(at.End, q.End):end]
	apart := q.End <= at.Start && r.words.thickApart.MatchString(text[q.End:at.Start])
	if strings.TrimSpace(lead) != "" || apart || !r.words.thickRest.MatchString(rest) {
		return nil
	}
	return q
}

// sizeAfterTag is the thickness that a figure without a unit right after the tag of a
// board gives of it, as boards are ordered by it ("WB-2 90"), in a workbook of millimeters.
func (r *reader) sizeAfterTag(it *Item, rest string) *phrase.Quantity {
	size := bareSize.FindStringSubmatch(rest)
	if size == nil {
		size = sizeIn.FindStringSubmatch(rest)
	}
	if it.Product == "" || size == nil || cmp.Or(r.lapUnit, r.unitSaid("length", "thickness")) != "mm" {
		return nil
	}
	for _, q := range r.phrase.Quantities(size[1]+" mm", "length") {
		return &q
	}
	return nil
}

// bareSize is a figure of boards that are told in millimeters, and no count or other code.
// The sign before a next layer ends it, where no second size follows.
var bareSize = regexp.MustCompile(`^\s+(\d{2,3})\s*(?:$|[;,(]|\s[/+|]\s+(?:\d+\s+)?\pL{3,})`)

// sizeIn is one that the word "in" follows ("WB-2 90 in rails"): no board is so many inches.
var sizeIn = regexp.MustCompile(`^\s+(2[5-9]|[3-9]\d|\d{3})\s+in\s+\pL`)

// resistanceOf is the thermal resistance that the part of a build-up about an insulation
// gives of it, in m²·K/W: "4 in. wool R-16.8", "R-21 batts".
func (r *reader) resistanceOf(text string, at phrase.Span, class string) *float64 {
	if class != "insulation" {
		return nil
	}
	start, end := partAround(text, at)
	var found *float64
	for _, q := range r.phrase.Quantities(text[start:end], "r_value") {
		if q.Kind != "r_value" || q.Min == nil || perThickness.MatchString(text[start+q.End:end]) {
			continue
		}
		if found != nil {
			return nil
		}
		found = q.Min
	}
	return found
}

// layerInWords gives the materials of a row that tells one layer of a wall the thickness that its
// words have beside each ("studs 152 mm with wool batt 140 mm"), where no column tells one, and its
// insulation the resistance in a column for that.
func (r *reader) layerInWords(l *Line, t *table, row int) {
	if l.Order == "" {
		return
	}
	if it := l.onlyInsulation(); it != nil && it.RM2KW == nil {
		it.RM2KW = r.resistanceBeside(t, row)
	}
	if _, told := l.Figures["thickness_mm"]; told {
		return
	}
	words := l.Texts["material"]
	for i := range l.Items {
		it := &l.Items[i]
		at := strings.Index(words, it.Text)
		if it.Slot == "material" && at >= 0 && it.ThickMM == nil {
			it.ThickMM = r.layerThick(it, words, phrase.Span{Start: at, End: at + len(it.Text)})
		}
	}
}

// onlyInsulation is the one insulation that the cell of a row's own material names.
func (l *Line) onlyInsulation() *Item {
	var found *Item
	for i := range l.Items {
		if it := &l.Items[i]; it.Slot == "material" && it.Class == "insulation" && it.Polarity == "yes" {
			if found != nil {
				return nil
			}
			found = it
		}
	}
	return found
}

// resistanceBeside is the figure of a column of resistances ("R-value", "RSI"), in m²·K/W.
func (r *reader) resistanceBeside(t *table, row int) *float64 {
	for i, col := range t.nums {
		figure := text(t.sheet, row, col)
		unread := t.cols[i].Slot == "reference" || t.cols[i].Slot == ""
		if !unread || r.head.partOf(t.cols[i].Heading) != ofResistance || perSize.MatchString(t.cols[i].Heading) || !bareNumber.MatchString(figure) {
			continue
		}
		for _, q := range r.phrase.Quantities(resistanceUnit(t.cols[i].Heading)+figure, "r_value") {
			return q.Min
		}
	}
	return nil
}

// partAround is the part of a build-up around a layer, between the signs that part it.
func partAround(text string, at phrase.Span) (start, end int) {
	start, end = 0, len(text)
	for _, sign := range layerParts.FindAllStringIndex(text, -1) {
		switch {
		case text[sign[0]] == ',' && ofLayerBefore.MatchString(text[sign[1]:]): // "4 in. wool, R-16.8"
		case sign[1] <= at.Start:
			start = sign[1]
		case sign[0] >= at.End && sign[0] < end:
			end = sign[0]
		}
	}
	return start, end
}

var (
	layerParts    = regexp.MustCompile(`\s(?:/|>|\||\+|→|–|—)\s|;|\n|,\s`)
	ofLayerBefore = regexp.MustCompile(`^(?:R|RSI)[- ]?\d+(?:\.\d+)?\s*(?:$|[;,)\n]|[/>|+]\s)`)
	perThickness  = regexp.MustCompile(`(?i)^\s*(?:/|per\b|an\b)`)
	perSize       = regexp.MustCompile(`(?i)/|\bper\b`) // "R / in.", "R per mm"
)
