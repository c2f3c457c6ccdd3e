package schedule

import (
	"slices"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// asideWords tell which figures of product data may stand in cells of words, from
// policies/knowledge/reading.json.
type asideWords struct {
	Slots  []string          `json:"slots"`   // columns, "" one that is not known
	ByKind map[string]string `json:"by_kind"` // kind of quantity -> slot
	Film   string            `json:"film"`    // words after a length that make it a dry film
	Goes   string            `json:"goes"`    // the only words before a temperature that make it the least to apply at
	Bare   []bareAside       `json:"bare"`
	film   *regexp.Regexp
	goes   *regexp.Regexp
}

// bareAside is a figure in a cell of words whose unit the heading tells: "VOC 60"
// under "VOC g/L; other".
type bareAside struct {
	Heading string `json:"heading"`
	Words   string `json:"words"` // before the figure
	Unit    string `json:"unit"`
	heading *regexp.Regexp
	words   *regexp.Regexp
}

func (a *bareAside) compile() (err error) {
	if a.heading, err = regexp.Compile("(?i)" + a.Heading); err != nil {
		return err
	}
	a.words, err = regexp.Compile("(?i)(" + a.Words + `\s*[:=]?\s*[0-9]+(?:\.[0-9]+)?)\s*(?:[;,)]|$)`)
	return err
}

// withUnits writes the unit of the heading behind bare figures.
func (w *asideWords) withUnits(c source) string {
	for _, a := range w.Bare {
		if a.heading.MatchString(c.heading) {
			c.text = a.words.ReplaceAllString(c.text, "$1 "+a.Unit+";")
		}
	}
	return c.text
}

// aside takes figures that stand in a cell of words for those of the product,
// where no column of its own gives them: "12 perm E96 B; 0.001 cfm/sf E2178". Two
// of a kind in one cell are left alone. In a column of another kind its heading must
// name them too: "perm / VOC / keep off".
func (r *reader) aside(p *Product, c source) {
	w := &r.words.asides
	if !slices.Contains(w.Slots, c.slot) && !c.mixed {
		return
	}
	c.text = w.withUnits(c)
	found := map[string][]phrase.Quantity{}
	for _, q := range r.phrase.Quantities(c.text, "") {
		if q.Kind == "length" && !w.film.MatchString(c.text[q.End:]) {
			continue
		}
		found[q.Kind] = append(found[q.Kind], q)
	}
	for kind, qs := range found {
		slot := w.ByKind[kind]
		if !slices.Contains(w.Slots, c.slot) && !r.head.names(c.heading, slot) {
			continue
		}
		if len(qs) == 1 && kind == "temperature" {
			r.goesFrom(p, c, qs[0])
		}
		fig, ok := figureOf[slot]
		if _, stated := p.Figures[fig.key]; !ok || stated || p.Texts[slot] != "" || len(qs) > 1 {
			continue
		}
		p.Figures[fig.key] = figureTold(qs[0], c.at)
		p.Cells[slot] = c.at.Cell
		p.Texts[slot] = qs[0].Text
	}
}

// goesFrom takes the least temperature at which a product goes on, and the most
// where the words give both: "Not under 40 F", "Lay from -5 to 10 C only".
func (r *reader) goesFrom(p *Product, c source, q phrase.Quantity) {
	lead := c.text[:q.Start]
	if ends := sentenceEnd.FindAllStringIndex(lead, -1); len(ends) > 0 {
		lead = lead[ends[len(ends)-1][1]:]
	}
	ranges := q.Min != nil && q.Max != nil && *q.Min < *q.Max
	if q.Min == nil || q.Bound != "min" && !ranges || !r.words.asides.goes.MatchString(lead) {
		return
	}
	keep(p.Figures, "apply_min_c", figureTold(q, c.at))
	if ranges {
		upper := figureTold(q, c.at)
		upper.Min = q.Max
		keep(p.Figures, "apply_max_c", upper)
	}
}
