package html

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"abut/internal/contact"
	"abut/internal/schedule"
)

// detail draws one row as a cut: what lies under its material on the left, the
// material in the middle, what touches it on the right, at no scale.
func (b *board) detail(id string, l *schedule.Line, list []found) *section {
	main := l.Main()
	if main == nil || !b.room() {
		return nil
	}
	g := &gather{board: b, line: l}
	g.parts = append(g.parts, b.partOfItem(main))
	g.fromItems()
	g.fromContacts()
	if len(g.parts) < 2 {
		b.drawn--
		return nil
	}
	s := &section{Parts: g.parts, Apart: g.apart}
	s.Picture = drawing{ID: id + "-picture", Title: titleOf(l)}
	s.layOut(g)
	m := &marker{s: s}
	for _, f := range list {
		b.put(m, f, 0)
	}
	slices.SortStableFunc(s.Parts, func(a, b part) int {
		return cmp.Or(cmp.Compare(len(a.Letter), len(b.Letter)), cmp.Compare(a.Letter, b.Letter))
	})
	s.Picture.Desc = s.describe()
	return s
}

func titleOf(l *schedule.Line) string {
	return strings.TrimSpace(fmt.Sprintf("Section of row %d %s", l.Row, l.Mark))
}

// gather collects the parts of a row: its own material first.
type gather struct {
	*board
	line  *schedule.Line
	parts []part
	apart []string
	// meets tells how a part meets the material of the row, and over what.
	meets map[int]*contact.Contact
}

func (b *board) partOfItem(it *schedule.Item) part {
	return part{
		Text: closed(it.Text), Read: it.Name, As: word(it.Slot), Cell: it.At.Cell, kind: b.kinds.of(it.Class, it.Keys),
		slot: it.Slot, items: []string{it.ID}, product: it.Product, family: it.Family, at: []schedule.At{it.At},
	}
}

// closed ends a parenthesis that the words of a material were cut within.
func closed(text string) string {
	return text + strings.Repeat(")", max(0, strings.Count(text, "(")-strings.Count(text, ")")))
}

func word(slot string) string {
	if slot == "tag" {
		return "material"
	}
	return strings.ReplaceAll(slot, "_", " ")
}

// fromItems takes what lies under the material, which may have no contact of
// its own, and notes what is said not to be there.
func (g *gather) fromItems() {
	for i := range g.line.Items {
		it := &g.line.Items[i]
		end := contact.End{Item: it.ID, Product: it.Product, Family: it.Family, Text: it.Text, At: it.At}
		switch {
		case it.Polarity == "no" || it.Polarity == "removed":
			said := map[string]string{"no": "none", "removed": "removed"}[it.Polarity]
			g.apart = append(g.apart, fmt.Sprintf("%s: %s (%s)", it.Text, said, it.At.Cell))
		case it.Slot == "material" || it.Slot == "tag":
			g.parts[0].add(it.ID, it.At) // the material once more, in words or as a tag
		case g.know(end):
		case it.Slot == "substrate" || it.Slot == "behind" || it.Slot == "primer":
			g.parts = append(g.parts, g.partOfItem(it))
		}
	}
}

// know adds an end to the part that it names once more.
func (g *gather) know(e contact.End) bool {
	i := slices.IndexFunc(g.parts, func(p part) bool { return slices.Contains(p.items, e.Item) || p.same(e) })
	if i >= 0 {
		g.parts[i].add(e.Item, e.At)
	}
	return i >= 0
}

// add tells one more item that stands for the part.
func (p *part) add(item string, at schedule.At) {
	if !slices.Contains(p.items, item) {
		p.items, p.at = append(p.items, item), append(p.at, at)
	}
}

// fromContacts takes what the contacts of the row name.
func (g *gather) fromContacts() {
	g.meets = map[int]*contact.Contact{}
	for i := range g.doc.Contacts {
		c := &g.doc.Contacts[i]
		if c.Line != g.line.ID || c.Kind == "apart" {
			continue
		}
		for _, e := range []contact.End{c.A, c.B} {
			if !g.know(e) {
				g.parts = append(g.parts, g.partOfEnd(e))
			}
		}
		one, other := partOf(g.parts, c.A), partOf(g.parts, c.B)
		if other == 0 {
			one, other = other, one
		}
		if one == 0 && other > 0 && (g.meets[other] == nil || c.Kind == "direct") {
			g.meets[other] = c
		}
	}
}

func (b *board) partOfEnd(e contact.End) part {
	return part{
		Text: closed(e.Text), Read: e.Name, As: word(e.Slot), Cell: e.At.Cell, kind: b.kinds.of(e.Class, e.Keys),
		slot: e.Slot, items: []string{e.Item}, product: e.Product, family: e.Family, at: []schedule.At{e.At},
	}
}
