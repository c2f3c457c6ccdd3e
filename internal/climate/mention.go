package climate

import (
	"fmt"
	"strings"
	"unicode"

	"abut/internal/regexp"
)

// token is a word, a number or a mark of a text, with its place in it.
type token struct {
	text     string
	from, to int
}

func (t token) isWord() bool { return unicode.IsLetter([]rune(t.text)[0]) }

// capital tells whether a word begins as a name does.
func (t token) capital() bool { return unicode.IsUpper([]rune(t.text)[0]) }

var tokenForm = regexp.MustCompile(`\p{L}[\p{L}\p{M}'’.-]*|\d[\d.,]*\d|\d|\S`)

func tokenize(text string) []token {
	var ts []token
	for _, at := range tokenForm.FindAllStringIndex(text, -1) {
		ts = append(ts, token{text[at[0]:at[1]], at[0], at[1]})
	}
	return ts
}

// mention is one reading of a stretch of text as a place.
type mention struct {
	from, to int // tokens
	score    int
	city     city
	region   *region // set where only a state or province could be read
	km       float64 // stated distance from the city
	bearing  *float64
	note     string
}

// words is the stretch of text that the mention was read from.
func (m mention) words(r *reader) string {
	s := r.text[r.toks[m.from].from:r.toks[m.to-1].to]
	if strings.Contains(s, "(") && r.word(m.to) == ")" {
		return s + ")"
	}
	return strings.TrimRight(s, ".,;")
}

// Weights of the readings: the more specific goes before.
const (
	byDistance = 100
	byState    = 90
	byNearness = 80
	byFarState = 70
	byName     = 50
	byRegion   = 20
	siteGain   = 5
)

// reader looks for mentions in one text.
type reader struct {
	v        *vocabulary
	a        *atlas
	text     string
	toks     []token
	doubts   []*NotFound // names that would need more
	mentions []mention
}

// best gives the mention with the highest score, the first among equals.
func (r *reader) best() (mention, error) {
	for i := range r.toks {
		if err := r.at(i); err != nil {
			return mention{}, err
		}
	}
	var best mention
	for _, m := range r.mentions {
		if r.away(m) {
			r.doubts = append(r.doubts, &NotFound{Reason: fmt.Sprintf("%q reads as someone's address and not as the site", m.words(r))})
			continue
		}
		if r.sited(m) {
			m.score += siteGain
		}
		if m.score > best.score {
			best = m
		}
	}
	if best.score > 0 {
		return best, nil
	}
	if len(r.doubts) > 0 {
		return mention{}, r.doubts[0]
	}
	return mention{}, &NotFound{Reason: fmt.Sprintf("no place is named in %q", clip(r.text))}
}

func clip(s string) string {
	if rs := []rune(s); len(rs) > 80 {
		return string(rs[:77]) + "..."
	}
	return s
}

// longestName is the most words that a city or region name has.
const longestName = 4

// at reads the mentions that begin at token i, the longest name first.
func (r *reader) at(i int) error {
	if !r.toks[i].isWord() || !r.toks[i].capital() || r.inName(i) {
		return nil
	}
	for n := min(longestName, len(r.toks)-i); n > 0; n-- {
		if !r.run(i, n) {
			continue
		}
		done, err := r.city(i, n)
		if err != nil {
			return err
		}
		if done || r.bareRegion(i, n) {
			return nil
		}
	}
	r.unknown(i)
	return nil
}

// unknown notes a name that stands where a city must, but is in no table.
func (r *reader) unknown(i int) {
	m := mention{from: i}
	r.relation(&m)
	if m.km > 0 && len(r.a.cities[key(r.toks[i].text)]) == 0 {
		r.doubts = append(r.doubts, &NotFound{Reason: fmt.Sprintf("%q is not in the table of places", r.toks[i].text)})
	}
}

// inName tells whether a token lies inside a name already read.
func (r *reader) inName(i int) bool {
	for _, m := range r.mentions {
		if i >= m.from && i < m.to {
			return true
		}
	}
	return false
}

// run tells whether n tokens are words that only spaces part.
func (r *reader) run(i, n int) bool {
	for j := i; j < i+n; j++ {
		if !r.toks[j].isWord() {
			return false
		}
		if j > i && (strings.TrimSpace(r.text[r.toks[j-1].to:r.toks[j].from]) != "" || r.sentenceEnd(j-1)) {
			return false
		}
	}
	return true
}

