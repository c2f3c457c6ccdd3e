package hygro

import "fmt"

// How a figure came to be known.
const (
	byStated = "stated"
	byTable  = "table"
	byUsual  = "usual"
	byR      = "resistance" // of the stated resistance and the table's conductivity

	// ventedWhy is why a layer is left out behind which outside air moves.
	ventedWhy = "vented to the outside"
	// framingWhy is why studs in the insulation are left out: the balance is that
	// of the section between them.
	framingWhy = "framing between the insulation"
	// definitionSet marks figures that no table disagrees about, such as air.
	definitionSet = "definition"
)

// resolve finds the figures of every layer and lists what is missing.
func (t *Table) resolve(res *Result, layers []Layer, c Conditions) error {
	res.Missing = []Missing{}
	vented, counted := false, 0
	for i, l := range layers {
		if err := l.check(i); err != nil {
			return err
		}
		r, missing := t.layer(i, l)
		m := t.materials[l.Family]
		vented = vented || l.Vented || m.Vented
		switch {
		case vented:
			r.Counted, r.Why = false, ventedWhy
		case l.Framing:
			r.Counted, r.Why = false, framingWhy
		case m.Skip != "":
			r.Counted, r.Why = false, m.Skip
		default:
			counted++
			res.Missing = append(res.Missing, missing...)
		}
		res.Layers = append(res.Layers, r)
	}
	if counted == 0 {
		return errNoLayers
	}
	res.Known, res.Thermal = true, true
	for _, m := range res.Missing {
		res.Known = false
		res.Thermal = res.Thermal && m.What == "vapor"
	}
	t.films(res, c, vented)
	return nil
}

// films sets the surface resistances: behind a vented space the air is still.
func (t *Table) films(res *Result, c Conditions, vented bool) {
	s := t.file.Surfaces[c.Element]
	e := &res.Conditions
	e.Rsi, e.Rse = s.Rsi, s.Rse
	if vented {
		e.Rse = s.RseVented
	}
	if c.Rsi != nil {
		e.Rsi = *c.Rsi
	}
	if c.Rse != nil {
		e.Rse = *c.Rse
	}
}

// check refuses figures that cannot be.
func (l Layer) check(i int) error {
	figures := []struct {
		what     string
		v        *float64
		positive bool
	}{
		{"thickness", l.ThicknessMM, true}, {"conductivity", l.Lambda, true}, {"resistance", l.R, false},
		{"mu", l.Mu, true}, {"sd", l.SdM, false}, {"permeance", l.PermeanceNG, false},
	}
	for _, f := range figures {
		if f.v != nil && !(*f.v > 0 || !f.positive && *f.v == 0) {
			return fmt.Errorf("layer %d (%s): %s %g is not possible", i, l.Name, f.what, *f.v)
		}
	}
	return nil
}

// layer finds the figures of one layer.
func (t *Table) layer(i int, l Layer) (LayerResult, []Missing) {
	m := t.materials[l.Family]
	r := LayerResult{
		Index: i, Name: l.Name, Family: l.Family, Counted: true, ThicknessMM: l.ThicknessMM,
		Insulation: l.Insulation || m.Insulation, MoistureSensitive: m.MoistureSensitive, Air: m.Air, Also: m.Also,
	}
	switch {
	case l.ThicknessMM != nil:
		r.ThicknessBy = byStated
	case l.R != nil && m.Lambda != nil && *l.R > 0: // R = d/λ, ISO 6946 6.7.1
		r.ThicknessMM, r.ThicknessBy = ptr(*l.R*m.Lambda.Value*1000), byR
	case m.UsualMM != nil:
		r.ThicknessMM, r.ThicknessBy = ptr(m.UsualMM.Value), byUsual
	}
	t.thermal(&r, l, m)
	t.vapor(&r, l, m)
	r.Known = r.R != nil && r.SdM != nil
	return r, missing(r, l, m)
}

