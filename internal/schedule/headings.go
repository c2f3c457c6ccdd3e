package schedule

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strings"
	"unicode"
)

// headings is the vocabulary of column headings, from policies/knowledge/columns.json.
type headings struct {
	filler map[string]bool
	units  map[string]bool
	lower  []string
	upper  []string
	byUnit map[string]string
	slots  []headingSlot
	bySlot map[string]*headingSlot
}

type headingSlot struct {
	name  string
	many  bool
	kind  string // what the cells must mostly hold, "" words
	in    string // products or schedule, "" both
	words [][]string
	units map[string]string
}

type slotConfig struct {
	Many  bool              `json:"many"`
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
			Filler []string              `json:"filler"`
			Units  []string              `json:"unit_words"`
			Lower  []string              `json:"lower"`
			Upper  []string              `json:"upper"`
			ByUnit map[string]string     `json:"by_unit"`
			Slots  map[string]slotConfig `json:"slots"`
		} `json:"columns"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		return nil, fmt.Errorf("heading vocabulary knowledge/columns.json: %w", err)
	}
	h := &headings{
		filler: set(file.Columns.Filler), units: set(file.Columns.Units),
		lower: file.Columns.Lower, upper: file.Columns.Upper, byUnit: file.Columns.ByUnit,
		bySlot: map[string]*headingSlot{},
	}
	for name, c := range file.Columns.Slots {
		s := headingSlot{name: name, many: c.Many, kind: c.Kind, in: c.In, units: c.Units}
		for _, w := range c.Words {
			s.words = append(s.words, strings.Fields(w))
		}
		h.slots = append(h.slots, s)
	}
	slices.SortFunc(h.slots, func(a, b headingSlot) int { return strings.Compare(a.name, b.name) })
	for i := range h.slots {
		h.bySlot[h.slots[i].name] = &h.slots[i]
	}
	return h, nil
}

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
	if group != "" {
		consider(group+" "+sub, 1.02)
		consider(parenthesis.ReplaceAllString(group, " "), 0.8)
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

// match scores one heading text against every phrase.
func (h *headings) match(text string) []guess {
	all := headingWords(text)
	if len(all) == 0 || len(all) > 14 {
		return nil
	}
	weight := h.weight(all)
	var out []guess
	for i := range h.slots {
		s := &h.slots[i]
		g := guess{slot: s.name}
		for _, phrase := range s.words {
			at, exact := indexWords(all, phrase)
			if at < 0 {
				continue
			}
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
			if score > g.score {
				g.score, g.words = score, strings.Join(phrase, " ")
			}
		}
		if g.score >= 0.34 {
			out = append(out, h.bound(g, all))
		}
	}
	return out
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
		default:
			total++
		}
	}
	return total
}

// bound turns the two-sided application range into its lower or upper half
// where the heading says which.
func (h *headings) bound(g guess, words []string) guess {
	if g.slot != "apply" {
		return g
	}
	for _, w := range words {
		switch {
		case slices.Contains(h.lower, w):
			g.slot = "apply_min"
		case slices.Contains(h.upper, w):
			g.slot = "apply_max"
		}
	}
	return g
}

// headingWords cuts a heading to lower-case words; underscores, slashes and
// points part words.
func headingWords(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	})
}

func set(words []string) map[string]bool {
	out := make(map[string]bool, len(words))
	for _, w := range words {
		out[w] = true
	}
	return out
}

// indexWords finds the phrase as consecutive words; a plural s is the same word
// but not exact. It gives -1 where the phrase does not stand.
func indexWords(words, phrase []string) (at int, exact bool) {
	for i := 0; i+len(phrase) <= len(words); i++ {
		hit, same := true, true
		for j, p := range phrase {
			w := words[i+j]
			if w == p {
				continue
			}
			same = false
			if w != p+"s" && w+"s" != p {
				hit = false
				break
			}
		}
		if hit {
			return i, same
		}
	}
	return -1, false
}
