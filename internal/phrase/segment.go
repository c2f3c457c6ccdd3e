package phrase

import "slices"

// segment is a run of tokens between two breaks, brackets left out.
type segment struct {
	at    []int // indexes into the view
	hard  bool  // a sentence, line or semicolon starts it
	comma bool  // a comma starts it
}

// maxDepth is how deep brackets are followed, maxSegment how many tokens are
// read at once: both keep long texts linear.
const (
	maxDepth   = 6
	maxSegment = 200
)

// run cuts the tokens [from, to) into segments and reads each. of is the
// clause that the text in brackets explains.
func (p *clauseParser) run(from, to, of, depth int) {
	s := segment{hard: true}
	state := &context{of: of, prev: -1, depth: depth}
	var asides [][2]int
	flush := func(hard, comma bool) {
		last := p.read(s, state)
		for _, a := range asides {
			p.run(a[0], a[1], p.around(last, p.view[a[0]].Start), depth+1)
		}
		asides, s = asides[:0], segment{hard: hard, comma: comma}
	}
	for i := from; i < to; i++ {
		if end := p.closes[i]; end > i && end < to {
			if !p.hasWord(i+1, end) {
				i = end // "tape (3/16) ends short of it": a date or count within the sentence
				continue
			}
			if depth < maxDepth && p.tells(i+1, end) {
				asides = append(asides, [2]int{i + 1, end})
				for k := i; k < end; k++ {
					p.depth[k] = uint8(depth + 1)
				}
				i = end
			}
			continue
		}
		hard, soft := p.cut(i)
		switch {
		case hard:
			flush(true, false)
		case soft:
			flush(s.hard && len(s.at) == 0, true)
		default:
			if len(s.at) > 0 && (p.breaks[i] || len(s.at) >= maxSegment) {
				flush(false, false)
			}
			s.at = append(s.at, i)
		}
	}
	flush(true, false)
}

// tells holds if the brackets hold a statement of their own: a noun.
func (p *clauseParser) tells(from, to int) bool {
	for i := from; i < to; i++ {
		if p.what[i] > 0 {
			return true
		}
	}
	return false
}

// hasWord holds if the brackets hold more than figures and signs.
func (p *clauseParser) hasWord(from, to int) bool {
	return slices.ContainsFunc(p.view[from:to], func(t token) bool { return t.kind == word })
}

// around is the clause, last or before it, that a byte stands in.
func (p *clauseParser) around(last, at int) int {
	for last > 0 && p.out[last].Start > at {
		last--
	}
	return last
}

// cut tells whether token i ends a sentence (hard) or a part of it (soft).
func (p *clauseParser) cut(i int) (hard, soft bool) {
	t := &p.view[i]
	if t.kind != sign {
		return false, false
	}
	if p.what[i] != 0 {
		return t.low == "." && p.endsFigure(i), false
	}
	switch t.low {
	case ".", ";", "\n", "!", "?", "|":
		return true, false
	case ",", ":", ")", "(", "]", "[":
		return false, true
	case "-", "/":
		spaced := !t.glued && (i+1 == len(p.view) || !p.view[i+1].glued)
		return false, spaced
	}
	return false, false
}

// endsFigure holds for the dot of a unit ("4 in.") that also ends a sentence:
// a word with one capital follows that is no noun.
func (p *clauseParser) endsFigure(i int) bool {
	if i+1 == len(p.view) || p.what[i] > 0 {
		return false
	}
	n := &p.view[i+1]
	return p.what[i+1] == 0 && n.kind == word && n.upper && !n.glued && len(n.low) > 1 && p.text[n.Start+1] >= 'a' && p.text[n.Start+1] <= 'z'
}

// context is what a segment may take from those before it in the sentence.
type context struct {
	of    int // the clause that the brackets around explain
	depth int
	prev  int       // last clause of the sentence, -1 none
	neg   bool      // the segment before began with "no" or "not"
	gap   *Quantity // clearance of the segment before
}
