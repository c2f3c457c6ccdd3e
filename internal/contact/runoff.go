package contact

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/schedule"
)

// reach tells which side of a relation stands higher, so that rain comes off
// it onto the other.
var reach = map[string]struct{ fromSubject bool }{
	"drains_onto": {true}, "above": {true},
	"drained_from": {false}, "below": {false},
}

// drains are the relations in which water runs and nothing touches.
var drains = map[string]bool{"drains_onto": true, "drained_from": true, "drains_in": true, "drains_on_it": true}

// carried holds for what the rain off another goes to: the copper of "rain off the zinc
// goes over the copper". The zinc lies on nothing there.
func (f *finder) carried(i int) bool {
	items := f.line.Items
	if i == 0 || i == len(items) || items[i].Side != "object" || items[i].Relation == "" || apartWords[items[i].Relation] {
		return false
	}
	from := &items[i-1]
	return from.At == items[i].At && from.Clause == items[i].Clause && from.Relation == "drained_from" && from.Side == "object"
}

// rainedOn holds for a neighbor that stands above the row's own material, where a remark
// says that its rain comes down there: they need not touch.
func (f *finder) rainedOn(it *schedule.Item) bool {
	return slices.Contains(it.Signals, "lies_above") && slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.Slot == "remark" && o.Relation == "drained_from" && o.Side == "object" && f.names(&o, it)
	})
}

// runoff finds what water reaches from another material, where the words say
// that it drains there or that the one stands above the other.
func (f *finder) runoff() {
	for i := range f.line.Items {
		it := &f.line.Items[i]
		if it.Polarity != "yes" || it.Slot == "layers" {
			continue
		}
		before, last := f.neighbors(i)
		if before == nil {
			before = f.goneOn(i)
		}
		if upper, lower := f.flow(i, before, last); upper != nil && lower != nil && !alike(upper, lower) {
			c := contactOf(f.line, *upper, *lower, it.Slot, "runoff")
			c.Clause, c.At, c.ClearMM = it.Clause, it.At, nil
			f.found = append(f.found, c)
		}
	}
}

// flow tells which of two materials the water comes from; nil where the words
// of the second do not tell.
func (f *finder) flow(i int, before *schedule.Item, last bool) (upper, lower *schedule.Item) {
	it := &f.line.Items[i]
	r, told := reach[it.Relation]
	switch {
	case it.Relation == "drained_from" && f.carried(i+1): // the rain goes there
		return nil, nil
	case f.carried(i):
		return before, it
	case it.Relation == "drains_in" && it.Side == "subject" && last: // "cedar shakes drain in"
		return it, f.main
	case it.Relation == "drains_on_it" && it.Side == "subject" && last:
		return it, f.meant(i)
	case it.Relation == "over" && it.Side == "object" && before != nil && before.At == it.At && spoutWord.MatchString(before.Text):
		return before, it
	case told && it.Side == "object":
		if r.fromSubject {
			return before, it
		}
		return it, before
	case it.Relation == "drains_onto" && it.Side == "subject" && last && f.calledBack(i) != nil:
		return it, f.calledBack(i)
	case slices.Contains(it.Signals, schedule.ShedsOn):
		return it, f.shedOn(i)
	case it.Relation == "above" || it.Relation == "below" || !last:
		return nil, nil
	case slices.Contains(it.Signals, "lies_above") && it.Side == "object" && it.Relation == "clear_of": // "5 in. above the sheet"
		return before, it
	case slices.Contains(it.Signals, "lies_above"):
		return it, before
	case slices.Contains(it.Signals, "lies_below"):
		return before, it
	}
	return nil, nil
}

// spoutWord is a word for what lets the water of a roof out onto whatever it is over: a
// scupper, a spout.
var spoutWord = regexp.MustCompile(`(?i)\b(?:scuppers?|(?:down|rain)?spouts?|downpipes?|spitters?|(?:conductor|leader|rainwater) heads?)\b`)

