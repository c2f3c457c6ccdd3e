package climate

import "math"

// declination gives the sun's declination in radians on day n of the year
// (1 to 365): 23.45° · sin(360° · (284 + n) / 365).
// Source: Cooper, The absorption of radiation in solar stills, Solar Energy 12 (1969).
func declination(n float64) float64 {
	return 23.45 * math.Pi / 180 * math.Sin(2*math.Pi*(284+n)/365)
}

// equationOfTime gives, in hours, how far sun time runs ahead of mean time:
// 9.87 sin 2B - 7.53 cos B - 1.5 sin B minutes, B = 360° · (n - 81) / 364.
// Source: Duffie and Beckman, Solar Engineering of Thermal Processes (from memory).
func equationOfTime(n float64) float64 {
	b := 2 * math.Pi * (n - 81) / 364
	return (9.87*math.Sin(2*b) - 7.53*math.Cos(b) - 1.5*math.Sin(b)) / 60
}

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
