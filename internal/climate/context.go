package climate

import (
	"fmt"
	"strconv"
	"strings"

	"abut/internal/regexp"
)

// What stands around a name tells a place from a street, a person or a word.

func (r *reader) word(i int) string {
	if i < 0 || i >= len(r.toks) {
		return ""
	}
	return r.toks[i].text
}

func (r *reader) before(i int, mark string) bool { return i > 0 && r.toks[i-1].text == mark }

// closes tells whether the stretch ends before token i: the text's end, a mark
// or a postal code.
func (r *reader) closes(i int) bool {
	return i >= len(r.toks) || !r.toks[i].isWord() || r.sentenceEnd(i-1) ||
		strings.Contains(r.text[r.toks[i-1].to:r.toks[i].from], "\n") ||
		strings.Contains(r.text[r.toks[i-1].to:r.toks[i].from], "  ")
}

// opens tells whether a stretch begins at token i.
func (r *reader) opens(i int) bool {
	if i == 0 || r.sentenceEnd(i-1) {
		return true
	}
	gap := r.text[r.toks[i-1].to:r.toks[i].from]
	return !r.toks[i-1].isWord() && r.toks[i-1].text != "-" || strings.Contains(gap, "\n") || strings.Contains(gap, "  ")
}

func (r *reader) locative(i int) bool { return i > 0 && r.v.is("locative", r.toks[i-1].text) }

// stands tells whether a name without a state reads as a place: alone between
// marks, or after "in", or before "area". Names that are ordinary words need
// more than that.
func (r *reader) stands(i, n int, name string) bool {
	if name != "" && r.v.is("names", name) {
		follows := i+n < len(r.toks) && r.v.is("follow", r.word(i+n))
		if !(r.v.is("near", r.word(i-1)) || follows) {
			r.doubts = append(r.doubts, wordlike(name, r.a.cities[key(name)]))
			return false
		}
		return true
	}
	left := r.opens(i) || r.locative(i) || r.v.is("site", r.word(i-1))
	right := r.closes(i+n) || r.v.is("follow", r.word(i+n)) || r.locative(i)
	return left && right
}

// regionStands tells whether a state's name reads as the site's: alone between
// marks, or after "in" or "state of", but not after "from", which tells where a
// stone or a firm comes from.
func (r *reader) regionStands(i, n int) bool {
	placed := r.locative(i) && (!r.v.is("relation", r.word(i-1)) || r.v.is("site", r.word(i-2)))
	return placed || r.opens(i) && (r.closes(i+n) || r.v.is("follow", r.word(i+n)))
}

// isRegionName tells whether a name without a state after it is itself a
// state's: "Wyoming" is not the town in Michigan. New York means the city.
func (r *reader) isRegionName(name string) bool {
	reg := r.v.byName[key(name)]
	return reg != nil && key(reg.City) != key(name)
}

func wordlike(name string, cs []city) *NotFound {
	e := ambiguous(name, cs)
	if len(cs) == 1 {
		e.Reason = `"` + name + `" is also an ordinary word or name and needs its state`
	}
	return e
}

// isStreet tells whether a name belongs to a street, a room or a road.
func (r *reader) isStreet(i, n int) bool {
	next := r.word(i + n)
	if next != "" && r.v.is("street", next) && !r.closes(i+n) {
		return true
	}
	return i > 0 && next != "" && r.v.is("street", r.word(i+n+1)) && r.toks[i-1].text[0] >= '0' && r.toks[i-1].text[0] <= '9'
}

// isPerson tells whether a person's name is expected.
func (r *reader) isPerson(i int) bool {
	j := i - 1
	if j >= 0 && !r.toks[j].isWord() {
		j--
	}
	return j >= 0 && r.v.is("person", r.word(j))
}

// isAbroad tells whether another country follows.
func (r *reader) isAbroad(i int) bool {
	if r.word(i) == "," {
		i++
	}
	return r.v.is("abroad", r.word(i)) || i+1 < len(r.toks) && r.v.is("abroad", r.word(i)+" "+r.word(i+1))
}

