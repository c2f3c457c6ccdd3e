package schedule

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"abut/internal/regexp"
)

func firstOf(a, b *float64) *float64 {
	if a != nil {
		return a
	}
	return b
}

func (r *reader) rolesIn(text string) []string {
	out := []string{}
	for role, words := range r.limitRules.Roles {
		if r.words.hasAny(text, words) {
			out = append(out, role)
		}
	}
	if len(out) > 1 { // "primers for membranes"
		out = slices.DeleteFunc(out, func(role string) bool { return role == "membrane" })
	}
	slices.Sort(out)
	return out
}

// roleKind is a kind of material whose name holds the role of another: a primer for
// sealants is no sealant, and has a limit of its own.
type roleKind struct {
	Family string   `json:"family"`
	Role   string   `json:"role"`
	Words  []string `json:"words"`
}

// roleKindIn finds the kind that a figure's own words tell it is for.
func (r *reader) roleKindIn(text string) (roleKind, bool) {
	for _, kind := range r.limitRules.Kinds {
		if r.words.hasAny(text, kind.Words) && !r.ofSeveral(text, kind) {
			return kind, true
		}
	}
	return roleKind{}, false
}

// otherAnd stands before the name of a kind that shares its noun with another: "wall and
// joint primers". A plural before it is a thing of its own: "sheets and joint primers".
var otherAnd = regexp.MustCompile(`(?i)(?:^|\s)\pL+[^s\s\d.,;:]\s*(?:\band|&|/)\s*$`)

// ofSeveral holds where the words name all of a role by what each is for, and not the
// one kind.
func (r *reader) ofSeveral(text string, kind roleKind) bool {
	low := strings.ToLower(text)
	return slices.ContainsFunc(kind.Words, func(word string) bool {
		at := strings.Index(low, word)
		return at > 0 && otherAnd.MatchString(low[:at])
	})
}

func (r *reader) whenIn(text string) []string {
	out := []string{}
	text = r.words.without(text, r.limitRules.Reasons)
	for id, words := range r.limitRules.When {
		if r.words.hasAny(text, words) {
			out = append(out, id)
		}
	}
	slices.Sort(out)
	return out
}

// narrowing parts the roles that a figure's words name in those that narrow it, and those
// that are said of all sheets alike.
func (f *limitFigure) narrowing(roles []string) (own, said []string) {
	own = []string{}
	for _, role := range roles {
		if slices.Contains(f.NotRoles, role) {
			said = append(said, role)
		} else {
			own = append(own, role)
		}
	}
	return own, said
}

// ofTheRest narrows the limits of a note to the roles that their words name where the
// note has another figure for others: "Side laps 3 in. Flashing 4 in." asks no sheet of
// the wall for 4 in. What comes later and names nothing may be of the same.
func ofTheRest(limits []Limit) {
	for i := range limits {
		l := &limits[i]
		if len(l.said) == 0 || len(l.Roles)+len(l.Keys) > 0 || l.Scope != "" {
			continue
		}
		for j, other := range limits {
			named := len(other.Roles)+len(other.Keys) > 0
			if other.Kind == l.Kind && len(other.said) == 0 && (j < i || named) && (differs(other.Min, l.Min) || differs(other.Max, l.Max)) {
				l.Roles = l.said
				break
			}
		}
	}
}

func (r *reader) scopeIn(text string) string {
	for _, scope := range slices.Sorted(maps.Keys(r.limitRules.Scopes)) {
		if r.words.hasAny(text, r.limitRules.Scopes[scope]) {
			return scope
		}
	}
	return ""
}

