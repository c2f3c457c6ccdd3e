package climate

import "math"

// scatter is the standard deviation, by month, of the daily minimum and of the
// daily maximum around the smooth year.
type scatter struct{ min, max [12]float64 }

// The estimate for a station without a series of its own: the logarithm of the
// standard deviation is linear in the yearly range of the monthly means, the
// daily range, the month's mean and the latitude, with a yearly wave.
// Fitted to the day counts of 8,226 stations (the deviation that a normal
// distribution needs to give the observed days with a minimum of 10 °C or
// less, or a maximum of 32 °C or more) and to 62 daily series; the spread of
// single station months around it is about a quarter.
var (
	scatterMin = [13]float64{1.3410, 0.1701, 0.1274, -0.1674, -0.0679, 0.3128, 0.0596, -0.0966, 0.0184, 0.0449, -0.0215, 0.0776, -0.0164}
	scatterMax = [13]float64{1.4133, 0.1582, 0.1250, -0.2134, -0.0323, 0.1682, 0.0815, -0.0780, 0.0197, 0.0293, -0.0510, 0.0446, -0.0325}
)

func estimate(c [13]float64, tmax, tmin [12]float64, lat float64, m int) float64 {
	coldest, warmest := math.Inf(1), math.Inf(-1)
	for i := range tmax {
		mean := (tmax[i] + tmin[i]) / 2
		coldest, warmest = min(coldest, mean), max(warmest, mean)
	}
	w := 2 * math.Pi * (float64(m) + 0.5) / 12
	if lat < 0 {
		w += math.Pi
	}
	cos, sin := math.Cos(w), math.Sin(w)
	a := (warmest - coldest - 20) / 10
	d := (tmax[m] - tmin[m] - 11) / 4
	t := ((tmax[m]+tmin[m])/2 - 10) / 10
	l := (math.Abs(lat) - 42) / 10
	x := [13]float64{1, a, d, t, l, cos, sin, a * cos, a * sin, d * cos, d * sin, l * cos, l * sin}
	sum := 0.0
	for i, v := range x {
		sum += c[i] * v
	}
	return max(leastScatter, min(mostScatter, math.Exp(sum)))
}

// Bounds of the estimate, °C: the calmest tropical and the most changeable
// continental months of the daily series.
const leastScatter, mostScatter = 0.8, 10.0

// Limits of the day counts, °C: 50 °F and 90 °F, as whole degrees Fahrenheit
// are counted (50 or less is below 50.5, 90 or more is above 89.5).
const countCold, countHot, countFrost = 10.28, 31.94, 0.0

// monthScatter joins, for one station, the estimate with what its own day
// counts and daily series say.
func monthScatter(r *record) scatter {
	var s scatter
	var ownMin, ownMax [12]float64
	for m := range 12 {
		s.min[m] = estimate(scatterMin, r.tmax, r.tmin, r.lat, m)
		s.max[m] = estimate(scatterMax, r.tmax, r.tmin, r.lat, m)
		ownMin[m] = impliedScatter(r.tmin, m, countCold, r.daysCold)
		if v := impliedScatter(r.tmin, m, countFrost, r.daysFrost); v > 0 {
			ownMin[m] = v
		}
		ownMax[m] = impliedScatter(r.tmax, m, countHot, hotComplement(r.daysHot))
	}
	s.min, s.max = blend(s.min, ownMin), blend(s.max, ownMax)
	for m := range 12 {
		if r.sdMean != nil && r.sdMean[m] > 0 {
			s.min[m] = r.sdMean[m] * meanToMin
			s.max[m] = r.sdMean[m] * (meanToMax + meanToMaxSummer*summer(r.lat, m))
		}
		if r.sd != nil && r.sd[m] > 0 {
			s.min[m], s.max[m] = r.sd[m], r.sd[m]
		}
	}
	return s
}

// Daily minima and maxima vary more than daily means, maxima in summer most:
// medians of 31 series.
const meanToMin, meanToMax, meanToMaxSummer = 1.04, 1.09, 0.16

// summer is 1 in the middle of summer, 0 in the middle of winter.
func summer(lat float64, m int) float64 {
	c := math.Cos(2 * math.Pi * (float64(m) + 0.5) / 12)
	if lat < 0 {
		c = -c
	}
	return (1 - c) / 2
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

const ownWeight, otherWeight = 0.6, 0.5
