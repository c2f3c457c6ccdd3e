package material

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"golang.org/x/sync/errgroup"

	"abut/internal/knowledge"
)

// Vocabulary holds the word lists, ready to read with. It is safe for
// concurrent use.
type Vocabulary struct {
	families []family
	byID     map[string]int
	terms    []term
	byTerm   map[string]int
	entries  map[int][]entry // by the term that all of them need
	keys     map[string]int32
	byLength map[bucket][]string
	trie     trie
	raw      map[string]int32 // words of the lists as written there
	pairs    map[uint64]bool  // two words that stand in joints
	joints   map[string]joint
	spelling map[string]string
	glue     map[string]bool
	breaks   map[string]bool
	denials  map[string]bool
	whole    map[string]bool // words of three letters or less that are cut off nowhere
	soft     map[string]bool // words that join a part to a thing
	partings map[string]bool // words that make a thing of what stands before them
	within   map[string]bool // breaks that part the words of one product too
	layered  map[string]bool // words after which a break names a layer of the thing ("laminated to")
	ofNumber map[string]bool // glue after a number only ("3 in"), a break elsewhere

	nameWords  map[string]bool // words after which a material is a name
	nameLeads  map[string]bool // words before which a material is a name ("rue du Cuivre")
	outsiders  map[string]bool // words after which a material is one that the thing gets on with
	adjectives []string        // endings of words that say what the next thing is made of
	cites      map[string]bool // words that a standard follows ("per")
	colors     map[string]bool
	colorLeads map[string]bool // words that a list of colors follows

	plain       map[string]bool // words that are no slips of others
	fuzzyLength int             // letters that a word must have to be read in spite of a slip
	slipLength  int             // and in spite of a letter left out
	nearAt      float64         // how much alike the nearest families must be, 0..1

	explains bool // tells why, and what is nearest
}

// Explaining is the same vocabulary, which also tells why, and the nearest families of words
// that name none. Only a person asks for either, and they take far longer than all the rest.
func (v *Vocabulary) Explaining() *Vocabulary {
	out := *v
	out.explains = true
	return &out
}

type bucket struct {
	first  byte
	length int
}

type family struct {
	id, name, class string
	traits          []string
	words           []string
	generic         bool
	needs           []int // terms of all its entries
}

type kind byte

const (
	head  kind = iota // what a thing is: sealant, coping
	stuff             // what it is made of: butyl, copper
	way               // how it is made, finished or carried: solvent-borne, anodized
)

// term is a notion that several words stand for.
type term struct {
	name      string
	kind      kind
	implies   []int
	classes   []string // classes of family that a head takes, none: any
	add       []string
	drop      []string
	on        []string // classes or traits a family must have for add and drop
	base      bool     // a stuff that a narrower one may follow after a comma
	alone     bool     // a way that is told of without a thing ("solvents")
	component bool     // a layer or adhesive of another thing
	grade     bool     // a grade, which a note may tell
}

func (t *term) suits(class string, traits []string) bool {
	return len(t.on) == 0 || slices.Contains(t.on, class) || slices.ContainsFunc(t.on, func(on string) bool { return slices.Contains(traits, on) })
}

// entry is a set of terms that together name a family.
type entry struct {
	family int
	need   []int
	bar    []int
}

// Load reads knowledge/families.json and knowledge/vocabulary.json of a policy
// tree.
func Load(fsys fs.FS) (*Vocabulary, error) {
	var f struct {
		Families map[string]familyData `json:"families"`
	}
	var w struct {
		Vocabulary wordsData `json:"vocabulary"`
	}
	var both errgroup.Group
	var v *Vocabulary
	both.Go(func() error { return knowledge.Read(fsys, "read material words", "knowledge/families.json", &f) })
	both.Go(func() error {
		if err := knowledge.Read(fsys, "read material words", "knowledge/vocabulary.json", &w); err != nil {
			return err
		}
		v = newVocabulary(&w.Vocabulary)
		return v.addTerms(w.Vocabulary.Terms)
	})
	if err := both.Wait(); err != nil {
		return nil, err
	}
	if err := v.addFamilies(f.Families); err != nil {
		return nil, err
	}
	for _, p := range w.Vocabulary.LookAlikes {
		v.phrase(p).null = true
	}
	return v, nil
}

