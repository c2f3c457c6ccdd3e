package performance.air_result_test

import data.lib.desk_test as desk
import data.performance.air_result

_limit := desk.limit("air_lsm2", null, 0.2, {"text": "Mock-up walls: 0.20 L/(s·m²) max. at 75 Pa"})

_found(value, text, limit) := found if {
	result := object.union(desk.figure(value, text, "L/(s·m²)"), {"at": {"sheet": "W", "row": 12, "cell": "M12"}})
	row := desk.row(12, "FM-1", {"figures": {"air_result_lsm2": result}, "texts": {"remark": text}})
	found := air_result.findings with input as desk.document([row], [desk.product("FM-1", 7, {})], [limit])
}

test_fires_in_full if {
	_found(0.45, "0.45", _limit) == {{
		"line": "W!12",
		"cells": ["A12", "M12"],
		"message": concat(" ", [
			"The air test in the row of FM-1 (rubberized-asphalt-membrane) gave 0.45 L/(s·m²);",
			"the notes ask for 0.2 L/(s·m²) or less",
		]),
		"related": [{"at": _limit.at, "cells": ["A3"], "what": _limit.text}],
	}}
}

test_row_of_a_test_alone if {
	result := object.union(desk.figure(0.45, "0.45", "L/(s·m²)"), {"at": {"sheet": "W", "row": 12, "cell": "M12"}})
	row := desk.row(12, "FM-1", {"items": [], "figures": {"air_result_lsm2": result}, "texts": {}})
	found := air_result.findings with input as desk.document([row], [], [_limit])
	{f.message | some f in found} == {"The air test gave 0.45 L/(s·m²); the notes ask for 0.2 L/(s·m²) or less"}
}

test_silent[name] if {
	some name, case in {
		"at the limit": {"value": 0.2, "text": "0.20", "limit": _limit},
		"rounded": {"value": 0.2032, "text": "0.04 cfm/sf", "limit": _limit},
		"mended": {"value": 0.45, "text": "0.45, sealed and retested 0.12", "limit": _limit},
		"limit of a sheet": {
			"value": 0.15,
			"text": "0.15",
			"limit": desk.limit("air_lsm2", null, 0.02, {"text": "Air barrier sheets 0.02 L/(s·m²) max."}),
		},
	}
	count(_found(case.value, case.text, case.limit)) == 0
}

# The limit of an assembly beside that of a material, in one note.
test_own_limit_of_the_assembly[value] if {
	some value, count_of in {"0.15": 0, "0.31": 1}
	text := "Air: sheet 0.02, assembly 0.20 L/(s·m²)"
	figure := desk.figure(to_number(value), value, "L/(s·m²)")
	result := object.union(figure, {"at": {"sheet": "W", "row": 12, "cell": "M12"}})
	row := desk.row(12, "FM-1", {"figures": {"air_result_lsm2": result}, "texts": {"remark": value}})
	limits := [
		desk.limit("air_lsm2", null, 0.02, {"text": text}),
		desk.limit("air_result_lsm2", null, 0.2, {"text": text}),
	]
	found := air_result.findings with input as desk.document([row], [desk.product("FM-1", 7, {})], limits)
	count(found) == count_of
}
