package temperature.read_above_test

import data.lib.bench_test as bench
import data.lib.desk_test as desk
import data.temperature.read_above

_at := {"sheet": "W", "row": 12, "cell": "M12"}

_read(key, value) := {"figures": {key: object.union(desk.figure(value, sprintf("%v", [value]), "°C"), {"at": _at})}}

_up_to(value, text) := {"figures": {"apply_max_c": object.union(
	desk.figure(value, text, "°C"),
	{"at": {"sheet": "P", "row": 4, "cell": "E4"}},
)}}

_found(row, told) := found if {
	doc := desk.document([desk.row(12, "FM-1", row)], [desk.product("FM-1", 4, told)], [])
	found := read_above.findings with input as doc
}

test_fires_in_full if {
	_found(_read("reading_surface_c", 31), _up_to(20, "-5 to 20")) == {{
		"line": "W!12",
		"cells": ["C12", "I12", "M12"],
		"message": "FM-1 (rubberized-asphalt-membrane) goes on up to 20 °C; the row has the surface at 31 °C",
		"related": [{"product": "FM-1", "cells": ["E4"], "what": "its data"}],
	}}
}

test_primer if {
	primer := desk.named(12, bench.item("primer", "P-9", "water-primer", "primer", ["water-borne"]), "P-9")
	row := object.union(_read("reading_air_c", 41), {"items": [desk.own(12, "FM-1"), primer]})
	products := [desk.product("FM-1", 4, {}), desk.product("P-9", 5, _up_to(35, "35"))]
	found := read_above.findings with input as desk.document([desk.row(12, "FM-1", row)], products, [])
	[f.message | some f in found] == ["P-9 (water-primer) goes on up to 35 °C; the row has the air at 41 °C"]
}

_range(low, high) := {"figures": {"reading_air_c": object.union(
	desk.figure(low, "low-high", "°C"),
	{"max": high, "at": _at},
)}}

test_bottom_of_a_range if {
	[f.message | some f in _found(_range(24, 33), _up_to(20, "20"))] == [concat(" ", [
		"FM-1 (rubberized-asphalt-membrane) goes on up to 20 °C; the row has the air at no less",
		"than 24 °C",
	])]
}

test_silent[name] if {
	some name, case in {
		"no reading": {"row": {}, "told": _up_to(20, "20")},
		"no limit": {"row": _read("reading_air_c", 33), "told": {}},
		"a range that begins below it": {"row": _range(12, 33), "told": _up_to(20, "20")},
		"at the limit": {"row": _read("reading_air_c", 20), "told": _up_to(20, "20")},
		"stated for the shop": {"row": _read("reading_air_c", 33), "told": _up_to(20, "15 to 20, shop")},
	}
	count(_found(case.row, case.told)) == 0
}
