package schedule

import (
	"maps"
	"slices"
	"strings"
	"unicode"

	"abut/internal/material"
	"abut/internal/regexp"
)

// addMakes takes the first word of product names for all products that have it:
// "keep off Larch" where there are Larch 40 and Larch HT.
func (l *lexicon) addMakes(found []mention, text string) []mention {
	for _, m := range makeWord.FindAllStringIndex(text, -1) {
		word := text[m[0]:m[1]]
		if i, called := l.lead[fold(word)]; called && !slices.ContainsFunc(found, func(f mention) bool { return kindOf(f, m[1], text) }) { // "Larch or Reed" for two primers
			found = slices.DeleteFunc(found, func(f mention) bool { return f.tag == "" && f.start < m[1] && m[0] < f.end })
			if !slices.ContainsFunc(found, func(f mention) bool { return f.start < m[1] && m[0] < f.end }) {
				found = append(found, mention{start: m[0], end: m[1], product: i, tag: word})
			}
			continue
		}
		if l.maker[fold(word)] == 0 || len(l.vocab.Find(word)) > 0 || slices.ContainsFunc(found, func(f mention) bool { return f.start < m[1] && m[0] < f.end && !f.unknownTag }) {
			continue
		}
		seen := map[int]bool{}
		for _, name := range l.names {
			if i := l.tags[name]; strings.HasPrefix(name, fold(word)+" ") && !seen[i] {
				seen[i] = true
				found = append(found, mention{start: m[0], end: m[1], product: i, tag: word})
			}
		}
	}
	return found
}

// kindOf holds for words for a material that stand right after a maker's name:
// "Tarn butyl tapes".
func kindOf(f mention, end int, text string) bool {
	return f.tag == "" && f.start > end && strings.TrimSpace(text[end:f.start]) == ""
}

// ofKind narrows a maker's products to those of the kind that is named after the
// maker ("Tarn asphalt sheets"); sheets whose chemistry nothing tells are of it.
func (r *reader) ofKind(found []mention, text string) []mention {
	var out []mention
	kinds := map[int]bool{} // where the words for such a kind start
	for _, f := range found {
		k := slices.IndexFunc(found, func(k mention) bool { return kindOf(k, f.end, text) })
		if k >= 0 && f.product >= 0 && r.lex.isMaker(f.tag) {
			kinds[found[k].start] = true
			if !isOfKind(&r.sched.Products[f.product], found[k].mat) {
				continue
			}
		}
		out = append(out, f)
	}
	return slices.DeleteFunc(out, func(f mention) bool { return f.tag == "" && kinds[f.start] })
}

func isOfKind(p *Product, kind material.Material) bool {
	class := kind.Class == "" || p.Class == kind.Class || p.Class == "tape" && kind.Class == "membrane"
	return class && (len(kind.Traits) == 0 || len(p.Traits) == 0 || slices.Contains(p.Traits, kind.Traits[0]))
}

var makeWord = regexp.MustCompile(`\b[A-Z][a-z]{3,}\b`)

// addUnmade makes "Ridge 40" known for "Tarn Ridge 40" where Tarn makes several
// products: schedules leave the maker's name out. What is left must be a name of
// its own, of one product, and no words for a material ("Tarn Butyl Tape"). Where
// several products are called by a maker and a code ("Tarn SA-40"), the code is a name.
func (l *lexicon) addUnmade() {
	coded := 0
	for short := range l.unmade {
		if codeName.MatchString(short) {
			coded++
		}
	}
	for _, short := range slices.Sorted(maps.Keys(l.unmade)) {
		key, maker := fold(short), l.unmade[short]
		isCode := coded >= fewestCodes && codeName.MatchString(short)
		if _, known := l.tags[key]; known || len(l.short[key]) != 1 || len(l.vocab.Find(maker)) > 0 || !isCode && (!l.isMaker(maker) || l.isWords(short)) {
			continue
		}
		l.tags[key] = l.short[key][0]
		l.names = append(l.names, key)
		l.called[key] = true
	}
}

// addUnkinded makes "Larch W" known for "Larch W primer", where no other product is called
// so: lists write the kind that rows leave out, or the other way round.
func (l *lexicon) addUnkinded() {
	for _, name := range slices.Sorted(maps.Keys(l.kindly)) {
		if _, known := l.tags[name]; !known && len(l.kindly[name]) == 1 {
			l.tags[name] = l.kindly[name][0]
			l.names = append(l.names, name)
			l.called[name] = true
		}
	}
}

// brandAndCode is a name of a brand and a code of capitals or figures: "Larch W", "Larch SP-1".
var brandAndCode = regexp.MustCompile(`^\p{Lu}[\pL'’]{2,} [\p{Lu}\d][\p{Lu}\d-]{0,5}$`)

// addBrands makes "Larch" known for "Larch SA" where no other product begins so, the
// rest is a code, and the word is none of the trade.
func (l *lexicon) addBrands(ordinary func(string) bool) {
	for _, name := range slices.Clone(l.names) {
		words := strings.Fields(name)
		if len(words) != 2 || l.maker[words[0]] != 1 || !l.brands[name] || ordinary(words[0]) || len(l.vocab.Find(words[0])) > 0 {
			continue
		}
		if _, known := l.tags[words[0]]; !known {
			l.tags[words[0]] = l.tags[name]
			l.names = append(l.names, words[0])
			l.called[words[0]] = true
		}
	}
}

// brandShape is a name of a brand and a code: "Larch SA", "Alder 40".
var brandShape = regexp.MustCompile(`^\p{Lu}\p{Ll}{4,} [\p{Lu}\d]{1,3}$`)

// codeName is a name that begins with a code; fewestCodes is from how many such names
// on an office's products are called so.
var codeName = regexp.MustCompile(`^\p{Lu}{1,4}-(?:\d+\p{Lu}*|\p{Lu}{1,2})(?: \p{Lu}{1,3})?$`)

const fewestCodes = 3

// isWords holds for a text that is words for a kind of material and nothing else.
func (l *lexicon) isWords(text string) bool {
	return l.vocab.Family(text) != "" && strings.Trim(mask(text, l.materials(nil, text, 0)), "| ") == ""
}

// nameShape is what a name is like without its maker's: two words or more of which
// the first is in capitals, or a code.
var nameShape = regexp.MustCompile(`^(?:\p{Lu}[^ ]* .+|\p{Lu}*\d+\p{Lu}+|\p{Lu}+\d+|\p{Lu}+-(?:\d+\p{Lu}*|\p{Lu}{1,2}))$`)

// isCalled holds for a place where a name without its maker's can stand: it is
// written as a name, and is no mark of the schedule.
func (l *lexicon) isCalled(name, as string) bool {
	return !l.called[name] || !l.marks[name] && !unicode.IsLower([]rune(as)[0])
}

// addAlias makes a product known by its trade name too, where that is no word
// for a material.
func (l *lexicon) addAlias(name string, index int) {
	if !strings.ContainsFunc(name, unicode.IsUpper) || l.vocab.Family(name) != "" {
		return
	}
	if _, known := l.tags[fold(name)]; !known {
		l.add(name, index)
	}
}
