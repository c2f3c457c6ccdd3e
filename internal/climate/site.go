package climate

import (
	"fmt"
	"math"
	"time"
)

// lapse is the fall of temperature with height, °C a meter, of the standard
// atmosphere (ISO 2533), by which a station's figures are moved to the site's
// height.
const lapse = 0.0065

// Site is a place with its figures: monthly normals laid out over the days of
// a year, or the hours of a weather file.
type Site struct {
	Place     Place
	DewSource string // how the dew point is known

	zone            float64 // hours from universal time, standard time
	tmax, tmin, dew [12]float64
	dayMax, dayMin  [yearDays]float64
	sdMax, sdMin    [yearDays]float64
	hourly          *[yearDays][24]float64 // nil for a site from normals; NaN where the file has none

	model  *constants // nil for a weather file
	course course     // of the mean day here
}

// Exact says whether the odds are counted from hours rather than estimated
// from normals.
func (s *Site) Exact() bool { return s.hourly != nil }

// Basis says in one phrase what the odds rest on.
func (s *Site) Basis() string {
	if s.Exact() {
		return fmt.Sprintf("counted from the hours of a weather file (%s)", s.Place.Source)
	}
	return fmt.Sprintf("an estimate from monthly normals %s (%s)", s.Place.Period, s.Place.Source)
}

// Site resolves the station's figures, moved to the newer period of normals and
// to the height of the place where that is known.
func (p Place) Site() (*Site, error) {
	c, err := theModel()
	if err != nil {
		return nil, err
	}
	r := p.rec
	if r == nil {
		near, err := Near(p.Lat, p.Lon, nil)
		if err != nil {
			return nil, err
		}
		r = near.rec
	}
	moved := *r
	by, period := c.shift(r)
	p.Period = period
	for m := range by {
		if p.HeightDiffM != nil {
			by[m] -= lapse * *p.HeightDiffM
		}
		moved.tmax[m] += by[m]
		moved.tmin[m] += by[m]
	}
	s := c.newSite(p, &moved, c.monthScatter(r))
	s.zone, err = zoneOf(r.region, p.Lon)
	if err != nil {
		return nil, err
	}
	s.DewSource, err = s.fillDew(r)
	return s, err
}

// newSite lays monthly figures out over the year.
func (c *constants) newSite(p Place, r *record, sc scatter) *Site {
	s := &Site{Place: p, tmax: r.tmax, tmin: r.tmin, zone: math.Round(p.Lon / 15), model: c}
	s.course = c.Course.at(r)
	s.dayMax, s.dayMin = smoothYear(r.tmax), smoothYear(r.tmin)
	s.sdMax, s.sdMin = smoothYear(sc.max), smoothYear(sc.min)
	for d := range s.sdMax {
		s.sdMax[d] = max(leastScatter/2, s.sdMax[d])
		s.sdMin[d] = max(leastScatter/2, s.sdMin[d])
	}
	return s
}

// dewReach is how far, in km, the dew point of another station is borrowed.
const dewReach = 300

// fillDew sets the monthly dew points: the station's own; or the nearest named
// station's, kept at its distance from the daily minimum; or the daily minimum,
// two degrees less where the daily range tells of dry air (after FAO Irrigation
// and Drainage Paper 56, equation 48 and annex 6, from memory).
func (s *Site) fillDew(r *record) (string, error) {
	if r.dew != nil {
		for m := range 12 {
			s.dew[m] = min(s.tmin[m]+r.dew[m]-r.tmin[m], s.tmax[m])
		}
		return "monthly means at the station", nil
	}
	other, km, err := nearestWithDew(r.lat, r.lon)
	if err != nil {
		return "", err
	}
	if other != nil && km <= dewReach {
		for m := range 12 {
			s.dew[m] = s.tmin[m] + other.dew[m] - other.tmin[m]
		}
		return fmt.Sprintf("estimated from %s, %s, %.0f km off", other.name, other.region, km), nil
	}
	s.dewFromMinimum()
	return "estimated from the daily minimum", nil
}

