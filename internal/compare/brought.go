package compare

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"

	"abut/internal/document"
	"abut/internal/engine"
)

// substitution is the topic of the findings on the swaps themselves.
const substitution = "substitution"

// row is a row of one of the two workbooks.
type row struct {
	sheet string
	row   int
}

// Brought picks, from the findings on the submitted schedule, those on the
// swaps themselves and those that the specified schedule did not have. The
// latter name under related the swap or the change that brings them.
// Both lists of findings are those of the engine on the two documents.
func Brought(c *document.Comparison, specified, submitted *document.Document, before, after []engine.Finding) []engine.Finding {
	b := newBringer(c, specified, submitted, before)
	var out []engine.Finding
	told := map[string]bool{}
	for _, f := range after {
		if f.Topic == substitution {
			told[cellKey(f)] = true
		}
	}
	for _, f := range after {
		if f.Topic == substitution {
			out = append(out, f)
			continue
		}
		if b.wasThere(f) {
			continue
		}
		causes := b.causes(f)
		// What is about the data itself counts where a swap brings it and is
		// not told at the same cell.
		if f.Topic == "data" && (f.Severity == "note" || len(causes) == 0 || told[cellKey(f)]) {
			continue
		}
		f.Related = append(slices.Clone(f.Related), causes...)
		out = append(out, f)
	}
	return out
}

func cellKey(f engine.Finding) string { return fmt.Sprint(f.Sheet, "\x00", f.Row, f.Cells) }

// bringer knows which rows stand for which, and what was found before.
type bringer struct {
	pairs   map[row][]document.Pair // by submitted row
	added   map[row]bool
	offered map[row]string // submitted product row -> id
	was     map[row][]row
	before  map[string][]engine.Finding // by rule, not yet matched
	all     []document.Pair
	rowOf   map[string]row
}

func newBringer(c *document.Comparison, specified, submitted *document.Document, before []engine.Finding) *bringer {
	b := &bringer{
		pairs: map[row][]document.Pair{}, added: map[row]bool{}, offered: map[row]string{},
		was: map[row][]row{}, before: map[string][]engine.Finding{}, all: c.Pairs, rowOf: map[string]row{},
	}
	for _, l := range submitted.Lines {
		b.rowOf[l.ID] = row{l.Sheet, l.Row}
	}
	for _, p := range c.Pairs {
		at := b.rowOf[p.Line]
		b.pairs[at] = append(b.pairs[at], p)
		b.was[at] = append(b.was[at], row{p.Was.At.Sheet, p.Was.At.Row})
	}
	for _, a := range c.Added {
		b.added[b.rowOf[a.Line]] = true
	}
	products := map[string]row{}
	for _, p := range specified.Products {
		products[plainWords(p.Tag)] = row{p.Sheet, p.Row}
	}
	for _, p := range submitted.Products {
		at := row{p.Sheet, p.Row}
		b.offered[at] = p.ID
		if old, ok := products[plainWords(p.Tag)]; ok {
			b.was[at] = append(b.was[at], old)
		}
	}
	for _, f := range before {
		b.before[f.Rule] = append(b.before[f.Rule], f)
	}
	return b
}

// wasThere: the specified schedule has a finding of the same rule, no milder,
// on a row that this one stands for. Each counts once.
func (b *bringer) wasThere(f engine.Finding) bool {
	at := row{f.Sheet, f.Row}
	_, isOffer := b.offered[at]
	known := len(b.pairs[at]) > 0 || b.added[at] || isOffer
	stands := func(old engine.Finding) bool {
		if weight(old.Severity) < weight(f.Severity) {
			return false
		}
		if !known || f.Topic == "safety" {
			return true // no counterpart by row: a note, a title block, a caution told once
		}
		return slices.Contains(b.was[at], row{old.Sheet, old.Row}) || b.sameRows(f, old)
	}
	i := slices.IndexFunc(b.before[f.Rule], stands)
	if i < 0 {
		return false
	}
	if known && len(b.pairs[at]) == 1 && !b.pairs[at][0].Split {
		b.before[f.Rule] = slices.Delete(b.before[f.Rule], i, i+1)
	}
	return true
}

