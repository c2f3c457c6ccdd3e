package schedule

import (
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// stateOfBed gives what a second substrate cell says ("dry, swept") to the bed
// that the first one names.
func (l *Line) stateOfBed(c source, named, before int) {
	if c.slot != "substrate" || len(l.Items) > named {
		return
	}
	for i := range l.Items {
		it := &l.Items[i]
		if it.Slot != "substrate" || it.At.Cell == c.at.Cell {
			continue
		}
		for _, s := range l.Signals[before:] {
			if !s.No && !slices.Contains(it.Signals, s.ID) {
				it.Signals = append(slices.Clone(it.Signals), s.ID)
			}
		}
	}
}

// bedInWords takes a sheet or coat that the cell of the row's own material names only
// as what that goes on, or names after what the row has for a bed, for its bed: "AB-2
// strip, on AB-1".
func (l *Line) bedInWords(c source, named int) {
	isBed := func(it Item) bool {
		return it.Side == "object" && layers[it.Relation] || it.Product != "" && slices.ContainsFunc(l.Items[:named], func(o Item) bool {
			return o.Slot == "substrate" && o.Product == it.Product
		})
	}
	if c.slot != "material" || !slices.ContainsFunc(l.Items[named:], func(it Item) bool { return it.Product != "" && !isBed(it) }) {
		return
	}
	for i := range l.Items[named:] {
		if it := &l.Items[named+i]; isBed(*it) && bedSheets[it.Class] {
			it.Slot = "substrate"
		}
	}
}

// bedOfTask takes what the cell of the row's own material says that goes on for its bed, in a
// row whose cell for beds names none: "AB-1 sheet on block" beside "struck flush, dry".
func (l *Line) bedOfTask() {
	if slices.ContainsFunc(l.Items, func(it Item) bool { return it.Slot == "substrate" && it.Polarity == "yes" }) {
		return
	}
	for i := range l.Items {
		if it := &l.Items[i]; i > 0 && it.Slot == "material" && it.Side == "object" && it.Polarity == "yes" && layers[it.Relation] && bedClass[it.Class] {
			it.Slot = "substrate"
		}
	}
}

// onTheBed lets a sheet or coat that a cell of substrates says to be on another lie over
// it: "plywood with AB-1 on it".
func (l *Line) onTheBed(c source, named int) {
	for i := range l.Items[named:] {
		it := &l.Items[named+i]
		_, rest, _ := strings.Cut(c.text, it.Text)
		if c.slot != "substrate" || it.Slot != "substrate" || it.Polarity != "yes" || !bedSheets[it.Class] || !liesOnIt.MatchString(rest) {
			continue
		}
		for j := range l.Items[named : named+i] {
			l.Items[named+j].Slot = "under"
		}
	}
}

// laidOver lets the layers of a list that a cell of substrates tells after "over ...:" lie
// on what stands before the colon, which then is under them: "over the old roof: board,
// fleece".
func (l *Line) laidOver(c source, named int) {
	lead, list, ok := strings.Cut(c.text, ": ")
	if c.slot != "substrate" || !ok || !overLead.MatchString(lead) {
		return
	}
	after := 0
	for _, it := range l.Items[named:] {
		if it.Slot == "substrate" && strings.Contains(list, it.Text) && !strings.Contains(lead, it.Text) {
			after++
		}
	}
	for i := range l.Items[named:] {
		it := &l.Items[named+i]
		if after > 0 && it.Slot == "substrate" && strings.Contains(lead, it.Text) {
			it.Slot = "under"
		}
	}
}

// overLead begins a cell that tells what a list of layers lies on.
var overLead = regexp.MustCompile(`^(?i:over|on|on top of|above|from) `)

// liesOnIt stands after what lies on the thing named before it.
var liesOnIt = regexp.MustCompile(`^[\])]?(?: \S+){0,3} (?:on|over|across) (?:it|them|top)\b`)

// ofBed holds for a clause that names no sheet, bead or coat whose age it could
// tell.
func (r *reader) ofBed(h *heard, cl phrase.Clause) bool {
	return !slices.ContainsFunc(cl.Nouns, func(n phrase.Noun) bool {
		m, ok := h.mention(n)
		if !ok {
			return false
		}
		switch r.words.roleByClass[r.classOf(m)] {
		case "membrane", "sealant", "coating", "adhesive", "transition", "primer":
			return true
		}
		return false
	})
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
	case (cl.Relation == "on" || cl.Relation == "over") && contains(cl.Object, n) && len(cl.Subject) == 0 && faceLead.MatchString(cl.Text):
		return "under"
	}
	return "substrate"
}

// faceLead is a face that a clause of a bed begins with, of whatever stuff: "kraft facing over
// wool". The bed is that, and not what it is on.
var faceLead = regexp.MustCompile(`(?i)^\W*(?:[\pL-]+ ){0,2}(?:facings?|facers?|skins?|jackets?|linings?)\b[^,;.]* (?:on|over) `)

// onOwn holds for a clause of a substrate cell that says what the row's own sealant lies
// on, and calls it by a word that tells its sort and no more.
func (r *reader) onOwn(l *Line, h *heard, cl phrase.Clause) bool {
	main := l.Main()
	if main == nil || main.Class != "sealant" && main.Class != "mastic" || cl.Relation != "on" && cl.Relation != "over" || len(cl.Subject) != 1 {
		return false
	}
	m, ok := h.mention(cl.Subject[0])
	return ok && m.product < 0 && strings.HasSuffix(m.mat.Family, "-unspecified") && (m.mat.Class == "sealant" || m.mat.Class == "mastic")
}
