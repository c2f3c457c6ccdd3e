package schedule

import (
	"fmt"
	"io/fs"

	"abut/internal/knowledge"
	"abut/internal/regexp"
)

// wordlists are the words by which a schedule says nothing, the same again, or
// which job a material has; from policies/knowledge/reading.json.
type wordlists struct {
	blank, ditto, none map[string]bool
	noLimit            []string
	sameAs             []*regexp.Regexp
	productAs          []*regexp.Regexp // "AB-1, winter grade" in product data
	gradeOf            *regexp.Regexp   // "winter grade of AB-1" there
	roleByClass        map[string]string
	roleByFamily       map[string]string
	flashing           []string
	alsoMeans          map[string][]string
	abbreviations      map[string]bool
	openers            map[string]bool // words that open a sentence, also after an abbreviation
	sameLead           *regexp.Regexp  // "Same, cold-weather compound": the row above, and more
	noteNumber         *regexp.Regexp  // what stands before a note: "1.", "N2"
	definition         *regexp.Regexp  // an abbreviation and what it stands for, in a note
	saidOf             *regexp.Regexp  // words that go on from a short word and explain it not: "RO is coated first"
	saidWhere          *regexp.Regexp  // where a thing is, up to the next comma: "EPDM is stuck to the wood curb"
	unitLabels         map[string]bool // what stands beside the units of the whole workbook
	unitOf             map[string][]string
	sheetUnits         map[string]bool   // words of a title block that give the unit of a whole sheet
	beside             map[string]bool   // relations that put a material beside a bed, not under the sheet
	singles            map[string]bool   // traits that single out a family from all that share its chemistry
	values             map[string]string // slots of the figures that a column of values holds, by kind
	thick, serves      []string          // words of a thickness, of a temperature in service
	wholes             []string          // words of what is tested for air as a whole
	status             *regexp.Regexp    // what stands before the day up to which a log is kept
	openLead           *regexp.Regexp    // what stands before the day on which a remark says that the sheet is open
	stillOpen          map[string]bool   // in the place of a cover date: not covered by that day
	stoodIn            *regexp.Regexp    // "# furnished in lieu": a product that came in place of the row's own
	stoodNot           *regexp.Regexp    // and words by which it is only asked for, or has been answered
	sameOffered        []string          // words of an offer that is what was specified: "same"
	asSpecified        *regexp.Regexp    // "as spec", "no change": the product that was specified
	proviso            *regexp.Regexp    // in what a product is for: a trial, a letter or a gap comes first
	statePrimer        *regexp.Regexp    // opens brackets of a state and the primer it takes: "(damp with PR-3)"
	primerIf           *regexp.Regexp    // a primer and the age of concrete that it is for: "PR-4 if conc. is 3 to 7 d old"
	withPrimer         *regexp.Regexp    // a figure and the primer it holds with: "-5 with PR-2"
	youngBeds          []string          // beds that must be of an age before a product goes on
	laps               []string          // words that go with the figure of a lap
	roomHeat           *regexp.Regexp    // "penthouse, heated": the heat of the building
	headed             map[string]bool   // signals that a heading over rows gives to each of them
	accept             acceptanceWords
	readings           readingWords
	prose              proseWords
	coverWords         *regexp.Regexp    // what is told of a day says that something comes over the work
	coverOpen          *regexp.Regexp    // a cover is told without its day
	told               []toldOpening     // what the sentences of a note on a product open with, longest first
	columnNames        map[string]string // what the materials of a column are: "primer" makes one of "acrylic"
	statedYear         *regexp.Regexp    // a year that stands for all dates without one
	fraction           *regexp.Regexp    // "3/8": no day, where nothing else says that it is one
	sameAbove          *regexp.Regexp    // "sim. to row above"
	details            *regexp.Regexp    // "Details": heads rows that are no layers
	coveringRow        *regexp.Regexp    // "wool, see W-6"
	lookedAhead        *regexp.Regexp    // "substrate accepted": a look before the work
	thickBefore        *regexp.Regexp    // what may stand between a thickness and the layer it is of: "4 in. rigid wool"
	thickAfter         *regexp.Regexp    // and between a layer and its thickness: "wool, 4 in."
	thickRest          *regexp.Regexp    // what may stand after the two: "wool 4 in. outboard"
	thickApart         *regexp.Regexp    // words that make a length before a board a distance: "4 in. above the wool"
	namesRow           *regexp.Regexp    // words by which a bed is that of another row: "block, line 12"
	coverSlips         *regexp.Regexp    // what a remark says comes over the work
	slipsBy            *regexp.Regexp    // "add # to the date": so much later than the row's date
	coverMoved         *regexp.Regexp    // "brick now", before the day to which what comes over the work was put off
	movedNot           *regexp.Regexp    // words of a day that is no new one, or of another cover that stands
	slipsNot           *regexp.Regexp    // "already", "delivery": the date stands, or it is of other work
	ageTold            *regexp.Regexp    // "concrete age #"
	bareUntil          *regexp.Regexp    // "stood open until", before the day on which it was covered
	laidBefore         *regexp.Regexp    // after a sheet that lies there before the work: "in place"
	askedHeading       *regexp.Regexp    // over what the project asks for: "Requirement"
	openFromStart      *regexp.Regexp    // "days open run from the first day of the work"
	caseLead           *regexp.Regexp    // "Below 5 °C": what follows holds in that case
	noteHeading        *regexp.Regexp    // a cell over notes, and one over their numbers
	noteNumbers        *regexp.Regexp
	everyWall          *regexp.Regexp // "anywhere": said of all walls, after some were named
	wallHeading        *regexp.Regexp // a line over codes of walls and what each is made of
	wideBoth           *regexp.Regexp // "above and below grade": everywhere
	wideLead           *regexp.Regexp // "Above grade": what nearly all of the job is
	caseWord           *regexp.Regexp // "when", "or": what follows holds in some cases
	byOthers           *regexp.Regexp // "by roofer": what others bring
	projectName        *regexp.Regexp // "Project: ..." in a title block
	asides             asideWords
	figures            wordFigures
	toldByKind         map[string]string // slots of the figures that stand with what the product is
}