// isCodeWord tells whether token i is a postal code that is also a word or a
// shortening of the trade, so that it needs a place's form around it.
func (r *reader) isCodeWord(i int) bool { return r.v.is("codes", r.word(i)) && len(r.word(i)) == 2 }

// leadsOn tells whether the word behind a name goes with a place: "area",
// "elevation", "site".
func (r *reader) leadsOn(i int) bool {
	w := r.word(i)
	return w != "" && (r.v.is("follow", w) || r.v.is("height", w) || r.v.is("site", w))
}

// regionAfter reads a state or province at token i, a comma or bracket before
// it allowed, and gives the token after it.
func (r *reader) regionAfter(i int, far bool) (*region, int) {
	for i < len(r.toks) && (r.word(i) == "," || r.word(i) == "(") {
		i++
	}
	for n := min(longestName, len(r.toks)-i); n > 0; n-- {
		if !r.run(i, n) {
			continue
		}
		name := r.name(i, n)
		if reg := r.v.byName[key(name)]; reg != nil && r.toks[i].capital() {
			return reg, i + n
		}
		if n == 1 && !far {
			if reg := r.v.byCode[strings.TrimRight(name, ".")]; reg != nil {
				return reg, i + 1
			}
		}
	}
	return nil, i
}

// farTokens is how far behind a city its state may stand ("Framingham,
// Middlesex County, Massachusetts").
const farTokens = 6

// farRegion looks for a state's name further on, or anywhere before.
func (r *reader) farRegion(i int) *region {
	for j := i; j < min(len(r.toks), i+farTokens); j++ {
		if r.toks[j].isWord() {
			if reg, _ := r.regionAfter(j, true); reg != nil {
				return reg
			}
		}
	}
	for _, m := range r.mentions {
		if m.region != nil {
			return m.region
		}
		if m.score == byState {
			return r.v.byCode[m.city.region]
		}
	}
	return nil
}

// clauseTokens is how far back a word may tell whose address a place is.
const clauseTokens = 7

// away tells whether the mention is the address of a firm, a plant or a
// person, and not of the site.
func (r *reader) away(m mention) bool {
	for j := m.from - 1; j >= max(0, m.from-clauseTokens); j-- {
		w := r.word(j)
		if w == ";" || r.sentenceEnd(j) || strings.Contains(r.text[r.toks[j].to:r.toks[j+1].from], "\n") {
			return false
		}
		if r.v.is("site", w) {
			return false
		}
		if r.v.is("house", w) && r.isBuilt(j) {
			return false
		}
		if r.v.is("away", w) || j > 0 && r.v.is("away", r.word(j-1)+" "+w) {
			return true
		}
	}
	return false
}

// isBuilt tells whether the warehouse or plant at token j is the building itself:
// "Project: bottling plant, Racine, WI", or a title that ends with it, "Harbor
// Warehouse, Racine, WI"; goods come from the one or are made by the other.
func (r *reader) isBuilt(j int) bool {
	titled := r.v.is("titled", r.word(j)) && r.word(j+1) == "," && r.toks[j].capital()
	for k := j - 1; k >= 0 && r.word(k) != ";" && !r.sentenceEnd(k); k-- {
		w := r.word(k)
		switch {
		case r.v.is("site", w):
			return true
		case r.v.is("away", w), r.v.is("relation", w), r.v.is("person", w):
			return false
		}
		titled = titled && (!r.toks[k].isWord() || r.toks[k].capital())
	}
	return titled
}

// sited tells whether a word such as "site" or "project" leads to the mention.
func (r *reader) sited(m mention) bool {
	for j := m.from - 1; j >= max(0, m.from-clauseTokens); j-- {
		if r.v.is("site", r.word(j)) {
			return true
		}
	}
	return false
}

// heightAfter reads a height that stands behind a mention: ", 5,700 ft".
func heightAfter(r *reader, m mention) *float64 {
	for j := m.to; j < min(len(r.toks)-1, m.to+4); j++ {
		x, err := strconv.ParseFloat(strings.ReplaceAll(r.word(j), ",", ""), 64)
		if err != nil {
			continue
		}
		unit, ok := r.v.HeightUnits[strings.ToLower(strings.TrimRight(r.word(j+1), "."))]
		if h := x * unit; ok && h < highestSite {
			return &h
		}
		return nil
	}
	return statedHeight(r.text, r.v)
}

