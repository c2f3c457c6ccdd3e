package contact

import (
	"slices"
	"strings"

	"abut/internal/schedule"
)

// saidClear holds for a material of which the next words of its cell say that it is
// clear of the row's own, by its product or what it is: "RM-2 ends on the metal, 2 in.
// clear of FM-1", "RM-2 laps the metal, not on FM-1", "not touching the EPDM".
func (f *finder) saidClear(i int) bool {
	return f.after(i, func(o *schedule.Item, _ int) bool {
		if !f.same(o) {
			return f.calledSo(o) && o.Polarity == "no" && (o.Relation == "against" || lies[o.Relation])
		}
		return o.Relation == "clear_of" || o.ClearMM != nil && *o.ClearMM > 0 || o.Polarity == "no" && o.Relation != ""
	})
}

// calledSo holds for words that call the row's own material by its family, or by what it
// is made of.
func (f *finder) calledSo(it *schedule.Item) bool {
	if it.Product != "" || it.Family != "" {
		return it.Product == "" && it.Family == f.main.Family
	}
	return len(it.Keys) > 0 && !slices.ContainsFunc(it.Keys, func(k string) bool { return !slices.Contains(f.main.Keys, k) })
}

// stopsShort holds for a material that the next words of a remark keep a distance from
// the row's own, by its product or what it is: "ends on the metal, 2 in. short of the
// asphalt sheet".
func (f *finder) stopsShort(i int) bool {
	return f.after(i, func(o *schedule.Item, _ int) bool {
		own := f.same(o) || o.Family != "" && f.calledSo(o)
		return own && o.Polarity == "yes" && o.ClearMM != nil && *o.ClearMM > 0
	})
}

// saidBetween holds for a material that the cell names again as one of two with something
// between them that is no material of its own: "gasket; board between gasket and sheet".
func (f *finder) saidBetween(it *schedule.Item) bool {
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != it.ID && o.At == it.At && o.Relation == "between" && o.Side == "object" && o.Polarity == "yes" &&
			slices.Contains(o.Signals, "separator") && f.names(&o, it)
	})
}

// partedFrom holds for a material that a cell names as one of two with something between
// them, of which the other is the row's own: "closure plate between gasket and sheet" in
// the row of the gasket.
func (f *finder) partedFrom(it *schedule.Item) bool {
	if it.Relation != "between" || it.Side != "object" || it.Polarity != "yes" || !slices.Contains(it.Signals, "separator") {
		return false
	}
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != it.ID && o.At == it.At && o.Clause == it.Clause && o.Side == "object" && (f.same(&o) || o.Family != "" && f.calledSo(&o))
	})
}

// heldOff holds for a material that the next words of its cell put elsewhere: on
// another that lies on the row's own ("gasket over the steel sheet over FM-1"), or
// inside a pocket.
func (f *finder) heldOff(i int) bool {
	return f.after(i, func(o *schedule.Item, far int) bool {
		return f.same(o) && far > 1 && lies[o.Relation] || far == 1 && slices.Contains(o.Signals, "inside_pocket")
	})
}

// overBoard holds for what a cell of covers names after a layer of insulation, board or
// sheet metal, which lies between: "polyiso, EPDM".
func (f *finder) overBoard(i int) bool {
	for j := i - 1; j >= 0 && f.line.Items[j].At == f.line.Items[i].At; j-- {
		if o := &f.line.Items[j]; o.Polarity == "yes" && (o.Class == "insulation" || o.Class == "sheathing" || o.Class == "flashing-metal" && o.Product != "" || strings.HasSuffix(o.Family, "cover-board")) {
			return true
		}
	}
	return false
}

// lies are relations of what lies on another.
var lies = map[string]bool{"over": true, "on": true}

// partedInWords holds for roofing whose own words name what parts it, and no other item
// does: "PVC roofing w/ slip sheet".
func (f *finder) partedInWords(it *schedule.Item) bool {
	if !slices.Contains(it.Signals, "separator") || it.Class != "roofing" {
		return false
	}
	return !slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != it.ID && o.At == it.At && o.Clause == it.Clause
	})
}

// after asks of the items that follow one in its cell, up to the next of which something
// is told; far counts them.
func (f *finder) after(i int, holds func(o *schedule.Item, far int) bool) bool {
	it := &f.line.Items[i]
	for j := i + 1; j < len(f.line.Items); j++ {
		o := &f.line.Items[j]
		if o.At != it.At || o.Side == "subject" || o.Clause != it.Clause && o.Relation == "" {
			return false
		}
		if holds(o, j-i) {
			return true
		}
	}
	return false
}

// keptOff holds where the words give a distance, or say that the sheet was held
// back from the very material ("stops 40 short of the gasket"), or that the
// row's own product, by its name, is clear of it.
func (f *finder) keptOff(c Contact) bool {
	return c.ClearMM != nil || slices.ContainsFunc(f.line.Items, func(it schedule.Item) bool {
		return it.ID == c.B.Item && it.Relation == "clear_of" && (slices.Contains(c.Signals, "held_back") || f.ownIsSubject(&it))
	})
}