// sameRows: a finding of several rows may stand at another of them.
func (b *bringer) sameRows(f, old engine.Finding) bool {
	rows := func(f engine.Finding) []row {
		out := []row{{f.Sheet, f.Row}}
		for _, r := range f.Related {
			out = append(out, row{r.Sheet, r.Row})
		}
		return out
	}
	if len(f.Related) == 0 || len(old.Related) == 0 {
		return false
	}
	before := rows(old)
	for _, r := range rows(f) {
		if was := b.was[r]; len(was) > 0 && !slices.ContainsFunc(was, func(w row) bool { return slices.Contains(before, w) }) {
			return false
		}
	}
	return true
}

func weight(severity string) int {
	return len(engine.Severities()) - slices.Index(engine.Severities(), severity)
}

// causes names the swaps that the finding speaks of, else the changed cells,
// else any swap of its rows.
func (b *bringer) causes(f engine.Finding) []engine.Related {
	at := row{f.Sheet, f.Row}
	if b.added[at] {
		return []engine.Related{{Sheet: f.Sheet, Row: f.Row, What: "the row was added by the submittal", Cause: true}}
	}
	rows := []row{at}
	for _, r := range f.Related {
		rows = append(rows, row{r.Sheet, r.Row})
	}
	if id, isOffer := b.offered[at]; isOffer {
		return b.usesOf(id)
	}
	cells := slices.Clone(f.Cells)
	for _, r := range f.Related {
		cells = append(cells, r.Cells...)
	}
	for _, look := range []func(document.Pair, row) []engine.Related{
		func(p document.Pair, at row) []engine.Related { return swapsAt(p, at, cells) },
		func(p document.Pair, at row) []engine.Related { return changesAt(p, at, cells) },
		func(p document.Pair, at row) []engine.Related { return swapsAt(p, at, nil) },
		func(p document.Pair, at row) []engine.Related { return changesAt(p, at, nil) },
	} {
		var out []engine.Related
		for _, at := range slices.CompactFunc(rows, func(a, b row) bool { return a == b }) {
			for _, p := range b.pairs[at] {
				out = append(out, look(p, at)...)
			}
		}
		if len(out) > 0 {
			return distinct(out)
		}
	}
	return nil
}

// usesOf names the rows where a product of the data stands in for another.
func (b *bringer) usesOf(product string) []engine.Related {
	var out []engine.Related
	for _, p := range b.all {
		for _, s := range p.Swaps {
			if s.Now.Product == product {
				out = append(out, because(b.rowOf[p.Line], s))
			}
		}
	}
	return distinct(out)
}

// swapsAt lists the swaps of a row whose cell is among those, nil for any.
func swapsAt(p document.Pair, at row, cells []string) []engine.Related {
	var out []engine.Related
	for _, s := range p.Swaps {
		if cells == nil || slices.Contains(cells, s.Now.At.Cell) {
			out = append(out, because(at, s))
		}
	}
	return out
}

func because(at row, s document.Swap) engine.Related {
	what := fmt.Sprintf("brought by the swap: %s in place of %s", called(s.Now), called(s.Was))
	if s.Same {
		what = "brought by what is now said of " + called(s.Now)
	}
	return engine.Related{Sheet: at.sheet, Row: at.row, Cells: cellsOf(s.Now.At.Cell), What: what, Cause: true}
}

// called quotes what is no product's name: the words of a cell may break off.
func called(o document.Offer) string {
	if o.Tag != "" || o.Data {
		return o.Text
	}
	return strconv.Quote(o.Text)
}

func changesAt(p document.Pair, at row, cells []string) []engine.Related {
	var out []engine.Related
	for _, c := range p.Changes {
		if cells != nil && !slices.Contains(cells, c.Cell) {
			continue
		}
		what := fmt.Sprintf("brought by the change of %s: %q became %q", c.Slot, c.Was, c.Now)
		out = append(out, engine.Related{Sheet: at.sheet, Row: at.row, Cells: cellsOf(c.Cell), What: what, Cause: true})
	}
	return out
}

func cellsOf(cell string) []string {
	if cell == "" {
		return nil
	}
	return []string{cell}
}

func distinct(list []engine.Related) []engine.Related {
	slices.SortStableFunc(list, func(a, b engine.Related) int {
		return cmp.Or(cmp.Compare(a.Sheet, b.Sheet), cmp.Compare(a.Row, b.Row), cmp.Compare(a.What, b.What))
	})
	return slices.CompactFunc(list, func(a, b engine.Related) bool {
		return a.Sheet == b.Sheet && a.Row == b.Row && a.What == b.What
	})
}
