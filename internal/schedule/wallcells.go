package schedule

import (
	"slices"
	"strconv"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// layersIn parts a cell into the layers that it tells, by the sign that parts the most of
// them into layers; a word for a side before them tells where they begin.
func (w *wallSheet) layersIn(text string) (layers []string, side string) {
	if m := codeAside.FindStringSubmatch(text); m != nil {
		side, text = w.sideIn(m[1]), text[len(m[0]):]
	}
	best, most := []string{text}, 0
	if parts := w.joined(countedParts(text), 0); len(parts) >= fewestLayers {
		best, most = parts, len(parts)
	}
	for i, sign := range layerBreaks {
		parts := w.joined(splitOutside(text, sign), i)
		named := 0
		for _, part := range parts {
			if w.isLayer(part) {
				named++
			}
		}
		if named > most && (i < commaBreak && named > 1 || most < fewestLayers) {
			best, most = parts, named
		}
	}
	for len(best) > 1 {
		if s := w.begins(strings.Trim(best[0], "() ")); s != "" {
			side, best = s, best[1:]
			continue
		}
		break
	}
	return slices.DeleteFunc(best, func(part string) bool { return part == "" || w.begins(strings.Trim(part, "() ")) != "" }), side
}

// splitOutside parts a text at a sign that stands in no brackets.
func splitOutside(text string, sign *regexp.Regexp) []string {
	var out []string
	from := 0
	for _, at := range sign.FindAllStringIndex(text, -1) {
		if before := text[from:at[0]]; strings.Count(before, "(") <= strings.Count(before, ")") {
			out, from = append(out, before), at[1]
		}
	}
	return append(out, text[from:])
}

// codeAside is what brackets after the code of a wall say of it: "(from inside): ...".
var codeAside = regexp.MustCompile(`^\s*\(([^()]{2,60})\)\s*[:=–—-]\s*`)

// sideIn is the side that words name first: "from inside", "room side to weather side".
func (w *wallSheet) sideIn(words string) string {
	out, in := w.walls.outer.FindStringIndex(words), w.walls.inner.FindStringIndex(words)
	switch {
	case out != nil && (in == nil || out[0] < in[0]):
		return "outside to inside"
	case in != nil:
		return "inside to outside"
	}
	return ""
}

// layerBreaks are the signs between the layers of one cell, from the strongest.
var layerBreaks = []*regexp.Regexp{
	regexp.MustCompile(`\s*\n+\s*`), regexp.MustCompile(`\s*(?:→|⇒|»|-+>|=>)\s*|\s+>\s+`), regexp.MustCompile(`\s+\|\s*|\s*\|\s+`),
	regexp.MustCompile(`\s*;\s*`), regexp.MustCompile(`\s+/{1,2}\s+`), regexp.MustCompile(`\s+\+\s+`), regexp.MustCompile(`\s+[–—-]\s+`),
	regexp.MustCompile(`,\s+`),
}

const commaBreak = 7

// numberBreak is the number of a layer within a line.
var numberBreak = regexp.MustCompile(`(?:^|\s)\(?(\d{1,2})[.)]\s+`)

// countedParts parts a line at the numbers that count its layers: "1) board 2) studs 3) sheet".
func countedParts(text string) []string {
	var out []string
	from := -1
	for _, m := range numberBreak.FindAllStringSubmatchIndex(text, -1) {
		switch number := text[m[2]:m[3]]; {
		case from < 0 && number == "1" && strings.TrimSpace(text[:m[0]]) == "":
		case from >= 0 && number == strconv.Itoa(len(out)+2):
			out = append(out, text[from:m[0]])
		default:
			continue
		}
		from = m[1]
	}
	if from < 0 {
		return nil
	}
	return append(out, text[from:])
}

// layerLead is the number or the dot that a layer of a list begins with.
var layerLead = regexp.MustCompile(`^\s*(?:\(?\d{1,2}[.):]\s+|\(\d{1,2}\)\s+(?:\d|[a-z]{4})|[-•*·–—]\s*|[A-Ha-h][.)]\s+)`)

// joined takes the numbers from parts, and puts one that names no layer to the one before
// it, where commas part them: "gypsum board, taped".
func (w *wallSheet) joined(parts []string, sign int) []string {
	var out []string
	for _, part := range parts {
		part = strings.TrimSpace(layerLead.ReplaceAllStringFunc(part, keepWord))
		part = strings.TrimRight(part, " .;,")
		switch {
		case part == "":
		case sign == commaBreak && len(out) > 0 && (!w.isLayer(part) || w.walls.more.MatchString(part)):
			out[len(out)-1] += ", " + part
		default:
			out = append(out, part)
		}
	}
	return out
}

// keepWord keeps what a count of layers stands before: "(2) layers" of a list without numbers.
func keepWord(lead string) string {
	if strings.HasPrefix(strings.TrimSpace(lead), "(") && strings.Contains(lead, ") ") && !strings.HasSuffix(lead, " ") {
		return lead
	}
	return ""
}

// thickIn is the length that a cell tells of a layer, in millimeters; a bare figure has the
// unit of its column.
func (w *wallSheet) thickIn(text, unit string) *float64 {
	text = strings.TrimSpace(feetLead.ReplaceAllString(text, ""))
	if bareSizeCell.MatchString(text) {
		if unit == "" {
			return nil
		}
		text += " " + unit
	}
	for _, q := range w.phrase.Quantities(text, "length") {
		if q.Kind == "length" && q.Min != nil && q.Unit != "" && *q.Min > 0 {
			return q.Min
		}
	}
	return nil
}

var (
	feetLead     = regexp.MustCompile(`^\s*0'\s*-\s*`)
	bareSizeCell = regexp.MustCompile(`^\d+(?:\.\d+)?$|^\.\d+$|^(?:\d+[ -])?\d+/\d+$`)
	sizeCell     = regexp.MustCompile(`(?i)^(?:0'\s*-\s*)?[\d./ -]+\s*(?:mm|cm|in(?:ch(?:es)?|\.)?|"|”|mils?|''|gauge|ga\.?|ply)?\.?$|^[-–—]$`)
)

// thickColumn finds the column of thicknesses among those beside the layers, and the unit
// of its bare figures: it is headed so, or most that stands in it is a size, with units.
func (w *wallSheet) thickColumn(rows []int, layer int, heads map[int]string) (col int, unit string) {
	counts, all := map[int]int{}, map[int]int{}
	for _, i := range rows {
		for _, c := range w.rows[i] {
			if c.Col == layer {
				continue
			}
			all[c.Col]++
			if sizeCell.MatchString(strings.TrimSpace(c.Value)) {
				counts[c.Col]++
			}
		}
	}
	for c := 1; c <= w.s.MaxCol; c++ {
		head := heads[c]
		if all[c] == 0 || counts[c]*3 < all[c]*2 || w.walls.neverThick.MatchString(head) {
			continue
		}
		if w.walls.thick.MatchString(head) || w.hasUnits(rows, c) {
			return c, w.unitOfSizes(rows, c, head)
		}
	}
	return 0, ""
}

// hasUnits holds for a column of sizes of which some have a unit.
func (w *wallSheet) hasUnits(rows []int, col int) bool {
	return slices.ContainsFunc(rows, func(i int) bool {
		return slices.ContainsFunc(w.rows[i], func(c workbook.Cell) bool { return c.Col == col && w.thickIn(c.Value, "") != nil })
	})
}

// unitOfSizes is the unit of the bare figures of a column: that of its heading, else
// millimeters where one of them is more than a wall in inches has.
func (w *wallSheet) unitOfSizes(rows []int, col int, head string) string {
	switch {
	case w.walls.mm.MatchString(head):
		return "mm"
	case w.walls.inch.MatchString(head):
		return "in"
	}
	for _, i := range rows {
		for _, c := range w.rows[i] {
			if c.Col == col && c.Kind == workbook.Number && c.Number > mostInches {
				return "mm"
			}
		}
	}
	return ""
}

const mostInches = 24

// listedSources are the layers of a wall that a list tells, each as a cell of its own; the
// batts of a layer that is told without a thickness fill the studs beside it.
func (r *reader) listedSources(out []source, t *table, l *Line) []source {
	for i, layer := range t.listed {
		src := source{slot: "layers", heading: t.cols[len(t.cols)-1].Heading, text: r.spelled(layer.text, "layers"), at: layer.at, thick: layer.thick, layer: true}
		if src.thick == nil && r.studDepth(layer.text) == nil {
			src.thick = r.depthBeside(t.listed, i)
		}
		l.says(&src)
		out = append(out, src)
	}
	return out
}

// depthBeside is the depth of the studs that stand beside what lies between them, where
// its own words are of batts or of fill, and tell no thickness.
func (r *reader) depthBeside(layers []listedLayer, i int) *float64 {
	if !r.walls.between.MatchString(layers[i].text) {
		return nil
	}
	for _, k := range []int{i - 1, i + 1} {
		if k >= 0 && k < len(layers) && r.walls.framing.MatchString(layers[k].text) {
			if depth := r.studDepth(layers[k].text); depth != nil {
				return depth
			}
			return layers[k].thick
		}
	}
	return nil
}

// sizeOfLayer gives a layer the thickness that stands beside it where its own words tell
// none, else the depth of the studs that it lies between.
func (r *reader) sizeOfLayer(it *Item, c source, at phrase.Span) {
	if it.ThickMM != nil {
		return
	}
	words := c.text
	if !c.layer {
		start, end := partAround(c.text, at)
		words = c.text[start:end]
	}
	switch depth := r.studDepth(words); {
	case it.Class == "insulation" && depth != nil:
		it.ThickMM = depth
	case c.thick != nil && it.Class != "coating":
		it.ThickMM = c.thick
	}
}

// studDepth is the depth of the studs that words call: by their nominal size ("2x6"), by
// their size in millimeters ("38x140"), or by what stands before the word ("6 in. studs").
func (r *reader) studDepth(text string) *float64 {
	if !r.walls.framing.MatchString(text) {
		return nil
	}
	if m := nominalStud.FindStringSubmatch(text); m != nil {
		if mm, ok := r.walls.Deep[m[1]+"x"+m[2]]; ok {
			return &mm
		}
	}
	if m := metricStud.FindStringSubmatch(text); m != nil {
		one, _ := strconv.ParseFloat(m[1], 64) // two or three digits
		other, _ := strconv.ParseFloat(m[2], 64)
		mm := max(one, other)
		return &mm
	}
	at := r.walls.framing.FindStringIndex(text)
	for _, q := range r.phrase.Quantities(text[:at[0]], "length") {
		if q.Kind == "length" && q.Unit != "" && q.Min != nil && *q.Min >= leastStud && *q.Min <= mostStud {
			return q.Min
		}
	}
	return nil
}

// Between which depths studs are, in millimeters.
const (
	leastStud = 38
	mostStud  = 310
)

var (
	nominalStud = regexp.MustCompile(`(?i)(?:^|[^\d])(2)\s?[x×]\s?(2|3|4|6|8|10|12)(?:$|[^\d])`)
	metricStud  = regexp.MustCompile(`(?i)(?:^|[^\d])(\d{2,3})\s?[x×]\s?(\d{2,3})(?:$|[^\d])`)
)
