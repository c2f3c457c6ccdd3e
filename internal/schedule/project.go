package schedule

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// projectFacts reads everything outside the tables: title blocks, notes under
// tables, sheets of notes.
func (r *reader) projectFacts(s *workbook.Sheet, tables []*table) {
	inTable := map[int]bool{}
	for _, t := range tables {
		if t.kind == kindOther {
			continue
		}
		for row := t.head[0]; row <= t.last; row++ {
			inTable[row] = true
		}
	}
	told := func(row int) bool {
		return inTable[row] || slices.Contains(r.toldRows[s.Name], row) || slices.Contains(r.cardRows[s.Name], row)
	}
	walls := r.wallNotes(s, told)
	for _, row := range s.Rows {
		switch {
		case told(row.Number):
		case walls[row.Number] != nil:
			r.keepWalls(s, row, walls[row.Number])
		default:
			r.note(s, row)
		}
	}
}

// note reads one row outside the tables.
func (r *reader) note(s *workbook.Sheet, row workbook.Row) {
	words, at := noteCells(s, row)
	if len(words) == 0 {
		return
	}
	if len(words) == 2 && noteCode.MatchString(words[0]) && len(words[1]) >= noteLength && !r.codes[words[0]] && !r.isProduct(words[0]) && !r.isListedWall(s, words[0]) {
		words = words[1:]
	}
	if len(words) > 2 && specSection.MatchString(words[0]) {
		words = words[1:] // "07 25 00 / 3.4 | Laps | 3 in. or more"
	}
	text := strings.Join(r.askedOf(r.withItemUnit(words)), " ")
	p := &r.sched.Project
	if m := r.words.projectName.FindStringSubmatch(text); m != nil && !r.nameTold {
		p.Name, r.nameTold = m[1], true
	}
	if p.Name == "" {
		p.Name = words[0]
	}
	p.Notes = append(p.Notes, Fact{Text: text, At: at})
	if len(words) > 1 && r.callsSite(words[0]) {
		p.Places = slices.Insert(p.Places, 0, Fact{Text: text, At: at}) // before the address of who wrote it
	} else {
		p.Places = append(p.Places, Fact{Text: text, At: at})
	}
	r.letterPairs(text, at)
	heading, lead, coded, first := "", "", "", len(p.Limits)
	subject := ""
	for i, part := range r.words.splitItems(r.lapsListed(text)) {
		sentence, limits := part.text, len(p.Limits)
		r.noteBars(sentence, at)
		if figureFirst.MatchString(sentence) && subject != "" {
			sentence = subject + " " + sentence // "FM sheets 40 mil or more; 0.1 perm at most"
		} else {
			subject = r.subjectOf(sentence)
		}
		if part.listed && lead != "" && !strings.Contains(sentence, ":") {
			laps, _ := r.lapsOfNote(lead, sentence)
			sentence = lead + ": " + laps
		} else if laps, told := r.lapsOfNote(lead, sentence); told && leadOf(sentence) == "" {
			sentence = lead + ": " + laps // "Laps: FM 3 / 6. HT 4 / 6."
		} else {
			lead = leadOf(sentence)
			if laps, told := r.lapsOfNote(lead, sentence); told {
				sentence = laps
			}
		}
		if codes, _ := r.wallsIn(sentence); len(codes) > 0 {
			coded = leadOf(sentence)
		} else if r.words.everyWall.MatchString(sentence) {
			coded = "" // "No vinyl anywhere"
		} else if coded != "" && heading == "" && !(r.isTopic(coded) && r.isOfItsOwn(sentence)) {
			sentence = coded + ": " + sentence
		}
		sentence = r.sidesOfSheet(r.damsOfNote(sentence))
		r.limitsIn(strings.TrimPrefix(heading+": "+sentence, ": "), at)
		if part.listed && len(p.Limits) == limits && limits > first {
			r.limitsOfAnother(sentence, p.Limits[limits-1])
		}
		if i == 0 && r.headsNote(sentence) {
			heading = sentence
		}
		r.roomIn(sentence, at)
		if codes, _ := r.wallsIn(sentence); len(codes) > 0 {
			continue // "W2, W3: studs stay empty" tells of no other wall
		}
		if len(words) <= 2 && !strings.Contains(sentence, " = ") { // a legend or a table tells of no condition of the job
			r.noteSignals(sentence, at, len(p.Limits) > limits)
		}
	}
	r.lapsOfSubject(text, p.Limits[first:])
	ofTheRest(p.Limits[first:])
	ownFirst(p.Limits[first:])
}

