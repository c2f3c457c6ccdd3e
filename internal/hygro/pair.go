package hygro

// total adds up a figure over layers; known is false if one of them lacks it.
func total(layers []LayerResult, figure func(LayerResult) *float64) (sum float64, known bool) {
	known = true
	for _, l := range layers {
		if !l.Counted {
			continue
		}
		if v := figure(l); v != nil {
			sum += *v
		} else {
			known = false
		}
	}
	return sum, known
}

func layerR(l LayerResult) *float64  { return l.R }
func layerSd(l LayerResult) *float64 { return l.SdM }

// insulationR is the resistance that counts as insulation.
func insulationR(l LayerResult) *float64 {
	if !l.Insulation {
		return ptr(0.0)
	}
	return l.R
}

// spread gives each counted layer the resistances on both sides of its inner
// face, which is where vapor from the room would condense.
func (t *Table) spread(res *Result) {
	if r, ok := total(res.Layers, layerR); ok {
		res.RTotal = ptr(res.Conditions.Rsi + r + res.Conditions.Rse)
	}
	if sd, ok := total(res.Layers, layerSd); ok {
		res.SdTotal = &sd
	}
	for i := range res.Layers {
		l := &res.Layers[i]
		if !l.Counted {
			continue
		}
		in, out := res.Layers[:i], res.Layers[i:]
		l.RInside = sumOrNil(in, layerR, res.Conditions.Rsi)
		l.ROutside = sumOrNil(out, layerR, res.Conditions.Rse)
		l.InsulationInside = sumOrNil(in, insulationR, 0)
		l.InsulationOutside = sumOrNil(out, insulationR, 0)
		l.OutsideShare = shareOf(l.RInside, l.ROutside)
		l.InsulationShare = shareOf(l.InsulationInside, l.InsulationOutside)
	}
}

func sumOrNil(layers []LayerResult, figure func(LayerResult) *float64, surface float64) *float64 {
	sum, known := total(layers, figure)
	if !known {
		return nil
	}
	return ptr(sum + surface)
}

func shareOf(in, out *float64) *float64 {
	if in == nil || out == nil || *in+*out == 0 {
		return nil
	}
	return ptr(*out / (*in + *out))
}

// pair finds neighboring vapor-tight layers and how the space between dries.
func (t *Table) pair(res *Result) {
	res.TightPairs = []TightPair{}
	inner := -1
	for i, l := range res.Layers {
		if !l.Counted || !l.Tight {
			continue
		}
		if inner >= 0 {
			res.TightPairs = append(res.TightPairs, t.tightPair(res.Layers, inner, i))
		}
		inner = i
	}
}

func (t *Table) tightPair(layers []LayerResult, inner, outer int) TightPair {
	p := TightPair{
		Inner: inner, Outer: outer, Between: []int{}, Sensitive: []int{},
		InnerClass: layers[inner].VaporClass, OuterClass: layers[outer].VaporClass,
		Insulation: sumOrNil(layers[inner+1:outer], insulationR, 0),
	}
	for _, l := range layers[inner+1 : outer] {
		if !l.Counted {
			continue
		}
		p.Between = append(p.Between, l.Index)
		if l.MoistureSensitive {
			p.Sensitive = append(p.Sensitive, l.Index)
		}
		p.HasUnknown = p.HasUnknown || l.SdM == nil
	}
	room, known := total(layers[:inner+1], layerSd)
	p.RoomSdM, p.RoomNG, p.RoomSdIsMin = &room, t.permeance(room), !known
	out, known := total(layers[outer:], layerSd)
	p.OutsideSdM, p.OutsideNG, p.OutSdIsMin = &out, t.permeance(out), !known
	return p
}

// permeance turns sd in m into ng/(Pa·s·m²).
func (t *Table) permeance(sd float64) *float64 {
	return ptr(t.file.Method.Delta0NG.Value / max(sd, t.file.Method.MinSdM.Value))
}
