package contact

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/schedule"
)

// Find lists the contacts of every live line of a schedule.
func Find(s *schedule.Schedule) []Contact {
	var out []Contact
	var found []Contact // of one line, in room that serves all
	for i := range s.Lines {
		l := &s.Lines[i]
		if l.Struck {
			continue
		}
		f := finder{line: l, main: l.Main(), found: found[:0]}
		f.own()
		f.between()
		f.fastened()
		f.buildUp()
		if i > 0 {
			f.layer(s.Lines[:i])
		}
		f.settle()
		f.restated()
		f.runoff()
		if found = f.found; len(out)+len(found) > cap(out) { // room for as many as the lines so far make likely
			out = slices.Grow(out, len(found)+len(out)/(i+1)*(len(s.Lines)-i))
		}
		out = append(out, found...)
	}
	for i := range out {
		out[i].ID = "c" + strconv.Itoa(i+1)
	}
	shareCases(out, s.Lines)
	return out
}

// finder collects the contacts of one line.
type finder struct {
	line  *schedule.Line
	main  *schedule.Item
	found []Contact
}

// touching are the columns whose materials touch the line's own by the
// column's meaning; those of a remark touch it only where its words say so.
var touching = map[string]bool{
	"substrate": true, "primer": true, "sealant": true, "touches": true, "left": true, "right": true,
	"top": true, "bottom": true, "front": true, "behind": true, "edge": true,
}

// own finds what touches the line's own material, and the primer on its bed.
func (f *finder) own() {
	for i := range f.line.Items {
		it := &f.line.Items[i]
		if f.main == nil || it.ID == f.main.ID || f.same(it) || drains[it.Relation] || f.carried(i) {
			continue
		}
		second := f.ofSecond(i)
		switch {
		case second != nil:
			f.add(*f.main, *it, it.Slot, "near")
			f.add(*second, *it, it.Slot, kindOf(it, true))
		case it.Slot == "touches" && (f.underBed(it) || f.saidClear(i) || f.partedInWords(it) || f.saidBetween(it) || f.onBoard(i) || f.deniedInRemark(it)):
			f.add(*f.main, *it, it.Slot, "apart")
		case it.Slot == "edge" && f.partedFrom(it):
			f.add(*f.main, *it, it.Slot, "apart")
		case it.Slot == "touches" && f.pastMetal(i):
			f.add(*f.main, *it, it.Slot, "direct") // though it is named after "then", the cell tells what parts the two
		case it.Slot == "touches" && (f.heldOff(i) || f.aboveBoard(i) || f.rainedOn(it)), (it.Slot == "touches" || it.Slot == "front") && f.onInsulation(it), it.Slot == "front" && f.overBoard(i):
			f.add(*f.main, *it, it.Slot, "near")
		case f.pastBed(it):
		case touching[it.Slot]:
			f.add(*f.main, *it, it.Slot, kindOf(it, true))
		case it.Slot == "remark" && it.Side == "subject" && f.stopsShort(i):
			f.add(*f.main, *it, it.Slot, "apart")
		case it.Slot == "remark" && f.mixedIn(it):
			f.add(*f.main, *it, it.Slot, kindOf(it, true))
		case it.Slot == "remark":
			f.add(*f.main, *it, it.Slot, kindOf(it, it.Relation != "" && !(timed[it.Relation] && it.Side == "object") && !f.onAnother(it)))
		case it.Slot == "material" && (it.Relation != "" || f.mixedIn(it)):
			f.add(*f.main, *it, it.Slot, kindOf(it, true))
		}
	}
	f.primerOnBed()
	f.fastenedToBed()
	f.unnamed()
}

