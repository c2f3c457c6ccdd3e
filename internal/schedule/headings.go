package schedule

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"abut/internal/knowledge"
	"abut/internal/regexp"
)

// headings is the vocabulary of column headings, from policies/knowledge/columns.json.
type headings struct {
	filler          map[string]bool
	planned         map[string]bool // words for days that are meant
	actual          map[string]bool // words for days on which it was done
	askedBand       map[string]bool // words over columns of what was specified
	offerBand       map[string]bool // words over columns of what is offered for it
	laidBand        map[string]bool // words over columns of what was put on instead
	light           map[string]bool
	same            map[string]string // an office's spelling of a heading word, and the usual one
	parted          map[string]bool   // first parts of those of them that have a hyphen
	units           map[string]bool
	bare            map[string]bool // words that say only that a date stands there
	weekWords       map[string]bool // words before the days of the work on a divider
	lapsOf          lapHeadings
	sheetsOf        sheetHeadings
	vague           []string // headings that count only where their cells name materials
	lower           []string
	upper           []string
	byUnit          map[string]string
	service         []string          // words that tell a temperature in service from one at application
	applies         []string          // words for the one at application
	short           map[string]string // forms that words are cut to, and the words
	faces           []string          // words that tell a reading of a face from one of the air
	seen            []string          // words for a look at papers, or at the work
	whole           map[string]bool   // words that tell a column only where its heading says no more
	answers         map[string]bool   // cells that only answer yes or no
	askers          map[string]bool   // words that only ask: "What is it stuck to?"
	money           string            // signs of currencies
	inner           map[string]bool   // words for the side of the room, and of the weather
	outer           map[string]bool
	accessories     []string        // roles of what stands among layers and is none
	linings         map[string]bool // families of what the room side begins with
	parts           []wallPart      // words over the parts of walls
	wallAsks        []wallAsk       // and over what the rows on a wall must have
	works           workWords       // words that part the works of a row
	combos          combinedWords   // columns that are drawn together to one
	days            []dayWork       // words of headings over days, by what is done then
	ends            []string        // words for an end of a range that is not to be passed
	span            spanWords
	hotApplied      float64         // °C from which no sheet or fluid is put on by hand
	ties            map[string]bool // words that tie what a heading names to something else
	roles           bandRoles       // words below a heading over figures
	dayAir, noDay   []string        // words for the air of a day, and those that tell of a limit and of no day
	cold, hot, heat []string        // words for the lower and the upper end of temperatures, and for either
	denies          *regexp.Regexp  // words that say what not to do
	coverAfter      int             // how many days after the work those of the cover mostly are
	little          map[string]bool // words that tie others together to a sentence
	sheets          []string        // words that surely mean the sheets
	remarks         map[string]bool // words for remarks that end a heading: "yard notes"
	loose           map[string]bool // slots that cells may contradict
	drawing         *regexp.Regexp  // numbers of drawings and details
	slots           []headingSlot
	bySlot          map[string]*headingSlot
	first           map[string][]headingPhrase // by their first word in the singular
	anyWay          map[string][]headingPhrase // by their words in the singular, sorted

	matched memory[string, []guess] // of one workbook
	owns    memory[string, ballot]
	denials memory[string, string]
}

// remembering is the vocabulary for one workbook, which keeps what it told of a text.
func (h headings) remembering() *headings {
	h.matched, h.owns, h.denials = memory[string, []guess]{}, memory[string, ballot]{}, memory[string, string]{}
	return &h
}

// headingPhrase is one phrase that a slot goes by.
type headingPhrase struct {
	slot  int
	words []string
}

type headingSlot struct {
	name  string
	many  bool
	sides bool   // it may stand once for each side of a joint
	kind  string // what the cells must mostly hold, "" words
	in    string // products or schedule, "" both
	words []string
	units map[string]string
}

type slotConfig struct {
	Many  bool              `json:"many"`
	Sides bool              `json:"sides"`
	Kind  string            `json:"kind"`
	In    string            `json:"in"`
	Words []string          `json:"words"`
	Units map[string]string `json:"units"`
}

