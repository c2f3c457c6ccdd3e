package document

import "abut/internal/schedule"

// Comparison holds the specified lines against the submitted ones. The
// document that carries it is the submitted one.
type Comparison struct {
	Specified string `json:"specified"` // file; the document's own where the specified product stands in the row
	Asks      string `json:"asks"`      // words of the specified schedule that ask for each property equal or better
	Pairs     []Pair `json:"pairs"`
	Removed   []Was  `json:"removed"` // specified lines without a match
	Added     []Was  `json:"added"`   // submitted lines without a match
}

// Was names a line of either schedule, with the words of its own material.
type Was struct {
	Line  string      `json:"line"` // id in its own document
	Mark  string      `json:"mark"`
	Place string      `json:"place"`
	Text  string      `json:"text"`
	Role  string      `json:"role"`
	At    schedule.At `json:"at"`
}

// Pair is a submitted line with the specified line that it stands for.
type Pair struct {
	Line  string  `json:"line"` // id of the submitted line
	Was   Was     `json:"was"`
	Score float64 `json:"score"` // how alike, 0..1
	Next  float64 `json:"next"`  // score of the best other candidate with another content
	Sure  bool    `json:"sure"`
	Split bool    `json:"split"` // one specified line became several, or several one
	// Quoted is the product that the submitted line gives as specified, where
	// that is another one than the specified line names.
	Quoted  string     `json:"quoted"`
	Swaps   []Swap     `json:"swaps"`
	Figures []Compared `json:"figures"` // of the rows themselves, whatever their products
	Changes []Change   `json:"changes"`
}

// Swap is one material in place of another. Same is true where the product
// kept its name, so that only its data may differ.
type Swap struct {
	Slot    string     `json:"slot"` // slot of the offered material in the submitted line
	Same    bool       `json:"same"`
	Was     Offer      `json:"was"`
	Now     Offer      `json:"now"`
	Figures []Compared `json:"figures"`
	Lost    []Lost     `json:"lost"`
}

// Offer is one side of a swap. Data tells whether the product has data.
type Offer struct {
	Text    string            `json:"text"`
	Tag     string            `json:"tag"`
	Product string            `json:"product"` // id in the document that its data stands in
	Role    string            `json:"role"`
	Family  string            `json:"family"`
	Name    string            `json:"name"`
	Class   string            `json:"class"`
	Keys    []string          `json:"keys"`
	Data    bool              `json:"data"`
	Texts   map[string]string `json:"texts"` // of the product data
	At      schedule.At       `json:"at"`
}

// Compared is one property of both. Order says how the offer stands to what
// was specified, rounding allowed for: lower, equal, higher, missing (was
// stated, no longer is), new (the reverse), none (neither or not comparable).
type Compared struct {
	Kind  string          `json:"kind"`
	Was   schedule.Figure `json:"was"`
	Now   schedule.Figure `json:"now"`
	Order string          `json:"order"`
}

// Lost is a substrate that the specified product takes and the offered one
// does not list; Here tells that it is the substrate of the line.
type Lost struct {
	Text string      `json:"text"`
	Here bool        `json:"here"`
	At   schedule.At `json:"at"`
}

// Change is a cell of the submitted line that says other than the specified
// one did: a date, a substrate, a neighbor, a remark.
type Change struct {
	Slot string `json:"slot"`
	Was  string `json:"was"`
	Now  string `json:"now"`
	Cell string `json:"cell"`
}
