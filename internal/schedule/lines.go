package schedule

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"abut/internal/regexp"
)

// itemSlots are the columns whose cells name materials; the words of the others
// are read for signals only.
var itemSlots = map[string]bool{
	"material": true, "tag": true, "specified": false, "substrate": true, "primer": true, "sealant": true,
	"touches": true, "left": true, "right": true, "top": true, "bottom": true, "front": true, "behind": true,
	"separator": true, "edge": true, "remark": true, "layers": true, "with": true,
}

// wordSlots are read for signals, not for materials that touch.
var wordSlots = map[string]bool{"place": true, "group": true, "shelter": true, "type": true, "status": true, "chemistry": true, "facer": true, "curing": true, "end_dam": true, "wood_moisture": true, "joint": true}

// lines reads the data rows of one schedule table.
func (r *reader) lines(t *table) {
	before := len(r.sched.Lines)
	orders := r.dateOrders(t)
	r.standing = standing{above: r.firstDated(t, orders)}
	if c, titled := t.titledBlock(); titled {
		r.divide(source{slot: "group", text: strings.TrimSpace(c.Value), at: t.at(c.Row, c.Col)}, orders)
	}
	r.inShares(t, orders)
	if t.layered() {
		unstack(r.sched.Lines[before:])
	}
}

// standing is what the rows above leave to a row of the same table.
type standing struct {
	last     *Line     // the row right above
	above    Day       // the installation of a row above, at first the table's first day with a year
	overRows headsOver // what stands over the rows below
	over     daysOver  // days told over the rows below
	layer    int       // that the row above is of its wall
}

// rows reads the data rows of a table from one to another, below others or at its top.
func (r *reader) rows(t *table, orders map[string]dayOrder, from, to int) {
	layered := t.layered() && (t.stacked || !r.ownBeds(t) || !r.sameAgain(t))
	for row := from; row <= to; row++ {
		switch n := t.ownCells(row); {
		case n == 0:
			continue
		case n == 1 && r.isDivider(t, row):
			r.divide(source{slot: "group", text: r.rowText(t, row), at: t.at(row, t.nums[0])}, orders)
			continue
		case r.rollsUp(t, row):
			r.overRows.divider = source{} // a part of the program is no wall
			continue
		}
		first := len(r.sched.Lines)
		for _, w := range r.worksOf(t, row) {
			l := r.line(w, row, r.last, orders)
			if on := l.Dates["install"]; on.From != "" {
				r.above = on
			}
			r.under(&l, t)
			if layered && !r.words.details.MatchString(r.overRows.divider.text) {
				if r.last == nil || r.last.Group != l.Group {
					r.layer = 0
				}
				r.layer++
				l.Order = strconv.Itoa(r.layer)
				if t.stacked && r.isAccessory(&l) {
					l.Order += accessory
				}
			}
			r.layerInWords(&l, w, row)
			r.addLine(l)
		}
		r.last = lastOf(r.sched.Lines[first:])
	}
}

func (r *reader) addLine(l Line) {
	r.marked[fold(l.Mark)] = append(r.marked[fold(l.Mark)], len(r.sched.Lines))
	r.sched.Lines = append(r.sched.Lines, l)
}

// isDivider holds for a row with one cell that heads the rows below it: a short
// one, or one merged over most of the table.
func (r *reader) isDivider(t *table, row int) bool {
	merged := 0
	for _, col := range t.nums {
		if c, ok := t.sheet.At(row, col); ok && c.Merged {
			merged++
		}
	}
	return len(r.rowText(t, row)) <= 90 || merged*2 > len(t.nums)
}

func (r *reader) rowText(t *table, row int) string {
	for _, col := range t.nums {
		if c, ok := t.sheet.At(row, col); ok && !c.Merged && strings.TrimSpace(c.Value) != "" {
			return strings.Join(strings.Fields(c.Value), " ")
		}
	}
	return ""
}

