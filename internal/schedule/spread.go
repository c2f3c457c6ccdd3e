package schedule

import (
	"fmt"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// spreadFigure tells the wet film of what is put on by how far it goes: "1 gal covers
// 100 sf", "26 sf/gal", "1.5 L/m2". Between stands between a volume and the area that
// it covers, or an area and its volume; Not is in the words of another liquid or of
// what was bought. Bare is an area without its unit after a volume, which is the one of
// BareUnits by the unit of the volume, where the film is one that can be: within BareMM.
type spreadFigure struct {
	Between   string            `json:"between"`
	Not       string            `json:"not"`
	Bare      string            `json:"bare"`
	BareUnits map[string]string `json:"bare_units"`
	BareMM    [2]float64        `json:"bare_mm"`
	between   *regexp.Regexp
	not       *regexp.Regexp
	bare      *regexp.Regexp
}

func (w *spreadFigure) compile() (err error) {
	if w.between, err = regexp.Compile("(?i)^" + w.Between + "$"); err != nil {
		return fmt.Errorf("spread.between: %w", err)
	}
	if w.not, err = regexp.Compile("(?i)" + w.Not); err != nil {
		return fmt.Errorf("spread.not: %w", err)
	}
	if w.bare, err = regexp.Compile("(?i)" + w.Bare); err != nil {
		return fmt.Errorf("spread.bare: %w", err)
	}
	return nil
}

// sized takes the figures of joints, fasteners and wet films from the words of a cell.
func (r *reader) sized(l *Line, c source) {
	if !hasWord(r.words.figures.SizedSlots, c.slot) {
		return
	}
	for _, sentence := range r.words.parted(c.text) {
		if !strings.ContainsAny(sentence, "0123456789") && len(r.phrase.Quantities(sentence, "")) == 0 {
			continue
		}
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
			mm, end := r.overBare(sentence, q)
			if end == 0 {
				continue
			}
			f.Min, f.Max, f.Text = &mm, &mm, sentence[q.Start:end]
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

// overBare is the film of a volume over an area that has no unit ("5 gal pail covered about
// 320"), and where the words for it end, 0 for none: gallons go by square feet, and liters
// by square meters.
func (r *reader) overBare(sentence string, q phrase.Quantity) (mm float64, end int) {
	w := &r.words.figures.Spread
	found := w.bare.FindStringSubmatchIndex(sentence[q.End:])
	unit := w.BareUnits[strings.ToLower(strings.Trim(q.Unit, ". "))]
	if q.Kind != "volume" || found == nil || unit == "" {
		return 0, 0
	}
	for _, area := range r.phrase.Quantities(sentence[q.End+found[2]:q.End+found[3]]+" "+unit, "area") {
		if mm = overArea(q, area); w.BareMM[0] <= mm && mm <= w.BareMM[1] {
			return mm, q.End + found[3]
		}
	}
	return 0, 0
}

// overArea is the volume in liters over the area in square meters, in millimeters.
func overArea(a, b phrase.Quantity) float64 {
	if a.Kind == "area" {
		a, b = b, a
	}
	return *a.Min / *b.Min
}
