package climate

import (
	"math"
	"sort"
)

// scatter is the standard deviation, by month, of the daily minimum and of the
// daily maximum around the smooth year.
type scatter struct{ min, max [12]float64 }

// scatterTerms are what the estimate for a station is linear in. The logarithm
// of the standard deviation follows the yearly range of the monthly means, the
// daily range, the month's mean and the latitude, with a yearly wave; and, since
// North America's mountains keep its cold air to the plains, the longitude:
// calm winters and changeable summers on the Pacific coast, calm winters in the
// basins behind it, the opposite on the plains. Elsewhere on earth those
// terms vanish. The spread of single station months around the estimate is
// about 0.3, most of it the chance of the single month.
type scatterTerms [28]float64

// The middle and the reach in degrees of longitude of the three regions.
const (
	coastLon, coastReach   = -122.0, 9.0
	basinLon, basinReach   = -112.0, 7.0
	plainsLon, plainsReach = -97.0, 8.0
)

// The range of the fit, beyond which the estimate stays what it is at its end.
const widestYear, farthest = 45.0, 66.0

func termsOf(r *record, m int) scatterTerms {
	w := wave(r.lat, m)
	sin, cos := math.Sincos(w)
	sin2, cos2 := math.Sincos(2 * w)
	a := (min(yearlyRange(r), widestYear) - 20) / 10
	d := (r.tmax[m] - r.tmin[m] - 11) / 4
	t := ((r.tmax[m]+r.tmin[m])/2 - 10) / 10
	l := (min(math.Abs(r.lat), farthest) - 42) / 10
	coast, basin := coastal(r), sheltered(r)*bump(r, basinLon, basinReach)
	plains := bump(r, plainsLon, plainsReach)
	return scatterTerms{
		1, a, d, t, l, cos, sin, a * cos, a * sin, d * cos, d * sin, l * cos, l * sin, cos2, sin2,
		coast, coast * cos, coast * sin, basin, basin * cos, basin * sin, plains, plains * cos, plains * sin,
		a * a, a * l, t * t, a * t,
	}
}

// yearlyRange is the difference of the means of the warmest and the coldest
// month.
func yearlyRange(r *record) float64 {
	coldest, warmest := math.Inf(1), math.Inf(-1)
	for i := range r.tmax {
		mean := (r.tmax[i] + r.tmin[i]) / 2
		coldest, warmest = min(coldest, mean), max(warmest, mean)
	}
	return warmest - coldest
}

// coastal is 1 on the Pacific coast of North America and 0 far from it.
func coastal(r *record) float64 { return sheltered(r) * bump(r, coastLon, coastReach) }

// bump is 1 at a longitude and falls away from it; it is 0 south of the line.
func bump(r *record, lon, reach float64) float64 {
	if r.lat < 0 {
		return 0
	}
	x := (r.lon - lon) / reach
	return math.Exp(-x * x)
}

// sheltered is 1 west of the continental divide and 0 east of it in the north,
// where the divide parts the mild air from the arctic; from 45° north down the
// basins are sheltered on either side of it.
func sheltered(r *record) float64 {
	const from, whole, width = 45.0, 4.0, 1.5 // degrees
	divide := -113.5 - 1.25*(r.lat-49)
	east := 1 / (1 + math.Exp((divide-r.lon)/width))
	return 1 - max(0, min(1, (r.lat-from)/whole))*east
}

// wave is the angle of the middle of month m in the year, from midwinter.
func wave(lat float64, m int) float64 {
	w := 2 * math.Pi * (float64(m) + 0.5) / 12
	if lat < 0 {
		w += math.Pi
	}
	return w
}

func estimate(coefficients []float64, terms scatterTerms) float64 {
	sum := 0.0
	for i, v := range terms {
		sum += coefficients[i] * v
	}
	return max(leastScatter, min(mostScatter, math.Exp(sum)))
}

// counted is the factor by which day counts, read as those of a normal
// distribution, tell a greater deviation than series of the same places.
func counted(c [3]float64, lat float64, m int) float64 {
	sin, cos := math.Sincos(wave(lat, m))
	return math.Exp(c[0] + c[1]*cos + c[2]*sin)
}

