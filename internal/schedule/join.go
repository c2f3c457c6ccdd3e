package schedule

import "strings"

// joinKeys takes the column of product data whose words stand again in a column
// of the schedule for the key of the products, and that column for the tags,
// whatever the two are called ("PD" over PD-01, PD-02, ...).
func (r *reader) joinKeys(all []*table) {
	for _, p := range all {
		if p.kind != kindProducts {
			continue
		}
		best, own, line, lineTable := 0, -1, -1, (*table)(nil)
		for i := range p.cols {
			keys := p.codes(i)
			if len(keys) < leastKeys {
				continue
			}
			for _, t := range all {
				if t.kind != kindSchedule {
					continue
				}
				for j := range t.cols {
					if n := t.shares(j, keys); n > best {
						best, own, line, lineTable = n, i, j, t
					}
				}
			}
		}
		if own < 0 || p.cols[own].Slot == "tag" {
			continue
		}
		p.rekey(own)
		if c := &lineTable.cols[line]; lineTable.column("tag") == 0 && !itemSlots[c.Slot] {
			c.Slot, c.Why = "tag", "the keys of the product data stand under it"
		}
	}
}

// leastKeys is how many keys two columns must share, and mostShare the part of a
// schedule's codes that must be keys, in tenths.
const (
	leastKeys = 3
	mostShare = 6
)

// codes lists the short codes of a column, each once; none where one stands
// twice or the column holds other words.
func (t *table) codes(i int) map[string]bool {
	out := map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		v := fold(text(t.sheet, row, t.nums[i]))
		if v == "" || t.ownCells(row) < 2 {
			continue
		}
		if out[v] || len(v) > longestCode || !strings.ContainsAny(v, "0123456789") {
			return nil
		}
		out[v] = true
	}
	return out
}

// longestCode is how long the key of a product is at most.
const longestCode = 10

// shares counts the rows of a column that hold one of the keys; 0 where most of
// its words are none.
func (t *table) shares(i int, keys map[string]bool) int {
	filled, found, seen := 0, 0, map[string]bool{}
	for row := t.first; row <= t.last; row++ {
		v := fold(text(t.sheet, row, t.nums[i]))
		if v == "" || t.ownCells(row) < 2 {
			continue
		}
		filled++
		if keys[v] {
			found++
			seen[v] = true
		}
	}
	if len(seen) < leastKeys || found*10 < filled*mostShare {
		return 0
	}
	return found
}

// rekey makes one column the key of the products, and the one that was it the
// trade name.
func (t *table) rekey(own int) {
	for i := range t.cols {
		if t.cols[i].Slot == "tag" {
			t.cols[i].Slot = "alias"
		}
	}
	t.cols[own].Slot, t.cols[own].Why = "tag", "its words stand again in the schedule"
}
