package vapor.cold_side_test

import data.lib.bench_test as base
import data.lib.desk_test as desk
import data.lib.wall_test as wall
import data.vapor.cold_side

_found(layers, winter, result) := found if {
	found := cold_side.findings with input as wall.document([wall.profile(layers, winter, result)], {})
}

_unknown := wall.layer(41, "zorbex board", "", "", null)

_layers := [wall.gypsum, wall.batt, wall.sheathing, wall.sheet]

test_fires_in_full if {
	result := object.union(wall.shares([0.9, 0.9, 0.1, 0.08]), {"share": {"out_c": -5.2, "needed_outside_share": 0.38}})
	_found(_layers, wall.cold, result) == {{
		"line": "W!40",
		"cells": ["C40", "L40"],
		"severity": "error",
		"message": concat("", [
			"AB-1 lies on the cold side of the insulation; with -5.2 °C in the three coldest months ",
			"room moisture condenses on it (8% of the resistance lies outside it, 38% is needed)",
		]),
		"related": [{"line": "W!37", "cells": ["C37", "L37"], "what": "the insulation"}],
	}}
}

test_severity[name] if {
	some name, case in {
		"cold, class I": {"winter": -5, "ng": 2.86, "level": "error"},
		"cold, class II": {"winter": -5, "ng": 30, "level": "warning"},
		"cool": {"winter": 3, "ng": 2.86, "level": "warning"},
	}
	sheet := object.union(wall.sheet, {"vapor_ng": case.ng})
	desk.levels(_found([wall.batt, sheet], case.winter, {})) == {case.level}
}

test_silent[name] if {
	some name, case in {
		"open sheet": {"layers": [wall.batt, wall.open_sheet], "winter": wall.cold},
		"warm side": {"layers": [wall.sheet, wall.wool], "winter": wall.cold},
		"a layer that nobody knows outside": {"layers": array.concat(_layers, [_unknown]), "winter": wall.cold},
		"mild": {"layers": _layers, "winter": wall.mild},
		"unknown place": {"layers": _layers, "winter": null},
	}
	count(_found(case.layers, case.winter, {})) == 0
}

test_fahrenheit_in_the_states if {
	doc := wall.document([wall.profile(_layers, wall.cold, {})], {"project": {"place": {"country": "US"}}})
	found := cold_side.findings with input as doc
	{contains(f.message, "with 23 °F in") | some f in found} == {true}
}

test_below_grade if {
	rows := [desk.row(n, "X-1", {"signals": [desk.said(n, "below_grade", "place")]}) | some n in [35, 37, 38, 40]]
	doc := object.union(wall.document([wall.profile(_layers, wall.cold, {})], {}), {"lines": rows})
	count(cold_side.findings) == 0 with input as doc
}

