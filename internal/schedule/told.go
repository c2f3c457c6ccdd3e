package schedule

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// told is a product whose data stands in running text, as in a note that opens
// with its code: "FM-1 butyl sheet, 1 mm. Lay +5 to +35 C. Open 45 days.".
type told struct {
	product int
	says    []source // what each sentence tells, by slot
	prose   bool     // the product is called by a name in words
	inRow   bool     // the remarks of a row describe it
}

// toldOpening is a phrase that opens a sentence of such a note.
type toldOpening struct{ words, slot string }

// slots of a note that no column has.
const (
	toldSubject = "type"
	toldRest    = "rest" // "all else as FM-1"
)

func openings(bySlot map[string][]string) []toldOpening {
	var out []toldOpening
	for slot, words := range bySlot {
		for _, w := range words {
			out = append(out, toldOpening{w, slot})
		}
	}
	slices.SortFunc(out, func(a, b toldOpening) int {
		return cmp.Or(len(b.words)-len(a.words), strings.Compare(a.words, b.words))
	})
	return out
}

var leadingCode = regexp.MustCompile(`^([A-Z][A-Za-z]{0,5}[-./]?\d{0,3}[A-Z]?)(?:\s*[:=–—]\s*|\s+-\s+|\s+)(\S.*)$`)

// toldProducts registers the products that notes describe: a note counts where
// its first word is a code that the schedule uses and the rest names a material
// and at least one of its limits.
func (r *reader) toldProducts(s *workbook.Sheet, tables []*table, used, walls map[string]bool) {
	numbered := sync.OnceValue(func() map[string]bool { return r.noteNumbers(s) })
	for _, row := range s.Rows {
		if within(tables, row.Number) || slices.Contains(r.cardRows[s.Name], row.Number) {
			continue
		}
		words, at := noteCells(s, row)
		m := leadingCode.FindStringSubmatch(strings.Join(words, " "))
		if m == nil || !used[m[1]] || r.codes[m[1]] || walls[m[1]] || numbered()[m[1]] || r.listsWall(s, row.Number) {
			continue
		}
		if _, known := r.lex.tags[fold(m[1])]; known || r.isTradeWord(m[1]) {
			continue
		}
		says := r.toldSentences(m[2], at)
		if len(says) < 2 || r.isBuildUp(m[2]) || !r.namesProduct(says[0].text) {
			continue
		}
		r.sched.Products = append(r.sched.Products, newProduct(m[1], s.Name, row.Number))
		r.lex.add(m[1], len(r.sched.Products)-1)
		r.told = append(r.told, told{product: len(r.sched.Products) - 1, says: says})
		r.toldRows[at.Sheet] = append(r.toldRows[at.Sheet], row.Number)
	}
}

// listsWall holds for a row below a line that says that wall types follow, with nothing but
// such rows between: what its code is of is a wall, of which a note may tell a figure too.
func (r *reader) listsWall(s *workbook.Sheet, row int) bool {
	for last := max(1, row-mostWalls); row > last; {
		row--
		words := strings.Join(textsOf(s.Row(row)), " ")
		if r.words.wallHeading.MatchString(words) {
			return true
		}
		if !opensWithWall(words) {
			return false
		}
	}
	return false
}

// opensWithWall holds for words that begin with the code of a wall.
func opensWithWall(words string) bool {
	m := wallEntry.FindStringIndex(words)
	return m != nil && m[0] == 0
}

// noteNumbers are words that the notes of a sheet are numbered with: "GN 1", "GN 2".
func (r *reader) noteNumbers(s *workbook.Sheet) map[string]bool {
	out := map[string]bool{}
	for _, row := range s.Rows {
		if words, _ := noteCells(s, row); len(words) > 1 {
			if m := letteredNote.FindStringSubmatch(words[0]); m != nil {
				out[m[1]] = true
			}
		}
	}
	for code := range r.runningCodes(s) {
		out[code] = true
	}
	return out
}

var letteredNote = regexp.MustCompile(`^(\pL{1,6}) \d{1,2}[.:)]?$`)

