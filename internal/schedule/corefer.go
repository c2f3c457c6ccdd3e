package schedule

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// corefer gives bare nouns the identity of what the row named before: "the
// nailer" after "W-1 nailer", "lintel" after "galv. lintel", "SAF" for the
// row's own SAF-1, "bulb" for the bulb gasket of the row.
func (r *reader) corefer(l *Line) {
	main := l.Main()
	l.keepOffMain(main)
	defer l.lapsOntoIt()
	for i := range l.Items {
		it := &l.Items[i]
		if it.Tag != "" {
			continue
		}
		if main != nil && main.Tag != "" && it.ID != main.ID && strings.EqualFold(it.Text, strings.Trim(tagPrefix(main.Tag), "-./ ")) {
			it.adopt(main)
			continue
		}
		if from := l.namedBefore(i); from != nil {
			it.adopt(from)
		} else if from := r.calledSo(l, i); from != nil {
			it.adopt(from)
		}
	}
}

// keepOffMain takes what a cell names beside the row's own material for near it where the
// cell ends by denying that it touches that: "EPDM stops on a steel plate - no touch on FM-2".
func (l *Line) keepOffMain(main *Item) {
	if main == nil || main.Product == "" {
		return
	}
	for _, it := range l.Items {
		if it.Product != main.Product || it.ID == main.ID || !strings.HasPrefix(strings.ToLower(it.Clause), "no ") {
			continue
		}
		denied := slices.ContainsFunc(l.Signals, func(s Said) bool {
			return s.ID == "no_contact" && !s.No && s.At == it.At && strings.Contains(it.Clause, s.Text)
		})
		for i := range l.Items {
			if o := &l.Items[i]; denied && o.At == it.At && o.ID != main.ID && o.Polarity == "yes" {
				o.Signals = append(slices.Clone(o.Signals), "no_contact")
			}
		}
	}
}

// ontoIt is what a cell says of the row's own sheet and what it named right before.
var ontoIt = regexp.MustCompile(`(?i)\b(?:lap\w*|stuck|adhered|turned|carried|run|taken|dressed|laid)?\s*\b(?:onto|on|over)\s+(?:it|this|that|them|these)\b`)

// lapsOntoIt tells which of two lies over the other where a cell names a neighbor and then
// what the row's own sheet does to it: "EPDM apron, SH-1 lapped onto it".
func (l *Line) lapsOntoIt() {
	main := l.Main()
	if main == nil || main.Family == "" {
		return
	}
	for i := range l.Items {
		it := &l.Items[i]
		if it.ID == main.ID || it.Side == "object" || it.Family != main.Family || it.Product != main.Product || it.Polarity != "yes" || !ontoIt.MatchString(it.Clause) {
			continue
		}
		for j := range l.Items[:i] {
			if o := &l.Items[j]; o.At == it.At && o.Relation == "" && o.Polarity == "yes" && neighborSlots[o.Slot] {
				o.Relation, o.Side = "lapped_onto", "object"
			}
		}
	}
}

// namedBefore finds the earlier item that a bare noun points back at: the same
// last word, told there with a tag or more fully.
func (l *Line) namedBefore(i int) *Item {
	it := &l.Items[i]
	if !it.bare() {
		return nil
	}
	word := lastWord(it.Text)
	for j := range l.Items[:i] {
		from := &l.Items[j]
		if from.Polarity == "no" || from.Family == "" || it.opensUnlike(from) {
			continue
		}
		if from.noun != "" && lastWord(from.noun) == word || from.Tag == "" && len(strings.Fields(from.Text)) > 1 && lastWord(from.Text) == word {
			return from
		}
	}
	return l.fullerBefore(i, word)
}

// opensUnlike holds for what is said to be open to vapor, and is not the other one that is
// not: "SBS sheet / wool / permeable sheet".
func (it *Item) opensUnlike(other *Item) bool {
	return slices.Contains(it.Keys, openTrait) && !slices.Contains(other.Keys, openTrait)
}

