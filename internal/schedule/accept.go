package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// part is a piece of a list cell.
type part struct {
	text   string
	listed bool // a semicolon parts it from the one before
}

// splitList parts a cell at semicolons, line breaks and full stops that end a
// sentence, never inside brackets.
func (w *wordlists) splitList(text string) []part { return w.split(text, w.endsSentence) }

// splitItems parts a cell of beds and their primers, where a point between two items
// that each have their colon ends the first one, after an abbreviation too.
func (w *wordlists) splitItems(text string) []part {
	return w.split(text, func(text string, i int) bool { return w.endsSentence(text, i) || w.opensItem(text[:i], text[i+1:]) })
}

func (w *wordlists) split(text string, ends func(text string, point int) bool) []part {
	var out []part
	depth, start := 0, 0
	cut := func(end int) {
		if t := strings.TrimSpace(text[start:end]); t != "" {
			out = append(out, part{t, start > 0 && text[start-1] == ';'})
		}
	}
	for i, c := range text {
		switch {
		case c == '(':
			depth++
		case c == ')':
			depth--
		case depth > 0:
		case c == ';' || c == '\n' || c == '.' && ends(text, i):
			cut(i)
			start = i + 1
		}
	}
	cut(len(text))
	return out
}

// lettered is a letter after what it tells apart: "ASTM E96 procedure B. No ...".
var lettered = regexp.MustCompile(`(?i)\b(?:procedure|proc|method|type|grade|class|group|option|annex|schedule) [a-z]$`)

// endsSentence tells a full stop from the point of an abbreviation: a capital
// follows it, and the word before is no abbreviation.
func (w *wordlists) endsSentence(text string, i int) bool {
	rest := strings.TrimLeft(text[i+1:], " ")
	if rest == "" {
		return true
	}
	if rest == text[i+1:] || rest[0] < 'A' || rest[0] > 'Z' {
		return false
	}
	word := text[strings.LastIndexAny(text[:i], " ,(/")+1 : i]
	if len(word) == 1 { // "+5 to +35 C. Open ...", never "J. Larch"
		before := strings.TrimRight(text[:i-1], " °")
		return before != "" && before[len(before)-1] >= '0' && before[len(before)-1] <= '9' || perUnit.MatchString(text[:i]) || lettered.MatchString(text[:i])
	}
	return word != "" && (w.opens(rest) || !w.abbreviations[strings.ToLower(word)])
}

// opens holds for a text that begins as a sentence does: "PR-4 on conc. None on glass".
func (w *wordlists) opens(text string) bool {
	return text != "" && text[0] >= 'A' && text[0] <= 'Z' && w.openers[strings.ToLower(firstWords(text, 1))]
}

// itemLead is what stands before the colon of an item: "Galv. steel, CMU: none".
var itemLead = regexp.MustCompile(`^ +[A-Z](?:[^.;:\n]|\.[^ \n]|\. [a-z])*?\.?:`)

// opensItem holds between two items that each have their colon: "Conc, CMU: PR-1 reqd.
// Steel: none", "Sheet: vap. perm. 15 ng max. Deck: 6 ng".
func (w *wordlists) opensItem(before, after string) bool {
	if !itemLead.MatchString(after) {
		return false
	}
	before = before[strings.LastIndexAny(before, ";\n")+1:]
	start := 0
	for i := range before {
		if before[i] == '.' && w.endsSentence(before, i) {
			start = i + 1
		}
	}
	return strings.Contains(before[start:], ":")
}

// perUnit is a unit by another after a figure, before the point that ends a sentence:
// "250 g/L. Films ...", never "w/o. Film".
var perUnit = regexp.MustCompile(`\d\s?\pL{1,3}/\pL$`)

