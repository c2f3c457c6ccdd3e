package data.product_contradiction_test

import data.data.product_contradiction
import data.lib.desk_test as desk

_from(value, text) := {"figures": {"apply_min_c": desk.figure(value, text, "°F")}}

_found(row, told) := found if {
	doc := desk.document([desk.row(12, "FM-1", row)], [desk.product("FM-1", 4, told)], [])
	found := product_contradiction.findings with input as doc
}

test_fires_in_full if {
	_found(_from(-6.67, "20 °F"), _from(4.44, "40")) == {{
		"line": "W!12",
		"cells": ["C12"],
		"message": "the row says lowest installation temperature 20 °F, but the data of FM-1 says 40 °F",
		"related": [{"product": "FM-1", "cells": ["E4"], "what": "its data"}],
	}}
}

_days(value) := {"figures": {"exposure_days": desk.figure(value, sprintf("%d", [value]), "days")}}

test_more_days_than_the_data_allows if {
	count(_found(_days(45), _days(30))) == 1
	count(_found(_days(14), _days(30))) == 0
}

test_silent[name] if {
	some name, case in {
		"same": {"row": _from(4.44, "40"), "told": _from(4.44, "40")},
		"rounded": {"row": _from(4, "4 °C"), "told": _from(4.44, "40 °F")},
		"at the edge of rounding": {"row": _from(5, "5 °C"), "told": _from(3.8, "3.8 °C")},
		"row is silent": {"row": {}, "told": _from(4.44, "40")},
		"data is silent": {"row": _from(4.44, "40"), "told": {}},
		"struck": {"row": object.union(_from(-6, "20"), {"struck": true}), "told": _from(4.44, "40")},
		"tag told twice": {"row": _from(-6, "20"), "told": object.union(_from(4.44, "40"), {"repeats": true})},
	}
	count(_found(case.row, case.told)) == 0
}

# The range of a cell is told once, with both its ends.
test_range_in_one_cell if {
	at := {"sheet": "W", "row": 12, "cell": "M12"}
	own := {"figures": {
		"apply_min_c": object.union(desk.figure(-12.2, "10-70", "°F"), {"at": at}),
		"apply_max_c": object.union(desk.figure(21.1, "10-70", "°F"), {"at": at}),
	}}
	told := {"figures": {
		"apply_min_c": desk.figure(4.44, "40-120", "°F"),
		"apply_max_c": desk.figure(48.9, "40-120", "°F"),
	}}
	messages := {f.message | some f in _found(own, told)}
	messages == {"the row says installation temperature 10-70 °F, but the data of FM-1 says 40-120 °F"}
}

# A figure that breaks a limit of the project is told as that, and once.
test_silent_where_a_limit_is_broken if {
	row := desk.row(12, "FM-1", {"figures": {"vapor_ng": desk.figure(172, "3 perm", "perm")}})
	product := desk.product("FM-1", 4, {"figures": {"vapor_ng": desk.figure(801, "14 perm", "perm")}})
	doc := desk.document([row], [product], [])
	count(product_contradiction.findings) == 1 with input as doc with data.performance.vapor_limit.findings as set()
	count(product_contradiction.findings) == 0 with input as doc
		with data.performance.vapor_limit.findings as {{"line": "W!12", "related": []}}
	count(product_contradiction.findings) == 0 with input as doc
		with data.performance.vapor_limit.findings as {{"line": "W!10", "related": [{"line": "W!12"}]}}
}

# A board's permeance by the inch is no other figure than that of the row's own board.
test_permeance_of_a_thickness[name] if {
	some name, case in {
		"at an inch": {"row": "0.6", "data": "1.5 @ 1 in.", "n": 0},
		"per inch": {"row": "0.6", "data": "1.5 per inch", "n": 0},
		"perm-inch": {"row": "0.6", "data": "1.5 perm-inch (A)", "n": 0},
		"at 25 mm": {"row": "0.6 (A)", "data": "1.5 at 25 mm", "n": 0},
		"both by the inch": {"row": "0.6 per in.", "data": "1.5 perm-in.", "n": 1},
		"neither": {"row": "0.6 (A)", "data": "1.5 (A)", "n": 1},
		"at a humidity": {"row": "0.6", "data": "1.5 at 50 % RH", "n": 1},
	}
	row := desk.row(12, "FM-1", {"figures": {"vapor_ng": desk.figure(34, case.row, "perm")}})
	product := desk.product("FM-1", 4, {"figures": {"vapor_ng": desk.figure(86, case.data, "perm")}})
	doc := desk.document([row], [product], [])
	count(product_contradiction.findings) == case.n with input as doc
}