// fullerBefore finds the one earlier item that says of what a thing is made that item i
// only names: "gutter" after "galv. gutter G90, bare".
func (l *Line) fullerBefore(i int, word string) *Item {
	it := &l.Items[i]
	if !strings.HasSuffix(it.Family, "-unspecified") {
		return nil
	}
	var found *Item
	for j := range l.Items[:i] {
		from := &l.Items[j]
		says := slices.ContainsFunc(headingWords(from.Text), func(w string) bool { return strings.TrimSuffix(w, "s") == word })
		if !says || from.Class != it.Class || from.Polarity == "no" || strings.HasSuffix(from.Family, "-unspecified") || it.opensUnlike(from) {
			continue
		}
		if found != nil && found.Family != from.Family {
			return nil
		}
		found = from
	}
	return found
}

// clearOfNamed takes what a clause keeps the row's material clear of, in words that no
// material has, for the one neighbor that another cell names with one of them: "60 clear
// of the boot" beside "EPDM pipe boot". What a clause keeps from touching may be called by
// what its data calls it: "the rubber never touches the sheet" beside GK-2, an EPDM rubber.
func (r *reader) clearOfNamed(l *Line, h *heard, cl phrase.Clause, c source) {
	away := cl.Relation == "clear_of" && cl.Polarity == "yes" && len(cl.Object) == 0
	touching := cl.Relation == "against" && cl.Polarity == "no" || cl.Relation == "" && slices.ContainsFunc(cl.Signals, func(g phrase.Signal) bool { return g.ID == "no_contact" && !g.No })
	denied := touching && !slices.ContainsFunc(slices.Concat(cl.Subject, cl.Object), func(n phrase.Noun) bool { return !r.saysSheet(h, n) })
	words := longWords.FindAllString(strings.ToLower(cl.Text), -1)
	if r.notOnTheSheet(h, cl) {
		denied = true
		for _, n := range cl.Subject {
			words = append(words, longWords.FindAllString(strings.ToLower(c.text[n.Start:n.End]), -1)...)
		}
	}
	if !away && !denied || c.slot != "remark" {
		return
	}
	found := r.oneNeighbor(l, c, words, denied)
	if found == nil && away && cl.Clearance != nil && len(cl.Subject) == 0 && !clearOfThing.MatchString(cl.Text) {
		found = l.loneNeighbor()
	}
	if found == nil {
		return
	}
	again := *found
	again.ID, again.Slot, again.At = fmt.Sprintf("%s/%d", l.ID, len(l.Items)+1), c.slot, c.at
	again.Relation, again.Side, again.Clause, again.Signals = "clear_of", "object", strings.TrimSpace(cl.Text), []string{"held_back"}
	if denied {
		again.Relation, again.Polarity, again.Signals = "against", "no", nil
	}
	if cl.Clearance != nil {
		again.ClearMM = cl.Clearance.Min
	}
	l.Items = append(l.Items, again)
}

// notOnTheSheet holds for the end of "gasket on the angle, not on the sheet".
func (r *reader) notOnTheSheet(h *heard, cl phrase.Clause) bool {
	return cl.Polarity == "no" && layers[cl.Relation] && len(cl.Object) > 0 && len(cl.Subject) > 0 &&
		!slices.ContainsFunc(cl.Object, func(n phrase.Noun) bool { return !r.saysSheet(h, n) }) &&
		!slices.ContainsFunc(cl.Subject, func(n phrase.Noun) bool { return n.Kind == "self" })
}

// clearOfThing are words that go on to what something is kept clear of: "clear of grade".
var clearOfThing = regexp.MustCompile(`(?i)\b(?:clear|away|off|back|short|apart)\s+(?:of|from)\b|\b(?:above|below)\b`)

// loneNeighbor is all that the row names beside its own material: "clear by 20 all round"
// tells of it.
func (l *Line) loneNeighbor() *Item {
	var found *Item
	for i := range l.Items {
		it := &l.Items[i]
		if it.Slot != "touches" || it.Polarity != "yes" {
			continue
		}
		if found != nil || it.Family == "" || it.Relation != "" {
			return nil
		}
		found = it
	}
	return found
}

