package schedule

import "abut/internal/phrase"

// thickBeside reads the thickness that a build-up told in one cell gives of a layer: the
// length that stands right beside it ("4 in. thick I-2", "block (190 mm)"), or that of the
// studs it lies between. Where one stands on either side, nothing tells which is meant, and
// a range is none.
func (r *reader) thickBeside(text string, at phrase.Span) *float64 {
	var found *phrase.Quantity
	for _, q := range r.phrase.Quantities(text, "length") {
		before := q.End <= at.Start && r.words.thickBefore.MatchString(text[q.End:at.Start])
		after := q.Start >= at.End && r.words.thickAfter.MatchString(text[at.End:q.Start])
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
