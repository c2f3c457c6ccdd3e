package schedule

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// proseRow is a row of a list of products that are called by names in words, with
// sentences beside each ("Wall Sheet | Peel-and-stick sheet, 40 mils. Cover within 30
// days.").
type proseRow struct {
	row   int
	name  string
	words string   // the description beside it
	says  []source // what that tells
	known bool     // its name or its description is one of a material

	cell    string // of a product in a clause: the cell of that
	section string // its title
	like    string // and the product that it is as, but for what it says
}

const (
	fewestNamed  = 3  // rows that such a list has at least
	longestName  = 40 // letters of a name in words
	fewestProse  = 3  // words of a sentence that describes
	nameShare    = 3  // one of so many names is one that the schedule uses,
	figuresShare = 4  // and one of so many descriptions tells a limit
)

// proseList finds such a list on a sheet: the column whose cells are names and whose
// cells beside describe materials. It is none of codes, which notes and cards have.
func (r *reader) proseList(s *workbook.Sheet, tables []*table, names *wordIndex) []proseRow {
	byColumn := map[int][]proseRow{}
	for _, row := range s.Rows {
		if within(schedulesAndData(tables), row.Number) {
			continue
		}
		cells := slices.Collect(filled(row.Cells))
		if len(cells) < 2 || !r.isProse(cells[1].Value) {
			continue
		}
		if name := strings.TrimSpace(cells[0].Value); r.isNameInWords(name, names) {
			byColumn[cells[0].Col] = append(byColumn[cells[0].Col], proseRow{
				row: row.Number, name: name, words: cells[1].Value,
				says:  r.proseOf(cells[1], At{Sheet: s.Name, Row: row.Number, Cell: cells[1].Ref()}),
				known: r.vocab.Family(cells[1].Value) != "" || r.vocab.Family(name) != "",
			})
		}
	}
	best := []proseRow{}
	for _, col := range slices.Sorted(maps.Keys(byColumn)) {
		if list := byColumn[col]; len(list) > len(best) && r.listsByName(list, names) {
			best = list
		}
	}
	return slices.DeleteFunc(best, func(p proseRow) bool { return !p.known && !isNamed(p.name, names) })
}

// schedulesAndData are the tables whose rows no list is looked for in.
func schedulesAndData(tables []*table) []*table {
	return slices.DeleteFunc(slices.Clone(tables), func(t *table) bool {
		return t.kind != kindSchedule && (t.kind != kindProducts || len(t.data()) == 0)
	})
}

// isNameInWords holds for a few words written as a name ("Cold Primer", "All-season
// Fluid" where the schedule uses it), which is no date, figure or label.
func (r *reader) isNameInWords(name string, names *wordIndex) bool {
	words := strings.Fields(name)
	first, _ := utf8.DecodeRuneInString(name)
	if len(words) == 0 || len(words) > maxName || len(name) > longestName || strings.HasSuffix(name, ".") || strings.HasSuffix(name, ":") {
		return false
	}
	if !unicode.IsUpper(first) && !unicode.IsDigit(first) || !strings.ContainsFunc(name, unicode.IsLetter) || r.isDate(name) {
		return false
	}
	if len(words) == 1 && (noteNumber.MatchString(name) || tagShape.MatchString(name)) {
		return false
	}
	return writtenAsName(words) || isNamed(name, names)
}

// writtenAsName holds where each word begins with a capital or a figure.
func writtenAsName(words []string) bool {
	return !slices.ContainsFunc(words, func(w string) bool {
		first, _ := utf8.DecodeRuneInString(w)
		return !unicode.IsUpper(first) && !unicode.IsDigit(first)
	})
}

// isProse holds for a cell of sentences: several words that end with a full stop, or
// that a full stop or comma parts.
func (r *reader) isProse(text string) bool {
	text = strings.TrimSpace(text)
	return len(strings.Fields(text)) >= fewestProse && (strings.HasSuffix(text, ".") || strings.Contains(text, ", ") || len(r.words.splitList(text)) > 1) ||
		strings.HasSuffix(text, ".") && r.vocab.Family(text) != ""
}

// listsByName holds for rows most of which describe a material, some with limits, and
// of which the schedule uses a good part by name.
func (r *reader) listsByName(list []proseRow, names *wordIndex) bool {
	materials, limits, used, coded, sentences := 0, 0, 0, 0, 0
	for _, p := range list {
		if p.known {
			materials++
		}
		if slices.ContainsFunc(p.says, func(c source) bool { return c.slot != toldSubject && c.slot != "remark" }) {
			limits++
		}
		if isNamed(p.name, names) {
			used++
		}
		if looksCoded(p.name) {
			coded++
		}
		if len(r.words.splitList(p.words)) > 1 {
			sentences++
		}
	}
	n := len(list)
	return n >= fewestNamed && materials*2 > n && limits*figuresShare >= n && used*nameShare >= n && coded*2 <= n && sentences*figuresShare >= n
}

