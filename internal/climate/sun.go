package climate

import "math"

// declination gives the sun's declination in radians on day n of the year
// (1 to 365), right to 0.04°. Source: Spencer, Fourier series representation of
// the position of the sun, Search 2 (1971).
func declination(n float64) float64 {
	sin, cos := math.Sincos(yearAngle(n))
	sin2, cos2 := math.Sincos(2 * yearAngle(n))
	sin3, cos3 := math.Sincos(3 * yearAngle(n))
	return 0.006918 - 0.399912*cos + 0.070257*sin - 0.006758*cos2 + 0.000907*sin2 - 0.002697*cos3 + 0.00148*sin3
}

// equationOfTime gives, in hours, how far sun time runs ahead of mean time.
// Source: as declination.
func equationOfTime(n float64) float64 {
	sin, cos := math.Sincos(yearAngle(n))
	sin2, cos2 := math.Sincos(2 * yearAngle(n))
	return (0.000075 + 0.001868*cos - 0.032077*sin - 0.014615*cos2 - 0.040849*sin2) * 12 / math.Pi
}

// yearAngle is how far of its yearly round the sun has gone on day n.
func yearAngle(n float64) float64 { return 2 * math.Pi * (n - 1) / yearDays }

// horizon is the sun's height when its upper edge is seen to rise: half the
// disc (16') and refraction (34') below the level, the almanacs' convention.
const horizon = -50.0 / 60 * math.Pi / 180

// dayLength gives the hours from sunrise to sunset at a latitude in degrees:
// cos w = (sin h - sin φ sin δ) / (cos φ cos δ), length = 2w / 15°.
// It is 0 in polar night and 24 in polar day.
func dayLength(lat, n float64) float64 {
	phi, d := lat*math.Pi/180, declination(n)
	c := math.Cos(phi) * math.Cos(d)
	if c < 1e-9 {
		c = 1e-9
	}
	x := (math.Sin(horizon) - math.Sin(phi)*math.Sin(d)) / c
	return 2 * math.Acos(max(-1, min(1, x))) * 12 / math.Pi
}

// solarNoon gives the hour of local standard time at which the sun is highest.
func solarNoon(lon, zone, n float64) float64 {
	return 12 - (lon/15 - zone) - equationOfTime(n)
}

// sunrise gives the hours of sunrise and sunset in local standard time;
// ok is false where the sun does not rise or does not set that day.
func sunrise(lat, lon, zone, n float64) (rise, set float64, ok bool) {
	l, noon := dayLength(lat, n), solarNoon(lon, zone, n)
	return noon - l/2, noon + l/2, l > 0 && l < 24
}
