package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// madeFor takes the products that a primer, sealant or adhesive is described for:
// "bonding adhesive for E1".
func (r *reader) madeFor(p *Product) {
	if p.Role != "primer" && p.Role != "sealant" && p.Role != "adhesive" {
		return
	}
	for _, slot := range []string{"type", "material"} {
		_, rest, ok := strings.Cut(p.Texts[slot], " for ")
		if !ok && p.Role == "primer" { // a sentence of its own: "Latex primer. For E1 and E2."
			_, rest, ok = strings.Cut(p.Texts[slot], ". For ")
		}
		if !ok {
			continue
		}
		rest = r.tagsWritten(rest)
		for _, m := range r.lex.findTags(rest) {
			if m.product >= 0 && r.sched.Products[m.product].ID != p.ID {
				p.Suits = append(p.Suits, r.target(m, rest[m.start:m.end], At{Sheet: p.Sheet, Row: p.Row, Cell: p.Cells[slot]}))
			}
		}
	}
	r.ofSheetMaker(p)
	r.alongSheets(p)
}

// tagParts is how a bead is said to be for parts of sheets that are told by their tags:
// "edges of M1, M1W", "laps and terminations of SA-2". What follows is the list of them.
var tagParts = regexp.MustCompile(`(?i)^` + toParts + `\s+(?:of|on)\s+(?:the\s+)?(.+)$`)

// sheetParts is how a bead is said to be for parts of a kind of sheet: "laps and edges of SBS
// sheet", "for terminations of the butyl membrane". What follows is the sheet.
var sheetParts = regexp.MustCompile(`(?i)^` + toParts + `\s+(?:of|in|on)\s+([^,()]*\b(?:sheets?|membranes?|rolls?)\b)`)

const toParts = `(?:use (?:at|on|for)|for|at|on)?\s*` + oneOfParts +
	`(?:\s*(?:,|&|/|\+|\band\b|\bor\b)\s*(?:and\s+)?` + oneOfParts + `)*`

const oneOfParts = `(?:(?:all|cut|top|sheet|the|side|end)\s+)*` + partsOfSheets

const partsOfSheets = `(?:terminations?|edges?|laps?|seams?|joints?|t-joints?)`

// alongSheets takes the kind of sheet whose laps or edges a bead is for by its data: that tells
// that the two go together.
func (r *reader) alongSheets(p *Product) {
	if p.Role != "sealant" && p.Role != "adhesive" {
		return
	}
	for _, slot := range []string{"remark", "type"} {
		for _, part := range strings.FieldsFunc(p.Texts[slot], func(sign rune) bool { return sign == ';' || sign == '.' }) {
			at := At{Sheet: p.Sheet, Row: p.Row, Cell: p.Cells[slot]}
			if m := sheetParts.FindStringSubmatch(strings.TrimSpace(part)); m != nil {
				for _, sheet := range r.near(p, m[1]) {
					p.Suits = append(p.Suits, r.target(sheet, strings.TrimSpace(m[1]), at))
				}
			} else if m := tagParts.FindStringSubmatch(strings.TrimSpace(part)); m != nil {
				p.Suits = append(p.Suits, r.listedTags(p, m[1], at)...)
			}
		}
	}
}

// listedTags takes the other products of a text that is a list of their tags and nothing else.
func (r *reader) listedTags(p *Product, text string, at At) []Target {
	var out []Target
	last := 0
	for _, m := range r.lex.findTags(text) {
		between := text[last:m.start]
		if m.product < 0 || r.sched.Products[m.product].ID == p.ID || !listWord.MatchString(between) {
			return nil
		}
		out, last = append(out, r.target(m, text[m.start:m.end], at)), m.end
	}
	if strings.Trim(text[last:], " .") != "" {
		return nil
	}
	return out
}

// sheetMaker is how a bead is said to be of the make of the sheets that it is for.
var sheetMaker = regexp.MustCompile(`(?i)\b(?:sheets?|membranes?|wraps?|system)(?:['’]s)? (?:makers?|manufacturers?|mfrs?|suppliers?)(?:['’]s?)? own\b`)

// ofSheetMaker takes the sheets of the same chemistry for what a bead of their own maker is
// for: "SBS mastic, sheet maker's own".
func (r *reader) ofSheetMaker(p *Product) {
	said := sheetMaker.FindString(p.Texts["type"])
	if said == "" || p.Role != "sealant" && p.Role != "adhesive" {
		return
	}
	for _, trait := range p.Traits {
		if slices.ContainsFunc(r.sched.Products, func(q Product) bool { return q.Class == "membrane" && slices.Contains(q.Traits, trait) }) {
			p.Suits = append(p.Suits, Target{Text: said, Keys: []string{trait}, Products: []string{}, At: At{Sheet: p.Sheet, Row: p.Row, Cell: p.Cells["type"]}})
			return
		}
	}
}
