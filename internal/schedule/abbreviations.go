package schedule

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/material"
	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// abbreviations reads what notes and title blocks say of the office's own
// short words ("HE = heated enclosure"), so that cells can be read with them.
func (r *reader) abbreviations(s *workbook.Sheet, tables []*table) {
	for _, row := range s.Rows {
		if within(tables, row.Number) {
			continue
		}
		for _, c := range row.Cells {
			r.definitions(c.Value)
			for _, entry := range entries.Split(c.Value, -1) {
				if m := pointed.FindStringSubmatch(entry); m != nil && !r.isUnit(m[1]) {
					r.define(m[1], strings.TrimSpace(m[2]))
				}
			}
			for _, m := range quoted.FindAllStringSubmatch(c.Value, -1) {
				r.defineQuoted(m[1], strings.TrimSpace(m[2]))
			}
			for _, m := range letter.FindAllStringSubmatch(c.Value, -1) {
				if r.letters[m[1]] == "" {
					r.letters[m[1]] = strings.TrimSpace(m[2])
				}
			}
			r.readLegend(c.Value)
		}
	}
	r.listedWords(s, tables)
}

// definitions keeps what a note says of short words, of which a list may have strokes
// between: "On: BLK split-face block / GMS glass-mat gypsum sheathing".
func (r *reader) definitions(note string) {
	if len(nextEntry.FindAllString(note, -1)) >= leastCodes {
		note = nextEntry.ReplaceAllString(note, ";$1")
	}
	r.listedCodes(note)
	parts := strokes.Split(note, -1)
	if coded := r.codesIn(parts); coded < leastCodes || coded*2 < len(parts) {
		parts = []string{note}
	}
	for _, part := range parts {
		found := r.words.definition.FindAllStringSubmatchIndex(part, -1)
		for _, at := range found {
			short, meaning := part[at[2]:at[3]], strings.TrimSpace(part[at[6]:at[7]])
			if at[4] >= 0 || (len(found) > 1 || allOf(part, at)) && r.explains(short, meaning) {
				r.define(short, meaning)
			}
		}
	}
}

// explains holds for words beside a short one without a sign between that tell what it
// stands for: "WT-1 thru WT-5", "PA is sealed first" and "RX strip in SL-2" explain no word.
func (r *reader) explains(short, meaning string) bool {
	return !strings.ContainsFunc(short, unicode.IsDigit) && !r.words.saidOf.MatchString(meaning) && !r.namesTags(meaning)
}

// allOf holds where a match is all that a note says, as a sentence among others is not.
func allOf(note string, at []int) bool {
	around := note[:at[0]] + note[at[1]:]
	return !strings.ContainsFunc(around, unicode.IsLetter)
}

// listedCodes keeps the meanings of a list of nothing but short words with a meaning each,
// also of those with a digit and before a name or a figure: "MW mineral wool; RFV PVC roof;
// PE6 6 mil polyethylene".
func (r *reader) listedCodes(note string) {
	parts := strings.FieldsFunc(note, func(c rune) bool { return c == ';' || c == '\n' })
	var found [][]string
	inWords := 0
	for _, part := range parts {
		m := listedCode.FindStringSubmatch(strings.TrimSpace(part))
		if m == nil || r.words.saidOf.MatchString(m[2]) {
			continue
		}
		found = append(found, m)
		if coded.MatchString(m[0]) {
			inWords++
		}
	}
	if len(found) < leastListed || len(found) < len(parts)-1 || inWords*2 < len(found) {
		return
	}
	for _, m := range found {
		r.define(m[1], strings.TrimSpace(m[2]))
	}
}

// listedCode is an entry of such a list.
var listedCode = regexp.MustCompile(`^([A-Z][A-Z0-9]{0,5}(?:[-/][A-Z0-9]{1,4})?)\s+([\pL\d][^=]{2,70})$`)

// leastListed is how many entries such a list has.
const leastListed = 3

// nextEntry is a comma before the next short word of a list: "HW = hollow wall, GS =
// gypsum sheathing".
var nextEntry = regexp.MustCompile(`,(\s+[\pL\d./&-]{1,8} ?= ?\pL)`)

var (
	strokes = regexp.MustCompile(`\s+/\s+`)
	coded   = regexp.MustCompile(`^[A-Z][A-Z0-9-]{1,5}\s+[a-z]`)
)