// unnamed finds what touches the bed in a row without a material of its own, of which two
// columns tell what meets: "- | treated blocking | aluminum edge". Where it tells how water runs
// from one to the other, they lie above one another.
func (f *finder) unnamed() {
	if what := f.line.Texts["material"]; f.main != nil || strings.ContainsFunc(what, unicode.IsLetter) && !noSheet.MatchString(what) {
		return
	}
	if slices.ContainsFunc(f.line.Items, func(it schedule.Item) bool { return drains[it.Relation] }) {
		return
	}
	for i := range f.line.Items {
		for j := range f.line.Items {
			it, bed := &f.line.Items[i], &f.line.Items[j]
			if it.Slot == "touches" && bed.Slot == "substrate" && it.Polarity == "yes" && bed.Polarity == "yes" && it.Relation == "" {
				f.add(*it, *bed, "touches", "direct")
			}
		}
	}
}

// noSheet is a cell that says that a row has no sheet, with or without what it has in brackets:
// "none (joint only)", "no membrane".
var noSheet = regexp.MustCompile(`(?i)^\W*(?:none|nil|no (?:sheet|membrane|liquid|barrier)s?)\W*(?:\([^()]*\)\W*)?$`)

// pastBed holds for what a cell of what lies about the sheet puts on the inside of the wall,
// where the row tells the bed that lies between: "Brick. Inside: studs, batts, vinyl".
func (f *finder) pastBed(it *schedule.Item) bool {
	if it.Slot != "behind" || f.line.Cells["front"] != it.At.Cell && f.line.Cells["touches"] != it.At.Cell {
		return false
	}
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool { return o.Slot == "substrate" && o.Polarity == "yes" })
}

// fastenedToBed finds the fasteners that a column of neighbors lists in the row of another
// material: they go into the lumber that it lies on.
func (f *finder) fastenedToBed() {
	if f.main == nil || f.main.Class == "fastener" {
		return
	}
	for i := range f.line.Items {
		for j := range f.line.Items {
			nail, bed := &f.line.Items[i], &f.line.Items[j]
			lumber := bed.Slot == "substrate" && bed.Class == "lumber" && bed.Polarity == "yes"
			if lumber && nail.Slot == "touches" && nail.Class == "fastener" && nail.Polarity == "yes" && nail.Relation == "" && f.aloneInClause(nail, nail) {
				f.add(*nail, *bed, "touches", "direct") // of "nails into the block" the bed is told
			}
		}
	}
}

// mixedIn holds for what the cell of a mortar or concrete, or a remark on it, says is in
// its mix: "mortar, calcium chloride added".
func (f *finder) mixedIn(it *schedule.Item) bool {
	here := it.At == f.main.At || it.Slot == "remark" && slices.Contains(it.Signals, "mixed_in")
	return it.Class == "other" && f.main.Class == "masonry" && here
}

// ofSecond gives the second material of a row where that is the one that the cell has
// named last before a neighbor: of FM-1 and LM-1, "LM-1 over the sleeve, mastic edge"
// says nothing of FM-1.
func (f *finder) ofSecond(i int) *schedule.Item {
	items := f.line.Items
	slot := items[i].Slot
	if slot != "touches" && slot != "edge" || f.after(i, func(o *schedule.Item, _ int) bool { return f.same(o) }) {
		return nil
	}
	for j := i - 1; j >= 0 && items[j].At == items[i].At && !f.same(&items[j]); j-- {
		o := &items[j]
		if slot == "edge" && o.Class == "membrane" && o.Side == "subject" && f.main.Class != "membrane" {
			return o // the edge of the sheet that meets a gasket's row
		}
		if o.Product != "" && o.Polarity == "yes" && slices.ContainsFunc(items, func(m schedule.Item) bool {
			return m.Slot == "material" && m.Polarity == "yes" && m.Product == o.Product
		}) {
			return o
		}
	}
	return nil
}

// underBed holds for a product that the row names under what its own material
// lies on ("separator over the sheet"): a list of neighbors may name it again.
func (f *finder) underBed(it *schedule.Item) bool {
	for i := range f.line.Items {
		u := &f.line.Items[i]
		if u.Slot != "under" || u.Product == "" || u.Product != it.Product {
			continue
		}
		for j := range f.line.Items {
			if bed := &f.line.Items[j]; bed.Slot == "substrate" && bed.At == u.At && bed.Clause == u.Clause {
				return !f.same(bed)
			}
		}
	}
	return false
}

