package climate

import (
	"math"
	"slices"
)

// usableHours is the length of a usable spell (common practice: a crew, a
// primer's flash-off and a run of sheet need half a day).
const usableHours = 4

// Usable says in words what a usable day is within these hours.
func (h Hours) Usable() string {
	if len(h.times()) < usableHours {
		return "all working hours at or above the limit, since they are fewer than four"
	}
	return "four working hours running at or above the limit"
}

// Odds gives the shares of a span against one limit in °C.
//
// From normals: the temperature at an hour is taken as normally distributed
// around the mean course of the day, with the deviation of the daily minimum
// at the one end of the course and that of the maximum at the other, so the
// share below a limit L is the mean of Φ((L - T(h)) / s(h)) over working hours
// and days. A day is usable where its level lifts four hours running to the
// limit: the best such run of (T - L)/s, least hour within, through Φ. A night
// freezes by Φ((0 - minimum)/s). From a weather file everything is counted.
// A span that ends before it begins has no days and zero shares.
func (s *Site) Odds(span Span, hours Hours, limitC float64) Odds {
	o := Odds{LimitC: limitC, Days: span.days()}
	if o.Days == 0 {
		return o
	}
	ts := hours.times()
	below, usable, frost, total := 0.0, 0.0, 0.0, 0.0
	zs := make([]float64, len(ts))
	for day, weight := range span.sample(s.sampled()) {
		i := dayIndex(day)
		var b, u, f float64
		if s.hourly != nil {
			b, u, f = s.count(i, ts, limitC)
		} else {
			b, u, f = s.day(i, ts, zs, limitC)
		}
		below, usable, frost = below+b*weight, usable+u*weight, frost+f*weight
		total += weight
	}
	o.ShareBelow = below / total
	o.ShareAbove = 1 - o.ShareBelow
	o.DaysUsable = usable / total
	o.NightFrost = frost / total
	return o
}

// day gives the shares of one day of the normal year; zs is room for one
// figure an hour.
func (s *Site) day(i int, ts, zs []float64, limit float64) (below, usable, frost float64) {
	n := float64(i + 1)
	length, noon := dayLength(s.Place.Lat, n), solarNoon(s.Place.Lon, s.zone, n)
	low, high := s.course.turns(s.dayMax[i], s.dayMin[i], (s.sdMax[i]+s.sdMin[i])/2, length)
	for j, t := range ts {
		f := s.course.shape(t, length, noon)
		mean := low + f*(high-low)
		zs[j] = (limit - mean) / (s.sdMin[i] + f*(s.sdMax[i]-s.sdMin[i]))
		below += s.skewed(zs[j], mean)
	}
	return below / float64(len(ts)), 1 - normal(bestRun(zs)), normal(-s.dayMin[i] / s.sdMin[i])
}

// bestRun is how far the level of a day must lift, in deviations, for a usable
// spell: the least over all runs of the most within the run.
func bestRun(zs []float64) float64 {
	best := math.Inf(1)
	k := min(usableHours, len(zs))
	for j := 0; j+k <= len(zs); j++ {
		best = min(best, slices.Max(zs[j:j+k]))
	}
	return best
}

// normal is the distribution function of the standard normal distribution.
func normal(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// skewed is the distribution function of an hour's departure. Warm air is
// capped: clouds, storms and the sea hold hot days back, so the departures of
// warm hours lean to the cold side. The skewness g grows with the mean of the
// hour, and enters by the first term of the Edgeworth series:
// Φ(z) - φ(z) · g/6 · (z² - 1).
func (s *Site) skewed(z, mean float64) float64 {
	k := s.model.Skew
	g := k.Most * max(0, min(1, (mean-k.From)/(k.To-k.From)))
	p := normal(z) - math.Exp(-z*z/2)/math.Sqrt(2*math.Pi)*g/6*(z*z-1)
	return max(0, min(1, p))
}

// count gives the shares of one day of a weather file.
func (s *Site) count(i int, ts []float64, limitC float64) (below, usable, frost float64) {
	run := 0
	for _, t := range ts {
		d, h := (i+int(math.Floor(t/24))+yearDays)%yearDays, int(math.Floor(math.Mod(t+24, 24)))
		if s.hourly[d][h] < limitC {
			below++
			run = 0
		} else {
			run++
		}
		if run >= min(usableHours, len(ts)) {
			usable = 1
		}
	}
	if slices.Min(s.hourly[i][:]) < 0 {
		frost = 1
	}
	return below / float64(len(ts)), usable, frost
}
