package schedule

import (
	"cmp"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// values reads a column in which each row states the figure that matters to it:
// "22 mils dry", "0.05 perm", "18 g/L". A figure that a column of its own states
// is left as it is.
func (r *reader) values(l *Line, c source) {
	r.signals(l, c)
	r.readings(l, c)
	r.dryFilm(l, c)
	r.pullTests(l, c)
	for _, q := range r.phrase.Quantities(c.text, "") {
		if (q.Kind == "days" || q.Kind == "months") && r.words.ageTold.MatchString(c.text[:q.Start]+"#"+c.text[q.End:]) {
			l.age(q)
			continue
		}
		if q.Kind == "air_permeance" && r.words.hasAny(c.text, r.words.wholes) {
			keep(l.Figures, "air_result_lsm2", figureTold(q, c.at)) // ten times as much is allowed through a panel as through its sheet
			continue
		}
		if slot := r.valueSlot(c, q); slot != "" && keep(l.Figures, figureOf[slot].key, figureTold(q, c.at)) {
			l.Cells[slot] = c.at.Cell
		}
	}
}

// valueSlot tells the column in which a quantity of a row would stand, by its kind
// and the words beside it, "" for none.
func (r *reader) valueSlot(c source, q phrase.Quantity) string {
	slot, ok := r.words.values[q.Kind]
	switch {
	case !ok:
		return ""
	case q.Kind == "length" && r.words.hasAny(c.text, r.words.laps):
		slot = "lap"
	case q.Kind == "length" && q.Unit != "mil" && q.Unit != "mils" && !r.words.hasAny(c.text, r.words.thick):
		return "" // "3/8 in. joint"
	case q.Kind == "temperature" && !r.words.hasAny(c.text, r.words.serves):
		return ""
	}
	return slot
}

// filmPair is a film read dry, with its unit or without: "40 wet / 22 dry", "22 DFT".
var filmPair = regexp.MustCompile(`(?i)(\d+(?:\.\d+)?)(?:\s*(?:-|–|to)\s*\d+(?:\.\d+)?)?\s*(mils?|µm|microns?|mm)?\s+(?:dry|dft)\b`)

// millimeters are figures that films have in no other unit: "0.55 dry".
var millimeters = regexp.MustCompile(`^[0-5]\.\d+$`)

// dryFilm takes the dry film that was read, in its own unit, that of the heading
// or, as gauges are set by the data, that in which the data tells the thickness.
// Less than six with a point is millimeters, whatever the data tells first.
func (r *reader) dryFilm(l *Line, c source) {
	m := filmPair.FindStringSubmatch(c.text)
	if m == nil {
		return
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && q.Other != nil && strings.HasPrefix(q.Text, m[0]) {
			keep(l.Figures, "film_mm", figureTold(q, c.at)) // "30 mil DFT (0.76 mm)": told in two units
			return
		}
	}
	unit := cmp.Or(m[2], c.unit, r.filmUnit(l))
	if m[2] == "" && millimeters.MatchString(m[1]) {
		unit = "mm"
	}
	if unit == "" {
		return
	}
	if f, ok := r.figure(source{text: m[1] + " " + unit, at: c.at}, "length"); ok && f.Problem == "" {
		keep(l.Figures, "film_mm", f)
	}
}

// wetFilm takes the wet film that the words for the material order: "FM-2, 40 mils wet",
// "FM-2, wet gauge 40 mils".
func (r *reader) wetFilm(l *Line, c source) {
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && filmUnits.MatchString(strings.ToLower(q.Unit)) && (wetAfter.MatchString(c.text[q.End:]) || wetBefore.MatchString(c.text[:q.Start])) {
			f := figureTold(q, c.at)
			f.Text += " wet"
			keep(l.Figures, "thickness_mm", f)
		}
	}
}

// plannedFilm takes the film that the words for what a product does there ask for:
// "field, 30 mils dry", "upstand, 1500 µm". A figure before a noun is of that: "6 mil
// poly".
func (r *reader) plannedFilm(l *Line, c source) {
	for _, q := range r.phrase.Quantities(c.text, "") {
		if after := filmEnds.FindStringSubmatch(c.text[q.End:]); q.Kind == "length" && filmUnits.MatchString(strings.ToLower(q.Unit)) && after != nil {
			f := figureTold(q, c.at)
			f.Text = strings.TrimSpace(f.Text + " " + after[1])
			keep(l.Figures, "thickness_mm", f)
		}
	}
}

