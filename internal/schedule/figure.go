package schedule

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// figureOf maps a slot to the key and kind of its figure.
var figureOf = map[string]struct{ key, kind string }{
	"thickness":     {"thickness_mm", "length"},
	"min_thickness": {"min_thickness_mm", "length"},
	"lap":           {"lap_mm", "length"},
	endLaps:         {"end_lap_mm", "length"},
	"min_lap":       {"min_lap_mm", "length"},
	"width":         {"width_mm", "length"},
	"primer_min":    {"primer_apply_min_c", "temperature"},
	"apply":         {"apply_min_c", "temperature"},
	"apply_min":     {"apply_min_c", "temperature"},
	"apply_max":     {"apply_max_c", "temperature"},
	"service_max":   {"service_max_c", "temperature"},
	"exposure_days": {"exposure_days", "days"},
	"air":           {"air_lsm2", "air_permeance"},
	"vapor":         {"vapor_ng", "vapor_permeance"},
	"voc":           {"voc_gl", "voc"},
	"concrete_age":  {"concrete_age_days", "days"},
	"min_exposure":  {"min_exposure_days", "days"},
	"planned_open":  {"planned_open_days", "days"},
	"age":           {"age_days", "days"},

	"reading_surface": {"reading_surface_c", "temperature"},
	"reading_air":     {"reading_air_c", "temperature"},
	"reading_night":   {"reading_night_c", "temperature"},
	"reading_dew":     {"reading_dew_c", "temperature"},
	"reading_rh":      {"reading_rh", "ratio"},
	"wood_moisture":   {"wood_moisture", "ratio"},
	"end_dam":         {"end_dam_mm", "length"},
	"solids":          {"solids", "ratio"},
	"movement":        {"movement", "ratio"},
	"kettle":          {"kettle_c", "temperature"},
	"reading_kettle":  {"reading_kettle_c", "temperature"},
	"joint":           {"joint_mm", "length"},
	"pull":            {"pull_pa", "strength"},

	"insulation_thickness": {"insulation_mm", "length"},
	"outside_r":            {"outside_r_m2kw", "r_value"},
}

// figure reads the quantity that a cell of a figure column states; ok is false
// for a cell that says there is none.
func (r *reader) figure(c source, kind string) (Figure, bool) {
	if r.words.blank[strings.ToLower(c.text)] {
		return Figure{}, false
	}
	f := Figure{Text: c.text, Unit: c.unit, At: c.at}
	if r.words.unlimited(c.text) {
		f.NoLimit = true
		return f, true
	}
	other := false
	text := plainFigure(c.text)
	if kind == "temperature" {
		text = dayAndNight.ReplaceAllString(text, "$1")
	}
	if mostOf[c.slot] {
		text = leadTo.ReplaceAllString(text, "max. $1")
	}
	if m := twice.FindStringSubmatch(text); m != nil && c.unit != "" && c.second != "" {
		text = m[1] + " " + c.unit + " (" + m[2] + " " + c.second + ")"
	}
	if c.slot == "thickness" {
		text = ofCoats.ReplaceAllString(text, "$1")
		if rest := plyCount.ReplaceAllString(text, ""); rest != text {
			text, other = rest, true
		}
	}
	if kind == "vapor_permeance" {
		text = meters.ReplaceAllString(text, "$1 m sd")
	}
	text = r.withHeadingUnit(text, kind, c.unit)
	if c.slot == "thickness" {
		text = summed(filmFirst.ReplaceAllString(filmBehind(text), "$1 $3 $2"))
		if c.unit != "" && !cupsOf.MatchString(text) {
			text = filmNoUnit.ReplaceAllString(text, "$1 "+c.unit+" $2")
		}
	}
	for _, q := range r.quantities(text, kind, c.unit) {
		if q.Kind == "air_layer" && kind == "vapor_permeance" {
			q = fromAirLayer(q)
		}
		if q.Kind != kind && (c.slot != "joint" || q.Kind != "size") {
			other = other || q.Unit != "" // "16 oz", "26 ga.": understood, but not in this unit
			continue
		}
		if c.slot == "thickness" && widthAfter.MatchString(text[q.End:]) {
			other = true
			continue
		}
		f.take(q)
		if f.Assumed = q.Unit == "" || !strings.Contains(c.text, q.Unit); f.Assumed && c.unit != "" {
			f.Unit = c.unit // as the heading writes it
		}
		if f.Assumed && strings.EqualFold(f.Unit, c.unit) {
			f.Unit = c.unit // as the column writes it: °C
		}
		if c.slot == "thickness" {
			r.dryOfPair(&f, text, kind, c.unit)
		}
		return f, true
	}
	switch {
	case other:
	case startsWithDigit(c.text):
		f.Problem = "no unit"
	default:
		f.Problem = "not a figure"
	}
	return f, true
}