// accepts reads the substrates that product data accepts, each with its primer.
func (r *reader) accepts(p *Product, c source) {
	if p.Role == "primer" || p.Role == "sealant" || p.Role == "adhesive" {
		c.text = r.words.writtenOut(c.text)
		p.Suits = append(p.Suits, r.madeOf(p, c.text, r.suited(p, c))...)
		return
	}
	if r.words.isNone(c.text) {
		return
	}
	for _, piece := range r.words.stances(r.eachOfNoun(r.words.writtenOut(r.withoutCases(r.turnedAround(p, c.text))))) {
		text, own := r.ownInBrackets(p, piece.text)
		r.acceptPart(p, c, text)
		for _, one := range own {
			r.acceptPart(p, c, one)
		}
	}
	if c.slot != "accepts_primer" {
		return
	}
	for i := range p.Accepts {
		if a := &p.Accepts[i]; a.Primer == "unsaid" && a.At == c.at && r.primerHeading(p) {
			a.Primer = "always"
		}
	}
}

// turnedAround turns the primer of all beds but some around, so that those are the ones that
// take none: "PR-2 on all but glass" is "none on glass; PR-2 elsewhere".
func (r *reader) turnedAround(p *Product, text string) string {
	return allBut.ReplaceAllStringFunc(text, func(said string) string {
		m := allBut.FindStringSubmatch(said)
		if again := lastBracket.FindStringSubmatch(m[2]); again != nil && r.saysNone(again[1]) {
			m[2] = strings.TrimSuffix(m[2], again[0]) // "all but glass (none needed)" says it twice
		}
		if !r.namesPrimer(p, m[1]) || r.namesPrimer(p, m[2]) || len(r.near(p, m[2])) == 0 {
			return said
		}
		return "none on " + m[2] + "; " + m[1] + " elsewhere"
	})
}

// lastBracket is what stands in brackets at the end of words.
var lastBracket = regexp.MustCompile(`\s*\(([^()]*)\)\s*$`)

// allBut is one sentence on all beds but some.
var allBut = regexp.MustCompile(`(?i)([^;.\n]+?)\s+(?:on|over|for)\s+(?:all|everything|every|anything|any)(?:\s(?:beds?|substrates?|surfaces?|others?|else))?\s+(?:but|except(?:ing)?(?:\s+for)?|save(?:\s+for)?|other than|excluding)\s+(?:on\s+)?([^;.\n]+)`)

// ownInBrackets takes out the brackets that tell a primer of their own for beds of their
// own ("CMU, plywood: PR-1 (PR-2 on foam)"), where another primer is told outside of them.
func (r *reader) ownInBrackets(p *Product, text string) (rest string, own []string) {
	rest = bracket.ReplaceAllStringFunc(text, func(in string) string {
		m := primerOn.FindStringSubmatch(in)
		if m == nil || !r.namesPrimer(p, m[1]) || r.namesPrimer(p, m[2]) || len(r.near(p, m[2])) == 0 {
			return in
		}
		own = append(own, m[2]+": "+m[1])
		return ""
	})
	if len(own) == 0 || !r.namesPrimer(p, rest) {
		return text, nil
	}
	return rest, own
}

// primerOn is a bracket with a primer before the beds that it is for.
var primerOn = regexp.MustCompile(`(?i)^\(\s*(?:use |but |with )?([^()]+?)\s+(?:on|over|for)\s+([^()]+?)\s*\)$`)

func (r *reader) namesPrimer(p *Product, text string) bool {
	return slices.ContainsFunc(r.near(p, text), r.isPrimer)
}

// withoutCases takes out the brackets that tell an age or a state which holds with a
// primer ("concrete 21 d (7 d over PR-2)", "(damp with PR-2)"): the rest does not ask
// for that primer.
func (r *reader) withoutCases(text string) string {
	return bracket.ReplaceAllStringFunc(text, func(in string) string {
		m := r.words.withPrimer.FindStringSubmatch(in)
		switch {
		case r.words.statePrimer.MatchString(in):
			return ""
		case m != nil && len(r.phrase.Quantities(m[1], "")) > 0 && r.phrase.Quantities(m[1], "")[0].Kind == "days":
			return ""
		}
		return in
	})
}

