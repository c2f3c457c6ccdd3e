package schedule

import "strings"

// inListAs is one word that stands alone in a list, or after the word that joins it;
// a word for its state may stand before it ("none on dry ply").
const inListAs = `(?i)((?:^|[,;/(&+\n]|\b(?:on|and|or|over)\b)\s*(?:(?:%s)\s+)?)([a-z]+)(\s*(?:[,;:/()&+\n]|$|\b(?:and|or|only)\b))`

// writtenOut writes out the short forms that stand alone in a list of substrates,
// where they mean one thing: "conc, ply, GMG", never the plies of a sheet.
func (w *wordlists) writtenOut(list string) string {
	out, at, inList := "", 0, w.accept.inList
	for m := inList.FindStringSubmatchIndex(list); m != nil; m = inList.FindStringSubmatchIndex(list[at:]) {
		start, end := at+m[4], at+m[5]
		word := list[start:end]
		if long := w.accept.Short[strings.ToLower(word)]; long != "" {
			word = long
		}
		out, at = out+list[at:start]+word, end
	}
	return out + list[at:]
}
