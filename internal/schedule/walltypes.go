package schedule

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// leastParts is how many different parts of a wall the headings of a list of walls name.
const leastParts = 4

// wallTypes takes a list of walls that has a column for each part of them ("Cladding",
// "Cont. insul.", "AB", "Sheathing") for one whose layers each row tells in their order.
// A column of resistances belongs to the insulation left of it.
func (r *reader) wallTypes(t *table) {
	if t.has("install", "finish", "cover", "lap", "primer", "specified") > 0 {
		return
	}
	parts := map[string]bool{}
	kinds := make([]string, len(t.cols))
	for i := range t.cols {
		kinds[i] = r.head.partOf(t.cols[i].Heading)
		parts[kinds[i]] = true
	}
	delete(parts, "")
	delete(parts, ofResistance)
	if len(parts) < leastParts || kinds[0] != "" || !parts["sheet"] {
		return
	}
	t.kind, t.ofLayer = kindSchedule, map[int]int{}
	for i := range t.cols {
		c := &t.cols[i]
		switch {
		case i == 0:
			c.Slot, c.Confidence, c.Why = "mark", 1, "it names the wall of the row"
		case kinds[i] == ofResistance && kinds[i-1] != "insulation" && r.head.wallAsk(c.Heading) != nil:
			c.Slot, c.Why = "", "" // what the wall must have, beside its inside finish
		case kinds[i] == ofResistance && t.cols[i-1].Slot == "layers":
			c.Slot, c.Why = "", ""
			t.ofLayer[t.nums[i-1]] = t.nums[i]
		case kinds[i] != "":
			c.Slot, c.Confidence, c.Why = "layers", 1, "it is a part of the wall, as its neighbors are"
		}
	}
}

// wallMarks are what the lists of walls call them. A note that begins with one ("W2 sheet 10
// perm min.") asks that of the wall, and describes no product.
func wallMarks(tables []*table) map[string]bool {
	out := map[string]bool{}
	for _, t := range tables {
		if mark := t.column("mark"); t.listsWalls() {
			for row := t.first; row <= t.last; row++ {
				out[text(t.sheet, row, mark)] = true
			}
		}
	}
	return out
}

// listsWalls holds for a table of the layers of walls, which tells of no work.
func (t *table) listsWalls() bool {
	return t.column("mark") > 0 && t.has("layers") > 0 && t.has("install", "finish", "cover", "lap", "primer", "specified") == 0
}

// wallLimits takes what the remarks of a list of walls ask of the sheet there ("AB 10 perm
// min., dries both ways") for limits of the rows on that wall, as a note that names the
// wall tells them; so too a column of their own ("Barrier permeance" over "10 perm min").
func (r *reader) wallLimits(t *table) {
	if !t.listsWalls() {
		return
	}
	mark := t.column("mark")
	for row := t.first; row <= t.last; row++ {
		code := text(t.sheet, row, mark)
		if !r.codes[code] {
			continue
		}
		for i, col := range t.nums {
			if t.cols[i].Slot != "remark" {
				if words := r.askedOfWall(t, i, row); words != "" {
					r.limitsIn(code+": "+words, t.at(row, col))
				}
				continue
			}
			for _, part := range r.words.splitList(text(t.sheet, row, col)) {
				if r.bounds(part.text, "vapor_permeance") {
					r.limitsIn(code+": "+part.text, t.at(row, col))
				}
			}
		}
	}
}

// wallAsk is what a column of a list of walls asks of the rows on each of them: Heads is in
// its heading and Not is not, Least or Most is in the heading or the cell, and a figure
// alone has a unit of Units, by a word of the heading ("" else).
type wallAsk struct {
	Kind  string            `json:"kind"`
	Says  string            `json:"says"`
	Heads string            `json:"heads"`
	Not   string            `json:"not"`
	Least string            `json:"least"`
	Most  string            `json:"most"`
	Units map[string]string `json:"units"`

	heads, not, least, most *regexp.Regexp
}

func (a *wallAsk) compile() (err error) {
	for into, words := range map[**regexp.Regexp]string{&a.heads: a.Heads, &a.not: a.Not, &a.least: a.Least, &a.most: a.Most} {
		if *into, err = regexp.Compile("(?i)" + words); err != nil {
			return fmt.Errorf("wall_asks: %w", err)
		}
	}
	return nil
}

// wallAsk is what the heading of a column asks of the rows on a wall, nil for nothing.
func (h *headings) wallAsk(heading string) *wallAsk {
	for i := range h.wallAsks {
		if a := &h.wallAsks[i]; a.heads.MatchString(heading) && !a.not.MatchString(heading) {
			return a
		}
	}
	return nil
}