type acceptanceWords struct {
	None   []string `json:"none"`
	Only   []string `json:"only"`
	Rest   []string `json:"rest"`
	Primer []string `json:"primer"`
	Not    []string `json:"not"`
	Fine   []string `json:"fine"`
	// Words that deny those for fine: "not tested with".
	NotFine []string `json:"not_fine"`
	These   string   `json:"these"` // for the beds named before: "on these and on steel"
	these   *regexp.Regexp
	Off     []string `json:"off"`
	Joined  []string `json:"joined"` // before what it may be joined to, whatever the sentence bars
	// Before what it does not hold on, and the film on the face of sheets in other words
	// than those of a sheet of it: "no bond to", "PE / HDPE film face".
	Unjoined string `json:"unjoined"`
	unjoined *regexp.Regexp
	NotHeld  string `json:"not_held"` // between what does not hold and the face on which it does not
	notHeld  *regexp.Regexp
	FilmFace string `json:"film_face"`
	filmFace *regexp.Regexp
	// Before and after what is barred in one order only: "never over PVC", "never LF-1 over it".
	LiesOver  string `json:"lies_over"`
	liesOver  *regexp.Regexp
	LiesUnder string `json:"lies_under"`
	liesUnder *regexp.Regexp
	ElseAs    string `json:"else_as"` // before the product whose list holds here too
	elseAs    *regexp.Regexp
	Companion string `json:"companion"` // before the product that the list names as made for it: "edge sealant", "seal laps with"
	companion *regexp.Regexp
	NotOn     string `json:"not_on"` // before what the list of beds bars: "not on"
	notOn     *regexp.Regexp
	NotIn     string `json:"not_in"` // a bracket that bars what its group names
	notIn     *regexp.Regexp
	// Short forms that are plain only as a word of a list of substrates.
	Short  map[string]string `json:"short"`
	State  string            `json:"state"` // words for the state of a bed before it: "dry ply"
	inList *regexp.Regexp
	// Words that take what they name out of a list: in a bracket, before or after it, and
	// between two of the list.
	Excepted struct {
		Lead   string `json:"lead"`
		End    string `json:"end"`
		Within string `json:"within"`
		OfAll  string `json:"of_all"` // the same after words for all of a sort: "any substrate but"
		lead   *regexp.Regexp
		end    *regexp.Regexp
		within *regexp.Regexp
		ofAll  *regexp.Regexp
	} `json:"excepted"`
	Passing string `json:"passing"` // states of a bed that pass
	passing *regexp.Regexp
	Parts   string `json:"parts"` // a separator that the list asks for, with # around its material
	parts   *regexp.Regexp
	Heat    string `json:"heat"` // "not under metal roofs" tells of heat and not of a neighbor
	heat    *regexp.Regexp
	TouchNo string `json:"touch_no"` // in notes: leads on to what a product may not touch
	touchNo *regexp.Regexp
	Denied  string `json:"denied"` // leads on to what is barred: "no solvent primer" is none without solvent
	denied  *regexp.Regexp
	// what a product is to be parted from, with # around it: "plate between it and #"
	Parted string `json:"parted"`
	parted *regexp.Regexp
	// opens what needs no primer, and bars nothing: "no primer on"
	Unprimed string `json:"unprimed"`
	unprimed *regexp.Regexp
	Gone     string `json:"gone"` // after what must be taken off a bed: "form oil off"
	gone     *regexp.Regexp
	Harm     string `json:"harm"` // a bracket that gives the reason: "(eats the glue)"
	harm     *regexp.Regexp
	Carrier  string `json:"carrier"` // what a primer is made of: "solvent base"
	carrier  *regexp.Regexp
	AsOther  string `json:"as_other"` // before the product whose primer it takes: "per"
	asOther  *regexp.Regexp
	Consent  string `json:"consent"` // what makers agreed to in writing, which tells of no primer
	consent  *regexp.Regexp
	Meant    []string `json:"meant"`
	Unless   []string `json:"unless"`
	Laps     []string `json:"laps"`
}

