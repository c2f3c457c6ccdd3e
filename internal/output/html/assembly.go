package html

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"abut/internal/document"
	"abut/internal/hygro"
	"abut/internal/schedule"
)

// assembly is a wall type or build-up: its layers from room to outside, with
// the vapor profile where it was computed.
type assembly struct {
	ID      string
	Mark    string
	Title   string
	Section *section
	Vapor   *vapor
	Missing []string

	lines []string
}

// assemblies draws every section that the workbook tells layer by layer.
func (b *board) assemblies() []assembly {
	for i := range b.doc.Profiles {
		p := &b.doc.Profiles[i]
		if !b.room() {
			continue
		}
		a := assembly{
			ID: fmt.Sprintf("%s-assembly%d", b.id, i+1), Mark: p.Mark, Missing: p.Missing, lines: p.Lines,
			Title: strings.TrimSpace("Assembly " + p.Mark),
		}
		a.Section = b.layers(a.ID, p)
		if result, ok := p.Result.(hygro.Result); ok {
			a.Missing = missing(result)
			a.Vapor = newVapor(a.ID, p, result, a.Section)
		}
		b.made = append(b.made, a)
	}
	return b.made
}

// missing names each layer with what is not known of it.
func missing(r hygro.Result) []string {
	var out []string
	for _, m := range r.Missing {
		out = append(out, m.Name+": "+m.Text)
	}
	return out
}

// Places of the picture of an assembly.
const (
	layersTop  = 34.0
	layersHigh = 190.0
	layersLeft = 52.0
)

// layers draws the layers of a profile side by side, room on the left. Widths
// grow with the root of the thickness, so that films can be seen.
func (b *board) layers(id string, p *document.Profile) *section {
	s := &section{Picture: drawing{ID: id + "-picture", Title: "Section of assembly " + p.Mark + ", room to outside"}}
	x, grow := layersLeft, growth(p.Layers)
	for i, l := range p.Layers {
		wide := math.Round(grow * wideOf(l))
		s.Parts = append(s.Parts, part{
			Letter: letterOf(i), Text: closed(l.Text), Read: b.nameOf(l), As: "layer", More: thickness(l), Cell: cellOf(l),
			kind: b.kinds.of(l.Class, l.Keys), slot: "layer", items: []string{l.Item}, product: l.Product, family: l.Family,
			at: []schedule.At{l.At}, box: box{x, layersTop, wide, layersHigh},
		})
		x += wide
	}
	s.Picture.W, s.Picture.H = x+layersLeft, layersTop+layersHigh+14
	for i, part := range s.Parts {
		box := part.box
		s.Picture.rect(box.x, box.y, box.w, box.h, "m m-"+part.kind)
		s.Picture.letter(box.x+box.w/2, box.y+14+float64(i%3)*22, part.Letter)
	}
	s.Picture.text(layersLeft/2, layersTop+layersHigh/2, "label middle", "room")
	s.Picture.text(x+layersLeft/2, layersTop+layersHigh/2, "label middle", "outside")
	m := &marker{s: s}
	for _, id := range p.Lines {
		for _, f := range b.of(b.byID[id]) {
			b.put(m, f, layerAt(p, id))
		}
	}
	s.Picture.Desc = s.describe()
	return s
}

func layerAt(p *document.Profile, line string) int {
	return slices.IndexFunc(p.Layers, func(l document.Layer) bool { return l.Line == line })
}

// wideOf is the width in the picture: 20 for a film, some 80 for a thick layer.
func wideOf(l document.Layer) float64 {
	const film, thick, perRoot = 22.0, 96.0, 6.0
	if l.Thick == nil {
		return film + 8
	}
	return min(thick, film+perRoot*math.Sqrt(max(0, *l.Thick)))
}

// growth stretches the few layers of a thin section to a readable width.
func growth(layers []document.Layer) float64 {
	const least = 330.0
	total := 0.0
	for _, l := range layers {
		total += wideOf(l)
	}
	return max(1, least/total)
}

func thickness(l document.Layer) string {
	if l.Thick == nil {
		return ""
	}
	return length(*l.Thick)
}

func cellOf(l document.Layer) string {
	if l.At.Cell != "" {
		return l.At.Cell
	}
	return fmt.Sprintf("row %d", l.At.Row)
}

// nameOf is the name of the layer's family, as its row's item has it.
func (b *board) nameOf(l document.Layer) string {
	if line := b.byID[l.Line]; line != nil {
		for i := range line.Items {
			if line.Items[i].ID == l.Item {
				return line.Items[i].Name
			}
		}
	}
	return ""
}

// reachesOut holds where a finding of a layer's row judges a contact or a
// pairing with something that is no layer, which the row's own section shows.
func (b *board) reachesOut(a *assembly, list []found) bool {
	return slices.ContainsFunc(list, func(f found) bool {
		joins := slices.ContainsFunc(f.Facts, func(id string) bool { return b.contacts[id] != nil })
		return joins && len(b.joints(f, a.Section.Parts)) == 0 || f.Topic == "pairing"
	})
}
