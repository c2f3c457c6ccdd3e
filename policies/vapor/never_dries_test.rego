package vapor.never_dries_test

import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.cold_side
import data.vapor.never_dries
import data.vapor.winter_wet

_result(peak, left, dries) := {
	"known": true,
	"peak_g_m2": peak,
	"left_g_m2": left,
	"dries_out": dries,
	"planes": [{"inner": 1, "outer": 2, "text": "between batt and sheathing", "peak_g_m2": peak}],
}

_doc(layers, result) := wall.document([wall.profile(layers, wall.cold, result)], {})

_layers := [wall.gypsum, wall.batt, wall.sheathing, wall.open_sheet]

test_fires_in_full if {
	found := never_dries.findings with input as _doc(_layers, _result(900, 310.4, false))
	found == {{
		"line": "W!38",
		"cells": ["C38", "L38"],
		"severity": "error",
		"message": "W5: water gathers between batt and sheathing in winter, and 310 g/m² are left after a year",
	}}
}

test_estimated_air_is_a_question if {
	result := object.union(_result(900, 310, false), {"conditions": {"estimated": true}})
	found := never_dries.findings with input as _doc(_layers, result)
	desk.levels(found) == {"warning"}
}

test_silent[name] if {
	some name, result in {
		"dries": _result(60, 0, true),
		"rounding": _result(60, 4, false),
		"no water": object.union(_result(0, 0, null), {"planes": []}),
		"not computed": object.union(_result(900, 300, false), {"known": false}),
	}
	found := never_dries.findings with input as _doc(_layers, result)
	count(found) == 0
}

test_at_the_bound if {
	found := never_dries.findings with input as _doc(_layers, _result(60, 5, false))
	count(found) == 1
}

test_order_of_barriers_is_told_first if {
	doc := _doc([wall.gypsum, wall.batt, wall.sheet], _result(900, 300, false))
	count(never_dries.findings) + count(winter_wet.findings) == 0 with input as doc
	count(cold_side.findings) == 1 with input as doc
}