// readingFile is the layout of knowledge/reading.json.
type readingFile struct {
	Reading struct {
		Blank         []string            `json:"blank"`
		NoLimit       []string            `json:"no_limit"`
		None          []string            `json:"none"`
		Ditto         []string            `json:"ditto"`
		SameAs        []string            `json:"same_as"`
		ProductAs     []string            `json:"product_as"`
		GradeOf       string              `json:"grade_of"`
		SameLead      string              `json:"same_lead"`
		RoleByClass   map[string]string   `json:"roles_by_class"`
		RoleByFamily  map[string]string   `json:"roles_by_family"`
		Flashing      []string            `json:"flashing_words"`
		AlsoMeans     map[string][]string `json:"also_means"`
		Abbreviations []string            `json:"abbreviations"`
		Openers       []string            `json:"sentence_openers"`
		Beside        []string            `json:"beside"`
		SheetUnits    []string            `json:"sheet_units"`
		UnitLabels    []string            `json:"unit_labels"`
		UnitOf        map[string][]string `json:"unit_of"`
		Definition    string              `json:"definition"`
		SaidOf        string              `json:"said_of"`
		SaidWhere     string              `json:"said_where"`
		NoteNumber    string              `json:"note_number"`
		Values        map[string]string   `json:"values_by_kind"`
		Thick         []string            `json:"thickness_words"`
		Serves        []string            `json:"service_words"`
		Wholes        []string            `json:"whole_words"`
		YoungBeds     []string            `json:"young_beds"`
		Laps          []string            `json:"lap_words"`
		Headed        []string            `json:"heading_signals"`
		RoomHeat      string              `json:"room_heat"`
		Singles       []string            `json:"singling_traits"`
		Acceptance    acceptanceWords     `json:"acceptance"`
		Readings      readingWords        `json:"readings"`
		Told          map[string][]string `json:"told"`
		Prose         proseWords          `json:"prose"`
		CoverWords    string              `json:"cover_words"`
		CoverOpen     string              `json:"cover_open"`
		StatedYear    string              `json:"stated_year"`
		Fraction      string              `json:"fraction"`
		Above         string              `json:"above"`
		Details       string              `json:"details"`
		CoveringRow   string              `json:"covering_row"`
		OpenFromStart string              `json:"open_from_start"`
		LaidBefore    string              `json:"laid_before"`
		AskedHeading  string              `json:"asked_heading"`
		LookedAhead   string              `json:"looked_ahead"`
		BareUntil     string              `json:"bare_until"`
		CoverSlips    string              `json:"cover_slips"`
		SlipsBy       string              `json:"slips_by"`
		SlipsNot      string              `json:"slips_not"`
		CoverMoved    string              `json:"cover_moved"`
		MovedNot      string              `json:"moved_not"`
		AgeTold       string              `json:"age_told"`
		NamesRow      string              `json:"names_row"`
		ThickBefore   string              `json:"thick_before"`
		ThickAfter    string              `json:"thick_after"`
		ThickRest     string              `json:"thick_rest"`
		ThickApart    string              `json:"thick_apart"`
		WithPrimer    string              `json:"with_primer"`
		PrimerIf      string              `json:"primer_if"`
		Proviso       string              `json:"proviso"`
		StatePrimer   string              `json:"state_primer"`
		StoodIn       string              `json:"stood_in"`
		StoodNot      string              `json:"stood_in_not"`
		AsSpecified   string              `json:"as_specified"`
		SameOffered   []string            `json:"same_offered"`
		Status        statusWords         `json:"status"`
		ProjectName   string              `json:"project_name"`
		ByOthers      string              `json:"by_others"`
		CaseLead      string              `json:"case_lead"`
		CaseWord      string              `json:"case_word"`
		EveryWall     string              `json:"every_wall"`
		WideLead      string              `json:"wide_lead"`
		WideBoth      string              `json:"wide_both"`
		NoteHeading   string              `json:"note_heading"`
		WallHeading   string              `json:"wall_heading"`
		NoteNumbers   string              `json:"note_numbers"`
		Asides        asideWords          `json:"asides"`
		Figures       wordFigures         `json:"figures_named"`
		ToldByKind    map[string]string   `json:"told_by_kind"`
		ColumnNames   map[string]string   `json:"column_names"`
	} `json:"reading"`
}

