package phrase

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"time"
)

// dateData is the part of words.json about dates.
type dateData struct {
	Months    map[string]int      `json:"months"`
	Weekdays  map[string]int      `json:"weekdays"` // Sunday is 0
	Modal     []string            `json:"modal"`    // names that are also common words
	Edges     map[string][]int    `json:"edges"`    // first and last day, 0 for the month's last
	Seasons   map[string][]int    `json:"seasons"`  // first month and number of months
	Weeks     []string            `json:"weeks"`    // words before the day that a week is told by
	WeekEnds  []string            `json:"week_ends"`
	WeekNo    []string            `json:"week_numbers"`
	Ranges    []string            `json:"ranges"`
	Preps     map[string][]string `json:"prepositions"`
	Verbs     map[string][]string `json:"verbs"`
	None      []string            `json:"none"` // whole cells
	Unknown   []string            `json:"unknown"`
	Open      []string            `json:"open"`
	With      []string            `json:"with"`
	After     []string            `json:"after"`
	Before    []string            `json:"before"`
	SameDay   []string            `json:"same_day"`
	NextDay   []string            `json:"next_day"`
	Order     map[string]string   `json:"order"` // by country: month or day
	RefWords  []string            `json:"reference_words"`
	RefStops  []string            `json:"reference_stops"`
	SerialMin int                 `json:"serial_min"`
	SerialMax int                 `json:"serial_max"`
}

// calendar holds the compiled words of dates.
type calendar struct {
	dateData
	modal, ranges, none map[string]bool
	refWords, refStops  map[string]bool
	weeks               *matcher
	weekNo              map[string]bool
	edges               *matcher
	edgeDays            [][]int
	preps, verbs        *matcher
	prepNames           []string
	verbNames           []string
	states              *matcher
	ties                *matcher
	orders              map[string]string
}

// The states and ties that the matchers of that name report.
const (
	stateUnknown = iota
	stateOpen
)
const (
	tieWith = iota
	tieAfter
	tieBefore
	tieSameDay
	tieNextDay
)

func newCalendar(d dateData) (*calendar, error) {
	c := &calendar{dateData: d, modal: set(d.Modal), ranges: set(d.Ranges), none: set(d.None), refWords: set(d.RefWords), refStops: set(d.RefStops), orders: d.Order, weekNo: set(d.WeekNo)}
	if len(d.Months) < 12 || d.SerialMax <= d.SerialMin {
		return nil, fmt.Errorf("dates: months or serial numbers are missing")
	}
	c.weeks, c.edges = newMatcher(), newMatcher()
	c.preps, c.verbs, c.states, c.ties = newMatcher(), newMatcher(), newMatcher(), newMatcher()
	for _, say := range slices.Sorted(maps.Keys(d.Edges)) {
		days := d.Edges[say]
		if len(days) != 2 {
			return nil, fmt.Errorf("dates: edge %q needs a first and a last day", say)
		}
		if err := c.edges.add(len(c.edgeDays), say); err != nil {
			return nil, err
		}
		c.edgeDays = append(c.edgeDays, days)
	}
	var err error
	if c.prepNames, err = named(c.preps, d.Preps); err != nil {
		return nil, err
	}
	if c.verbNames, err = named(c.verbs, d.Verbs); err != nil {
		return nil, err
	}
	return c, c.compile()
}

func (c *calendar) compile() error {
	for _, x := range []struct {
		m    *matcher
		id   int
		list []string
	}{
		{c.weeks, 0, c.Weeks}, {c.weeks, 0, c.WeekEnds},
		{c.states, stateUnknown, c.Unknown}, {c.states, stateOpen, c.Open},
		{c.ties, tieWith, c.With}, {c.ties, tieAfter, c.After}, {c.ties, tieBefore, c.Before},
		{c.ties, tieSameDay, c.SameDay}, {c.ties, tieNextDay, c.NextDay},
	} {
		if err := x.m.addAll(x.id, x.list); err != nil {
			return err
		}
	}
	return nil
}

// named adds the patterns of each name; the ids index the names returned.
func named(m *matcher, lists map[string][]string) ([]string, error) {
	names := slices.Sorted(maps.Keys(lists)) // in order, so that equal matches never change
	for i, name := range names {
		if err := m.addAll(i, lists[name]); err != nil {
			return nil, err
		}
	}
	return names, nil
}

// whole reads a cell that says in one sign that there is no date, or that
// holds the day number of a spreadsheet (days since 30 December 1899).
func (c *calendar) whole(text string, toks []token) (Date, bool) {
	s := strings.TrimSpace(text)
	d := Date{Span: Span{0, len(text)}, Text: text}
	if c.none[strings.ToLower(s)] || len(toks) > 0 && allDashes(toks) {
		d.State = "none"
		return d, true
	}
	if len(toks) == 1 && toks[0].kind == number && len(s) == 5 {
		n := 0
		for _, b := range []byte(s) {
			if !digit(b) {
				return d, false
			}
			n = n*10 + int(b-'0')
		}
		if n >= c.SerialMin && n <= c.SerialMax {
			d.From = time.Date(1899, 12, 30+n, 0, 0, 0, 0, time.UTC)
			d.To, d.State, d.Serial = d.From, "day", true
			return d, true
		}
	}
	return d, false
}

