package schedule

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"strings"

	"abut/internal/material"
	"abut/internal/phrase"
	"abut/internal/workbook"
)

// Reader turns workbooks into schedules. It is safe for concurrent use.
type Reader struct {
	phrase *phrase.Reader
	vocab  *material.Vocabulary
	head   *headings
	words  *wordlists
	limits *limitRules
}

// NewReader loads the vocabularies from a policy tree.
func NewReader(fsys fs.FS) (*Reader, error) {
	p, err := phrase.From(fsys)
	if err != nil {
		return nil, err
	}
	v, err := material.Load(fsys)
	if err != nil {
		return nil, err
	}
	h, err := loadHeadings(fsys)
	if err != nil {
		return nil, err
	}
	w, err := loadWordlists(fsys)
	if err != nil {
		return nil, err
	}
	l, err := loadLimitRules(fsys)
	if err != nil {
		return nil, err
	}
	return &Reader{phrase: p, vocab: v, head: h, words: w, limits: l}, nil
}

// Vocabulary gives the words that materials are known by.
func (rd *Reader) Vocabulary() *material.Vocabulary { return rd.vocab }

// Phrases gives the reader of quantities, dates and clauses.
func (rd *Reader) Phrases() *phrase.Reader { return rd.phrase }

// Settings are what a project's settings file says of its workbooks.
type Settings struct {
	Country string // two letters; decides the order of day and month where nothing else does
	// CountryOf finds the country from texts that may name the place; it is asked
	// where Country is "" and dates could be read both ways. It may be nil.
	CountryOf func(places []Fact) string
	Columns   map[string]string // heading -> slot
	Products  []*workbook.Book  // workbooks of product data beside this one
}

// reader is one run over one workbook.
type reader struct {
	phrase     *phrase.Reader
	vocab      *material.Vocabulary
	head       *headings
	words      *wordlists
	limitRules *limitRules
	lex        *lexicon
	marks      map[string]bool
	dates      map[string]bool   // texts asked before, and whether they are dates
	short      map[string]string // the office's own short words and what they stand for
	places     map[string]int    // runs of up to four words of places -> rows that have them
	placeRows  int
	country    string
	set        Settings
	sched      *Schedule
}

// NoTable is the error of a workbook in which no schedule was found.
type NoTable struct {
	Path     string
	Headings []string // the texts that looked most like headings
}

// Error names the file and what to do.
func (e *NoTable) Error() string {
	return fmt.Sprintf("%s: no material schedule found; a schedule needs a heading row with at least a material or tag column and one of substrate, primer, adjacent materials, lap, edge or cover date (name the columns in abut.yaml if they are called otherwise)", e.Path)
}

// Read reads one workbook. It fails where no table of materials is found.
func (rd *Reader) Read(b *workbook.Book, set Settings) (*Schedule, error) {
	r := &reader{
		phrase: rd.phrase, vocab: rd.vocab, head: rd.head, words: rd.words, limitRules: rd.limits,
		lex: newLexicon(rd.vocab), marks: map[string]bool{}, dates: map[string]bool{}, short: map[string]string{}, places: map[string]int{}, country: set.Country, set: set,
		sched: &Schedule{
			File: b.Path, Lines: []Line{}, Products: []Product{}, Pours: []Pour{},
			Project: Project{Places: []Fact{}, Limits: []Limit{}, Signals: []Said{}, Notes: []Fact{}, Indoor: []Room{}},
			Reading: Reading{Sheets: []SheetRead{}, Tables: []Table{}, Unread: []Unread{}, Skipped: []Unread{}},
		},
	}
	for _, words := range rd.limits.Roles {
		for _, w := range words {
			r.lex.heads[w] = true
		}
	}
	all := r.tables(b)
	if err := r.columnsNamed(b.Path, all); err != nil {
		return nil, err
	}
	if len(all) == 0 {
		return nil, &NoTable{Path: b.Path}
	}
	all = append(all, r.productBooks()...)
	r.each(all, kindProducts, r.fillUnknown)
	r.each(all, kindProducts, r.productNames)
	r.lex.done()
	if len(r.sched.Products) == 0 {
		r.each(all, kindSchedule, r.ownTags)
	}
	r.each(all, kindSchedule, r.tagColumn)
	r.each(all, kindSchedule, r.fillUnknown)
	for _, t := range all {
		r.units(t)
	}
	r.missingUnits(all)
	r.each(all, kindProducts, r.describe)
	r.each(all, kindSchedule, r.primersByUse)
	r.each(all, kindProducts, r.limits)
	r.each(all, kindSchedule, r.collectMarks)
	r.each(all, kindSchedule, r.collectPlaces)
	r.each(all, kindSchedule, r.sites)
	for i := range b.Sheets {
		r.abbreviations(&b.Sheets[i], onSheet(all, &b.Sheets[i]))
	}
	for i := range b.Sheets {
		if !b.Sheets[i].FeedsDropDowns() {
			r.projectFacts(&b.Sheets[i], onSheet(all, &b.Sheets[i]))
		}
	}
	r.each(all, kindPours, r.pours)
	r.each(all, kindSchedule, r.lines)
	r.relatives()
	r.poured()
	r.spans()
	r.account(b, all)
	if len(r.sched.Lines) == 0 {
		return nil, &NoTable{Path: b.Path}
	}
	return r.sched, nil
}

