package climate

import (
	"fmt"
	"strings"
)

// only gives the towns of one state or province.
func only(cs []city, code string) []city {
	var in []city
	for _, c := range cs {
		if c.region == code {
			in = append(in, c)
		}
	}
	return in
}

// plain gives the one city that a name without a state means: the only one, or
// the one that has a station and three times the people of the next.
func plain(cs []city) (city, bool) {
	best, next := city{}, city{}
	for _, c := range cs {
		if c.station && best.station {
			return city{}, false
		}
		if c.station && !best.station || c.station == best.station && c.people > best.people {
			best, next = c, best
		} else if c.people > next.people {
			next = c
		}
	}
	const clearly = 3
	return best, len(cs) == 1 || best.people >= clearly*next.people
}

func ambiguous(name string, cs []city) *NotFound {
	e := &NotFound{Reason: fmt.Sprintf("%q may be more than one place", name)}
	for _, c := range cs {
		e.Candidates = append(e.Candidates, c.name+", "+c.region)
	}
	return e
}

// others says which of several places of a name was taken.
func others(taken city, cs []city) string {
	var also []string
	for _, c := range cs {
		if c.region != taken.region {
			also = append(also, c.name+", "+c.region)
		}
	}
	if len(also) == 0 {
		return ""
	}
	return fmt.Sprintf("taken as %s, %s, by far the largest of its name; give the state for %s", taken.name, taken.region, strings.Join(also, " or "))
}
