package schedule

import (
	"slices"
	"strings"

	"abut/internal/material"
	"abut/internal/regexp"
)

// targets lists the materials that a keep-away or suits cell names. What it says
// may be met is an exception; where the heading names more than what to keep off
// ("keep off / good to know"), a sentence that bars nothing in words bars only as
// a bare list.
func (r *reader) targets(p *Product, c source) []Target {
	var out []Target
	if c.slot == "keep_off" {
		c.text = r.withoutCure(c.text)
	}
	for i, part := range r.words.stances(r.eachOfNoun(r.unbracketed(c.text))) {
		if r.words.accept.heat.MatchString(part.text) {
			continue
		}
		if made := r.companions(p, c, part.text); c.slot == "keep_off" && (c.mixed || i > 0) && len(made) > 0 {
			out = append(out, made...)
			continue
		}
		if of := r.elseAs(p, part.text); of != nil {
			if of.ID != p.ID {
				out = append(out, of.KeepOff...)
			}
			continue
		}
		off := r.words.hasAny(part.text, r.words.accept.Off)
		meant := r.words.hasAny(firstWords(part.text, 2), r.words.accept.Meant) || r.words.hasAny(part.text, r.words.accept.Only)
		except := r.words.hasAny(r.words.without(part.text, r.words.accept.NotFine), r.words.accept.Fine) || !off && (meant || c.goes)
		part.text = r.reasoned(r.words.before(part.text, r.words.accept.Unless))
		lead := ""
		if c.slot == "keep_off" {
			lead = r.words.accept.denied.FindString(part.text)
			part.text = r.words.accept.harm.ReplaceAllString(r.words.accept.denied.ReplaceAllString(part.text, ""), "")
		}
		if c.mixed && !except && !off && (c.worded && r.namesTags(part.text) || !r.bareList(part.text)) {
			continue
		}
		last, joined, lies := 0, false, ""
		found := r.withFaces(r.near(p, part.text), part.text)
		if c.slot == "keep_off" {
			found = r.notOwnFace(part.text, found)
		}
		freed, spent := r.freed(part.text, found)
		for i, m := range found {
			if spent[i] {
				continue // "(P-4 on steel excepted)" says nothing of all steel
			}
			joined = joined && listWord.MatchString(part.text[min(last, m.start):m.start]) ||
				r.words.hasAny(lastWords(part.text[:m.start], 3), r.words.accept.Joined) && !r.words.accept.unjoined.MatchString(lead+part.text[:m.start])
			lies = r.barredOrder(lead, part.text, last, m, lies)
			if last = m.end; joined {
				continue // "never left in view, stick it to DM-2 or DM-3"
			}
			if r.isSeparator(m) || r.partsInWords(part.text, m) || r.stateBarred(part.text, m) {
				continue // "never on asphalt; SR-2 between", "damp concrete"
			}
			tg := r.target(m, part.text[m.start:m.end], c.at)
			tg.Except, tg.Lies = (except && c.slot == "keep_off") != freed[i] || c.slot != "keep_off" && r.partedFrom(part.text, m), lies
			out = append(out, tg)
		}
	}
	return out
}

// notOwnFace takes out the face on which a sentence says that something else does not
// hold, which is the product's own and bars nothing of that kind beside it: "Silicone does
// not hold to the polyethylene film".
func (r *reader) notOwnFace(text string, found []mention) []mention {
	at := r.words.accept.notHeld.FindStringIndex(text)
	if at == nil || !slices.ContainsFunc(found, func(m mention) bool { return m.end <= at[0] }) {
		return found
	}
	return slices.DeleteFunc(found, func(m mention) bool { return m.start >= at[1] })
}

// withFaces adds the film on the face of sheets where the words for it name no material
// by themselves, and takes out what was found of single ones.
func (r *reader) withFaces(found []mention, text string) []mention {
	for _, at := range r.words.accept.filmFace.FindAllStringIndex(text, -1) {
		within := func(m mention) bool { return at[0] <= m.start && m.end <= at[1] }
		if slices.ContainsFunc(found, func(m mention) bool { return m.start < at[1] && at[0] < m.end && (m.product >= 0 || !within(m)) }) {
			continue // "PE-faced asphalt sheet"
		}
		found = append(slices.DeleteFunc(found, within), mention{start: at[0], end: at[1], product: -1, mat: r.vocab.Describe(plainFilm)})
	}
	slices.SortStableFunc(found, func(a, b mention) int { return a.start - b.start })
	return found
}

