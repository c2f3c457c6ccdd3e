package schedule

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"abut/internal/regexp"
)

// contents counts what the telling cells of a column are.
type contents struct {
	filled, different                                 int
	dates, tags, known, drawings, short, prose, wordy int
}

// most holds for what three fifths of the telling cells are.
func (c contents) most(n int) bool { return c.filled > 0 && n*10 >= c.filled*6 }

func (r *reader) contents(t *table, col int) contents {
	var is contents
	seen := map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		c, ok := t.sheet.At(row, col)
		if !ok || r.words.isBlank(c.Value) {
			continue
		}
		is.filled++
		seen[c.Value] = true
		switch {
		case r.holds(c, "date") || r.yearSaid == 0 && r.holds(c, dayOnly):
			is.dates++
		case r.isTag(c.Value), r.isKnownTags(c.Value):
			is.tags++
			if _, known := r.lex.tags[fold(c.Value)]; known || r.isKnownTags(c.Value) {
				is.known++
			}
		case r.head.drawing.MatchString(c.Value):
			if is.drawings++; len(c.Value) <= 10 {
				is.short++
			}
		case r.isSentence(c.Value):
			is.prose++
		case countWords(c.Value) >= leastWords:
			is.wordy++
		case len(c.Value) <= 10:
			is.short++
		}
	}
	is.different = len(seen)
	if is.known*2 < is.tags { // codes of the shape that tags have, as those of costs
		is.tags = 0
	}
	return is
}

// isKnownTags holds for a cell of nothing but tags of the product data, each with its name or
// with one word at most that says which piece of it is meant: "FL-1 / FL-2", "FL-2 pan".
func (r *reader) isKnownTags(s string) bool {
	for _, part := range severalTags.Split(s, -1) {
		words := strings.Fields(part)
		if len(words) == 0 || len(words) == 2 && len(words[1]) < shortestNoun || len(words) > 2 && !isName(words[1:]) { // never "M9 o/ M7"
			return false
		}
		if _, known := r.lex.tags[fold(words[0])]; !known {
			return false
		}
	}
	return true
}

// isName holds for the words of a name beside its tag ("M9 Alder Sheet 40"), and for none
// that tell what is done with it.
func isName(words []string) bool {
	return len(words) <= mostOfAName && !slices.ContainsFunc(words, func(w string) bool {
		first, _ := utf8.DecodeRuneInString(w)
		return !startsWithDigit(w) && !unicode.IsUpper(first)
	})
}

// mostOfAName is how many words such a name has at most.
const mostOfAName = 4

// shortestNoun is how many letters the word after a tag has at least.
const shortestNoun = 3

// severalTags parts the tags of a cell that names more than one.
var severalTags = regexp.MustCompile(`\s*[/;,+&]\s*`)

// How many words a text has that tells something, and a sentence at least without one
// of the little words that tie others together.
const (
	leastWords = 3
	manyWords  = 6
)

// isSentence holds for a text that says something and is no name: it has several words,
// and one of those that tie others together ("hold for survey").
func (r *reader) isSentence(text string) bool {
	n := countWords(text)
	return n >= manyWords || n >= leastWords && slices.ContainsFunc(headingWords(text), func(w string) bool { return r.head.little[w] })
}

// countWords counts the words of a text that are more than a letter or a figure.
func countWords(text string) int {
	n := 0
	for w := range strings.FieldsSeq(text) {
		if strings.IndexFunc(w, unicode.IsLetter) >= 0 && len(w) > 1 && !startsWithDigit(w) {
			n++
		}
	}
	return n
}

// byContent looks at the cells of one column.
func (r *reader) byContent(t *table, i int) (slot, why string) {
	col, is := t.nums[i], r.contents(t, t.nums[i])
	switch {
	case is.filled == 0:
		return "", ""
	case is.most(is.dates):
		return r.byDays(t, i)
	case t.kind == kindSchedule && r.besideCover(t, col):
		return "front", "materials stand under it, right of the day of the cover"
	case is.most(is.tags) && t.kind == kindSchedule && t.buildsUp():
		return "", "" // which of the layers it is that does something
	case is.most(is.tags) && t.kind == kindSchedule && t.column("tag") == 0 && !r.hasTags(t):
		return "tag", "tags of the product data stand under it"
	case is.most(is.tags) && t.kind == kindSchedule:
		return "with", "tags of the product data stand under it, beside the row's own"
	case is.most(is.short) && is.different*10 >= is.filled*9 && t.has("mark", "tag") == 0 && t.mayMark(col):
		return "mark", "short codes, each once"
	case is.most(is.drawings):
		return "reference", "numbers of drawings stand under it"
	}
	if slot, why := r.byMaterials(t, i); slot != "" {
		return slot, why
	}
	switch told := is.prose + is.wordy; {
	case t.apart(i):
	case t.kind == kindSchedule && told*2 >= is.filled && r.mayPlace(t, col):
		return "place", "words stand under it, left of what each row is about"
	case is.prose > 0 && is.prose*2 >= is.filled, told > 1 && told*2 >= is.filled && !r.names(t.stretch(), col):
		return "remark", "sentences stand under it"
	}
	return "", ""
}

