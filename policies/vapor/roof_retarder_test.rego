package vapor.roof_retarder_test

import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.roof_retarder

_deck := wall.layer(36, "steel deck", "galvanized-sheet", "flashing-metal", 0)

_boards := wall.layer(37, "PIR-2", "polyiso", "insulation", 100)

_roofing := wall.layer(42, "EP-1", "epdm-membrane", "roofing", 3)

_top := [_deck, _boards, wall.sheet, _roofing]

_found(layers, winter, type) := found if {
	rows := [desk.row(n, "X-1", {"texts": {"type": type}}) | some n in [36, 37, 38, 40, 41, 42]]
	doc := object.union(wall.document([wall.profile(layers, winter, {})], {}), {"lines": rows})
	found := roof_retarder.findings with input as doc
}

test_fires_in_full if {
	_found(_top, wall.cold, "Vapour control layer") == {{
		"line": "W!40",
		"cells": ["C40", "E40", "L40"],
		"severity": "error",
		"message": concat("", [
			"AB-1, the vapor retarder, lies above all the insulation of the roof; with -5.2 °C in ",
			"the three coldest months room moisture condenses under it",
		]),
		"related": [{"line": "W!37", "cells": ["C37", "L37"], "what": "the insulation"}],
	}}
}

test_severity[name] if {
	some name, case in {
		"cold, class II": {"winter": -5, "ng": 30, "level": "warning"},
		"cool": {"winter": 3, "ng": 2.86, "level": "warning"},
	}
	sheet := object.union(wall.sheet, {"vapor_ng": case.ng})
	desk.levels(_found([_boards, sheet, _roofing], case.winter, "vapor barrier")) == {case.level}
}

test_silent[name] if {
	some name, case in {
		"on the deck": {"layers": [_deck, wall.sheet, _boards, _roofing]},
		"boards above too": {"layers": [_boards, wall.sheet, wall.wool, _roofing]},
		"another below": {"layers": [object.union(wall.film, {"line": "W!36"}), _boards, wall.sheet, _roofing]},
		"no roofing above": {"layers": [_boards, wall.sheet]},
		"no retarder by its words": {"layers": _top, "type": "Underlayment"},
		"mild": {"layers": _top, "winter": wall.mild},
		"unknown place": {"layers": _top, "winter": null},
	}
	winter := object.get(case, "winter", wall.cold)
	count(_found(case.layers, winter, object.get(case, "type", "vapor retarder"))) == 0
}
