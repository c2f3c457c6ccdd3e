package compare

import (
	"slices"
	"strings"
	"time"
	"unicode"

	"abut/internal/document"
	"abut/internal/regexp"
	"abut/internal/schedule"
)

// side is one of the two schedules, with what matching looks up.
type side struct {
	lines    []*schedule.Line
	features []features
	products map[string]*schedule.Product // by id
	byTag    map[string]*schedule.Product // by the plain words of the tag
}

// features are what speaks for or against the match of a line.
type features struct {
	marks                 []string // its own, or those that it refers to
	details               []string // drawings that it cites, with the number of the detail
	order, role, material string
	where, words          []string
	spot                  []string // where without the wall type above it
	main                  *schedule.Item
	standsFor             []string // in whose place its data offers the material
	around                []item
	content               string // what swaps are told by
	thickness             schedule.Figure
	dates                 map[string]time.Time
}

// newSide has all that matching looks up.
func newSide(doc *document.Document, set settings) *side {
	s := sideOf(doc)
	for _, l := range s.lines {
		s.features = append(s.features, s.featuresOf(l, set))
	}
	return s
}

// sideOf has the lines and products alone.
func sideOf(doc *document.Document) *side {
	s := &side{products: map[string]*schedule.Product{}, byTag: map[string]*schedule.Product{}}
	for i := range doc.Products {
		p := &doc.Products[i]
		s.products[p.ID] = p
		if tag := plainWords(p.Tag); tag != "" && s.byTag[tag] == nil {
			s.byTag[tag] = p
		}
	}
	for i := range doc.Lines {
		if l := &doc.Lines[i]; !l.Struck {
			s.lines = append(s.lines, l)
		}
	}
	return s
}

func (s *side) featuresOf(l *schedule.Line, set settings) features {
	f := features{
		marks: marksIn(l.Mark), details: detailsIn(l.Refs), order: plainWords(l.Order), role: l.Role, main: mainOf(l),
		where: words(l.Group + " " + placeOf(l) + " " + l.Texts["section"]), around: s.around(l, set),
		spot:      words(placeOf(l)),
		words:     words(l.Texts["remark"] + " " + l.Texts["edge"] + " " + l.Texts["lap"]),
		thickness: l.Figures["thickness_mm"], dates: map[string]time.Time{},
	}
	for slot, d := range l.Dates {
		if from, err := time.Parse(time.DateOnly, d.From); err == nil {
			f.dates[slot] = from
		}
	}
	if f.main != nil {
		f.standsFor = s.standsFor(f.main, set)
		f.material = or(plainWords(f.main.Tag), plainWords(f.main.Text))
	}
	f.content = contentOf(f)
	return f
}

// referTo takes what the lines refer to for their marks, where more of them name
// a mark of the specified schedule so than by marks of their own: the submitting
// firm numbers its rows anew and says beside which rows they answer to.
func (s *side) referTo(specified *side) {
	known := map[string]bool{}
	for _, f := range specified.features {
		for _, m := range f.marks {
			known[m] = true
		}
	}
	refs := make([][]string, len(s.lines))
	own, referred := 0, 0
	for i, l := range s.lines {
		for _, text := range l.Refs {
			for _, m := range marksIn(text) {
				if known[m] {
					refs[i] = append(refs[i], m)
				}
			}
		}
		if len(refs[i]) > 0 {
			referred++
		}
		if slices.ContainsFunc(s.features[i].marks, func(m string) bool { return known[m] }) {
			own++
		}
	}
	if referred <= own {
		return
	}
	for i := range s.features {
		s.features[i].marks = refs[i]
	}
}

var betweenMarks = regexp.MustCompile(`[/,;&+\n]|\band\b`)

// marksIn lists the marks in a cell: "O-05 / O-06" holds two.
func marksIn(text string) []string {
	var out []string
	for _, part := range betweenMarks.Split(text, -1) {
		if m := plainWords(part); m != "" {
			out = append(out, m)
		}
	}
	return out
}

var (
	betweenDetails = regexp.MustCompile(`[,;&+\n]|\band\b`)
	twoDetails     = regexp.MustCompile(`(?i)(\d+)((?:\s*(?:[,&+]|and)\s*\d+)+)\s*(/\s*[a-z]{1,3}[- ]?\d+(?:\.\d+)*)`)
	sheetNumber    = regexp.MustCompile(`(?i)\b([a-z]{1,3})[- ]?(\d+(?:\.\d+)*)\b`)
)