// byMaterials looks at the cells of a column for the materials that they name.
func (r *reader) byMaterials(t *table, i int) (slot, why string) {
	col := t.nums[i]
	if t.kind != kindSchedule {
		return r.bedsListed(t, col)
	}
	for _, role := range []string{"primer", "sealant", "substrate"} {
		if t.column(role) == 0 && r.mostlyNames(t, col, role) {
			return role, role + "s stand under it"
		}
	}
	if about := t.about(); about > 0 && about < col && r.mostlyNames(t, col) && r.namesLittleElse(t, col) {
		return "touches", "materials stand under it, and no other column has to do with it"
	}
	return "", ""
}

// bedsListed looks for what the products of a table go on.
func (r *reader) bedsListed(t *table, col int) (slot, why string) {
	if t.has("accepts", "accepts_primer") == 0 && r.mostlyBeds(t, col) {
		return "accepts", "substrates stand under it"
	}
	return "", ""
}

// about is the column that says what each row is about, 0 where none does.
func (t *table) about() int {
	for _, slot := range []string{"material", "tag", "specified", "type"} {
		if col := t.column(slot); col > 0 {
			return col
		}
	}
	return 0
}

// namesLittleElse holds for a column whose cells are for the greater part the names of
// materials.
func (r *reader) namesLittleElse(t *table, col int) bool {
	letters, named := 0, 0
	for words := range r.said(t, col) {
		if r.words.isNone(words) {
			continue
		}
		letters += len(words)
		for _, m := range r.lex.find(words) {
			named += m.end - m.start
		}
	}
	return named*2 > letters
}

// mayPlace holds for a column left of what the rows are about, in a table that tells
// nowhere else where each is.
func (r *reader) mayPlace(t *table, col int) bool {
	return t.has("place", "group") == 0 && col < t.about() && !r.names(t.stretch(), col)
}

// apart holds for a column without a heading next to another: it is no part of the table
// beside which it stands.
func (t *table) apart(i int) bool {
	return i > 0 && t.cols[i].Heading == "" && t.cols[i-1].Heading == ""
}

// saysNothing are the slots of columns in which nothing is read.
var saysNothing = map[string]bool{"reference": true, "site": true, "order": true}

// contradicted takes its slot from a column whose cells are something else than what its
// heading, which says little, would have them be.
func (r *reader) contradicted(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		if !r.head.loose[c.Slot] || c.Confidence >= certain || c.Slot == "" {
			continue
		}
		is := r.contents(t, t.nums[i])
		slot, why := "", ""
		switch {
		case is.filled > 1 && is.most(is.prose) && saysNothing[c.Slot]:
			slot, why = "remark", "sentences stand under it"
		case c.Slot != "reference" && is.filled > 1 && is.most(is.drawings):
			slot, why = "reference", "numbers of drawings stand under it"
		case c.Confidence < sureHeading && c.Slot != "with" && c.Slot != "place":
			slot, why = r.byMaterials(t, i)
		}
		if slot != "" {
			c.Slot, c.Confidence, c.Why = slot, 0.4, c.Why+", but "+why
		}
	}
}

// besideCover holds for a column of materials right of that of the day of the cover,
// where no other tells what covers the sheets.
func (r *reader) besideCover(t *table, col int) bool {
	at := slices.Index(t.nums, col)
	if at < 1 || t.cols[at-1].Slot != "cover" || t.column("front") > 0 {
		return false
	}
	filled, named := 0, 0
	for row := t.first; row <= t.last; row++ {
		if words := text(t.sheet, row, col); !r.words.isBlank(words) {
			if filled++; len(r.lex.find(words)) > 0 {
				named++
			}
		}
	}
	return named > 1 && named*3 >= filled*2
}

// mayMark holds for a column in which the codes of rows may stand: the first of
// product data, or one of the first two of a schedule.
func (t *table) mayMark(col int) bool {
	return col == t.nums[0] || t.kind == kindSchedule && len(t.nums) > 1 && col == t.nums[1]
}