// leastCodes is how many short words a list with strokes between them has.
const leastCodes = 2

// codesIn counts the parts that begin with a short word in capitals and go on in small
// letters with what it stands for: "ST-2 is kept off the RA / VP sheets" lists none.
func (r *reader) codesIn(parts []string) int {
	n := 0
	for _, p := range parts {
		if short := coded.FindString(p); short != "" && !r.words.saidOf.MatchString(strings.TrimLeft(p[len(short)-1:], " ")) {
			n++
		}
	}
	return n
}

// letter is a single letter and what it stands for, as in "A = open air, H =
// hoarded and heated".
var letter = regexp.MustCompile(`(?:^|[\s(,;:])([A-Z]) ?= ?([a-z][^.;,=]{3,70})`)

// pointed is an entry of a legend with a short word in small letters, known by its
// points or strokes: "b.o. = by others", "u/s = underside".
var (
	entries = regexp.MustCompile(`[;,|•·]`)
	pointed = regexp.MustCompile(`(?:^|[.:]\s|\s)([a-z]{1,2}[./](?:[a-z]{1,2}\.?)?) ?= ?([a-z][^=]{2,40})$`)
)

// quoted is an entry of a note with its short word in quotes: "'encl.' = tarped and heated".
var quoted = regexp.MustCompile(`(?:^|[\s(,;:])['"‘’“”]([A-Za-z][A-Za-z./&-]{1,11})['"‘’“”] ?(?:=|means) ?([a-z][^.;,=]{2,70})`)

// defineQuoted keeps the meaning of a quoted short word also for a cell that it opens.
func (r *reader) defineQuoted(short, meaning string) {
	r.define(short, meaning)
	r.define(strings.ToUpper(short[:1])+short[1:], meaning)
}

// legend is one entry of a list of short words: "nl = none", "SA = same as above".
var legend = regexp.MustCompile(`(?:^|[.;,·|•]\s+|\s{2,}|:\s+|\()(\S{1,12}) ?= ?([^.;,=]{2,40})`)

// readLegend keeps the office's own words for none, for an empty cell and for the
// row above, by the plain word that they stand for.
func (r *reader) readLegend(note string) {
	for _, m := range legend.FindAllStringSubmatch(note, -1) {
		short := legendKey(m[1])
		if r.words.isBlank(short) || r.words.isNone(short) || r.words.isDitto(short) || len(r.vocab.Find(m[1])) > 0 {
			continue
		}
		for _, meaning := range meanings(m[2]) {
			if meaning = strings.TrimSpace(meaning); r.words.isNone(meaning) || r.words.isBlank(meaning) || r.words.isDitto(meaning) {
				r.legend[short] = meaning
			}
		}
	}
}

// meanings are what an entry of a legend says: all of it, what stands in brackets, and
// each side of a stroke ("N = none required / none used").
func meanings(says string) []string {
	out := strings.FieldsFunc(says, func(c rune) bool { return c == '(' || c == ')' })
	return append(out, strokes.Split(says, -1)...)
}

// legendKey is a short word as legends and cells may both write it.
func legendKey(text string) string { return strings.ToLower(strings.TrimRight(text, ".:")) }

// figureAfter is a comma and a figure, which is none of the cells that use the
// short word.
var figureAfter = regexp.MustCompile(`,\s*\d`)

func within(tables []*table, row int) bool {
	for _, t := range tables {
		if t.kind != kindOther && row >= t.head[0] && row <= t.last {
			return true
		}
	}
	return false
}

// define keeps the first meaning of a short word that is no tag, mark or figure,
// and does not stand for an empty cell ("NA = not applicable").
func (r *reader) define(short, meaning string) {
	meaning, _, _ = strings.Cut(meaning, "  ") // the next short word follows
	if at := figureAfter.FindStringIndex(meaning); at != nil {
		meaning = meaning[:at[0]] // "RD = roof drain, 4 in."
	}
	if meaning = strings.TrimSpace(meaning); meaning == "" || !strings.ContainsFunc(short, unicode.IsLetter) || r.words.isBlank(short) || r.words.isNone(short) {
		return
	}
	for _, g := range r.head.match(short) {
		if g.score >= 1 {
			return // "VOC" is what a column is called, and needs no other words
		}
	}
	if _, tag := r.lex.tags[fold(short)]; tag || r.marks[fold(short)] || r.short[short] != "" {
		return
	}
	r.short[short] = meaning
}

