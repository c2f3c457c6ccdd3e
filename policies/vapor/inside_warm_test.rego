package vapor.inside_warm_test

import data.lib.wall_test as wall
import data.vapor.inside_warm

_found(layers, winter) := found if {
	found := inside_warm.findings with input as wall.document([wall.profile(layers, winter, {})], {})
}

test_fires_in_full if {
	_found([wall.gypsum, wall.film, wall.batt, wall.open_sheet], 12.3) == {{
		"line": "W!36",
		"cells": ["C36", "L36"],
		"message": "VR-1 lies on the room side of the insulation, where winters are mild (12.3 °C)",
	}}
}

test_silent[name] if {
	smart := object.union(wall.film, {"vapor_ng": 45})
	some name, case in {
		"cold": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": wall.cold},
		"just too cool": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": 6.4},
		"place unknown": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": null},
		"class II": {"layers": [smart, wall.batt, wall.open_sheet], "winter": 12},
		"no insulation outside of it": {"layers": [wall.batt, wall.film], "winter": 12},
		"two barriers are told elsewhere": {"layers": [wall.film, wall.batt, wall.sheet], "winter": 12},
	}
	count(_found(case.layers, case.winter)) == 0
}