func loadWordlists(fsys fs.FS) (*wordlists, error) {
	var file readingFile
	if err := knowledge.Read(fsys, "reading words", "knowledge/reading.json", &file); err != nil {
		return nil, err
	}
	f := &file.Reading
	w := &wordlists{
		told: openings(f.Told), prose: f.Prose, asides: f.Asides, figures: f.Figures, toldByKind: f.ToldByKind, columnNames: f.ColumnNames,
		sameOffered: f.SameOffered,
		blank:       set(f.Blank), ditto: set(f.Ditto), none: set(f.None), noLimit: f.NoLimit,
		roleByClass: f.RoleByClass, roleByFamily: f.RoleByFamily, flashing: f.Flashing, alsoMeans: f.AlsoMeans,
		abbreviations: set(f.Abbreviations), openers: set(f.Openers), beside: set(f.Beside), unitLabels: set(f.UnitLabels), unitOf: f.UnitOf, sheetUnits: set(f.SheetUnits), singles: set(f.Singles), headed: set(f.Headed), stillOpen: set(f.Status.Open), laps: f.Laps, youngBeds: f.YoungBeds, values: f.Values, thick: f.Thick, serves: f.Serves, wholes: f.Wholes, accept: f.Acceptance,
	}
	if err := w.compile(&file); err != nil {
		return nil, fmt.Errorf("reading words knowledge/reading.json: %w", err)
	}
	return w, nil
}

