package climate

import "math"

// The mean course of a day's temperature: a sine from the minimum after
// sunrise over the maximum in the afternoon to sunset, then an exponential
// fall to the next minimum.
//
// Form: Parton and Logan, A model for diurnal variation in soil and air
// temperature, Agricultural Meteorology 23 (1981), who give 1.86 h, 2.2 and
// -0.17 h (from memory). The constants here were fitted to the mean days of
// ten typical years, 120 station months, with a residue of 0.055 of the range.
const (
	lagMax  = 1.8 // hours from solar noon to the maximum, less lagMin
	decay   = 2.0 // exponent of the fall through the night
	lagMin  = 0.5 // hours from sunrise to the minimum
	leastD  = 4.0 // shortest and longest day length that the form is used with;
	mostD   = 20. // polar night and polar day are held at these
	hoursIn = 24.0
)

// The minima and maxima of single days come at all hours, the more so where
// weather moves the air further than the sun does, so the mean course turns
// before it reaches them. The shares of the range by which it falls short, as
// a linear form of scatter over range and of day length, are fitted to the
// same months.
const (
	shortMin, shortMinScatter, shortMinDay = 0.0193, 0.269, -0.0135
	shortMax, shortMaxScatter              = 0.0687, 0.142
)

// dayShape gives the place of hour t between the minimum (0) and the maximum
// (1) of the mean course, for a day length and solar noon in hours.
func dayShape(t, length, noon float64) float64 {
	length = max(leastD, min(mostD, length))
	since := math.Mod(t-(noon-length/2+lagMin)+2*hoursIn, hoursIn)
	day := length - lagMin
	if since <= day {
		return math.Sin(math.Pi * since / (length + 2*lagMax))
	}
	set := math.Sin(math.Pi * day / (length + 2*lagMax))
	x := (since - day) / (hoursIn - day)
	floor := math.Exp(-decay)
	return set * (math.Exp(-decay*x) - floor) / (1 - floor)
}

// turns gives the ends of the mean course for a day with the given normals,
// scatter of the daily level, and day length.
func turns(tmax, tmin, sd, length float64) (low, high float64) {
	length = max(leastD, min(mostD, length))
	r := max(0.1, tmax-tmin)
	q := min(1.5, sd/r)
	under := max(0, shortMin+shortMinScatter*q+shortMinDay*(length-12))
	over := max(0, shortMax+shortMaxScatter*q)
	return tmin + min(0.48, under)*r, tmax - min(0.48, over)*r
}