// line reads one data row.
func (r *reader) line(t *table, row int, last *Line, orders map[string]dayOrder) Line {
	l := Line{
		ID: t.lineID(row), Sheet: t.sheet.Name, Row: row, Table: t.id,
		Refs: []string{}, Cells: make(map[string]string, known(t.cols)), Texts: make(map[string]string, known(t.cols)),
		Figures: map[string]Figure{},
		Dates:   map[string]Day{}, Spans: map[string]Span{}, Items: []Item{}, Signals: []Said{}, Layers: []Item{},
		Hidden: t.sheet.RowHidden(row),
	}
	sources := r.sources(t, row, &l)
	if t.joints {
		r.joint(&l, sources)
	}
	sources = r.beadRow(&l, sources)
	l.Mark, l.Order, l.Place = l.Texts["mark"], l.Texts["order"], l.Texts["place"]
	r.fillMark(t, &l, last)
	l.Group = l.Texts["group"]
	if l.Mark == "" {
		l.Mark = firstLine(l.Group)
	}
	r.inherit(&l, sources, last)
	sources = r.keptAsSpecified(&l, sources)
	r.untagged(sources)
	for _, c := range sources { // first, as words elsewhere leave out the year
		if isDateSlot(c.slot) {
			r.cell(&l, c, orders)
		}
	}
	r.datedOver(&l)
	for _, c := range sources {
		if !isDateSlot(c.slot) {
			r.cell(&l, c, orders)
		}
	}
	r.neverCovered(&l)
	r.settleWork(t, &l)
	r.corefer(&l)
	r.laidBefore(&l)
	l.bedOfTask()
	r.stoodIn(&l)
	r.main(&l)
	r.buildUp(t, &l)
	r.primedLimit(&l)
	r.primersElsewhere(&l)
	return l
}

// keptAsSpecified gives a row whose own product is "as spec", or for which nothing is
// offered, the product that it says was specified (common practice: what no one changes
// stands).
func (r *reader) keptAsSpecified(l *Line, sources []source) []source {
	asked, offers, spec := l.Texts["specified"], false, -1
	for i := range sources {
		c := &sources[i]
		switch {
		case c.slot == "specified":
			spec = i
		case (c.slot == "material" || c.slot == "tag") && asked != "":
			offers = offers || !r.words.isBlank(c.text)
			if at := r.words.asSpecified.FindStringIndex(c.text); at != nil {
				c.text = strings.TrimSpace(asked + " " + c.text[at[1]:])
				l.Texts[c.slot] = c.text
			}
		}
	}
	if offers || spec < 0 || r.words.isBlank(asked) {
		return sources
	}
	own := sources[spec]
	own.slot = "material"
	l.Texts["material"], l.Cells["material"] = asked, l.Cells["specified"]
	return append(sources, own)
}

// untagged takes the words for what a thing is for the material of a row whose
// own cells for that are left empty, as those of materials without a tag are.
func (r *reader) untagged(sources []source) {
	kind, empty := -1, false
	for i, c := range sources {
		switch c.slot {
		case "material", "tag", "specified":
			if !r.words.isBlank(c.text) {
				return
			}
			empty = true
		case "type":
			kind = i
		}
	}
	if kind >= 0 && empty && r.vocab.Family(sources[kind].text) != "" {
		sources[kind].slot = "material"
	}
}

// sources collects the cells of a row by slot.
func (r *reader) sources(t *table, row int, l *Line) []source {
	out := r.room[:0]
	own, struck := 0, 0
	for i, col := range t.nums {
		slot := t.cols[i].Slot
		from := r.asOffered(t, row, col)
		c, ok := t.sheet.At(row, from)
		if from > 0 {
			col = from
		}
		if ok && !c.Merged {
			own++
			if c.AllStruck {
				struck++
			}
		}
		if t.cols[i].Slot == "reference" && ok && !r.words.isBlank(c.Value) {
			l.Refs = append(l.Refs, strings.TrimSpace(c.Value))
		}
		if !reads(t.cols[i]) {
			continue
		}
		src := source{
			slot: slot, unit: t.cols[i].Unit, second: t.cols[i].second, heading: t.cols[i].Heading, at: t.at(row, col),
			ends: slot == "lap" && sideThenEnd.MatchString(t.cols[i].Heading),
		}
		if bed := t.bedOf(i); bed > 0 {
			src.primes = t.at(row, bed).Cell
		}
		if ok {
			src.text, src.cell = t.withResistance(row, col, r.spelled(strings.TrimSpace(c.Value), slot)), c
			if slot == "layers" {
				src.layer = t.ofLayer != nil
				src.text = layerMark.ReplaceAllString(src.text, "$1; ")
			}
		}
		if left, described := r.leftInRow[src.at]; described {
			src.text = left
		}
		before := len(out)
		out = r.parted(out, src, t.cols[i].parts)
		for n := range out[before:] {
			l.says(&out[before+n])
		}
	}
	out = r.listedSources(out, t, l)
	l.Struck = own > 0 && struck*2 > own
	r.room = out
	return out
}

