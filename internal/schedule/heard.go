package schedule

import (
	"regexp"
	"strconv"
	"strings"

	"abut/internal/phrase"
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
		n := &nouns{lex: r.lex}
		plain := r.lex.unboxed(stepMark.ReplaceAllString(text, "$1;$2"))
		h = &heard{clauses: r.phrase.Read(plain, n, phrase.Options{}), mentions: n.list}
		for i := range h.clauses {
			if cl := &h.clauses[i]; plain != text {
				cl.Text = strings.Join(strings.Fields(cl.Text), " ")
			}
		}
		r.heard[text] = h
	}
	return h
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
	lex  *lexicon
	list []mention
}

// Nouns implements phrase.Lexicon.
func (h *nouns) Nouns(text string) []phrase.Noun {
	var out []phrase.Noun
	for _, m := range h.lex.find(text) {
		out = append(out, phrase.Noun{Span: phrase.Span{Start: m.start, End: m.end}, Key: strconv.Itoa(len(h.list)), Kind: "material"})
		h.list = append(h.list, m)
	}
	return out
}
