package material

import (
	"slices"
	"strings"
)

// sense is what a phrase says: terms, families of their own, families that it
// bars, or nothing at all (a look-alike).
type sense struct {
	terms    []int
	families []int
	bars     []int
	weak     bool
	null     bool
	standard bool // holds the number of a standard
}

// addWeak adds a term by a word that means it only beside other words.
func (s *sense) addWeak(t int) {
	s.weak = s.weak || !slices.Contains(s.terms, t)
	s.terms = addOnce(s.terms, t)
}

func addOnce(list []int, n int) []int {
	if slices.Contains(list, n) {
		return list
	}
	return append(list, n)
}

// trie finds the longest phrase that begins at a token. One map holds all
// edges, which loads faster than a map a node.
type trie struct {
	edges  map[uint64]int32
	senses []*sense // by node, nil inside a phrase
}

func newTrie() trie {
	return trie{edges: make(map[uint64]int32, 8192), senses: make([]*sense, 1, 8192)}
}

func edge(node, word int32) uint64 { return uint64(node)<<32 | uint64(uint32(word)) }

func (t *trie) insert(words []int32) int32 {
	node := int32(0)
	for _, w := range words {
		next, ok := t.edges[edge(node, w)]
		if !ok {
			next = int32(len(t.senses))
			t.senses = append(t.senses, nil)
			t.edges[edge(node, w)] = next
		}
		node = next
	}
	return node
}

// phrase gives the sense of a phrase, made on first use. Two words of it may
// also be written as one ("peel and stick", "hotdip galvanized").
func (v *Vocabulary) phrase(p string) *sense {
	var space [12]string
	var keys [12]int32
	lows, words := lowWords(p, space[:0]), keys[:0]
	standard := false
	for i, low := range lows {
		words = append(words, v.wordOf(low))
		standard = standard || isDesignation(low)
		if i > 0 {
			v.mayJoin(lows[i-1], low, words[i-1], words[i])
		}
	}
	node := v.trie.insert(words)
	if v.trie.senses[node] == nil {
		v.trie.senses[node] = &sense{standard: standard}
	}
	return v.trie.senses[node]
}

// lowWords cuts a phrase of the lists into its words in lower case. Most have
// plain letters and digits alone, which need not be looked at rune by rune.
func lowWords(p string, into []string) []string {
	plain := true
	for i := range len(p) {
		plain = plain && (isPlain(p[i]) || p[i] == ' ' || p[i] == '-')
	}
	if !plain {
		for _, t := range cut(p) {
			into = append(into, t.low)
		}
		return into
	}
	for p = strings.ToLower(p); p != ""; {
		end := 0
		for end < len(p) && p[end] != ' ' && p[end] != '-' {
			end++
		}
		if end > 0 {
			into = append(into, p[:end])
		}
		p = p[min(end+1, len(p)):]
	}
	return into
}

func isPlain(c byte) bool { return isASCIILetter(c) || isDigit(c) }

// wordOf gives the number of a word of the lists as it is written there.
func (v *Vocabulary) wordOf(low string) int32 {
	k, ok := v.raw[low]
	if !ok {
		k = v.word(normal(low, v.spelling))
		v.raw[low] = k
	}
	return k
}

// joint is two words that may be written as one; the second begins at a byte of it.
type joint struct {
	first, second int32
	at            int
}

func (v *Vocabulary) mayJoin(a, b string, first, second int32) {
	if !joinable(a) || !joinable(b) || len(a)+len(b) < minJoined || v.pairs[edge(first, second)] {
		return
	}
	v.pairs[edge(first, second)] = true
	v.joints[a+b] = joint{first, second, len(a)}
}

// minJoined keeps short words from being run together into other words.
const minJoined = 8

func joinable(w string) bool {
	return len(w) > 2 && w[0] >= 'a' && w[0] <= 'z'
}

// longest gives the longest phrase that begins at toks[i] and how many tokens
// it has; gapOK says which gaps a phrase may hold.
func (v *Vocabulary) longest(toks []token, i int, gapOK func(i int) bool) (*sense, int) {
	var found *sense
	length := 0
	for node, j := int32(0), i; j < len(toks); j++ {
		if j > i && !gapOK(j) || toks[j].key < 0 {
			break
		}
		next, ok := v.trie.edges[edge(node, toks[j].key)]
		if !ok {
			break
		}
		if node = next; v.trie.senses[node] != nil {
			found, length = v.trie.senses[node], j-i+1
		}
	}
	return found, length
}
