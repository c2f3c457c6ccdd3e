package climate

import (
	"bytes"
	"compress/gzip"
	"embed"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
)

// The tables, in comma-separated lines. data/README.md names sources, periods
// and units; temperatures and day counts stand in tenths.
//
//go:embed data/places.csv data/cities.csv data/model.json data/towns/*.gz data/stations/*.gz
var data embed.FS

// record is one station as the tables hold it.
type record struct {
	name, region, country string
	lat, lon, elev        float64
	id, source, period    string
	tmax, tmin            [12]float64
	dew, sdMean, sd       *[12]float64
	daysCold, daysHot     *[12]float64 // days with minimum <= 10 °C, maximum >= 32 °C
	daysFrost             *[12]float64 // days with minimum <= 0 °C
}

// publisher says who published the normals of a source code of the tables.
func publisher(code string) string {
	switch code {
	case "US-8110":
		return "US Climate Normals, NOAA National Centers for Environmental Information"
	case "CA-8110":
		return "Canadian Climate Normals, Environment and Climate Change Canada"
	case "CA-9120":
		return "Environment and Climate Change Canada, WMO climatological standard normals"
	}
	return code
}

// recordFields is the number of fields of a station line.
const recordFields = 16

func parseRecord(line string) (*record, error) {
	f := strings.Split(line, ",")
	if len(f) != recordFields {
		return nil, fmt.Errorf("station line has %d fields, not %d: %.40q", len(f), recordFields, line)
	}
	r := &record{name: f[0], region: f[1], country: f[2], id: f[6], source: f[7], period: f[8]}
	for i, p := range []*float64{&r.lat, &r.lon, &r.elev} {
		v, err := strconv.ParseFloat(f[3+i], 64)
		if err != nil {
			return nil, fmt.Errorf("station %q: %w", f[0], err)
		}
		*p = v
	}
	lists := make([]*[12]float64, 7)
	for i := range lists {
		v, err := twelve(f[9+i])
		if err != nil {
			return nil, fmt.Errorf("station %q: %w", f[0], err)
		}
		lists[i] = v
	}
	if lists[0] == nil || lists[1] == nil {
		return nil, fmt.Errorf("station %q has no temperatures", f[0])
	}
	r.tmax, r.tmin = *lists[0], *lists[1]
	r.dew, r.sdMean, r.daysCold, r.daysHot, r.daysFrost = lists[2], lists[3], lists[4], lists[5], lists[6]
	return r, nil
}

// twelve reads twelve whole tenths; an empty field gives nil.
func twelve(s string) (*[12]float64, error) {
	if s == "" {
		return nil, nil
	}
	if count := strings.Count(s, " ") + 1; count != 12 {
		return nil, fmt.Errorf("%d monthly figures, not 12", count)
	}
	var v [12]float64
	i := 0
	for w := range strings.SplitSeq(s, " ") {
		n, err := strconv.Atoi(w)
		if err != nil {
			return nil, fmt.Errorf("monthly figure %d: %w", i+1, err)
		}
		v[i] = float64(n) / 10
		i++
	}
	return &v, nil
}

// lines reads one embedded table.
func lines(name string) ([]string, error) {
	b, err := data.ReadFile("data/" + name)
	if err != nil {
		return nil, err
	}
	if strings.HasSuffix(name, ".gz") {
		z, err := gzip.NewReader(bytes.NewReader(b))
		if err != nil {
			return nil, fmt.Errorf("table %s: %w", name, err)
		}
		if b, err = io.ReadAll(z); err != nil {
			return nil, fmt.Errorf("table %s: %w", name, err)
		}
	}
	return strings.Split(strings.TrimSuffix(string(b), "\n"), "\n"), nil
}

// places gives the lines of the named stations, without the heading.
func places() ([]string, error) {
	l, err := lines("places.csv")
	if err != nil {
		return nil, err
	}
	return l[1:], nil
}

const tileDegrees = 5

// stationsWithin gives every station of the tiles that reach into the given
// distance of a position.
func stationsWithin(lat, lon, km float64) ([]*record, error) {
	dLat := km / 111
	dLon := km / (111 * max(0.05, math.Cos(lat*math.Pi/180)))
	var found []*record
	for a := tile(lat - dLat); a <= tile(lat+dLat); a += tileDegrees {
		for b := tile(lon - dLon); b <= tile(lon+dLon); b += tileDegrees {
			rs, err := tileStations(a, b)
			if err != nil {
				return nil, err
			}
			found = append(found, rs...)
		}
	}
	return found, nil
}

func tile(deg float64) int { return int(math.Floor(deg/tileDegrees)) * tileDegrees }

func tileStations(lat, lon int) ([]*record, error) {
	name := fmt.Sprintf("stations/%d_%d.csv.gz", lat, lon)
	if _, err := data.Open("data/" + name); err != nil {
		return nil, nil // no station stands there
	}
	l, err := lines(name)
	if err != nil {
		return nil, err
	}
	rs := make([]*record, 0, len(l))
	for _, line := range l {
		r, err := parseRecord(line)
		if err != nil {
			return nil, err
		}
		rs = append(rs, r)
	}
	return rs, nil
}
