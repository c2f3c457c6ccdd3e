package schedule

import (
	"fmt"
	"strconv"
	"strings"

	"abut/internal/regexp"
)

// readingWords tell what the site measured: temperatures of surface and air,
// relative humidity, dew point; from policies/knowledge/reading.json.
type readingWords struct {
	Slots []string    `json:"slots"` // columns whose words may tell readings
	Not   string      `json:"not"`   // words of a limit or a forecast, no reading
	Past  string      `json:"past"`  // what happened then, and no condition: "when the board went on"
	Bare  bareReading `json:"bare"`
	Pulls string      `json:"pulls"` // the results of pull tests, and their unit
	pulls *regexp.Regexp
	Night nightWords    `json:"night"`
	Plain plainReading  `json:"plain"`
	List  []readingWord `json:"list"`
	not   *regexp.Regexp
	past  *regexp.Regexp
}

// bareReading tells the air of the day by a temperature alone ("54°F at noon"): what
// may stand before and after it in its sentence.
type bareReading struct {
	Hottest       float64 `json:"hottest"` // what no air is above, °C
	Before, After string
	before, after *regexp.Regexp
}

// plainReading tells a reading without its degrees ("surf 38", "block 121 by IR gun"): what
// stands before and after the figure. Weak words before it name as well what is counted or
// measured, so that Told, words of a thermometer or of sun and shade, must stand in the sentence.
type plainReading struct {
	Strong, Weak, Behind, After, Told string
	Least, Most                       map[string]float64 // in each scale
	Like                              []string           // each with one figure, wherever it stands
	strong, weak, behind, after, told *regexp.Regexp
	like                              []*regexp.Regexp
}

func (w *plainReading) compile() (err error) {
	for _, one := range []struct {
		to   **regexp.Regexp
		text string
	}{{&w.strong, "(?:" + w.Strong + ")$"}, {&w.weak, "(?:" + w.Weak + ")$"}, {&w.behind, w.Behind}, {&w.after, w.After}, {&w.told, w.Told}} {
		if *one.to, err = regexp.Compile("(?i)" + one.text); err != nil {
			return fmt.Errorf("plain: %w", err)
		}
	}
	for _, text := range w.Like {
		one, err := regexp.Compile("(?i)" + strings.ReplaceAll(text, "#", `(\d{1,3})`))
		if err != nil {
			return fmt.Errorf("plain.like: %w", err)
		}
		w.like = append(w.like, one)
	}
	return nil
}

// nightWords stand beside the temperature of a night; Not before a limit for nights.
type nightWords struct {
	Word, Not string
	word, not *regexp.Regexp
}

// readingWord is one kind of reading. Key is that of the figure: Kind that of
// the quantity.
type readingWord struct {
	Key   string `json:"key"`
	Kind  string `json:"kind"`
	Words string `json:"words"`
	Unit  string `json:"unit"` // of a figure whose unit alone tells the reading ("85% RH")
	words *regexp.Regexp
	unit  *regexp.Regexp
}

func (w *readingWords) compile() (err error) {
	if w.not, err = regexp.Compile("(?i)" + w.Not); err != nil {
		return fmt.Errorf("not: %w", err)
	}
	if w.past, err = regexp.Compile("(?i)" + w.Past); err != nil {
		return fmt.Errorf("past: %w", err)
	}
	if w.pulls, err = regexp.Compile("(?i)" + w.Pulls); err != nil {
		return fmt.Errorf("pulls: %w", err)
	}
	if w.Bare.before, err = regexp.Compile("(?i)" + w.Bare.Before); err != nil {
		return fmt.Errorf("bare.before: %w", err)
	}
	if w.Bare.after, err = regexp.Compile("(?i)" + w.Bare.After); err != nil {
		return fmt.Errorf("bare.after: %w", err)
	}
	if w.Night.word, err = regexp.Compile("(?i)" + w.Night.Word); err != nil {
		return fmt.Errorf("night.word: %w", err)
	}
	if w.Night.not, err = regexp.Compile("(?i)" + w.Night.Not); err != nil {
		return fmt.Errorf("night.not: %w", err)
	}
	if err := w.Plain.compile(); err != nil {
		return err
	}
	for i := range w.List {
		one := &w.List[i]
		if one.words, err = regexp.Compile("(?i)" + one.Words); err != nil {
			return fmt.Errorf("%s: %w", one.Key, err)
		}
		if one.Unit == "" {
			continue
		}
		if one.unit, err = regexp.Compile("(?i)" + one.Unit); err != nil {
			return fmt.Errorf("%s: %w", one.Key, err)
		}
	}
	return nil
}

// added is a thing to which a sign adds the next: "rod + 50 air" is a gap.
var added = regexp.MustCompile(`\pL[.)]?\s*\+\s*$`)

// tells holds for a figure of a text that its words tell to be a reading.
func (w *plainReading) tells(text string, start, end int, scale string) bool {
	value, err := strconv.ParseFloat(text[start:end], 64)
	least, known := w.Least[scale[len(scale)-1:]]
	if err != nil || !known || value < least || value > w.Most[scale[len(scale)-1:]] {
		return false
	}
	for _, one := range w.like {
		for _, at := range one.FindAllStringSubmatchIndex(text, -1) {
			if at[2] <= start && end <= at[3] {
				return true
			}
		}
	}
	before, after := text[strings.LastIndexAny(text[:start], ";\n")+1:start], text[end:]
	if w.behind.MatchString(after) {
		return !joinedFigure.MatchString(before) && !added.MatchString(before)
	}
	if !w.after.MatchString(after) {
		return false
	}
	return w.strong.MatchString(before) || w.weak.MatchString(before) && w.told.MatchString(text)
}
