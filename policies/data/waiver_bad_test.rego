package data.waiver_bad_test

import data.data.waiver_bad

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
	found := waiver_bad.findings with input as {"waivers": [_waiver("bad")]}
	found == {{
		"at": {"sheet": "Waivers", "row": 3, "cell": "D3"},
		"cells": ["D3"],
		"message": "the waiver of contact-x at W1 does not hold: it does not give a reason",
	}}
}

test_silent[state] if {
	some state in ["", "held", "changed", "expired", "loose", "unused"]
	found := waiver_bad.findings with input as {"waivers": [_waiver(state)]}
	count(found) == 0
}

test_silent_without_waivers if {
	count(waiver_bad.findings) == 0 with input as {"lines": []}
}