// same holds for the line's own material named again (its own laps); a row may have none.
func (f *finder) same(it *schedule.Item) bool {
	return f.main != nil && it.Product != "" && it.Product == f.main.Product
}

// onAnother holds for what a remark puts on something else than the row's own
// material: "the EPDM pads stand on the steel pan". It touches that.
func (f *finder) onAnother(it *schedule.Item) bool {
	if !lies[it.Relation] || it.Side != "subject" {
		return false
	}
	own := endOf(f.line, *f.main)
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.At == it.At && o.Clause == it.Clause && o.Side == "object" && o.Family != "" && o.Class != "substrate" &&
			o.Class != f.main.Class && !covers(own, endOf(f.line, o))
	})
}

// onInsulation holds for what a cell of neighbors puts on the insulation: "EPDM over
// polyiso". The sheet lies below that.
func (f *finder) onInsulation(it *schedule.Item) bool {
	return lies[it.Relation] && it.Side == "subject" && it.Class != "insulation" && slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.At == it.At && o.Clause == it.Clause && o.Side == "object" && o.Class == "insulation"
	})
}

func (f *finder) primerOnBed() {
	for i := range f.line.Items {
		for j := range f.line.Items {
			p, bed := &f.line.Items[i], &f.line.Items[j]
			if p.Slot == "primer" && p.Polarity != "no" && !isBedInCell(p) && (bed.Slot == "substrate" || bedOf(p, bed)) {
				f.add(*p, *bed, "primer", kindOf(bed, true))
			}
		}
	}
}

// bedOf holds for what a cell of primers says that one goes on: "PR-2 on foam and curb".
func bedOf(p, bed *schedule.Item) bool {
	return bed.Slot == "primer" && bed.At == p.At && bed.Clause == p.Clause && bed.Relation == "on" && bed.Side == "object" && p.Side == "subject"
}

// isBedInCell holds for what a cell of primers names as the bed of one, and is no primer itself:
// the plaster of "PR-2 on plaster".
func isBedInCell(it *schedule.Item) bool {
	return it.Relation == "on" && it.Side == "object" && it.Class != "primer" && it.Product == ""
}

// between finds neighbors that one clause puts together: "G-2 set in S-1". A remark that
// one would not hold to the other says why they are not.
func (f *finder) between() {
	items := f.line.Items
	for i := 0; i+1 < len(items); i++ {
		a, b := &items[i], &items[i+1]
		if a.At != b.At || a.Clause != b.Clause && !driven(a, b) && !f.laidOn(i, i+1) || a.Clause == "" || a.Slot == "primer" || a.Slot == "substrate" {
			continue
		}
		if f.main != nil && (a.ID == f.main.ID || b.ID == f.main.ID) || b.Relation == "" || apartWords[b.Relation] || drains[b.Relation] || f.carried(i+1) {
			continue
		}
		f.add(*a, *b, a.Slot, kindOf(b, a.Slot != "remark" || !slices.Contains(b.Signals, "bond_failed")))
	}
}

// fastened finds what a fastener holds besides what it goes into: "nailer to slab with
// screws" puts the screws through the nailer.
func (f *finder) fastened() {
	items := f.line.Items
	for i := range items {
		for j := i + 2; j < len(items); j++ {
			a, b := &items[i], &items[j]
			if a.At != b.At || a.Clause != b.Clause || a.Clause == "" {
				break
			}
			if b.Class == "fastener" && b.Side == "object" && fastens[b.Relation] && a.Side == "subject" && a.Class != "fastener" && a.Slot == "remark" {
				f.add(*a, *b, a.Slot, kindOf(b, true))
			}
		}
	}
}

// fastens are relations of what holds a thing in its place.
var fastens = map[string]bool{"with": true, "by": true, "fastened_by": true}

// laidOn holds for what the next words, which open with how it is fixed and name nothing else,
// put on another: "aluminum curb cap, bare, bedded on the blocking".
func (f *finder) laidOn(i, j int) bool {
	a, b := &f.line.Items[i], &f.line.Items[j]
	if b.Side != "object" || !lies[b.Relation] || b.Polarity != "yes" || a.Polarity != "yes" || a.Relation != "" || f.same(b) || !opensFixed.MatchString(b.Clause) {
		return false
	}
	return !slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool { return o.At == b.At && o.Clause == b.Clause && o.ID != b.ID })
}

