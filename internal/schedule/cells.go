package schedule

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// source is one cell on its way into a line: the slot of its column, its
// current text and where it stands.
type source struct {
	slot    string
	text    string
	unit    string // unit that the heading gives to bare figures
	heading string
	primes  string // of a primer: the cell of the one substrate that it is for
	cell    workbook.Cell
	at      At

	second string // and to a second figure in parentheses
	ends   bool   // its heading names the laps of the sides, then those of the ends
	mixed  bool   // its heading names more than its slot
	worded bool   // and many of its cells say in words what is barred
	goes   bool   // and first what the product goes with
	part   bool   // it is a piece of a cell that tells several things

	thick *float64 // of a layer of a wall: its thickness in a cell of its own, mm
	layer bool     // it is one layer of a wall
}

func (t *table) at(row, col int) At {
	return At{Sheet: t.sheet.Name, Row: row, Cell: workbook.ColumnName(col) + strconv.Itoa(row)}
}

// column is the letter of the column.
func (a At) column() string { return strings.TrimRight(a.Cell, "0123456789") }

func (f *Figure) take(q phrase.Quantity) {
	f.Min, f.Max, f.Disagree = q.Min, q.Max, q.Disagree
	if q.Unit != "" {
		f.Unit = q.Unit
	}
	if q.Other != nil {
		f.Other = q.Other.Min
	}
}

// figureTold is a quantity told in the words of a cell.
func figureTold(q phrase.Quantity, at At) Figure {
	f := Figure{Text: q.Text, At: at}
	f.take(q)
	return f
}

// keep takes a figure told in words where none is stated.
func keep(figures map[string]Figure, key string, f Figure) bool {
	if _, stated := figures[key]; stated {
		return false
	}
	figures[key] = f
	return true
}

// day reads the date of a cell; year is a year known from nearby dates. l is the
// line it stands in, nil for none.
func (r *reader) day(l *Line, c source, order dayOrder, year int) Day {
	d := Day{Text: c.text, At: c.at}
	if c.cell.Kind == workbook.Date {
		d.From, d.To, d.State = iso(c.cell.Date), iso(c.cell.Date), "day"
		d.Text = c.cell.Date.Format("2 Jan 2006")
		return d
	}
	if c.text == "" {
		d.State = "missing"
		return d
	}
	if r.words.blank[strings.ToLower(c.text)] {
		d.State = "none"
		return d
	}
	dates := r.phrase.ColumnDates(c.text, order.DateOrder, year)
	if len(dates) == 0 {
		d.State = "unknown"
		return d
	}
	x := dates[0]
	if severalParts(c.text, dates) {
		d.State, d.Note = "parts", "tells several days, each of another part of the work"
		return d
	}
	switch {
	case l != nil && c.slot != "install":
		x = sameSeason(x, l.Dates["install"], halfYear)
	case l != nil && r.yearSaid == 0:
		x = sameSeason(x, r.above, halfYear)
	}
	return r.dayOf(x, c, order)
}

func (r *reader) dayOf(x phrase.Date, c source, order dayOrder) Day {
	d := Day{Text: c.text, At: c.at, State: x.State, Ref: x.Ref, From: iso(x.From), To: iso(x.To), relation: x.Relation, offset: x.Offset}
	if !x.From.IsZero() && r.eitherWay([]string{x.Text}) {
		d.Note = "day and month could be read both ways; " + order.String()
	}
	if x.WeekdayOff {
		d.Note = strings.TrimPrefix(d.Note+"; the weekday written does not fall on this date", "; ")
	}
	return d
}

func iso(t time.Time) string {
	if t.IsZero() {
		return ""
	}
	return t.Format("2006-01-02")
}

