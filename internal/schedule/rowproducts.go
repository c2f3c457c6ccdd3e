package schedule

import (
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// rowProducts are the products that the remarks of a schedule's rows describe: the name
// by which its cells call one, and sentences ("Larch 40 is SBS on polyethylene, 40 mils.
// Lay at 5 °C and up. Cover within 60 days."). Offices that issue their walls one to a block
// keep the data at the layer (common practice).
type rowProducts struct {
	names, plain func() *wordIndex // of the cells that name what is built, folded and as they are written
	said         map[string]bool   // sentences that are taken, folded
	may          map[string]bool   // remarks in which a sentence could describe a product
}

// describedInRows registers the products that are told so. What describes them is
// no longer said of the row.
func (r *reader) describedInRows(schedules []*table) {
	words := sync.OnceValue(func() string { return builtWords(schedules) })
	w := rowProducts{
		names: sync.OnceValue(func() *wordIndex { return indexWords(foldKeep(words())) }),
		plain: sync.OnceValue(func() *wordIndex { return indexWords(words()) }),
		said:  map[string]bool{}, may: map[string]bool{},
	}
	first := len(r.sched.Products)
	for _, t := range schedules {
		for row := t.first; row <= t.last; row++ {
			for i, col := range t.nums {
				if c, ok := t.sheet.At(row, col); ok && t.cols[i].Slot == "remark" && !c.Merged && !c.AllStruck && t.ownCells(row) > 1 && r.mayDescribe(&w, c.Value) {
					r.describedIn(&w, t, row, c)
				}
			}
		}
	}
	r.namedInPart(first)
}

// mayDescribe holds for a remark with a sentence that opens as those of products do and
// names a material or a grade. Many rows say the same.
func (r *reader) mayDescribe(w *rowProducts, remark string) bool {
	may, known := w.may[remark]
	if !known {
		may = slices.ContainsFunc(r.sentencesOf(remark), func(p part) bool {
			m := productOpening.FindStringSubmatch(p.text)
			return m != nil && (r.words.prose.grade.MatchString(m[3]) || len(r.lex.named(m[3])) > 0)
		})
		w.may[remark] = may
	}
	return may
}

// builtWords are the words of all cells that name what is built, and none of those that
// tell where or when.
func builtWords(schedules []*table) string {
	var b strings.Builder
	for _, t := range schedules {
		for i, col := range t.nums {
			if slot := t.cols[i].Slot; notBuilt[slot] || isDateSlot(slot) {
				continue
			}
			for row := t.first; row <= t.last; row++ {
				b.WriteString(strings.Join(strings.Fields(plainSigns.Replace(text(t.sheet, row, col))), " "))
				b.WriteByte('\n')
			}
		}
	}
	return b.String()
}

// notBuilt are columns whose cells name nothing that is built.
var notBuilt = map[string]bool{"mark": true, "group": true, "place": true, "order": true, "reference": true, "remark": true, "site": true, "status": true}

// describedIn reads one cell of remarks: each product goes on from the sentence that it
// opens with, as far as the sentences tell of products.
func (r *reader) describedIn(w *rowProducts, t *table, row int, c workbook.Cell) {
	var rest []string
	open := -1 // the product that is told of, by its place among those told in rows
	for _, part := range r.sentencesOf(strings.TrimSpace(c.Value)) {
		at := t.at(row, c.Col)
		if name, says := r.opensProduct(w, t, row, part.text); name != "" {
			open = r.toldInRow(w, t, row, name)
			said := r.proseOf(workbook.Cell{Value: says, Kind: workbook.Text}, at)
			if own := r.ownWords(t, row, name); r.vocab.Family(own) != "" && (r.vocab.Family(says) == "" || !vague(r.vocab.Family(own))) { // "Larch butyl strip": what it is for, then what it is made of
				said[0].slot = "chemistry"
				said = append([]source{{slot: toldSubject, text: own, at: t.at(row, ownColumn(t))}}, said...)
			}
			r.told[open].tell(said, w.takes(name+says))
			continue
		}
		slot, says := r.proseSlot(part.text)
		figures := r.proseFigures(source{text: part.text, at: at}, false)
		if open < 0 || slot == "remark" && len(figures) == 0 {
			rest = append(rest, part.text)
			continue
		}
		r.told[open].tell(append(figures, source{slot: slot, text: says, at: at}), w.takes(r.told[open].name(r)+part.text))
	}
	if open >= 0 {
		r.leftInRow[t.at(row, c.Col)] = strings.Join(rest, ". ")
	}
}

// takes holds for a sentence that was not read before: the block of another wall says again
// what its products are.
func (w *rowProducts) takes(sentence string) bool {
	key := fold(sentence)
	again := w.said[key]
	w.said[key] = true
	return !again
}

// tell adds what a sentence says, but for figures that an earlier one gives.
func (n *told) tell(says []source, isNew bool) {
	if !isNew {
		return
	}
	for _, c := range says {
		if c.slot == toldSubject && len(n.says) > 0 {
			c.slot = "remark"
		}
		n.says = append(n.says, c)
	}
	n.says = firstFigures(n.says)
}

func (n *told) name(r *reader) string { return r.sched.Products[n.product].Tag }

// productOpening is a name at the head of a sentence and what it says of it: "Larch 40 is
// butyl, 40 mils", "PR-2: solvent primer", "Alder Vent, acrylic adhesive on fleece".
var productOpening = regexp.MustCompile(`^((?:\p{Lu}[\pL\d]*(?:[-./][\pL\d]+)*)(?: (?:\p{Lu}[\pL\d-]*|\d[\pL\d-]*)){0,3})(\s+(?:is|are|=)\s+|\s*[:,=–—]\s+|\s+-\s+|\s+\(|\s+)(\S.*)$`)

// opensProduct gives the name of the product that a sentence describes and what it says
// of it, "" for none: the schedule calls something by that name, and the words tell a
// material, or a grade of what was told before.
func (r *reader) opensProduct(w *rowProducts, t *table, row int, sentence string) (name, says string) {
	m := productOpening.FindStringSubmatch(sentence)
	if m == nil || !r.namesUsed(w, t, row, m[1], strings.TrimSpace(m[2])) {
		return "", ""
	}
	if i, known := r.lex.tags[fold(m[1])]; known && !r.isToldInRow(i) || !strings.Contains(m[1], " ") && r.isTradeWord(m[1]) || r.codes[m[1]] {
		return "", ""
	}
	if found := r.vocab.Find(sentence); len(found) > 0 && found[0].Start == 0 && found[0].End > len(m[1]) {
		return "", "" // "R-19 batt": the name is a part of the words for the material
	}
	says = m[3]
	if strings.HasSuffix(strings.TrimSpace(m[2]), "(") {
		says = strings.Replace(says, ")", "", 1)
	}
	if len(r.vocab.Find(r.words.saidWhere.ReplaceAllString(says, ""))) == 0 && !r.words.prose.grade.MatchString(says) {
		return "", "" // "EPDM is stuck to the wood curb" names what it is not
	}
	switch own := r.ownWords(t, row, m[1]); {
	case r.vocab.Family(says) != "", len(r.vocab.Find(says)) > 0 && r.vocab.Family(own, says) != "": // "Alder VP, fluid-applied" that "is a water-borne acrylic"
		return m[1], says
	case r.kinOf(m[1]) >= 0 && r.words.prose.grade.MatchString(says): // "Larch LT is the winter grade"
		return m[1], r.told[r.kinOf(m[1])].stuff(r) + ", " + says
	}
	return "", ""
}

// stuff is what a product is said to be made of.
func (n *told) stuff(r *reader) string {
	what := n.says[0].text
	for _, c := range n.says {
		if c.slot == "chemistry" {
			what = c.text
		}
	}
	return r.beforeFigures(what)
}

// ownWords is what the row's own cell says of its material right after its name, or after
// the word that it begins with.
func (r *reader) ownWords(t *table, row int, name string) string {
	own := text(t.sheet, row, ownColumn(t))
	for _, called := range []string{name, r.ownLead(t, row, name)} {
		if rest, ok := strings.CutPrefix(own, called); ok && called != "" {
			return upTo(",;.", strings.TrimLeft(rest, " ,;:-–—"))
		}
	}
	return ""
}

// namesUsed holds for a code or for several words written as a name that the schedule's
// cells use, and for the word that the row's own cell of materials begins with and that
// is none of the trade. Beside a word in words a sign or a verb must stand.
func (r *reader) namesUsed(w *rowProducts, t *table, row int, name, between string) bool {
	coded := (codeShape.MatchString(name) || tagShape.MatchString(name)) && !inWords.MatchString(name)
	if between == "" && !coded {
		return false
	}
	if between == "," && r.lex.figure(name) { // "R-21, on washers"
		return false
	}
	if looksNamed(name) && isNamed(name, w.names()) {
		return true
	}
	lead := r.ownLead(t, row, name)
	if w.plain().has(strings.ToLower(lead)) { // a name never stands in small letters
		return false
	}
	return lead != "" && !coded && (between == "is" || strings.Contains(name, " "))
}

// inWords is a word of a name that is written as words are.
var inWords = regexp.MustCompile(`\p{Ll}{2}`)

// ownLead is the first word of a name where the row's own material begins with it and it
// is no word of the trade: of "Larch 40" in the row of "Larch butyl strip".
func (r *reader) ownLead(t *table, row int, name string) string {
	lead, _, _ := strings.Cut(name, " ")
	own := text(t.sheet, row, ownColumn(t))
	first, _, _ := strings.Cut(own, " ")
	if lead == "" || strings.TrimRight(first, ",;:") != lead || utf8.RuneCountInString(lead) < shortestLead || r.vocab.Family(lead) != "" || len(r.head.match(lead)) > 0 {
		return ""
	}
	return lead
}

// shortestLead is how many letters the word has at least by which a product is called.
const shortestLead = 4

// ownColumn is the column that names what is built in each row.
func ownColumn(t *table) int {
	for _, slot := range []string{"material", "tag", "type", "layers"} {
		if col := t.column(slot); col > 0 {
			return col
		}
	}
	return t.nums[0]
}

// toldInRow is the place of a product among those told, registered the first time.
func (r *reader) toldInRow(w *rowProducts, t *table, row int, name string) int {
	if i, known := r.lex.tags[fold(name)]; known {
		return slices.IndexFunc(r.told, func(n told) bool { return n.product == i })
	}
	p := newProduct(name, t.sheet.Name, row)
	p.coined = true
	r.sched.Products = append(r.sched.Products, p)
	i := len(r.sched.Products) - 1
	if strings.Contains(name, " ") {
		r.lex.addWhole(name, i)
	} else {
		r.lex.add(name, i)
	}
	if lead := r.ownLead(t, row, name); lead != "" && !isNamed(name, w.names()) { // "Larch butyl strip" is of Larch 25
		r.lex.addWhole(lead, i)
	}
	r.told = append(r.told, told{product: i, prose: true, inRow: true})
	return len(r.told) - 1
}

// isToldInRow holds for a product that the remarks of rows describe.
func (r *reader) isToldInRow(product int) bool {
	return slices.ContainsFunc(r.told, func(n told) bool { return n.product == product && n.inRow })
}
