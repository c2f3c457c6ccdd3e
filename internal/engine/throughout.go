package engine

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"abut/internal/document"
	"abut/internal/schedule"
)

// most says from where on what a rule finds is told once for a table; see
// policies/lib/most.json and, for other programs, policies/lib/throughout.rego.
type most struct {
	Share   float64 `json:"share"`
	Rows    int     `json:"rows"`
	Message string  `json:"message"`
	Remedy  string  `json:"remedy"`
}

// place of a row, and what a rule found in a table.
type (
	rowAt struct {
		sheet string
		row   int
	}
	inTable struct{ rule, table string }
)

var rowNumber = regexp.MustCompile(`[0-9]+$`)

// throughout tells once, at the heading of a table, what one rule found in a
// good part of its rows: a mistake made throughout is one matter, and so is a
// column that was read otherwise than it is meant.
func (m most) throughout(doc *document.Document, made []Finding) []Finding {
	if m.Rows == 0 || doc.Comparison != nil {
		return made
	}
	tables, size, last := map[rowAt]string{}, map[string]int{}, map[string]int{}
	for _, l := range doc.Lines {
		tables[rowAt{l.Sheet, l.Row}] = l.Table
		if last[l.Table] != l.Row { // the lines of a row follow one another
			size[l.Table]++
		}
		last[l.Table] = l.Row
	}
	rows := map[inTable]map[int]bool{}
	key := func(f Finding) inTable { return inTable{f.Rule, tables[rowAt{f.Sheet, f.Row}]} }
	for _, f := range made {
		if k := key(f); k.table != "" && f.Severity != "note" {
			if rows[k] == nil {
				rows[k] = map[int]bool{}
			}
			rows[k][f.Row] = true
		}
	}
	var kept []Finding
	found := map[inTable][]Finding{}
	for _, f := range made {
		k := key(f)
		if n := len(rows[k]); f.Severity != "note" && n >= m.Rows && float64(n) >= m.Share*float64(size[k.table]) {
			found[k] = append(found[k], f)
			continue
		}
		kept = append(kept, f)
	}
	for _, t := range doc.Reading.Tables {
		for k, list := range found {
			if k.table == t.ID {
				kept = append(kept, m.one(t, list, len(rows[k]), size[t.ID]))
			}
		}
	}
	return kept
}

// one is the finding for all of a table, told by the first of its rows.
func (m most) one(t schedule.Table, list []Finding, rows, size int) Finding {
	first, head := list[0], t.Head[len(t.Head)-1]
	severity := first.Severity
	for _, f := range list {
		if f.Row < first.Row || f.Row == first.Row && strings.Compare(f.Severity+f.Message, first.Severity+first.Message) < 0 {
			first = f
		}
		if weight(f.Severity) > weight(severity) {
			severity = f.Severity
		}
	}
	one := first
	one.Severity, one.Row, one.Mark, one.Facts, one.Related, one.Throughout = severity, head, "", nil, nil, true
	one.Cells = []string{}
	for _, cell := range first.Cells {
		one.Cells = append(one.Cells, rowNumber.ReplaceAllString(cell, strconv.Itoa(head)))
	}
	one.Cells = sortCells(one.Cells)
	one.Message = fmt.Sprintf(m.Message, rows, size, first.Row, first.Message)
	one.Remedy = fmt.Sprintf(m.Remedy, first.Remedy)
	for _, f := range list {
		one.Related = append(one.Related, Related{Sheet: f.Sheet, Row: f.Row, Cells: slices.Clone(f.Cells), What: f.Message})
	}
	return one
}
