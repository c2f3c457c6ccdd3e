package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// valuesTell finds what labels mean that no words tell, from the figures beside them
// on all cards of a sheet: "temp" is where it goes on, beside 40 F and 25 F and "as
// AB-1".
func (r *reader) valuesTell(cards []card) {
	slots := map[string]map[string]int{}
	for _, c := range cards {
		for _, f := range c.fields {
			label := fold(f.label)
			if label == "" || r.labelOf(f.label) != "" {
				continue
			}
			if slots[label] == nil {
				slots[label] = map[string]int{}
			}
			if slot := r.byFigure(f.value.Value); slot != "" || !r.pointsElsewhere(f.value) {
				slots[label][slot]++
			}
		}
	}
	for label, seen := range slots {
		all := 0
		for _, n := range seen {
			all += n
		}
		for slot, n := range seen {
			if slot != "" && n > 1 && n*3 >= all*2 {
				r.toldLabels[label] = slot
			}
		}
	}
}

// eachName deals a card of several names that the schedule uses ("MW / DB") to each of
// them, with what it says of that one.
func (r *reader) eachName(cards []card, names *wordIndex) []card {
	var out []card
	for _, c := range cards {
		parts := namesIn(c.name, names)
		if len(parts) < 2 || isNamed(c.name, names) {
			out = append(out, c)
			continue
		}
		for _, name := range parts {
			one := c
			one.name, one.kind, one.fields = strings.TrimSpace(name), slices.Clone(c.kind), slices.Clone(c.fields)
			for i := range one.kind {
				one.kind[i].text = sayingOf(one.name, parts, one.kind[i].text)
			}
			for i := range one.fields {
				one.fields[i].value.Value = sayingOf(one.name, parts, one.fields[i].value.Value)
			}
			out = append(out, one)
		}
	}
	return out
}

// sayingOf is the part of a text that begins with a name, where its parts begin with
// names; else all of it.
func sayingOf(name string, names []string, text string) string {
	found := ""
	for _, part := range strings.FieldsFunc(text, func(c rune) bool { return c == ';' || c == '\n' }) {
		first, _, _ := strings.Cut(strings.TrimSpace(part), " ")
		if !slices.ContainsFunc(names, func(n string) bool { return fold(n) == fold(first) }) {
			return text
		}
		if fold(first) == fold(name) {
			found = strings.TrimSpace(part)
		}
	}
	return cmp.Or(found, text)
}

// figuresOfKind adds the figures that stand with what the product is ("butyl sheet,
// 1.5 mm"), where no label tells them.
func (r *reader) figuresOfKind(c card) []source {
	out := slices.Clone(c.kind)
	for _, what := range c.kind {
		if what.slot != toldSubject {
			continue
		}
		for _, q := range r.phrase.Quantities(what.text, "") {
			slot := r.words.toldByKind[q.Kind]
			labelled := slices.ContainsFunc(c.fields, func(f field) bool { return r.slotOfLabel(f.label, f.value) == slot })
			if slot == "" || labelled || q.Kind == "length" && !filmUnits.MatchString(strings.ToLower(q.Unit)) {
				continue
			}
			says := what
			says.slot, says.text = slot, q.Text
			out = append(out, says)
		}
	}
	return out
}

// fieldSource is what one label and its value tell: by the label, by what stands
// beside it on other cards, by the label and the value together, else a remark.
func (r *reader) fieldSource(s *workbook.Sheet, f field, units map[string]string) source {
	label := strings.TrimSpace(f.label)
	c := r.cardSource(s, cmp.Or(r.slotOfLabel(label, f.value), r.toldLabels[fold(label)]), f.value)
	if slot := r.head.bySlot[c.slot]; slot != nil && slot.kind != "" && !r.holds(f.value, slot.kind) && !r.pointsElsewhere(f.value) && !r.words.isNone(c.text) && !r.words.unlimited(c.text) {
		c.slot = ""
	}
	if c.slot == "primer" {
		c.heading = label
	}
	if c.slot == "" {
		c.slot, _ = r.opening(label + " " + c.text)
	}
	c.slot = r.head.endTold(c.slot, label)
	if c.slot == "lap" {
		c.heading = label
	}
	if c.slot == toldSubject && r.namesKind(label) {
		c.text = r.afterMaker(c.text)
	}
	switch {
	case c.slot == "" && r.callsMaterial(label):
		c.slot = r.kindOfWords(c.text)
	case c.slot == "":
		c.slot, c.text = "remark", strings.TrimPrefix(label+": "+c.text, ": ")
	case figureOf[c.slot].key != "":
		c.unit = cmp.Or(r.unitIn(label, figureOf[c.slot].kind, c.slot), units[c.slot], r.unitSaid(figureOf[c.slot].kind, c.slot))
	}
	return c
}

// afterMaker leaves out of "Larch – butyl sheet", under "Maker / type", who makes it.
func (r *reader) afterMaker(text string) string {
	at := afterDash.FindStringIndex(text)
	if at == nil || r.namesProduct(text[:at[0]]) || !r.namesProduct(text[at[1]:]) {
		return text
	}
	return text[at[1]:]
}

var afterDash = regexp.MustCompile(`\s+[-–—]\s+`)
