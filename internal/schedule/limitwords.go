package schedule

import (
	"io/fs"
	"strings"

	"abut/internal/knowledge"
	"abut/internal/regexp"
)

type limitFigure struct {
	Kind      string   `json:"kind"`
	Quantity  string   `json:"quantity"`
	Bound     string   `json:"bound"`
	Fixed     bool     `json:"fixed"` // the bound, whatever the words ("no more than")
	Rated     []string `json:"rated"` // words of what a product is to stand, whose least is not turned into a most
	Words     []string `json:"words"`
	Unless    []string `json:"unless"`
	Ranges    bool     `json:"ranges"`       // a stretch is a least and a most
	Films     []string `json:"films"`        // told in mil too, but for sentences with these words, whatever else they tell
	DryForms  []string `json:"dry_forms"`    // words by which it is asked of what is put on wet, and of nothing else
	FilmsBy   []string `json:"films_beside"` // and for those that have these beside the figure: "10 mils wet"
	Others    []string `json:"unless_else"`  // words with which its own must stand by the figure: "1 mm thick and lapped 100 mm"
	Roles     bool     `json:"roles"`
	NotRoles  []string `json:"not_roles"` // said of all sheets, or told by the scope
	Keys      bool     `json:"keys"`
	Laid      bool     `json:"laid"`  // what is laid over the bed may narrow it
	Tags      bool     `json:"tags"`  // only the tags that it names may narrow it
	Named     bool     `json:"named"` // only the products that it names by their whole tags may
	KeysAfter bool     `json:"keys_after"`
	Subject   bool     `json:"subject"` // the words must begin the sentence or head the note
	After     []string `json:"unless_after"`
	AfterBut  []string `json:"though_after"`  // words behind the figure with which it counts all the same: "4 in. onto adjoining work"
	Before    []string `json:"unless_before"` // shortly before the figure: "side laps 2 in, end laps 3 in"
	Though    []string `json:"though"`        // words with which it counts all the same: "side and end laps 3 in"
	Beside    []string `json:"beside"`        // words one of which must stand right before the figure, or right after it
	Right     []string `json:"right_before"`  // words that tell the kind where they stand right before the figure ("up 200 mm"),
	RightOf   []string `json:"right_of"`      // in a sentence with one of these words
	NotRight  []string `json:"unless_right"`  // and words right before a figure that is of another kind
	Bounded   bool     `json:"bounded"`       // only with a word for the least or the most
	Close     bool     `json:"close"`         // the words must stand by the figure: "200 mm up the backing, laps 150 mm, end dams 25 mm"
	Scope     bool     `json:"scope"`
	Parts     bool     `json:"parts"`  // a part of the building may narrow it, whether a row names it or not
	Within    string   `json:"within"` // a word of the sentence that narrows it to lines that have it: "cavity"
	Place     bool     `json:"place"`
	Sided     []string `json:"sided"`  // words for a side of a layer, which no line names as its place
	Outer     []string `json:"outer"`  // words for the outer side of the insulation
	Inner     []string `json:"inner"`  // and for its inner side, in a sentence that tells of both
	Facing    bool     `json:"facing"` // a side of the building may narrow it
	Near      bool     `json:"near"`   // a distance from something may narrow it
	When      bool     `json:"when"`
	Letters   bool     `json:"letters"` // a maker's letter may raise it for a product
	Case      string   `json:"case"`    // the one case that may narrow it, told with its own materials: "batts in the studs"
	Least     *float64 `json:"least"`   // a smaller figure, in the kind's unit, is no such limit
}

type limitWords struct {
	Kind   string     `json:"kind"`
	All    [][]string `json:"all"`
	Any    []string   `json:"any"`
	Unless []string   `json:"unless"`
	Says   string     `json:"says"` // a signal of the sentence, that is asked of walls by their codes
}

// limitRules are how notes state limits, from policies/knowledge/limits.json.
type limitRules struct {
	Figures  []limitFigure       `json:"figures"`
	Words    []limitWords        `json:"words"`
	Roles    map[string][]string `json:"roles"`
	Kinds    []roleKind          `json:"role_kinds"`
	Scopes   map[string][]string `json:"scopes"`
	Sheets   map[string][]string `json:"sheet_places"` // words for the sheets of a place, and of no other
	When     map[string][]string `json:"when"`
	Letters  letterWords         `json:"letters"`
	Forbids  forbidWords         `json:"forbids"`
	Places   placeWords          `json:"places"`
	Idle     string              `json:"idle"` // a sentence that tells figures and asks for none
	idle     *regexp.Regexp
	AnySheet []string        `json:"any_sheet"`    // words for the sheet of a wall, whichever it is
	Aside    string          `json:"aside"`        // words in brackets that tell of another layer: "(the film is inside)"
	Forms    []string        `json:"forms"`        // generic families that a limit may be for: what is put on wet, whatever it is of
	ByForm   []string        `json:"by_form"`      // families that words call by what they are for, and not by what they are made of
	Reasons  []string        `json:"when_reasons"` // why a limit is set, or that it holds everywhere, and no case of it: "indoor air quality", "inside and out"
	Open     float64         `json:"open_ng"`      // the permeance from which a material is called open to vapor
	Skip     []string        `json:"place_skip"`
	Under    []string        `json:"under"`       // before a metal: it only tells what covers what is limited
	Beside   []string        `json:"beside"`      // before an insulation: it only tells where what is limited lies
	On       []string        `json:"on"`          // before what the sheets lie on
	Bounds   []string        `json:"bound_words"` // between a name and its figure: "butyl tape at least 30 mil"
	skip     map[string]bool // words of places that name none
	BareMM   string          `json:"bare_mm"` // a figure of millimeters without them, and what follows it
	OpenOnes string          `json:"open_sheets"`
	Tights   string          `json:"tight_sheets"`
	openOnes *regexp.Regexp
	tights   *regexp.Regexp
	Classes  string `json:"class_word"` // a sentence that says what a word for how open a sheet is means
	aside    *regexp.Regexp
	bareMM   *regexp.Regexp
	class    *regexp.Regexp
	Indoor   struct {
		Words  []string `json:"words"`
		Unless []string `json:"unless"`
	} `json:"indoor"`
}

