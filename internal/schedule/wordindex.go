package schedule

import (
	"slices"
	"strings"
)

// wordIndex finds words in a long text without going through all of it for each.
type wordIndex struct {
	text string
	at   map[string][]int // where each word starts
}

func indexWords(text string) *wordIndex {
	x := &wordIndex{text, map[string][]int{}}
	for start, word := range wordsOf(text) {
		x.at[word] = append(x.at[word], start)
	}
	return x
}

// has holds for a name that stands in the text as whole words.
func (x *wordIndex) has(name string) bool {
	rarest, offset := "", 0
	for start, word := range wordsOf(name) {
		if rarest == "" || len(x.at[word]) < len(x.at[rarest]) {
			rarest, offset = word, start
		}
	}
	if rarest == "" { // signs alone
		for range wholeWords(x.text, name) {
			return true
		}
		return false
	}
	return slices.ContainsFunc(x.at[rarest], func(at int) bool {
		start := at - offset
		return start >= 0 && strings.HasPrefix(x.text[start:], name) && wholeWord(x.text, start, start+len(name))
	})
}

// nameIndex tells which of many names may stand in a short text: each is kept
// under that of its words that the fewest names before it have.
type nameIndex struct {
	known int            // how many names are in it
	often map[string]int // how many names hold a word
	under map[string][]int
}

// in lists the names that may stand in a text, as places in the list of names,
// which may have grown since.
func (x *nameIndex) in(low string, names []string) []int {
	if x.under == nil {
		x.often, x.under = map[string]int{}, map[string][]int{}
	}
	for ; x.known < len(names); x.known++ {
		rarest := ""
		for _, word := range wordsOf(names[x.known]) {
			if rarest == "" || x.often[word] <= x.often[rarest] {
				rarest = word
			}
			x.often[word]++
		}
		x.under[rarest] = append(x.under[rarest], x.known)
	}
	out := slices.Clone(x.under[""])
	for _, word := range wordsOf(low) {
		out = append(out, x.under[word]...)
	}
	slices.Sort(out)
	return slices.Compact(out)
}