# The row of another sheet may say that a film goes on the cold side of its filled studs.
_film(clause, more) := found if {
	film := object.union(base.item("remark", "6 mil poly", "polyethylene-sheet", "membrane", []), {"clause": clause})
	batts := base.item("touches", "batts", "glass-fiber-insulation", "insulation", [])
	row := desk.row(18, "R-02", {"role": "membrane"})
	window := {"line": "W!18", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": -14, "mean_max_c": -2}
	items := array.concat(row.items, array.concat([film, batts], more))
	doc := object.union(desk.document([object.union(row, {"items": items})], [], []), {"windows": [window]})
	found := cold_side.findings with input as doc
}

test_film_outside_of_the_studs if {
	{f.severity | some f in _film("6 mil poly on the outside of the framing, behind the siding", [])} == {"error"}
	count(_film("6 mil poly between the batts and the sheathing", [])) == 1
}

test_film_elsewhere if {
	count(_film("6 mil poly on the room side of the studs", [])) == 0
	count(_film("6 mil poly over the stacked boards", [])) == 0
	count(_film("6 mil poly on the outside of the framing", [base.item("touches", "XPS", "xps", "insulation", [])])) == 0
}

# The row's own sheet goes on the insulation and is said to be on the cold side of it.
test_own_sheet_on_the_cold_side[name] if {
	some name, case in {
		"on wool": {"ng": 1.2, "substrate": "mineral wool 90", "touches": "girts, cold side of the wool", "n": 1},
		"on block": {"ng": 1.2, "substrate": "block", "touches": "girts, cold side of the wool", "n": 0},
		"warm side": {"ng": 1.2, "substrate": "mineral wool 90", "touches": "warm side of the wool", "n": 0},
		"denied": {"ng": 1.2, "substrate": "mineral wool 90", "touches": "not on the cold side of the wool", "n": 0},
		"an open sheet": {"ng": 1100, "substrate": "mineral wool 90", "touches": "cold side of the wool", "n": 0},
	}
	row := object.union(desk.row(18, "R-02", {"role": "membrane", "items": [desk.own(18, "R-02")]}), {"texts": {
		"substrate": case.substrate,
		"touches": case.touches,
	}})
	product := desk.product("R-02", 6, {"figures": {"vapor_ng": desk.figure(case.ng, "1", "ng")}})
	window := {"line": "W!18", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": -14, "mean_max_c": -2}
	doc := object.union(desk.document([row], [product], []), {"windows": [window]})
	found := cold_side.findings with input as doc
	count(found) == case.n
}

# The row of the film says that it goes on the outer side of the studs, and names what fills them.
test_own_film_outside_of_the_studs[name] if {
	some name, case in {
		"weather side": {"on": "weather side of the studs", "batts": true, "n": 1},
		"face of the board": {"on": "exterior face of the plywood sheathing", "batts": true, "n": 1},
		"outside of a tag": {"on": "girts, outboard of BT-2 batts", "batts": true, "n": 1},
		"inner face of the board": {"on": "interior face of sheathing", "batts": true, "n": 0},
		"face of the board, no batts": {"on": "exterior face of the plywood sheathing", "batts": false, "n": 0},
		"room side": {"on": "inner side of the studs", "batts": true, "n": 0},
		"no batts": {"on": "weather side of the studs", "batts": false, "n": 0},
	}
	film := object.union(desk.own(18, "VR-8"), {"family": "polyethylene-sheet", "keys": [], "product": ""})
	batts := [base.item("touches", "batts", "glass-fiber-insulation", "insulation", []) | case.batts]
	items := array.concat([film], batts)
	row := desk.row(18, "VR-8", {"role": "film", "items": items, "texts": {"substrate": case.on}})
	window := {"line": "W!18", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": -14, "mean_max_c": -2}
	doc := object.union(desk.document([row], [], []), {"windows": [window]})
	found := cold_side.findings with input as doc
	count(found) == case.n
}

# The row of the wool says that a tight sheet goes over its outer face.
test_sheet_over_the_wool[name] if {
	some name, case in {
		"outer face": {"clause": "R-02 across the exterior face of the stone wool", "n": 1},
		"an open sheet": {"clause": "R-02 across the exterior face of the stone wool", "ng": 900, "n": 0},
		"inner face": {"clause": "R-02 across the inner face of the stone wool", "n": 0},
		"a strip": {"clause": "R-02 strip over the outer face of the wool", "n": 0},
		"denied": {"clause": "R-02 not over the outer face of the wool", "n": 0},
		"foam outside": {"clause": "R-02 over the outer face of the wool", "foam": true, "n": 0},
		"in the ground": {"clause": "R-02 over the outer face of the wool", "place": "foundation", "n": 0},
	}
	sheet := object.union(desk.own(18, "R-02"), {"id": "s", "slot": "touches", "clause": case.clause})
	wool := base.item("material", "wool", "mineral-wool", "insulation", [])
	foam := [base.item("touches", "XPS", "xps", "insulation", []) | case.foam]
	row := object.union(desk.row(18, "wool", {"role": "insulation", "items": array.concat([wool, sheet], foam)}), {
		"place": object.get(case, "place", "north"),
	})
	product := desk.product("R-02", 6, {"figures": {"vapor_ng": desk.figure(object.get(case, "ng", 1.2), "1", "ng")}})
	window := {"line": "W!18", "from": "2026-01-10", "to": "2026-01-10", "mean_min_c": -14, "mean_max_c": -2}
	doc := object.union(desk.document([row], [product], []), {"windows": [window]})
	found := cold_side.findings with input as doc
	count(found) == case.n
}
