// Package document holds the one JSON document that the policies judge, and
// checks it against its schema.
package document

import (
	"abut/internal/contact"
	"abut/internal/schedule"
)

// Document is everything read and computed from one workbook. Lengths are mm,
// temperatures °C, days whole days; see schema/document.schema.json.
type Document struct {
	Version  string             `json:"version"`
	File     string             `json:"file"`
	Project  Project            `json:"project"`
	Lines    []schedule.Line    `json:"lines"`
	Products []schedule.Product `json:"products"`
	Pours    []schedule.Pour    `json:"pours"`
	Contacts []contact.Contact  `json:"contacts"`
	Windows  []Window           `json:"windows"`
	Profiles []Profile          `json:"profiles"`
	Reading  schedule.Reading   `json:"reading"`
	Waivers  []schedule.Waiver  `json:"waivers,omitempty"`
	// Comparison is there where the lines stand against specified ones.
	Comparison *Comparison `json:"comparison,omitempty"`
}

// Project is what is known of the whole job, with the climate station found.
type Project struct {
	schedule.Project
	Place Place `json:"place"`
}

// Place is where the job is. Problem says why no station was found.
type Place struct {
	Text       string      `json:"text"`
	Station    string      `json:"station"`
	Region     string      `json:"region"`
	Country    string      `json:"country"`
	Latitude   *float64    `json:"latitude"`
	Longitude  *float64    `json:"longitude"`
	ElevationM *float64    `json:"elevation_m"`
	DistanceKM *float64    `json:"distance_km"`
	Period     string      `json:"period"`
	Source     string      `json:"source"`
	Problem    string      `json:"problem"`
	At         schedule.At `json:"at"`
	// Months is the usual year there, January first; empty without a station.
	Months []MonthBand `json:"months"`
}

// MonthBand is a month's mean of the daily minima and of the daily maxima.
type MonthBand struct {
	MeanMinC float64 `json:"mean_min_c"`
	MeanMaxC float64 `json:"mean_max_c"`
}

// Window is the span in which a line is installed, with the season odds for
// each temperature limit that a material of the line has.
type Window struct {
	Line       string  `json:"line"`
	Place      string  `json:"place,omitempty"` // of a sheet that tells one of its own, other than the project's
	From       string  `json:"from"`
	To         string  `json:"to"`
	MeanMinC   float64 `json:"mean_min_c"` // mean of the daily minima in the window
	MeanMaxC   float64 `json:"mean_max_c"`
	NightFrost float64 `json:"night_frost"` // share of nights below 0 °C
	Checks     []Check `json:"checks"`
	Grades     []Grade `json:"grades"` // coldest-last; odds of each usual grade
}

// Check is one temperature limit held against the window.
type Check struct {
	Item       string      `json:"item"`
	Role       string      `json:"role"` // membrane, primer, sealant, adhesive
	Text       string      `json:"text"` // the row's own words for the material
	Product    string      `json:"product"`
	Keys       []string    `json:"keys"`
	Bound      string      `json:"bound"` // apply_min_c, apply_max_c
	LimitC     float64     `json:"limit_c"`
	LimitText  string      `json:"limit_text"` // as the author wrote it
	Stated     bool        `json:"stated"`     // by the workbook; else the family's usual figure
	ShareBelow float64     `json:"share_below"`
	ShareAbove float64     `json:"share_above"`
	DaysUsable float64     `json:"days_usable"`
	At         schedule.At `json:"at"`
}

// Grade is a usual grade of sheet with its odds in the window.
type Grade struct {
	ID         string  `json:"id"`
	Name       string  `json:"name"`
	LimitC     float64 `json:"limit_c"`
	LimitText  string  `json:"limit_text"`
	ShareBelow float64 `json:"share_below"`
	DaysUsable float64 `json:"days_usable"`
}

// Profile is the section of one assembly, room side first where the side is known, with the yearly moisture balance where every layer is known.
type Profile struct {
	ID     string   `json:"id"`
	Mark   string   `json:"mark"`
	Lines  []string `json:"lines"`
	Layers []Layer  `json:"layers"`
	First  string   `json:"first"` // the side that the author lists first: room, outside, "" not known
	// Missing tells which layers stopped the computation, empty if it ran.
	Missing []string `json:"missing"`
	Result  any      `json:"result"`
	vents   []int    // before which layers, as listed, a row tells a vented space
}

// Layer is one layer of an assembly.
type Layer struct {
	Line      string      `json:"line"`
	Item      string      `json:"item"`
	Text      string      `json:"text"`
	Product   string      `json:"product"`
	Family    string      `json:"family"`
	Class     string      `json:"class"`
	Keys      []string    `json:"keys"`
	VaporNG   *float64    `json:"vapor_ng"`
	VaporBy   string      `json:"vapor_by"` // stated, usual, "" unknown
	Thick     *float64    `json:"thickness_mm"`
	R         *float64    `json:"r_m2kw"` // stated thermal resistance, m²·K/W
	Insulates bool        `json:"insulates"`
	At        schedule.At `json:"at"`
}
