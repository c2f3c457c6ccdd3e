// Package schedule turns the grid of a workbook into schedule lines, product
// data and project facts. It finds the tables, knows their columns, fills
// marks and dittos down, and keeps the address of everything it read.
package schedule

// At is the address of a cell or row: sheet is "" for csv, cell is "" where a
// whole row is meant.
type At struct {
	Sheet string `json:"sheet"`
	Row   int    `json:"row"`
	Cell  string `json:"cell,omitempty"`
}

// Schedule is everything read from one workbook.
type Schedule struct {
	File     string    `json:"file"`
	Project  Project   `json:"project"`
	Lines    []Line    `json:"lines"`
	Products []Product `json:"products"`
	Pours    []Pour    `json:"pours"`
	Reading  Reading   `json:"reading"`
	Waivers  []Waiver  `json:"waivers"`
}

// Project holds what title blocks and notes say of the whole job.
type Project struct {
	Name    string  `json:"name"`
	Places  []Fact  `json:"places"` // texts that may name the place, best first
	Limits  []Limit `json:"limits"`
	Signals []Said  `json:"signals"` // conditions stated for the whole job
	Notes   []Fact  `json:"notes"`   // every note, for reference
	Indoor  []Room  `json:"indoor"`

	Letters []PairLetter `json:"letters"` // letters that the notes tell of, for pairs of products
}

// PairLetter is a letter at hand by which each of some products may meet each of others.
type PairLetter struct {
	Products []string `json:"products"` // their ids
	With     []Target `json:"with"`
	Text     string   `json:"text"`
	At       At       `json:"at"`
}

// Fact is a text with its address.
type Fact struct {
	Text string `json:"text"`
	At   At     `json:"at"`
}

// Room is a stated indoor condition; Scope is the place or mark it is stated
// for, "" for the whole project.
type Room struct {
	Scope string   `json:"scope"`
	TempC *float64 `json:"temp_c"`
	RH    *float64 `json:"rh"` // 0..1
	Text  string   `json:"text"`
	At    At       `json:"at"`
}

// Limit is a requirement stated for the project or one line.
// Kind is one of air_lsm2, thickness_mm, voc_gl, vapor_ng, lap_mm,
// concrete_age_days, service_c, same_day, termination, exposure_days,
// no_curing_compound, no_acid_cure, filled_cells.
type Limit struct {
	Kind  string   `json:"kind"`
	Min   *float64 `json:"min"`
	Max   *float64 `json:"max"`
	Roles []string `json:"roles"` // roles of material meant, empty: all
	Keys  []string `json:"keys"`  // families or traits meant, empty: all
	Scope string   `json:"scope"` // words of the place it is stated for, "" all
	Over  []string `json:"over"`  // families or products laid over what the keys name: "concrete 5 % below the liquid", empty: all
	When  []string `json:"when"`  // signals that must hold on the line (dark_color, laid_direct)
	// Letter is the mark of a maker's letter that raises the limit of its product's
	// data, "letter" where it has none; "" for what the project itself asks.
	Letter string `json:"letter"`
	Text   string `json:"text"`
	At     At     `json:"at"`
	// said are the roles that its words name and that narrow it only beside a limit
	// that is said of others.
	said []string
	// excepted: told after what its sentence takes out of what it asks for.
	excepted bool
	// bed is the key of what its words say that the material lies on.
	bed string
	// dry: told of a dry film, which only what is put on wet has.
	dry bool
}

// Said is a signal (a condition told in words) with where it stands.
// No is true where the words deny it.
type Said struct {
	ID   string `json:"id"`
	No   bool   `json:"no"`
	Text string `json:"text"`
	Slot string `json:"slot"` // the column it stands in
	At   At     `json:"at"`
}

