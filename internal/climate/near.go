package climate

import (
	"fmt"
	"math"
)

const (
	firstReach = 120.0 // km searched first
	lastReach  = 700.0 // km beyond which no station stands for a place
	kmPerMeter = 0.1   // a height difference of 100 m counts as 10 km
	namedGain  = 10.0  // km: named stations have the longer, better watched series
)

// Near gives the station that stands for a position: the nearest, where height
// differences count as distance and a named station is preferred to a small
// one. Lat and lon are degrees, elev the height in meters or nil.
func Near(lat, lon float64, elev *float64) (Place, error) {
	if math.IsNaN(lat) || math.IsNaN(lon) || math.Abs(lat) > 90 || math.Abs(lon) > 180 {
		return Place{}, &NotFound{Reason: fmt.Sprintf("latitude %g, longitude %g is not a position on earth", lat, lon)}
	}
	for _, reach := range []float64{firstReach, lastReach} {
		best, err := bestWithin(lat, lon, elev, reach)
		if err != nil {
			return Place{}, err
		}
		if best != nil {
			return placeAt(best, lat, lon, elev), nil
		}
	}
	return Place{}, &NotFound{
		Reason: fmt.Sprintf("no station within %.0f km of latitude %g, longitude %g: the table covers the US and Canada", lastReach, lat, lon),
	}
}

func bestWithin(lat, lon float64, elev *float64, reach float64) (*record, error) {
	small, err := stationsWithin(lat, lon, reach)
	if err != nil {
		return nil, err
	}
	a, err := theAtlas()
	if err != nil {
		return nil, err
	}
	var best *record
	least := math.Inf(1)
	try := func(r *record, gain float64) {
		d := distance(lat, lon, r.lat, r.lon)
		if d > reach {
			return
		}
		cost := d - gain
		if elev != nil {
			cost += math.Abs(*elev-r.elev) * kmPerMeter
		}
		if cost < least {
			best, least = r, cost
		}
	}
	for _, r := range small {
		try(r, 0)
	}
	for _, r := range a.stations {
		try(r, namedGain)
	}
	return best, nil
}

func placeAt(r *record, lat, lon float64, elev *float64) Place {
	p := placeOf(r)
	p.Lat, p.Lon = lat, lon
	d := math.Round(distance(lat, lon, r.lat, r.lon)*10) / 10
	p.DistanceKM = &d
	p.setHeight(elev)
	return p
}

// placeOf is a place that coincides with its station.
func placeOf(r *record) Place {
	return Place{
		Station: r.name, StationID: r.id, Region: r.region, Country: r.country,
		Lat: r.lat, Lon: r.lon, ElevM: r.elev,
		Period: r.period, Source: publisher(r.source), rec: r,
	}
}

// setHeight records the stated height of the place.
func (p *Place) setHeight(elev *float64) {
	if elev == nil {
		return
	}
	d := *elev - p.rec.elev
	p.ElevM, p.HeightDiffM = *elev, &d
}
