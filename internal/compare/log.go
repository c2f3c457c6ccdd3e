package compare

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/document"
	"abut/internal/engine"
)

// Entry is one row of the review log: a substitution with all the lines in
// which it is made. Action is a proposal, for the reviewer to confirm.
type Entry struct {
	File      string
	Specified string
	Offered   string
	Lines     []string // "W2 (Sheet1, row 12)"
	Worse     []string
	Better    []string
	Breaks    []string
	Action    string
	level     int
}

// What speaks against a substitution, mildest first.
const (
	clean = iota
	consequence
	warned
	failed
)

const betterRule = "substitution-better"

// Log makes the review log of a submitted document from the findings that
// Brought gave: one entry a substitution, in the order of the lines, then the
// specified lines that were left out.
func (c *Comparer) Log(submitted *document.Document, findings []engine.Finding) []Entry {
	var entries []Entry
	index := map[string]int{}
	rows := map[string]row{}
	marks := map[string]string{}
	for _, l := range submitted.Lines {
		rows[l.ID], marks[l.ID] = row{l.Sheet, l.Row}, l.Mark
	}
	for _, p := range submitted.Comparison.Pairs {
		for _, s := range p.Swaps {
			if s.Same && !toldOf(findings, rows[p.Line], s) {
				continue
			}
			key := plainWords(s.Was.Text) + "\x00" + plainWords(s.Now.Text)
			if _, ok := index[key]; !ok {
				index[key] = len(entries)
				entries = append(entries, Entry{File: submitted.File, Specified: named(s.Was), Offered: named(s.Now)})
			}
			e := &entries[index[key]]
			e.Lines = append(e.Lines, lineName(marks[p.Line], rows[p.Line]))
			e.add(findings, rows[p.Line], s)
		}
	}
	for _, w := range submitted.Comparison.Removed {
		name := strings.Trim(strings.Join([]string{w.Mark, w.Place}, ", "), ", ")
		entries = append(entries, Entry{
			File: submitted.File, Specified: w.Text, Offered: "(no row in the submittal)", Lines: []string{name},
			Worse: []string{"left out"}, level: warned,
		})
	}
	for i := range entries {
		entries[i].Action = []string{c.actions.Clean, c.actions.Consequence, c.actions.Warning, c.actions.Error}[entries[i].level]
	}
	return entries
}

// named is a product with what it is, or the words of the row.
func named(o document.Offer) string {
	if !o.Data || o.Name == "" || strings.EqualFold(o.Name, o.Text) {
		return o.Text
	}
	return o.Text + " (" + o.Name + ")"
}

func lineName(mark string, at row) string {
	place := fmt.Sprintf("row %d", at.row)
	if at.sheet != "" {
		place = at.sheet + ", " + place
	}
	if mark == "" {
		return place
	}
	return mark + " (" + place + ")"
}

// add takes over what the findings of a line say of a swap.
func (e *Entry) add(findings []engine.Finding, at row, s document.Swap) {
	what := because(at, s).What
	for _, f := range findings {
		if f.Waived != nil {
			f.Message += " (waived by " + f.Waived.By + " until " + f.Waived.Until + ": " + f.Waived.Reason + ")"
			f.Severity = "note" // it is settled, and raises nothing
		}
		switch {
		case f.Topic == substitution && onSwap(f, at, s) && f.Rule == betterRule:
			e.Better = once(e.Better, shortened(f.Message, s))
		case f.Topic == substitution && onSwap(f, at, s):
			e.Worse = once(e.Worse, shortened(f.Message, s))
			e.raise(f.Severity, warned)
		case f.Topic != substitution && brings(f, at, what):
			e.Breaks = once(e.Breaks, f.Message)
			e.raise(f.Severity, consequence)
		}
	}
}

func (e *Entry) raise(severity string, warning int) {
	switch severity {
	case "error":
		e.level = failed
	case "warning":
		e.level = max(e.level, warning)
	}
}

func onSwap(f engine.Finding, at row, s document.Swap) bool {
	return f.Sheet == at.sheet && f.Row == at.row && slices.Contains(f.Cells, s.Now.At.Cell)
}

func toldOf(findings []engine.Finding, at row, s document.Swap) bool {
	return slices.ContainsFunc(findings, func(f engine.Finding) bool {
		return f.Topic == substitution && onSwap(f, at, s)
	})
}

func brings(f engine.Finding, at row, what string) bool {
	return slices.ContainsFunc(f.Related, func(r engine.Related) bool {
		return r.Sheet == at.sheet && r.Row == at.row && r.What == what
	})
}

// shortened leaves out the names that the entry tells already.
func shortened(message string, s document.Swap) string {
	if s.Same {
		return strings.TrimPrefix(message, s.Now.Text+" as offered: ")
	}
	return strings.TrimPrefix(message, s.Now.Text+" in place of "+s.Was.Text+": ")
}

func once(list []string, text string) []string {
	if slices.Contains(list, text) {
		return list
	}
	return append(list, text)
}
