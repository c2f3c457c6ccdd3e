package schedule

import (
	"cmp"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// forbidWords are how a note forbids what a figure and its bound describe, from
// policies/knowledge/limits.json: "no layer under 60 ng", "do not prime concrete less than 14
// days old", "sheets above 1 perm may not be used".
type forbidWords struct {
	None    string `json:"none"`    // before a figure, whatever its bound
	Not     string `json:"not"`     // before one with a comparison
	After   string `json:"after"`   // after such a one
	Compare string `json:"compare"` // the comparisons: "less than 14 days", and not "14 days min."

	none, not, after, compare *regexp.Regexp
}

func (f *forbidWords) compile() (err error) {
	for _, one := range []struct {
		pattern string
		to      **regexp.Regexp
	}{{f.None, &f.none}, {f.Not, &f.not}, {f.After, &f.after}, {f.Compare, &f.compare}} {
		if *one.to, err = regexp.Compile("(?i)" + one.pattern); err != nil {
			return err
		}
	}
	return nil
}

// forbids holds where the words around a figure forbid what its bound describes, so that
// what is asked is bound the other way. What is said before the figure before it is said of
// that: "no less than 1 mm thick and lapped no less than 100 mm".
func (f *forbidWords) forbids(q phrase.Quantity, in around) bool {
	sentence := in.sentence
	before, after := in.before[:len(in.before)-(q.End-q.Start)], sentence[q.End:]
	if f.none.MatchString(before) {
		return true
	}
	return f.compare.MatchString(sentence[q.Start:q.End]) && (f.not.MatchString(before) || f.after.MatchString(after))
}

// otherBound is the bound of what is left where one is forbidden.
var otherBound = map[string]string{"max": "min", "min": "max"}

// boundTo sets the least or the most that a figure asks for.
func (r *reader) boundTo(l *Limit, rule limitFigure, q phrase.Quantity, in around) {
	bound := cmp.Or(q.Bound, boundOfNoun(in.after), rule.Bound)
	if q.Bound == "" && rule.Ranges && differs(q.Min, q.Max) {
		l.Min, l.Max = q.Min, q.Max // "between 60 and 600 ng"
		return
	}
	if rule.Least != nil && q.Max != nil { // of "-40 to 82 C in service" the upper end
		q.Min = q.Max
	}
	if turned := otherBound[q.Bound]; turned != "" && r.limitRules.Forbids.forbids(q, in) {
		bound = turned
	}
	if rule.Fixed && !r.words.hasAny(in.sentence, rule.Rated) {
		bound = rule.Bound
	}
	if value := firstOf(q.Min, q.Max); bound == "min" || rule.Bound == "min" && bound != "max" {
		l.Min = value
	} else {
		l.Max = firstOf(q.Max, value)
	}
}

// exception begins what a sentence takes out of what it asks for: "all laps 2 in. except end
// laps, which are 4 in."
var exception = regexp.MustCompile(`(?i)[\s,(]+\b(?:except(?:ing)?|save|other than|excluding|apart from)\b`)

// upToException cuts off what a text takes out of what it tells.
func upToException(text string) string {
	if at := exception.FindStringIndex(text); at != nil {
		return text[:at[0]]
	}
	return text
}

// boundOfNoun is the bound that follows what a figure is of: "6 months exposure min.".
func boundOfNoun(after string) string {
	if m := nounBound.FindStringSubmatch(after); m != nil {
		return strings.ToLower(m[1])
	}
	return ""
}

var nounBound = regexp.MustCompile(`(?i)^\W*(?:uv |sun )?(?:exposure|laps?|overlaps?|thick(?:ness)?|permeance|dry)[,\s]+(min|max)(?:imum)?\b(?:\W*$|\.?\W+\D)`)
