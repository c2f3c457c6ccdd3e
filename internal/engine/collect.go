package engine

import (
	"bytes"
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"abut/internal/document"
	"abut/internal/schedule"
)

// raw is a finding as a rule makes it; see policies/lib/finding.rego. It
// stands at a line, at a row of product data, or at an address.
type raw struct {
	place
	Message  string         `json:"message"`
	Severity string         `json:"severity"`
	Reason   string         `json:"reason"`
	Remedy   string         `json:"remedy"`
	Source   string         `json:"source"`
	Related  []rawRelated   `json:"related"`
	Keys     map[string]any `json:"keys"` // figures for other programs that run the rules
	Facts    []string       `json:"facts"`
}

type rawRelated struct {
	place
	What string `json:"what"`
}

type place struct {
	Line    string       `json:"line"`
	Product string       `json:"product"`
	At      *schedule.At `json:"at"`
	Cells   []string     `json:"cells"`
}

// spot is a place in the workbook.
type spot struct {
	sheet  string
	row    int
	mark   string
	turned bool // its cells stand below one another
	names  []string
}

// collector joins what rules say with their metadata and the rows meant.
type collector struct {
	file     string
	lines    map[string]spot
	products map[string]spot
	sheets   map[string]int // order in the workbook
	severity map[string]string
	cell     *regexp.Regexp
	made     []Finding
	problems Problems
}

func newCollector(doc *document.Document, severity map[string]string) *collector {
	c := &collector{
		file: doc.File, severity: severity, cell: regexp.MustCompile(`^[A-Z]{1,3}[1-9][0-9]*$`),
		lines: map[string]spot{}, products: map[string]spot{}, sheets: map[string]int{},
	}
	for _, l := range doc.Lines {
		c.lines[l.ID] = spot{l.Sheet, l.Row, l.Mark, l.Turned, namesOf(l)}
	}
	for _, p := range doc.Products {
		c.products[p.ID] = spot{sheet: p.Sheet, row: p.Row, mark: p.Tag}
	}
	for i, s := range doc.Reading.Sheets {
		c.sheets[s.Name] = i
	}
	return c
}

// add takes what a rule found in a document or, where there are cases, in one
// row of each of them.
func (c *collector) add(rule Rule, list []any, of *cases) {
	for _, value := range list {
		f, line, err := c.finding(rule, value)
		if err != nil {
			c.problems = append(c.problems, Problem{Rule: rule.ID, File: rule.File, Line: rule.Line, Message: err.Error()})
			continue
		}
		c.made = append(c.made, of.moved(f, line)...)
	}
}

// finding reads one raw finding strictly: an unknown key is a slip of its rule.
// It gives the line it stands at too, if it stands at one.
func (c *collector) finding(rule Rule, value any) (Finding, string, error) {
	text, err := json.Marshal(value)
	if err != nil {
		return Finding{}, "", fmt.Errorf("a finding cannot be written as JSON: %w", err)
	}
	var r raw
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	if err := d.Decode(&r); err != nil {
		return Finding{}, "", fmt.Errorf("a finding has the wrong shape: %w", err)
	}
	at, err := c.spot(r.place)
	if err != nil {
		return Finding{}, "", err
	}
	if strings.TrimSpace(r.Message) == "" {
		return Finding{}, "", fmt.Errorf("a finding has no message")
	}
	if r.Severity != "" && !slices.Contains(Severities(), r.Severity) {
		return Finding{}, "", fmt.Errorf("a finding has severity %q, not error, warning or note", r.Severity)
	}
	f := Finding{
		Rule: rule.ID, Topic: rule.Topic, Severity: c.grade(rule, r.Severity),
		File: c.file, Sheet: at.sheet, Row: at.row, Mark: at.mark, Cells: sortCells(r.Cells),
		Facts: r.Facts, Message: r.Message, Reason: or(r.Reason, rule.Reason), Remedy: or(r.Remedy, rule.Remedy), Source: or(r.Source, rule.Source),
	}
	f.Related, err = c.related(r.Related)
	return f, r.Line, err
}

func (c *collector) related(list []rawRelated) ([]Related, error) {
	var related []Related
	for _, r := range list {
		at, err := c.spot(r.place)
		if err != nil {
			return nil, fmt.Errorf("a related row: %w", err)
		}
		related = append(related, Related{Sheet: at.sheet, Row: at.row, Cells: sortCells(r.Cells), What: r.What})
	}
	return related, nil
}

// spot finds the row of a place, which names exactly one.
func (c *collector) spot(p place) (spot, error) {
	for _, cell := range p.Cells {
		if !c.cell.MatchString(cell) {
			return spot{}, fmt.Errorf("a finding names cell %q, which is not an address", cell)
		}
	}
	line, isLine := c.lines[p.Line]
	product, isProduct := c.products[p.Product]
	switch {
	case p.Line != "" && p.Product == "" && p.At == nil:
		if !isLine {
			return spot{}, fmt.Errorf("a finding names line %q, which is not in the document", p.Line)
		}
		return line.at(p.Cells), nil
	case p.Product != "" && p.Line == "" && p.At == nil:
		if !isProduct {
			return spot{}, fmt.Errorf("a finding names product %q, which is not in the document", p.Product)
		}
		return product, nil
	case p.At != nil && p.Line == "" && p.Product == "":
		return spot{sheet: p.At.Sheet, row: p.At.Row}, nil
	}
	return spot{}, fmt.Errorf("a finding must name one of line, product and at")
}

// namesOf are the cells that say which line it is and of what, and not what is wrong with it.
func namesOf(l schedule.Line) []string {
	if !l.Turned {
		return nil
	}
	return []string{l.Cells["mark"], l.Cells["tag"], l.Cells["material"]}
}

// at is the place of some cells of a line: its row, and for one whose cells stand below
// one another the row of the first of them that does more than name it.
func (s spot) at(cells []string) spot {
	if !s.turned || len(cells) == 0 {
		return s
	}
	tell := slices.DeleteFunc(slices.Clone(cells), func(cell string) bool { return slices.Contains(s.names, cell) })
	if len(tell) == 0 {
		tell = cells
	}
	s.row = rowOf(tell[0])
	for _, cell := range tell {
		s.row = min(s.row, rowOf(cell))
	}
	return s
}

// rowOf is the row of an address.
func rowOf(cell string) int {
	row, _ := strconv.Atoi(rowNumber.FindString(cell)) // spot has looked at its shape
	return row
}

// grade takes the rule's severity or the finding's own. A grade from the
// settings goes over the rule's, but never makes a milder finding worse: that
// one was mild for a reason that only the rule knows.
func (c *collector) grade(rule Rule, own string) string {
	set, isSet := c.severity[rule.ID]
	if !isSet {
		return or(own, rule.Severity)
	}
	if own != "" && weight(own) < min(weight(set), weight(rule.Severity)) {
		return own
	}
	return set
}

// weight grows with the severity.
func weight(severity string) int {
	return len(Severities()) - slices.Index(Severities(), severity)
}

func or(text, other string) string {
	if text != "" {
		return text
	}
	return other
}
