package schedule

import (
	"slices"
	"strings"

	"abut/internal/material"
	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// proseWords are how the sentences that describe a product tell what they are about.
type proseWords struct {
	Note      string       `json:"note"`
	Sentences []proseStart `json:"sentences"`
	BareHeat  []string     `json:"bare_heat"`
	Floors    []string     `json:"floors"`
	Carried   string       `json:"carried"`
	Same      string       `json:"same"`
	Open      string       `json:"open"`
	Grade     string       `json:"grade"`
	Shared    string       `json:"shared"`
	InUse     string       `json:"in_use"`

	ThickestMM float64 `json:"thickest_mm"`

	Clauses clauseWords `json:"clauses"`

	bareHeat, floors                          []*regexp.Regexp
	same, open, shared, inUse, carried, grade *regexp.Regexp
}

// proseStart is the beginning of a sentence and the slot that it tells of; it is kept
// where the words are part of what is told.
type proseStart struct {
	Slot    string `json:"slot"`
	Pattern string `json:"pattern"`
	Keep    bool   `json:"keep"`

	words *regexp.Regexp
}

func (w *proseWords) compile() error {
	var err error
	for i := range w.Sentences {
		if w.Sentences[i].words, err = regexp.Compile("(?i)" + w.Sentences[i].Pattern); err != nil {
			return err
		}
	}
	for _, pattern := range slices.Concat(w.BareHeat, w.Floors) {
		heat, err := regexp.Compile("(?i)" + pattern)
		if err != nil {
			return err
		}
		w.bareHeat = append(w.bareHeat, heat)
	}
	w.bareHeat, w.floors = w.bareHeat[:len(w.BareHeat)], w.bareHeat[len(w.BareHeat):]
	for _, one := range []struct {
		pattern string
		into    **regexp.Regexp
	}{{w.Same, &w.same}, {w.Open, &w.open}, {w.Shared, &w.shared}, {w.InUse, &w.inUse}, {w.Carried, &w.carried}, {w.Grade, &w.grade},
		{w.Clauses.Number, &w.Clauses.number}, {w.Clauses.Is, &w.Clauses.is}, {w.Clauses.Plain, &w.Clauses.plain}, {w.Clauses.Never, &w.Clauses.never},
		{w.Clauses.All, &w.Clauses.all}, {w.Clauses.Joined, &w.Clauses.joined}, {w.Clauses.As, &w.Clauses.as}, {w.Clauses.For, &w.Clauses.isFor},
		{w.Clauses.Listed, &w.Clauses.listed}} {
		if *one.into, err = regexp.Compile("(?i)" + one.pattern); err != nil {
			return err
		}
	}
	return nil
}

// proseOf sorts the sentences beside a product's name: the first says what it is, each
// other is told by how it begins, else by its figures, else it is a remark.
func (r *reader) proseOf(says workbook.Cell, at At) []source {
	var out []source
	sentences := r.sentencesOf(says.Value)
	for i, part := range sentences {
		one := source{text: part.text, cell: says, at: at}
		if one.slot = toldSubject; i > 0 {
			one.slot, one.text = r.proseSlot(part.text)
		}
		last := len(out) - 1
		switch {
		case i > 0 && part.listed && (one.slot == out[last].slot || one.slot == "remark" && out[last].slot == "primer"):
			out[last].text += "; " + part.text // "Wants PR-1 on block; clean metal wants none"
		default:
			out = append(out, one)
		}
	}
	if len(sentences) > 0 {
		out = append(out, r.besideSubject(sentences[0].text, says, at)...)
	}
	for i, part := range sentences {
		out = append(out, r.proseFigures(source{text: part.text, cell: says, at: at}, i == 0)...)
	}
	return firstFigures(out)
}

// besideSubject are the figures that the first sentence tells after what the product is, as
// sentences of their own do: "SBS sheet, good to 120 C in service".
func (r *reader) besideSubject(text string, says workbook.Cell, at At) []source {
	var out []source
	for _, piece := range strings.Split(text, ", ")[1:] {
		if len(r.proseHeat(piece)) > 0 {
			continue // "usable at 5 C and above" tells no service
		}
		if slot, words := r.proseSlot(piece); figureOf[slot].kind != "" {
			out = append(out, source{slot: slot, text: words, cell: says, at: at})
		}
	}
	return out
}

// sentencesOf parts a description into sentences, of which one may begin with a figure
// ("One-part urethane. 40 to 100."), and writes out a word that two things share.
func (r *reader) sentencesOf(text string) []part {
	text = figureStart.ReplaceAllStringFunc(text, func(found string) string {
		m := figureStart.FindStringSubmatch(found)
		if r.words.abbreviations[strings.ToLower(m[1])] {
			return found
		}
		return m[1] + "\n" + m[2]
	})
	return r.words.splitList(r.words.prose.shared.ReplaceAllString(text, "$1 $2 $3 $1 $4"))
}

// figureStart is the end of a sentence before one that begins with a figure.
var figureStart = regexp.MustCompile(`(\pL{2,})\. ([+\-−–]?\d)`)

// proseSlot is the slot of a sentence by how it begins, and what it tells.
func (r *reader) proseSlot(text string) (slot, says string) {
	for _, s := range r.words.prose.Sentences {
		at := s.words.FindStringIndex(text)
		if at == nil {
			continue
		}
		says = text
		if !s.Keep {
			says = strings.TrimLeft(text[at[1]:], " :,")
		}
		if s.Slot == "service_max" {
			says = r.words.prose.inUse.ReplaceAllString(says, "") // "150 in service" is no length
		}
		if kind := figureOf[s.Slot].kind; kind != "" && len(r.phrase.Quantities(says, kind)) == 0 {
			continue
		}
		return s.Slot, says
	}
	return "remark", text
}

// proseFigures are the figures that a sentence tells in passing: its film and what
// passes through it where it says what the product is, the days that it may stay open,
// the solvent in it, and the temperatures at which it goes on.
func (r *reader) proseFigures(c source, first bool) []source {
	var out []source
	add := func(slot, text string) {
		one := c
		one.slot, one.text = slot, text
		out = append(out, one)
	}
	for _, q := range r.phrase.Quantities(c.text, "") {
		slot := r.words.toldByKind[q.Kind]
		switch {
		case q.Kind == "length" && (!first || !r.isFilmOf(q)):
		case q.Kind == "temperature":
		case q.Kind == "days" && r.words.prose.open.MatchString(c.text):
			add("exposure_days", q.Text)
		case slot != "":
			add(slot, q.Text)
		}
	}
	if heat := r.proseHeat(c.text); heat != "" {
		add("apply", heat)
	}
	return out
}

// proseHeat is the temperature at which a sentence says that a product goes on, "" for none.
func (r *reader) proseHeat(text string) string {
	for _, heat := range r.words.prose.bareHeat {
		if m := heat.FindStringSubmatch(text); m != nil {
			return bothEnds.ReplaceAllString(m[1], "$1 to $2")
		}
	}
	for _, floor := range r.words.prose.floors {
		if m := floor.FindStringSubmatch(text); m != nil {
			return m[1] + " and above"
		}
	}
	return ""
}

// bothEnds is "between 5 and 35", which is a range.
var bothEnds = regexp.MustCompile(`(\d\D{0,4}?) and ([+\-−–]?\d)`)

// isFilmOf holds for the thickness of a sheet or coat, in units of films or no more than
// a sheet has: boards and beads are told in lengths too.
func (r *reader) isFilmOf(q phrase.Quantity) bool {
	return filmUnits.MatchString(strings.ToLower(q.Unit)) || strings.EqualFold(q.Unit, "mm") && q.Min != nil && *q.Min <= r.words.prose.ThickestMM
}

// withDegrees gives bare temperatures their unit.
func withDegrees(says []source, degrees string) []source {
	for i := range says {
		if figureOf[says[i].slot].kind == "temperature" {
			says[i].unit = degrees
		}
	}
	return says
}

// firstFigures keeps the first figure of each slot.
func firstFigures(says []source) []source {
	seen := map[string]bool{}
	return slices.DeleteFunc(says, func(c source) bool {
		_, figure := figureOf[c.slot]
		again := figure && seen[c.slot]
		seen[c.slot] = true
		return again
	})
}

// sameAsOther gives "the same sheet with a softer asphalt" the words of the product
// that the rest of its data is that of.
func (r *reader) sameAsOther(n *told, other []source) {
	if !n.prose || len(n.says) == 0 || !r.words.prose.same.MatchString(n.says[0].text) {
		return
	}
	for _, c := range other {
		if c.slot == toldSubject {
			n.says[0].text = r.beforeFigures(c.text) + ", " + n.says[0].text
			return
		}
	}
}

// nameTells lets the name in words say what the sentences leave out: "Wall Primer" is
// a primer, though water-borne acrylic may be anything.
func (r *reader) nameTells(p *Product) {
	named, said := r.vocab.Describe(p.Tag), r.vocab.Describe(p.Texts[toldSubject])
	switch {
	case named.Class == "", p.coined && said.Class != "" && named.Class != said.Class: // "Basalt 40" is no stone
	case named.Class == "primer":
		if p.Class != "primer" {
			r.asPrimer(p, p.Texts[toldSubject])
		}
	case vague(said.Family) && !vague(named.Family):
		if both := r.vocab.Describe(p.Tag, p.Texts[toldSubject]); both.Family == named.Family {
			named = both
		}
		r.isA(p, named)
	case said.Class == "sealant" && named.Class != "sealant":
		if both := r.vocab.Describe(p.Texts[toldSubject], p.Tag); both.Class == named.Class {
			r.isA(p, both)
		}
	}
	r.madeFor(p)
}

// isA makes a product one of a family.
func (r *reader) isA(p *Product, m material.Material) {
	p.Family, p.Class, p.Traits, p.Keys = m.Family, m.Class, m.Traits, m.Keys
	p.Role = r.role(m.Family, m.Class, p.Tag)
}