// highestSite is the height in m above which a number is not a site's.
const highestSite = 4500

// statedHeight reads "elevation 1,700 m" anywhere in a text.
func statedHeight(text string, v *vocabulary) *float64 {
	toks := tokenize(text)
	for i, t := range toks {
		if !v.is("height", t.text) {
			continue
		}
		for j := i + 1; j < min(len(toks)-1, i+4); j++ {
			x, err := strconv.ParseFloat(strings.ReplaceAll(toks[j].text, ",", ""), 64)
			if err != nil {
				continue
			}
			unit, ok := v.HeightUnits[strings.ToLower(strings.TrimRight(toks[j+1].text, "."))]
			if h := x * unit; ok && h < highestSite {
				return &h
			}
		}
	}
	return nil
}

// positionForm is a latitude and a longitude in decimal degrees, with letters
// or signs: "43.05 N, 88.2 W", "N 43.05 W 88.2", "lat 43.05, long -88.2",
// "43.05, -88.2".
var positionForm = regexp.MustCompile(`(?i)(\blat(?:itude|\.)?\s*[:=]?\s*)?(?:\b([NS])\s*)?([-+−]?\d{1,2}(?:\.\d+)?)\s*(?:°|º|deg\.?)?\s*([NS]\b)?\s*[,;/ ]\s*(?:and\s+)?(lon(?:g(?:itude|\.)?|\.)?\s*[:=]?\s*)?(?:([EW])\s*)?([-+−]?\d{1,3}(?:\.\d+)?)\s*(?:°|º|deg\.?)?\s*([EW]\b)?`)

// position reads a latitude and longitude. Bare numbers count where they are
// the whole text, or have two decimals each and lie in or about North America.
func position(text string) (lat, lon float64, ok bool) {
	text = inDegrees(text)
	for _, f := range positionForm.FindAllStringSubmatch(text, -1) {
		lat, lon = signed(f[3], f[2]+f[4], "S"), signed(f[7], f[6]+f[8], "W")
		named := f[1] != "" && f[5] != ""
		lettered := f[2]+f[4] != "" && f[6]+f[8] != ""
		whole := strings.TrimSpace(f[0]) == strings.TrimSpace(text) && decimals(f[3]) > 0 && decimals(f[7]) > 0
		bare := decimals(f[3]) >= 2 && decimals(f[7]) >= 2 && lat > 15 && lon < -50
		if named || lettered || whole || bare {
			return lat, lon, true
		}
	}
	return 0, 0, false
}

// minutesForm is an angle in degrees, minutes and perhaps seconds.
var minutesForm = regexp.MustCompile(`(\d{1,3})\s*(?:°|º|deg\.?)\s*(\d{1,2}(?:\.\d+)?)\s*(?:['′’]|min\.?)\s*(?:(\d{1,2}(?:\.\d+)?)\s*(?:["″”]|''|sec\.?)\s*)?`)

// inDegrees writes angles in minutes and seconds as decimal degrees.
func inDegrees(text string) string {
	return minutesForm.ReplaceAllStringFunc(text, func(angle string) string {
		f := minutesForm.FindStringSubmatch(angle)
		deg, min, sec := signed(f[1], "+", "-"), signed(f[2], "+", "-"), signed(f[3], "+", "-")
		if min >= 60 || sec >= 60 {
			return angle
		}
		return fmt.Sprintf("%.5f ", deg+min/60+sec/3600)
	})
}

func decimals(s string) int {
	_, d, _ := strings.Cut(s, ".")
	return len(d)
}

func signed(number, letter, negative string) float64 {
	x, err := strconv.ParseFloat(strings.Replace(number, "−", "-", 1), 64)
	if err != nil {
		return 0
	}
	if strings.EqualFold(letter, negative) && x > 0 {
		return -x
	}
	return x
}
