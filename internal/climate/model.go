package climate

import (
	"encoding/json"
	"fmt"
	"sync"
)

// constants are the figures of the model that come from series and not from
// thought. data/README.md says what they were fitted to and how well they hold.
type constants struct {
	// Scatter holds the coefficients of scatterTerms, and by how much (the
	// logarithm, with a yearly wave) day counts tell more than series do.
	Scatter struct {
		Max        []float64  `json:"max"`
		Min        []float64  `json:"min"`
		CountedMax [3]float64 `json:"counted_max"`
		CountedMin [3]float64 `json:"counted_min"`
	} `json:"scatter"`
	// MeanToDaily gives by how much the daily maximum and minimum vary more than
	// the daily mean, by the month's mean temperature.
	MeanToDaily struct {
		At  []float64 `json:"at_c"`
		Max []float64 `json:"max"`
		Min []float64 `json:"min"`
	} `json:"mean_to_daily"`
	Course course `json:"course"`
	Skew   struct {
		From float64 `json:"from_c"`
		To   float64 `json:"to_c"`
		Most float64 `json:"most"`
	} `json:"skew"`
	// Shift is what normals of Of rose by until those of To, °C by month, in
	// each group of stations.
	Shift struct {
		Of     string                 `json:"of"`
		To     string                 `json:"to"`
		Groups map[string][12]float64 `json:"groups"`
	} `json:"shift"`
}

// theModel reads the constants once.
var theModel = sync.OnceValues(func() (*constants, error) {
	b, err := data.ReadFile("data/model.json")
	if err != nil {
		return nil, err
	}
	var c constants
	if err := json.Unmarshal(b, &c); err != nil {
		return nil, fmt.Errorf("constants of the climate model: %w", err)
	}
	if len(c.Scatter.Max) != len(scatterTerms{}) || len(c.Scatter.Min) != len(scatterTerms{}) {
		return nil, fmt.Errorf("constants of the climate model: %d and %d coefficients of the scatter, not %d",
			len(c.Scatter.Max), len(c.Scatter.Min), len(scatterTerms{}))
	}
	if d := c.MeanToDaily; len(d.At) == 0 || len(d.Max) != len(d.At) || len(d.Min) != len(d.At) {
		return nil, fmt.Errorf("constants of the climate model: mean_to_daily has columns of %d, %d and %d", len(d.At), len(d.Max), len(d.Min))
	}
	return &c, nil
})

// far is the latitude from which the north's own change holds, tropic the one
// below which no pair of normals tells of any.
const far, tropic = 60.0, 24.0

// shift gives by how much a station's normals are moved to the newer period,
// and the words for the period.
func (c *constants) shift(r *record) ([12]float64, string) {
	group := r.country
	switch {
	case r.lat >= far || r.region == "AK":
		group = "north"
	case r.lat < tropic:
		group = ""
	}
	by, ok := c.Shift.Groups[group]
	if !ok || r.period != c.Shift.Of {
		return [12]float64{}, r.period
	}
	return by, r.period + ", moved to " + c.Shift.To
}
