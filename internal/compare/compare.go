// Package compare holds a submitted schedule against the specified one: it
// matches their lines, tells how each substitute differs, and which findings
// the swaps bring.
package compare

import (
	"io/fs"
	"slices"

	"abut/internal/document"
	"abut/internal/knowledge"
	"abut/internal/regexp"
	"abut/internal/schedule"
)

const (
	settingsFile = "substitution/matching.json"
	actionsFile  = "substitution/actions.json"
	familiesFile = "knowledge/families.json"
)

// settings are the numbers and lists of the policy tree that say how lines
// are matched; see settingsFile.
type settings struct {
	Weights     map[string]float64 `json:"weights"`
	Least       float64            `json:"least"`     // score below which two lines are not the same
	Sure        float64            `json:"sure"`      // score from which a match is taken as sure
	Margin      float64            `json:"margin"`    // lead over the next candidate that a sure match has
	Split       float64            `json:"split"`     // score from which a line left over joins a match
	Tolerance   float64            `json:"tolerance"` // relative difference that rounding makes
	DaysNear    float64            `json:"days_near"` // days apart at which two dates no longer speak for a match
	WithinSlots []string           `json:"within_slots"`
	Figures     map[string]string  `json:"figures"` // kind -> the bound that counts
	OfRows      []string           `json:"of_rows"` // kinds of figure that rows are held against each other by
	Changes     []string           `json:"changes"` // slots whose changes are told
	Slots       []string           `json:"slots"`   // slots whose materials are compared
	Liquids     []string           `json:"liquids"` // classes and slots of what goes on wet
}

// Comparer compares documents. It is safe for concurrent use.
type Comparer struct {
	set     settings
	open    map[string]bool // families whose kind is left open
	actions actions
}

// actions are the words that a review log proposes, by what speaks against a
// substitution: nothing, a warning on what it brings, a warning on the swap
// itself, an error.
type actions struct {
	Clean       string `json:"clean"`
	Consequence string `json:"consequence"`
	Warning     string `json:"warning"`
	Error       string `json:"error"`
}

// New reads the settings of a policy tree.
func New(fsys fs.FS) (*Comparer, error) {
	var own struct {
		Matching settings `json:"matching"`
	}
	var known struct {
		Families map[string]struct {
			Generic bool `json:"generic"`
		} `json:"families"`
	}
	if err := knowledge.Read(fsys, "settings of comparing", settingsFile, &own); err != nil {
		return nil, err
	}
	if err := knowledge.Read(fsys, "settings of comparing", familiesFile, &known); err != nil {
		return nil, err
	}
	var words struct {
		Actions actions `json:"actions"`
	}
	if err := knowledge.Read(fsys, "settings of comparing", actionsFile, &words); err != nil {
		return nil, err
	}
	c := &Comparer{set: own.Matching, actions: words.Actions, open: map[string]bool{}}
	for id, f := range known.Families {
		c.open[id] = f.Generic
	}
	return c, nil
}

// Documents matches the lines of two schedules and compares their materials.
// Struck rows take no part.
func (c *Comparer) Documents(specified, submitted *document.Document) *document.Comparison {
	was, now := newSide(specified, c.set), newSide(submitted, c.set)
	now.referTo(was)
	out := &document.Comparison{Specified: specified.File, Asks: asks(specified)}
	matches := c.match(was, now)
	paired, matched := map[int]bool{}, map[int]bool{}
	for _, m := range matches {
		paired[m.was], matched[m.now] = true, true
		out.Pairs = append(out.Pairs, c.pair(was, now, m))
	}
	for i := range was.lines {
		if !paired[i] {
			out.Removed = append(out.Removed, was.place(i))
		}
	}
	for j := range now.lines {
		if !matched[j] {
			out.Added = append(out.Added, now.place(j))
		}
	}
	document.Complete(out)
	return out
}

var numbers = regexp.MustCompile(`(?:^|[\s(,;/])(?:\d+(?:[ -]\d+/\d+|[.,/]\d+)?[½¼¾]?|[½¼¾])`)

func (c *Comparer) pair(was, now *side, m match) document.Pair {
	old, offered := was.lines[m.was], now.lines[m.now]
	return document.Pair{
		Line: offered.ID, Was: was.place(m.was), Score: m.score, Next: m.next, Sure: m.sure, Split: m.split,
		Quoted: c.quoted(was, now, old, offered), Swaps: c.swaps(was, now, old, offered),
		Figures: c.ofRows(old, offered), Changes: c.changes(old, offered),
	}
}

