package data.range_reversed_test

import data.data.range_reversed
import data.lib.desk_test as desk

_found(figures, limits) := found if {
	product := desk.product("R-1", 5, {"figures": figures})
	found := range_reversed.findings with input as desk.document([], [product], limits)
}

_c(value, text) := desk.figure(value, text, "°C")

test_fires_in_full if {
	_found({"apply_min_c": _c(40, "40"), "service_max_c": _c(25, "25")}, []) == {{
		"product": "R-1",
		"cells": ["E5", "F5"],
		"message": "R-1: it is put on from 40 °C, but serves only to 25 °C",
	}}
}

test_one_cell if {
	found := _found({"apply_min_c": object.union(_c(20, "20 to 10 °C"), {"max": 10})}, [])
	{f.message | some f in found} == {"R-1: the lowest installation temperature \"20 to 10 °C\" ends below its beginning"}
}

test_project_limit if {
	found := _found({}, [desk.limit("thickness_mm", 2, 1, {})])
	{[f.at.sheet, f.message] | some f in found} == {["Notes", "the limit \"Note 3\" ends below its beginning"]}
}

test_silent[name] if {
	some name, case in {
		"in order": {"figures": {"apply_min_c": _c(5, "5"), "apply_max_c": _c(40, "40")}, "limits": []},
		"equal": {"figures": {"apply_min_c": _c(40, "40"), "apply_max_c": _c(40, "40")}, "limits": []},
		"only a least": {"figures": {"apply_min_c": object.union(_c(5, "5"), {"max": null})}, "limits": []},
		"only a most": {"figures": {}, "limits": [desk.limit("voc_gl", null, 250, {})]},
		"only a least in notes": {"figures": {}, "limits": [desk.limit("lap_mm", 50, null, {})]},
	}
	count(_found(case.figures, case.limits)) == 0
}
