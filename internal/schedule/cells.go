package schedule

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"

	"abut/internal/phrase"
	"abut/internal/workbook"
)

// source is one cell on its way into a line: the slot of its column, its
// current text and where it stands.
type source struct {
	slot string
	text string
	unit string // unit that the heading gives to bare figures
	cell workbook.Cell
	at   At
}

func (t *table) at(row, col int) At {
	return At{Sheet: t.sheet.Name, Row: row, Cell: workbook.ColumnName(col) + strconv.Itoa(row)}
}

// figureOf maps a slot to the key and kind of its figure.
var figureOf = map[string]struct{ key, kind string }{
	"thickness":     {"thickness_mm", "length"},
	"min_thickness": {"min_thickness_mm", "length"},
	"lap":           {"lap_mm", "length"},
	"min_lap":       {"min_lap_mm", "length"},
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
	"planned_open":  {"planned_open_days", "days"},
	"age":           {"age_days", "days"},

	"reading_surface": {"reading_surface_c", "temperature"},
	"reading_air":     {"reading_air_c", "temperature"},
	"reading_dew":     {"reading_dew_c", "temperature"},
	"reading_rh":      {"reading_rh", "ratio"},
	"wood_moisture":   {"wood_moisture", "ratio"},
	"end_dam":         {"end_dam_mm", "length"},
}

// figure reads the quantity that a cell of a figure column states; ok is false
// for a cell that says there is none.
func (r *reader) figure(c source, kind string) (Figure, bool) {
	if r.words.blank[strings.ToLower(c.text)] {
		return Figure{}, false
	}
	f := Figure{Text: c.text, Unit: c.unit, At: c.at}
	if r.words.hasAny(c.text, r.words.noLimit) {
		f.NoLimit = true
		return f, true
	}
	other := false
	text := plainFigure(c.text)
	if c.slot == "thickness" {
		text = summed(text)
	}
	for _, q := range r.phrase.Quantities(text, hint(kind, c.unit)) {
		if q.Kind != kind {
			other = other || q.Unit != "" // "16 oz", "26 ga.": understood, but not in this unit
			continue
		}
		f.take(q)
		if f.Assumed = q.Unit == "" || !strings.Contains(c.text, q.Unit); f.Assumed && c.unit != "" {
			f.Unit = c.unit // as the heading writes it
		}
		if f.Assumed && strings.EqualFold(f.Unit, c.unit) {
			f.Unit = c.unit // as the column writes it: °C
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

func (f *Figure) take(q phrase.Quantity) {
	f.Min, f.Max, f.Disagree = q.Min, q.Max, q.Disagree
	if q.Unit != "" {
		f.Unit = q.Unit
	}
	if q.Other != nil {
		f.Other = q.Other.Min
	}
}

func hint(kind, unit string) string {
	if unit == "" {
		return kind
	}
	return kind + ":" + unit
}

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

var plies = regexp.MustCompile(`^(\d+(?:\.\d+)?)(?: [a-z]+)? ?\+ ?(\d+(?:\.\d+)?)(?: [a-z]+)*$`)

// summed adds the parts of "0.4 + 1.0" and "25 butyl + 5 foil".
func summed(text string) string {
	m := plies.FindStringSubmatch(strings.ToLower(text))
	if m == nil {
		return text
	}
	a, _ := strconv.ParseFloat(m[1], 64) // digits, by the pattern
	b, _ := strconv.ParseFloat(m[2], 64)
	return strconv.FormatFloat(a+b, 'f', -1, 64)
}

// day reads the date of a cell; year is a year known from nearby dates.
func (r *reader) day(c source, order dayOrder, year int) Day {
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
	dates := r.phrase.Dates(c.text, order.DateOrder, year)
	if len(dates) == 0 {
		d.State = "unknown"
		return d
	}
	return r.dayOf(dates[0], c, order)
}

func (r *reader) dayOf(x phrase.Date, c source, order dayOrder) Day {
	d := Day{Text: c.text, At: c.at, State: x.State, Ref: x.Ref, From: iso(x.From), To: iso(x.To)}
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
	for _, cl := range h.clauses {
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
		l.figures(cl, c)
		for _, n := range cl.Nouns {
			m, ok := h.mention(n)
			if !ok {
				continue
			}
			it := r.item(m, c)
			it.ID = fmt.Sprintf("%s/%d", l.ID, len(l.Items)+1)
			it.Text = c.text[n.Start:n.End]
			r.complete(&it, c.slot)
			it.Relation, it.Polarity, it.Clause = cl.Relation, cl.Polarity, strings.TrimSpace(cl.Text)
			it.Signals, it.Side = ids, side(cl, n)
			if c.slot == "substrate" {
				it.Slot = r.bedSlot(cl, n)
			}
			if cl.Clearance != nil {
				it.ClearMM = cl.Clearance.Min
			}
			l.Items = append(l.Items, it)
		}
	}
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

// bedSlot tells whether a material of a substrate cell is the bed itself: not
// the wool of "board, room side of the wool", nor the block of "cap plate on
// block" or the studs of "board over studs".
func (r *reader) bedSlot(cl phrase.Clause, n phrase.Noun) string {
	switch {
	case r.words.beside[cl.Relation] && !contains(cl.Subject, n):
		return "touches"
	case (cl.Relation == "on" || cl.Relation == "over") && contains(cl.Object, n) && len(cl.Subject) > 0 && cl.Subject[0].Kind != "self":
		return "under"
	}
	return "substrate"
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
	it := Item{Slot: c.slot, Tag: m.tag, At: c.at, Traits: []string{}, Keys: []string{}, noun: m.noun}
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

// toldFigures maps the role of a quantity told in words to the figure of the
// line that it stands for, where the clause tells the signal, if one is named.
var toldFigures = map[string]struct{ key, signal string }{
	"lap":   {"lap_mm", ""},
	"clear": {"held_back_mm", "held_back"},
}

// toldFigure is the figure that a quantity of a clause stands for, "" if none.
func toldFigure(cl phrase.Clause, q phrase.Quantity) string {
	f := toldFigures[q.Role]
	tells := func(s phrase.Signal) bool { return s.ID == f.signal && !s.No && !s.If }
	if f.signal != "" && !slices.ContainsFunc(cl.Signals, tells) {
		return ""
	}
	return f.key
}

// figures takes laps, ages and application limits told in words where no
// column states them.
func (l *Line) figures(cl phrase.Clause, c source) {
	for _, q := range cl.Quantities {
		key := toldFigure(cl, q)
		if q.Kind == "temperature" && c.slot == "primer" {
			key = "primer_apply_min_c"
		}
		if key != "" && q.Min != nil {
			if _, stated := l.Figures[key]; !stated {
				f := Figure{Text: q.Text, At: c.at}
				f.take(q)
				l.Figures[key] = f
			}
		}
		after := strings.HasPrefix(strings.TrimSpace(c.text[q.End:]), "after") // "dried out 5 days after rain"
		if q.Role == "age" || c.slot == "substrate" && !after && (q.Kind == "days" || q.Kind == "months") {
			l.age(q)
		}
	}
}

// daysInMonth turns an age told in months into days.
const daysInMonth = 30

func (l *Line) age(q phrase.Quantity) {
	if q.Min == nil {
		return
	}
	n := int(*q.Min)
	if q.Kind == "months" {
		n *= daysInMonth
	}
	if _, known := l.Spans["concrete_age_days"]; !known {
		l.Spans["concrete_age_days"] = Span{Min: n, Max: n, Last: n}
	}
}