func loadHeadings(fsys fs.FS) (*headings, error) {
	var file struct {
		Columns struct {
			Filler                []string          `json:"filler"`
			Light                 []string          `json:"light"`
			Same                  map[string]string `json:"same"`
			Units                 []string          `json:"unit_words"`
			Bare                  []string          `json:"bare_date"`
			WeekWords             []string          `json:"week_words"`
			LapsApart             lapHeadings       `json:"laps_apart"`
			SheetsApart           sheetHeadings     `json:"sheets_apart"`
			Planned               []string          `json:"planned"`
			Actual                []string          `json:"actual"`
			AskedBand             []string          `json:"asked_band"`
			OfferBand             []string          `json:"offer_band"`
			LaidBand              []string          `json:"laid_band"`
			Lower                 []string          `json:"lower"`
			Upper                 []string          `json:"upper"`
			ByUnit                map[string]string `json:"by_unit"`
			Service               []string          `json:"service"`
			Vague                 []string          `json:"doubtful"`
			Applies               []string          `json:"applies"`
			Faces                 []string          `json:"faces"`
			Seen                  []string          `json:"seen"`
			Askers                []string          `json:"askers"`
			Whole                 []string          `json:"whole"`
			Answers               []string          `json:"answers"`
			Money                 string            `json:"money"`
			Works                 workWords         `json:"works"`
			Combined              combinedWords     `json:"combined"`
			Inner                 []string          `json:"inner"`
			Outer                 []string          `json:"outer"`
			Linings               []string          `json:"linings"`
			Accessories           []string          `json:"accessories"`
			Parts                 []partWords       `json:"wall_parts"`
			WallAsks              []wallAsk         `json:"wall_asks"`
			Days                  []dayWork         `json:"days"`
			Ties                  []string          `json:"ties"`
			Roles                 bandRoles         `json:"band_roles"`
			Cold, Hot, Heat, Ends []string
			Denies                string                `json:"denies"`
			Span                  spanWords             `json:"span"`
			DayAir                []string              `json:"day_air"`
			NoDay                 []string              `json:"no_day"`
			CoverAfter            int                   `json:"cover_after_days"`
			HotApplied            float64               `json:"hot_applied_c"`
			Little                []string              `json:"little"`
			Sheets                []string              `json:"sheets"`
			Remarks               []string              `json:"remarks"`
			Loose                 []string              `json:"loose"`
			Drawing               string                `json:"drawing"`
			Slots                 map[string]slotConfig `json:"slots"`
		} `json:"columns"`
	}
	if err := knowledge.Read(fsys, "heading vocabulary", "knowledge/columns.json", &file); err != nil {
		return nil, err
	}
	h := &headings{
		filler: set(file.Columns.Filler), planned: set(file.Columns.Planned), actual: set(file.Columns.Actual), askedBand: set(file.Columns.AskedBand), offerBand: set(file.Columns.OfferBand), laidBand: set(file.Columns.LaidBand), units: set(file.Columns.Units), light: set(file.Columns.Light), same: file.Columns.Same, bare: set(file.Columns.Bare), weekWords: set(file.Columns.WeekWords), lapsOf: file.Columns.LapsApart, sheetsOf: file.Columns.SheetsApart,
		lower: file.Columns.Lower, upper: file.Columns.Upper, byUnit: file.Columns.ByUnit, service: file.Columns.Service, applies: file.Columns.Applies,
		vague: file.Columns.Vague, faces: file.Columns.Faces, seen: file.Columns.Seen, askers: set(file.Columns.Askers), whole: set(file.Columns.Whole), answers: set(file.Columns.Answers), money: file.Columns.Money, inner: set(file.Columns.Inner), outer: set(file.Columns.Outer), linings: set(file.Columns.Linings), accessories: file.Columns.Accessories, works: file.Columns.Works, combos: file.Columns.Combined,
		days: file.Columns.Days, span: file.Columns.Span, dayAir: file.Columns.DayAir, noDay: file.Columns.NoDay, coverAfter: file.Columns.CoverAfter, ends: file.Columns.Ends, cold: file.Columns.Cold, hot: file.Columns.Hot, heat: file.Columns.Heat, little: set(file.Columns.Little), sheets: file.Columns.Sheets, remarks: set(file.Columns.Remarks), loose: set(file.Columns.Loose),
		parted: map[string]bool{}, short: map[string]string{}, bySlot: map[string]*headingSlot{}, first: map[string][]headingPhrase{}, anyWay: map[string][]headingPhrase{},
	}
	for _, part := range file.Columns.Parts {
		h.parts = append(h.parts, wallPart{part.Name, set(part.Words)})
	}
	h.ties = set(file.Columns.Ties)
	h.wallAsks, h.roles, h.hotApplied = file.Columns.WallAsks, file.Columns.Roles, file.Columns.HotApplied
	for name, c := range file.Columns.Slots {
		h.slots = append(h.slots, headingSlot{name: name, many: c.Many, sides: c.Sides, kind: c.Kind, in: c.In, words: c.Words, units: c.Units})
	}
	slices.SortFunc(h.slots, func(a, b headingSlot) int { return strings.Compare(a.name, b.name) })
	if err := h.compile(file.Columns.Drawing, file.Columns.Denies); err != nil {
		return nil, fmt.Errorf("heading vocabulary knowledge/columns.json: %w", err)
	}
	h.index()
	h.shortForms()
	return h, nil
}