// opensFixed is how a thing told before is put on another.
var opensFixed = regexp.MustCompile(`(?i)^(?:is |are )?(?:laid|set|bedded|seated|stuck|screwed|nailed|fastened|fixed|bolted|riveted|placed|mounted|rests?|resting|sits?|sitting|bears?|bearing|lies|lying)\b`)

// driven holds for a fastener of which the next words tell what it goes through: "screws
// at 12 in., through the copper".
func driven(a, b *schedule.Item) bool {
	return a.Class == "fastener" && b.Relation == "through" && b.Side == "object"
}

// buildUp takes consecutive layers of a section told in one cell.
func (f *finder) buildUp() {
	var layers []*schedule.Item
	for i := range f.line.Items {
		if it := &f.line.Items[i]; it.Slot == "layers" && !slices.Contains(it.Signals, schedule.OrElse) {
			layers = append(layers, &f.line.Items[i])
		}
	}
	for i := 0; i+1 < len(layers); i++ {
		f.add(*layers[i], *layers[i+1], "build-up", "direct")
	}
}

// layer takes two rows of one assembly that follow each other in layer order.
func (f *finder) layer(earlier []schedule.Line) {
	l, before := f.line, &earlier[len(earlier)-1]
	if !whole(l.Order) || !whole(before.Order) || l.Group != before.Group || l.Sheet != before.Sheet || before.Struck {
		return
	}
	a := before.Main()
	if a == nil || f.main == nil || f.primedOtherwise(a) {
		return
	}
	if f.liesOnEarlier(earlier, a) {
		return
	}
	c := contactOf(l, *f.main, *a, "layer-order", "direct")
	c.B.Line = before.ID
	f.found = append(f.found, c)
}

// liesOnEarlier holds for a board whose cell of the bed names the product of an earlier row of
// its assembly, and not that of the row before: it lies against the field of that, and is cut
// round the flashing or strip that was told between the two.
func (f *finder) liesOnEarlier(earlier []schedule.Line, before *schedule.Item) bool {
	bed := ""
	if f.main.Class != "insulation" {
		return false // a sheet over a flashing names the wall that both are on
	}
	for i := range f.line.Items {
		if it := &f.line.Items[i]; it.Slot == "substrate" && it.Polarity == "yes" && it.Product != "" {
			if bed != "" || it.Product == before.Product {
				return false
			}
			bed = it.Product
		}
	}
	return bed != "" && before.Product != "" && slices.ContainsFunc(earlier[:len(earlier)-1], func(o schedule.Line) bool {
		m := o.Main()
		return o.Group == f.line.Group && o.Sheet == f.line.Sheet && !o.Struck && m != nil && m.Product == bed
	})
}

// primedOtherwise holds after the row of a primer that the row itself does not use: it names
// another, so that the one before is for what comes later.
func (f *finder) primedOtherwise(before *schedule.Item) bool {
	own := false
	for i := range f.line.Items {
		it := &f.line.Items[i]
		if it.Slot != "primer" || it.Polarity != "yes" || it.Class != "primer" {
			continue
		}
		if it.Product == before.Product {
			return false
		}
		own = true
	}
	return own && before.Class == "primer" && before.Product != ""
}