// Bounds of the estimate, °C: the calmest tropical and the most changeable
// continental months of the daily series.
const leastScatter, mostScatter = 0.6, 10.0

// Limits of the day counts, °C: 50 °F and 90 °F, as whole degrees Fahrenheit
// are counted (50 or less is below 50.5, 90 or more is above 89.5).
const countCold, countHot, countFrost = 10.28, 31.94, 0.0

// monthScatter joins, for one station, the estimate with what its own day
// counts and daily series say.
func (c *constants) monthScatter(r *record) scatter {
	var s scatter
	var ownMin, ownMax [12]float64
	for m := range 12 {
		terms := termsOf(r, m)
		s.min[m], s.max[m] = estimate(c.Scatter.Min, terms), estimate(c.Scatter.Max, terms)
		ownMin[m] = impliedScatter(r.tmin, m, countCold, r.daysCold) / counted(c.Scatter.CountedMin, r.lat, m)
		if v := impliedScatter(r.tmin, m, countFrost, r.daysFrost); v > 0 {
			ownMin[m] = v
		}
		ownMax[m] = impliedScatter(r.tmax, m, countHot, hotComplement(r.daysHot)) / counted(c.Scatter.CountedMax, r.lat, m)
	}
	s.min, s.max = blend(s.min, ownMin), blend(s.max, ownMax)
	for m := range 12 {
		if r.sdMean != nil && r.sdMean[m] > 0 {
			mean := (r.tmax[m] + r.tmin[m]) / 2
			s.min[m] = r.sdMean[m] * along(c.MeanToDaily.At, c.MeanToDaily.Min, mean)
			s.max[m] = r.sdMean[m] * along(c.MeanToDaily.At, c.MeanToDaily.Max, mean)
		}
		if r.sd != nil && r.sd[m] > 0 {
			s.min[m], s.max[m] = r.sd[m], r.sd[m]
		}
	}
	return s
}

// along reads a table of rising places, straight from one to the next and
// level beyond its ends.
func along(at, values []float64, x float64) float64 {
	i := sort.SearchFloat64s(at, x)
	if i == 0 {
		return values[0]
	}
	if i == len(at) {
		return values[i-1]
	}
	return values[i-1] + (values[i]-values[i-1])*(x-at[i-1])/(at[i]-at[i-1])
}

// impliedScatter gives the deviation around the smooth year that makes a
// normal distribution agree with the count of days at or below a limit, or 0
// where the count says too little.
func impliedScatter(mean [12]float64, m int, limit float64, days *[12]float64) float64 {
	if days == nil {
		return 0
	}
	p := days[m] / meanMonthDays(m)
	if p < 0.04 || p > 0.96 || math.Abs(p-0.5) < 0.12 {
		return 0
	}
	z := math.Sqrt2 * math.Erfinv(2*p-1)
	sd := (limit - mean[m]) / z
	slope := (mean[(m+1)%12] - mean[(m+11)%12]) / 2
	within := sd*sd - slope*slope/12
	if sd <= 0 || within < 0.5 || sd > mostScatter {
		return 0
	}
	return math.Sqrt(within)
}

func meanMonthDays(m int) float64 {
	if m == 1 {
		return 28.25
	}
	return float64(monthDays[m])
}

// hotComplement turns days at or above a limit into days below it.
func hotComplement(days *[12]float64) *[12]float64 {
	if days == nil {
		return nil
	}
	var c [12]float64
	for m, v := range days {
		c[m] = meanMonthDays(m) - v
	}
	return &c
}

// blend pulls the estimate towards the station's own months: those with a
// figure by ownWeight, the others by a share of the mean difference that grows
// with the number of months that have one.
func blend(prior, own [12]float64) [12]float64 {
	sum, n := 0.0, 0.0
	for m, v := range own {
		if v > 0 {
			sum += math.Log(v / prior[m])
			n++
		}
	}
	if n == 0 {
		return prior
	}
	shift := sum / n * n / (n + 2) * otherWeight
	for m, v := range own {
		if v > 0 {
			prior[m] *= math.Pow(v/prior[m], ownWeight)
		} else {
			prior[m] *= math.Exp(shift)
		}
	}
	return prior
}

const ownWeight, otherWeight = 0.6, 0.2
