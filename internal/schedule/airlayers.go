package schedule

import (
	"cmp"
	"strconv"
	"strings"

	"abut/internal/phrase"
	"abut/internal/regexp"
)

// stillAir is the permeability of still air in ng/(Pa·s·m), by ISO 13788: a layer that
// resists vapor like so many meters of air (its sd) lets through that much divided by them.
const stillAir = 200

// fromAirLayer gives the permeance of what is told by its sd; the bounds change places.
func fromAirLayer(q phrase.Quantity) phrase.Quantity {
	through := func(sd *float64) *float64 {
		if sd == nil || *sd <= 0 {
			return nil
		}
		v := stillAir / *sd
		return &v
	}
	q.Kind, q.Min, q.Max = "vapor_permeance", through(q.Max), through(q.Min)
	q.Bound = turnedBound[q.Bound]
	return q
}

var turnedBound = map[string]string{"max": "min", "min": "max"}

// airLayer is a bound of an sd in a note: "sd max. 0,3 m", "sd-value of 2 m or more".
var airLayer = regexp.MustCompile(`(?i)\bs[_-]?d(?:[- ]?values?)?\s*(?:of|is|:|=)?\s*(max(?:imum|\.)?|at most|not over|no more than|up to|≤|<=?|min(?:imum|\.)?|at least|not under|no less than|≥|>=?)?\s*(\d+(?:[.,]\d+)?)\s*m\b\s*(max(?:imum|\.)?|or less|min(?:imum|\.)?|or more)?`)

// leastAir are the bounds by which an sd must be that or more.
var leastAir = regexp.MustCompile(`(?i)^(?:min|at least|not under|no less|≥|>|or more)`)

// withPermeance writes the bounds of sd of a note as those of permeance.
func withPermeance(sentence string) string {
	return airLayer.ReplaceAllStringFunc(sentence, func(said string) string {
		m := airLayer.FindStringSubmatch(said)
		bound := cmp.Or(m[1], m[3])
		sd, err := strconv.ParseFloat(strings.ReplaceAll(m[2], ",", "."), 64)
		if bound == "" || err != nil || sd <= 0 {
			return said
		}
		turned := "min."
		if leastAir.MatchString(bound) {
			turned = "max."
		}
		return turned + " " + strconv.FormatFloat(stillAir/sd, 'f', 2, 64) + " ng/(Pa·s·m²)"
	})
}
