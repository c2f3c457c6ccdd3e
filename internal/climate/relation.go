package climate

import (
	"strconv"
	"strings"
)

// relation reads what stands before a city: "18 mi. west of", "near".
func (r *reader) relation(m *mention) {
	j := m.from - 1
	if j < 0 || !r.toks[j].isWord() {
		return
	}
	if r.v.is("near", r.toks[j].text) && r.distanceBefore(m, j) {
		return
	}
	if r.v.is("near", r.toks[j].text) {
		m.score = max(m.score, byNearness)
		return
	}
	if !r.v.is("relation", r.toks[j].text) {
		return
	}
	j--
	if j >= 0 && r.v.is("near", r.toks[j].text+" of") {
		m.score = max(m.score, byNearness)
		return
	}
	var heading *float64
	for ; j >= 0 && r.toks[j].isWord(); j-- {
		d, ok := r.v.Directions[strings.TrimRight(strings.ToLower(r.toks[j].text), ".")]
		if !ok {
			break
		}
		if heading == nil {
			heading = &d
		} else {
			mid := between(*heading, d)
			heading = &mid
		}
	}
	if heading != nil {
		m.bearing = heading
		m.score = max(m.score, byNearness)
	}
	r.distanceBefore(m, j+1)
}

// between gives the middle of two bearings: "north" and "west" of "north west".
func between(a, b float64) float64 {
	d := a - b
	for d > 180 {
		d -= 360
	}
	for d < -180 {
		d += 360
	}
	mid := b + d/2
	if mid < 0 {
		mid += 360
	}
	return mid
}

// distanceBefore reads a number and a unit that end before token j, a word
// such as "due" or "just" between them allowed.
func (r *reader) distanceBefore(m *mention, j int) bool {
	for back := 0; back <= 1; back++ {
		u := j - 1 - back
		if u < 1 {
			return false
		}
		unit, ok := r.v.DistanceUnits[strings.TrimRight(strings.ToLower(r.toks[u].text), ".")]
		if !ok {
			continue
		}
		x, err := strconv.ParseFloat(strings.ReplaceAll(r.toks[u-1].text, ",", ""), 64)
		if err != nil || x <= 0 {
			return false
		}
		m.km, m.from, m.score = x*unit, u-1, byDistance
		return true
	}
	return false
}
