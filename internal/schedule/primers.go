package schedule

import (
	"cmp"
	"slices"
	"strings"
	"sync"

	"abut/internal/regexp"
)

// primersByUse takes products that the primer columns of the schedule name, and
// that nothing else tells the kind of, for primers: those too of which only the chemistry
// is told ("solvent, synthetic rubber", "latex") and that the schedule lays nowhere.
func (r *reader) primersByUse(t *table) {
	col := t.column("primer")
	laid := sync.OnceValue(func() map[int]bool { return r.laidIn(t) })
	for row := t.first; col > 0 && row <= t.last; row++ {
		if t.ownCells(row) < 2 {
			continue // a heading merged over the columns
		}
		for _, m := range r.lex.findTags(r.beforeNone(text(t.sheet, row, col))) {
			if m.product < 0 {
				continue
			}
			p := &r.sched.Products[m.product]
			words := cmp.Or(p.Texts["type"], p.Name)
			if p.Class != "" && p.Class != "other" && !strings.HasSuffix(p.Family, "-unspecified") && !r.coatAsPrimer(p) && !(stuffOnly(p) && !laid()[m.product]) {
				continue
			}
			r.asPrimer(p, words)
		}
	}
}

// beforeNone cuts a cell of primers where it says what has none: "PR-1 on block,
// none on AB-2".
func (r *reader) beforeNone(text string) string {
	end := 0
	for _, part := range strings.SplitAfter(text, ",") {
		if r.saysNone(part) {
			break
		}
		end += len(part)
	}
	return text[:end]
}

// asPrimer takes a product for a primer of what its words name ("SBS in solvent"). One
// of a known kind ("solvent contact adhesive") stays what it is where it would become a
// primer of which nothing is known.
func (r *reader) asPrimer(p *Product, words string) {
	as := r.vocab.Describe("primer, "+words, p.Texts["chemistry"])
	if as.Class == "coating" {
		as = r.vocab.Describe("primer")
	}
	if p.Class == "mastic" && len(p.Traits) > 0 && len(as.Traits) == 0 && strings.HasSuffix(as.Family, "-unspecified") {
		return
	}
	if as.Class == "primer" {
		p.Family, p.Class, p.Traits, p.Keys, p.Role = as.Family, as.Class, as.Traits, as.Keys, "primer"
	}
}

// coatAsPrimer holds for a coating or mastic that calls itself a primer ("epoxy
// primer"): on a column of steel it is paint, under a membrane it primes.
func (r *reader) coatAsPrimer(p *Product) bool {
	words := p.Texts["type"] + " " + p.Texts["material"] + " " + p.Name
	return (p.Class == "coating" || p.Class == "mastic") && r.words.hasAny(words, r.words.accept.Primer)
}

// stuffOnly holds for a product of which the words tell the stuff and no use.
func stuffOnly(p *Product) bool {
	words := strings.Join([]string{p.Texts["type"], p.Texts["material"], p.Texts["chemistry"], p.Texts["alias"]}, " ")
	stuff := p.byRow || p.Class == "coating" || p.Class == "mastic" || p.Class == "sealant" // "solvent acrylic"
	return stuff && p.Class != "primer" && !sealantWord.MatchString(words) && !coatWord.MatchString(words)
}

// coatWord calls a product by another use than a primer's.
var coatWord = regexp.MustCompile(`(?i)\b(?:mastic|cement|paint|coat(?:s|ing)?|filler|sealer|repellent|stain)\b`)

// laidIn are the products that a schedule names as what is laid or gunned.
func (r *reader) laidIn(t *table) map[int]bool {
	out := map[int]bool{}
	for i, col := range t.nums {
		if slot := t.cols[i].Slot; slot != "tag" && slot != "material" && slot != "sealant" && slot != "edge" {
			continue
		}
		for words := range r.said(t, col) {
			for _, m := range r.lex.findTags(words) {
				out[m.product] = true
			}
		}
	}
	return out
}

// onBed stands after the primer that a piece is about.
var onBed = regexp.MustCompile(`(?i)^(?:on|over|to|for|elsewhere)$`)

// primerPieces parts a column of primers as splitItems does, and at each comma after
// which another primer, or none, is told for a bed or for the rest: "none on block,
// PR-3 on board", "PR-3 below 4 °C, else none".
func (r *reader) primerPieces(text string) []part {
	var out []part
	for _, p := range r.words.splitItems(text) {
		start := 0
		for i, c := range p.text {
			words := strings.Fields(p.text[i+1:])
			if c != ',' || len(words) < 2 || !r.opensPiece(words) {
				continue
			}
			out = append(out, part{strings.TrimSpace(p.text[start:i]), p.listed})
			start = i + 1
		}
		out = append(out, part{strings.TrimSpace(p.text[start:]), p.listed})
	}
	return out
}

