package schedule

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// letterWords are how a maker's letter that raises a limit is told.
type letterWords struct {
	By     []string `json:"by"`
	Raises []string `json:"raises"`

	Pairs   string `json:"pairs"`   // what leads a list of pairs that letters are at hand for
	Between string `json:"between"` // what stands between the two sides of one
	Lacking string `json:"lacking"` // words of a letter that is not there
	Each    string `json:"each"`    // two sides with their own letter in brackets behind them

	pairs, between, lacking, each *regexp.Regexp
}

func (w *letterWords) compile() (err error) {
	for into, words := range map[**regexp.Regexp]string{&w.pairs: w.Pairs, &w.between: w.Between, &w.lacking: w.Lacking, &w.each: w.Each} {
		if *into, err = regexp.Compile("(?i)" + words); err != nil {
			return fmt.Errorf("letters: %w", err)
		}
	}
	return nil
}

// letterPairs reads a list of the pairs that letters are at hand for: "Letters on file:
// SE-1 and SE-2 with FM-1, FM-3; SE-3 with FM-2". A part that tells two pairs at once, or
// of a letter that is not there, is left out.
func (r *reader) letterPairs(note string, at At) {
	words := &r.limitRules.Letters
	lead := words.pairs.FindStringIndex(note)
	if lead == nil {
		for _, m := range words.each.FindAllStringSubmatch(note, -1) { // "SE-1 is accepted with FM-1 (letter 4 May), SE-2 with FM-2 (letter 9 May)"
			if !words.lacking.MatchString(m[0]) {
				r.letterPair(m[1], m[2], m[0], at)
			}
		}
		return
	}
	list := note[lead[1]:]
	for i, group := range r.words.parted(list) {
		before, _, _ := strings.Cut(list, group)
		if i > 0 && !strings.HasSuffix(strings.TrimSpace(before), ";") {
			r.lettersOnly(list[len(before):], at)
			return // a sentence after the list
		}
		sides := words.between.Split(group, -1)
		if len(sides) != 2 || words.lacking.MatchString(group) {
			continue
		}
		r.letterPair(sides[0], sides[1], group, at)
	}
}

// letterPair keeps the letter for the products of one side with what the other names.
func (r *reader) letterPair(of, with, said string, at At) {
	letter := PairLetter{Products: []string{}, With: []Target{}, Text: strings.Trim(said, " ,"), At: at}
	for _, m := range r.near(&Product{}, of) {
		if m.product >= 0 {
			letter.Products = append(letter.Products, r.sched.Products[m.product].ID)
		}
	}
	for _, m := range r.near(&Product{}, with) {
		letter.With = append(letter.With, r.target(m, with[m.start:m.end], at))
	}
	if len(letter.Products) > 0 && len(letter.With) > 0 {
		r.sched.Project.Letters = append(r.sched.Project.Letters, letter)
	}
}

// lettersOnly keeps that nothing may meet without a letter, which the sentence after the
// list may say like a legend: "No letter = no contact".
func (r *reader) lettersOnly(sentence string, at At) {
	for _, cl := range r.hear(sentence).clauses {
		for _, s := range cl.Signals {
			said := Said{ID: s.ID, No: s.No, Text: s.Text, Slot: "note", At: at}
			if s.ID == "letters_only" && !slices.Contains(r.sched.Project.Signals, said) {
				r.sched.Project.Signals = append(r.sched.Project.Signals, said)
			}
		}
	}
}

// grant is what a sentence tells of a maker's letter: its mark, and from where on it
// tells what it raises. The zero grant is of a sentence about something else.
type grant struct {
	mark  string
	level string // the one level that it holds for: "L12"
	from  int
	told  bool // the figure that it raises was read
}

// grantIn reads the letter of a sentence: "L-2 sheet maker, 22 Oct: extends exposure of
// FM-1 to 90 days".
func (r *reader) grantIn(sentence string) *grant {
	words := r.limitRules.Letters
	if !r.words.hasAny(sentence, words.By) {
		return &grant{}
	}
	from := -1
	for _, raise := range words.Raises {
		if at := strings.Index(strings.ToLower(sentence), raise); at >= 0 && r.words.hasAny(sentence, []string{raise}) && (from < 0 || at < from) {
			from = at
		}
	}
	if from < 0 {
		return &grant{}
	}
	mark := unmarkedLetter
	if m := letterMark.FindStringSubmatch(sentence); m != nil {
		if tag := m[1] + m[2]; !r.isTag(tag) { // "FM-1 maker, 22 Oct: ..." is headed by the sheet
			mark = tag
		}
	}
	return &grant{mark: mark, level: letterLevel.FindString(sentence[:from]), from: from}
}

// unmarkedLetter stands for a letter that the notes give no mark.
const unmarkedLetter = "letter"

// letterMark finds the mark that heads a note, or that follows the word letter.
var letterMark = regexp.MustCompile(`^([A-Z]{1,4}-?\d+[a-z]?)\b|\b(?:[Ll]etter|LETTER)\s+(?:[Nn]o\.?\s*)?([A-Z]{0,4}-?\d[\w-]*)`)

// settles makes a limit the one that the letter raises; it is false for a figure that
// is no limit: what held before, or a condition of the letter ("with sheeting on within
// 14 days"). Without a letter every figure is what the project asks.
func (g *grant) settles(l *Limit, q phrase.Quantity, after string) bool {
	switch {
	case g.mark == "":
		return true
	case g.told || q.Start < g.from:
		return false
	}
	g.told = true
	l.Letter = g.mark
	if at := strings.TrimSpace(atPlace.FindString(after)); at != "" && !wholeProject.MatchString(at) {
		_, place, _ := strings.Cut(at, " ")
		l.Scope = fold(place)
	} else if g.level != "" {
		l.Scope = fold(g.level)
	}
	return true
}

// wholeProject is a place that is all of them.
var wholeProject = regexp.MustCompile(`(?i)^\w+ (?:this|the) (?:project|job|building)\b`)

// letterLevel is the level of a building that a letter names before what it raises.
var letterLevel = regexp.MustCompile(`\bL(?:evel |vl )?\d{1,3}\b`)
