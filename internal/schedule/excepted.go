package schedule

import (
	"strings"

	"abut/internal/regexp"
)

// bracketOf is the bracket that a mention stands in, with what is left of it after
// the mention; "" where it stands in none.
func bracketOf(text string, m mention) (before, rest string) {
	if !inBrackets(text, m.start) {
		return "", ""
	}
	rest, _, _ = strings.Cut(text[m.end:], ")")
	return text[strings.LastIndexByte(text[:m.start], '('):m.start], rest
}

// opensException holds for the first of what is taken out of its list: "solvents (but
// not P-4)", "solvents (P-4 on steel excepted)", "any solvent but P-4".
func (r *reader) opensException(text string, last int, m mention) bool {
	before, rest := bracketOf(text, m)
	return r.words.accept.Excepted.lead.MatchString(before) ||
		before == "(" && r.words.accept.Excepted.end.MatchString(strings.TrimSpace(rest)) ||
		last > 0 && r.words.accept.Excepted.within.MatchString(text[min(last, m.start):m.start]) ||
		r.words.accept.Excepted.ofAll.MatchString(text[:m.start])
}

// freed tells which of the mentions of a text are taken out of the list that it is;
// spent are those that only tell where that holds ("P-4 on steel excepted").
func (r *reader) freed(text string, found []mention) (freed, spent []bool) {
	freed, spent = make([]bool, len(found)), make([]bool, len(found))
	for i, last := 0, 0; i < len(found); i++ {
		m := found[i]
		opens := r.opensException(text, last, m)
		goesOn := i > 0 && freed[i-1] && (inBrackets(text, m.start) || m.product >= 0 && found[i-1].product >= 0 || !strings.Contains(text[min(last, m.start):m.start], ","))
		listed := listWord.MatchString(text[min(last, m.start):m.start])
		freed[i] = opens || goesOn && listed
		spent[i] = !opens && i > 0 && (freed[i-1] || spent[i-1]) && inBrackets(text, m.start) && !listed
		last = m.end
	}
	return freed, spent
}

// barredIn tells which of the beds that a text lists it says the product does not go on:
// "concrete, steel, not on EPS". One that is barred in some case only ("not on wood over
// 19 %") counts for listed.
func (r *reader) barredIn(text string, found []mention) []bool {
	out, _ := r.freed(text, found)
	denied := false
	for i, m := range found {
		goesOn := denied && listWord.MatchString(text[min(found[i-1].end, m.start):m.start])
		denied = goesOn || r.words.accept.notOn.MatchString(text[:m.start])
		out[i] = (out[i] || denied) && m.product < 0 && bareEnd.MatchString(text[m.end:])
	}
	return out
}

// bareEnd follows a bed of which nothing more is said.
var bareEnd = regexp.MustCompile(`^\s*(?:$|[,;.)/&+]|or\b|and\b)`)