// plainFilm is called so wherever it is the face of a sheet.
const plainFilm = "polyethylene film"

// companions lists the products that a sentence names as made for this one: "Edge sealant
// JS-2", "Seal laps with JS-2 or JS-3". They may meet it.
func (r *reader) companions(p *Product, c source, text string) []Target {
	var out []Target
	last := 0
	for _, m := range r.near(p, text) {
		switch {
		case m.product < 0 && len(out) == 0:
		case m.product < 0: // "Seam tape R-2, EPDM"
			return nil
		case len(out) == 0 && !r.words.accept.companion.MatchString(text[:m.start]), len(out) > 0 && !listWord.MatchString(text[last:m.start]):
			return nil // what else it says is no list of them
		default:
			tg := r.target(m, text[m.start:m.end], c.at)
			tg.Except = true
			out, last = append(out, tg), m.end
		}
	}
	return out
}

// midBracket is a word in brackets between two others: "flexible (plasticized) PVC".
var midBracket = regexp.MustCompile(`([A-Za-z]+) \(([A-Za-z]+)\) ([A-Za-z]+)`)

// unbracketed takes off the brackets of a word in the middle of what names a material.
func (r *reader) unbracketed(text string) string {
	return midBracket.ReplaceAllStringFunc(text, func(in string) string {
		out := midBracket.ReplaceAllString(in, "$1 $2 $3")
		if m := r.vocab.Describe(out); m.Family == "" && len(m.Keys) == 0 {
			return in
		}
		return out
	})
}

// barredOrder tells which way round a material is barred ("never over PVC"); those that
// follow in the list share it. Lead is what was cut off before the text.
func (r *reader) barredOrder(lead, text string, last int, m mention, before string) string {
	switch {
	case r.words.accept.liesUnder.MatchString(text[m.end:]):
		return "under"
	case r.words.accept.liesOver.MatchString(lead + text[:m.start]):
		return "over"
	case listWord.MatchString(text[min(last, m.start):m.start]):
		return before
	}
	return ""
}

// isSeparator holds for what is made to part two others: nothing is kept off it.
func (r *reader) isSeparator(m mention) bool {
	if m.product < 0 {
		return false
	}
	p := &r.sched.Products[m.product]
	return p.Class == "separator" || slices.Contains(p.Keys, "separator") && p.Class != "coating"
}

// partsInWords holds for the material of a separator that the list asks for: of
// "bitumen: separator of metal" the metal is what may lie there.
func (r *reader) partsInWords(text string, m mention) bool {
	return m.product < 0 && r.words.accept.parts.MatchString(text[:m.start]+"#"+text[m.start:m.end]+"#"+text[m.end:])
}

// partedFrom holds for what a list of uses asks to part the product from: of "low roof;
// plate between it and the asphalt" the asphalt is none of its neighbors.
func (r *reader) partedFrom(text string, m mention) bool {
	return r.words.accept.parted.MatchString(text[:m.start] + "#" + text[m.start:m.end] + "#" + text[m.end:])
}

// stateBarred holds for a bed that is barred in a state that passes: "damp concrete"
// says nothing of concrete that is dry.
func (r *reader) stateBarred(text string, m mention) bool {
	bed := m.product < 0 && bedClass[m.mat.Class] && m.mat.Class != "lumber" // "wet-treated lumber"
	return bed && r.words.accept.passing.MatchString(text[:m.start]+"#"+text[m.start:m.end])
}

// elseAs is the product whose list holds for the rest ("Else as AB-1"), nil for
// none.
func (r *reader) elseAs(p *Product, text string) *Product {
	lead := r.words.accept.elseAs.FindStringIndex(text)
	if lead == nil {
		return nil
	}
	if i, _, known := r.namedAt(p, text, lead[1], len(strings.TrimRight(text, " .,;"))); known {
		return &r.sched.Products[i]
	}
	return nil
}

// listWord is all that stands between two of a list.
var listWord = regexp.MustCompile(`^(?i:\s|[,/&+]|\bor\b|\band\b)*$`)

