package vapor.told_order_test

import data.lib.desk_test as desk
import data.vapor.told_order

_winter(low, high) := {
	"line": "W!18",
	"from": "2026-01-10",
	"to": "2026-01-10",
	"mean_min_c": low,
	"mean_max_c": high,
}

_found(remark, ng, window) := found if {
	product := desk.product("R-02", 7, {"figures": {"vapor_ng": desk.figure(ng, "x", "ng")}})
	row := desk.row(18, "R-02", {"texts": {"remark": remark}})
	doc := object.union(desk.document([row], [product], []), {"windows": [window]})
	found := told_order.findings with input as doc
}

_order := "Order from room to street: slab, 150 mm wool, board, roll, soffit panel. Bead at edges"

test_fires_in_full if {
	_found(_order, 1.7, _winter(-14, -2)) == {{
		"line": "W!18",
		"cells": ["C18", "M18"],
		"severity": "error",
		"message": concat("", [
			"R-02 lies outside of all the insulation, as the row tells it; with -8 °C in the three coldest months ",
			"room moisture condenses on it",
		]),
	}}
}

test_other_way_round if {
	count(_found("weather side to room side: panel, R-02, plywood, batts, gypsum board", 1.7, _winter(-14, -2))) == 1
}

test_severity[name] if {
	some name, case in {
		"cool": {"ng": 1.7, "window": _winter(1, 7)},
		"class II": {"ng": 40, "window": _winter(-14, -2)},
	}
	desk.levels(_found(_order, case.ng, case.window)) == {"warning"}
}

test_silent[name] if {
	some name, case in {
		"warm side": {"text": "room to street: board, roll, 150 mm wool, panel", "ng": 1.7, "window": _winter(-14, -2)},
		"insulation on both sides": {"text": "inside to outside: wool, roll, wool", "ng": 1.7, "window": _winter(-14, -2)},
		"open sheet": {"text": _order, "ng": 900, "window": _winter(-14, -2)},
		"mild winter": {"text": _order, "ng": 1.7, "window": _winter(5, 14)},
		"no insulation told": {"text": "room to street: slab, board, roll", "ng": 1.7, "window": _winter(-14, -2)},
		"no order told": {"text": "wool, board, roll", "ng": 1.7, "window": _winter(-14, -2)},
		"a distance, no order": {"text": "runs from inside to outside of the frame", "ng": 1.7, "window": _winter(-14, -2)},
	}
	count(_found(case.text, case.ng, case.window)) == 0
}

test_winter_unknown if {
	product := desk.product("R-02", 7, {"figures": {"vapor_ng": desk.figure(1.7, "x", "ng")}})
	row := desk.row(18, "R-02", {"texts": {"remark": _order}})
	count(told_order.findings) == 0 with input as desk.document([row], [product], [])
}
