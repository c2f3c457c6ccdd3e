package vapor.winter_wet_test

import data.lib.wall_test as wall
import data.vapor.winter_wet

_found(peak, dries) := found if {
	result := {
		"known": true,
		"peak_g_m2": peak,
		"left_g_m2": 0,
		"dries_out": dries,
		"planes": [{"inner": 1, "outer": 2, "text": "between batt and sheathing", "peak_g_m2": peak}],
	}
	layers := [wall.gypsum, wall.batt, wall.sheathing, wall.open_sheet]
	found := winter_wet.findings with input as wall.document([wall.profile(layers, wall.cold, result)], {})
}

test_fires_in_full if {
	_found(60.2, true) == {{
		"line": "W!38",
		"cells": ["C38", "L38"],
		"message": "W5: up to 60 g/m² of water gather between batt and sheathing in winter and dry within the year",
		"severity": "note",
	}}
}

test_much_runs_off if {
	{endswith(f.message, "; so much runs off a tight face") | some f in _found(201, true)} == {true}
	{endswith(f.message, "; so much runs off a tight face") | some f in _found(200, true)} == {false}
}

test_more_than_may_gather if {
	{f.severity | some f in _found(1001, true)} == {"warning"}
	{f.severity | some f in _found(1000, true)} == {"note"}
}

test_silent if {
	count(_found(0, true)) == 0
	count(_found(9, true)) == 0
	count(_found(10, true)) == 1
	count(_found(60, false)) == 0
}

test_no_profiles if count(winter_wet.findings) == 0 with input as wall.document([], {})
