package workbook

import (
	"bytes"
	"cmp"
	"slices"
	"strings"
)

// maxListFormula is the longest formula of a drop-down that is looked at; a
// range with its sheet's name is much shorter.
const maxListFormula = 1000

// listSource is the formula that a drop-down of a sheet takes its words from.
type listSource struct{ sheet, formula string }

// lists notes where the drop-downs of a sheet take their words from. It reads
// the element just started, in the form of the standard or of its extension.
func (r *sheetReader) lists() error {
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
			return nil
		case s.tok == endTag && string(s.name) == "formula1" && formula:
			if len(text) <= maxListFormula {
				r.sources[listSource{r.sheet.Name, strings.TrimSpace(string(text))}] = true
			}
			if formula = false; len(r.sources) > r.lim.Lists {
				return tooMuch("ranges that drop-downs take their words from", r.lim.Lists)
			}
		}
	}
	return nil
}

// placeLists gives every sheet the ranges that drop-downs take their words
// from. A formula that names no range, such as a list of words or a
// computation, is left alone.
func (b *book) placeLists(sheets []Sheet) error {
	names, err := b.namedRanges()
	if err != nil {
		return err
	}
	seen := map[listSource]bool{}
	for src := range b.sources {
		if to, ok := names[strings.ToLower(src.formula)]; ok {
			src.formula = to
		}
		if i := strings.LastIndexByte(src.formula, '!'); i >= 0 {
			src.sheet, src.formula = unquote(src.formula[:i]), src.formula[i+1:]
		}
		area, ok := parseArea([]byte(src.formula))
		if !ok || seen[src] {
			continue
		}
		seen[src] = true
		for i := range sheets {
			if strings.EqualFold(sheets[i].Name, src.sheet) {
				sheets[i].Lists = append(sheets[i].Lists, area)
			}
		}
	}
	for _, s := range sheets {
		slices.SortFunc(s.Lists, func(a, b Range) int {
			return cmp.Or(a.Top-b.Top, a.Left-b.Left, a.Bottom-b.Bottom, a.Right-b.Right)
		})
	}
	return nil
}

// namedRanges reads what those names of the workbook stand for that drop-downs
// refer to; a workbook may have a great many others.
func (b *book) namedRanges() (map[string]string, error) {
	wanted := map[string]bool{}
	for src := range b.sources {
		if _, isArea := parseArea([]byte(src.formula)); !isArea {
			wanted[strings.ToLower(src.formula)] = true
		}
	}
	names := map[string]string{}
	if len(wanted) == 0 {
		return names, nil
	}
	return names, b.scan(b.main, func(s *scanner) error {
		if !s.child(0) {
			return nil
		}
		for s.child(1) {
			if string(s.name) != "definedNames" {
				continue
			}
			for s.child(2) {
				if name := strings.ToLower(s.attrText("name")); wanted[name] {
					names[name] = strings.TrimPrefix(string(s.content()), "=")
				}
			}
		}
		return nil
	})
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
	top, left, ok1 := ParseRef(first)
	bottom, right, ok2 := ParseRef(last)
	if pair && !ok1 && !ok2 { // whole columns: any row will do to read them
		_, left, ok1 = ParseRef(append(bytes.Clone(first), '1'))
		_, right, ok2 = ParseRef(append(bytes.Clone(last), '1'))
		top, bottom = 1, lastRow
	}
	return Range{top, left, bottom, right}, ok1 && ok2 && top <= bottom && left <= right
}

// FeedsDropDowns says whether most of the cells of a sheet are words that
// drop-downs offer: such a sheet lists words, and tells nothing of a project.
func (s *Sheet) FeedsDropDowns() bool {
	offered := map[int][]Span{} // rows, by column
	for _, a := range s.Lists {
		for col := a.Left; col <= min(a.Right, s.MaxCol); col++ {
			offered[col] = append(offered[col], Span{a.Top, a.Bottom})
		}
	}
	for col, spans := range offered {
		offered[col] = mergeSpans(spans)
	}
	all, fed := 0, 0
	for _, row := range s.Rows {
		all += len(row.Cells)
		for _, c := range row.Cells {
			if within(offered[c.Col], c.Row) {
				fed++
			}
		}
	}
	return 2*fed > all
}
