package schedule

import (
	"regexp"
	"strings"
)

// wallCode is the code of a wall, roof or floor of the job: "W2", "WF-1", "S-3a".
var wallCode = regexp.MustCompile(`\b[A-Z]{1,4}-?\d{1,3}[a-z]?\b`)

// areaCode is a short word in capitals that an office calls a part of the building by:
// "NAT" for its natatorium.
var areaCode = regexp.MustCompile(`\b[A-Z]{2,4}\b`)

// collectCodes keeps the codes that rows or the headings over them have for where they
// are, which notes may state limits for. The tag of a product is none.
func (r *reader) collectCodes(t *table) {
	add := func(text string) {
		if code := wallCode.FindString(text); code != "" && strings.HasPrefix(text, code) && !r.isProduct(code) {
			r.codes[code] = true
		}
		if areaCode.FindString(text) == text && !r.isProduct(text) {
			r.codes[text] = true
		}
	}
	for row := t.first; row <= t.last; row++ {
		alone, first := t.ownCells(row) == 1, ""
		for i, col := range t.nums {
			words := strings.TrimSpace(text(t.sheet, row, col))
			if first == "" {
				first = words
			}
			switch slot := t.cols[i].Slot; slot {
			case "place", "group":
				if wallCode.FindString(words) == words || areaCode.FindString(words) == words {
					add(words)
				}
			case "type":
				if wallCode.FindString(words) == words {
					add(words)
				}
			}
		}
		if alone {
			add(first)
		}
	}
}

// wallsIn lists the codes that a note is told for, before its colon or in its words
// ("W2: ...", "Walls with batts (W2): ...", "in W2 ..."), and what it says of them.
func (r *reader) wallsIn(sentence string) (codes []string, rest string) {
	if len(r.codes) == 0 {
		return nil, sentence
	}
	lead, rest, led := strings.Cut(sentence, ":")
	if !led {
		lead, rest = sentence, sentence
	}
	for _, code := range wallCode.FindAllString(lead, -1) {
		if r.codes[code] {
			codes = append(codes, code)
		}
	}
	if strings.ToUpper(sentence) != sentence { // in a note all in capitals every short word may be one
		for _, code := range areaCode.FindAllString(lead, -1) {
			if r.codes[code] {
				codes = append(codes, code)
			}
		}
	}
	if len(codes) == 0 {
		return nil, sentence
	}
	return codes, rest
}