// layerMark parts the layers of a build-up told in one cell ("block > sheet > wool"), and
// is no sign of a limit ("R > 10").
var layerMark = regexp.MustCompile(`([^\s>]{2})\s+(?:>|→|-+>|»)\s+`)

// says keeps where and what a line says of a slot.
func (l *Line) says(c *source) {
	if _, again := l.Cells[c.slot]; !again {
		l.Cells[c.slot] = c.at.Cell
		l.Texts[c.slot] = c.text
	} else if c.text != "" {
		l.Texts[c.slot] = strings.TrimPrefix(l.Texts[c.slot]+"; "+c.text, "; ")
	}
}

// reads says whether the cells of a column are read; quantities and the like
// are known, and tell nothing here.
func reads(col Column) bool { return col.Slot != "" && col.Slot != "reference" }

// fillMark carries a mark down that stands once for the rows below it.
func (r *reader) fillMark(t *table, l *Line, last *Line) {
	if (l.Mark == "" || r.words.isDitto(l.Mark)) && last != nil && last.Table == t.id && t.column("mark") > 0 {
		l.Mark = last.Mark
	}
}

func firstLine(s string) string {
	first, _, _ := strings.Cut(s, "\n")
	return strings.TrimSpace(first)
}

// cell reads one cell into its line by the slot of its column.
func (r *reader) cell(l *Line, c source, orders map[string]dayOrder) {
	r.sized(l, c)
	switch fig, isFigure := figureOf[c.slot]; {
	case c.slot == "inspected" && r.onlyAhead(c.text): // of the work itself nothing is told
	case isDateSlot(c.slot):
		c.text = r.lastLook(c)
		l.Dates[c.slot] = r.day(l, c, orders[c.slot], r.year(l))
		r.workAndCover(l, c, orders[c.slot])
		r.lastCover(l, c, orders[c.slot])
		r.coverWithin(l, c)
		r.airResult(l, c)
		if c.slot == "install" || c.slot == "finish" { // "3 to 5 Nov (41 to 47 °F)", "17 Dec, tented"
			c.slot = "shelter"
			r.signals(l, c)
			r.readings(l, c)
		}
	case isFigure:
		r.lineFigure(l, c, fig.key, fig.kind)
	case itemSlots[c.slot]:
		if !r.words.blank[strings.ToLower(c.text)] {
			r.items(l, c)
			r.strayCode(l, c)
			r.leftOut(l, c)
			r.textDates(l, c, orders)
			r.coverSlips(l, c)
			r.coverMoved(l, c, orders[""])
			r.readings(l, c)
			if c.slot == "material" {
				r.dryFilm(l, c)
				r.wetFilm(l, c)
				r.ordered(l, c)
			}
			if c.slot == "remark" {
				r.remarkedSheet(l, c)
				r.remarkedBoard(l, c)
				r.remarkedPermeance(l, c)
			}
		}
	case c.slot == "specified":
		r.asked(l, c)
	case c.slot == "value":
		r.values(l, c)
	case wordSlots[c.slot]:
		r.signals(l, c)
		r.readings(l, c)
		if c.slot == "type" {
			r.plannedFilm(l, c)
		}
	}
}

func isDateSlot(slot string) bool {
	switch slot {
	case "install", "cover", "finish", "prime", "placed", "inspected", "sent", "returned", "approved", "delivered", "unit_set", "washed", "mockup", "made", unwrapped:
		return true
	}
	return false
}

// twoSizes is a width and a depth: no sheet's thickness, but the size of a bead.
var twoSizes = regexp.MustCompile(`(?i)^\s*\d[\d./ -]*(?:mm|in\.?|")?\s*[x×]\s*\d[\d./ -]*(?:mm|in\.?|")?\s*$`)

// bareSizes are the two sizes of a bead without units: "1/2 w x 1/4 d", "20 x 10".
var bareSizes = regexp.MustCompile(`(?i)^(\s*\d(?:[\d./ -]*\d)?)\s*(?:w(?:ide)?\b\.?)?\s*[x×]\s*(\d(?:[\d./ -]*\d)?)\s*(?:d(?:eep)?\b\.?)?(\s*(?:[,;(].*)?)$`)