func allDashes(toks []token) bool {
	for i := range toks {
		if toks[i].low != "-" {
			return false
		}
	}
	return true
}

// worded reads a text without a calendar date: not known, left open, or tied
// to other work.
func (c *calendar) worded(text string, view []token) (Date, bool) {
	if d, ok := c.tied(text, view); ok {
		return d, true
	}
	state := ""
	var at hit
	for _, h := range c.states.find(view) {
		if h.id == stateOpen || state == "" {
			at, state = h, map[int]string{stateUnknown: "unknown", stateOpen: "open"}[h.id]
		}
	}
	if state == "" {
		return Date{}, false
	}
	s := Span{view[at.from].Start, view[at.to-1].End}
	return Date{Span: s, Text: text[s.Start:s.End], State: state}, true
}

// tied reads "w/ layer 5", "same as W1", "2 days after 4a", "next day".
func (c *calendar) tied(text string, view []token) (Date, bool) {
	for _, h := range c.ties.find(view) {
		offset, start, ok := c.offsetBefore(view, h.from)
		if !ok {
			continue
		}
		d := Date{State: "relative", Offset: offset, Relation: [...]string{"with", "after", "before", "with", "after"}[h.id]}
		if h.id == tieBefore {
			d.Offset = -offset
		}
		if h.id == tieNextDay {
			d.Offset = 1
		}
		end := h.to
		ref, refEnd := c.reference(text, view, h.to)
		if ref == "" && h.id < tieSameDay {
			continue
		}
		if ref != "" {
			d.Ref, end = ref, refEnd
		}
		d.Span = Span{view[start].Start, view[end-1].End}
		d.Text = text[d.Start:d.End]
		return d, true
	}
	return Date{}, false
}

// offsetBefore reads the count of days before a tie; ok is false if other
// words stand there.
func (c *calendar) offsetBefore(view []token, i int) (days, start int, ok bool) {
	if i == 0 {
		return 0, 0, true
	}
	if i == 2 && view[0].kind == number && strings.HasPrefix(view[1].low, "day") {
		v, _, ok := parseNumber(view[0].low, false)
		return int(v), 0, ok
	}
	if i == 1 && view[0].low == "day" {
		return 1, 0, true
	}
	return 0, 0, false
}

// reference is the mark or label that a tie points to: up to a stop, at most
// four words, with a number or a known word in it.
func (c *calendar) reference(text string, view []token, i int) (string, int) {
	end, telling := i, false
	for end < len(view) && end < i+4 && !stops(view[end]) && !c.refStops[view[end].low] {
		t := view[end]
		telling = telling || t.kind == number || strings.ContainsAny(t.low, "0123456789") || c.refWords[t.low]
		end++
	}
	if end == i || !telling || end < len(view) && (view[end].low == "am" || view[end].low == "pm") {
		return "", i
	}
	return text[view[i].Start:view[end-1].End], end
}

// tellVerbs gives each date the verb and preposition that stand before it.
func (c *calendar) tellVerbs(view []token, dates []Date) {
	verbs, preps := c.verbs.find(view), c.preps.find(view)
	from := 0
	for i := range dates {
		d := &dates[i]
		d.Verb = c.nearest(view, verbs, c.verbNames, from, d.Start, 7)
		d.Prep = c.nearest(view, preps, c.prepNames, from, d.Start, 1)
		from = d.End
	}
}

// nearest names the last hit that ends within reach tokens before a byte, in
// the same sentence and after byte from.
func (c *calendar) nearest(view []token, hits []hit, names []string, from, before, reach int) string {
	at, _ := slices.BinarySearchFunc(view, before, func(t token, at int) int { return t.Start - at })
	first, _ := slices.BinarySearchFunc(hits, at-reach-longestVerb, func(h hit, at int) int { return h.from - at })
	name := ""
	best := -1
	for _, h := range hits[first:] {
		if h.from >= at {
			break
		}
		if h.to > at || view[h.from].Start < from || at-h.to >= reach || sentenceEnds(view[h.to:at]) || h.to <= best {
			continue
		}
		name, best = names[h.id], h.to
	}
	return name
}

// longestVerb is how many tokens the words of a verb may take.
const longestVerb = 8

func sentenceEnds(toks []token) bool {
	for i := range toks {
		if s := toks[i].low; s == "." || s == ";" || s == "\n" {
			return true
		}
	}
	return false
}
