package schedule

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// filmLap holds for a figure in mil, which no lap is told in.
func filmLap(q phrase.Quantity) bool { return filmUnit(q.Unit) }

func filmUnit(unit string) bool {
	return strings.HasPrefix(strings.ToLower(strings.TrimPrefix(unit, "-")), "mil")
}

// lapOf is the lap that a cell of laps tells: of its figures, the one that its
// words call a lap; none where the words are many and call none so ("slack loop
// over 3/4 in. rod").
func (r *reader) lapOf(c source, f Figure) Figure {
	whole := f
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && filmLap(q) { // "2 in. onto strips; 38 mils dry", "37 mils"
			if q.Start == 0 || f.same(q) {
				f = Figure{}
			}
			break
		}
		if !f.same(q) && !f.sameMost(q) {
			continue
		}
		before, after := c.text[:q.Start], c.text[q.End:]
		if gapAfter.MatchString(after) || gapBefore.MatchString(before) || damAfter.MatchString(after) || damBefore.MatchString(before) {
			f = Figure{}
		}
	}
	if bond, told := r.besideBond(c, f); told {
		return bond
	}
	for _, word := range []*regexp.Regexp{sideWord, lapWord} {
		if q, ok := r.lapAfter(c, word); ok {
			whole.take(q)
			whole.Problem = ""
			return whole
		}
	}
	if f.Assumed && len(headingWords(c.text)) == 2 && !r.words.hasAny(c.text, r.words.laps) && r.otherWords(c.text) > 0 {
		return Figure{} // "2 coats"
	}
	if !r.wordy(c.text) || leadLap.MatchString(c.text) {
		return f
	}
	for _, cl := range r.hear(c.text).clauses {
		for _, q := range cl.Quantities {
			if q.Kind == "length" && q.Role == "lap" && q.Min != nil && !turnedUp(c.text, q) {
				f.take(q)
				return f
			}
		}
	}
	if r.words.hasAny(firstWords(c.text, 4), r.words.laps) {
		return f
	}
	return Figure{}
}

// besideBond passes over a width of bond or of a bed, which is no lap, for the splice
// or seam that the cell tells besides: "2 bond; 3 splice".
func (r *reader) besideBond(c source, f Figure) (Figure, bool) {
	found := r.phrase.Quantities(c.text, hint("length", c.unit))
	bonded := func(q phrase.Quantity) bool { return f.same(q) && bondAfter.MatchString(c.text[q.End:]) }
	if !slices.ContainsFunc(found, bonded) {
		return f, false
	}
	for _, q := range found {
		if q.Kind == "length" && q.Min != nil && spliceAfter.MatchString(c.text[q.End:]) {
			f.take(q)
			return f, true
		}
	}
	return Figure{}, true
}

// bondAfter and spliceAfter stand right after a figure of a cell of laps.
var (
	bondAfter   = regexp.MustCompile(`(?i)^\W{0,2}(?:min\.?\s+)?(?:bond(?:ed|ing)?|bed(?:ding)?|adhered|glue line|embed\w*)\b`)
	spliceAfter = regexp.MustCompile(`(?i)^\W{0,2}(?:min\.?\s+)?(?:splices?|seams?|laps?|overlaps?)\b`)
)

// gapBefore and gapAfter stand beside the width of a gap between boards, or beside how far
// short of something a sheet ends, which are no laps: "1/8 in. gap", "joints 3 mm open",
// "gaps up to 3 mm", "stop 1 in. below the cap", "butted w/ 3 mm" of bars and plates.
var (
	gapBefore = regexp.MustCompile(`(?i)\b(?:gaps?|joints?|spaced?|spacing)\W{0,2}(?:of|to|up to|max\.?|≤|<)?\s*$|\b(?:stops?|stopped|ends?|ended|held|hold)\s+$|\bbutt(?:s|ed)?\s+(?:(?:with|w/|at|to)\s*)?(?:an?\s+)?$`)
	gapAfter  = regexp.MustCompile(`(?i)^\W{0,2}(?:max\.?|min\.?|wide|open)?\s*(?:gaps?|apart|open|joints?|spac\w+)\b`)
)

// damBefore and damAfter stand beside the height of what a sheet or pan is turned up to at
// its end or back, which is no lap: "back dam 1 in.", "20 mm upstand".
var (
	damBefore = regexp.MustCompile(`(?i)\b(?:dams?|upstands?|up-?turns?|turn-?ups?)(?:[\s:=]+(?:of|at|to|up|min\.?|high|height|ht\.?))*[\s:=]*$`)
	damAfter  = regexp.MustCompile(`(?i)^\s*(?:min\.?\s+|high\s+)?(?:(?:back|end|rear|side)[ -]?)?(?:dams?|upstands?|up-?turns?|turn-?ups?)\b`)
)

// counted is a number of things in a cell of laps: "2 passes; 3 onto the deck".
var counted = regexp.MustCompile(`(?i)\b\d+ (?:passes|coats|layers|plies|courses|rows|beads|lifts)\b[;,]?\s*`)

