package vapor.cold_trap_test

import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.cold_side
import data.vapor.cold_trap
import data.vapor.two_barriers

_layers := [wall.gypsum, wall.film, wall.batt, wall.sheathing, wall.sheet]

_doc(layers, winter) := wall.document([wall.profile(layers, winter, {})], {})

test_fires_in_full if {
	found := cold_trap.findings with input as _doc(_layers, wall.cold)
	found == {{
		"line": "W!40",
		"cells": ["C40", "L40"],
		"message": concat("", [
			"AB-1 lies outside the insulation and VR-1 inside it: with -5.2 °C in the three coldest months ",
			"the wall can dry to neither side",
		]),
		"related": [
			{"line": "W!36", "cells": ["C36", "L36"], "what": "the inner barrier"},
			{"line": "W!37", "cells": ["C37", "L37"], "what": "the insulation"},
		],
	}}
}

test_told_once if {
	count(cold_side.findings) + count(two_barriers.findings) == 0 with input as _doc(_layers, wall.cold)
}

test_build_up_in_one_cell if {
	items := [object.union(layer, {"polarity": "yes", "at": {"cell": "V24"}}) |
		some layer in [wall.film, wall.batt, wall.sheet]
	]
	row := desk.row(24, "R-1", {"layers": items})
	known := wall.profile([wall.sheet, wall.wool], wall.cold, {})
	doc := object.union(wall.document([known], {}), {"lines": [row, desk.row(40, "X", {}), desk.row(41, "X", {})]})
	found := cold_trap.findings with input as doc
	{[f.line, f.cells, f.related] | some f in found} == {["W!24", ["C24", "L24", "V24"], []]}
}

test_silent[name] if {
	some name, case in {
		"open sheet": {"layers": [wall.film, wall.batt, wall.open_sheet], "winter": wall.cold},
		"cool winter is a question": {"layers": _layers, "winter": 3},
		"no film": {"layers": [wall.gypsum, wall.batt, wall.sheet], "winter": wall.cold},
		"insulation outside": {"layers": [wall.film, wall.batt, wall.sheet, wall.wool], "winter": wall.cold},
		"unknown place": {"layers": _layers, "winter": null},
	}
	found := cold_trap.findings with input as _doc(case.layers, case.winter)
	count(found) == 0
}

test_unknown_permeance if {
	unknown := object.union(wall.sheet, {"vapor_ng": null, "family": "", "keys": []})
	count(cold_trap.findings) == 0 with input as _doc([wall.film, wall.batt, unknown], wall.cold)
}
