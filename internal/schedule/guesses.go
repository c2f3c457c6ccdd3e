package schedule

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"abut/internal/regexp"
)

// guess is one slot that a heading may stand for, with how much of the heading
// the matching phrase covers (0..1, a little above 1 for the whole heading).
type guess struct {
	slot  string
	score float64
	words string
	noted bool // not by its own words, but by a note on it
}

var parenthesis = regexp.MustCompile(`\([^)]*\)`)

// guesses ranks the slots for the heading of one column. group is the merged
// heading above it, "" where there is none.
func (h *headings) guesses(group, sub string) []guess {
	if strings.ContainsAny(group+sub, h.money) {
		return []guess{{slot: "reference", score: 1, words: "a sign of money"}}
	}
	if dated := h.dated(group, sub); len(dated) > 0 {
		return dated
	}
	best := maps.Clone(h.own(sub))
	own := len(best) > 0 && !onlyOthers(sub, best)
	if group != "" {
		only := map[string]bool{} // slots that the group names without the heading below it
		for _, g := range h.match(group) {
			only[g.words] = own
		}
		for _, g := range h.phrases(group+" "+sub, false) {
			if g.score *= groupWeight; only[g.words] {
				g.score *= groupAlone
			}
			best.take([]guess{g}, 1)
		}
	}
	if len(best) > 1 {
		best.decide(h.match(group))
	}
	if group != "" && !own { // the heading itself tells more
		best.take(h.match(parenthesis.ReplaceAllString(group, " ")), 0.6)
	}
	h.beside(best, sub)
	h.tagOf(best, group)
	h.deny(best, sub)
	_, air := best["reading_air"]
	return best.ranked(air && slices.ContainsFunc(h.usual(headingWords(sub)), func(w string) bool { return slices.Contains(h.faces, w) }))
}

// tagOf takes the tag below the heading of another part for that part: "Primer / Tag"
// beside "Sheet / Tag" holds primers.
func (h *headings) tagOf(best ballot, group string) {
	tag, is := best["tag"]
	if !is || tag.score < 1 || group == "" {
		return
	}
	for _, g := range h.match(group) {
		if g.score >= 1 && (meets[g.slot] || partSlots[g.slot]) {
			delete(best, "tag")
			g.score, g.words = tag.score, g.words+" "+tag.words
			best[g.slot] = g
			return
		}
	}
}

// partSlots are those of the parts of a line beside its sheet that have tags, and meet
// what the sheet meets.
var partSlots = map[string]bool{"primer": true, "sealant": true, "substrate": true}

// own is what a heading may stand for by itself.
func (h *headings) own(sub string) ballot {
	return h.owns.of(sub, func() ballot {
		best := ballot{}
		if numberSign.MatchString(sub) {
			sub = "no"
		}
		sub = numberAfter.ReplaceAllString(sub, "$1 no ")
		for _, form := range slices.Compact([]string{sub, parenthesis.ReplaceAllString(sub, " ")}) {
			best.take(h.match(form), 1)
			best.take(h.match(h.asked(form)), askedWeight)
			best.take(h.toApply(form), askedWeight)
		}
		for i, part := range headingParts(sub) {
			best.take(h.match(part), partWeight-0.03*float64(min(i, 3)))
		}
		if h.endsInRemarks(sub) && best.onlyOf("reference", "remark") { // who makes them may be told by a word for papers
			delete(best, "reference")
			best.take([]guess{{slot: "remark", score: remarksOf, words: lastWord(sub)}}, 1)
		}
		return best
	})
}

