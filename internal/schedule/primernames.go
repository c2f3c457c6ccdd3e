package schedule

import (
	"strings"

	"abut/internal/regexp"
)

// primersByName registers the primers that product data names for its sheets and lists
// nowhere, where the schedule's own column of primers has them by the same name: "Larch R
// (synthetic rubber) on porous". Offices that list sheets alone do so (common practice).
func (r *reader) primersByName(all []*table) {
	used := map[string]bool{}
	r.each(all, kindSchedule, func(t *table) {
		r.namedPrimers(t, func(name, _ string, _ At) { used[fold(name)] = true })
	})
	if len(used) == 0 {
		return
	}
	r.each(all, kindProducts, func(t *table) {
		r.namedPrimers(t, func(name, kind string, at At) {
			if r.isListed(name) || !used[fold(name)] || r.vocab.Family(name) != "" {
				return
			}
			r.sched.Products = append(r.sched.Products, newProduct(name, at.Sheet, at.Row))
			i := len(r.sched.Products) - 1
			r.lex.addWhole(name, i)
			r.told = append(r.told, told{product: i, prose: true, says: []source{{slot: toldSubject, text: kind + " primer", at: at}}})
		})
	})
}

// isListed holds for a name of a listed product, whole, without its kind ("Larch W" for "Larch W
// primer"), or without its maker ("Prime W" for "Larch Prime W").
func (r *reader) isListed(name string) bool {
	_, known := r.lex.tags[fold(name)]
	return known || len(r.lex.kindly[fold(name)]) > 0 || len(r.lex.short[fold(name)]) > 0
}

// namedPrimers hands over the names in a table's columns of primers, each with what a
// bracket behind it says of its kind.
func (r *reader) namedPrimers(t *table, take func(name, kind string, at At)) {
	for i, c := range t.cols {
		if c.Slot != "primer" {
			continue
		}
		for row := t.first; row <= t.last; row++ {
			words := text(t.sheet, row, t.nums[i])
			for _, m := range primerNamed.FindAllStringSubmatch(words, -1) {
				take(m[1], m[2], t.at(row, t.nums[i]))
				if m[3] != "" { // "Larch S (solvent) or W (water)"
					maker, _, _ := strings.Cut(m[1], " ")
					take(maker+" "+m[3], m[4], t.at(row, t.nums[i]))
				}
			}
		}
	}
}

// primerNamed is a name of two words, the second short as codes are, that may go on with
// another of the same maker.
var primerNamed = regexp.MustCompile(`(\p{Lu}[\pL'’]{2,} [\p{Lu}\d][\pL\d-]{0,3})\b(?: \(([^()]*)\))?(?:(?: or |/| / )(\p{Lu}[\p{Lu}\d]{0,2})\b(?: \(([^()]*)\))?)?`)
