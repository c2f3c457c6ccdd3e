package schedule

import (
	"slices"
	"strings"
)

// laidBefore takes what a row names in a column beside that of its sheet for what the row
// is about, where the sheet is said to lie there before the work: "AB-1 in place", with
// a flashing that laps onto it; or where the row has no sheet. The sheet is then what the
// work goes on, and its primer and laps are told in the row in which it is laid.
func (r *reader) laidBefore(l *Line) {
	if !slices.ContainsFunc(l.Items, func(it Item) bool { return it.Slot == "with" && it.Polarity == "yes" && it.Product != "" }) {
		return
	}
	for i := range l.Items {
		if it := &l.Items[i]; it.Slot == "tag" || it.Slot == "material" && !r.isLaid(l, it) {
			return
		}
	}
	for i := range l.Items {
		switch it := &l.Items[i]; it.Slot {
		case "material":
			it.Slot = "substrate"
			if l.hasBed(it) {
				it.Slot = "under"
			}
		case "with":
			it.Slot = "material"
		}
	}
	l.Cells["material"], l.Cells["with"] = l.Cells["with"], l.Cells["material"]
	l.Texts["material"], l.Texts["with"] = l.Texts["with"], l.Texts["material"]
}

// isLaid holds for a product of which a row says that it lies there before its own work.
func (r *reader) isLaid(l *Line, it *Item) bool {
	if it.Tag == "" || it.Product == "" {
		return false
	}
	tag := strings.ToLower(it.Tag)
	for _, slot := range []string{"substrate", "remark"} {
		for text := strings.ToLower(l.Texts[slot]); ; {
			_, after, found := strings.Cut(text, tag)
			if !found {
				break
			}
			if r.words.laidBefore.MatchString(after) {
				return true
			}
			text = after
		}
	}
	return false
}

// hasBed holds where a row names the product of an item among what its work goes on.
func (l *Line) hasBed(it *Item) bool {
	return slices.ContainsFunc(l.Items, func(o Item) bool {
		return o.ID != it.ID && o.Slot == "substrate" && o.Polarity == "yes" && o.Product == it.Product
	})
}