// toApply reads a heading on the temperature to apply at without the words for what is
// that warm: "Lowest air/surface temp to apply". Air and face must both be so (common
// practice).
func (h *headings) toApply(text string) []guess {
	all := headingWords(text)
	kept := slices.DeleteFunc(slices.Clone(all), func(w string) bool {
		return slices.Contains(h.dayAir, w) || slices.Contains(h.faces, w) || h.filler[w] && w != "to" && !slices.Contains(h.lower, w) && !slices.Contains(h.upper, w)
	})
	if len(kept) == len(all) {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(h.match(strings.Join(kept, " "))), func(g guess) bool {
		return g.slot != "apply_min" && g.slot != "apply_max" && g.slot != "apply"
	})
}

// numberSign is a heading that says "number" by its sign alone.
var numberSign = regexp.MustCompile(`^\s*(?:#|№|N[º°])\.?\s*$`)

// onlyOf holds where a heading could stand for nothing but some slots, or for none.
func (b ballot) onlyOf(slots ...string) bool {
	for slot := range b {
		if !slices.Contains(slots, slot) {
			return false
		}
	}
	return true
}

// remarksOf is the score of a heading that is known only as remarks of somebody.
const remarksOf = 0.6

// deny takes a heading that says what not to do for one of what to keep off, unless it
// sets a limit ("not below").
func (h *headings) deny(best ballot, sub string) {
	not := h.deniedFirst(sub)
	if not == "" || holdsAny(headingWords(sub), h.ends) || best["accepts_none"].score >= 1 {
		return
	}
	best.take([]guess{{slot: "keep_off", score: denial, words: not}}, 1)
	for slot, g := range best {
		if g.score < 1 && slot != "keep_off" && slot != "remark" {
			g.score *= askedWeight * denial
			best[slot] = g
		}
	}
}

// denied finds the words of a heading that say what not to do.
func (h *headings) denied(text string) string {
	return h.denies.FindString(strings.Join(headingWords(text), " "))
}

// deniedFirst is that of the first thing that a heading names.
func (h *headings) deniedFirst(text string) string {
	return h.denials.of(text, func() string { return h.denied(partMarks.Split(strings.ToLower(text), 2)[0]) })
}

// denial is the score of a heading by a word that denies.
const denial = 0.9

// ballot is the best guess of each slot.
type ballot map[string]guess

// take keeps the guesses that are better than those before.
func (b ballot) take(list []guess, weight float64) {
	for _, g := range list {
		if g.score *= weight; g.score > b[g.slot].score {
			b[g.slot] = g
		}
	}
}

// decide lets what is written over a heading count between two readings of it.
func (b ballot) decide(over []guess) {
	for _, g := range over {
		if own, known := b[g.slot]; known && own.score >= 1 {
			own.score += headNoun
			b[g.slot] = own
		}
	}
}

