package schedule

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"
)

// headings is the vocabulary of column headings, from policies/knowledge/columns.json.
type headings struct {
	filler  map[string]bool
	planned map[string]bool // words for days that are meant
	actual  map[string]bool // words for days on which it was done
	light   map[string]bool
	same    map[string]string // an office's spelling of a heading word, and the usual one
	units   map[string]bool
	bare    map[string]bool // words that say only that a date stands there
	lower   []string
	upper   []string
	byUnit  map[string]string
	service []string // words that tell a temperature in service from one at application
	slots   []headingSlot
	bySlot  map[string]*headingSlot
	first   map[string][]headingPhrase // by their first word in the singular
	anyWay  map[string][]headingPhrase // by their words in the singular, sorted
}

// headingPhrase is one phrase that a slot goes by.
type headingPhrase struct {
	slot  int
	words []string
}

type headingSlot struct {
	name  string
	many  bool
	sides bool   // it may stand once for each side of a joint
	kind  string // what the cells must mostly hold, "" words
	in    string // products or schedule, "" both
	words []string
	units map[string]string
}

type slotConfig struct {
	Many  bool              `json:"many"`
	Sides bool              `json:"sides"`
	Kind  string            `json:"kind"`
	In    string            `json:"in"`
	Words []string          `json:"words"`
	Units map[string]string `json:"units"`
}

