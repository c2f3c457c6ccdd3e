package temperature.read_below_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.temperature.read_below

_at := {"sheet": "W", "row": 12, "cell": "M12"}

_read(key, value) := {"figures": {key: object.union(desk.figure(value, sprintf("%v", [value]), "°C"), {"at": _at})}}

_from(value, text) := {"figures": {"apply_min_c": object.union(
	desk.figure(value, text, "°C"),
	{"at": {"sheet": "P", "row": 4, "cell": "E4"}},
)}}

_found(row, told) := found if {
	doc := desk.document([desk.row(12, "FM-1", row)], [desk.product("FM-1", 4, told)], [])
	found := read_below.findings with input as doc
}

test_fires_in_full if {
	_found(_read("reading_air_c", -3), _from(5, "5")) == {{
		"line": "W!12",
		"cells": ["C12", "I12", "M12"],
		"message": "FM-1 (rubberized-asphalt-membrane) goes on from 5 °C; the row has the air at -3 °C",
		"related": [{"product": "FM-1", "cells": ["E4"], "what": "its data"}],
	}}
}

test_primer if {
	primer := desk.named(12, bench.item("primer", "P-9", "water-primer", "primer", ["water-borne"]), "P-9")
	row := object.union(_read("reading_surface_c", 1), {"items": [desk.own(12, "FM-1"), primer]})
	products := [desk.product("FM-1", 4, _from(-10, "-10")), desk.product("P-9", 5, _from(4, "4"))]
	found := read_below.findings with input as desk.document([desk.row(12, "FM-1", row)], products, [])
	[f.message | some f in found] == ["P-9 (water-primer) goes on from 4 °C; the row has the surface at 1 °C"]
}

test_at_the_limit if {
	count(_found(_read("reading_air_c", 4.4), _from(5, "5"))) == 0
	count(_found(_read("reading_air_c", 4.3), _from(5, "5"))) == 1
}

_range(low, high) := {"figures": {"reading_air_c": object.union(
	desk.figure(low, "low-high", "°C"),
	{"max": high, "at": _at},
)}}

test_top_of_a_range if {
	[f.message | some f in _found(_range(-4, 2), _from(5, "5"))] == [concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) goes on from 5 °C; the row has the air at no more",
		"than 2 °C",
	])]
}

test_silent[name] if {
	tented := {"signals": [desk.said(12, "heated", "shelter")]}
	some name, case in {
		"no reading": {"row": {}, "told": _from(5, "5")},
		"no limit": {"row": _read("reading_air_c", -3), "told": {}},
		"a range that reaches it": {"row": _range(2, 21), "told": _from(5, "5")},
		"a range with its top on it": {"row": _range(-2, 5), "told": _from(5, "5")},
		"air outside of a tent": {"row": object.union(_read("reading_air_c", -3), tented), "told": _from(5, "5")},
		"a limit of the shop": {"row": _read("reading_air_c", 2), "told": _from(15, "15 to 30, in shop")},
		"the heat of a kettle": {"row": _read("reading_air_c", 8), "told": _from(180, "180 to 205")},
		"struck": {"row": object.union(_read("reading_air_c", -3), {"struck": true}), "told": _from(5, "5")},
	}
	count(_found(case.row, case.told)) == 0
}

test_wall_in_a_tent if {
	tented := {"signals": [desk.said(12, "heated", "shelter")]}
	count(_found(object.union(_read("reading_surface_c", 1), tented), _from(5, "5"))) == 1
}

# The sheet that the edge runs to went on in its own run; a tape along the edge goes on with the row.
_at_edge(relation) := found if {
	tape := bench.item("touches", "FM-2", "butyl-flashing-tape", "tape", ["butyl"])
	edge := object.union(desk.named(12, tape, "FM-2"), {"slot": "edge", "relation": relation})
	row := object.union(_read("reading_surface_c", -6), {"items": [desk.own(12, "FM-1"), edge]})
	products := [desk.product("FM-1", 4, _from(-10, "-10")), desk.product("FM-2", 5, _from(4, "4"))]
	found := read_below.findings with input as desk.document([desk.row(12, "FM-1", row)], products, [])
}

test_tape_along_the_edge if count(_at_edge("")) == 1

test_sheet_that_the_edge_runs_to if {
	count(_at_edge("over")) == 0
	count(_at_edge("clear_of")) == 0
}

# A heat gun warms what it is held to, and not the air that was read.
test_heat_gun if {
	gun := {"signals": [object.union(desk.said(12, "heated", "remark"), {"text": "heat gun"})]}
	count(_found(object.union(_read("reading_air_c", -3), gun), _from(5, "5"))) == 1
	tent := {"signals": array.concat(gun.signals, [desk.said(12, "heated", "shelter")])}
	count(_found(object.union(_read("reading_air_c", -3), tent), _from(5, "5"))) == 0
}
