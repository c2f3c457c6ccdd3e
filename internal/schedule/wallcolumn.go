package schedule

import (
	"slices"
	"strings"
)

// wallColumn takes a column that is headed as that of walls and holds nothing but their
// codes for what the rows stand under, though a heading over several ("Where") made it a
// place; the zones or floors that stood there, or another column of places, then tell of
// the place.
func (r *reader) wallColumn(t *table) {
	walls := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "place" && callsWalls(c.own) })
	group := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "group" })
	if walls < 0 || group >= 0 && callsWalls(t.cols[group].own) || group < 0 && !t.placedBeside(walls) || !r.holdsWalls(t, t.nums[walls]) {
		return
	}
	c := &t.cols[walls]
	c.Slot, c.Why = "group", "its heading calls walls, and codes of them stand under it"
	if group >= 0 {
		zone := &t.cols[group]
		zone.Slot, zone.Why = "place", zone.Why+", beside a column of walls"
	}
}

// placedBeside holds where another column tells of the place.
func (t *table) placedBeside(walls int) bool {
	for i := range t.cols {
		if i != walls && t.cols[i].Slot == "place" {
			return true
		}
	}
	return false
}

// callsWalls holds for "Wall", "Wall type", "Wall no."
func callsWalls(heading string) bool {
	words := headingWords(heading)
	return len(words) > 0 && len(words) < 3 && words[0] == "wall" && !slices.Contains(words, "face") && !slices.Contains(words, "area")
}

// holdsWalls holds for a column of the codes of walls, each in several rows.
func (r *reader) holdsWalls(t *table, col int) bool {
	rows, codes := r.codesOfWalls(t, col)
	return codes >= leastWalls && rows >= leastWalls*codes
}

// codesOfWalls counts the telling cells of a column that holds nothing but codes of walls, and
// the different ones; 0 for one with anything else.
func (r *reader) codesOfWalls(t *table, col int) (rows, codes int) {
	seen := map[string]bool{}
	for words := range r.said(t, col) {
		code := strings.TrimSpace(words)
		if wallCode.FindString(code) != code || r.isProduct(code) {
			return 0, 0
		}
		rows++
		seen[code] = true
	}
	return rows, len(seen)
}

// listedByType takes the codes of walls under "Type" for the marks of a list of them, each
// with its layers beside it and none twice, where nothing else calls its rows.
func (r *reader) listedByType(t *table) {
	i := slices.IndexFunc(t.cols, func(c Column) bool { return c.Slot == "type" && c.parts == nil })
	if i < 0 || t.column("layers") == 0 || t.has("mark", "group", "order", "install", "finish", "cover", "lap", "primer", "specified") > 0 {
		return
	}
	if rows, codes := r.codesOfWalls(t, t.nums[i]); codes >= leastWalls && rows == codes {
		t.cols[i].Slot, t.cols[i].Why = "mark", t.cols[i].Why+", and it names what is built of the layers in its row"
	}
}
