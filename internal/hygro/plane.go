package hygro

import "fmt"

// planes gathers the nodes that ever hold water into planes, room side first.
// Nodes within one layer are one plane.
func (s section) planes(layers []LayerResult, runs []monthRun, held [][]float64) []Plane {
	out := []Plane{}
	for i := len(s.nodes) - 1; i >= 0; i-- {
		if !everWet(held, i) {
			continue
		}
		n := s.nodes[i]
		if k := len(out) - 1; k < 0 || out[k].Inner != n.inner || out[k].Outer != n.outer {
			out = append(out, Plane{Inner: n.inner, Outer: n.outer, Text: planeText(layers, n)})
		}
		p := &out[len(out)-1]
		for m := range 12 {
			p.GM2[m] += runs[m].change[i]
			p.Potential[m] += runs[m].potential[i]
			p.Left[m] += held[m][i]
		}
	}
	for k := range out {
		out[k].finish()
	}
	return out
}

func everWet(held [][]float64, i int) bool {
	for m := range held {
		if held[m][i] > traceG {
			return true
		}
	}
	return false
}

func planeText(layers []LayerResult, n node) string {
	if n.inner == n.outer {
		return "within " + layers[n.inner].Name
	}
	return fmt.Sprintf("between %s and %s", layers[n.inner].Name, layers[n.outer].Name)
}

// finish finds the peak and rounds.
func (p *Plane) finish() {
	for m := range 12 {
		p.GM2[m], p.Potential[m], p.Left[m] = round(p.GM2[m], 3), round(p.Potential[m], 3), round(p.Left[m], 3)
		p.PeakGM2 = max(p.PeakGM2, p.Left[m])
	}
}
