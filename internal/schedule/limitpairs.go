package schedule

import (
	"abut/internal/phrase"
	"abut/internal/regexp"
)

// Several figures of one sentence: what one says of its kind, its bed or its direction is said
// of the other too.

const endLapKind = "end_lap_mm"

// sameAgain holds for a figure that goes on with the one before it, for another place: "end
// dams 25 mm at pans & 65 mm at trays", "upturns 6 in. minimum, 10 in. at shelf angles".
func sameAgain(last, q phrase.Quantity, in around) bool {
	return last.Kind == q.Kind && filmLap(last) == filmLap(q) &&
		joinsFigures.MatchString(in.before[:len(in.before)-(q.End-q.Start)]) && placeOfFigure.MatchString(in.after)
}

var (
	joinsFigures  = regexp.MustCompile(`(?i)^\W*(?:(?:high|tall)\W+)?(?:(?:at|on|onto|for|in|each)\s[^,;:.]*?)?\s*(?:,|&|/|\band|\bor)\s*$`)
	placeOfFigure = regexp.MustCompile(`(?i)^\W*(?:(?:min|minimum|or more|high|tall)\W+)?(?:at|on|onto|for|in)\s`)
	atTheEnds     = regexp.MustCompile(`(?i)^\W*at\s+(?:the\s+)?ends\b`)
)

// ruleAgain is the kind of such a figure: that of the one before it, but for the ends of what laps.
func (r *reader) ruleAgain(before *limitFigure, in around) *limitFigure {
	if before == nil || before.Kind != "lap_mm" || !atTheEnds.MatchString(in.after) {
		return before
	}
	for i := range r.limitRules.Figures {
		if r.limitRules.Figures[i].Kind == endLapKind {
			return &r.limitRules.Figures[i]
		}
	}
	return before
}

// limitsOfAnother reads what a note tells of something else after a semicolon, by its name and
// figure alone: "Flashings exposed no more than 30 d; wraps 90 d". Where nothing tells what that
// is, it holds nowhere.
func (r *reader) limitsOfAnother(sentence string, last Limit) {
	found := r.figuresOf(sentence)
	if len(found) != 1 || !ofItsPlace.MatchString(sentence[found[0].End:]) {
		return
	}
	names := len(headingWords(sentence[:found[0].Start]))
	if names > mostOfAnother || names > 0 && found[0].Kind == "length" { // "laps 4 in.; drip 1/2 in."
		return
	}
	for _, rule := range r.limitRules.Figures {
		if rule.Kind != last.Kind || rule.Quantity != found[0].Kind || len(rule.Words) == 0 {
			continue
		}
		all := r.sched.Project.Limits
		r.limitsIn(rule.Words[0]+": "+sentence, last.At)
		for _, l := range r.sched.Project.Limits[len(all):] {
			if l.Kind != last.Kind {
				continue
			}
			if l.Text = sentence; l.Scope == "" && len(l.Roles)+len(l.Keys)+len(l.When) == 0 {
				l.Scope = unknownPlace
			}
			all = append(all, l)
		}
		r.sched.Project.Limits = all
		return
	}
}

// ofItsPlace is all that follows such a figure.
var ofItsPlace = regexp.MustCompile(`(?i)^\W*(?:(?:min|max)(?:imum)?\b\W*)?(?:(?:at|on|for|in)\s.*)?$`)

// mostOfAnother is how many words the name of such a thing has at most.
const mostOfAnother = 3

// lapsByDirection names the laps of a sentence that has one for each direction by what they are
// where sheets run across the wall: "6 in. horizontally and 12 in. vertically" are those of the
// sides and those of the ends.
func lapsByDirection(sentence string) string {
	if !anyLap.MatchString(sentence) || !lapsAcross.MatchString(sentence) || !lapsUpright.MatchString(sentence) {
		return sentence
	}
	for _, one := range []struct {
		said *regexp.Regexp
		is   string
	}{{lapsAcross, "side"}, {lapsUpright, "end"}} {
		sentence = one.said.ReplaceAllStringFunc(sentence, func(said string) string {
			if lapNoun.MatchString(said) {
				return one.is + " lap"
			}
			return "at " + one.is + "s"
		})
	}
	return sentence
}

var (
	anyLap      = regexp.MustCompile(`(?i)\b(?:over)?lap(?:s|ped|ping)?\b`)
	lapsAcross  = regexp.MustCompile(`(?i)\bhoriz(?:ontally\b|\b\.?)|\b(?:at |on |in )?(?:all |the )?horizontal (?:joints?|seams?|(?:over)?laps?)\b`)
	lapsUpright = regexp.MustCompile(`(?i)\bvert(?:ically\b|\b\.?)|\b(?:at |on |in )?(?:all |the )?vertical (?:joints?|seams?|(?:over)?laps?)\b`)
	lapNoun     = regexp.MustCompile(`(?i)laps?$`)
)

// bedAfter is the key of what a figure is for on, right after it: "60 mils dry on CMU".
func (r *reader) bedAfter(in around) string {
	if !bedOfFigure.MatchString(in.after) {
		return ""
	}
	if beds := r.bedsIn(upTo(",;:.", in.after)); len(beds) > 0 {
		return beds[0]
	}
	return ""
}

var bedOfFigure = regexp.MustCompile(`(?i)^\W*(?:(?:dry|wet|min|minimum|thick)\W+)*(?:on|over)\s`)

// onBeds marks the figures of one kind that a sentence tells for several beds: which of them a
// row is held to is not known here, and they hold nowhere rather than everywhere.
func onBeds(limits []Limit) {
	for i := range limits {
		for j := range limits {
			a, b := &limits[i], limits[j]
			if a.Kind == b.Kind && a.bed != "" && b.bed != "" && a.bed != b.bed && (differs(a.Min, b.Min) || differs(a.Max, b.Max)) {
				a.Scope = unknownPlace
			}
		}
	}
}
