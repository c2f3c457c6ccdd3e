package schedule

import (
	"cmp"
	"fmt"
	"slices"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// wordFigures tell which figures the words around them name, from
// policies/knowledge/reading.json: of product data, of rows, and of rows where
// the words tell what was measured and not what is allowed. Sized are those of joints,
// fasteners and wet films, which stand in the cells of SizedSlots.
type wordFigures struct {
	Products []wordFigure `json:"products"`
	Lines    []wordFigure `json:"lines"`
	Measured []wordFigure `json:"measured"`
	Sized    []wordFigure `json:"sized"`

	SizedSlots []string     `json:"sized_slots"`
	Spread     spreadFigure `json:"spread"`

	air []wordFigure // those of Measured for the air permeance of a material, which rows order too
}

// wordFigure is one of them. In Words # stands for the figure. A number without
// a unit that Bare matches has the unit Unit, or else the one that the row or product
// data writes for the figure Like: "kettle at 195".
type wordFigure struct {
	Key   string `json:"key"`
	Kind  string `json:"kind"`
	Words string `json:"words"`
	Not   string `json:"not"` // words that make it another figure
	Bare  string `json:"bare"`
	Unit  string `json:"unit"`
	Like  string `json:"like"`
	Most  bool   `json:"most"`  // an upper end alone is the figure: "up to 240 F"
	Exact bool   `json:"exact"` // a least or most is none: "2 in. min"
	words *regexp.Regexp
	not   *regexp.Regexp
	bare  *regexp.Regexp
}

func (w *wordFigures) compile() (err error) {
	if err = w.Spread.compile(); err != nil {
		return err
	}
	for _, list := range [][]wordFigure{w.Products, w.Lines, w.Measured, w.Sized} {
		for i := range list {
			one := &list[i]
			for into, words := range map[**regexp.Regexp]string{&one.words: one.Words, &one.not: one.Not, &one.bare: one.Bare} {
				if words == "" {
					continue
				}
				if *into, err = regexp.Compile("(?i)" + words); err != nil {
					return fmt.Errorf("%s: %w", one.Key, err)
				}
			}
		}
	}
	w.air = slices.DeleteFunc(slices.Clone(w.Measured), func(one wordFigure) bool { return one.Key != figureOf["air"].key })
	return nil
}

// wordsAround is how far from a figure the words that name it may stand, in bytes
// on either side: further than any sentence is long.
const wordsAround = 400

// names holds where the words around a span of the text name the figure there.
func (one *wordFigure) names(text string, start, end int) bool {
	text = text[max(0, start-wordsAround):start] + "#" + text[end:min(len(text), end+wordsAround)]
	return one.words.MatchString(text) && (one.not == nil || !one.not.MatchString(text))
}

// figuresNamed takes the figures of a text that its words name, where nothing
// states them yet.
func (r *reader) figuresNamed(figures map[string]Figure, text string, at At, list []wordFigure) {
	stated := r.phrase.Quantities(text, "")
	for i := range list {
		one := &list[i]
		for _, list := range [][]phrase.Quantity{stated, r.bareFigures(one, text, stated, figures[one.Like].Unit)} {
			for _, q := range list {
				if q.Kind == one.Kind && (q.Min != nil || one.Most && q.Max != nil) && !(one.Exact && q.Bound != "") && one.names(text, q.Start, q.End) {
					keep(figures, one.Key, figureTold(q, at))
				}
			}
		}
	}
}

// bareFigures are the numbers of a text that have no unit of their own, read in
// the unit that the figure usually has, or else in that of the row for one like it.
func (r *reader) bareFigures(one *wordFigure, text string, stated []phrase.Quantity, like string) []phrase.Quantity {
	if one.bare == nil {
		return nil
	}
	unit := cmp.Or(one.Unit, like)
	if unit == "" {
		unit = r.unitStated(one.Like)
	}
	if unit == "" {
		return nil
	}
	var out []phrase.Quantity
	for _, at := range one.bare.FindAllStringIndex(text, -1) {
		own := func(q phrase.Quantity) bool { return q.Unit != "" && q.Start <= at[0] && at[0] < q.End }
		if slices.ContainsFunc(stated, own) {
			continue
		}
		for _, q := range r.phrase.Quantities(text[at[0]:at[1]]+" "+unit, "") {
			q.Span = phrase.Span{Start: at[0], End: at[1]}
			out = append(out, q)
		}
	}
	return out
}

// unitStated is the unit that product data writes for a figure, "" where none
// has it.
func (r *reader) unitStated(key string) string {
	for i := range r.sched.Products {
		if f := r.sched.Products[i].Figures[key]; f.Unit != "" {
			return f.Unit
		}
	}
	return ""
}
