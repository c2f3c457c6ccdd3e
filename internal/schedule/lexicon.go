package schedule

import (
	"cmp"
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"abut/internal/material"
	"abut/internal/regexp"
)

// lexicon finds the workbook's own tags and product names in a text, and
// generic materials in what is left.
type lexicon struct {
	vocab  *material.Vocabulary
	seen   map[string][]material.Material // what the vocabulary found in texts asked before
	tags   map[string]int                 // folded tag or name -> index of product
	names  []string                       // folded, longest first
	index  nameIndex                      // of names
	shape  map[string]int                 // tag prefixes in use ("AB-", "R-") and how often
	marks  map[string]bool
	short  map[string][]int             // folded last words of a product name -> products
	shorts []string                     // the keys of short, longest first
	ends   nameIndex                    // of shorts
	lead   map[string]int               // folded first word of "Larch Primer", by which lists call it
	heads  map[string]bool              // words that end such names
	unmade map[string]string            // names without their first word -> that word, folded
	called map[string]bool              // such names, folded, by which the schedule calls products
	brands map[string]bool              // names of a brand and a code, folded
	worded int                          // products that are called by names in words
	kin    map[string]material.Material // what several products of one name are, by that
	maker  map[string]int               // folded first word of product names of several words -> how many have it
	kindly map[string][]int             // names without the word for their kind that they end in, folded -> products
	figure func(string) bool            // holds for a text that is a figure as a whole ("R-21")
}

func newLexicon(vocab *material.Vocabulary, figure func(string) bool) *lexicon {
	return &lexicon{vocab: vocab, figure: figure, seen: map[string][]material.Material{}, tags: map[string]int{}, shape: map[string]int{}, marks: map[string]bool{}, short: map[string][]int{}, maker: map[string]int{}, lead: map[string]int{}, kindly: map[string][]int{}, heads: map[string]bool{}, unmade: map[string]string{}, called: map[string]bool{}, brands: map[string]bool{}, kin: map[string]material.Material{}}
}

// add makes a product known by its tag or name.
func (l *lexicon) add(tag string, index int) {
	key := fold(tag)
	if key == "" {
		return
	}
	if _, again := l.tags[key]; !again {
		l.tags[key] = index
		l.names = append(l.names, key)
	}
	if p := cmp.Or(tagPrefix(tag), codeLead(tag)); p != "" {
		l.shape[p]++
	}
	words := strings.Fields(parenthesis.ReplaceAllString(tag, " "))
	if n := len(words); n == 2 && l.heads[fold(words[1])] {
		l.lead[fold(words[0])] = index
	}
	if n := len(words); n > 2 && l.heads[fold(words[n-1])] {
		if name := strings.Join(words[:n-1], " "); brandAndCode.MatchString(name) {
			l.kindly[fold(name)] = append(l.kindly[fold(name)], index)
		}
	}
	if len(words) > 1 {
		l.maker[fold(words[0])]++
		l.brands[key] = brandShape.MatchString(strings.TrimSpace(tag))
		if short := strings.Join(words[1:], " "); nameShape.MatchString(short) {
			l.unmade[short] = fold(words[0])
		}
	}
	for i := 1; i < len(words); i++ {
		short := fold(strings.Join(words[i:], " "))
		if strings.ContainsFunc(short, unicode.IsLetter) { // "Drayer 60" is not called "60"
			l.short[short] = append(l.short[short], index)
		}
	}
}

// done ends the names: ordinary words are none of a brand.
func (l *lexicon) done(ordinary func(string) bool) {
	l.addEnds()
	l.addUnsized()
	l.addUnkinded()
	l.addUnmade()
	l.addBrands(ordinary)
	longest := func(a, b string) int { return cmp.Or(len(b)-len(a), strings.Compare(a, b)) }
	slices.SortFunc(l.names, longest)
	l.index = nameIndex{}
	l.shorts, l.ends = slices.SortedFunc(maps.Keys(l.short), longest), nameIndex{}
}

