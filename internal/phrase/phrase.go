// Package phrase reads the words of one cell, note or remark: quantities with
// units, dates, and clauses with their materials, relation, polarity and
// signals. Every word list it goes by is data under policies/knowledge.
package phrase

import (
	"fmt"
	"io/fs"

	"abut/internal/knowledge"
	"abut/policies"
)

// Span is a half-open range of byte offsets in the source text.
type Span struct {
	Start int `json:"start"`
	End   int `json:"end"`
}

// Reader holds the compiled word lists. It is safe for concurrent use.
type Reader struct {
	units   *unitTable
	numbers map[string]float64
	bounds  *boundTable
	labels  map[string]bool // words before a number that names something
	bodies  map[string]bool // those of them that have a temperature too
	ranges  map[string]bool // words between the two ends of a range
	twins   map[string]bool // signs between a figure and the same in another unit
	cal     *calendar
	lang    *language
	signals *signalTable
}

// New compiles the word lists that come with the policies.
func New() (*Reader, error) { return From(policies.FS) }

// From compiles the word lists of another policy tree of the same layout.
func From(fsys fs.FS) (*Reader, error) {
	var units struct {
		Units unitData `json:"units"`
	}
	var words struct {
		Words wordData `json:"words"`
	}
	var signals struct {
		Signals signalData `json:"signals"`
	}
	for name, into := range map[string]any{"units": &units, "words": &words, "signals": &signals} {
		if err := knowledge.Read(fsys, "read word list", "knowledge/"+name+".json", into); err != nil {
			return nil, err
		}
	}
	f := words.Words.Figures
	r := &Reader{numbers: f.Numbers, labels: set(f.Labels), bodies: set(f.Bodies), ranges: set(f.Ranges), twins: set(f.Twins)}
	var err error
	if r.units, err = newUnitTable(units.Units); err != nil {
		return nil, fmt.Errorf("knowledge/units.json: %w", err)
	}
	if r.bounds, err = newBoundTable(f); err != nil {
		return nil, fmt.Errorf("knowledge/words.json: %w", err)
	}
	if r.cal, err = newCalendar(words.Words.Dates); err != nil {
		return nil, fmt.Errorf("knowledge/words.json: %w", err)
	}
	if r.lang, err = newLanguage(words.Words.Language); err != nil {
		return nil, fmt.Errorf("knowledge/words.json: %w", err)
	}
	if r.signals, err = newSignalTable(signals.Signals); err != nil {
		return nil, fmt.Errorf("knowledge/signals.json: %w", err)
	}
	return r, nil
}

func set(words []string) map[string]bool {
	m := make(map[string]bool, len(words))
	for _, w := range words {
		m[w] = true
	}
	return m
}
