package document

import (
	"slices"
	"strings"

	"abut/internal/climate"
	"abut/internal/hygro"
	"abut/internal/regexp"
	"abut/internal/schedule"
)

// profiles gathers the sections that the workbook tells: groups of layer rows,
// and build-ups told in one cell; room side first where the side is known.
func (b *Builder) profiles(doc *Document, site *climate.Site) []Profile {
	var out []Profile
	groups := map[string]int{}
	for i := range doc.Lines {
		l := &doc.Lines[i]
		if l.Struck {
			continue
		}
		if p, ok := b.builtUp(l, doc); ok {
			out = append(out, p)
		}
		layers := b.layersOf(l, doc)
		key := l.Sheet + "\x00" + l.Group
		n, ok := groups[key]
		if ok && l.Order != "" && len(layers) == 0 && saysVented(l) {
			out[n].vents = append(out[n].vents, len(out[n].Layers))
		}
		if l.Order == "" || len(layers) == 0 {
			continue
		}
		if !ok {
			n = len(out)
			groups[key] = n
			out = append(out, Profile{ID: l.ID, Mark: l.Mark})
		}
		out[n].Lines = append(out[n].Lines, l.ID)
		if len(out[n].Layers) > 0 && (b.sides.isDetail(l) || covers(l, out[n].Layers)) {
			continue
		}
		out[n].Layers = append(out[n].Layers, layers...)
	}
	out = slices.DeleteFunc(out, func(p Profile) bool { return len(p.Layers) < 2 })
	find := b.sides.finder(doc)
	for i := range out {
		p := &out[i]
		p.First = find.first(p)
		p.ventOutside()
		if p.First == outsideFirst {
			slices.Reverse(p.Layers)
		}
		b.compute(p, doc, site)
	}
	return out
}

// ventOutside marks the layer outside of each vented space that a row of its own tells: what lies
// out there takes no part in how the wall keeps or loses its moisture.
func (p *Profile) ventOutside() {
	for _, n := range p.vents {
		if p.First == outsideFirst {
			n--
		}
		if n >= 0 && n < len(p.Layers) {
			p.Layers[n].Keys = append(slices.Clone(p.Layers[n].Keys), ventedKey)
		}
	}
}

// isDetail holds for what closes, drains or fastens a wall somewhere and is no layer of it.
func (s *sides) isDetail(l *schedule.Line) bool {
	return slices.Contains(s.noLayers, l.Role) || l.Role == "metal" && s.trims.MatchString(l.Texts["type"]+" "+l.Texts["mark"]+" "+l.Place)
}

// covers holds for a sheet that is told after the layers of its wall for some place of
// it: on a layer that a sheet has covered already, or the same sheet on what is no layer
// of the wall.
func covers(l *schedule.Line, layers []Layer) bool {
	main, last := l.Main(), layers[len(layers)-1]
	beds := slices.DeleteFunc(slices.Clone(l.Items), func(it schedule.Item) bool { return it.Slot != "substrate" || it.Polarity == "no" || it.Family == "" })
	if main == nil || !isSheet(main.Class) || len(beds) == 0 || lies(beds, last) {
		return false
	}
	bed := slices.IndexFunc(layers, func(layer Layer) bool { return lies(beds, layer) })
	return slices.ContainsFunc(layers[bed+1:], func(layer Layer) bool {
		return isSheet(layer.Class) && (bed >= 0 || layer.Product != "" && layer.Product == main.Product)
	})
}

// lies holds where one of the beds is the layer.
func lies(beds []schedule.Item, layer Layer) bool {
	return slices.ContainsFunc(beds, func(it schedule.Item) bool {
		return it.Family == layer.Family && (it.Product == "" || layer.Product == "" || it.Product == layer.Product)
	})
}

func isSheet(class string) bool { return class == "membrane" || class == "coating" || class == "tape" }

// orProduct holds for a product that stands in place of the one before it: a wall has one of
// the two. Of "wrap or vapor-open sheet" the second may tell more, and both are kept.
func orProduct(it *schedule.Item) bool {
	return it.Product != "" && slices.Contains(it.Signals, schedule.OrElse)
}

