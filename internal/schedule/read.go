package schedule

import (
	"fmt"
	"io/fs"
	"slices"

	"golang.org/x/sync/errgroup"

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
	walls  *wallWords
	limits *limitRules
	waived *waiverWords
}

// NewReader loads the vocabularies from a policy tree.
func NewReader(fsys fs.FS) (*Reader, error) {
	var rd Reader
	var all errgroup.Group
	all.Go(func() (err error) { rd.phrase, err = phrase.From(fsys); return err })
	all.Go(func() (err error) { rd.vocab, err = material.Load(fsys); return err })
	all.Go(func() (err error) { rd.head, err = loadHeadings(fsys); return err })
	all.Go(func() (err error) { rd.words, err = loadWordlists(fsys); return err })
	all.Go(func() (err error) { rd.walls, err = loadWallWords(fsys); return err })
	all.Go(func() (err error) { rd.limits, err = loadLimitRules(fsys); return err })
	all.Go(func() (err error) { rd.waived, err = loadWaiverWords(fsys); return err })
	if err := all.Wait(); err != nil {
		return nil, err
	}
	return &rd, nil
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
	Materials int               // that one row may name, 0: any number
}

// reader is one run over one workbook.
type reader struct {
	remembered
	standing
	phrase     *phrases
	vocab      *material.Vocabulary
	head       *headings
	words      *wordlists
	walls      *wallWords
	limitRules *limitRules
	lex        *lexicon
	room       []source // of the row that is read
	pointed    bool     // a row points at another by its mark
	marks      map[string]bool
	marked     map[string][]int // lines by their marks
	bookOrder  phrase.DateOrder
	glossed    map[string]string // headings and what notes say of them
	letters    map[string]string // single letters that stand for conditions of the work
	series     map[string]string // the letters that tags begin with, and what a list says of all of them
	legend     map[string]string // the office's own words for none, nothing and the row above
	coded      bool              // nearly every tag of the schedules is a product
	short      map[string]string // the office's own short words and what they stand for
	places     map[string]int    // runs of up to four words of places -> rows that have them
	placeRows  int
	stems      map[string][]string // tags of products by their letters
	codes      map[string]bool     // codes of walls that rows stand under
	placeEnds  map[string]bool     // codes that places of rows end in
	told       []told
	toldRows   map[string][]int  // rows of notes that describe products, by sheet
	scale      string            // of all temperatures of the workbook, "" where they have two or none
	unitsNamed map[string]string // units that notes give by the name of the figures: "laps in inches"
	lapsNoted  []phrase.Quantity // the lengths of the notes that begin with laps
	unitsSaid  []string          // what a title block tells beside "Units"
	dealtUnits map[string]string // units of the figures on cards, by kind
	cardRows   map[string][]int  // rows of cards of products, by sheet
	toldLabels map[string]string // slots of labels of cards by the figures beside them
	country    string
	lapUnit    string // of all columns of laps, "" where they have none or differ
	nameTold   bool   // a title block says which of its texts names the project
	yearSaid   int    // stated for dates that give none, 0 not
	set        Settings
	sched      *Schedule

	productRows map[At]int         // rows of product data and the products that they are of
	rowMates    map[At][]int       // further products of such a row
	rowParts    map[string]rowPart // by the product, which part of its row is its
	layers      map[int]bool       // products that are sheets, strips or fluids

	waiverWords  *waiverWords
	waiverSheets map[string]int  // sheets of waivers, with their heading row
	listSheets   map[string]bool // sheets of findings, in a marked copy

	whole        map[string]*workbook.Sheet // sheets that were parted
	legendBeside [][2]string                // short words and meanings of legends that stood beside a schedule

	stacks []*itemStack // schedules laid out with one row an item

	leftInRow map[At]string    // what remarks say of their rows, beside the products that they describe
	kin       map[string][]int // products of one name but for its last word, by that name

	noted []toldWall // walls that notes tell in words
}

