package schedule

import (
	"fmt"
	"regexp"

	"abut/internal/phrase"
)

// spreadFigure tells the wet film of what is put on by how far it goes: "1 gal covers
// 100 sf", "26 sf/gal", "1.5 L/m2". Between stands between a volume and the area that
// it covers, or an area and its volume; Not is in the words of another liquid or of
// what was bought.
type spreadFigure struct {
	Between string `json:"between"`
	Not     string `json:"not"`
	between *regexp.Regexp
	not     *regexp.Regexp
}

func (w *spreadFigure) compile() (err error) {
	if w.between, err = regexp.Compile("(?i)^" + w.Between + "$"); err != nil {
		return fmt.Errorf("spread.between: %w", err)
	}
	if w.not, err = regexp.Compile("(?i)" + w.Not); err != nil {
		return fmt.Errorf("spread.not: %w", err)
	}
	return nil
}

// sized takes the figures of joints, fasteners and wet films from the words of a cell.
func (r *reader) sized(l *Line, c source) {
	if !hasWord(r.words.figures.SizedSlots, c.slot) {
		return
	}
	for _, sentence := range r.words.parted(c.text) {
		r.figuresNamed(l.Figures, sentence, c.at, r.words.figures.Sized)
		r.wetSpread(l, sentence, c.at)
	}
}

// wetSpread takes the wet film that a volume over an area makes: a liter to the square
// meter is a millimeter.
func (r *reader) wetSpread(l *Line, sentence string, at At) {
	w := &r.words.figures.Spread
	if w.not.MatchString(sentence) {
		return
	}
	list := r.phrase.Quantities(sentence, "")
	for i, q := range list {
		if q.Min == nil || q.Max == nil || q.Bound != "" {
			continue
		}
		f := figureTold(q, at)
		switch {
		case q.Kind == "spread":
		case q.Kind == "coverage" && *q.Min > 0:
			thick, thin := 1 / *q.Min, 1 / *q.Max
			f.Min, f.Max = &thin, &thick
		case i+1 < len(list) && w.parted(sentence, q, list[i+1]):
			mm := overArea(q, list[i+1])
			f.Min, f.Max, f.Text = &mm, &mm, sentence[q.Start:list[i+1].End]
		default:
			continue
		}
		keep(l.Figures, "wet_mm", f)
	}
}

// parted holds for a volume and an area, in either order, with words of covering between.
func (w *spreadFigure) parted(sentence string, a, b phrase.Quantity) bool {
	kinds := a.Kind + " " + b.Kind
	return (kinds == "volume area" || kinds == "area volume") && b.Min != nil && *a.Min > 0 && *b.Min > 0 &&
		w.between.MatchString(sentence[a.End:b.Start])
}

// overArea is the volume in liters over the area in square meters, in millimeters.
func overArea(a, b phrase.Quantity) float64 {
	if a.Kind == "area" {
		a, b = b, a
	}
	return *a.Min / *b.Min
}
