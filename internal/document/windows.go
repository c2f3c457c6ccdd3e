package document

import (
	"slices"
	"time"

	"abut/internal/climate"
	"abut/internal/schedule"
)

// sited is the place of a sheet, and its climate.
type sited struct {
	place string
	site  *climate.Site
}

// ownSites are the places of sheets that tell another than the project's in the same cell
// in which the project's sheet tells that: the same form, filled in for two buildings.
func (b *Builder) ownSites(doc *Document) map[string]sited {
	first := map[string]int{} // the first row of each sheet that has lines
	for _, l := range doc.Lines {
		if row, seen := first[l.Sheet]; !seen || l.Row < row {
			first[l.Sheet] = l.Row
		}
	}
	out := map[string]sited{}
	at := doc.Project.Place.At
	if row, has := first[at.Sheet]; !has || at.Row >= row {
		return out
	}
	for _, f := range doc.Project.Places {
		row, has := first[f.At.Sheet]
		if !has || f.At.Sheet == at.Sheet || f.At.Cell != at.Cell || f.At.Row >= row {
			continue
		}
		place, site := b.locate([]schedule.Fact{f}, "")
		if site != nil && place.Station != doc.Project.Place.Station {
			out[f.At.Sheet] = sited{place.Text, site}
		}
	}
	return out
}

// windows computes the season odds of every live line with a known
// installation date, in the place of the project or in that of its sheet.
func (b *Builder) windows(doc *Document, site *climate.Site, own map[string]sited, hours climate.Hours) []Window {
	products := map[string]*schedule.Product{}
	for i := range doc.Products {
		products[doc.Products[i].ID] = &doc.Products[i]
	}
	type season struct {
		place string
		climate.Span
	}
	type limit struct {
		season
		c float64
	}
	out := make([]Window, 0, len(doc.Lines))
	seasons, odds := map[season]Window{}, map[limit]climate.Odds{}
	for i := range doc.Lines {
		l := &doc.Lines[i]
		span, ok := installSpan(l)
		if l.Struck || !ok {
			continue
		}
		here := sited{site: site}
		if other, own := own[l.Sheet]; own {
			here = other
		}
		when := season{here.place, span}
		w, known := seasons[when]
		if !known {
			w = b.season(here.site, span, hours)
			w.Place = here.place
			seasons[when] = w
		}
		w.Line = l.ID
		for _, c := range b.limitsOf(l, products) {
			o, known := odds[limit{when, c.LimitC}]
			if !known {
				o = here.site.Odds(span, hours, c.LimitC)
				odds[limit{when, c.LimitC}] = o
			}
			c.ShareBelow, c.ShareAbove, c.DaysUsable = o.ShareBelow, o.ShareAbove, o.DaysUsable
			w.Checks = append(w.Checks, c)
		}
		out = append(out, w)
	}
	return out
}

// season is the window of a span of days, which is the same for all lines that
// are installed in it but for their own limits.
func (b *Builder) season(site *climate.Site, span climate.Span, hours climate.Hours) Window {
	w := Window{From: iso(span.From), To: iso(span.To)}
	w.MeanMinC, w.MeanMaxC, _ = site.Band(span)
	for _, g := range b.grades {
		o := site.Odds(span, hours, g.MinC)
		w.NightFrost = o.NightFrost
		w.Grades = append(w.Grades, Grade{ID: g.ID, Name: g.Name, LimitC: g.MinC, LimitText: g.Text, ShareBelow: o.ShareBelow, DaysUsable: o.DaysUsable})
	}
	return w
}

// bands is the usual year of a site, by month.
func bands(site *climate.Site) []MonthBand {
	var out []MonthBand
	for m := range 12 {
		high, low, _, _ := site.Month(m + 1)
		out = append(out, MonthBand{MeanMinC: low, MeanMaxC: high})
	}
	return out
}