// items reads the materials of one cell, clause by clause, and the signals in it.
func (r *reader) items(l *Line, c source) {
	h := r.hear(c.text)
	named, before := len(l.Items), len(l.Signals)
	defer func() {
		l.stateOfBed(c, named, before)
		l.bedInWords(c, named)
		l.onTheBed(c, named)
		l.laidOver(c, named)
		l.usedAs(c, named)
		l.primedInBed(c, named)
	}()
	var room *phrase.Quantity // told in the sentence so far
	for i, cl := range h.clauses {
		if i == 0 || h.clauses[i-1].Text != cl.Text {
			room = nil
		}
		if cl.Clearance = l.inOwnUnit(cl.Clearance); cl.Clearance != nil {
			room = cl.Clearance
		}
		var ids []string
		for _, s := range cl.Signals {
			if s.If {
				continue // "unless tented", "if frost": said of a case, not of this one
			}
			l.Signals = append(l.Signals, Said{ID: s.ID, No: s.No, Text: s.Text, Slot: c.slot, At: c.at})
			if !s.No {
				ids = append(ids, s.ID)
			}
		}
		l.figures(cl, c, r.ofBed(h, cl))
		r.keptClear(l, h, cl, c, named)
		r.keptApart(l, h, cl, room, named)
		r.clearOfNamed(l, h, cl, c)
		l.shedsOn(cl, c.text, named)
		if cl.Relation == "clear_of" && cl.Polarity == "yes" && slices.ContainsFunc(cl.Object, func(n phrase.Noun) bool { return r.saysSheet(h, n) }) {
			ids = append(ids, "held_back") // "gasket is 30 clear of the sheet"
		}
		if r.onlyAtMetal(h, cl, c.text) {
			ids = append(ids, "metal_to_metal")
		}
		for _, n := range cl.Nouns {
			m, ok := h.mention(n)
			if !ok || c.slot == "primer" && !r.isPrimer(m) && r.saysNone(c.text) { // "none - bare block"
				continue
			}
			if r.onlySays(l, m, c.text[:n.Start], named) {
				continue
			}
			ownOn := c.slot == "substrate" && r.onOwn(l, h, cl)
			if ownOn && contains(cl.Subject, n) {
				continue // "bead on the edge of FM-1" in a row of sealant
			}
			it := r.item(m, c)
			it.ID = fmt.Sprintf("%s/%d", l.ID, len(l.Items)+1)
			it.Text = c.text[n.Start:n.End]
			r.complete(&it, c.slot)
			it.Relation, it.Polarity, it.Clause = cl.Relation, cl.Polarity, strings.TrimSpace(cl.Text)
			it.Signals, it.Side = ids, side(cl, n)
			r.boardThick(l, &it, c, n.Span)
			if c.slot == "material" && l.Order != "" && it.Class == "insulation" {
				it.ThickMM = r.thickBeside(c.text, n.Span)
				r.sizeOfLayer(&it, source{text: c.text, layer: true}, n.Span)
			}
			if c.slot == "layers" {
				it.ThickMM = r.layerThick(&it, c.text, n.Span)
				r.sizeOfLayer(&it, c, n.Span)
				it.RM2KW = r.resistanceOf(c.text, n.Span, it.Class)
				if orElse.MatchString(c.text[:n.Start]) && len(l.Items) > 0 && l.Items[len(l.Items)-1].At == it.At {
					it.Signals = append(slices.Clone(ids), OrElse)
				}
			}
			if c.slot == "separator" && r.saysNone(c.text) {
				it.Slot = "touches" // "none: gasket sits on the sheet"
			} else if c.slot == "separator" && cl.Relation == "set_in" && it.Class == "sealant" && side(cl, n) == "object" {
				it.Slot = "sealant" // "bedded in SL-2"
			}
			if c.slot == "substrate" && !ownOn {
				it.Slot = r.bedSlot(cl, n)
			}
			if c.slot == "substrate" && cl.Relation == "between" && it.Side != "object" {
				it.Slot = "separator" // of a joint's backing: "butyl strip between"
			}
			if it.Side == "subject" && (cl.Relation == "to" || cl.Relation == "from") && slices.Contains(ids, "removed") {
				it.Polarity = "removed" // "coating scarified off to bare concrete"
			}
			if cl.Clearance != nil {
				it.ClearMM = cl.Clearance.Min
			}
			l.Items = append(l.Items, it)
		}
	}
}

// shedsOn lets a clause without a material of its own ("drips onto sill below") tell of the metal
// named before it, which may touch other things all the same.
func (l *Line) shedsOn(cl phrase.Clause, text string, first int) {
	if cl.Relation != "drains_onto" || cl.Polarity != "yes" || len(cl.Nouns) > 0 || len(l.Items) == first {
		return
	}
	it := &l.Items[len(l.Items)-1]
	told := slices.ContainsFunc(cl.Subject, func(n phrase.Noun) bool { return text[n.Start:n.End] == it.Text })
	if told && it.Polarity == "yes" && it.Relation == "" && slices.Contains(it.Keys, "metal") {
		it.Signals = append(slices.Clone(it.Signals), ShedsOn)
	}
}

