package html

import (
	"fmt"
	"math"
	"strings"

	"abut/internal/document"
	"abut/internal/hygro"
)

// vapor is the profile of an assembly in one month: the vapor pressure and the
// most that the air can hold, from room to outside.
type vapor struct {
	Picture drawing
	Month   string
	Rows    []vaporRow
	Water   []waterRow
	Basis   string
}

type vaporRow struct{ Where, Temp, Holds, Vapor string }

type waterRow struct{ Month, Gathered, There string }

func monthName(m int) string {
	return []string{
		"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
	}[((m-1)%12+12)%12]
}

// newVapor draws the month in which most water lies in the section; the
// coldest month where none gathers. It is nil where the year was not computed.
func newVapor(id string, p *document.Profile, r hygro.Result, s *section) *vapor {
	if !r.Known || len(r.Months) == 0 {
		return nil
	}
	m := worst(r)
	faces := facesOf(r, s)
	if len(faces) != len(m.TempC) {
		return nil // a layer was divided otherwise than it is drawn
	}
	v := &vapor{Month: monthName(m.Month), Basis: basis(r)}
	for i, f := range faces {
		v.Rows = append(v.Rows, vaporRow{f.name, degrees(m.TempC[i]), pascal(m.SatPa[i]), pascal(m.VaporPa[i])})
	}
	v.Picture = drawing{
		ID: id + "-vapor", W: s.Picture.W + axisWide, H: chartTop + chartHigh + 26, Title: "Vapor profile of assembly " + p.Mark + ", " + v.Month,
		Desc: "Vapor pressure (solid) and the most that the air can hold (dashed) at each face, room to outside. Where the two meet, water forms. The table gives the figures.",
	}
	v.draw(m, faces)
	for _, month := range r.Months {
		if month.GM2 != 0 || month.Accumulated > 0 {
			v.Water = append(v.Water, waterRow{monthName(month.Month), grams(month.GM2), grams(month.Accumulated)})
		}
	}
	return v
}

func worst(r hygro.Result) hygro.Month {
	most := r.Months[0]
	for _, m := range r.Months {
		cold := r.Conditions.OutC[m.Month-1] < r.Conditions.OutC[most.Month-1]
		if m.Accumulated > most.Accumulated || m.Accumulated == most.Accumulated && cold {
			most = m
		}
	}
	return most
}

// face is a face between two layers that count, with its place in the picture.
type face struct {
	x    float64
	name string
}

// facesOf lists the faces, room side first; layers that do not count have none.
func facesOf(r hygro.Result, s *section) []face {
	var out []face
	for i, l := range r.Layers {
		if !l.Counted || i >= len(s.Parts) {
			continue
		}
		p := s.Parts[i]
		if len(out) == 0 {
			out = append(out, face{p.box.x, "room face of " + p.Letter})
		}
		out = append(out, face{p.box.x + p.box.w, "outer face of " + p.Letter})
	}
	return out
}

const (
	axisWide  = 46.0
	chartTop  = 16.0
	chartHigh = 150.0
)

// draw draws the two lines over the layers as the section shows them.
func (v *vapor) draw(m hygro.Month, faces []face) {
	most := 1.0
	for _, pa := range m.SatPa {
		most = max(most, pa)
	}
	step := stepFor(most, 5)
	steps := math.Ceil(most / step)
	up := func(pa float64) float64 { return chartTop + chartHigh*(1-pa/(step*steps)) }
	d := &v.Picture
	left, right := faces[0].x+axisWide, faces[len(faces)-1].x+axisWide
	for k := range int(steps) + 1 {
		y := up(float64(k) * step)
		d.path("grid", false, point{left, y}, point{right, y})
		d.text(left-6, y+4, "label end", number(float64(k)*step))
	}
	d.text(left-6, chartTop+chartHigh+20, "label end", "Pa")
	var holds, there []point
	for i, f := range faces {
		x := f.x + axisWide
		d.path("grid", false, point{x, chartTop}, point{x, chartTop + chartHigh})
		holds, there = append(holds, point{x, up(m.SatPa[i])}), append(there, point{x, up(m.VaporPa[i])})
	}
	d.path("curve holds", false, holds...)
	d.path("curve there", false, there...)
	const wet = 0.5 // Pa: within rounding of what the air can hold
	for i := range faces {
		if m.SatPa[i]-m.VaporPa[i] < wet {
			d.ring(there[i])
		}
	}
	d.text(left, chartTop+chartHigh+20, "label", "room")
	d.text(right, chartTop+chartHigh+20, "label end", "outside")
}

// ring circles a face that is wet.
func (d *drawing) ring(p point) {
	const r = 6.0
	d.path("wet", true, point{p.x, p.y - r}, point{p.x + r, p.y}, point{p.x, p.y + r}, point{p.x - r, p.y})
}

func basis(r hygro.Result) string {
	parts := []string{"Monthly balance after ISO 13788"}
	if r.Conditions.Class != "" {
		parts = append(parts, "room of humidity class "+r.Conditions.Class)
	} else {
		parts = append(parts, fmt.Sprintf("room as the workbook states it, %s and %.0f%% in January", degrees(r.Conditions.InC[0]), r.Conditions.InRH[0]))
	}
	if r.Conditions.Estimated {
		parts = append(parts, "outdoor humidity estimated")
	}
	return strings.Join(parts, "; ") + "."
}

func degrees(c float64) string {
	whole := func(x float64) int { return int(math.Round(x)) }
	return fmt.Sprintf("%d °C (%d °F)", whole(c), whole(c*1.8+32))
}

func pascal(pa float64) string { return fmt.Sprintf("%.0f Pa", pa) }

func grams(g float64) string { return fmt.Sprintf("%.0f g/m²", g) }