// opensPiece holds for "none on block", "PR-3 on board" and "else none".
func (r *reader) opensPiece(words []string) bool {
	if r.words.openers[strings.ToLower(words[0])] && r.saysNone(words[1]) {
		return true
	}
	return onBed.MatchString(words[1]) && (r.saysNone(words[0]) || r.isTag(words[0]))
}

// bareNone holds for a piece that says none, and names no bed that this is for.
func (r *reader) bareNone(p *Product, piece part) bool {
	words := strings.Fields(piece.text)
	if len(words) > 1 && r.words.openers[strings.ToLower(words[0])] && !r.saysNone(words[0]) {
		piece.text = strings.Join(words[1:], " ")
	}
	return r.saysNone(piece.text) && !r.words.hasAny(piece.text, r.words.accept.Laps) &&
		!slices.ContainsFunc(r.near(p, piece.text), func(m mention) bool { return !r.isPrimer(m) })
}

// headedBeds are the substrates that the heading of a cell names, or the label beside it:
// "Primer on wood", "Primer, concrete / CMU". What the cell says is of these alone.
func (r *reader) headedBeds(heading string, at At) []Target {
	if !primerWord.MatchString(heading) {
		return nil
	}
	heading = r.spelled(primerWord.ReplaceAllString(heading, " "), "substrate")
	var beds []Target
	for _, m := range r.lex.findListed(heading) {
		if m.product < 0 && slices.Contains(bedRoles, r.role(m.mat.Family, m.mat.Class, "")) {
			beds = append(beds, r.target(m, heading[m.start:m.end], at))
		}
	}
	return beds
}

// primersByBed takes the columns of product data for those of primers that have one each
// for a substrate: "Primer on wood | Primer on masonry".
func (r *reader) primersByBed(t *table) {
	var own []int
	for i := range t.cols {
		if len(r.headedBeds(t.cols[i].Heading, At{})) > 0 {
			own = append(own, i)
		}
	}
	if len(own) < 2 {
		return
	}
	for _, i := range own {
		t.cols[i].Slot, t.cols[i].Confidence, t.cols[i].Why = "primer", 1, "heading says what is primed"
	}
}

// primerWord is the word of a heading that says that primers stand under it, and
// bedRoles are what a heading may name besides that they go on.
var (
	primerWord = regexp.MustCompile(`(?i)\bpr(?:i?me?r|ime)s?\b`)
	bedRoles   = []string{"substrate", "lumber", "insulation", "metal"}
)

// namesBeds holds for a cell that says itself what it is of: "R1; none on steel".
func (r *reader) namesBeds(p *Product, text string) bool {
	return slices.ContainsFunc(r.near(p, text), func(m mention) bool {
		return m.product < 0 && slices.Contains(bedRoles, r.role(m.mat.Family, m.mat.Class, ""))
	})
}

// bedsRule sets the primer of some substrates by a cell that is of these alone. What is
// not listed there, or is a matter of its own, sets none.
func (r *reader) bedsRule(p *Product, beds []Target, text string) {
	rule, list := r.primerWords(p, text)
	if rule == "" && r.saysNone(text) {
		rule = "none"
	}
	for _, bed := range beds {
		if rule != "" {
			r.applyRule(p, bed, rule, list)
		}
	}
}

// primerInRemark reads what a remark on a sheet says of primers on beds that it names, where
// no column tells of them: "No primer on metal; solvent primer on masonry".
func (r *reader) primerInRemark(p *Product, c source) {
	if !slices.Contains(primedRoles, p.Role) || slices.ContainsFunc(primerColumns, func(slot string) bool { return p.Cells[slot] != "" }) {
		return
	}
	var told []string
	for _, part := range r.words.splitList(c.text) {
		found := r.near(p, part.text)
		opens, _ := r.opening(part.text)
		leads := opens == "primer" || len(found) > 0 && found[0].start == 0 && r.isPrimer(found[0])
		if leads && slices.ContainsFunc(found, func(m mention) bool { return !r.isPrimer(m) }) {
			told = append(told, part.text)
		}
	}
	if len(told) > 0 {
		c.slot, c.text = "primer", strings.Join(told, "; ")
		r.primerRule(p, c)
	}
}

// primedRoles are those of what goes on a bed over a primer, and primerColumns the columns of
// product data that tell of it.
var (
	primedRoles   = []string{"membrane", "flashing", "transition", "roofing"}
	primerColumns = []string{"primer", "accepts", "accepts_primer", "accepts_none"}
)