// Line is one row of a schedule.
type Line struct {
	ID      string            `json:"id"` // sheet!row; of what came from a shop, in a row that tells more: sheet!row shop
	Sheet   string            `json:"sheet"`
	Row     int               `json:"row"`
	Table   string            `json:"table"` // id of the table it stands in
	Mark    string            `json:"mark"`  // item, detail or wall type
	Group   string            `json:"group"` // wall type or divider above it
	Refs    []string          `json:"refs"`  // drawings, details and rows of other papers that it answers to
	Order   string            `json:"order"` // layer number within the group
	Place   string            `json:"place"`
	Role    string            `json:"role"` // membrane, flashing, primer, sealant, insulation, ..., other
	Hidden  bool              `json:"hidden"`
	Turned  bool              `json:"turned,omitempty"` // its cells are in no one row: row is that of the block's heading, or of its first line
	Struck  bool              `json:"struck"`           // the whole row is struck out or deleted
	Cells   map[string]string `json:"cells"`            // slot -> cell address
	Texts   map[string]string `json:"texts"`            // slot -> the author's words
	Items   []Item            `json:"items"`
	Figures map[string]Figure `json:"figures"` // thickness_mm, lap_mm, apply_min_c, ...
	Dates   map[string]Day    `json:"dates"`   // install, finish, cover, prime, placed, inspected, sent, returned, approved, delivered, unit_set, washed, unwrapped
	Spans   map[string]Span   `json:"spans"`   // bare_days, open_days, concrete_age_days, prime_gap_days, drying_days, work_days, site_days, seen_days, unseen_days
	Signals []Said            `json:"signals"`
	Layers  []Item            `json:"layers"` // a build-up told across the columns of the row, room side first

	columns map[string]string // what it says under each column, by its letter
}

// Span is a count of days between two dates of a line; a range where a date
// is itself a span. Last is the count from the end of the first span to the
// end of the second, which is what limits are held against.
type Span struct {
	Min  int    `json:"min"`
	Max  int    `json:"max"`
	Last int    `json:"last"`
	From string `json:"from"`
	To   string `json:"to"`
}

// Item is one material named in a line.
type Item struct {
	ID       string   `json:"id"`   // line id + "/" + number
	Slot     string   `json:"slot"` // material, substrate, primer, sealant, touches, left, right, top, behind, edge, remark, over, layer
	Text     string   `json:"text"`
	Tag      string   `json:"tag"`     // the tag or product name as written
	Product  string   `json:"product"` // id of the product that the tag stands for
	Family   string   `json:"family"`
	Name     string   `json:"name"`
	Class    string   `json:"class"`
	Traits   []string `json:"traits"`
	Keys     []string `json:"keys"` // family and traits: what judgements look up
	Relation string   `json:"relation"`
	Side     string   `json:"side"`     // of the relation: subject, object, "" neither
	Polarity string   `json:"polarity"` // yes, no, removed, conditional
	ClearMM  *float64 `json:"clear_mm"`
	Clause   string   `json:"clause"`  // the words around it
	Signals  []string `json:"signals"` // signals in the same clause
	At       At       `json:"at"`
	Unknown  bool     `json:"unknown"`
	Primes   string   `json:"primes,omitempty"`       // of a primer: the cell of the one substrate that it is for
	ThickMM  *float64 `json:"thickness_mm,omitempty"` // in a build-up told in one cell: its own thickness there
	RM2KW    *float64 `json:"r_m2kw,omitempty"`       // and its thermal resistance, m²·K/W

	noun string // the noun after a tag: "nailer" of "W-1 nailer"
}

// Figure is a quantity in the unit that its key names.
type Figure struct {
	Min      *float64 `json:"min"`
	Max      *float64 `json:"max"`
	NoLimit  bool     `json:"no_limit"`
	Text     string   `json:"text"`
	Unit     string   `json:"unit"`
	Disagree bool     `json:"disagree"` // two units in one cell that do not agree
	Other    *float64 `json:"other"`    // the second figure, same unit as Min
	Assumed  bool     `json:"assumed"`  // the unit was taken from the heading
	Problem  string   `json:"problem"`  // "", not-a-number, no-unit, impossible
	At       At       `json:"at"`
}

// Day is a date or span of days. State: day, span, impossible, unknown, none,
// open, implied, missing.
type Day struct {
	From  string `json:"from"` // yyyy-mm-dd or ""
	To    string `json:"to"`
	Text  string `json:"text"`
	State string `json:"state"`
	Ref   string `json:"ref"`  // what an implied date was taken from: a line id
	Note  string `json:"note"` // how the day/month order was decided, weekday mismatch
	At    At     `json:"at"`

	relation string // of a date that hangs on other work: with, after, before
	offset   int    // days told ("2 days after layer 4")
}