// cellWords cuts a cell into the words that may be short ones or codes, with the
// parts of those that a stroke parts.
func cellWords(text string) []string {
	var out []string
	for _, w := range strings.FieldsFunc(text, func(c rune) bool { return strings.ContainsRune(" ,;()\n", c) }) {
		out = append(out, w)
		if strings.Contains(w, "/") {
			out = append(out, strings.FieldsFunc(w, func(c rune) bool { return c == '/' })...)
		}
	}
	return out
}

// knowsMaterial holds for a word that the vocabulary has, and not only others near it.
func (r *reader) knowsMaterial(word string) bool {
	return slices.ContainsFunc(r.vocab.Find(word), func(m material.Material) bool { return !m.Unknown })
}

// tells holds for a word that says something by itself ("TENT"), and needs no
// meaning from a note.
func (r *reader) tells(word string) bool {
	return slices.ContainsFunc(r.hear(word).clauses, func(cl phrase.Clause) bool { return len(cl.Signals) > 0 })
}

// noneFirst writes out the office's own words for none where they open a part of a primer
// cell: "NR on steel; PR-3 on block", and "NR = not required".
func (r *reader) noneFirst(text string) string {
	return opensPart.ReplaceAllStringFunc(text, func(part string) string {
		word := strings.TrimLeft(part, ";,. ")
		if meaning := r.legend[legendKey(word)]; meaning == "" || !r.words.isNone(meaning) {
			return part
		}
		return strings.TrimSuffix(part, word) + plainNone
	})
}

// plainNone is the plain word for none.
const plainNone = "none"

// opensPart is a short word in capitals at the head of a part of a cell.
var opensPart = regexp.MustCompile(`(?:^|[;,.]\s*)[A-Z][A-Z/]{0,4}\b`)

// spelled writes out the office's short words in a cell; what a primer column
// holds is a primer, also where its meaning does not say so.
func (r *reader) spelled(text, slot string) string {
	if meaning := r.letters[text]; meaning != "" && slot == "shelter" {
		return meaning
	}
	if meaning, ok := r.legend[legendKey(text)]; ok && slot != "mark" && slot != "group" && slot != "place" { // N is a side of the building too
		return meaning
	}
	if slot == "primer" && len(r.legend) > 0 {
		text = r.noneFirst(text)
	}
	if len(r.short) == 0 || r.words.isBlank(text) || r.words.isNone(text) || r.words.isDitto(text) {
		return text
	}
	for _, f := range cellWords(text) {
		if meaning, ok := r.short[f]; ok && !r.knowsMaterial(f) && !r.tells(f) && !r.lex.inName(text, f) {
			if slot == "primer" && !r.saysNone(text) && !strings.Contains(strings.ToLower(meaning), "prime") {
				meaning = "primer, " + meaning
			}
			text = replaceWord(text, f, meaning)
		}
	}
	return text
}

// wordEnds are the signs that part the words of a cell.
const wordEnds = " ,;()\n/"

// replaceWord puts the meaning of a short word where it stands by itself, and not in a tag
// that begins with it: "AB" of "AB-4, AB over the foam".
func replaceWord(text, word, meaning string) string {
	for from := 0; ; {
		i := strings.Index(text[from:], word)
		if i < 0 {
			return text
		}
		at, end := from+i, from+i+len(word)
		if (at == 0 || strings.ContainsRune(wordEnds, rune(text[at-1]))) && (end == len(text) || strings.ContainsRune(wordEnds, rune(text[end]))) {
			return text[:at] + meaning + text[end:]
		}
		from = end
	}
}

// inName holds for a word of a text that belongs to the name of a product there: "LT"
// of "Alder Prime LT", whatever the letters say elsewhere. The first word of such a
// name, often the maker, may be left out.
func (l *lexicon) inName(text, word string) bool {
	text, word = fold(text), fold(word)
	of := func(name string) bool {
		words := strings.Fields(name)
		if len(words) < 2 || !slices.Contains(words, word) {
			return false
		}
		at := strings.Index(text, name)
		return at >= 0 && wholeWord(text, at, at+len(name))
	}
	return slices.ContainsFunc(l.names, of) || slices.ContainsFunc(l.shorts, of)
}