// detailsIn lists the details that references cite, whichever way round an office
// writes them: "4/A5.01" is "A5.01-4".
func detailsIn(refs []string) []string {
	var out []string
	for _, ref := range refs {
		ref = twoDetails.ReplaceAllStringFunc(ref, func(both string) string {
			m := twoDetails.FindStringSubmatch(both) // "2+3/A5.01" is "2/A5.01, 3/A5.01"
			return strings.Join(betweenDetails.Split(m[1]+m[2], -1), m[3]+",") + m[3]
		})
		for _, part := range betweenDetails.Split(ref, -1) {
			at := sheetNumber.FindStringSubmatchIndex(part)
			if at == nil {
				continue
			}
			if detail := plainWords(part[:at[0]] + " " + part[at[1]:]); detail != "" {
				out = append(out, strings.ToLower(part[at[2]:at[3]]+part[at[4]:at[5]])+" "+detail)
			}
		}
	}
	return out
}

// placeOf is where the line is used; without a place, the words that tell what
// the line is ("Window perimeter, south").
func placeOf(l *schedule.Line) string { return or(l.Place, l.Texts["type"]) }

// contentOf is the same for two lines that no swap could tell apart.
func contentOf(f features) string {
	parts := []string{}
	for _, it := range f.around {
		parts = append(parts, or(it.tag, or(it.Family, it.text)))
	}
	slices.Sort(parts)
	return f.material + "\n" + strings.Join(slices.Compact(parts), "\n")
}

// mainOf is the line's own material; where no material was read, the words of
// its cell stand for one, unless they say that the work is another's.
func mainOf(l *schedule.Line) *schedule.Item {
	if it := l.Main(); it != nil {
		return it
	}
	for _, slot := range []string{"material", "tag"} {
		if text := l.Texts[slot]; plainWords(text) != "" && !leftToOthers(l, slot) {
			at := schedule.At{Sheet: l.Sheet, Row: l.Row, Cell: l.Cells[slot]}
			return &schedule.Item{ID: l.ID, Slot: slot, Text: text, Polarity: "yes", Unknown: true, At: at}
		}
	}
	return nil
}

// leftToOthers holds for "by others" or "deleted" in the place of a material.
func leftToOthers(l *schedule.Line, slot string) bool {
	return slices.ContainsFunc(l.Signals, func(s schedule.Said) bool {
		return s.Slot == slot && !s.No && (s.ID == "by_others" || s.ID == "deleted")
	})
}

// standsFor lists the tags in whose place the data of a material offers it.
func (s *side) standsFor(it *schedule.Item, set settings) []string {
	var out []string
	if p := s.product(it); p != nil {
		for _, slot := range set.WithinSlots {
			out = append(out, marksIn(p.Texts[slot])...)
		}
	}
	return out
}

// around lists the materials that the line names beside its own, of the slots
// that say what is there.
func (s *side) around(l *schedule.Line, set settings) []item {
	main := l.Main()
	var out []item
	for i := range l.Items {
		it := &l.Items[i]
		if it == main || it.Polarity == "no" || it.Polarity == "removed" || !slices.Contains(set.Slots, it.Slot) {
			continue
		}
		one := newItem(it)
		one.standsFor = s.standsFor(it, set)
		out = append(out, one)
	}
	return out
}

func (s *side) place(i int) document.Was {
	l := s.lines[i]
	at := schedule.At{Sheet: l.Sheet, Row: l.Row}
	out := document.Was{Line: l.ID, Mark: l.Mark, Place: l.Place, Role: l.Role, At: at}
	if m := mainOf(l); m != nil {
		out.Text, out.At = m.Text, m.At
	}
	return out
}

// product finds the data of a material: its own, else that of the same tag.
func (s *side) product(it *schedule.Item) *schedule.Product {
	if p := s.products[it.Product]; p != nil {
		return p
	}
	if tag := plainWords(it.Tag); tag != "" {
		return s.byTag[tag]
	}
	return s.byTag[plainWords(it.Text)]
}

// words splits a text into lower-case words and numbers; leading zeros go, so
// that "A-01" is "A1".
func words(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

func plainWords(text string) string {
	parts := words(text)
	for i, p := range parts {
		if short := strings.TrimLeft(p, "0"); short != "" {
			parts[i] = short
		}
	}
	return strings.Join(parts, " ")
}

func or(a, b string) string {
	if a != "" {
		return a
	}
	return b
}