// same holds for a quantity that is the figure's own.
func (f *Figure) same(q phrase.Quantity) bool {
	return f.Min != nil && q.Min != nil && *q.Min == *f.Min
}

// sameMost holds for a quantity that is an upper end alone, and so is the figure's own:
// "gaps 3 mm max".
func (f *Figure) sameMost(q phrase.Quantity) bool {
	return f.Min == nil && f.Max != nil && q.Min == nil && q.Max != nil && *q.Max == *f.Max
}

// leadLap is a cell that begins with its lap: "min 3 in., rolled", "3 in. all round",
// "2 in. at the corners", "4 in. bedded in mastic".
var leadLap = regexp.MustCompile(`(?i)^(?:min\.?|at least|≥)?\s*[\d./½¼¾ -]+\s*(?:in\.|in\b|"|mm\b|cm\b)?\s*(?:min\.?)?\s*(?:[,;]|(?:fully |well |all )?(?:bedded|sealed|taped)\b|set in\b|all (?:a?round|sides)\b|each\b|both\b|min\b|at\s+(?:all |the |each |both )*\pL)`)

// upBefore and upAfter stand beside the height of what is turned up, which is no lap:
// "back leg up 1 in.", "2 in. up the pipe".
var (
	upBefore = regexp.MustCompile(`(?i)\b(?:up|upstand|leg)\s*$`)
	upAfter  = regexp.MustCompile(`(?i)^\s*up\s+(?:the|each|at|to|both|all)\b`)
)

func turnedUp(text string, q phrase.Quantity) bool {
	return upBefore.MatchString(text[:q.Start]) || upAfter.MatchString(text[q.End:])
}

// sideWord stands right before the lap along a sheet, the least of those of a row.
var sideWord = regexp.MustCompile(`(?i)\bsides?(?:\s+laps?)?\s*:?\s*\b`)

// lapWord stands right before a lap of any kind: "down 5 each face, laps 3".
var lapWord = regexp.MustCompile(`(?i)\b(?:over)?laps?\s*:?\s*\b`)

// listEnd ends what a cell of several things says of one.
var listEnd = regexp.MustCompile(`[;,]\s`)

// lapAfter is the lap that a cell tells right after a word: "side 2 in., end 4 in.;
// laps 3 in. over the flashing".
func (r *reader) lapAfter(c source, word *regexp.Regexp) (phrase.Quantity, bool) {
	for _, at := range word.FindAllStringIndex(c.text, -1) {
		said := r.phrase.Quantities(listEnd.Split(c.text[at[1]:], 2)[0], hint("length", c.unit))
		if len(said) > 0 && said[0].Start == 0 && said[0].Kind == "length" && said[0].Min != nil && !filmLap(said[0]) {
			return said[0], true
		}
	}
	return phrase.Quantity{}, false
}

// sideThenEnd is a heading over the laps of the sides and then of the ends of a
// sheet, by letters too ("Laps s/e"); sideAndEnd a cell under it, and no fraction of an inch.
var (
	sideThenEnd = regexp.MustCompile(`(?i)\bsides?\b.*\bends?\b|\blaps?\b[^/]*\bs\.?\s*/\s*e\b`)
	sideAndEnd  = regexp.MustCompile(`^\s*(?:\d{2,}|\d+(?:\.\d+)?\s+|\d*[½¼¾⅛⅜⅝⅞])\s*/\s*(\d*(?:\.\d+)?[½¼¾⅛⅜⅝⅞]?\s*[a-zA-Z".]{0,3})\s*$`)
	endWord     = regexp.MustCompile(`(?i)\bends?(?:\s+laps?)?\s*:?\s*$`)
)

// endLap takes the lap that a cell tells for the ends of a sheet: "75 / 40" under
// "side / end", "sides 3 in., ends 6 in.".
func (r *reader) endLap(l *Line, c source) {
	if m := sideAndEnd.FindStringSubmatch(c.text); m != nil && c.ends {
		c.text = m[1]
		if f, ok := r.figure(c, "length"); ok && f.Min != nil {
			keep(l.Figures, "end_lap_mm", f)
		}
		return
	}
	if m := endAfter.FindStringSubmatch(c.text); m != nil { // "75 side / 100 end"
		last := c
		last.text = m[1]
		if f, ok := r.figure(last, "length"); ok && f.Min != nil {
			keep(l.Figures, "end_lap_mm", f)
		}
		return
	}
	for _, q := range r.phrase.Quantities(c.text, hint("length", c.unit)) {
		if q.Kind == "length" && q.Min != nil && endWord.MatchString(c.text[:q.Start]) {
			f := figureTold(q, c.at)
			f.Assumed = q.Unit == "" || !strings.Contains(q.Text, q.Unit)
			keep(l.Figures, "end_lap_mm", f)
		}
	}
	if q, ok := r.lapAfter(c, endsWord); ok { // "sides 65, ends 130" in the unit of the heading
		f := figureTold(q, c.at)
		f.Assumed = q.Unit == "" || !strings.Contains(q.Text, q.Unit)
		keep(l.Figures, "end_lap_mm", f)
	}
}

