package schedule

import (
	"cmp"
	"slices"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
	"abut/internal/workbook"
)

// listedWords reads a list of the office's short words that has each in a cell of its
// own and what it stands for in the next, under a title that says so: "Abbreviations",
// then "MW" and "mineral wool". Two may share a row: "A / HE", "open air / heated tent".
func (r *reader) listedWords(s *workbook.Sheet, tables []*table) {
	listing := false
	for _, row := range s.Rows {
		if within(tables, row.Number) {
			continue
		}
		var own []string
		for c := range filled(row.Cells) {
			own = append(own, strings.TrimSpace(c.Value))
		}
		if len(own) == 2 {
			r.defineSeries(own[0], own[1])
		}
		switch {
		case len(own) == 1:
			listing = legendTitle.MatchString(own[0])
		case listing && len(own) == 2:
			r.defineEach(own[0], own[1])
		}
	}
}

// defineSeries keeps what a list says of all tags that begin with the same letters: "CT-n",
// "cavity tray".
func (r *reader) defineSeries(tag, meaning string) {
	if m := seriesShape.FindStringSubmatch(tag); m != nil && meaningShaped.MatchString(meaning) && r.series[m[1]] == "" {
		r.series[m[1]] = meaning
	}
}

// seriesShape is a tag whose number is left open: "CT-n", "SL-##", "FM-x".
var seriesShape = regexp.MustCompile(`^([A-Z]{1,4})[-. ]?(?:n{1,2}|x{1,2}|#{1,3}|\*)$`)

// knowSeries gives the products what a list says of the series of their tags.
func (r *reader) knowSeries() {
	for i := range r.sched.Products {
		if p := &r.sched.Products[i]; r.series[letters(p.Tag)] != "" && p.Texts["series"] == "" {
			p.Texts["series"] = r.series[letters(p.Tag)]
		}
	}
}

// legendTitle heads a list of short words.
var legendTitle = regexp.MustCompile(`(?i)\b(?:abbrev(?:iation)?s?|legend|codes|short (?:forms|words)|key to)\b|^\s*key\s*:?\s*$`)

// defineEach keeps what the short words of a cell stand for, where its neighbor has a
// meaning for each. What it says of none is kept as such: "nr", "not required".
func (r *reader) defineEach(shorts, meanings string) {
	words, says := []string{shorts}, []string{meanings}
	if strokes.MatchString(shorts) {
		words, says = strokes.Split(shorts, -1), strokes.Split(meanings, -1)
	}
	if len(words) != len(says) {
		return
	}
	for i, word := range words {
		switch {
		case !meaningShaped.MatchString(says[i]) || !shortShaped.MatchString(word) && !(shelterShaped.MatchString(word) && r.saysHeated(says[i])):
		case loneLetter.MatchString(word):
			if r.letters[word] == "" {
				r.letters[word] = says[i]
			}
		default:
			r.define(word, says[i])
			r.readLegend(word + " = " + says[i])
		}
	}
}

var (
	// in capitals, or small and very short, or with points or strokes ("c.i.p.", "u/s")
	shortShaped   = regexp.MustCompile(`^(?:[A-Z][A-Z&]{0,5}|[a-z]{2,4}\.?|(?:[a-z]{1,3}[./])+[a-z]{0,3}\.?)$`)
	shelterShaped = regexp.MustCompile(`^[A-Z]{1,4}-?\d{1,3}$`) // "T50", a tent at 50: with a figure as marks have, so only where heat is told
	meaningShaped = regexp.MustCompile(`^\pL`)
)

// shelterCodes finds the column of the cover and heat of the work where its heading does
// not tell ("Cond."): under it stand nothing but short words of which the notes say that
// the work is heated, or in the open.
func (r *reader) shelterCodes(t *table) {
	if t.column("shelter") > 0 {
		return
	}
	for i := range t.cols {
		if t.cols[i].Slot == "" && r.codesOfShelter(t, t.nums[i]) {
			t.cols[i].Slot, t.cols[i].Why = "shelter", "the notes explain its short words as cover and heat"
			return
		}
	}
}

func (r *reader) codesOfShelter(t *table, col int) bool {
	heated := false
	for row := t.first; row <= t.last; row++ {
		c, ok := t.sheet.At(row, col)
		word := strings.TrimSpace(c.Value)
		if !ok || c.Merged || t.ownCells(row) < 2 || r.words.isBlank(word) || r.words.isNone(word) || r.words.isDitto(word) {
			continue
		}
		meaning := cmp.Or(r.letters[word], r.short[word])
		if meaning == "" {
			return false
		}
		heated = heated || r.saysHeated(meaning)
	}
	return heated
}

// saysHeated holds for words that tell of heat for the work, or of none.
func (r *reader) saysHeated(text string) bool {
	for _, cl := range r.hear(text).clauses {
		if slices.ContainsFunc(cl.Signals, func(s phrase.Signal) bool { return s.ID == "heated" || s.ID == "unheated" }) {
			return true
		}
	}
	return false
}
