package schedule

import "slices"

// layered holds for a table that lists assemblies layer by layer, and names the
// layers instead of numbering them.
func (t *table) layered() bool {
	for _, c := range t.cols {
		if c.Slot == "type" && slices.Contains(headingWords(c.Heading), "layer") {
			return t.column("order") == 0
		}
	}
	return false
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
