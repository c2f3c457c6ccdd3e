package climate

import (
	"strings"
	"sync"
	"unicode"

	"abut/internal/knowledge"
	"abut/policies"
	"golang.org/x/text/unicode/norm"
)

// region is a state or province as policies/temperature/places.json holds it.
type region struct {
	Code, Name, Country string
	Also                []string
	City                string   // the largest with a station, which stands for the region
	Zone                float64  // standard time, hours from universal time
	WestOf              *float64 `json:"west_of"` // meridian beyond which WestZone holds
	WestZone            float64  `json:"west_zone"`
}

// vocabulary is the words by which a place is known in a text.
type vocabulary struct {
	Regions        []region
	CodesWords     []string           `json:"codes_that_are_words"`
	NamesWords     []string           `json:"place_names_that_are_words"`
	Directions     map[string]float64 // degrees from north
	DistanceUnits  map[string]float64 `json:"distance_units"` // km
	RelationWords  []string           `json:"relation_words"`
	NearWords      []string           `json:"near_words"`
	LocativeWords  []string           `json:"locative_words"`
	FollowWords    []string           `json:"follow_words"`
	AwayWords      []string           `json:"away_words"`
	SiteWords      []string           `json:"site_words"`
	HouseWords     []string           `json:"house_words"`  // away words that may also be what is built
	TitledWords    []string           `json:"titled_words"` // those of them that a title needs no "Project:" for
	PersonWords    []string           `json:"person_words"`
	StreetWords    []string           `json:"street_words"`
	HeightWords    []string           `json:"height_words"`
	HeightUnits    map[string]float64 `json:"height_units"` // m
	CountyWords    []string           `json:"county_words"`
	LandformWords  []string           `json:"landform_words"` // "island", after the name of its town
	OtherCountries []string           `json:"other_countries"`
	SameCity       map[string]string  `json:"same_city"`

	byName map[string]*region // key of name or abbreviation
	byCode map[string]*region
	sets   map[string]map[string]bool
}

// words reads the vocabulary once.
var words = sync.OnceValues(func() (*vocabulary, error) {
	var v vocabulary
	if err := knowledge.Read(policies.FS, "place names", "temperature/places.json", &v); err != nil {
		return nil, err
	}
	v.index()
	return &v, nil
})

func (v *vocabulary) index() {
	v.byName, v.byCode = map[string]*region{}, map[string]*region{}
	for i := range v.Regions {
		r := &v.Regions[i]
		v.byCode[r.Code] = r
		for _, n := range append([]string{r.Name}, r.Also...) {
			v.byName[key(n)] = r
		}
	}
	v.sets = map[string]map[string]bool{}
	for name, list := range map[string][]string{
		"codes": v.CodesWords, "names": v.NamesWords, "relation": v.RelationWords,
		"near": v.NearWords, "locative": v.LocativeWords, "follow": v.FollowWords,
		"away": v.AwayWords, "site": v.SiteWords, "house": v.HouseWords, "titled": v.TitledWords, "person": v.PersonWords,
		"street": v.StreetWords, "height": v.HeightWords, "abroad": v.OtherCountries, "county": v.CountyWords, "landform": v.LandformWords,
	} {
		set := map[string]bool{}
		for _, w := range list {
			set[key(w)] = true
		}
		v.sets[name] = set
	}
}

// is tells whether a word, as written, belongs to a list.
func (v *vocabulary) is(list, word string) bool { return v.sets[list][key(word)] }

// zoneOf gives the standard time of a region at a longitude.
func zoneOf(code string, lon float64) (float64, error) {
	v, err := words()
	if err != nil {
		return 0, err
	}
	r := v.byCode[code]
	switch {
	case r == nil: // outside the regions: sun time to the hour
		return float64(int(lon/15 + 0.5*sign(lon))), nil
	case r.WestOf != nil && lon < *r.WestOf:
		return r.WestZone, nil
	}
	return r.Zone, nil
}

func sign(x float64) float64 {
	if x < 0 {
		return -1
	}
	return 1
}

// key is the form in which names are compared: lower case, without accents,
// periods and apostrophes, with saint, fort and mount shortened.
func key(s string) string {
	var b strings.Builder
	for _, r := range norm.NFD.String(s) {
		switch {
		case unicode.Is(unicode.Mn, r), r == '.', r == '\'', r == '’':
		case r == '-', unicode.IsSpace(r):
			b.WriteByte(' ')
		default:
			b.WriteRune(unicode.ToLower(r))
		}
	}
	f := strings.Fields(b.String())
	for i, w := range f {
		switch w {
		case "saint", "sainte":
			f[i] = "st"
		case "ste":
			f[i] = "st"
		case "fort":
			f[i] = "ft"
		case "mount":
			f[i] = "mt"
		}
	}
	return strings.Join(f, " ")
}
