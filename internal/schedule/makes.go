package schedule

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
)

// addMakes takes the first word of product names for all products that have it:
// "keep off Larch" where there are Larch 40 and Larch HT.
func (l *lexicon) addMakes(found []mention, text string) []mention {
	for _, m := range makeWord.FindAllStringIndex(text, -1) {
		word := text[m[0]:m[1]]
		if i, called := l.lead[fold(word)]; called { // "Larch or Reed" for two primers
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

var makeWord = regexp.MustCompile(`\b[A-Z][a-z]{3,}\b`)

// addAlias makes a product known by its trade name too, where that is no word
// for a material.
func (l *lexicon) addAlias(name string, index int) {
	if !strings.ContainsFunc(name, unicode.IsUpper) || l.vocab.Describe(name).Family != "" {
		return
	}
	if _, known := l.tags[fold(name)]; !known {
		l.add(name, index)
	}
}
