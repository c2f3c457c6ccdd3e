package schedule

import "abut/internal/phrase"

// memory is what was worked out for what was asked before, for texts most of
// all; cells of a schedule say the same again and again, and a heading is looked
// for in every row. What it gives is shared and not changed.
type memory[K comparable, V any] map[K]V

// mostRemembered bounds a memory: a workbook of nothing but different texts does
// not fill the machine with answers that nobody asks for again.
const mostRemembered = 100_000

// of gives the answer, worked out the first time; a memory that is nil keeps none.
func (m memory[K, V]) of(asked K, work func() V) V {
	if m == nil {
		return work()
	}
	v, known := m[asked]
	if !known {
		if len(m) >= mostRemembered {
			clear(m)
		}
		v = work()
		m[asked] = v
	}
	return v
}

// phrases reads what stands in texts, each of them once.
type phrases struct {
	*phrase.Reader
	figures memory[figuresAsked, []phrase.Quantity]
	days    memory[daysAsked, []phrase.Date]
}

type figuresAsked struct{ text, hint string }

type daysAsked struct {
	text   string
	order  phrase.DateOrder
	year   int
	column bool
}

func newPhrases(r *phrase.Reader) *phrases {
	return &phrases{r, memory[figuresAsked, []phrase.Quantity]{}, memory[daysAsked, []phrase.Date]{}}
}

// Quantities is that of the reader.
func (p *phrases) Quantities(text, hint string) []phrase.Quantity {
	return p.figures.of(figuresAsked{text, hint}, func() []phrase.Quantity { return p.Reader.Quantities(text, hint) })
}

// Dates is that of the reader.
func (p *phrases) Dates(text string, order phrase.DateOrder, year int) []phrase.Date {
	return p.days.of(daysAsked{text, order, year, false}, func() []phrase.Date { return p.Reader.Dates(text, order, year) })
}

// ColumnDates is that of the reader.
func (p *phrases) ColumnDates(text string, order phrase.DateOrder, year int) []phrase.Date {
	return p.days.of(daysAsked{text, order, year, true}, func() []phrase.Date { return p.Reader.ColumnDates(text, order, year) })
}