// madeOf takes what a primer that nothing else describes is made of ("solvent base,
// for sheet R-1") out of the list of what it suits.
func (r *reader) madeOf(p *Product, text string, suits []Target) []Target {
	carrier := r.words.accept.carrier.FindString(text)
	if carrier == "" || p.Role != "primer" || !strings.HasSuffix(p.Family, "-unspecified") {
		return suits
	}
	r.asPrimer(p, carrier)
	return slices.DeleteFunc(suits, func(t Target) bool { return strings.Contains(carrier, t.Text) })
}

var sharedNoun = regexp.MustCompile(`((?:[A-Za-z]{2,}\.? ?/ ?)+[A-Za-z]{2,}\.?) ([a-z]+)`)

// eachOfNoun writes out a noun that several words share, where one of them names a
// material with it: "galv./painted/stainless steel", "PE / PP film".
func (r *reader) eachOfNoun(text string) string {
	return sharedNoun.ReplaceAllStringFunc(text, func(list string) string {
		m := sharedNoun.FindStringSubmatch(list)
		kinds, known := strings.Split(m[1], "/"), false
		for i, kind := range kinds {
			kinds[i] = strings.TrimSpace(kind) + " " + m[2]
			known = known || r.vocab.Family(kinds[i]) != ""
		}
		if !known {
			return list
		}
		return strings.Join(kinds, ", ")
	})
}

// primerHeading holds where another column lists what needs no primer, so that
// this one lists what does.
func (r *reader) primerHeading(p *Product) bool {
	_, ok := p.Cells["accepts_none"]
	return ok
}

// acceptsNone reads a column of substrates that take the product without primer.
func (r *reader) acceptsNone(p *Product, c source) {
	if r.words.isNone(c.text) {
		return
	}
	for _, m := range r.near(p, c.text) {
		if !r.isPrimer(m) {
			p.Accepts = append(p.Accepts, Acceptance{Target: r.target(m, c.text[m.start:m.end], c.at), Primer: "none"})
		}
	}
}

// acceptPart reads one piece: substrates, then what primer they take.
func (r *reader) acceptPart(p *Product, c source, text string) {
	rule, list := r.primerWords(p, text)
	only := r.words.hasAny(text, r.words.accept.Only)
	var added, ends []int
	found := r.near(p, text)
	barred := r.barredIn(text, found)
	for i, m := range found {
		if r.isPrimer(m) || r.words.accept.gone.MatchString(text[m.end:]) {
			continue // "form oil off"
		}
		a := Acceptance{Target: r.target(m, text[m.start:m.end], c.at), Primer: "unsaid"}
		if a.Except = barred[i]; a.Except {
			p.Accepts = append(p.Accepts, a)
			continue
		}
		if inBrackets(text, m.start) && rule != "" {
			a.Primer, a.Primers, a.Only = rule, list, only
		}
		p.Accepts = append(p.Accepts, a)
		added, ends = append(added, len(p.Accepts)-1), append(ends, m.end)
	}
	if rule == "" {
		return
	}
	if len(added) == 0 {
		r.rest(p, rule, list)
		return
	}
	if bracketOnly(text, r.words) {
		added = added[len(added)-1:]
	} else if end := r.ownBracket(p, text); slices.Contains(ends, end) {
		added = []int{added[slices.Index(ends, end)]}
	}
	for _, i := range added {
		if p.Accepts[i].Primer == "unsaid" {
			p.Accepts[i].Primer, p.Accepts[i].Primers, p.Accepts[i].Only = rule, list, only
		}
	}
	if r.words.hasAny(text, r.words.accept.Rest) { // "P-2 on board, P-1 or P-2 elsewhere"
		p.Accepts = append(p.Accepts, Acceptance{Target: Target{Keys: []string{"*"}, Products: []string{}, Text: "", At: c.at}, Primer: rule, Primers: list})
	}
}

