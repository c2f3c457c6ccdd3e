package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// wallCode is the code of a wall, roof or floor of the job: "W2", "WF-1", "S-3a".
var wallCode = regexp.MustCompile(`\b[A-Z]{1,4}-?\d{1,3}[a-z]?\b`)

// areaCode is a short word in capitals that an office calls a part of the building by:
// "NAT" for its natatorium.
var areaCode = regexp.MustCompile(`\b[A-Z]{2,4}\b`)

// collectCodes keeps the codes that rows or the headings over them have for where they
// are, which notes may state limits for. The tag of a product is none.
func (r *reader) collectCodes(t *table) {
	add := func(text string) {
		if code := wallCode.FindString(text); code != "" && strings.HasPrefix(text, code) && !r.isProduct(code) {
			r.codes[code] = true
		}
		if areaCode.FindString(text) == text && !r.isProduct(text) {
			r.codes[text] = true
		}
	}
	for row := t.first; row <= t.last; row++ {
		alone, first := t.ownCells(row) == 1, ""
		for i, col := range t.nums {
			words := strings.TrimSpace(text(t.sheet, row, col))
			if first == "" {
				first = words
			}
			switch slot := t.cols[i].Slot; slot {
			case "place", "group":
				if wallCode.FindString(words) == words || areaCode.FindString(words) == words {
					add(words)
				}
				if m := placeEnd.FindStringSubmatch(words); m != nil {
					r.placeEnds[m[1]] = true
				}
			case "type":
				if wallCode.FindString(words) == words {
					add(words)
				}
			}
		}
		if alone {
			add(first)
		}
	}
}

// placeEnd is the code of a wall that a place ends in: "North stair, EW-3".
var placeEnd = regexp.MustCompile(`,\s*([A-Z]{1,4}-?\d{1,3}[a-z]?)\s*$`)

// isListedWall holds for a code that places end in, on a sheet that tells the layers of
// several walls by such codes: it is no number of a note.
func (r *reader) isListedWall(s *workbook.Sheet, code string) bool {
	if !r.placeEnds[code] {
		return false
	}
	listed := 0
	for _, row := range s.Rows {
		words, _ := noteCells(s, row)
		if len(words) == 2 && r.placeEnds[words[0]] && r.tellsLayers(words[1], fewestUntitled) {
			listed++
		}
	}
	return listed >= fewestNoted
}

// wallsIn lists the codes that a note is told for, before its colon or in its words
// ("W2: ...", "Walls with batts (W2): ...", "in W2 ..."), and what it says of them.
func (r *reader) wallsIn(sentence string) (codes []string, rest string) {
	if len(r.codes) == 0 {
		return nil, sentence
	}
	words := sentence
	if number, after, ok := strings.Cut(sentence, ":"); ok && noteNumber.MatchString(number) {
		words = after // "10: W2 sheets 10 perms or more"
	}
	lead, rest, led := strings.Cut(words, ":")
	if !led {
		lead, rest = words, words
	}
	for _, code := range wallCode.FindAllString(lead, -1) {
		if r.codes[code] {
			codes = append(codes, code)
		}
	}
	if strings.ToUpper(sentence) != sentence { // in a note all in capitals every short word may be one
		for _, code := range areaCode.FindAllString(lead, -1) {
			if r.codes[code] {
				codes = append(codes, code)
			}
		}
	}
	if m := wallsOfLetter.FindStringSubmatch(lead); len(codes) == 0 && m != nil {
		for code := range r.codes {
			if lettersOf(code) == m[1] && len(code) > len(m[1]) {
				codes = append(codes, code)
			}
		}
		slices.Sort(codes)
	}
	if len(codes) == 0 {
		return nil, sentence
	}
	return codes, rest
}

// wallsOfLetter are all walls whose codes begin so: "Pool (N walls): 15 ng max."
var wallsOfLetter = regexp.MustCompile(`\b([A-Z]{1,3})(?:-| )(?:walls|types)\b`)

// wallLead is the code of a wall before what the work goes on there: "W2 - 8 in. block",
// "EW-3: glass-mat sheathing".
var wallLead = regexp.MustCompile(`^([A-Z]{1,4}-?\d{1,3}[a-z]?)(?:\s*:|\s+[-–—]|[–—]|\s*[,;/])\s*(\pL.*|\d.*)$`)

// leastWalls is how many walls rows tell so at least.
const leastWalls = 2

// ledByWalls parts the cells of a column of substrates that begin with the code of the
// wall, in a table that has no other column for it: the code says under which wall the
// row stands, the rest what the work goes on. The same few walls come again and again,
// as the tags of products need not, and the product data has none of them.
func (r *reader) ledByWalls(t *table) {
	i := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "substrate" && c.parts == nil })
	if i < 0 || t.column("group") > 0 {
		return
	}
	r.partWalls(t, i, wallLead, func(string) bool { return true })
}

// bareLead is the code of a wall before what the work goes on there, with nothing between the
// two: "W2 sheathing".
var bareLead = regexp.MustCompile(`^([A-Z]{1,4}-?\d{1,3}[a-z]?)(?:\s*[:,;/]|\s+[-–—]|[–—])?\s+(\pL.*|\d.*)$`)

// ledByListed does the same where nothing parts the code from the rest, if most of the codes
// are those of a list of walls: of others, "C30 concrete" might be a grade.
func (r *reader) ledByListed(t *table, walls map[string]bool) {
	i := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "substrate" && c.parts == nil })
	if i >= 0 && t.column("group") == 0 {
		r.partWalls(t, i, bareLead, func(code string) bool { return walls[code] })
	}
}

