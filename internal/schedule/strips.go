package schedule

import "slices"

// The works of a row of a detail: its strip, and the sheet of the field beside that.
const (
	onStrip = "strip"
	ofField = "field"
)

// stripBeside finds the second sheet of the details of a schedule: beside the sheet of the
// field a column of strips ("Transition"), and right of that one of what they go on
// ("Transition onto"). Each of the two sheets of a row is a line of its own.
func (r *reader) stripBeside(t *table) {
	field := t.column("material")
	if field == 0 || t.column("layers") > 0 || slices.ContainsFunc(t.cols, func(c Column) bool { return c.work != "" }) {
		return
	}
	for i := range len(t.cols) - 1 {
		c, bed := &t.cols[i], &t.cols[i+1]
		if t.nums[i] <= field || isOwn(c.Slot) || !r.head.works.strip.MatchString(c.own) || !r.mostlySheets(t, t.nums[i]) {
			continue
		}
		if bed.Slot != "substrate" || !slices.ContainsFunc(t.cols[:i], func(c Column) bool { return c.Slot == "substrate" }) {
			continue
		}
		t.strip = t.nums[i]
		r.stripPrimer(t)
		c.Slot, c.Confidence, c.Why = "touches", 1, "a second sheet of each row, with a bed of its own"
		return
	}
}

// stripPrimer takes a column right of the strips that is headed as a primer for theirs.
func (r *reader) stripPrimer(t *table) {
	for i := range t.cols {
		if c := &t.cols[i]; t.nums[i] > t.strip && (c.Slot == "" || c.Slot == "with") && r.head.own(c.own)["primer"].score > 0 {
			c.Slot, c.Why = "primer", "its heading names the primer of the strip"
			return
		}
	}
}

// mostlySheets holds for a column in which most cells name a sheet or what is put on as one.
func (r *reader) mostlySheets(t *table, col int) bool {
	filled, sheets := 0, 0
	for words := range r.said(t, col) {
		filled++
		if r.isSheet(words) {
			sheets++
		}
	}
	return sheets >= fewestStrips && sheets*2 > filled
}

// fewestStrips is how many rows have a strip at least where a column of them is one.
const fewestStrips = 2

// stripWorks are the tables by which a row of a sheet and a strip is read.
func (r *reader) stripWorks(t *table, row int) []*table {
	if !r.laid(t, row, t.strip) {
		return []*table{t}
	}
	if !r.laid(t, row, t.column("material")) {
		return []*table{t.stripView(false)}
	}
	return []*table{t.fieldView(), t.stripView(true)}
}

// laid holds for a cell that names what is put on.
func (r *reader) laid(t *table, row, col int) bool {
	words := text(t.sheet, row, col)
	return !r.words.isBlank(words) && !r.words.isNone(words)
}

// ofSheet are the columns that tell of the sheet of the field where a row has a strip too,
// ofStrip those that tell of the strip wherever they stand: what is primed, sealed, lapped and
// counted in a detail is its strip.
var (
	ofSheet = map[string]bool{"thickness": true, "vapor": true, "air": true, "type": true}
	ofStrip = map[string]bool{"primer": true, "sealant": true, "lap": true, "end_lap": true, "edge": true, "exposure_days": true}
)

// whose tells which of the two a column is of, "" for both. Where each has a column for the
// matter, that of the strip is right of it.
func (t *table) whose(i int) string {
	slot, right := t.cols[i].Slot, t.nums[i] > t.strip
	apart := t.column(slot) < t.strip && t.lastOf(slot) > t.strip
	switch {
	case !ofSheet[slot] && !ofStrip[slot]:
		return ""
	case apart && right, ofStrip[slot] && !apart:
		return onStrip
	}
	return ofField
}

// lastOf is the number of the last column of a slot.
func (t *table) lastOf(slot string) int {
	for i := len(t.cols) - 1; i >= 0; i-- {
		if t.cols[i].Slot == slot {
			return t.nums[i]
		}
	}
	return 0
}

// fieldView is the table as the sheet of the field sees it in a row that has a strip. A figure
// of one sheet that stands right of the strip may be of either, and is read for none.
func (t *table) fieldView() *table {
	w := *t
	w.by, w.beside, w.cols = ofField, true, slices.Clone(t.cols)
	for i := range w.cols {
		c, right := &w.cols[i], t.nums[i] >= t.strip
		if t.whose(i) == onStrip || right && (ofSheet[c.Slot] || c.Slot == "substrate" || c.Slot == "touches") {
			c.Slot = ""
		}
	}
	return &w
}

// stripView is the table as the strip sees it: beside the sheet of the field, that is what it
// laps with, and its bed is its own.
func (t *table) stripView(beside bool) *table {
	w := *t
	w.by, w.beside, w.cols = onStrip, beside, slices.Clone(t.cols)
	for i := range w.cols {
		switch c := &w.cols[i]; {
		case t.nums[i] == t.strip:
			c.Slot = "material"
		case isOwn(c.Slot):
			c.Slot = "touches"
		case t.whose(i) == ofField && (beside || ofSheet[c.Slot]), beside && c.Slot == "substrate" && t.nums[i] < t.strip:
			c.Slot = ""
		}
	}
	return &w
}