// runningCode is a code with a number in a cell of its own before a note: "N-3", "GN.4".
var runningCode = regexp.MustCompile(`^(\pL{1,4})[-./]?(\d{1,2})[.:)]?$`)

// fewestNotes is how many notes a row of numbers has at least; products seldom run
// further without one that is told by its material.
const fewestNotes = 4

// runningCodes are the numbers of notes that run on from one under one letter: "N-1"
// to "N-9", "N-01" to "N-12". Products are numbered so too, so most of the rows must name
// none, or the heading says that they are what the project asks for.
func (r *reader) runningCodes(s *workbook.Sheet) map[string]bool {
	codes, named, asked := map[string][]string{}, map[string]int{}, map[string]bool{}
	above := []string{}
	for _, row := range s.Rows {
		words, at := noteCells(s, row)
		headed := slices.ContainsFunc(above, r.words.askedHeading.MatchString)
		above = words
		if len(words) < 2 {
			continue
		}
		m := runningCode.FindStringSubmatch(words[0])
		if m == nil || strings.TrimLeft(m[2], "0") != strconv.Itoa(len(codes[m[1]])+1) {
			continue
		}
		asked[m[1]] = asked[m[1]] || headed
		codes[m[1]] = append(codes[m[1]], strings.TrimRight(words[0], ".:)"))
		if says := r.toldSentences(strings.Join(words[1:], " "), at); len(says) > 1 && r.namesProduct(says[0].text) {
			named[m[1]]++
		}
	}
	out := map[string]bool{}
	for letter, list := range codes {
		if len(list) < fewestNotes || 2*named[letter] >= len(list) && !asked[letter] {
			continue
		}
		for _, code := range list {
			out[code] = true
		}
	}
	return out
}

// isTradeWord holds for a short word of the trade ("TWF"), for a column of figures
// ("VOC") or for a word by which notes state limits ("Weeps"), which no product is
// called by.
func (r *reader) isTradeWord(code string) bool {
	for _, g := range r.head.match(code) {
		if _, figure := figureOf[g.slot]; figure && g.score >= 1 {
			return true
		}
	}
	if strings.ContainsFunc(code, unicode.IsDigit) {
		return false
	}
	ofLimits := func(f limitFigure) bool { return slices.Contains(f.Words, strings.ToLower(code)) }
	return r.vocab.Family(code) != "" || slices.ContainsFunc(r.limitRules.Figures, ofLimits)
}

// namesProduct holds for words that name a material or point at another product.
func (r *reader) namesProduct(words string) bool {
	for _, pat := range r.words.sameAs {
		if pat.MatchString(words) {
			return true
		}
	}
	return r.vocab.Family(words) != ""
}

// plainWord is written as any word that begins a cell ("Weeps at 24 in. o.c."): it is a
// name where it has the cell to itself.
var plainWord = regexp.MustCompile(`^\p{Lu}\p{Ll}{2,}$`)

// usedCodes are the words of the schedules' cells that a note may explain. The codes of
// walls are none, though a remark names one ("as W2"), unless one has a cell of materials
// to itself.
func usedCodes(tables []*table) map[string]bool {
	used, alone, walls := map[string]bool{}, map[string]bool{}, map[string]bool{}
	for _, t := range tables {
		for row := t.first; row <= t.last; row++ {
			for i, col := range t.nums {
				cell := text(t.sheet, row, col)
				switch t.cols[i].Slot {
				case "reference", "place":
					continue // "N1, N4" are notes that the row cites
				case "group":
					for _, w := range cellWords(cell) {
						walls[w] = true
					}
					continue
				}
				for _, w := range cellWords(cell) {
					used[w] = used[w] || w == cell || !plainWord.MatchString(w)
					alone[w] = alone[w] || w == cell
				}
			}
		}
	}
	for w := range walls {
		used[w] = used[w] && alone[w]
	}
	return used
}