// plannedSheet takes the millimeters right behind the name of a product whose data tells a
// thickness for that, as far as sheets have them: "SM-4 1.5 mm", and not "SM-4, 75 mm".
func (r *reader) plannedSheet(l *Line, c source, name string) {
	at := strings.Index(c.text, name) + len(name)
	p := r.productOf(l.Main())
	if at < len(name) || p == nil || p.Figures["thickness_mm"].Min == nil {
		return
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && q.Unit == "mm" && q.Min != nil && q.Start >= at && *q.Min < widestSheet &&
			strings.Trim(c.text[at:q.Start], " ,(") == "" && filmEnds.MatchString(c.text[q.End:]) {
			keep(l.Figures, "thickness_mm", figureTold(q, c.at))
		}
	}
}

// remarkedSheet takes the thickness of the row's own sheet that a remark tells of it in a
// clause of its own: "60 mil sheet", "80 mil sht. here", "45 mil rolls delivered". What lies over or under is another.
func (r *reader) remarkedSheet(l *Line, c source) {
	p := r.productOf(l.Main())
	if p == nil || p.Figures["thickness_mm"].Min == nil {
		return
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && q.Bound == "" && filmUnits.MatchString(strings.ToLower(q.Unit)) &&
			clauseOpens.MatchString(c.text[:q.Start]) && sheetEnds.MatchString(c.text[q.End:]) {
			keep(l.Figures, "thickness_mm", figureTold(q, c.at))
		}
	}
}

// remarkedBoard takes the thickness of the row's own insulation that a remark tells of it in
// a clause of its own: "2 in. board", "50 mm boards delivered".
func (r *reader) remarkedBoard(l *Line, c source) {
	if it := l.Main(); it == nil || it.Class != "insulation" {
		return
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && q.Bound == "" && clauseOpens.MatchString(c.text[:q.Start]) && boardEnds.MatchString(c.text[q.End:]) {
			keep(l.Figures, "board_mm", figureTold(q, c.at))
		}
	}
}

// remarkedPermeance takes the permeance that a remark tells of the very goods of the row: "lot
// submitted at 4 perm", "rolls delivered are 200 ng". A bound is what somebody asks for.
func (r *reader) remarkedPermeance(l *Line, c source) {
	if l.Main() == nil || l.Texts["vapor"] != "" {
		return
	}
	for _, q := range r.phrase.Quantities(c.text, "vapor_permeance") {
		if q.Kind == "vapor_permeance" && q.Unit != "" && q.Bound == "" && goodsOpen.MatchString(c.text[:q.Start]) && goodsEnd.MatchString(c.text[q.End:]) {
			keep(l.Figures, "vapor_ng", figureTold(q, c.at))
		}
	}
}

// goodsOpen and goodsEnd stand around a figure that a clause tells of the goods of a row.
var (
	goodsOpen = regexp.MustCompile(`(?i)(?:^|[,;.])\s*(?:(?:the|this|that)\s+)?` +
		`(?:lot|batch|rolls?|sheets?|membranes?|material|product|goods|submittal|submitted|sample)\b\.?` +
		`(?:\s+(?:no\.?\s*)?[\w-]*\d[\w-]*)?` + // its number
		`(?:\s+(?:is|was|are|were|came|comes|submitted|supplied|delivered|sent|here|tested|rated|sold|shows?|gives?|reads?|has|have))*` +
		`(?:\s+(?:in|at|as|with))?\s+$`)
	goodsEnd = regexp.MustCompile(`(?i)^\s*(?:[,;.(]|$|per\b|by\b|(?:to\s+)?(?:ASTM|CAN|ISO|EN)\b|dry\b|wet\b)`)
)

// clauseOpens, and sheetEnds or boardEnds, stand around the thickness of a sheet or board that a clause tells alone.
var (
	clauseOpens = regexp.MustCompile(`(?i)(?:^|[,;.])\s*(?:(?:use|with|w/) )?(?:the )?$`)
	sheetEnds   = regexp.MustCompile(`(?i)^\s*(?:thick )?(?:sheet|sht|membrane|mem|memb|mbr|roll)s?\b\.?(?: (?:here|there|only|this (?:wall|row)|(?:is |are |was |were )?(?:on (?:the )?(?:truck|site|job|hand)|delivered|came|supplied|sent|shipped)))?\s*(?:[,;.]|$)`)
	boardEnds   = regexp.MustCompile(`(?i)^\s*(?:thick )?(?:board|bd|slab)s?\b\.?(?: (?:here|there|only|this (?:wall|row)|(?:is |are |was |were )?(?:on (?:the )?(?:truck|site|job|hand)|delivered|came|supplied|sent|shipped)))?\s*(?:[,;.]|$)`)
)

