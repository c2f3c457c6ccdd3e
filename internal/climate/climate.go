// Package climate turns a place and a span of days into season odds: the share
// of working hours below or above a limit, the share of days with a usable
// spell, and the share of nights with frost.
//
// The figures come from monthly normals of daily maximum and minimum (an
// embedded table of stations), from a project's own monthly figures, or from a
// standard hourly weather file, in which case the hours are counted and not
// estimated. Temperatures are degrees Celsius, heights meters, distances
// kilometers, hours local standard time.
package climate

import (
	"fmt"
	"time"
)

// Place is where a text, or a position, was found to be, and which station
// stands for it.
type Place struct {
	Text       string   `json:"text"`                  // the words that named the place
	Station    string   `json:"station"`               // name of the station
	StationID  string   `json:"station_id,omitempty"`  // official number
	Region     string   `json:"region"`                // state or province, two letters
	Country    string   `json:"country"`               // US or CA
	Lat        float64  `json:"latitude"`              // of the place asked for; of the station where no other is known
	Lon        float64  `json:"longitude"`             // degrees, east positive
	ElevM      float64  `json:"elevation_m"`           // of the place where stated, else of the station
	DistanceKM *float64 `json:"distance_km,omitempty"` // place to station, where known
	// HeightDiffM is the height of the place less that of the station; it is
	// nil where the height of the place is not known.
	HeightDiffM *float64 `json:"height_diff_m,omitempty"`
	Period      string   `json:"period"`         // years of the normals
	Source      string   `json:"source"`         // who published them
	Note        string   `json:"note,omitempty"` // what a reader should know of the match

	rec *record // the station's figures
}

// Where says the station, its distance and height in one phrase for messages.
func (p Place) Where() string {
	s := p.Station
	if p.Region != "" {
		s += ", " + p.Region
	}
	if p.DistanceKM != nil && *p.DistanceKM >= 0.5 {
		s += fmt.Sprintf(", %.0f km away", *p.DistanceKM)
	}
	if p.HeightDiffM != nil && (*p.HeightDiffM >= 1 || *p.HeightDiffM <= -1) {
		way := "lower"
		h := *p.HeightDiffM
		if h < 0 {
			way, h = "higher", -h
		}
		s += fmt.Sprintf(", %.0f m %s than the site", h, way)
	}
	return s
}

// Span is a span of whole days, both ends included. The clock parts are ignored.
type Span struct{ From, To time.Time }

// days counts the days of the span; a reversed span has none.
func (s Span) days() int {
	from, to := dayOf(s.From), dayOf(s.To)
	if to.Before(from) {
		return 0
	}
	return int(to.Sub(from).Hours()/24+0.5) + 1
}

func dayOf(t time.Time) time.Time {
	return time.Date(t.Year(), t.Month(), t.Day(), 0, 0, 0, 0, time.UTC)
}

// Hours is the working day in hours of local standard time. The zero value
// means 7 to 17. End before Start runs over midnight. Daylight true reads the
// hours as daylight-saving clock hours, one hour ahead of standard time.
type Hours struct {
	Start, End float64
	Daylight   bool
}

// times gives the middle of each working hour, in standard time.
func (h Hours) times() []float64 {
	start, end := h.Start, h.End
	if start == 0 && end == 0 {
		start, end = 7, 17
	}
	if end <= start {
		end += 24
	}
	if h.Daylight {
		start, end = start-1, end-1
	}
	n := max(1, int(end-start+0.5))
	step := (end - start) / float64(n)
	ts := make([]float64, n)
	for i := range ts {
		ts[i] = start + (float64(i)+0.5)*step
	}
	return ts
}

// Odds is what the air does at a site within a span, against one limit.
type Odds struct {
	LimitC     float64 `json:"limit_c"`
	ShareBelow float64 `json:"share_below"` // of working hours, air below the limit
	ShareAbove float64 `json:"share_above"` // of working hours, air at or above the limit
	DaysUsable float64 `json:"days_usable"` // of days, four hours running at or above the limit within working hours
	NightFrost float64 `json:"night_frost"` // of nights, minimum below 0 °C
	Days       int     `json:"days"`        // in the span
}

// Week is one week of a span (the last may be shorter) against several limits.
type Week struct {
	From     time.Time `json:"from"`
	To       time.Time `json:"to"`
	MeanMinC float64   `json:"mean_min_c"`
	MeanMaxC float64   `json:"mean_max_c"`
	Odds     []Odds    `json:"odds"`
}
