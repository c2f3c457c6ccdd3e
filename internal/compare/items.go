package compare

import (
	"slices"

	"abut/internal/schedule"
)

// item is a material with its words made plain, once, since it is held against
// those of every line of the other side.
type item struct {
	*schedule.Item
	text, tag string
	standsFor []string // in whose place its data offers it
}

func newItem(it *schedule.Item) item {
	return item{Item: it, text: plainWords(it.Text), tag: plainWords(it.Tag)}
}

// same: the same tag, the same words, or the same family where not both are
// products by name.
func (a item) same(b item) bool {
	if a.text == b.text {
		return true
	}
	if a.tag != "" && b.tag != "" {
		return a.tag == b.tag
	}
	return a.Family != "" && a.Family == b.Family
}

// standsIn: the data of the second offers it in place of the first.
func (a item) standsIn(b item) bool { return a.tag != "" && slices.Contains(b.standsFor, a.tag) }

// difference lists the materials that only the first list has, and those that
// only the second has, each once.
func difference(was, now []item) (gone, added []item) {
	return without(was, now), without(now, was)
}

func without(list, other []item) []item {
	var out []item
	for _, it := range list {
		is := func(o item) bool { return it.same(o) }
		if !slices.ContainsFunc(other, is) && !slices.ContainsFunc(out, is) {
			out = append(out, it)
		}
	}
	return out
}

// replaced is one material in place of another.
type replaced struct{ was, now item }

// replacements pairs what is gone with what was added: first what its data offers
// in place of the other, then the same class in the same column, then the same class, then what is the only liquid, or the
// only solid, in its column.
func (c *Comparer) replacements(gone, added []item) []replaced {
	var out []replaced
	used := map[*schedule.Item]bool{}
	pass := func(fits func(a, b item) bool) {
		for _, a := range gone {
			for _, b := range added {
				if !used[a.Item] && !used[b.Item] && fits(a, b) {
					used[a.Item], used[b.Item] = true, true
					out = append(out, replaced{a, b})
				}
			}
		}
	}
	sameClass := func(a, b item) bool { return a.Class != "" && a.Class == b.Class }
	pass(item.standsIn)
	pass(func(a, b item) bool { return a.Slot == b.Slot && sameClass(a, b) })
	pass(sameClass)
	pass(func(a, b item) bool {
		return a.Slot == b.Slot && c.liquid(a) == c.liquid(b) && c.alone(a, gone) && c.alone(b, added)
	})
	return out
}

// alone: nothing else of the list that is liquid, or solid, as this is, stands
// in its column.
func (c *Comparer) alone(it item, list []item) bool {
	return !slices.ContainsFunc(list, func(o item) bool {
		return o.Item != it.Item && o.Slot == it.Slot && c.liquid(o) == c.liquid(it)
	})
}

// liquid also holds for what stands in a column of liquids and is not known.
func (c *Comparer) liquid(it item) bool {
	return slices.Contains(c.set.Liquids, or(it.Class, it.Slot))
}