// within takes the codes in the full name of a product for what they are, and for no tags
// of others: "HT-120" of "Weir HT-120 high-temperature sheet", listed as HT-1.
func (l *lexicon) within(name string) {
	for _, code := range tagInText.FindAllString(name, -1) {
		if _, known := l.tags[fold(code)]; !known {
			l.marks[fold(code)] = true
		}
	}
}

// addEnds makes ".P2" known for "072713.P2" where no other tag ends so.
func (l *lexicon) addEnds() {
	ends := map[string][]string{}
	for _, tag := range l.names {
		if i := strings.LastIndexByte(tag, '.'); i > 0 && i+1 < len(tag) {
			ends[tag[i:]] = append(ends[tag[i:]], tag)
		}
	}
	for _, end := range slices.Sorted(maps.Keys(ends)) {
		if _, known := l.tags[end]; !known && len(ends[end]) == 1 {
			l.tags[end] = l.tags[ends[end][0]]
			l.names = append(l.names, end)
		}
	}
}

// addUnsized makes a name in words known without the thickness that it ends in, where no other
// is called so: a row may have "Butyl sheet, film faced, 60 mil" of what is listed at 40.
func (l *lexicon) addUnsized() {
	sized := map[string][]string{}
	for _, name := range l.names {
		at := sizeEnd.FindStringIndex(name)
		if at != nil && len(strings.Fields(name[:at[0]])) >= leastUnsized {
			sized[name[:at[0]]] = append(sized[name[:at[0]]], name)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(sized)) {
		if _, known := l.tags[name]; !known && len(sized[name]) == 1 {
			l.tags[name] = l.tags[sized[name][0]]
			l.names = append(l.names, name)
		}
	}
}

// leastUnsized is how many words tell a product without its thickness.
const leastUnsized = 3

// sizeEnd is the thickness that a name in words ends in: ", 40 mil", ", 1.5 mm dry".
var sizeEnd = regexp.MustCompile(`,?\s+\d+(?:\.\d+)?\s*(?:mils?|mm|thou)\.?(?:\s+(?:thick|dry|dft|nominal|nom\.?))?$`)

// fold makes two spellings of one tag equal: case, dashes and spaces.
func fold(s string) string {
	if isPlain(s) {
		return strings.ToLower(s)
	}
	return strings.ToLower(strings.Join(strings.Fields(plainSigns.Replace(s)), " "))
}

// isPlain holds for a text of plain characters with single spaces in it.
func isPlain(s string) bool {
	space := true
	for i := range len(s) {
		if s[i] <= ' ' && (s[i] != ' ' || space) || s[i] >= utf8.RuneSelf {
			return false
		}
		space = s[i] == ' '
	}
	return !space
}

var tagShape = regexp.MustCompile(`^[A-Za-z]{1,6}[-./ ]?\d{1,3}[A-Za-z]?$`)
var tagPrefixShape = regexp.MustCompile(`^([A-Za-z]{1,6}[-./ ]?)\d{1,3}[A-Za-z]?$`)
var tagInText = regexp.MustCompile(`\b[A-Za-z]{1,6}-?\d{1,3}[A-Za-z]?\b`)
var tagList = regexp.MustCompile(`^(?:\s*[/,&]\s*\d{1,3}\b)+`)

func tagPrefix(tag string) string {
	if m := tagPrefixShape.FindStringSubmatch(strings.TrimSpace(tag)); m != nil {
		return strings.ToUpper(m[1])
	}
	return ""
}

// isTag holds for a text that is a known tag, or has the shape of one in use.
func (r *reader) isTag(s string) bool {
	_, known := r.lex.tags[fold(s)]
	return known || tagShape.MatchString(strings.TrimSpace(s)) && r.lex.shape[tagPrefix(s)] > 0
}

// mention is one material or tag found in a text.
type mention struct {
	start, end int
	product    int // index of the product, -1 if none
	tag        string
	unknownTag bool
	noun       string // the noun that stood right after a tag
	mat        material.Material
}

// find lists the mentions of a text in order: tags first, then the materials
// in what is left.
func (l *lexicon) find(text string) []mention {
	found := l.relatives(text, l.findTags(text))
	return absorb(text, l.materials(found, mask(text, found), 0))
}

// absorb drops the noun right after a tag ("W-1 nailer"): it says what the
// tagged material is there for and names no second one.
func absorb(text string, found []mention) []mention {
	out := found[:0]
	for _, m := range found {
		if n := len(out); n > 0 && out[n-1].tag != "" && m.tag == "" {
			from := max(m.start, out[n-1].end) // the words of a material may begin at the tag itself
			if strings.TrimSpace(text[out[n-1].end:from]) == "" {
				out[n-1].noun = strings.TrimSpace(text[from:max(m.end, from)])
				continue
			}
		}
		out = append(out, m)
	}
	return out
}

// findListed reads a list, where every comma parts two materials ("wood,
// concrete").
func (l *lexicon) findListed(text string) []mention {
	found := l.findTags(text)
	rest := mask(text, found)
	for start := 0; start < len(rest); {
		end := start + strings.IndexAny(rest[start:]+",", ",;/|")
		found = l.materials(found, rest[start:end], start)
		start = end + 1
	}
	slices.SortFunc(found, func(a, b mention) int { return a.start - b.start })
	return found
}

// mask blanks out what was found, keeping the length of the text.
func mask(text string, found []mention) string {
	rest := []byte(text)
	for _, m := range found {
		for i := m.start; i < m.end; i++ {
			rest[i] = '|'
		}
	}
	return string(rest)
}

// named asks the vocabulary once for each text.
func (l *lexicon) named(text string) []material.Material {
	found, ok := l.seen[text]
	if !ok {
		found = l.vocab.Find(text)
		l.seen[text] = found
	}
	return found
}

func (l *lexicon) materials(found []mention, text string, offset int) []mention {
	for _, m := range l.named(text) {
		found = append(found, mention{start: offset + m.Start, end: offset + pastBracket(text, m.Start, m.End), product: -1, mat: m})
	}
	slices.SortStableFunc(found, func(a, b mention) int { return a.start - b.start })
	return found
}

// pastBracket is the end of a name together with the bracket that closes in it: the words
// after "mastic (butyl)" go on with its sentence.
func pastBracket(text string, start, end int) int {
	if name := text[start:end]; strings.Count(name, "(") > strings.Count(name, ")") && strings.HasPrefix(text[end:], ")") {
		return end + 1
	}
	return end
}

// findTags lists known tags and names, and texts of the shape of a tag in use,
// whichever dashes and spaces they are typed with.
func (l *lexicon) findTags(text string) []mention {
	plain, at := plainly(text)
	found := l.tagsIn(plain)
	for i := range found {
		m := &found[i]
		m.start, m.end = at(m.start), at(m.end)
	}
	return found
}

var (
	typed      = regexp.MustCompile("[‐‑–—\u00a0]")
	plainSigns = strings.NewReplacer("‐", "-", "‑", "-", "–", "-", "—", "-", "\u00a0", " ")
)

// plainly writes every dash as a hyphen and every space as a plain one; at
// leads from a byte of the plain text to its place in the text.
func plainly(text string) (plain string, at func(int) int) {
	if !strings.ContainsAny(text, "‐‑–—\u00a0") {
		return text, func(i int) int { return i }
	}
	odd := typed.FindAllStringIndex(text, -1)
	return plainSigns.Replace(text), func(i int) int {
		for _, o := range odd {
			if o[0] >= i {
				break
			}
			i += o[1] - o[0] - 1
		}
		return i
	}
}

func (l *lexicon) tagsIn(text string) []mention {
	var found []mention
	low, taken := foldKeep(text), make([]bool, len(text)+1)
	for _, n := range l.index.in(low, l.names) {
		name := l.names[n]
		for i, end := range wholeWords(low, name) {
			if taken[i] || !l.isCalled(name, text[i:end]) || isWeak(name) && !standsAsCode(text, i, end) {
				continue
			}
			found = append(found, mention{start: i, end: end, product: l.tags[name], tag: text[i:end]})
			mark(taken, i, end)
			found = l.ended(text, l.listed(text, found, taken, end), taken, i, end)
		}
	}
	if len(l.shape) == 0 {
		return l.unlisted(text, found, taken)
	}
	for _, at := range tagInText.FindAllStringIndex(text, -1) {
		t := text[at[0]:at[1]]
		if taken[at[0]] || l.shape[tagPrefix(t)] == 0 || l.marks[fold(t)] || (l.figure(t) || standard.MatchString(t)) && !l.asKnown(t) || l.figure(t) && l.saysResistance(text[at[1]:]) {
			continue
		}
		found = append(found, mention{start: at[0], end: at[1], product: -1, tag: t, unknownTag: true})
		mark(taken, at[0], at[1])
	}
	found = l.strangers(text, found, taken)
	return l.unlisted(text, found, taken)
}

// isResistance holds for a thermal resistance that is written as a code: "R-21". Only
// codes count with leading zeros: "R-010".
func (rd *Reader) isResistance(text string) bool {
	q := rd.phrase.Quantities(text, "r_value")
	return len(q) == 1 && q[0].Kind == "r_value" && q[0].Start == 0 && q[0].End == len(text) && !strings.Contains(text, "-0")
}

// figureGoesOn stands after the first digits of a thermal resistance, or of insulation of
// so much: "R-7.5", "R-8 ci".
var figureGoesOn = regexp.MustCompile(`(?i)^(?:\.\d|\s*/\s*in|\s+(?:c\.?i|per in|cont\.|continuous|cavity|min\.?(?:imum)?\s+(?:outboard|outside|continuous|ci))\b)`)

// saysResistance holds for what follows a resistance that is written as a known tag is: its
// other digits, or at once the name of an insulation ("R-8 mineral wool" beside a roof R-1).
func (l *lexicon) saysResistance(after string) bool {
	if figureGoesOn.MatchString(after) {
		return true
	}
	named := l.named(strings.TrimLeft(listEnd.Split(after, 2)[0], " "))
	return strings.HasPrefix(after, " ") && len(named) > 0 && named[0].Start == 0 && named[0].Class == "insulation"
}

// standard is the number of a test, where no product is called so: "S102", "E2178".
var standard = regexp.MustCompile(`^[A-Z]\d{3,4}$`)

// asKnown holds for a code that is written as a known tag is, to the count of its
// digits: R-3 beside R-1, and not R-21.
func (l *lexicon) asKnown(code string) bool {
	return slices.ContainsFunc(l.names, func(name string) bool {
		return len(name) == len(fold(code)) && tagPrefix(name) == tagPrefix(code)
	})
}

// strangers finds codes that stand alone or in square brackets, begin as several known
// ones do ("27-H" beside 27-A and 27-B), and are not in the product data.
func (l *lexicon) strangers(text string, found []mention, taken []bool) []mention {
	if !strings.Contains(text, "[") && strings.ContainsAny(strings.TrimSpace(text), " \t\n") {
		return found
	}
	for _, at := range boxed.FindAllStringSubmatchIndex(text, -1) {
		from, to := max(at[2], at[4]), max(at[3], at[5])
		if code := text[from:to]; !taken[from] && !l.marks[fold(code)] && l.shape[codeLead(code)] > 1 {
			found = append(found, mention{start: from, end: to, product: -1, tag: code, unknownTag: true})
			mark(taken, from, to)
		}
	}
	return found
}

var properName = regexp.MustCompile(`\p{Lu}[\p{L}]+(?: (?:\p{Lu}|\d)[\p{L}\d-]*)+`)

// unlisted finds product names that begin as several known ones do ("Maker
// Edge") and are not in the product data.
func (l *lexicon) unlisted(text string, found []mention, taken []bool) []mention {
	if len(l.maker) == 0 {
		return found
	}
	for _, at := range properName.FindAllStringIndex(text, -1) {
		first, _, _ := strings.Cut(text[at[0]:at[1]], " ")
		if taken[at[0]] || !l.isMaker(first) || l.isFigure(first, text[at[0]:at[1]]) {
			continue
		}
		found = append(found, mention{start: at[0], end: at[1], product: -1, tag: text[at[0]:at[1]], unknownTag: true})
		mark(taken, at[0], at[1])
	}
	return found
}

// isMaker holds for a word that the names of two products or more begin with.
func (l *lexicon) isMaker(word string) bool { return l.maker[fold(word)] > 1 }

// isFigure holds for a brand with a figure that none of its names is written with:
// "Larch 3" is a lap of "Larch 40", 3 in.
func (l *lexicon) isFigure(first, name string) bool {
	number := strings.TrimSpace(name[len(first):])
	return wholeLike.MatchString(number) && !slices.ContainsFunc(l.names, func(known string) bool {
		return strings.HasPrefix(known, fold(first)+" ") && len(digits.FindString(known)) == len(number)
	})
}

// sizeAfter stands after a figure that is a size and no further number of a tag.
// It may be a number of things too: "LQ-2, 2 coats".
var sizeAfter = regexp.MustCompile(`(?i)^\s*(?:/\d|in\b|mm\b|mils?\b|ft\b|["'%°]|(?:coats?|passes|pass|plies|ply|layers?|beads?|rows?|courses?|strips?|pcs|ea)\b)`)

// partsLayers tells a new phrase: a comma, or a stroke with spaces as lists of layers have it.
var partsLayers = regexp.MustCompile(`,|\s[/+|]\s`)

var digits = regexp.MustCompile(`\d+`)

// listed reads "R-01/02/03": further numbers after a tag share its prefix.
func (l *lexicon) listed(text string, found []mention, taken []bool, from int) []mention {
	prefix := tagPrefix(text[found[len(found)-1].start:from])
	m := tagList.FindStringIndex(text[from:])
	if prefix == "" || m == nil {
		return found
	}
	for _, n := range digits.FindAllStringIndex(text[from:from+m[1]], -1) {
		if sizeAfter.MatchString(text[from+n[1]:]) && partsLayers.MatchString(text[from:from+n[0]]) {
			break // "S-2, 3/8 in. bead", "I-2 / 2 in. air"
		}
		i, known := l.tags[fold(prefix+text[from+n[0]:from+n[1]])]
		if known {
			found = append(found, mention{start: from + n[0], end: from + n[1], product: i, tag: prefix + text[from+n[0]:from+n[1]]})
			mark(taken, from+n[0], from+n[1])
		}
	}
	return found
}

var (
	tagEnds = regexp.MustCompile(`^(?:\s*(?:[/,&]|or\b|and\b)\s*-[A-Za-z0-9]{1,4}\b)+`)
	tagEnd  = regexp.MustCompile(`-[A-Za-z0-9]+`)
)

// ended reads "Prime-S or -W": further endings after a tag share what stands before its
// last hyphen.
func (l *lexicon) ended(text string, found []mention, taken []bool, start, from int) []mention {
	hyphen := strings.LastIndex(text[start:from], "-")
	if hyphen < 0 {
		return found
	}
	stem := text[start : start+hyphen]
	for _, n := range tagEnd.FindAllStringIndex(tagEnds.FindString(text[from:]), -1) {
		at, end := from+n[0], from+n[1]
		if i, known := l.tags[fold(stem+text[at:end])]; known {
			found = append(found, mention{start: at, end: end, product: i, tag: stem + text[at:end]})
			mark(taken, at, end)
		}
	}
	return found
}
