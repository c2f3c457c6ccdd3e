package schedule

import (
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// limitsIn finds the limits that one sentence states.
func (r *reader) limitsIn(sentence string, at At) {
	if m := r.words.definition.FindStringSubmatch(sentence); m != nil && strings.Contains(m[0], "=") && (r.appliedWet(m[2]) || strings.ContainsAny(m[1], "0123456789")) {
		return // "PW = water-borne primer, 50 g/L" tells of one product
	}
	if before, _, ok := strings.Cut(sentence, " = "); ok && r.coinsWord(before) {
		return // "Tight = under 60 ng"
	}
	if r.limitRules.class.MatchString(sentence) {
		return // "Permeable: 10 perm or more" says what the word means
	}
	if r.tellsUnit(sentence) {
		return // "Permeance: 57.2 ng/(Pa·s·m²) = 1 perm" tells what the unit is worth
	}
	if parts := r.inParallel(sentence); len(parts) > 0 {
		first := len(r.sched.Project.Limits)
		for _, part := range parts {
			r.limitsIn(part, at)
		}
		for i := range r.sched.Project.Limits[first:] {
			r.sched.Project.Limits[first+i].Text = strings.TrimSpace(sentence)
		}
		return
	}
	sentence = r.lapPairOf(sentence, at)
	last, first := 0, len(r.sched.Project.Limits)
	keys := []string{}
	said := strings.TrimSpace(sentence)
	codes, rest := r.wallsIn(withoutExamples(sentence))
	sentence = withPermeance(r.withListUnit(r.withDegrees(r.limitRules.withMillimeters(r.words.wideBoth.ReplaceAllString(sentence, "")))))
	quantities := r.figuresOf(sentence)
	grant := r.grantIn(sentence)
	for i, q := range quantities {
		if q.Start < last {
			continue
		}
		next := len(sentence)
		if i+1 < len(quantities) {
			next = max(q.End, quantities[i+1].Start)
		}
		around := around{sentence, sentence[:quantities[0].Start], sentence[last:q.End], sentence[q.End:next]}
		if rule := r.ruleOf(q, around); rule != nil {
			l := r.limit(*rule, q, around, at)
			l.Text = said
			if len(codes) > 0 {
				l.Scope = fold(strings.Join(codes, ", "))
				own := r.keysIn(r.limitRules.aside.ReplaceAllString(rest, " ")) // "walls with batts (W2): sheet 60 ng or more" asks it of no batt
				own = append(own, r.keysIn(ifMade.FindString(sentence))...)
				l.Keys = slices.DeleteFunc(l.Keys, func(key string) bool {
					return !slices.Contains(own, key) || slices.Contains(r.bedsIn(rest), key) || slices.Contains(r.limitRules.AnySheet, key)
				})
			}
			if rule.Letters && !grant.settles(&l, q, around.after) {
				last = q.End
				continue
			}
			if rule.Keys && len(l.Keys) == 0 && len(l.Roles) == 0 && len(l.said) == 0 {
				l.Keys = slices.Clone(keys) // "SBS sheets 40 mil above grade, 60 mil below grade"
			}
			keys = l.Keys
			if rule.Near {
				r.nearTo(&l, sentence[:q.Start])
			}
			if rule.Keys && len(l.Keys)+len(l.Roles)+len(l.When) == 0 && l.Scope == "" && unreadCode.MatchString(sentence[:q.Start]) {
				l.Scope = unknownPlace // "XW9: 0.2 perm": asked of something that nothing else names
			}
			r.sched.Project.Limits = append(r.sched.Project.Limits, l)
		}
		last = q.End
	}
	endsWithSides(r.sched.Project.Limits[first:])
	r.lapsOfAnySheet(r.sched.Project.Limits[first:])
	ofTheRest(r.sched.Project.Limits[first:])
	apart(r.sched.Project.Limits[first:])
	for _, rule := range r.limitRules.Words {
		if r.allOf(sentence, rule.All) && r.fits(sentence, rule.Any, rule.Unless) && (rule.Says == "" || len(codes) > 0 && r.saysSignal(sentence, rule.Says)) {
			r.sched.Project.Limits = append(r.sched.Project.Limits, Limit{
				Kind: rule.Kind, Text: said, At: at, Roles: []string{}, Keys: []string{}, Over: []string{}, When: []string{},
				Scope: fold(strings.Join(codes, ", ")), // "insulation in W2 and W3: noncombustible only"
			})
		}
	}
}

// unitEquation is all of a sentence that tells what one of a unit is in another, after the name
// of what is measured: "Air: 1 cfm/ft² = 5.08 L/(s·m²)".
var unitEquation = regexp.MustCompile(`^\W*(?:\d{1,2}[.)]?\s+)?(?:[\pL-]+(?: [\pL-]+)?\s*[:,]\s+)?` +
	`([\d.,]+\s*[^\d\s=][^=:;]*?)\s*=\s*([\d.,]+\s*[^\d\s=][^=:;]*?)\.?\s*$`)

// tellsUnit holds for a sentence that converts one of a unit and asks for nothing. A bound
// beside either figure makes it a limit again: "Permeance: max. 1 perm = 57.2 ng".
func (r *reader) tellsUnit(sentence string) bool {
	m := unitEquation.FindStringSubmatch(sentence)
	if m == nil {
		return false
	}
	one := false
	for _, side := range m[1:] {
		q := r.phrase.Quantities(side, "")
		if len(q) != 1 || q[0].Unit == "" || q[0].Bound != "" {
			return false
		}
		figure, _, _ := strings.Cut(strings.TrimSpace(side), " ")
		one = one || figure == "1"
	}
	return one && !boundWord.MatchString(sentence)
}

// boundWord makes a limit of the figures beside it.
var boundWord = regexp.MustCompile(`(?i)\b(?:max|min|maximum|minimum|most|least|under|over|not|` +
	`limit|limits|shall|must)\b`)

// ifMade is what a sheet must be of for what a note asks of it on the walls that it names
// before its colon: "Sheets on W2, if asphaltic: 40 mil".
var ifMade = regexp.MustCompile(`(?i)\b(?:if|where|when)\s+(?:(?:it|they|the sheets?|this) (?:is|are) )?[\pL-]+(?: (?:or|and) [\pL-]+)?(?: sheets?| membranes?)?\s*:`)

// saysSignal holds for a sentence that says a signal, and not of a case.
func (r *reader) saysSignal(sentence, id string) bool {
	return slices.ContainsFunc(r.hear(sentence).clauses, func(cl phrase.Clause) bool {
		return slices.ContainsFunc(cl.Signals, func(s phrase.Signal) bool { return s.ID == id && !s.No && !s.If })
	})
}

// numbered is a note that begins with its number, set off by a gap, a point or a
// bracket: "4  Days in the sun by the data".
var numbered = regexp.MustCompile(`^\d{1,2}(?:[.)]\s+|\s{2,})\pL`)

// figuresOf lists the quantities of a note, but not its own number.
func (r *reader) figuresOf(note string) []phrase.Quantity {
	list := r.phrase.Quantities(note, "")
	if len(list) > 0 && list[0].Start == 0 && numbered.MatchString(note) {
		return list[1:]
	}
	return list
}

// apart marks the limits of one sentence that differ although nothing that is
// understood tells what each is for ("45 days from April on, 75 in winter"): they
// hold nowhere, rather than everywhere.
func apart(limits []Limit) {
	open := map[string][]*Limit{}
	for i := range limits {
		if l := &limits[i]; len(l.Roles)+len(l.Keys)+len(l.When) == 0 && l.Scope == "" {
			open[l.Kind] = append(open[l.Kind], l)
		}
	}
	for _, same := range open {
		for _, l := range same[1:] {
			if differs(l.Max, same[0].Max) || differs(l.Min, same[0].Min) {
				for _, l := range same {
					l.Scope = unknownPlace
				}
				break
			}
		}
	}
}

// differs holds for two bounds that are not the same figure, told in two units or
// not; a bound that only one of them has is no other figure.
func differs(a, b *float64) bool {
	return a != nil && b != nil && math.Abs(*a-*b) > sameFigure*math.Abs(*b)
}

// sameFigure is how far rounding takes one figure in two units apart.
const sameFigure = 0.04

// appliedWet holds for words that describe a primer, sealant or adhesive.
func (r *reader) appliedWet(text string) bool {
	for _, m := range r.lex.named(text) {
		switch r.words.roleByClass[m.Class] {
		case "primer", "sealant", "adhesive":
			return true
		}
		if slices.Contains(m.Traits, "water-borne") || slices.Contains(m.Traits, "solvent-borne") {
			return true
		}
	}
	return false
}

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
	words := rule.Words
	if r.tellsRight(rule, q, in.sentence) {
		words = nil // they tell it alone
	}
	if rule.Quantity != q.Kind || !r.fits(in.sentence, words, rule.Unless) || r.words.hasAny(lastWords(in.sentence[:q.Start], 1), rule.NotRight) || r.words.hasAny(firstWords(in.after, 2), rule.After) && !r.words.hasAny(firstWords(in.after, 3), rule.AfterBut) && !(len(rule.Before) > 0 && ofNextFigure(in)) {
		return false
	}
	lead := in.sentence[:q.Start]
	if rule.Close { // what is said of the figure before it is not said of this one: "laps 6 in., 8 in. up the wall"
		lead = lead[strings.LastIndexAny(lead, ",;")+1:]
	}
	if lead = lastWords(lead, 5); r.words.hasAny(lead, rule.Before) && !r.words.hasAny(lead, rule.Though) && !(len(rule.Beside) > 0 && joined(in)) {
		return false
	}
	if len(rule.Beside) > 0 && !r.words.hasAny(lastWords(in.sentence[:q.Start], 2), rule.Beside) && !r.words.hasAny(firstWords(atLead.ReplaceAllString(in.after, ""), 1), rule.Beside) && !r.opens(rule.Beside, in.before[:len(in.before)-(q.End-q.Start)]) {
		return false
	}
	if rule.Bounded && q.Bound == "" {
		return false
	}
	if value := firstOf(q.Min, q.Max); rule.Least != nil && value != nil && *value < *rule.Least {
		return false
	}
	return !rule.Subject || r.words.hasAny(firstWords(r.afterNames(subjectBefore(in.sentence, q.Start)), 5), rule.Words) ||
		r.words.hasAny(firstWords(in.sentence, 5), rule.Words) ||
		r.toldOf(rule, q, in.sentence)
}

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

