// Package contact finds what touches what: from layer order, substrate,
// primer, neighbor columns, remarks and build-ups of schedule lines.
package contact

import "abut/internal/schedule"

// Contact is two materials that touch, or are said not to. A is the line's own
// material where one takes part. Kind is direct, separated, near, apart (said
// not to touch) or runoff (water from A reaches B).
type Contact struct {
	ID        string      `json:"id"`
	Case      string      `json:"case"` // id of the first contact that says the same of the same materials
	Line      string      `json:"line"` // id of the line that says so
	A         End         `json:"a"`
	B         End         `json:"b"`
	Kind      string      `json:"kind"`
	Separator *End        `json:"separator"`
	Upper     string      `json:"upper,omitempty"` // which of the two lies over the other: a, b, or "" if not told
	ClearMM   *float64    `json:"clear_mm"`
	Wet       bool        `json:"wet"`  // one of the two goes on wet (primer, sealant, fresh mortar)
	From      string      `json:"from"` // layer-order, substrate, primer, touches, edge, remark, build-up
	Signals   []string    `json:"signals"`
	Clause    string      `json:"clause"` // the words that say so
	At        schedule.At `json:"at"`
}

// End is one side of a contact.
type End struct {
	Item    string      `json:"item"`
	Line    string      `json:"line"` // the line in which it is named
	Slot    string      `json:"slot"`
	Text    string      `json:"text"` // the row's own words
	Tag     string      `json:"tag"`
	Product string      `json:"product"`
	Family  string      `json:"family"`
	Name    string      `json:"name"`
	Class   string      `json:"class"`
	Keys    []string    `json:"keys"`
	At      schedule.At `json:"at"`
}