// placed makes a range of the figures that a cell of product data tells for several
// places: "2.3 mm horizontal, 1.5 mm vertical".
func (r *reader) placed(f *Figure, text, kind string) {
	least, most, scopes := f.Min, f.Max, map[string]bool{}
	for _, part := range placeMarks.Split(text, -1) {
		scope, qs := r.scopeIn(part), r.phrase.Quantities(part, hint(kind, f.Unit))
		if scope == "" || len(qs) == 0 || qs[0].Kind != kind || qs[0].Min == nil || qs[0].Max == nil {
			continue
		}
		if scopes[scope] = true; least == nil || *qs[0].Min < *least {
			least = qs[0].Min
		}
		if most == nil || *qs[0].Max > *most {
			most = qs[0].Max
		}
	}
	if len(scopes) > 1 {
		f.Min, f.Max = least, most
	}
}

// placeMarks part the figures of several places.
var placeMarks = regexp.MustCompile(`[/;,]\s|\band\b`)

// keysIn lists the chemistry that the words before a figure name ("asphaltic
// and butyl sheets").
func (r *reader) keysIn(text string) []string {
	out := []string{}
	add := func(key string) {
		if !slices.Contains(out, key) {
			out = append(out, key)
		}
	}
	if r.limitRules.openOnes.MatchString(text) {
		add(openTrait)
	}
	if r.limitRules.tights.MatchString(text) {
		add(tightTrait)
	}
	prefixed := r.tagged(text)
	for _, word := range slices.Sorted(maps.Keys(prefixed)) {
		for _, i := range prefixed[word] {
			if !r.otherwiseOpen(i, text) {
				add(r.keyOf(i))
			}
		}
	}
	found := r.lex.find(text)
	for i, m := range found {
		switch {
		case i+1 < len(found) && m.product < 0 && found[i+1].product >= 0 && m.end+1 == found[i+1].start && text[m.end] == ' ':
			// "fluid AB-2" asks it of that product, and of no other fluid
		case prefixed[text[m.start:m.end]] != nil: // "HT goods" are those of HT-1, whatever else HT may mean
		case r.classOf(m) == "insulation" && r.words.hasAny(lastWords(text[:m.start], 3), r.limitRules.Beside) && !opensWith(text, m.start):
			// "membrane outside the batt": the limit is not the batt's
		case r.classOf(m) == "flashing-metal" && r.words.hasAny(lastWords(text[:m.start], 2), r.limitRules.Under):
			// "under copings": what lies there is asked
		case m.product >= 0:
			add(r.keyOf(m.product))
		case m.unknownTag:
			add(m.tag) // of a material that the workbook does not have
		case m.product < 0 && m.mat.Family == "" && len(m.mat.Traits) > 0 && strings.HasPrefix(m.mat.Traits[0], "grade-"):
			// "humid all winter" tells of the season and not of a winter grade
		case m.product < 0 && m.mat.Family != "" && slices.ContainsFunc(m.mat.Traits, func(t string) bool { return r.words.singles[t] }):
			add(m.mat.Family) // "hot rubber" tells of no other asphalt
		case m.product < 0 && slices.Contains(r.limitRules.ByForm, m.mat.Family):
			add(m.mat.Family)
		case m.product < 0 && len(m.mat.Traits) > 0:
			add(m.mat.Traits[0])
		case m.product < 0 && m.mat.Family != "" && m.mat.Class != "substrate" && (slices.Contains(r.limitRules.Forms, m.mat.Family) || !r.limitRules.skip[lastWord(m.mat.Text)+"s"]):
			add(m.mat.Family)
		}
	}
	return out
}

// bedsIn lists the keys of what a note says that the sheets of a wall lie on, which it asks
// nothing of: "sheets over wood sheathing (W5)".
func (r *reader) bedsIn(text string) []string {
	var out []string
	for _, m := range r.lex.find(text) {
		if m.product < 0 && r.words.roleByClass[m.mat.Class] == "substrate" && r.words.hasAny(lastWords(text[:m.start], 2), r.limitRules.On) {
			out = append(out, m.mat.Keys...)
		}
	}
	return out
}

