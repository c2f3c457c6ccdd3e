package schedule

import (
	"cmp"
	"fmt"
	"maps"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// toldWall is a wall that a note tells in words: its code, its layers, and what stands
// before the first wall of the note.
type toldWall struct {
	code, layers, title string
	at                  At
	parts               []listedLayer // of a list that tells them apart
	codeAt              string        // and the cell of its code
	rows                []int         // that it fills
}

// How many layers a wall of a list in notes has at least, where a title says that walls
// follow and where none does, and how many such walls tell a list.
const (
	fewestTitled   = 2
	fewestUntitled = 3
	fewestNoted    = 2
)

var (
	// wallEntry is the code of a wall where a sentence begins, and what parts it from the rest;
	// brackets after it say where it stands.
	wallEntry = regexp.MustCompile(`(?:^|[.;:\n])\s*([A-Z]{1,4}-?\d{1,3}[a-z]?)(?:\s*\([^()]*\))?(\s*[:=]\s*|\s+[-–—]\s+|\s+)[\pL\d]`)
	parting   = regexp.MustCompile(`^\s*[:=–—-]`)
)

// wallNotes finds the walls that the notes of a sheet tell in words: several in one note
// below a title for such a list ("Wall types: W1 brick, wool, sheet, block. W2 ..."), or
// one to a note where a sign follows its code ("W1 = brick, wool, sheet, block").
func (r *reader) wallNotes(s *workbook.Sheet, inTable func(row int) bool) map[int][]toldWall {
	titled, single, begun := map[int][]toldWall{}, map[int][]toldWall{}, map[int][]toldWall{}
	for _, row := range s.Rows {
		words, at := noteCells(s, row)
		if inTable(row.Number) || len(words) != 1 {
			continue
		}
		if walls := r.titledWalls(words[0], at); walls != nil {
			titled[row.Number] = walls
		} else if wall, layered := r.singleWall(words[0], at); layered {
			single[row.Number] = []toldWall{wall}
		} else if wall.code != "" {
			begun[row.Number] = []toldWall{wall}
		}
	}
	if len(single) < fewestNoted {
		return titled
	}
	maps.Copy(titled, single)
	for row, walls := range begun {
		if single[row-1] != nil || single[row+1] != nil {
			titled[row] = walls // "W4 curtain wall" among the others
		}
	}
	return titled
}

// titledWalls are those of a note that begins with a title for a list of them.
func (r *reader) titledWalls(note string, at At) []toldWall {
	found := wallEntry.FindAllStringSubmatchIndex(note, -1)
	if len(found) < fewestNoted || !r.words.wallHeading.MatchString(note[:found[0][2]]) {
		return nil
	}
	var out []toldWall
	layered := 0
	for i, m := range found {
		end := len(note)
		if i+1 < len(found) {
			end = found[i+1][0]
		}
		wall := toldWall{code: note[m[2]:m[3]], layers: strings.Trim(note[m[5]:end], " .;\n"), title: strings.TrimRight(note[:found[0][2]], " :.\n"), at: at}
		if r.isProduct(wall.code) {
			return nil
		}
		if r.tellsLayers(wall.layers, fewestTitled) {
			layered++
		}
		out = append(out, wall)
	}
	if layered < fewestNoted {
		return nil
	}
	return out
}

// singleWall is the one wall that a note begins with, of which rows of the schedule are, and
// whether it tells its layers: with a sign after its code, or between each two of them.
func (r *reader) singleWall(note string, at At) (wall toldWall, layered bool) {
	m := wallEntry.FindStringSubmatchIndex(note)
	if m == nil || m[0] != 0 || note[0] != note[m[2]] || !r.codes[note[m[2]:m[3]]] || r.isProduct(note[m[2]:m[3]]) {
		return toldWall{}, false
	}
	wall = toldWall{code: note[m[2]:m[3]], layers: strings.Trim(note[m[5]:], " ."), at: at}
	if !parting.MatchString(note[m[4]:m[5]]) && len(layerSigns.FindAllString(wall.layers, -1)) < fewestUntitled-1 {
		return wall, false
	}
	return wall, r.tellsLayers(wall.layers, fewestUntitled)
}

// tellsLayers holds for a list with commas of so many materials at least.
func (r *reader) tellsLayers(words string, fewest int) bool {
	return len(commaSigns.FindAllString(words, -1)) >= fewest-1 && len(r.lex.find(words)) >= fewest
}

// isBuildUp holds for layers with a sign between each two: no product is told so.
func (r *reader) isBuildUp(words string) bool {
	return len(layerSigns.FindAllString(words, -1)) >= fewestUntitled && r.tellsLayers(words, fewestUntitled+1)
}

// keepWalls keeps the walls of a note, and asks of the rows on each what the words of one
// layer bound: "W2: brick, wool, sheet of 6 ng or less, block".
func (r *reader) keepWalls(s *workbook.Sheet, row workbook.Row, walls []toldWall) {
	words, at := noteCells(s, row)
	r.sched.Project.Notes = append(r.sched.Project.Notes, Fact{Text: strings.Join(words, " "), At: at})
	for _, wall := range walls {
		r.noted = append(r.noted, wall)
		for _, layer := range commaSigns.Split(wall.layers, -1) {
			if r.bounds(layer, "vapor_permeance") {
				r.limitsIn(wall.code+": "+layer, wall.at)
			}
		}
	}
}

// notedWalls makes lines of the walls that notes tell, as those of a list of them are, and
// the table that they stand in.
func (r *reader) notedWalls() []*table {
	var out []*table
	for _, wall := range r.noted {
		t := wall.table()
		if len(out) > 0 && out[len(out)-1].sheet.Name == wall.at.Sheet && out[len(out)-1].cols[1].Heading == wall.title {
			t.id = out[len(out)-1].id
			out[len(out)-1].last = wall.at.Row
		} else {
			out = append(out, t)
		}
		r.standing = standing{}
		l := r.line(t, wall.at.Row, nil, map[string]dayOrder{})
		l.Cells["mark"] = cmp.Or(wall.codeAt, wall.at.Cell)
		r.addLine(l)
	}
	return out
}

// table is one with a row for the wall alone: its layers are in the cell of the note.
func (w toldWall) table() *table {
	row, col, _ := workbook.ParseRef([]byte(w.at.Cell))
	code := workbook.Cell{Row: row, Col: col + 1, Value: w.code, Kind: workbook.Text}
	layers := workbook.Cell{Row: row, Col: col, Value: w.layers, Kind: workbook.Text, Merged: w.parts != nil}
	sheet := &workbook.Sheet{Name: w.at.Sheet, MaxRow: row, Rows: []workbook.Row{{Number: row, Cells: []workbook.Cell{layers, code}}}}
	return &table{
		id: fmt.Sprintf("%s#%d", w.at.Sheet, row), kind: kindSchedule, sheet: sheet, common: w.code, listed: w.parts,
		head: []int{row}, first: row, last: row, end: row, nums: []int{col + 1, col},
		cols: []Column{
			{Letter: workbook.ColumnName(col), Slot: "mark", Confidence: 0.8, Why: "a note tells walls by their codes"},
			{Letter: workbook.ColumnName(col), Heading: w.title, own: w.title, Slot: "layers", Confidence: 0.8, Why: "the note tells the layers of each wall"},
		},
	}
}