// cupsOf is a permeance by the dry and the wet cup, whose second figure has no unit: "0.8
// perm dry / 12 wet".
var cupsOf = regexp.MustCompile(`(?i)\bperms?\b[^;,]*\b(?:dry|wet)\b`)

// widthAfter follows a figure that tells how wide a strip is, and not how thick.
var widthAfter = regexp.MustCompile(`(?i)^\s*(?:wide|in width)\b`)

// betweenEnds parts the two ends of a range: "20 min., 60 max.", "> 5, < 35".
var betweenEnds = regexp.MustCompile(`(?i)[,;/&]| and `)

// endOf is the key of a figure of one end, which its own words may turn: "40 F and up" is
// the least, whatever its heading calls the column.
func endOf(key string, f Figure) string {
	if key == figureOf["apply_max"].key && f.Max == nil && f.Min != nil {
		return figureOf["apply_min"].key
	}
	return key
}

// upperFigure takes the most at which a product goes on from a column that states both
// ends: "40 to 95", "20 min., 60 max.".
func (r *reader) upperFigure(figures map[string]Figure, c source, f Figure) {
	if c.slot != "apply" || f.Min == nil {
		return
	}
	upper := f
	if ends := betweenEnds.Split(c.text, 2); f.Max == nil && len(ends) == 2 && !r.words.hasAny(ends[1], r.head.service) {
		for _, q := range r.phrase.Quantities(ends[1], hint("temperature", c.unit)) {
			if q.Kind == "temperature" && q.Bound == "max" {
				upper.take(q)
			}
		}
	}
	if f.Max != nil && *f.Max == *f.Min {
		r.upperEnd(&upper, c)
	}
	if upper.Max != nil && *upper.Max > *f.Min {
		upper.Min = upper.Max
		figures["apply_max_c"] = upper
	}
}

// toUpper stands between the two ends of a range of which each is told in two units: "25 °F
// [-4 °C] to 110 °F [43 °C]", "40 °F (4 °C) and rising, to 110 °F (43 °C)".
var toUpper = regexp.MustCompile(`(?i)^\s*(?:and (?:up|rising|above)\s*)?,?\s*(?:up )?to\s*$`)

// upperEnd takes the upper end of such a range.
func (r *reader) upperEnd(upper *Figure, c source) {
	said := r.phrase.Quantities(c.text, hint("temperature", c.unit))
	if len(said) < 2 || said[0].Kind != "temperature" || said[1].Kind != "temperature" || said[1].Max == nil || *said[1].Max <= *upper.Min {
		return
	}
	if toUpper.MatchString(c.text[said[0].End:max(said[0].End, said[1].Start)]) {
		upper.take(said[1])
	}
}

// quantities reads a cell of a column of one kind; stretches of months are so many
// days in a column of days.
func (r *reader) quantities(text, kind, unit string) []phrase.Quantity {
	if kind != "days" {
		return r.phrase.Quantities(text, hint(kind, unit))
	}
	said := kind
	if r.unitOf(unit, "months") != "" {
		said = "months"
	}
	list := r.phrase.Quantities(text, hint(said, unit))
	for i, q := range list {
		if q.Kind == "months" {
			list[i] = inDays(q)
		}
	}
	return list
}

func hint(kind, unit string) string {
	if unit == "" {
		return kind
	}
	return kind + ":" + unit
}

// meters is a length in meters, which under a heading for vapor is that of the air that resists
// as much: "20 m", "0.3-15 m".
var meters = regexp.MustCompile(`^\s*([<>≤≥]?\s*\d[\d.,\s–-]*?)\s*m\s*$`)

// mostOf are the columns that state the most; leadTo is how their cells may begin:
// "to 180", "good to 250".
var mostOf = map[string]bool{"service_max": true, "apply_max": true, "exposure_days": true}

var leadTo = regexp.MustCompile(`(?i)^(?:good |ok |rated |fine )?(?:up )?to (\d|-)`)

