package data.no_unit_test

import data.data.no_unit
import data.lib.desk_test as desk

_bare := object.union(desk.figure(null, "40", ""), {"problem": "no unit"})

_found(figure, more) := found if {
	row := object.union(desk.row(12, "R-1", {"figures": {"thickness_mm": figure}}), more)
	found := no_unit.findings with input as desk.document([row], [], [])
}

test_fires_in_full if {
	_found(_bare, {}) == {{
		"line": "W!12",
		"cells": ["D12"],
		"message": "the thickness \"40\" has no unit, so nothing was held against it",
		"related": [],
	}}
}

test_product if {
	product := desk.product("R-1", 5, {"figures": {"thickness_mm": object.union(_bare, {"problem": "no-unit"})}})
	found := no_unit.findings with input as desk.document([], [product], [])
	{f.product | some f in found} == {"R-1"}
}

test_silent[name] if {
	some name, case in {
		"unit": {"figure": desk.figure(1, "40", "mil"), "more": {}},
		"no figure at all": {"figure": object.union(_bare, {"problem": "not a figure"}), "more": {}},
		"struck": {"figure": _bare, "more": {"struck": true}},
	}
	count(_found(case.figure, case.more)) == 0
}

test_nominal_lumber if {
	size := object.union(desk.figure(null, "2x10", ""), {"problem": "no unit"})
	count(_found(size, {"role": "lumber"})) == 0
	count(_found(size, {})) == 1
	count(_found(_bare, {"role": "lumber"})) == 1
}

test_once_for_a_column if {
	rows := [desk.row(n, "R-1", {"figures": {"thickness_mm": _bare}}) | some n in [12, 13]]
	found := no_unit.findings with input as desk.document(rows, [], [])
	{[f.line, [r.line | some r in f.related]] | some f in found} == {["W!12", ["W!13"]]}
}