// partWalls parts the cells of a column that lead tells the wall of, where they are most of its
// cells, the walls come again and again, and most of them are such ones.
func (r *reader) partWalls(t *table, i int, lead *regexp.Regexp, isWall func(code string) bool) {
	telling, led, codes, walls := 0, 0, map[string]int{}, 0
	for words := range r.said(t, t.nums[i]) {
		telling++
		if m := lead.FindStringSubmatch(words); m != nil {
			led++
			codes[m[1]]++
		}
	}
	for code := range codes {
		if r.isProduct(code) {
			return
		}
		if isWall(code) {
			walls++
		}
	}
	if walls < leastWalls || walls*3 < len(codes)*2 || led*3 < telling*2 || led < leastWalls*len(codes) {
		return
	}
	t.cols[i].parts = &combination{slots: []string{"group", "substrate"}, lead: lead, units: make([]string, 2)}
	t.cols[i].Why += "; its cells begin with the code of the wall"
	for code := range codes {
		r.codes[code] = true
	}
}

// wallTail is the code of a wall after the part of the building where it stands: "Level 3
// east, EW-3".
var wallTail = regexp.MustCompile(`^(.*[^,\s])\s*,\s*([A-Z]{1,4}-?\d{1,3}[a-z]?)$`)

// endsInWalls parts the cells of a column of areas that end in the code of their wall, in
// a table that tells the place nowhere else: the code says under which wall the row
// stands, and what is before it where. An area without a code is a place alone. The same
// few walls come again and again, as the numbers of rooms and doors do not, and one such
// code that the product data has makes all of them products.
func (r *reader) endsInWalls(t *table) {
	i := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "group" && c.parts == nil })
	if i < 0 || t.column("place") > 0 || callsWalls(t.cols[i].own) {
		return
	}
	telling, ended, codes := 0, 0, map[string]int{}
	for words := range r.said(t, t.nums[i]) {
		telling++
		if m := wallTail.FindStringSubmatch(words); m != nil {
			ended++
			codes[m[2]]++
		}
	}
	if len(codes) < leastWalls || ended*2 < telling || ended < leastWalls*len(codes) {
		return
	}
	for code := range codes {
		if r.isProduct(code) {
			return
		}
	}
	t.cols[i].Slot = "place"
	t.cols[i].parts = &combination{slots: []string{"place", "group"}, lead: wallTail, units: make([]string, 2)}
	t.cols[i].Why += "; its cells end in the code of the wall"
	for code := range codes {
		r.codes[code] = true
	}
}

// systemLead is the code of a wall before what is built there: "W2 rainscreen", "EW-3 /
// infill wall".
var systemLead = regexp.MustCompile(`^([A-Z]{1,4}-?\d{1,3}[a-z]?)\s*[ :,;/–—-]\s*(\pL.*)$`)

// systemsOfWalls parts the cells of a column whose heading may be that of the walls as well as
// of the materials ("System"), where they begin with the codes of a few walls that come again
// and again, and another column is headed as that of the products: the code says under which
// wall the row stands, and the rest what is built there, as a place does.
func (r *reader) systemsOfWalls(t *table) {
	i := slices.IndexFunc(t.cols, func(c Column) bool {
		return (c.Slot == "material" || c.Slot == "group") && c.parts == nil && r.isHeaded(c, "material") && r.isHeaded(c, "group")
	})
	if i < 0 || !r.ledByCodes(t, t.nums[i]) {
		return
	}
	c := &t.cols[i]
	if c.Slot == "material" && !r.namedBeside(t) {
		return
	}
	c.Slot, c.Why = "group", c.Why+"; its cells begin with the code of the wall"
	c.parts = &combination{slots: []string{"group", "place"}, lead: systemLead, units: make([]string, 2)}
}

// namedBeside gives the slot of the material to a column that is headed so and has none, as
// another took it; false where there is none, or a third column is that of the walls.
func (r *reader) namedBeside(t *table) bool {
	i := slices.IndexFunc(t.cols, func(c Column) bool {
		return (c.Slot == "" || c.Slot == "reference") && r.isHeaded(c, "material")
	})
	if i < 0 || t.column("group") > 0 {
		return false
	}
	t.cols[i].Slot, t.cols[i].Confidence, t.cols[i].Why = "material", 1, "its heading tells materials, and the other that does is of the walls"
	return true
}

// isHeaded holds for a column whose heading may wholly stand for a slot.
func (r *reader) isHeaded(c Column, slot string) bool {
	return slices.ContainsFunc(r.head.match(c.own), func(g guess) bool { return g.slot == slot && g.score >= 1 })
}

// ledByCodes holds for a column of which all cells but a few begin with the code of a wall,
// each in several rows, and none with the tag of a product.
func (r *reader) ledByCodes(t *table, col int) bool {
	telling, led, codes := 0, 0, map[string]bool{}
	for words := range r.said(t, col) {
		telling++
		code := strings.TrimSpace(words)
		if m := systemLead.FindStringSubmatch(code); m != nil {
			code = m[1]
		}
		if wallCode.FindString(code) != code {
			continue
		}
		if r.isProduct(code) {
			return false
		}
		led++
		codes[code] = true
	}
	return len(codes) >= leastWalls && led*10 >= telling*9 && led >= leastWalls*len(codes)
}
