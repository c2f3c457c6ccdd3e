package phrase

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/regexp"
)

// boundData tells one way to say that a figure is a minimum or a maximum.
type boundData struct {
	Bound  string   `json:"bound"` // min, max, about
	Before []string `json:"before"`
	After  []string `json:"after"`
	Kinds  []string `json:"kinds"` // only with these kinds, empty for all
}

// boundTable finds the words around a figure that make it a bound.
type boundTable struct {
	list          []boundData
	before, after *matcher
	noLimit       *matcher
	difference    *matcher // words after a temperature that make it a difference
}

// figureData is the part of words.json about figures.
type figureData struct {
	Numbers    map[string]float64 `json:"numbers"`
	Labels     []string           `json:"labels"`
	Bodies     []string           `json:"bodies"`
	Bounds     []boundData        `json:"bounds"`
	NoLimit    []string           `json:"no_limit"`
	Difference []string           `json:"difference"`
	Twins      []string           `json:"twins"`
	Ranges     []string           `json:"ranges"`
}

func newBoundTable(d figureData) (*boundTable, error) {
	t := &boundTable{list: d.Bounds, before: newMatcher(), after: newMatcher(), noLimit: newMatcher(), difference: newMatcher()}
	for i, b := range d.Bounds {
		if b.Bound != "min" && b.Bound != "max" && b.Bound != "about" {
			return nil, fmt.Errorf("bound %q is not min, max or about", b.Bound)
		}
		if err := t.before.addAll(i, b.Before); err != nil {
			return nil, err
		}
		if err := t.after.addAll(i, b.After); err != nil {
			return nil, err
		}
	}
	if err := t.noLimit.addAll(0, d.NoLimit); err != nil {
		return nil, err
	}
	return t, t.difference.addAll(0, d.Difference)
}

func (m *matcher) addAll(id int, patterns []string) error {
	for _, p := range patterns {
		if err := m.add(id, p); err != nil {
			return err
		}
	}
	return nil
}

// said is a hit as a span of the text.
type said struct {
	Span
	id int
}

func (m *matcher) spans(view []token) []said {
	var out []said
	for _, h := range m.find(view) {
		if h.to > h.from {
			out = append(out, said{Span{view[h.from].Start, view[h.to-1].End}, h.id})
		}
	}
	return out
}

// bind gives each quantity the bound that the words around it state.
func (t *boundTable) bind(text string, view []token, qs []Quantity) {
	before, after := t.before.spans(view), t.after.spans(view)
	differ := t.difference.spans(view)
	free := 0 // words before this offset belong to an earlier quantity
	for i := range qs {
		q := &qs[i]
		next := len(text) // a sign may be the next figure's: "5 cfm +10 psf"
		if i+1 < len(qs) {
			next = qs[i+1].Start
		}
		if s := t.ahead(text, before, q, free); s != nil {
			q.Bound, q.Start = t.list[s.id].Bound, s.Start
		} else if s := t.behind(text[:next], after, q); s != nil {
			if q.Bound = t.list[s.id].Bound; !aside.MatchString(text[q.End:s.Start]) {
				q.End = s.End // what stands in brackets before the bound is not read with the figure
			}
		}
		if q.Kind == "temperature" && t.differs(text, differ, q) {
			q.toDifference()
		}
		free = q.End
	}
}

func (t *boundTable) fits(id int, q *Quantity) bool {
	kinds := t.list[id].Kinds
	return len(kinds) == 0 || slices.Contains(kinds, q.Kind)
}

// differs holds if the words right after say that q is a difference.
func (t *boundTable) differs(text string, hits []said, q *Quantity) bool {
	for _, s := range hits[firstFrom(hits, q.End):] {
		return blankBetween(text[q.End:s.Start], "")
	}
	return false
}

// ahead finds the longest bound right before the quantity.
func (t *boundTable) ahead(text string, hits []said, q *Quantity, free int) *said {
	for i := firstFrom(hits, max(free, q.Start-longestBound)); i < len(hits) && hits[i].Start < q.Start; i++ {
		s := &hits[i]
		if s.End <= q.Start && t.fits(s.id, q) && blankBetween(text[s.End:q.Start], " of : = a an the ( ") {
			return s
		}
	}
	return nil
}

// behind finds the longest bound right after the quantity.
func (t *boundTable) behind(text string, hits []said, q *Quantity) *said {
	for i := firstFrom(hits, q.End); i < len(hits) && hits[i].Start < q.End+longestBound; i++ {
		s := &hits[i]
		if s.End > len(text) || !t.fits(s.id, q) {
			continue
		}
		if gap := text[q.End:s.Start]; blankBetween(gap, " ( ) , is , as a ") || aside.MatchString(gap) {
			return s
		}
	}
	return nil
}

// aside is a bracket between a figure and its bound, as for the test that it is by: "12 perms
// (E96 B) or more".
var aside = regexp.MustCompile(`^\s*\([^()]*\)\s*$`)

// longestBound is how far, in bytes, the words of a bound may reach.
const longestBound = 48

// firstFrom is the first of the hits, which are in order, from a byte on.
func firstFrom(hits []said, at int) int {
	i, _ := slices.BinarySearchFunc(hits, at, func(s said, at int) int { return s.Start - at })
	return i
}

// blankBetween holds if the gap is short and made of the allowed words only.
func blankBetween(gap, allowed string) bool {
	if len(gap) > 12 {
		return false
	}
	for _, w := range strings.Fields(gap) {
		if w == "." {
			continue
		}
		if !strings.Contains(allowed, " "+strings.ToLower(strings.TrimSuffix(w, "."))+" ") {
			return false
		}
	}
	return true
}