// compile turns the patterns of the file into expressions.
func (w *wordlists) compile(file *readingFile) error {
	f := &file.Reading
	for _, one := range []struct {
		name, pattern string
		into          **regexp.Regexp
	}{
		{"cover_words", "(?i)" + f.CoverWords, &w.coverWords},
		{"cover_open", "(?i)" + f.CoverOpen, &w.coverOpen},
		{"stated_year", "(?i)" + f.StatedYear, &w.statedYear},
		{"fraction", f.Fraction, &w.fraction},
		{"above", "(?i)" + f.Above, &w.sameAbove},
		{"details", "(?i)" + f.Details, &w.details},
		{"covering_row", "(?i)" + f.CoveringRow, &w.coveringRow},
		{"open_from_start", "(?i)" + f.OpenFromStart, &w.openFromStart},
		{"laid_before", f.LaidBefore, &w.laidBefore},
		{"asked_heading", f.AskedHeading, &w.askedHeading},
		{"looked_ahead", "(?i)" + f.LookedAhead, &w.lookedAhead},
		{"bare_until", "(?i)" + f.BareUntil, &w.bareUntil},
		{"names_row", "(?i)" + f.NamesRow, &w.namesRow},
		{"thick_before", "(?i)" + f.ThickBefore, &w.thickBefore},
		{"thick_after", "(?i)" + f.ThickAfter, &w.thickAfter},
		{"thick_rest", "(?i)" + f.ThickRest, &w.thickRest},
		{"thick_apart", "(?i)" + f.ThickApart, &w.thickApart},
		{"room_heat", f.RoomHeat, &w.roomHeat},
		{"status", "(?i)" + f.Status.Before, &w.status},
		{"grade_of", f.GradeOf, &w.gradeOf},
		{"status.lead", "(?i)" + f.Status.Lead, &w.openLead},
		{"with_primer", "(?i)" + f.WithPrimer, &w.withPrimer},
		{"primer_if", "(?i)" + f.PrimerIf, &w.primerIf},
		{"state_primer", "(?i)" + f.StatePrimer, &w.statePrimer},
		{"as_specified", "(?i)" + f.AsSpecified, &w.asSpecified},
		{"proviso", "(?i)" + f.Proviso, &w.proviso},
		{"stood_in", "(?i)" + f.StoodIn, &w.stoodIn},
		{"stood_in_not", "(?i)" + f.StoodNot, &w.stoodNot},
		{"cover_slips", "(?i)" + f.CoverSlips, &w.coverSlips},
		{"slips_by", "(?i)" + f.SlipsBy, &w.slipsBy},
		{"slips_not", "(?i)" + f.SlipsNot, &w.slipsNot},
		{"cover_moved", "(?i)" + f.CoverMoved, &w.coverMoved},
		{"moved_not", "(?i)" + f.MovedNot, &w.movedNot},
		{"age_told", "(?i)" + f.AgeTold, &w.ageTold},
		{"by_others", "(?i)" + f.ByOthers, &w.byOthers},
		{"case_lead", "(?i)" + f.CaseLead, &w.caseLead},
		{"case_word", "(?i)" + f.CaseWord, &w.caseWord},
		{"every_wall", "(?i)" + f.EveryWall, &w.everyWall},
		{"wide_lead", "(?i)" + f.WideLead, &w.wideLead},
		{"wide_both", "(?i)" + f.WideBoth, &w.wideBoth},
		{"note_heading", "(?i)" + f.NoteHeading, &w.noteHeading},
		{"wall_heading", "(?i)" + f.WallHeading, &w.wallHeading},
		{"note_numbers", "(?i)" + f.NoteNumbers, &w.noteNumbers},
		{"project_name", "(?i)" + f.ProjectName, &w.projectName},
		{"asides: film", "(?i)" + f.Asides.Film, &w.asides.film},
		{"asides: goes", "(?i)" + f.Asides.Goes, &w.asides.goes},
		{"note_number", f.NoteNumber, &w.noteNumber},
		{"same_lead", "(?i)" + f.SameLead, &w.sameLead},
		{"definition", f.Definition, &w.definition},
		{"said_of", f.SaidOf, &w.saidOf},
		{"said_where", f.SaidWhere, &w.saidWhere},
	} {
		var err error
		if *one.into, err = regexp.Compile(one.pattern); err != nil {
			return fmt.Errorf("%s: %w", one.name, err)
		}
	}
	return w.compileLists(f.ProductAs, f.SameAs, f.Readings)
}

