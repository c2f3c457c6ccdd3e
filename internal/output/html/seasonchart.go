package html

import (
	"fmt"
	"math"
	"time"

	"abut/internal/document"
)

// Places of the season chart.
const (
	seasonLeft  = 92.0
	seasonRight = 858.0
	seasonTop   = 24.0
	seasonHigh  = 300.0
)

// mostMarks is the number of findings that one bar is marked with; the table
// names all.
const mostMarks = 2

// frame turns days and degrees into places of the picture.
type frame struct {
	from, to  time.Time
	low, high float64
}

func (f frame) x(t time.Time) float64 {
	return seasonLeft + (seasonRight-seasonLeft)*float64(t.Sub(f.from))/float64(f.to.Sub(f.from))
}

func (f frame) y(c float64) float64 {
	return seasonTop + seasonHigh*(f.high-c)/(f.high-f.low)
}

func (s *season) draw(id string, doc *document.Document, rows []seasonRow) {
	from, to := years(rows)
	f := frame{from: from, to: to}
	f.low, f.high = extent(doc, rows)
	s.Picture = drawing{
		ID: id + "-season", W: 900, H: seasonTop + seasonHigh + 44,
		Title: "Lowest temperatures against the season at " + doc.Project.Place.Station,
	}
	d := &s.Picture
	s.axes(f)
	s.band(f, doc.Project.Place.Months)
	for _, g := range doc.Windows[0].Grades {
		d.path("grade", false, point{seasonLeft, f.y(g.LimitC)}, point{seasonRight, f.y(g.LimitC)})
	}
	bad := 0
	m := &marker{s: &section{}}
	for _, b := range bars(rows) {
		s.bar(f, b, m)
		if len(b.bad) > 0 {
			bad++
		}
	}
	for _, g := range doc.Windows[0].Grades {
		d.text(seasonRight, f.y(g.LimitC)-6, "label end halo", fmt.Sprintf("%s, %s", g.Name, degrees(g.LimitC)))
	}
	d.Shapes = append(d.Shapes, m.s.Picture.Shapes...)
	d.Desc = fmt.Sprintf("The band runs from the mean daily minimum to the mean daily maximum of each month. Each bar stands at the lowest "+
		"temperature of what goes on, over the days on which it does: %d rows and materials. %s has a finding. "+
		"A bar that lies within or above the band is too warm a material for its days. The table gives the figures.", len(rows), barsCounted(bad))
}

func barsCounted(n int) string {
	if n == 1 {
		return "1 bar"
	}
	return fmt.Sprintf("%d bars", n)
}

// extent is the span of temperatures to show, in whole tens.
func extent(doc *document.Document, rows []seasonRow) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, m := range doc.Project.Place.Months {
		low, high = min(low, m.MeanMinC), max(high, m.MeanMaxC)
	}
	for _, r := range rows {
		low, high = min(low, r.check.LimitC), max(high, r.check.LimitC)
	}
	return 10*math.Floor(low/10) - 2, 10*math.Ceil(high/10) + 2
}

// axes draws months and degrees.
func (s *season) axes(f frame) {
	d := &s.Picture
	const ten = 10
	for c := ten * math.Ceil(f.low/ten); c <= f.high; c += ten {
		d.path("grid", false, point{seasonLeft, f.y(c)}, point{seasonRight, f.y(c)})
		d.text(seasonLeft-6, f.y(c)+4, "label end", degrees(c))
	}
	months := int(f.to.Sub(f.from).Hours()/24/30.4 + 0.5)
	every := (months + 17) / 18
	for i, t := 0, f.from; t.Before(f.to); i, t = i+1, t.AddDate(0, 1, 0) {
		d.path("grid", false, point{f.x(t), seasonTop}, point{f.x(t), seasonTop + seasonHigh})
		if i%every != 0 {
			continue
		}
		middle := (f.x(t) + f.x(t.AddDate(0, 1, 0))) / 2
		d.text(middle, seasonTop+seasonHigh+18, "label middle", t.Format("Jan"))
		if i == 0 || t.Month() == time.January {
			d.text(middle, seasonTop+seasonHigh+36, "label middle", t.Format("2006"))
		}
	}
}

// band draws the usual year: the mean daily minimum and maximum of each month,
// set at its middle.
func (s *season) band(f frame, months []document.MonthBand) {
	var low, high []point
	last := func(t time.Time) document.MonthBand { return months[(int(t.Month())+10)%12] }
	for t := f.from; !t.After(f.to); t = t.AddDate(0, 1, 0) {
		next := months[t.Month()-1]
		before := last(t)
		low = append(low, point{f.x(t), f.y((before.MeanMinC + next.MeanMinC) / 2)})
		high = append(high, point{f.x(t), f.y((before.MeanMaxC + next.MeanMaxC) / 2)})
		if middle := t.AddDate(0, 0, 15); middle.Before(f.to) {
			low = append(low, point{f.x(middle), f.y(next.MeanMinC)})
			high = append(high, point{f.x(middle), f.y(next.MeanMaxC)})
		}
	}
	around := append([]point{}, high...)
	for i := len(low) - 1; i >= 0; i-- {
		around = append(around, low[i])
	}
	s.Picture.path("band", true, around...)
	s.Picture.path("band-edge", false, high...)
	s.Picture.path("band-edge", false, low...)
}

// bar draws one bar; the marks of its findings go on top of all bars.
func (s *season) bar(f frame, b bar, m *marker) {
	thick := map[string]float64{"membrane": 8, "primer": 5, "sealant": 3}[b.role]
	if thick == 0 {
		thick = 3
	}
	const least = 6.0
	x, end := f.x(b.span[0]), min(f.x(b.span[1].AddDate(0, 0, 1)), seasonRight)
	class := "bar " + b.role
	if len(b.bad) > 0 {
		class += " " + b.bad[0].Severity
	}
	s.Picture.rect(x, f.y(b.limit)-thick/2, max(least, end-x), thick, class)
	at := point{(x + max(x+least, end)) / 2, f.y(b.limit) + 22}
	for i, bad := range b.bad {
		if i == mostMarks {
			m.s.Picture.text(at.x+18, at.y+5, "label", fmt.Sprintf("and %d more", len(b.bad)-i))
			return
		}
		m.number(bad, at)
	}
}