func (r *reader) lineFigure(l *Line, c source, key, kind string) {
	said := c.text
	if c.slot == "joint" && c.unit != "" {
		c.text = bareSizes.ReplaceAllString(c.text, "$1 "+c.unit+" x $2 "+c.unit+"$3")
	}
	if c.slot == "thickness" && twoSizes.MatchString(c.text) && (!filmUnit(c.unit) || strings.ContainsAny(c.text, "/\"m")) {
		c.slot, key = "joint", figureOf["joint"].key
		if filmUnit(c.unit) && strings.Contains(c.text, "/") {
			c.unit = "in" // "3/4 x 3/8" among mils
		}
		if c.unit != "" && !strings.HasSuffix(c.text, c.unit) {
			c.text = strings.TrimSpace(c.text) + " " + c.unit
		}
	}
	if c.slot == "lap" {
		if c = r.filmAmongLaps(l, c); !strings.ContainsAny(c.text, "0123456789") && l.Figures["thickness_mm"].At == c.at {
			r.signals(l, c)
			return
		}
		c.text = filmFirst.ReplaceAllString(counted.ReplaceAllString(c.text, ""), "$1 $3 $2")
		c = r.bothLaps(l.Figures, c)
	}
	f, ok := r.figure(c, kind)
	if !ok {
		return
	}
	if strings.HasPrefix(c.slot, "reading_") {
		r.lettered(l, c)
		r.nightReading(l, c)
		if r.twoReadings(l, c, kind) {
			return
		}
		r.spread(&f, c, kind)
		if before, read := l.Figures[key]; read && c.slot == "reading_air" {
			f = widened(f, before)
		}
		r.dryFilm(l, c)
		r.pullTests(l, c)
		r.signals(l, c) // "55, tented"
	}
	if f.Problem != "" && wordSlots[c.slot] { // "nil, runs out at corner", "dry"
		r.signals(l, c)
		return
	}
	if c.slot == "width" {
		r.filmIn(l, c)
		if f.Problem != "" || filmUnit(f.Unit) { // "full height sheet", "60 mil wet"
			return
		}
	}
	if c.slot == "lap" {
		r.signals(l, c)
		r.setIn(l, c)
		r.filmIn(l, c)
		r.endLap(l, c)
		if f = r.lapOf(c, f); f.Text == "" {
			return
		}
	}
	switch c.slot {
	case "thickness":
		r.besides(l, c)
	case "joint": // "3/8 x 1/4 in., no rod"
		c.text, f.Text = said, said
		r.signals(l, c)
	}
	l.Figures[key] = f
	r.upperFigure(l.Figures, c, f)
}

// setIn takes what a cell of laps and edges that tells no lap says that the row's material
// is set or stuck in: "dabbed with cold mastic, butted".
func (r *reader) setIn(l *Line, c source) {
	if strings.ContainsAny(c.text, "0123456789") {
		return
	}
	items, signals := len(l.Items), len(l.Signals)
	c.slot = "edge"
	r.items(l, c)
	l.Signals = l.Signals[:signals]
	l.Items = slices.DeleteFunc(l.Items, func(it Item) bool { return it.At == c.at && !(sticks[it.Class] && setWith[it.Relation]) })
	for i := items; i < len(l.Items); i++ {
		l.Items[i].ID = fmt.Sprintf("%s/%d", l.ID, i+1)
	}
}

// sticks are the classes of what a material is stuck with, setWith the relations that say so.
var (
	sticks  = map[string]bool{"adhesive": true, "mastic": true, "sealant": true}
	setWith = map[string]bool{"set_in": true, "with": true}
)

// signals reads a cell for conditions only.
func (r *reader) signals(l *Line, c source) {
	for _, cl := range r.hear(c.text).clauses {
		for _, s := range cl.Signals {
			if s.If {
				continue // "unless tented", "if frost": said of a case, not of this one
			}
			l.Signals = append(l.Signals, Said{ID: s.ID, No: s.No, Text: s.Text, Slot: c.slot, At: c.at})
		}
	}
}

// year is a year that the line's other dates give to dates without one, else the
// workbook, else the rows above.
func (r *reader) year(l *Line) int {
	for _, slot := range []string{"install", "cover", "placed", "prime"} {
		if year, ok := l.Dates[slot].year(); ok {
			return year
		}
	}
	if year, ok := r.above.year(); ok && r.yearSaid == 0 {
		return year
	}
	return r.yearSaid
}