// callsSite holds for a label of the place of the work: "Site", "Project location".
func (r *reader) callsSite(label string) bool {
	return slices.ContainsFunc(r.head.match(strings.TrimRight(label, ": ")), func(g guess) bool { return g.slot == "site" && g.score >= 1 })
}

// isTopic holds for a lead that begins with what is asked and names walls only then ("Laps,
// W1/W2 sheets"): what comes next may be asked of another place or product.
func (r *reader) isTopic(lead string) bool {
	at := wallCode.FindStringIndex(lead)
	return at != nil && strings.ContainsFunc(lead[:at[0]], unicode.IsLetter)
}

// isOfItsOwn holds for a sentence that says what it is asked of: "Below grade 3 in.", "HT-1 4 / 6".
func (r *reader) isOfItsOwn(sentence string) bool {
	return r.scopeIn(sentence) != "" || len(r.lex.findTags(sentence)) > 0 || len(r.whenIn(sentence)) > 0
}

// headsNote holds for a few words that the rest of a note goes on from ("Podium sheets. 60
// mil, laps 3 in."), and not for a statement with a figure of its own ("Climate zone 6B.").
func (r *reader) headsNote(sentence string) bool {
	if len(headingWords(sentence)) > maxHeading {
		return false
	}
	codes, _ := r.wallsIn(sentence)
	return len(codes) > 0 || len(r.lex.findTags(sentence)) > 0 || !zoneWord.MatchString(sentence)
}

// maxHeading is how many words such a heading has at most; zoneWord a climate told by its code.
const maxHeading = 4

var zoneWord = regexp.MustCompile(`(?i)\bzone\s+\d`)

// askedOf keeps the cells of "Ref | Item | Limit" together: what stands before a cell that
// begins with its figure is one list of what the figure is asked of, whatever parts it.
func (r *reader) askedOf(words []string) []string {
	out := slices.Clone(words)
	for i := 1; i < len(words); i++ {
		if figureFirst.MatchString(words[i]) && len(r.phrase.Quantities(words[i], "")) > 0 {
			out[i-1] = strings.ReplaceAll(words[i-1], ";", ",")
		}
	}
	return out
}

// figureFirst is a cell that begins with its figure or with the sign of its bound.
var figureFirst = regexp.MustCompile(`^\s*(?:[≤≥<>=]\s*)*[-+−]?\d`)

// subjectOf is what stands before the first figure of a sentence that asks a material of
// something: what begins with its figure after it is asked of the same.
func (r *reader) subjectOf(sentence string) string {
	found := r.figuresOf(sentence)
	if len(found) == 0 {
		return ""
	}
	before := strings.TrimRight(sentence[:found[0].Start], " \t<>=≤≥,:(")
	if len(r.keysIn(before)) == 0 {
		return ""
	}
	return before
}

// ownFirst takes what has a limit of its own in a note out of those of several that hold
// for it too by the letters of a tag: "AB sheets 40 mil; AB-3 25 mil".
func ownFirst(limits []Limit) {
	for _, own := range limits {
		if len(own.Keys) != 1 {
			continue
		}
		for i := range limits {
			other := &limits[i]
			if other.Kind != own.Kind || other.Scope != own.Scope || len(other.Keys) < 2 || len(own.When)+len(other.When) > 0 {
				continue
			}
			other.Keys = slices.DeleteFunc(slices.Clone(other.Keys), func(key string) bool { return key == own.Keys[0] })
		}
	}
}

// leadOf is what stands before the colon of "VOC, g/L: primers 350", which holds
// for all that a semicolon parts from it too.
func leadOf(sentence string) string {
	if before, _, ok := strings.Cut(sentence, ":"); ok && len(headingWords(before)) <= maxLead {
		return before
	}
	return ""
}

