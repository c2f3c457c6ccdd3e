package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// placeWords are how a note narrows a limit to a part of the building, from
// policies/knowledge/limits.json: "in freezer walls", "Soffits: ...", "at wall type 2".
type placeWords struct {
	Codes string   `json:"codes"` // codes of walls, with the words before them
	Named string   `json:"named"` // a place, with the word before it
	Plain []string `json:"plain"` // words before walls that name none of them: "exterior walls"
	Any   []string `json:"any"`   // nouns of which every building has many: "walls"

	codes, named *regexp.Regexp
	plain, any   map[string]bool
}

func (p *placeWords) compile() (err error) {
	p.plain, p.any = set(p.Plain), set(p.Any)
	if p.codes, err = regexp.Compile(p.Codes); err != nil {
		return err
	}
	p.named, err = regexp.Compile("(?i)" + p.Named)
	return err
}

// wallsOf lists the codes of the walls that the words of one figure name, right after it or
// before it: "10 perms at W2 and 1 perm at W3". Walls of no row are walls all the same.
func (r *reader) wallsOf(q phrase.Quantity, in around) []string {
	after := boundAfter.ReplaceAllString(in.after, "")
	if m := r.limitRules.Places.codes.FindStringSubmatchIndex(after); m != nil && strings.Trim(after[:m[0]], " \t(") == "" {
		return r.wallCodesIn(submatch(after, m))
	}
	before := in.before[:len(in.before)-(q.End-q.Start)]
	for _, m := range r.limitRules.Places.codes.FindAllStringSubmatchIndex(before, -1) {
		if m[0] <= 1 && len(in.before) < q.End { // of the figure before it
			continue
		}
		return r.wallCodesIn(submatch(before, m))
	}
	return nil
}

// submatch is the first group of a match that is there.
func submatch(text string, m []int) string {
	for i := 2; i+1 < len(m); i += 2 {
		if m[i] >= 0 {
			return text[m[i]:m[i+1]]
		}
	}
	return ""
}

// wallCodesIn lists the codes of a text as the rows write them; that of a product is none.
func (r *reader) wallCodesIn(list string) []string {
	var out []string
	for _, code := range oneWallCode.FindAllString(list, -1) {
		if r.isProduct(code) {
			continue
		}
		for known := range r.codes {
			if strings.EqualFold(strings.ReplaceAll(known, "-", ""), strings.ReplaceAll(code, "-", "")) {
				code = known
			}
		}
		out = append(out, code)
	}
	return out
}

var oneWallCode = regexp.MustCompile(`[A-Z]{0,4}-?\d{1,3}[A-Za-z]?\b`)

// partOf is the part of the building that a figure's own words narrow it to, "" for none: what
// follows it, what stands before it, or what the sentence begins with.
func (r *reader) partOf(q phrase.Quantity, in around) string {
	before := in.before[:len(in.before)-(q.End-q.Start)]
	if first := len(in.before) == q.End; !first {
		before = before[strings.LastIndexAny(before, ",;")+1:] // "6 in. at soffits, 3 in. elsewhere"
		if at := goesOnWith.FindStringIndex(before); at != nil {
			before = before[at[1]:]
		}
	}
	lead, _, _ := strings.Cut(in.lead, ",")
	return cmp.Or(r.partIn(upToException(in.after)), r.partIn(before), r.partIn(placeFirst.FindString(lead)))
}

var (
	goesOnWith = regexp.MustCompile(`(?i)\b(?:and|but|or)\b`)
	placeFirst = regexp.MustCompile(`(?i)^\W*(?:at|in|on|within)\s.*`)
)

// partIn is the part of the building that words name, without what is said of any: "freezer"
// of "in the freezer walls", "soffits" of "at soffits".
func (r *reader) partIn(text string) string {
	places := &r.limitRules.Places
	for _, m := range places.named.FindAllStringSubmatchIndex(text, -1) {
		if takenOut.MatchString(text[:m[0]]) || digitEnd.MatchString(text[:m[0]]) {
			continue
		}
		words := strings.Fields(strings.ToLower(submatch(text, m)))
		for i, w := range words {
			if placeLeads[w] { // "of flashing at sill pans"
				words = words[i+1:]
				break
			}
		}
		own := slices.DeleteFunc(words, func(w string) bool { return places.plain[w] || places.any[w] })
		if len(own) > 0 {
			return strings.Join(own, " ")
		}
	}
	return ""
}

// digitEnd stands before the unit "in", and placeLeads before a place.
var (
	digitEnd   = regexp.MustCompile(`\d\s*$`)
	placeLeads = map[string]bool{"at": true, "in": true, "on": true, "within": true, "behind": true, "of": true}
)

// takenOut stands before a place that a limit does not hold for.
var takenOut = regexp.MustCompile(`(?i)\b(?:except|save|other than|excluding|apart from|unless|not)\W*(?:\pL+\W+)?$`)

// shareParts takes the part of the building that a sentence ends with for all that it asks in
// one breath: "maximum 0.03 perm and minimum 40 mil in freezer walls".
func shareParts(limits []Limit, sentence string) {
	if len(limits) < 2 || strings.ContainsAny(sentence, ",;:") {
		return
	}
	last := limits[len(limits)-1]
	for i := range limits[:len(limits)-1] {
		if l := &limits[i]; l.Scope == "" && l.Kind != last.Kind {
			l.Scope = last.Scope
		}
	}
}

// takenApart marks what a sentence asks of an exception that names nothing known: it holds
// nowhere, and the rest of the sentence everywhere ("laps 3 in., except that seams on slopes
// need 5 in.").
func takenApart(limits []Limit) {
	for i := range limits {
		l := &limits[i]
		if i > 0 && l.excepted && l.Kind == limits[i-1].Kind && l.Scope == "" && len(l.Roles)+len(l.Keys)+len(l.When) == 0 {
			l.Scope = unknownPlace
		}
	}
}

// ofDryFilms asks of what is put on wet alone what a sentence asks of a dry film, and of
// nothing else by name.
func (r *reader) ofDryFilms(limits []Limit) {
	for i := range limits {
		if l := &limits[i]; l.dry && l.Scope != unknownPlace && len(l.Roles)+len(l.Keys) == 0 {
			l.Keys = slices.Clone(r.limitRules.Forms)
		}
	}
}
