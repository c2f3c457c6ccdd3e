package schedule

import (
	"slices"
	"strconv"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// heard is what was read in one text: its clauses, and the mentions that their
// nouns stand for. Many cells say the same, so it is shared and not changed.
type heard struct {
	clauses  []phrase.Clause
	mentions []mention
}

// hear reads a text with the workbook's own tags and names, once.
func (r *reader) hear(text string) *heard {
	h, ok := r.heard[text]
	if !ok {
		n := &nouns{lex: r.lex, products: r.sched.Products}
		plain := r.lex.unboxed(stepMark.ReplaceAllString(text, "$1;$2"))
		h = &heard{clauses: r.phrase.Read(plain, n, phrase.Options{}), mentions: n.list}
		for i := range h.clauses {
			cl := &h.clauses[i]
			if plain != text {
				cl.Text = strings.Join(strings.Fields(cl.Text), " ")
			}
			cl.Signals = h.withoutNames(cl)
		}
		r.heard[text] = h
	}
	return h
}

// withoutNames leaves out what one word of a product's name would say: the "Clear" of
// "Larch Clear N" keeps nothing clear.
func (h *heard) withoutNames(cl *phrase.Clause) []phrase.Signal {
	inName := func(s phrase.Signal) bool {
		return !strings.Contains(s.Text, " ") && slices.ContainsFunc(cl.Nouns, func(n phrase.Noun) bool {
			m, ok := h.mention(n)
			return ok && m.product >= 0 && n.Start <= s.Start && s.End <= n.End && n.End-n.Start > s.End-s.Start && looksNamed(m.tag)
		})
	}
	if !slices.ContainsFunc(cl.Signals, inName) {
		return cl.Signals
	}
	return slices.DeleteFunc(slices.Clone(cl.Signals), inName)
}

// stepMark parts the steps of a work that are told in one cell ("prime > sheet > board"),
// and is no sign of a limit ("R > 10"). A full sentence may stand in each.
var stepMark = regexp.MustCompile(`([^\s>] )>( \pL)`)

// mention gives what a noun stands for.
func (h *heard) mention(n phrase.Noun) (mention, bool) {
	i, err := strconv.Atoi(n.Key)
	if err != nil || i >= len(h.mentions) {
		return mention{}, false
	}
	return h.mentions[i], true
}

// nouns hands mentions to the phrase reader; the key of a noun is the index of
// its mention.
type nouns struct {
	lex      *lexicon
	products []Product
	list     []mention
}

// plainWord is what a product is called where its code is not said, "" for what is no sheet.
func (h *nouns) plainWord(m mention) string {
	if m.product < 0 || !looksNamed(m.tag) {
		return ""
	}
	switch h.products[m.product].Class {
	case "membrane", "tape":
		return "sheet"
	}
	return ""
}

// Nouns implements phrase.Lexicon.
func (h *nouns) Nouns(text string) []phrase.Noun {
	var out []phrase.Noun
	for _, m := range h.lex.metalBetween(text, h.lex.find(text)) {
		out = append(out, phrase.Noun{Span: phrase.Span{Start: m.start, End: m.end}, Key: strconv.Itoa(len(h.list)), Kind: "material", As: h.plainWord(m)})
		h.list = append(h.list, m)
	}
	return out
}

// metalBetween adds a metal by a short word that could be more ("SS", "304") where it
// stands right before what it lies between: "SS between gasket and sheet".
func (l *lexicon) metalBetween(text string, found []mention) []mention {
	for _, at := range putBetween.FindAllStringSubmatchIndex(text, -1) {
		start, end := at[2], at[3]
		if slices.ContainsFunc(found, func(m mention) bool { return m.start < end && start < m.end }) {
			continue
		}
		alone, sheet := l.named(text[start:end]), l.named(text[start:end]+" sheet")
		if len(alone) != 1 || !alone[0].Weak || len(sheet) != 1 || sheet[0].Class != "flashing-metal" {
			continue
		}
		m := mention{start: start, end: end, product: -1, mat: sheet[0]}
		m.mat.Text = text[start:end]
		found = append(found, m)
	}
	slices.SortStableFunc(found, func(a, b mention) int { return a.start - b.start })
	return found
}

// putBetween is a word at the head of a clause, or after a thickness, before what it lies
// between.
var putBetween = regexp.MustCompile(`(?i)(?:^|[;.,:]\s+|\d\s*(?:mm|ga\.?|mils?)?\s+)([\w./]{2,6})\s+(?:(?:is|set|placed|laid|lies|runs)\s+)*between\s`)