// toldSentences sorts the sentences of a note by what they open with; one that
// opens with nothing known goes on with the sentence before.
func (r *reader) toldSentences(words string, at At) []source {
	var out []source
	for i, part := range r.words.splitList(words) {
		slot, rest := r.opening(part.text)
		switch {
		case i == 0:
			out = append(out, source{slot: toldSubject, text: part.text, at: at})
		case slot != "":
			out = append(out, source{slot: slot, text: rest, at: at})
		default:
			last := &out[len(out)-1]
			last.text += "; " + part.text
		}
	}
	if len(out) == 0 {
		return nil // nothing but a full stop or a semicolon
	}
	for _, q := range r.phrase.Quantities(out[0].text, "") {
		if slot := r.words.toldByKind[q.Kind]; slot != "" {
			out = append(out, source{slot: slot, text: q.Text, at: at})
		}
	}
	return out
}

// opening finds the phrase that a sentence opens with, or holds as its only
// words beside a figure.
func (r *reader) opening(sentence string) (slot, rest string) {
	low := foldKeep(sentence)
	for _, o := range r.words.told {
		if strings.HasPrefix(low, o.words) && wholeWord(low, 0, len(o.words)) {
			if strings.HasPrefix(o.words, "no ") {
				return o.slot, sentence // "no limit open", "no primer on ...": the words are the value
			}
			return o.slot, strings.TrimLeft(sentence[len(o.words):], " :")
		}
	}
	for _, o := range r.words.told {
		if i := strings.Index(low, o.words); i > 0 && strings.Contains(o.words, " ") && wholeWord(low, i, i+len(o.words)) {
			return o.slot, sentence
		}
	}
	return "", ""
}

// describeTold reads what each product of a note is, with what it takes over
// from another one.
func (r *reader) describeTold() {
	for i := range r.told {
		n := &r.told[i]
		p := &r.sched.Products[n.product]
		n.says = r.takenOver(n)
		for j := range n.says {
			c := &n.says[j]
			c.text = r.productWords(p, At{Sheet: p.Sheet, Row: p.Row}, c.slot, c.text)
			p.Cells[c.slot] = c.at.Cell
			p.Texts[c.slot] = strings.TrimPrefix(p.Texts[c.slot]+"; "+c.text, "; ")
		}
		p.Texts[toldSubject] = r.beforeFigures(p.Texts[toldSubject])
		r.identify(p)
		if n.prose {
			r.nameTells(p)
		}
	}
}

// beforeFigures cuts the figures off the words that say what a product is, from
// each of its parts: a trade name may end in what looks like one ("Alder 2C").
func (r *reader) beforeFigures(words string) string {
	parts := strings.Split(words, "; ")
	for i, part := range parts {
		for _, q := range r.phrase.Quantities(part, "") {
			if q.Start > 0 && r.words.toldByKind[q.Kind] != "" {
				parts[i] = strings.TrimRight(part[:q.Start], " ,;")
				break
			}
		}
	}
	return strings.Join(parts, "; ")
}

// takenOver adds to "all else as FM-1" what the note of FM-1 says beyond this one.
func (r *reader) takenOver(n *told) []source {
	var own []source
	from := -1
	for _, c := range n.says {
		if c.slot != toldRest {
			own = append(own, c)
			continue
		}
		for _, m := range r.lex.findTags(c.text) {
			from = m.product
		}
	}
	for _, o := range r.told {
		if o.product != from || o.product == n.product {
			continue
		}
		r.sameAsOther(n, o.says)
		if n.prose {
			own[0] = n.says[0]
		}
		for _, c := range o.says {
			if n.prose && c.slot == "remark" || !slices.ContainsFunc(own, func(s source) bool { return s.slot == c.slot }) {
				own = append(own, c)
			}
		}
	}
	return own
}

// limitsTold reads the figures and lists of the products of notes.
func (r *reader) limitsTold() {
	for _, n := range r.told {
		if n.prose {
			r.suitsInProse(&r.sched.Products[n.product], n.says)
		}
		for _, c := range n.says {
			if n.prose && r.listsPrimers(c) {
				c.slot = "primer"
			}
			if !n.prose { // a card cuts names short as a table does
				c.text = r.namesWritten(c.slot, c.text)
			}
			if c.slot != toldSubject && !r.words.isBlank(c.text) {
				r.productCell(&r.sched.Products[n.product], c)
			}
		}
	}
}