var reasonEnd = regexp.MustCompile(`\s[–—-]\s+|:\s+`)

// reasoned cuts off what a stance opens with as its reason or its case: "Solvent
// – keep off TW-1", "Inside corners: not with TW-2".
func (r *reader) reasoned(text string) string {
	for _, at := range reasonEnd.FindAllStringIndex(text, -1) {
		if rest := text[at[1]:]; r.words.hasAny(firstWords(rest, 2), r.words.accept.Off) && len(r.lex.findListed(rest)) > 0 {
			return rest
		}
	}
	return text
}

var turned = regexp.MustCompile(`,\s+(?:but\s+)?(?:not|never|no|keep\s+(?:it\s+)?(?:off|out|away|clear))\s|\sbut\s+(?:not|never|no)\s`)

// stances parts a cell as splitItems does, and further where it turns to what is
// not meant: "for the film sheets only, not the butyl".
func (w *wordlists) stances(text string) []part {
	var out []part
	for _, p := range w.splitItems(text) {
		if at := turned.FindStringIndex(p.text); at != nil {
			out = append(out, part{p.text[:at[0]], p.listed}, part{p.text[at[0]+1:], p.listed})
			continue
		}
		if at := dashed.FindStringIndex(p.text); at != nil && w.hasAny(firstWords(p.text[at[1]:], 2), w.accept.Meant) {
			out = append(out, part{p.text[:at[0]], p.listed}, part{p.text[at[1]:], p.listed})
			continue
		}
		out = append(out, p)
	}
	return out
}

// dashed parts a list from where the product belongs: "coal tar - stay on metal".
var dashed = regexp.MustCompile(`\s[-–—]\s`)

// namesTags holds for a text with a product of the workbook.
func (r *reader) namesTags(text string) bool {
	return slices.ContainsFunc(r.lex.findTags(text), func(m mention) bool { return m.product >= 0 })
}

// bareList holds for a text that names materials and says little else.
func (r *reader) bareList(text string) bool {
	rest := []byte(text)
	for _, m := range r.withFaces(r.lex.findListed(text), text) {
		for i := m.start; i < m.end; i++ {
			rest[i] = ' '
		}
	}
	return len(headingWords(string(rest)))*2 <= len(headingWords(text))
}

// suited lists what a primer or sealant is for; "tested compatible with" is no
// exception there. A sentence that opens with what to keep off is no part of it, nor one
// that asks for something first: "stone: stain trial first" leaves the question open.
func (r *reader) suited(p *Product, c source) []Target {
	var fit, barred []string
	left := false // some sentence
	for _, part := range r.words.stances(c.text) {
		if r.words.proviso.MatchString(part.text) {
			left = true
			continue
		}
		if bare := r.words.accept.unprimed.ReplaceAllString(part.text, ""); bare != part.text {
			fit = append(fit, bare) // "no primer on gypsum or plywood": they are met, and unprimed
			continue
		}
		if r.words.hasAny(firstWords(part.text, 2), r.words.accept.Off) {
			barred = append(barred, part.text)
		} else {
			fit = append(fit, part.text)
		}
	}
	if len(barred) > 0 {
		off := c
		off.text, off.slot, off.goes = strings.Join(barred, "\n"), "keep_off", false
		p.KeepOff = append(p.KeepOff, r.targets(p, off)...)
	}
	if len(barred) > 0 || left {
		c.text = strings.Join(fit, "\n")
	}
	return slices.DeleteFunc(r.targets(p, c), func(t Target) bool {
		if t.Except { // "all metals but copper"
			t.Except = false
			p.KeepOff = append(p.KeepOff, t)
			return true
		}
		return false
	})
}

// withoutCure takes out the brackets after what is to be kept off that name what parts the
// two, and nothing else: "keep off asphalt (poly slip sheet between)". What shares a trait
// with what is kept off is an example of it: "no bitumen (felt)".
func (r *reader) withoutCure(text string) string {
	var out strings.Builder
	last := 0
	for _, at := range bracket.FindAllStringIndex(text, -1) {
		off, cures := r.lex.named(text[last:at[0]]), r.lex.named(text[at[0]:at[1]])
		out.WriteString(text[last:at[0]])
		if last = at[1]; len(off) == 0 || !areCures(cures, off[len(off)-1]) || r.words.hasAny(text[at[0]:at[1]], r.words.accept.Off) {
			out.WriteString(text[at[0]:at[1]])
		}
	}
	return out.String() + text[last:]
}