// thermal finds the resistance: stated, else from conductivity and thickness.
func (t *Table) thermal(r *LayerResult, l Layer, m Material) {
	switch {
	case l.R != nil:
		r.R, r.RBy = l.R, byStated
	case l.Lambda != nil && r.ThicknessMM != nil:
		r.R, r.RBy = ptr(*r.ThicknessMM/1000 / *l.Lambda), byStated
	case m.R != nil:
		r.R, r.RBy, r.RSource = ptr(m.R.Value), byTable, t.Source(m.R.Source)
	case m.Lambda != nil && r.ThicknessMM != nil:
		r.R, r.RBy, r.RSource = ptr(*r.ThicknessMM/1000/m.Lambda.Value), byTable, t.Source(m.Lambda.Source)
	case m.Lambda == nil && r.ThicknessBy == byStated && *r.ThicknessMM <= t.file.Method.FilmMM.Value:
		r.R, r.RBy, r.RSource = ptr(0.0), byTable, t.Source(t.file.Method.FilmMM.Source)
	}
}

// vapor finds the vapor resistance: stated, else from the table.
func (t *Table) vapor(r *LayerResult, l Layer, m Material) {
	delta0 := t.file.Method.Delta0NG.Value
	table := func(sd float64, f *Figure) {
		r.SdM, r.VaporBy, r.VaporSource, r.Set = &sd, byTable, t.Source(f.Source), m.Set
	}
	switch {
	case l.PermeanceNG != nil && *l.PermeanceNG == 0:
		r.SdM, r.VaporBy, r.Procedure = ptr(t.file.Method.TightSdM.Value), byStated, l.Procedure
	case l.PermeanceNG != nil:
		r.SdM, r.VaporBy, r.Procedure = ptr(delta0 / *l.PermeanceNG), byStated, l.Procedure
	case l.SdM != nil:
		r.SdM, r.VaporBy = l.SdM, byStated
	case l.Mu != nil && r.ThicknessMM != nil:
		r.SdM, r.VaporBy = ptr(*l.Mu**r.ThicknessMM/1000), byStated
	case m.SdM != nil:
		table(m.SdM.Value, m.SdM)
	case m.PermeanceNG != nil:
		table(delta0/m.PermeanceNG.Value, m.PermeanceNG)
	case m.Mu != nil && r.ThicknessMM != nil:
		table(m.Mu.Value**r.ThicknessMM/1000, m.Mu)
	}
	if r.SdM == nil {
		return
	}
	r.PermeanceNG = ptr(delta0 / max(*r.SdM, t.file.Method.MinSdM.Value))
	if l.PermeanceNG != nil {
		r.PermeanceNG = l.PermeanceNG
	}
	r.VaporClass = t.Class(*r.PermeanceNG)
	r.Tight = t.tight(r.VaporClass)
}

func (t *Table) tight(class string) bool {
	for _, c := range t.file.TightClasses {
		if c == class {
			return true
		}
	}
	return false
}

// missing tells what has to be stated to know the layer.
func missing(r LayerResult, l Layer, m Material) []Missing {
	var out []Missing
	add := func(what, text string) {
		out = append(out, Missing{Layer: r.Index, Name: r.Name, What: what, Text: text})
	}
	byThickness := (r.R == nil && (l.Lambda != nil || m.Lambda != nil)) || (r.SdM == nil && (l.Mu != nil || m.Mu != nil))
	if byThickness && r.ThicknessMM == nil {
		add("thickness", "state its thickness")
	}
	if r.R == nil && l.Lambda == nil && m.Lambda == nil {
		add("resistance", "state its thermal resistance, or its conductivity and thickness")
	}
	if r.SdM == nil && l.Mu == nil && m.Mu == nil {
		text := m.WhyUnknown
		if text == "" {
			text = "state its vapor permeance"
		}
		add("vapor", text)
	}
	return out
}

func ptr[T any](v T) *T { return &v }
