package hygro

import "math"

// node is a point of the section, counted from the outside inward. Between
// layers inner and outer differ; inside a layer they are the same. -1 is air.
type node struct {
	r     float64 // m²K/W from the outside air
	sd    float64 // m from the outside face
	outer int
	inner int
}

// section is the counted part, divided so that no step is larger than the
// method allows (ISO 13788: layers of high resistance are divided).
type section struct {
	nodes  []node
	rTotal float64
	delta0 float64 // g/(m·s·Pa)
}

// newSection divides the counted layers, which are all known.
func newSection(layers []LayerResult, rsi, rse, maxR, minSd, delta0NG float64) section {
	s := section{delta0: delta0NG * 1e-9}
	at := node{r: rse, outer: -1, inner: -1}
	for i := len(layers) - 1; i >= 0; i-- {
		l := layers[i]
		if !l.Counted {
			continue
		}
		at.inner = i
		s.nodes = append(s.nodes, at)
		steps := max(1, int(math.Ceil(*l.R/maxR-1e-9)))
		dr, dsd := *l.R/float64(steps), max(*l.SdM, minSd)/float64(steps)
		for range steps - 1 {
			at = node{r: at.r + dr, sd: at.sd + dsd, outer: i, inner: i}
			s.nodes = append(s.nodes, at)
		}
		at = node{r: at.r + dr, sd: at.sd + dsd, outer: i, inner: -1}
	}
	s.nodes = append(s.nodes, at)
	s.rTotal = at.r + rsi
	return s
}

// temperatures gives °C at every node.
func (s section) temperatures(outC, inC float64) []float64 {
	temps := make([]float64, len(s.nodes))
	for i, n := range s.nodes {
		temps[i] = outC + (inC-outC)*n.r/s.rTotal
	}
	return temps
}

// flow gives the vapor pressure in Pa at every node and the vapor that stays
// there in g/(m²·s), below zero where water dries. Nodes that hold water are at
// saturation; between these the profile is the tightest convex line under the
// saturation line, which is Glaser's construction for any number of planes.
func (s section) flow(sat, water []float64, outPa, inPa float64) (pressure, stays []float64) {
	last := len(s.nodes) - 1
	limit := make([]float64, len(sat))
	copy(limit, sat)
	limit[0], limit[last] = min(outPa, sat[0]), min(inPa, sat[last])
	touched := []int{0}
	from := 0
	for i := 1; i <= last; i++ {
		if i == last || water[i] > 0 {
			touched = append(touched, s.hull(limit, from, i)[1:]...)
			from = i
		}
	}
	return s.along(limit, touched)
}

// hull lists the nodes that the lower convex line between two nodes touches.
func (s section) hull(limit []float64, from, to int) []int {
	var line []int
	for i := from; i <= to; i++ {
		for len(line) >= 2 && s.slope(limit, line[len(line)-2], line[len(line)-1]) >= s.slope(limit, line[len(line)-1], i) {
			line = line[:len(line)-1]
		}
		line = append(line, i)
	}
	return line
}

func (s section) slope(p []float64, a, b int) float64 {
	return (p[b] - p[a]) / (s.nodes[b].sd - s.nodes[a].sd)
}

// along draws the line through the touched nodes and takes what stays at each.
func (s section) along(limit []float64, touched []int) (pressure, stays []float64) {
	pressure, stays = make([]float64, len(limit)), make([]float64, len(limit))
	for k, i := range touched {
		pressure[i] = limit[i]
		if k == 0 {
			continue
		}
		before := touched[k-1]
		slope := s.slope(limit, before, i)
		for j := before + 1; j < i; j++ {
			pressure[j] = limit[before] + slope*(s.nodes[j].sd-s.nodes[before].sd)
		}
		if k+1 < len(touched) {
			stays[i] = s.delta0 * (s.slope(limit, i, touched[k+1]) - slope)
		}
	}
	return pressure, stays
}