// asks finds the note of the specified schedule that each property of an offer is to
// be equal or better.
func asks(specified *document.Document) string {
	for _, s := range specified.Project.Signals {
		if s.ID == "equal_or_better" && !s.No {
			return s.Text
		}
	}
	return ""
}

// ofRows compares the figures that both rows state of their own work, where each
// is one: "2½ in. sides, 6 in. ends" and "6 in." may mean the same.
func (c *Comparer) ofRows(old, offered *schedule.Line) []document.Compared {
	var out []document.Compared
	for _, kind := range c.set.OfRows {
		was, now := old.Figures[kind], offered.Figures[kind]
		if len(numbers.FindAllString(was.Text, 2)) > 1 || len(numbers.FindAllString(now.Text, 2)) > 1 {
			continue
		}
		if how := order(was, now, kind, c.set); how != none {
			out = append(out, document.Compared{Kind: kind, Was: was, Now: now, Order: how})
		}
	}
	return out
}

// quoted is the product that the submitted line gives as specified, if both
// that and the specified one are known products and they are not the same. A
// line that quotes as the specified one does is right.
func (c *Comparer) quoted(was, now *side, old, offered *schedule.Line) string {
	main := old.Main()
	quote := either(was.named(offered, c.set.WithinSlots), now.named(offered, c.set.WithinSlots))
	if main == nil || was.product(main) == nil || quote == nil {
		return ""
	}
	right := either(was.named(old, c.set.WithinSlots), was.product(main))
	if plainWords(quote.Tag) == plainWords(right.Tag) {
		return ""
	}
	return quote.Tag
}

func either(a, b *schedule.Product) *schedule.Product {
	if a != nil {
		return a
	}
	return b
}

// Within compares the specified product of a row with the submitted one beside
// it; nil where no row names both.
func (c *Comparer) Within(doc *document.Document) *document.Comparison {
	s := sideOf(doc)
	out := &document.Comparison{Specified: doc.File, Asks: asks(doc)}
	for i, l := range s.lines {
		main := l.Main()
		product := s.named(l, c.set.WithinSlots)
		if main == nil || product == nil {
			continue
		}
		pair := document.Pair{Line: l.ID, Was: s.place(i), Score: 1, Sure: true}
		pair.Was.Text = product.Tag
		old := schedule.Item{
			Slot: c.set.WithinSlots[0], Text: product.Tag, Tag: product.Tag, Product: product.ID, Family: product.Family,
			Name: product.Name, Class: product.Class, Keys: product.Keys, At: pair.Was.At,
		}
		if !newItem(&old).same(newItem(main)) {
			pair.Swaps = []document.Swap{c.swap(s, s, l, l, &old, main)}
		}
		out.Pairs = append(out.Pairs, pair)
	}
	if len(out.Pairs) == 0 {
		return nil
	}
	document.Complete(out)
	return out
}

// named is the product that a slot of the line names, nil if it names none.
func (s *side) named(l *schedule.Line, slots []string) *schedule.Product {
	for _, slot := range slots {
		if p := s.byTag[plainWords(l.Texts[slot])]; p != nil {
			return p
		}
	}
	return nil
}

// changes lists the cells of the submitted line that say other than before.
func (c *Comparer) changes(old, offered *schedule.Line) []document.Change {
	var out []document.Change
	for _, slot := range c.set.Changes {
		a, b := old.Texts[slot], offered.Texts[slot]
		if sameSaid(old, offered, slot) {
			continue
		}
		out = append(out, document.Change{Slot: slot, Was: a, Now: b, Cell: offered.Cells[slot]})
	}
	return out
}

// sameSaid: two dates by their days, anything else by its words, in any order.
func sameSaid(old, offered *schedule.Line, slot string) bool {
	d, isDate := old.Dates[slot]
	e, isDateToo := offered.Dates[slot]
	if isDate && isDateToo {
		return d.From == e.From && d.To == e.To
	}
	a, b := words(old.Texts[slot]), words(offered.Texts[slot])
	slices.Sort(a)
	slices.Sort(b)
	return slices.Equal(a, b)
}
