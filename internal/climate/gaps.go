package climate

import (
	"fmt"
	"math"
	"time"
)

// shortGap is how many hours running are filled straight from the figure before
// to the figure after. Longer gaps are filled hour by hour of the day from the
// nearest days on either side, so that they keep the course of a day (common
// practice with weather files).
const shortGap = 3

// leastDays is how many days of a month must have a figure.
const leastDays = 20

// fillHours fills the hours that a weather file has no figure for, and says how
// many they were.
func (s *Site) fillHours() error {
	missing, d := 0, 0
	for m, n := range monthDays {
		days := 0
		for range n {
			gaps := 0
			for _, v := range s.hourly[d] {
				if math.IsNaN(v) {
					gaps++
				}
			}
			missing += gaps
			if gaps < hoursIn {
				days++
			}
			d++
		}
		if days < leastDays {
			return fmt.Errorf("%s has temperatures on %d days only", time.Month(m+1), days)
		}
	}
	if missing == 0 {
		return nil
	}
	s.Place.Note = fmt.Sprintf("%d hours without a figure are filled from those beside them", missing)
	s.fillAlong(1, shortGap)
	s.fillAlong(hoursIn, yearDays)
	for d := range s.hourly {
		for h, v := range s.hourly[d] {
			if math.IsNaN(v) {
				return fmt.Errorf("hour %d has no temperature on any day", h+1)
			}
		}
	}
	return nil
}

// fillAlong fills gaps of at most so many steps straight from the figure before
// to the figure after, one hour or one day a step, round the year.
func (s *Site) fillAlong(step, most int) {
	const year int = yearDays * hoursIn
	was := *s.hourly
	at := func(i int) float64 {
		i = (i%year + year) % year
		return was[i/hoursIn][i%hoursIn]
	}
	for i := range year {
		if !math.IsNaN(at(i)) {
			continue
		}
		before, after := 1, 1
		for before+after-1 <= most && math.IsNaN(at(i-before*step)) {
			before++
		}
		for before+after-1 <= most && math.IsNaN(at(i+after*step)) {
			after++
		}
		if before+after-1 <= most {
			a, b := at(i-before*step), at(i+after*step)
			s.hourly[i/hoursIn][i%hoursIn] = a + (b-a)*float64(before)/float64(before+after)
		}
	}
}