// oneNeighbor is the one neighbor that another cell names with one of the words, or
// where byData holds, whose data calls it by one that is no word for the row's own.
func (r *reader) oneNeighbor(l *Line, c source, words []string, byData bool) *Item {
	var found *Item
	main := r.productOf(l.Main())
	for i := range l.Items {
		it := &l.Items[i]
		if it.At == c.at || it.Family == "" || it.Polarity != "yes" || !neighborSlots[it.Slot] {
			continue
		}
		p := r.productOf(it)
		called := byData && p != nil && slices.ContainsFunc(words, func(w string) bool { return !r.limitRules.skip[w] && p.calls(w) && (main == nil || !main.calls(w)) })
		if !called && !r.sharesWord(longWords.FindAllString(strings.ToLower(it.Text), -1), words) {
			continue
		}
		if found != nil && found.Text != it.Text {
			return nil
		}
		found = it
	}
	return found
}

// longWords are the words of a text, a compound as its parts.
var longWords = regexp.MustCompile(`\pL{3,}`)

// neighborSlots are the columns of what lies beside the row's own material.
var neighborSlots = map[string]bool{"touches": true, "left": true, "right": true, "top": true, "bottom": true, "front": true, "edge": true, "behind": true}

// sharesWord holds where two texts have a word in common that is no word for a place.
func (r *reader) sharesWord(a, b []string) bool {
	return slices.ContainsFunc(a, func(w string) bool { return !r.limitRules.skip[w] && slices.Contains(b, w) })
}

// calledSo finds the one product that the row has named before whose data calls it by
// a bare noun that says no more than its class; any sealant is a bead.
func (r *reader) calledSo(l *Line, i int) *Item {
	it := &l.Items[i]
	if !strings.HasSuffix(it.Family, "-unspecified") || len(strings.Fields(it.Text)) > 1 {
		return nil
	}
	var found *Item
	for j := range l.Items[:i] {
		from := &l.Items[j]
		if from.Class != it.Class || !anyBead(it, from) && !r.dataCalls(from, it.Text) {
			continue
		}
		if found != nil && (found.Product != from.Product || found.Family != from.Family) {
			return nil
		}
		found = from
	}
	return found
}

// anyBead holds for a word that says sealant and no more ("bead", "caulk"), and a sealant that
// the row's cells of materials name.
func anyBead(it, from *Item) bool {
	return it.Class == "sealant" && from.Slot != it.Slot && from.Polarity == "yes" && from.Family != it.Family && from.Family != ""
}

// dataCalls holds where the data of what an item names calls it by a word.
func (r *reader) dataCalls(it *Item, word string) bool {
	p := r.productOf(it)
	return p != nil && p.calls(word)
}

// calls holds for a product whose data calls it by a word, in what it is or in its name,
// one or many of it.
func (p *Product) calls(word string) bool {
	word = lastWord(word)
	return slices.ContainsFunc([]string{p.Texts["type"], p.Texts["alias"], p.Name}, func(text string) bool {
		return slices.ContainsFunc(headingWords(text), func(w string) bool { return strings.TrimSuffix(w, "s") == word })
	})
}

// bare holds for a noun that says nothing of its chemistry: generic, or one
// word only.
func (it *Item) bare() bool {
	return strings.HasSuffix(it.Family, "-unspecified") || len(strings.Fields(it.Text)) == 1
}

func (it *Item) adopt(from *Item) {
	it.Tag, it.Product, it.Family, it.Name, it.Class = from.Tag, from.Product, from.Family, from.Name, from.Class
	it.Traits, it.Keys, it.Unknown = from.Traits, from.Keys, from.Unknown
}

func lastWord(s string) string {
	words := headingWords(s)
	if len(words) == 0 {
		return ""
	}
	return strings.TrimSuffix(words[len(words)-1], "s")
}
