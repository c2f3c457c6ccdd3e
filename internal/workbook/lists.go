package workbook

import (
	"bytes"
	"strings"
)

// maxListFormula is the longest formula of a drop-down that is looked at; a
// range with its sheet's name is much shorter.
const maxListFormula = 1000

// listSource is the formula that a drop-down of a sheet takes its words from.
type listSource struct{ sheet, formula string }

// lists notes where the drop-downs of a sheet take their words from. It reads
// the element just started, in the form of the standard or of its extension.
func (r *sheetReader) lists() {
	s := r.s
	depth, list, formula := s.depth, false, false
	var text []byte
	for s.next() {
		switch {
		case s.tok == startTag && string(s.name) == "dataValidation":
			list = string(s.attr("type")) == "list"
		case s.tok == startTag && string(s.name) == "formula1":
			formula, text = list, text[:0]
		case s.tok == chars && formula && len(text) <= maxListFormula:
			text = s.decode(text, s.chars, s.literal)
		case s.tok == endTag && s.depth < depth:
			return
		case s.tok == endTag && string(s.name) == "formula1" && formula:
			if len(text) <= maxListFormula {
				r.sources = append(r.sources, listSource{r.sheet.Name, strings.TrimSpace(string(text))})
			}
			formula = false
		}
	}
}

// placeLists gives every sheet the ranges that drop-downs take their words
// from. A formula that names no range, such as a list of words or a
// computation, is left alone.
func (b *book) placeLists(sheets []Sheet) {
	names := map[string]string{}
	for _, n := range b.file.GetDefinedName() {
		names[strings.ToLower(n.Name)] = strings.TrimPrefix(n.RefersTo, "=")
	}
	seen := map[listSource]bool{}
	for _, src := range b.sources {
		if to, ok := names[strings.ToLower(src.formula)]; ok {
			src.formula = to
		}
		if seen[src] {
			continue
		}
		seen[src] = true
		sheet, cells := src.sheet, src.formula
		if i := strings.LastIndexByte(src.formula, '!'); i >= 0 {
			sheet, cells = unquote(src.formula[:i]), src.formula[i+1:]
		}
		area, ok := parseArea([]byte(cells))
		for i := range sheets {
			if ok && strings.EqualFold(sheets[i].Name, sheet) {
				sheets[i].Lists = append(sheets[i].Lists, area)
			}
		}
	}
}

// unquote reads the name of a sheet as formulas write it.
func unquote(name string) string {
	if len(name) >= 2 && name[0] == '\'' && name[len(name)-1] == '\'' {
		return strings.ReplaceAll(name[1:len(name)-1], "''", "'")
	}
	return name
}

// parseArea reads a range such as $A$2:$A$30, a cell, or whole columns.
func parseArea(ref []byte) (Range, bool) {
	first, last, pair := bytes.Cut(ref, []byte(":"))
	if !pair {
		last = first
	}
	top, left, ok1 := parseRef(first)
	bottom, right, ok2 := parseRef(last)
	if pair && !ok1 && !ok2 { // whole columns: any row will do to read them
		_, left, ok1 = parseRef(append(bytes.Clone(first), '1'))
		_, right, ok2 = parseRef(append(bytes.Clone(last), '1'))
		top, bottom = 1, lastRow
	}
	return Range{top, left, bottom, right}, ok1 && ok2 && top <= bottom && left <= right
}

// FeedsDropDowns says whether most of the cells of a sheet are words that
// drop-downs offer: such a sheet lists words, and tells nothing of a project.
func (s *Sheet) FeedsDropDowns() bool {
	all, fed := 0, 0
	for _, row := range s.Rows {
		for _, c := range row.Cells {
			all++
			for _, a := range s.Lists {
				if c.Row >= a.Top && c.Row <= a.Bottom && c.Col >= a.Left && c.Col <= a.Right {
					fed++
					break
				}
			}
		}
	}
	return 2*fed > all
}