// newVocabulary holds the plain lists; phrases are added later.
func newVocabulary(w *wordsData) *Vocabulary {
	v := &Vocabulary{
		byID: map[string]int{}, byTerm: map[string]int{}, entries: map[int][]entry{},
		keys: make(map[string]int32, 4096), byLength: map[bucket][]string{}, trie: newTrie(),
		raw: make(map[string]int32, 4096), pairs: make(map[uint64]bool, 4096), joints: make(map[string]joint, 4096),
		spelling: w.Spelling, plain: map[string]bool{}, adjectives: w.Adjectives,
		glue: set(w.Glue), breaks: set(w.Breaks), within: set(w.Breaks), soft: set(w.Soft), denials: set(w.Denials),
		layered: set(w.Layered), whole: set(w.Whole), partings: set(w.Partings), ofNumber: set(w.OfNumber), cites: set(w.Cites), outsiders: set(w.Outsiders),
		nameWords: set(w.NameWords), nameLeads: set(w.NameLeads), colors: set(w.Colors), colorLeads: set(w.ColorLeads),
		fuzzyLength: w.FuzzyLength, slipLength: w.SlipLength, nearAt: w.NearAt,
	}
	for _, words := range [][]string{w.NoSlips, w.Glue, w.Breaks, w.Denials} {
		for _, word := range words {
			v.plain[word] = true
		}
	}
	for _, b := range w.Loose {
		delete(v.within, b)
	}
	v.keys[""] = 0 // a token's key of 0 means that it is not looked up yet
	return v
}

func set(words []string) map[string]bool {
	m := make(map[string]bool, len(words))
	for _, w := range words {
		m[w] = true
	}
	return m
}

func (v *Vocabulary) addTerms(data map[string]termData) error {
	kinds := map[string]kind{"head": head, "stuff": stuff, "way": way}
	ids := sortedKeys(data)
	for _, id := range ids {
		v.byTerm[id] = len(v.terms)
		d := data[id]
		k, ok := kinds[d.Kind]
		if !ok {
			return fmt.Errorf("knowledge/vocabulary.json: term %s: kind %q is none of head, stuff, way", id, d.Kind)
		}
		name := id
		if len(d.Words) > 0 {
			name = d.Words[0]
		}
		v.terms = append(v.terms, term{name: name, kind: k, classes: d.Classes, add: d.Add, drop: d.Drop, on: d.On, base: d.Base, alone: d.Alone, grade: d.Grade, component: d.Component})
	}
	for _, id := range ids {
		d, i := data[id], v.byTerm[id]
		for _, other := range d.Implies {
			o, ok := v.byTerm[other]
			if !ok {
				return fmt.Errorf("knowledge/vocabulary.json: term %s implies %q, which is no term", id, other)
			}
			v.terms[i].implies = append(v.terms[i].implies, o)
		}
		for _, w := range d.Words {
			s := v.phrase(w)
			s.terms = addOnce(s.terms, i)
		}
		for _, w := range d.Weak {
			s := v.phrase(w)
			s.addWeak(i)
		}
	}
	return nil
}

func (v *Vocabulary) addFamilies(data map[string]familyData) error {
	for _, id := range sortedKeys(data) {
		d, i := data[id], len(v.families)
		v.byID[id] = i
		v.families = append(v.families, family{id: id, name: d.Name, class: d.Class, traits: d.Traits, words: d.Words, generic: d.Generic})
		for _, w := range d.Words {
			s := v.phrase(w)
			s.families = addOnce(s.families, i)
		}
		for _, w := range d.Weak {
			s := v.phrase(w)
			s.families, s.weak = addOnce(s.families, i), true
		}
		for _, w := range d.Not {
			s := v.phrase(w)
			s.bars = append(s.bars, i)
		}
		for _, made := range d.MadeOf {
			if err := v.addEntry(id, i, made); err != nil {
				return err
			}
		}
	}
	return nil
}

func (v *Vocabulary) addEntry(id string, fam int, made string) error {
	e := entry{family: fam}
	for part := range strings.FieldsSeq(made) {
		name, bar := strings.CutPrefix(part, "!")
		t, ok := v.byTerm[name]
		if !ok {
			return fmt.Errorf("knowledge/families.json: %s is made of %q, which is no term", id, name)
		}
		if bar {
			e.bar = append(e.bar, t)
		} else {
			e.need = append(e.need, t)
			v.families[fam].needs = append(v.families[fam].needs, t)
		}
	}
	v.entries[e.need[0]] = append(v.entries[e.need[0]], e)
	return nil
}

// word gives a word its number.
func (v *Vocabulary) word(w string) int32 {
	k, ok := v.keys[w]
	if !ok {
		k = int32(len(v.keys))
		v.keys[w] = k
		b := bucket{w[0], len(w)}
		v.byLength[b] = append(v.byLength[b], w)
	}
	return k
}

func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.SortFunc(keys, cmp.Compare)
	return keys
}
