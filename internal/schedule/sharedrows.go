package schedule

import (
	"slices"
	"strings"

	"abut/internal/phrase"
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
		if i > 0 && gradeOf.MatchString(kinds[i]) && r.vocab.Family(kinds[i]) == "" {
			kinds[i] = kinds[0] + ", " + kinds[i]
			continue
		}
		if i > 0 && shared && r.vocab.Family(kinds[i]) == "" {
			kinds[i] = noun + ", " + kinds[i]
		}
	}
	return kinds
}

// gradeOf is what the second product of a row is besides what the first is: "fillet grade".
var gradeOf = regexp.MustCompile(`(?i)^(?:same\b.*|.*\b(?:grade|version|viscosity))$`)

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
		if slot == "type" && part.at > 0 && gradeOf.MatchString(parts[part.at]) && r.vocab.Family(parts[part.at]) == "" {
			return parts[0] + ", " + parts[part.at]
		}
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

// gradeAside is a figure in brackets that the data of several grades tells of one of them by
// its letters: "40 °F and up (LT 0 °F)"; asideFigure one without its bound.
var (
	gradeAside  = regexp.MustCompile(`\s*\(\s*([A-Z]{1,3}[0-9]?)\b[\s:=]*([^()]*)\)`)
	asideFigure = regexp.MustCompile(`[-−+]?\d+(?:\.\d+)?`)
)

// ofGrade puts the figure that a cell tells in brackets for the grade of the product in the
// place of the one before it, which is of the others.
func (r *reader) ofGrade(p *Product, words string) string {
	m := gradeAside.FindStringSubmatchIndex(words)
	if m == nil {
		return words
	}
	names := strings.Fields(p.Tag)
	if len(names) < 2 || names[len(names)-1] != words[m[2]:m[3]] {
		return words
	}
	before, aside := words[:m[0]], words[m[4]:m[5]]
	own, told := r.phrase.Quantities(aside, ""), r.phrase.Quantities(before, "")
	if len(own) != 1 || own[0].Unit == "" || strings.TrimSpace(aside[:own[0].Start]) != "" {
		return words
	}
	i := slices.IndexFunc(told, func(q phrase.Quantity) bool { return q.Kind == own[0].Kind })
	if i < 0 {
		return words
	}
	figure := own[0].Text
	if own[0].Bound == "" && own[0].Unit == told[i].Unit && !differs(own[0].Min, own[0].Max) { // it is bound as the other
		figure = asideFigure.ReplaceAllString(told[i].Text, asideFigure.FindString(figure))
	}
	return before[:told[i].Start] + figure + before[told[i].End:] + words[m[1]:]
}
