package data.waiver_changed_test

import data.data.waiver_changed

_waiver(state) := {
	"at": {"sheet": "Waivers", "row": 3, "cell": "D3"},
	"texts": {"rule": "contact-x", "mark": "W1", "content": "c0"},
	"name": "the waiver of contact-x at W1",
	"until": "2027-01-31",
	"problem": "it does not give a reason",
	"now": ["c1"],
	"state": state,
}

test_fires_in_full if {
	found := waiver_changed.findings with input as {"waivers": [_waiver("changed")]}
	found == {{
		"at": {"sheet": "Waivers", "row": 3, "cell": "D3"},
		"cells": ["D3"],
		"message": concat(" ", [
			"the waiver of contact-x at W1 no longer holds: what it was given for has",
			"changed (content was c0, is c1)",
		]),
	}}
}

test_silent[state] if {
	some state in ["", "held", "bad", "expired", "loose", "unused"]
	found := waiver_changed.findings with input as {"waivers": [_waiver(state)]}
	count(found) == 0
}

test_silent_without_waivers if {
	count(waiver_changed.findings) == 0 with input as {"lines": []}
}
