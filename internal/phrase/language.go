package phrase

import (
	"fmt"
	"maps"
	"slices"
)

// wordData is the layout of knowledge/words.json.
type wordData struct {
	Figures  figureData   `json:"figures"`
	Dates    dateData     `json:"dates"`
	Language languageData `json:"language"`
}

// languageData is the part of words.json about clauses.
type languageData struct {
	Short          map[string]string   `json:"short"`
	Abbreviations  []string            `json:"abbreviations"`
	Negators       []string            `json:"negators"`
	NotNegation    []string            `json:"not_negation"`
	Determiners    []string            `json:"determiners"`
	BreakBefore    []string            `json:"break_before"`
	Conditions     []string            `json:"conditions"`
	ListOr         []string            `json:"list_or"`
	Self           []string            `json:"self"`
	Overlap        []string            `json:"overlap"`
	Relations      map[string][]string `json:"relations"`
	NeedsObject    []string            `json:"needs_object"`
	WeakAfterEmpty []string            `json:"weak_after_empty"`
	Removal        []string            `json:"removal"`
	FormsOff       []string            `json:"forms_off"`
	Removing       []string            `json:"removing"`
	RemovalLead    []string            `json:"removal_lead"`
	Prepositions   []string            `json:"prepositions"`
	Asides         asideData           `json:"asides"`
	Roles          map[string]struct {
		Before []string `json:"before"`
		After  []string `json:"after"`
	} `json:"roles"`
}

// language holds the compiled words of clauses.
type language struct {
	short                              map[string]string // words as logs kept on site cut them short, and the whole ones
	abbreviations, determiners, listOr map[string]bool
	negators, idioms, breaks, ifs      *matcher
	self, overlap                      *matcher
	relations                          *matcher
	relationNames                      []string
	needsObject, weak, removalLead     map[string]bool
	prepositions                       map[string]bool // they end the reach of a negation
	removal, removing, formsOff        *matcher
	roleBefore, roleAfter              *matcher
	roles                              []string
	asides                             *asides
}

func newLanguage(d languageData) (*language, error) {
	l := &language{short: d.Short, abbreviations: set(d.Abbreviations), determiners: set(d.Determiners), listOr: set(d.ListOr), weak: set(d.WeakAfterEmpty), removalLead: set(d.RemovalLead), prepositions: set(d.Prepositions), needsObject: set(d.NeedsObject)}
	for into, list := range map[**matcher][]string{
		&l.negators: d.Negators, &l.idioms: d.NotNegation, &l.breaks: d.BreakBefore,
		&l.ifs: d.Conditions, &l.removal: d.Removal, &l.formsOff: d.FormsOff, &l.removing: d.Removing, &l.self: d.Self, &l.overlap: d.Overlap,
	} {
		*into = newMatcher()
		if err := (*into).addAll(0, list); err != nil {
			return nil, err
		}
	}
	l.relations, l.roleBefore, l.roleAfter = newMatcher(), newMatcher(), newMatcher()
	var err error
	if l.asides, err = newAsides(d.Asides); err != nil {
		return nil, err
	}
	if l.relationNames, err = named(l.relations, d.Relations); err != nil {
		return nil, err
	}
	for _, n := range d.NeedsObject {
		if !slices.Contains(l.relationNames, n) {
			return nil, fmt.Errorf("needs_object: no relation %q", n)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(d.Roles)) {
		words := d.Roles[name]
		if err := l.roleBefore.addAll(len(l.roles), words.Before); err != nil {
			return nil, err
		}
		if err := l.roleAfter.addAll(len(l.roles), words.After); err != nil {
			return nil, err
		}
		l.roles = append(l.roles, name)
	}
	return l, nil
}
