package schedule

// memory is what was worked out for texts asked before; cells of a schedule say
// the same again and again, and a heading is looked for in every row.
type memory[V any] map[string]V

// mostRemembered bounds a memory: a workbook of nothing but different texts does
// not fill the machine with answers that nobody asks for again.
const mostRemembered = 100_000

// of gives the answer for a text, worked out the first time.
func (m memory[V]) of(text string, work func() V) V {
	v, known := m[text]
	if !known {
		if len(m) >= mostRemembered {
			clear(m)
		}
		v = work()
		m[text] = v
	}
	return v
}
