package schedule

import (
	"cmp"
	"slices"
)

// layered holds for a table that lists assemblies layer by layer, and names the
// layers instead of numbering them.
func (t *table) layered() bool {
	if t.stacked {
		return t.column("order") == 0
	}
	return t.layerHeaded() && t.column("order") == 0
}

// layerHeaded holds for a table with a column of layers by their names.
func (t *table) layerHeaded() bool {
	return slices.ContainsFunc(t.cols, func(c Column) bool {
		return c.Slot == "type" && slices.Contains(headingWords(c.Heading), "layer")
	})
}

// sameAgain holds for a column of layers that says the same in a row and the one below it more than
// once: it tells what each row is for ("Layer function"), as a wall has one such layer.
func (r *reader) sameAgain(t *table) bool {
	again, last, col := 0, "", t.column("type")
	for row := t.first; row <= t.last; row++ {
		if t.ownCells(row) < 2 {
			last = ""
			continue
		}
		words := text(t.sheet, row, col)
		if words == last && !r.words.isBlank(words) && !r.words.isDitto(words) {
			again++
		}
		last = words
	}
	return again > 1
}

// layerRows takes a column of build-ups in which each row tells one layer, while the wall
// left of it stays the same, for that of the materials.
func (r *reader) layerRows(t *table) {
	col, name := t.column("layers"), 0
	if col == 0 || t.column("material") > 0 {
		return
	}
	for _, slot := range []string{"group", "mark", "type"} {
		if wall := t.column(slot); name == 0 && wall > 0 && r.layersRun(t, col, wall) {
			name = wall
		}
	}
	if name == 0 {
		return
	}
	t.stacked = true
	for i := range t.cols {
		switch c := &t.cols[i]; {
		case t.nums[i] == col:
			c.Slot, c.Why = "material", c.Why+", and each row is one layer"
		case t.nums[i] == name:
			c.Slot, c.Why = "group", c.Why+"; it stays the same while the layers run"
		case c.Slot == "mark" && t.column("order") == 0:
			c.Slot, c.Why = "order", c.Why+", and it numbers the layers"
		}
	}
}

// layersRun holds where most rows of a column of build-ups tell one layer each, of the wall
// that the row above is of too.
func (r *reader) layersRun(t *table, col, name int) bool {
	rows, same, lists, last := 0, 0, 0, ""
	for row := t.first; row <= t.last; row++ {
		layers, wall := text(t.sheet, row, col), text(t.sheet, row, name)
		if r.words.isBlank(layers) || t.ownCells(row) < 2 {
			continue
		}
		rows++
		if last != "" && (wall == "" || wall == last) {
			same++
		}
		if layerParts.MatchString(layers) {
			lists++
		}
		last = cmp.Or(wall, last)
	}
	return rows >= 3 && same*2 >= rows && lists*2 <= rows
}

// accessory stands after the number of a row among layers that is none of them.
const accessory = "a"

// isAccessory holds for a flashing, strip or bead that tells itself what it goes on: it
// lies at an edge or opening of its wall, and not between the rows above and below.
func (r *reader) isAccessory(l *Line) bool {
	return slices.Contains(r.head.accessories, l.Role) && len(l.there("substrate")) > 0
}

// unstack takes the numbers from rows that were counted as layers and are none: a list
// of materials by place names a layer of one wall again at another place ("air barrier,
// north", "air barrier, east"), and there the row below does not lie on the one above.
// Where half of the walls are listed so, all of them are.
func unstack(lines []Line) {
	walls := map[string][]*Line{}
	for i := range lines {
		l := &lines[i]
		if l.Order != "" && !l.Struck {
			walls[l.Group] = append(walls[l.Group], l)
		}
	}
	stacks, scattered := 0, 0
	for _, wall := range walls {
		switch {
		case byPlace(wall):
			scattered++
		case len(wall) > 1:
			stacks++
		}
	}
	for _, wall := range walls {
		if scattered > 0 && (scattered >= stacks || byPlace(wall)) {
			for _, l := range wall {
				l.Order = ""
			}
		}
	}
}

// byPlace holds for rows of one wall that have the same layer at two places.
func byPlace(wall []*Line) bool {
	place := map[string]string{} // by layer, where it was named first
	return slices.ContainsFunc(wall, func(l *Line) bool {
		layer, at := fold(l.Texts["type"]), fold(l.Place)
		if layer == "" || at == "" {
			return false
		}
		first, known := place[layer]
		if !known {
			place[layer] = at
		}
		return known && first != at
	})
}