// Product is one row of product data.
type Product struct {
	ID      string            `json:"id"` // tag, or tag@sheet!row for a repeated tag
	Tag     string            `json:"tag"`
	Name    string            `json:"name"`
	Sheet   string            `json:"sheet"`
	Row     int               `json:"row"`
	Role    string            `json:"role"`
	Family  string            `json:"family"`
	Class   string            `json:"class"`
	Traits  []string          `json:"traits"`
	Keys    []string          `json:"keys"`
	Cells   map[string]string `json:"cells"`
	Texts   map[string]string `json:"texts"`
	Figures map[string]Figure `json:"figures"` // thickness_mm, apply_min_c, apply_max_c, service_max_c, exposure_days, air_lsm2, vapor_ng, voc_gl
	Accepts []Acceptance      `json:"accepts"`
	KeepOff []Target          `json:"keep_off"`
	Suits   []Target          `json:"suits"`   // what a primer or sealant is for
	Signals []Said            `json:"signals"` // same_day, keep_from_freezing, may_stay_exposed, never_exposed
	Repeats bool              `json:"repeats"` // the tag stands more than once

	maker   string // the first word of its tag, folded
	section string // the words that head its rows in the table
	beside  string // what the row says under a heading that tells nothing, or a name
	kind    string // and under that of the kind, as it is written
	coined  bool   // its name may be any word: no list has it
	byRow   bool   // only the chemistry is told: the rest of its row made it a sheet or a sealant
	home    *table // that it was registered from, nil of a card or note
}

// Acceptance is a substrate that product data accepts, with its primers.
// Primer is none, listed (one of Primers), always (a primer, not named), or unsaid.
type Acceptance struct {
	Target
	Primer  string   `json:"primer"`
	Primers []string `json:"primers"` // product ids or tags
	Only    bool     `json:"only"`    // "with PR-2 only"
}

// Target names materials by family and trait keys or by products.
type Target struct {
	Text     string   `json:"text"`
	Keys     []string `json:"keys"`
	Products []string `json:"products"`
	Except   bool     `json:"except"`         // said to be fine ("EPDM OK") or to be avoided ("not on foam") against the list it stands in
	Lies     string   `json:"lies,omitempty"` // of what is barred in one order only: how the product must not lie to it: over, under
	At       At       `json:"at"`
}

// Pour is a concrete placement told on a sheet of its own.
type Pour struct {
	Name    string `json:"name"`
	Placed  Day    `json:"placed"`
	Signals []Said `json:"signals"`
	At      At     `json:"at"`
}

// Reading says what was understood and what was not.
type Reading struct {
	Sheets  []SheetRead `json:"sheets"`
	Tables  []Table     `json:"tables"`
	Unread  []Unread    `json:"unread"`
	Skipped []Unread    `json:"skipped"`
	Cells   int         `json:"cells"`      // non-empty cells of schedule tables
	Known   int         `json:"understood"` // of these, understood
}

// SheetRead is what one sheet was taken for: schedule, products, pours, notes,
// waivers, words (of drop-downs), findings (of a marked copy), other, hidden-and-read, chart.
type SheetRead struct {
	Name  string `json:"name"`
	As    string `json:"as"`
	State string `json:"state"`
	Why   string `json:"why"`
}

// Table is one table found, with its columns.
type Table struct {
	ID      string   `json:"id"`
	Kind    string   `json:"kind"` // schedule, products, pours
	Sheet   string   `json:"sheet"`
	Head    []int    `json:"heading_rows"`
	First   int      `json:"first_row"`
	Last    int      `json:"last_row"`
	Columns []Column `json:"columns"`
}

// Column is one column of a table: what it was taken for, and why.
type Column struct {
	Letter     string  `json:"letter"`
	Heading    string  `json:"heading"`
	Slot       string  `json:"slot"` // "" if not known
	Unit       string  `json:"unit"`
	Confidence float64 `json:"confidence"` // 0..1
	Why        string  `json:"why"`
	Hidden     bool    `json:"hidden"`

	second string       // unit of a second figure in parentheses
	gloss  string       // words of a row below the heading that give its unit or explain it
	own    string       // its heading without what is written over it
	work   string       // in a table that tells two works of a row: the one it is of
	parts  *combination // what each cell tells beside one another, nil for one thing
}

// Unread is a cell or row that was not understood or not read, and why.
type Unread struct {
	Text string `json:"text"`
	Why  string `json:"why"`
	At   At     `json:"at"`
}
