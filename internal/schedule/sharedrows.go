package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// rowPart is which part of a row of product data is of one of its products, by what that
// is called and the others are.
type rowPart struct {
	at, of int
	called []string
}

// namesOfRow lists the products of a row that names two or more with strokes between, and
// tells with as many strokes what each is: "Alder PR-1 / PR-2" and "primers, solvent /
// water-borne", "Larch EPS / MW-8" and "expanded polystyrene / mineral wool".
func (r *reader) namesOfRow(t *table, row int, name string) []string {
	names, kinds := strokes.Split(name, -1), r.kindsOfRow(t, row)
	if len(names) < 2 || len(kinds) != len(names) {
		return nil
	}
	for i, kind := range kinds {
		if r.vocab.Family(kind) == "" || len(strings.Fields(names[i])) > mostOfAName || !strings.ContainsFunc(names[i], isUpperOrDigit) {
			return nil
		}
	}
	maker := makerFirst.FindString(names[0])
	for i := range names[1:] { // the maker is named once
		if maker != "" && !strings.Contains(names[i+1], " ") {
			names[i+1] = maker + names[i+1]
		}
	}
	return names
}

// makerFirst is a word in small letters at the head of a name, of two words or more.
var makerFirst = regexp.MustCompile(`^\p{Lu}\p{Ll}{2,} `)

func isUpperOrDigit(c rune) bool { return c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' }

// kindsOfRow parts what a row says that its products are; the noun before the comma is of
// each.
func (r *reader) kindsOfRow(t *table, row int) []string {
	col := t.column("type")
	if col == 0 {
		return nil
	}
	kinds := strokes.Split(text(t.sheet, row, col), -1)
	noun, _, shared := strings.Cut(kinds[0], ", ")
	for i := range kinds {
		if i > 0 && shared && r.vocab.Family(kinds[i]) == "" {
			kinds[i] = noun + ", " + kinds[i]
		}
	}
	return kinds
}

// shareRow registers the products of one row.
func (r *reader) shareRow(t *table, row int, section string, names []string) {
	called := make([]string, len(names))
	for i, name := range names {
		called[i] = strings.TrimPrefix(name, makerFirst.FindString(name))
	}
	for i, name := range names {
		if _, again := r.lex.tags[fold(name)]; again {
			continue
		}
		p := newProduct(name, t.sheet.Name, row)
		p.section, p.home = section, t
		at := len(r.sched.Products)
		r.sched.Products = append(r.sched.Products, p)
		r.rowParts[p.ID] = rowPart{at: i, of: len(names), called: called}
		if _, first := r.productRows[t.row(row)]; first {
			r.rowMates[t.row(row)] = append(r.rowMates[t.row(row)], at)
		} else {
			r.productRows[t.row(row)] = at
		}
		r.layers[at] = r.isLayer(t, row)
		r.lex.add(name, at)
	}
}

// ownPart is what a cell of a shared row says of one of its products: the part with as many
// strokes before it, or that which calls it ("PR-1 25 up; PR-2 40 up"); else all of it.
func (r *reader) ownPart(p *Product, slot, words string) string {
	part, shared := r.rowParts[p.ID]
	if !shared {
		return words
	}
	if parts := strokes.Split(words, -1); len(parts) == part.of {
		if noun, _, ok := strings.Cut(parts[0], ", "); ok && part.at > 0 && (slot == "type" || slot == "material") && r.vocab.Family(parts[part.at]) == "" {
			return noun + ", " + parts[part.at]
		}
		return parts[part.at]
	}
	calls := func(name string) bool { return strings.Contains(words, name) }
	if !slices.ContainsFunc(part.called, calls) {
		return words
	}
	var own []string
	for _, one := range strings.Split(words, ";") {
		names := func(name string) bool { return strings.Contains(one, name) }
		if strings.Contains(one, part.called[part.at]) || !slices.ContainsFunc(part.called, names) {
			own = append(own, strings.TrimSpace(strings.TrimPrefix(strings.TrimSpace(one), part.called[part.at])))
		}
	}
	return strings.Join(own, "; ")
}
