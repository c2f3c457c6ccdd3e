package schedule

import "strings"

// corefer gives bare nouns the identity of what the row named before: "the
// nailer" after "W-1 nailer", "lintel" after "galv. lintel", "SAF" for the
// row's own SAF-1, "bulb" for the bulb gasket of the row.
func (r *reader) corefer(l *Line) {
	main := l.Main()
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
		if from.Polarity == "no" || from.Family == "" {
			continue
		}
		if from.noun != "" && lastWord(from.noun) == word || from.Tag == "" && len(strings.Fields(from.Text)) > 1 && lastWord(from.Text) == word {
			return from
		}
	}
	return nil
}

// calledSo finds the one product that the row has named before whose data calls it by
// a bare noun that says no more than its class.
func (r *reader) calledSo(l *Line, i int) *Item {
	it := &l.Items[i]
	if !strings.HasSuffix(it.Family, "-unspecified") || len(strings.Fields(it.Text)) > 1 {
		return nil
	}
	var found *Item
	for j := range l.Items[:i] {
		from := &l.Items[j]
		p := r.productOf(from)
		if p == nil || from.Class != it.Class || !holdsWords(headingWords(firstNonEmpty(p.Texts["type"], p.Name)), []string{strings.ToLower(it.Text)}) {
			continue
		}
		if found != nil && found.Product != from.Product {
			return nil
		}
		found = from
	}
	return found
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