func areCures(named []material.Material, off material.Material) bool {
	return len(named) > 0 && !slices.ContainsFunc(named, func(m material.Material) bool {
		shared := slices.ContainsFunc(m.Traits, func(trait string) bool { return slices.Contains(off.Traits, trait) })
		return shared || !slices.Contains(m.Traits, "separator")
	})
}

// remarkTargets takes "EPDM may bear on it" and "No: coal tar" from notes.
func (r *reader) remarkTargets(p *Product, c source) {
	for _, words := range r.remarkStances(c.text) {
		if off := noContact.FindStringSubmatch(words); off != nil {
			for _, m := range r.near(p, off[1]) {
				p.KeepOff = append(p.KeepOff, r.target(m, off[1][m.start:m.end], c.at))
			}
			continue
		}
		fine, not := r.words.hasAny(words, r.words.accept.Fine), r.words.hasAny(words, r.words.accept.Not)
		fine = fine || r.words.hasAny(firstWords(words, 2), r.words.accept.Meant)
		if !fine && !not {
			continue
		}
		found := r.near(p, words)
		if not && !fine && r.ofAnother(p, words, found) {
			continue
		}
		for _, m := range found {
			if r.stateBarred(words, m) {
				continue
			}
			tg := r.target(m, words[m.start:m.end], c.at)
			tg.Except = fine && !not
			p.KeepOff = append(p.KeepOff, tg)
		}
	}
}

// noContact is a remark that keeps what it names from touching the product: "no silicone
// against it", "no EPDM contact", until a letter allows it at most.
var noContact = regexp.MustCompile(`(?i)^\s*no (.+?) (?:contact|in contact|touching|(?:on|against|over|to|at) (?:it|this|them|the (?:sheet|membrane|film|face)))(?:\s*[,.]?\s+(?:without|unless|until)\b.*)?[\s.]*$`)

// ofAnother holds where what a note bars is barred from a primer that it names before the
// words for that, and not from the product itself: "solvent primer not on polystyrene" in
// the row of a sheet.
func (r *reader) ofAnother(p *Product, words string, found []mention) bool {
	if p.Class == "primer" || len(found) < 2 {
		return false
	}
	first := found[0]
	return r.isPrimer(first) && r.words.accept.notOn.MatchString(words[:found[1].start]) && strings.TrimSpace(words[:first.start]) == ""
}

// remarkStances parts a note where what it says turns: a bracket that bars something bars
// what stands in it ("metal laps (solvent: not on foam)"), and what follows a comma and
// "not" is another matter than what stands before it ("metal laps, not for foam").
func (r *reader) remarkStances(text string) []string {
	var out []string
	for _, part := range r.words.splitList(text) {
		rest := bracket.ReplaceAllStringFunc(part.text, func(in string) string {
			if !r.words.hasAny(in, r.words.accept.Not) {
				return in
			}
			out = append(out, r.reasoned(strings.Trim(in, "() ")))
			return " "
		})
		if at := turned.FindStringIndex(rest); at != nil && !r.words.hasAny(rest[:at[0]], r.words.accept.Not) {
			out = append(out, rest[:at[0]])
			rest = rest[at[0]+1:]
		}
		out = append(out, rest)
	}
	return out
}

func (r *reader) target(m mention, words string, at At) Target {
	tg := Target{Text: words, Keys: []string{}, Products: []string{}, At: at}
	if m.product >= 0 {
		p := &r.sched.Products[m.product]
		tg.Products = append(tg.Products, p.ID)
		if bedClass[p.Class] {
			tg.Keys = append(tg.Keys, p.Family)
		}
		return tg
	}
	tg.Keys = r.targetKeys(m.mat)
	if strings.HasSuffix(m.mat.Family, "-unspecified") {
		tg.Products = append(tg.Products, r.begunBy(strings.Fields(words))...)
	}
	return tg
}