// tables finds and classifies the tables of every sheet.
func (r *reader) tables(b *workbook.Book) []*table {
	var all []*table
	for i := range b.Sheets {
		s := &b.Sheets[i]
		if s.Kind != workbook.Worksheet || s.FeedsDropDowns() {
			continue
		}
		for _, t := range r.findTables(s) {
			t.id = fmt.Sprintf("%s#%d", s.Name, t.head[0])
			r.classify(t)
			all = append(all, t)
		}
	}
	return all
}

func (r *reader) each(all []*table, kind string, do func(*table)) {
	for _, t := range all {
		if t.kind == kind {
			do(t)
		}
	}
}

func onSheet(all []*table, s *workbook.Sheet) []*table {
	var out []*table
	for _, t := range all {
		if t.sheet == s {
			out = append(out, t)
		}
	}
	return out
}

// collectPlaces counts the runs of words that stand in the places of a table,
// which limits may be stated for.
func (r *reader) collectPlaces(t *table) {
	for row := t.first; row <= t.last; row++ {
		seen := map[string]bool{}
		for _, slot := range []string{"place", "group", "mark"} {
			col := t.column(slot)
			if col == 0 {
				continue
			}
			words := headingWords(text(t.sheet, row, col))
			for i := range words {
				for n := 1; n <= 4 && i+n <= len(words); n++ {
					seen[strings.Join(words[i:i+n], " ")] = true
				}
			}
		}
		for run := range seen {
			r.places[run]++
		}
		r.placeRows++
	}
}

// sites takes the texts of a site column as texts that may name the place.
func (r *reader) sites(t *table) {
	col := t.column("site")
	seen := map[string]bool{}
	for row := t.first; col > 0 && row <= t.last; row++ {
		if s := text(t.sheet, row, col); s != "" && !seen[s] {
			seen[s] = true
			r.sched.Project.Places = append(r.sched.Project.Places, Fact{Text: s, At: t.at(row, col)})
		}
	}
}

// units finds the unit that a heading gives to the bare figures below it.
func (r *reader) units(t *table) {
	for i := range t.cols {
		c := &t.cols[i]
		fig, ok := figureOf[c.Slot]
		if !ok {
			continue
		}
		c.Unit = r.unitIn(c.Heading, fig.kind, c.Slot)
	}
}

// unitIn tries the words of a heading as units of the kind.
func (r *reader) unitIn(heading, kind, slot string) string {
	low := headingWords(heading)
	if s := r.head.bySlot[slot]; s != nil {
		for word, unit := range s.units {
			if holdsWords(low, strings.Fields(word)) {
				return unit
			}
		}
	}
	fields := strings.FieldsFunc(heading, func(c rune) bool { return strings.ContainsRune(" ,_[]:;", c) })
	for n := 3; n >= 1; n-- {
		for i := len(fields) - n; i >= 0; i-- {
			if unit := r.unitOf(strings.Join(fields[i:i+n], " "), kind); unit != "" {
				return unit
			}
		}
	}
	return ""
}

