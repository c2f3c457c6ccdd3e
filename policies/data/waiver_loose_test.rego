package data.waiver_loose_test

import data.data.waiver_loose

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
	found := waiver_loose.findings with input as {"waivers": [_waiver("loose")]}
	found == {{
		"at": {"sheet": "Waivers", "row": 3, "cell": "D3"},
		"cells": ["D3"],
		"message": concat(" ", [
			"the waiver of contact-x at W1 holds whatever the line says; give it the content",
			"c1 so that it ends when the line changes",
		]),
	}}
}

test_silent[state] if {
	some state in ["", "held", "bad", "changed", "expired", "unused"]
	found := waiver_loose.findings with input as {"waivers": [_waiver(state)]}
	count(found) == 0
}

test_silent_without_waivers if {
	count(waiver_loose.findings) == 0 with input as {"lines": []}
}