// otherwiseOpen holds for a product that is open to vapor where the words that ask
// something of all of its letters say that the tight ones are meant, and the other way
// round: "AB sheets, vapor-tight".
func (r *reader) otherwiseOpen(product int, text string) bool {
	p := &r.sched.Products[product]
	for _, m := range r.lex.find(text) {
		if m.product >= 0 || m.mat.Family != "" && !strings.HasSuffix(m.mat.Family, "-unspecified") {
			continue
		}
		open := slices.Contains(p.Keys, openTrait) || r.isOpen(p)
		if slices.Contains(m.mat.Traits, tightTrait) && open || slices.Contains(m.mat.Traits, openTrait) && !open {
			return true
		}
	}
	return false
}

// isOpen holds for a product whose data tells a permeance that no vapor retarder has.
func (r *reader) isOpen(p *Product) bool {
	f, ok := p.Figures["vapor_ng"]
	return ok && f.Min != nil && *f.Min >= r.limitRules.Open
}

const (
	openTrait  = "vapor-permeable"
	tightTrait = "vapor-tight"
)

// opensWith holds for a sentence that one word or none stands in before what it asks
// something of: "Outside insulation stays above 10 perm".
func opensWith(text string, start int) bool { return len(strings.Fields(text[:start])) < 2 }

// ofBefore are words of what the sentence before has named.
var ofBefore = regexp.MustCompile(`(?i)\b(?:under|beneath|below|behind) (?:it|them|these|those|that)\b`)

// whenBefore is the case of the limit that the note stated last: "charcoal caps run to
// 80 °C. What lies under them serves to 95 °C".
func (r *reader) whenBefore(at At) []string {
	if n := len(r.sched.Project.Limits); n > 0 && r.sched.Project.Limits[n-1].At == at {
		return slices.Clone(r.sched.Project.Limits[n-1].When)
	}
	return []string{}
}

// classOf is the class of what a mention stands for.
func (r *reader) classOf(m mention) string {
	if m.product >= 0 {
		return r.sched.Products[m.product].Class
	}
	return m.mat.Class
}

// tagged lists the products of the tags that begin with a word of a text: the SA-1
// and SA-2 of "laps of SA and HT goods".
func (r *reader) tagged(text string) map[string][]int {
	out := map[string][]int{}
	for _, w := range cellWords(text) {
		if len(w) < minPrefix || w != strings.ToUpper(w) || out[w] != nil {
			continue
		}
		for i := range r.sched.Products {
			if strings.Trim(tagPrefix(r.sched.Products[i].Tag), "-./ ") == w {
				out[w] = append(out[w], i)
			}
		}
	}
	return out
}