func installSpan(l *schedule.Line) (climate.Span, bool) {
	d := l.Dates["install"]
	from, err := time.Parse(time.DateOnly, d.From)
	if err != nil {
		return climate.Span{}, false
	}
	span := climate.Span{From: from, To: from}
	if d.To != "" {
		if to, err := time.Parse(time.DateOnly, d.To); err == nil {
			span.To = to
		}
	}
	return span, true
}

func iso(t time.Time) string { return t.Format(time.DateOnly) }

// appliedClasses are the classes that have an application temperature.
var appliedRoles = map[string]string{"primer": "primer", "sealant": "sealant", "mastic": "adhesive"}

// sheets are the classes of which a row may hold several, each with its limits.
var sheets = map[string]bool{"membrane": true, "tape": true}

// limitsOf lists the application limits of the line's own material and of what
// goes on wet beside it.
func (b *Builder) limitsOf(l *schedule.Line, products map[string]*schedule.Product) []Check {
	var out []Check
	main := l.Main()
	seen := map[string]bool{}
	for i := range l.Items {
		it := &l.Items[i]
		role := appliedRoles[it.Class]
		if main != nil && (it.ID == main.ID || it.Slot == "with" && sheets[it.Class]) && role == "" {
			role = "membrane"
		}
		if role == "" || it.Polarity == "no" || it.Polarity == "removed" || seen[it.Product+"|"+it.Family] {
			continue
		}
		seen[it.Product+"|"+it.Family] = true
		out = append(out, b.limits(l, it, products[it.Product], role)...)
	}
	return out
}

// limits gives the lower and upper limit of one material: what the row says,
// else its product data, else the usual figure of its grade.
func (b *Builder) limits(l *schedule.Line, it *schedule.Item, p *schedule.Product, role string) []Check {
	var out []Check
	for _, bound := range []string{"apply_min_c", "apply_max_c"} {
		f, ok := statedLimit(l, p, role, bound)
		c := Check{Item: it.ID, Role: role, Text: it.Text, Product: it.Product, Keys: it.Keys, Bound: bound}
		switch {
		case ok && f.Min != nil:
			c.LimitC, c.LimitText, c.Stated, c.At = *f.Min, f.Text, true, f.At
		case ok && f.Max != nil && bound == "apply_max_c":
			c.LimitC, c.LimitText, c.Stated, c.At = *f.Max, f.Text, true, f.At
		case bound == "apply_min_c" && role == "membrane" && b.usual(it) != nil:
			g := b.usual(it)
			c.LimitC, c.LimitText = g.MinC, g.Text
		case role == "membrane" && b.usual(it) != nil && b.usual(it).MaxC != nil:
			g := b.usual(it)
			c.LimitC, c.LimitText = *g.MaxC, g.MaxText
		default:
			continue
		}
		out = append(out, c)
	}
	return out
}

func statedLimit(l *schedule.Line, p *schedule.Product, role, bound string) (schedule.Figure, bool) {
	if role == "membrane" {
		if f, ok := l.Figures[bound]; ok {
			return f, true
		}
		if f, ok := l.Figures["primed_"+bound]; ok {
			return f, true
		}
	}
	if role == "primer" && bound == "apply_min_c" {
		if f, ok := l.Figures["primer_apply_min_c"]; ok {
			return f, true
		}
	}
	if p != nil {
		f, ok := p.Figures[bound]
		return f, ok
	}
	return schedule.Figure{}, false
}

// usual is the grade that the words of a self-adhered asphaltic sheet name, standard where
// they name none; nil for other chemistries, whose usual limits differ widely.
func (b *Builder) usual(it *schedule.Item) *usualGrade {
	if !slices.Contains(b.graded, it.Family) {
		return nil
	}
	var standard *usualGrade
	for i := range b.grades {
		g := &b.grades[i]
		if slices.Contains(it.Keys, g.Trait) {
			return g
		}
		if g.ID == "standard" {
			standard = g
		}
	}
	return standard
}
