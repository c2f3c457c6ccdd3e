package lib.winter_test

import data.lib.wall_test as wall
import data.lib.winter

_window(from, low, high) := {"line": "W!35", "from": from, "to": from, "mean_min_c": low, "mean_max_c": high}

test_profile_first if {
	doc := wall.document([wall.profile([wall.sheet], -5, {})], {"windows": [_window("2026-01-10", -20, -10)]})
	winter.celsius == -5 with input as doc
}

test_windows_of_winter if {
	windows := [_window("2026-01-10", -14, -2), _window("2026-02-10", -10, -2), _window("2026-07-10", 15, 25)]
	winter.celsius == -7 with input as wall.document([], {"windows": windows})
}

test_unknown if {
	not winter.celsius with input as wall.document([], {"windows": [_window("2026-07-10", 15, 25)]})
}

test_humid_by_months if {
	months := {"conditions": {
		"out_c": [9, 10, 14, 18, 22, 26, 27, 27, 24, 19, 14, 10],
		"out_rh": [70, 70, 70, 70, 72, 75, 76, 77, 76, 73, 72, 71],
	}}
	winter.is_humid with input as wall.document([wall.profile([wall.sheet], 9.7, months)], {})
	not winter.is_humid with input as wall.document([wall.profile([wall.sheet], -5, months)], {})
}
