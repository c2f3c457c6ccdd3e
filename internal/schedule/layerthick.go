package schedule

import (
	"regexp"

	"abut/internal/phrase"
)

// What may stand between a layer of a build-up and its thickness, before the layer
// ("4 in. thick I-2", "100 mm rigid wool") and after it ("MW 4 in.", "block (190 mm)").
// A short word, as in "90 mm studs with B-2", leads to another thing.
var (
	thickBefore = regexp.MustCompile(`^[\s-]*(?:of\s+)?(?:\pL[\pL-]{4,}\s+){0,2}$`)
	thickAfter  = regexp.MustCompile(`^\s*[,:=(@–-]?\s*$`)
)

// thickBeside reads the thickness that a build-up told in one cell gives of a layer: the
// length that stands right beside it. Where one stands on either side, nothing tells which
// is meant, and a range is none.
func (r *reader) thickBeside(text string, at phrase.Span) *float64 {
	var found *phrase.Quantity
	for _, q := range r.phrase.Quantities(text, "length") {
		before := q.End <= at.Start && thickBefore.MatchString(text[q.End:at.Start])
		after := q.Start >= at.End && thickAfter.MatchString(text[at.End:q.Start])
		if !before && !after || q.Kind != "length" || q.Unit == "" {
			continue
		}
		if found != nil {
			return nil
		}
		found = &q
	}
	if found == nil || found.Disagree || found.Bound != "" || found.Min == nil || found.Max == nil || *found.Min != *found.Max {
		return nil
	}
	return found.Min
}