// unitOf gives the unit of a kind that a few words begin with, "" if none;
// brackets around it do not count.
func (r *reader) unitOf(words, kind string) string {
	if strings.HasPrefix(words, "(") {
		words = strings.TrimSuffix(words[1:], ")")
	}
	for _, q := range r.phrase.Quantities("7 "+words, "") {
		if q.Kind == kind && q.Unit != "" && strings.HasPrefix(strings.ToLower(words), strings.ToLower(q.Unit)) {
			return q.Unit
		}
	}
	return ""
}

// missingUnits gives columns of bare figures a unit: by what other cells of the
// column say, by the sheet's own words ("mm and °C throughout"), by another
// column of the workbook.
func (r *reader) missingUnits(all []*table) {
	for _, t := range all {
		for i := range t.cols {
			c := &t.cols[i]
			fig, ok := figureOf[c.Slot]
			if !ok || c.Unit != "" {
				continue
			}
			c.Unit = firstNonEmpty(r.unitInColumn(t, t.nums[i], fig.kind), r.unitOnSheet(t, fig.kind, c.Slot), unitElsewhere(all, t, fig.kind))
		}
	}
}

func (r *reader) unitInColumn(t *table, col int, kind string) string {
	for row := t.first; row <= t.last; row++ {
		for _, q := range r.phrase.Quantities(text(t.sheet, row, col), "") {
			if q.Kind == kind && q.Unit != "" {
				return q.Unit
			}
		}
	}
	return ""
}

func (r *reader) unitOnSheet(t *table, kind, slot string) string {
	for _, row := range t.sheet.Rows {
		if row.Number >= t.head[0] {
			return ""
		}
		for _, c := range row.Cells {
			for _, word := range strings.FieldsFunc(c.Value, func(c rune) bool { return strings.ContainsRune(" ,()_[]:;.", c) }) {
				if r.words.sheetUnits[word] && r.unitIn(word, kind, slot) != "" {
					return word
				}
			}
		}
	}
	return ""
}

// unitElsewhere looks for a column of the same kind, with a unit, in the same
// sort of table.
func unitElsewhere(all []*table, not *table, kind string) string {
	for _, t := range all {
		for _, c := range t.cols {
			if fig, ok := figureOf[c.Slot]; ok && t != not && t.kind == not.kind && fig.kind == kind && c.Unit != "" {
				return c.Unit
			}
		}
	}
	return ""
}

type limitFigure struct {
	Kind      string   `json:"kind"`
	Quantity  string   `json:"quantity"`
	Bound     string   `json:"bound"`
	Fixed     bool     `json:"fixed"` // the bound, whatever the words ("no more than")
	Words     []string `json:"words"`
	Unless    []string `json:"unless"`
	Roles     bool     `json:"roles"`
	Keys      bool     `json:"keys"`
	KeysAfter bool     `json:"keys_after"`
	Subject   bool     `json:"subject"` // the words must begin the sentence or head the note
	After     []string `json:"unless_after"`
	Scope     bool     `json:"scope"`
	Place     bool     `json:"place"`
	When      bool     `json:"when"`
}

type limitWords struct {
	Kind   string     `json:"kind"`
	All    [][]string `json:"all"`
	Any    []string   `json:"any"`
	Unless []string   `json:"unless"`
}

// limitRules are how notes state limits, from policies/knowledge/limits.json.
type limitRules struct {
	Figures []limitFigure       `json:"figures"`
	Words   []limitWords        `json:"words"`
	Roles   map[string][]string `json:"roles"`
	Scopes  map[string][]string `json:"scopes"`
	When    map[string][]string `json:"when"`
	Skip    []string            `json:"place_skip"`
	skip    map[string]bool     // words of places that name none
	Indoor  struct {
		Words  []string `json:"words"`
		Unless []string `json:"unless"`
	} `json:"indoor"`
}

func loadLimitRules(fsys fs.FS) (*limitRules, error) {
	raw, err := fs.ReadFile(fsys, "knowledge/limits.json")
	if err != nil {
		return nil, fmt.Errorf("limit words: %w", err)
	}
	var file struct {
		Limits limitRules `json:"limits"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		return nil, fmt.Errorf("limit words knowledge/limits.json: %w", err)
	}
	file.Limits.skip = set(file.Limits.Skip)
	return &file.Limits, nil
}
