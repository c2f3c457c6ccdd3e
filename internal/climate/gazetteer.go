package climate

import (
	"fmt"
	"strconv"
	"strings"
	"sync"
)

// city is a populated place, or the place a named station is called after.
type city struct {
	name, region string
	lat, lon     float64
	people       int
	station      bool // it names a station of the table
}

// atlas is the names that are known without a state: large cities and the
// named stations.
type atlas struct {
	cities   map[string][]city
	stations []*record
}

var theAtlas = sync.OnceValues(func() (*atlas, error) {
	a := &atlas{cities: map[string][]city{}}
	l, err := places()
	if err != nil {
		return nil, err
	}
	for _, line := range l {
		r, err := parseRecord(line)
		if err != nil {
			return nil, err
		}
		a.stations = append(a.stations, r)
		for _, n := range stationCities(r.name) {
			a.add(city{name: n, region: r.region, lat: r.lat, lon: r.lon, station: true})
		}
	}
	big, err := townLines("cities.csv")
	if err != nil {
		return nil, err
	}
	for _, c := range big {
		a.add(c)
	}
	return a, nil
})

// sameTown is how far apart, in km, two entries of one name may be and still
// be one town (a city over a state line, an airport outside its city).
const sameTown = 60

// add enters a city, or joins it with the entry of the same name close by: the
// position of the town goes before that of its airport.
func (a *atlas) add(c city) {
	k := key(c.name)
	for i, o := range a.cities[k] {
		if distance(o.lat, o.lon, c.lat, c.lon) > sameTown {
			continue
		}
		c.station = c.station || o.station
		if c.people <= o.people {
			o.station = c.station
			c = o
		}
		a.cities[k][i] = c
		return
	}
	a.cities[k] = append(a.cities[k], c)
}

// stationCities gives the city names in a station's name: "Akron/Canton
// airport" has two.
func stationCities(name string) []string {
	name, _, _ = strings.Cut(name, " (")
	for _, w := range []string{" old airport", " city airport", " west airport", " airport", " airfield", " central park", " city"} {
		if n, ok := strings.CutSuffix(name, w); ok && n != "Quebec" && n != "Oklahoma" && n != "Kansas" && n != "Salt Lake" {
			name = n
			break
		}
	}
	return strings.Split(strings.TrimSuffix(name, " DC"), "/")
}

// town finds a name within one region; the larger first where several match.
func town(name, region string) (city, bool, error) {
	path := "towns/" + region + ".csv.gz"
	if _, err := data.Open("data/" + path); err != nil {
		return city{}, false, nil
	}
	l, err := townLines(path)
	if err != nil {
		return city{}, false, err
	}
	k := key(name)
	for _, c := range l {
		if key(c.name) == k {
			return c, true, nil
		}
	}
	return city{}, false, nil
}

func townLines(path string) ([]city, error) {
	l, err := lines(path)
	if err != nil {
		return nil, err
	}
	cs := make([]city, 0, len(l))
	for _, line := range l {
		f := strings.Split(line, ",")
		if len(f) != 5 {
			return nil, fmt.Errorf("table %s: %d fields, not 5: %.40q", path, len(f), line)
		}
		c := city{name: f[0], region: f[1]}
		if c.lat, err = strconv.ParseFloat(f[2], 64); err == nil {
			if c.lon, err = strconv.ParseFloat(f[3], 64); err == nil {
				c.people, err = strconv.Atoi(f[4])
			}
		}
		if err != nil {
			return nil, fmt.Errorf("table %s: %w", path, err)
		}
		cs = append(cs, c)
	}
	return cs, nil
}
