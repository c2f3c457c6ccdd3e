package schedule

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
)

// collectPlaces counts the runs of words that stand in the places of a table,
// which limits may be stated for.
func (r *reader) collectPlaces(t *table) {
	for row := t.first; row <= t.last; row++ {
		seen := map[string]bool{}
		for i, col := range t.nums {
			if slot := t.cols[i].Slot; slot != "place" && slot != "group" && slot != "mark" {
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

// mostPlaces is how many different texts of a place column are tried.
const mostPlaces = 30

// linePlaces adds the places of the lines, tried last: a database writes the
// city into every row.
func (r *reader) linePlaces() {
	seen := map[string]bool{}
	for i := range r.sched.Lines {
		l := &r.sched.Lines[i]
		if l.Place == "" || seen[l.Place] || len(seen) == mostPlaces {
			continue
		}
		seen[l.Place] = true
		r.sched.Project.Places = append(r.sched.Project.Places, Fact{Text: l.Place, At: At{Sheet: l.Sheet, Row: l.Row, Cell: l.Cells["place"]}})
	}
}

// facing finds the sides of the building that a limit is stated for: "S and W
// elevations", "north-facing walls".
var facing = regexp.MustCompile(`\b((?:[NSEW]|[Nn]orth|[Ss]outh|[Ee]ast|[Ww]est)(?:\s*(?:,|&|/|and|or)\s*(?:[NSEW]|[Nn]orth|[Ss]outh|[Ee]ast|[Ww]est))*)[- ](?:elevations?|elevs?\b|facing|faces?|sides?)`)

// placeIn finds the places that a limit is stated for: the longest run of its
// words that stands in the place of some line, and not of most, the first of
// several; and those that an "and" joins to it.
func (r *reader) placeIn(sentence string) string {
	sentence = withoutExamples(sentence)
	if marks := r.marksIn(sentence); len(marks) > 0 {
		return strings.Join(marks, ", ")
	}
	words := headingWords(sentence)
	at, place := r.placeFrom(words, 0, len(words))
	if place == "" {
		return ""
	}
	places := []string{place}
	for end := at + len(strings.Fields(place)); ; {
		for end < len(words) && r.limitRules.skip[words[end]] {
			end++
		}
		if end+1 >= len(words) || words[end] != "and" && words[end] != "or" {
			return strings.Join(places, " and ")
		}
		if _, place = r.placeFrom(words, end+1, end+2); place == "" {
			return strings.Join(places, " and ")
		}
		places = append(places, place)
		end += 1 + len(strings.Fields(place))
	}
}

// placeFrom is the longest run of words that begins from one word on and before
// another, with where it does.
func (r *reader) placeFrom(words []string, from, before int) (at int, place string) {
	for n := min(4, len(words)); n > 0; n-- {
		for i := from; i < before && i+n <= len(words); i++ {
			run := strings.Join(words[i:i+n], " ")
			if n == 1 && (len(run) < 4 || r.limitRules.skip[run]) {
				continue
			}
			for _, form := range []string{run, strings.TrimSuffix(run, "s"), run + "s"} {
				if c := r.places[form]; c > 0 && c*3 <= r.placeRows {
					return i, form
				}
			}
		}
	}
	return 0, ""
}

// marksIn lists the marks and wall types of lines that a sentence names ("On EW-1
// ..."), where not most lines have them.
func (r *reader) marksIn(sentence string) []string {
	var out []string
	for _, w := range cellWords(sentence) {
		w = fold(strings.Trim(w, ".:"))
		run := strings.Join(headingWords(w), " ")
		if c := r.places[run]; c == 0 || c*3 > r.placeRows || !r.marks[w] || slices.Contains(out, w) {
			continue
		}
		if strings.ContainsFunc(w, unicode.IsDigit) && strings.ContainsFunc(w, unicode.IsLetter) {
			out = append(out, w)
		}
	}
	return out
}

// unknownPlace is the scope of a limit for a room that no line names; it holds
// for none.
const unknownPlace = "(place not found)"

// outerSide is the scope of a limit for what lies on the outer side of the insulation.
const outerSide = "outside of the insulation"

// sideIn is the side of the insulation that a sentence states a limit for, "" for none.
func (r *reader) sideIn(sentence string, rule limitFigure, keyed bool) string {
	has := func(words []string) bool { return len(words) > 0 && r.words.hasAny(sentence, words) }
	switch outer := has(rule.Outer); {
	case outer && !keyed && !has(rule.Sided) && !has(rule.Inner):
		return outerSide
	case outer, has(rule.Sided), !keyed && r.ofRoom(sentence):
		return unknownPlace
	}
	return ""
}

// ofRoom holds for a sentence that speaks of a room's own climate.
func (r *reader) ofRoom(sentence string) bool {
	for _, q := range r.phrase.Quantities(sentence, "") {
		if q.Kind == "ratio" || q.Kind == "temperature" {
			return true
		}
	}
	return false
}

// withoutExamples takes out the brackets that name a mark beside something that is none:
// "dark metal (copings, W-4 panel)" is no more than examples of it.
func withoutExamples(sentence string) string {
	return bracket.ReplaceAllStringFunc(sentence, func(in string) string {
		marked, plain := false, false
		for _, part := range strings.Split(in, ",") {
			marked = marked || unreadCode.MatchString(part)
			plain = plain || plainWords.MatchString(part)
		}
		if marked && plain {
			return ""
		}
		return in
	})
}

// plainWords is a part of such a bracket that has no code.
var plainWords = regexp.MustCompile(`^\(?\s*\pL[\pL ]{2,}\)?$`)
