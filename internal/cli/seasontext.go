package cli

import (
	"fmt"
	"math"
	"strings"

	"abut/internal/climate"
	"abut/internal/output"

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
	usable    string // what a usable day is
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
	r.usable = "usable: " + hours.Usable()
	low, high, _ := site.Band(span)
	r.MeanMinC, r.MeanMaxC = rounded(low, 100), rounded(high, 100)
	var values []float64
	for _, l := range limits {
		o := site.Odds(span, hours, l.MinC)
		r.Days = o.Days
		r.Odds = append(r.Odds, gradeOdds{Grade: l.ID, Text: l.Text, Odds: told(o), name: l.Name})
		if r.graded && r.suit == nil && o.ShareBelow <= g.Suits.ShareBelow {
			r.suit, r.Mildest, r.MildestBy = &l, l.ID, g.Suits.Source
		}
		values = append(values, l.MinC)
	}
	for _, w := range site.Weeks(span, hours, values) {
		sw := seasonWeek{From: w.From.Format(isoDay), To: w.To.Format(isoDay), MeanMinC: rounded(w.MeanMinC, 100), MeanMaxC: rounded(w.MeanMaxC, 100)}
		for i, o := range w.Odds {
			sw.Odds = append(sw.Odds, gradeOdds{Grade: limits[i].ID, Text: limits[i].Text, Odds: told(o), name: limits[i].Name})
		}
		r.Weeks = append(r.Weeks, sw)
	}
	return r
}

// told leaves out the digits that no estimate has.
func told(o climate.Odds) climate.Odds {
	const share = 10000
	o.LimitC = rounded(o.LimitC, 100)
	o.ShareBelow, o.ShareAbove = rounded(o.ShareBelow, share), rounded(o.ShareAbove, share)
	o.DaysUsable, o.NightFrost = rounded(o.DaysUsable, share), rounded(o.NightFrost, share)
	return o
}

// lineWidth is the width of a terminal that all of the report fits.
const lineWidth = 80

// noted writes a label and a text beside it, broken to the width.
func noted(b *strings.Builder, label, text string) {
	const indent = 9
	for _, line := range output.Wrap(text, lineWidth-indent) {
		fmt.Fprintf(b, "%-*s%s\n", indent, label, line)
		label = ""
	}
}

func (r seasonReport) text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s to %s, %d %s, working hours %s\n", r.From, r.To, r.Days, plural(r.Days, "day"), r.Hours)
	noted(&b, "station", r.Station)
	noted(&b, "basis", r.Basis)
	if r.Estimate {
		noted(&b, "", "an estimate of the usual season, not a forecast; the maker's own limit and method go before it")
	}
	if r.Place.Note != "" {
		noted(&b, "note", r.Place.Note)
	}
	noted(&b, "air", fmt.Sprintf("mean daily minimum %s, maximum %s", both(r.MeanMinC), both(r.MeanMaxC)))
	fmt.Fprintf(&b, "\n%-36s %12s %12s %13s\n", "limit", "hours below", "days usable", "frost nights")
	for _, o := range r.Odds {
		label := strings.TrimPrefix(o.name+", "+o.Text, ", ")
		fmt.Fprintf(&b, "%-36s %12s %12s %13s\n", label, percent(o.ShareBelow), percent(o.DaysUsable), percent(o.NightFrost))
	}
	b.WriteString(r.usable + "\n\n")
	b.WriteString(r.verdict())
	b.WriteString(r.byWeek())
	return b.String()
}

func plural(n int, word string) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

func (r seasonReport) verdict() string {
	var text string
	switch {
	case !r.graded:
		return ""
	case r.suit == nil:
		text = fmt.Sprintf("no grade suits: even the %s, %s, would be below its limit too often; heat and tent the work, or move it", r.harshest.Name, r.harshest.Text)
	default:
		text = fmt.Sprintf("mildest grade that suits: %s, %s and up (%s)", r.suit.Name, r.suit.Text, r.MildestBy)
	}
	return strings.Join(output.Wrap(text, lineWidth), "\n") + "\n\n"
}

// byWeek is the table by week and, for four weeks or more with a change worth
// seeing, a plot of the first limit.
func (r seasonReport) byWeek() string {
	var b strings.Builder
	const perTable = 5 // limits that a line holds
	for from := 0; from < len(r.Odds); from += perTable {
		if from > 0 {
			b.WriteString("\n")
		}
		r.weekTable(&b, from, min(from+perTable, len(r.Odds)))
	}
	var first []float64
	for _, w := range r.Weeks {
		first = append(first, w.Odds[0].ShareBelow*100)
	}
	const weeksToPlot, changeToPlot = 4, 10
	if len(first) >= weeksToPlot && spread(first) >= changeToPlot {
		b.WriteString("\n" + asciigraph.Plot(first, asciigraph.Height(8), asciigraph.Width(min(60, 6*len(first))),
			asciigraph.Precision(0), asciigraph.Caption("% of working hours below "+r.Odds[0].Text+", by week")) + "\n")
	}
	return b.String()
}

// weekTable writes the weeks against some of the limits.
func (r seasonReport) weekTable(b *strings.Builder, from, to int) {
	fmt.Fprintf(b, "%-30s  %s\n%-12s%-18s", "", "share of working hours below", "week from", "mean min to max")
	for _, o := range r.Odds[from:to] {
		fmt.Fprintf(b, " %9s", o.Text)
	}
	b.WriteString("\n")
	for _, w := range r.Weeks {
		fmt.Fprintf(b, "%-12s%-18s", w.From, fmt.Sprintf("%.0f to %.0f °C", rounded(w.MeanMinC, 1), rounded(w.MeanMaxC, 1)))
		for _, o := range w.Odds[from:to] {
			fmt.Fprintf(b, " %9s", percent(o.ShareBelow))
		}
		b.WriteString("\n")
	}
}

func spread(v []float64) float64 {
	lo, hi := v[0], v[0]
	for _, x := range v {
		lo, hi = min(lo, x), max(hi, x)
	}
	return hi - lo
}

// percent does not round to never or always what is neither.
func percent(share float64) string {
	switch {
	case share > 0 && share < 0.005:
		return "< 1 %"
	case share >= 0.995 && share < 1:
		return "> 99 %"
	}
	return fmt.Sprintf("%.0f %%", share*100)
}

// both says a temperature in both units.
func both(c float64) string {
	return fmt.Sprintf("%.1f °C (%.0f °F)", rounded(c, 10), rounded(c*1.8+32, 1))
}

// rounded rounds to parts of one, without a zero below zero.
func rounded(x, parts float64) float64 { return math.Round(x*parts)/parts + 0 }
