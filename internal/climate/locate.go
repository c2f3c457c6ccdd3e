package climate

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"unicode"
)

// NotFound says why a text names no place that the table can answer for, and
// what would help.
type NotFound struct {
	Text       string   `json:"text,omitempty"`
	Reason     string   `json:"reason"`
	Candidates []string `json:"candidates,omitempty"`
}

// Error gives the reason, the candidates and the ways out, in one line.
func (e *NotFound) Error() string {
	s := e.Reason
	if len(e.Candidates) > 0 {
		s += ": " + strings.Join(e.Candidates, ", ")
	}
	return s + `; give the city with its state or province ("Buffalo, NY"), the nearest big city ("18 mi west of Milwaukee, WI"), or latitude and longitude`
}

// Locate finds the place that a free text names, from a title block, a note or
// a setting: a position, a city with or without its state, "18 mi west of" a
// city, or a state alone. The most specific mention wins. Words that are
// street names, people, other trades' addresses or ordinary words are passed
// over. The error is a *NotFound when the text names no place, or more than one.
func Locate(text string) (Place, error) {
	v, err := words()
	if err != nil {
		return Place{}, err
	}
	if lat, lon, ok := position(text); ok {
		p, err := Near(lat, lon, statedHeight(text, v))
		p.Text = positionWords(text, lat, lon)
		return p, withText(err, text)
	}
	a, err := theAtlas()
	if err != nil {
		return Place{}, err
	}
	r := &reader{v: v, a: a, text: text, toks: tokenize(text)}
	m, err := r.best()
	if err != nil {
		return Place{}, withText(err, text)
	}
	p, err := m.place(a)
	if err != nil {
		return Place{}, withText(err, text)
	}
	p.Text = m.words(r)
	p.setHeight(heightAfter(r, m))
	return p, nil
}

// positionWords writes a position that stands within other words; one that stands
// alone is left as it was written.
func positionWords(text string, lat, lon float64) string {
	if !strings.ContainsFunc(text, unicode.IsLetter) {
		return strings.TrimSpace(text)
	}
	ns, ew := "N", "E"
	if lat < 0 {
		ns = "S"
	}
	if lon < 0 {
		ew = "W"
	}
	return fmt.Sprintf("%.2f° %s, %.2f° %s", math.Abs(lat), ns, math.Abs(lon), ew)
}

// Named finds the place that words given for one name, which may be in small
// letters: "buffalo, ny". In prose those would be no name.
func Named(text string) (Place, error) {
	p, err := Locate(text)
	if err == nil || text != strings.ToLower(text) {
		return p, err
	}
	v, errWords := words()
	if errWords != nil {
		return Place{}, errWords
	}
	fields := strings.Fields(strings.ReplaceAll(text, ",", ", "))
	for i, w := range fields {
		code := strings.ToUpper(strings.TrimRight(w, ",."))
		switch {
		case v.Directions[strings.TrimRight(w, ".")] > 0 || v.is("relation", w) || v.is("near", w) || v.DistanceUnits[strings.TrimRight(w, ".")] > 0:
		case i > 0 && v.byCode[code] != nil:
			fields[i] = strings.ToUpper(w)
		default:
			fields[i] = strings.ToUpper(w[:1]) + w[1:]
		}
	}
	if p, again := Locate(strings.Join(fields, " ")); again == nil {
		p.Text = text
		return p, nil
	}
	return p, err
}

func withText(err error, text string) error {
	var nf *NotFound
	if errors.As(err, &nf) && nf.Text == "" {
		nf.Text = text
	}
	return err
}

// place turns a mention into a place with its station.
func (m mention) place(a *atlas) (Place, error) {
	switch {
	case m.region != nil:
		return m.regionPlace(a)
	case m.km > 0:
		return m.offsetPlace(a)
	}
	r := a.namesake(m.city, m.city.lat, m.city.lon)
	if r == nil {
		p, err := Near(m.city.lat, m.city.lon, nil)
		p.Note = m.note
		return p, err
	}
	p := placeAt(r, m.city.lat, m.city.lon, nil)
	p.Note = m.note
	return p, nil
}

// offsetPlace is a place at a stated distance from a city. The city's own
// station stands for it, or the nearest where the distance is long.
func (m mention) offsetPlace(a *atlas) (Place, error) {
	const far = 80 // km
	lat, lon := m.city.lat, m.city.lon
	if m.bearing != nil {
		lat, lon = moveTo(lat, lon, *m.bearing, m.km)
	}
	r := a.namesake(m.city, lat, lon)
	if r == nil || m.km > far {
		p, err := Near(lat, lon, nil)
		if err == nil && m.bearing == nil {
			p.DistanceKM = &m.km
		}
		return p, err
	}
	p := placeAt(r, lat, lon, nil)
	stated := math.Round(m.km*10) / 10
	p.DistanceKM = &stated
	return p, nil
}

// regionPlace lets the largest city stand for a state or province.
func (m mention) regionPlace(a *atlas) (Place, error) {
	for _, c := range a.cities[key(m.region.City)] {
		if r := a.namesake(c, c.lat, c.lon); r != nil && distance(c.lat, c.lon, r.lat, r.lon) < sameTown && c.region == m.region.Code {
			p := placeOf(r)
			p.Note = fmt.Sprintf("only %s could be read; its station at %s stands for it, name the nearest city for a better answer", m.region.Name, m.region.City)
			return p, nil
		}
	}
	return Place{}, &NotFound{Reason: fmt.Sprintf("%s alone says too little", m.region.Name)}
}

// namesake is the station called after a city that is nearest to a point, or
// nil where the city has none.
func (a *atlas) namesake(c city, lat, lon float64) *record {
	var best *record
	least := math.Inf(1)
	k := key(c.name)
	for _, r := range a.stations {
		if distance(r.lat, r.lon, c.lat, c.lon) > sameTown {
			continue
		}
		for _, n := range stationCities(r.name) {
			d := distance(r.lat, r.lon, lat, lon)
			if r.region != c.region {
				d += acrossBorder
			}
			if key(n) == k && d < least {
				best, least = r, d
			}
		}
	}
	return best
}

// acrossBorder is what a station in another state counts as further off, km: a
// twin city of the same name goes second.
const acrossBorder = 20

// moveTo gives the position at a bearing (degrees from north) and distance on
// a sphere of 6371 km.
func moveTo(lat, lon, bearing, km float64) (float64, float64) {
	const rad = math.Pi / 180
	d, b, f := km/6371, bearing*rad, lat*rad
	to := math.Asin(math.Sin(f)*math.Cos(d) + math.Cos(f)*math.Sin(d)*math.Cos(b))
	dl := math.Atan2(math.Sin(b)*math.Sin(d)*math.Cos(f), math.Cos(d)-math.Sin(f)*math.Sin(to))
	return to / rad, lon + dl/rad
}