// bracketOnly holds for "CMU, plywood, XPS (with PR-2 only)": the bracket
// belongs to the last of the list.
func bracketOnly(text string, w *wordlists) bool {
	i := strings.LastIndexByte(text, '(')
	return i >= 0 && w.hasAny(text[i:], w.accept.Only) && !strings.Contains(text[:i], ":")
}

// ownBracket gives the end of the bed before the one bracket that names a primer, where further beds
// without a bracket follow it: "glass, precast (PR-2), sheet A-2" asks for it on precast.
func (r *reader) ownBracket(p *Product, text string) (end int) {
	in := bracket.FindAllStringIndex(text, -1)
	if len(in) != 1 || strings.TrimSpace(text[in[0][1]:]) == "" || !opensList.MatchString(text[in[0][1]:]) {
		return 0
	}
	follows, named := false, false
	for _, m := range r.near(p, text) {
		switch within := m.start >= in[0][0] && m.end <= in[0][1]; {
		case within:
			named = named || r.isPrimer(m)
		case r.isPrimer(m):
			return 0
		case m.end <= in[0][0]:
			end = m.end
		default:
			follows = true
		}
	}
	if !named || !follows {
		return 0
	}
	return end
}

// opensList is how a list goes on after a bracket.
var opensList = regexp.MustCompile(`^\s*(?:,|and\b|or\b|&)`)

func inBrackets(text string, at int) bool {
	return strings.LastIndexByte(text[:at], '(') > strings.LastIndexByte(text[:at], ')')
}

// primerWords tells what a piece says of the primer: none, listed with the
// products named, always, or nothing.
func (r *reader) primerWords(p *Product, text string) (rule string, list []string) {
	for _, m := range r.near(p, text) {
		if r.lex.isMaker(text[m.start:m.end]) {
			continue // "Tarn faces" names its sheets as well
		}
		if m.product >= 0 && r.isPrimer(m) && !r.words.hasAny(upTo(";,()", text[m.end:]), r.words.accept.Not) {
			list = append(list, r.sched.Products[m.product].ID)
		}
	}
	switch {
	case len(list) > 0:
		slices.Sort(list)
		return "listed", slices.Compact(list)
	case r.words.hasAny(text, r.words.accept.None):
		return "none", nil
	case r.words.hasAny(text, r.words.accept.Primer):
		return "always", nil
	}
	return "", nil
}

// upTo gives the words up to the first of some signs: what is still said of a
// primer in "P-2 not on foam; P-1 elsewhere".
func upTo(signs, text string) string {
	if i := strings.IndexAny(text, signs); i >= 0 {
		return text[:i]
	}
	return text
}

func (r *reader) isPrimer(m mention) bool {
	if m.product >= 0 {
		return r.sched.Products[m.product].Role == "primer"
	}
	return m.mat.Class == "primer"
}

// rest gives a primer rule that names no substrate to all that have none yet.
func (r *reader) rest(p *Product, rule string, list []string) {
	for i := range p.Accepts {
		if p.Accepts[i].Primer == "unsaid" {
			p.Accepts[i].Primer, p.Accepts[i].Primers = rule, list
		}
	}
	p.Texts["primer_rule"] = rule
	if len(p.Accepts) == 0 {
		p.onAll(rule, list)
	}
}

// onAll adds a primer rule for every bed.
func (p *Product) onAll(rule string, list []string) {
	p.Accepts = append(p.Accepts, Acceptance{Target: Target{Keys: []string{"*"}, Products: []string{}}, Primer: rule, Primers: list})
}