// begunBy lists the products whose tags go on from the one word in capitals that a list
// calls them all by, two or more: "MB sheets" of MB-S and MB-HT.
func (r *reader) begunBy(words []string) []string {
	var out []string
	if len(words) == 0 || len(words[0]) < minPrefix || words[0] != strings.ToUpper(words[0]) {
		return nil
	}
	for i := range r.sched.Products {
		if p := &r.sched.Products[i]; strings.HasPrefix(p.Tag, words[0]+"-") && p.Class != "primer" {
			out = append(out, p.ID)
		}
	}
	if len(out) < 2 {
		return nil
	}
	return out
}

// bedClass are the classes of what sheets go on: a list that names one by its tag
// means all of its family.
var bedClass = map[string]bool{"substrate": true, "masonry": true, "lumber": true}

// targetKeys are the keys by which a list means a material: its family and the
// trait that names its chemistry, never a trait that many share. A generic word
// ("wood", "clean metal") means all that have its trait.
func (r *reader) targetKeys(m material.Material) []string {
	if m.Family == "" {
		return append([]string{}, m.Traits...)
	}
	if strings.HasSuffix(m.Family, "-unspecified") && len(m.Traits) > 0 {
		return append([]string{m.Traits[0]}, r.words.alsoMeans[m.Family]...)
	}
	keys := []string{m.Family}
	for _, t := range m.Traits {
		if r.words.singles[t] { // "hot asphalt" harms by its heat, and is no asphaltic sheet
			return append(keys, t)
		}
	}
	if len(m.Traits) > 0 && m.Traits[0] != "metal" && m.Traits[0] != "wood" {
		keys = append(keys, m.Traits[0])
	}
	return append(keys, r.words.alsoMeans[m.Family]...)
}

// near finds mentions in a cell of product data, where products of one maker
// are also called by the last words of their names ("Prime W" or "W").
func (r *reader) near(p *Product, text string) []mention {
	found := r.lex.findListed(text)
	for _, n := range r.lex.ends.in(foldKeep(text), r.lex.shorts) {
		short := r.lex.shorts[n]
		for _, i := range r.lex.short[short] {
			if like := &r.sched.Products[i]; like.maker == p.maker {
				found = r.lex.addShort(found, text, short, i, like.Tag)
			}
		}
	}
	found = r.ofKind(r.lex.addMakes(found, text), text)
	slices.SortStableFunc(found, func(a, b mention) int { return a.start - b.start })
	return found
}

var shortName = regexp.MustCompile(`\b[A-Z][A-Z0-9]{0,2}\b`)

// longNames writes out the products that a cell calls without the maker, or the first
// words of the name, that it has told before: "Larch W or C; on foam W only", "Larch
// Prime W or C".
func (r *reader) longNames(text string) string {
	named := r.lex.findListed(text)
	makers := []string{}
	for _, m := range named {
		if m.product < 0 {
			continue
		}
		for first := r.sched.Products[m.product].Tag; ; {
			at := strings.LastIndexByte(first, ' ')
			if at < 0 {
				break
			}
			if first = first[:at]; !slices.Contains(makers, first) {
				makers = append(makers, first)
			}
		}
	}
	if len(makers) == 0 {
		return text
	}
	var out strings.Builder
	last := 0
	for _, at := range shortName.FindAllStringIndex(text, -1) {
		if slices.ContainsFunc(named, func(m mention) bool { return m.product >= 0 && m.start < at[1] && at[0] < m.end }) {
			continue
		}
		for _, maker := range makers {
			if _, known := r.lex.tags[fold(maker+" "+text[at[0]:at[1]])]; known {
				out.WriteString(text[last:at[0]] + maker + " ")
				last = at[0]
				break
			}
		}
	}
	return out.String() + text[last:]
}

// addShort adds a product called by its short name where nothing else stands;
// a single letter must stand in capitals.
func (l *lexicon) addShort(found []mention, text, short string, product int, tag string) []mention {
	low := foldKeep(text)
	for i, end := range wholeWords(low, short) {
		if !l.heads[short] && !strings.Contains(tag, text[i:end]) { // "wet" is not "Tarn Wet"
			continue
		}
		free := true
		for k, m := range found {
			if m.start < end && i < m.end {
				free = m.product < 0 && m.end-m.start <= len(short) && !m.unknownTag || m.unknownTag
				if free {
					found = append(found[:k], found[k+1:]...)
				}
				break
			}
		}
		if free {
			found = append(found, mention{start: i, end: end, product: product, tag: tag})
		}
	}
	return found
}