// goneOn is what words without a material before them tell of: the metal that the cell
// names right before a comma ("copper spout, empties onto zinc"), else the row's own.
func (f *finder) goneOn(i int) *schedule.Item {
	items := f.line.Items
	if i > 0 && items[i].Side == "object" && items[i-1].At == items[i].At && items[i-1].Polarity == "yes" &&
		items[i-1].Relation == "" && slices.Contains(items[i-1].Keys, "metal") &&
		strings.Contains(f.line.Texts[items[i].Slot], items[i-1].Clause+", "+items[i].Clause) {
		return &items[i-1]
	}
	return f.main
}

// meant is what "it" stands for: the metal that the same cell names just before ("zinc sill;
// copper gutter spills onto it"), else the row's own material.
func (f *finder) meant(i int) *schedule.Item {
	items := f.line.Items
	if i > 0 && items[i-1].At == items[i].At && items[i-1].Clause != items[i].Clause &&
		items[i-1].Polarity == "yes" && items[i-1].Relation == "" && slices.Contains(items[i-1].Keys, "metal") {
		return &items[i-1]
	}
	return f.main
}

// calledBack is what the same cell named before more fully, and the clause of item i only calls
// by its last word: the zinc of "zinc apron below, copper gutter drips on apron".
func (f *finder) calledBack(i int) *schedule.Item {
	it := &f.line.Items[i]
	at := strings.LastIndex(it.Clause, it.Text)
	if at < 0 {
		return nil
	}
	said := strings.Fields(strings.ToLower(it.Clause[at+len(it.Text):]))
	for j := i - 1; j >= 0; j-- {
		from := &f.line.Items[j]
		named := strings.Fields(strings.ToLower(from.Text))
		if from.At == it.At && from.Polarity == "yes" && len(named) > 1 && len(said) > 0 && said[len(said)-1] == named[len(named)-1] {
			return from
		}
	}
	return nil
}

// shedOn is the one metal of the row's neighbors that the words after item i call by its form, and
// name no metal of: "copper cap, drips onto sill below" beside "zinc sill flashing".
func (f *finder) shedOn(i int) *schedule.Item {
	it := &f.line.Items[i]
	_, rest, _ := strings.Cut(f.line.Texts[it.Slot], it.Clause)
	rest, _, _ = strings.Cut(strings.TrimLeft(rest, ",;. "), ";")
	said := wordsOf(strings.TrimRight(rest, " ."))
	for len(said) > 0 && slices.Contains(belowWords, said[len(said)-1]) {
		said = said[:len(said)-1]
	}
	if len(said) == 0 {
		return nil
	}
	var met *schedule.Item
	for j := range f.line.Items {
		o := &f.line.Items[j]
		if j == i || o.Slot != it.Slot || o.Polarity != "yes" || o.Class != "flashing-metal" || !slices.Contains(wordsOf(o.Text), said[len(said)-1]) {
			continue
		}
		if met != nil {
			return nil // either could be meant
		}
		met = o
	}
	return met
}

// belowWords say where something lies that water comes down on.
var belowWords = []string{"below", "beneath", "underneath", "under", "it"}

// wordsOf are the words of a text, in small letters.
func wordsOf(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) })
}

// neighbors gives the material that item i is told of in its clause, nil if
// there is none, and whether item i is the last of the clause. Of a list of
// objects ("onto zinc and lead") each is told of the same subject.
func (f *finder) neighbors(i int) (before *schedule.Item, last bool) {
	items := f.line.Items
	same := func(j int) bool {
		return j >= 0 && j < len(items) && items[j].At == items[i].At && items[j].Clause == items[i].Clause
	}
	for j := i - 1; same(j) && before == nil; j-- {
		if items[j].Side != "object" || items[j].Relation != items[i].Relation {
			before = &items[j]
		}
	}
	return before, !same(i + 1)
}

// alike holds for one and the same material.
func alike(a, b *schedule.Item) bool {
	return a.ID == b.ID || a.Product != "" && a.Product == b.Product || a.Family != "" && a.Family == b.Family
}
