package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// atPlace is the place that a figure is for, right after it.
var atPlace = regexp.MustCompile(`^\s*(?:on|at|in|for)\s[^,;:.]*`)

// lastFigure holds where no other figure of the sentence stands before or after.
func lastFigure(in around) bool {
	return strings.HasPrefix(in.sentence, in.before) && strings.HasSuffix(in.sentence, in.after)
}

// caseAfter is a case that a figure is for, right after it, which no row is known to be in:
// "0.05 perm where exposed to soil gas".
var caseAfter = regexp.MustCompile(`(?i)^\W*(?:where|when|if)\s+(?:it is |they are )?(?:exposed|facing|open|subject|in contact|adjacent|used|there)\b`)

// figureFor is what a figure is for, right after it and the pressure of its test.
var figureFor = regexp.MustCompile(`(?i)^\W*(?:(?:@|at)\s+[\d.]+\s*(?:pa|psf)\W*)?for\s[^,;:.]*`)

// roleAfter is the job of a material right after its figure, in a list of such.
var roleAfter = regexp.MustCompile(`^\s+\pL+\s*(?:/|,|;|$)`)

// beforeBed cuts off what a figure is for on, and with what it is sealed: neither is asked.
func beforeBed(after string) string {
	if at := ofElse.FindStringIndex(after); at != nil {
		return after[:at[0]]
	}
	return after
}

var ofElse = regexp.MustCompile(`(?i)\b(?:on|over|onto|with|bedded|sealed)\b|\bw/|&\s*seal`)

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

// askedSubject is what a sentence asks something of, by the words before its verb:
// "Through-wall flashing shall turn up 8 in., lap 6 in. and drain".
func askedSubject(sentence string) string {
	if at := askVerb.FindStringIndex(sentence); at != nil && !strings.ContainsAny(sentence[:at[0]], ":;") {
		return sentence[:at[0]]
	}
	return ""
}

var askVerb = regexp.MustCompile(`(?i)\b(?:shall|must|should|will|is to|are to|to be|to have)\b`)

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
	r.boundTo(&l, rule, q, in)
	if kind, own := r.roleKindIn(in.before); rule.Roles && own {
		l.Roles, l.Keys = []string{kind.Role}, []string{kind.Family}
	} else if rule.Roles {
		if l.Roles = r.rolesIn(roleAfter.FindString(in.after)); len(l.Roles) > 0 { // "100 g/L membranes / 250 g/L primers"
		} else if l.Roles = r.rolesIn(in.after); !strings.HasPrefix(strings.TrimSpace(in.after), "for ") || len(l.Roles) == 0 {
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
			l.Keys = r.keysIn(upTo(",;:.()", beforeBed(in.after)))
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
	l.dry = r.words.hasAny(in.sentence, rule.DryForms)
	if rule.Laid {
		r.laidOver(&l, in.after)
	}
	if rule.Tags {
		if l.Keys = r.tagKeys(in.before); len(l.Keys) == 0 { // "0.01 L/(s·m²) @ 75 Pa for fluid-applied"
			l.Keys = r.keysIn(figureFor.FindString(in.after))
		}
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
		l.Scope = cmp.Or(r.scopeIn(in.before), r.scopeIn(firstWords(sameSentence(in.after), 2)))
		if at := atPlace.FindString(in.after); at != "" { // "90 mil on decks, 60 mil on verticals"
			l.Scope = cmp.Or(r.scopeIn(at), l.Scope)
		}
		if len(l.Roles)+len(l.Keys) == 0 {
			l.Scope = cmp.Or(l.Scope, r.scopeIn(headOfList(in.sentence[:q.Start])), r.scopeIn(askedSubject(in.sentence)))
		}
		if l.Scope != "" {
			l.Keys = slices.DeleteFunc(l.Keys, func(key string) bool { return strings.HasSuffix(key, "-unspecified") }) // "TWF"
		}
	}
	if rule.Scope {
		if r.ofSheetsAt(&l, in.before); len(l.Roles)+len(l.Keys) == 0 {
			r.ofSheetsAt(&l, askedSubject(in.sentence))
		}
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
	if rule.Parts && l.Scope == "" && len(l.When) == 0 && caseAfter.MatchString(in.after) && len(r.whenIn(in.after)) == 0 {
		l.Scope = unknownPlace
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
