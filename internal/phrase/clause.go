package phrase

import (
	"cmp"
	"slices"
)

// Noun is a material, tag or mark that the lexicon found. Kind is the
// lexicon's, or "self" for words such as "sheet" or "it" that stand for the
// row's own material where no noun does.
type Noun struct {
	Span
	Key  string `json:"key"`
	Kind string `json:"kind"`
	As   string `json:"as,omitempty"` // the plain word that a code or name stands for ("sheet"), "" for words of their own
}

// Lexicon finds nouns in a text.
type Lexicon interface {
	// Nouns lists the nouns of a text. It is called once a text.
	Nouns(text string) []Noun
}

// Options completes what a text leaves out.
type Options struct {
	Hint  string    // kind and unit of bare figures, as for Quantities
	Order DateOrder // of day and month
	Year  int       // of dates without one
}

// Clause is one statement of a text: nouns, at most one relation, a polarity.
type Clause struct {
	Span
	Text string // the words of the clause with those of its neighbors in the same breath
	// Nouns are those said here; a noun stands in one clause only. Subject and
	// Object are both sides of the relation and may repeat nouns of the clause
	// before. An empty side means the material of the row itself.
	Nouns      []Noun
	Subject    []Noun
	Object     []Noun
	Quantities []Quantity
	Dates      []Date
	Relation   string // on, over, under, behind, lapped_onto, clear_of, ..., "" none
	Polarity   string // yes, no, removed, conditional
	Clearance  *Quantity
	Signals    []Signal
	Of         int // index of the clause that this one explains in brackets, else -1
}

// Read cuts a text into clauses. lex may be nil. The clauses are in the order
// of the text; quantities, dates and signals stand in the clause they are in.
func (r *Reader) Read(text string, lex Lexicon, opt Options) []Clause {
	toks := scan(text)
	if len(toks) == 0 {
		return nil
	}
	nouns := tidy(text, lex)
	toks = atNouns(text, toks, nouns)
	p := &clauseParser{Reader: r, text: text, view: r.view(toks), nouns: nouns}
	p.dates = r.dates(text, toks, dateParser{order: opt.Order, year: opt.Year})
	r.cal.tellVerbs(p.view, p.dates)
	p.quantities = r.quantities(text, toks, p.view, spansOf(p.dates), r.hint(opt.Hint))
	p.negs = r.negations(p.view)
	p.signals = r.withPlainWords(text, p.view, nouns, r.signalsIn(text, p.view, p.negs))
	p.index()
	p.setAside()
	p.run(0, len(p.view), -1, 0)
	slices.SortStableFunc(p.order, func(a, b int) int { return cmp.Compare(p.out[a].Start, p.out[b].Start) })
	return p.finish()
}

func spansOf(dates []Date) []Span {
	var out []Span
	for _, d := range dates {
		out = append(out, d.Span)
	}
	return out
}

// tidy asks the lexicon, and drops nouns outside the text or over each other.
func tidy(text string, lex Lexicon) []Noun {
	if lex == nil {
		return nil
	}
	nouns := slices.Clone(lex.Nouns(text))
	slices.SortStableFunc(nouns, func(a, b Noun) int { return cmp.Compare(a.Start, b.Start) })
	end := 0
	return slices.DeleteFunc(nouns, func(n Noun) bool {
		if n.Start < end || n.End <= n.Start || n.End > len(text) {
			return true
		}
		end = n.End
		return false
	})
}

// clauseParser cuts one text.
type clauseParser struct {
	*Reader
	text       string
	view       []token
	dates      []Date
	quantities []Quantity
	nouns      []Noun
	negs       []hit
	signals    []Signal
	what       []int32 // of each token: 0 free, noun number+1, or -1 in a figure or date
	closes     []int   // of each opening bracket: its closing one, else 0
	breaks     []bool  // a clause starts here
	depth      []uint8 // brackets read on their own around each token
	gone       []Span  // parts that tell of another time or version
	out        []Clause
	order      []int
}

// index marks which tokens belong to nouns, figures and dates, which brackets
// belong together and where words start a clause.
func (p *clauseParser) index() {
	n := len(p.view)
	p.what, p.closes, p.breaks, p.depth = make([]int32, n), make([]int, n), make([]bool, n), make([]uint8, n)
	for _, q := range p.quantities {
		p.mark(q.Span, -1)
	}
	for _, d := range p.dates {
		p.mark(d.Span, -1)
	}
	for i, noun := range p.nouns {
		p.mark(noun.Span, int32(i+1))
	}
	var open []int
	for i := range p.view {
		if p.what[i] != 0 {
			continue
		}
		switch p.view[i].low {
		case "(", "[":
			open = append(open, i)
		case ")", "]":
			if len(open) > 0 {
				p.closes[open[len(open)-1]] = i
				open = open[:len(open)-1]
			}
		}
	}
	for _, h := range p.lang.breaks.find(p.view) {
		if p.what[h.from] == 0 {
			p.breaks[h.from] = true
		}
	}
}

func (p *clauseParser) mark(s Span, as int32) {
	for i := p.tokenAt(s.Start); i < len(p.view) && p.view[i].Start < s.End; i++ {
		p.what[i] = as
	}
}

// tokenAt is the first token that starts at or after a byte.
func (p *clauseParser) tokenAt(at int) int {
	i, _ := slices.BinarySearchFunc(p.view, at, func(t token, at int) int { return t.Start - at })
	return i
}

// finish sorts the clauses and numbers what they explain anew.
func (p *clauseParser) finish() []Clause {
	place := make([]int, len(p.out))
	for to, from := range p.order {
		place[from] = to
	}
	sorted := make([]Clause, len(p.out))
	for i, c := range p.out {
		if c.Of >= 0 {
			c.Of = place[c.Of]
		}
		sorted[place[i]] = c
	}
	return sorted
}