// elsewhere gives the primers that a cell lists without a bed to all that it names no other
// for: "PR-1 (none on metal)", "none on plywood; PR-1 elsewhere". Where another cell lists
// the beds, those are all.
func (p *Product) elsewhere(at At, rule string, list []string) {
	other := func(a Acceptance) bool { return a.At != at || slices.Contains(a.Keys, "*") }
	if rule != "listed" || len(p.Accepts) == 0 || slices.ContainsFunc(p.Accepts, other) {
		return
	}
	p.onAll(rule, list)
}

// also gives the substrates that take the primers named so far, wherever no other
// rule holds, those that are named next.
func (p *Product) also(before, all []string) {
	for i := range p.Accepts {
		if a := &p.Accepts[i]; a.Primer == "listed" && !a.Only && len(before) > 0 && slices.Equal(a.Primers, before) {
			a.Primers = all
		}
	}
}

// beadBarred takes what a sealant or mastic is not put on out of a cell of primers and
// remarks, where it is no bed: "edges of sheets; not on silicone".
func (r *reader) beadBarred(p *Product, c source) string {
	var rest []string
	for _, piece := range r.words.splitList(c.text) {
		if !notOn.MatchString(piece.text) {
			rest = append(rest, piece.text)
			continue
		}
		barred := c
		barred.text = piece.text
		r.remarkTargets(p, barred)
	}
	return strings.Join(rest, "; ")
}

var notOn = regexp.MustCompile(`(?i)^\s*(?:not|never|do not use) (?:on|against|over)\b`)

// primerRule reads a primer column of its own: "none on clean metal; T-01 or
// T-02 elsewhere".
func (r *reader) primerRule(p *Product, c source) {
	if p.Role == "primer" { // its own row tells there what it primes: "masonry, board. Not metal"
		c.text = r.words.writtenOut(c.text)
		if !r.saysNone(c.text) {
			p.Suits = append(p.Suits, r.suited(p, c)...)
		}
		return
	}
	if p.Role == "sealant" || p.Role == "adhesive" {
		c.text = r.beadBarred(p, c)
	}
	c.text = r.kindOnBed(p, r.words.accept.consent.ReplaceAllString(c.text, ""))
	c.text = r.neighborsBarred(p, c)
	c.text = alsoOn.ReplaceAllString(c.text, "$1; $1 on $2")
	if beds := r.headedBeds(c.heading, c.at); len(beds) > 0 && !r.namesBeds(p, c.text) {
		r.bedsRule(p, beds, c.text)
		return
	}
	var anywhere []string // primers that no substrate is named for
	var before []Target   // beds of the piece before
	var narrowed []Target // beds that take one primer only
	more := r.head.namesMore(c.heading, "primer")
	pieces := r.bedsFirst(p, r.withoutPrimer(p, r.primerPieces(r.words.writtenOut(r.turnedAround(p, c.text)))))
	bare := slices.ContainsFunc(pieces, func(piece part) bool { return r.bareNone(p, piece) })
	for _, piece := range pieces {
		if r.words.hasAny(piece.text, r.words.accept.Laps) {
			continue // a primer of the splice is not under the sheet
		}
		barred := r.barredBeds(p, &piece)
		if r.asOther(p, piece.text) {
			continue
		}
		rule, list := r.primerWords(p, piece.text)
		for _, b := range barred {
			if rest := without(list, b.primer); len(rest) > 0 {
				for _, m := range b.beds {
					r.applyRule(p, r.target(m, m.mat.Text, c.at), "listed", rest)
				}
			}
		}
		if r.words.isNone(piece.text) {
			rule = "none"
		}
		if rule == "" && (r.words.byOthers.MatchString(piece.text) || bare && r.words.hasAny(piece.text, r.words.accept.Fine)) {
			continue // "none; damp concrete ok"
		}
		if rule == "" {
			if rule = "always"; more { // "Key W on concrete": a primer that has no row of its own
				rule = "unsaid" // "Bed in SK-2", "Held by a bar"
			}
		}
		if r.onlyGlue(p, piece.text) {
			continue
		}
		var beds []Target
		if r.words.accept.these.MatchString(piece.text) { // "PR-1 on block; PR-2 on these and on steel"
			beds = before
		}
		for _, m := range r.near(p, piece.text) {
			if !r.isPrimer(m) && !r.isGlue(m) {
				beds = append(beds, r.target(m, piece.text[m.start:m.end], c.at))
			}
		}
		only := r.onlyThere(p, piece.text)
		if only && r.thereOnly(p, piece.text) { // "PR-1; PR-2 on concrete only": the concrete takes both
			only, list = false, append(slices.Clone(anywhere), list...)
		}
		for _, bed := range beds {
			if !only && slices.ContainsFunc(narrowed, func(t Target) bool { return slices.Equal(t.Keys, bed.Keys) }) {
				continue // "on block, foam (foam: PR-2 only)"
			}
			r.applyRule(p, bed, rule, list)
		}
		if only {
			narrowed = append(narrowed, beds...)
		}
		named := len(beds) > 0
		before = beds
		if !named && rule == "listed" && primersBarred.MatchString(piece.text) {
			continue // "PR-1 on block. Not PR-2"
		}
		if !named && rule == "listed" && bare { // "none, PR-1 where dusty": it may have one
			rule = "none"
		}
		if !named && rule == "listed" { // "PR-1; PR-2 from 4 °C up"
			all := append(slices.Clone(anywhere), list...)
			p.also(anywhere, all)
			anywhere = all
		}
		if !named && rule != "unsaid" {
			r.rest(p, rule, list)
			p.elsewhere(c.at, rule, list)
		}
	}
}