// builtUp reads a section told in one cell.
func (b *Builder) builtUp(l *schedule.Line, doc *Document) (Profile, bool) {
	p := Profile{ID: l.ID + "/section", Mark: l.Mark, Lines: []string{l.ID}}
	for i := range l.Items {
		if it := &l.Items[i]; it.Slot == "layers" && it.Polarity != "no" && !orProduct(it) {
			layer := layerOf(l, it, productOf(doc, it.Product))
			if !layer.Insulates && it.Class != "membrane" && b.sides.noMaterial.MatchString(it.Text) {
				layer.Keys = append(slices.Clone(layer.Keys), framingKey) // "on rails", "6 in. studs"
			}
			p.Layers = append(p.Layers, layer)
		}
	}
	ventedSkin(l, p.Layers)
	return p, len(p.Layers) >= 2
}

// ventedSkin marks the layers of a section told in one cell that a vented space between two
// of them parts from the insulation and the sheets ("wool; vented cavity; fiber cement"),
// whichever side it is told from.
func ventedSkin(l *schedule.Line, layers []Layer) {
	text, gap := l.Texts["layers"], -1
	for _, s := range l.Signals {
		if s.ID == ventedKey && !s.No && s.Slot == "layers" {
			gap = strings.Index(text, s.Text)
		}
	}
	if gap < 0 {
		return
	}
	end, before := 0, 0
	for i := range layers {
		at := strings.Index(text[end:], layers[i].Text)
		if at < 0 {
			return // told in another order
		}
		if end += at; end < gap {
			before = i + 1
		}
		end += len(layers[i].Text)
	}
	for _, side := range [][]Layer{layers[before:], layers[:before]} {
		if len(side) == 0 || slices.ContainsFunc(side, holdsIn) {
			continue
		}
		for i := range side {
			side[i].Keys = append(slices.Clone(side[i].Keys), ventedKey)
		}
		return
	}
}

const ventedKey = "vented"

// holdsIn holds for a layer that no skin before a vented space is: one that insulates, or a
// sheet. The lining of the room is none either.
func holdsIn(l Layer) bool {
	return l.Insulates || l.Class == "membrane" || l.Class == "tape" || l.Family == "gypsum-board" || slices.Contains(l.Keys, framingKey)
}

// layersOf gives the layers of one row: every material of its material cell, or
// the layer that it names and nobody knows.
func (b *Builder) layersOf(l *schedule.Line, doc *Document) []Layer {
	var out []Layer
	main := l.Main()
	if main == nil {
		return b.sides.unknown(l)
	}
	for i := range l.Items {
		it := &l.Items[i]
		if it.ID != main.ID && it.Relation == "on" && it.Side == "object" && !isSheet(it.Class) && b.sides.noMaterial.MatchString(it.Text) {
			continue // "zinc panel on steel girts"
		}
		if it.ID == main.ID || it.Slot == "material" && it.Polarity == "yes" && main.Tag == "" {
			layer := layerOf(l, it, productOf(doc, it.Product))
			if it.ID != main.ID && it.Class == "coating" {
				layer.Thick = nil // the row's thickness is that of what is coated
			}
			if it.ID != main.ID && it.Relation == setIn && main.Class == "insulation" || it.Class == "lumber" && b.sides.framing.MatchString(it.Text) {
				layer.Keys = append(slices.Clone(layer.Keys), framingKey)
			}
			if saysVented(l) {
				layer.Keys = append(slices.Clone(layer.Keys), ventedKey)
			}
			out = append(out, layer)
		}
	}
	return out
}

// The relation of a batt to the studs that it lies between, and the key of what
// stands between insulation.
const setIn, framingKey = "set_in", "framing"

// unknown gives the layer of a row whose material no word tells: what lies there
// may insulate or be tight, so the section is not computed without it.
func (s *sides) unknown(l *schedule.Line) []Layer {
	text := l.Texts["material"]
	if !letters.MatchString(text) || s.noMaterial.MatchString(text) || saysVented(l) {
		return nil
	}
	return []Layer{{Line: l.ID, Text: text, Keys: []string{}, At: schedule.At{Sheet: l.Sheet, Row: l.Row, Cell: l.Cells["material"]}}}
}

var letters = regexp.MustCompile(`\pL{3}`)