// dealProse registers the products of such a list, by their whole names.
func (r *reader) dealProse(s *workbook.Sheet, list []proseRow) {
	degrees := r.degreesOfProse(s, list)
	for _, p := range list {
		if _, known := r.lex.tags[fold(p.name)]; known {
			continue
		}
		r.sched.Products = append(r.sched.Products, newProduct(p.name, s.Name, p.row))
		i := len(r.sched.Products) - 1
		r.sched.Products[i].section = p.section
		r.callProse(p, i)
		r.told = append(r.told, told{product: i, says: withDegrees(p.says, degrees), prose: true})
		r.cardRows[s.Name] = append(r.cardRows[s.Name], p.row)
	}
}

// callProse makes a product known by its name: those of clauses by their maker's too, and
// by their tags.
func (r *reader) callProse(p proseRow, index int) {
	first := firstWords(p.name, 1)
	switch {
	case tagShape.MatchString(p.name) && first == p.name:
		r.lex.add(p.name, index)
		return
	case p.cell != "" && first != p.name && len(r.vocab.Find(first)) == 0 && !r.words.prose.Clauses.plain.MatchString(first):
		r.lex.maker[fold(first)]++
	}
	r.lex.addWhole(p.name, index)
}

// degreesOfProse is the unit of the bare temperatures of a list, by the words of its
// sheet or by a figure that has one, "" if neither tells.
func (r *reader) degreesOfProse(s *workbook.Sheet, list []proseRow) string {
	for _, row := range s.Rows {
		for c := range filled(row.Cells) {
			if unit := r.unitInTitle(c.Value, "temperature", "apply"); unit != "" {
				return degreeSign(unit)
			}
		}
	}
	for _, p := range list {
		for _, q := range r.phrase.Quantities(p.words, "") {
			if q.Kind == "temperature" && q.Unit != "" {
				return q.Unit
			}
		}
	}
	return r.dealtUnits["temperature"]
}

// degreeSign writes "Fahrenheit" as figures have it.
func degreeSign(unit string) string {
	switch fold(unit) {
	case "fahrenheit":
		return "°F"
	case "celsius":
		return "°C"
	}
	return unit
}

// addWhole makes a product known by its name in words, and by nothing less: its first
// word ("Wall" of "Wall Sheet") is a word like any other. A name of one word counts
// where it is written as one.
func (l *lexicon) addWhole(name string, index int) {
	key := fold(name)
	if _, again := l.tags[key]; again || key == "" {
		return
	}
	l.tags[key] = index
	l.names = append(l.names, key)
	if !strings.Contains(key, " ") {
		l.called[key] = true
	} else if writtenAsName(strings.Fields(name)) {
		l.worded++
	}
}

// fewestWorded is how many names in words a list has at least from which a row's own
// material that is written so too, and stands in no list, is one that was left out.
const fewestWorded = 6

// leftOut finds the name in words that the cell of a row's own material begins with and
// that no list has ("Brick Coat B, two coats"), where the workbook calls its products so
// and no words of the trade stand in it.
func (r *reader) leftOut(l *Line, c source) {
	name := nameLead.FindString(c.text)
	if c.slot != "material" || r.lex.worded < fewestWorded || name == "" || len(strings.Fields(name)) > maxName {
		return
	}
	for i := range l.Items {
		if it := &l.Items[i]; it.Slot == "material" && (it.Product != "" || !strings.HasPrefix(it.Text, name)) {
			return
		}
	}
	if r.lex.isWords(name) {
		return
	}
	unknown := r.item(mention{product: -1, tag: name, unknownTag: true}, c)
	unknown.Text = name
	if i := slices.IndexFunc(l.Items, func(it Item) bool { return it.Slot == "material" }); i >= 0 {
		it := &l.Items[i]
		unknown.ID, unknown.Polarity, unknown.Clause = it.ID, it.Polarity, it.Clause
		*it = unknown
		return
	}
	unknown.ID, unknown.Polarity, unknown.Clause = fmt.Sprintf("%s/%d", l.ID, len(l.Items)+1), "yes", c.text
	l.Items = append(l.Items, unknown)
}

// nameLead is a name of two words or more at the head of a cell, each in capitals.
var nameLead = regexp.MustCompile(`^\p{Lu}[\p{L}-]+(?: (?:\p{Lu}[\p{L}-]*|\d+))+`)
