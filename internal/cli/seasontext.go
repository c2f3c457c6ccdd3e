package cli

import (
	"fmt"
	"strings"

	"abut/internal/climate"

	"github.com/guptarohit/asciigraph"
)

// seasonReport is what the season command says, as JSON and as text.
type seasonReport struct {
	Station  string        `json:"station"`
	Place    climate.Place `json:"place"`
	Basis    string        `json:"basis"`
	Estimate bool          `json:"estimate"` // false: counted from hours
	From     string        `json:"from"`
	To       string        `json:"to"`
	Days     int           `json:"days"`
	Hours    string        `json:"hours"`
	MeanMinC float64       `json:"mean_min_c"`
	MeanMaxC float64       `json:"mean_max_c"`
	Odds     []gradeOdds   `json:"odds"`
	Weeks    []seasonWeek  `json:"weeks"`
	// Mildest is the mildest grade that suits, empty where none does or where
	// limits were given in place of the grades.
	Mildest   string `json:"mildest_grade,omitempty"`
	MildestBy string `json:"mildest_by,omitempty"` // what makes a grade suit
	graded    bool
	suit      *grade
	harshest  grade
}

type gradeOdds struct {
	Grade string `json:"grade,omitempty"`
	Text  string `json:"text"`
	climate.Odds
	name string
}

type seasonWeek struct {
	From     string      `json:"from"`
	To       string      `json:"to"`
	MeanMinC float64     `json:"mean_min_c"`
	MeanMaxC float64     `json:"mean_max_c"`
	Odds     []gradeOdds `json:"odds"`
}

const isoDay = "2006-01-02"

func newSeasonReport(site *climate.Site, span climate.Span, hours climate.Hours, limits []grade, g grades) seasonReport {
	r := seasonReport{
		Station: site.Place.Where(), Place: site.Place, Basis: site.Basis(), Estimate: !site.Exact(),
		From: span.From.Format(isoDay), To: span.To.Format(isoDay),
		graded: limits[0].ID != "", harshest: limits[len(limits)-1],
	}
	r.MeanMinC, r.MeanMaxC, _ = site.Band(span)
	var values []float64
	for _, l := range limits {
		o := site.Odds(span, hours, l.MinC)
		r.Days = o.Days
		r.Odds = append(r.Odds, gradeOdds{Grade: l.ID, Text: l.Text, Odds: o, name: l.Name})
		if r.graded && r.suit == nil && o.ShareBelow <= g.Suits.ShareBelow {
			r.suit, r.Mildest, r.MildestBy = &l, l.ID, g.Suits.Source
		}
		values = append(values, l.MinC)
	}
	for _, w := range site.Weeks(span, hours, values) {
		sw := seasonWeek{From: w.From.Format(isoDay), To: w.To.Format(isoDay), MeanMinC: w.MeanMinC, MeanMaxC: w.MeanMaxC}
		for i, o := range w.Odds {
			sw.Odds = append(sw.Odds, gradeOdds{Grade: limits[i].ID, Text: limits[i].Text, Odds: o, name: limits[i].Name})
		}
		r.Weeks = append(r.Weeks, sw)
	}
	return r
}

func (r seasonReport) text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s to %s, %d days, working hours %s\n", r.From, r.To, r.Days, r.Hours)
	fmt.Fprintf(&b, "station  %s\n", r.Station)
	fmt.Fprintf(&b, "basis    %s\n", r.Basis)
	if r.Estimate {
		b.WriteString("         an estimate of the usual season, not a forecast; the maker's own limit and method go before it\n")
	}
	if r.Place.Note != "" {
		fmt.Fprintf(&b, "note     %s\n", r.Place.Note)
	}
	fmt.Fprintf(&b, "air      mean daily minimum %s, maximum %s\n\n", both(r.MeanMinC), both(r.MeanMaxC))
	fmt.Fprintf(&b, "%-34s %12s %12s %13s\n", "limit", "hours below", "days usable", "frost nights")
	for _, o := range r.Odds {
		label := strings.TrimPrefix(o.name+", "+o.Text, ", ")
		fmt.Fprintf(&b, "%-34s %12s %12s %13s\n", label, percent(o.ShareBelow), percent(o.DaysUsable), percent(o.NightFrost))
	}
	b.WriteString("usable: four working hours running at or above the limit\n\n")
	b.WriteString(r.verdict())
	b.WriteString(r.byWeek())
	return b.String()
}

func (r seasonReport) verdict() string {
	switch {
	case !r.graded:
		return ""
	case r.suit == nil:
		return fmt.Sprintf("no grade suits: even the %s, %s, would be below its limit too often; heat and tent the work, or move it\n\n", r.harshest.Name, r.harshest.Text)
	}
	return fmt.Sprintf("mildest grade that suits: %s, %s and up (%s)\n\n", r.suit.Name, r.suit.Text, r.MildestBy)
}

// byWeek is the table by week and, for four weeks or more with a change worth
// seeing, a plot of the first limit.
func (r seasonReport) byWeek() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-12s %-18s", "week from", "mean min to max")
	for _, o := range r.Odds {
		fmt.Fprintf(&b, " %12s", "below "+o.Text)
	}
	b.WriteString("\n")
	var first []float64
	for _, w := range r.Weeks {
		fmt.Fprintf(&b, "%-12s %-18s", w.From, fmt.Sprintf("%.0f to %.0f °C", w.MeanMinC, w.MeanMaxC))
		for _, o := range w.Odds {
			fmt.Fprintf(&b, " %12s", percent(o.ShareBelow))
		}
		b.WriteString("\n")
		first = append(first, w.Odds[0].ShareBelow*100)
	}
	const weeksToPlot, changeToPlot = 4, 10
	if len(first) >= weeksToPlot && spread(first) >= changeToPlot {
		b.WriteString("\n" + asciigraph.Plot(first, asciigraph.Height(8), asciigraph.Width(min(60, 6*len(first))),
			asciigraph.Precision(0), asciigraph.Caption("% of working hours below "+r.Odds[0].Text+", by week")) + "\n")
	}
	return b.String()
}

func spread(v []float64) float64 {
	lo, hi := v[0], v[0]
	for _, x := range v {
		lo, hi = min(lo, x), max(hi, x)
	}
	return hi - lo
}

func percent(share float64) string { return fmt.Sprintf("%.0f %%", share*100) }

// both says a temperature in both units.
func both(c float64) string { return fmt.Sprintf("%.1f °C (%.0f °F)", c, c*1.8+32) }