// atPlace is the place that a figure is for, right after it.
var atPlace = regexp.MustCompile(`^\s*(?:on|at|in|for)\s[^,;:.]*`)

// lastFigure holds where no other figure of the sentence stands before or after.
func lastFigure(in around) bool {
	return strings.HasPrefix(in.sentence, in.before) && strings.HasSuffix(in.sentence, in.after)
}

// laidOver narrows the limit of a bed to what is laid over it, where the words after the
// figure name that: "concrete 12 % below sheet, 5 % below liquid FM-6". What they name and
// is no sheet and nothing put on wet is on no row ("4 % below tile").
func (r *reader) laidOver(l *Limit, after string) {
	m := laidWords.FindStringSubmatch(after)
	if m == nil {
		return
	}
	if l.Over = r.sheetsIn(m[1]); len(l.Over) > 0 {
		return
	}
	if l.Roles = r.rolesIn(m[1]); len(l.Roles) == 0 {
		l.Scope = unknownPlace
	}
}

// laidWords stand before what is laid over a bed.
var laidWords = regexp.MustCompile(`(?i)^\.?\s*(?:(?:max|at most|or less)\b\.?\s*)?(?:below|under|beneath|to take)\s+(?:the |any |all )?([^,;.:()]*\pL[^,;:()]*)`)

