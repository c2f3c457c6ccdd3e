package phrase

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Signal is a condition told in words, such as "frost" or "left on".
type Signal struct {
	ID string `json:"id"`
	Span
	Text string `json:"text"`
	No   bool   `json:"no"` // the words deny it
	If   bool   `json:"if"` // told under a condition, until something else, or of another case, time or version
}

// signalData is the layout of knowledge/signals.json.
type signalData struct {
	Coded []string `json:"coded"` // those of the sheets of a lap, which may go by their codes
	List  map[string]struct {
		Say   []string `json:"say"`
		Deny  []string `json:"deny"`
		Other []string `json:"other"` // the same words for something else
	} `json:"list"`
}

// How a pattern bears on its signal.
const (
	says = iota
	denies
	other
	bearings
)

// signalTable finds all signals at once.
type signalTable struct {
	ids   []string
	coded []string
	m     *matcher
}

func newSignalTable(d signalData) (*signalTable, error) {
	t := &signalTable{m: newMatcher(), coded: d.Coded}
	for id := range d.List {
		t.ids = append(t.ids, id)
	}
	slices.Sort(t.ids)
	for i, id := range t.ids {
		s := d.List[id]
		if len(s.Say) == 0 {
			return nil, fmt.Errorf("signal %s has no words", id)
		}
		for bearing, patterns := range [][]string{s.Say, s.Deny, s.Other} {
			if err := t.m.addAll(i*bearings+bearing, patterns); err != nil {
				return nil, fmt.Errorf("signal %s: %w", id, err)
			}
		}
	}
	return t, nil
}

// Signals lists the conditions that a text states or denies, in order.
func (r *Reader) Signals(text string) []Signal {
	view := r.view(scan(text))
	return r.signalsIn(text, view, r.negations(view))
}

func (r *Reader) signalsIn(text string, view []token, negs []hit) []Signal {
	hits := slices.DeleteFunc(r.signals.m.find(view), func(h hit) bool { return h.id%bearings == denies && counts(text, view, h) })
	slices.SortStableFunc(hits, func(a, b hit) int {
		return cmp.Or(cmp.Compare(a.id/bearings, b.id/bearings), cmp.Compare(a.from, b.from), cmp.Compare(b.to, a.to), cmp.Compare(b.id, a.id))
	})
	var out []Signal
	for i := 0; i < len(hits); {
		best, next := strongest(hits, i)
		i = next
		bearing := best.id % bearings
		if bearing == other {
			continue
		}
		s := Span{view[best.from].Start, view[best.to-1].End}
		no := bearing == denies || r.negatedAt(view, negs, best)
		out = append(out, Signal{ID: r.signals.ids[best.id/bearings], Span: s, Text: text[s.Start:s.End], No: no})
	}
	slices.SortStableFunc(out, func(a, b Signal) int { return cmp.Compare(a.Start, b.Start) })
	return out
}

// withPlainWords adds the signals of laps that a text states once its codes are read as the
// plain words that they stand for: "leg over the face of AB-1" is over that of the sheet.
func (r *Reader) withPlainWords(text string, view []token, nouns []Noun, said []Signal) []Signal {
	if !slices.ContainsFunc(nouns, func(n Noun) bool { return n.As != "" }) {
		return said
	}
	plain := plainView(view, nouns)
	out := said
	for _, s := range r.signalsIn(text, plain, r.negations(plain)) {
		holdsCode := slices.ContainsFunc(nouns, func(n Noun) bool { return n.As != "" && s.Start <= n.Start && n.End <= s.End })
		if holdsCode && slices.Contains(r.signals.coded, s.ID) && !slices.ContainsFunc(said, func(o Signal) bool { return o.ID == s.ID && o.Start < s.End && s.Start < o.End }) {
			out = append(out, s)
		}
	}
	slices.SortStableFunc(out, func(a, b Signal) int { return cmp.Compare(a.Start, b.Start) })
	return out
}

// plainView puts the plain word of each code in its place, unless that word stands behind
// it: "AB-1 sheet".
func plainView(view []token, nouns []Noun) []token {
	out := make([]token, 0, len(view))
	for i := 0; i < len(view); i++ {
		k := slices.IndexFunc(nouns, func(n Noun) bool { return n.As != "" && n.Start <= view[i].Start && view[i].End <= n.End })
		if k < 0 {
			out = append(out, view[i])
			continue
		}
		for i+1 < len(view) && view[i+1].End <= nouns[k].End {
			i++
		}
		if i+1 >= len(view) || view[i+1].low != nouns[k].As {
			out = append(out, token{Span: nouns[k].Span, low: nouns[k].As, kind: word})
		}
	}
	return out
}

// counts holds for a hit that begins with the "no." of a count: "2 no. weep vents".
func counts(text string, view []token, h hit) bool {
	if h.from == 0 || view[h.from].low != "no" || !strings.HasPrefix(text[view[h.from].End:], ".") {
		return false
	}
	return view[h.from-1].kind == number
}

// strongest picks from overlapping hits of one signal the longest; of two
// equals the one that does not state it.
func strongest(hits []hit, i int) (best hit, next int) {
	best, next = hits[i], i+1
	for end := best.to; next < len(hits) && hits[next].id/bearings == best.id/bearings && hits[next].from < end; next++ {
		h := hits[next]
		if d := (h.to - h.from) - (best.to - best.from); d > 0 || d == 0 && h.id > best.id {
			best = h
		}
		end = max(end, h.to)
	}
	return best, next
}

// negations lists the words that deny, without the idioms that only look so.
func (r *Reader) negations(view []token) []hit {
	negs := r.lang.negators.find(view)
	if len(negs) == 0 {
		return nil
	}
	idioms := r.lang.idioms.find(view)
	k := 0
	return slices.DeleteFunc(negs, func(n hit) bool {
		for k < len(idioms) && idioms[k].to <= n.from {
			k++
		}
		return k < len(idioms) && idioms[k].from <= n.from && n.from < idioms[k].to
	})
}

// negatedAt holds if a negator stands right before the hit, or one or two
// words before it that no preposition parts from it.
func (r *Reader) negatedAt(view []token, negs []hit, h hit) bool {
	i, _ := slices.BinarySearchFunc(negs, h.from, func(n hit, at int) int { return n.from - at })
	for i--; i >= 0 && negs[i].to > h.from-8; i-- {
		n := negs[i]
		if n.to == h.from {
			return true
		}
		parted := func(t token) bool { return stops(t) || r.lang.prepositions[t.low] }
		if n.to < h.from && n.to >= h.from-2 && !slices.ContainsFunc(view[n.to:h.from+1], parted) {
			return true
		}
	}
	return false
}