// ShedsOn is the signal of a metal whose rain runs to what the next words call by its form alone.
const ShedsOn = "sheds_on"

// OrElse is the signal of a layer that a section names in place of the one before it, which it
// never meets: "SH-1 or SH-2, 100 block".
const OrElse = "or_else"

// orElse is what stands before such a layer.
var orElse = regexp.MustCompile(`(?i)[^,;]\s+or\s+(?:(?:existing|exist\.?|\(e\)|new)\s+)?$`)

// inOwnUnit gives a bare distance ("60 clr M-1") the unit of the row's own lengths; nil
// where the row has none.
func (l *Line) inOwnUnit(q *phrase.Quantity) *phrase.Quantity {
	if q == nil || q.Kind == "length" {
		return q
	}
	for _, kind := range []string{"lap_mm", "thickness_mm"} {
		own, value := l.Figures[kind], *q.Min
		switch {
		case own.Unit == "mm":
		case strings.HasPrefix(own.Unit, "in"), own.Unit == `"`:
			value *= inTwoUnits
		default:
			continue
		}
		return &phrase.Quantity{Span: q.Span, Kind: "length", Role: q.Role, Text: q.Text, Unit: own.Unit, Min: &value, Max: &value, Assumed: true}
	}
	return nil
}

// onlySays holds for what brackets right after a tag say of its product: "R-4 (EPDM)".
func (r *reader) onlySays(l *Line, m mention, before string, first int) bool {
	tag, open := strings.CutSuffix(strings.TrimSpace(before), "(")
	if !open || m.product >= 0 || len(l.Items) == first {
		return false
	}
	last := &l.Items[len(l.Items)-1]
	if last.Product == "" || !strings.HasSuffix(strings.TrimSpace(tag), last.Text) {
		return false
	}
	return m.mat.Family != "" && m.mat.Family == last.Family || m.mat.Family == "" && len(m.mat.Traits) > 0 && !slices.ContainsFunc(m.mat.Traits, func(t string) bool { return !slices.Contains(last.Traits, t) })
}

// keptClear lets a clause that names the row's own sheet at most, by a word or by its
// tag, tell of the material before it: "gasket at the glass only, clear of the sheet",
// "bead to the bar, not to the sheet".
func (r *reader) keptClear(l *Line, h *heard, cl phrase.Clause, c source, first int) {
	other := func(n phrase.Noun) bool { return !r.saysSheet(h, n) && !r.isOwnSheet(l, h, n) }
	away := cl.Relation == "clear_of" && cl.Polarity == "yes"
	denied := cl.Polarity == "no" && len(cl.Object) > 0 && (layers[cl.Relation] || cl.Relation == "to")
	if !away && !denied || slices.ContainsFunc(cl.Nouns, other) {
		return
	}
	for i := range l.Items[first:] {
		it := &l.Items[first+i]
		if it.Polarity != "yes" || !slices.ContainsFunc(cl.Subject, func(n phrase.Noun) bool { return c.text[n.Start:n.End] == it.Text }) {
			continue
		}
		if denied && it.Relation == "between" {
			continue // what parts the two does so wherever it does not lie
		}
		if held := l.heldIn(it, first); held != nil { // "bead in the steel lap, 50 clear of AB-1": the bead is
			it = held
		}
		it.Relation, it.Side = "clear_of", "subject"
		if denied {
			it.Signals = append(slices.Clone(it.Signals), "held_back")
		}
	}
}

// heldIn is what a clause sets in the material: the bead of "bead in the steel lap".
func (l *Line) heldIn(in *Item, first int) *Item {
	if in.Relation != "set_in" || in.Side == "subject" {
		return nil
	}
	for i := range l.Items[first:] {
		if o := &l.Items[first+i]; o.Clause == in.Clause && o.Relation == "set_in" && o.Side == "subject" && o.Polarity == "yes" && o.Class == "sealant" {
			return o
		}
	}
	return nil
}

// isOwnSheet holds for the product that the row is about.
func (r *reader) isOwnSheet(l *Line, h *heard, n phrase.Noun) bool {
	main := l.Main()
	m, ok := h.mention(n)
	return ok && main != nil && m.product >= 0 && r.sched.Products[m.product].ID == main.Product
}