// withoutRoles leaves out the keys of words that name a role and no material
// ("flashing"), and that of any sheet beside a role ("transition strips").
func withoutRoles(keys, roles []string) []string {
	return slices.DeleteFunc(keys, func(k string) bool {
		role, generic := strings.CutSuffix(k, "-unspecified")
		return generic && (slices.Contains(roles, role) || role == "sheet" && len(roles) > 0)
	})
}

// denies holds before a figure whose bound is turned round.
var denies = regexp.MustCompile(`(?i)\b(?:no|nothing|none)\b[^.;:,]*$`)

// unreadCode is the code of a wall type or a product, and no number of a standard, or the
// letters that a note begins with.
var unreadCode = regexp.MustCompile(`\b(?:[A-Z]{2,4}-?|W-?)\d{1,3}[a-z]?\b|^\s*[A-Z]{2,4}:`)

// nearTo narrows a limit to what is within a distance of something. One that names no
// material goes on from the limit told before it in the same cell: "primers 300 g/L;
// within 5 m of intakes 80 g/L".
func (r *reader) nearTo(l *Limit, before string) {
	at := withinOf.FindStringSubmatchIndex(before)
	if at == nil {
		return
	}
	l.Scope = strings.ToLower(strings.TrimSpace(before[at[2]:at[3]]))
	if lead := before[:at[2]]; len(l.Roles) == 0 { // "primers within 5 m of intakes 80 g/L"
		l.Roles = r.rolesIn(lead[strings.LastIndexAny(lead, ",;:")+1:])
	}
	for i := len(r.sched.Project.Limits) - 1; i >= 0 && len(l.Roles) == 0; i-- {
		if o := r.sched.Project.Limits[i]; o.At == l.At && o.Kind == l.Kind {
			l.Roles, l.Keys = slices.Clone(o.Roles), slices.Clone(o.Keys)
			return
		}
	}
}