// ranked lists the guesses, the best first. A reading of the air is one of a face
// where the heading names that: "Temp. AM (wall)".
func (b ballot) ranked(ofFace bool) []guess {
	out := make([]guess, 0, len(b))
	for _, g := range b {
		if g.slot == "reading_air" && ofFace {
			g.slot = "reading_surface"
		}
		out = append(out, g)
	}
	slices.SortFunc(out, func(a, b guess) int {
		return cmp.Or(cmp.Compare(b.score, a.score), strings.Compare(a.slot, b.slot))
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
	return h.matched.of(text, func() []guess { return h.phrases(text, true) })
}

// phrases is match; with apart the words of a slot count together where they do not stand
// beside one another.
func (h *headings) phrases(text string, apart bool) []guess {
	all := slices.DeleteFunc(h.usual(headingWords(text)), isYear) // "Installed, 2026"
	if len(all) > 14 || !slices.ContainsFunc(all, h.begun) {
		return nil
	}
	weight := h.weight(all)
	best, said := map[int]guess{}, map[int][]bool{}
	for at := range all {
		for _, p := range h.first[singular(all[at])] {
			exact, ok := begins(all[at:], p.words)
			if !ok {
				continue
			}
			if said[p.slot] == nil {
				said[p.slot] = make([]bool, len(all))
			}
			for i := range p.words {
				said[p.slot][at+i] = true
			}
			if len(p.words) == 1 && h.whole[p.words[0]] && h.telling(all) > 1 {
				continue
			}
			if score := h.score(p.words, all, weight, at, exact); score > best[p.slot].score {
				best[p.slot] = guess{slot: h.slots[p.slot].name, score: score, words: strings.Join(p.words, " ")}
			}
		}
	}
	for slot, own := range best {
		if !apart {
			break
		}
		best[slot] = h.together(own, said[slot], all, weight)
	}
	for _, key := range []string{sorted(all, nil), sorted(all, h.units), sorted(all, h.filler)} { // "open max" for "max open", "date of visit" for "visit date"
		for _, p := range h.anyWay[key] {
			if best[p.slot].score < inverted {
				best[p.slot] = guess{slot: h.slots[p.slot].name, score: inverted, words: strings.Join(p.words, " ")}
			}
		}
	}
	var out []guess
	for _, slot := range slices.Sorted(maps.Keys(best)) {
		if g := best[slot]; g.score >= leastShare {
			if g.slot == "reference" && !partMarks.MatchString(strings.ToLower(text)) && strings.HasSuffix(strings.Join(all, " "), " "+g.words) {
				g.score += headNoun
			}
			out = append(out, h.bound(g, all))
		}
	}
	return out
}

// begun holds for a word that a phrase of some slot begins with.
func (h *headings) begun(word string) bool { return len(h.first[singular(word)]) > 0 }

// together counts for a slot all the words of a heading that are its own, where they are
// more than those of its best phrase: "AVB membrane", "sealant bead".
func (h *headings) together(best guess, said []bool, all []string, weight float64) guess {
	var words []string
	for i, w := range all {
		if said[i] {
			words = append(words, w)
		}
	}
	if score := h.weight(words)/weight - scattered; score > best.score {
		best.score, best.words = score, strings.Join(words, " ")
	}
	return best
}

// scattered is what words that stand apart count less than a phrase.
const scattered = 0.02

// inverted is the score of a heading with the words of a phrase in another order.
const inverted = 0.95

// headNoun is what the last word of a heading counts more than its first, where it
// is of no concern: a "sealant color" is a color.
const headNoun = 0.03

// leastShare is the least share of a heading that a phrase must cover.
const leastShare = 0.34

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

// telling counts the words that carry meaning of their own.
func (h *headings) telling(words []string) int {
	n := 0
	for _, w := range words {
		if h.whole[w] || !h.filler[w] && !h.units[w] && !h.light[w] {
			n++
		}
	}
	return n
}

// bound turns the two-sided application range into its lower or upper half
// where the heading says which. The first word that tells decides; the "to" of
// "temp. to apply" tells nothing, that of "coldest to apply" one end, and "min - max"
// both.
func (h *headings) bound(g guess, words []string) guess {
	if g.slot != "apply" {
		return g
	}
	for i := range words {
		rest := words[i+1:]
		switch {
		case beginsAny(words[i:], h.lower):
			if !beginsAny(rest, h.upper) || rest[0] == "to" { // "down to"
				g.slot = "apply_min"
			}
			return g
		case h.toWork(words[i:]) && !holdsAny(words[:i], h.cold) && !holdsAny(words[:i], h.hot):
		case beginsAny(words[i:], h.upper):
			g.slot = "apply_max"
			return g
		}
	}
	return g
}

// endTold is the slot that the first words of a label tell, of the end that the label
// tells of: "Apply at max" is a row beside "Apply at min".
func (h *headings) endTold(slot, label string) string {
	return h.bound(guess{slot: slot}, headingWords(label)).slot
}

// toWork holds where words go on with "to" and what is done: "to put on", "to place". The
// "to" of an upper end stands last, or before its unit.
func (h *headings) toWork(words []string) bool {
	return len(words) > 1 && words[0] == "to" && !h.units[words[1]] && !h.filler[words[1]] && !beginsAny(words[1:], h.upper)
}
