package schedule

import (
	"cmp"
	"fmt"
	"strings"
	"unicode"
)

// main settles what the line itself is: the material named in its material or
// tag column gives the role; where those say none, the first sealant does.
func (r *reader) main(l *Line) {
	it := l.Main()
	words := strings.Join([]string{l.Texts["material"], l.Texts["type"], l.Place, l.Group}, " ")
	switch {
	case it == nil:
		l.Role = r.offered(l)
	default:
		role := ""
		if p := r.productOf(it); p != nil {
			role = p.Role
		}
		if role == "" {
			role = r.role(it.Family, it.Class, words)
		}
		if it.Unknown && role == "other" {
			role = r.roleOfSeries(it.Tag)
		}
		if it.Unknown && role == "other" && r.sheetLike(l) {
			role = "membrane"
		}
		if role == "membrane" && r.words.hasAny(words, []string{"flashing"}) {
			role = "flashing"
		}
		l.Role = role
	}
}

// offered is the role of a row that offers a product of which nothing is known but its name
// in place of one of the data: that of what was specified. The name becomes the row's own
// material, so that what the row tells of it is held against the notes.
func (r *reader) offered(l *Line) string {
	name := l.Texts["material"]
	if l.Texts["specified"] == "" || !looksNamed(name) || !isName(strings.Fields(name)) || r.words.isNone(name) {
		return "other"
	}
	for _, m := range r.lex.findTags(l.Texts["specified"]) {
		if m.product < 0 {
			continue
		}
		l.Items = append(l.Items, Item{
			ID: fmt.Sprintf("%s/%d", l.ID, len(l.Items)+1), Slot: "material", Text: name, Polarity: "yes", Clause: name,
			Traits: []string{}, Keys: []string{}, Signals: []string{}, At: At{Sheet: l.Sheet, Row: l.Row, Cell: l.Cells["material"]},
		})
		return r.sched.Products[m.product].Role
	}
	return "other"
}

// productOf is the product that an item names, nil without data of it.
func (r *reader) productOf(it *Item) *Product {
	if it == nil || it.Product == "" {
		return nil
	}
	for i := range r.sched.Products {
		if p := &r.sched.Products[i]; p.ID == it.Product {
			return p
		}
	}
	return nil
}

// roleOfSeries is the role of all products whose tags begin with the same letters,
// "other" where they differ or there are none: SL-7 is a sealant where SL-1 to SL-4 are.
func (r *reader) roleOfSeries(tag string) string {
	series, role := letters(tag), ""
	for i := range r.sched.Products {
		p := &r.sched.Products[i]
		if series == "" || letters(p.Tag) != series {
			continue
		}
		if role != "" && role != p.Role {
			return "other"
		}
		role = p.Role
	}
	return cmp.Or(role, "other")
}

// letters are those that a tag with a number begins with, "" for any other tag.
func letters(tag string) string {
	end := strings.IndexFunc(tag, func(c rune) bool { return !unicode.IsLetter(c) })
	if end < 1 || !strings.ContainsFunc(tag[end:], unicode.IsDigit) {
		return ""
	}
	return strings.ToUpper(tag[:end])
}

// sheetLike holds for a row whose own material is not known but which is filled
// in as a sheet is: a substrate, and a primer or a lap.
func (r *reader) sheetLike(l *Line) bool {
	filled := func(slot string) bool { return !r.words.isBlank(l.Texts[slot]) }
	return filled("substrate") && (filled("primer") || filled("lap") || filled("cover"))
}

// Main is the line's own material: a tag of its tag or material column, else
// the first material named there; nil if none is.
func (l *Line) Main() *Item {
	var first *Item
	for i := range l.Items {
		it := &l.Items[i]
		if it.Slot != "material" && it.Slot != "tag" || it.Polarity == "no" {
			continue
		}
		if it.Slot == "tag" && it.Tag != "" {
			return it
		}
		if first == nil || first.Tag == "" && (it.Tag != "" || first.Unknown && !it.Unknown) {
			first = it
		}
	}
	return first
}
