package schedule

import (
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/workbook"
)

// projectFacts reads everything outside the tables: title blocks, notes under
// tables, sheets of notes.
func (r *reader) projectFacts(s *workbook.Sheet, tables []*table) {
	inTable := map[int]bool{}
	for _, t := range tables {
		if t.kind == kindOther {
			continue
		}
		for row := t.head[0]; row <= t.last; row++ {
			inTable[row] = true
		}
	}
	for _, row := range s.Rows {
		if inTable[row.Number] {
			continue
		}
		r.note(s, row)
	}
}

// note reads one row outside the tables; a number or letter in a cell of its
// own is the note's number.
func (r *reader) note(s *workbook.Sheet, row workbook.Row) {
	var words []string
	at := At{Sheet: s.Name, Row: row.Number}
	for _, c := range row.Cells {
		v := strings.TrimSpace(c.Value)
		if v == "" || c.Merged {
			continue
		}
		if at.Cell == "" || len(v) > 6 {
			at.Cell = c.Ref()
		}
		words = append(words, v)
	}
	if len(words) == 0 {
		return
	}
	text := strings.Join(words, " ")
	p := &r.sched.Project
	if p.Name == "" {
		p.Name = words[0]
	}
	p.Notes = append(p.Notes, Fact{Text: text, At: at})
	p.Places = append(p.Places, Fact{Text: text, At: at})
	heading := ""
	for i, sentence := range r.sentences(text) {
		limits := len(p.Limits)
		r.limitsIn(strings.TrimPrefix(heading+": "+sentence, ": "), at)
		if words := headingWords(sentence); i == 0 && len(words) <= 4 {
			heading = sentence
		}
		r.roomIn(sentence, at)
		r.noteSignals(sentence, at, len(p.Limits) > limits)
	}
}

// noteSignals keeps the conditions that a sentence states for the whole job; in
// one that states a limit, the words that narrow it are no such condition.
func (r *reader) noteSignals(sentence string, at At, limit bool) {
	for _, cl := range r.phrase.Read(sentence, &heard{lex: r.lex}, phrase.Options{}) {
		for _, s := range cl.Signals {
			if s.If {
				continue // "unless tented", "if frost": said of a case, not of this one
			}
			if _, narrows := r.limitRules.When[s.ID]; narrows && limit {
				continue
			}
			said := Said{ID: s.ID, No: s.No, Text: s.Text, Slot: "note", At: at}
			r.sched.Project.Signals = append(r.sched.Project.Signals, said)
		}
	}
}

// sentences parts a note at semicolons and at full stops that end a sentence.
func (r *reader) sentences(text string) []string {
	var out []string
	for _, p := range r.words.splitList(text) {
		out = append(out, p.text)
	}
	return out
}

// limitsIn finds the limits that one sentence states.
func (r *reader) limitsIn(sentence string, at At) {
	if m := r.words.definition.FindStringSubmatch(sentence); m != nil && strings.Contains(m[0], "=") && (r.appliedWet(m[2]) || strings.ContainsAny(m[1], "0123456789")) {
		return // "PW = water-borne primer, 50 g/L" tells of one product
	}
	last := 0
	keys := []string{}
	quantities := r.phrase.Quantities(sentence, "")
	for i, q := range quantities {
		if q.Start < last {
			continue
		}
		next := len(sentence)
		if i+1 < len(quantities) {
			next = max(q.End, quantities[i+1].Start)
		}
		for _, rule := range r.limitRules.Figures {
			around := around{sentence, sentence[:quantities[0].Start], sentence[last:q.End], sentence[q.End:next]}
			if !r.states(rule, q, around) {
				continue
			}
			l := r.limit(rule, q, around, at)
			if rule.Keys && len(l.Keys) == 0 {
				l.Keys = keys // "SBS sheets 40 mil above grade, 60 mil below grade"
			}
			keys = l.Keys
			r.sched.Project.Limits = append(r.sched.Project.Limits, l)
			break
		}
		last = q.End
	}
	for _, rule := range r.limitRules.Words {
		if r.allOf(sentence, rule.All) && r.fits(sentence, rule.Any, rule.Unless) {
			r.sched.Project.Limits = append(r.sched.Project.Limits, Limit{Kind: rule.Kind, Text: sentence, At: at, Roles: []string{}, Keys: []string{}, When: []string{}})
		}
	}
}