// maxLead is how many words a lead may have.
const maxLead = 6

// noteNumber is a cell that holds the number or letter of a note and no more.
var noteNumber = regexp.MustCompile(`^(?i:(?:note|no\.?|item)\s*)?[(\[]?(?:\d{1,3}(?:\.\d{1,2})*|[A-Za-z]|[ivxIVX]{1,5})[.):\]]?$`)

// noteCode is the code of a note, of a list that the office numbers by a letter: "L3".
var noteCode = regexp.MustCompile(`^[A-Z]{1,2}[-.]?\d{1,2}[.):]?$`)

// noteCells gives the texts of a row outside the tables, and the cell that holds
// the first of more than a few letters. The note's own number in a cell before
// them is left out: "10 | Days uncovered ..." says nothing of ten days.
func noteCells(s *workbook.Sheet, row workbook.Row) ([]string, At) {
	var words []string
	var from *workbook.Cell
	for i := range row.Cells {
		c := &row.Cells[i]
		v := strings.TrimSpace(c.Value)
		if v == "" || c.Merged {
			continue
		}
		if from == nil || len(v) > 6 {
			from = c
		}
		words = append(words, v)
	}
	at := At{Sheet: s.Name, Row: row.Number}
	if from != nil {
		at.Cell = from.Ref()
	}
	if len(words) > 1 && noteNumber.MatchString(words[0]) && len(strings.Fields(words[1])) > 1 {
		words = words[1:]
	}
	return words, at
}

// specSection is a cell that holds the number of a section of the specifications, and
// of its paragraph.
var specSection = regexp.MustCompile(`^(?:\d{2}[ .]?\d{2}[ .]?\d{2}(?:\.\d{2})?)(?:\s*[/,;§¶-]?\s*(?:\d{2} \d{2} \d{2}|\d+(?:\.[\dA-Z]+)*))*$`)

// noteSignals keeps the conditions that a sentence states for the whole job; in
// one that states a limit, the words that narrow it are no such condition.
func (r *reader) noteSignals(sentence string, at At, limit bool) {
	sentence = r.words.wideLead.ReplaceAllString(sentence, "")
	if r.words.caseLead.MatchString(sentence) {
		return // "Below 5 °C: tent and heat", said of a case
	}
	r.noteSignalsIn(sentence, at, limit)
	if plain := bracket.ReplaceAllString(sentence, ""); plain != sentence { // "one barrier (0.2 perm) per wall"
		r.noteSignalsIn(plain, at, limit)
	}
}

func (r *reader) noteSignalsIn(sentence string, at At, limit bool) {
	for _, cl := range r.hear(sentence).clauses {
		for _, s := range cl.Signals {
			if s.If {
				continue // "unless tented", "if frost": said of a case, not of this one
			}
			if r.words.caseWord.MatchString(sentence[:s.Start]) {
				continue // "at the wall when tented"
			}
			if _, narrows := r.limitRules.When[s.ID]; narrows && limit {
				continue
			}
			said := Said{ID: s.ID, No: s.No, Text: s.Text, Slot: "note", At: at}
			if !slices.Contains(r.sched.Project.Signals, said) {
				r.sched.Project.Signals = append(r.sched.Project.Signals, said)
			}
		}
	}
}

// roomIn finds stated indoor conditions: a temperature or a relative humidity
// with words of a room.
func (r *reader) roomIn(sentence string, at At) {
	rules := r.limitRules.Indoor
	if !r.fits(sentence, rules.Words, rules.Unless) {
		return
	}
	room := Room{Text: sentence, At: at}
	for _, q := range r.phrase.Quantities(sentence, "") {
		switch {
		case q.Kind == "temperature" && q.Min != nil && room.TempC == nil:
			room.TempC = q.Min
		case q.Kind == "ratio" && q.Min != nil && room.RH == nil:
			rh := *q.Min
			if rh > 1 {
				rh /= 100
			}
			room.RH = &rh
		}
	}
	if room.TempC != nil || room.RH != nil {
		r.sched.Project.Indoor = append(r.sched.Project.Indoor, room)
	}
}