func loadHeadings(fsys fs.FS) (*headings, error) {
	raw, err := fs.ReadFile(fsys, "knowledge/columns.json")
	if err != nil {
		return nil, fmt.Errorf("heading vocabulary: %w", err)
	}
	var file struct {
		Columns struct {
			Filler  []string              `json:"filler"`
			Light   []string              `json:"light"`
			Same    map[string]string     `json:"same"`
			Units   []string              `json:"unit_words"`
			Bare    []string              `json:"bare_date"`
			Planned []string              `json:"planned"`
			Actual  []string              `json:"actual"`
			Lower   []string              `json:"lower"`
			Upper   []string              `json:"upper"`
			ByUnit  map[string]string     `json:"by_unit"`
			Service []string              `json:"service"`
			Slots   map[string]slotConfig `json:"slots"`
		} `json:"columns"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		return nil, fmt.Errorf("heading vocabulary knowledge/columns.json: %w", err)
	}
	h := &headings{
		filler: set(file.Columns.Filler), planned: set(file.Columns.Planned), actual: set(file.Columns.Actual), units: set(file.Columns.Units), light: set(file.Columns.Light), same: file.Columns.Same, bare: set(file.Columns.Bare),
		lower: file.Columns.Lower, upper: file.Columns.Upper, byUnit: file.Columns.ByUnit, service: file.Columns.Service,
		bySlot: map[string]*headingSlot{}, first: map[string][]headingPhrase{}, anyWay: map[string][]headingPhrase{},
	}
	for name, c := range file.Columns.Slots {
		h.slots = append(h.slots, headingSlot{name: name, many: c.Many, sides: c.Sides, kind: c.Kind, in: c.In, words: c.Words, units: c.Units})
	}
	slices.SortFunc(h.slots, func(a, b headingSlot) int { return strings.Compare(a.name, b.name) })
	h.index()
	return h, nil
}

func (h *headings) index() {
	for i := range h.slots {
		s := &h.slots[i]
		h.bySlot[s.name] = s
		for _, w := range s.words {
			if words := h.usual(strings.Fields(w)); len(words) > 0 {
				key := singular(words[0])
				h.first[key] = append(h.first[key], headingPhrase{i, words})
				if all := sorted(words, nil); len(words) > 1 {
					h.anyWay[all] = append(h.anyWay[all], headingPhrase{i, words})
				}
			}
		}
	}
}

// sorted joins words in the singular in the order of the alphabet, without those
// to be left out.
func sorted(words []string, out map[string]bool) string {
	var list []string
	for _, w := range words {
		if !out[w] {
			list = append(list, singular(w))
		}
	}
	slices.Sort(list)
	return strings.Join(list, " ")
}

func singular(w string) string { return strings.TrimSuffix(w, "s") }

// guess is one slot that a heading may stand for, with how much of the heading
// the matching phrase covers (0..1, a little above 1 for the whole heading).
type guess struct {
	slot  string
	score float64
	words string
}

var parenthesis = regexp.MustCompile(`\([^)]*\)`)

// guesses ranks the slots for the heading of one column. group is the merged
// heading above it, "" where there is none.
func (h *headings) guesses(group, sub string) []guess {
	if dated := h.dated(group, sub); len(dated) > 0 {
		return dated
	}
	best := map[string]guess{}
	consider := func(text string, weight float64) {
		for _, g := range h.match(text) {
			g.score *= weight
			if g.score > best[g.slot].score {
				best[g.slot] = g
			}
		}
	}
	for _, form := range []string{sub, parenthesis.ReplaceAllString(sub, " ")} {
		consider(form, 1)
	}
	for i, part := range headingParts(sub) {
		consider(part, partWeight-0.03*float64(min(i, 3)))
	}
	own := len(best) > 0 && !onlyOthers(sub, best)
	if group != "" {
		only := map[string]bool{} // slots that the group names without the heading below it
		for _, g := range h.match(group) {
			only[g.words] = own
		}
		for _, g := range h.match(group + " " + sub) {
			if g.score *= groupWeight; only[g.words] {
				g.score *= groupAlone
			}
			if g.score > best[g.slot].score {
				best[g.slot] = g
			}
		}
	}
	if group != "" && !own { // the heading itself tells more
		consider(parenthesis.ReplaceAllString(group, " "), 0.6)
	}
	out := make([]guess, 0, len(best))
	for _, g := range best {
		out = append(out, g)
	}
	slices.SortFunc(out, func(a, b guess) int {
		if a.score != b.score {
			if a.score > b.score {
				return -1
			}
			return 1
		}
		return strings.Compare(a.slot, b.slot)
	})
	return out
}

// What a heading together with the one above it counts, and what words of the
// upper one alone do where the lower one tells of itself.
const (
	groupWeight = 1.02
	groupAlone  = 0.95
)

// match scores one heading text against every phrase, and keeps the best of
// each slot.
func (h *headings) match(text string) []guess {
	all := h.usual(headingWords(text))
	if len(all) == 0 || len(all) > 14 {
		return nil
	}
	weight := h.weight(all)
	best := map[int]guess{}
	for at := range all {
		for _, p := range h.first[singular(all[at])] {
			exact, ok := begins(all[at:], p.words)
			if !ok {
				continue
			}
			if score := h.score(p.words, all, weight, at, exact); score > best[p.slot].score {
				best[p.slot] = guess{slot: h.slots[p.slot].name, score: score, words: strings.Join(p.words, " ")}
			}
		}
	}
	for _, key := range []string{sorted(all, nil), sorted(all, h.units)} { // "open max" for "max open"
		for _, p := range h.anyWay[key] {
			if best[p.slot].score < inverted {
				best[p.slot] = guess{slot: h.slots[p.slot].name, score: inverted, words: strings.Join(p.words, " ")}
			}
		}
	}
	var out []guess
	for _, slot := range slices.Sorted(maps.Keys(best)) {
		if g := best[slot]; g.score >= telling {
			out = append(out, h.bound(g, all))
		}
	}
	return out
}

// inverted is the score of a heading with the words of a phrase in another order.
const inverted = 0.95

// telling is the least share of a heading that a phrase must cover.
const telling = 0.34

// score is the share of a heading's weight that a phrase covers.
func (h *headings) score(phrase, all []string, weight float64, at int, exact bool) float64 {
	score := h.weight(phrase) / weight
	if len(phrase) == len(all) {
		score = 1.05 + 0.01*float64(len(phrase))
	}
	if at == 0 {
		score += 0.02 // the first words of a heading name it
	}
	if !exact {
		score -= 0.01 // "layer" is the number of a layer before it is "layers"
	}
	return score
}

// weight counts the words that carry meaning; filler and units count little.
func (h *headings) weight(words []string) float64 {
	total := 0.0
	for _, w := range words {
		switch {
		case h.filler[w]:
			total += 0.3
		case h.units[w]:
			total += 0.2
		case h.light[w]:
			total += 0.5
		default:
			total++
		}
	}
	return total
}

// bound turns the two-sided application range into its lower or upper half
// where the heading says which. The first word that tells decides: the "to" of
// "lowest temp. to apply" is no upper end.
func (h *headings) bound(g guess, words []string) guess {
	if g.slot != "apply" {
		return g
	}
	for i := range words {
		switch {
		case beginsAny(words[i:], h.lower):
			g.slot = "apply_min"
			return g
		case beginsAny(words[i:], h.upper):
			g.slot = "apply_max"
			return g
		}
	}
	return g
}

func set(words []string) map[string]bool {
	out := make(map[string]bool, len(words))
	for _, w := range words {
		out[w] = true
	}
	return out
}