// asks says as a note would what a cell asks: "sheet 10 perm min" for "10 min" under
// "Barrier permeance (perm)", "insulation R-10 min" for 10 under "Min R". Without a word
// for the least or the most it asks nothing.
func (a *wallAsk) asks(heading, cell string) string {
	bound := ""
	for _, words := range []string{cell, heading} {
		least, most := a.least.MatchString(words), a.most.MatchString(words)
		if least != most {
			bound = map[bool]string{true: "min", false: "max"}[least]
			break
		}
	}
	figures := figureAlone.FindAllString(cell, -1)
	if bound == "" || len(figures) != 1 {
		return ""
	}
	unit := a.Units[""]
	for word, of := range a.Units {
		if word != "" && strings.Contains(strings.ToLower(heading+" "+cell), word) {
			unit = of
		}
	}
	return a.Says + " " + strings.ReplaceAll(unit, "#", figures[0]) + " " + bound
}

var figureAlone = regexp.MustCompile(`\d+(?:\.\d+)?|\.\d+`)

// askedOfWall is what a figure under a heading that asks for one asks of the rows there, ""
// for nothing. A cell that names a layer tells of that.
func (r *reader) askedOfWall(t *table, i, row int) string {
	words, heading := strings.TrimSpace(text(t.sheet, row, t.nums[i])), t.cols[i].Heading
	ask := r.head.wallAsk(heading)
	if ask == nil || t.cols[i].Slot != "layers" && t.cols[i].Slot != "" || len(r.lex.find(words)) > 0 {
		return ""
	}
	return ask.asks(heading, words)
}

// bounds holds for words with a figure of the kind that they call the least or the most.
func (r *reader) bounds(text, kind string) bool {
	return slices.ContainsFunc(r.phrase.Quantities(text, ""), func(q phrase.Quantity) bool {
		return q.Kind == kind && (q.Bound == "min" || q.Bound == "max")
	})
}

// ofResistance is the part that heads the resistance of the insulation beside it.
const ofResistance = "resistance"

// partOf is the part of a wall that a heading names, "" for none.
func (h *headings) partOf(heading string) string {
	words := h.usual(headingWords(heading))
	for i := len(words) - 1; i > 0; i-- {
		words = append(words, words[i-1]+"-"+words[i]) // "Back-up"
	}
	for _, part := range h.parts {
		if slices.ContainsFunc(words, func(w string) bool { return part.words[w] }) {
			return part.name
		}
	}
	return ""
}

// wallPart is a part of a wall and the words that head its column.
type wallPart struct {
	name  string
	words map[string]bool
}

// partWords is one of them as policies/knowledge/columns.json has it.
type partWords struct {
	Name  string   `json:"name"`
	Words []string `json:"words"`
}

// withResistance puts the resistance that a column beside a layer gives to the words for
// it: "4 in. wool" and "16.8" make "4 in. wool R-16.8".
func (t *table) withResistance(row, col int, words string) string {
	beside, ok := t.ofLayer[col]
	figure := text(t.sheet, row, beside)
	if !ok || words == "" || !bareNumber.MatchString(figure) {
		return words
	}
	return words + " " + resistanceUnit(text(t.sheet, t.head[len(t.head)-1], beside)) + figure
}

// resistanceUnit is what stands before a figure of a column of resistances.
func resistanceUnit(heading string) string {
	if strings.Contains(strings.ToLower(heading), "rsi") {
		return "RSI "
	}
	return "R-"
}

var bareNumber = regexp.MustCompile(`^0*[1-9]\d*(?:\.\d+)?$|^0\.\d+$`)

// listedWalls takes rows without a heading that each tell a code and the layers of what
// it stands for ("W2", "brick / 2 in. air / wool / sheet / block") for a list of walls;
// what is written above them heads it.
func (r *reader) listedWalls(s *workbook.Sheet, above []*table) *table {
	t := &table{sheet: s, kind: kindSchedule}
	letters := r.wallLetters(s)
	for row := 1; row <= s.MaxRow; row++ {
		code, layers, ok := r.listedWall(s, row)
		switch {
		case !ok, !letters[lettersOf(text(s, row, code))], slices.ContainsFunc(above, func(o *table) bool { return o.head[0] <= row && row <= o.last }):
		case t.nums == nil:
			t.nums, t.first, t.last = []int{code, layers}, row, row
		case code == t.nums[0] && layers == t.nums[1]:
			t.last = row
		}
	}
	if t.last <= t.first || t.first == 1 {
		return nil
	}
	title := t.first - 1
	for title > 1 && len(s.Row(title)) == 0 {
		title--
	}
	t.head, t.end = []int{title}, t.last
	over := ""
	for _, c := range s.Row(title) {
		over = cmp.Or(over, strings.TrimSpace(c.Value))
	}
	t.cols = []Column{
		{Letter: workbook.ColumnName(t.nums[0]), Slot: "mark", Confidence: 0.8, Why: "codes stand under it, with the layers of each beside"},
		{Letter: workbook.ColumnName(t.nums[1]), Heading: over, own: over, Slot: "layers", Confidence: 0.8, Why: "layers stand under it, with a sign between each two"},
	}
	return t
}

