package html

import (
	"fmt"
	"slices"
	"strings"
)

// marker puts findings onto the parts of a section.
type marker struct {
	s    *section
	used []point
}

// put marks a finding: on each joint that it judges; for a pairing on the
// joint of the two parts whose cells it names; else on the first such part.
// What names no part of the section is marked on the part at home.
func (b *board) put(m *marker, f found, home int) {
	parts := m.s.Parts
	if joints := b.joints(f, parts); len(joints) > 0 {
		for _, j := range joints {
			m.joint(f, j[0], j[1])
		}
		return
	}
	if on := judged(f, parts); len(on) > 1 {
		for _, other := range on[1:] {
			m.joint(f, on[0], other)
		}
		return
	}
	on := named(f, parts)
	switch {
	case f.Topic == "pairing" && len(on) == 2:
		m.joint(f, on[0], on[1])
	case len(on) > 0:
		m.part(f, on[0])
	case home >= 0:
		m.part(f, home)
	}
}

// joint marks where two parts meet: along the edge that they share, or by a
// line from one to the other.
func (m *marker) joint(f found, i, j int) {
	a, b := m.s.Parts[i], m.s.Parts[j]
	m.s.Faults = append(m.s.Faults, fault{f, joined(a.Letter, b.Letter)})
	d := &m.s.Picture
	if i == j {
		m.outline(f, a.box)
		return
	}
	if a.box.x > b.box.x {
		a, b = b, a
	}
	top, bottom := max(a.box.y, b.box.y), min(a.box.y+a.box.h, b.box.y+b.box.h)
	p, q := a.box.middle(), b.box.middle()
	if bottom > top && a.box.x != b.box.x {
		p, q = point{a.box.x + a.box.w, (top + bottom) / 2}, point{b.box.x, (top + bottom) / 2}
	}
	if q.x-p.x <= primerWide && p.y == q.y { // a primer between them is drawn as wide
		d.path("joint "+f.Severity, false, point{q.x, top}, point{q.x, bottom})
		m.number(f, point{q.x, q.y})
		return
	}
	d.path("link "+f.Severity, false, p, q)
	m.number(f, point{(p.x + q.x) / 2, (p.y + q.y) / 2})
}

func (m *marker) part(f found, i int) {
	m.s.Faults = append(m.s.Faults, fault{f, m.s.Parts[i].Letter})
	m.outline(f, m.s.Parts[i].box)
}

func (m *marker) outline(f found, b box) {
	m.s.Picture.rect(b.x, b.y, b.w, b.h, "outline "+f.Severity)
	m.stacked(f, point{b.x + b.w/2, b.y + b.h - 18}, -1)
}

// number sets the mark at a place, below those that are there already.
func (m *marker) number(f found, p point) { m.stacked(f, p, 1) }

// stacked sets the mark at a place or, where one is there, below (1) or above
// it (-1).
func (m *marker) stacked(f found, p point, way float64) {
	const apart, slack = 27.0, 0.01 // without slack a sum that is rounded down would be moved for ever
	for again := true; again; {
		again = false
		for _, u := range m.used {
			if abs(u.x-p.x) < apart && abs(u.y-p.y) < apart-slack {
				p.y, again = u.y+way*apart, true
			}
		}
	}
	m.used = append(m.used, p)
	m.s.Picture.mark(p.x, p.y, f.Severity, f.Number)
}

func abs(x float64) float64 { return max(x, -x) }

func joined(a, b string) string {
	if a == b {
		return a
	}
	return fmt.Sprintf("%s and %s", a, b)
}

// Has says whether the finding is drawn on the part with this letter.
func (f fault) Has(letter string) bool {
	return slices.Contains(strings.Split(f.On, " and "), letter)
}
