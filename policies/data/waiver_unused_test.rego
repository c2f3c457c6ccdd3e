package data.waiver_unused_test

import data.data.waiver_unused

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
	found := waiver_unused.findings with input as {"waivers": [_waiver("unused")]}
	found == {{
		"at": {"sheet": "Waivers", "row": 3, "cell": "D3"},
		"cells": ["D3"],
		"message": "the waiver of contact-x at W1 accepts nothing: there is no such finding",
	}}
}

test_silent[state] if {
	some state in ["", "held", "bad", "changed", "expired", "loose"]
	found := waiver_unused.findings with input as {"waivers": [_waiver(state)]}
	count(found) == 0
}

test_silent_without_waivers if {
	count(waiver_unused.findings) == 0 with input as {"lines": []}
}
