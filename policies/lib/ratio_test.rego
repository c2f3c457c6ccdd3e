package lib.ratio_test

import data.lib.ratio

_at(text) := {"project": {"notes": [{"text": text, "at": {"sheet": "N", "row": 1, "cell": "A1"}}]}}

# 2021 IRC table R702.7(3), second-hand.
test_needed[name] if {
	some name, case in {
		"thin": {"mm": 90, "r": 10},
		"thick": {"mm": 140, "r": 15},
		"not told": {"mm": null, "r": 10},
	}
	ratio.needed("III", {"thickness_mm": case.mm}) == case.r with input as _at("Climate zone 7")
}

test_outside if {
	layers := [
		{"insulates": true, "r": 2},
		{"insulates": false, "r": 9},
		{"insulates": true, "r": 1},
		{"insulates": true, "r": 0.5},
	]
	ratio.outside(layers, 0) == 1.5
	ratio.outside(layers, 3) == 0
	not ratio.outside([{"insulates": true, "r": 1}, {"insulates": true, "r": null}], 0)
}

test_is_short[name] if {
	some name, case in {
		"at the figure": {"r": 10, "short": 0},
		"within rounding": {"r": 9.8, "short": 0},
		"short": {"r": 9.5, "short": 1},
	}
	found := {true | ratio.is_short(case.r / 5.678, "III", {"thickness_mm": 90}) with input as _at("Climate zone 7")}
	count(found) == case.short
}
