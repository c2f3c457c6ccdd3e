package schedule

import "strings"

// bracketOf is the bracket that a mention stands in, with what is left of it after
// the mention; "" where it stands in none.
func bracketOf(text string, m mention) (before, rest string) {
	if !inBrackets(text, m.start) {
		return "", ""
	}
	rest, _, _ = strings.Cut(text[m.end:], ")")
	return text[strings.LastIndexByte(text[:m.start], '('):m.start], rest
}

// opensException holds for the first of what a bracket takes out of its list:
// "solvents (but not P-4)", "solvents (P-4 on steel excepted)".
func (r *reader) opensException(text string, m mention) bool {
	before, rest := bracketOf(text, m)
	return r.words.accept.Excepted.lead.MatchString(before) ||
		before == "(" && r.words.accept.Excepted.end.MatchString(strings.TrimSpace(rest))
}
