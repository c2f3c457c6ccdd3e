package climate

import "math"

// The mean course of a day's temperature: a sine from the minimum after
// sunrise over the maximum in the afternoon to sunset, then an exponential
// fall to the next minimum.
//
// Form: Parton and Logan, A model for diurnal variation in soil and air
// temperature, Agricultural Meteorology 23 (1981). In long days two kinds of
// place have a course of their own. Where the sea holds the whole year even,
// its wind ends the rise at noon. In the lowlands of the Pacific coast the
// sea's low cloud lies until late in the morning, and the rise begins when it
// is gone. In the dry air between the front of the Rocky Mountains and that
// coast the day runs late the whole year, since no afternoon cloud cuts it off.
//
// The minima and maxima of single days come at all hours, the more so where
// weather moves the air further than the sun does, so the mean course turns
// before it reaches them: by shares of the range that are a linear form of
// scatter over range and of day length.
type course struct {
	LagMax         float64 `json:"lag_max_h"`           // hours from solar noon to the maximum, less LagMin
	LagMaxSea      float64 `json:"lag_max_sea_h"`       // hours more on long days by an even sea
	LagMaxLowland  float64 `json:"lag_max_lowland_h"`   // hours more on long days in the lowlands of the Pacific coast
	LagMaxWest     float64 `json:"lag_max_west_h"`      // hours more west of the front of the Rocky Mountains
	LagMaxWestLong float64 `json:"lag_max_west_long_h"` // hours more there on long days
	LagMin         float64 `json:"lag_min_h"`           // hours from sunrise to the minimum
	LagMinLowland  float64 `json:"lag_min_lowland_h"`   // hours more on long days in the lowlands of the Pacific coast
	Decay          float64 `json:"decay"`               // exponent of the fall through the night

	ShortMin        float64 `json:"short_min"`
	ShortMinScatter float64 `json:"short_min_scatter"`
	ShortMinDay     float64 `json:"short_min_day"` // an hour of daylight over twelve
	ShortMax        float64 `json:"short_max"`
	ShortMaxScatter float64 `json:"short_max_scatter"`

	sea, lowland, west float64 // how much the place is each, 0 to 1
}

// at gives the course of a place.
func (c course) at(r *record) course {
	c.sea = evenSea(r)
	c.lowland = (1 - c.sea) * moderate(r) * coastal(r) * math.Exp(-square(max(0, r.elev)/lowlandReach))
	c.west = (1 - c.lowland) * (1 - c.sea) * behindFront(r)
	return c
}

func square(x float64) float64 { return x * x }

// lowlandReach is the height, m, that the sea's low cloud reaches to.
const lowlandReach = 400.0

// evenSea is 1 where the monthly means differ so little that the sea must hold
// them, and 0 where they differ as they do inland.
func evenSea(r *record) float64 {
	const even, inland = 9.0, 14.0 // °C between the coldest and the warmest month
	return max(0, min(1, (inland-yearlyRange(r))/(inland-even)))
}

// moderate is 1 where the sea's air reaches the place the whole year, and 0
// where the year is as wide as inland.
func moderate(r *record) float64 {
	const even, inland = 17.0, 20.0 // °C between the coldest and the warmest month
	return max(0, min(1, (inland-yearlyRange(r))/(inland-even)))
}

// behindFront is 1 from the front of the Rocky Mountains to the Pacific and 0
// everywhere else.
func behindFront(r *record) float64 {
	const coast, turn, width = -130.0, 40.0, 0.4 // degrees
	if r.lat < 0 || r.lat >= far || r.lon < coast {
		return 0
	}
	front := -105.2 - 0.95*max(0, r.lat-turn)
	return 1 / (1 + math.Exp((r.lon-front)/width))
}

// Shortest and longest day length that the form is used with; polar night and
// polar day are held at these.
const leastDay, mostDay, hoursIn = 4.0, 20.0, 24.0

// long is 0 for a winter's day and 1 for a summer's.
func long(length float64) float64 {
	const winter, summer = 10.0, 14.0 // hours of daylight
	return max(0, min(1, (length-winter)/(summer-winter)))
}

// shape gives the place of hour t between the minimum (0) and the maximum (1)
// of the mean course, for a day length and solar noon in hours.
func (c course) shape(t, length, noon float64) float64 {
	length = max(leastDay, min(mostDay, length))
	lagMin := c.LagMin + long(length)*c.LagMinLowland*c.lowland
	lagMax := c.LagMax + c.west*c.LagMaxWest + long(length)*(c.LagMaxSea*c.sea+c.LagMaxLowland*c.lowland+c.LagMaxWestLong*c.west)
	since := math.Mod(t-(noon-length/2+lagMin)+2*hoursIn, hoursIn)
	day := length - lagMin
	rising := func(h float64) float64 { return math.Sin(math.Pi * h / (length + 2*lagMax)) }
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