// settle lets the most telling words of a row win: where one cell says that a
// pair is kept apart or separated, another cell that only lists it does not
// make it touch.
func (f *finder) settle() {
	told := map[string]Contact{}
	for _, c := range f.found {
		stated := c.Kind == "apart" || c.Kind == "near" && (c.From != "remark" || f.keptOff(c)) || c.Kind == "separated"
		if key := pair(c); key != "" && stated {
			if _, ok := told[key]; !ok || c.Kind == "apart" {
				told[key] = c
			}
		}
	}
	for i := range f.found {
		c := &f.found[i]
		by, ok := told[pair(*c)]
		if !ok && c.B.Product != "" { // "not on the asphalt sheet", whichever it is
			kind := *c
			kind.B.Product = ""
			by, ok = told[pair(kind)]
			ok = ok && by.Kind == "apart"
		}
		if kept, said := f.keptByKind(*c); said && (!ok || by.Kind == "near") {
			by, ok = kept, true
		}
		left := slices.Contains(c.Signals, "left_on") // "old mastic cut out, a film of it left on"
		near := by.Kind == "near" && !slices.Contains(by.Signals, "no_contact") && !f.listed(c.B) && !(beside[c.From] && by.From == "remark" && f.keptOff(by))
		if !ok || c.Kind != "direct" || c.B.Item == by.B.Item || near || left {
			continue
		}
		c.Kind, c.Separator, c.ClearMM = by.Kind, by.Separator, by.ClearMM
		c.Signals = by.Signals
	}
}

// beside are the columns of neighbors, of which a remark may say that they are kept off.
var beside = map[string]bool{"touches": true, "left": true, "right": true, "top": true, "bottom": true}

func (f *finder) ownIsSubject(it *schedule.Item) bool {
	return it.Side == "object" && slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.At == it.At && o.Clause == it.Clause && o.Side == "subject" && f.same(&o)
	})
}

// restated drops what a remark says again of a contact that the row's columns
// show, by words for the chemistry alone: "EPDM on bitumen".
func (f *finder) restated() {
	f.found = slices.DeleteFunc(f.found, func(c Contact) bool {
		return f.glossed(c) || c.From == "remark" && c.Kind == "direct" && (covers(c.A, c.B) || slices.ContainsFunc(f.found, func(d Contact) bool {
			return d.From != "remark" && (d.Kind == "direct" || d.Kind == "separated") && (covers(d.A, c.A) && covers(d.B, c.B) || covers(d.A, c.B) && covers(d.B, c.A))
		}))
	})
}

// glossed holds for words for the chemistry alone that a cell of neighbors has right before
// the thing made of it: the vinyl of "soft vinyl (PVC) bulb seal".
func (f *finder) glossed(c Contact) bool {
	items := f.line.Items
	i := slices.IndexFunc(items, func(o schedule.Item) bool { return o.ID == c.B.Item })
	if c.From != "touches" || i < 0 || i+1 >= len(items) || items[i+1].At != items[i].At || !strings.Contains(items[i+1].Text, ")") {
		return false
	}
	thing := endOf(f.line, items[i+1])
	return thing.Family != "" && covers(thing, c.B) && slices.ContainsFunc(f.found, func(d Contact) bool {
		return d.A.Item == c.A.Item && d.B.Item == thing.Item && d.Kind == c.Kind
	})
}

// covers holds where b is a or names no more than what a is made of.
func covers(a, b End) bool {
	if a.Item == b.Item {
		return true
	}
	return b.Family == "" && len(b.Keys) > 0 && !slices.ContainsFunc(b.Keys, func(k string) bool { return !slices.Contains(a.Keys, k) })
}

// pair names a contact by what its sides are, "" where the second is unknown.
func pair(c Contact) string {
	b := c.B.Family
	if b == "" {
		b = strings.Join(c.B.Keys, "+") // "EPDM" may be a sheet or a gasket
	}
	if b == "" {
		return ""
	}
	return c.A.Product + "/" + c.A.Family + "|" + c.B.Product + "/" + b
}

// listed holds for an end that a column lists without more words.
func (f *finder) listed(e End) bool {
	switch e.Slot {
	case "sealant", "substrate", "primer":
		return true
	}
	return false
}

// whole holds for the number of a layer; a letter after it ("2a") marks an
// accessory of the layer, which tells its neighbors itself.
func whole(order string) bool {
	_, err := strconv.Atoi(strings.TrimSpace(order))
	return err == nil
}

// timed are relations of which the second side tells when, and not what touches.
var timed = map[string]bool{"before": true, "after": true}

// apartWords are relations that keep two materials apart.
var apartWords = map[string]bool{"clear_of": true, "separated_by": true, "between": true, "before": true, "after": true}

