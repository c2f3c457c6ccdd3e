package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
)

// jointSealants finds what the rows of a register of joints are about, where no
// column names a material of their own: the sealant or, with columns for both
// sides, what each row tells.
func (r *reader) jointSealants(t *table) {
	if t.has("material", "tag", "type", "specified") > 0 {
		return
	}
	if t.joints = t.has("left", "right", "sealant") == 3; t.joints {
		return
	}
	for i := range t.cols {
		if c := &t.cols[i]; c.Slot == "sealant" {
			c.Slot, c.Why = "material", c.Why+", and no other column names a material"
			return
		}
	}
}

// joint gives the cells of one joint their parts. One side laps onto the other
// where a lap is told or nothing seals them: the row is about that side, or about
// the one that is a sheet, and the other is what it meets. Else it is about the
// bead between the two.
func (r *reader) joint(l *Line, sources []source) {
	parts := map[string]string{"sealant": "material"}
	if lap := l.Texts["lap"]; !r.words.isBlank(lap) || r.saysNone(l.Texts["sealant"]) && l.Texts["sealant"] != "" {
		parts = map[string]string{"left": "material", "right": "touches"}
		if !r.isSheet(l.Texts["left"]) && r.isSheet(l.Texts["right"]) { // "coping | underlay"
			parts = map[string]string{"right": "material", "left": "touches"}
		}
	}
	for i := range sources {
		old := sources[i].slot
		slot, moves := parts[old]
		if !moves {
			continue
		}
		sources[i].slot = slot
		l.move(old, slot)
	}
}

// jointSize are the two sizes of a bead, which laps have not: "1/2 w x 1/4 d", "20 x 10 mm".
var jointSize = regexp.MustCompile(`(?i)\d\s*(?:["″”]|mm|in\.?|w(?:ide)?)*\s*[x×]\s*[\d.]`)

// beadRow makes the bead the material of a row that says it has none besides and no lap: a
// joint in a schedule of sheets ("none at joint | brick both sides | silicone"). A column for
// laps and sizes gives the size of its joint.
func (r *reader) beadRow(l *Line, sources []source) []source {
	none := func(slot string) bool { return r.words.isBlank(l.Texts[slot]) || r.saysNone(l.Texts[slot]) }
	if l.Texts["material"] == "" || !none("material") || l.Texts["tag"] != "" || l.Texts["specified"] != "" || none("sealant") || none("substrate") {
		return sources
	}
	sized := jointSize.MatchString(l.Texts["lap"])
	if !none("lap") && !sized {
		return sources
	}
	sources = slices.DeleteFunc(sources, func(c source) bool { return c.slot == "material" })
	for i := range sources {
		if sources[i].slot == "sealant" {
			sources[i].slot = "material"
		}
		if sized && sources[i].slot == "lap" {
			sources[i].slot = "joint"
		}
	}
	l.move("sealant", "material")
	if sized {
		l.move("lap", "joint")
	}
	return sources
}

// move takes the cell of one part of the row for another part.
func (l *Line) move(from, to string) {
	l.Cells[to], l.Texts[to] = l.Cells[from], strings.TrimSpace(l.Texts[from])
	delete(l.Cells, from)
	delete(l.Texts, from)
}

// isSheet holds for words that name a sheet or coat first.
func (r *reader) isSheet(text string) bool {
	return slices.Contains(sheetRoles, r.roleNamed(text))
}

// bedOf finds the column of the substrate that a column of primers is for, in a
// table with one for each side ("Side A: substrate, primer; Side B: substrate,
// primer"); 0 where one primer is for all.
func (t *table) bedOf(col int) int {
	if t.cols[col].Slot != "primer" {
		return 0
	}
	bed, primers := 0, 0
	for i, c := range t.cols {
		switch {
		case c.Slot == "primer":
			primers++
		case c.Slot == "substrate" && i < col:
			bed = t.nums[i]
		}
	}
	if primers < 2 {
		return 0
	}
	return bed
}
