package material

import "slices"

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
	return trie{edges: make(map[uint64]int32, 16384), senses: make([]*sense, 1, 8192)}
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
	toks := cut(p)
	words := make([]int32, len(toks))
	for i, t := range toks {
		words[i] = v.word(normal(t.low, v.spelling))
	}
	node := v.trie.insert(words)
	if v.trie.senses[node] == nil {
		v.trie.senses[node] = &sense{}
	}
	s := v.trie.senses[node]
	s.standard = slices.ContainsFunc(toks, func(t token) bool { return isDesignation(t.low) })
	for i := 0; i+1 < len(toks); i++ {
		if joinable(toks[i].low) && joinable(toks[i+1].low) && len(toks[i].low)+len(toks[i+1].low) >= minJoined {
			one := v.word(normal(toks[i].low+toks[i+1].low, v.spelling))
			joined := append(append(append([]int32{}, words[:i]...), one), words[i+2:]...)
			if n := v.trie.insert(joined); v.trie.senses[n] == nil {
				v.trie.senses[n] = s
			}
		}
	}
	return s
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
