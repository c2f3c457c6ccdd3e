package data.units_disagree_test

import data.data.units_disagree
import data.lib.desk_test as desk

_bad := object.union(desk.figure(1.143, "45 mil (2.0 mm)", "mil"), {
	"disagree": true,
	"other": 2,
})

_found(rows, products) := found if {
	found := units_disagree.findings with input as desk.document(rows, products, [])
}

_row(n, figure) := desk.row(n, "FM-3", {"texts": {"material": "FM-3"}, "figures": {"thickness_mm": figure}})

test_fires_in_full if {
	_found([_row(12, _bad), _row(14, _bad)], []) == {{
		"line": "W!12",
		"cells": ["D12"],
		"message": "the thickness \"45 mil (2.0 mm)\" tells two figures: 1.14 mm and 2 mm",
		"related": [{"line": "W!14", "cells": ["D14"], "what": "the same cell"}],
	}}
}

test_product if {
	found := _found([], [desk.product("FM-3", 6, {"figures": {"thickness_mm": object.union(_bad, {"other": null})}})])
	{[f.product, f.cells, f.message] | some f in found} == {[
		"FM-3",
		["D6"],
		"the thickness \"45 mil (2.0 mm)\" tells two figures that do not agree",
	]}
}

test_silent[name] if {
	some name, figure in {
		"agree": desk.figure(1.016, "40 mil (1.0 mm)", "mil"),
		"one unit": desk.figure(1.016, "40 mil", "mil"),
	}
	count(_found([_row(12, figure)], [])) == 0
}

test_struck if count(_found([object.union(_row(12, _bad), {"struck": true})], [])) == 0