// lapsOfAnySheet asks of all sheets what a note asks of the sheet of the wall, whichever it
// is: "AVB laps: 2 in. sides".
func (r *reader) lapsOfAnySheet(limits []Limit) {
	for i := range limits {
		l := &limits[i]
		if lapKind[l.Kind] && len(l.Roles) == 0 && len(l.Keys) > 0 && r.meansAnySheet(l.Keys) {
			l.Roles, l.Keys = []string{"membrane"}, []string{}
		}
	}
}

// meansAnySheet holds for keys that only call a sheet by where it stands in the wall.
func (r *reader) meansAnySheet(keys []string) bool {
	return !slices.ContainsFunc(keys, func(key string) bool { return !slices.Contains(r.limitRules.AnySheet, key) })
}

// atLead stands before the end that a figure is of: "6 in. at ends", "100 mm at the ends".
var atLead = regexp.MustCompile(`^\.?\s*(?i:at|on)\s+(?i:(?:the|all|each)\s+)?`)

// endsInside closes a sentence about what lies on the inside of the sheet, whatever the part of
// the work: "nothing of 0.5 perm or less inside". No row tells of that as its place.
var endsInside = regexp.MustCompile(`(?i)\b(?:inside|inboard)[\s.]*$`)

// headOfList is what the figures of a list are for, up to a semicolon, by the words before its
// colon: "Through-wall flashing: laps 150 mm, 200 mm up the backing".
func headOfList(before string) string {
	head, list, ok := strings.Cut(before, ": ")
	if !ok || strings.Contains(list, ";") {
		return ""
	}
	return head
}

// withinOf is a distance from something, in words.
var withinOf = regexp.MustCompile(`(?i)\b(within\s+\d+(?:\.\d+)?\s*(?:m|metres?|meters?|ft\.?|feet)\s+(?:of|from)\s+\pL[\pL -]*\pL)[^\d,;]*$`)

// standsIn is what lies in the wall there, which tells why a limit is asked and not of what:
// "10 perms or more (batts in the stud)".
var standsIn = regexp.MustCompile(`(?i)^[^,;]*\p{L}\s+(?:in|inside|within|between|behind)\s+(?:the\s+|all\s+)?(?:studs?|cavit(?:y|ies)|framing|frames?|walls?|joists?|rafters?)\b`)