func loadLimitRules(fsys fs.FS) (*limitRules, error) {
	var file struct {
		Limits limitRules `json:"limits"`
	}
	if err := knowledge.Read(fsys, "limit words", "knowledge/limits.json", &file); err != nil {
		return nil, err
	}
	file.Limits.skip = set(file.Limits.Skip)
	var err error
	if err := file.Limits.Letters.compile(); err != nil {
		return nil, err
	}
	if err := file.Limits.Forbids.compile(); err != nil {
		return nil, err
	}
	if err := file.Limits.Places.compile(); err != nil {
		return nil, err
	}
	if file.Limits.idle, err = regexp.Compile("(?i)" + file.Limits.Idle); err != nil {
		return nil, err
	}
	if file.Limits.bareMM, err = regexp.Compile(file.Limits.BareMM); err != nil {
		return nil, err
	}
	if file.Limits.openOnes, err = regexp.Compile("(?i)" + file.Limits.OpenOnes); err != nil {
		return nil, err
	}
	if file.Limits.tights, err = regexp.Compile("(?i)" + file.Limits.Tights); err != nil {
		return nil, err
	}
	if file.Limits.class, err = regexp.Compile("(?i)" + file.Limits.Classes); err != nil {
		return nil, err
	}
	if file.Limits.aside, err = regexp.Compile(file.Limits.Aside); err != nil {
		return nil, err
	}
	return &file.Limits, nil
}

var bareFigure = regexp.MustCompile(`(?i)(\d)(\s*,\s|\s*$|\s*(?:max|min)(?:imum)?\b)`)

// bracketed stands right after a figure and its bound.
var bracketed = regexp.MustCompile(`^\s*(?:at most|or less|max\.?|min\.?)?\s*\(([^()]*)\)`)

// namedBare is a bare figure of a list, after its name and before the next.
var namedBare = regexp.MustCompile(`(?i)(\pL\s+\d[\d.]*)(\s*,\s|\s+(?:and|or)\s)`)

// bareDegrees is a figure in degrees of no scale, and the word after it.
var bareDegrees = regexp.MustCompile(`(?i)(\d\s?)(?:deg(?:rees)?\.?|°)(\s+(\pL{3,}))`)

// withDegrees writes the scale beside a bare "240 deg service", which is that of the
// service temperatures of the data: on a job with one scale nobody writes it.
func (r *reader) withDegrees(sentence string) string {
	m := bareDegrees.FindStringSubmatchIndex(sentence)
	if m == nil || !r.words.hasAny(sentence[m[6]:m[7]], r.words.serves) {
		return sentence
	}
	scale := ""
	for i := range r.sched.Products {
		unit := r.sched.Products[i].Figures["service_max_c"].Unit
		if unit == "" || unit == scale {
			continue
		}
		if scale != "" {
			return sentence // data in two scales
		}
		scale = unit
	}
	if scale == "" {
		return sentence
	}
	return sentence[:m[3]] + scale + sentence[m[4]:]
}

// withMillimeters writes the unit behind figures that only millimeters can be, as the
// words before them tell: "weeps at 600 or closer", "joints 6 wide".
func (w *limitRules) withMillimeters(sentence string) string {
	return w.bareMM.ReplaceAllString(sentence, "$1 mm$2")
}

// withListUnit writes the unit of a list beside its bare figures, where its lead gives
// it ("VOC, g/L: primers 350") or its last figure ("VOC: primers 350, sealants 250 g/L").
func (r *reader) withListUnit(sentence string) string {
	lead, list, ok := strings.Cut(sentence, ":")
	if !ok {
		return sentence
	}
	if at := strings.LastIndexAny(lead, ",(["); at >= 0 {
		unit := strings.TrimPrefix(strings.Trim(lead[at:], ",()[] "), "in ")
		one := r.phrase.Quantities("1 "+unit, "")
		if len(one) == 1 && one[0].Unit != "" && one[0].End == len("1 "+unit) {
			return lead + ":" + bareFigure.ReplaceAllString(list, "$1 "+unit+"$2")
		}
	}
	for _, word := range strings.Fields(lead) { // "VOC g/L max.: primers 250", "VOC, g/L, not over: primers 250"
		word = strings.Trim(word, ",()[]")
		one := r.phrase.Quantities("1 "+word, "")
		if strings.Contains(word, "/") && len(one) == 1 && one[0].Unit != "" && one[0].End == len("1 "+word) {
			return lead + ":" + bareFigure.ReplaceAllString(list, "$1 "+word+"$2")
		}
	}
	if said := r.phrase.Quantities(list, ""); len(said) > 0 && said[0].Unit != "" {
		first := said[0]
		return lead + ":" + namedBare.ReplaceAllString(list[:first.Start], "$1 "+first.Unit+"$2") + list[first.Start:]
	}
	return sentence
}