// wallLetters are the letters that the most codes of walls begin with on a sheet, and those
// of others below the same title with as many layers as no note has ("BG-1" below "W-3"):
// notes with numbers of their own ("N4: pans + flashing, end dams") are none of the list.
func (r *reader) wallLetters(s *workbook.Sheet) map[string]bool {
	often, most, out := map[string]int{}, "", map[string]bool{}
	for row := 1; row <= s.MaxRow; row++ {
		code, layers, ok := r.listedWall(s, row)
		if !ok {
			continue
		}
		letters := lettersOf(text(s, row, code))
		signs := layerSigns
		if r.underWallTitle(s, row) {
			signs = commaSigns
			out[letters] = out[letters] || len(layerSigns.FindAllString(text(s, row, layers), -1)) >= fewestUntitled
		}
		often[letters] += len(signs.FindAllString(text(s, row, layers), -1))
		if often[letters] > often[most] {
			most = letters
		}
	}
	out[most] = true
	return out
}

// lettersOf are the letters of a code, before its number or the letter that stands for one.
func lettersOf(code string) string {
	code = strings.TrimSpace(code)
	if letters, last, parted := strings.Cut(code, "-"); parted && len(last) == 1 {
		code = letters
	}
	return strings.ToUpper(strings.TrimRight(code, "0123456789- abcdefghijklmnopqrstuvwxyz"))
}

// listedWall finds the code and the layers of a row that tells nothing else.
func (r *reader) listedWall(s *workbook.Sheet, row int) (code, layers int, ok bool) {
	cells := make([]*workbook.Cell, 0, 3)
	all := s.Row(row)
	for i := range all {
		if c := &all[i]; !c.Merged && strings.TrimSpace(c.Value) != "" {
			if cells = append(cells, c); len(cells) > 2 {
				return 0, 0, false
			}
		}
	}
	if len(cells) != 2 || !wallMark.MatchString(strings.TrimSpace(cells[0].Value)) {
		return 0, 0, false
	}
	told := cells[1].Value
	if r.underWallTitle(s, row) {
		return cells[0].Col, cells[1].Col, strings.ContainsAny(told, " ,")
	}
	if !layerSigns.MatchString(told) || len(r.lex.find(told)) < 2 {
		return 0, 0, false
	}
	return cells[0].Col, cells[1].Col, true
}

// mostWalls is more walls than any list has: no line so far above heads it.
const mostWalls = 200

// underWallTitle holds for a row below a line that says that wall types follow, with
// nothing but other codes between: there the layers may stand with commas between.
func (r *reader) underWallTitle(s *workbook.Sheet, row int) bool {
	for last := max(1, row-mostWalls); row > last; {
		row--
		switch words := textsOf(s.Row(row)); {
		case len(words) == 1:
			return r.words.wallHeading.MatchString(words[0])
		case len(words) != 2 || !wallMark.MatchString(words[0]):
			return false
		}
	}
	return false
}

// headsWalls holds for such a line with two walls at least below it, one of which names
// several layers: a table above ends there.
func (r *reader) headsWalls(s *workbook.Sheet, row int) bool {
	words, walls, layers := textsOf(s.Row(row)), 0, 0
	if len(words) != 1 || !r.words.wallHeading.MatchString(words[0]) {
		return false
	}
	for row++; ; row++ {
		words = textsOf(s.Row(row))
		if len(words) != 2 || !wallMark.MatchString(words[0]) {
			return walls > 1 && layers > 1
		}
		walls, layers = walls+1, max(layers, len(r.lex.find(words[1])))
	}
}

var (
	wallMark   = regexp.MustCompile(`^(?:[A-Z]{1,4}[- ]?\d{1,3}[a-z]?|[A-Z]{1,4}-[A-Z]|[A-Z]{1,4}\d{0,2}(?: \pL+){0,2})$`)
	commaSigns = regexp.MustCompile(`[,;]\s|\s(?:/|>|\||\+|→|–|—)\s`)
	layerSigns = regexp.MustCompile(`\s(?:/|>|\||\+|→|–|—)\s`)
)
