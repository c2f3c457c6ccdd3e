package schedule

import (
	"slices"
	"strings"
	"unicode/utf8"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// ruleOf is the kind of limit that a figure of a sentence states, nil for none: of
// several that the sentence has words for, that whose words stand by the figure
// ("4 in. laps, 2 in. end dams").
func (r *reader) ruleOf(q phrase.Quantity, in around) *limitFigure {
	var found *limitFigure
	best := -1
	for i := range r.limitRules.Figures {
		rule := &r.limitRules.Figures[i]
		if !r.states(*rule, q, in) {
			continue
		}
		near, ends := 0, ",;."
		if rule.Close {
			ends += ":" // "laps 3 in.: transitions bear 4 in."
		}
		switch {
		case r.words.hasAny(upTo(ends, pastUnit(in.sentence[:q.End], in.after)), rule.Words):
			near = 2
		case r.words.hasAny(in.before, rule.Words):
			near = 1
		}
		if rule.Close && near < 2 && !r.tellsRight(*rule, q, in.sentence) && !r.words.hasAny(in.before[strings.LastIndexAny(in.before, ",;")+1:], rule.Words) {
			continue
		}
		if near > best {
			found, best = rule, near
		}
	}
	return found
}

// tellsRight holds where the word right before a figure, or right after it, tells what it
// is of: "laps 6 in., up 8 in.", "8 in. min up and behind the sheet".
func (r *reader) tellsRight(rule limitFigure, q phrase.Quantity, sentence string) bool {
	after := boundAfter.ReplaceAllString(sentence[q.End:], "")
	return (r.words.hasAny(lastWords(sentence[:q.Start], 1), rule.Right) || r.words.hasAny(firstWords(after, 1), rule.Right)) && r.words.hasAny(sentence, rule.RightOf)
}

// boundAfter is the point of a unit and the bound right after a figure, neither of which
// ends a sentence: "8 in. min. up the backing".
var boundAfter = regexp.MustCompile(`(?i)^\.?(?:\s*(?:min|max)(?:imum)?\b\.?)?`)

// pastUnit is what follows the unit of a figure and its bound. The point of a unit before
// the code of the next product ends what is said of this one: "joints 6 in. FM-2 turned up
// 4 in."
func pastUnit(figure, after string) string {
	switch {
	case !nextCode.MatchString(after):
	case strings.HasSuffix(figure, "."):
		return "." + after
	case after[0] == '.':
		return after
	}
	return boundAfter.ReplaceAllString(after, "")
}

var nextCode = regexp.MustCompile(`^\.?\s+[A-Z]{1,4}-\d{1,3}[A-Za-z]?\b`)

// states tells whether a figure of a sentence is a limit of the kind.
func (r *reader) states(rule limitFigure, q phrase.Quantity, in around) bool {
	in.after = lapAt.ReplaceAllString(in.after, " $1") // "6 in. lap at ends"
	words := rule.Words
	if film := filmLap(q) && rule.Quantity == "length"; film && len(rule.Films) == 0 {
		return false // "AB sheet: 40 mil min., 3 in. laps"
	} else if film { // what is told in mil is the thickness of a film, whatever stands about it
		if r.words.hasAny(in.before+" "+firstWords(upTo(",;.", in.after), 4), rule.FilmsBy) {
			return false
		}
		rule.Unless, rule.After, rule.Before = rule.Films, nil, nil
	}
	if r.ofOtherKind(rule, q, in) {
		return false
	}
	if r.tellsRight(rule, q, in.sentence) {
		words = nil // they tell it alone
	}
	if rule.Quantity != q.Kind || !r.fits(in.sentence, words, rule.Unless) || r.words.hasAny(lastWords(in.sentence[:q.Start], 1), rule.NotRight) || r.words.hasAny(firstWords(upToException(in.after), 2), rule.After) && !r.words.hasAny(firstWords(in.after, 3), rule.AfterBut) && !(len(rule.Before) > 0 && ofNextFigure(in)) {
		return false
	}
	lead := in.sentence[:q.Start]
	if rule.Close { // what is said of the figure before it is not said of this one: "laps 6 in., 8 in. up the wall"
		lead = lead[strings.LastIndexAny(lead, ",;")+1:]
	}
	if lead = lastWords(lead, 5); r.words.hasAny(lead, rule.Before) && !r.words.hasAny(lead, rule.Though) && !(len(rule.Beside) > 0 && joined(in)) {
		return false
	}
	if len(rule.Beside) > 0 && !r.words.hasAny(lastWords(whichAre.ReplaceAllString(in.sentence[:q.Start], ""), 2), rule.Beside) && !r.words.hasAny(firstWords(atLead.ReplaceAllString(in.after, ""), 1), rule.Beside) && !r.opens(rule.Beside, in.before[:len(in.before)-(q.End-q.Start)]) {
		return false
	}
	if rule.Bounded && q.Bound == "" {
		return false
	}
	if value := firstOf(q.Max, q.Min); rule.Least != nil && value != nil && *value < *rule.Least {
		return false
	}
	return !rule.Subject || r.words.hasAny(firstWords(r.afterNames(subjectBefore(in.sentence, q.Start)), 5), rule.Words) ||
		r.words.hasAny(firstWords(in.sentence, 5), rule.Words) ||
		r.toldOf(rule, q, in.sentence) || r.asksFor(rule, q, in.sentence)
}

// ofOtherKind holds for a figure of a sentence that also asks for something of another kind,
// where the words of this one do not stand by it: "1 mm thick and lapped 100 mm".
func (r *reader) ofOtherKind(rule limitFigure, q phrase.Quantity, in around) bool {
	return r.words.hasAny(in.sentence, rule.Others) && !r.words.hasAny(in.before, rule.Words) &&
		!r.words.hasAny(upTo(",;.", pastUnit(in.sentence[:q.End], in.after)), rule.Words)
}

// asksFor holds for a sentence that asks for something by a word right before the figure or
// right after it, whatever it begins with: "wraps shall be lapped a minimum of 6 in.", "provide
// 200 mm laps". What goes onto something else is no lap over its like.
func (r *reader) asksFor(rule limitFigure, q phrase.Quantity, sentence string) bool {
	before := sentence[:q.Start]
	if len(rule.Beside) > 0 || !asking.MatchString(before) && !ruling.MatchString(sentence) || ontoWord.MatchString(before) {
		return false
	}
	after := beforeNoun.ReplaceAllString(boundAfter.ReplaceAllString(sentence[q.End:], ""), "")
	return r.words.hasAny(lastWords(betweenVerb.ReplaceAllString(before, ""), 1), rule.Words) || r.words.hasAny(firstWords(after, 1), rule.Words)
}

var (
	asking      = regexp.MustCompile(`(?i)\b(?:shall|must|to|will|should|need|needs|requires?|required|provide|allow|min|minimum|not)\b`)
	ruling      = regexp.MustCompile(`(?i)\b(?:shall|must|will)\b`)
	ontoWord    = regexp.MustCompile(`(?i)\bonto\b`)
	betweenVerb = regexp.MustCompile(`(?i)(?:\s+(?:of|to|be|is|are|shall|must|should|will|at|a|the|by|with|less than|under|below|short of))*\s*$`)
	beforeNoun  = regexp.MustCompile(`(?i)^\W*(?:of\s+)?`)
)

// lapAt is the noun of a lap between its figure and where it is.
var lapAt = regexp.MustCompile(`(?i)^\W*(?:over)?laps?\s+(at|on)\b`)

// whichAre goes on with what a sentence has just named: "except end laps, which are 4 in."
var whichAre = regexp.MustCompile(`(?i),?\s+(?:which|that)\s+(?:is|are|shall be|must be|need|require|have)\s*$`)

// subjectBefore is the sentence from where it tells of a figure: without the number of the
// note, and after the colon of the materials that it is about ("2. Sheets, tapes: laps 3 in.").
func subjectBefore(sentence string, figure int) string {
	from := 0
	if m := numbered.FindStringIndex(sentence); m != nil && m[1] <= figure {
		_, letter := utf8.DecodeLastRuneInString(sentence[:m[1]])
		from = m[1] - letter
	}
	if i := strings.LastIndex(sentence[from:figure], ": "); i >= 0 {
		from += i + 2
	}
	return sentence[from:]
}

// afterNames is a sentence without the products at its start, but for the last of them:
// "FM-1, FM-2, FM-3 and FM-4 side laps 2 in." begins with laps as "FM-4 side laps 2 in." does.
func (r *reader) afterNames(sentence string) string {
	sentence = strings.TrimSpace(sentence)
	named := r.lex.findTags(sentence) // the longest first
	slices.SortFunc(named, func(a, b mention) int { return a.start - b.start })
	last, end := 0, 0
	for _, m := range named {
		if m.product < 0 || m.start > 0 && !nameGoesOn.MatchString(sentence[end:m.start]) {
			break
		}
		last, end = m.start, m.end
	}
	return sentence[last:]
}

// nameGoesOn is what parts the names of a list.
var nameGoesOn = regexp.MustCompile(`(?i)^\s*(?:[,/&+]|,?\s*\b(?:and|or)\b)\s*$`)

// toldOf holds for a sentence that begins with what it asks something of, and has the
// word for that right before the figure: "Sheets and tapes that stick lap 3 in.", "has laps of 6 in.".
func (r *reader) toldOf(rule limitFigure, q phrase.Quantity, sentence string) bool {
	if !r.words.hasAny(lastWords(ofEnd.ReplaceAllString(sentence[:q.Start], ""), 1), rule.Words) {
		return false
	}
	for _, words := range r.limitRules.Roles {
		if r.words.hasAny(firstWords(sentence, 2), words) {
			return true
		}
	}
	return false
}

// ofEnd is the little word between a lap and its figure: "has laps of 6 in.".
var ofEnd = regexp.MustCompile(`(?i)\s+of\s*$`)

// listed is a comma after a figure: what follows is of the next one.
var listed = regexp.MustCompile(`^[\])]?\.?\s*[,;]`)

// ofNextFigure holds for words after a figure that are of the next one: what a comma parts
// from it, and a lap that "and" goes on with ("side laps 2 in. and end laps 6 in.").
func ofNextFigure(in around) bool {
	return listed.MatchString(in.after) || lapGoesOn.MatchString(in.after)
}

var lapGoesOn = regexp.MustCompile(`(?i)^\.?\s*(?:and|&)\s+(?:the\s+)?(?:side|end)[- ]?(?:over)?laps?\b`)

// joined holds for a figure of a lap that "and" joins to the figure before it; without one
// before it, the two are of one figure ("side and end laps 3 in.").
func joined(in around) bool {
	return !strings.HasPrefix(in.sentence, in.before) && lapGoesOn.MatchString(in.before)
}

// opens holds for the words before a figure, since the one before it, where the last part of
// them begins with a phrase of several words: "End laps of all sheets are to be 6 in.".
func (r *reader) opens(phrases []string, lead string) bool {
	if at := partStart.FindAllStringIndex(lead, -1); len(at) > 0 {
		lead = lead[at[len(at)-1][1]:]
	}
	return slices.ContainsFunc(phrases, func(p string) bool {
		n := len(strings.Fields(p))
		return n > 1 && r.words.hasAny(firstWords(lead, n), []string{p})
	})
}

// partStart is where a part of a sentence ends that tells of something else.
var partStart = regexp.MustCompile(`(?i)(?:^\.?|[,;:.])\s+(?:(?:and|&)\s+)?`)

// lastWords gives the last n words of a text.
func lastWords(text string, n int) string {
	words := strings.Fields(text)
	return strings.Join(words[max(0, len(words)-n):], " ")
}

// firstWords gives the first n words of a text.
func firstWords(text string, n int) string {
	words := strings.Fields(text)
	return strings.Join(words[:min(n, len(words))], " ")
}

// sameSentence cuts off what a new sentence or part says: the point of "min." may end one.
func sameSentence(text string) string {
	if at := newSentence.FindStringIndex(text); at != nil {
		return text[:at[0]]
	}
	return text
}

var newSentence = regexp.MustCompile(`[.;]\s+\p{Lu}|;`)

// around are the words that a figure of a sentence stands among: all of them,
// those before the first figure, those since the figure before, and those up to
// the next.
type around struct{ sentence, lead, before, after string }

func (r *reader) fits(sentence string, words, unless []string) bool {
	return (len(words) == 0 || r.words.hasAny(sentence, words)) && !r.words.hasAny(sentence, unless)
}

func (r *reader) allOf(sentence string, all [][]string) bool {
	for _, words := range all {
		if !r.words.hasAny(sentence, words) {
			return false
		}
	}
	return true
}