// keptApart lets a room between two, of which the clause names the row's own sheet at
// most, tell of the first material of the cell: "EPDM strip, 2 in. of bare steel between
// it and the sheet".
func (r *reader) keptApart(l *Line, h *heard, cl phrase.Clause, room *phrase.Quantity, first int) {
	if cl.Relation != "between" || cl.Polarity != "yes" || room == nil || len(l.Items) == first {
		return
	}
	main := l.Main()
	for _, n := range cl.Object {
		m, ok := h.mention(n)
		if ok && !r.saysSheet(h, n) && (main == nil || m.product < 0 && m.mat.Family != main.Family || m.product >= 0 && r.sched.Products[m.product].ID != main.Product) {
			return
		}
	}
	if it := &l.Items[first]; it.Polarity == "yes" && it.ClearMM == nil {
		it.Relation, it.Side, it.ClearMM = "clear_of", "subject", room.Min
	}
}

// saysSheet holds for a word that only says sheet, and stands for the row's own.
func (r *reader) saysSheet(h *heard, n phrase.Noun) bool {
	if n.Kind == "self" {
		return true
	}
	m, ok := h.mention(n)
	role := r.words.roleByClass[m.mat.Class]
	return ok && m.product < 0 && strings.HasSuffix(m.mat.Family, "-unspecified") && (role == "membrane" || role == "flashing")
}

// layers are relations of what lies on another; bedSheets the classes of what may be a
// bed though a row is usually about one.
var (
	layers    = map[string]bool{"on": true, "over": true, "lapped_onto": true}
	bedSheets = map[string]bool{"membrane": true, "tape": true, "coating": true}
)

// saysNone holds for a cell that opens with nothing: "none", "nothing between".
func (r *reader) saysNone(text string) bool {
	first := firstWords(strings.ToLower(strings.Trim(text, " \t([-–—")), 1)
	first = strings.Trim(first, ",;:.")
	return r.words.none[first] || r.words.blank[first] || first == "nothing" || first == "no"
}

// complete makes a primer of the bare "acrylic" in the column of primers.
func (r *reader) complete(it *Item, slot string) {
	name := r.words.columnNames[slot]
	if name == "" || it.Tag != "" || it.Family != "" || len(it.Traits) == 0 {
		return
	}
	if m := r.vocab.Describe(it.Text + " " + name); m.Class == slot {
		it.Family, it.Name, it.Class, it.Traits, it.Keys = m.Family, m.Name, m.Class, m.Traits, m.Keys
	}
}

func contains(nouns []phrase.Noun, n phrase.Noun) bool {
	for _, o := range nouns {
		if o.Span == n.Span {
			return true
		}
	}
	return false
}

// side tells on which side of the clause's relation a noun stands.
func side(cl phrase.Clause, n phrase.Noun) string {
	switch {
	case cl.Relation == "":
		return ""
	case contains(cl.Object, n):
		return "object"
	case contains(cl.Subject, n):
		return "subject"
	}
	return ""
}

// item turns a mention into an item: by the product that its tag stands for,
// else by the vocabulary.
func (r *reader) item(m mention, c source) Item {
	it := Item{Slot: c.slot, Tag: m.tag, At: c.at, Primes: c.primes, Traits: []string{}, Keys: []string{}, noun: m.noun}
	switch {
	case m.product >= 0:
		p := &r.sched.Products[m.product]
		it.Product, it.Family, it.Name, it.Class = p.ID, p.Family, p.Name, p.Class
		it.Traits, it.Keys = p.Traits, p.Keys
		it.Unknown = p.Family == ""
	case m.unknownTag:
		it.Unknown = true
	default:
		it.Family, it.Name, it.Class = m.mat.Family, m.mat.Name, m.mat.Class
		it.Traits, it.Keys, it.Unknown = m.mat.Traits, m.mat.Keys, m.mat.Unknown
	}
	return it
}

// onlyAtMetal holds for a clause that keeps a bead to the laps of a metal that it names
// by its tag: "SL-2 at FL-3 laps only".
func (r *reader) onlyAtMetal(h *heard, cl phrase.Clause, text string) bool {
	return slices.ContainsFunc(cl.Nouns, func(n phrase.Noun) bool {
		m, ok := h.mention(n)
		return ok && metalClass[r.classOf(m)] && lapsOnly.MatchString(text[n.End:])
	})
}

// metalClass are the classes of what a bead joins metal to metal.
var metalClass = map[string]bool{"flashing-metal": true, "metal": true}

var lapsOnly = regexp.MustCompile(`(?i)^\s*(?:laps?|joints?|splices?|seams?)\s+only\b`)