// widestSheet is the thickness in mm from which a figure is a width: sheets have up to 5.
const widestSheet = 6

// filmEnds is what follows the thickness of a sheet or film; a roll is sold by it.
var filmEnds = regexp.MustCompile(`(?i)^\s*(wet|wft|dry|dft)?(?: film)?(?: thick)?(?:,? (?:(?:fabric|fleece|mesh|scrim)[- ])?reinforced)?(?: (?:rolls?|sheet|grade))?(?: min(?:imum|\.)?)?\s*(?:[,;.)/]|$)`)

// ordered takes the figures that stand behind the row's own product, before its cell goes
// on with another: its thickness ("FM-1, supplied as 30 mil roll"), its permeance, and its air
// permeance by the test of a material.
func (r *reader) ordered(l *Line, c source) {
	var named []string
	for i := range l.Items {
		if l.Items[i].At == c.at {
			named = append(named, l.Items[i].Text)
		}
	}
	if c.text = ownPart(c.text, named); c.text == "" {
		return
	}
	r.plannedFilm(l, c)
	r.plannedSheet(l, c, named[0])
	r.figuresNamed(l.Figures, c.text, c.at, r.words.figures.air)
	r.orderedPermeance(l, c)
}

// ownPart is what a cell says before it goes on with the next layer: "SM-1, 11 perm; then
// IN-2 75 mm". It is all of the cell where that names one product, and "" where the names
// are not set off so.
func ownPart(text string, named []string) string {
	if len(named) == 1 {
		return text
	}
	at := layerNext.FindStringIndex(text)
	if len(named) == 0 || at == nil || !strings.Contains(text[:at[0]], named[0]) {
		return ""
	}
	for _, other := range named[1:] {
		if strings.Contains(text[:at[0]], other) {
			return ""
		}
	}
	return text[:at[0]]
}

// layerNext stands before what is laid after the first of a cell.
var layerNext = regexp.MustCompile(`(?i)[;,]?\s+(?:and )?then\b|[;,]?\s+followed by\b|;`)

// orderedPermeance takes the one permeance that the words for the product tell of it:
// "FM-2 (11 perm)". A bound is what somebody asks for.
func (r *reader) orderedPermeance(l *Line, c source) {
	var told []phrase.Quantity
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "vapor_permeance" {
			told = append(told, q)
		}
	}
	if len(told) == 1 && told[0].Unit != "" && told[0].Bound == "" && told[0].Min != nil {
		keep(l.Figures, "vapor_ng", figureTold(told[0], c.at))
	}
}

// asked takes the least thickness that the words for what was specified ask for: "SA
// sheet, 40 mil min.".
func (r *reader) asked(l *Line, c source) {
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && q.Bound == "min" && filmUnits.MatchString(strings.ToLower(q.Unit)) {
			keep(l.Figures, "min_thickness_mm", figureTold(q, c.at))
		}
	}
}

// wetAfter and wetBefore stand beside the figure of a wet film; what is wet before "on" or a
// noun is something else.
var (
	wetAfter  = regexp.MustCompile(`(?i)^\s*(?:wet|wft)\b`)
	wetBefore = regexp.MustCompile(`(?i)\b(?:wft|wet(?: film)?)(?: (?:gauged?|thickness|mils?|read(?:ing|s)?))?(?: (?:of|at|to))?\s*[:=]?\s*$`)
)

// filmUnit is the unit of films in which the data of the line's own product tells
// its thickness, "" without.
func (r *reader) filmUnit(l *Line) string {
	p := r.productOf(l.Main())
	if p == nil || !filmUnits.MatchString(p.Figures["thickness_mm"].Unit) {
		return ""
	}
	return p.Figures["thickness_mm"].Unit
}

// filmUnits are those in which films are read.
var filmUnits = regexp.MustCompile(`^(mils?|µm|microns?)$`)
