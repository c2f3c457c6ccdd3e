package schedule

import (
	"strings"

	"abut/internal/regexp"
)

// bareFilm is a film in millimeters without its unit, set off in a cell of laps: "1.2 dry;
// 100 over base sheet". No lap is so small (common practice).
var bareFilm = regexp.MustCompile(`(?i)(^|[,;]\s*)([0-5]\.\d+)(\s+(?:dry|wet|dft|wft))?(?: film)?(?:\s+min(?:imum|\.)?)?\s*(?:[,;]\s*|$)`)

// filmTold are words of what is put on in coats.
var filmTold = regexp.MustCompile(`(?i)\b(?:coats?|passes|dry|wet|dft|wft|film|fabric|fleece|mesh|reinforc\w*)\b`)

// filmAmongLaps takes the film of a liquid out of a cell of laps and ends in millimeters
// ("1.5 dry, 2 coats"), which an office without a column of films tells there. A bare
// figure beside no word of coats stays: it may be a slip.
func (r *reader) filmAmongLaps(l *Line, c source) source {
	m := bareFilm.FindStringSubmatchIndex(c.text)
	if m == nil || !strings.EqualFold(c.unit, "mm") || !filmTold.MatchString(c.text) {
		return c
	}
	told := c
	told.text = c.text[m[4]:m[5]]
	if f, ok := r.figure(told, "length"); ok && f.Min != nil {
		f.Text = strings.TrimSpace(c.text[m[4]:max(m[5], m[7])])
		keep(l.Figures, "thickness_mm", f)
	}
	c.text = strings.TrimSpace(c.text[:m[3]] + c.text[m[1]:])
	return c
}