// limit builds one limit, narrowed by the words that its figure stands among.
func (r *reader) limit(rule limitFigure, q phrase.Quantity, in around, at At) Limit {
	l := Limit{Kind: rule.Kind, At: at, Roles: []string{}, Keys: []string{}, Over: []string{}, When: []string{}}
	if told := r.limitRules.When[rule.Case]; r.words.hasAny(in.sentence, told) {
		l.When = append(l.When, rule.Case)
		in = around{r.words.without(in.sentence, told), r.words.without(in.lead, told), r.words.without(in.before, told), r.words.without(in.after, told)}
	}
	value := q.Min
	if value == nil {
		value = q.Max
	}
	bound := firstNonEmpty(q.Bound, rule.Bound)
	if rule.Fixed {
		bound = rule.Bound
	}
	if turned := map[string]string{"max": "min", "min": "max"}[q.Bound]; turned != "" && denies.MatchString(in.sentence[:q.Start]) {
		bound = turned // "no layer under 60 ng", "nothing above 250 g/L"
	}
	if bound == "min" || rule.Bound == "min" && bound != "max" {
		l.Min = value
	} else {
		l.Max = firstOf(q.Max, value)
	}
	if kind, own := r.roleKindIn(in.before); rule.Roles && own {
		l.Roles, l.Keys = []string{kind.Role}, []string{kind.Family}
	} else if rule.Roles {
		if l.Roles = r.rolesIn(in.after); !strings.HasPrefix(strings.TrimSpace(in.after), "for ") || len(l.Roles) == 0 {
			l.Roles = r.rolesIn(in.before)
		}
		l.Roles, l.said = rule.narrowing(l.Roles)
	}
	if rule.Keys {
		if m := bracketed.FindStringSubmatch(in.after); m != nil && !standsIn.MatchString(m[1]) { // "30 days (FM-1), 60 days (FM-2)"
			l.Keys = r.keysIn(m[1])
		}
		if len(l.Keys) == 0 {
			l.Keys = r.keysIn(in.before)
		}
		if rule.Roles {
			l.Keys = withoutRoles(l.Keys, l.Roles)
		}
		if len(l.Keys) == 0 && len(l.Roles) == 0 && lastFigure(in) { // "30 days in the sun for FM-2"
			l.Keys = r.keysIn(upTo(",;:.()", in.after))
		}
		if len(l.Keys) == 0 && len(l.Roles) == 0 {
			l.Keys = r.describedBy(in.sentence[:q.Start])
		}
		if lead := strings.TrimSpace(in.lead); len(l.Keys) == 0 && len(l.Roles) == 0 && strings.HasSuffix(lead, ":") {
			l.Keys = r.keysIn(lead) // "SBS wall sheet: 1.0 mm min., 0.02 L/(s·m²), 15 ng max."
		}
		if len(l.Keys) == 0 && lapKind[rule.Kind] { // "Tarn sheets lap 3 in."
			l.Keys = r.madeBy(in.before)
		}
		if lapKind[rule.Kind] && len(l.Keys)+len(l.Roles) == 0 {
			l.Keys = r.metalsIn(headOfList(in.sentence[:q.Start]))
		}
	}
	if rule.Laid {
		r.laidOver(&l, in.after)
	}
	if rule.Tags {
		l.Keys = r.tagKeys(in.before)
	}
	if rule.Named {
		l.Keys = r.namedKeys(in.before)
	}
	if rule.KeysAfter {
		after, before := in.after, in.before
		if more := !strings.HasSuffix(in.sentence, after); more && listed.MatchString(after) {
			after = "" // "sheets 14 days, fluids 28 days"
		}
		if !strings.HasPrefix(in.sentence, before) { // what follows the figure before is of that
			before = before[strings.LastIndexAny(before, ",;")+1:]
		}
		if l.Keys = r.sheetsIn(after); len(l.Keys) == 0 { // "concrete to take FM-2: 21 days"
			l.Keys = r.sheetsIn(before)
		}
		if len(l.Keys) == 0 {
			l.Keys = r.madeBy(after)
		}
	}
	if rule.Scope {
		l.Scope = firstNonEmpty(r.scopeIn(in.before), r.scopeIn(firstWords(sameSentence(in.after), 2)))
		if at := atPlace.FindString(in.after); at != "" { // "90 mil on decks, 60 mil on verticals"
			l.Scope = firstNonEmpty(r.scopeIn(at), l.Scope)
		}
		if len(l.Roles)+len(l.Keys) == 0 {
			l.Scope = firstNonEmpty(l.Scope, r.scopeIn(headOfList(in.sentence[:q.Start])))
		}
		if l.Scope != "" {
			l.Keys = slices.DeleteFunc(l.Keys, func(key string) bool { return strings.HasSuffix(key, "-unspecified") }) // "TWF"
		}
	}
	if rule.Scope {
		r.ofSheetsAt(&l, in.before)
	}
	if rule.Within != "" && r.words.hasAny(in.sentence, []string{rule.Within}) {
		l.Scope = rule.Within
	}
	if rule.Place {
		l.Scope = r.placeIn(in.sentence)
		if l.Scope == "" {
			anySheet := len(l.Keys) > 0 && r.meansAnySheet(l.Keys)
			l.Scope = r.sideIn(in.sentence, rule, len(l.Keys) > 0 && !anySheet)
			if anySheet && l.Scope == outerSide { // "Outboard of batts: WRB 600 ng or more" asks it of the sheet there, whichever it is
				l.Roles, l.Keys = []string{"membrane"}, []string{}
			}
		}
		if len(l.Keys) == 0 && endsInside.MatchString(in.sentence) {
			l.Scope = unknownPlace
		}
	}
	if m := facing.FindStringSubmatch(in.sentence); rule.Facing && m != nil {
		l.Scope = m[1]
	}
	if rule.When {
		l.When = r.whenIn(in.before)
		if len(r.whenIn(in.lead)) == 0 { // "185 F under black metal, 160 F under white"
			l.When = r.whenIn(upTo(".;", in.after))
			if at := strings.LastIndexAny(strings.TrimRight(in.before, " ."), ".;"); at >= 0 && len(l.When) == 0 {
				l.When = r.whenIn(in.before[at:]) // "350 g/L max. In closed rooms 250 g/L"
			}
		}
		if len(l.When) == 0 && ofBefore.MatchString(in.sentence) {
			l.When = r.whenBefore(at)
		}
	}
	return l
}
