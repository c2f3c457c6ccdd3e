package climate

import (
	"math"
	"time"
)

const yearDays = 365

// monthDays are the lengths used for the normal year.
var monthDays = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// smoothYear spreads twelve monthly means over the days of a year so that the
// mean over each month stays what it was.
//
// The curve is the periodic Fourier series through the months, with harmonic k
// divided by sin(πk/12)/(πk/12), the factor by which a monthly mean flattens
// it. Months differ in length, so the small error that is left is put through
// the same step again until it is gone. Of the sixth harmonic twelve means fix
// the sine at half weight.
func smoothYear(means [12]float64) [yearDays]float64 {
	var year [yearDays]float64
	left := means
	for range 4 {
		step := harmonics(left)
		for d := range year {
			year[d] += step[d]
		}
		got := monthMeans(year)
		for m := range left {
			left[m] = means[m] - got[m]
		}
	}
	// what is left, thousandths, is shifted by month
	d := 0
	for m, n := range monthDays {
		for range n {
			year[d] += left[m]
			d++
		}
	}
	return year
}

// harmonics is one pass of the series: means to days, six harmonics.
func harmonics(means [12]float64) [yearDays]float64 {
	var year [yearDays]float64
	for k := 0; k <= 6; k++ {
		var a, b float64
		for m, v := range means {
			w := 2 * math.Pi * float64(k) * (float64(m) + 0.5) / 12
			sin, cos := math.Sincos(w)
			a += v * cos / 6
			b += v * sin / 6
		}
		gain := 0.5
		if k == 6 {
			b /= 2
		}
		if k > 0 {
			x := math.Pi * float64(k) / 12
			gain = x / math.Sin(x)
		}
		for d := range year {
			w := 2 * math.Pi * float64(k) * (float64(d) + 0.5) / yearDays
			sin, cos := math.Sincos(w)
			year[d] += gain * (a*cos + b*sin)
		}
	}
	return year
}

func monthMeans(year [yearDays]float64) [12]float64 {
	var means [12]float64
	d := 0
	for m, n := range monthDays {
		for range n {
			means[m] += year[d] / float64(n)
			d++
		}
	}
	return means
}

// dayIndex is the day of the normal year, 0 to 364; 29 February counts as 28.
func dayIndex(t time.Time) int {
	n := t.YearDay() - 1
	if leap(t.Year()) && n >= 59 {
		n--
	}
	return n
}

func leap(y int) bool { return y%4 == 0 && (y%100 != 0 || y%400 == 0) }