// endAfter is a cell that names the sides and the ends of a sheet each after its lap; an
// end that is only counted ("sealed at 2 ends") stands beside no side.
var endAfter = regexp.MustCompile(`(?i)\d\s*(?:mm|in\.?|")?\s*sides?(?:\s+laps?)?\s*[,;/&+]\s*(\d+(?:\.\d+|[- ]\d/\d+)?\s*(?:mm|in\.?|")?)\s*ends?(?:\s+laps?)?\s*(?:$|[,;.&+(/]|and\b)`)

// endsWord stands right before the lap of the ends of a sheet.
var endsWord = regexp.MustCompile(`(?i)\bends?(?:\s+laps?)?\s*:?\s*\b`)

// wordyLap is how many words beside those of laps a cell of laps has that tells
// of other things too.
const wordyLap = 2

// wordy holds for a cell with words beside figures, units and those of laps.
func (r *reader) wordy(text string) bool { return r.otherWords(text) >= wordyLap }

// otherWords counts the words of a cell of laps that tell of other things.
func (r *reader) otherWords(text string) int {
	n := 0
	for _, w := range headingWords(text) {
		if strings.ContainsFunc(w, unicode.IsDigit) || r.head.units[w] || r.head.filler[w] || r.words.hasAny(w, r.words.laps) {
			continue
		}
		n++
	}
	return n
}

// ageOfBed takes the age that the words of product data ask of concrete ("dry;
// concrete 14 days or more"), where no column of its own does.
func (r *reader) ageOfBed(p *Product, c source) {
	if _, stated := p.Figures["concrete_age_days"]; stated || figureOf[c.slot].key != "" {
		return
	}
	start := 0
	for _, q := range r.phrase.Quantities(c.text, "") {
		before := c.text[start:q.Start]
		start = q.End
		if i := strings.LastIndexAny(before, ";("); i >= 0 {
			if inner := before[i:]; strings.TrimSpace(inner) == "(" {
				before = before[strings.LastIndexAny(before[:i], ",;)")+1 : i] // "plywood, concrete (14 d min.), metal"
			} else {
				before = inner
			}
		}
		if parts := r.words.splitList(before); len(parts) > 0 { // a full stop, but not that of "Conc."
			before = parts[len(parts)-1].text
		}
		if q.Kind != "days" || q.Min == nil || !r.words.hasAny(before, r.words.youngBeds) {
			continue
		}
		p.Figures["concrete_age_days"] = figureTold(q, c.at)
		return
	}
}

// besides takes what a cell of thickness tells too: the lap and the permeance, where no
// column states them, the air that passes by the test of a material, and words ("40 mil;
// side 3 in.; no end dams", "20 mil / 11 perm").
func (r *reader) besides(l *Line, c source) {
	r.signals(l, c)
	if l.Texts["air"] == "" {
		r.figuresNamed(l.Figures, c.text, c.at, r.words.figures.air)
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "vapor_permeance" && q.Unit != "" && l.Texts["vapor"] == "" {
			keep(l.Figures, "vapor_ng", figureTold(q, c.at))
		}
	}
	if f := r.lapOf(c, Figure{Unit: c.unit, At: c.at}); f.Min != nil && l.Texts["lap"] == "" {
		keep(l.Figures, "lap_mm", f)
	}
}

// filmIn takes a film, or a thickness by its name, that a cell of laps or widths tells too,
// where no column states it. One that it tells of another product ("LQ-2 15 mil at joints")
// is not the row's.
func (r *reader) filmIn(l *Line, c source) {
	main := r.productOf(l.Main())
	if slices.ContainsFunc(r.lex.findTags(c.text), func(m mention) bool {
		return m.product >= 0 && (main == nil || r.sched.Products[m.product].ID != main.ID)
	}) {
		return
	}
	for _, q := range r.phrase.Quantities(summed(c.text), "") {
		if q.Kind == "length" && (filmLap(q) || isAllThickness(c.text, q)) {
			keep(l.Figures, "thickness_mm", figureTold(q, c.at))
		}
	}
}

// thickAfter is the word for a thickness behind its figure, and nothing after it that is
// as thick: "1.5 mm thk; laps 100", never "13 mm thick board".
var thickAfter = regexp.MustCompile(`(?i)^\s*(?:thk|thick(?:ness)?)\.?\s*(?:min\.?|minimum|nom\.?|nominal)?\s*(?:[,;)]|$)`)

// isAllThickness holds for a figure with its word that is a part of a list by itself.
func isAllThickness(text string, q phrase.Quantity) bool {
	before := strings.TrimSpace(text[:q.Start])
	return q.Unit != "" && thickAfter.MatchString(text[q.End:]) && (before == "" || strings.ContainsAny(before[len(before)-1:], ",;("))
}
