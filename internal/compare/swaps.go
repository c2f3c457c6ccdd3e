package compare

import (
	"maps"
	"slices"

	"abut/internal/document"
	"abut/internal/schedule"
)

// swaps lists the materials of a line that stand in place of others, its own
// first. The same product is listed where its data tells something else.
func (c *Comparer) swaps(was, now *side, old, offered *schedule.Line) []document.Swap {
	var out []document.Swap
	a, b := mainOf(old), mainOf(offered)
	if a != nil && b != nil && !c.vague(newItem(b)) {
		swap := c.swap(was, now, old, offered, a, b)
		if swap.Same = newItem(a).same(newItem(b)); !swap.Same || differs(swap) {
			out = append(out, swap)
		}
	}
	gone, new := difference(c.telling(was.around(old, c.set)), c.telling(now.around(offered, c.set)))
	for _, r := range c.replacements(gone, new) {
		out = append(out, c.swap(was, now, old, offered, r.was.Item, r.now.Item))
	}
	return out
}

// telling leaves out the materials whose kind is left open ("bead"): what they
// are is told elsewhere, or not at all.
func (c *Comparer) telling(items []item) []item {
	return slices.DeleteFunc(slices.Clone(items), c.vague)
}

func (c *Comparer) vague(it item) bool {
	return it.Tag == "" && it.Product == "" && (it.Family != "" && c.open[it.Family])
}

func differs(s document.Swap) bool {
	return len(s.Lost) > 0 || slices.ContainsFunc(s.Figures, func(f document.Compared) bool {
		return f.Order != equal && f.Order != none
	})
}

func (c *Comparer) swap(was, now *side, old, offered *schedule.Line, a, b *schedule.Item) document.Swap {
	before, after := was.product(a), now.product(b)
	if after == nil {
		after = was.product(b)
	}
	if before == nil {
		before = now.product(a)
	}
	s := document.Swap{Slot: b.Slot, Was: offer(a, before, old), Now: offer(b, after, offered)}
	for _, kind := range slices.Sorted(maps.Keys(c.set.Figures)) {
		f, g := c.figure(kind, before, old, a), c.figure(kind, after, offered, b)
		if how := order(f, g, kind, c.set); how != none {
			s.Figures = append(s.Figures, document.Compared{Kind: kind, Was: f, Now: g, Order: how})
		}
	}
	if before != nil && after != nil {
		for _, l := range lostSubstrates(before, after, offered) {
			s.Lost = append(s.Lost, document.Lost{Text: l.target.Text, Here: l.here, At: l.target.At})
		}
	}
	return s
}

func offer(it *schedule.Item, p *schedule.Product, l *schedule.Line) document.Offer {
	out := document.Offer{
		Text: it.Text, Tag: it.Tag, Family: it.Family, Name: it.Name, Class: it.Class, Keys: it.Keys, At: it.At, Role: it.Class,
	}
	if main := mainOf(l); main != nil && main.ID == it.ID {
		out.Role = l.Role
	}
	if p != nil {
		out.Product, out.Data, out.Texts = p.ID, true, p.Texts
		out.Name = or(p.Name, out.Name)
		if out.Family == "" {
			out.Family, out.Class = p.Family, p.Class
		}
		if len(out.Keys) == 0 {
			out.Keys = p.Keys
		}
	}
	return out
}

// figure is what product data says, else what the row says of its own material.
func (c *Comparer) figure(kind string, p *schedule.Product, l *schedule.Line, it *schedule.Item) schedule.Figure {
	if p != nil {
		if f, ok := p.Figures[kind]; ok {
			if _, known := middle(f, c.set.Figures[kind]); known {
				return f
			}
		}
	}
	if main := mainOf(l); main != nil && main.ID == it.ID {
		return l.Figures[kind]
	}
	return schedule.Figure{}
}