// primersBarred begins what bars primers.
var primersBarred = regexp.MustCompile(`(?i)^\W*(?:but )?(?:not|never|no)\b\W*\pL`)

// isGlue holds for an adhesive that a column of primers names: it is what the sheet is
// stuck with, and no bed that takes a primer.
func (r *reader) isGlue(m mention) bool {
	if m.product >= 0 {
		return r.sched.Products[m.product].Class == "mastic"
	}
	return m.mat.Class == "mastic"
}

// onlyGlue holds for "bonding adhesive" there, which tells neither of a bed nor of a
// primer.
func (r *reader) onlyGlue(p *Product, text string) bool {
	found := r.near(p, text)
	return len(found) > 0 && !slices.ContainsFunc(found, func(m mention) bool { return !r.isGlue(m) })
}

// asOther holds for a primer rule that only points at another product's: "per SL-2",
// where the sheet is bedded in that sealant.
func (r *reader) asOther(p *Product, text string) bool {
	at := r.words.accept.asOther.FindStringIndex(text)
	found := r.near(p, text)
	return at != nil && len(found) == 1 && found[0].start == at[1] && found[0].product >= 0 && !r.isPrimer(found[0])
}

// bedsFirst puts "none" without a bed after what is said of beds: "none; PR-1 on
// block".
func (r *reader) bedsFirst(p *Product, pieces []part) []part {
	rest := func(piece part) int {
		if r.bareNone(p, piece) {
			return 1
		}
		return 0
	}
	slices.SortStableFunc(pieces, func(a, b part) int { return rest(a) - rest(b) })
	return pieces
}

// applyRule sets the primer of the acceptances that a named substrate means,
// or adds one where the list does not have it.
func (r *reader) applyRule(p *Product, tg Target, rule string, list []string) {
	hit := false
	for i := range p.Accepts {
		a := &p.Accepts[i]
		if a.Primer == "unsaid" && (shares(a.Keys, tg.Keys) || shares(r.vocab.Describe(a.Text).Keys, tg.Keys)) {
			a.Primer, a.Primers, hit = rule, list, true
		}
	}
	if !hit {
		p.Accepts = append(p.Accepts, Acceptance{Target: tg, Primer: rule, Primers: list})
	}
}

func shares(a, b []string) bool {
	for _, k := range a {
		if slices.Contains(b, k) {
			return true
		}
	}
	return false
}
