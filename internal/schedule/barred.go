package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/regexp"
)

var bracket = regexp.MustCompile(`\(([^()]*)\)`)

// withoutPrimer takes what a bracket leaves bare, and the bed for which it allows one
// primer only, for a piece of its own, heard first: "PR-1 (none on metal)", "PR-1 or PR-2
// on block, foam (foam: PR-2 only)".
func (r *reader) withoutPrimer(p *Product, pieces []part) []part {
	var bare, out []part
	for _, piece := range pieces {
		if m := bracket.FindStringSubmatch(piece.text); m != nil && (r.saysNone(m[1]) || r.onlyThere(p, m[1])) {
			bare = append(bare, part{m[1], piece.listed})
			piece.text = strings.Replace(piece.text, m[0], "", 1)
		}
		out = append(out, piece)
	}
	return append(bare, out...)
}

// onlyThere holds for words that allow a bed nothing but the primer that they name.
func (r *reader) onlyThere(p *Product, text string) bool {
	if !r.words.hasAny(text, r.words.accept.Only) {
		return false
	}
	primers, beds := 0, 0
	for _, m := range r.near(p, text) {
		if r.isPrimer(m) {
			primers++
		} else {
			beds++
		}
	}
	return primers > 0 && beds > 0
}

// neighborsBarred takes out of a cell of primers the sentences that keep neighbors off the
// product, which name no bed of it: "PR-1 on block. Not to PVC or silicone".
func (r *reader) neighborsBarred(p *Product, c source) string {
	var rest, off []string
	for _, part := range r.words.stances(c.text) {
		if lead := cmp.Or(barsNeighbors.FindString(part.text), r.noNeighbor(p, part.text)); lead != "" {
			off = append(off, part.text[len(lead):])
		} else {
			rest = append(rest, part.text)
		}
	}
	if len(off) == 0 {
		return c.text
	}
	p.KeepOff = append(p.KeepOff, r.targets(p, source{slot: "keep_off", text: strings.Join(off, "; "), at: c.at})...)
	return strings.Join(rest, "; ")
}

// barsNeighbors begins what is kept off a product.
var barsNeighbors = regexp.MustCompile(`(?i)^\W*(?:(?:not|never|no contact|not in contact) (?:to|with|against|beside|next to|near|touching)|(?:keep|keeps|stay|stays|hold) (?:off|away from|clear of|apart from)|avoid(?: contact with)?) `)

// noNeighbor is the "no" of a sentence that bars a material and says nothing of primers: "AD-5.
// No asphalt, no roof cement"; "" where it says something else.
func (r *reader) noNeighbor(p *Product, text string) string {
	lead := noLead.FindString(text)
	if lead == "" || ofPrimers.MatchString(text) {
		return ""
	}
	found := r.near(p, text)
	if len(found) == 0 || found[0].start != len(lead) || r.isPrimer(found[0]) {
		return ""
	}
	return lead
}

var noLead = regexp.MustCompile(`(?i)^\W*no `)

// ofPrimers are the words by which a sentence that begins with "no" tells of primers and beds.
var ofPrimers = regexp.MustCompile(`(?i)\b(?:prim(?:er|ers|e|ed|ing)|on|over|needed|required|req'?d|necessary)\b`)

// thereOnly holds for words that allow a primer on nothing but a bed: "PR-2 on concrete only".
func (r *reader) thereOnly(p *Product, text string) bool {
	at := onlyWord.FindStringIndex(text)
	if at == nil {
		return false
	}
	near := r.near(p, text[:at[0]])
	return len(near) > 0 && !r.isPrimer(near[len(near)-1])
}

var onlyWord = regexp.MustCompile(`(?i)\sonly\b`)

// alsoOn is a bracket that adds a bed to those of the primer before it: "PR-2 (also on foam)".
var alsoOn = regexp.MustCompile(`(\b[\pL\d][\pL\d.-]*) \(also on ([^()]+)\)`)

// kindOnBed names the primers that a bracket tells by their kind, of those before it:
// "PR-1 or PR-2 (water-based only on foam)".
func (r *reader) kindOnBed(p *Product, text string) string {
	m := kindOnly.FindStringSubmatchIndex(text)
	if m == nil {
		return text
	}
	_, list := r.primerWords(p, text[:m[0]])
	kind := r.vocab.Describe(text[m[2]:m[3]] + " primer")
	var of []string
	for _, id := range list {
		if i := slices.IndexFunc(r.sched.Products, func(p Product) bool { return p.ID == id }); i >= 0 && r.sched.Products[i].Family == kind.Family {
			of = append(of, id)
		}
	}
	if len(of) == 0 || len(of) == len(list) {
		return text
	}
	return text[:m[0]] + text[m[1]:] + "; " + text[m[4]:m[5]] + ": " + strings.Join(of, " or ") + " only"
}

// kindOnly is a bracket that allows a bed one kind of primer.
var kindOnly = regexp.MustCompile(`(?i)\(\s*(?:the )?([^()]+?)(?: primer| kind| type| one)? only (?:on|over|for) ([^()]+?)\s*\)`)

// barred is a primer that is not for some substrates.
type barred struct {
	primer string
	beds   []mention
}

// barredBeds cuts out of a piece the brackets that bar a primer from substrates:
// "P-1 (10 °C up, not metal)".
func (r *reader) barredBeds(p *Product, piece *part) []barred {
	var out []barred
	notIn := r.words.accept.notIn
	for m := notIn.FindStringSubmatchIndex(piece.text); m != nil; m = notIn.FindStringSubmatchIndex(piece.text) {
		before := r.near(p, piece.text[:m[0]])
		if n := len(before); n == 0 || before[n-1].product < 0 || !r.isPrimer(before[n-1]) {
			break
		}
		out = append(out, barred{r.sched.Products[before[len(before)-1].product].ID, r.near(p, piece.text[m[2]:m[3]])})
		piece.text = piece.text[:m[0]] + piece.text[m[1]:]
	}
	return out
}

func without(list []string, one string) []string {
	return slices.DeleteFunc(slices.Clone(list), func(s string) bool { return s == one })
}

// noteBars takes what a note of the job keeps off the products that it begins with for
// what their own data keeps off: "FM-1 and FM-2 touch no EPDM, no silicone".
func (r *reader) noteBars(sentence string, at At) {
	verb := r.words.accept.touchNo.FindStringIndex(sentence)
	if verb == nil {
		return
	}
	products, last := []int{}, 0
	for _, m := range r.lex.findTags(sentence[:verb[0]]) {
		if between := sentence[last:m.start]; m.product < 0 || last > 0 && !listWord.MatchString(between) || last == 0 && strings.Trim(between, " \t0123456789.)") != "" {
			return // "where A meets B, touch no ..." is said of a place
		}
		products, last = append(products, m.product), m.end
	}
	if len(products) == 0 || strings.TrimSpace(sentence[last:verb[0]]) != "" {
		return
	}
	for _, i := range products {
		p := &r.sched.Products[i]
		p.KeepOff = append(p.KeepOff, r.targets(p, source{slot: "keep_off", text: sentence[verb[1]:], at: at})...)
	}
}
