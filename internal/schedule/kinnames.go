package schedule

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"abut/internal/material"
)

// kinOf is the place among those told in rows of a product whose name is the same but for
// its last word, -1 if none: of "Larch LT", that of "Larch 40".
func (r *reader) kinOf(name string) int {
	stem := nameStem(name)
	return slices.IndexFunc(r.told, func(n told) bool {
		tag := r.sched.Products[n.product].Tag
		return n.inRow && stem != "" && tag != name && nameStem(tag) == stem && len(n.says) > 0
	})
}

// nameStem is a name in words without the last of them, folded; "" for a name of one.
func nameStem(name string) string {
	name = fold(name)
	return name[:max(strings.LastIndexByte(name, ' '), 0)]
}

// namedInPart makes the products from one on known by their names without the last word,
// where that is no word of the trade: "the Larch" beside "Larch 40". Of several that are
// called so only what they are is known; see kin.
func (r *reader) namedInPart(first int) {
	stems := map[string][]int{}
	for i := range r.sched.Products[first:] {
		if stem := nameStem(r.sched.Products[first+i].Tag); r.mayCall(stem) {
			stems[stem] = append(stems[stem], first+i)
		}
	}
	for stem, products := range stems {
		if _, known := r.lex.tags[stem]; known {
			continue
		}
		if len(products) == 1 {
			r.lex.addWhole(stem, products[0])
			r.lex.called[stem] = true
			continue
		}
		r.kin[stem] = products
	}
}

// mayCall holds for part of a name that calls its product too: a word that is none of the
// trade, or several that are not all words for a material.
func (r *reader) mayCall(stem string) bool {
	if strings.Contains(stem, " ") {
		return !r.lex.isWords(stem)
	}
	return stem != "" && r.vocab.Family(stem) == "" && len(r.head.match(stem)) == 0
}

// knowKin makes what several products of one name are known by that, once they are read,
// where they are of one family.
func (r *reader) knowKin() {
	for stem, products := range r.kin {
		one := r.sched.Products[products[0]]
		if one.Family == "" || slices.ContainsFunc(products, func(i int) bool { return r.sched.Products[i].Family != one.Family }) {
			continue
		}
		r.lex.kin[stem] = material.Material{Family: one.Family, Name: one.Name, Class: one.Class, Traits: one.Traits, Keys: one.Keys}
	}
}

// relatives adds what a text calls by the name that several products share.
func (l *lexicon) relatives(text string, found []mention) []mention {
	low := foldKeep(text)
	for stem, mat := range l.kin {
		for i, end := range wholeWords(low, stem) {
			taken := slices.ContainsFunc(found, func(m mention) bool { return m.start < end && i < m.end })
			if first, _ := utf8.DecodeRuneInString(text[i:]); taken || !unicode.IsUpper(first) {
				continue
			}
			m := mention{start: i, end: end, product: -1, mat: mat}
			m.mat.Text, m.mat.Start, m.mat.End = text[i:end], i, end
			found = append(found, m)
		}
	}
	return found
}
