package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// The clauses of a specification tell of products in running text, several to a clause:
// "2.4 Primers. Primer A is solvent-borne, usable at -10 C and above. Primer B is water-
// borne. Both are for the SBS sheets." A sentence that begins with a name of the schedule
// and says what that is begins a product. Those after it are about the same one, or about
// all of its clause.

// clauseWords are how clauses write that, from policies/knowledge/reading.json.
type clauseWords struct {
	Number string `json:"number"`
	Plain  string `json:"plain"`
	Never  string `json:"never"`
	Is     string `json:"is"`
	All    string `json:"all"`
	Joined string `json:"joined"`
	As     string `json:"as"`
	For    string `json:"for"`
	Listed string `json:"listed"`

	number, plain, never, is, all, joined, as, isFor, listed *regexp.Regexp
}

// clauseRow is a row of clauses: its number, "" for none, and its text.
type clauseRow struct {
	number string
	text   workbook.Cell
}

// clauseOf reads a row of one text, with its number before it or in a cell of its own.
func (r *reader) clauseOf(row workbook.Row) (clauseRow, bool) {
	if countFilled(row.Cells) > 2 {
		return clauseRow{}, false
	}
	cells := slices.Collect(filled(row.Cells))
	if len(cells) == 2 && r.words.prose.Clauses.number.FindString(cells[0].Value+" ") == cells[0].Value+" " {
		cells[1].Value = cells[0].Value + " " + cells[1].Value
		cells = cells[1:]
	}
	if len(cells) != 1 {
		return clauseRow{}, false
	}
	c := clauseRow{text: cells[0]}
	if m := r.words.prose.Clauses.number.FindStringSubmatchIndex(c.text.Value); m != nil {
		c.number = strings.Trim(c.text.Value[m[2]:m[3]], ".):")
		c.text.Value = c.text.Value[m[1]:]
	}
	return c, true
}

// clauseList finds the products of the clauses on a sheet that the schedule calls by
// their names, nil where they are few.
func (r *reader) clauseList(s *workbook.Sheet, tables []*table, names *wordIndex) []proseRow {
	var all []proseRow
	numbered := map[string]string{} // the first product of each clause
	for _, row := range s.Rows {
		clause, ok := r.clauseOf(row)
		if !ok || within(schedulesAndData(tables), row.Number) {
			continue
		}
		first := len(all)
		all = r.clauseProducts(all, clause, numbered, names)
		if len(all) > first && clause.number != "" {
			numbered[clause.number] = all[first].name
		}
	}
	used, leads := 0, map[string]bool{}
	for _, p := range all {
		if isNamed(p.name, names) {
			used++
			leads[firstWords(p.name, 1)] = true
		}
	}
	if used < fewestNamed {
		return nil
	}
	return r.clausesSay(s, slices.DeleteFunc(all, func(p proseRow) bool { return !leads[firstWords(p.name, 1)] }))
}

// clausesSay sorts what clauses say of each product, nil where few tell a limit: names with
// what they are may stand over data of another shape.
func (r *reader) clausesSay(s *workbook.Sheet, all []proseRow) []proseRow {
	limits := 0
	for i := range all {
		p := &all[i]
		at := At{Sheet: s.Name, Row: p.row, Cell: p.cell}
		p.says = r.proseOf(workbook.Cell{Value: p.words}, at)
		if slices.ContainsFunc(p.says, func(c source) bool { return c.slot != toldSubject && c.slot != "remark" }) {
			limits++
		}
		if p.like != "" {
			p.says = append(p.says, source{slot: toldRest, text: p.like, at: at})
		}
	}
	if limits*2 < len(all) {
		return nil
	}
	return all
}

// clauseProducts adds the products of one clause to those before it.
func (r *reader) clauseProducts(all []proseRow, clause clauseRow, numbered map[string]string, names *wordIndex) []proseRow {
	first, title := len(all), ""
	for i, one := range r.clauseSentences(clause.text.Value) {
		name, says := r.clauseName(one.text, names)
		about := slices.IndexFunc(all, func(p proseRow) bool { return p.name == name })
		switch {
		case name != "" && about < 0 && r.begins(all, clause, name, title, says, names):
			p := proseRow{row: clause.text.Row, name: name, cell: clause.text.Ref(), section: title, known: true}
			p.words, p.like = r.likeClause(says, numbered)
			all = append(all, p)
		case name != "" && about >= 0:
			all[about].goOn(part{"It" + one.text[len(name):], false})
		case len(all) > first:
			from := len(all) - 1
			if m := r.words.prose.Clauses.all.FindStringIndex(one.text); m != nil {
				from, one.text = first, "It is"+one.text[m[1]:]
			}
			for k := range all[from:] {
				all[from+k].goOn(one)
			}
		case i == 0 && len(headingWords(one.text)) <= longHeading:
			title = one.text
		}
	}
	return all
}