// compileLists compiles what has several patterns.
func (w *wordlists) compileLists(productAs, sameAs []string, readings readingWords) error {
	var err error
	if err = w.accept.compile(); err != nil {
		return fmt.Errorf("acceptance: %w", err)
	}
	if err = w.prose.compile(); err != nil {
		return fmt.Errorf("prose: %w", err)
	}
	if err = w.figures.compile(); err != nil {
		return fmt.Errorf("figures_named: %w", err)
	}
	for i := range w.asides.Bare {
		if err = w.asides.Bare[i].compile(); err != nil {
			return fmt.Errorf("asides: bare %d: %w", i+1, err)
		}
	}
	if w.productAs, err = compileAll(productAs); err != nil {
		return fmt.Errorf("product_as: %w", err)
	}
	if w.sameAs, err = compileAll(sameAs); err != nil {
		return fmt.Errorf("same_as: %w", err)
	}
	if err := readings.compile(); err != nil {
		return fmt.Errorf("readings: %w", err)
	}
	w.readings = readings
	return nil
}

// compile turns the patterns of acceptances into expressions.
func (a *acceptanceWords) compile() error {
	for _, one := range []struct {
		name, pattern string
		into          **regexp.Regexp
	}{
		{"not_in", a.NotIn, &a.notIn},
		{"excepted.lead", a.Excepted.Lead, &a.Excepted.lead},
		{"excepted.end", a.Excepted.End, &a.Excepted.end},
		{"excepted.within", a.Excepted.Within, &a.Excepted.within},
		{"excepted.of_all", a.Excepted.OfAll, &a.Excepted.ofAll},
		{"not_on", a.NotOn, &a.notOn},
		{"unjoined", a.Unjoined, &a.unjoined},
		{"not_held", a.NotHeld, &a.notHeld},
		{"film_face", a.FilmFace, &a.filmFace},
		{"state", fmt.Sprintf(inListAs, a.State), &a.inList},
		{"lies_over", a.LiesOver, &a.liesOver},
		{"lies_under", a.LiesUnder, &a.liesUnder},
		{"else_as", a.ElseAs, &a.elseAs},
		{"companion", a.Companion, &a.companion},
		{"passing", a.Passing, &a.passing},
		{"heat", a.Heat, &a.heat},
		{"denied", a.Denied, &a.denied},
		{"touch_no", a.TouchNo, &a.touchNo},
		{"carrier", a.Carrier, &a.carrier},
		{"as_other", a.AsOther, &a.asOther},
		{"consent", a.Consent, &a.consent},
		{"gone", a.Gone, &a.gone},
		{"unprimed", a.Unprimed, &a.unprimed},
		{"parted", a.Parted, &a.parted},
		{"harm", a.Harm, &a.harm},
		{"these", a.These, &a.these},
		{"parts", a.Parts, &a.parts},
	} {
		var err error
		if *one.into, err = regexp.Compile("(?i)" + one.pattern); err != nil {
			return fmt.Errorf("%s: %w", one.name, err)
		}
	}
	return nil
}