func (s *Site) dewFromMinimum() {
	const dryRange, dryFall = 15.0, 2.0
	for m := range 12 {
		s.dew[m] = s.tmin[m]
		if s.tmax[m]-s.tmin[m] > dryRange {
			s.dew[m] -= dryFall
		}
	}
}

func nearestWithDew(lat, lon float64) (*record, float64, error) {
	a, err := theAtlas()
	if err != nil {
		return nil, 0, err
	}
	var best *record
	least := math.Inf(1)
	for _, r := range a.stations {
		if r.dew == nil {
			continue
		}
		if d := distance(lat, lon, r.lat, r.lon); d < least {
			best, least = r, d
		}
	}
	return best, least, nil
}

// Month gives month m (1 to 12): means of daily maximum and minimum, their
// middle, and the mean dew point, all °C.
func (s *Site) Month(m int) (tmax, tmin, tmean float64, dew *float64) {
	i := ((m-1)%12 + 12) % 12
	d := s.dew[i]
	return s.tmax[i], s.tmin[i], (s.tmax[i] + s.tmin[i]) / 2, &d
}

// Band gives the mean daily minimum and maximum, and the mean dew point, over
// a span, °C.
func (s *Site) Band(span Span) (meanMinC, meanMaxC, dewC float64) {
	n := 0.0
	for day, weight := range span.sample(s.sampled()) {
		i := dayIndex(day)
		meanMinC += s.dayMin[i] * weight
		meanMaxC += s.dayMax[i] * weight
		dewC += s.dew[day.Month()-1] * weight
		n += weight
	}
	if n == 0 {
		return 0, 0, 0
	}
	return meanMinC / n, meanMaxC / n, dewC / n
}

// Weeks gives the odds by week from the first day of the span.
func (s *Site) Weeks(span Span, hours Hours, limits []float64) []Week {
	var weeks []Week
	last := dayOf(span.To)
	for from := dayOf(span.From); !from.After(last); from = from.AddDate(0, 0, 7) {
		to := from.AddDate(0, 0, 6)
		if to.After(last) {
			to = last
		}
		w := Week{From: from, To: to}
		part := Span{From: from, To: to}
		w.MeanMinC, w.MeanMaxC, _ = s.Band(part)
		for _, l := range limits {
			w.Odds = append(w.Odds, s.Odds(part, hours, l))
		}
		weeks = append(weeks, w)
	}
	return weeks
}

// mostSampled is the number of days that one span is computed from; longer
// spans are sampled evenly, since normals change little from day to day.
const mostSampled = 60

// sampled is the number of days to compute a span from: all that a weather
// file has, a sample of the smooth year.
func (s *Site) sampled() int {
	if s.Exact() {
		return math.MaxInt
	}
	return mostSampled
}

// sample runs over the days of a span, or an even sample of at most so many,
// with the number of days that each stands for.
func (s Span) sample(most int) func(yield func(time.Time, float64) bool) {
	return func(yield func(time.Time, float64) bool) {
		n := s.days()
		k := min(n, most)
		from := dayOf(s.From)
		for i := range k {
			at := (2*i + 1) * n / (2 * k)
			if !yield(from.AddDate(0, 0, at), float64(n)/float64(k)) {
				return
			}
		}
	}
}

// distance is the great-circle distance in km (haversine, mean radius 6371 km).
func distance(lat1, lon1, lat2, lon2 float64) float64 {
	const rad, radius = math.Pi / 180, 6371.0
	a := math.Sin((lat2 - lat1) * rad / 2)
	b := math.Sin((lon2 - lon1) * rad / 2)
	return 2 * radius * math.Asin(math.Sqrt(min(1, a*a+math.Cos(lat1*rad)*math.Cos(lat2*rad)*b*b)))
}
