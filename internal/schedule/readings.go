package schedule

import (
	"maps"
	"strconv"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// airColumn takes "air temp" beside a column of surface readings for a reading,
// and not for the range in which a material goes on.
func (r *reader) airColumn(t *table) {
	if t.kind != kindSchedule || t.has("reading_surface", "reading_dew", "reading_rh") == 0 || t.column("reading_air") > 0 {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		for _, one := range r.words.readings.List {
			if c.Slot == "apply" && one.Key == figureOf["reading_air"].key && one.words.MatchString(c.Heading) {
				c.Slot = "reading_air"
			}
		}
	}
}

// faceTemps takes a column of temperatures of a schedule that is headed by a face ("Temperatures
// (F) | Substrate", "Max. substrate F seen") for readings of it, and for no bed or rating.
func (r *reader) faceTemps(t *table) {
	if t.kind != kindSchedule || t.column("reading_surface") > 0 {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		own := headingWords(c.own)
		beds := c.Slot == "substrate" && r.mostlyFigures(t, i)
		rated := c.Slot == "service_max" && c.Confidence < sureHeading && holdsAny(own, r.head.faces) && !holdsAny(own, r.head.service) && !holdsAny(own, r.head.noDay)
		if (beds || rated) && r.unitIn(c.Heading, "temperature", "") != "" && r.mostly(t.stretch(), t.nums[i], "temperature") {
			c.Slot, c.Why = "reading_surface", c.Why+", and temperatures stand under it"
			return
		}
	}
}

// mostlyFigures holds for a column of figures without words.
func (r *reader) mostlyFigures(t *table, i int) bool {
	filled, bare := 0, 0
	for words := range r.said(t, t.nums[i]) {
		if filled++; r.isFigure(words) || r.isMeasure(words) {
			bare++
		}
	}
	return filled > 0 && bare*3 >= filled*2
}

// dayEnds takes two columns of a schedule that tell the low and the high of the air for
// readings of the day ("Air lo", "Air hi"), and not for the limits of what goes on.
func (r *reader) dayEnds(t *table) {
	if t.kind != kindSchedule {
		return
	}
	low, high := -1, -1
	for i := range t.cols {
		lower, upper := r.endOfDay(t, i)
		if lower && low < 0 {
			low = i
		}
		if upper && high < 0 {
			high = i
		}
	}
	if low < 0 || high < 0 {
		return
	}
	for _, i := range []int{low, high} {
		c := &t.cols[i]
		c.Slot, c.Why = "reading_air", "it tells one end of the air of the day, beside a column of the other"
	}
}

// endOfDay tells which end of the day's air a column gives by its heading, which says
// nothing of limits or of laying.
func (r *reader) endOfDay(t *table, i int) (lower, upper bool) {
	c := t.cols[i]
	words := r.head.usual(headingWords(c.Heading))
	switch {
	case c.Slot != "" && c.Slot != "reading_air" && c.Slot != "apply_min" && c.Slot != "apply_max":
	case !holdsAny(words, r.head.dayAir), holdsAny(words, r.head.applies), holdsAny(words, r.head.noDay), r.head.denied(c.Heading) != "": // "not under" is a limit
	case !r.columnHolds(t.stretch(), t.nums[i], "temperature"):
	default:
		lower, upper = holdsAny(words, r.head.lower), holdsAny(words, r.head.upper)
	}
	return lower && !upper, upper && !lower
}

// widened is a reading of the air with the one of the other end of the day that the row
// tells in a column of its own.
func widened(f, before Figure) Figure {
	if f.Min == nil || f.Max == nil || before.Min == nil || before.Max == nil || before.At == f.At {
		return f
	}
	least, most := min(*f.Min, *before.Min), max(*f.Max, *before.Max)
	before.Min, before.Max, before.Text = &least, &most, before.Text+" to "+f.Text
	return before
}

// highLow is the high and the low of a day or a month in one cell: "71/43".
var highLow = regexp.MustCompile(`^\s*-?\d+(?:\.\d+)?\s*/\s*(-?\d+(?:\.\d+)?\b.*)$`)

// spread makes a range of a high and a low in the cell of a reading: which of them
// held for the work is not known.
func (r *reader) spread(f *Figure, c source, kind string) {
	m := highLow.FindStringSubmatch(c.text)
	if m == nil || f.Min == nil || f.Max == nil {
		return
	}
	c.text = m[1]
	if low, ok := r.figure(c, kind); ok && low.Min != nil && low.Max != nil {
		least, most := min(*f.Min, *low.Min), max(*f.Max, *low.Max)
		f.Min, f.Max = &least, &most
	}
}

// readingLead are the words before two readings that tell where they were taken.
var readingLead = regexp.MustCompile(`^\s*\pL[\pL .'-]*[\pL.](?::\s*|\s+)`)

// twoReadings takes the two readings that a heading names beside one another, of
// a cell that gives both: "8 / 7" under "Air / surface".
func (r *reader) twoReadings(l *Line, c source, kind string) bool {
	keys := r.readingsNamed(c.heading, kind)
	first, second, ok := strings.Cut(c.text, "/")
	if !ok || len(keys) != 2 || keys[0] == keys[1] {
		return false
	}
	lead := readingLead.FindString(first)
	for _, one := range r.words.readings.List {
		if one.words.MatchString(lead) {
			return false // it names them in an order of its own
		}
	}
	found := map[string]Figure{}
	for i, text := range []string{first[len(lead):], second} {
		one := c
		if one.text = strings.TrimSpace(text); !r.holds(workbook.Cell{Value: one.text}, kind) {
			return false
		}
		f, ok := r.figure(one, kind)
		if !ok || f.Min == nil {
			return false
		}
		f.Text = c.text
		found[keys[i]] = f
	}
	maps.Copy(l.Figures, found)
	if lead != "" {
		r.signals(l, c) // "tented: 11 / 9"
	}
	return true
}

// lettered reads the letter after a reading, where a note says what it stands for:
// "9 / 8 H", and "H = heated hoarding".
func (r *reader) lettered(l *Line, c source) {
	words := strings.Fields(c.text)
	if meaning := r.letters[strings.Trim(lastWords(c.text, 1), "()")]; len(words) > 1 && meaning != "" {
		c.text = meaning
		r.signals(l, c)
	}
}

// readingsNamed lists the readings of a kind that the parts of a heading name.
func (r *reader) readingsNamed(heading, kind string) []string {
	var keys []string
	for _, part := range partMarks.Split(strings.ToLower(heading), -1) {
		for _, one := range r.words.readings.List {
			if one.Kind == kind && one.words.MatchString(part) {
				keys = append(keys, one.Key)
				break
			}
		}
	}
	return keys
}

var slashDate = regexp.MustCompile(`\d/\d|\d-\d+-\d`)

// sentenceEnd parts the sentences of a remark; a point between figures does not.
var sentenceEnd = regexp.MustCompile(`[;\n]|\.\s`)

// labelEnd parts a figure's label from the words before or after it.
var labelEnd = regexp.MustCompile(`[,;/()\n|]|\band\b|&|\+`)

// readings takes what the site measured from the words of a cell ("board 38F,
// air 42F, 85% RH"). A reading that is told twice with two figures is taken
// out: which of them held for the work is not known.
func (r *reader) readings(l *Line, c source) {
	if !hasWord(r.words.readings.Slots, c.slot) {
		return
	}
	r.pullTests(l, c)
	c.text = r.withScale(c.text)
	r.nightReading(l, c)
	for key, f := range r.measured.of(c.text, func() map[string]Figure { return r.readingsIn(c.text) }) {
		f.At = c.at
		if r.noReading(key, f) {
			continue
		}
		if key != bareKey {
			keep(l.Figures, key, f)
		} else if _, read := l.Figures["reading_surface_c"]; c.slot == "remark" && !read {
			keep(l.Figures, "reading_air_c", f)
		}
	}
}

// noReading holds for a temperature of a face or the air that no place of work has: "250 F
// sheet under metal" tells what a sheet bears.
func (r *reader) noReading(key string, f Figure) bool {
	site := key == "reading_surface_c" || key == "reading_air_c" || key == bareKey
	return site && f.Min != nil && *f.Min > r.words.readings.Plain.Most["C"]
}

// withScale writes the degrees of the workbook behind the readings of a remark that tell
// none: on a job with one scale nobody writes it.
func (r *reader) withScale(text string) string {
	if r.scale == "" || !strings.ContainsAny(text, "0123456789") {
		return text
	}
	var out strings.Builder
	last := 0
	for _, at := range plainDegrees.FindAllStringIndex(text, -1) {
		if r.words.readings.Plain.tells(text, at[0], at[1], r.scale) {
			out.WriteString(text[last:at[1]] + " " + r.scale)
			last = at[1]
		}
	}
	return out.String() + text[last:]
}

// plainDegrees is a figure that temperatures are told in.
var plainDegrees = regexp.MustCompile(`-?\b\d{1,3}\b`)

// joinedFigure is what stands before a part of a figure: "8/14", "1.25", "L-3".
var joinedFigure = regexp.MustCompile(`[\d\pL][./:-]?$|#$`)

// nightReading takes the air of the night that follows, read or foretold, where the words
// beside a temperature tell of it: "46 at 3 pm; 29 overnight", "night low -2 °C".
func (r *reader) nightReading(l *Line, c source) {
	w := &r.words.readings.Night
	text := overNight.ReplaceAllString(c.text, "overnight") // its stroke parts nothing
	if !w.word.MatchString(text) {
		return
	}
	for _, piece := range labelEnd.Split(text, -1) {
		if !w.word.MatchString(piece) {
			continue
		}
		if c.unit != "" { // "48 / 46, night 26" under a heading with the unit
			piece = nightEnd.ReplaceAllString(piece, "$1 "+c.unit)
		}
		said := r.phrase.Quantities(strings.TrimSpace(piece), hint("temperature", c.unit))
		if len(said) == 0 {
			continue
		}
		if q := said[0]; q.Kind == "temperature" && q.Min != nil && q.Bound == "" && !w.not.MatchString(strings.TrimSpace(piece)[:q.Start]) {
			keep(l.Figures, "reading_night_c", figureTold(q, c.at))
		}
	}
}

// overNight is a night in short: "45 aft / 29 o/n".
var overNight = regexp.MustCompile(`(?i)\bo/n\b`)

// nightEnd is a figure without a unit at the end of a piece.
var nightEnd = regexp.MustCompile(`(\s[-−]?\d+(?:\.\d+)?)\s*$`)

// pullTests takes the least of the results of pull tests: "pulls 9, 11, 8 psi".
func (r *reader) pullTests(l *Line, c source) {
	m := r.words.readings.pulls.FindStringSubmatch(c.text)
	if m == nil {
		return
	}
	for _, one := range numberWord.FindAllString(m[1], -1) {
		f, ok := r.figure(source{text: strengthOf(one, m[2]), at: c.at}, "strength")
		if before, again := l.Figures["pull_pa"]; ok && f.Min != nil && (!again || *f.Min < *before.Min) {
			f.Text = one + " " + m[2]
			l.Figures["pull_pa"] = f
		}
	}
}

// strengthOf writes a pull in the units of strengths: kPa is one of the pressures of air.
func strengthOf(figure, unit string) string {
	x, err := strconv.ParseFloat(figure, 64)
	if err != nil || !strings.EqualFold(unit, "kPa") {
		return figure + " " + unit
	}
	return strconv.FormatFloat(x/1000, 'f', -1, 64) + " MPa"
}

// airResult takes what a tested part let through from the words of its inspection:
// "0.31 cfm/sf at 300 Pa".
func (r *reader) airResult(l *Line, c source) {
	if c.slot != "inspected" {
		return
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "air_permeance" && q.Min != nil && q.Bound == "" {
			keep(l.Figures, "air_result_lsm2", figureTold(q, c.at))
			return
		}
	}
}

var numberWord = regexp.MustCompile(`\d+(?:\.\d+)?`)

// bareKey is the key of a temperature that nothing but the weather stands beside.
const bareKey = "bare_c"

// bareAir widens the range of the bare temperatures of a remark by those of one of its
// sentences; one with a date tells of another day.
func (r *reader) bareAir(out map[string]Figure, sentence string) {
	w := &r.words.readings.Bare
	for i, q := range r.phrase.Quantities(sentence, "") {
		if q.Kind == "clock" && i > 0 {
			continue
		}
		if q.Kind != "temperature" || q.Min == nil || q.Max == nil || q.Bound != "" || *q.Max > w.Hottest {
			return
		}
		if i == 0 && (!w.before.MatchString(sentence[:q.Start]) || !w.after.MatchString(sentence[q.End:])) {
			return
		}
		f, again := out[bareKey]
		if !again {
			f = figureTold(q, At{})
		}
		low, high := min(*f.Min, *q.Min), max(*f.Max, *q.Max)
		f.Min, f.Max = &low, &high
		out[bareKey] = f
	}
}

// readingsIn reads a text sentence by sentence.
func (r *reader) readingsIn(text string) map[string]Figure {
	out := map[string]Figure{}
	r.figuresNamed(out, text, At{}, r.words.figures.Lines)
	found := map[string]Figure{}
	twice := map[string]bool{}
	for _, sentence := range r.words.parted(text) {
		if r.words.readings.not.MatchString(r.words.readings.past.ReplaceAllString(sentence, "")) {
			continue
		}
		if !slashDate.MatchString(sentence) {
			r.bareAir(out, sentence)
		}
		r.figuresNamed(out, sentence, At{}, r.words.figures.Measured)
		for key, f := range r.readingsOf(sentence) {
			before, again := found[key]
			twice[key] = twice[key] || again && *before.Min != *f.Min
			found[key] = f
		}
	}
	for key, f := range found {
		if !twice[key] {
			keep(out, key, f)
		}
	}
	return out
}

// parted gives the sentences of a remark. The point of an abbreviation ends none:
// "Surf. 44 F, dew pt. 42 F"; but "2 in. min. Under copings" goes on with another.
func (w *wordlists) parted(text string) []string {
	var out []string
	start := 0
	for _, end := range sentenceEnd.FindAllStringIndex(text, -1) {
		if text[end[0]] == '.' && w.abbreviated(text[start:end[0]]) && !w.opens(text[end[1]:]) {
			continue
		}
		out, start = append(out, text[start:end[0]]), end[1]
	}
	return append(out, text[start:])
}

// abbreviated holds for a text that ends in an abbreviation, of one word or of two: "perm" is
// one only after what passes ("air perm. 0.02"), since "14 perm." ends a sentence.
func (w *wordlists) abbreviated(text string) bool {
	text = strings.ToLower(text)
	last := strings.LastIndexAny(text, " ,;:(/")
	first := strings.LastIndexAny(text[:max(last, 0)], " ,;:(/")
	return w.abbreviations[text[last+1:]] || w.abbreviations[text[first+1:]]
}

func hasWord(list []string, s string) bool {
	for _, one := range list {
		if one == s {
			return true
		}
	}
	return false
}

// readingsOf reads one sentence; of a reading told twice in it none is kept.
func (r *reader) readingsOf(text string) map[string]Figure {
	out := map[string]Figure{}
	qs := r.phrase.Quantities(text, "")
	for i, q := range qs {
		if q.Min == nil || q.Max == nil || *q.Min != *q.Max || q.Bound == "min" || q.Bound == "max" {
			continue
		}
		from, to := 0, len(text)
		if i > 0 {
			from = qs[i-1].End
		}
		if i+1 < len(qs) {
			to = qs[i+1].Start
		}
		key := r.words.readings.keyOf(q, text[from:q.Start], text[q.End:to])
		if key == "" {
			continue
		}
		if _, again := out[key]; again {
			return nil
		}
		out[key] = figureTold(q, At{})
	}
	return out
}

// keyOf tells which reading a figure is: by its unit, else by the words right
// before it, else by those right after it.
func (w *readingWords) keyOf(q phrase.Quantity, before, after string) string {
	before = strings.TrimRight(before, " (:=~@")
	if ends := labelEnd.FindAllStringIndex(before, -1); len(ends) > 0 {
		before = before[ends[len(ends)-1][1]:]
	}
	if end := labelEnd.FindStringIndex(after); end != nil {
		after = after[:end[0]]
	}
	for _, one := range w.List {
		if one.Kind == q.Kind && one.unit != nil && one.unit.MatchString(q.Unit) {
			return one.Key
		}
	}
	for _, label := range []string{before, after} {
		key, last := "", -1
		for _, one := range w.List {
			if one.Kind != q.Kind {
				continue
			}
			if at := one.words.FindAllStringIndex(label, -1); len(at) > 0 && at[len(at)-1][1] > last {
				key, last = one.Key, at[len(at)-1][1]
			}
		}
		if key != "" {
			return key
		}
	}
	return ""
}