// begins holds for a name with which a clause begins a product. Codes at the head of a
// note without a number are told by others.
func (r *reader) begins(all []proseRow, clause clauseRow, name, title, says string, names *wordIndex) bool {
	if clause.number == "" && tagShape.MatchString(name) {
		return false
	}
	return r.tellsWhat(name, title, says) || isNamed(name, names) && madeAs(all, name)
}

// likeClause writes the name of a product for the number of its clause ("as 2.1, winter
// grade"), and tells which it is.
func (r *reader) likeClause(says string, numbered map[string]string) (words, like string) {
	m := r.words.prose.Clauses.as.FindStringSubmatchIndex(says)
	if m == nil || numbered[says[m[4]:m[5]]] == "" {
		return says, ""
	}
	like = numbered[says[m[4]:m[5]]]
	return says[:m[3]] + like + says[m[1]:], like
}

// madeAs holds for a name that begins as one of a product does: what it is may be said by
// that of the other ("Harrow HT: sheet for use under metal").
func madeAs(all []proseRow, name string) bool {
	return slices.ContainsFunc(all, func(p proseRow) bool { return firstWords(p.name, 1) == firstWords(name, 1) })
}

// goOn adds a sentence to those about a product.
func (p *proseRow) goOn(sentence part) {
	if sentence.listed {
		p.words += "; " + sentence.text
	} else {
		p.words += "\n" + sentence.text
	}
}

// clauseSentences parts a clause into its sentences, and what two of them share into two.
func (r *reader) clauseSentences(text string) []part {
	var out []part
	for _, one := range r.sentencesOf(text) {
		for {
			m := r.words.prose.Clauses.joined.FindStringSubmatchIndex(one.text)
			if m == nil {
				break
			}
			out = append(out, part{one.text[:m[0]], one.listed})
			one = part{"It " + one.text[m[2]:], false}
		}
		out = append(out, one)
	}
	return out
}

// clauseName is the name that a sentence begins with and says something of, with that.
func (r *reader) clauseName(sentence string, names *wordIndex) (name, says string) {
	m := r.words.prose.Clauses.is.FindStringSubmatchIndex(sentence)
	if m == nil {
		return "", ""
	}
	name = strings.TrimSpace(sentence[m[2]:m[3]])
	if r.words.prose.Clauses.never.MatchString(name) {
		return "", ""
	}
	coded := tagShape.MatchString(name) && isNamed(name, names)
	if !coded && (!r.isNameInWords(name, names) || !writtenAsName(strings.Fields(name)) || r.lex.isWords(name)) {
		return "", ""
	}
	return name, sentence[m[1]:]
}

// tellsWhat holds where words say of what material a name is, by themselves or with the
// title of their clause, or as which other it is.
func (r *reader) tellsWhat(name, title, says string) bool {
	subject, _, _ := strings.Cut(says, ",")
	subject, _, _ = strings.Cut(subject, ";")
	return r.vocab.Family(says) != "" || r.vocab.Describe(subject, name).Family != "" || title != "" && r.vocab.Describe(subject, title).Family != "" ||
		r.words.prose.same.MatchString(says)
}

// suitsInProse takes the products that a primer, sealant or adhesive is for by a sentence
// about it, or by the last words of the one that says what it is.
func (r *reader) suitsInProse(p *Product, says []source) {
	if p.Role != "primer" && p.Role != "sealant" && p.Role != "adhesive" {
		return
	}
	for _, c := range says {
		at := r.words.prose.Clauses.isFor.FindStringIndex(c.text)
		if at == nil || c.slot != toldSubject && c.slot != "remark" {
			continue
		}
		rest := c.text[at[1]:]
		for _, m := range r.near(p, rest) {
			if m.product >= 0 && r.sched.Products[m.product].ID != p.ID {
				p.Suits = append(p.Suits, r.target(m, rest[m.start:m.end], c.at))
			}
		}
	}
}

// listsPrimers holds for a sentence that begins with a primer of the workbook and tells no
// more than what it goes on: "Tack 1 or Tack 2", "PX-3 on wood, none on metal".
func (r *reader) listsPrimers(c source) bool {
	if c.slot != "remark" {
		return false
	}
	tags := r.lex.findTags(c.text)
	if len(tags) == 0 || tags[0].start > 0 || tags[0].product < 0 || r.sched.Products[tags[0].product].Role != "primer" {
		return false
	}
	return r.words.prose.Clauses.listed.MatchString(c.text[tags[0].end:])
}