// appliedWet holds for words that describe a primer, sealant or adhesive.
func (r *reader) appliedWet(text string) bool {
	for _, m := range r.vocab.Find(text) {
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

// states tells whether a figure of a sentence is a limit of the kind.
func (r *reader) states(rule limitFigure, q phrase.Quantity, in around) bool {
	if rule.Quantity != q.Kind || !r.fits(in.sentence, rule.Words, rule.Unless) || r.words.hasAny(firstWords(in.after, 2), rule.After) {
		return false
	}
	return !rule.Subject || r.words.hasAny(firstWords(in.sentence, 5), rule.Words)
}

// firstWords gives the first n words of a text.
func firstWords(text string, n int) string {
	words := strings.Fields(text)
	return strings.Join(words[:min(n, len(words))], " ")
}

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

// limit builds one limit, narrowed by the words that its figure stands among.
func (r *reader) limit(rule limitFigure, q phrase.Quantity, in around, at At) Limit {
	l := Limit{Kind: rule.Kind, Text: strings.TrimSpace(in.sentence), At: at, Roles: []string{}, Keys: []string{}, When: []string{}}
	value := q.Min
	if value == nil {
		value = q.Max
	}
	bound := firstNonEmpty(q.Bound, rule.Bound)
	if rule.Fixed {
		bound = rule.Bound
	}
	if bound == "min" || rule.Bound == "min" && bound != "max" {
		l.Min = value
	} else {
		l.Max = firstOf(q.Max, value)
	}
	if rule.Roles {
		l.Roles = r.rolesIn(in.before)
	}
	if rule.Keys {
		l.Keys = r.keysIn(in.before)
	}
	if rule.KeysAfter {
		l.Keys = r.sheetsIn(in.after)
	}
	if rule.Scope {
		l.Scope = firstNonEmpty(r.scopeIn(in.before), r.scopeIn(firstWords(in.after, 2)))
	}
	if rule.Place {
		l.Scope = r.placeIn(in.sentence)
		if l.Scope == "" && len(l.Keys) == 0 && r.ofRoom(in.sentence) {
			l.Scope = unknownPlace
		}
	}
	if rule.When {
		l.When = r.whenIn(in.before)
		if len(r.whenIn(in.lead)) == 0 { // "185 F under black metal, 160 F under white"
			l.When = r.whenIn(in.after)
		}
	}
	return l
}

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
	slices.Sort(out)
	return out
}

func (r *reader) whenIn(text string) []string {
	out := []string{}
	for id, words := range r.limitRules.When {
		if r.words.hasAny(text, words) {
			out = append(out, id)
		}
	}
	slices.Sort(out)
	return out
}

func (r *reader) scopeIn(text string) string {
	for scope, words := range r.limitRules.Scopes {
		if r.words.hasAny(text, words) {
			return scope
		}
	}
	return ""
}

// keysIn lists the chemistry that the words before a figure name ("asphaltic
// and butyl sheets").
func (r *reader) keysIn(text string) []string {
	out := []string{}
	add := func(key string) {
		if !slices.Contains(out, key) {
			out = append(out, key)
		}
	}
	for _, m := range r.lex.find(text) {
		switch {
		case m.product >= 0 && r.sched.Products[m.product].Family != "":
			add(r.sched.Products[m.product].Family)
		case m.product < 0 && len(m.mat.Traits) > 0:
			add(m.mat.Traits[0])
		case m.product < 0 && m.mat.Family != "" && m.mat.Class != "substrate" && !r.limitRules.skip[lastWord(m.mat.Text)+"s"]:
			add(m.mat.Family)
		}
	}
	return out
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
		}
		if role := r.words.roleByClass[class]; role != "membrane" && role != "flashing" || len(keys) == 0 {
			continue
		}
		if strings.HasSuffix(keys[0], "-unspecified") {
			keys = keys[1:]
		}
		if len(keys) > 0 {
			out = append(out, keys[0])
		}
	}
	return out
}

// placeIn finds the place that a limit is stated for: the longest run of its
// words that stands in the place of some line, and not of most; the first of
// several.
func (r *reader) placeIn(sentence string) string {
	words := headingWords(sentence)
	for n := min(4, len(words)); n > 0; n-- {
		for i := 0; i+n <= len(words); i++ {
			run := strings.Join(words[i:i+n], " ")
			if n == 1 && (len(run) < 4 || r.limitRules.skip[run]) {
				continue
			}
			for _, form := range []string{run, strings.TrimSuffix(run, "s"), run + "s"} {
				if c := r.places[form]; c > 0 && c*3 <= r.placeRows {
					return form
				}
			}
		}
	}
	return ""
}

// unknownPlace is the scope of a limit for a room that no line names; it holds
// for none.
const unknownPlace = "(place not found)"

// ofRoom holds for a sentence that speaks of a room's own climate.
func (r *reader) ofRoom(sentence string) bool {
	for _, q := range r.phrase.Quantities(sentence, "") {
		if q.Kind == "ratio" || q.Kind == "temperature" {
			return true
		}
	}
	return false
}

// roomIn finds stated indoor conditions: a temperature or a relative humidity
// with words of a room.
func (r *reader) roomIn(sentence string, at At) {
	rules := r.limitRules.Indoor
	if !r.fits(sentence, rules.Words, rules.Unless) {
		return
	}
	room := Room{Text: sentence, At: at}
	for _, q := range r.phrase.Quantities(sentence, "") {
		switch {
		case q.Kind == "temperature" && q.Min != nil && room.TempC == nil:
			room.TempC = q.Min
		case q.Kind == "ratio" && q.Min != nil && room.RH == nil:
			rh := *q.Min
			if rh > 1 {
				rh /= 100
			}
			room.RH = &rh
		}
	}
	if room.TempC != nil || room.RH != nil {
		r.sched.Project.Indoor = append(r.sched.Project.Indoor, room)
	}
}
