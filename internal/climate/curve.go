package climate

import "math"

// The mean course of a day's temperature: a sine from the minimum after
// sunrise over the maximum in the afternoon to sunset, then an exponential
// fall to the next minimum.
//
// Form: Parton and Logan, A model for diurnal variation in soil and air
// temperature, Agricultural Meteorology 23 (1981). Inland of the Pacific the
// maximum comes later, once the sea's cloud is gone.
//
// The minima and maxima of single days come at all hours, the more so where
// weather moves the air further than the sun does, so the mean course turns
// before it reaches them: by shares of the range that are a linear form of
// scatter over range and of day length.
type course struct {
	LagMax      float64 `json:"lag_max_h"`       // hours from solar noon to the maximum, less LagMin
	LagMaxCoast float64 `json:"lag_max_coast_h"` // hours more on the Pacific coast
	LagMin      float64 `json:"lag_min_h"`       // hours from sunrise to the minimum
	Decay       float64 `json:"decay"`           // exponent of the fall through the night

	ShortMin        float64 `json:"short_min"`
	ShortMinScatter float64 `json:"short_min_scatter"`
	ShortMinDay     float64 `json:"short_min_day"` // an hour of daylight over twelve
	ShortMax        float64 `json:"short_max"`
	ShortMaxScatter float64 `json:"short_max_scatter"`
}

// at gives the course of a place: coast is 1 on the Pacific coast, 0 far off.
func (c course) at(coast float64) course {
	c.LagMax += c.LagMaxCoast * coast
	return c
}

// Shortest and longest day length that the form is used with; polar night and
// polar day are held at these.
const leastDay, mostDay, hoursIn = 4.0, 20.0, 24.0

// shape gives the place of hour t between the minimum (0) and the maximum (1)
// of the mean course, for a day length and solar noon in hours.
func (c course) shape(t, length, noon float64) float64 {
	length = max(leastDay, min(mostDay, length))
	since := math.Mod(t-(noon-length/2+c.LagMin)+2*hoursIn, hoursIn)
	day := length - c.LagMin
	rising := func(h float64) float64 { return math.Sin(math.Pi * h / (length + 2*c.LagMax)) }
	if since <= day {
		return rising(since)
	}
	x := (since - day) / (hoursIn - day)
	floor := math.Exp(-c.Decay)
	return rising(day) * (math.Exp(-c.Decay*x) - floor) / (1 - floor)
}

// mostShort keeps the turns of the course apart.
const mostShort = 0.48

// turns gives the ends of the mean course for a day with the given normals,
// scatter of the daily level, and day length.
func (c course) turns(tmax, tmin, sd, length float64) (low, high float64) {
	length = max(leastDay, min(mostDay, length))
	r := max(0.1, tmax-tmin)
	q := min(1.5, sd/r)
	under := max(0, c.ShortMin+c.ShortMinScatter*q+c.ShortMinDay*(length-12))
	over := max(0, c.ShortMax+c.ShortMaxScatter*q)
	return tmin + min(mostShort, under)*r, tmax - min(mostShort, over)*r
}