// dayAndNight says after a bare temperature that it holds the whole day through, and
// counts no days: "50 day and night", "5 days & nights".
var dayAndNight = regexp.MustCompile(`(?i)^(\s*-?\d+(?:\.\d+)?),?\s+(?:both\s+)?days?\s*(?:and|&|/|\+)\s*nights?\b`)

// twice is a bare figure with the same in another unit: "75 (3)".
var twice = regexp.MustCompile(`^\s*(-?\d+(?:\.\d+)?)\s*\((-?\d+(?:\.\d+)?)\)\s*$`)

var (
	parted    = regexp.MustCompile(`^\d{1,3}(?:[ \x{a0}\x{2009}\x{202f}]\d{3})+(?:[.,]\d+)?(?:\s*\D.*)?$`)
	procedure = regexp.MustCompile(`\s*\([A-Za-z]\)$`)
)

// plainFigure closes the gaps of "1 650", where nothing but a unit follows, and
// drops the letter of a test procedure: "2.0 (A)".
func plainFigure(text string) string {
	text = procedure.ReplaceAllString(text, "")
	if !parted.MatchString(text) {
		return text
	}
	end := strings.IndexFunc(text, func(c rune) bool {
		return !unicode.IsDigit(c) && c != ' ' && c != '\u00a0' && c != '\u2009' && c != '\u202f'
	})
	if end < 0 {
		end = len(text)
	}
	number := strings.TrimRightFunc(text[:end], unicode.IsSpace)
	return strings.Join(strings.Fields(number), "") + text[len(number):]
}

// inSecond is a bare figure and the same in brackets: "225 (9 in.)".
var inSecond = regexp.MustCompile(`^(\d[\d.,]*)\s*(\([^()]*\))`)

// withHeadingUnit writes the heading's unit after a bare figure that brackets tell
// in another unit, so that the two are held against each other.
func (r *reader) withHeadingUnit(text, kind, unit string) string {
	m := inSecond.FindStringSubmatch(text)
	if m == nil || unit == "" || !slices.ContainsFunc(r.phrase.Quantities(m[2], ""), func(q phrase.Quantity) bool { return q.Kind == kind && q.Unit != "" }) {
		return text
	}
	return m[1] + " " + unit + " " + m[2] + text[len(m[0]):]
}

// filmFirst is a film told before its unit: "17 dry mils".
var filmFirst = regexp.MustCompile(`(?i)(\d)\s+(dry|wet)\s+(mils?)\b`)

// wordThenFilm is a film told after its word, at the start of a cell and further on: "wet
// 60 / dry 30 mils", "WFT: 1.5 mm, DFT: 0.75 mm".
var (
	wordThenFilm  = regexp.MustCompile(`(?i)\b(wet|dry|wft|dft)(?: film)?\s*[:=]?\s*(\d+(?:\.\d+)?(?:\s*(?:mils?|mm|µm|microns?)\b)?)`)
	opensWithFilm = regexp.MustCompile(`(?i)^\s*(?:wet|dry|wft|dft)\b`)
)

// filmBehind puts the words of films behind their figures, where a cell opens with one.
func filmBehind(text string) string {
	if !opensWithFilm.MatchString(text) {
		return text
	}
	return wordThenFilm.ReplaceAllString(text, "$2 $1")
}

// filmNoUnit is a film whose unit the heading tells: "60 wet / 30 dry".
var filmNoUnit = regexp.MustCompile(`(?i)(\d)\s+(wet|dry|wft|dft)\b`)

// wetThen and dryThen stand right behind a film, after the bracket of its second unit.
var (
	wetThen = regexp.MustCompile(`(?i)^[\])]?\s*(?:wet|wft)\b`)
	dryThen = regexp.MustCompile(`(?i)^[\])]?\s*(?:dry|dft)\b`)
)

// dryOfPair takes the dry one of a film that a cell tells wet first and then dry, which
// is what stays on the wall: "70 mils [1.8 mm] wet, 40 mils [1.0 mm] dry".
func (r *reader) dryOfPair(f *Figure, text, kind, unit string) {
	wet := false
	for _, q := range r.quantities(text, kind, unit) {
		switch {
		case q.Kind != kind:
		case wetThen.MatchString(text[q.End:]):
			wet = true
		case wet && dryThen.MatchString(text[q.End:]):
			told := dryThen.FindStringIndex(text[q.End:])
			f.take(q)
			f.Text = text[q.Start : q.End+told[1]]
			return
		}
	}
}