// sentenceEnd tells whether a word closes with a period that is no shortening.
func (r *reader) sentenceEnd(j int) bool {
	w := r.toks[j].text
	return len(w) > 5 && strings.HasSuffix(w, ".") && !strings.HasSuffix(w, "-St.")
}

func (r *reader) name(i, n int) string { return r.text[r.toks[i].from:r.toks[i+n-1].to] }

// city reads n tokens as a city name, and what stands around it.
func (r *reader) city(i, n int) (bool, error) {
	name := strings.TrimRight(r.name(i, n), ".")
	if full, ok := r.v.SameCity[strings.ToLower(name)]; ok {
		name = full
	}
	reg, end := r.regionAfter(i+n, false)
	known := r.a.cities[key(name)]
	if reg == nil && len(known) > 0 && r.v.is("landform", r.word(i+n)) { // "Nantucket Island, MA"
		if far, past := r.regionAfter(i+n+1, false); far != nil && len(only(known, far.Code)) > 0 {
			reg, end = far, past
		}
	}
	if reg == nil && (len(known) == 0 || r.isRegionName(name)) {
		return false, nil
	}
	if r.isStreet(i, n) || r.isPerson(i) || r.isAbroad(i+n) || r.v.is("county", r.word(i+n)) {
		return false, nil
	}
	if reg == nil {
		return r.withoutState(i, n, name, known), nil
	}
	c, ok, err := r.inRegion(name, reg, known)
	if err != nil || !ok {
		return false, err
	}
	large := len(known) > 0 && !r.v.is("names", name)
	if r.isCodeWord(end-1) && !large && !r.closes(end) && !r.leadsOn(end) {
		return false, nil
	}
	r.add(mention{from: i, to: end, score: byState, city: c})
	return true, nil
}

// inRegion finds a city of a region: a known one in it, or across its border
// (an airport often is), else a town of the region's list.
func (r *reader) inRegion(name string, reg *region, known []city) (city, bool, error) {
	for _, c := range known {
		if c.region == reg.Code {
			return c, true, nil
		}
	}
	return town(name, reg.Code)
}

// withoutState reads a known name that no state follows at once.
func (r *reader) withoutState(i, n int, name string, known []city) bool {
	m := mention{from: i, to: i + n}
	r.relation(&m)
	fits := known
	if reg := r.farRegion(i + n); reg != nil {
		if in := only(known, reg.Code); len(in) > 0 {
			fits = in
			m.score = max(m.score, byFarState)
		}
	}
	if m.score == 0 && !r.stands(i, n, name) {
		return false
	}
	m.score = max(m.score, byName)
	c, ok := plain(fits)
	if !ok {
		r.doubts = append(r.doubts, ambiguous(name, fits))
		return false
	}
	m.city, m.note = c, others(c, fits)
	r.add(m)
	return true
}

func (r *reader) add(m mention) {
	if m.km == 0 {
		r.relation(&m)
	}
	r.mentions = append(r.mentions, m)
}

// bareRegion reads a state or province that stands alone, or behind a town
// that is not in the table.
func (r *reader) bareRegion(i, n int) bool {
	reg := r.v.byName[key(r.name(i, n))]
	if reg != nil && len(r.name(i, n)) > 4 {
		if r.isStreet(i, n) || r.isPerson(i) || r.isAbroad(i+n) || !r.regionStands(i, n) {
			return false
		}
		r.mentions = append(r.mentions, mention{from: i, to: i + n, score: byRegion, region: reg})
		return true
	}
	code := r.v.byCode[r.toks[i].text]
	if n > 1 || code == nil || i == 0 || !r.closes(i+1) {
		return false
	}
	m := mention{from: i, to: i + 1, score: byRegion, region: code}
	named := i > 1 && r.before(i, ",") && r.toks[i-2].isWord() && r.toks[i-2].capital()
	if r.isCodeWord(i) && !(named && r.sited(m)) {
		return false
	}
	if !named && !(r.toks[i-1].isWord() && r.toks[i-1].capital()) {
		return false
	}
	r.mentions = append(r.mentions, m)
	return true
}