// kindOf tells how an item meets another: by what its clause says.
func kindOf(it *schedule.Item, touches bool) string {
	switch {
	case it.Polarity == "no" && it.Relation == "clear_of" && it.ClearMM == nil && touches: // "nothing keeps it off"
		return "direct"
	case it.Polarity == "no" && it.Relation == "between" && it.Side == "object" && it.Slot == "remark" && !slices.Contains(it.Signals, "no_contact"):
		return "near" // "no metal between gasket and sheet" keeps the two no further apart
	case it.Polarity == "no" || it.Polarity == "removed":
		return "apart"
	case slices.Contains(it.Signals, "embedded") || slices.Contains(it.Signals, "metal_to_metal"):
		return "apart"
	case slices.Contains(it.Signals, "lies_elsewhere") && it.Side != "object":
		return "apart"
	case it.ClearMM != nil && *it.ClearMM > 0 || it.Relation == "clear_of" || beyond(it) || slices.Contains(it.Signals, "no_contact"):
		return "near"
	case it.Relation == "inside" && it.Side == "subject" && it.Slot != "substrate": // "gland inside the clamp frame"
		return "near"
	case it.Polarity == "conditional" || !touches:
		return "near"
	}
	return "direct"
}

// beyond holds for "wool, then brick": the second is behind the first, and only
// the first is touched.
func beyond(it *schedule.Item) bool {
	last := it.Relation == "" && liesBeyond.MatchString(it.Clause) // "closure plate; AB-1 beyond"
	return (it.Relation == "then" || last) && it.Slot != "material" && it.Slot != "primer"
}

// liesBeyond ends the words for what stands behind all that was named before.
var liesBeyond = regexp.MustCompile(`(?i)\S\s+beyond\W*$`)

// add records a contact; a separator named for the pair makes it separated.
func (f *finder) add(a, b schedule.Item, from, kind string) {
	c := contactOf(f.line, a, b, from, kind)
	if kind == "direct" {
		if s := f.separator(&a, &b); s != nil {
			end := endOf(f.line, *s)
			c.Kind, c.Separator = "separated", &end
		}
	}
	f.found = append(f.found, c)
}

func contactOf(l *schedule.Line, a, b schedule.Item, from, kind string) Contact {
	signals := []string{}
	for _, s := range append(slices.Clone(a.Signals), b.Signals...) {
		// what was removed is told by the polarity of the item that was
		if s != "removed" && !slices.Contains(signals, s) {
			signals = append(signals, s)
		}
	}
	return Contact{
		Line: l.ID, A: endOf(l, a), B: endOf(l, b), Kind: kind, Upper: upper(&b), ClearMM: b.ClearMM, Wet: wet(a) || wet(b),
		From: from, Signals: signals, Clause: b.Clause, At: b.At,
	}
}

// upper tells whether the row's own material lies over an item (a) or under it (b), by
// the item's column, else by its words: "laps onto FM-1" has the item over FM-1.
func upper(it *schedule.Item) string {
	switch it.Slot {
	case "substrate", "behind", "under":
		return "a"
	case "front":
		return "b"
	}
	switch {
	case it.Side == "subject" && onto[it.Relation], it.Side == "object" && it.Relation == "under":
		return "b"
	case it.Side == "object" && onto[it.Relation], it.Side == "subject" && it.Relation == "under":
		return "a"
	}
	return ""
}

// onto are relations of what lies over another.
var onto = map[string]bool{"on": true, "over": true, "lapped_onto": true}

func wet(it schedule.Item) bool {
	switch it.Class {
	case "primer", "sealant", "mastic":
		return true
	}
	return slices.Contains(it.Keys, "uncured-cement")
}

func endOf(l *schedule.Line, it schedule.Item) End {
	return End{
		Item: it.ID, Line: l.ID, Slot: it.Slot, Text: it.Text, Tag: it.Tag, Product: it.Product, Family: it.Family,
		Name: it.Name, Class: it.Class, Keys: it.Keys, At: it.At,
	}
}