// saysVented holds for a row whose own words are for a vented space.
func saysVented(l *schedule.Line) bool {
	return slices.ContainsFunc(l.Signals, func(s schedule.Said) bool {
		return s.ID == ventedKey && !s.No && (s.Slot == "type" || s.Slot == "material")
	})
}

func productOf(doc *Document, id string) *schedule.Product {
	for i := range doc.Products {
		if id != "" && doc.Products[i].ID == id {
			return &doc.Products[i]
		}
	}
	return nil
}

func layerOf(l *schedule.Line, it *schedule.Item, p *schedule.Product) Layer {
	out := Layer{
		Line: l.ID, Item: it.ID, Text: it.Text, Product: it.Product, Family: it.Family, Class: it.Class, Keys: it.Keys,
		At: it.At, Insulates: it.Class == "insulation",
	}
	if f, ok := l.Figures["thickness_mm"]; ok && it.Slot != "layers" {
		out.Thick = f.Min
	}
	if it.ThickMM != nil {
		out.Thick = it.ThickMM
	}
	out.R = it.RM2KW
	if p == nil {
		return out
	}
	if f, ok := p.Figures["vapor_ng"]; ok && f.Min != nil {
		out.VaporNG, out.VaporBy = f.Min, "stated"
	}
	if f, ok := p.Figures["thickness_mm"]; ok && out.Thick == nil {
		out.Thick = f.Min
	}
	return out
}

// usualIndoor is the room where the workbook states none; the dew point of the
// room is then left to the humidity class of the table.
const usualIndoorClass = "normal"

// compute runs the monthly moisture balance where the place is known.
func (b *Builder) compute(p *Profile, doc *Document, site *climate.Site) {
	if p.First == "" {
		p.Missing = append(p.Missing, "the side that its layers are listed from")
		return
	}
	if site == nil {
		return
	}
	var layers []hygro.Layer
	for i := range p.Layers {
		in := &p.Layers[i]
		layers = append(layers, hygro.Layer{
			Name: in.Text, Family: in.Family, ThicknessMM: in.Thick, R: in.R, PermeanceNG: in.VaporNG, Insulation: in.Insulates,
			Framing: slices.Contains(in.Keys, framingKey),
			Vented:  slices.Contains(in.Keys, ventedKey) || i == len(p.Layers)-1 && screens(p.Layers),
		})
	}
	res, err := b.hygro.Profile(layers, b.conditions(doc, site))
	if err != nil {
		p.Missing = append(p.Missing, err.Error())
		return
	}
	for _, m := range res.Missing {
		p.Missing = append(p.Missing, m.Text)
	}
	for i := range p.Layers {
		if i < len(res.Layers) && p.Layers[i].VaporNG == nil && res.Layers[i].PermeanceNG != nil {
			p.Layers[i].VaporNG, p.Layers[i].VaporBy = res.Layers[i].PermeanceNG, "usual"
		}
	}
	p.Result = res
}

// screens holds where the outermost layer is a metal or masonry skin outside of
// insulation or a sheet: such a skin has an air space behind it that leads out.
func screens(layers []Layer) bool {
	last := layers[len(layers)-1]
	if last.Class != "flashing-metal" && last.Class != "cladding" && last.Class != "masonry" && last.Class != "fastener" {
		return false
	}
	return slices.ContainsFunc(layers, func(l Layer) bool { return l.Insulates || l.Class == "membrane" || l.Class == "tape" })
}

// conditions takes the station's months and the room that the notes state.
func (b *Builder) conditions(doc *Document, site *climate.Site) hygro.Conditions {
	c := hygro.Conditions{Class: usualIndoorClass}
	var low [12]float64
	for m := range 12 {
		_, tmin, mean, dew := site.Month(m + 1)
		c.OutC[m], low[m] = mean, tmin
		if dew == nil {
			c.Estimated = true
			continue
		}
		c.OutRH[m] = hygro.FromDewPoint(mean, *dew)
	}
	if c.Estimated {
		c.OutRH, _ = b.hygro.EstimateOutRH(c.OutC, low, false)
	}
	for _, room := range doc.Project.Indoor {
		if room.TempC == nil || room.RH == nil {
			continue
		}
		c.Class = ""
		for m := range 12 {
			c.InC[m], c.InRH[m] = *room.TempC, 100**room.RH
		}
		break
	}
	return c
}