var plies = regexp.MustCompile(`^(\d+(?:\.\d+)?)(?: [a-z]+)? ?\+ ?(\d+(?:\.\d+)?)( mils?| mm)?(?: [a-z]+)*$`)

// plyCount is how many sheets or coats lie on one another, which is no measure: "2 ply", "3 plies".
var plyCount = regexp.MustCompile(`(?i)\b\d{1,2}[ -]?(?:ply|plies|layers?|lyrs?|coats?)\b`)

// ofCoats is a film of several coats, worked out: "2 x 60 = 120".
var ofCoats = regexp.MustCompile(`(?i)^\d{1,2} ?[x×] ?\d+(?:\.\d+)?(?: ?mils?| ?mm)? ?= ?(\d)`)

// summed adds the parts of "0.4 + 1.0", "25 butyl + 5 foil" and "30 + 30 mil wet".
func summed(text string) string {
	m := plies.FindStringSubmatch(strings.ToLower(text))
	if m == nil {
		return text
	}
	a, _ := strconv.ParseFloat(m[1], 64) // digits, by the pattern
	b, _ := strconv.ParseFloat(m[2], 64)
	return strconv.FormatFloat(a+b, 'f', -1, 64) + m[3]
}

// toldFigures maps the role of a quantity told in words to the figure of the
// line that it stands for, where the clause tells the signal, if one is named.
var toldFigures = map[string]struct{ key, signal string }{
	"lap":   {"lap_mm", ""},
	"clear": {"held_back_mm", "held_back"},
	"back":  {"held_back_mm", "held_back"},
}

// toldFigure is the figure that a quantity of a clause stands for, "" if none.
func toldFigure(cl phrase.Clause, q phrase.Quantity) string {
	f := toldFigures[q.Role]
	if q.Kind == "days" { // "one day over the plan" is no lap
		return ""
	}
	tells := func(s phrase.Signal) bool { return s.ID == f.signal && !s.No && !s.If }
	if f.signal != "" && !slices.ContainsFunc(cl.Signals, tells) {
		return ""
	}
	return f.key
}

// figures takes laps, ages and application limits told in words where no
// column states them.
func (l *Line) figures(cl phrase.Clause, c source, ofBed bool) {
	for _, q := range cl.Quantities {
		key := toldFigure(cl, q)
		if q.Kind == "temperature" && c.slot == "primer" {
			key = "primer_apply_min_c"
		}
		if key == "lap_mm" && filmLap(q) {
			continue // "40 mil over joints" is a film
		}
		if key == "lap_mm" && (byOther.MatchString(c.text[q.End:]) || dripBefore.MatchString(c.text[:q.Start])) {
			continue
		}
		if key != "" && q.Min != nil {
			keep(l.Figures, key, figureTold(q, c.at))
		}
		after := strings.HasPrefix(strings.TrimSpace(c.text[q.End:]), "after") // "dried out 5 days after rain"
		if !ofBed {
			continue // "coating, 2 weeks old"
		}
		if q.Role == "age" || c.slot == "substrate" && !after && (q.Kind == "days" || q.Kind == "months") {
			l.age(q)
		}
	}
}

// byOther follows a lap that another layer makes: "top edge lapped 2 in. by AB-1".
var byOther = regexp.MustCompile(`^\s*by\b`)

// What is told in months or years, in days.
const (
	daysInMonth = 30
	daysInYear  = 365
)

func inDays(q phrase.Quantity) phrase.Quantity {
	days := func(months *float64) *float64 {
		if months == nil {
			return nil
		}
		years := math.Floor(*months / 12)
		n := years*daysInYear + (*months-12*years)*daysInMonth
		return &n
	}
	q.Kind, q.Min, q.Max, q.Other = "days", days(q.Min), days(q.Max), nil
	return q
}

func (l *Line) age(q phrase.Quantity) {
	n, ok := wholeDays(q.Min)
	if !ok {
		return
	}
	if q.Kind == "months" {
		n *= daysInMonth
	}
	if _, known := l.Spans["concrete_age_days"]; !known {
		l.Spans["concrete_age_days"] = Span{Min: n, Max: n, Last: n}
	}
}
