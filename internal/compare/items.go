package compare

import (
	"slices"

	"abut/internal/schedule"
)

// sameItem: the same tag, the same words, or the same family where not both
// are products by name.
func sameItem(a, b *schedule.Item) bool {
	if plainWords(a.Text) == plainWords(b.Text) {
		return true
	}
	tag, other := plainWords(a.Tag), plainWords(b.Tag)
	if tag != "" && other != "" {
		return tag == other
	}
	return a.Family != "" && a.Family == b.Family
}

// difference lists the materials that only the first list has, and those that
// only the second has, each once.
func difference(was, now []*schedule.Item) (gone, added []*schedule.Item) {
	return without(was, now), without(now, was)
}

func without(list, other []*schedule.Item) []*schedule.Item {
	var out []*schedule.Item
	for _, it := range list {
		is := func(o *schedule.Item) bool { return sameItem(it, o) }
		if !slices.ContainsFunc(other, is) && !slices.ContainsFunc(out, is) {
			out = append(out, it)
		}
	}
	return out
}

// replaced is one material in place of another.
type replaced struct{ was, now *schedule.Item }

// replacements pairs what is gone with what was added: first the same class in
// the same column, then the same class, then what is the only liquid, or the
// only solid, in its column.
func (c *Comparer) replacements(gone, added []*schedule.Item) []replaced {
	var out []replaced
	used := map[*schedule.Item]bool{}
	pass := func(fits func(a, b *schedule.Item) bool) {
		for _, a := range gone {
			for _, b := range added {
				if !used[a] && !used[b] && fits(a, b) {
					used[a], used[b] = true, true
					out = append(out, replaced{a, b})
				}
			}
		}
	}
	sameClass := func(a, b *schedule.Item) bool { return a.Class != "" && a.Class == b.Class }
	pass(func(a, b *schedule.Item) bool { return a.Slot == b.Slot && sameClass(a, b) })
	pass(sameClass)
	pass(func(a, b *schedule.Item) bool {
		return a.Slot == b.Slot && c.liquid(a) == c.liquid(b) && c.alone(a, gone) && c.alone(b, added)
	})
	return out
}

// alone: nothing else of the list that is liquid, or solid, as this is, stands
// in its column.
func (c *Comparer) alone(it *schedule.Item, list []*schedule.Item) bool {
	return !slices.ContainsFunc(list, func(o *schedule.Item) bool {
		return o != it && o.Slot == it.Slot && c.liquid(o) == c.liquid(it)
	})
}

// liquid also holds for what stands in a column of liquids and is not known.
func (c *Comparer) liquid(it *schedule.Item) bool {
	return slices.Contains(c.set.Liquids, or(it.Class, it.Slot))
}