// compile reads the patterns of the vocabulary.
func (h *headings) compile(drawing, denies string) error {
	var err error
	if h.drawing, err = regexp.Compile(drawing); err != nil {
		return fmt.Errorf("drawing: %w", err)
	}
	if h.denies, err = regexp.Compile(denies); err != nil {
		return fmt.Errorf("denies: %w", err)
	}
	for i := range h.wallAsks {
		if err = h.wallAsks[i].compile(); err != nil {
			return err
		}
	}
	if err = h.combos.compile(); err != nil {
		return err
	}
	return h.works.compile()
}

func (h *headings) index() {
	for i := range h.slots {
		s := &h.slots[i]
		h.bySlot[s.name] = s
		for _, w := range s.words {
			if words := h.usual(strings.Fields(w)); len(words) > 0 {
				key := singular(words[0])
				h.first[key] = append(h.first[key], headingPhrase{i, words})
				if all := sorted(words, nil); len(words) > 1 {
					h.anyWay[all] = append(h.anyWay[all], headingPhrase{i, words})
				}
			}
		}
	}
	for written := range h.same {
		if first, _, hyphen := strings.Cut(written, "-"); hyphen {
			h.parted[first] = true
		}
	}
}

// sorted joins words in the singular in the order of the alphabet, without those
// to be left out.
func sorted(words []string, out map[string]bool) string {
	var list []string
	for _, w := range words {
		if !out[w] {
			list = append(list, singular(w))
		}
	}
	slices.Sort(list)
	return strings.Join(list, " ")
}

// shorten lists how a word of headings is cut short: to its first letters ("subst"), or
// to its consonants or the first of them ("tch", "trmntn").
func shorten(word string) []string {
	var out []string
	if len(word) > leastStart+1 {
		out = append(out, word[:leastStart])
	}
	bones := word[:1]
	for i := 1; i < len(word); i++ {
		if c := word[i : i+1]; !strings.Contains("aeiouy", c) && !strings.HasSuffix(bones, c) {
			bones += c
		}
	}
	for n := leastBones; n <= len(bones) && len(bones) < len(word); n++ {
		out = append(out, bones[:n])
	}
	return out
}

// How many letters of a word tell it: from its start, or of its consonants.
const (
	leastStart = 5
	leastBones = 3
	mostCut    = 11 // longer words are written out, or cut in ways of their own
)

// shortForms are the forms that stand for one word alone, or for several of one slot,
// with the word they are short for.
func (h *headings) shortForms() {
	slots := map[string]int{}
	for i := range h.slots {
		for _, w := range h.slots[i].words {
			w = singular(w)
			if len(w) < leastStart || len(w) > mostCut || !plainLetters(w) {
				continue
			}
			for _, form := range shorten(w) {
				before, taken := h.short[form]
				switch {
				case !taken:
					h.short[form], slots[form] = w, i
				case before != w && slots[form] != i:
					h.short[form] = ""
				}
			}
		}
	}
	for form := range h.short {
		if len(h.first[singular(form)]) > 0 || h.same[form] != "" || h.filler[form] || h.light[form] || h.units[form] {
			delete(h.short, form)
		}
	}
}

// plainLetters holds for a word of small letters without accents and signs.
func plainLetters(w string) bool {
	return strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") == ""
}

func singular(w string) string { return strings.TrimSuffix(w, "s") }

func set(words []string) map[string]bool {
	out := make(map[string]bool, len(words))
	for _, w := range words {
		out[w] = true
	}
	return out
}