// tagKeys lists the keys of the products of which a text names the letters of the tag.
func (r *reader) tagKeys(text string) []string {
	out := []string{}
	for _, products := range r.tagged(text) {
		for _, i := range products {
			out = append(out, r.keyOf(i))
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// namedKeys lists the keys of the products that a text names by their whole tags.
func (r *reader) namedKeys(text string) []string {
	out := []string{}
	for _, found := range r.lex.findTags(text) {
		if found.product >= 0 {
			out = append(out, r.keyOf(found.product))
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// describedBy lists the products whose own names have all the words that stand right
// before a figure, two or more: "opening flashing 30 mil" is said of "butyl tape, for
// opening flashing".
func (r *reader) describedBy(before string) []string {
	out := []string{}
	words := slices.DeleteFunc(headingWords(before[strings.LastIndexAny(before, ":;,")+1:]), func(w string) bool {
		return slices.Contains(r.limitRules.Bounds, w)
	})
	if len(words) < 2 {
		return out
	}
	for i := range r.sched.Products {
		name := set(headingWords(r.sched.Products[i].Name))
		if !slices.ContainsFunc(words, func(w string) bool { return !name[w] }) {
			out = append(out, r.keyOf(i))
		}
	}
	return out
}

// minPrefix is how long the letters of a tag are that stand for all its products.
const minPrefix = 2

// keyOf is the key that tells a product: its family, where no other product of the
// workbook is of it and it is not that of whatever is put on wet or of whatever bars air,
// which would ask it of all such, else its id.
func (r *reader) keyOf(product int) string {
	p := &r.sched.Products[product]
	open := slices.Contains(r.limitRules.Forms, p.Family) || slices.Contains(r.limitRules.AnySheet, p.Family)
	for i := range r.sched.Products {
		if open || i != product && r.sched.Products[i].Family == p.Family {
			return p.ID
		}
	}
	return cmp.Or(p.Family, p.ID)
}

// sheetsIn lists the sheets that the words after a figure name ("28 days before
// AB-4"), by family or by what says how they go on.
func (r *reader) sheetsIn(text string) []string {
	out := []string{}
	for _, m := range r.lex.find(text) {
		keys, class := m.mat.Keys, m.mat.Class
		if m.product >= 0 {
			p := &r.sched.Products[m.product]
			keys, class = p.Keys, p.Class
			if len(keys) > 0 && !strings.HasSuffix(keys[0], "-unspecified") {
				out = append(out, r.keyOf(m.product))
				continue
			}
		}
		if role := r.words.roleByClass[class]; m.product < 0 && role != "membrane" && role != "flashing" || len(keys) == 0 {
			continue
		}
		if strings.HasSuffix(keys[0], "-unspecified") && !slices.Contains(r.limitRules.Forms, keys[0]) {
			keys = keys[1:]
		}
		if len(keys) > 0 {
			out = append(out, keys[0])
		}
	}
	return out
}

// coinsWord holds for the words before the sign of a definition, where they are
// one word that is no figure's own name.
func (r *reader) coinsWord(before string) bool {
	words := slices.DeleteFunc(headingWords(before), func(w string) bool { return strings.Trim(w, "0123456789") == "" })
	if len(words) != 1 {
		return false
	}
	return !slices.ContainsFunc(r.head.match(words[0]), func(g guess) bool { return g.score >= 1 })
}

// madeBy lists the sheets of the makers that a text names, by their products: "Tarn sheets
// lap 3 in." asks nothing of the others. A word of the trade that begins names is no maker.
func (r *reader) madeBy(text string) []string {
	out := []string{}
	for _, word := range makeWord.FindAllString(text, -1) {
		if !r.lex.isMaker(word) || len(r.vocab.Find(word)) > 0 || len(r.rolesIn(word)) > 0 || len(r.head.match(word)) > 0 {
			continue
		}
		for i := range r.sched.Products {
			p := &r.sched.Products[i]
			if role := r.words.roleByClass[p.Class]; strings.HasPrefix(fold(p.Tag), fold(word)+" ") && (role == "membrane" || role == "flashing") {
				out = append(out, p.ID)
			}
		}
	}
	return out
}

// ofSheetsAt narrows a limit to the sheets of the one place that the words before its figure
// tell of: "Wall sheet 1.0 mm, foundation sheet 1.5 mm"; with "and roof" to both.
func (r *reader) ofSheetsAt(l *Limit, before string) {
	place, rest := "", before
	for _, at := range slices.Sorted(maps.Keys(r.limitRules.Sheets)) { // "foundation wall sheet" is read first
		if !r.words.hasAny(rest, r.limitRules.Sheets[at]) {
			continue
		}
		if place != "" {
			return // "wall sheet onto foundation sheet 150 mm"
		}
		place, rest = at, r.words.without(rest, r.limitRules.Sheets[at])
	}
	switch {
	case place == "":
		return
	case l.Scope == "":
		l.Scope = place
	case wallsAndRoof.MatchString(before):
		l.Scope += ", " + place
	default:
		return
	}
	if len(l.Roles)+len(l.Keys) == 0 {
		l.Roles = []string{"membrane"}
	}
}

// wallsAndRoof is what names the sheets of walls and of roofs together.
var wallsAndRoof = regexp.MustCompile(`(?i)\bwall (?:sheets?|membranes?|shts?)\s*(?:and|&|/|\+)\s*roofs?\b|\broofs?(?: (?:sheets?|membranes?))?\s*(?:and|&|/|\+)\s*wall (?:sheets?|membranes?|shts?)\b`)