// remembered is what was worked out before for the same texts and columns.
type remembered struct {
	heard     map[string]*heard                 // texts read before
	dates     memory[string, bool]              // whether a text is a date
	labels    memory[string, string]            // the slot of product data that a label names
	guessed   memory[columnHead, []guess]       // what a heading may stand for
	spoken    memory[string, bool]              // whether a text may be of a heading
	materials memory[string, bool]              // whether a text names a material and is no heading
	held      memory[string, bool]              // whether a text is a figure of a kind
	ambiguous memory[string, bool]              // whether a text is a date that could be read both ways
	unitsOf   memory[string, string]            // the unit of a kind that words begin with
	measured  memory[string, map[string]Figure] // what the site measured, by the words that tell it
	points    memory[string, []pointer]         // what a text may point at
}

func remember() remembered {
	return remembered{
		heard: map[string]*heard{}, dates: memory[string, bool]{}, labels: memory[string, string]{}, guessed: memory[columnHead, []guess]{}, spoken: memory[string, bool]{}, materials: memory[string, bool]{}, held: memory[string, bool]{}, ambiguous: memory[string, bool]{}, unitsOf: memory[string, string]{}, measured: memory[string, map[string]Figure]{}, points: memory[string, []pointer]{},
	}
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

// Read reads one workbook. It fails where no table of materials is found, upright or on
// its side.
func (rd *Reader) Read(b *workbook.Book, set Settings) (*Schedule, error) {
	s, err := rd.read(b, set)
	if err == nil && s.tellsWork() {
		return s, nil
	}
	book, turned := rd.standUp(b, set)
	if len(turned) == 0 {
		return s, err
	}
	up, problem := rd.read(book, set)
	if problem != nil {
		return s, err // its addresses are those of the workbook
	}
	for _, u := range turned {
		u.turnBack(up)
	}
	if s != nil && !up.turnedDays() {
		return s, nil
	}
	return up, nil
}

// turnedDays holds where a line on its side tells a day, as of data on products none does.
func (s *Schedule) turnedDays() bool {
	return slices.ContainsFunc(s.Lines, func(l Line) bool {
		return l.Turned && (l.Cells["install"] != "" || l.Cells["cover"] != "")
	})
}

// tellsWork holds for a schedule with a row of work: a list of walls alone is none.
func (s *Schedule) tellsWork() bool {
	return slices.ContainsFunc(s.Lines, func(l Line) bool {
		return slices.ContainsFunc(lineSlots, func(slot string) bool { return slot != "layers" && slot != "order" && l.Cells[slot] != "" }) || l.Cells["install"] != ""
	})
}

// read reads a workbook whose schedules stand upright.
func (rd *Reader) read(b *workbook.Book, set Settings) (*Schedule, error) {
	r := rd.begin(b.Path, set)
	b = r.partSheets(r.withoutWaivers(b))
	r.yearSaid = r.yearIn(b)
	r.unitsByName(b)
	r.glossed = r.glosses(b)
	r.oneRowEach(b)
	all, err := r.tables(b)
	if err != nil {
		return nil, err
	}
	r.namedAgain(all)
	if err := r.columnsNamed(b.Path, all); err != nil {
		return nil, err
	}
	if len(all) == 0 && len(r.noted) == 0 {
		return nil, noTable(b)
	}
	products, err := r.productBooks()
	if err != nil {
		return nil, err
	}
	all = append(all, products...)
	all = r.dealCards(b, all)
	r.knowColumns(b, all)
	if err := r.computed(b, all); err != nil {
		return nil, err
	}
	r.shortWords(b, all)
	r.each(all, kindProducts, r.describe)
	r.describeTold()
	r.knowKin()
	r.knowSeries()
	r.each(all, kindSchedule, r.primersByUse)
	r.each(all, kindSchedule, r.stripBeside)
	r.stems = r.tagStems()
	r.each(all, kindProducts, r.limits)
	r.limitsTold()
	r.outside(b, all)
	r.orderOfBook(all)
	r.coded = r.codesOnly(all)
	r.each(all, kindPours, r.pours)
	r.each(all, kindSchedule, r.partColumns)
	tellApart(all)
	for _, p := range r.sched.Products {
		r.lex.within(p.Name)
	}
	r.each(all, kindSchedule, r.lines)
	all = append(all, r.notedWalls()...)
	r.linePlaces()
	r.relatives()
	r.poured()
	r.spans()
	r.account(b, all)
	if len(r.sched.Lines) == 0 {
		return nil, noTable(b)
	}
	r.turnStacksBack()
	return r.sched, r.crowded()
}

// begin makes the reader of one workbook.
func (rd *Reader) begin(path string, set Settings) *reader {
	r := &reader{
		phrase: newPhrases(rd.phrase), vocab: rd.vocab, head: rd.head.remembering(), words: rd.words, walls: rd.walls, limitRules: rd.limits,
		remembered: remember(), lex: newLexicon(rd.vocab, rd.isResistance), marks: map[string]bool{}, marked: map[string][]int{}, short: map[string]string{}, letters: map[string]string{}, series: map[string]string{}, legend: map[string]string{},
		places: map[string]int{}, codes: map[string]bool{}, placeEnds: map[string]bool{}, toldRows: map[string][]int{}, cardRows: map[string][]int{}, toldLabels: map[string]string{}, dealtUnits: map[string]string{}, productRows: map[At]int{}, rowMates: map[At][]int{}, rowParts: map[string]rowPart{}, layers: map[int]bool{}, country: set.Country, set: set,
		waiverWords: rd.waived, waiverSheets: map[string]int{}, listSheets: map[string]bool{}, whole: map[string]*workbook.Sheet{}, leftInRow: map[At]string{}, kin: map[string][]int{},
		sched: &Schedule{
			File: path, Lines: []Line{}, Products: []Product{}, Pours: []Pour{},
			Project: Project{Places: []Fact{}, Limits: []Limit{}, Signals: []Said{}, Notes: []Fact{}, Indoor: []Room{}, Letters: []PairLetter{}},
			Reading: Reading{Sheets: []SheetRead{}, Tables: []Table{}, Unread: []Unread{}, Skipped: []Unread{}},
		},
	}
	for _, words := range rd.limits.Roles {
		for _, w := range words {
			r.lex.heads[w] = true
		}
	}
	return r
}

// knowColumns settles the columns that their headings do not tell, once the
// tags of the product data are known, and the units of bare figures.
func (r *reader) knowColumns(b *workbook.Book, all []*table) {
	r.joinKeys(all)
	r.explainColumns(b, all)
	r.each(all, kindProducts, r.contradicted)
	r.each(all, kindProducts, r.otherEnd)
	r.each(all, kindProducts, r.fillUnknown)
	r.nameProducts(all)
	r.each(all, kindSchedule, r.ledByWalls)
	r.each(all, kindSchedule, r.endsInWalls)
	r.each(all, kindSchedule, r.systemsOfWalls)
	r.each(all, kindSchedule, r.listedByType)
	var schedules []*table
	r.each(all, kindSchedule, func(t *table) { schedules = append(schedules, t) })
	walls := wallMarks(schedules)
	r.each(all, kindSchedule, func(t *table) { r.ledByListed(t, walls) })
	used := usedCodes(schedules)
	for i := range b.Sheets {
		if !b.Sheets[i].FeedsDropDowns() {
			r.toldProducts(&b.Sheets[i], onSheet(all, &b.Sheets[i]), used, walls)
		}
	}
	r.each(all, kindSchedule, r.notedKinds)
	r.describedInRows(schedules)
	r.primersByName(all)
	r.lex.done(r.head.begun)
	if len(r.sched.Products) == 0 {
		r.each(all, kindSchedule, r.ownTags)
	}
	r.each(all, kindSchedule, r.release)
	r.each(all, kindSchedule, r.foreignCodes)
	r.each(all, kindSchedule, r.layerNumbers)
	r.each(all, kindSchedule, r.layerRows)
	r.each(all, kindSchedule, r.productColumn)
	r.each(all, kindSchedule, r.tagColumn)
	r.each(all, kindSchedule, r.installedColumn)
	r.each(all, kindSchedule, r.jointSealants)
	r.each(all, kindProducts, r.airUnit)
	r.each(all, kindProducts, r.appliedTo)
	r.each(all, kindProducts, r.bedsOfData)
	r.each(all, kindProducts, r.primersByBed)
	r.each(all, kindSchedule, r.airUnit)
	r.each(all, kindSchedule, r.placedSheets)
	r.each(all, kindSchedule, r.leftmostMark)
	r.each(all, kindSchedule, r.ownMarks)
	r.each(all, kindSchedule, r.siteReviews)
	r.each(all, kindSchedule, r.actualDays)
	r.each(all, kindSchedule, r.otherPlaces)
	r.each(all, kindSchedule, r.wallColumn)
	r.each(all, kindSchedule, r.lapsApart)
	r.each(all, kindSchedule, r.sheetsApart)
	r.each(all, kindSchedule, r.contradicted)
	r.each(all, kindSchedule, r.fillUnknown)
	r.each(all, kindSchedule, r.offers)
	r.each(all, kindSchedule, r.faceTemps)
	r.each(all, kindSchedule, r.dayEnds)
	r.each(all, kindSchedule, r.ageOfRow)
	r.each(all, kindSchedule, r.bands)
	r.each(all, kindSchedule, r.countedBeside)
	r.each(all, kindSchedule, r.actualDays) // of what was planned by the dates under it: "Plan: in", "Actual: in"
	r.likeRepeated(all)
	r.each(all, kindSchedule, r.doneSheets)
	r.each(all, kindSchedule, r.bedColumn)
	r.each(all, kindSchedule, r.conditionColumn)
	r.each(all, kindSchedule, r.againstColumn)
	r.each(all, kindSchedule, r.primerBesideBed)
	r.each(all, kindSchedule, r.insulationColumn)
	for _, t := range all {
		r.units(t)
	}
	r.missingUnits(all)
	r.lapUnits(all)
}

// shortWords reads what notes say of the office's short words, which are no marks.
func (r *reader) shortWords(b *workbook.Book, all []*table) {
	r.each(all, kindSchedule, r.collectMarks)
	for i := range b.Sheets {
		r.abbreviations(&b.Sheets[i], onSheet(all, &b.Sheets[i]))
	}
	for _, entry := range r.legendBeside {
		r.defineEach(entry[0], entry[1])
	}
	r.each(all, kindSchedule, r.shelterCodes)
}

// outside reads what stands around the tables: notes and title blocks, with the
// marks and places that they may speak of.
func (r *reader) outside(b *workbook.Book, all []*table) {
	clear(r.heard) // what looked like a tag may be a mark
	r.each(all, kindSchedule, r.collectPlaces)
	r.each(all, kindSchedule, r.collectCodes)
	r.each(all, kindSchedule, r.sites)
	for i := range b.Sheets {
		if !b.Sheets[i].FeedsDropDowns() {
			r.projectFacts(&b.Sheets[i], onSheet(all, &b.Sheets[i]))
		}
	}
	r.each(all, kindSchedule, r.wallLimits)
}

// tables finds and classifies the tables of every sheet.
func (r *reader) tables(b *workbook.Book) ([]*table, error) {
	var all []*table
	for i := range b.Sheets {
		s := &b.Sheets[i]
		if s.Kind != workbook.Worksheet || s.FeedsDropDowns() {
			continue
		}
		found, err := r.findTables(s)
		if err != nil {
			return nil, fmt.Errorf("%s: %s: %w", b.Path, s.Name, err)
		}
		r.unitNotes(s, len(found) == 0)
		for _, t := range found {
			t.id = tableID(all, s.Name, t)
			r.classify(t)
			r.cutCards(t)
			r.wallTypes(t)
			all = append(all, t)
		}
		if walls := r.listedWalls(s, found); walls != nil {
			walls.id = fmt.Sprintf("%s#%d", s.Name, walls.head[0])
			all = append(all, walls)
		}
	}
	return all, nil
}

// tableID is the id of a table, by its heading row; of two in the same rows the later one
// goes by its first column too.
func tableID(all []*table, sheet string, t *table) string {
	id := fmt.Sprintf("%s#%d", sheet, t.head[0])
	if slices.ContainsFunc(all, func(o *table) bool { return o.id == id }) {
		id += workbook.ColumnName(t.nums[0])
	}
	return id
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
