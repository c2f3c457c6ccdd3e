package schedule

import (
	"math"
	"slices"
	"strings"

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
	if r.limitRules.idle.MatchString(sentence) || r.sameTwice(sentence) {
		return // "Our last job had 60 mil sheets", "40 mil equals 1.016 mm"
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
	sentence = lapsByDirection(r.lapPairOf(sentence, at))
	last, first := 0, len(r.sched.Project.Limits)
	keys := []string{}
	var before *limitFigure
	said := strings.TrimSpace(sentence)
	sentence = exempted.ReplaceAllString(unitFirst.ReplaceAllString(sentence, "$2 $3 $1$4"), "")
	sentence = coverWithin.ReplaceAllString(sentence, "$1 covered within $2")
	sentence = dayNumber.ReplaceAllString(sentence, "$1 $2 days")
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
		rule := r.ruleOf(q, around)
		again := rule == nil && i > 0 && sameAgain(quantities[i-1], q, around)
		if again {
			rule = r.ruleAgain(before, around)
		}
		before = rule
		if rule != nil {
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
			if own := r.wallsOf(q, around); len(own) > 0 {
				l.Scope = fold(strings.Join(own, ", ")) // "10 perms at W2 and 1 perm at W3"
			} else if rule.Parts && l.Scope == "" {
				l.Scope = r.partOf(q, around)
			}
			if again && rule.Kind == "bearing_mm" { // of several the least counts, whatever the strip bears on there
				prior := r.sched.Project.Limits[len(r.sched.Project.Limits)-1]
				l.Roles, l.Keys, l.Scope = prior.Roles, prior.Keys, prior.Scope
			} else if again && l.Scope == "" && len(l.Roles)+len(l.Keys) == 0 && rule.Kind != endLapKind {
				l.Scope = unknownPlace // "end dams 25 mm at pans and 65 mm at trays"
			}
			l.bed = r.bedAfter(around)
			l.excepted = i > 0 && exception.MatchString(around.before)
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
	onBeds(r.sched.Project.Limits[first:])
	takenApart(r.sched.Project.Limits[first:])
	shareParts(r.sched.Project.Limits[first:], sentence)
	apart(r.sched.Project.Limits[first:])
	r.ofDryFilms(r.sched.Project.Limits[first:])
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

// dayNumber is an age told by the number of its day: "not before day 21".
var dayNumber = regexp.MustCompile(`(?i)\b(before|until|than|after|at) day (\d{1,2})\b`)

// unitFirst is a permeance with its unit before the sign: "perm >= 10". exempted is what a
// sentence asks nothing of, before what it does: "Sealants are exempt; all others ...".
var (
	unitFirst = regexp.MustCompile(`(?i)\b(perms?)\s*([<>]=?|[≤≥])\s*(\d+(?:\.\d+)?)([\s;,.)]|$)`)
	exempted  = regexp.MustCompile(`(?i)^[^;:.,\d]*\b(?:is|are) (?:exempt|excluded|not included)(?: from [^;:.,\d]*)?[;,]`)
)

// coverWithin is a time to cover something in, with its name between: "Cover sheets within 30 days".
var coverWithin = regexp.MustCompile(`(?i)\bcover((?: [\pL-]+){1,4}) within (\d)`)

// sameTwice holds for a sentence that tells one figure in two units by a word, and asks for
// nothing: "0.004 cfm/ft² is the same as 0.02 L/(s·m²)".
func (r *reader) sameTwice(sentence string) bool {
	if !sameWord.MatchString(sentence) || boundWord.MatchString(sentence) {
		return false
	}
	said := r.phrase.Quantities(sentence, "")
	return len(said) == 2 && said[0].Bound == "" && said[0].Kind == said[1].Kind && said[0].Min != nil && !differs(said[0].Min, said[1].Min)
}

var sameWord = regexp.MustCompile(`(?i)\b(?:equals|is equal to|is the same as|are the same as|corresponds to|converts to)\b`)

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

// figuresOf lists the quantities of a note, months as days, but not its own number.
func (r *reader) figuresOf(note string) []phrase.Quantity {
	list := r.phrase.Quantities(note, "")
	for i := range list {
		if list[i].Kind == "months" {
			list[i] = inDays(list[i])
		}
	}
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
